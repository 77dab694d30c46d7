package yardage_test

import (
	"strings"
	"testing"
	"unicode"

	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
	"example.com/clothyard/yardage"
)

// shirt is the highwayman's shirt, as a remnant.
var shirt = yardage.Remnant{
	Have: in("85 1/2 in"), HaveWidth: in("45 in"), Asked: in("99 in"), AskedWidth: in("45 in"), Need: in("76 3/16 in"), NeedWidth: in("43 in"),
	ShrinkLength: pct(3), ShrinkWidth: pct(2), Selvedge: in("1/2 in"), Ends: in("1 in"),
}

type planned interface{ Sheet() ticket.Sheet }

type sample struct {
	name string
	plan func() (planned, error)
}

func of[P planned](p P, err error) (planned, error) { return p, err }

// samples is at least one spec of every noun and every branch of its sheet.
func samples() []sample {
	short, wide, more, open := shirt, shirt, shirt, shirt
	short.Have, wide.NeedWidth, more.Have = in("2 yd"), in("44 in"), in("3 yd")
	open.Need, open.NeedWidth, open.AskedWidth = units.Length{}, units.Length{}, units.Length{}
	asked := more
	asked.Need, asked.NeedWidth = units.Length{}, units.Length{}
	return []sample{
		{"width, chart", func() (planned, error) {
			return of(yardage.Width{Asked: in("5 yd"), From: in("36 in"), To: in("60 in"), Nap: true}.Plan())
		}},
		{"width, memory", func() (planned, error) {
			return of(yardage.Width{Asked: in("2 yd"), From: in("90 cm"), To: in("32 in")}.Plan())
		}},
		{"width, area", func() (planned, error) {
			return of(yardage.Width{Asked: in("5/3 yd"), From: in("45 in"), To: in("60 in"), Nap: true}.Plan())
		}},
		{"purchase, plain", func() (planned, error) { return of(yardage.Purchase{Need: in("80 in")}.Plan()) }},
		{"purchase, all", func() (planned, error) {
			return of(yardage.Purchase{Need: in("80 in"), Repeat: in("12 in"), Starts: 1, Ends: in("2 in"), Shrink: pct(5), Counter: in("1/4 m")}.Plan())
		}},
		{"remnant, fits", func() (planned, error) { return of(shirt.Plan()) }},
		{"remnant, unwashed", func() (planned, error) {
			return of(yardage.Remnant{Have: in("2 yd"), HaveWidth: in("45 in"), Need: in("70 in")}.Plan())
		}},
		{"remnant, too long", func() (planned, error) { return of(short.Plan()) }},
		{"remnant, too wide", func() (planned, error) { return of(wide.Plan()) }},
		{"remnant, more", func() (planned, error) { return of(more.Plan()) }},
		{"remnant, asked", func() (planned, error) { return of(asked.Plan()) }},
		{"remnant, open", func() (planned, error) { return of(open.Plan()) }},
		{"price", func() (planned, error) {
			return of(yardage.Price{Length: in("81 in"), Each: decimal.New(1599, -2), Per: units.Metre, Currency: "GBP"}.Plan())
		}},
		{"price, coin", func() (planned, error) {
			return of(yardage.Price{Length: in("81 in"), Each: decimal.New(7, 0), Per: units.Yard, Coin: units.RatioOf(1, 20), Mode: units.Up}.Plan())
		}},
		{"swatch", func() (planned, error) {
			return of(yardage.Swatch{Before: in("20 in"), After: in("19 in")}.Plan())
		}},
		{"swatch, both", func() (planned, error) {
			return of(yardage.Swatch{Before: in("20 in"), After: in("19 in"), WidthAfter: in("19 in"), WidthShrink: pct(3)}.Plan())
		}},
		{"panels, plain", func() (planned, error) {
			return of(yardage.Panels{Widths: 1, Width: in("54 in"), Drop: in("2 m")}.Plan())
		}},
		{"panels, all", func() (planned, error) {
			return of(yardage.Panels{Cover: in("84 in"), Fullness: units.RatioOf(5, 2), Width: in("54 in"), Seam: units.Give(in("1/2 in")), Sides: in("2 in"),
				Drop: in("78 in"), Hems: in("10 in"), Repeat: in("11 in"), HalfDrop: true, Starts: 1}.Plan())
		}},
		{"bias, square", func() (planned, error) {
			return of(yardage.Bias{Strip: in("2 in"), Square: in("20 in"), Seam: in("1/4 in")}.Plan())
		}},
		{"bias, wanted", func() (planned, error) { return of(yardage.Bias{Strip: in("2 in"), Wanted: in("250 in")}.Plan()) }},
	}
}

func TestSheets(t *testing.T) {
	for _, s := range samples() {
		p, err := s.plan()
		if err != nil {
			t.Errorf("%s: %v", s.name, err)
			continue
		}
		sheet := p.Sheet()
		if err := sheet.Check(); err != nil {
			t.Errorf("%s: %v", s.name, err)
		}
		if sheet.Title == "" || len(sheet.Lines) == 0 || len(sheet.Sources) == 0 || len(sheet.Cautions) == 0 {
			t.Errorf("%s: a sheet without title, working, sources or cautions", s.name)
		}
		for _, c := range sheet.Sources {
			_, ok := source.Lookup(c.ID)
			if c.For == "" || c.ID != "" && !ok || c.ID == "" && c.Known != source.Practice && c.Known != source.Computed {
				t.Errorf("%s: citation %+v", s.name, c)
			}
		}
		for _, l := range sheet.Lines {
			if l.Label == "" || l.Result.IsZero() {
				t.Errorf("%s: line %+v", s.name, l)
			}
		}
		for _, st := range sheet.Steps {
			for _, prose := range [...]string{st.Do, st.From, st.Press, st.Note, st.Check.What, st.Check.Mend} {
				if strings.ContainsFunc(prose, unicode.IsDigit) {
					t.Errorf("%s: a measure stands as text in %q", s.name, prose)
				}
			}
			if st.Do == "" || !st.Check.Want.IsZero() && (st.Check.What == "" || st.Check.Mend == "") {
				t.Errorf("%s: step %+v", s.name, st)
			}
		}
		for _, n := range []units.Notation{{}, {Unit: units.Centimetre}} {
			if text := sheet.Text(n); !strings.Contains(text, sheet.Title) {
				t.Errorf("%s: the text lacks its title\n%s", s.name, text)
			}
		}
	}
}

// The sheet of the shirt states the figures worked by hand.
func TestShirtSheet(t *testing.T) {
	p, err := shirt.Plan()
	if err != nil {
		t.Fatal(err)
	}
	want := map[string]units.Length{
		"short of what is asked": in("13 1/2 in"), "length to lay on": in("81.935 in"), "width to lay on": in("43.1 in"),
		"spare over the lay": in("5.7475 in"), "spare in width": in("0.1 in"), "least that does, unwashed": in("77 3/16 in").Unscale(units.RatioOf(97, 100)),
	}
	for _, l := range p.Sheet().Lines {
		w, ok := want[l.Label]
		if !ok {
			continue
		}
		delete(want, l.Label)
		if l.Result != ticket.Long(w) {
			t.Errorf("%s: %v, want %v", l.Label, l.Result, w)
		}
	}
	if len(want) > 0 {
		t.Errorf("no line for %v", want)
	}
}

// labels is what a sheet works out and checks, in order.
func labels(sheet ticket.Sheet) string {
	var out []string
	for _, l := range sheet.Lines {
		out = append(out, l.Label+" "+l.Result.String())
	}
	for _, st := range sheet.Steps {
		if !st.Check.Want.IsZero() {
			out = append(out, "check "+st.Check.Want.String())
		}
	}
	return strings.Join(out, "; ")
}

// Each line and each check of a sheet is there when it says something, and only then.
func TestSheetLines(t *testing.T) {
	want := map[string]string{
		"width, chart":    "by area 108 in; by the printed chart 103 1/2 in; with what is added 112 1/2 in; check 112 1/2 in",
		"width, area":     "by area 45 in; with what is added 54 in; row 2 of the chart, asked 58 1/2 in; row 2 of the chart, on this width 45 in; row 3 of the chart, asked 63 in; row 3 of the chart, on this width 49 1/2 in; check 54 in",
		"purchase, plain": "length of the lay 80 in; to buy 81 in; surplus 1 in; check 81 in; check 80 in",
		"purchase, all": "repeat after washing 289.56 mm; lay in whole repeats 2606.04 mm; with the ends 2656.84 mm; before washing 110 2/19 in; to buy 3000 mm; surplus 8 12/2413 in; " +
			"check 3000 mm; check 2850 mm; check 2606.04 mm",
		"remnant, unwashed": "length to lay on 72 in; width to lay on 45 in; spare over the lay 2 in; least that does, washed 70 in; least that does, unwashed 70 in; check 70 in; check 45 in",
		"remnant, asked":    "more than is asked 9 in; asked on this width, by area 99 in; length to lay on 2635.504 mm; width to lay on 1094.74 mm; check 2660.904 mm; check 1094.74 mm",
		"remnant, too wide": "short of what is asked 13 1/2 in; asked on this width, by area 99 in; length to lay on 2081.149 mm; width to lay on 1094.74 mm; spare over the lay 145.9865 mm; " +
			"lay too wide by 22.86 mm; least that does, washed 77 3/16 in; least that does, unwashed 79 223/388 in; check 77 3/16 in; check 1094.74 mm",
		"swatch":        "lost in length 1 in; shrinkage in length 1/20; check 19 in",
		"panels, plain": "widths of cloth 1; flat width 54 in; one drop 2000 mm; cloth 2000 mm; check 2000 mm",
		"panels, all": "widths of cloth 5; flat width 262 in; fullness made 3 5/42; one drop 88 in; one drop in whole repeats 88 in; cut off each drop 0 in; cloth 456 1/2 in; " +
			"by the rule that adds a repeat to each 495 in; check 88 in; check 266 in",
		"bias, square": "by area, more than it yields 200 in; side less four seams 19 in; with the two joins, about 190 in; check 71.8420489685 mm +- 0.0000000065 mm; check 190 in",
	}
	for _, s := range samples() {
		w, ok := want[s.name]
		if !ok {
			continue
		}
		delete(want, s.name)
		p, err := s.plan()
		if err != nil {
			t.Errorf("%s: %v", s.name, err)
			continue
		}
		got := labels(p.Sheet())
		if before, _, cut := strings.Cut(w, " +- "); cut {
			// The bound of an irrational length is no promise: compare to a hundredth of a millimetre.
			at := strings.LastIndex(before, ".")
			if !strings.HasPrefix(got, w[:at+3]) || !strings.HasSuffix(got, "; check 190 in") {
				t.Errorf("%s:\n%s\nwant\n%s", s.name, got, w)
			}
		} else if got != w {
			t.Errorf("%s:\n%s\nwant\n%s", s.name, got, w)
		}
	}
	if len(want) > 0 {
		t.Errorf("no sample for %v", want)
	}
}

// A caution and a source stand where they say something, and only there.
func TestSheetCautionsAndSources(t *testing.T) {
	want := map[string][2]int{
		"width, chart": {2, 2}, "width, memory": {2, 3}, "width, area": {2, 2},
		"purchase, plain": {1, 2}, "purchase, all": {3, 3}, "price": {1, 2}, "price, coin": {1, 1},
		"panels, plain": {3, 1}, "panels, all": {3, 4}, "bias, square": {3, 2}, "bias, wanted": {3, 3},
	}
	for _, s := range samples() {
		w, ok := want[s.name]
		if !ok {
			continue
		}
		delete(want, s.name)
		p, err := s.plan()
		if err != nil {
			t.Errorf("%s: %v", s.name, err)
			continue
		}
		if sheet := p.Sheet(); len(sheet.Cautions) != w[0] || len(sheet.Sources) != w[1] {
			t.Errorf("%s: %d cautions and %d sources, want %v", s.name, len(sheet.Cautions), len(sheet.Sources), w)
		}
	}
	if len(want) > 0 {
		t.Errorf("no sample for %v", want)
	}
}
