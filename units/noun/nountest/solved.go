package nountest

import (
	"reflect"
	"testing"
)

// Solved checks a Plan: its Spec, which is solved, plans to the same once more, but
// that nothing is left to assume.
func Solved(t *testing.T, plan any) {
	t.Helper()
	first := reflect.New(reflect.TypeOf(plan)).Elem()
	first.Set(reflect.ValueOf(plan))
	again, err := planOf(first.FieldByName("Spec"))
	if err != nil {
		t.Fatalf("%+v\nsolved is refused: %v", plan, err)
	}
	if assumed := again.FieldByName("Assumed"); assumed.Len() > 0 {
		t.Fatalf("%+v\nsolved assumes %v", plan, assumed)
	}
	first.FieldByName("Assumed").SetZero()
	if !reflect.DeepEqual(first.Interface(), again.Interface()) {
		t.Fatalf("%+v\nsolved gives\n%+v", first, again)
	}
}

// planOf calls Plan.
func planOf(spec reflect.Value) (reflect.Value, error) {
	out := spec.MethodByName("Plan").Call(nil)
	err, _ := out[1].Interface().(error)
	return out[0], err
}
