package hem_test

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// blamed are the fields of the faults of err.
func blamed(err error) (paths []string) {
	var fs fault.Faults
	if errors.As(err, &fs) {
		for _, f := range fs {
			paths = append(paths, f.Path)
		}
	}
	return paths
}

// TestNothingElseBlamed: where one field is wrong, those that hang on it are not
// held against what could not be worked out.
func TestNothingElseBlamed(t *testing.T) {
	for _, test := range []struct {
		why  string
		s    hem.Spec
		want []string
	}{
		{"a hem without a first turn has no limit for the trim", hem.Spec{Kind: hem.Narrow, Depth: l("1/4"), Take: l("1/4"), Trim: l("1/8")}, []string{"take"}},
		{"a hem without depth has none either", hem.Spec{Kind: hem.Double, First: l("1/4"), Take: l("1/4"), Trim: l("1/8")}, []string{"take"}},
		{"a circle is not held against a hem without depth", hem.Spec{Kind: hem.Circular, Cut: l("1/4"), First: l("1"), Take: l("1"), Radius: l("1/2")}, []string{"take"}},
		{"no such opening", hem.Spec{Kind: hem.Slit, Opening: hem.InSeam + 1, Depth: l("1/2")}, []string{"opening"}},
		{"all of the edge is taken by as many side edges as may be", hem.Spec{Kind: hem.Double, First: l("1/4"), Depth: l("3/4"), Cut: l("1/2"),
			Slope: units.RatioOf(1, 8), Edges: hem.MaxEdges, Sweep: l("62 1/2")}, []string{"sweep"}},
	} {
		_, err := test.s.Plan()
		if d := cmp.Diff(test.want, blamed(err)); d != "" {
			t.Errorf("%s: %v\n%s", test.why, err, d)
		}
	}
	for _, test := range []struct {
		why  string
		s    hem.Casing
		want []string
	}{
		{"a tunnel that is not given", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Turn: l("-1")}, []string{"turn"}},
		{"a casing for nothing that is known", hem.Casing{Width: l("1")}, []string{"kind"}},
	} {
		_, err := test.s.Plan()
		if d := cmp.Diff(test.want, blamed(err)); d != "" {
			t.Errorf("%s: %v\n%s", test.why, err, d)
		}
	}
	_, err := hem.Mitre{A: hem.HemSide{First: l("1/4")}}.Plan()
	if d := cmp.Diff([]string{"a.depth"}, blamed(err)); d != "" {
		t.Errorf("a mitre of a hem without depth: %v\n%s", err, d)
	}
}

// TestSweepRoundCurves: an edge of which the curves might take all is refused, one a
// sixteenth longer is not. What they take is 2 x pi x Circle x Drift.
func TestSweepRoundCurves(t *testing.T) {
	s := hem.Spec{Kind: hem.ShirtTail, First: l("1/4"), Depth: l("1/4"), Cut: l("1/4"), Circle: units.RatioOf(1, 1)}
	_, most := units.Pi().Of(l("1/4")).MulInt(2).Bounds()
	s.Sweep = most
	if _, err := s.Plan(); !errors.Is(err, fault.Range) || !slices.Equal(blamed(err), []string{"sweep"}) {
		t.Errorf("%v: %v", s.Sweep, err)
	}
	s.Sweep = most.Add(l("1/16"))
	if p, err := s.Plan(); err != nil || p.Drift != l("-1/4") {
		t.Errorf("%v: drift %v, %v", s.Sweep, p.Drift, err)
	}
}

// TestMostHems: a piece may have as many hems as are counted, and no more.
func TestMostHems(t *testing.T) {
	p := plan(t, hem.Spec{Kind: hem.Double, First: l("1/4"), Depth: l("3/4")})
	for _, test := range []struct {
		hems            int
		finished, uncut string
	}{
		{1, "4999", "5001"}, {hem.MaxHems, "4000", "6000"}, {hem.MaxHems + 1, "0", "0"}, {0, "0", "0"},
	} {
		if f, c := p.Finished(l("5000"), test.hems), p.CutFor(l("5000"), test.hems); f != l(test.finished) || c != l(test.uncut) {
			t.Errorf("%d hems: finished %v, cut %v", test.hems, f, c)
		}
	}
}

// TestRodGoesThrough: a rod of which nothing but its diameter, the measure round it
// or its tunnel is given goes through its casing.
func TestRodGoesThrough(t *testing.T) {
	for _, given := range []string{"1/16", "1/8", "1/4", "3/8", "1/2", "3/4", "1", "1 3/8", "2", "3", "12", "1000"} {
		for what, s := range map[string]hem.Casing{
			"diameter": {Kind: hem.RodCasing, Width: l(given)},
			"girth":    {Kind: hem.RodCasing, Girth: l(given)},
			"tunnel":   {Kind: hem.RodCasing, Tunnel: l(given)},
		} {
			p, err := s.Plan()
			if err != nil {
				t.Errorf("%s %s: %v", what, given, err)
				continue
			}
			if lo, _ := p.Room.Bounds(); lo.Sign() <= 0 || !slices.Contains(p.Assumed, "ease") {
				t.Errorf("%s %s: tunnel %v, room %v, assumed %v", what, given, p.Spec.Tunnel, p.Room, p.Assumed)
			}
			if text := p.Sheet().Text(); strings.Contains(text, "does not go through") {
				t.Errorf("%s %s:\n%s", what, given, text)
			}
		}
	}
}

// TestRodJustGoesThrough: a tunnel of half the measure round the rod has no room to
// spare, but none is lacking.
func TestRodJustGoesThrough(t *testing.T) {
	for tunnel, want := range map[string]string{
		"2":      "room to spare round the rod, laid flat",
		"2 1/16": "room to spare round the rod, laid flat",
	} {
		p, err := hem.Casing{Kind: hem.RodCasing, Girth: l("4"), Tunnel: l(tunnel)}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		sheet := p.Sheet()
		if !slices.ContainsFunc(sheet.Lines, func(l ticket.Line) bool { return l.Label == want }) {
			t.Errorf("%s in: no %q in\n%v", tunnel, want, sheet.Lines)
		}
		for _, c := range sheet.Cautions {
			if strings.Contains(c.Text, "does not go through") {
				t.Errorf("%s in: %s", tunnel, c.Text)
			}
		}
	}
}

// TestCordRules: a rule on the cords of children's clothes is cited from the month
// that it begins to the last month before it ends, and only for the part of the
// garment that it is about.
func TestCordRules(t *testing.T) {
	const us, eu = "us-drawstring-rule", "eu-cords-standard"
	for _, test := range []struct {
		months int
		neck   bool
		want   []string
		barred bool
		most   string
	}{
		{1, true, []string{eu}, true, "0 in"},
		{23, true, []string{eu}, true, "0 in"},
		{24, true, []string{us, eu}, true, "0 in"},
		{83, true, []string{us, eu}, true, "0 in"},
		{84, true, []string{us, eu}, true, "75 mm"},
		{155, true, []string{us, eu}, true, "75 mm"},
		{156, true, []string{eu}, false, "75 mm"},
		{167, true, []string{eu}, false, "75 mm"},
		{168, true, nil, false, "0 in"},
		{23, false, []string{eu}, false, "140 mm"},
		{24, false, []string{us, eu}, false, "3 in"},
		{167, false, []string{us, eu}, false, "3 in"},
		{168, false, []string{us}, false, "3 in"},
		{203, false, []string{us}, false, "3 in"},
		{204, false, nil, false, "0 in"},
		{0, true, nil, false, "0 in"},
	} {
		p, err := hem.Casing{Kind: hem.CordCasing, Width: l("1/4"), Months: test.months, Neck: test.neck}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		for _, c := range p.Sheet().Sources {
			if c.ID == us || c.ID == eu {
				got = append(got, c.ID)
			}
		}
		if d := cmp.Diff(test.want, got); d != "" || p.Barred != test.barred || p.TailMost != units.MustParse(test.most) {
			t.Errorf("%d months, neck %v: barred %v, at most %v\n%s", test.months, test.neck, p.Barred, p.TailMost, d)
		}
	}
	// The rule of the United States is for sizes 2 to 12 at the neck, 2 to 16 below.
	for limit := range hem.CordLimits() {
		if limit.Source == us && (limit.From != 24 || limit.Neck != (limit.Below == 156) || !limit.Neck && limit.Below != 204) {
			t.Errorf("%+v", limit)
		}
	}
}

// TestGarmentNames: a garment that the table of depths does not have is named in the
// fault as it was asked for, if it is no longer than a name may be.
func TestGarmentNames(t *testing.T) {
	long := strings.Repeat("x", fault.MaxName)
	for name, want := range map[string]string{"doublet": `"doublet"`, long: `"` + long + `"`, long + "x": "201 bytes"} {
		_, err := hem.DepthsFor(name)
		var f *fault.Fault
		if !errors.As(err, &f) || f.Got != want || f.Path != "Garment" || f.Kind != fault.Unknown {
			t.Errorf("%d bytes: %v", len(name), err)
		}
	}
}

// TestSingleTuck: one tuck alone has no pitch and no space to the next.
func TestSingleTuck(t *testing.T) {
	p, err := hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/2"), Count: 1, Edge: l("3")}.Plan()
	if err != nil || !p.FlatPitch.IsZero() || !p.Space.IsZero() || p.LastFold != p.FirstFold || p.FirstFold != l("3 1/2") || p.Cloth != l("7") {
		t.Errorf("%+v, %v", p, err)
	}
}

// TestTuckCounts: how many tucks are counted at most, in each of the three ways that
// their number comes.
func TestTuckCounts(t *testing.T) {
	most := int64(hem.MaxTucks)
	for _, test := range []struct {
		why  string
		s    hem.Tucks
		want []string // the fields at fault; none where it is well
	}{
		{"given", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Count: hem.MaxTucks}, nil},
		{"given, one more", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Count: hem.MaxTucks + 1}, []string{"count"}},
		{"from what they take up", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Removed: l("1/4").MulInt(most)}, nil},
		{"one more takes up too much", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Removed: l("1/4").MulInt(most + 1)}, []string{"removed"}},
		{"from the span", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Span: l("1/4").MulInt(most - 1)}, nil},
		{"one more than the span has", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Span: l("1/4").MulInt(most)}, []string{"span"}},
		{"two more", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Span: l("1/4").MulInt(most + 1)}, []string{"span"}},
		{"no room between the edges", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Edge: l("2"), Span: l("4")}, []string{"count"}},
	} {
		p, err := test.s.Plan()
		if d := cmp.Diff(test.want, blamed(err)); d != "" || err == nil && p.Spec.Count != hem.MaxTucks {
			t.Errorf("%s: %d tucks, %v\n%s", test.why, p.Spec.Count, err, d)
		}
	}
}

// TestPinTuckDepth: a pin tuck is as narrow as can be stitched, unless what all of
// them take up and their number say otherwise.
func TestPinTuckDepth(t *testing.T) {
	given, err := hem.Tucks{Kind: hem.PinTuck, Removed: l("3"), Count: 6, Pitch: l("1")}.Plan()
	if err != nil || given.Spec.Depth != l("1/4") || slices.Contains(given.Assumed, "depth") {
		t.Errorf("six that take up 3 in: %+v, %v", given, err)
	}
	table, err := hem.Tucks{Kind: hem.PinTuck, Count: 6, Pitch: l("1")}.Plan()
	if err != nil || !slices.Contains(table.Assumed, "depth") {
		t.Errorf("six: %+v, %v", table, err)
	}
	counted, err := hem.Tucks{Kind: hem.PinTuck, Removed: table.PerTuck.MulInt(9), Pitch: l("1")}.Plan()
	if err != nil || counted.Spec.Count != 9 || counted.Spec.Depth != table.Spec.Depth || !slices.Contains(counted.Assumed, "depth") {
		t.Errorf("that take up nine: %+v, %v", counted, err)
	}
}

// TestDeepMitre: the seam of the deepest hems, at corners that are not square, is
// enclosed by its bounds. Its square is (a a + b b) s s + 2 x Lean x a b s, where s s
// is 1 + Lean x Lean; s is found here to forty places.
func TestDeepMitre(t *testing.T) {
	places := new(big.Int).Exp(big.NewInt(10), big.NewInt(40), nil)
	r := rand.New(rand.NewPCG(8, 9))
	for range 300 {
		lean := units.RatioOf(-1-r.Int64N(hem.MaxLean*60), 60)
		a := units.Millimetre.Frac(50_000+r.Int64N(50_000), 10)
		b := a
		if r.IntN(3) == 0 {
			lean, b = lean.Neg(), units.Millimetre.Frac(50_000+r.Int64N(50_000), 10)
		}
		p, err := hem.Mitre{A: hem.HemSide{Depth: a}, B: hem.HemSide{Depth: b}, Lean: lean}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		k := lean.Rat()
		ss := add(big.NewRat(1, 1), mul(k, k))
		root := new(big.Int).Mul(ss.Num(), ss.Denom())
		root.Mul(root, places).Mul(root, places).Sqrt(root)
		s := new(big.Rat).SetFrac(root, new(big.Int).Mul(places, ss.Denom()))
		more := add(s, new(big.Rat).SetFrac(big.NewInt(1), places))
		plain := mul(add(mul(rat(a), rat(a)), mul(rat(b), rat(b))), ss)
		each := mul(big.NewRat(2, 1), mul(k, mul(rat(a), rat(b))))
		low, high := add(plain, mul(each, s)), add(plain, mul(each, more))
		if high.Cmp(low) < 0 {
			low, high = high, low
		}
		lo, hi := p.Seam.Bounds()
		if mul(rat(lo), rat(lo)).Cmp(high) > 0 || mul(rat(hi), rat(hi)).Cmp(low) < 0 {
			t.Errorf("%v by %v, lean %v: the seam is not %v", a, b, lean, p.Seam)
		}
	}
}
