package layout_test

import (
	"context"
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// trial is a Spec of a few pieces with everything that the trade asks of a cloth,
// wrong checks what the trade asks of a lay, every corner as a fraction of an
// Whatever the trade asks, a lay that is found keeps it, and the same lay nudged
// A flaw may be touched; a hair nearer and the piece is on it.
func TestFlaw(t *testing.T) {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("20"), Flaws: []layout.Flaw{{X: in("5"), Y: in("3"), Wide: in("2"), Long: in("2")}}},
		Pieces: []layout.Piece{{Name: "cuff", Wide: in("5"), Long: in("10"), Count: 1}}}
	at := func(x string) error { return layout.Verify(s, []layout.Placement{{Copy: 1, X: in(x)}}) }
	if err := at("0"); err != nil {
		t.Error(err)
	}
	if err := at("1/1000000000"); !errors.Is(err, layout.ErrFlaw) || !strings.Contains(err.Error(), "cloth.flaws[0]") {
		t.Error(err)
	}
	if err := at("7"); err != nil {
		t.Error(err)
	}
	s.Cloth.Folded, s.Cloth.Wide = true, in("24") // the fold is at 12: the flaw is 5 to 7 from it
	if err := at("7"); err != nil {
		t.Error(err)
	}
	if err := at("6.9999"); !errors.Is(err, layout.ErrFlaw) {
		t.Error(err)
	}
}

// One pattern works on both cloths: folded, its half lies on the fold; open, the
// whole is laid. Pairs come free from one placement.
func TestFold(t *testing.T) {
	s := layout.Spec{Work: 3, Cloth: layout.Cloth{Wide: in("40"), Folded: true}, Pieces: []layout.Piece{
		{Name: "back", Outline: outline("0,0 10,0 8,20 0,18"), Count: 1, Fold: true, Turn: layout.Half},
		{Name: "front", Outline: outline("0,0 9,0 9,15 2,20"), Count: 2, Pair: true},
		{Name: "collar", Wide: in("4"), Long: in("10"), Count: 3},
		{Name: "patch", Outline: outline("0,0 4,0 0,3"), Count: 1},
	}}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if len(p.Placements) != 1+1+2+1 || !p.Placements[0].X.IsZero() {
		t.Errorf("%+v", p.Placements)
	}
	if diff := cmp.Diff([]int{0, 0, 1, 1}, p.Extra); diff != "" {
		t.Error(diff)
	}
	text := p.Sheet().Text()
	for _, want := range []string{"copies 1 and 2", "collar comes out", "patch comes out", "selvedge on selvedge", "its edge on the fold", "layers"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	if svg := p.SVG(); !strings.Contains(svg, ">fold<") {
		t.Error("no fold is drawn")
	}
	// The wrong copies: the mate of one that is cut, and one too few.
	lay := slices.Clone(p.Placements)
	lay = append(lay, layout.Placement{Piece: 1, Copy: 2, X: in("11"), Y: in("100")})
	if err := layout.Verify(s, lay); !errors.Is(err, fault.Twice) {
		t.Error(err)
	}
	if err := layout.Verify(s, p.Placements[1:]); !errors.Is(err, layout.ErrCount) {
		t.Error(err)
	}
	lay = slices.Clone(p.Placements)
	lay[0].Across = true
	if err := layout.Verify(s, lay); !errors.Is(err, layout.ErrFold) || !errors.Is(err, layout.ErrTurn) {
		t.Error(err)
	}

	s.Cloth.Folded = false
	q, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if len(q.Placements) != 7 || q.Extra != nil {
		t.Errorf("%d placements, extra %v", len(q.Placements), q.Extra)
	}
	if n := len(q.Placements[0].Corners(s)); n != 5 {
		t.Errorf("the whole back has %d corners", n)
	}
	if wide, long := q.Placements[0].Size(s); wide != in("20") || long != in("20") {
		t.Errorf("the whole back is %v by %v", wide, long)
	}
	if q.Spec.Area() != p.Spec.Area() {
		t.Errorf("area %v open, %v folded", q.Spec.Area(), p.Spec.Area())
	}
	var whole units.Area
	for i, a := range q.Placements[0].Corners(s) {
		b := q.Placements[0].Corners(s)[(i+1)%5]
		whole = whole.Add(a.X.Times(b.Y)).Sub(b.X.Times(a.Y))
	}
	if want := s.Pieces[0].Area().MulInt(2); whole != want && whole.Neg() != want {
		t.Errorf("twice the area is %v, not %v", whole, want)
	}
	if text := q.Sheet().Text(); !strings.Contains(text, "opened out at its fold edge") {
		t.Error(text)
	}

	s.Cloth.Folded, s.Cloth.Fold = true, in("12")
	one, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if in("12").Less(one.Wide) || !strings.Contains(one.Sheet().Text(), "single layer beside") {
		t.Errorf("wide %v\n%s", one.Wide, one.Sheet().Text())
	}
}

// Cloth that runs one way turns nothing, whatever the pieces may do.
func TestOneWay(t *testing.T) {
	s := doublet()
	s.Pieces[1].Count, s.Seed = 7, 11
	s.Cloth.Long = units.Length{}
	free, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if !slices.ContainsFunc(free.Placements, func(at layout.Placement) bool { return at.Across || at.Half }) {
		t.Fatal("nothing is turned anyway")
	}
	s.Cloth.OneWay = true
	if err := layout.Verify(s, free.Placements); !errors.Is(err, layout.ErrTurn) || !strings.Contains(err.Error(), "one way") {
		t.Error(err)
	}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	for _, at := range p.Placements {
		if at.Across || at.Half {
			t.Errorf("turned: %+v", at)
		}
	}
}

// On the bias: the sides stay as long as they are, to the last step, and the
// angle is less than 45 degrees by what is said.
func TestBias(t *testing.T) {
	binding := layout.Piece{Name: "binding", Wide: in("2"), Long: in("20"), Count: 3, Turn: layout.Bias}
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("36")}, Pieces: []layout.Piece{binding}}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	pts := p.Placements[0].Corners(s)
	square := func(a, b layout.Point) units.Area {
		x, y := b.X.Sub(a.X), b.Y.Sub(a.Y)
		return x.Times(x).Add(y.Times(y))
	}
	if a, b := square(pts[0], pts[1]), square(pts[1], pts[2]); a.Add(b) != in("2").Times(in("2")).Add(in("20").Times(in("20"))) || a != in("2").Times(in("2")) && b != in("2").Times(in("2")) {
		t.Errorf("sides whose squares are %v and %v", a, b)
	}
	sin, cos := binding.Bias()
	if sin.Mul(sin).Add(cos.Mul(cos)) != units.RatioOf(1, 1) || !sin.Less(cos) {
		t.Errorf("sine %v, cosine %v", sin, cos)
	}
	if mark, _, err := binding.OffBias().Round(units.RatioOf(1, 10_000), units.HalfAway); err != nil || mark != units.RatioOf(71, 10_000) {
		t.Errorf("off by %v degrees, %v", mark, err)
	}
	if text := p.Sheet().Text(); !strings.Contains(text, "on the bias") || !strings.Contains(text, "true bias") {
		t.Error(text)
	}
	if !strings.Contains(p.SVG(), "rotate(-45)") && !strings.Contains(p.SVG(), "rotate(45)") {
		t.Error("no grain line on the bias")
	}
	// On folded cloth the lower layer gives strips of the other bias.
	fold := s
	fold.Cloth.Folded, fold.Work = true, 1
	if q, err := fold.Plan(context.Background()); err != nil || len(q.Placements) != 2 || q.Extra[0] != 1 {
		t.Errorf("%v %+v", err, q.Placements)
	}
	// The finer the piece's own grid, the coarser the angle.
	last := sin
	for _, fine := range []int64{1 << 24, 1 << 27, 1 << 30} {
		one := binding
		one.Wide = units.Inch.Of(2).Add(units.Inch.Frac(1, fine))
		if sin, _ := one.Bias(); !sin.Less(last) {
			t.Errorf("1/%d in: sine %v after %v", fine, sin, last)
		} else {
			last = sin
		}
	}
	if sin, _ := (layout.Piece{Wide: units.Inch.Frac(1, 1<<61), Long: in("1")}).Bias(); sin != units.RatioOf(20, 29) {
		t.Error(sin)
	}
}

// Two fronts and a pocket on checks: their notches meet; a step aside they do
// not.
func TestMatch(t *testing.T) {
	waist := func(x, y string) []layout.Notch {
		return []layout.Notch{{Name: "waist", At: layout.Point{X: in(x), Y: in(y)}}}
	}
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("40"), RepeatX: in("3"), RepeatY: in("4")}, Pieces: []layout.Piece{
		{Name: "front", Outline: outline("0,0 9,0 9,15 2,20"), Count: 2, Pair: true, Notches: waist("5", "7")},
		{Name: "pocket", Wide: in("5"), Long: in("5"), Count: 1, Notches: waist("1", "1")},
		{Name: "facing", Wide: in("3"), Long: in("13"), Count: 2},
	}}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if why := wrong(s, p.Placements); why != "" {
		t.Error(why)
	}
	lay := slices.Clone(p.Placements)
	lay[1].Y = lay[1].Y.Add(in("100"))
	if err := layout.Verify(s, lay); err != nil {
		t.Error(err)
	}
	lay[1].Y = lay[1].Y.Add(in("1/1000"))
	if err := layout.Verify(s, lay); !errors.Is(err, layout.ErrMatch) || !strings.Contains(err.Error(), "waist") {
		t.Error(err)
	}
	if !strings.Contains(p.Sheet().Text(), "place of the repeat") || strings.Count(p.SVG(), "<title>waist") != 3 {
		t.Error("neither said nor drawn")
	}
	// Sewn at two notches, which cannot both be matched with the other hand.
	s.Pieces[0].Notches = append(s.Pieces[0].Notches, layout.Notch{Name: "hem", At: layout.Point{X: in("4"), Y: in("1")}})
	if _, err := s.Solve(); !errors.Is(err, fault.Conflict) {
		t.Error(err)
	}
	s.Cloth.RepeatX = in("1")
	if _, err := s.Plan(context.Background()); err != nil {
		t.Error(err)
	}
	// A repeat as wide as the cloth, on which two wide pieces have no places.
	wide := layout.Spec{Cloth: layout.Cloth{Wide: in("40"), RepeatX: in("60")}, Pieces: []layout.Piece{
		{Name: "left", Wide: in("39"), Long: in("5"), Count: 1, Notches: waist("1", "1")},
		{Name: "right", Wide: in("39"), Long: in("5"), Count: 1, Notches: waist("30", "1")},
	}}
	if _, err := wide.Solve(); !errors.Is(err, fault.Conflict) || !strings.Contains(err.Error(), "cloth.repeatX") {
		t.Error(err)
	}
}

// What contradicts itself is refused, all of it at once.
func TestTradeFaults(t *testing.T) {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("40"), Fold: in("1"), RepeatX: in("-1"), RepeatY: in("-1"), Counter: in("-1"),
		Flaws: []layout.Flaw{{X: in("-1"), Y: in("-1")}, {X: in("1"), Outline: outline("0,0 1,1 2,2")}}},
		Pieces: []layout.Piece{
			{Wide: in("4"), Long: in("4"), Count: 2, Pair: true, Fold: true, Notches: []layout.Notch{{}, {Name: "a"}, {Name: "a"}}},
			{Outline: outline("0,0 4,0 4,4"), Count: 1, Fold: true},
			{Wide: in("4"), Long: in("4"), Count: 1, Notches: make([]layout.Notch, layout.MaxNotches+1)},
		}}
	_, err := s.Solve()
	want := []found{
		{"cloth.fold", fault.Unused}, {"cloth.repeatX", fault.Sign}, {"cloth.repeatY", fault.Sign},
		{"cloth.flaws[0].x", fault.Sign}, {"cloth.flaws[0].y", fault.Sign}, {"cloth.flaws[0].wide", fault.Missing}, {"cloth.flaws[0].long", fault.Missing},
		{"cloth.flaws[1].x", fault.Unused}, {"cloth.flaws[1].outline", layout.ErrOutline}, {"cloth.counter", fault.Sign},
		{"pieces[0].pair", fault.Conflict}, {"pieces[0].notches[0].name", fault.Missing}, {"pieces[0].notches[2].name", fault.Twice},
		{"pieces[1].fold", layout.ErrOutline}, {"pieces[2].notches", fault.Range},
	}
	if diff := cmp.Diff(want, list(err), sameError); diff != "" {
		t.Error(diff)
	}
	for _, test := range []struct {
		why   string
		cloth layout.Cloth
		piece layout.Piece
		want  found
	}{
		{"folded past the middle", layout.Cloth{Wide: in("40"), Folded: true, Fold: in("21")}, layout.Piece{Wide: in("1"), Long: in("1"), Count: 1}, found{"cloth.fold", fault.Range}},
		{"no wider than the selvedge", layout.Cloth{Wide: in("40"), Selvedge: in("2"), Folded: true, Fold: in("2")}, layout.Piece{Wide: in("1"), Long: in("1"), Count: 1}, found{"cloth.fold", fault.Range}},
		{"wider than the double cloth", layout.Cloth{Wide: in("40"), Folded: true}, layout.Piece{Wide: in("21"), Long: in("1"), Count: 1}, found{"pieces[0]", fault.Range}},
		{"opened out, wider than the cloth", layout.Cloth{Wide: in("40")}, layout.Piece{Wide: in("21"), Long: in("1"), Count: 1, Fold: true}, found{"pieces[0]", fault.Range}},
		{"on the bias and on the fold", layout.Cloth{Wide: in("40"), Folded: true}, layout.Piece{Wide: in("2"), Long: in("1"), Count: 1, Fold: true, Turn: layout.Bias}, found{"pieces[0].turn", fault.Conflict}},
		{"too many flaws", layout.Cloth{Wide: in("40"), Flaws: make([]layout.Flaw, layout.MaxFlaws+1)}, layout.Piece{Wide: in("2"), Long: in("1"), Count: 1}, found{"cloth.flaws", fault.Range}},
		{"a flaw as far as the moon", layout.Cloth{Wide: in("40"), Flaws: []layout.Flaw{{X: in("1"), Y: in("1" + strings.Repeat("0", 300)), Wide: in("1"), Long: in("1")}}}, layout.Piece{Wide: in("2"), Long: in("1"), Count: 1}, found{"cloth.flaws[0]", layout.ErrGrid}},
		{"a flaw finer than any grid", layout.Cloth{Wide: in("40"), Flaws: []layout.Flaw{{X: units.Inch.Frac(1, 1<<61), Wide: in("1"), Long: in("1")}}}, layout.Piece{Wide: in("2"), Long: in("1"), Count: 1}, found{"cloth.flaws[0]", layout.ErrGrid}},
		{"a repeat finer than any grid", layout.Cloth{Wide: in("40"), RepeatX: units.Inch.Frac(1, 1<<61)}, layout.Piece{Wide: in("2"), Long: in("1"), Count: 1, Notches: []layout.Notch{{Name: "a"}}}, found{"cloth.repeatX", layout.ErrGrid}},
	} {
		_, err := (layout.Spec{Cloth: test.cloth, Pieces: []layout.Piece{test.piece}}).Solve()
		if got := list(err); len(got) == 0 || got[0] != test.want {
			t.Errorf("%s: %v", test.why, err)
		}
	}
}

// What is left, how it is sold, and how it compares.
func TestResults(t *testing.T) {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("36"), Long: in("40"), Counter: in("9")}, Work: 1, Pieces: []layout.Piece{
		{Name: "back", Wide: in("16"), Long: in("20"), Count: 1, Turn: layout.Half}, {Name: "front", Wide: in("8"), Long: in("20"), Count: 2, Pair: true, Turn: layout.Half},
	}}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if p.Used != in("20") || p.Buy != in("27") || !strings.Contains(p.Sheet().Text(), "as the shop cuts it") {
		t.Errorf("used %v, to buy %v", p.Used, p.Buy)
	}
	want := []layout.Rest{{Y: in("20"), Wide: in("36"), Long: in("20")}, {X: in("24"), Wide: in("4"), Long: in("20")}}
	if diff := cmp.Diff(want, p.Leftover, sameLength); diff != "" {
		t.Error(diff)
	}
	widths, err := layout.Widths(context.Background(), s, in("20"), in("36"), in("60"))
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []string{"40", "20", "20"} {
		if widths[i].Used != in(want) {
			t.Errorf("%v: %v", widths[i].Cloth.Wide, widths[i].Used)
		}
	}
	if _, err := layout.Widths(context.Background(), s, in("36"), in("12")); !errors.Is(err, fault.Range) {
		t.Error(err)
	}
	ways, err := layout.Ways(context.Background(), s)
	if err != nil || len(ways) != 4 || !ways[3].Cloth.Folded || !ways[1].Cloth.OneWay || ways[3].Used != in("40") {
		t.Errorf("%v %+v", err, ways)
	}
	s.Pieces[0].Wide = in("20")
	if ways, err := layout.Ways(context.Background(), s); err != nil || len(ways) != 2 {
		t.Errorf("too wide for the double cloth: %v, %d ways", err, len(ways))
	}
	s.Pieces[0].Wide = in("50")
	if ways, err := layout.Ways(context.Background(), s); !errors.Is(err, fault.Range) || ways != nil {
		t.Errorf("%v %v", err, ways)
	}
	done, cancel := context.WithCancel(context.Background())
	cancel()
	s.Pieces[0].Wide = in("16")
	if _, err := layout.Ways(done, s); !errors.Is(err, context.Canceled) {
		t.Error(err)
	}
	s.Cloth.Flaws = []layout.Flaw{{Wide: in("1"), Long: in("1")}}
	if _, err := s.Plan(done); !errors.Is(err, context.Canceled) {
		t.Error(err)
	}
	if rests := (layout.Plan{}).Rests(); rests != nil {
		t.Error(rests)
	}
}

// The watcher sees lays that only get shorter, the last the one returned, and
// changes nothing.
func TestPlanWatched(t *testing.T) {
	for _, flaw := range []bool{false, true} {
		s := layout.Spec{Work: 6, Cloth: layout.Cloth{Wide: in("36")}, Pieces: []layout.Piece{
			{Outline: outline("0,0 4,0 2,4"), Count: 9, Turn: layout.Half}, {Outline: outline("0,0 7,1 5,9 1,6"), Count: 7, Turn: layout.Quarter},
		}}
		if flaw {
			s.Cloth.Flaws = []layout.Flaw{{X: in("3"), Y: in("3"), Wide: in("1"), Long: in("1")}}
		}
		var seen []layout.Progress
		p, err := s.PlanWatched(context.Background(), func(now layout.Progress) { seen = append(seen, now) })
		if err != nil || len(seen) < 2 {
			t.Fatal(err, len(seen))
		}
		for i, now := range seen[1:] {
			if seen[i].Lay.Less(now.Lay) || now.Density.Less(seen[i].Density) {
				t.Errorf("%v after %v", now, seen[i])
			}
		}
		if last := seen[len(seen)-1]; last.Lay != p.Lay || last.Density != p.Density || last.Work != s.Work {
			t.Errorf("%+v at last, lay %v", last, p.Lay)
		}
		again, err := s.PlanWatched(context.Background(), nil)
		if diff := cmp.Diff(p, again, sameLength, sameRatio); diff != "" || err != nil {
			t.Error(err, diff)
		}
	}
}

// What is not checked yet is asked all the same: nothing panics.
func TestUnchecked(t *testing.T) {
	bad := []layout.Piece{
		{}, {Fold: true}, {Outline: outline("1,1")}, {Outline: outline("1,1 2,2"), Fold: true, Turn: layout.Bias}, {Outline: outline("0,0 1,1 0,2 1,3 0,4"), Fold: true},
		{Outline: outline("0,0 0,0 0,0"), Allowance: []units.Length{in("1")}}, {Outline: outline("0,0 4,0 0,0 4,0"), Allowance: []units.Length{in("1")}},
		{Allowance: make([]units.Length, 3)}, {Outline: outline("0,0 4,0 0,4"), Allowance: []units.Length{in("-1")}}, {Turn: 77, Count: -5, Pair: true},
		{Wide: units.Inch.Frac(1, 1<<61), Long: in("-1"), Turn: layout.Bias, Notches: make([]layout.Notch, 2)},
		{Outline: []layout.Point{{X: in("1" + strings.Repeat("0", 300))}, {Y: in("1")}, {}}, Turn: layout.Bias, Allowance: []units.Length{in("1" + strings.Repeat("0", 300))}},
	}
	for _, folded := range []bool{false, true} {
		s := layout.Spec{Cloth: layout.Cloth{Wide: in("-3"), Folded: folded, Fold: in("-1"), OneWay: folded, Flaws: []layout.Flaw{{}, {Outline: outline("1,1")}}, RepeatX: in("-1"), Counter: in("-2")}, Pieces: bad}
		p := layout.Plan{Spec: s}
		for i := range bad {
			for copy := -1; copy < 3; copy++ {
				at := layout.Placement{Piece: i, Copy: copy, Across: copy == 1, Half: copy == 2}
				p.Placements = append(p.Placements, at)
				at.Size(s)
				at.Copies(s)
				at.Notches(s)
				if at.Corners(s) == nil {
					t.Errorf("no corners of %d", i)
				}
			}
			bad[i].Area()
			bad[i].Bias()
			bad[i].OffBias()
		}
		none := layout.Placement{Piece: -1}
		if a, b := none.Copies(s); a != 0 || b != 0 || none.Notches(s) != nil {
			t.Error("copies of no piece")
		}
		p.Placements = append(p.Placements, none)
		p.SVG()
		p.Rests()
		if p.Sheet().Text() == "" {
			t.Error("no sheet")
		}
		if layout.Verify(s, p.Placements) == nil {
			t.Error("good")
		}
	}
}
