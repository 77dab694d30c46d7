package hem_test

import (
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
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
	v := reflect.ValueOf(&p).Elem()
	q, err := v.FieldByName("Spec").Interface().(S).Plan()
	w := reflect.ValueOf(&q).Elem()
	if err != nil {
		t.Errorf("%+v\nsolved is refused: %v", s, err)
		return true
	}
	if f := w.FieldByName("Assumed"); f.Len() != 0 {
		t.Errorf("%+v\nsolved, %v is assumed", s, f)
	}
	w.FieldByName("Assumed").Set(v.FieldByName("Assumed"))
	if !reflect.DeepEqual(p, q) {
		t.Errorf("%+v\nplanned %+v\nagain   %+v", s, p, q)
	}
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

// TestZeroPlans: what no Spec gives has a sheet all the same, and nothing panics.
func TestZeroPlans(t *testing.T) {
	plans := []interface{ Sheet() ticket.Sheet }{hem.Plan{}, hem.CasingPlan{}, hem.TucksPlan{}, hem.MitrePlan{}}
	for _, p := range plans {
		if s := p.Sheet(); s.Title == "" || s.Check() != nil || s.Text() == "" {
			t.Errorf("%T: %+v", p, s)
		}
		v := reflect.ValueOf(p)
		for i := range v.NumMethod() {
			m := v.Method(i)
			in := make([]reflect.Value, m.Type().NumIn())
			for k := range in {
				in[k] = reflect.Zero(m.Type().In(k))
			}
			if !slices.ContainsFunc(in, func(v reflect.Value) bool { return v.Kind() == reflect.Func }) {
				m.Call(in)
			}
		}
	}
}
