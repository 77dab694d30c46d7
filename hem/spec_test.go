package hem_test

import (
	"reflect"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

func l(text string) units.Length {
	if text == "" {
		return units.Length{}
	}
	return units.MustParse(text + " in")
}

// TestSolve checks what follows and what is assumed.
func TestSolve(t *testing.T) {
	for _, test := range []struct {
		why     string
		s, want hem.Spec
		assumed string
	}{
		{"single, turned at the drafted line", hem.Spec{Tape: units.InchTape, Kind: hem.Single, Drafted: l("1")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Single, Drafted: l("1"), Cut: l("1"), Depth: l("1"), Take: l("1"), Stitch: l("1/4")}, "cut depth take stitch"},
		{"single, Depth follows from Take", hem.Spec{Tape: units.InchTape, Kind: hem.Single, Take: l("3/8"), Cut: l("1/2")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Single, Drafted: l("1/2"), Cut: l("1/2"), Depth: l("3/8"), Take: l("3/8"), Stitch: l("3/16")}, "drafted stitch"},
		{"single, both agree", hem.Spec{Tape: units.InchTape, Kind: hem.Single, Take: l("2"), Depth: l("2")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Single, Drafted: l("2"), Cut: l("2"), Depth: l("2"), Take: l("2"), Stitch: l("1/4")}, "drafted cut stitch"},
		{"double, Take follows", hem.Spec{Tape: units.InchTape, Kind: hem.Double, First: l("1/4"), Depth: l("2"), Drafted: l("2 1/2")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Double, First: l("1/4"), Depth: l("2"), Take: l("2 1/4"), Drafted: l("2 1/2"), Cut: l("2 1/2"), Stitch: l("1/16")}, "cut stitch"},
		{"double, Depth follows", hem.Spec{Tape: units.InchTape, Kind: hem.Double, First: l("1/4"), Take: l("1"), Stitch: l("1/8")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Double, First: l("1/4"), Depth: l("3/4"), Take: l("1"), Drafted: l("1"), Cut: l("1"), Stitch: l("1/8")}, "drafted cut"},
		{"double, First follows", hem.Spec{Tape: units.InchTape, Kind: hem.Double, Depth: l("3/4"), Take: l("1")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Double, First: l("1/4"), Depth: l("3/4"), Take: l("1"), Drafted: l("1"), Cut: l("1"), Stitch: l("1/16")}, "drafted cut stitch"},
		{"double, first turn of the table", hem.Spec{Tape: units.InchTape, Kind: hem.Double, Depth: l("1")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Double, First: l("1/4"), Depth: l("1"), Take: l("1 1/4"), Drafted: l("1 1/4"), Cut: l("1 1/4"), Stitch: l("1/16")}, "drafted cut first take stitch"},
		{"double, too shallow for it", hem.Spec{Tape: units.InchTape, Kind: hem.Double, Depth: l("1/16")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Double, First: l("1/16"), Depth: l("1/16"), Take: l("1/8"), Drafted: l("1/8"), Cut: l("1/8"), Stitch: l("1/32")}, "drafted cut first take stitch"},
		{"double, all of a small take", hem.Spec{Tape: units.InchTape, Kind: hem.Double, Take: l("3/8")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Double, First: l("3/16"), Depth: l("3/16"), Take: l("3/8"), Drafted: l("3/8"), Cut: l("3/8"), Stitch: l("1/16")}, "drafted cut first depth stitch"},
		{"double, turned at the drafted line", hem.Spec{Tape: units.InchTape, Kind: hem.Double, First: l("1/4"), Drafted: l("2")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Double, First: l("1/4"), Depth: l("1 3/4"), Take: l("2"), Drafted: l("2"), Cut: l("2"), Stitch: l("1/16")}, "cut depth take stitch"},
		{"double, Cut wins over Drafted", hem.Spec{Tape: units.InchTape, Kind: hem.Double, Drafted: l("2"), Cut: l("1")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Double, First: l("1/4"), Depth: l("3/4"), Take: l("1"), Drafted: l("2"), Cut: l("1"), Stitch: l("1/16")}, "first depth take stitch"},
		{"narrow, the table", hem.Spec{Tape: units.InchTape, Kind: hem.Narrow},
			hem.Spec{Tape: units.InchTape, Kind: hem.Narrow, First: l("1/4"), Depth: l("1/4"), Take: l("1/2"), Drafted: l("1/2"), Cut: l("1/2"), Stitch: l("1/16")}, "drafted cut first depth take stitch"},
		{"narrow, equal to First", hem.Spec{Tape: units.InchTape, Kind: hem.Narrow, First: l("1/8")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Narrow, First: l("1/8"), Depth: l("1/8"), Take: l("1/4"), Drafted: l("1/4"), Cut: l("1/4"), Stitch: l("1/16")}, "drafted cut depth take stitch"},
		{"narrow, equal to Depth", hem.Spec{Tape: units.InchTape, Kind: hem.Narrow, Depth: l("3/8"), Drafted: l("1")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Narrow, First: l("3/8"), Depth: l("3/8"), Take: l("3/4"), Drafted: l("1"), Cut: l("1"), Stitch: l("1/16")}, "cut first take stitch"},
		{"narrow, half of Take", hem.Spec{Tape: units.InchTape, Kind: hem.Narrow, Take: l("1/3")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Narrow, First: l("1/6"), Depth: l("1/6"), Take: l("1/3"), Drafted: l("1/3"), Cut: l("1/3"), Stitch: l("1/16")}, "drafted cut first depth stitch"},
		{"baby hem, as deep as what is left", hem.Spec{Tape: units.InchTape, Kind: hem.Narrow, First: l("1/2"), Trim: l("1/8")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Narrow, First: l("1/2"), Trim: l("1/8"), Depth: l("1/8"), Take: l("5/8"), Drafted: l("5/8"), Cut: l("5/8"), Stitch: l("1/16")}, "drafted cut depth take stitch"},
		{"cut slit, which has no allowance", hem.Spec{Tape: units.InchTape, Kind: hem.Slit, Opening: hem.Tucked, Depth: l("3/16")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Slit, Opening: hem.Tucked, First: l("3/16"), Depth: l("3/16"), Take: l("3/8"), Stitch: l("1/16")}, "first take stitch"},
		{"opening, as wide as the seam", hem.Spec{Tape: units.InchTape, Kind: hem.Slit, Opening: hem.InSeam, Take: l("1/4"), SeamTake: l("7/16")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Slit, Opening: hem.InSeam, First: l("1/8"), Depth: l("1/8"), Take: l("1/4"), Drafted: l("7/16"), Cut: l("7/16"), Stitch: l("1/16"), SeamTake: l("7/16")}, "drafted cut first depth stitch"},
	} {
		t.Run(test.why, func(t *testing.T) {
			p, err := test.s.Plan()
			if err != nil {
				t.Fatal(err)
			}
			if p.Spec != test.want {
				t.Errorf("got\n%v\nwant\n%v", p.Spec, test.want)
			}
			if got := strings.Join(p.Assumed, " "); got != test.assumed {
				t.Errorf("assumed %q, want %q", got, test.assumed)
			}
			nountest.Solved(t, p)
		})
	}
}

// TestWorked is a hem worked by hand: drafted 1 1/4, cut at 3/4, turned 3/8 twice.
func TestWorked(t *testing.T) {
	s := hem.Spec{Tape: units.InchTape, Kind: hem.Double, Drafted: l("1 1/4"), Cut: l("3/4"), First: l("3/8"), Depth: l("3/8"),
		Slope: units.RatioOf(5, 64), Edges: 4, Sweep: l("49 3/4")}
	p, err := s.Plan()
	if err != nil {
		t.Fatal(err)
	}
	solved := p.Spec
	want := hem.Plan{
		Spec: solved, Assumed: []string{"stitch"}, Taken: l("3/4"), CutOff: l("1/2"), Plies: 3,
		RawToFirstFold: l("3/8"), RawToSecondFold: l("3/4"), RawToStitch: l("7/16"), FinishedToStitch: l("5/16"),
		LineToFirstFold: l("3/8"), LineToRaw: l("3/4"), LineToStitch: l("-5/16"),
		Excess: l("15/64"), Inset: l("15/256"), Swept: l("49 3/4"), Run: l("49 3/4"),
		Fullness: units.Exactly(l("15/64")), Round: units.Exactly(l("49 3/4")),
		Taper: []hem.Taper{
			{At: "finished edge"},
			{At: "first fold", Down: l("3/8"), Up: l("3/8"), Out: l("-15/512"), Inset: l("15/256")},
			{At: "raw edge", Down: l("3/4"), Inset: l("15/256")},
		},
	}
	if !reflect.DeepEqual(p, want) {
		t.Errorf("got\n%+v\nwant\n%+v", p, want)
	}
	// Each fold of the cloth lies on the garment: the mirrored side edge is as far
	// out at the first fold as the garment is where that fold comes to lie.
	straight := p.LineToFirstFold.Scale(s.Slope)
	if got, want := straight.Sub(p.Inset), p.LineToFirstFold.Neg().Scale(s.Slope); got != want {
		t.Errorf("first fold lies at %v, the garment at %v", got, want)
	}
	straight = p.LineToRaw.Scale(s.Slope)
	// The raw edge comes to lie First below the first fold, which lies Depth above the line.
	if got, want := straight.Sub(p.Inset), solved.First.Sub(solved.Depth).Scale(s.Slope); got != want {
		t.Errorf("raw edge lies at %v, the garment at %v", got, want)
	}
	s.Cut = units.Length{}
	if p, err = s.Plan(); err != nil || p.Drift != l("1/2") || p.SweepDrift != l("5/32") || p.Swept != l("49 29/32") || !p.CutOff.IsZero() {
		t.Errorf("uncut: %+v %v", p, err)
	}
	s.Cut = l("1/2")
	if p, err = s.Plan(); err != nil || p.Drift != l("-1/4") || p.SweepDrift != l("-5/64") || p.LineToSecondFold != l("-1/4") || p.LineToRaw != l("1/2") {
		t.Errorf("cut short: %+v %v", p, err)
	}
}

// TestSlit checks the three ways to end a slit.
func TestSlit(t *testing.T) {
	s := hem.Spec{Tape: units.InchTape, Kind: hem.Slit, Opening: hem.Tucked, First: l("3/16"), Depth: l("3/16"), Sweep: l("17 1/2"), Slit: l("3")}
	p, err := s.Plan()
	if err != nil || p.Lost != l("3/4") || p.Swept != l("16 3/4") || p.Run != l("6") || p.LineToFirstFold != l("-3/16") || p.LineToRaw != l("") {
		t.Errorf("cut: %+v %v", p, err)
	}
	s.Opening = hem.Faced
	if q, err := s.Plan(); err != nil || q.Swept != p.Swept || q.Jog != l("") {
		t.Errorf("faced: %+v %v", q, err)
	}
	s.Opening, s.SeamTake, s.Drafted = hem.InSeam, l("7/16"), l("5/8")
	if p, err = s.Plan(); err != nil || p.Jog != l("1/16") || p.Drift != l("1/4") || p.Swept != l("18") || p.Lost != l("3/4") {
		t.Errorf("in a seam: %+v %v", p, err)
	}
	s.SeamTake = l("5/16")
	if p, err = s.Plan(); err != nil || p.Jog != l("-1/16") {
		t.Errorf("gaping: %+v %v", p, err)
	}
}

func TestPieces(t *testing.T) {
	p, err := hem.Spec{Kind: hem.Double, First: l("1/4"), Depth: l("3/4")}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	single := hem.Plan{Plies: 2}
	type row struct{ Finished, CutFor units.Length }
	for hems, want := range map[int]row{
		1: {l("10"), l("12")}, 2: {l("9"), l("13")}, 12: {l("-1"), l("23")},
		0: {}, -1: {}, hem.MaxHems + 1: {}, int(^uint(0) >> 1): {},
	} {
		if got := (row{p.Finished(l("11"), hems), p.CutFor(l("11"), hems)}); got != want {
			t.Errorf("%d hems: %v, want %v", hems, got, want)
		}
	}
	got := []int{p.Crossing(5), single.Crossing(5), p.Crossing(0), p.Crossing(-1), p.Crossing(hem.MaxRidge), p.Crossing(hem.MaxRidge + 1)}
	if diff := cmp.Diff([]int{15, 10, 0, 0, 3 * hem.MaxRidge, 0}, got); diff != "" {
		t.Error(diff)
	}
}
