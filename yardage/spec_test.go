package yardage_test

import (
	"errors"
	"slices"
	"testing"

	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/source"
	"example.com/clothyard/yardage"
)

var in = units.MustParse

func pct(n int64) units.Ratio { return units.RatioOf(n, 100) }

func money(t testing.TB, s string) decimal.Decimal {
	t.Helper()
	d, err := decimal.NewFromString(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

func TestSwatchSolvesEachOfThree(t *testing.T) {
	want := yardage.Swatch{Before: in("20 in"), After: in("17 in"), Shrink: pct(15)}
	for _, give := range []yardage.Swatch{
		{Before: in("20 in"), After: in("17 in")},
		{Before: in("20 in"), Shrink: pct(15)},
		{After: in("17 in"), Shrink: pct(15)},
		want,
	} {
		gotPlan, err := give.Plan()
		got := gotPlan.Spec
		if err != nil || got != want {
			t.Errorf("%v: %v, %v", give, got, err)
		}
	}
	still, err := yardage.Swatch{Before: in("10 in"), After: in("10 in")}.Plan()
	if err != nil || !still.Spec.Shrink.IsZero() || !still.Lost.IsZero() {
		t.Errorf("a swatch that does not shrink: %v, %v", still, err)
	}
}

func TestPanelsSolveEachOfThree(t *testing.T) {
	base := yardage.Panels{Width: in("54 in"), Seam: units.Give(in("1/2 in")), Sides: in("2 in"), Drop: in("80 in")}
	flat := in("156 in") // 3 x 54 - 2 x 1 - 2 x 2
	a := base
	a.Cover, a.Fullness = in("65 in"), units.RatioOf(9, 4)
	p, err := a.Plan()
	if err != nil || p.Spec.Widths != 3 || p.Flat != flat || p.Joins != 2 || p.Made != flat.Div(in("65 in")) {
		t.Errorf("widths: %+v, %v", p, err)
	}
	b := base
	b.Cover, b.Widths = in("65 in"), 3
	if sPlan, err := b.Plan(); err != nil || sPlan.Spec.Fullness != p.Made {
		t.Errorf("fullness: %v, %v", sPlan.Spec, err)
	}
	c := base
	c.Widths, c.Fullness = 3, units.RatioOf(2, 1)
	if sPlan, err := c.Plan(); err != nil || sPlan.Spec.Cover != in("78 in") {
		t.Errorf("cover: %v, %v", sPlan.Spec, err)
	}
	d := a
	d.Widths = 4 // more than is needed agrees
	if s, err := d.Plan(); err != nil || s.Length != in("320 in") {
		t.Errorf("more widths: %v, %v", s, err)
	}
	d.Widths = 2
	if _, err := d.Plan(); !errors.Is(err, fault.Conflict) {
		t.Errorf("too few widths: %v", err)
	}
	b.Widths = 1
	if _, err := b.Plan(); !errors.Is(err, fault.Conflict) {
		t.Errorf("widths that do not cover: %v", err)
	}
	e := base
	e.Widths = 1
	if q, err := e.Plan(); err != nil || q.Joins != 0 || !q.Made.IsZero() || q.Flat != in("50 in") {
		t.Errorf("one width: %+v, %v", q, err)
	}
}

func TestHalfDropNeedsHalfARepeatOnlyWhereTheWasteIsLess(t *testing.T) {
	s := yardage.Panels{Widths: 3, Width: in("54 in"), Drop: in("95 in"), Repeat: in("24 in"), HalfDrop: true, Starts: 1}
	for _, c := range []struct {
		drop, extra string
		widths      int
		why         string
	}{
		{"95 in", "36 in", 3, "1 in is wasted: half a repeat and the start"},
		{"84 in", "24 in", 3, "exactly half is wasted: the start alone"},
		{"95 in", "24 in", 1, "one width has no neighbour to step down to"},
	} {
		s.Drop, s.Widths = in(c.drop), c.widths
		if p, err := s.Plan(); err != nil || p.Extra != in(c.extra) {
			t.Errorf("%s: %v, %v", c.why, p.Extra, err)
		}
	}
}

// One favourable fact more never makes the verdict worse.
func TestRemnantFavourableFacts(t *testing.T) {
	have := yardage.Remnant{Have: in("3 yd"), HaveWidth: in("45 in")}
	asked, lay := have, have
	asked.Asked, asked.AskedWidth = in("3 yd"), in("45 in")
	lay.Need = in("80 in")
	both := asked
	both.Need = lay.Need
	fits, all := lay, both
	fits.NeedWidth, all.NeedWidth = in("45 in"), in("45 in")
	for _, c := range []struct {
		name string
		s    yardage.Remnant
		want yardage.Verdict
	}{
		{"nothing known", have, yardage.LayItOut},
		{"as asked", asked, yardage.AsAsked},
		{"a lay short enough", lay, yardage.LayItOut},
		{"as asked, and a lay short enough", both, yardage.AsAsked},
		{"a lay that goes on it", fits, yardage.Fits},
		{"as asked, and a lay that goes on it", all, yardage.Fits},
	} {
		if p, err := c.s.Plan(); err != nil || p.Verdict != c.want {
			t.Errorf("%s: %v, %v, want %v", c.name, p.Verdict, err, c.want)
		}
	}
}

func TestRemnantVerdicts(t *testing.T) {
	for _, c := range []struct {
		s    yardage.Remnant
		want yardage.Verdict
		why  string
	}{
		{yardage.Remnant{Have: in("2 yd"), HaveWidth: in("45 in")}, yardage.LayItOut, "nothing is known"},
		{yardage.Remnant{Have: in("3 yd"), HaveWidth: in("45 in"), Asked: in("3 yd"), AskedWidth: in("45 in")}, yardage.AsAsked, "just what is asked"},
		{yardage.Remnant{Have: in("3 yd"), HaveWidth: in("45 in"), Asked: in("3 yd")}, yardage.LayItOut, "the width asked on is not known"},
		{yardage.Remnant{Have: in("9 yd"), HaveWidth: in("44 in"), Asked: in("3 yd"), AskedWidth: in("45 in")}, yardage.LayItOut, "narrower: area would say yes"},
		{yardage.Remnant{Have: in("2 yd"), HaveWidth: in("90 in"), Asked: in("3 yd"), AskedWidth: in("45 in")}, yardage.LayItOut, "shorter: area would say yes"},
		{yardage.Remnant{Have: in("2 yd"), HaveWidth: in("45 in"), Need: in("72 in"), NeedWidth: in("45 in")}, yardage.Fits, "to the thread"},
		{yardage.Remnant{Have: in("2 yd"), HaveWidth: in("45 in"), Need: in("72 in")}, yardage.LayItOut, "the width of the lay is not known"},
		{yardage.Remnant{Have: in("2 yd"), HaveWidth: in("45 in"), Need: in("72 in"), Ends: in("1/16 in")}, yardage.TooLong, "the ends are lost"},
		{yardage.Remnant{Have: in("2 yd"), HaveWidth: in("45 in"), Need: in("70 in"), NeedWidth: in("44 in"), Selvedge: in("5/8 in")}, yardage.TooWide, "the selvedges are lost"},
	} {
		p, err := c.s.Plan()
		if err != nil || p.Verdict != c.want {
			t.Errorf("%s: %v, %v, want %v", c.why, p.Verdict, err, c.want)
		}
	}
}

func TestWidthColumns(t *testing.T) {
	for _, c := range []struct {
		from, to string
		grid     bool
		known    source.Known
		why      string
	}{
		{"45 in", "60 in", true, source.Read, "headings"},
		{"44 1/2 in", "59 in", true, source.Read, "between the ends of a heading"},
		{"115 cm", "150 cm", true, source.Memory, "150 cm lies in 58-60 itself, 115 cm is paired from memory"},
		{"112 cm", "60 in", true, source.Read, "paired with 44 in in a source that was read"},
		{"45 in", "140 cm", false, source.Unknown, "paired with 54-56, which heads no column"},
		{"45 in", "47 in", false, source.Unknown, "under no heading"},
		{"46 in", "60 in", false, source.Unknown, "under no heading"},
	} {
		p, err := yardage.Width{Asked: in("2 3/4 yd"), From: in(c.from), To: in(c.to)}.Plan()
		if err != nil || p.HasGrid != c.grid || p.GridKnown != c.known {
			t.Errorf("%s: %+v, %v", c.why, p, err)
		}
		if c.grid && p.ByGrid != in("2 yd") {
			t.Errorf("%s: %v", c.why, p.ByGrid)
		}
	}
}

func TestPriceRounding(t *testing.T) {
	s := yardage.Price{Length: in("1 yd"), Each: money(t, "1.025"), Per: units.Yard, Currency: "GBP"}
	for _, c := range []struct {
		mode units.Mode
		coin units.Ratio
		want string
		why  string
	}{
		{units.HalfAway, units.Ratio{}, "1.03 GBP", "a tie goes up"},
		{units.HalfEven, units.Ratio{}, "1.02 GBP", "a tie goes to the even coin"},
		{units.Down, units.Ratio{}, "1.02 GBP", "down"},
		{units.Up, units.RatioOf(1, 20), "1.05 GBP", "5 cents are the smallest coin"},
		{units.HalfAway, units.RatioOf(1, 1), "1 GBP", "whole amounts"},
		{units.HalfAway, units.RatioOf(1, 1000), "1.025 GBP", "thousandths"},
	} {
		s.Mode, s.Coin = c.mode, c.coin
		p, err := s.Plan()
		if err != nil || p.Text() != c.want {
			t.Errorf("%s: %s, %v", c.why, p.Text(), err)
			continue
		}
		if p.Exact.Sub(p.Residue).Rat().Cmp(p.Charged.Rat()) != 0 {
			t.Errorf("%s: exact less residue is not what is charged", c.why)
		}
	}
	big := yardage.Price{Length: in("1 m"), Each: decimal.New(25, 1), Per: units.Metre}
	if p, err := big.Plan(); err != nil || p.Text() != "250.00" || p.Rate != units.RatioOf(250, 1) {
		t.Errorf("a price with a positive exponent: %v, %v", p.Text(), err)
	}
}

func TestBiasSpare(t *testing.T) {
	p, err := yardage.Bias{Strip: in("2 in"), Wanted: in("150 in"), Square: in("20 in"), Seam: in("1/4 in")}.Plan()
	if err != nil || p.Spare != in("40 in") || !slices.Equal(p.Assumed, []string{"tape"}) {
		t.Errorf("%+v, %v", p, err)
	}
	sPlan, err := yardage.Bias{Strip: in("2 in"), Wanted: in("250 in"), Seam: in("1/4 in")}.Plan()
	s := sPlan.Spec
	if err != nil || s.Square != in("23 in") || s.Step != in("1 in") {
		t.Errorf("%+v, %v", s, err)
	}
	onePlan, err := yardage.Bias{Strip: in("1/8 in"), Wanted: in("1/8 in"), Seam: in("1/32 in")}.Plan()
	one := onePlan.Spec
	if err != nil || one.Square != in("1 in") {
		t.Errorf("one step is enough: %+v, %v", one, err)
	}
	if _, err := (yardage.Bias{}).Plan(); !errors.Is(err, fault.Missing) {
		t.Error(err)
	}
	if lo, hi := p.Along().Bounds(); lo.Times(lo).Cmp(in("2 in").Times(in("4 in"))) > 0 || hi.Times(hi).Cmp(in("2 in").Times(in("4 in"))) < 0 {
		t.Errorf("the root of 8 is not between %v and %v", lo, hi)
	}
	if mark, _, err := p.Diagonal().Round(in("1/8 in"), units.Down); err != nil || mark != in("28 1/4 in") {
		t.Errorf("diagonal %v, %v", mark, err)
	}
}

// Off the chart the nearest rows are named, what is added has its reason, and a piece
// that is wider than the cloth is refused.
func TestWidthOffTheChart(t *testing.T) {
	_, err := yardage.GridFor(in("2 1/8 yd"), in("36 in"), in("45 in"))
	if want := "asked 2 1/8 yd: not in the printed table, want 2 yd (row 2, 1 5/8 yd) or 2 1/4 yd (row 3, 1 3/4 yd), the nearest of the chart"; err == nil || err.Error() != want {
		t.Errorf("%v, want %s", err, want)
	}
	for ask, rows := range map[string][]int{"1 yd": {1}, "2 1/8 yd": {2, 3}, "9 yd": {12}} {
		p, err := yardage.Width{Asked: in(ask), From: in("36 in"), To: in("45 in")}.Plan()
		var got []int
		for _, n := range p.Near {
			got = append(got, n.Row)
		}
		if err != nil || !slices.Equal(got, rows) {
			t.Errorf("%s: rows %v, want %v; %v", ask, got, rows, err)
		}
	}
	p, err := yardage.Width{Asked: in("2 yd"), From: in("36 in"), To: in("45 in"), Nap: true, Sleeves: true, Repeat: in("8 in"), HalfDrop: true, Widest: in("23 in")}.Plan()
	if err != nil || len(p.Reasons) != 3 || p.Added != in("21 in") || !p.Single {
		t.Errorf("%+v, %v", p, err)
	}
	p, err = yardage.Width{Asked: in("2 yd"), From: in("36 in"), To: in("45 in"), Widest: in("22 1/2 in")}.Plan()
	if err != nil || p.Reasons != nil || p.Single {
		t.Errorf("half the cloth, folded: %+v, %v", p, err)
	}
	nountest.Refused(t, yardage.Nouns(), yardage.Width{Asked: in("2 yd"), From: in("36 in"), To: in("45 in"), Widest: in("46 in")}, "widest", fault.Range)
	nountest.Refused(t, yardage.Nouns(), yardage.Width{Asked: in("2 yd"), From: in("36 in"), To: in("45 in"), HalfDrop: true}, "halfDrop", fault.Unused)
}
