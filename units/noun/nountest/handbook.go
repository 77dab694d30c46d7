package nountest

import (
	"bytes"
	"encoding"
	"encoding/csv"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
)

// The first line of a handbook file. Each line below it is a sum whose answer is
// printed, or follows from what is printed:
//
//	G074,row,first=1 in;last=16 in;count=8,gap=2 1/7 in,buttonhole-spacing-page,page 2,read,printed 2.14
//
// The kind is the name of a noun, of this package where it has no dot. What is
// given are fields of its Spec. What is wanted are fields of its Plan, or of the
// solved Spec where the plan has none of that name: paths as in places[2].mark, an
// index from 0. A length wanted as 1.6464 in of an answer known within bounds only is
// right where no other length with as many places is nearer. An answer read to a mark
// is wanted as gap@up 1/8 in. Beside these, fault names the path of the first fault, and
// nothing else is then wanted.
const handbookColumns = "id,kind,given,want,source,place,known,reason"

// A Sum works out what a handbook line asks that is no noun, as a row of a table:
// from what is given, under the names of the line, whatever may be wanted.
type Sum func(given map[string]string) (answers map[string]any, err error)

// Handbook works every line of the handbook file at path, with the nouns of a
// package and the sums that are no nouns, by their kinds. It fails for an answer
// that differs, an id or sum that stands twice, a source that is not in the list, a
// line without a reason, a noun or sum that no line asks for, and an id that stands in
// omitted.csv beside the file too.
func Handbook(t *testing.T, path string, nouns []noun.Entry, sums map[string]Sum) {
	t.Helper()
	file, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) < 2 || strings.Join(rows[0], ",") != handbookColumns {
		t.Fatalf("%s: nothing in it, or another head than %s", path, handbookColumns)
	}
	ids, asked := map[string]bool{}, map[string]string{}
	for _, row := range rows[1:] {
		l := line{id: row[0], kind: row[1], given: row[2], want: row[3], source: row[4], known: row[6], reason: row[7]}
		t.Run(l.id, func(t *testing.T) {
			if ids[l.id] {
				t.Error("the id stands twice")
			}
			ids[l.id] = true
			if other, twice := asked[l.kind+" "+l.given]; twice {
				t.Errorf("the same is given in %s", other)
			}
			asked[l.kind+" "+l.given] = l.id
			l.cited(t)
			if sum, ok := sums[l.kind]; ok {
				l.sum(t, sum)
				return
			}
			l.noun(t, nouns)
		})
	}
	for id, reason := range omitted(t, path) {
		if ids[id] || reason == "" {
			t.Errorf("%s is omitted, and asked for all the same or without a reason", id)
		}
	}
	for kind := range sums {
		if !slices.ContainsFunc(rows[1:], func(row []string) bool { return row[1] == kind }) {
			t.Errorf("%s: no line asks for %s", path, kind)
		}
	}
	for _, e := range nouns {
		if !slices.ContainsFunc(rows[1:], func(row []string) bool { return names(row[1], e) }) {
			t.Errorf("%s: no line asks for %s", path, e.Name())
		}
	}
}

// omitted are the ids and reasons in omitted.csv beside the file, if there is one:
// printed figures that no line asks for.
func omitted(t *testing.T, path string) map[string]string {
	t.Helper()
	out := map[string]string{}
	text, err := os.ReadFile(filepath.Join(filepath.Dir(path), "omitted.csv"))
	if errors.Is(err, fs.ErrNotExist) {
		return out
	}
	rows, err := csv.NewReader(bytes.NewReader(text)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range rows[1:] {
		if _, twice := out[row[0]]; twice {
			t.Errorf("%s is omitted twice", row[0])
		}
		out[row[0]] = row[1]
	}
	return out
}

// A line is a line of the file.
type line struct{ id, kind, given, want, source, known, reason string }

// names reports whether a kind is the name of a noun.
func names(kind string, e noun.Entry) bool {
	_, short, _ := strings.Cut(e.Name(), ".")
	return kind == e.Name() || kind == short
}

// cited checks the source and the label.
func (l line) cited(t *testing.T) {
	t.Helper()
	labels := []string{"read", "memory", "practice", "computed"}
	if !slices.Contains(labels, l.known) || l.reason == "" {
		t.Errorf("known %q, reason %q", l.known, l.reason)
	}
	if _, found := source.Lookup(l.source); !found && (l.source != "" || l.known == "read" || l.known == "memory") {
		t.Errorf("unknown source %q", l.source)
	}
}

func (l line) noun(t *testing.T, nouns []noun.Entry) {
	t.Helper()
	i := slices.IndexFunc(nouns, func(e noun.Entry) bool { return names(l.kind, e) })
	if i < 0 {
		t.Fatalf("unknown kind %q", l.kind)
	}
	spec := nouns[i].New()
	var pairs []string
	if l.given != "" {
		pairs = strings.Split(l.given, ";")
	}
	if err := (noun.Reader{}).Pairs(pairs, spec); err != nil {
		t.Fatal(err)
	}
	p, err := nouns[i].Plan(spec)
	if l.fault(t, err) {
		return
	}
	plan := reflect.ValueOf(p)
	for path, want := range l.wanted(t) {
		path, mark, rounded := strings.Cut(path, "@")
		got, ok := field(plan, path)
		if solved := plan.FieldByName("Spec"); !ok && solved.IsValid() {
			got, ok = field(solved, path)
		}
		if !ok {
			t.Errorf("the plan has no %s", path)
			continue
		}
		if rounded {
			got = toMark(t, got, mark)
		}
		compareValue(t, path, got, want)
	}
}

func (l line) sum(t *testing.T, sum Sum) {
	t.Helper()
	given := map[string]string{}
	for name, value := range pairsOf(t, l.given) {
		given[name] = value
	}
	answers, err := sum(given)
	if l.fault(t, err) {
		return
	}
	for name, want := range l.wanted(t) {
		got, ok := answers[name]
		if !ok {
			t.Errorf("the sum has no %s", name)
			continue
		}
		compareValue(t, name, reflect.ValueOf(got), want)
	}
}

// fault checks the fault wanted, if any, and reports whether there is no more to do.
func (l line) fault(t *testing.T, err error) bool {
	t.Helper()
	want, refused := strings.CutPrefix(l.want, "fault=")
	var fs fault.Faults
	switch {
	case !refused && err != nil:
		t.Error(err)
	case refused && (!errors.As(err, &fs) || fs[0].Path != want):
		t.Errorf("got %v, want a fault of %s", err, want)
	}
	return refused || err != nil
}

func (l line) wanted(t *testing.T) map[string]string {
	t.Helper()
	out := pairsOf(t, l.want)
	if len(out) == 0 {
		t.Error("nothing is wanted")
	}
	return out
}

// pairsOf splits name=value;name=value.
func pairsOf(t *testing.T, cell string) map[string]string {
	t.Helper()
	out := map[string]string{}
	if cell == "" {
		return out
	}
	for part := range strings.SplitSeq(cell, ";") {
		name, value, ok := strings.Cut(part, "=")
		if _, twice := out[name]; !ok || name == "" || twice {
			t.Fatalf("%q is not name=value, or stands twice", part)
		}
		out[name] = value
	}
	return out
}

// field finds the value at a path of JSON keys.
func field(v reflect.Value, path string) (reflect.Value, bool) {
	for path != "" {
		if v.Kind() == reflect.Interface {
			v = v.Elem()
		}
		if rest, ok := strings.CutPrefix(path, "["); ok {
			index, after, _ := strings.Cut(rest, "]")
			i, err := strconv.Atoi(index)
			if err != nil || v.Kind() != reflect.Slice || i < 0 || i >= v.Len() {
				return v, false
			}
			v, path = v.Index(i), strings.TrimPrefix(after, ".")
			continue
		}
		key := path
		if i := strings.IndexAny(path, ".["); i >= 0 {
			key = path[:i]
		}
		next, ok := keyed(v, key)
		if !ok {
			return v, false
		}
		v, path = next, strings.TrimPrefix(path[len(key):], ".")
	}
	return v, true
}

// keyed finds the field of a struct by its key, in embedded ones too.
func keyed(v reflect.Value, key string) (reflect.Value, bool) {
	if v.Kind() != reflect.Struct {
		return v, false
	}
	for i := range v.NumField() {
		f := v.Type().Field(i)
		if f.Anonymous {
			below := v.Field(i)
			if below.Kind() == reflect.Interface {
				below = below.Elem()
			}
			if found, ok := keyed(below, key); ok {
				return found, true
			}
			continue
		}
		name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
		if f.IsExported() && (name == key || name == "" && noun.Key(f.Name) == key) {
			return v.Field(i), true
		}
	}
	return v, false
}

// toMark is an answer read to a mark, such as up 1/8 in.
func toMark(t *testing.T, got reflect.Value, mark string) reflect.Value {
	t.Helper()
	word, text, _ := strings.Cut(mark, " ")
	var mode units.Mode
	if err := mode.UnmarshalText([]byte(word)); err != nil {
		t.Fatal(err)
	}
	switch v := got.Interface().(type) {
	case units.Length:
		read, _ := v.Round(units.MustParse(text), mode)
		return reflect.ValueOf(read)
	case units.Ratio:
		step, err := units.ParseRatio(text)
		if err != nil {
			t.Fatal(err)
		}
		read, _ := v.Round(step, mode)
		return reflect.ValueOf(read)
	}
	t.Fatalf("%s cannot be read to a mark", got.Type())
	return got
}

// compareValue holds an answer to the text wanted.
func compareValue(t *testing.T, path string, got reflect.Value, want string) {
	t.Helper()
	switch v := got.Interface().(type) {
	case []string:
		if text := strings.Join(v, " "); text != want {
			t.Errorf("%s is %s, want %s", path, text, want)
		}
		return
	case units.Near:
		l, exact := v.Exact()
		if w, err := units.Parse(want); !exact || err != nil || l != w {
			nearly(t, path, v, want)
		}
		return
	case fmt.Stringer:
		back := reflect.New(got.Type())
		if u, ok := back.Interface().(encoding.TextUnmarshaler); ok && want != "" {
			if err := u.UnmarshalText([]byte(want)); err != nil {
				t.Errorf("%s: %v", path, err)
			} else if back.Elem().Interface() != got.Interface() && v.String() != want {
				t.Errorf("%s is %v, want %s", path, v, want)
			}
			return
		}
		if v.String() != want {
			t.Errorf("%s is %v, want %s", path, v, want)
		}
		return
	}
	if text := fmt.Sprint(got.Interface()); text != want {
		t.Errorf("%s is %s, want %s", path, text, want)
	}
}

// nearly holds an answer within bounds to a length with so many places.
func nearly(t *testing.T, path string, got units.Near, want string) {
	t.Helper()
	l, err := units.Parse(want)
	if err != nil {
		t.Errorf("%s: %v", path, err)
		return
	}
	number, unit, _ := strings.Cut(want, " ")
	_, places, _ := strings.Cut(number, ".")
	step, err := units.Parse("1 " + unit)
	if err != nil {
		t.Errorf("%s is %v, want %s", path, got, want)
		return
	}
	for range places {
		step = step.DivInt(10)
	}
	mark, _, err := got.Round(step, units.HalfAway)
	if err != nil || mark != l {
		t.Errorf("%s is %v, want %s (%v)", path, got, want, err)
	}
}
