package hem_test

import (
	"encoding/csv"
	"os"
	"reflect"
	"strconv"
	"strings"
	"testing"
	"unicode"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// pairs reads name=value;name=value.
func pairs(t *testing.T, text string) [][2]string {
	t.Helper()
	var out [][2]string
	for part := range strings.SplitSeq(text, ";") {
		name, value, ok := strings.Cut(part, "=")
		if !ok {
			t.Fatalf("no value in %q", part)
		}
		out = append(out, [2]string{name, value})
	}
	return out
}

func field(v reflect.Value, name string) reflect.Value {
	r := []rune(name)
	r[0] = unicode.ToUpper(r[0])
	return v.FieldByName(string(r))
}

func setField(t *testing.T, f reflect.Value, text string) {
	t.Helper()
	var err error
	switch p := f.Addr().Interface().(type) {
	case *int:
		*p, err = strconv.Atoi(text)
	case interface{ UnmarshalText([]byte) error }:
		err = p.UnmarshalText([]byte(text))
	default:
		t.Fatalf("a field of type %s", f.Type())
	}
	if err != nil {
		t.Fatal(err)
	}
}

func textOf(t *testing.T, f reflect.Value) string {
	t.Helper()
	switch v := f.Interface().(type) {
	case units.Length:
		return v.String()
	case int:
		return strconv.Itoa(v)
	}
	t.Fatalf("a field of type %s", f.Type())
	return ""
}

func canon(t *testing.T, text string) string {
	t.Helper()
	if _, err := strconv.Atoi(text); err == nil {
		return text
	}
	l, err := units.Parse(text)
	if err != nil {
		t.Fatal(err)
	}
	return l.String()
}

func TestHandbook(t *testing.T) {
	f, err := os.Open("testdata/handbook.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	head := []string{"id", "kind", "given", "want", "source", "place", "known", "reason"}
	if len(rows) < 2 || !cmp.Equal(rows[0], head) {
		t.Fatal("the handbook has no rows")
	}
	ids, givens, read, sources := map[string]bool{}, map[string]bool{}, 0, map[string]bool{}
	for _, row := range rows[1:] {
		id, kind, given, want, source, known, reason := row[0], row[1], row[2], row[3], row[4], row[6], row[7]
		if ids[id] || givens[kind+given] {
			t.Errorf("%s: given twice", id)
		}
		ids[id], givens[kind+given] = true, true
		switch _, found := ticket.Lookup(source); {
		case source == "":
			if known != "practice" && known != "computed" {
				t.Errorf("%s: %s without a source", id, known)
			}
		case !found:
			t.Errorf("%s: no source %s", id, source)
		default:
			sources[source] = true
		}
		if known == "read" {
			read++
		}
		t.Run(id, func(t *testing.T) { handbookRow(t, kind, given, want, reason) })
	}
	if read < 14 || len(sources) < 3 {
		t.Errorf("%d rows read from %d sources", read, len(sources))
	}
}

func handbookRow(t *testing.T, kind, given, want, reason string) {
	var s hem.Spec
	v := reflect.ValueOf(&s).Elem()
	setField(t, v.FieldByName("Kind"), kind)
	var piece units.Length
	var hems, ridge int
	extra := map[string]any{"piece": &piece, "hems": &hems, "ridge": &ridge}
	for _, p := range pairs(t, given) {
		switch to, f := extra[p[0]], field(v, p[0]); {
		case to != nil:
			setField(t, reflect.ValueOf(to).Elem(), p[1])
		case f.IsValid():
			setField(t, f, p[1])
		default:
			t.Fatalf("nothing is called %s", p[0])
		}
	}
	plan, err := s.Plan()
	if err != nil {
		t.Fatal(err)
	}
	var got, wanted []string
	for _, p := range pairs(t, want) {
		is := ""
		pf, sf := field(reflect.ValueOf(plan), p[0]), field(reflect.ValueOf(plan.Spec), p[0])
		switch {
		case p[0] == "finished":
			is = plan.Finished(piece, hems).String()
		case p[0] == "cutFor":
			is = plan.CutFor(piece, hems).String()
		case p[0] == "crossing":
			is = strconv.Itoa(plan.Crossing(ridge))
		case pf.IsValid():
			is = textOf(t, pf)
		case sf.IsValid():
			is = textOf(t, sf)
		default:
			t.Fatalf("nothing is called %s", p[0])
		}
		got, wanted = append(got, p[0]+"="+is), append(wanted, p[0]+"="+canon(t, p[1]))
	}
	if diff := cmp.Diff(wanted, got); diff != "" {
		t.Errorf("%s\n%s", reason, diff)
	}
	if err := plan.Sheet().Check(); err != nil {
		t.Error(err)
	}
}
