package bind

import (
	"encoding/json"
	"errors"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"iter"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

type inner struct {
	Deep units.Length
	List []int
}

type outer struct {
	Name   string
	Wide   units.Length
	Full   units.Ratio
	Unit   units.Unit
	Ready  bool
	Count  int
	Seed   uint64
	Parts  []inner
	Inside inner
	hidden int
}

func read(t *testing.T, text string) (outer, error) {
	t.Helper()
	n, err := Parse([]byte(text))
	if err != nil {
		return outer{}, err
	}
	var o outer
	return o, Reader{}.Read(n, &o)
}

func TestReadAndWrite(t *testing.T) {
	const text = `{"name":"ruff","wide":"1 5/8 in","full":"2 1/2","unit":"cm","ready":true,"count":3,"seed":7,` +
		`"parts":[{"deep":"15 mm","list":[1,2]},{"deep":"1/3 in","list":[]}],"inside":{"deep":"1 yd","list":[9]}}`
	n, err := Parse([]byte(text))
	if err != nil {
		t.Fatal(err)
	}
	var o outer
	if err := (Reader{}).Read(n, &o); err != nil {
		t.Fatal(err)
	}
	if o.Parts[0].Deep != units.Millimetre.Of(15) || o.Inside.List[0] != 9 || o.hidden != 0 {
		t.Errorf("%+v", o)
	}
	b, err := Append(nil, o)
	if err != nil {
		t.Fatal(err)
	}
	if want := strings.ReplaceAll(text, "1 yd", "36 in"); string(b) != want {
		t.Errorf("got  %s\nwant %s", b, want)
	}
	if !json.Valid(b) {
		t.Error("not JSON")
	}
	figures, err := Figures(o, "Name")
	if err != nil || figures[0] != (Figure{"wide", "1 5/8 in"}) || figures[len(figures)-1] != (Figure{"inside.list[0]", "9"}) {
		t.Errorf("%v, %v", figures, err)
	}
}

func TestFaults(t *testing.T) {
	for _, c := range []struct {
		text string
		path string
		err  error
	}{
		{`{"Name":"x"}`, "Name", fault.Unknown},
		{`{"hidden":1}`, "hidden", fault.Unknown},
		{`{"name":1}`, "name", fault.Form},
		{`{"name":"x","name":"y"}`, "name", fault.Twice},
		{`{"wide":"0 in"}`, "wide", errExplicitZero},
		{`{"wide":true}`, "wide", fault.Form},
		{`{"wide":"5/8"}`, "wide", fault.Form},
		{`{"full":"0"}`, "full", errExplicitZero},
		{`{"full":""}`, "full", fault.Form},
		{`{"full":[]}`, "full", fault.Form},
		{`{"unit":"ell"}`, "unit", fault.Form},
		{`{"ready":"maybe"}`, "ready", fault.Form},
		{`{"ready":1}`, "ready", fault.Form},
		{`{"count":1.5}`, "count", fault.Form},
		{`{"count":0}`, "count", errExplicitZero},
		{`{"count":{}}`, "count", fault.Form},
		{`{"seed":-1}`, "seed", fault.Form},
		{`{"parts":{}}`, "parts", fault.Form},
		{`{"parts":[{"deep":"1 in"},{"deep":"x"}]}`, "parts[1].deep", fault.Form},
		{`{"parts":[1]}`, "parts[0]", fault.Form},
		{`{"inside":{"list":[1,null]}}`, "inside.list[1]", fault.Form},
		{`{"wide":"1` + strings.Repeat("0", 200) + ` in"}`, "wide", fault.Range},
		{`[]`, "", fault.Form},
		{`{`, "", fault.Form},
		{`{} x`, "", fault.Form},
		{strings.Repeat(" ", MaxBytes+1), "", fault.Range},
	} {
		_, err := read(t, c.text)
		var f *fault.Fault
		if !errors.As(err, &f) || f.Path != c.path || !errors.Is(err, c.err) {
			t.Errorf("%.60s: %v, want %v at %q", c.text, err, c.err, c.path)
		}
	}
}

func TestManyFaultsAreCounted(t *testing.T) {
	_, err := read(t, `{"inside":{"list":[`+strings.Repeat("null,", 500)+`null]}}`)
	var fs fault.Faults
	if !errors.As(err, &fs) || len(fs) != MaxFault+1 || fs[MaxFault].Got != "401 faults more" {
		t.Errorf("%d faults, the last %v", len(fs), fs[len(fs)-1])
	}
}

// An error of the library is cut short in the same way, once.
func TestMost(t *testing.T) {
	for n, want := range map[int]int{1: 1, MaxFault: MaxFault, MaxFault + 1: MaxFault + 1, MaxFault + 2: MaxFault + 1, 1000: MaxFault + 1} {
		var a fault.Audit
		for range n {
			a.Fault("Takes", "1 in", "none", fault.Range)
		}
		var fs fault.Faults
		if !errors.As(Lower(Most(a.Err())), &fs) || len(fs) != want || n > MaxFault+1 && fs[MaxFault].Got != strconv.Itoa(n-MaxFault)+" faults more" {
			t.Errorf("%d faults are %d, the last %v", n, len(fs), fs[len(fs)-1])
		}
	}
	plain := errors.New("plain")
	if Most(plain) != plain || Most(nil) != nil {
		t.Error("an error without faults is changed")
	}
}

// Values stand one after another; nothing else does.
func TestParseAll(t *testing.T) {
	for text, want := range map[string]int{"": 0, " \n": 0, "{} {}\n[1]": 3, `{"a":1}"b"2`: 3, "{}]": -1, "{} }": -1, "{},{}": -1, "{": -1, "[1,2": -1, "{} x": -1, "1 2 3 4 5 6": -1, "[1,2,3,4,5]": -1} {
		all, err := ParseAll([]byte(text), 5)
		if (err != nil) != (want < 0) || err == nil && len(all) != want {
			t.Errorf("%q: %d values, %v", text, len(all), err)
		}
		var fs fault.Faults
		if err != nil && (!errors.As(err, &fs) || !errors.Is(err, fault.Form)) {
			t.Errorf("%q: %v", text, err)
		}
	}
}

// A tag names the key; an array has its number of values.
func TestTagsAndArrays(t *testing.T) {
	type tagged struct {
		ID   string `json:"id"`
		Pair [2]units.Ratio
	}
	for text, want := range map[string]string{
		`{"id":"a","pair":["1","2"]}`: "",
		`{"iD":"a"}`:                  "iD",
		`{"pair":["1"]}`:              "pair",
		`{"pair":["1","2","3"]}`:      "pair",
		`{"pair":["1","x"]}`:          "pair[1]",
	} {
		n, err := Parse([]byte(text))
		if err != nil {
			t.Fatal(err)
		}
		var v tagged
		err = Reader{}.Read(n, &v)
		if want == "" {
			if b, _ := Append(nil, v); err != nil || string(b) != text {
				t.Errorf("%s: %s, %v", text, b, err)
			}
			continue
		}
		var f *fault.Fault
		if !errors.As(err, &f) || f.Path != want {
			t.Errorf("%s: %v", text, err)
		}
	}
}

func TestPut(t *testing.T) {
	n := Object()
	for _, p := range [][2]string{{"name", "ruff"}, {"inside.deep", "1 in"}, {"inside.list", "[1, 2]"}} {
		if err := n.Put(p[0], p[1]); err != nil {
			t.Fatal(err)
		}
	}
	var o outer
	if err := (Reader{}).Read(n, &o); err != nil || o.Inside.Deep != units.Inch.Of(1) || len(o.Inside.List) != 2 {
		t.Errorf("%+v, %v", o, err)
	}
	for _, p := range [][2]string{{"name", "again"}, {"name.deep", "x"}, {"inside", "x"}, {"inside.deep", "2 in"}, {"", "x"}, {"a.", "x"}, {"b", "[1"}} {
		if n.Put(p[0], p[1]) == nil {
			t.Errorf("%s=%s is taken", p[0], p[1])
		}
	}
	if text, ok := n.Take("name"); !ok || text != "ruff" {
		t.Errorf("took %q", text)
	}
	if _, ok := n.Take("name"); ok {
		t.Error("took it twice")
	}
}

// Every field whose comment says that zero is an answer may be given as zero, and
// no other.
func TestZeroAnswers(t *testing.T) {
	if !slices.IsSorted(answers[:]) {
		t.Error("the table is not in order")
	}
	says := regexp.MustCompile(`(?i)zero is an answer|zero where the ends only meet|every seed is good, zero too|0 where the edges are straight|zero is square|0 = square|0 \(square\)|zero for a straight|zero: straight|plus where|plus is convex|signed turning|more than zero where it bulges|outward ones less inward`)
	documented := map[string]bool{}
	fields := map[string]bool{}
	root := filepath.Join("..", "..", "..")
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		tree, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ParseComments|parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		ast.Inspect(tree, func(n ast.Node) bool {
			ts, ok := n.(*ast.TypeSpec)
			if !ok {
				return true
			}
			st, ok := ts.Type.(*ast.StructType)
			if !ok {
				return true
			}
			for _, f := range st.Fields.List {
				text := strings.Join(strings.Fields(f.Doc.Text()+" "+f.Comment.Text()), " ")
				for _, name := range f.Names {
					key := tree.Name.Name + "." + ts.Name.Name + "." + name.Name
					fields[key] = true
					if says.MatchString(text) {
						documented[key] = true
					}
				}
			}
			return true
		})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for _, a := range answers {
		if !fields[a] {
			t.Errorf("%s is no field", a)
		}
		if !documented[a] {
			t.Errorf("the doc of %s does not say that zero is an answer", a)
		}
	}
	for d := range documented {
		if regexp.MustCompile(`Plan\.|Row\.|Drift|Take\.`).MatchString(d) && !zeroAnswers(d) {
			continue
		}
		if !zeroAnswers(d) {
			t.Errorf("the doc of %s says that zero is an answer, and the table does not", d)
		}
	}
}

// listing is a Plan with every kind of method that is listed, and some that are not.
type listing struct {
	Spec lister
	Size int
}

type lister struct{ Fail bool }

func (listing) Pairs() iter.Seq2[units.Length, units.Length] {
	return func(yield func(a, b units.Length) bool) { yield(units.Inch.Of(1), units.Inch.Of(2)) }
}
func (listing) Singles() iter.Seq[units.Length] {
	return func(yield func(units.Length) bool) { yield(units.Inch.Of(3)) }
}
func (listing) At(int) units.Length       { return units.Length{} }
func (listing) Sheet() ticket.Sheet       { return ticket.Sheet{} }
func (l lister) Plan() (listing, error)   { return listing{}, nil }
func (l lister) Solved() ([]inner, error) { return []inner{{Deep: units.Inch.Of(4)}}, l.err() }
func (l lister) Tried() iter.Seq2[inner, error] {
	return func(yield func(inner, error) bool) {
		_ = yield(inner{}, nil) && yield(inner{Deep: units.Inch.Of(5)}, l.err())
	}
}
func (l lister) err() error {
	if l.Fail {
		return errors.New("failed")
	}
	return nil
}

func TestLists(t *testing.T) {
	for fail, want := range map[bool]string{
		false: `{"spec":{},"size":0,"pairs":[["1 in","2 in"]],"singles":["3 in"],"solved":[{"deep":"4 in","list":[]}],"tried":[{"deep":"0 in","list":[]},{"deep":"5 in","list":[]}]}`,
		true:  `{"spec":{"fail":true},"size":0,"pairs":[["1 in","2 in"]],"singles":["3 in"]}`,
	} {
		b, err := AppendFields([]byte("{"), listing{Spec: lister{fail}})
		if got := string(b) + "}"; got != want || err != nil {
			t.Errorf("got  %s, %v\nwant %s", got, err, want)
		}
	}
}

func FuzzRead(f *testing.F) {
	f.Add([]byte(`{"name":"ruff","wide":"1 5/8 in","parts":[{"deep":"15 mm"}]}`))
	f.Add([]byte(`{"inside":{"list":[1,2,null]},"Name":0}`))
	f.Add([]byte(`[[[[`))
	f.Fuzz(func(t *testing.T, text []byte) {
		n, err := Parse(text)
		if err == nil {
			var o outer
			err = Reader{}.Read(n, &o)
			if err == nil {
				b, err := Append(nil, o)
				if err != nil || !json.Valid(b) {
					t.Fatalf("%s: %v", b, err)
				}
			}
		}
		if err != nil {
			var fs fault.Faults
			if !errors.As(err, &fs) || len(fs) == 0 || !json.Valid(AppendFaults(nil, "x", 1, fs)) {
				t.Fatalf("%v", err)
			}
		}
	})
}

// Text that cannot be seen is escaped, and is read back from JSON as it was.
func TestEscapes(t *testing.T) {
	for _, s := range []string{"", "ruff", "Rüsche \"a\\b\" </>", "\x1b[31m\x7f", "\u009b \u202e \u2066 \ufeff \u2028", "\uffff \U0001fffe \U0001f600"} {
		b, err := Append(nil, s)
		if err != nil || fault.Visible(string(b)) != string(b) {
			t.Errorf("%q is written as %q, %v", s, b, err)
		}
		var back string
		if err := json.Unmarshal(b, &back); err != nil || back != s {
			t.Errorf("%s is read as %q, %v", b, back, err)
		}
	}
}
