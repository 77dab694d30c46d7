package seam_test

import (
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
)

// A seam that is left alone takes what is there: both of its plies were trimmed, so
// that it takes less than the seam did from the edge as it was cut.
func TestSeamLeftAlone(t *testing.T) {
	french := seam.Spec{Kind: seam.French, Drafted: in(5, 8), First: in(3, 8), Second: in(1, 4), Trim: in(1, 8)}
	wide := seam.Spec{Kind: seam.Plain, Drafted: in(2, 1)}
	p, err := alter.Letting{Total: in(1, 1), Seams: []alter.Let{
		{Name: "side", Spec: wide}, {Name: "back", Spec: french, Sewn: true, Least: in(3, 8)},
	}}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	o := p.Seams[1]
	if !o.Each.IsZero() || o.Has != in(3, 8) || o.Take != in(3, 8) {
		t.Errorf("it has %v, gives %v and takes %v from each ply", o.Has, o.Each, o.Take)
	}
	if o.After != o.Before {
		t.Errorf("it is sewn as %+v, and was as %+v", o.After.Spec, o.Before.Spec)
	}
	// The plan of the assembly stays as it was.
	a := edge.Assembly{
		Seams: []edge.Joint{{Name: "side", Spec: wide}, {Name: "back", Spec: french}},
		Edges: []edge.Course{{Name: "waist", Net: in(28, 1), Crossings: []edge.Crossing{{Seam: "back"}}}},
	}
	if a, err = p.Apply(a); err != nil {
		t.Fatal(err)
	}
	q, err := a.Plan()
	if err != nil || q.Edges[0].Change != (units.Near{}) {
		t.Errorf("%v, %v", q.Edges, err)
	}
}
