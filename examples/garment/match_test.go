package garment_test

import (
	"context"
	"errors"
	"strings"
	"testing"

	"example.com/clothyard/examples/garment"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

func length(text string) units.Length { return units.MustParse(text) }

func garmentOf(t *testing.T, text string) garment.Garment {
	t.Helper()
	g, err := garment.Read(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	return g
}

// What a slit takes off an edge is off before the edge is matched: 17 1/2 less
// two hems of 3/8 is 16 3/4, and the cuff of 16 3/4 is equal to it, not shorter.
func TestSlitBeforeTheMatch(t *testing.T) {
	g := garmentOf(t, `{
	"seams": [{"name": "sleeve", "spec": {"kind": "plain", "drafted": "5/8 in", "first": "5/8 in"}}],
	"edges": [{"name": "bottom", "net": "17 1/2 in", "crossings": [{"seam": "sleeve"}], "slit": "slit"},
	          {"name": "beyond", "of": "bottom", "depth": "1 in", "turn": "1/2"},
	          {"name": "slit beyond", "of": "bottom", "depth": "1 in", "turn": "1/2", "slit": "slit"},
	          {"name": "band", "net": "16 3/4 in"}],
	"pairs": [{"long": "bottom", "short": "band", "maxEase": "1/10"}, {"long": "slit beyond", "short": "band", "maxEase": "1/10"}],
	"hems": [{"name": "slit", "spec": {"kind": "slit", "first": "3/16 in", "depth": "3/16 in", "opening": "tucked"}}]}`)
	p := plan(t, g)
	for i, want := range []string{"16 3/4 in", "18 in", "17 1/4 in", "16 3/4 in"} {
		e := p.Edges[i]
		if e.Drafted != units.Exactly(length(want)) || e.AsSewn != e.Drafted || e.AsChosen != e.Drafted {
			t.Errorf("%s is %v, %v, %v, want %s", e.Name, e.Drafted, e.AsSewn, e.AsChosen, want)
		}
	}
	for i, want := range []string{"0 in", "1/2 in"} {
		for _, a := range []edge.AssemblyPlan{p.AsSewn, p.AsChosen} {
			if m := a.Pairs[i]; m.Sewn != units.Exactly(length(want)) || m.Drafted != m.Sewn {
				t.Errorf("pair %d: drafted %v, sewn %v, want %s", i, m.Drafted, m.Sewn, want)
			}
		}
	}
	if fit := p.AsSewn.Pairs[0].Fit; fit != edge.Fits {
		t.Errorf("the band %v", fit)
	}
}

// A slit that takes all of its edge leaves nothing to match.
func TestSlitLongerThanItsEdge(t *testing.T) {
	g := shirt(t)
	g.Edges[9].Net = length("3/4 in")
	_, err := g.Plan(context.Background())
	var f *fault.Fault
	if !errors.As(err, &f) || f.Path != "edges[9].slit" || !strings.Contains(f.Limit, "3/4 in") {
		t.Error(err)
	}
}

// An edge that lies along another follows it, and its own partner is judged by
// what it then is.
func TestFollowsWhatIsSpread(t *testing.T) {
	g := garmentOf(t, `{
	"seams": [{"name": "shoulder", "spec": {"kind": "plain", "drafted": "5/8 in", "first": "1/4 in"}}],
	"edges": [{"name": "neck", "net": "15 in", "crossings": [{"seam": "shoulder"}]},
	          {"name": "collar", "net": "15 in"},
	          {"name": "outer", "of": "collar", "depth": "1 in", "turn": "1/2"},
	          {"name": "edging", "net": "15 1/2 in"}],
	"pairs": [{"long": "neck", "short": "collar"}, {"long": "outer", "short": "edging", "maxEase": "1/100"}]}`)
	p := plan(t, g)
	for _, r := range p.AsSewn.Remedies {
		if r.Act != edge.SpreadPartner {
			continue
		}
		a, err := r.Apply(p.AsSewn.Spec)
		if err != nil {
			t.Fatal(err)
		}
		after, err := a.Plan()
		if err != nil {
			t.Fatal(err)
		}
		if e, _ := after.Edge("outer"); e.Sewn != units.Exactly(length("16 1/4 in")) {
			t.Errorf("the outer edge is %v when the collar is spread by 3/4 in", e.Sewn)
		}
		if m, _ := after.Pair("outer", "edging"); m.Fit != edge.Mismatch {
			t.Errorf("the edging of 15 1/2 in %v", m.Fit)
		}
		return
	}
	t.Error("nothing spreads the collar")
}

const unequal = `{
	"cloth": {"width": "45 in", "have": "3 yd"},
	"seams": [{"name": "side", "spec": {"kind": "plain", "drafted": "1 in", "draftedUnder": "5/8 in", "first": "5/8 in"}}],
	"edges": [{"name": "waist", "net": "30 in", "crossings": [{"seam": "side", "times": 2}]}],
	"drops": [{"name": "front", "drafted": "20 in", "seams": ["side"], "upper": ["side"]}, {"name": "back", "drafted": "20 in", "seams": ["side"], "under": ["side"]}],
	"pieces": [
	 {"name": "front", "wide": "10 in", "long": "20 in", "count": 1, "sides": ["side", "side"], "upper": ["side"]},
	 {"name": "back", "wide": "10 in", "long": "20 in", "count": 1, "sides": ["side", "side"], "under": ["side"], "outline": [
	  {"x": "0 in", "y": "0 in", "left": "side"}, {"x": "10 in", "y": "0 in", "right": "side"},
	  {"x": "10 in", "y": "20 in", "right": "side"}, {"x": "0 in", "y": "20 in", "left": "side"}]},
	 {"name": "tube", "wide": "10 in", "long": "20 in", "count": 1, "sides": ["side", "side"], "upper": ["side"], "under": ["side"], "outline": [
	  {"x": "0 in", "y": "0 in", "left": "side"}, {"x": "10 in", "y": "0 in", "right": "side"},
	  {"x": "10 in", "y": "20 in", "right": "side"}, {"x": "0 in", "y": "20 in", "left": "side"}]}]}`

// A piece is cut with the allowance of its own ply: 10 in and twice 1 in, twice
// 5/8 in, or one of each where it is sewn to itself.
func TestPliesOfPieces(t *testing.T) {
	p := plan(t, garmentOf(t, unequal))
	for i, want := range []string{"12 in", "11 1/4 in", "11 5/8 in"} {
		if got := p.Cloth.Lay.Spec.Pieces[i].Wide; got != length(want) {
			t.Errorf("%s is laid %v wide, want %s", p.Spec.Pieces[i].Name, got, want)
		}
		outline := p.Cloth.Nest.Spec.Pieces[i].Outline
		if len(outline) > 0 && outline[1].X.Sub(outline[0].X) != length(want) {
			t.Errorf("%s is drawn %v wide, want %s", p.Spec.Pieces[i].Name, outline[1].X.Sub(outline[0].X), want)
		}
	}
	for i, want := range []string{"20 3/8 in", "20 in"} {
		if got := p.Drops[i].AsSewn; got != length(want) {
			t.Errorf("%s hangs %v, want %s", p.Drops[i].Name, got, want)
		}
	}
}

// Where the plies differ a piece and a length that do not say which one they are
// are refused; so is a ply of a seam that they do not have.
func TestPliesNotSaid(t *testing.T) {
	for _, c := range []struct {
		change func(*garment.Garment)
		path   string
		kind   error
	}{
		{func(g *garment.Garment) { g.Pieces[0].Upper = nil }, "pieces[0].upper", fault.Missing},
		{func(g *garment.Garment) { g.Drops[0].Upper = nil }, "drops[0].upper", fault.Missing},
		{func(g *garment.Garment) { g.Pieces[0].Sides = nil }, "pieces[0].upper[0]", fault.Unused},
		{func(g *garment.Garment) { g.Pieces[0].Sides, g.Pieces[0].Under = []string{"side"}, []string{"side"} }, "pieces[0].under[0]", fault.Conflict},
		{func(g *garment.Garment) { g.Drops[0].Under = []string{"side"} }, "drops[0].under[0]", fault.Conflict},
		{func(g *garment.Garment) { g.Drops[0].Under = []string{"hip"} }, "drops[0].under[0]", fault.Unused},
	} {
		g := garmentOf(t, unequal)
		c.change(&g)
		_, err := g.Plan(context.Background())
		var f *fault.Fault
		if !errors.As(err, &f) || f.Path != c.path || !errors.Is(f, c.kind) {
			t.Errorf("want %s %v, got %v", c.path, c.kind, err)
		}
	}
}
