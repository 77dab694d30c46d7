package units_test

import (
	"cmp"
	"errors"
	"strconv"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

// TestHandbook asks the package for every printed figure in testdata/handbook.csv, and
// for those in testdata/stored.csv by way of a database.
func TestHandbook(t *testing.T) {
	sums := map[string]nountest.Sum{}
	for kind, ask := range questions {
		sums[kind] = func(given map[string]string) (answers, error) {
			return asked(ask, given)
		}
	}
	nountest.Handbook(t, "testdata/handbook.csv", nil, sums)
	nountest.Handbook(t, "testdata/stored.csv", nil, map[string]nountest.Sum{
		"stored-length": func(given map[string]string) (answers, error) { return stored(t, given["text"], new(units.Length)) },
		"stored-ratio":  func(given map[string]string) (answers, error) { return stored(t, given["text"], new(units.Ratio)) },
		"stored-area":   func(given map[string]string) (answers, error) { return stored(t, given["text"], new(units.Area)) },
	})
}

type answers = map[string]any

// A question is one line: what is given is taken out of it as it is used.
type question map[string]string

// asked answers a question, all of which must be used.
func asked(ask func(question) answers, given map[string]string) (a answers, err error) {
	defer func() {
		if wrong := recover(); wrong != nil {
			err = errors.Join(err, errors.New("cannot be asked"), wrong.(error))
		}
	}()
	a = ask(given)
	if len(given) > 0 {
		err = errors.New("given and not used")
	}
	return a, err
}

func (q question) take(name string) string {
	text := q[name]
	delete(q, name)
	return text
}

func (q question) length(name string) units.Length { return units.MustParse(q.take(name)) }

func (q question) ratio(name string) units.Ratio { return must(units.ParseRatio(q.take(name))) }

func (q question) mode(name string) (m units.Mode) {
	must(0, m.UnmarshalText([]byte(q.take(name))))
	return m
}

func must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

// row is the row of a chart for a length.
func (q question) row() units.ChartRow {
	chart, of := q.take("chart"), q.length("length")
	for r := range units.ChartRows() {
		if r.Chart == chart && r.Of == of {
			return r
		}
	}
	panic(errors.New("no such row"))
}

// questions are the kinds of line: what each asks of the package.
var questions = map[string]func(question) answers{
	// a printed equivalent, and how far it is from the truth
	"chart": func(q question) answers {
		r := q.row()
		return answers{"printed": r.Printed, "off": r.Off()}
	},
	// a printed equivalent, and the nearest step as the library rounds
	"nearest": func(q question) answers {
		r := q.row()
		mark, _ := r.Of.Round(q.length("step"), units.HalfAway)
		return answers{"printed": r.Printed, "rounded": mark}
	},
	// metres as bought by the rule, and as printed
	"bought": func(q question) answers {
		q["chart"] = "bought-yards"
		r := q.row()
		return answers{"bought": units.MetresBought(r.Of), "printed": r.Printed}
	},
	// so many of an old measure; where a country has several rows, the number of one
	"cloth": func(q question) answers {
		name, where := q.take("measure"), q.take("where")
		row := must(strconv.Atoi(cmp.Or(q.take("row"), "1")))
		for m := range units.OldMeasures() {
			if m.Name != name || m.Where != where {
				continue
			}
			if row--; row == 0 {
				return answers{"length": m.Length.Scale(q.ratio("count"))}
			}
		}
		panic(errors.New("no such row"))
	},
	"convert": func(q question) answers {
		var u units.Unit
		must(0, u.UnmarshalText([]byte(q.take("unit"))))
		return answers{"count": q.length("length").In(u)}
	},
	"round": func(q question) answers {
		mark, residue := q.length("length").Round(q.length("step"), q.mode("mode"))
		return answers{"mark": mark, "residue": residue}
	},
	"sum": func(q question) answers { return answers{"length": q.length("a").Add(q.length("b"))} },
	"scale": func(q question) answers {
		l := q.length("length").Scale(q.ratio("by"))
		mark, _ := l.Round(q.length("step"), units.HalfAway)
		return answers{"length": l, "mark": mark}
	},
	// how often a and b together go into a span
	"gaps": func(q question) answers {
		return answers{"count": q.length("span").Div(q.length("a").Add(q.length("b")))}
	},
	// the girth of a circle, and how full a strip is on it, to a hundredth
	"circle": func(q question) answers {
		girth := units.Circle(q.length("diameter"))
		mark, _, err := girth.Round(q.length("step"), units.HalfAway)
		fullness, _ := q.length("strip").Div(girth.Mid()).Round(units.RatioOf(1, 100), units.HalfAway)
		return answers{"mark": must(mark, err), "fullness": fullness}
	},
	// the diagonal of a square and an allowance, to a mark
	"diagonal": func(q question) answers {
		d := units.Diagonal().Of(q.length("side")).Plus(q.length("plus"))
		mark, _, err := d.Round(q.length("step"), q.mode("mode"))
		return answers{"mark": must(mark, err)}
	},
}

// stored writes a printed measure to a database, as text and as bytes, reads it, and
// answers with what was read once it is written again.
func stored(t *testing.T, text string, amount any) (answers, error) {
	t.Helper()
	a := answers{}
	for _, bytes := range []bool{false, true} {
		db := open(t, bytes)
		put(t, db, text)
		if err := db.QueryRow("get").Scan(amount); err != nil {
			return nil, err
		}
		put(t, db, amount)
		var again string
		if err := db.QueryRow("get").Scan(&again); err != nil {
			return nil, err
		}
		if before, twice := a["stored"]; twice && before != again {
			t.Errorf("%q as text and %q as bytes", before, again)
		}
		a["stored"] = again
	}
	return a, nil
}
