package nountest

import (
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
)

// tapeOf is the tape of a plan's Spec, if it has one.
func tapeOf(plan noun.Plan) (units.Tape, bool) {
	spec := specOf(plan)
	if spec.Kind() != reflect.Struct {
		return 0, false
	}
	f := spec.FieldByName("Tape")
	if !f.IsValid() {
		return 0, false
	}
	tape, ok := f.Interface().(units.Tape)
	return tape, ok
}

// specOf is the solved Spec of a plan, without the choice round it.
func specOf(plan noun.Plan) reflect.Value {
	v := reflect.ValueOf(plan).FieldByName("Spec")
	if c, ok := reflect.New(v.Type()).Interface().(noun.Choice); ok {
		reflect.ValueOf(c).Elem().Set(v)
		_, held := c.Chosen()
		v = reflect.ValueOf(held)
	}
	return reflect.Indirect(v)
}

// onMarks checks that the lengths that a plan assumed lie on the marks of its tape.
func onMarks(t *testing.T, e noun.Entry, tape units.Tape, plan noun.Plan) {
	t.Helper()
	spec := specOf(plan)
	for _, key := range assumedBy(reflect.ValueOf(plan)) {
		f := spec.FieldByNameFunc(func(name string) bool { return strings.EqualFold(name, key) })
		if !f.IsValid() {
			continue
		}
		var l units.Length
		switch x := f.Interface().(type) {
		case units.Length:
			l = x
		case units.Given[units.Length]:
			l = x.Or(units.Length{})
		}
		if !tape.Marks(l) {
			t.Errorf("%s: %s is assumed to be %v, which lies on no mark of a tape of %v", e.Name(), key, l, tape)
		}
	}
}
