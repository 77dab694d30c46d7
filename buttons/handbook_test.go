package buttons_test

import (
	"encoding/csv"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// pairs are the name=value of a cell, in their order.
type pairs struct {
	names  []string
	values map[string]string
}

func readPairs(cell string) (pairs, error) {
	p := pairs{values: map[string]string{}}
	for part := range strings.SplitSeq(cell, ";") {
		name, value, ok := strings.Cut(part, "=")
		if _, twice := p.values[name]; !ok || name == "" || value == "" || twice {
			return p, fmt.Errorf("%q is not name=value, or is there twice", part)
		}
		p.names = append(p.names, name)
		p.values[name] = value
	}
	return p, nil
}

// known are the values of the column of that name.
var known = map[string]source.Known{"read": source.Read, "memory": source.Memory, "practice": source.Practice, "computed": source.Computed}

// answers works a row out through the public API and gives every name it knows.
func answers(kind string, given pairs) (map[string]string, error) {
	r := reader{pairs: given}
	out := map[string]string{}
	put := func(name string, v any) { out[name] = fmt.Sprint(v) }
	var err error
	switch kind {
	case "row":
		var p buttons.RowPlan
		p, err = buttons.Row{First: r.length("first"), Last: r.length("last"), Count: r.count("count"), Gap: r.length("gap"),
			MinGap: r.length("minGap"), MaxGap: r.length("maxGap"), Step: r.length("step"), Have: r.count("have")}.Plan()
		for name, l := range map[string]units.Length{"first": p.Spec.First, "last": p.Spec.Last, "gap": p.Gap, "span": p.Span,
			"worstMark": p.WorstMark, "worstGap": p.WorstGap, "creep": p.Creep, "creepDown": p.CreepDown, "creepUp": p.CreepUp} {
			put(name, l)
		}
		put("count", p.Spec.Count)
		k := 0
		for mark, residue := range p.Marks() {
			k++
			put("mark"+strconv.Itoa(k), mark)
			put("place"+strconv.Itoa(k), mark.Add(residue))
		}
	case "hole":
		var p buttons.HolePlan
		p, err = buttons.Hole{Diameter: r.length("diameter"), Thickness: r.length("thickness"), Outline: r.outline("outline"),
			Ease: r.length("ease"), Step: r.length("step"), Setting: r.setting("setting"), Place: r.length("place"), Reach: r.length("reach")}.Plan()
		put("exact", p.Exact)
		put("cut", p.Cut)
		put("start", p.Start)
		put("end", p.End)
	case "lap":
		var p buttons.LapPlan
		p, err = buttons.Lap{Lap: r.length("lap"), Hole: r.length("hole"), Diameter: r.length("diameter"),
			Topstitch: r.length("topstitch"), Setting: r.setting("setting")}.Plan()
		for name, l := range map[string]units.Length{"lap": p.Spec.Lap, "innerEnd": p.InnerEnd, "outerEnd": p.OuterEnd,
			"beyond": p.Beyond, "clash": p.Clash, "clear": p.Clear} {
			put(name, l)
		}
		put("crosses", p.Crosses)
	case "rule":
		src, name, shape, d, t := r.text("source"), r.text("name"), r.outline("outline"), r.length("diameter"), r.length("thickness")
		for rule := range buttons.HoleRules {
			if rule.Source == src && rule.Outline == shape && (name == "" || rule.Name == name) {
				put("length", rule.Length(d, t))
			}
		}
	case "laprule":
		name, d := r.text("name"), r.length("diameter")
		for rule := range buttons.LapRules {
			if rule.Name == name {
				put("lap", rule.Lap(d))
			}
		}
	case "size":
		if n := r.count("lignes"); n != 0 {
			put("exact", units.Ligne.Of(int64(n)))
		} else {
			n, _ := r.length("diameter").In(units.Ligne).Int(units.HalfAway)
			put("whole", n)
		}
	case "chart":
		chart, step := r.text("chart"), r.length("step")
		for row := range buttons.LignesAt(r.count("lignes")) {
			if row.Source == chart {
				put("exact", row.Exact())
				put("inches", row.Inches)
				put("metric", row.Metric)
				mark, _ := row.Exact().Round(step, units.HalfAway)
				put("rounded", mark)
			}
		}
	case "law":
		id := r.text("id")
		for l := range buttons.Limits {
			if l.ID == id {
				put("length", l.Length)
				put("exempt", l.Exempt)
				put("below", l.Below)
				put("newton", l.Newton)
			}
		}
	case "stock":
		s := buttons.Stock{Have: r.count("have")}
		for one := range strings.SplitSeq(r.text("places"), "/") {
			var p buttons.Placement
			if _, e := fmt.Sscanf(one, "%s %d %d %d", &p.Name, &p.Count, &p.Times, &p.Least); e != nil {
				return nil, e
			}
			s.Places = append(s.Places, p)
		}
		var p buttons.StockPlan
		p, err = s.Plan()
		put("need", p.Need)
		put("short", p.Short)
		put("spare", p.Spare)
		for i, g := range p.Gives {
			put("give"+strconv.Itoa(i+1), strings.Trim(fmt.Sprint(g.Counts), "[]"))
			put("spare"+strconv.Itoa(i+1), g.Spare)
		}
	default:
		return nil, fmt.Errorf("unknown kind %q", kind)
	}
	if r.err != nil {
		return nil, r.err
	}
	return out, err
}

// reader takes the given values by name and finds those nobody asked for.
type reader struct {
	pairs
	err error
}

func (r *reader) text(name string) string {
	v := r.values[name]
	delete(r.values, name)
	return v
}

func (r *reader) length(name string) (l units.Length) {
	r.unmarshal(name, &l)
	return l
}

func (r *reader) outline(name string) (o buttons.Outline) {
	r.unmarshal(name, &o)
	return o
}

func (r *reader) setting(name string) (s buttons.Setting) {
	r.unmarshal(name, &s)
	return s
}

func (r *reader) unmarshal(name string, to interface{ UnmarshalText([]byte) error }) {
	if v := r.text(name); v != "" {
		r.keep(to.UnmarshalText([]byte(v)))
	}
}

func (r *reader) count(name string) int {
	v := r.text(name)
	if v == "" {
		return 0
	}
	n, err := strconv.Atoi(v)
	r.keep(err)
	return n
}

func (r *reader) keep(err error) {
	if r.err == nil {
		r.err = err
	}
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
	if len(rows) == 0 || strings.Join(rows[0], ",") != "id,kind,given,want,source,place,known,reason" {
		t.Fatal("the file is empty, or its head is not as agreed")
	}
	ids, inputs, sources, read := map[string]bool{}, map[string]string{}, map[string]bool{}, 0
	for _, row := range rows[1:] {
		id, kind, given, want, src, label, reason := row[0], row[1], row[2], row[3], row[4], row[6], row[7]
		t.Run(id, func(t *testing.T) {
			if ids[id] {
				t.Error("the id is there twice")
			}
			ids[id] = true
			if other, twice := inputs[kind+given]; twice {
				t.Errorf("the same is given in %s", other)
			}
			inputs[kind+given] = id
			k, ok := known[label]
			if !ok || reason == "" {
				t.Errorf("known %q, reason %q", label, reason)
			}
			if _, found := source.Lookup(src); !found && (src != "" || k == source.Read || k == source.Memory) {
				t.Errorf("unknown source %q", src)
			}
			if k == source.Read {
				read++
				sources[src] = true
			}
			in, err := readPairs(given)
			if err != nil {
				t.Fatal(err)
			}
			out, err := readPairs(want)
			if err != nil {
				t.Fatal(err)
			}
			got, err := answers(kind, in)
			if err != nil {
				t.Fatalf("%s: %v", reason, err)
			}
			if len(in.values) > 0 {
				t.Errorf("unknown names given: %v", in.values)
			}
			asked := map[string]string{}
			for _, name := range out.names {
				v, ok := got[name]
				if !ok {
					t.Errorf("unknown name wanted: %q", name)
				}
				asked[name] = v
				if l, err := units.Parse(out.values[name]); err == nil {
					out.values[name] = l.String() // in the one exact text
				}
			}
			if d := cmp.Diff(out.values, asked); d != "" {
				t.Errorf("%s (-want +got)\n%s", reason, d)
			}
		})
	}
	if read < 14 || len(sources) < 3 {
		t.Errorf("%d rows read, from %d sources", read, len(sources))
	}
}

// TestChartsWalked asks the public API for every printed size, and checks the
// rounding that one chart keeps throughout.
func TestChartsWalked(t *testing.T) {
	count := map[string]int{}
	for row := range buttons.LigneRows {
		count[row.Source]++
		if _, ok := source.Lookup(row.Source); !ok || row.Known != source.Read {
			t.Errorf("%d L: source %q, %v", row.Lignes, row.Source, row.Known)
		}
		if row.Metric.IsZero() {
			t.Errorf("%d L of %s has no size", row.Lignes, row.Source)
		}
		if off := row.Metric.Sub(row.Exact()).Abs(); row.Note == "" && !off.Less(units.Millimetre.Of(1)) {
			t.Errorf("%d L of %s is %v off and says nothing", row.Lignes, row.Source, off)
		}
		found := false
		for other := range buttons.LignesAt(row.Lignes) {
			found = found || other == row
		}
		if !found {
			t.Errorf("LignesAt(%d) leaves out %s", row.Lignes, row.Source)
		}
		if row.Source == "ligne-chart-13-sizes" {
			if mark, _ := row.Exact().Round(units.Inch.Frac(1, 16), units.HalfAway); mark != row.Inches {
				t.Errorf("%d L: printed %v, rounded %v", row.Lignes, row.Inches, mark)
			}
		}
	}
	want := map[string]int{"ligne-chart-25-sizes": 25, "ligne-chart-13-sizes": 13, "ligne-chart-15-sizes": 15}
	if d := cmp.Diff(want, count); d != "" {
		t.Error(d)
	}
	for range buttons.LignesAt(19) {
		t.Error("no chart has 19 lignes")
	}
}
