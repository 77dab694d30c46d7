package yardage_test

import (
	"strings"
	"testing"
	"unicode"

	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
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
			return of(yardage.Panels{Cover: in("84 in"), Fullness: units.RatioOf(5, 2), Width: in("54 in"), Seam: in("1/2 in"), Sides: in("2 in"),
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
			_, ok := ticket.Lookup(c.ID)
			if c.For == "" || c.ID != "" && !ok || c.ID == "" && c.Known != ticket.Practice && c.Known != ticket.Computed {
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
