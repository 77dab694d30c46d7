package noun_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
	"testing/iotest"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

type way uint8

var ways = name.Of[way]("way", "none", "flat-felled", "french")

func (w way) String() string                { return ways.String(w) }
func (w way) MarshalText() ([]byte, error)  { return ways.Marshal(w) }
func (w *way) UnmarshalText(t []byte) error { return ways.Unmarshal(w, t) }

type Allowance struct {
	Drafted units.Length `json:"drafted,omitzero"`
	Fraying bool         `json:"fraying,omitzero"`
}

type bag struct {
	Allowance
	Way    way                       `json:"way,omitzero"`
	Depth  units.Length              `json:"depth,omitzero"`
	Ease   units.Length              `json:"ease,omitzero" noun:"zero"`
	Lap    units.Given[units.Length] `json:"lap,omitzero"`
	Full   units.Ratio               `json:"full,omitzero"`
	Pieces int                       `json:"pieces,omitzero"`
	Seed   uint64                    `json:"seed,omitzero" noun:"zero"`
	Name   string                    `json:"name,omitzero"`
	Takes  []Allowance               `json:"takes,omitzero"`
	Marks  []units.Length            `json:"marks,omitzero"`
	Parts  noun.Map[Allowance]       `json:"parts,omitzero"`
	Sewn   anySeam                   `json:"sewn,omitzero"`
}

type french struct {
	Allowance
	First units.Length `json:"first,omitzero"`
}

type plain struct {
	Allowance
	Aside bool `json:"aside,omitzero"`
}

// anySeam is a choice of two kinds.
type anySeam struct{ Seam any }

func (anySeam) Kinds() []string { return []string{"french", "plain"} }
func (anySeam) Begin(kind string) any {
	switch kind {
	case "french":
		return new(french)
	case "plain":
		return new(plain)
	}
	return nil
}
func (a *anySeam) Choose(v any) {
	switch v := v.(type) {
	case *french:
		a.Seam = *v
	case *plain:
		a.Seam = *v
	}
}
func (a anySeam) Chosen() (string, any) {
	switch a.Seam.(type) {
	case french:
		return "french", a.Seam
	case plain:
		return "plain", a.Seam
	}
	return "", nil
}
func (a anySeam) MarshalJSON() ([]byte, error)  { return noun.MarshalChoice(&a) }
func (a *anySeam) UnmarshalJSON(t []byte) error { return noun.UnmarshalChoice(a, t) }
func (a anySeam) IsZero() bool                  { return a.Seam == nil }

type bagPlan struct {
	Spec bag `json:"spec"`
}

func (b bag) Plan() (bagPlan, error) {
	var a fault.Audit
	a.Need("depth", b.Depth)
	return bagPlan{b}, a.Err()
}
func (bagPlan) Sheet() ticket.Sheet { return ticket.Sheet{Title: "A bag"} }

var exact = cmpopts.EquateComparable(units.Length{}, units.Ratio{}, units.Given[units.Length]{})

const full = `{
	"drafted": "5/8 in", "fraying": true, "way": "Flat Felled", "depth": "12 mm", "ease": "0 in", "lap": "0 in",
	"full": "3/2", "pieces": 3, "seed": 0, "name": "prop", "takes": [{"drafted": "1 in"}], "marks": ["1 in", "2 in"],
	"parts": {"b": {"drafted": "1 in"}, "a": {"fraying": true}}, "sewn": {"kind": "French", "drafted": "1 in", "first": "3/16 in"}
}`

func wantBag() bag {
	inch := units.Inch.Of(1)
	return bag{
		Allowance: Allowance{units.Inch.Frac(5, 8), true}, Way: 1, Depth: units.Millimetre.Of(12), Lap: units.Give(units.Length{}),
		Full: units.RatioOf(3, 2), Pieces: 3, Name: "prop", Takes: []Allowance{{Drafted: inch}}, Marks: []units.Length{inch, units.Inch.Of(2)},
		Parts: noun.Map[Allowance]{{Name: "b", Value: Allowance{Drafted: inch}}, {Name: "a", Value: Allowance{Fraying: true}}},
		Sewn:  anySeam{french{Allowance{Drafted: inch}, units.Inch.Frac(3, 16)}},
	}
}

func TestRead(t *testing.T) {
	var got bag
	if err := noun.Read(strings.NewReader(full), &got); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(wantBag(), got, exact, cmp.AllowUnexported(bag{}, french{})); diff != "" {
		t.Error(diff)
	}
	text, err := json.Marshal(got)
	if err != nil {
		t.Fatal(err)
	}
	var back bag
	if err := json.Unmarshal(text, &back); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(wantBag(), back, exact, cmp.AllowUnexported(bag{}, french{})); diff != "" {
		t.Errorf("%s\n%s", text, diff)
	}
}

func TestReadRefuses(t *testing.T) {
	for text, want := range map[string]string{
		``:                            "JSON: cannot be read, want more: the text ends too early (line 1, column 1)",
		`null`:                        "null: cannot be read, want a value, or leave it out (line 1, column 4)",
		`[1]`:                         `a list: cannot be read, want an object, as {"name": ...} (line 1, column 1)`,
		`{} {}`:                       "JSON: cannot be read, want nothing after the end (line 1, column 4)",
		`{"Depth": "1 in"}`:           `Depth "1 in": not known, want one of drafted, fraying, way, depth, ease, lap, full, pieces, seed, name, takes, marks, parts, sewn (line 1, column 16)`,
		`{"pieces": 1, "pieces": 2}`:  "pieces 2: given twice, want each key once (line 1, column 25)",
		"{\n \"depth\": \"0 in\"}":    `depth "0 in": zero means not given, want more than zero, or leave it out (line 2, column 16)`,
		`{"pieces": 0}`:               "pieces 0: zero means not given, want more than zero, or leave it out (line 1, column 12)",
		`{"pieces": 1.5}`:             "pieces 1.5: cannot be read, want a whole number (line 1, column 14)",
		`{"seed": -1}`:                "seed -1: cannot be read, want a whole number of zero or more (line 1, column 11)",
		`{"depth": "5/8"}`:            `depth "5/8": cannot be read, want a unit: in, ft, yd, mm, cm, m or L (at byte 3, found the end) (line 1, column 15)`,
		`{"depth": null}`:             "depth null: cannot be read, want a value, or leave it out (line 1, column 14)",
		`{"depth": ["1 in"]}`:         `depth a list: cannot be read, want a length in quotes, as "5/8 in" (line 1, column 11)`,
		`{"full": ""}`:                `full "": cannot be read, want a value, or leave it out (line 1, column 11)`,
		`{"full": "x"}`:               `full "x": cannot be read, want a number (at byte 0, found "x") (line 1, column 12)`,
		`{"way": "sideways"}`:         `way "sideways": not known, want one of flat-felled, french (line 1, column 18)`,
		`{"name": 3}`:                 "name 3: cannot be read, want text in quotes (line 1, column 10)",
		`{"fraying": 1}`:              "fraying 1: cannot be read, want true or false (line 1, column 13)",
		`{"takes": {}}`:               "takes a object: cannot be read, want a list (line 1, column 11)",
		`{"takes": [{"x": 1}]}`:       "takes[0].x 1: not known, want one of drafted, fraying (line 1, column 18)",
		`{"sewn": {"first": "1 in"}}`: "sewn.kind: not given, want one of french, plain",
		`{"sewn": {"kind": "bound"}}`: `sewn.kind "bound": not known, want one of french, plain (line 1, column 10)`,
		`{"sewn": {"kind": "plain", "first": "1 in"}}`: `sewn.first "1 in": not known, want one of drafted, fraying, aside (line 1, column 42)`,
		`{"parts": {"a": {}, "a": {}}}`:                "parts.a a object: given twice, want each key once (line 1, column 26)",
		"{\"\\u001b[31m\": 1}":                         `"\x1b[31m" 1: not known, want one of drafted, fraying, way, depth, ease, lap, full, pieces, seed, name, takes, marks, parts, sewn (line 1, column 16)`,
	} {
		var got bag
		err := noun.Read(strings.NewReader(text), &got)
		if err == nil || err.Error() != want {
			t.Errorf("%s\n got %v\nwant %s", text, err, want)
		}
		if diff := cmp.Diff(bag{}, got, exact, cmp.AllowUnexported(bag{})); diff != "" {
			t.Errorf("%s changes what it cannot fill: %s", text, diff)
		}
	}
}

func TestReadBounds(t *testing.T) {
	for what, text := range map[string]string{
		"bytes":    `{"name": "` + strings.Repeat("x", noun.MaxBytes) + `"}`,
		"depth":    strings.Repeat("[", noun.MaxDepth+2) + strings.Repeat("]", noun.MaxDepth+2),
		"values":   "[" + strings.Repeat("1,", noun.MaxNodes) + "1]",
		"number":   `{"depth": "` + strings.Repeat("1", noun.MaxNumber) + ` in"}`,
		"unclosed": `{"takes": [{`,
	} {
		var b bag
		if err := noun.Read(strings.NewReader(text), &b); err == nil {
			t.Errorf("too much of %s is read", what)
		} else if n := len(err.Error()); n > 500 {
			t.Errorf("too much of %s is told in %d bytes", what, n)
		}
	}
	var b bag
	err := noun.Read(strings.NewReader(`{"takes": [`+strings.Repeat("1,", 5000)+`1]}`), &b)
	var fs fault.Faults
	if !errors.As(err, &fs) || len(fs) != fault.MaxFaults+1 || fs[fault.MaxFaults].Got != "4901 faults more" {
		t.Errorf("of 5001 faults %d are told", len(fs))
	}
}

func TestPairs(t *testing.T) {
	var got bag
	err := noun.Reader{Parser: units.Parser{Bare: units.Inch}}.Pairs([]string{
		"drafted=5/8", "fraying=true", "way=flat felled", "depth=12 mm", "ease=0", "lap=0 in", "full=1.5", "pieces=3", "seed=0", "name=prop",
		`takes=[{"drafted": "1"}]`, `marks=["1", "2"]`, "parts.b.drafted=1", "parts.a.fraying=true",
		"sewn.kind=french", "sewn.drafted=1", "sewn.first=3/16",
	}, &got)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(wantBag(), got, exact, cmp.AllowUnexported(bag{}, french{})); diff != "" {
		t.Error(diff)
	}
	err = noun.Reader{}.Pairs([]string{"depth", "=1", "pieces=1", "pieces=2", "pieces.x=3", "takes=[1", "way.=2"}, &got)
	want := `"depth": cannot be read, want name=value
cannot be read, want name=value
pieces "2": given twice
pieces.x "3": given twice
takes JSON: cannot be read, want more: the text ends too early (line 1, column 2)
way.: cannot be read, want name=value`
	if err == nil || err.Error() != want {
		t.Error(cmp.Diff(want, err.Error()))
	}
}

// All faults of pairs are told at once, and nothing is set.
func TestPairsAllFaults(t *testing.T) {
	var b bag
	err := noun.Reader{}.Pairs([]string{"pieces=1", "pieces=2", "depth=x", "colour=red"}, &b)
	for _, want := range []string{`pieces "2": given twice`, `depth "x": cannot be read`, `colour "red": not known`} {
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("no %q in %v", want, err)
		}
	}
	if b.Pieces != 0 {
		t.Errorf("%d pieces are set", b.Pieces)
	}
}

// A blank that cannot be seen is no blank beside a name or a value.
func TestPairsUnseen(t *testing.T) {
	for _, pair := range []string{"way\u2028=french", "way=french\u2028", "\tway=french"} {
		var b bag
		if err := (noun.Reader{}).Pairs([]string{pair}, &b); !errors.Is(err, fault.Unknown) {
			t.Errorf("%q: %v", pair, err)
		}
	}
	var b bag
	if err := (noun.Reader{}).Pairs([]string{" way = french "}, &b); err != nil || b.Way.String() != "french" {
		t.Errorf("%v, %v", b, err)
	}
}

func TestRegistry(t *testing.T) {
	r := noun.NewRegistry([]noun.Entry{noun.Of[bag]("bag.bag")})
	e, spec, err := r.Read(strings.NewReader(`{"sum": "bag.bag", "depth": "1 in"}`), noun.Reader{})
	if err != nil || e.Name() != "bag.bag" || spec.(*bag).Depth != units.Inch.Of(1) {
		t.Fatalf("got %v, %v, %v", e, spec, err)
	}
	p, err := e.Plan(spec)
	if err != nil || p.Sheet().Title != "A bag" {
		t.Errorf("got %v, %v", p, err)
	}
	if _, err := e.Plan(e.New()); !errors.Is(err, fault.Missing) {
		t.Errorf("a bag without a depth is planned: %v", err)
	}
	for text, want := range map[string]string{
		`{"depth": "1 in"}`:              "sum: not given, want the name of a sum, as in gather.strip",
		`{"sum": "hat"}`:                 `sum "hat": not known, want one of bag.bag`,
		`{"sum": "bag.bag", "depth": 1}`: `depth 1: cannot be read, want a unit: in, ft, yd, mm, cm, m or L (at byte 1, found the end) (line 8, column 29)`,
		`{`:                              "JSON: cannot be read, want more: the text ends too early (line 8, column 1)",
	} {
		if _, _, err := r.Read(strings.NewReader(text), noun.Reader{Before: 7}); err == nil || err.Error() != want {
			t.Errorf("%s\n got %v\nwant %s", text, err, want)
		}
	}
}

// sewnPlan holds its Spec as a choice.
type sewnPlan struct {
	Spec anySeam      `json:"spec"`
	Gain units.Length `json:"gain,omitzero"`
}

func (f french) Plan() (sewnPlan, error) { return sewnPlan{Spec: anySeam{f}}, nil }
func (sewnPlan) Sheet() ticket.Sheet     { return ticket.Sheet{} }

// A plan is read as the question that it answers, and nothing strange beside its Spec.
func TestRegistryReadsPlans(t *testing.T) {
	r := noun.NewRegistry([]noun.Entry{noun.Of[bag]("bag.bag"), noun.Of[french]("seam.french")})
	for text, want := range map[string]string{
		`{"sum": "Bag.Bag", "line": 3, "spec": {"depth": "1 in"}}`:                            "",
		`{"sum": "seam.french", "spec": {"kind": "french", "first": "1 in"}, "gain": "0 in"}`: "",
		`{"sum": "seam.french", "spec": {"kind": "plain", "first": "1 in"}}`:                  `spec.kind "plain": disagrees with what else is given, want the kind of seam.french`,
		`{"sum": "bag.bag", "spec": {"depth": "1 in"}, "depth": "2 in"}`:                      "depth: not known, want a part of the answer; fields stand in spec",
		`{"sum": "bag.bag", "spec": {"depth": "1 in"}, "spec": {"depth": "2 in"}}`:            "spec: given twice, want each key once",
		`{"sum": "bag.bag", "spec": {"depth": "1 in", "depth": "1 in"}}`:                      `depth "1 in": given twice, want each key once (line 1, column 60)`,
		`{"sum": "bag.bag", "spec": "1 in"}`:                                                  `spec "1 in": not known, want one of drafted, fraying, way, depth, ease, lap, full, pieces, seed, name, takes, marks, parts, sewn (line 1, column 33)`,
	} {
		_, spec, err := r.Read(strings.NewReader(text), noun.Reader{})
		if got := fmt.Sprint(err); got != want && (want != "" || err != nil) {
			t.Errorf("%s\n got %v\nwant %s", text, err, want)
		}
		if want == "" {
			if b, ok := spec.(*bag); ok && b.Depth != units.Inch.Of(1) {
				t.Errorf("%s: %v", text, spec)
			}
			if f, ok := spec.(*french); ok && f.First != units.Inch.Of(1) {
				t.Errorf("%s: %v", text, spec)
			}
		}
	}
}

// A List knows what the files of its package say.
func TestList(t *testing.T) {
	files := fstest.MapFS{
		"words.txt":     {Data: []byte("noun_test.bag\ta thing to carry.\nnoun_test.Allowance.Drafted\tThe allowance.\nnoun_test.bag.Depth\tHow deep it is.\n")},
		"examples.json": {Data: []byte(`{"bag.bag": [{"depth": "1 in"}, {"depth": "2 in"}]}`)},
	}
	r := noun.NewRegistry(noun.List(files, noun.Of[bag]("bag.bag")), noun.List(fstest.MapFS{}, noun.Of[bag]("bag.other")))
	var names []string
	for e := range r.All() {
		names = append(names, e.Name())
	}
	if diff := cmp.Diff([]string{"bag.bag", "bag.other"}, names); diff != "" {
		t.Error(diff)
	}
	e, _ := r.Find("bag.bag")
	if all := e.Examples(); len(all) != 2 || string(all[1]) != `{"depth": "2 in"}` {
		t.Errorf("got examples %s", all)
	}
	if e.Means() != "a thing to carry." {
		t.Errorf("a bag is %q", e.Means())
	}
	means := map[string]string{}
	for _, f := range e.Fields() {
		means[f.Path] = f.Means
	}
	if means["drafted"] != "The allowance." || means["depth"] != "How deep it is." || means["way"] != "" || means["takes[0].drafted"] != "The allowance." {
		t.Errorf("got %v", means)
	}
	if text, err := noun.Schema(e); err != nil || !strings.Contains(string(text), "How deep it is.") {
		t.Errorf("%s, %v", text, err)
	}
	var structs []string
	for _, s := range e.Structs() {
		structs = append(structs, s.Name())
	}
	if diff := cmp.Diff([]string{"bag", "Allowance", "french", "plain"}, structs); diff != "" {
		t.Error(diff)
	}
	if _, ok := e.NewPlan().(*bagPlan); !ok {
		t.Errorf("the plan of a bag is %T", e.NewPlan())
	}
	other, _ := r.Find("bag.other")
	if _, ok := r.Find("hat"); ok || other.Examples() != nil || noun.Of[bag]("bag.bag").Examples() != nil {
		t.Error("a noun or an example is found that is not there")
	}
}

func TestMap(t *testing.T) {
	m := noun.Map[int]{{Name: "b", Value: 1}, {Name: "a", Value: 2}}
	if v, ok := m.Get("a"); v != 2 || !ok {
		t.Errorf("a is %d, %v", v, ok)
	}
	if _, ok := m.Get("c"); ok {
		t.Error("c is found")
	}
	for _, text := range []string{`[]`, `{"a": "x"}`, `{"a": 1`, `1`} {
		if err := json.Unmarshal([]byte(text), &m); err == nil || m[0].Name != "b" {
			t.Errorf("%s is read as %v", text, m)
		}
	}
	if _, err := json.Marshal(noun.Map[func()]{{Name: "f"}}); err == nil {
		t.Error("a function is written")
	}
}

// What MarshalChoice did not write, UnmarshalChoice need not read.
func TestChoice(t *testing.T) {
	var s anySeam
	if text, err := json.Marshal(s); err != nil || string(text) != "null" {
		t.Errorf("nothing chosen is %s, %v", text, err)
	}
	if text, err := json.Marshal(anySeam{plain{}}); err != nil || string(text) != `{"kind":"plain"}` {
		t.Errorf("a kind without fields is %s, %v", text, err)
	}
	if err := json.Unmarshal([]byte("null"), &s); err != nil || s.Seam != nil {
		t.Errorf("null is %v, %v", s, err)
	}
	for text, want := range map[string]error{
		`{"first": "1 in"}`:                fault.Missing,
		`{"kind": "bound"}`:                fault.Unknown,
		`{"kind": "french", "first": "x"}`: nil,
		`{"kind": 3}`:                      nil,
	} {
		err := json.Unmarshal([]byte(text), &s)
		if err == nil || want != nil && !errors.Is(err, want) {
			t.Errorf("%s: %v", text, err)
		}
	}
}

// A broken reader is no fault of the text.
func TestBrokenReader(t *testing.T) {
	broken := errors.New("broken")
	var b bag
	if err := noun.Read(iotest.ErrReader(broken), &b); !errors.Is(err, broken) {
		t.Errorf("got %v", err)
	}
	if _, _, err := (noun.Registry{}).Read(iotest.ErrReader(broken), noun.Reader{}); !errors.Is(err, broken) {
		t.Errorf("got %v", err)
	}
}

func TestLists(t *testing.T) {
	var v struct {
		Pair [2]units.Length
		More []*int
	}
	for text, want := range map[string]string{
		`{"pair": ["1 in", "2 in"]}`: "",
		`{"pair": ["1 in"]}`:         "pair a list: cannot be read, want a list of 2 (line 1, column 10)",
		`{"more": [1]}`:              "more[0] 1: cannot be read, want a field that can be given (line 1, column 11)",
	} {
		err := noun.Read(strings.NewReader(text), &v)
		if got := fmt.Sprint(err); got != want && !(err == nil && want == "") {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
}

func TestSchema(t *testing.T) {
	text, err := noun.Schema(noun.Of[bag]("bag.bag"))
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{`"additionalProperties": false`, `"flat-felled"`, `"const": "french"`, `"$schema": "https://json-schema.org/draft/2020-12/schema"`} {
		if !strings.Contains(string(text), want) {
			t.Errorf("%s is not in\n%s", want, text)
		}
	}
}

func TestFields(t *testing.T) {
	var got []string
	for _, f := range noun.Of[bag]("bag.bag").Fields() {
		got = append(got, f.Path+": "+f.Takes)
	}
	want := []string{
		"drafted: a length", "fraying: true or false", "way: one of flat-felled, french", "depth: a length", "ease: a length", "lap: a length",
		"full: a ratio", "pieces: a whole number", "seed: a whole number", "name: text",
		"takes[0]: an object", "takes[0].drafted: a length", "takes[0].fraying: true or false", "marks[0]: a length",
		"parts.name: an object", "parts.name.drafted: a length", "parts.name.fraying: true or false",
		"sewn: an object, kind one of french, plain", "sewn(french).drafted: a length", "sewn(french).fraying: true or false", "sewn(french).first: a length",
		"sewn(plain).drafted: a length", "sewn(plain).fraying: true or false", "sewn(plain).aside: true or false",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

// Values stand one after another; nothing else does.
func TestReadAll(t *testing.T) {
	r := noun.Reader{MaxNodes: 5, MaxBytes: 40}
	for text, want := range map[string]string{
		"": "", " \n": "", "[1] [2]": "", "[1,2,3,4]": "",
		"[1]]":                  "JSON: cannot be read, want nothing after the end (line 1, column 3)",
		"[1] }":                 "JSON: cannot be read, want nothing after the end (line 1, column 4)",
		"[1":                    "JSON: cannot be read, want more: the text ends too early (line 1, column 2)",
		"[1,2,3,4,5]":           "JSON: cannot be read, want at most 5 values (line 1, column 8)",
		"[1]\n[2,null]":         "[1][1] null: cannot be read, want a value, or leave it out (line 2, column 7)",
		strings.Repeat(" ", 41): "more than 40 bytes: out of range, want at most 40 bytes",
	} {
		all, err := noun.ReadAll[[]int](r, strings.NewReader(text))
		if (err == nil) != (want == "") || err != nil && err.Error() != want {
			t.Errorf("%q: %v, %v, want %s", text, all, err, want)
		}
		if err == nil && len(all) != strings.Count(text, "[") {
			t.Errorf("%q: %v", text, all)
		}
	}
	if _, err := noun.ReadAll[int](r, iotest.ErrReader(errors.New("broken"))); err == nil || err.Error() != "broken" {
		t.Error(err)
	}
}

func TestAssumed(t *testing.T) {
	before := bag{Depth: units.Inch.Of(1)}
	filled := before
	filled.Drafted, filled.Pieces, filled.Marks = units.Inch.Of(2), 2, []units.Length{units.Inch.Of(3)}
	if diff := cmp.Diff([]string{"drafted", "pieces", "marks"}, noun.Assumed(before, filled)); diff != "" {
		t.Error(diff)
	}
	if got := noun.Assumed(filled, filled); got != nil {
		t.Errorf("of the same Spec %v are assumed", got)
	}
}
