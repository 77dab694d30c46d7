package yardage_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
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
		{"width, nothing", errOf(yardage.Width{}.Plan()), []string{"asked" + missing, "from" + missing, "to" + missing}},
		{"width, signs", errOf(yardage.Width{Asked: minus, From: minus, To: minus}.Plan()), []string{"asked" + sign, "from" + sign, "to" + sign}},

		{"purchase, nothing", errOf(yardage.Purchase{}.Plan()), []string{"need" + missing}},
		{"purchase, all", errOf(yardage.Purchase{Need: minus, Repeat: minus, Starts: -1, Ends: minus, Shrink: one, Counter: minus}.Plan()),
			[]string{"need" + sign, "repeat" + sign, "starts" + rng, "ends" + sign, "shrink" + rng, "counter" + sign}},
		{"purchase, starts without repeat", errOf(yardage.Purchase{Need: in("1 in"), Starts: 1, Shrink: less}.Plan()), []string{"starts" + unused, "shrink" + sign}},
		{"purchase, too many repeats", errOf(yardage.Purchase{Need: in("1 in"), Repeat: in("1 in").DivInt(2_000_000)}.Plan()), []string{"repeat" + rng}},
		{"purchase, too many with the starts", errOf(yardage.Purchase{Need: in("2 in"), Repeat: in("1 in"), Starts: yardage.MaxRepeats - 1}.Plan()), []string{"repeat" + rng}},
		{"purchase, repeats beyond 64 bits", errOf(yardage.Purchase{Need: huge, Repeat: in("1 in")}.Plan()), []string{"repeat" + rng}},

		{"remnant, nothing", errOf(yardage.Remnant{}.Plan()), []string{"have" + missing, "haveWidth" + missing}},
		{"remnant, all", errOf(yardage.Remnant{Have: minus, HaveWidth: minus, Asked: minus, AskedWidth: minus, Need: minus, NeedWidth: minus,
			ShrinkLength: one, ShrinkWidth: less, Selvedge: minus, Ends: minus}.Plan()),
			[]string{"have" + sign, "haveWidth" + sign, "asked" + sign, "askedWidth" + sign, "need" + sign, "needWidth" + sign, "shrinkLength" + rng, "shrinkWidth" + sign, "selvedge" + sign, "ends" + sign}},
		{"remnant, widths alone", errOf(yardage.Remnant{Have: in("1 yd"), HaveWidth: in("1 yd"), AskedWidth: in("1 in"), NeedWidth: in("1 in")}.Plan()), []string{"askedWidth" + unused, "needWidth" + unused}},
		{"remnant, nothing left", errOf(yardage.Remnant{Have: in("1 in"), HaveWidth: in("1 in"), Selvedge: in("1/2 in"), Ends: in("1 in")}.Plan()), []string{"selvedge" + rng, "ends" + rng}},

		{"price, nothing", errOf(yardage.Price{}.Plan()), []string{"length" + missing, "each" + missing, "per" + missing}},
		{"price, all", errOf(yardage.Price{Length: minus, Each: decimal.NewFromInt(-1), Per: 99, Currency: "\n", Coin: less, Mode: 99}.Plan()),
			[]string{"length" + sign, "each" + sign, "per" + unknown, "currency: cannot be read", "coin" + sign, "mode" + unknown}},
		{"price, endless coin", errOf(yardage.Price{Length: in("1 yd"), Each: decimal.NewFromInt(1), Per: units.Yard, Coin: units.RatioOf(1, 3)}.Plan()), []string{"coin" + rng}},
		{"price, monstrous exponents", errOf(yardage.Price{Length: in("1 yd"), Each: decimal.New(1, 1<<30), Per: units.Yard}.Plan()), []string{"each" + rng}},
		{"price, tiny", errOf(yardage.Price{Length: in("1 yd"), Each: decimal.New(1, -1<<31), Per: units.Yard}.Plan()), []string{"each" + rng}},
		{"price, long number", errOf(yardage.Price{Length: in("1 yd"), Each: money(t, strings.Repeat("9", 10_000)), Per: units.Yard}.Plan()), []string{"each" + rng}},
		{"price, beyond counting", errOf(yardage.Price{Length: huge, Each: decimal.NewFromInt(1), Per: units.Yard}.Plan()), []string{"length" + rng}},
		{"price, more than 18 digits", errOf(yardage.Price{Length: in("2 yd"), Each: decimal.New(9, 15), Per: units.Yard}.Plan()), []string{"length" + rng}},

		{"swatch, nothing", errOf(yardage.Swatch{}.Plan()), []string{"before" + missing}},
		{"swatch, after alone", errOf(yardage.Swatch{After: in("1 in"), WidthShrink: pct(1)}.Plan()), []string{"before" + missing, "widthBefore" + missing}},
		{"swatch, before alone", errOf(yardage.Swatch{Before: in("1 in"), WidthBefore: in("1 in")}.Plan()), []string{"after" + missing, "widthAfter" + missing}},
		{"swatch, all", errOf(yardage.Swatch{Before: minus, After: minus, Shrink: one, WidthBefore: minus, WidthAfter: minus, WidthShrink: less}.Plan()),
			[]string{"before" + sign, "after" + sign, "shrink" + rng, "widthBefore" + sign, "widthAfter" + sign, "widthShrink" + sign}},
		{"swatch, grown", errOf(yardage.Swatch{Before: in("1 in"), After: in("2 in")}.Plan()), []string{"after" + rng}},
		{"swatch, both sides of a conflict", errOf(yardage.Swatch{Before: in("10 in"), After: in("9 in"), Shrink: pct(5)}.Plan()), []string{"shrink" + conflict}},

		{"panels, nothing", errOf(yardage.Panels{}.Plan()), []string{"cover" + missing, "fullness" + missing, "width" + missing, "drop" + missing}},
		{"panels, all", errOf(yardage.Panels{Cover: minus, Fullness: less, Widths: -1, Width: minus, Seam: units.Give(minus), Sides: minus, Drop: minus, Hems: minus, Repeat: minus, Starts: -1}.Plan()),
			[]string{"cover" + sign, "fullness" + sign, "widths" + rng, "width" + sign, "seam" + sign, "sides" + sign, "drop" + sign, "hems" + sign, "repeat" + sign, "starts" + rng}},
		{"panels, no repeat", errOf(yardage.Panels{Cover: in("1 yd"), Fullness: units.RatioOf(1, 2), Width: in("1 yd"), Drop: in("1 yd"), HalfDrop: true, Starts: 1}.Plan()),
			[]string{"fullness" + rng, "halfDrop" + unused, "starts" + unused}},
		{"panels, the seams eat the width", errOf(yardage.Panels{Cover: in("3 yd"), Fullness: one, Width: in("1 in"), Seam: units.Give(in("1/2 in")), Drop: in("1 yd")}.Plan()), []string{"width" + rng}},
		{"panels, too many widths", errOf(yardage.Panels{Cover: huge, Fullness: one, Width: in("54 in"), Drop: in("1 yd")}.Plan()), []string{"cover" + rng}},
		{"panels, too many repeats", errOf(yardage.Panels{Widths: 1, Width: in("1 in"), Drop: huge, Repeat: in("1 in")}.Plan()), []string{"repeat" + rng}},
		{"panels, MaxInt widths", errOf(yardage.Panels{Widths: int(^uint(0) >> 1), Width: in("1 in"), Drop: in("1 in")}.Plan()), []string{"widths" + rng}},

		{"bias, nothing", errOf(yardage.Bias{}.Plan()), []string{"strip" + missing, "square" + missing}},
		{"bias, all", errOf(yardage.Bias{Strip: minus, Wanted: minus, Square: minus, Seam: minus, Step: minus}.Plan()), []string{"strip" + sign, "wanted" + sign, "square" + sign, "seam" + sign, "step" + sign}},
		{"bias, step below zero", errOf(yardage.Bias{Strip: in("1 in"), Wanted: in("9 in"), Step: minus}.Plan()), []string{"step" + sign}},
		{"bias, a step for nothing", errOf(yardage.Bias{Strip: in("1 in"), Square: in("9 in"), Step: in("1 in")}.Plan()), []string{"step" + unused}},
		{"bias, a square off the step", errOf(yardage.Bias{Strip: in("1 in"), Square: in("9 1/2 in"), Wanted: in("20 in"), Step: in("1 in")}.Plan()), []string{"step" + conflict}},
		{"bias, a step too small", errOf(yardage.Bias{Strip: in("2 in"), Wanted: in("9 in"), Step: in("1 in").DivInt(yardage.MaxSide)}.Plan()), []string{"step" + rng, "wanted" + rng}},
		{"bias, a square of too many steps", errOf(yardage.Bias{Strip: in("2 in"), Square: in("20 in"), Wanted: in("9 in"), Step: in("1 in").DivInt(100_000)}.Plan()), []string{"step" + rng}},
		{"bias, square too small", errOf(yardage.Bias{Strip: in("2 in"), Square: in("2 1/2 in")}.Plan()), []string{"square" + rng}},
		{"bias, square short", errOf(yardage.Bias{Strip: in("2 in"), Square: in("20 in"), Wanted: in("200 in")}.Plan()), []string{"square" + conflict}},
		{"bias, beyond the greatest square", errOf(yardage.Bias{Strip: in("2 in"), Wanted: huge}.Plan()), []string{"wanted" + rng}},
	} {
		if d := cmp.Diff(c.want, found(t, c.err)); d != "" {
			t.Errorf("%s (-want +got)\n%s", c.name, d)
		}
	}
}

// A conflict names both sides.
func TestConflictStatesBothSides(t *testing.T) {
	err := errOf(yardage.Swatch{Before: in("10 in"), After: in("9 in"), Shrink: pct(5)}.Plan())
	for _, want := range []string{"shrink 1/20", "1/10", "before and after"} {
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

// The limits of pieces of one size are those meant, and turning them finds room.
func TestPieces(t *testing.T) {
	good := yardage.Pieces{Across: in("16 in"), Along: in("17 in"), Count: 12, Width: in("45 in")}
	for name, change := range map[string]func(*yardage.Pieces){
		"too wide":       func(s *yardage.Pieces) { s.Across = in("46 in") },
		"all selvedge":   func(s *yardage.Pieces) { s.Selvedge = in("45 in") },
		"too many":       func(s *yardage.Pieces) { s.Count = yardage.MaxPieces + 1 },
		"too thin":       func(s *yardage.Pieces) { s.Across = in("1 in").DivInt(50_000) },
		"too many rows":  func(s *yardage.Pieces) { s.Count, s.Length, s.Along = 0, in("9 in"), in("1 in").DivInt(900_000) },
		"neither wanted": func(s *yardage.Pieces) { s.Count = 0 },
	} {
		s := good
		change(&s)
		t.Run(name, func(t *testing.T) { nountest.Limits(t, s) })
	}
	nountest.Refused(t, yardage.Nouns(), yardage.Pieces{Across: in("2 in"), Along: in("2 in"), Count: 1, Width: in("9 in"), Length: in("9 in")}, "length", fault.Conflict)
	p, err := yardage.Pieces{Across: in("50 in"), Along: in("40 in"), Turn: true, Count: 2, Width: in("45 in")}.Plan()
	if err != nil || !p.Turned || p.Need != in("100 in") {
		t.Errorf("%+v, %v", p, err)
	}
}

// Cloth turned on its side has neither widths nor joins, and holds the drop; what was
// paid agrees with length and price, and two of the three are enough.
func TestSidewaysAndPaid(t *testing.T) {
	turned := yardage.Panels{Cover: in("72 in"), Fullness: units.RatioOf(2, 1), Width: in("118 in"), Sideways: true, Drop: in("84 in"), Hems: in("8 in")}
	for paths, change := range map[string]func(*yardage.Panels){
		"widths": func(s *yardage.Panels) { s.Widths = 2 },
		"seam":   func(s *yardage.Panels) { s.Seam = units.Give(in("0 in")) },
		"repeat": func(s *yardage.Panels) { s.Repeat = in("9 in") },
	} {
		s := turned
		change(&s)
		nountest.Refused(t, yardage.Nouns(), s, paths, fault.Unused)
	}
	narrow := turned
	narrow.Width = in("91 in")
	nountest.Limits(t, narrow)
	price := yardage.Price{Length: in("3 1/2 yd"), Each: money(t, "6"), Paid: money(t, "21"), Per: units.Yard}
	nountest.Refused(t, yardage.Nouns(), price, "", "")
	price.Paid = money(t, "20")
	nountest.Refused(t, yardage.Nouns(), price, "paid", fault.Conflict)
	price.Paid = money(t, "-1")
	nountest.Refused(t, yardage.Nouns(), price, "paid", fault.Sign)
	nountest.Refused(t, yardage.Nouns(), yardage.Price{Paid: money(t, "20"), Per: units.Yard}, "each", fault.Missing)
	p, err := yardage.Price{Each: money(t, "6"), Paid: money(t, "21"), Per: units.Yard}.Plan()
	if err != nil || p.Spec.Length != in("3 1/2 yd") {
		t.Errorf("%v, %v", p.Spec.Length, err)
	}
}

// A bill names the item at fault, adds up and finds the cheapest width.
func TestBill(t *testing.T) {
	items := []yardage.Item{{Need: in("2 yd"), Each: money(t, "11.10")}, {Need: in("49 in"), Each: money(t, "16")}, {Need: in("1 yd"), Each: money(t, "99")}}
	bill := yardage.Bill{Items: items, Per: units.Yard}
	p, err := bill.Plan()
	if err != nil || p.Cheapest != 2 || !p.Total.Equal(money(t, "143.20")) || p.Lines[1].Buy != in("1 3/8 yd") {
		t.Errorf("%+v, %v", p, err)
	}
	for paths, kind := range map[string]fault.Kind{"items[1].need": fault.Missing, "items[1].each": fault.Sign} {
		bad := bill
		bad.Items = slices.Clone(items)
		if bad.Items[1].Each = money(t, "-1"); kind == fault.Missing {
			bad.Items[1] = yardage.Item{Each: money(t, "1")}
		}
		nountest.Refused(t, yardage.Nouns(), bad, paths, kind)
	}
	nountest.Refused(t, yardage.Nouns(), yardage.Bill{Per: units.Yard}, "items", fault.Missing)
	bill.Items = make([]yardage.Item, yardage.MaxItems+1)
	nountest.Refused(t, yardage.Nouns(), bill, "items", fault.Range)
}
