package buttons_test

import (
	"strconv"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/spacing"
)

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", buttons.Nouns(), map[string]nountest.Sum{
		"rule": holeRule, "laprule": lapRule, "size": size, "chart": chart, "spacing": spacingRow, "division": division,
	})
	nountest.Accounted(t, "testdata", "BL001-BL066 G074-G082 G083a G084a G085-G086 W107-W108 W163 W250-W252 W254-W255 W256a W257-W264 W268 "+
		"NF031-NF035 NF052-NF062 NF063 P074-P078 P125-P126 P170 P172 P174-P177 P178 P184 P187 P261 P285-P289 P308-P309")
}

// length is a length given, 0 in where none is.
func length(text string) units.Length {
	if text == "" {
		return units.Length{}
	}
	return units.MustParse(text)
}

// holeRule is what a printed rule makes of a button.
func holeRule(given map[string]string) (map[string]any, error) {
	var outline buttons.Outline
	err := outline.UnmarshalText([]byte(given["outline"]))
	for rule := range buttons.HoleRules() {
		if rule.Source == given["source"] && rule.Outline == outline && (given["name"] == "" || rule.Name == given["name"]) {
			return map[string]any{"length": rule.Length(length(given["diameter"]), length(given["thickness"]))}, err
		}
	}
	return nil, err
}

// lapRule is what a printed rule makes of a button.
func lapRule(given map[string]string) (map[string]any, error) {
	for rule := range buttons.LapRules() {
		if rule.Name == given["name"] {
			return map[string]any{"lap": rule.Lap(length(given["diameter"]))}, nil
		}
	}
	return nil, nil
}

// spacingRow is a row of the table of places.
func spacingRow(given map[string]string) (map[string]any, error) {
	for s := range buttons.Spacings() {
		if s.Item == given["item"] {
			return map[string]any{"least": s.Least, "most": s.Most}, nil
		}
	}
	return nil, nil
}

// division is marks in a span with half a gap at each end.
func division(given map[string]string) (map[string]any, error) {
	n, err := strconv.Atoi(given["count"])
	if err != nil {
		return nil, err
	}
	p, err := spacing.Spec{Span: length(given["span"]), Count: n, HalfFirst: true, HalfLast: true}.Lay()
	if err != nil {
		return nil, err
	}
	return map[string]any{"gap": p.Stretches[0].Gap, "first": p.Places[0]}, nil
}

// size is lignes in inches, or the nearest whole lignes of a diameter.
func size(given map[string]string) (map[string]any, error) {
	if text := given["lignes"]; text != "" {
		n, err := strconv.ParseInt(text, 10, 64)
		return map[string]any{"exact": units.Ligne.Of(n)}, err
	}
	n, _ := length(given["diameter"]).In(units.Ligne).Int(units.HalfAway)
	return map[string]any{"whole": n}, nil
}

// chart is a size as one chart prints it.
func chart(given map[string]string) (map[string]any, error) {
	n, err := strconv.Atoi(given["lignes"])
	for row := range buttons.LignesAt(n) {
		if row.Source == given["chart"] {
			mark, _ := row.Exact().Round(length(given["step"]), units.HalfAway)
			return map[string]any{"exact": row.Exact(), "inches": row.Inches, "metric": row.Metric, "rounded": mark}, err
		}
	}
	return nil, err
}

// TestChartsWalked asks the public API for every printed size, and checks the
// rounding that one chart keeps throughout.
func TestChartsWalked(t *testing.T) {
	count := map[string]int{}
	for row := range buttons.LigneRows() {
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
