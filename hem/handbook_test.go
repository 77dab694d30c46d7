package hem_test

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

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
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

// field is a field of a struct, or a field of one of its fields, as in a.depth.
func field(v reflect.Value, name string) reflect.Value {
	for part := range strings.SplitSeq(name, ".") {
		r := []rune(part)
		r[0] = unicode.ToUpper(r[0])
		if v = v.FieldByName(string(r)); !v.IsValid() {
			break
		}
	}
	return v
}

func setField(t *testing.T, f reflect.Value, text string) {
	t.Helper()
	var err error
	switch p := f.Addr().Interface().(type) {
	case *int:
		*p, err = strconv.Atoi(text)
	case *bool:
		*p, err = strconv.ParseBool(text)
	case interface{ UnmarshalText([]byte) error }:
		err = p.UnmarshalText([]byte(text))
	default:
		t.Fatalf("a field of type %s", f.Type())
	}
	if err != nil {
		t.Fatal(err)
	}
}

// same compares a field of a plan with what is wanted. A length that is not exact
// is compared to four decimals of an inch, or of a millimetre.
func same(t *testing.T, f reflect.Value, want string) (string, bool) {
	t.Helper()
	switch v := f.Interface().(type) {
	case units.Length:
		l, err := units.Parse(want)
		if err != nil {
			t.Fatal(err)
		}
		return v.String(), v == l
	case units.Near:
		l, err := units.Parse(want)
		if err != nil {
			t.Fatal(err)
		}
		unit := units.Inch
		if strings.HasSuffix(want, "mm") {
			unit = units.Millimetre
		}
		if e, exact := v.Exact(); exact && !strings.Contains(want, ".") {
			return e.String(), e == l
		}
		lo, hi := v.Bounds()
		half := unit.Frac(1, 20_000)
		return v.String(), !lo.Less(l.Sub(half)) && !l.Add(half).Less(hi)
	case int:
		return strconv.Itoa(v), strconv.Itoa(v) == want
	}
	t.Fatalf("a field of type %s", f.Type())
	return "", false
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
	kinds, from := map[string]int{}, map[string]map[string]bool{}
	for _, row := range rows[1:] {
		id, kind, given, want, src, known, reason := row[0], row[1], row[2], row[3], row[4], row[6], row[7]
		if ids[id] || givens[kind+given] {
			t.Errorf("%s: given twice", id)
		}
		ids[id], givens[kind+given] = true, true
		switch _, found := source.Lookup(src); {
		case src == "":
			if known != "practice" && known != "computed" {
				t.Errorf("%s: %s without a source", id, known)
			}
		case !found:
			t.Errorf("%s: no source %s", id, src)
		default:
			sources[src] = true
		}
		if known == "read" {
			read++
			if kinds[kind]++; from[kind] == nil {
				from[kind] = map[string]bool{}
			}
			from[kind][src] = true
		}
		t.Run(id, func(t *testing.T) { handbookRow(t, kind, given, want, reason) })
	}
	if read < 14 || len(sources) < 3 {
		t.Errorf("%d rows read from %d sources", read, len(sources))
	}
	nouns := []string{"tucks", "casing", "mitre"}
	for k := range hem.Kinds {
		nouns = append(nouns, k.String())
	}
	for _, kind := range nouns {
		rows, books := 3, 2
		if kind == "bias-faced" {
			rows, books = 1, 1 // no more are printed
		}
		if kinds[kind] < rows || len(from[kind]) < books {
			t.Errorf("%s: %d rows from %d sources", kind, kinds[kind], len(from[kind]))
		}
	}
}

// planned is the plan of a spec of any noun, and its sheet.
func planned(t *testing.T, spec reflect.Value) (reflect.Value, ticket.Sheet) {
	t.Helper()
	out := spec.MethodByName("Plan").Call(nil)
	if err, _ := out[1].Interface().(error); err != nil {
		t.Fatal(err)
	}
	return out[0], out[0].Interface().(interface{ Sheet() ticket.Sheet }).Sheet()
}

func handbookRow(t *testing.T, kind, given, want, reason string) {
	var s any = &hem.Spec{}
	switch kind {
	case "tucks":
		s = &hem.Tucks{}
	case "casing":
		s = &hem.Casing{}
	case "mitre":
		s = &hem.Mitre{}
	}
	v := reflect.ValueOf(s).Elem()
	if h, ok := s.(*hem.Spec); ok {
		setField(t, reflect.ValueOf(&h.Kind).Elem(), kind)
	}
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
	plan, sheet := planned(t, v)
	more := map[string]any{}
	switch p := plan.Interface().(type) {
	case hem.Plan:
		more["finished"], more["cutFor"], more["crossing"] = p.Finished(piece, hems), p.CutFor(piece, hems), p.Crossing(ridge)
	case hem.TucksPlan:
		for tuck := range p.Marks(units.Length{}, units.HalfAway) {
			n := strconv.Itoa(tuck.Number)
			more["near"+n], more["fold"+n], more["far"+n] = tuck.Near, tuck.Fold, tuck.Far
		}
	}
	for _, p := range pairs(t, want) {
		f := field(plan, p[0])
		if !f.IsValid() {
			f = field(plan.FieldByName("Spec"), p[0])
		}
		if m, ok := more[p[0]]; ok {
			f = reflect.ValueOf(m)
		}
		if !f.IsValid() {
			t.Fatalf("nothing is called %s", p[0])
		}
		if got, ok := same(t, f, p[1]); !ok {
			t.Errorf("%s is %s, want %s (%s)", p[0], got, p[1], reason)
		}
	}
	if err := sheet.Check(); err != nil {
		t.Error(err)
	}
}

// TestEveryRow: every row of the references on hems, plackets, tucks and linen is a
// row of the handbook, or stands among the omitted ones with the reason; none is both.
func TestEveryRow(t *testing.T) {
	rows := func(file string) [][]string {
		f, err := os.Open("testdata/" + file)
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		all, err := csv.NewReader(f).ReadAll()
		if err != nil || len(all) < 2 {
			t.Fatal(file, err)
		}
		return all[1:]
	}
	tested, omitted := map[string]bool{}, map[string]bool{}
	for _, row := range rows("handbook.csv") {
		tested[row[0]] = true
	}
	wanted := map[string]bool{}
	for _, part := range []struct {
		letter      string
		first, last int
	}{{"H", 1, 40}, {"Q", 1, 33}, {"S", 1, 80}, {"L", 1, 30}, {"E", 59, 90}} {
		for n := part.first; n <= part.last; n++ {
			wanted[part.letter+fmt.Sprintf("%03d", n)] = true
		}
	}
	for id := range strings.FieldsSeq(workedRows) {
		wanted[id] = true
	}
	for _, row := range rows("omitted.csv") {
		id := row[0]
		if omitted[id] || tested[id] || !wanted[id] || len(row[1]) < 6 {
			t.Errorf("%s: omitted without need, twice or without a reason", id)
		}
		omitted[id] = true
	}
	for id := range wanted {
		if !tested[id] && !omitted[id] {
			t.Errorf("%s is neither tested nor omitted", id)
		}
	}
}

// workedRows are the worked examples on hems.
const workedRows = `
W001 W006 W012 W013 W014 W047 W048 W049 W054 W057 W058 W059 W061 W065 W066 W067 W070 W080 W081 W082
W083 W085 W086 W105 W106 W123 W124 W125 W126 W128 W129 W130 W131 W132 W139 W148 W149 W150 W153 W154
W157 W158 W165 W166 W167 W169 W177 W190 W204 W205 W206 W208 W212 W214 W216 W221 W225 W228 W240 W241
W266 W271 W272 W277 W285 W286 W287 W289 W293 W333 W341 W354 W355 W356 W357
`
