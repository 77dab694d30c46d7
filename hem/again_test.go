package hem_test

import (
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"
	"unicode/utf8"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/ticket"
)

// scatter puts small amounts into one of so many fields of a spec, of any type.
func scatter(r *rand.Rand, v reflect.Value, few int) {
	for i := range v.NumField() {
		f := v.Field(i)
		if r.IntN(few) > 0 && v.Type().Field(i).Name != "Kind" && f.Type() != reflect.TypeFor[hem.HemSide]() {
			continue
		}
		switch f.Interface().(type) {
		case units.Length:
			f.Set(reflect.ValueOf(units.Inch.Frac(r.Int64N(32)+1, 16)))
		case units.Ratio:
			f.Set(reflect.ValueOf(units.RatioOf(r.Int64N(9)-2, 8)))
		case bool:
			f.SetBool(true)
		case int:
			f.SetInt(r.Int64N(60) + 1)
		default:
			if f.Kind() == reflect.Struct {
				scatter(r, f, 2)
			} else {
				f.SetUint(uint64(r.IntN(16)))
			}
		}
	}
}

// TestSolvedAgain: the solved spec of each noun gives the same plan, in which
// nothing is assumed any more, and no line of its sheet is wider than the page.
func TestSolvedAgain(t *testing.T) {
	for name, noun := range map[string]func(*testing.T, *rand.Rand) bool{
		"hem":    again[hem.Spec, hem.Plan],
		"casing": again[hem.Casing, hem.CasingPlan],
		"tucks":  again[hem.Tucks, hem.TucksPlan],
		"mitre":  again[hem.Mitre, hem.MitrePlan],
	} {
		r, planned := rand.New(rand.NewPCG(99, 4)), 0
		for tries := 0; tries < 60_000 && planned < 300 && !t.Failed(); tries++ {
			if noun(t, r) {
				planned++
			}
		}
		if planned < 300 && !t.Failed() {
			t.Errorf("%s: %d planned", name, planned)
		}
	}
}

// again plans a random spec and what is solved of it, and reports whether there is a
// plan.
func again[S interface{ Plan() (P, error) }, P interface{ Sheet() ticket.Sheet }](t *testing.T, r *rand.Rand) bool {
	t.Helper()
	var s S
	scatter(r, reflect.ValueOf(&s).Elem(), r.IntN(8)+2)
	p, err := s.Plan()
	if err != nil {
		return false
	}
	nountest.Solved(t, p)
	sheet := p.Sheet()
	if err := sheet.Check(); err != nil {
		t.Errorf("%+v: %v", s, err)
	}
	for line := range strings.SplitSeq(sheet.Text(units.Notation{}, units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 10)}), "\n") {
		if utf8.RuneCountInString(line) > ticket.Columns {
			t.Errorf("%d columns: %s", utf8.RuneCountInString(line), line)
		}
	}
	return true
}
