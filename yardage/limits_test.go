package yardage_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/yardage"
)

// The limit that a fault names is the one meant: given, it is good.
func TestLimits(t *testing.T) {
	two := units.RatioOf(2, 1)
	cloth := yardage.Panels{Cover: in("200 in"), Fullness: two, Width: in("54 in"), Seam: units.Give(in("1/2 in")), Sides: in("2 in"), Drop: in("80 in")}
	panels := func(change func(s *yardage.Panels)) yardage.Panels {
		s := cloth
		change(&s)
		return s
	}
	for name, spec := range map[string]any{
		"widths that make less, full":   panels(func(s *yardage.Panels) { s.Widths = 3 }),
		"widths that make less, flat":   panels(func(s *yardage.Panels) { s.Widths, s.Fullness = 3, units.Ratio{} }),
		"more than the most widths":     panels(func(s *yardage.Panels) { s.Cover = in("999999 in") }),
		"too many widths":               panels(func(s *yardage.Panels) { s.Widths = yardage.MaxWidths + 1 }),
		"not full":                      panels(func(s *yardage.Panels) { s.Fullness = units.RatioOf(1, 2) }),
		"one width, all of it sides":    panels(func(s *yardage.Panels) { s.Widths, s.Cover, s.Width = 1, units.Length{}, in("3 in") }),
		"two widths, all of them sides": panels(func(s *yardage.Panels) { s.Widths, s.Cover, s.Width = 2, units.Length{}, in("2 in") }),
		"three widths, all of them joins": panels(func(s *yardage.Panels) {
			s.Widths, s.Cover, s.Width, s.Seam = 3, units.Length{}, in("5 in"), units.Give(in("3 in"))
		}),
		"counted, all of them joins": panels(func(s *yardage.Panels) { s.Width, s.Seam = in("5 in"), units.Give(in("3 in")) }),
		"counted, the seam assumed": panels(func(s *yardage.Panels) {
			s.Width, s.Seam, s.Sides = in("1 in"), units.Given[units.Length]{}, units.Length{}
		}),
		"more than the most repeats":       panels(func(s *yardage.Panels) { s.Repeat = in("1 in").DivInt(20_000) }),
		"more than the most starts":        panels(func(s *yardage.Panels) { s.Repeat, s.Starts = in("9 in"), yardage.MaxRepeats+1 }),
		"bias, a square too small":         yardage.Bias{Strip: in("2 in"), Square: in("2 1/2 in")},
		"bias, a step too small":           yardage.Bias{Strip: in("2 in"), Wanted: in("9 in"), Step: in("1/999999999 in")},
		"bias, a step too small by little": yardage.Bias{Strip: in("2 in"), Wanted: in("9 in"), Seam: in("2 in"), Step: in("9 in").DivInt(yardage.MaxSide)},
		"bias, the seams make the step":    yardage.Bias{Strip: in("1999999 in"), Wanted: in("9 in")},
		"bias, more than any square":       yardage.Bias{Strip: in("1/9 in"), Wanted: in("99999999999999 in")},
		"bias, a square of too many steps": yardage.Bias{Strip: in("2 in"), Square: in("20 in"), Wanted: in("9 in"), Step: in("1 in").DivInt(100_000)},
		"purchase, more repeats than any":  yardage.Purchase{Need: in("90 in"), Repeat: in("1 in").DivInt(30_000), Shrink: pct(5), Starts: 7},
		"purchase, starts alone too many":  yardage.Purchase{Need: in("90 in"), Repeat: in("90 in"), Starts: yardage.MaxRepeats},
		"purchase, nothing left":           yardage.Purchase{Need: in("90 in"), Shrink: units.RatioOf(1, 1)},
		"remnant, all selvedge":            yardage.Remnant{Have: in("90 in"), HaveWidth: in("45 in"), ShrinkWidth: pct(4), Selvedge: in("30 in")},
		"remnant, all ends":                yardage.Remnant{Have: in("90 in"), HaveWidth: in("45 in"), ShrinkLength: pct(4), Ends: in("89 in")},
		"price, too much":                  yardage.Price{Length: in("99999 yd"), Each: money(t, "99999999999999.99"), Per: units.Yard, Mode: units.Up},
		"price, too much in fives":         yardage.Price{Length: in("99999 yd"), Each: money(t, "99999999999999.99"), Per: units.Yard, Coin: units.RatioOf(1, 20), Mode: units.Up},
		"price, a coin too dear":           yardage.Price{Length: in("1 yd"), Each: money(t, "1"), Per: units.Yard, Coin: units.RatioOf(1_000_000_000_000_000_000, 1), Mode: units.Up},
		"swatch, grown":                    yardage.Swatch{Before: in("20 in"), After: in("21 in")},
		"swatch, another shrinkage":        yardage.Swatch{Before: in("20 in"), After: in("19 in"), Shrink: pct(4)},
	} {
		t.Run(name, func(t *testing.T) { nountest.Limits(t, spec) })
	}
}
