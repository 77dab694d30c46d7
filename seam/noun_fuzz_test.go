package seam_test

import (
	"reflect"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/dart"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
)

// ratio is a ratio off the bytes, now and then a fine one.
func (r *reader) ratio() units.Ratio {
	switch how := r.byte(); {
	case how < 120:
		return units.Ratio{}
	case how < 230:
		return units.RatioOf(int64(int8(r.byte())), 1+int64(r.byte()))
	}
	return units.RatioOf(int64(int8(r.byte())), 1+int64(r.byte())<<20)
}

// fill puts bytes into every field of a spec.
func (r *reader) fill(v reflect.Value) {
	switch x := v.Addr().Interface().(type) {
	case *units.Length:
		*x = r.length()
		return
	case *units.Ratio:
		*x = r.ratio()
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			r.fill(v.Field(i))
		}
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), int(r.byte()%4), 4))
		for i := range v.Len() {
			r.fill(v.Index(i))
		}
	case reflect.Bool:
		v.SetBool(r.byte()&1 == 1)
	case reflect.Uint8:
		v.SetUint(uint64(r.byte() % 8))
	case reflect.Int:
		v.SetInt(int64(int8(r.byte()) / 8))
	case reflect.String:
		v.SetString(string(r.byte()%128 | 32))
	}
}

// Whatever the bytes, a noun is planned and its sheet comes out, or it has faults.
func FuzzNoun(f *testing.F) {
	nouns := []any{dart.Spec{}, dart.Pivot{}, seam.Binding{}, seam.Row{}, seam.Roll{}, seam.Favour{}, alter.Easing{}, edge.Meeting{}, alter.Letting{}, alter.Lengthening{}}
	for i := range nouns {
		f.Add([]byte{byte(i), 1, 150, 96, 0, 0, 0, 150, 16, 0, 0, 0, 0, 0})
		f.Add([]byte{byte(i), 2, 150, 96, 150, 90, 1, 150, 16, 200, 3, 8, 250, 1, 2, 3, 4, 5, 6, 7, 8})
	}
	f.Add([]byte{2, 3, 0, 150, 4, 0, 0, 0, 1, 0, 0, 150, 100, 0, 0, 0, 0, 150, 90})                // piping on the bias
	f.Add([]byte{8, 150, 8, 2, 65, 1, 150, 16, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 8, 1}) // let out
	f.Fuzz(func(t *testing.T, b []byte) {
		r := &reader{b}
		spec := reflect.New(reflect.TypeOf(nouns[int(r.byte())%len(nouns)])).Elem()
		r.fill(spec)
		p, err := planNoun(t, spec.Interface())
		if err != nil {
			faultPaths(t, err)
			return
		}
		sh := p.Sheet()
		if err := sh.Check(); err != nil {
			t.Errorf("%+v: %v", spec.Interface(), err)
		}
		if sh.Title == "" || len(sh.Steps) == 0 {
			t.Errorf("%+v: an empty sheet", spec.Interface())
		}
	})
}
