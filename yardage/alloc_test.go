package yardage_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage"
)

func TestAllocations(t *testing.T) {
	width := yardage.Width{Asked: in("5 yd"), From: in("36 in"), To: in("60 in"), Nap: true}
	purchase := yardage.Purchase{Need: in("80 in"), Repeat: in("12 in"), Starts: 1, Ends: in("2 in"), Shrink: pct(5)}
	price := yardage.Price{Length: in("81 in"), Each: money(t, "15.99"), Per: units.Yard, Currency: "GBP"}
	swatch := yardage.Swatch{Before: in("20 in"), After: in("19 in"), WidthAfter: in("19 in"), WidthShrink: pct(3)}
	panels := yardage.Panels{Cover: in("84 in"), Fullness: units.RatioOf(5, 2), Width: in("54 in"), Seam: in("1/2 in"), Drop: in("78 in"), Repeat: in("11 in"), HalfDrop: true}
	bias := yardage.Bias{Strip: in("2 in"), Wanted: in("250 in")}
	for _, c := range []struct {
		name string
		plan func() (planned, error)
		run  func()
	}{
		{"width", func() (planned, error) { return of(width.Plan()) }, func() { _, _ = width.Plan() }},
		{"purchase", func() (planned, error) { return of(purchase.Plan()) }, func() { _, _ = purchase.Plan() }},
		{"remnant", func() (planned, error) { return of(shirt.Plan()) }, func() { _, _ = shirt.Plan() }},
		{"price", func() (planned, error) { return of(price.Plan()) }, func() { _, _ = price.Plan() }},
		{"swatch", func() (planned, error) { return of(swatch.Plan()) }, func() { _, _ = swatch.Plan() }},
		{"panels", func() (planned, error) { return of(panels.Plan()) }, func() { _, _ = panels.Plan() }},
		{"bias", func() (planned, error) { return of(bias.Plan()) }, func() { _, _ = bias.Plan() }},
	} {
		p, err := c.plan()
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		if n := testing.AllocsPerRun(100, c.run); n > 2 {
			t.Errorf("%s: a plan makes %v allocations, at most 2 are allowed", c.name, n)
		}
		if n := testing.AllocsPerRun(100, func() { _ = p.Sheet() }); n > 40 {
			t.Errorf("%s: a sheet makes %v allocations, at most 40 are allowed", c.name, n)
		}
	}
}
