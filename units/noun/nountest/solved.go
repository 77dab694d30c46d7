package nountest

import (
	"context"
	"reflect"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Solved checks a Plan: its Spec, which is solved, plans to the same once more, but
// that nothing is left to assume.
func Solved(t *testing.T, plan any) {
	t.Helper()
	first := reflect.ValueOf(pointer(plan)).Elem()
	again, err := planOf(first.FieldByName("Spec"))
	if err != nil {
		t.Fatalf("%+v\nsolved is refused: %v", plan, err)
	}
	if assumed := again.FieldByName("Assumed"); assumed.IsValid() {
		if assumed.Len() > 0 {
			t.Fatalf("%+v\nsolved assumes %v", plan, assumed)
		}
		assumed.SetZero()
		first.FieldByName("Assumed").SetZero()
	}
	if diff := cmp.Diff(first.Interface(), again.Interface(), exact()); diff != "" {
		t.Fatalf("%+v\nsolved gives (-first +again)\n%s", plan, diff)
	}
}

// planOf calls Plan, and gives the plan so that it can be set.
func planOf(spec reflect.Value) (reflect.Value, error) {
	method := spec.MethodByName("Plan")
	var in []reflect.Value
	if method.Type().NumIn() > 0 {
		in = append(in, reflect.ValueOf(context.Background()))
	}
	out := method.Call(in)
	err, _ := out[1].Interface().(error)
	return reflect.ValueOf(pointer(out[0].Interface())).Elem(), err
}
