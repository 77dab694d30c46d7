package garment_test

import (
	"encoding/json"
	"errors"
	"math/big"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/seam/edge"
	"example.com/clothyard/seam/garment"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/noun/nountest"
)

// made is a garment of a starter and of pairs, planned.
func made(t *testing.T, like string, pairs ...string) garment.Plan {
	t.Helper()
	patch, err := garment.Patch(like, pairs)
	if err != nil {
		t.Fatal(err)
	}
	g, _, err := garment.Read(strings.NewReader(string(patch)))
	if err != nil {
		t.Fatal(err)
	}
	p, err := g.Plan()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// inches is a sum such as 6 x 1/16 + 2 x 3/16, in inches.
func inches(t *testing.T, sum string) units.Length {
	t.Helper()
	total := new(big.Rat)
	for term := range strings.SplitSeq(sum, " + ") {
		product := big.NewRat(1, 1)
		for factor := range strings.SplitSeq(term, " x ") {
			r, ok := new(big.Rat).SetString(factor)
			if !ok {
				t.Fatalf("%q is no number", factor)
			}
			product.Mul(product, r)
		}
		total.Add(total, product)
	}
	return units.Inch.Frac(total.Num().Int64(), total.Denom().Int64())
}

// TestChanges: what a change of seams does to the edges, found by hand from how often
// each seam crosses an edge. Common practice for what crosses what; the sums are
// arithmetic.
func TestChanges(t *testing.T) {
	french := func(names ...string) (pairs []string) {
		for _, name := range names {
			pairs = append(pairs, name+".kind=french", name+".first=3/16 in", name+".second=1/4 in")
		}
		return pairs
	}
	at := func(taken string, names ...string) (pairs []string) {
		for _, name := range names {
			pairs = append(pairs, name+".first="+taken)
		}
		return pairs
	}
	for _, test := range []struct {
		like  string
		pairs []string
		grows map[string]string // edges, by sums in inches
		fails map[string]string // the longer edge of a pair, and how much longer it is than drawn
	}{
		{"a-line-skirt", at("1/2 in", "side"),
			map[string]string{"waist": "4 x 1/8", "hip": "4 x 1/8", "hem sweep": "4 x 1/8", "facing top": "0"},
			map[string]string{"facing top": "-4 x 1/8"}},
		{"elastic-trousers", at("3/8 in", "outer leg", "inside leg", "crotch"),
			map[string]string{"hip": "8 x 1/4", "waist top": "8 x 1/4", "thigh": "4 x 1/4", "left crotch curve": "2 x 1/4"},
			nil},
		{"nightdress", slices.Concat(french("shoulder", "front yoke seam", "back yoke seam", "side", "sleeve")),
			map[string]string{"armhole": "6 x 1/16 + 2 x 3/16", "sleeve head": "2 x 3/16", "chest": "4 x 3/16", "neck": "4 x 1/16", "inner neck": "0"},
			map[string]string{"sleeve head": "2 x 3/16 + -6 x 1/16 + -2 x 3/16", "inner neck": "-4 x 1/16"}},
		{"waistcoat", at("3/8 in", "centre back"),
			map[string]string{"chest": "2 x 1/4", "back neck": "2 x 1/4", "back hem": "2 x 1/4", "chest lining": "0"},
			map[string]string{"back neck lining": "-2 x 1/4", "back hem lining": "-2 x 1/4", "chest lining": "-2 x 1/4"}},
		{"shirt", at("3/8 in", "yoke back"),
			map[string]string{"armhole": "2 x 1/4", "neck": "0", "body at bust": "0"},
			map[string]string{"sleeve head": "-2 x 1/4"}},
		{"blouse", french("shoulder", "side", "sleeve"),
			map[string]string{"neck": "4 x 3/16", "armhole": "4 x 3/16", "sleeve head": "2 x 3/16", "body at bust": "4 x 3/16", "sleeve bottom": "2 x 3/16", "facing neck": "0", "collar neck edge": "0"},
			map[string]string{"facing neck": "-4 x 3/16", "collar neck edge": "-4 x 3/16", "sleeve head": "-2 x 3/16"}},
		{"gathered-skirt", at("1/2 in", "closed side"),
			map[string]string{"skirt top": "2 x 1/8", "hip": "2 x 1/8", "hem sweep": "2 x 1/8", "band lower edge": "0"}, nil},
		{"waist-dress", at("1/2 in", "bodice side"),
			map[string]string{"bust": "4 x 1/8", "bodice waist": "4 x 1/8", "armhole": "2 x 1/8", "skirt waist": "0", "neck": "0"},
			map[string]string{"skirt waist": "-4 x 1/8", "armhole": "2 x 1/8"}},
		{"fly-trousers", at("1/2 in", "outer leg", "seat"),
			map[string]string{"waist": "6 x 1/8", "seat, below the fly": "6 x 1/8", "band lower edge": "2 x 1/8", "thigh": "2 x 1/8"},
			map[string]string{"waist": "4 x 1/8"}},
		{"circle-skirt", at("1/2 in", "closed side", "zip side"),
			map[string]string{"skirt waist": "4 x 1/8", "hem sweep": "4 x 1/8"}, map[string]string{"skirt waist": "4 x 1/8"}},
	} {
		p := made(t, test.like, test.pairs...)
		for name, sum := range test.grows {
			i := slices.IndexFunc(p.Edges, func(e garment.EdgePlan) bool { return e.Name == name })
			if got, ok := p.Edges[i].Change.Exact(); !ok || got != inches(t, sum) {
				t.Errorf("%s: %s grows by %v, want %s", test.like, name, p.Edges[i].Change, sum)
			}
		}
		for _, q := range p.Pairs {
			sum, fails := test.fails[q.Long]
			if fails != (q.Fit == edge.Mismatch) {
				t.Errorf("%s: %s onto %s: %v", test.like, q.Long, q.Short, q.Fit)
			}
			if got, ok := q.Change.Exact(); fails && (!ok || got != inches(t, sum)) {
				t.Errorf("%s: %s is longer by %v, want %s", test.like, q.Long, q.Change, sum)
			}
		}
		if err := p.Sheet().Check(); err != nil {
			t.Errorf("%s: %v", test.like, err)
		}
	}
}

// TestStarters: every starter can be planned with no measure, in inches, in metric and
// without the order that it gives; nothing of it is left out of the work, its edges go
// together, and its file reads back.
func TestStarters(t *testing.T) {
	if n := len(garment.Starters()); n != 12 {
		t.Errorf("%d starters", n)
	}
	for _, name := range garment.Starters() {
		for _, pairs := range [][]string{nil, {"tape=metric"}, {"tape=inch"}, {"order=[]"}} {
			p := made(t, name, pairs...)
			if len(p.Loose) > 0 || len(p.Remedies) > 0 {
				t.Errorf("%s: loose %v, remedies %v", name, p.Loose, p.Remedies)
			}
			var sewn []string
			for _, task := range p.Spec.Order {
				sewn = append(sewn, task.Sews...)
			}
			if want := len(p.Seams) + len(p.Hems) + len(p.Parts); len(sewn) != want {
				t.Errorf("%s: %d of %d seams, hems and parts are sewn", name, len(sewn), want)
			}
			for _, e := range p.Edges {
				if !e.Change.IsZero() {
					t.Errorf("%s: %s changes by %v though nothing was changed", name, e.Name, e.Change)
				}
			}
			for _, q := range p.Pairs {
				if q.Fit == edge.Mismatch {
					t.Errorf("%s: %s does not go onto %s", name, q.Long, q.Short)
				}
			}
			marks := units.InchTape
			if slices.Contains(pairs, "tape=metric") {
				marks = units.MetricTape
			}
			for _, s := range p.Seams {
				if !marks.Marks(s.Drafted.Upper.Drafted) {
					t.Errorf("%s: %s is drafted at %v", name, s.Name, s.Drafted.Upper.Drafted)
				}
			}
			text, err := json.Marshal(p)
			var back garment.Plan
			if err == nil {
				err = json.Unmarshal(text, &back)
			}
			if again, err2 := json.Marshal(back); err != nil || err2 != nil || string(again) != string(text) {
				t.Errorf("%s: the plan does not read back: %v, %v", name, err, err2)
			}
		}
	}
}

// TestRemediesWork: each remedy, chosen, mends what it says, and is told as chosen.
func TestRemediesWork(t *testing.T) {
	for _, like := range garment.Starters() {
		g, err := garment.Starter(like)
		if err != nil {
			t.Fatal(err)
		}
		for _, s := range g.Seams {
			change := s.Name + ".first=1/4 in"
			p := made(t, like, change)
			failing := func(p garment.Plan) (n int) {
				for _, q := range p.Pairs {
					if q.Fit == edge.Mismatch {
						n++
					}
				}
				return n
			}
			for _, r := range p.Remedies {
				text, err := json.Marshal([]string{r.Name})
				if err != nil {
					t.Fatal(err)
				}
				q := made(t, like, change, "remedies="+string(text))
				if got, want := failing(q), failing(p)-r.Remedy.Mends+r.Remedy.Breaks; got != want || len(q.Chosen) != 1 || q.Chosen[0].Name != r.Name {
					t.Errorf("%s, %s: %s leaves %d pairs, want %d", like, s.Name, r.Name, got, want)
				}
			}
			// What is meant is followed, not undone.
			meant := made(t, like, change, s.Name+".meant=true")
			for _, r := range meant.Remedies {
				if r.Remedy.Seam == s.Name && r.Remedy.Act != edge.SewPartner {
					t.Errorf("%s: %s undoes what is meant", like, r.Name)
				}
			}
			// What is done is not done again.
			done := made(t, like, change, `done=["cut", "`+s.Name+`"]`)
			for _, r := range done.Remedies {
				if r.Remedy.Seam == s.Name || r.Remedy.Act == edge.SpreadPartner {
					t.Errorf("%s: %s does what is done", like, r.Name)
				}
			}
		}
	}
}

// TestMeasured: an edge as it came out stands in place of what it was to be, and what is
// sewn already is not counted twice.
func TestMeasured(t *testing.T) {
	p := made(t, "blouse", "edges.neck.net=16 1/2 in", "edges.facing neck.net=16 1/2 in", "shoulder.first=3/8 in", "measured.neck=17 3/8 in", `done=["cut", "shoulder"]`)
	for _, q := range p.Pairs {
		if q.Long == "facing neck" && q.Excess != units.Exactly(units.Inch.Frac(-7, 8)) {
			t.Errorf("the facing is longer by %v, want 16 1/2 - 17 3/8", q.Excess)
		}
	}
}

// TestDropped: what names a removed piece, edge or seam goes with it.
func TestDropped(t *testing.T) {
	g, dropped, err := garment.Read(strings.NewReader(`{"like": "blouse", "edges": {"facing neck": null}, "seams": {"facing shoulder": null}, "pieces": {"front facing": null, "back neck facing": null}}`))
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"part facing shoulder", "edge facing neck", "piece front facing"} {
		if !slices.Contains(dropped, want) {
			t.Errorf("%s is not named in %v", want, dropped)
		}
	}
	if len(g.Pairs) != 3 {
		t.Errorf("%d pairs are left, want 3", len(g.Pairs))
	}
	if _, err := g.Plan(); err != nil {
		t.Error(err)
	}
}

// TestFaults: what is wrong in a file is told by its path.
func TestFaults(t *testing.T) {
	for text, want := range map[string]string{
		`{"like": "ballgown"}`:                                                                                           `like "ballgown": not known, want one of a-line-skirt, apron, blouse`,
		`{"like": "../garment"}`:                                                                                         `like "../garment": not known`,
		`{"like": "blouse", "version": 2}`:                                                                               "version 2: not known, want 1",
		`{"like": "blouse", "changes": {"hat": {}}}`:                                                                     `changes "hat": not known, want the name of a seam, a hem or a part`,
		`{"like": "blouse", "changes": {"side": {"sewn": {"kind": "frensh"}}}}`:                                          `changes.side.sewn.kind "frensh": not known`,
		`{"like": "blouse", "changes": {"side": {"sewn": {"second": "1 in"}}}}`:                                          `changes.side.sewn.second "1 in": not known`,
		`{"like": "blouse", "changes": {"side": {"part": {"have": 3}}}}`:                                                 `changes.side.part: not used`,
		`{"like": "blouse", "edges": {"neck": {"crossed": {"zip": {}}}}}`:                                                `edges.neck.crossed "zip": not known, want the name of a seam or a hem`,
		`{"like": "blouse", "edges": {"a.b": {}}}`:                                                                       `edges "a.b": cannot be read, want a name without dots, quotes and brackets`,
		`{"like": "blouse", "pairs": [{"long": "neck", "short": "nek"}]}`:                                                `pairs[0].short "nek": not known, want the name of an edge`,
		`{"like": "blouse", "order": [{"sews": ["neck"]}, {"sews": ["shoulder"]}]}`:                                      `order[0].sews "neck": disagrees with what else is given, want after shoulder, which it encloses`,
		`{"like": "blouse", "order": [{"sews": ["neck"]}, {"sews": ["neck"]}]}`:                                          `order[1].sews "neck": given twice`,
		`{"like": "blouse", "remedies": ["cut-drift shoulder"]}`:                                                         `remedies[0] "cut-drift shoulder": not known, want none, as nothing is to be mended`,
		`{"like": "blouse", "parts": {"frill": {"noun": "gather.hat"}}}`:                                                 `parts.frill.sum "gather.hat": not known`,
		`{"like": "blouse", "changes": {"frill": {"part": {"depth": "-1 in"}}}}`:                                         `parts.frill.spec.strip`,
		`{"like": "blouse", "measured": {"neck": "-1 in"}}`:                                                              `measured.neck -1 in: wrong sign`,
		`{"like": "blouse", "seams": {"side": {"sewn": {"kind": "plain", "first": "3/8"}}}}`:                             `seams.side.sewn.first "3/8": cannot be read`,
		`{"like": "blouse", "edges": {"neck": {"net": "1/8 in"}}, "changes": {"shoulder": {"sewn": {"first": "2 in"}}}}`: `edges.neck.net 1/8 in: out of range`,
		`{`: "JSON: cannot be read",
	} {
		g, _, err := garment.Read(strings.NewReader(text))
		if err == nil {
			_, err = g.Plan()
		}
		var faults fault.Faults
		if !errors.As(err, &faults) || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%s\n got %v\nwant %s", text, err, want)
		}
	}
}

// TestLost: a new kind of seam drops what it does not have, and says so.
func TestLost(t *testing.T) {
	p := made(t, "blouse", "seams.side.sewn.kind=plain", "seams.side.sewn.aside=true", "seams.side.sewn.first=5/8 in", "side.kind=french", "side.first=3/16 in", "side.second=1/4 in")
	i := slices.IndexFunc(p.Seams, func(s garment.SeamPlan) bool { return s.Name == "side" })
	if diff := cmp.Diff([]string{"first", "aside"}, p.Seams[i].Lost); diff != "" {
		t.Error(diff)
	}
}

// TestRandom: the edges of garments at random change by what an independent sum in
// math/big finds.
func TestRandom(t *testing.T) {
	r := rand.New(rand.NewPCG(22, 1))
	for range nountest.Rounds(10_000) {
		g := garment.Garment{Version: garment.Version, Title: "at random"}
		taken := map[string]*big.Rat{}
		for _, name := range []string{"a", "b", "c"} {
			n := 2 + r.Int64N(16)
			taken[name] = big.NewRat(n, 16)
			g.Seams = append(g.Seams, noun.Item[garment.Seam]{Name: name})
			g.Changes = append(g.Changes, noun.Item[garment.Change]{Name: name, Value: garment.Change{Sewn: noun.Patch(`{"drafted":"2 in","first":"` + units.Inch.Frac(n, 16).String() + `"}`)}})
		}
		wants := map[string]*big.Rat{}
		for _, name := range []string{"e", "f"} {
			var e garment.Edge
			want := new(big.Rat)
			for _, s := range []string{"a", "b", "c"} {
				if r.IntN(3) == 0 {
					continue
				}
				times, plies := r.IntN(4), r.IntN(3)
				e.Crossed = append(e.Crossed, noun.Item[garment.Crossing]{Name: s, Value: garment.Crossing{Times: times, Plies: plies}})
				if plies == 0 {
					plies = 2
				}
				drift := new(big.Rat).Sub(big.NewRat(2, 1), taken[s])
				want.Add(want, drift.Mul(drift, big.NewRat(int64(max(1, times)*plies), 1)))
			}
			g.Edges = append(g.Edges, noun.Item[garment.Edge]{Name: name, Value: e})
			wants[name] = want
		}
		g.Pairs = []garment.Pair{{Long: "e", Short: "f"}}
		p, err := g.Plan()
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range p.Edges {
			want := units.Inch.Frac(wants[e.Name].Num().Int64(), wants[e.Name].Denom().Int64())
			if got, ok := e.Change.Exact(); !ok || got != want {
				t.Fatalf("%+v\n%s changes by %v, want %v", g, e.Name, e.Change, want)
			}
		}
		if fits := wants["e"].Cmp(wants["f"]) == 0; fits != (p.Pairs[0].Fit == edge.Fits) {
			t.Fatalf("%+v\nthe pair is %v", g, p.Pairs[0].Fit)
		}
	}
}

// TestGive: how much either way is good enough for the shirt of the village theatre:
// rule and figures are common practice.
func TestGive(t *testing.T) {
	french := []string{"shoulder.kind=french", "shoulder.first=3/16 in", "shoulder.second=1/4 in", "side.kind=french", "side.first=3/16 in", "side.second=1/4 in"}
	for _, test := range []struct {
		pairs      []string
		edge, give string
	}{
		{append(french, "edges.body at bust.net=42 1/2 in"), "body at bust", "5/8 in"},
		{[]string{"edges.body at bust.net=43 1/4 in"}, "body at bust", "1/2 in"},
		{append(french, "edges.neck.net=16 1/2 in", "edges.facing neck.net=16 1/2 in", `order=[{"do": "all", "sews": ["shoulder"], "check": ["neck"]}]`), "neck", "1/8 in"},
	} {
		found := false
		for _, s := range made(t, "blouse", test.pairs...).Sheet().Steps {
			if s.Check.What == test.edge {
				found = true
				if got := s.Check.Give.String(); got != test.give {
					t.Errorf("%s: %s either way, want %s", test.edge, got, test.give)
				}
			}
		}
		if !found {
			t.Errorf("%s is not measured", test.edge)
		}
	}
}
