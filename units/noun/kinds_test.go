package noun_test

import (
	"fmt"
	"slices"
	"testing"

	"example.com/clothyard/units/noun"
)

// A choice finds a value among its kinds by its type, and takes a pointer to one.
func TestKinds(t *testing.T) {
	type wide struct{ X int }
	type deep struct{ Y int }
	kinds := noun.Kinds[any]{{Name: "wide", Title: "Wide", Empty: wide{}}, {Name: "deep", Title: "Deep", Empty: deep{}}}
	if k, ok := kinds.Of(deep{3}); !ok || k.Title != "Deep" {
		t.Errorf("%+v, %t", k, ok)
	}
	for _, none := range []any{nil, 7, &wide{}} {
		if k, ok := kinds.Of(none); ok {
			t.Errorf("%v is %+v", none, k)
		}
	}
	if got := fmt.Sprint(kinds.Names(), slices.Collect(kinds.All())); got != "[wide deep] [{0} {0}]" {
		t.Error(got)
	}
	p := kinds.Begin("wide")
	p.(*wide).X = 5
	if v, ok := kinds.Held(p); !ok || v != (wide{5}) || kinds[0].Empty != (wide{}) || kinds.Begin("none") != nil {
		t.Errorf("%v, %t", v, ok)
	}
	var none *wide
	for _, bad := range []any{nil, wide{}, none, new(int)} {
		if v, ok := kinds.Held(bad); ok {
			t.Errorf("%v holds %v", bad, v)
		}
	}
}
