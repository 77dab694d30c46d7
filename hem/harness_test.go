package hem_test

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) { nountest.Contract(t, hem.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, hem.Nouns()) }

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", hem.Nouns(), map[string]nountest.Sum{"piece": piece, "crossing": crossing})
}

// planOf is the plan of a hem, and what is given besides.
func planOf(given map[string]string, besides ...string) (hem.Plan, map[string]string, error) {
	rest := map[string]string{}
	var pairs []string
	for name, value := range given {
		pairs = append(pairs, name+"="+value)
	}
	for _, name := range besides {
		rest[name] = given[name]
		pairs = remove(pairs, name+"="+given[name])
	}
	var s hem.Spec
	if err := (noun.Reader{}).Pairs(pairs, &s); err != nil {
		return hem.Plan{}, nil, err
	}
	p, err := s.Plan()
	return p, rest, err
}

func remove(pairs []string, pair string) []string {
	var out []string
	for _, p := range pairs {
		if p != pair {
			out = append(out, p)
		}
	}
	return out
}

// piece is a piece with hems at some of its ends: what is left of it, or what it is
// cut to.
func piece(given map[string]string) (map[string]any, error) {
	p, rest, err := planOf(given, "piece", "hems")
	if err != nil {
		return nil, err
	}
	long, err := units.Parse(rest["piece"])
	if err != nil {
		return nil, err
	}
	hems, err := strconv.Atoi(rest["hems"])
	return map[string]any{
		"finished": p.Finished(long, hems), "cutFor": p.CutFor(long, hems),
		"taken": p.Taken, "first": p.Spec.First, "depth": p.Spec.Depth, "plies": p.Plies,
	}, err
}

// crossing is a hem over the ridge of a seam.
func crossing(given map[string]string) (map[string]any, error) {
	p, rest, err := planOf(given, "ridge")
	if err != nil {
		return nil, err
	}
	ridge, err := strconv.Atoi(rest["ridge"])
	return map[string]any{
		"crossing": p.Crossing(ridge),
		"drift":    p.Drift, "swept": p.Swept, "excess": p.Excess, "inset": p.Inset,
	}, err
}

// TestHandbookKinds: every kind of hem is printed in three places or more, of two
// sources or more; but one is not.
func TestHandbookKinds(t *testing.T) {
	f, err := os.Open("testdata/handbook.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	rows, sources := map[string]int{}, map[string]map[string]bool{}
	for _, row := range all[1:] {
		if row[6] != "read" {
			continue
		}
		kind := row[1]
		for pair := range strings.SplitSeq(row[2], ";") {
			if name, value, _ := strings.Cut(pair, "="); name == "kind" && kind != "tucks" && kind != "casing" {
				kind = value
			}
		}
		if rows[kind]++; sources[kind] == nil {
			sources[kind] = map[string]bool{}
		}
		sources[kind][row[4]] = true
	}
	kinds := []string{"tucks", "casing", "mitre"}
	for k := range hem.Kinds() {
		kinds = append(kinds, k.String())
	}
	for _, kind := range kinds {
		least, books := 3, 2
		if kind == "bias-faced" {
			least, books = 1, 1 // no more are printed
		}
		if rows[kind] < least || len(sources[kind]) < books {
			t.Errorf("%s: %d rows from %d sources", kind, rows[kind], len(sources[kind]))
		}
	}
}
