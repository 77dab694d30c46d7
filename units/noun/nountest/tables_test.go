package nountest

import (
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

type size struct {
	Name   string
	Kind   units.Unit
	Made   [2]units.Unit
	Width  units.Length
	Share  units.Ratio
	Count  int
	None   bool
	Note   string
	Source string
	Place  string
	Known  source.Known
}

func sizes(rows ...size) func(func(size) bool) {
	return func(yield func(size) bool) {
		for _, r := range rows {
			if !yield(r) {
				return
			}
		}
	}
}

var (
	shirt  = size{Name: "shirt", Width: units.Inch.Mixed(1, 3, 8), Count: 16, Note: "about", Source: "school-needlework", Place: "page 3", Known: source.Read}
	second = size{Name: "shirt", Share: units.RatioOf(3, 2), Source: "school-needlework", Known: source.Read}
	bare   = size{Kind: units.Inch, Made: [2]units.Unit{units.Yard, units.Metre}, None: true, Known: source.Practice}
	empty  = size{Name: "apron", Source: "school-needlework", Known: source.Memory}
)

const good = `table,row,column,figure,source,place,known
sizes,shirt,Width,1 3/8 in,school-needlework,page 3,read
sizes,shirt,Count,16,school-needlework,page 3,read
sizes,shirt (2),Share,1 1/2,school-needlework,,read
sizes,shirt (2),Width,0 in,school-needlework,,read
sizes,"in, yd, m",None,true,,,common practice
sizes,apron,,,school-needlework,,memory
`

func TestTables(t *testing.T) {
	tables := map[string]any{"sizes": sizes(shirt, second, bare, empty)}
	if faults := compare(strings.NewReader(good), tables); faults != nil {
		t.Fatalf("%q", faults)
	}
	Tables(t, "testdata/tables.csv", tables)
	for _, c := range []struct{ old, new, want string }{
		{"1 3/8 in", "1 1/2 in", "the row has 1 3/8 in"},
		{"Count,16", "Count,17", "the row has 16"},
		{"1 1/2,s", "2,s", "the row has 1 1/2"},
		{"true", "false", "the row has true"},
		{"Count,16", "Count,many", "invalid syntax"},
		{"sizes,shirt,Count,16,school-needlework,page 3,read\n", "", "no line states Count, 16"},
		{"sizes,apron,,,school-needlework,,memory\n", "", "no line states the row"},
		{"apron,,", "apron,Count,1", "the row has 0"},
		{"apron,,", "apron,Depth,1", "no such column"},
		{"shirt,Count,16", "shirt,,", "no such column"},
		{"apron", "skirt", "no row answers"},
		{"(2),Width,0 in", "(2),Share,1 1/2", "stated twice"},
		{"memory", "read", "the row is known as memory"},
		{"page 3", "page 4", `the row has the place "page 3"`},
		{"apron,,,school-needlework", "apron,,,school-knitting", "the source is not in the list"},
		{",,,common practice", ",,,read", "the source is not in the list"},
		{good[strings.Index(good, "\n")+1:], "", "no lines under"},
		{good, "", "no lines under"},
		{"table,row", "row,table", "no lines under"},
		{"sizes,apron", "sizes", "wrong number of fields"},
	} {
		faults := compare(strings.NewReader(strings.Replace(good, c.old, c.new, 1)), tables)
		if !slices.ContainsFunc(faults, func(f string) bool { return strings.Contains(f, c.want) }) {
			t.Errorf("%q for %q: %q, want %q", c.new, c.old, faults, c.want)
		}
	}
}

// A row whose place has another name, one that holds its citation, and one that
// has no words.
func TestShapes(t *testing.T) {
	type ease struct {
		Place, At string
		Low       int
		Source    string
		Known     string
	}
	type kept struct {
		Of, Printed units.Length
		Cite        source.Cite
	}
	text := `table,row,column,figure,source,place,known
ease,bust,Low,3,school-needlework,page 9,read
kept,1 in,Of,1 in,school-needlework,page 8,read
kept,1 in,Printed,25 mm,school-needlework,page 8,read
`
	faults := compare(strings.NewReader(text), map[string]any{
		"ease": func(yield func(ease) bool) { yield(ease{"bust", "page 9", 3, "school-needlework", "read"}) },
		"kept": func(yield func(kept) bool) {
			yield(kept{units.Inch.Of(1), units.Millimetre.Of(25), source.Cite{ID: "school-needlework", Place: "page 8", Known: source.Read}})
		},
	})
	if faults != nil {
		t.Errorf("%q", faults)
	}
}

func TestNoTable(t *testing.T) {
	type strange struct{ Widths []units.Length }
	type hidden struct{ width int }
	for want, table := range map[string]any{
		"no iterator":             []size{shirt},
		"a table of nothing":      sizes(),
		"no struct":               func(yield func(int) bool) { yield(1) },
		"neither figure nor word": func(yield func(strange) bool) { yield(strange{make([]units.Length, 1)}) },
		"not exported":            func(yield func(hidden) bool) { yield(hidden{width: 1}) },
	} {
		if faults := compare(strings.NewReader(good), map[string]any{"sizes": table}); len(faults) != 1 || !strings.Contains(faults[0], want) {
			t.Errorf("%q, want %q", faults, want)
		}
	}
}
