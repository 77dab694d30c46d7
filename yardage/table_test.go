package yardage_test

import (
	"errors"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/yardage"
)

func TestTables(t *testing.T) {
	sources := func(name, id string, known source.Known) {
		t.Helper()
		if _, ok := source.Lookup(id); !ok && (id != "" || known != source.Practice) {
			t.Errorf("%s: source %q is not in the list", name, id)
		}
		if known == source.Unknown {
			t.Errorf("%s: how is it known?", name)
		}
	}
	cells, memory := 0, 0
	var rows [13][]yardage.GridRow
	for c := range yardage.Grid {
		sources("grid", c.Source, c.Known)
		if c.Source == "yardage-conversion-chart" {
			continue
		}
		cells++
		if c.Known == source.Memory {
			memory++
		}
		column := len(rows[c.Row])
		if column > 0 && rows[c.Row][column-1].Length.Less(c.Length) {
			t.Errorf("row %d: wider cloth takes more: %v", c.Row, c)
		}
		rows[c.Row] = append(rows[c.Row], c)
		if c.Row > 1 {
			if up := rows[c.Row-1][column]; !up.Length.Less(c.Length) {
				t.Errorf("column %v does not rise at row %d", c.From, c.Row)
			}
		}
		if back, err := yardage.GridFor(c.Length, c.From, c.To); err != nil || back != c {
			t.Errorf("look-up of %v: %v, %v", c, back, err)
		}
	}
	if cells != 108 || memory != 11 {
		t.Errorf("%d cells, %d from memory; want 108 and 11", cells, memory)
	}
	n := 0
	for w := range yardage.ClothWidths {
		sources(w.Cloth, w.Source, w.Known)
		if w.To.Less(w.From) {
			t.Errorf("%v: from more than to", w)
		}
		if !w.Metric.IsZero() && w.Metric.Sub(w.From).Abs().Cmp(in("2 in")) > 0 {
			t.Errorf("%v: the metric width is another", w)
		}
		n++
	}
	for s := range yardage.Shrinkages {
		sources(s.Cloth, s.Source, s.Known)
		if s.LengthMost.Less(s.Length) || s.WidthMost.Less(s.Width) {
			t.Errorf("%v: the most is less than the least", s)
		}
		n++
	}
	for c := range yardage.Counters {
		sources(c.Use, c.Source, c.Known)
		if c.Step.Sign() <= 0 {
			t.Errorf("%v: no step", c)
		}
		n++
	}
	for c := range yardage.BiasChart {
		sources("bias", c.Source, c.Known)
		if area := c.Width.Times(c.Length).Over(c.Strip); area.Less(c.Yield) || c.Yield.Div(area).Less(units.RatioOf(74, 100)) {
			t.Errorf("%v: not between three quarters of the area and the whole", c)
		}
		if back, err := yardage.BiasFor(c.Width, c.Length, c.Strip); err != nil || back != c {
			t.Errorf("look-up of %v: %v, %v", c, back, err)
		}
		n++
	}
	if n != 31+13+10+12 {
		t.Errorf("%d rows in the smaller tables", n)
	}
	if n := countOf(yardage.ShrinkagesOf("cotton, preshrunk")); n != 2 {
		t.Errorf("two sources for preshrunk cotton: %d rows", n)
	}
	if n := countOf(yardage.WidthsOf("velvet")); n != 1 {
		t.Errorf("velvet: %d rows", n)
	}
	if countOf(yardage.WidthsOf("cobweb"))+countOf(yardage.ShrinkagesOf("cobweb")) != 0 {
		t.Error("a cloth that no source prints has figures")
	}
	for _, ask := range [][3]string{{"2 yd", "36 in", "47 in"}, {"2 1/8 yd", "36 in", "45 in"}, {"2 yd", "47 in", "45 in"}} {
		if _, err := yardage.GridFor(in(ask[0]), in(ask[1]), in(ask[2])); !errors.Is(err, yardage.ErrOutside) {
			t.Errorf("%v: %v", ask, err)
		}
	}
	if _, err := yardage.BiasFor(in("36 in"), in("1 yd"), in("2 in")); !errors.Is(err, yardage.ErrOutside) {
		t.Errorf("a strip that the chart does not hold: %v", err)
	}
}

func countOf[T any](seq func(func(T) bool)) (n int) {
	for range seq {
		n++
	}
	return n
}

func TestIteratorsStop(t *testing.T) {
	n := 0
	for range yardage.Grid {
		n++
		break
	}
	for range yardage.ClothWidths {
		n++
		break
	}
	for w := range yardage.ClothWidths {
		if w.Cloth != "" {
			n++
			break
		}
	}
	for range yardage.Shrinkages {
		n++
		break
	}
	for range yardage.Counters {
		n++
		break
	}
	for range yardage.BiasChart {
		n++
		break
	}
	for range yardage.ShrinkagesOf("cotton, preshrunk") {
		n++
		break
	}
	for range yardage.WidthsOf("velvet") {
		n++
		break
	}
	if n != 8 {
		t.Errorf("%d, want 8", n)
	}
}
