package units_test

import (
	"encoding/csv"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// handbook is the rows of a file of printed figures.
func handbook(t *testing.T, name string) [][]string {
	t.Helper()
	f, err := os.Open(name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	const header = "id,kind,given,want,source,place,known,reason"
	if len(rows) < 2 || strings.Join(rows[0], ",") != header {
		t.Fatalf("%s has %d rows; its first should be %s", name, len(rows), header)
	}
	return rows[1:]
}

// TestHandbook asks the package for every printed figure in testdata/handbook.csv, and
// for those in testdata/stored.csv by way of a database, under the same ids.
func TestHandbook(t *testing.T) {
	rows := handbook(t, "testdata/handbook.csv")
	for _, row := range handbook(t, "testdata/stored.csv") {
		row[0] += " stored"
		rows = append(rows, row)
	}
	ids, inputs, sources := map[string]bool{}, map[string]bool{}, map[string]bool{}
	charted := map[units.Chart]int{}
	measures := map[units.ClothMeasure]bool{}
	read := 0
	for _, row := range rows {
		id, kind, src, known, reason := row[0], row[1], row[4], row[6], row[7]
		t.Run(id, func(t *testing.T) {
			if ids[id] || inputs[kind+row[2]] || id == "" || reason == "" {
				t.Errorf("the row stands twice or says too little: %q", row)
			}
			ids[id], inputs[kind+row[2]] = true, true
			switch known {
			case "read":
				read++
				sources[src] = true
				fallthrough
			case "memory":
				if _, ok := source.Lookup(src); !ok && (known == "read" || src != "") {
					t.Errorf("%q is not in the list of sources", src)
				}
			case "practice", "computed":
				if src != "" {
					t.Errorf("%s from %q", known, src)
				}
			default:
				t.Errorf("known as %q", known)
			}
			given, want := fields(t, row[2]), fields(t, row[3])
			q := &question{t: t, given: given, got: map[string]string{}}
			ask := questions[kind]
			if ask == nil {
				t.Fatalf("no kind %q", kind)
			}
			ask(q)
			if len(q.given) > 0 {
				t.Errorf("given and not used: %v", q.given)
			}
			for name, text := range want {
				switch name {
				case "stored": // the text itself
				case "count", "fullness":
					v, err := units.ParseRatio(text)
					if err != nil {
						t.Error(err)
					}
					want[name] = v.String()
				default:
					want[name] = q.length(text).String()
				}
			}
			if diff := cmp.Diff(want, q.got); diff != "" {
				t.Errorf("%s (-want +got):\n%s", reason, diff)
			}
			if q.chart != units.NoChart {
				charted[q.chart]++
				if q.chart.Source() != src || q.chart.Known() != known {
					t.Errorf("%v is of %q, %s; the row of %q, %s", q.chart, q.chart.Source(), q.chart.Known(), src, known)
				}
			}
			if q.measure.Name != "" {
				measures[q.measure] = true
				if q.measure.Source != src || strings.TrimPrefix(q.measure.Known, "common ") != known {
					t.Errorf("%+v is of another source than the row", q.measure)
				}
			}
		})
	}
	if read < 14 || len(sources) < 3 {
		t.Errorf("%d rows read from %d sources", read, len(sources))
	}
	for c := range units.Charts {
		if n := len(slices.Collect(c.Rows())); n != charted[c] || n == 0 {
			t.Errorf("%v has %d rows and %d are tested", c, n, charted[c])
		}
	}
	for m := range units.ClothMeasures {
		if !measures[m] {
			t.Errorf("nothing tests %+v", m)
		}
	}
}

func fields(t *testing.T, text string) map[string]string {
	t.Helper()
	m := map[string]string{}
	for field := range strings.SplitSeq(text, ";") {
		name, value, ok := strings.Cut(field, "=")
		if _, twice := m[name]; !ok || twice || value == "" {
			t.Fatalf("%q in %q", field, text)
		}
		m[name] = value
	}
	return m
}

// A question is one row: what is given is taken out of it as it is used.
type question struct {
	t       *testing.T
	given   map[string]string
	got     map[string]string
	chart   units.Chart
	measure units.ClothMeasure
}

func (q *question) take(name string) string {
	q.t.Helper()
	text, ok := q.given[name]
	if !ok {
		q.t.Fatalf("%s is not given", name)
	}
	delete(q.given, name)
	return text
}

func (q *question) length(text string) units.Length {
	q.t.Helper()
	l, err := units.Parse(text)
	if err != nil {
		q.t.Fatal(err)
	}
	return l
}

func (q *question) ratio(name string) units.Ratio {
	q.t.Helper()
	r, err := units.ParseRatio(q.take(name))
	if err != nil {
		q.t.Fatal(err)
	}
	return r
}

func (q *question) unit(name string) units.Unit {
	q.t.Helper()
	var u units.Unit
	if err := u.UnmarshalText([]byte(q.take(name))); err != nil || !u.Valid() {
		q.t.Fatal(name, u, err)
	}
	return u
}

func (q *question) mode(name string) units.Mode {
	q.t.Helper()
	var m units.Mode
	if err := m.UnmarshalText([]byte(q.take(name))); err != nil {
		q.t.Fatal(err)
	}
	return m
}

func (q *question) row() units.ChartRow {
	q.t.Helper()
	if err := q.chart.UnmarshalText([]byte(q.take("chart"))); err != nil {
		q.t.Fatal(err)
	}
	l := q.length(q.take("length"))
	r, ok := q.chart.Find(l)
	if !ok || r.Of != l {
		q.t.Fatalf("%v has no row for %v", q.chart, l)
	}
	return r
}

// questions are the kinds of row: what each asks of the package.
var questions = map[string]func(*question){
	// a printed equivalent, and how far it is from the truth
	"chart": func(q *question) {
		r := q.row()
		q.got["printed"], q.got["off"] = r.Printed.String(), r.Off().String()
	},
	// a printed equivalent, and the nearest step as the library rounds
	"nearest": func(q *question) {
		r := q.row()
		mark, _ := r.Of.Round(q.length(q.take("step")), units.HalfAway)
		q.got["printed"], q.got["rounded"] = r.Printed.String(), mark.String()
	},
	// metres as bought by the rule, and as printed
	"bought": func(q *question) {
		q.chart = units.BoughtYards
		l := q.length(q.take("length"))
		r, _ := q.chart.Find(l)
		q.got["bought"], q.got["printed"] = units.MetresBought(l).String(), r.Printed.String()
	},
	// so many of an old measure; where a country has several rows, the number of one
	"cloth": func(q *question) {
		where, row := q.take("where"), "1"
		if _, ok := q.given["row"]; ok {
			row = q.take("row")
		}
		q.measure = clothRow(q.t, q.take("measure"), where, row)
		q.got["length"] = q.measure.Length.Scale(q.ratio("count")).String()
	},
	"convert": func(q *question) {
		q.got["count"] = q.length(q.take("length")).In(q.unit("unit")).String()
	},
	"round": func(q *question) {
		l := q.length(q.take("length"))
		mark, residue := l.Round(q.length(q.take("step")), q.mode("mode"))
		q.got["mark"], q.got["residue"] = mark.String(), residue.String()
	},
	"sum": func(q *question) {
		q.got["length"] = q.length(q.take("a")).Add(q.length(q.take("b"))).String()
	},
	"scale": func(q *question) {
		l := q.length(q.take("length")).Scale(q.ratio("by"))
		mark, _ := l.Round(q.length(q.take("step")), units.HalfAway)
		q.got["length"], q.got["mark"] = l.String(), mark.String()
	},
	// how often a and b together go into a span
	"gaps": func(q *question) {
		q.got["count"] = q.length(q.take("span")).Div(q.length(q.take("a")).Add(q.length(q.take("b")))).String()
	},
	// the girth of a circle, and how full a strip is on it, to a hundredth
	"circle": func(q *question) {
		girth := units.Pi().Of(q.length(q.take("diameter")))
		mark, _, err := girth.Round(q.length(q.take("step")), units.HalfAway)
		if err != nil {
			q.t.Fatal(err)
		}
		fullness, _ := q.length(q.take("strip")).Div(girth.Mid()).Round(units.RatioOf(1, 100), units.HalfAway)
		q.got["mark"], q.got["fullness"] = mark.String(), fullness.String()
	},
	// the diagonal of a square and an allowance, to a mark
	"diagonal": func(q *question) {
		side := q.length(q.take("side"))
		d, err := units.Sqrt(side.Times(side).MulInt(2), units.Length{})
		if err != nil {
			q.t.Fatal(err)
		}
		mark, _, err := d.Plus(q.length(q.take("plus"))).Round(q.length(q.take("step")), q.mode("mode"))
		if err != nil {
			q.t.Fatal(err)
		}
		q.got["mark"] = mark.String()
	},
	// a printed measure as it stands in a database once it was read and written
	"stored-length": func(q *question) { q.stored(new(units.Length)) },
	"stored-ratio":  func(q *question) { q.stored(new(units.Ratio)) },
	"stored-area":   func(q *question) { q.stored(new(units.Area)) },
}

// stored writes a text to a database, reads it, and writes what was read again.
func (q *question) stored(amount any) {
	q.t.Helper()
	text := q.take("text")
	for _, bytes := range []bool{false, true} {
		db := open(q.t, bytes)
		put(q.t, db, text)
		if err := db.QueryRow("get").Scan(amount); err != nil {
			q.t.Fatal(err)
		}
		put(q.t, db, amount)
		var stored string
		if err := db.QueryRow("get").Scan(&stored); err != nil {
			q.t.Fatal(err)
		}
		if before, twice := q.got["stored"]; twice && before != stored {
			q.t.Errorf("%q as text and %q as bytes", before, stored)
		}
		q.got["stored"] = stored
	}
}

// clothRow is the row of a measure by country; where there are several, its number.
func clothRow(t *testing.T, name, where, number string) units.ClothMeasure {
	t.Helper()
	n := 0
	for m := range units.ClothNamed(name) {
		if m.Where == where {
			if n++; number == string(rune('0'+n)) {
				return m
			}
		}
	}
	t.Fatalf("no row %s of %s in %s", number, name, where)
	return units.ClothMeasure{}
}
