package seam_test

import (
	"encoding"
	"encoding/csv"
	"errors"
	"os"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/dart"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A sheeted plan.
type sheeted interface{ Sheet() ticket.Sheet }

// bookNouns makes an empty spec of each noun and plans a filled one.
var bookNouns = map[string]struct {
	spec any
	plan func(any) (sheeted, error)
}{
	"dart":        noun(dart.Spec.Plan),
	"pivot":       noun(dart.Pivot.Plan),
	"binding":     noun(seam.Binding.Plan),
	"row":         noun(seam.Row.Plan),
	"roll":        noun(seam.Roll.Plan),
	"favour":      noun(seam.Favour.Plan),
	"easing":      noun(alter.Easing.Plan),
	"meeting":     noun(edge.Meeting.Plan),
	"letting":     noun(alter.Letting.Plan),
	"lengthening": noun(alter.Lengthening.Plan),
	"edge":        noun(edge.Spec.Plan),
	"match":       noun(edge.Pair.Plan),
}

func noun[S any, P sheeted](plan func(S) (P, error)) struct {
	spec any
	plan func(any) (sheeted, error)
} {
	var zero S
	return struct {
		spec any
		plan func(any) (sheeted, error)
	}{zero, func(s any) (sheeted, error) { return plan(s.(S)) }}
}

// place is the field of v at a path such as seams[0].spec.kind; a slice grows to
// hold it.
func place(t *testing.T, v reflect.Value, path string) reflect.Value {
	t.Helper()
	for part := range strings.SplitSeq(path, ".") {
		name, index, indexed := strings.Cut(strings.TrimSuffix(part, "]"), "[")
		v = v.FieldByName(strings.ToUpper(name[:1]) + name[1:])
		if !v.IsValid() {
			t.Fatalf("no field %q of %q", part, path)
		}
		if !indexed {
			continue
		}
		i, err := strconv.Atoi(index)
		if err != nil {
			t.Fatal(err)
		}
		for v.CanSet() && v.Len() <= i {
			v.Set(reflect.Append(v, reflect.Zero(v.Type().Elem())))
		}
		v = v.Index(i)
	}
	return v
}

func put(t *testing.T, v reflect.Value, text string) {
	t.Helper()
	if u, ok := v.Addr().Interface().(encoding.TextUnmarshaler); ok {
		if err := u.UnmarshalText([]byte(text)); err != nil {
			t.Fatalf("%q: %v", text, err)
		}
		return
	}
	switch v.Kind() {
	case reflect.Int:
		n, err := strconv.Atoi(text)
		if err != nil {
			t.Fatal(err)
		}
		v.SetInt(int64(n))
	case reflect.Bool:
		v.SetBool(text == "true")
	default:
		v.SetString(text)
	}
}

// figure compares a figure of a plan with the text wanted: what is irrational is
// rounded to a ten-thousandth of the unit it is wanted in.
func figure(t *testing.T, v reflect.Value, want string) (got string, same bool) {
	t.Helper()
	switch x := v.Interface().(type) {
	case units.Length:
		return x.String(), x == bookLength(t, want)
	case units.Ratio:
		r, err := units.ParseRatio(want)
		if err != nil {
			t.Fatal(err)
		}
		return x.String(), x == r
	case units.Near:
		wanted := bookLength(t, want)
		l, exact := x.Exact()
		if !exact {
			step := units.Inch.Frac(1, 10_000)
			if strings.HasSuffix(want, "m") {
				step = units.Centimetre.Frac(1, 10_000)
			}
			var err error
			if l, _, err = x.Round(step, units.HalfAway); err != nil {
				t.Fatal(err)
			}
		}
		return x.String(), l == wanted
	case bool:
		return strconv.FormatBool(x), strconv.FormatBool(x) == want
	case int:
		return strconv.Itoa(x), strconv.Itoa(x) == want
	case encoding.TextMarshaler:
		b, err := x.MarshalText()
		return string(b), err == nil && string(b) == want
	}
	t.Fatalf("a figure of type %v", v.Type())
	return "", false
}

func TestHandbookNouns(t *testing.T) {
	f, err := os.Open("testdata/handbook_dart.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) < 50 || strings.Join(rows[0], ",") != "id,kind,given,want,source,place,known,reason" {
		t.Fatal("the handbook is empty, short or has another header")
	}
	ids, inputs, read, kinds := map[string]bool{}, map[string]bool{}, map[string]int{}, map[string]int{}
	book, err := os.ReadFile("testdata/handbook.csv")
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range rows[1:] {
		id, kind, given, want, src, known, reason := r[0], r[1], r[2], r[3], r[4], r[6], r[7]
		if ids[id] || inputs[kind+given] || reason == "" || strings.Contains(string(book), "\n"+id+",") {
			t.Errorf("%s: id or input twice, or no reason", id)
		}
		ids[id], inputs[kind+given] = true, true
		kinds[kind]++
		switch known {
		case "read", "memory":
			read[src]++
			if _, ok := source.Lookup(src); !ok {
				t.Errorf("%s: unknown source %q", id, src)
			}
		case "practice", "computed":
			if src != "" {
				t.Errorf("%s: %s has a source", id, known)
			}
		default:
			t.Errorf("%s: known %q", id, known)
		}
		t.Run(id, func(t *testing.T) { bookNoun(t, kind, given, want, reason) })
	}
	if len(read) < 10 {
		t.Errorf("rows of %d sources only", len(read))
	}
	for k := range bookNouns {
		if kinds[k] < 3 {
			t.Errorf("%s: %d rows only", k, kinds[k])
		}
	}
}

func bookNoun(t *testing.T, kind, given, want, reason string) {
	n, ok := bookNouns[kind]
	if !ok {
		t.Fatalf("no noun %q", kind)
	}
	spec := reflect.New(reflect.TypeOf(n.spec)).Elem()
	for _, g := range bookPairs(t, given) {
		put(t, place(t, spec, g.name), g.value)
	}
	p, err := n.plan(spec.Interface())
	wants := bookPairs(t, want)
	if wants[0].name == "fault" {
		var fs fault.Faults
		if !errors.As(err, &fs) || fs[0].Path != wants[0].value {
			t.Errorf("got %v, want a fault of %s (%s)", err, wants[0].value, reason)
		}
		return
	}
	if err != nil {
		t.Fatalf("%v (%s)", err, reason)
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
	for _, w := range wants {
		if got, same := figure(t, place(t, reflect.ValueOf(p), w.name), w.value); !same {
			t.Errorf("%s %s, want %s (%s)", w.name, got, w.value, reason)
		}
	}
}

// No row of the references that concerns darts, bindings, rows and alterations is
// passed over: what is no test row and no row of a table is listed with the reason.
func TestOmitted(t *testing.T) {
	f, err := os.Open("testdata/omitted_dart.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) < 10 || strings.Join(rows[0], ",") != "id,reason" {
		t.Fatal("the list is empty or has another header")
	}
	book, err := os.ReadFile("testdata/handbook_dart.csv")
	if err != nil {
		t.Fatal(err)
	}
	seen := map[string]bool{}
	for _, r := range rows[1:] {
		if seen[r[0]] || len(r[1]) < 10 || strings.Contains(string(book), "\n"+r[0]+",") {
			t.Errorf("%s is listed twice, without a reason, or is a test row", r[0])
		}
		seen[r[0]] = true
	}
}
