package nountest

import (
	"context"
	"encoding/json"
	"reflect"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Solved checks a Plan: its Spec, which is solved, plans to the same once more, but
// that nothing is left to assume, except for the fields named, whose default is no
// value that could be given.
func Solved(t *testing.T, plan any, exceptions ...string) {
	t.Helper()
	first := reflect.ValueOf(pointer(plan)).Elem()
	again, err := planOf(first.FieldByName("Spec"))
	if err != nil {
		t.Fatalf("%+v\nsolved is refused: %v", plan, err)
	}
	for _, key := range assumedBy(again) {
		if !slices.Contains(exceptions, key) {
			t.Fatalf("%+v\nsolved assumes %s", plan, key)
		}
	}
	unassumed(first)
	unassumed(again)
	if diff := cmp.Diff(first.Interface(), again.Interface(), exact()); diff != "" {
		t.Fatalf("%+v\nsolved gives (-first +again)\n%s", plan, diff)
	}
}

// assumedBy are the keys that a plan names as assumed.
func assumedBy(plan reflect.Value) (keys []string) {
	f := plan.FieldByName("Assumed")
	if !f.IsValid() {
		return nil
	}
	text, _ := json.Marshal(f.Interface())
	json.Unmarshal(text, &keys)
	return keys
}

// unassumed empties every field Assumed in v: what was assumed is given the second
// time.
func unassumed(v reflect.Value) {
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			f := v.Field(i)
			if v.Type().Field(i).Name == "Assumed" {
				f.SetZero()
			} else if f.CanSet() {
				unassumed(f)
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			unassumed(v.Index(i))
		}
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
