package buttons_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// planned is any noun of the package.
type planned func() error

func row(r buttons.Row) planned     { return func() error { _, err := r.Plan(); return err } }
func hole(h buttons.Hole) planned   { return func() error { _, err := h.Plan(); return err } }
func lap(l buttons.Lap) planned     { return func() error { _, err := l.Plan(); return err } }
func stock(s buttons.Stock) planned { return func() error { _, err := s.Plan(); return err } }

func TestFaults(t *testing.T) {
	minus, inch := long("-1 in"), long("1 in")
	many := math.MaxInt
	for _, c := range []struct {
		why  string
		plan planned
		want []string // path and kind of each fault
		is   error    // a sentinel among them
	}{
		{"row: nothing", row(buttons.Row{}), []string{"first", "last", "count"}, fault.Missing},
		{"row: all below zero", row(buttons.Row{First: minus, Last: minus, Count: -1, Gap: minus, MinGap: minus, MaxGap: minus, Step: minus, Have: -1, Months: -1}),
			[]string{"first", "last", "count", "gap", "minGap", "maxGap", "step", "have", "months"}, fault.Sign},
		{"row: too many", row(buttons.Row{First: inch, Last: long("9 in"), Count: many, From: strings.Repeat("x", 300), Have: many, Months: many}),
			[]string{"count", "from", "have", "months"}, fault.Range},
		{"row: unprintable name", row(buttons.Row{First: inch, Count: 1, From: "top\n"}), []string{"from"}, fault.Form},
		{"row: last before first", row(buttons.Row{First: inch, Last: inch, Count: 3}), []string{"last"}, fault.Range},
		{"row: a hem too near", row(buttons.Row{Hem: long("4 in")}), []string{"hem"}, buttons.ErrPastEdge},
		{"row: a hem nearer still", row(buttons.Row{Hem: long("3 in")}), []string{"hem"}, buttons.ErrPastEdge},
		{"row: hooks have no holes", row(buttons.Row{Fastening: buttons.Hook, First: inch, Last: long("9 in"), Hole: inch, Cloth: inch}), []string{"hole", "cloth"}, fault.Unused},
		{"row: buttons are not set back", row(buttons.Row{First: inch, Last: long("9 in"), Count: 3, SetBack: inch}), []string{"setBack"}, fault.Unused},
		{"row: an unknown fastening", row(buttons.Row{Fastening: 9, First: inch, Last: long("9 in"), Count: 3}), []string{"fastening"}, fault.Unknown},
		{"row: count missing", row(buttons.Row{First: inch, Last: long("9 in")}), []string{"count"}, fault.Missing},
		{"row: last missing", row(buttons.Row{First: inch, Count: 3, MinGap: inch}), []string{"last"}, fault.Missing},
		{"row: first missing", row(buttons.Row{Last: inch, Count: 3}), []string{"first"}, fault.Missing},
		{"row: first missing, no count", row(buttons.Row{Last: inch, Gap: inch}), []string{"first", "count"}, fault.Missing},
		{"row: gaps of a single button", row(buttons.Row{First: inch, Last: long("2 in"), Count: 1, Gap: inch, MinGap: inch, MaxGap: inch}),
			[]string{"last", "gap", "minGap", "maxGap"}, fault.Unused},
		{"row: single button without a place", row(buttons.Row{Count: 1}), []string{"first"}, fault.Missing},
		{"row: limits crossed", row(buttons.Row{First: inch, Last: long("9 in"), MinGap: long("3 in"), MaxGap: long("2 in")}), []string{"maxGap"}, fault.Conflict},
		{"row: pins without ends", row(buttons.Row{First: inch, Count: 5, Gap: inch, Pins: []units.Length{long("3 in")}}), []string{"pins"}, fault.Unused},
		{"row: a pin beyond the last", row(buttons.Row{First: inch, Last: long("9 in"), Count: 5, Pins: []units.Length{long("9 in")}}), []string{"pins[0]"}, fault.Range},
		{"row: too few for the pins", row(buttons.Row{First: inch, Last: long("9 in"), Count: 3, Pins: []units.Length{long("3 in"), long("5 in")}}), []string{"count"}, fault.Range},
		{"row: one button for a row", row(buttons.Row{First: inch, Last: long("9 in"), Have: 1}), []string{"have"}, fault.Conflict},
		{"row: gap does not come out", row(buttons.Row{First: inch, Last: long("9 in"), Gap: long("3 in")}), []string{"gap"}, buttons.ErrNoCount},
		{"row: gap longer than the row", row(buttons.Row{First: inch, Last: long("9 in"), Gap: long("30 in")}), []string{"gap"}, buttons.ErrNoCount},
		{"row: gap too small", row(buttons.Row{First: inch, Last: long("9 in"), Gap: long("1/9999 in")}), []string{"gap"}, fault.Range},
		{"row: gap tiny", row(buttons.Row{First: inch, Last: long("9 in"), Gap: tiny()}), []string{"gap"}, fault.Range},
		{"row: stock below gap", row(buttons.Row{First: inch, Last: long("9 in"), Gap: long("2 in"), Have: 4}), []string{"have"}, fault.Conflict},
		{"row: no whole number", row(buttons.Row{First: inch, Last: long("11 in"), MinGap: long("2 3/4 in"), MaxGap: long("3 in")}), []string{"minGap"}, buttons.ErrNoCount},
		{"row: least gap above the span", row(buttons.Row{First: inch, Last: long("11 in"), MinGap: long("12 in")}), []string{"minGap"}, buttons.ErrNoCount},
		{"row: greatest gap too small", row(buttons.Row{First: inch, Last: long("11 in"), MaxGap: tiny()}), []string{"maxGap"}, fault.Range},
		{"row: least gap too small alone", row(buttons.Row{First: inch, Last: long("11 in"), MinGap: tiny()}), []string{"minGap"}, fault.Range},
		{"row: stock below limits", row(buttons.Row{First: inch, Last: long("11 in"), MaxGap: inch, Have: 3}), []string{"have"}, fault.Conflict},
		{"row: gap disagrees", row(buttons.Row{First: inch, Last: long("9 in"), Count: 5, Gap: inch}), []string{"gap"}, fault.Conflict},
		{"row: no room for the gaps", row(buttons.Row{Last: long("9 in"), Count: 5, Gap: long("3 in")}), []string{"last"}, buttons.ErrPastEdge},
		{"row: outside the limits", row(buttons.Row{First: inch, Last: long("9 in"), Count: 5, MinGap: long("3 in")}), []string{"minGap"}, fault.Conflict},
		{"row: outside the limits", row(buttons.Row{First: inch, Last: long("9 in"), Count: 5, MaxGap: inch}), []string{"maxGap"}, fault.Conflict},
		{"row: step above gap", row(buttons.Row{First: inch, Last: long("9 in"), Count: 5, Step: long("3 in")}), []string{"step"}, fault.Range},

		{"hole: nothing", hole(buttons.Hole{}), []string{"diameter"}, fault.Missing},
		{"hole: all below zero", hole(buttons.Hole{Diameter: minus, Thickness: minus, Ease: minus, Step: minus, Setting: buttons.Vertical, Place: minus, Reach: minus}),
			[]string{"diameter", "thickness", "ease", "step", "place", "reach"}, fault.Sign},
		{"hole: unknown kinds", hole(buttons.Hole{Diameter: inch, Outline: 9, Setting: 9}), []string{"outline", "setting"}, fault.Unknown},
		{"hole: thickness of a ball", hole(buttons.Hole{Diameter: inch, Thickness: inch, Outline: buttons.Ball}), []string{"thickness"}, fault.Unused},
		{"hole: place without setting", hole(buttons.Hole{Diameter: inch, Place: inch, Reach: inch}), []string{"place", "reach"}, fault.Unused},
		{"hole: begins before the end", hole(buttons.Hole{Diameter: inch, Setting: buttons.Vertical, Place: long("1/16 in")}), []string{"place"}, buttons.ErrPastEdge},
		{"hole: reach beyond it", hole(buttons.Hole{Diameter: inch, Setting: buttons.Horizontal, Reach: long("2 in")}), []string{"reach"}, fault.Range},
		{"hole: undecidable", hole(buttons.Hole{Diameter: inch, Outline: buttons.Ball, Step: tiny().Scale(tiny().Div(inch)).Scale(tiny().Div(inch))}), []string{"step"}, units.ErrBound},

		{"lap: nothing", lap(buttons.Lap{}), []string{"lap", "hole", "setting"}, fault.Missing},
		{"lap: all below zero", lap(buttons.Lap{Lap: minus, Hole: minus, Diameter: minus, Topstitch: minus, Setting: buttons.Horizontal, Reach: minus}),
			[]string{"lap", "hole", "diameter", "topstitch", "reach"}, fault.Sign},
		{"lap: vertical, below zero", lap(buttons.Lap{Lap: inch, Hole: minus, Setting: buttons.Vertical, Reach: inch}), []string{"hole", "reach"}, fault.Unused},
		{"lap: unknown setting", lap(buttons.Lap{Lap: inch, Hole: inch, Setting: 9}), []string{"setting"}, fault.Unknown},
		{"lap: button past the edge", lap(buttons.Lap{Lap: inch, Diameter: long("2 1/8 in"), Setting: buttons.Vertical}), []string{"lap"}, buttons.ErrPastEdge},
		{"lap: hole past the edge", lap(buttons.Lap{Lap: long("1/8 in"), Hole: inch, Setting: buttons.Horizontal}), []string{"lap"}, buttons.ErrPastEdge},
		{"lap: default lap past the edge", lap(buttons.Lap{Diameter: inch, Hole: long("3 in"), Setting: buttons.Horizontal, Reach: inch}), []string{"lap"}, buttons.ErrPastEdge},
		{"lap: hole all on one side", lap(buttons.Lap{Lap: inch, Hole: long("1/8 in"), Setting: buttons.Horizontal}), []string{"hole"}, fault.Range},

		{"stock: nothing", stock(buttons.Stock{}), []string{"have", "places"}, fault.Missing},
		{"stock: below zero", stock(buttons.Stock{Have: -1, Places: []buttons.Placement{{Count: -1, Times: -1, Least: -1}}, Months: -1}),
			[]string{"have", "places[0].count", "places[0].times", "places[0].least", "months"}, fault.Sign},
		{"stock: too many of each", stock(buttons.Stock{Have: many, Places: []buttons.Placement{{Count: 1}, {Name: "\x00", Count: many, Times: many, Least: many}}, Months: many}),
			[]string{"have", "places[1].name", "places[1].count", "places[1].times", "places[1].least", "months"}, fault.Range},
		{"stock: too many in all", stock(buttons.Stock{Have: 1, Places: []buttons.Placement{{Count: 101, Times: 100}}}), []string{"places"}, fault.Range},
		{"stock: too many placements", stock(buttons.Stock{Have: 1, Places: make([]buttons.Placement, 1e6)}), []string{"places"}, fault.Range},
		{"stock: least above count", stock(buttons.Stock{Have: 1, Places: []buttons.Placement{{Count: 3, Least: 4}}}), []string{"places[0].least"}, fault.Conflict},
	} {
		t.Run(c.why, func(t *testing.T) {
			err := c.plan()
			var faults fault.Faults
			if !errors.As(err, &faults) || len(faults) == 0 {
				t.Fatalf("no faults: %v", err)
			}
			var got []string
			for _, f := range faults {
				got = append(got, f.Path)
				if f.Kind == "" || f.Limit == "" {
					t.Errorf("says too little: %q", f)
				}
			}
			if d := cmp.Diff(c.want, got); d != "" {
				t.Errorf("%v\n%s", err, d)
			}
			if !errors.Is(err, c.is) {
				t.Errorf("%v is not %v", err, c.is)
			}
		})
	}
}

// tiny is a length so small that no count of it fits a machine word.
func tiny() units.Length { return long("0." + strings.Repeat("0", 400) + "1 in") }

// huge is a length with as many digits as a text may have.
func huge() units.Length { return long(strings.Repeat("9", 1000) + " in") }

// TestNeighbours shows that a count that does not come out is told with the
// counts on either side and their gaps, never guessed.
func TestNeighbours(t *testing.T) {
	_, err := buttons.Row{First: long("1 in"), Last: long("11 in"), MinGap: long("2 3/4 in"), MaxGap: long("3 in")}.Plan()
	want := "minGap 2 3/4 in: no whole number of buttons fits, want another limit: " +
		"4 buttons are 3 1/3 in apart, 5 buttons are 2 1/2 in apart"
	if err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
	_, err = buttons.Row{First: long("1 in"), Last: long("11 in"), MinGap: long("12 in")}.Plan()
	if want := "minGap 12 in: no whole number of buttons fits, want another limit: 2 buttons are 10 in apart"; err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
	_, err = buttons.Row{First: long("1 in"), Last: long("9 in"), Count: 5, Gap: long("1 in")}.Plan()
	if want := "gap 1 in: disagrees with what else is given, want 2 in, which 5 buttons from first to last make"; err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}

func TestReusedFaults(t *testing.T) {
	p, err := buttons.Row{First: long("1 in"), Last: long("9 in"), Count: 5}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if _, err := p.Reused(buttons.Row{}); !errors.Is(err, fault.Missing) {
		t.Errorf("an empty row: %v", err)
	}
	_, err = p.Reused(buttons.Row{First: long("1 in"), Last: long("9 in"), Count: 5, From: "the hem"})
	var faults fault.Faults
	if !errors.As(err, &faults) || faults[0].Path != "from" || !errors.Is(err, fault.Conflict) {
		t.Errorf("another end: %v", err)
	}
}

func second[T any](_ T, err error) error { return err }

// TestHuge runs lengths of a thousand digits through every noun.
func TestHuge(t *testing.T) {
	r, err := buttons.Row{First: long("1 in"), Last: huge(), Count: 100}.Plan()
	if err != nil || r.Sheet().Check() != nil || r.Gap.MulInt(99) != r.Span {
		t.Errorf("row: %v", err)
	}
	h, err := buttons.Hole{Diameter: huge(), Setting: buttons.Vertical, Place: huge()}.Plan()
	if err != nil || h.Sheet().Check() != nil || h.End.Sub(h.Start) != h.Cut {
		t.Errorf("hole: %v", err)
	}
	l, err := buttons.Lap{Lap: huge(), Hole: huge(), Diameter: huge(), Topstitch: huge(), Setting: buttons.Horizontal}.Plan()
	if err != nil || l.Sheet().Check() != nil || !l.Crosses {
		t.Errorf("lap: %v, crosses %v", err, l.Crosses)
	}
	for _, p := range []planned{
		row(buttons.Row{First: huge(), Last: huge(), Count: 3}),
		row(buttons.Row{First: tiny(), Last: huge(), Gap: tiny()}),
		hole(buttons.Hole{Diameter: tiny(), Outline: buttons.Ball, Setting: buttons.Vertical, Reach: huge()}),
		lap(buttons.Lap{Lap: tiny(), Diameter: huge(), Setting: buttons.Vertical}),
	} {
		if err := p(); err == nil || fmt.Sprint(err) == "" {
			t.Errorf("no fault: %v", err)
		}
	}
}
