package buttons_test

import (
	"errors"
	"strings"
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

// The limit that a fault names is the one meant: given, it is good, and beyond it is
// not.
func TestFaultLimits(t *testing.T) {
	front := buttons.Row{First: long("1 in"), Last: long("9 in"), Count: 5}
	row := func(change func(r *buttons.Row)) buttons.Row {
		r := front
		change(&r)
		return r
	}
	none := units.Length{}
	for name, spec := range map[string]any{
		"row, count too many":    row(func(r *buttons.Row) { r.Count, r.Step = buttons.MaxCount+1, long("1/9999 in") }),
		"row, have below gap":    row(func(r *buttons.Row) { r.Count, r.Gap, r.Have = 0, long("2 in"), 3 }),
		"row, have below limits": row(func(r *buttons.Row) { r.Count, r.MaxGap, r.Have = 0, long("2 in"), 3 }),
		"row, have one":          row(func(r *buttons.Row) { r.Count, r.Have = 0, 1 }),
		"row, months":            row(func(r *buttons.Row) { r.Months = buttons.MaxMonths + 1 }),
		"row, last before first": row(func(r *buttons.Row) {
			r.First, r.Step, r.Last = long("9 in"), long("1/99999999999999999 in"), long("3 in")
		}),
		"row, another gap":             row(func(r *buttons.Row) { r.Gap = long("1 in") }),
		"row, least gap":               row(func(r *buttons.Row) { r.MinGap = long("3 in") }),
		"row, greatest gap":            row(func(r *buttons.Row) { r.MaxGap = long("1 in") }),
		"row, step":                    row(func(r *buttons.Row) { r.Step = long("3 in") }),
		"row, no room for the gaps":    row(func(r *buttons.Row) { r.First, r.Gap = none, long("4 in") }),
		"row, gap too small":           row(func(r *buttons.Row) { r.Count, r.Gap, r.Step = 0, long("1/9999 in"), long("1/9999 in") }),
		"row, greatest gap too small":  row(func(r *buttons.Row) { r.Count, r.MaxGap, r.Step = 0, long("1/9999 in"), long("1/9999 in") }),
		"row, least gap alone":         row(func(r *buttons.Row) { r.Count, r.MinGap, r.Step = 0, long("1/9999 in"), long("1/9999 in") }),
		"row, not one place":           buttons.Row{First: long("1 in"), Last: long("2 in"), Count: 1},
		"hole, place before the reach": buttons.Hole{Diameter: long("1 in"), Setting: buttons.Vertical, Place: long("1/16 in")},
		"hole, reach past it":          buttons.Hole{Diameter: long("1 in"), Setting: buttons.Horizontal, Reach: long("2 in")},
		"hole, reach and place":        buttons.Hole{Diameter: long("1 in"), Setting: buttons.Vertical, Place: long("2 in"), Reach: long("3 in")},
		"lap, button past the edge":    buttons.Lap{Lap: long("1/4 in"), Hole: long("1 in"), Diameter: long("1 in"), Setting: buttons.Vertical},
		"lap, hole past the edge":      buttons.Lap{Lap: long("1/4 in"), Hole: long("1 in"), Setting: buttons.Horizontal, Reach: long("1/2 in")},
		"lap, both past the edge":      buttons.Lap{Lap: long("1/32 in"), Hole: long("1 in"), Diameter: long("1/8 in"), Setting: buttons.Horizontal},
		"lap, both as far past it":     buttons.Lap{Lap: long("1/32 in"), Hole: long("1 in"), Diameter: long("1/4 in"), Setting: buttons.Horizontal},
		"lap, hole all on one side":    buttons.Lap{Lap: long("1 in"), Hole: long("1/8 in"), Setting: buttons.Horizontal},
		"row, hem above the last":      row(func(r *buttons.Row) { r.Hem = long("8 in") }),
		"row, holes that meet":         row(func(r *buttons.Row) { r.Hole = long("2 in") }),
		"row, hooks too many": row(func(r *buttons.Row) {
			r.Fastening, r.Count, r.Step = buttons.Hook, buttons.MaxCount+1, long("1/9999 in")
		}),
		"hole, eye past the end":        buttons.Hole{Diameter: long("1 in"), Setting: buttons.Horizontal, Reach: long("1/8 in"), Eye: long("3/8 in")},
		"hole, eye and no hole":         buttons.Hole{Wrap: long("1/4 in"), Setting: buttons.Horizontal, Reach: long("3/32 in"), Eye: long("3/16 in")},
		"lap, rows past the edge":       buttons.Lap{Lap: long("2 in"), Row: long("2 in"), Diameter: long("1 in"), Hole: long("1 in"), Setting: buttons.Horizontal},
		"lap, row and button":           buttons.Lap{Lap: long("2 in"), Row: long("1 3/4 in"), Diameter: long("1 in"), Setting: buttons.Vertical},
		"cover, less than the mould":    buttons.Cover{Diameter: long("1 in"), Cut: long("3/4 in"), Gather: units.Inch.Frac(1, 1e15)},
		"cover, gathered past it":       buttons.Cover{Diameter: long("1 in"), Gather: long("1 in")},
		"cover, scrap too narrow":       buttons.Cover{Diameter: long("1 in"), Width: long("1 in")},
		"cover, too many":               buttons.Cover{Diameter: long("1 in"), Count: buttons.MaxCount + 1},
		"loop, ends too far apart":      buttons.Loop{Diameter: long("1/2 in"), Apart: long("2 in")},
		"loop, tube wider than strip":   buttons.Loop{Diameter: long("1/2 in"), Width: long("1 in")},
		"loop, another wrap":            buttons.Loop{Diameter: long("1/2 in"), Thickness: long("1/8 in"), Wrap: long("2 in")},
		"stock, have":                   buttons.Stock{Have: buttons.MaxCount + 1, Places: []buttons.Placement{{Count: 3}}},
		"stock, least above count":      buttons.Stock{Have: 3, Places: []buttons.Placement{{Count: 3, Least: 4}}},
		"stock, too many of a placing":  buttons.Stock{Have: 3, Places: []buttons.Placement{{Count: buttons.MaxCount + 1}}},
		"stock, too many times":         buttons.Stock{Have: 3, Places: []buttons.Placement{{Count: 1, Times: buttons.MaxCount + 1}}},
		"stock, months, and times less": buttons.Stock{Have: 3, Places: []buttons.Placement{{Count: 1, Times: -1}}, Months: buttons.MaxMonths + 1},
	} {
		t.Run(name, func(t *testing.T) { nountest.Limits(t, spec) })
	}
}

// A fault of a value that was not given says that it is assumed.
func TestAssumedInFaults(t *testing.T) {
	for _, c := range []struct {
		plan planned
		path string
		got  string
	}{
		{row(buttons.Row{First: long("1 in"), Last: long("9/8 in"), Count: 5}), "step", "1/16 in (assumed)"},
		{row(buttons.Row{First: long("1 in"), Last: long("9/8 in"), Count: 5, Step: long("1/16 in")}), "step", "1/16 in"},
		{hole(buttons.Hole{Diameter: long("1/32 in"), Thickness: long("1/64 in"), Setting: buttons.Horizontal}), "reach", "1/8 in (assumed)"},
		{hole(buttons.Hole{Diameter: long("1/32 in"), Thickness: long("1/64 in"), Setting: buttons.Horizontal, Reach: long("1/8 in")}), "reach", "1/8 in"},
		{lap(buttons.Lap{Diameter: long("1 in"), Hole: long("3 in"), Setting: buttons.Horizontal, Reach: long("1 in")}), "lap", "3/4 in (assumed)"},
	} {
		var faults fault.Faults
		if err := c.plan(); !errors.As(err, &faults) || len(faults) != 1 || faults[0].Path != c.path || !strings.HasPrefix(faults[0].Error(), c.path+" "+c.got+": ") {
			t.Errorf("%v, want %s %s", err, c.path, c.got)
		}
	}
}

// Solve refuses what Plan does.
func TestSolveRefusesWhatPlanDoes(t *testing.T) {
	past := buttons.Hole{Diameter: long("1 in"), Setting: buttons.Horizontal, Reach: long("2 in")}
	if _, err := past.Plan(); !errors.Is(err, fault.Range) {
		t.Errorf("a hole that is all reach: %v", err)
	}
}

// A neighbour that a row may not have is not named.
func TestNeighboursWithinTheMost(t *testing.T) {
	first := long("1 in")
	gap := long("1/2 in")
	last := first.Add(gap.MulInt(buttons.MaxCount - 1)).Add(long("1/4 in"))
	_, err := buttons.Row{First: first, Last: last, Gap: gap}.Plan()
	if !errors.Is(err, buttons.ErrNoCount) || !strings.Contains(err.Error(), "10000 buttons are") || strings.Contains(err.Error(), "10001") {
		t.Errorf("%v", err)
	}
}

// A row of many buttons is refused where its lengths have more digits than its
// marks can be worked with in a second.
func TestRowDigits(t *testing.T) {
	last := long(strings.Repeat("7", 900) + " in")
	for _, c := range []struct {
		path string
		r    buttons.Row
	}{
		{"last", buttons.Row{First: long("1 in"), Last: last, Count: buttons.MaxCount}},
		{"first", buttons.Row{First: last, Gap: long("1 in"), Count: buttons.MaxCount}},
		{"gap", buttons.Row{First: long("1 in"), Gap: last, Have: buttons.MaxCount}},
		{"step", buttons.Row{First: long("1 in"), Last: long("9999 in"), Count: buttons.MaxCount, Step: long("1 in").Scale(long("1 in").Div(last))}},
	} {
		_, err := c.r.Plan()
		var faults fault.Faults
		if !errors.As(err, &faults) || faults[0].Path != c.path || !errors.Is(err, units.ErrBound) || len(err.Error()) > 200 {
			t.Errorf("%s: %.300v", c.path, err)
		}
	}
}
