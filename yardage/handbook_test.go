package yardage_test

import (
	"encoding/csv"
	"fmt"
	"os"
	"reflect"
	"strconv"
	"strings"
	"testing"
	"unicode"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/yardage"
)

// record is one row of the handbook.
type record struct{ id, kind, given, want, source, place, known, reason string }

func readHandbook(t *testing.T) []record {
	t.Helper()
	f, err := os.Open("testdata/handbook.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) < 2 || strings.Join(rows[0], ",") != "id,kind,given,want,source,place,known,reason" {
		t.Fatal("the handbook is empty or has another head")
	}
	out := make([]record, 0, len(rows))
	for _, r := range rows[1:] {
		out = append(out, record{r[0], r[1], r[2], r[3], r[4], r[5], r[6], r[7]})
	}
	return out
}

// pairs splits name=value;name=value.
func pairs(t *testing.T, s string) [][2]string {
	t.Helper()
	var out [][2]string
	seen := map[string]bool{}
	for part := range strings.SplitSeq(s, ";") {
		name, value, ok := strings.Cut(part, "=")
		if !ok || seen[name] || value == "" {
			t.Fatalf("%q: not name=value, or twice", part)
		}
		seen[name] = true
		out = append(out, [2]string{name, value})
	}
	return out
}

// field finds a field by its name with the first letter lowered.
func field(v reflect.Value, name string) (reflect.Value, bool) {
	r := []rune(name)
	if len(r) == 0 || !unicode.IsLower(r[0]) {
		return v, false
	}
	r[0] = unicode.ToUpper(r[0])
	f := v.FieldByName(string(r))
	return f, f.IsValid()
}

func set(t *testing.T, f reflect.Value, value string) {
	t.Helper()
	if u, ok := f.Addr().Interface().(interface{ UnmarshalText([]byte) error }); ok {
		if err := u.UnmarshalText([]byte(value)); err != nil {
			t.Fatal(err)
		}
		return
	}
	switch f.Kind() {
	case reflect.Int:
		n, err := strconv.Atoi(value)
		if err != nil {
			t.Fatal(err)
		}
		f.SetInt(int64(n))
	case reflect.Bool:
		b, err := strconv.ParseBool(value)
		if err != nil {
			t.Fatal(err)
		}
		f.SetBool(b)
	case reflect.String:
		f.SetString(value)
	default:
		t.Fatalf("no way to set a %s", f.Type())
	}
}

// canonical writes a wanted value as the field of the plan would be written.
func canonical(t *testing.T, f reflect.Value, value string) string {
	t.Helper()
	if f.Type() == reflect.TypeFor[source.Known]() {
		return value
	}
	fresh := reflect.New(f.Type()).Elem()
	set(t, fresh, value)
	return fmt.Sprint(fresh.Interface())
}

// plan fills a spec of the kind named, plans it and gives the plan.
func planOf(t *testing.T, kind string, given [][2]string) reflect.Value {
	t.Helper()
	specs := map[string]any{
		"width": &yardage.Width{}, "remnant": &yardage.Remnant{}, "purchase": &yardage.Purchase{}, "price": &yardage.Price{},
		"swatch": &yardage.Swatch{}, "panels": &yardage.Panels{}, "bias": &yardage.Bias{},
	}
	spec, ok := specs[kind]
	if !ok {
		t.Fatalf("%q: no such kind", kind)
	}
	v := reflect.ValueOf(spec).Elem()
	for _, p := range given {
		f, ok := field(v, p[0])
		if !ok {
			t.Fatalf("%q: no such field", p[0])
		}
		set(t, f, p[1])
	}
	out := v.MethodByName("Plan").Call(nil)
	if err, _ := out[1].Interface().(error); err != nil {
		t.Fatal(err)
	}
	return out[0]
}

func tableCell(t *testing.T, kind string, given [][2]string) (reflect.Value, bool) {
	t.Helper()
	length := map[string]units.Length{}
	for _, p := range given {
		if strings.HasSuffix(kind, "-chart") {
			length[p[0]] = units.MustParse(p[1])
		}
	}
	switch kind {
	case "grid-chart":
		c, err := yardage.GridFor(length["asked"], length["from"], length["to"])
		if err != nil {
			t.Fatal(err)
		}
		return reflect.ValueOf(c), true
	case "bias-chart":
		c, err := yardage.BiasFor(length["width"], length["length"], length["strip"])
		if err != nil {
			t.Fatal(err)
		}
		return reflect.ValueOf(c), true
	}
	return reflect.Value{}, false
}

// got is the value of a name in a plan: a field, a field of the solved spec as
// spec.name, or a length read to a mark as name@mode step.
func got(t *testing.T, p reflect.Value, name string) (reflect.Value, string) {
	t.Helper()
	at := p
	path, mark, rounded := strings.Cut(name, "@")
	for part := range strings.SplitSeq(path, ".") {
		f, ok := field(at, part)
		if !ok {
			t.Fatalf("%q: no such name", name)
		}
		at = f
	}
	if !rounded {
		return at, fmt.Sprint(at.Interface())
	}
	modeText, stepText, _ := strings.Cut(mark, " ")
	var mode units.Mode
	if err := mode.UnmarshalText([]byte(modeText)); err != nil {
		t.Fatal(err)
	}
	switch v := at.Interface().(type) {
	case units.Length:
		r, _ := v.Round(units.MustParse(stepText), mode)
		return at, r.String()
	case units.Ratio:
		step, err := units.ParseRatio(stepText)
		if err != nil {
			t.Fatal(err)
		}
		r, _ := v.Round(step, mode)
		return at, r.String()
	}
	t.Fatalf("%q: cannot be rounded", name)
	return at, ""
}

func TestHandbook(t *testing.T) {
	rows := readHandbook(t)
	ids, inputs, sources, read := map[string]bool{}, map[string]bool{}, map[string]bool{}, 0
	for _, r := range rows {
		t.Run(r.id, func(t *testing.T) {
			if ids[r.id] || r.reason == "" {
				t.Error("the id is used twice, or the row gives no reason")
			}
			ids[r.id] = true
			if key := r.kind + ":" + r.given; inputs[key] {
				t.Error("the same inputs stand in another row")
			} else {
				inputs[key] = true
			}
			switch r.known {
			case "read":
				read++
				sources[r.source] = true
				fallthrough
			case "memory":
				if _, ok := source.Lookup(r.source); !ok {
					t.Errorf("%q: no such source", r.source)
				}
			case "common practice", "computed":
				if _, ok := source.Lookup(r.source); r.source != "" && !ok {
					t.Errorf("%q: no such source", r.source)
				}
			default:
				t.Errorf("%q: how is it known?", r.known)
			}
			given := pairs(t, r.given)
			p, ok := tableCell(t, r.kind, given)
			if !ok {
				p = planOf(t, r.kind, given)
			}
			for _, w := range pairs(t, r.want) {
				f, have := got(t, p, w[0])
				if d := cmp.Diff(canonical(t, f, w[1]), have); d != "" {
					t.Errorf("%s: %s (-want +got)\n%s", w[0], r.reason, d)
				}
			}
		})
	}
	if read < 14 || len(sources) < 3 {
		t.Errorf("%d rows read from %d sources, want 14 and 3", read, len(sources))
	}
}
