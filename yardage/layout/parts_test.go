package layout_test

import (
	"context"
	"errors"
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// ruffled is a bodice and two ruffle strips longer than the cloth is wide.
func ruffled() layout.Spec {
	return layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("45"), Selvedge: in("1/2")}, Pieces: []layout.Piece{
		{Name: "bodice", Wide: in("20"), Long: in("18"), Count: 2},
		{Name: "ruffle", Wide: in("100"), Long: in("4"), Count: 2, Parts: 6, Join: in("1/2")},
	}}
}

// comesTo is the sewn length of the parts of a copy: what is cut, less both sides
// of each join.
func comesTo(s layout.Spec, lay []layout.Placement, piece, copy int) (sewn units.Length, parts int) {
	for _, at := range lay {
		if at.Piece == piece && at.Copy == copy {
			wide, long := at.Size(s)
			if at.Across {
				wide, long = long, wide
			}
			one := s.Pieces[piece]
			if one.Long.Less(one.Wide) {
				sewn = sewn.Add(wide)
			} else {
				sewn = sewn.Add(long)
			}
			parts++
		}
	}
	return sewn.Sub(s.Pieces[piece].Join.MulInt(int64(2 * (parts - 1)))), parts
}

// A strip longer than the cloth is wide is cut in parts, which come to the whole
// strip once they are joined.
func TestParts(t *testing.T) {
	s := ruffled()
	s.Pieces[1].Parts = 3
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	for copy := 1; copy <= 2; copy++ {
		if sewn, parts := comesTo(s, p.Placements, 1, copy); sewn != in("100") || parts < 3 {
			t.Errorf("copy %d: %d parts come to %v", copy, parts, sewn)
		}
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
	text := p.Sheet().Text()
	for _, want := range []string{"Lay ruffle, copy 2, part 3 of 3.", "ruffle: length of each part", "ruffle: first join", "from one join to the next", "Join the parts of ruffle"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	// The sums, by hand: 2 joins take 2 in, each part is 102/3 in, which is 34.
	if wide, long := p.Placements[2].Size(s); wide != in("34") || long != in("4") {
		t.Errorf("%v by %v", wide, long)
	}
	if want := in("20").Times(in("18")).Add(in("102").Times(in("4"))).MulInt(2).Div(in("44").Times(p.Lay)); p.Density != want {
		t.Errorf("density %v, want %v", p.Density, want)
	}
	if svg := p.SVG(); !strings.Contains(svg, "part 2 of 3") {
		t.Error("no part is drawn")
	}
	last := p.Placements[len(p.Placements)-1]
	if n := len(last.Corners(s)); n != 4 || last.Part != 3 || last.Of != 3 || last.Copy != 2 {
		t.Errorf("%+v has %d corners", last, n)
	}
}

// Where the cloth is as long as need be more parts are cut only for a shorter lay;
// where it is of a length, the fewest whose lay fits.
func TestPartsFewest(t *testing.T) {
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("40")}, Pieces: []layout.Piece{
		{Name: "skirt", Wide: in("30"), Long: in("20"), Count: 1},
		{Name: "frill", Wide: in("40"), Long: in("5"), Count: 1, Parts: 4},
	}}
	of := func(long string) (int, units.Length) {
		s.Cloth.Long = in(long)
		p, err := s.Plan(context.Background())
		if err != nil {
			t.Fatal(err)
		}
		return p.Placements[1].Of, p.Lay
	}
	if parts, lay := of("0"); parts != 4 || lay != in("20") {
		t.Errorf("%d parts, lay %v", parts, lay) // four of 10 lie beside the skirt
	}
	if parts, lay := of("26"); parts != 0 || lay != in("25") {
		t.Errorf("%d parts, lay %v", parts, lay)
	}
	if parts, lay := of("24"); parts != 4 || lay != in("20") {
		t.Errorf("%d parts, lay %v", parts, lay)
	}
	s.Pieces[1].Parts = 3
	if _, err := s.Solve(); list(err) == nil || list(err)[0] != (found{"cloth.long", fault.Range}) {
		t.Errorf("no two or three parts lie beside the skirt: %v", err)
	}
	s.Cloth.Wide, s.Pieces[1].Parts = in("36"), 40 // 40 in goes in no fewer than two
	s.Pieces[0].Wide = in("36")
	if parts, _ := of("100"); parts != 2 {
		t.Errorf("%d parts", parts)
	}
}

// On double cloth a placement cuts two parts, be they of one copy or of two.
func TestPartsFolded(t *testing.T) {
	s := ruffled()
	s.Cloth.Folded, s.Pieces[1].Parts = true, 5
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if len(p.Placements) != 1+5 || p.Extra != nil {
		t.Errorf("%d placements, %v extra", len(p.Placements), p.Extra)
	}
	text := p.Sheet().Text()
	for _, want := range []string{"ruffle, copy 1, parts 1 and 2 of 5.", "ruffle, copy 1, part 5 of 5, and copy 2, part 1.", "ruffle, copy 2, parts 4 and 5 of 5."} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	s.Pieces[1].Count = 1
	if p, err = s.Plan(context.Background()); err != nil || p.Extra[1] != 1 {
		t.Errorf("%v, extra %v", err, p.Extra)
	}
	if text := p.Sheet().Text(); !strings.Contains(text, "ruffle, part 5 of 5.") {
		t.Error(text)
	}
	for i := range p.Placements {
		if first, second := p.Placements[i].Copies(s); first != p.Placements[i].Copy || second > 2 {
			t.Errorf("copies %d and %d", first, second)
		}
	}
	if first, second := (layout.Placement{Piece: 1, Copy: 9, Of: 3, Part: 1}).Copies(s); first != 9 || second != 0 {
		t.Errorf("copies %d and %d", first, second)
	}
}

// The parts come to the strip whatever the figures, and a lay that Verify takes
// has every part once.
func TestPartsCome(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(31, 32))
	many := 0
	for range often(32) {
		s := layout.Spec{Work: 1, Seed: r.Uint64(), Cloth: layout.Cloth{Wide: in("30"), Folded: r.IntN(3) == 0}}
		for range 1 + r.IntN(2) {
			s.Pieces = append(s.Pieces, layout.Piece{Name: "strip " + strconv.Itoa(len(s.Pieces)), Wide: in("2"), Long: in("1/3").MulInt(20 + r.Int64N(200)), Count: 1 + r.IntN(2),
				Turn: layout.Turn(r.IntN(3)), Parts: 1 + r.IntN(6), Join: in("1/8").MulInt(r.Int64N(5))})
			one := &s.Pieces[len(s.Pieces)-1]
			if one.Parts == 1 {
				one.Join = units.Length{}
			}
			if r.IntN(2) == 0 {
				one.Wide, one.Long = one.Long, one.Wide
			}
			if r.IntN(3) == 0 {
				one.Allowance = []units.Length{in("1/4")}
			}
		}
		if r.IntN(2) == 0 {
			s.Cloth.Flaws = []layout.Flaw{{X: in("9"), Y: in("9"), Wide: in("3"), Long: in("2")}}
		}
		p, err := s.Plan(context.Background())
		if err != nil {
			if list(err) == nil {
				t.Fatal(err)
			}
			continue
		}
		if p.Lay.Less(p.Bound) || units.RatioOf(1, 1).Less(p.Density) {
			t.Errorf("lay %v, bound %v, density %v", p.Lay, p.Bound, p.Density)
		}
		if err := p.Sheet().Check(); err != nil || p.SVG() == "" {
			t.Error(err)
		}
		for i, one := range s.Pieces {
			for copy := 1; copy <= one.Count && !s.Cloth.Folded; copy++ {
				whole := one.Wide.Max(one.Long)
				if len(one.Allowance) > 0 {
					whole = whole.Add(in("1/2"))
				}
				sewn, parts := comesTo(s, p.Placements, i, copy)
				if sewn != whole {
					t.Errorf("%d parts come to %v, not %v", parts, sewn, whole)
				}
				many += parts - 1
			}
		}
		k := r.IntN(len(p.Placements))
		if err := layout.Verify(s, slices.Delete(slices.Clone(p.Placements), k, k+1)); !errors.Is(err, layout.ErrCount) {
			t.Errorf("one part is missing: %v", err)
		}
	}
	if many < often(20) {
		t.Errorf("%d joins", many)
	}
}

// What cannot be cut so is refused, and so is a lay of other parts.
func TestPartsFaults(t *testing.T) {
	notch := []layout.Notch{{Name: "a"}}
	for _, test := range []struct {
		why   string
		piece layout.Piece
		want  found
	}{
		{"below zero", layout.Piece{Wide: in("9"), Long: in("3"), Parts: -1}, found{"pieces[0].parts", fault.Range}},
		{"too many", layout.Piece{Wide: in("9"), Long: in("3"), Parts: layout.MaxParts + 1}, found{"pieces[0].parts", fault.Range}},
		{"a join of no parts", layout.Piece{Wide: in("9"), Long: in("3"), Join: in("1")}, found{"pieces[0].join", fault.Unused}},
		{"a join below zero", layout.Piece{Wide: in("9"), Long: in("3"), Parts: 2, Join: in("-1")}, found{"pieces[0].join", fault.Sign}},
		{"nothing but joins", layout.Piece{Wide: in("9"), Long: in("3"), Parts: 3, Join: in("4 1/2")}, found{"pieces[0].join", fault.Range}},
		{"an outline", layout.Piece{Outline: outline("0,0 9,0 9,3"), Parts: 2}, found{"pieces[0].parts", fault.Conflict}},
		{"on the fold", layout.Piece{Wide: in("9"), Long: in("3"), Parts: 2, Fold: true}, found{"pieces[0].parts", fault.Conflict}},
		{"with notches", layout.Piece{Wide: in("9"), Long: in("3"), Parts: 2, Notches: notch}, found{"pieces[0].parts", fault.Conflict}},
		{"on the bias", layout.Piece{Wide: in("9"), Long: in("3"), Parts: 2, Turn: layout.Bias}, found{"pieces[0].parts", fault.Conflict}},
		{"too long in all its parts", layout.Piece{Wide: in("90"), Long: in("3"), Parts: 2}, found{"pieces[0]", fault.Range}},
		{"too many in all", layout.Piece{Wide: in("90"), Long: in("3"), Parts: 3, Count: 400}, found{"pieces", fault.Range}},
	} {
		test.piece.Count = max(test.piece.Count, 1)
		s := layout.Spec{Cloth: layout.Cloth{Wide: in("40")}, Pieces: []layout.Piece{test.piece}}
		_, err := s.Solve()
		if got := list(err); len(got) != 1 || got[0] != test.want {
			t.Errorf("%s: %v", test.why, err)
		}
	}

	s := ruffled()
	s.Pieces[1].Parts = 3
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		why    string
		change func(lay []layout.Placement)
		want   []found
	}{
		{"another part", func(lay []layout.Placement) { lay[3].Part = 1 }, []found{{"placements[3].copy", fault.Twice}, {"pieces[1].count", layout.ErrCount}}},
		{"no part", func(lay []layout.Placement) { lay[3].Part = 4 }, []found{{"placements[3].part", fault.Range}}},
		{"whole", func(lay []layout.Placement) { lay[3].Part, lay[3].Of = 0, 0 }, []found{{"placements[3].of", fault.Conflict}}},
		{"more parts than may be", func(lay []layout.Placement) { lay[2].Of = 7 }, []found{{"placements[2].of", fault.Range}}},
		{"one part", func(lay []layout.Placement) { lay[2].Of = 1 }, []found{{"placements[2].of", fault.Range}}},
		{"a part of a bodice", func(lay []layout.Placement) { lay[0].Of, lay[0].Part = 2, 1 }, []found{{"placements[0].of", fault.Range}}},
		{"a copy too many", func(lay []layout.Placement) { lay[7].Copy = math.MaxInt }, []found{{"placements[7].copy", fault.Range}}},
		{"no such piece", func(lay []layout.Placement) { lay[7].Piece = 5 }, []found{{"placements[7].piece", fault.Unknown}, {"pieces[1].count", layout.ErrCount}}},
		{"one on the other", func(lay []layout.Placement) { lay[3].X, lay[3].Y = lay[2].X, lay[2].Y }, []found{{"placements[3]", layout.ErrOverlap}}},
	} {
		lay := slices.Clone(p.Placements)
		test.change(lay)
		err := layout.Verify(s, lay)
		if diff := cmp.Diff(test.want, list(err), sameError); diff != "" {
			t.Errorf("%s: %s", test.why, diff)
		}
		if test.why == "one on the other" && !strings.Contains(err.Error(), "ruffle 1, part 2 of 3") {
			t.Error(err)
		}
	}
}

// A piece without a name is called by its number, and one without a join has none
// to measure.
func TestPartsPlain(t *testing.T) {
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("40")}, Pieces: []layout.Piece{{Wide: in("60"), Long: in("3"), Count: 1, Parts: 2}}}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	sheet := p.Sheet()
	if err := sheet.Check(); err != nil {
		t.Error(err)
	}
	last := sheet.Steps[len(sheet.Steps)-1]
	if !strings.Contains(last.Do, "the parts of piece 1") || !last.At.IsZero() || last.Check.Want.Text() != "60 in" {
		t.Errorf("%+v", last)
	}
}

// Stopped while parts are tried, the best lay so far is returned.
func TestPartsStopped(t *testing.T) {
	s := ruffled()
	s.Cloth.Folded, s.Pieces[1].Parts = true, 20
	ctx, cancel := context.WithCancel(context.Background())
	defer cancel()
	p, err := s.PlanWatched(ctx, func(layout.Progress) { cancel() })
	if err != nil || !p.Stopped || layout.Verify(s, p.Placements) != nil {
		t.Errorf("%v, stopped %v", err, p.Stopped)
	}
	if _, err := s.Plan(ctx); !errors.Is(err, context.Canceled) {
		t.Error(err)
	}
}

// Parts thrown anywhere: Verify finds the same as where each part is a piece by
// itself, as large as the sum by hand says.
func FuzzParts(f *testing.F) {
	for seed := range uint64(40) {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, seed uint64) {
		r := rand.New(rand.NewPCG(seed, 9))
		s := layout.Spec{Cloth: layout.Cloth{Wide: in("20"), Long: in("30")}}
		loose := s
		var lay, other []layout.Placement
		for i := range 1 + r.IntN(3) {
			one := layout.Piece{Name: "strip", Wide: in("1"), Long: in("1").MulInt(6 + r.Int64N(20)), Count: 1 + r.IntN(2), Turn: layout.Turn(r.IntN(3)), Parts: 2 + r.IntN(4), Join: in("1/4").MulInt(r.Int64N(6))}
			of := 2 + r.IntN(one.Parts-1)
			part := one
			part.Long = one.Long.Add(one.Join.MulInt(int64(2 * (of - 1)))).DivInt(int64(of))
			part.Count, part.Parts, part.Join = one.Count*of, 0, units.Length{}
			s.Pieces, loose.Pieces = append(s.Pieces, one), append(loose.Pieces, part)
			for n := range part.Count {
				at := layout.Placement{Piece: i, Copy: n + 1, X: in("1/2").MulInt(r.Int64N(40)), Y: in("1/2").MulInt(r.Int64N(60)), Across: r.IntN(4) == 0}
				if r.IntN(20) == 0 {
					continue
				}
				other = append(other, at)
				at.Copy, at.Part, at.Of = n/of+1, n%of+1, of
				lay = append(lay, at)
			}
		}
		got, want := list(layout.Verify(s, lay)), list(layout.Verify(loose, other))
		if len(lay) > 0 && slices.ContainsFunc(s.Pieces, func(p layout.Piece) bool { return !p.Join.Less(p.Long.DivInt(2)) }) {
			return // refused before any lay is looked at
		}
		for i := range s.Pieces { // of a piece that is not there at all it is not known how it was cut
			if !slices.ContainsFunc(lay, func(at layout.Placement) bool { return at.Piece == i }) {
				return
			}
		}
		if diff := cmp.Diff(want, got, sameError); diff != "" {
			t.Errorf("%s\n%+v\n%+v", diff, s, lay)
		}
	})
}
