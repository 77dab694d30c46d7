package ticket_test

import (
	"encoding/csv"
	"os"
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// amount reads a length or a number.
func amount(t *testing.T, s string) ticket.Amount {
	t.Helper()
	if l, err := units.Parse(s); err == nil {
		return ticket.Long(l)
	}
	r, err := units.ParseRatio(s)
	if err != nil {
		t.Fatalf("%q is neither a length nor a number", s)
	}
	return ticket.Times(r)
}

// sum reads a line of working such as 65 in x 2 1/4 + 8 in.
func sum(t *testing.T, s string) []ticket.Term {
	t.Helper()
	var terms []ticket.Term
	op := ticket.Plus
	var words []string
	flush := func() {
		terms = append(terms, ticket.Term{Op: op, Amount: amount(t, strings.Join(words, " "))})
		words = nil
	}
	for _, w := range strings.Fields(s) {
		if next := slices.Index([]string{"+", "-", "x", "/"}, w); next >= 0 {
			flush()
			op = ticket.Op(next)
			continue
		}
		words = append(words, w)
	}
	flush()
	return terms
}

// The published sums come out as lines of working, and no other result does.
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
	ids, givens, sources := map[string]bool{}, map[string]bool{}, map[string]bool{}
	for _, r := range rows[1:] {
		id, given, want, src, known := r[0], r[2], r[3], r[4], r[6]
		if ids[id] || givens[given] || known != "read" {
			t.Errorf("%s: twice, or known %q", id, known)
		}
		ids[id], givens[given], sources[src] = true, true, true
		if _, ok := source.Lookup(src); !ok {
			t.Errorf("%s: no source %q", id, src)
		}
		line := ticket.Line{Label: id, Terms: sum(t, given), Result: amount(t, want)}
		if err := line.Check(); err != nil {
			t.Errorf("%s: %s: %v", id, line.Text(), err)
		}
		line.Result = amount(t, strings.Replace(want, want[:1], "7", 1))
		if strings.HasPrefix(want, "7") {
			line.Result = amount(t, "1 "+"in")
		}
		if line.Check() == nil {
			t.Errorf("%s: %s is accepted", id, line.Text())
		}
	}
	if len(ids) < 10 || len(sources) < 2 {
		t.Errorf("%d rows from %d sources", len(ids), len(sources))
	}
}
