package seam_test

import (
	"testing"

	"example.com/clothyard/seam/dart"
	"example.com/clothyard/units"
)

// All that is irrational of a dart is as finely enclosed as its leg, also the cap of
// a dart that hardly folds, which is many times as long.
func TestFinenessOfDarts(t *testing.T) {
	fine := units.DefaultWithin()
	for _, d := range []dart.Spec{
		{Leg: in(3, 1), Width: in(424, 100), Allowance: in(1, 16)},
		{Leg: in(3, 1), Width: in(42426, 10000), Allowance: in(1, 16)},
		{Leg: in(300, 1), Width: in(1, 1), Slope: units.RatioOf(7, 1), Allowance: in(1, 16)},
		{Leg: in(3, 1), Width: in(599, 100), Allowance: in(1, 1000)},
	} {
		p, err := d.Plan()
		if err != nil {
			t.Fatal(err)
		}
		for name, n := range map[string]units.Near{
			"centre": p.Centre, "leg": p.Leg, "sewn": p.Sewn, "atSeam": p.AtSeam, "half": p.Half, "cap": p.Cap,
		} {
			if fine.Less(n.Within()) {
				t.Errorf("leg %v, width %v: %s %v is known within %v only", d.Leg, d.Width, name, n, n.Within())
			}
		}
		across, err := p.Across(d.Leg.DivInt(100))
		if err != nil || fine.Less(across.Within()) {
			t.Errorf("leg %v, width %v: across %v, within %v, %v", d.Leg, d.Width, across, across.Within(), err)
		}
	}
}
