package main

import (
	"encoding"
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"os"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
)

// A trial is a sum with a Spec that can be planned.
type trial struct {
	sum  noun.Entry
	spec reflect.Value
	plan noun.Plan
}

// trials are so many Specs of each sum that can be planned, made at random from
// those of the test data: lengths, ratios, counts, kinds and words are changed,
// left out and put in.
func trials(t *testing.T, each int) []trial {
	t.Helper()
	text, err := os.ReadFile("testdata/sums.jsonl")
	if err != nil {
		t.Fatal(err)
	}
	r := rand.New(rand.NewPCG(5, 8))
	var out []trial
	for line := range strings.Lines(string(text)) {
		s, asked, err := sums.Read(strings.NewReader(line), noun.Reader{})
		if err != nil {
			t.Fatal(err)
		}
		wanted, tries := each, 20*each
		if s.Name() == "layout.lay" {
			wanted, tries = 4, 24
		}
		for try := 0; wanted > 0 && try < tries; try++ {
			spec := copied(reflect.ValueOf(asked).Elem())
			if try > 0 {
				change(r, spec)
			}
			if work := spec.FieldByName("Work"); work.IsValid() {
				work.SetInt(1)
			}
			p, err := planned(s, spec)
			if err != nil {
				continue
			}
			out = append(out, trial{s, spec, p})
			wanted--
		}
	}
	return out
}

// planned is the plan of a Spec.
func planned(e noun.Entry, spec reflect.Value) (noun.Plan, error) {
	at := reflect.New(spec.Type())
	at.Elem().Set(spec)
	return e.Plan(at.Interface())
}

// copied is v with lists of its own, which can be set.
func copied(v reflect.Value) reflect.Value {
	out := reflect.New(v.Type()).Elem()
	out.Set(v)
	switch _, text := v.Interface().(encoding.TextMarshaler); {
	case text:
	case v.Kind() == reflect.Struct:
		for i := range v.NumField() {
			out.Field(i).Set(copied(v.Field(i)))
		}
	case v.Kind() == reflect.Slice && !v.IsNil():
		out.Set(reflect.MakeSlice(v.Type(), v.Len(), v.Len()))
		for i := range v.Len() {
			out.Index(i).Set(copied(v.Index(i)))
		}
	}
	return out
}

// change changes one to three of the values in v.
func change(r *rand.Rand, v reflect.Value) {
	var all []reflect.Value
	leaves(v, func(leaf reflect.Value) { all = append(all, leaf) })
	for range 1 + r.IntN(3) {
		vary(r, all[r.IntN(len(all))])
	}
}

// leaves calls visit with every value below v that holds no others.
func leaves(v reflect.Value, visit func(reflect.Value)) {
	if _, ok := v.Addr().Interface().(encoding.TextUnmarshaler); ok {
		visit(v)
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			leaves(v.Field(i), visit)
		}
	case reflect.Slice:
		for i := range v.Len() {
			leaves(v.Index(i), visit)
		}
	default:
		visit(v)
	}
}

func pick[T any](r *rand.Rand, from ...T) T { return from[r.IntN(len(from))] }

func vary(r *rand.Rand, v reflect.Value) {
	if r.IntN(6) == 0 {
		v.SetZero()
		return
	}
	factor := pick(r, units.RatioOf(1, 2), units.RatioOf(2, 3), units.RatioOf(7, 8), units.RatioOf(9, 8), units.RatioOf(5, 4), units.RatioOf(3, 2), units.RatioOf(2, 1), units.RatioOf(3, 1))
	switch x := v.Interface().(type) {
	case units.Length:
		x = x.Scale(factor)
		if v.IsZero() {
			x = units.MustParse(pick(r, "1/16 in", "1/8 in", "1/4 in", "3/8 in", "5/8 in", "1 in", "2 in", "1 cm", "8 in", "20 in", "3 yd"))
		}
		v.Set(reflect.ValueOf(x))
	case units.Ratio:
		x = x.Mul(factor)
		if v.IsZero() {
			x = pick(r, units.RatioOf(1, 100), units.RatioOf(1, 8), units.RatioOf(1, 4), units.RatioOf(1, 2), units.RatioOf(1, 1), units.RatioOf(2, 1))
		}
		v.Set(reflect.ValueOf(x))
	default:
		switch v.Kind() {
		case reflect.Bool:
			v.SetBool(!v.Bool())
		case reflect.Int:
			v.SetInt(max(0, v.Int()+int64(r.IntN(4))-1))
		case reflect.Uint8:
			was := v.Uint()
			v.SetUint(uint64(r.IntN(20)))
			if m, ok := v.Interface().(encoding.TextMarshaler); ok {
				if _, err := m.MarshalText(); err != nil {
					v.SetUint(was)
				}
			}
		}
	}
}

// given writes a Spec as the line that asks for it, its lengths in a unit.
func given(t *testing.T, name string, spec reflect.Value, u units.Unit) string {
	t.Helper()
	b := appendGiven(t, nil, spec, u)
	if string(b) == "{}" {
		return fmt.Sprintf("{\"sum\":%q}", name)
	}
	return fmt.Sprintf("{\"sum\":%q,%s", name, b[1:])
}

func appendGiven(t *testing.T, b []byte, v reflect.Value, u units.Unit) []byte {
	if c, ok := v.Interface().(interface{ Chosen() (string, any) }); ok {
		kind, value := c.Chosen()
		return append(fmt.Appendf(b, `{"kind":%q,`, kind), appendGiven(t, nil, reflect.ValueOf(value), u)[1:]...)
	}
	if l, ok := v.Interface().(units.Length); ok {
		return fmt.Appendf(b, "%q", l.In(u).String()+" "+u.String())
	}
	if _, ok := v.Interface().(encoding.TextMarshaler); !ok && (v.Kind() == reflect.Struct || v.Kind() == reflect.Slice) {
		ends, n := "[]", 0
		if v.Kind() == reflect.Struct {
			ends, n = "{}", v.NumField()
		} else {
			n = v.Len()
		}
		b = append(b, ends[0])
		first := true
		for i := range n {
			item, key := reflect.Value{}, ""
			if v.Kind() == reflect.Slice {
				item = v.Index(i)
			} else if item = v.Field(i); item.IsZero() {
				continue
			} else {
				key = fmt.Sprintf("%q:", noun.Key(v.Type().Field(i).Name))
			}
			if !first {
				b = append(b, ',')
			}
			first = false
			if v.Kind() == reflect.Struct && v.Type().Field(i).Anonymous {
				flat := appendGiven(t, nil, item, u)
				b = append(b, flat[1:len(flat)-1]...)
				continue
			}
			b = appendGiven(t, append(b, key...), item, u)
		}
		return append(b, ends[1])
	}
	text, err := json.Marshal(v.Interface())
	if err != nil {
		t.Error(err)
	}
	return append(b, text...)
}

// answers are the answers of quick to a line each, without their numbers.
func answers(t *testing.T, lines []string) []map[string]any {
	t.Helper()
	out, errs, _ := quick([]string{"-json"}, strings.Join(lines, "\n")+"\n")
	var all []map[string]any
	for line := range strings.Lines(out) {
		var v map[string]any
		if err := json.Unmarshal([]byte(line), &v); err != nil {
			t.Fatal(err)
		}
		delete(v, "line")
		all = append(all, v)
	}
	if len(all) != len(lines) || errs != "" {
		t.Fatalf("%d answers for %d lines, %s", len(all), len(lines), errs)
	}
	return all
}

// A plan is the same in whatever unit its lengths are given, and whether what it
// assumed is given or not.
func TestSpecsReadBack(t *testing.T) {
	all := trials(t, 100)
	tried := map[string]int{}
	for _, one := range all {
		tried[one.sum.Name()]++
	}
	for e := range sums.All() {
		if n := tried[e.Name()]; n < 50 && (e.Name() != "layout.lay" || n < 3) {
			t.Errorf("%s is tried %d times", e.Name(), n)
		}
	}
	write := func(u units.Unit) []string {
		lines := make([]string, len(all))
		for i, one := range all {
			lines[i] = given(t, one.sum.Name(), one.spec, u)
		}
		return lines
	}
	lines := write(units.Inch)
	want := answers(t, lines)
	for _, u := range []units.Unit{units.Millimetre, units.Yard} {
		in := write(u)
		for i, got := range answers(t, in) {
			if !reflect.DeepEqual(got, want[i]) {
				t.Errorf("%s\nin another unit is\n%s\n%s", lines[i], in[i], difference("", want[i], got))
			}
		}
	}
	var again []string
	for i := range all {
		spec, err := json.Marshal(want[i]["spec"])
		if err != nil {
			t.Fatal(err)
		}
		again = append(again, fmt.Sprintf(`{"sum":%q,"spec":%s}`, all[i].sum.Name(), spec))
	}
	for i, got := range answers(t, again) {
		if d := difference("", assumingNothing(want[i]), assumingNothing(got)); d != "" {
			t.Errorf("%s\nsolved is\n%s\n%s", lines[i], again[i], d)
		}
	}
}

// assumingNothing is an answer without the lists of what was assumed.
func assumingNothing(v any) any {
	switch v := v.(type) {
	case map[string]any:
		out := map[string]any{}
		for k, x := range v {
			if k != "assumed" {
				out[k] = assumingNothing(x)
			}
		}
		return out
	case []any:
		out := make([]any, len(v))
		for i, x := range v {
			out[i] = assumingNothing(x)
		}
		return out
	}
	return v
}

// difference tells of the first place where two answers differ.
func difference(path string, a, b any) string {
	switch a := a.(type) {
	case map[string]any:
		if b, ok := b.(map[string]any); ok {
			for k, x := range a {
				if d := difference(path+"."+k, x, b[k]); d != "" {
					return d
				}
			}
			for k, y := range b {
				if _, ok := a[k]; !ok {
					return fmt.Sprintf("%s.%s was not there and is %v", path, k, y)
				}
			}
			return ""
		}
	case []any:
		if b, ok := b.([]any); ok && len(a) == len(b) {
			for i := range a {
				if d := difference(fmt.Sprintf("%s[%d]", path, i), a[i], b[i]); d != "" {
					return d
				}
			}
			return ""
		}
	}
	if reflect.DeepEqual(a, b) {
		return ""
	}
	return fmt.Sprintf("%s was %v and is %v", path, a, b)
}

// Sums of which a plan does not grow with the lengths, with the reason.
var unscaled = map[string]string{
	"seam.letting":   "the seams before and after take the defaults of their kinds, which no Spec holds",
	"seam.favour":    "the row of stitches takes the default of its kind, which no Spec holds",
	"stitch.setting": "needles and stitches are those of the tables",
	"yardage.price":  "money goes by the unit of the counter and is rounded to the coin",
	"yardage.bill":   "money goes by the unit of the counter and is rounded to the coin",
	"yardage.width":  "the chart has its own widths and lengths",
}

// Where nothing is assumed, lengths so many times as long give lengths so many
// times as long.
func TestPlansScale(t *testing.T) {
	good, bad := map[string]int{}, map[string]int{}
	for _, one := range trials(t, 30) {
		spec := reflect.ValueOf(one.plan).FieldByName("Spec")
		if s, ok := spec.Interface().(interface{ Chosen() (string, any) }); ok {
			_, value := s.Chosen()
			spec = reflect.ValueOf(value)
		}
		spec = copied(spec)
		fill(spec)
		p, err := planned(one.sum, spec)
		if err != nil || assumes(reflect.ValueOf(p)) {
			continue
		}
		for _, k := range []units.Ratio{units.RatioOf(2, 1), units.RatioOf(3, 1), units.RatioOf(7, 5)} {
			q, err := planned(one.sum, scaled(spec, k))
			if err == nil && assumes(reflect.ValueOf(q)) {
				continue // a default that is of use to longer pieces only
			}
			d := ""
			if err != nil {
				d = err.Error()
			} else {
				d = unlike("", k, reflect.ValueOf(p), reflect.ValueOf(q))
			}
			if d == "" {
				good[one.sum.Name()]++
				continue
			}
			bad[one.sum.Name()]++
			if unscaled[one.sum.Name()] == "" {
				t.Errorf("%s\n%v times as long\n%s", given(t, one.sum.Name(), spec, units.Inch), k, d)
			}
		}
	}
	for e := range sums.All() {
		name := e.Name()
		if unscaled[name] == "" && good[name] < 3 {
			t.Errorf("%s: %d plans compared", name, good[name])
		}
		if unscaled[name] != "" && good[name] > 30 && bad[name] == 0 {
			t.Errorf("%s: all plans grow with the lengths", name)
		}
	}
}

// Densities are the less the longer the lengths.
var densities = map[string]bool{"PerInch": true, "PerCentimetre": true}

// Fields that do not grow with the lengths, with the reason.
var fixed = map[string]string{
	"TrimMin": "a sixteenth of an inch holds, in a seam of whatever width",
	"TrimMax": "a sixteenth of an inch hides, in a seam of whatever width",
	"Piece":   "a test swatch is at least six inches wide",
	"Across":  "a test swatch is at least six inches wide",
	"Strips":  "one rule adds a whole inch, another holds by a sixteenth of an inch",
	"Bound":   "it is rounded down to the grid of the search",
}

// fill puts what nouns inside of v assume into their Specs, which v itself leaves
// as they are.
func fill(v reflect.Value) {
	switch s := v.Interface().(type) {
	case seam.Any:
		if p, err := s.Plan(); err == nil {
			v.Set(reflect.ValueOf(p.Spec))
		}
		return
	case hem.Any:
		if p, err := s.Plan(); err == nil {
			v.Set(reflect.ValueOf(p.Spec))
		}
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				fill(v.Field(i))
			}
		}
		for e := range sums.All() {
			if reflect.TypeOf(e.New()).Elem() == v.Type() && !v.IsZero() {
				if p, err := planned(e, v); err == nil && v.Type() == reflect.ValueOf(p).FieldByName("Spec").Type() {
					v.Set(reflect.ValueOf(p).FieldByName("Spec"))
				}
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			fill(v.Index(i))
		}
	}
}

// scaled is a copy of v with its lengths so many times as long.
func scaled(v reflect.Value, k units.Ratio) reflect.Value {
	out := reflect.New(v.Type()).Elem()
	out.Set(v)
	switch {
	case v.Type() == reflect.TypeFor[units.Length]():
		out.Set(reflect.ValueOf(v.Interface().(units.Length).Scale(k)))
	case v.Type() == reflect.TypeFor[units.Given[units.Length]]():
		if l, given := v.Interface().(units.Given[units.Length]).Get(); given {
			out.Set(reflect.ValueOf(units.Give(l.Scale(k))))
		}
	case v.Kind() == reflect.Struct:
		for i := range v.NumField() {
			switch f := v.Type().Field(i); {
			case densities[f.Name]:
				out.Field(i).Set(reflect.ValueOf(v.Field(i).Interface().(units.Ratio).Quo(k)))
			case f.IsExported():
				out.Field(i).Set(scaled(v.Field(i), k))
			}
		}
	case v.Kind() == reflect.Interface && !v.IsNil():
		out.Set(scaled(v.Elem(), k))
	case v.Kind() == reflect.Slice && !v.IsNil():
		out.Set(reflect.MakeSlice(v.Type(), v.Len(), v.Len()))
		for i := range v.Len() {
			out.Index(i).Set(scaled(v.Index(i), k))
		}
	}
	return out
}

// assumes reports whether a plan, or a part of it, names a field that was filled
// with a default.
func assumes(v reflect.Value) bool {
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() && (f.Name == "Assumed" && !v.Field(i).IsZero() || assumes(v.Field(i))) {
				return true
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			if assumes(v.Index(i)) {
				return true
			}
		}
	}
	return false
}

// unlike tells of the first place where b is not a so many times as large.
func unlike(path string, k units.Ratio, a, b reflect.Value) string {
	same := true
	switch x := a.Interface().(type) {
	case units.Length:
		same = x.Scale(k) == b.Interface().(units.Length)
	case units.Given[units.Length]:
		same = scaled(a, k).Interface() == b.Interface()
	case units.Area:
		same = x.Scale(k.Mul(k)) == b.Interface().(units.Area)
	case units.Near:
		lo, hi := x.Scale(k).Bounds()
		l, h := b.Interface().(units.Near).Bounds()
		same = !hi.Less(l) && !h.Less(lo)
	case units.NearRatio:
		lo, hi := x.Bounds()
		l, h := b.Interface().(units.NearRatio).Bounds()
		same = !hi.Less(l) && !h.Less(lo)
	case encoding.TextMarshaler:
		same = reflect.DeepEqual(x, b.Interface())
	default:
		switch a.Kind() {
		case reflect.Interface:
			if a.IsNil() || b.IsNil() {
				same = a.IsNil() && b.IsNil()
				break
			}
			return unlike(path, k, a.Elem(), b.Elem())
		case reflect.Struct:
			for i := range a.NumField() {
				if f := a.Type().Field(i); densities[f.Name] {
					if a, b := a.Field(i).Interface().(units.Ratio), b.Field(i).Interface().(units.Ratio); a.Quo(k) != b {
						return fmt.Sprintf("%s.%s was %v and is %v", path, f.Name, a, b)
					}
				} else if f.IsExported() && fixed[f.Name] == "" {
					if d := unlike(path+"."+f.Name, k, a.Field(i), b.Field(i)); d != "" {
						return d
					}
				}
			}
		case reflect.Slice:
			if a.Len() != b.Len() {
				return fmt.Sprintf("%s has %d items, and %d", path, a.Len(), b.Len())
			}
			for i := range a.Len() {
				if d := unlike(fmt.Sprintf("%s[%d]", path, i), k, a.Index(i), b.Index(i)); d != "" {
					return d
				}
			}
		default:
			same = reflect.DeepEqual(x, b.Interface())
		}
	}
	if same {
		return ""
	}
	return fmt.Sprintf("%s was %v and is %v", path, a, b)
}
