package nountest

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// Contract checks that the nouns of a package keep the contract of package noun.
// Of each it takes the examples, and checks that
//
//   - every field of the Spec stands in one of them, those of a choice in the examples
//     of the noun that it holds;
//   - each can be read, holds to the schema, and can be planned;
//   - Spec, plan and sheet read back equal from their JSON;
//   - the working on the sheet comes out;
//   - the plan's Spec plans to the same, with nothing assumed;
//   - sent to a handler over HTTP it comes back as that plan, and faults as faults;
//   - where the Spec has a tape, one example is metric, and what is assumed lies on its marks;
//   - 0 in each field that may be 0 reads back, and is planned or refused;
//   - the empty Spec is planned or refused with faults that read back equal;
//   - the empty plan has a sheet, and that of an example begins with its answer and prints
//     no web address.
//
// A field that is not read where its part stands is in no example, and one whose
// default is no value that could be given is assumed each time: its path, as in
// seam.edge own.plies, is given as an exception.
func Contract(t *testing.T, nouns []noun.Entry, exceptions ...string) {
	if len(nouns) == 0 {
		t.Fatal("no nouns")
	}
	for _, e := range nouns {
		t.Run(e.Name(), func(t *testing.T) { contract(t, e, exceptions) })
	}
}

// address is a web address.
var address = regexp.MustCompile(`https?:|www\.|\b[a-z][a-z0-9-]*\.(com|org|net|edu|gov|info|ru|ca|au|uk|in)\b`)

func contract(t *testing.T, e noun.Entry, exceptions []string) {
	examples := e.Examples()
	if len(examples) == 0 {
		t.Fatal("no example")
	}
	schema := readSchema(t, e)
	stand := map[string]bool{}
	tapes := map[units.Tape]bool{}
	for _, text := range examples {
		var value any
		d := json.NewDecoder(bytes.NewReader(text))
		d.UseNumber()
		if err := d.Decode(&value); err != nil {
			t.Fatal(err)
		}
		if why := schema.refuses(value); why != "" {
			t.Errorf("%s\nis no %s by its schema: %s", text, e.Name(), why)
		}
		note(stand, "", value)
		spec := e.New()
		if err := noun.Read(bytes.NewReader(text), spec); err != nil {
			t.Errorf("%s: %v", text, err)
			continue
		}
		again(t, spec)
		p, err := e.Plan(spec)
		if err != nil {
			t.Errorf("%s: %v", text, err)
			continue
		}
		if web := address.FindString(p.Sheet().Text()); web != "" {
			t.Errorf("%s: the sheet prints the address %s", text, web)
		}
		if sheet := p.Sheet(); len(sheet.Answer) == 0 && !strings.Contains(sheet.Title, ": ") {
			t.Errorf("%s: neither the title nor an answer says what comes out", text)
		}
		planned(t, e, p, exceptions)
		served(t, e, text)
		if tape, has := tapeOf(p); has {
			tapes[tape] = true
			onMarks(t, e, tape, p)
		}
	}
	if len(tapes) > 0 && !tapes[units.MetricTape] {
		t.Error("no example is metric")
	}
	for _, f := range e.Fields() {
		path := strings.ReplaceAll(f.Path, "[0]", "")
		if !stand[path] && !strings.Contains(path, "(") && !slices.Contains(exceptions, e.Name()+" "+path) {
			t.Errorf("%s stands in no example", f.Path)
		}
		if f.Zero {
			zeroed(t, e, f.Path, examples[0])
		}
	}
	_, err := e.Plan(e.New())
	faultsAgain(t, err)
	served(t, e, []byte("{}"))
	empty := reflect.ValueOf(e.NewPlan()).Elem().Interface().(noun.Plan)
	again(t, pointer(empty.Sheet()))
}

// planned checks a plan, its sheet and its solved Spec.
func planned(t *testing.T, e noun.Entry, p noun.Plan, exceptions []string) {
	t.Helper()
	again(t, pointer(p))
	sheet := p.Sheet()
	again(t, pointer(sheet))
	if err := sheet.Check(); err != nil {
		t.Error(err)
	}
	var again []string
	for _, x := range exceptions {
		if path, ok := strings.CutPrefix(x, e.Name()+" "); ok {
			again = append(again, path)
		}
	}
	Solved(t, p, again...)
}

// pointer is a pointer to a copy of v.
func pointer(v any) any {
	p := reflect.New(reflect.TypeOf(v))
	p.Elem().Set(reflect.ValueOf(v))
	return p.Interface()
}

// again checks that what v points to reads back equal from its JSON.
func again(t *testing.T, v any) {
	t.Helper()
	text, err := json.Marshal(v)
	if err != nil {
		t.Error(err)
		return
	}
	back := reflect.New(reflect.TypeOf(v).Elem()).Interface()
	if err := json.Unmarshal(text, back); err != nil {
		t.Errorf("%s\ndoes not read back: %v", text, err)
		return
	}
	if diff := cmp.Diff(v, back, exact()); diff != "" {
		t.Errorf("%s\nreads back as another (-is +back):\n%s", text, diff)
	}
}

// exact compares what hides fields, as the values of units do, as a whole, unless it
// has a method Equal.
func exact() cmp.Option {
	return cmp.FilterValues(func(a, b any) bool {
		t := reflect.TypeOf(a)
		if t == nil || t != reflect.TypeOf(b) || t.Kind() != reflect.Struct {
			return false
		}
		_, equal := t.MethodByName("Equal")
		return hidden(t) && !equal
	}, cmp.Comparer(func(a, b any) bool { return reflect.DeepEqual(a, b) }))
}

// hidden reports whether t has fields that are not exported.
func hidden(t reflect.Type) bool {
	for i := range t.NumField() {
		if !t.Field(i).IsExported() {
			return true
		}
	}
	return false
}

// faultsAgain checks that err, if any, is faults that read back equal.
func faultsAgain(t *testing.T, err error) {
	t.Helper()
	if err == nil {
		return
	}
	var fs fault.Faults
	if !errors.As(err, &fs) {
		t.Errorf("%v is no fault.Faults", err)
		return
	}
	for _, f := range fs {
		if f.Kind == "" || f.Path != "" && strings.ToLower(f.Path[:1]) != f.Path[:1] {
			t.Errorf("%v: a fault has a kind, and a path of JSON keys", f)
		}
	}
	again(t, &fs)
}

// zeroed gives 0 to a field that may be 0.
func zeroed(t *testing.T, e noun.Entry, path string, example json.RawMessage) {
	t.Helper()
	if strings.ContainsAny(path, "[(") {
		return // in a list or a choice: the examples say it
	}
	spec := e.New()
	if err := noun.Read(bytes.NewReader(example), spec); err != nil {
		t.Fatal(err)
	}
	var err error
	for _, zero := range []string{"0 in", "0", "0 deg", "0 sq in", "half-away"} {
		zeroSpec := e.New()
		if err = (noun.Reader{}).Pairs([]string{path + "=" + zero}, zeroSpec); err == nil {
			again(t, zeroSpec)
			_, planErr := e.Plan(zeroSpec)
			faultsAgain(t, planErr)
			return
		}
	}
	t.Errorf("0 in %s: %v", path, err)
}

// note marks the paths of an example that stand in it.
func note(stand map[string]bool, path string, value any) {
	switch v := value.(type) {
	case map[string]any:
		kind, _ := v["kind"].(string)
		for key, below := range v {
			at := fault.Join(path, key)
			stand[at] = true
			note(stand, at, below)
			if kind != "" {
				// A choice: its fields are told apart by their kind.
				at = fmt.Sprintf("%s(%s).%s", path, kind, key)
				stand[at] = true
				note(stand, at, below)
			}
			// A map: its keys are any names.
			at = fault.Join(path, "name")
			stand[at] = true
			note(stand, at, below)
		}
	case []any:
		for _, below := range v {
			note(stand, path, below)
		}
	}
}
