package hem_test

import (
	"encoding/csv"
	"maps"
	"os"
	"slices"
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

// hemOf is the hem of a kind, from its fields as a person writes them: "double;
// depth=1 in; slope=slope 1/8".
func hemOf(text string) (hem.Any, error) {
	var h hem.Any
	pairs := strings.Split(text, ";")
	for i := range pairs {
		pairs[i] = strings.TrimSpace(pairs[i])
	}
	pairs[0] = "kind=" + pairs[0]
	err := (noun.Reader{}).Pairs(pairs, &h)
	return h, err
}

// planOf is the plan of a hem, and what is given besides.
func planOf(given map[string]string, besides ...string) (hem.Plan, map[string]string, error) {
	rest, text := map[string]string{}, given["kind"]
	for name, value := range given {
		if slices.Contains(besides, name) {
			rest[name] = value
		} else if name != "kind" {
			text += "; " + name + "=" + value
		}
	}
	h, err := hemOf(text)
	if err != nil {
		return hem.Plan{}, nil, err
	}
	p, err := h.Plan()
	return p, rest, err
}

// piece is a piece with hems at some of its ends: what is left of it, or what it is
// cut to.
func piece(given map[string]string) (map[string]any, error) {
	p, rest, err := planOf(given, "piece", "hems")
	if err != nil {
		return nil, err
	}
	whole, err := units.Parse(rest["piece"])
	if err != nil {
		return nil, err
	}
	fields := maps.Collect(noun.Values(p.Spec.Hem))
	hems, err := strconv.Atoi(rest["hems"])
	return map[string]any{
		"finished": p.Finished(whole, hems), "cutFor": p.CutFor(whole, hems),
		"taken": p.Taken, "plies": p.Plies, "depth": fields["depth"], "first": fields["first"],
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
		if kind == "piece" || kind == "crossing" {
			kind, _, _ = strings.Cut(strings.TrimPrefix(row[2], "kind="), ";")
		}
		if rows[kind]++; sources[kind] == nil {
			sources[kind] = map[string]bool{}
		}
		sources[kind][row[4]] = true
	}
	kinds := []string{"tucks", "casing", "mitre"}
	for k := range hem.Kinds() {
		kinds = append(kinds, k.Kind())
	}
	for _, kind := range kinds {
		least, books := 3, 2
		switch kind { // no more are printed
		case "bias-faced":
			least, books = 1, 1
		case "seam-slit":
			least, books = 0, 0
		}
		if rows[kind] < least || len(sources[kind]) < books {
			t.Errorf("%s: %d rows from %d sources", kind, rows[kind], len(sources[kind]))
		}
	}
}
