package yardage_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage"
)

// found is path and kind of each fault, in order.
func found(t *testing.T, err error) []string {
	t.Helper()
	var fs fault.Faults
	if !errors.As(err, &fs) {
		t.Fatalf("%v: not fault.Faults", err)
	}
	out := make([]string, len(fs))
	for i, f := range fs {
		out[i] = f.Path + ": " + f.Kind.Error()
		if f.Limit == "" {
			t.Errorf("%s: no limit said", f.Path)
		}
		if !errors.Is(f.Kind, fault.Missing) && f.Got == "" {
			t.Errorf("%s: nothing said of what was given", f.Path)
		}
	}
	return out
}

func errOf[P any](_ P, err error) error { return err }

func TestFaults(t *testing.T) {
	minus, huge := in("-1 in"), in("1"+strings.Repeat("0", 300)+" in")
	missing, sign, unused, rng, conflict, unknown := ": not given", ": wrong sign", ": not used here", ": out of range", ": disagrees with what else is given", ": not known"
	one, less := units.RatioOf(1, 1), units.RatioOf(-1, 100)
	for _, c := range []struct {
		name string
		err  error
		want []string
	}{
		{"width, nothing", errOf(yardage.Width{}.Plan()), []string{"Asked" + missing, "From" + missing, "To" + missing}},
		{"width, signs", errOf(yardage.Width{Asked: minus, From: minus, To: minus}.Plan()), []string{"Asked" + sign, "From" + sign, "To" + sign}},

		{"purchase, nothing", errOf(yardage.Purchase{}.Plan()), []string{"Need" + missing}},
		{"purchase, all", errOf(yardage.Purchase{Need: minus, Repeat: minus, Starts: -1, Ends: minus, Shrink: one, Counter: minus}.Plan()),
			[]string{"Need" + sign, "Repeat" + sign, "Starts" + rng, "Ends" + sign, "Shrink" + rng, "Counter" + sign}},
		{"purchase, starts without repeat", errOf(yardage.Purchase{Need: in("1 in"), Starts: 1, Shrink: less}.Plan()), []string{"Starts" + unused, "Shrink" + sign}},
		{"purchase, too many repeats", errOf(yardage.Purchase{Need: in("1 in"), Repeat: in("1 in").DivInt(2_000_000)}.Plan()), []string{"Repeat" + rng}},
		{"purchase, too many with the starts", errOf(yardage.Purchase{Need: in("2 in"), Repeat: in("1 in"), Starts: yardage.MaxRepeats - 1}.Plan()), []string{"Repeat" + rng}},
		{"purchase, repeats beyond 64 bits", errOf(yardage.Purchase{Need: huge, Repeat: in("1 in")}.Plan()), []string{"Repeat" + rng}},

		{"remnant, nothing", errOf(yardage.Remnant{}.Plan()), []string{"Have" + missing, "HaveWidth" + missing}},
		{"remnant, all", errOf(yardage.Remnant{Have: minus, HaveWidth: minus, Asked: minus, AskedWidth: minus, Need: minus, NeedWidth: minus,
			ShrinkLength: one, ShrinkWidth: less, Selvedge: minus, Ends: minus}.Plan()),
			[]string{"Have" + sign, "HaveWidth" + sign, "Asked" + sign, "AskedWidth" + sign, "Need" + sign, "NeedWidth" + sign, "ShrinkLength" + rng, "ShrinkWidth" + sign, "Selvedge" + sign, "Ends" + sign}},
		{"remnant, widths alone", errOf(yardage.Remnant{Have: in("1 yd"), HaveWidth: in("1 yd"), AskedWidth: in("1 in"), NeedWidth: in("1 in")}.Plan()), []string{"AskedWidth" + unused, "NeedWidth" + unused}},
		{"remnant, nothing left", errOf(yardage.Remnant{Have: in("1 in"), HaveWidth: in("1 in"), Selvedge: in("1/2 in"), Ends: in("1 in")}.Plan()), []string{"Selvedge" + rng, "Ends" + rng}},

		{"price, nothing", errOf(yardage.Price{}.Plan()), []string{"Length" + missing, "Each" + missing, "Per" + missing}},
		{"price, all", errOf(yardage.Price{Length: minus, Each: decimal.NewFromInt(-1), Per: 99, Currency: "\n", Coin: less, Mode: 99}.Plan()),
			[]string{"Length" + sign, "Each" + sign, "Per" + unknown, "Currency: cannot be read", "Coin" + sign, "Mode" + unknown}},
		{"price, endless coin", errOf(yardage.Price{Length: in("1 yd"), Each: decimal.NewFromInt(1), Per: units.Yard, Coin: units.RatioOf(1, 3)}.Plan()), []string{"Coin" + rng}},
		{"price, monstrous exponents", errOf(yardage.Price{Length: in("1 yd"), Each: decimal.New(1, 1<<30), Per: units.Yard}.Plan()), []string{"Each" + rng}},
		{"price, tiny", errOf(yardage.Price{Length: in("1 yd"), Each: decimal.New(1, -1<<31), Per: units.Yard}.Plan()), []string{"Each" + rng}},
		{"price, long number", errOf(yardage.Price{Length: in("1 yd"), Each: money(t, strings.Repeat("9", 10_000)), Per: units.Yard}.Plan()), []string{"Each" + rng}},
		{"price, beyond counting", errOf(yardage.Price{Length: huge, Each: decimal.NewFromInt(1), Per: units.Yard}.Plan()), []string{"Length" + rng}},
		{"price, more than 18 digits", errOf(yardage.Price{Length: in("2 yd"), Each: decimal.New(9, 15), Per: units.Yard}.Plan()), []string{"Length" + rng}},

		{"swatch, nothing", errOf(yardage.Swatch{}.Plan()), []string{"Before" + missing}},
		{"swatch, after alone", errOf(yardage.Swatch{After: in("1 in"), WidthShrink: pct(1)}.Plan()), []string{"Before" + missing, "WidthBefore" + missing}},
		{"swatch, before alone", errOf(yardage.Swatch{Before: in("1 in"), WidthBefore: in("1 in")}.Plan()), []string{"After" + missing, "WidthAfter" + missing}},
		{"swatch, all", errOf(yardage.Swatch{Before: minus, After: minus, Shrink: one, WidthBefore: minus, WidthAfter: minus, WidthShrink: less}.Plan()),
			[]string{"Before" + sign, "After" + sign, "Shrink" + rng, "WidthBefore" + sign, "WidthAfter" + sign, "WidthShrink" + sign}},
		{"swatch, grown", errOf(yardage.Swatch{Before: in("1 in"), After: in("2 in")}.Plan()), []string{"After" + rng}},
		{"swatch, both sides of a conflict", errOf(yardage.Swatch{Before: in("10 in"), After: in("9 in"), Shrink: pct(5)}.Plan()), []string{"Shrink" + conflict}},

		{"panels, nothing", errOf(yardage.Panels{}.Plan()), []string{"Cover" + missing, "Fullness" + missing, "Width" + missing, "Drop" + missing}},
		{"panels, all", errOf(yardage.Panels{Cover: minus, Fullness: less, Widths: -1, Width: minus, Seam: minus, Sides: minus, Drop: minus, Hems: minus, Repeat: minus, Starts: -1}.Plan()),
			[]string{"Cover" + sign, "Fullness" + sign, "Widths" + rng, "Width" + sign, "Seam" + sign, "Sides" + sign, "Drop" + sign, "Hems" + sign, "Repeat" + sign, "Starts" + rng}},
		{"panels, no repeat", errOf(yardage.Panels{Cover: in("1 yd"), Fullness: units.RatioOf(1, 2), Width: in("1 yd"), Drop: in("1 yd"), HalfDrop: true, Starts: 1}.Plan()),
			[]string{"Fullness" + rng, "HalfDrop" + unused, "Starts" + unused}},
		{"panels, the seams eat the width", errOf(yardage.Panels{Cover: in("3 yd"), Fullness: one, Width: in("1 in"), Seam: in("1/2 in"), Drop: in("1 yd")}.Plan()), []string{"Width" + rng}},
		{"panels, too many widths", errOf(yardage.Panels{Cover: huge, Fullness: one, Width: in("54 in"), Drop: in("1 yd")}.Plan()), []string{"Cover" + rng}},
		{"panels, too many repeats", errOf(yardage.Panels{Widths: 1, Width: in("1 in"), Drop: huge, Repeat: in("1 in")}.Plan()), []string{"Repeat" + rng}},
		{"panels, MaxInt widths", errOf(yardage.Panels{Widths: int(^uint(0) >> 1), Width: in("1 in"), Drop: in("1 in")}.Plan()), []string{"Widths" + rng}},

		{"bias, nothing", errOf(yardage.Bias{}.Plan()), []string{"Strip" + missing, "Square" + missing}},
		{"bias, all", errOf(yardage.Bias{Strip: minus, Wanted: minus, Square: minus, Seam: minus, Step: minus}.Plan()), []string{"Strip" + sign, "Wanted" + sign, "Square" + sign, "Seam" + sign, "Step" + sign}},
		{"bias, step below zero", errOf(yardage.Bias{Strip: in("1 in"), Wanted: in("9 in"), Step: minus}.Plan()), []string{"Step" + sign}},
		{"bias, a step for nothing", errOf(yardage.Bias{Strip: in("1 in"), Square: in("9 in"), Step: in("1 in")}.Plan()), []string{"Step" + unused}},
		{"bias, a square off the step", errOf(yardage.Bias{Strip: in("1 in"), Square: in("9 1/2 in"), Wanted: in("20 in"), Step: in("1 in")}.Plan()), []string{"Step" + conflict}},
		{"bias, a step too small", errOf(yardage.Bias{Strip: in("2 in"), Wanted: in("9 in"), Step: in("1 in").DivInt(yardage.MaxSide)}.Plan()), []string{"Step" + rng, "Wanted" + rng}},
		{"bias, a square of too many steps", errOf(yardage.Bias{Strip: in("2 in"), Square: in("20 in"), Wanted: in("9 in"), Step: in("1 in").DivInt(100_000)}.Plan()), []string{"Step" + rng}},
		{"bias, square too small", errOf(yardage.Bias{Strip: in("2 in"), Square: in("2 1/2 in")}.Plan()), []string{"Square" + rng}},
		{"bias, square short", errOf(yardage.Bias{Strip: in("2 in"), Square: in("20 in"), Wanted: in("200 in")}.Plan()), []string{"Square" + conflict}},
		{"bias, beyond the greatest square", errOf(yardage.Bias{Strip: in("2 in"), Wanted: huge}.Plan()), []string{"Wanted" + rng}},
	} {
		if d := cmp.Diff(c.want, found(t, c.err)); d != "" {
			t.Errorf("%s (-want +got)\n%s", c.name, d)
		}
	}
}

// A conflict names both sides.
func TestConflictStatesBothSides(t *testing.T) {
	err := errOf(yardage.Swatch{Before: in("10 in"), After: in("9 in"), Shrink: pct(5)}.Plan())
	for _, want := range []string{"Shrink 1/20", "1/10", "Before and After"} {
		if !strings.Contains(err.Error(), want) {
			t.Errorf("%v does not say %q", err, want)
		}
	}
}

// A number of 200,000 digits is refused, not worked with.
func TestLongNumbersAreRefused(t *testing.T) {
	each := money(t, strings.Repeat("7", 200_000))
	err := errOf(yardage.Price{Length: in("1 yd"), Each: each, Per: units.Yard}.Plan())
	if !errors.Is(err, fault.Range) || len(err.Error()) > 200 {
		t.Error("not refused, or the whole number is in the fault")
	}
}
