package units_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

func TestTapeOr(t *testing.T) {
	for _, c := range []struct {
		lengths string
		want    units.Tape
	}{
		{"", units.InchTape},
		{"0 in", units.InchTape},
		{"5/8 in", units.InchTape},
		{"15 mm", units.MetricTape},
		{"0.5 mm", units.MetricTape},
		{"1/32 in", units.InchTape},
		{"1/64 in", units.InchTape}, // on neither
		{"0.3 mm, 1/3 in", units.InchTape},
		{"0.3 mm, 1 cm", units.MetricTape},
		{"5 in", units.InchTape}, // 127 mm: on both
		{"127 mm, 1 cm", units.MetricTape},
		{"5 in, 10 in, 63.5 mm, 1 cm", units.MetricTape},
		{"1 in, 1 cm", units.InchTape},
		{"1 in, 1 cm, 2 cm", units.MetricTape},
		{"1 in, 2 in, 1 cm, 2 cm, 0 in", units.InchTape},
		{"-1 cm", units.MetricTape},
		{"-1/32 in", units.InchTape},
		{"100000000000000000000.5 mm", units.MetricTape},
	} {
		var lengths []units.Length
		for text := range strings.SplitSeq(c.lengths, ",") {
			if text != "" {
				lengths = append(lengths, units.MustParse(text))
			}
		}
		if got := units.Tape(0).Or(lengths...); got != c.want {
			t.Errorf("%s is on the tape %v, want %v", c.lengths, got, c.want)
		}
		slices.Reverse(lengths)
		if got := units.Tape(0).Or(lengths...); got != c.want {
			t.Errorf("%s turned round is on the tape %v, want %v", c.lengths, got, c.want)
		}
		for given := range units.Tapes() {
			if got := given.Or(lengths...); got != given {
				t.Errorf("%v was given and is %v", given, got)
			}
		}
	}
}

// TestTapeMarks holds the marks of both tapes to the smallest unit beside each.
func TestTapeMarks(t *testing.T) {
	for tape, step := range map[units.Tape]units.Length{units.InchTape: units.Inch.Frac(1, 32), units.MetricTape: units.Millimetre.Frac(1, 2)} {
		for n := range int64(100) {
			l := step.MulInt(n - 50)
			if !tape.Marks(l) || tape.Marks(l.Add(base())) || tape.Marks(l.Add(step.DivInt(2))) || tape.Marks(l.Add(step.DivInt(3))) || units.Tape(0).Marks(l) || units.Tape(9).Marks(l) {
				t.Fatalf("%v on the tape %v", l, tape)
			}
		}
	}
}

func TestTapeText(t *testing.T) {
	var all []string
	for tape := range units.Tapes() {
		all = append(all, tape.String())
		text, err := json.Marshal(tape)
		var back units.Tape
		if e := json.Unmarshal(text, &back); err != nil || e != nil || back != tape {
			t.Errorf("%s is read as %v, %v, %v", text, back, err, e)
		}
	}
	if !slices.Equal(all, []string{"inch", "metric"}) {
		t.Error(all)
	}
	tape := units.MetricTape
	if err := tape.UnmarshalText([]byte("cubit")); !errors.Is(err, fault.Unknown) || tape != units.MetricTape {
		t.Error(tape, err)
	}
	if _, err := units.Tape(9).MarshalText(); !errors.Is(err, fault.Unknown) {
		t.Error(err)
	}
	var a fault.Audit
	units.InchTape.Check(&a, "tape")
	units.Tape(0).Check(&a, "tape")
	units.Tape(9).Check(&a, "tape")
	if got, want := fmt.Sprint(a.Err()), "tape tape(9): not known, want one of inch, metric"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

// The same seam allowance, as each sewer has it.
func ExampleTape() {
	for _, width := range []string{"45 in", "115 cm"} {
		tape := units.Tape(0).Or(units.MustParse(width))
		fmt.Println(tape, tape.Of(units.Inch.Frac(5, 8), units.Millimetre.Of(15)))
	}
	// Output:
	// inch 5/8 in
	// metric 15 mm
}
