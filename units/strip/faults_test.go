package strip_test

import (
	"errors"
	"math"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/strip"
	"github.com/google/go-cmp/cmp"
)

func TestFaults(t *testing.T) {
	huge := units.MustParse("1" + strings.Repeat("0", 300) + " in")
	for _, test := range []struct {
		why  string
		spec strip.Spec
		want []string
		err  error
	}{
		{"nothing given", strip.Spec{}, []string{"pieces", "each"}, fault.Missing},
		{"a length wanted and no pieces", strip.Spec{Least: in("9")}, []string{"pieces", "each"}, fault.Missing},
		{"pieces alone", strip.Spec{Pieces: 2}, []string{"each"}, fault.Missing},
		{"one piece alone", strip.Spec{Each: in("9")}, []string{"pieces"}, fault.Missing},
		{"everything wrong at once", strip.Spec{Pieces: -1, Each: in("-1"), Allowance: in("-1"), Ends: in("-1"), Ring: true, Least: in("-1")},
			[]string{"pieces", "each", "allowance", "ends", "ends", "least"}, fault.Sign},
		{"ends of a ring", strip.Spec{Pieces: 2, Each: in("9"), Ends: in("1"), Ring: true}, []string{"ends"}, fault.Unused},
		{"too many", strip.Spec{Pieces: strip.MaxPieces + 1, Each: in("1")}, []string{"pieces"}, fault.Range},
		{"far too many", strip.Spec{Pieces: math.MaxInt, Each: in("1")}, []string{"pieces"}, fault.Range},
		{"far too few", strip.Spec{Pieces: math.MinInt, Each: in("1"), Least: in("1")}, []string{"pieces"}, fault.Range},
		{"too long for the pieces", strip.Spec{Each: in("1"), Least: in("10001")}, []string{"least"}, fault.Range},
		{"longer than numbers go", strip.Spec{Each: in("1"), Least: huge}, []string{"least"}, fault.Range},
		{"the joins take the whole piece", strip.Spec{Pieces: 3, Each: in("1"), Allowance: in("1/2")}, []string{"each"}, fault.Range},
		{"and more than the piece", strip.Spec{Each: in("1"), Allowance: in("1"), Least: in("5")}, []string{"each"}, fault.Range},
		{"even of one piece in a ring", strip.Spec{Pieces: 1, Each: in("1"), Allowance: in("1/2"), Ring: true}, []string{"each"}, fault.Range},
		{"the ends take all", strip.Spec{Pieces: 1, Each: in("1"), Ends: in("1/2")}, []string{"each"}, fault.Range},
		{"a join in the end", strip.Spec{Pieces: 20, Each: in("1.1"), Allowance: in("1/2"), Ends: in("1")}, []string{"ends"}, fault.Range},
		{"less wanted than a join takes", strip.Spec{Pieces: 3, Allowance: in("1"), Least: in("1")}, []string{"least"}, fault.Range},
		{"too short", strip.Spec{Pieces: 2, Each: in("9"), Least: in("19")}, []string{"least"}, fault.Conflict},
	} {
		p, err := test.spec.Plan()
		var faults fault.Faults
		if !errors.As(err, &faults) {
			t.Errorf("%s: no faults but %v", test.why, err)
			continue
		}
		var paths []string
		for _, f := range faults {
			paths = append(paths, f.Path)
			if f.Limit == "" || f.Kind == "" {
				t.Errorf("%s: %q names no limit or no kind", test.why, f)
			}
		}
		if d := cmp.Diff(test.want, paths); d != "" || !errors.Is(err, test.err) {
			t.Errorf("%s: %v\n%s", test.why, err, d)
		}
		if !reflect.DeepEqual(p, strip.Plan{}) {
			t.Errorf("%s: a plan beside a fault", test.why)
		}
	}
}

// TestHuge is a length far beyond any cloth, which is exact all the same.
func TestHuge(t *testing.T) {
	huge := units.MustParse("1" + strings.Repeat("0", 300) + " in")
	p, err := strip.Spec{Pieces: strip.MaxPieces, Least: huge}.Plan()
	if err != nil || p.Sewn != huge {
		t.Error(p.Sewn, err)
	}
}
