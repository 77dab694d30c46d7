package nountest

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// Planned plans a Spec, which is one of the nouns, and checks the working on its
// sheet.
func Planned(t *testing.T, nouns []noun.Entry, spec any) (noun.Plan, error) {
	t.Helper()
	for _, e := range nouns {
		into := e.New()
		if at := reflect.ValueOf(into).Elem(); at.Type() == reflect.TypeOf(spec) {
			at.Set(reflect.ValueOf(spec))
			p, err := e.Plan(into)
			if err == nil {
				if wrong := p.Sheet().Check(); wrong != nil {
					t.Errorf("%+v: %v", spec, wrong)
				}
			}
			return p, err
		}
	}
	t.Fatalf("%T is none of the nouns", spec)
	return nil, nil
}

// Refused checks that a Spec, which is one of the nouns, is refused with faults of the
// paths named, in that order, one of them of the kind. With no path named it checks
// that the Spec is planned.
func Refused(t *testing.T, nouns []noun.Entry, spec any, paths string, kind fault.Kind) {
	t.Helper()
	_, err := Planned(t, nouns, spec)
	if got := Paths(t, err); got != paths || paths != "" && !errors.Is(err, kind) {
		t.Errorf("%+v\nfaults of %q, want %q, %q:\n%v", spec, got, paths, kind, err)
	}
}

// Paths are the paths of the faults that err is, with a blank between; none for nil.
func Paths(t *testing.T, err error) string {
	t.Helper()
	var faults fault.Faults
	if err != nil && !errors.As(err, &faults) {
		t.Fatalf("%v is no faults", err)
	}
	var paths []string
	for _, f := range faults {
		if f.Path == "" || f.Kind == "" || f.Limit == "" || len(f.Error()) > 1000 {
			t.Errorf("a fault says too little, or too much: %.300v", f)
		}
		paths = append(paths, f.Path)
	}
	return strings.Join(paths, " ")
}
