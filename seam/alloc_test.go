package seam_test

import (
	"testing"

	"example.com/clothyard/seam"
)

func TestAllocs(t *testing.T) {
	specs := []seam.Spec{
		{Kind: seam.French, Drafted: in(5, 8), First: in(3, 16), Second: in(1, 4), Fraying: true},
		{Kind: seam.French, Thickness: in(1, 32)}, {Kind: seam.Piped, Thickness: in(1, 32)}, {Kind: seam.HongKong, Thickness: in(1, 64), Fraying: true},
		{Kind: seam.Graded, Layers: seam.MaxLayers}, {Kind: seam.Plain, Finish: seam.Pinked, Fraying: true},
	}
	for k := range seam.Kinds {
		specs = append(specs, seam.Spec{Kind: k})
	}
	for _, s := range specs {
		p := planned(t, s)
		if n := testing.AllocsPerRun(100, func() { _, _ = s.Plan() }); n > 2 {
			t.Errorf("%v: a plan takes %v allocations", s.Kind, n)
		}
		if n := testing.AllocsPerRun(100, func() { _ = p.Sheet() }); n > 40 {
			t.Errorf("%v: a sheet takes %v allocations", s.Kind, n)
		}
	}
	d, err := seam.Dart{Length: in(6, 1), Width: in(1, 1)}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if n := testing.AllocsPerRun(100, func() { _ = d.Sheet() }); n > 40 {
		t.Errorf("dart: a sheet takes %v allocations", n)
	}
}
