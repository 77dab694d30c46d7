package gather_test

import (
	"errors"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/units/ticket"
)

// frill is the ruffle of a shirt's collar: three pieces, folded, ends turned in.
func frill() gather.Ruffle {
	return gather.Ruffle{
		Strip: gather.Strip{
			Strip: strip.Spec{Pieces: 3, Each: in("12 1/4"), Allowance: units.Give(in("1/2")), Ends: in("1/2")},
			Edge:  in("15 3/4"),
		},
		Depth: in("1 1/4"), Folded: true, Turn: rad(1, 2),
	}
}

func rad(n, d int64) units.Angle { return units.Radians(units.RatioOf(n, d)) }

func cuff() gather.Cuff {
	return gather.Cuff{
		Wrist: in("6 3/4"), Ease: in("1 1/4"), Lap: units.Give(in("1")), Depth: in("2 1/4"), Sleeve: in("17 1/8"), Setting: gather.Flush,
	}
}

// check asks of a plan that what is solved plans to the same again, that its working
// comes out, and that no line of its sheet is wider than the page.
func check(t *testing.T, why string, p noun.Plan) {
	t.Helper()
	nountest.Solved(t, p)
	sheet := p.Sheet()
	if err := sheet.Check(); err != nil {
		t.Errorf("%s: %v", why, err)
	}
	for _, c := range sheet.Sources {
		if _, ok := source.Lookup(c.ID); !ok && (c.ID != "" || c.Known == source.Read) {
			t.Errorf("%s: no such source: %+v", why, c)
		}
	}
	for line := range strings.SplitSeq(sheet.Text(units.Notation{}, units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 10)}), "\n") {
		if utf8.RuneCountInString(line) > ticket.Columns {
			t.Errorf("%s: %d columns: %s", why, utf8.RuneCountInString(line), line)
		}
	}
}

func TestStripSolve(t *testing.T) {
	pieces := strip.Spec{Pieces: 3, Each: in("12 1/4"), Allowance: units.Give(in("1/2")), Ends: in("1/2")}
	two := units.RatioOf(2, 1)
	for _, test := range []struct {
		why     string
		spec    gather.Strip
		n       int
		each    units.Length
		edge    units.Length
		full    units.Ratio // what it has
		asked   units.Ratio // what the solved spec says
		surplus units.Length
	}{
		{"strip and edge", gather.Strip{Strip: pieces, Edge: in("15 3/4")}, 3, in("12 1/4"), in("15 3/4"), units.RatioOf(15, 7), units.RatioOf(15, 7), in("0")},
		{"strip and fullness", gather.Strip{Strip: pieces, Fullness: two}, 3, in("12 1/4"), in("16 7/8"), two, two, in("0")},
		{"pieces, edge and fullness", gather.Strip{Strip: strip.Spec{Pieces: 3, Allowance: units.Give(in("1/2")), Ends: in("1/2")}, Edge: in("15 3/4"), Fullness: two},
			3, in("11 1/2"), in("15 3/4"), two, two, in("0")},
		{"each, edge and fullness: up", gather.Strip{Strip: strip.Spec{Each: in("12 1/4"), Allowance: units.Give(in("1/2")), Ends: in("1/2")}, Edge: in("15 3/4"), Fullness: two},
			3, in("12 1/4"), in("15 3/4"), units.RatioOf(15, 7), two, in("2 1/4")},
		{"all of them agree", gather.Strip{Strip: pieces, Edge: in("15 3/4"), Fullness: units.RatioOf(15, 7)}, 3, in("12 1/4"), in("15 3/4"), units.RatioOf(15, 7), units.RatioOf(15, 7), in("0")},
		{"a least makes the fullness a least", gather.Strip{Strip: strip.Spec{Pieces: 3, Each: in("12 1/4"), Allowance: units.Give(in("1/2")), Ends: in("1/2"), Least: in("31 1/2")}, Edge: in("15 3/4"), Fullness: two},
			3, in("12 1/4"), in("15 3/4"), units.RatioOf(15, 7), two, in("2 1/4")},
		{"a least and pieces make the strip", gather.Strip{Strip: strip.Spec{Pieces: 2, Allowance: units.Give(in("0")), Least: in("30")}, Edge: in("20")}, 2, in("15"), in("20"), units.RatioOf(3, 2), units.RatioOf(3, 2), in("0")},
		{"a least, each and fullness make the edge", gather.Strip{Strip: strip.Spec{Each: in("20"), Allowance: units.Give(in("0")), Least: in("30")}, Fullness: two}, 2, in("20"), in("20"), two, two, in("0")},
		{"a ring", gather.Strip{Strip: strip.Spec{Pieces: 2, Each: in("21"), Allowance: units.Give(in("1/2")), Ring: true}, Edge: in("20")}, 2, in("21"), in("20"), two, two, in("0")},
		{"no fullness at all", gather.Strip{Strip: strip.Spec{Pieces: 1, Each: in("9")}, Edge: in("9")}, 1, in("9"), in("9"), units.RatioOf(1, 1), units.RatioOf(1, 1), in("0")},
	} {
		p, err := test.spec.Plan()
		if err != nil {
			t.Errorf("%s: %v", test.why, err)
			continue
		}
		s := p.Spec
		if s.Strip.Pieces != test.n || s.Strip.Each != test.each || s.Edge != test.edge || p.Edge != test.edge ||
			p.Fullness != test.full || s.Fullness != test.asked || p.Surplus != test.surplus {
			t.Errorf("%s: %+v", test.why, p)
		}
		check(t, test.why, p)
	}
}

func TestFrill(t *testing.T) {
	p, err := frill().Plan()
	if err != nil {
		t.Fatal(err)
	}
	if strings.Join(p.Assumed, " ") != "tape allowance inside rows parts" {
		t.Errorf("assumed %q", p.Assumed)
	}
	marks := []gather.Mark{{in("8 7/16"), in("3 15/16")}, {in("16 7/8"), in("7 7/8")}, {in("25 5/16"), in("11 13/16")}}
	if !slices.Equal(p.Marks, marks) {
		t.Errorf("marks at %v, want %v", p.Marks, marks)
	}
	joins := []gather.Mark{{in("11 1/4"), in("5 1/4")}, {in("22 1/2"), in("10 1/2")}}
	if !slices.Equal(p.Joins, joins) {
		t.Errorf("joins at %v, want %v", p.Joins, joins)
	}
	if p.Clear != in("2 13/16") || p.Crowded {
		t.Errorf("clear %v, crowded %v", p.Clear, p.Crowded)
	}
}

// TestTurn goes round edges that bulge, that are hollow and that have corners.
func TestTurn(t *testing.T) {
	for _, test := range []struct {
		why     string
		turn    units.Angle
		corners int
		want    string
		exact   bool
		full    string // fullness at the free edge, down to three decimals
	}{
		{"straight", units.Angle{}, 0, "15 3/4 in", true, "2.142"},
		{"bulging", rad(1, 2), 0, "16 3/8 in", true, "2.061"},
		{"hollow", rad(-1, 2), 0, "15 1/8 in", true, "2.231"},
		{"a square corner: 15 3/4 + 1 1/4 x pi / 2", units.Angle{}, 1, "17.71349540849 in", false, "1.905"},
		{"an inward corner", units.Angle{}, -1, "13.78650459151 in", false, "2.448"},
		{"a corner and a hollow", rad(-1, 1), 2, "18.42699081699 in", false, "1.831"},
	} {
		r := frill()
		r.Turn, r.Corners = test.turn, test.corners
		p, err := r.Plan()
		if err != nil {
			t.Errorf("%s: %v", test.why, err)
			continue
		}
		off := p.Outer.Sub(units.Exactly(units.MustParse(test.want)))
		lo, hi := off.Bounds()
		if slack := units.Millimetre.Frac(1, 1000); slack.Less(lo.Abs()) || slack.Less(hi.Abs()) {
			t.Errorf("%s: free edge %v, want %v", test.why, p.Outer, test.want)
		}
		if _, exact := p.Outer.Exact(); exact != test.exact {
			t.Errorf("%s: exact %v", test.why, exact)
		}
		least, most := p.OuterFullness.Bounds()
		least, _ = least.Round(units.RatioOf(1, 1000), units.Down)
		most, _ = most.Round(units.RatioOf(1, 1000), units.Down)
		want, err := units.ParseRatio(test.full)
		if err != nil || least != want || most != want {
			t.Errorf("%s: fullness %v, want %v", test.why, p.OuterFullness, want)
		}
		check(t, test.why, p)
	}
}

// TestAlmostNothing is a hollow edge that leaves a free edge of some 10^-14 in:
// it takes a finer pi to tell it from none.
func TestAlmostNothing(t *testing.T) {
	r := frill()
	r.Depth, r.Turn, r.Corners = in("2"), units.Angle{}, -2
	r.Strip.Edge = in("6.28318530717959") // 2 pi is 6.283185307179586...
	p, err := r.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if _, hi := p.Outer.Bounds(); hi.Sign() <= 0 {
		t.Errorf("free edge %v", p.Outer)
	}
	if lo, _ := p.OuterFullness.Bounds(); lo.Less(units.RatioOf(1e15, 1)) {
		t.Errorf("fullness %v", p.OuterFullness)
	}
	r.Strip.Edge = in("6.28318530717958")
	if _, err := r.Plan(); !errors.Is(err, gather.ErrCurve) {
		t.Errorf("just too hollow: %v", err)
	}
}

// TestFlatRing is a ring that lies flat: whatever its shape it turns by a whole
// circle, four square corners, and a depth adds 2 pi times itself.
func TestFlatRing(t *testing.T) {
	r := gather.Ruffle{
		Strip: gather.Strip{Strip: strip.Spec{Pieces: 4, Each: in("41"), Allowance: units.Give(in("1/2")), Ring: true}, Edge: in("80")},
		Depth: in("4"), Hem: in("1/2"),
		Corners: 4,
	}
	p, err := r.Plan()
	if err != nil {
		t.Fatal(err)
	}
	want := units.Pi().Of(in("8")).Plus(in("80"))
	if off, err := p.Outer.Sub(want).Refine(units.Millimetre.Frac(1, 1000)); err != nil || units.Millimetre.Frac(2, 1000).Less(off.Mid().Abs()) {
		t.Errorf("free edge %v, want %v (%v)", p.Outer, want, err)
	}
	// Four pieces and four parts: every join but the closing one is on a mark.
	if !p.Crowded || !p.Clear.IsZero() {
		t.Errorf("clear %v, crowded %v", p.Clear, p.Crowded)
	}
	if n := len(p.Sheet().Cautions); n != 3 {
		t.Errorf("%d cautions, want one for the joins", n)
	}
	r.Parts = 3
	if p, err = r.Plan(); err != nil || p.Crowded || p.Clear != in("13 1/3") {
		t.Errorf("three parts: clear %v, crowded %v, %v", p.Clear, p.Crowded, err)
	}
	r.Parts = 1
	if p, err = r.Plan(); err != nil || p.Crowded || !p.Clear.IsZero() {
		t.Errorf("one part: clear %v, crowded %v, %v", p.Clear, p.Crowded, err)
	}
	r.Depth, r.Strip.Edge = in("40"), in("120")
	if p, err = r.Plan(); err != nil || len(p.Sheet().Cautions) != 3 {
		t.Errorf("a free edge longer than the strip wants a caution (%v)", err)
	}
}

func TestDepth(t *testing.T) {
	for _, test := range []struct {
		why                    string
		cut, depth, allow, hem string
		folded                 bool
		wantCut, wantDepth     string
		wantAllow              string
		assumed                string
	}{
		{"from depth", "0", "3", "1/2", "1", false, "4 1/2", "3", "1/2", "inside rows parts"},
		{"from depth, folded", "0", "1 1/4", "5/8", "0", true, "3 3/4", "1 1/4", "5/8", "inside rows parts"},
		{"from cut", "4 1/2", "0", "1/2", "1", false, "4 1/2", "3", "1/2", "inside rows parts"},
		{"from cut, folded, with the default", "3 3/4", "0", "0", "0", true, "3 3/4", "1 1/4", "5/8", "allowance inside rows parts"},
		{"the allowance follows before a default", "5", "2", "0", "0", true, "5", "2", "1/2", "inside rows parts"},
		{"all agree", "4", "3", "1/2", "1/2", false, "4", "3", "1/2", "inside rows parts"},
	} {
		r := frill()
		r.Cut, r.Depth, r.Allowance, r.Hem, r.Folded = in(test.cut), in(test.depth), in(test.allow), in(test.hem), test.folded
		p, err := r.Plan()
		if err != nil {
			t.Errorf("%s: %v", test.why, err)
			continue
		}
		s := p.Spec
		if p.CutDepth != in(test.wantCut) || s.Cut != p.CutDepth || s.Depth != in(test.wantDepth) || s.Allowance != in(test.wantAllow) || strings.Join(p.Assumed, " ") != "tape "+test.assumed {
			t.Errorf("%s: cut %v, depth %v, allowance %v, assumed %q", test.why, s.Cut, s.Depth, s.Allowance, p.Assumed)
		}
		check(t, test.why, p)
	}
}

// TestHeading: a heading stands above the stitching in place of an allowance, and one
// as deep as the ruffle is double.
func TestHeading(t *testing.T) {
	r := frill()
	r.Folded, r.Heading, r.Top, r.Hem, r.Width = false, in("1 1/4"), in("1/4"), in("1/4"), in("12 1/2")
	for rows, want := range [][3]string{{"1 1/2", "0", "0"}, {"1 3/8", "1 5/8", "0"}, {"1 3/8", "1 5/8", "1 1/8"}} {
		r.Rows = rows + 1
		p, err := r.Plan()
		if err != nil || p.CutDepth != in("3") || [3]units.Length{p.Row, p.SecondRow, p.ThirdRow} != [3]units.Length{in(want[0]), in(want[1]), in(want[2])} {
			t.Errorf("%d rows: %v deep, rows at %v, %v and %v, %v", r.Rows, p.CutDepth, p.Row, p.SecondRow, p.ThirdRow, err)
			continue
		}
		// Three pieces of 12 1/4 in, 3 in deep: three rows across, or four side by side along.
		if p.Across != in("9") || p.Along != in("12 1/4") || p.Spec.Allowance != in("0") {
			t.Errorf("%v across, %v along, allowance %v", p.Across, p.Along, p.Spec.Allowance)
		}
		if sheet := p.Sheet(); !strings.Contains(sheet.Title, "double heading") {
			t.Error(sheet.Title)
		}
		check(t, "a heading", p)
	}
}

func TestCuffSolve(t *testing.T) {
	for _, test := range []struct {
		why        string
		change     func(*gather.Cuff)
		girth      [4]string // wrist, ease, lap, finished
		onto, past string
		fullness   units.Ratio
	}{
		{"finished follows", func(*gather.Cuff) {}, [4]string{"6 3/4", "1 1/4", "1", "9"}, "9", "1/8", units.RatioOf(137, 72)},
		{"wrist follows", func(c *gather.Cuff) { c.Finished, c.Wrist = in("9"), in("0") }, [4]string{"6 3/4", "1 1/4", "1", "9"}, "9", "1/8", units.RatioOf(137, 72)},
		{"ease follows", func(c *gather.Cuff) { c.Finished, c.Ease = in("9"), in("0") }, [4]string{"6 3/4", "1 1/4", "1", "9"}, "9", "1/8", units.RatioOf(137, 72)},
		{"lap follows", func(c *gather.Cuff) { c.Finished, c.Lap = in("9"), units.Given[units.Length]{} }, [4]string{"6 3/4", "1 1/4", "1", "9"}, "9", "1/8", units.RatioOf(137, 72)},
		{"lap follows an extended end", func(c *gather.Cuff) {
			c.Finished, c.Lap, c.Setting = in("9"), units.Given[units.Length]{}, gather.Extended
		}, [4]string{"6 3/4", "1 1/4", "1", "9"}, "8", "1/8", units.RatioOf(137, 64)},
		{"all agree", func(c *gather.Cuff) { c.Finished = in("9") }, [4]string{"6 3/4", "1 1/4", "1", "9"}, "9", "1/8", units.RatioOf(137, 72)},
		{"finished alone", func(c *gather.Cuff) {
			c.Finished, c.Wrist, c.Ease, c.Lap = in("9"), in("0"), in("0"), units.Given[units.Length]{}
		}, [4]string{"0", "0", "0", "9"}, "9", "1/8", units.RatioOf(137, 72)},
		{"finished and lap", func(c *gather.Cuff) {
			c.Finished, c.Wrist, c.Ease, c.Setting = in("9"), in("0"), in("0"), gather.Extended
		}, [4]string{"0", "0", "1", "9"}, "8", "1/8", units.RatioOf(137, 64)},
		{"ends that only meet", func(c *gather.Cuff) { c.Lap = units.Give(in("0")) }, [4]string{"6 3/4", "1 1/4", "0", "8"}, "8", "1/8", units.RatioOf(137, 64)},
		{"felled by hand", func(c *gather.Cuff) { c.Turned = in("5/8") }, [4]string{"6 3/4", "1 1/4", "1", "9"}, "9", "0", units.RatioOf(137, 72)},
		{"kept flat at the slit", func(c *gather.Cuff) { c.Flat = in("1/2") }, [4]string{"6 3/4", "1 1/4", "1", "9"}, "9", "1/8", units.RatioOf(129, 64)},
	} {
		c := cuff()
		test.change(&c)
		p, err := c.Plan()
		if err != nil {
			t.Errorf("%s: %v", test.why, err)
			continue
		}
		c = p.Spec
		if got := [4]units.Length{c.Wrist, c.Ease, c.Lap.Or(units.Length{}), c.Finished}; got != [4]units.Length{in(test.girth[0]), in(test.girth[1]), in(test.girth[2]), in(test.girth[3])} {
			t.Errorf("%s: %v", test.why, got)
		}
		if p.Onto != in(test.onto) || p.Past != in(test.past) || p.Fullness != test.fullness {
			t.Errorf("%s: onto %v, past %v, fullness %v", test.why, p.Onto, p.Past, p.Fullness)
		}
		check(t, test.why, p)
	}
}

// TestCuffQuarters divides what is gathered, after what stays flat.
func TestCuffQuarters(t *testing.T) {
	c := cuff()
	c.Flat = in("1/2")
	p, err := c.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if strings.Join(p.Assumed, " ") != "tape allowance turned inside parts" {
		t.Errorf("assumed %q", p.Assumed)
	}
	want := []gather.Mark{{in("4 17/32"), in("2 1/2")}, {in("8 9/16"), in("4 1/2")}, {in("12 19/32"), in("6 1/2")}}
	if !slices.Equal(p.Marks, want) {
		t.Errorf("marks at %v, want %v", p.Marks, want)
	}
}
