package garment_test

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"strings"
	"testing"

	"example.com/clothyard/examples/garment"
	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

func shirt(t *testing.T) garment.Garment {
	t.Helper()
	g, err := garment.Default()
	if err != nil {
		t.Fatal(err)
	}
	g.Cloth.Work = 1
	return g
}

func plan(t *testing.T, g garment.Garment) garment.Plan {
	t.Helper()
	p, err := g.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// One seam changed changes every edge that it crosses and no other.
func TestOneSeamChanged(t *testing.T) {
	g := shirt(t)
	before := plan(t, g)
	for i, s := range g.Seams {
		h := shirt(t)
		h.Seams[i].Spec = seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: units.Inch.Frac(5, 8)}, First: units.Inch.Frac(1, 2)}}
		after := plan(t, h)
		for k, e := range g.Edges {
			crossed := false
			base := e
			if e.Of != "" {
				for _, o := range g.Edges {
					if o.Name == e.Of {
						base = o
					}
				}
			}
			for _, c := range base.Crossings {
				crossed = crossed || c.Seam == s.Name
			}
			moved := before.Edges[k].AsSewn != after.Edges[k].AsSewn
			if moved && !crossed {
				t.Errorf("%s changed: %s moved, which it does not cross", s.Name, e.Name)
			}
			if !moved && crossed {
				t.Errorf("%s changed: %s stayed, which it crosses", s.Name, e.Name)
			}
		}
	}
}

// What is chosen leaves no pair mismatched, and every cut is what the seam takes.
func TestChosen(t *testing.T) {
	p := plan(t, shirt(t))
	if p.AsSewn.Mismatched() != 3 || p.AsChosen.Mismatched() != 0 || len(p.Chosen) != 1 || p.Chosen[0].Act != edge.CutDrift {
		t.Errorf("%d mismatched, %d after %v", p.AsSewn.Mismatched(), p.AsChosen.Mismatched(), p.Chosen)
	}
	for _, c := range p.Cuts {
		if !c.Cut.Less(c.Tissue) {
			t.Errorf("%+v", c)
		}
	}
}

// An edge that no seam crosses is spread to follow, and what lies along it with it.
func TestSpread(t *testing.T) {
	g := shirt(t)
	g.Pairs = g.Pairs[1:2] // neck and collar
	quarter := units.Inch.Frac(1, 4)
	// Passes that leave nothing to trim off: the shoulder is felled narrower than drafted.
	for i, s := range g.Seams {
		if s.Name == "shoulder" {
			g.Seams[i].Spec = seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: units.Inch.Frac(5, 8)}, First: quarter}}
		}
	}
	p := plan(t, g)
	for _, r := range p.AsSewn.Remedies {
		if r.Act != edge.SpreadPartner {
			continue
		}
		if r.Net != units.Inch.Mixed(16, 1, 2) {
			t.Errorf("the collar is spread to %v", r.Net)
		}
		a, err := r.Apply(p.AsSewn.Spec)
		if err != nil {
			t.Fatal(err)
		}
		if after, err := a.Plan(); err != nil || after.Mismatched() != 0 {
			t.Errorf("%v, %v", after.Mismatched(), err)
		}
		return
	}
	t.Error("no remedy spreads the collar")
}

// Seams sewn as drafted change nothing.
func TestNothingSubstituted(t *testing.T) {
	g := shirt(t)
	for i := range g.Seams {
		g.Seams[i].Spec = seam.Any{Seam: seam.French{Allowance: seam.Allowance{Drafted: units.Inch.Frac(5, 8)}, First: units.Inch.Frac(3, 8), Second: units.Inch.Frac(1, 4)}}
	}
	g.Hems[0].Spec.First = units.Inch.Frac(1, 4)
	g.Hems[0].Spec.Depth = units.Inch.Of(1)
	p := plan(t, g)
	if len(p.Cuts) != 0 || len(p.Chosen) != 0 || len(p.AsSewn.Remedies) != 0 {
		t.Errorf("cuts %v, chosen %v", p.Cuts, p.Chosen)
	}
	for _, e := range p.Edges {
		if e.AsSewn != e.Drafted || e.AsChosen != e.Drafted || !e.AtHem.IsZero() {
			t.Errorf("%+v", e)
		}
	}
	for _, d := range p.Drops {
		if d.AsSewn != d.Drafted || d.AsChosen != d.Drafted {
			t.Errorf("%+v", d)
		}
	}
}

// Cloth that no lay can fit is told as such, with the length that one would need.
func TestTooShort(t *testing.T) {
	g := shirt(t)
	g.Cloth.Have = units.Yard.Of(1)
	p := plan(t, g)
	if p.Cloth.Own.Fits || p.Cloth.Own.Spare.Sign() >= 0 || !p.Cloth.Lay.Spec.Cloth.Long.IsZero() {
		t.Errorf("a yard does: %+v", p.Cloth.Remnant.Verdict)
	}
	if !p.Cloth.Remnant.Spec.Have.Less(p.Cloth.Remnant.Least) {
		t.Errorf("the least is %v", p.Cloth.Remnant.Least)
	}
}

// As many buttons as drafted need nothing given up.
func TestButtonsEnough(t *testing.T) {
	g := shirt(t)
	g.Tin.Have = 14
	p := plan(t, g)
	if p.Stock.Spare != 1 || p.Stock.Short != 0 || p.Rows[1].AsChosen.Spec.Count != 2 {
		t.Errorf("%+v", p.Stock)
	}
}

// A row that would run past the hem is a fault that names the hem's place.
func TestRowPastTheHem(t *testing.T) {
	g := shirt(t)
	g.Rows[0].Row.Last = units.Inch.Of(27)
	_, err := g.Plan(context.Background())
	var f *fault.Fault
	if !errors.As(err, &f) || f.Path != "rows[0].row.last" || f.Got != "27 in" || !strings.Contains(f.Limit, "26 1/2 in") {
		t.Errorf("%v", err)
	}
}

// Everything that is refused has a path into the garment, and all of it is told.
func TestFaults(t *testing.T) {
	for _, c := range []struct {
		change func(*garment.Garment)
		wants  []string
	}{
		{func(g *garment.Garment) { g.Edges = nil }, []string{"edges: not given"}},
		{func(g *garment.Garment) { g.Edges[0].Of, g.Edges[0].Net = "neck", units.Length{} }, []string{"edges[0].of"}},
		{func(g *garment.Garment) { g.Edges[4].Net = units.Inch.Of(1) }, []string{"edges[4].net 1 in: not used here"}},
		{func(g *garment.Garment) { g.Edges[0].Depth = units.Inch.Of(1) }, []string{"edges[0].depth 1 in: not used here"}},
		{func(g *garment.Garment) { g.Edges[4].Crossings = g.Edges[0].Crossings }, []string{"edges[4].crossings"}},
		{func(g *garment.Garment) { g.Edges[9].Slit = "bottom hem" }, []string{"edges[9].slit"}},
		{func(g *garment.Garment) { g.Edges[8].Hem = "sleeve slit" }, []string{"edges[8].hem"}},
		{func(g *garment.Garment) { g.Edges[8].Hem = "brim" }, []string{`edges[8].hem "brim": not known`}},
		{func(g *garment.Garment) { g.Hems[1].Name = g.Hems[0].Name }, []string{"hems[1].name", "given twice"}},
		{func(g *garment.Garment) { g.Hems[0].Name = "" }, []string{"hems[0].name: not given", "drops[0].hem"}},
		{func(g *garment.Garment) { g.Drops[1].Seams[0] = "" }, []string{"drops[1].seams[0]"}},
		{func(g *garment.Garment) { g.Frills[0].Spec.Strip.Edge = units.Inch.Of(1) }, []string{"frills[0].spec.strip.edge"}},
		{func(g *garment.Garment) { g.Frills[0].Spec.Depth = units.Inch.Of(-1) }, []string{"frills[0].spec.depth -1 in"}},
		{func(g *garment.Garment) { g.Cuffs[0].Spec.Sleeve = units.Inch.Of(1) }, []string{"cuffs[0].spec.sleeve"}},
		{func(g *garment.Garment) { g.Cuffs[0].Spec.Setting = 0 }, []string{"cuffs[0].spec.setting"}},
		{func(g *garment.Garment) { g.Rows[0].Drop = "brim" }, []string{"rows[0].drop"}},
		{func(g *garment.Garment) { g.Rows[0].Times = -1 }, []string{"rows[0].times -1"}},
		{func(g *garment.Garment) { g.Rows[0].Row.Count = -1 }, []string{"rows[0].row.count"}},
		{func(g *garment.Garment) { g.Rows[0].Lap = units.Inch.Frac(1, 16) }, []string{"rows[0].lap"}},
		{func(g *garment.Garment) { g.Tin.Diameter = units.Length{} }, []string{"tin.diameter: not given"}},
		{func(g *garment.Garment) { g.Tin.Thickness = units.Inch.Of(-1) }, []string{"tin.thickness -1 in"}},
		{func(g *garment.Garment) { g.Pieces[0].Count = 0; g.Pieces[1].Wide = units.Length{} }, []string{"pieces[0].count", "pieces[1].wide"}},
		{func(g *garment.Garment) { g.Pieces[0].Sides = []string{"side", "side", "side"} }, []string{"pieces[0].sides 3"}},
		{func(g *garment.Garment) { g.Pieces[0].Count = 1 << 40 }, []string{"pieces[0].count"}},
		{func(g *garment.Garment) { g.Lay[0].Piece = "brim" }, []string{"lay[0].piece"}},
		{func(g *garment.Garment) { g.Cloth.Width = units.Length{} }, []string{"cloth.width: not given"}},
		{func(g *garment.Garment) { g.Cloth.ShrinkLong = units.RatioOf(1, 1) }, []string{"cloth.", "less than 1"}},
		{func(g *garment.Garment) { g.Cloth.Work = 1 << 30 }, []string{"cloth.work"}},
		{func(g *garment.Garment) { g.Seams[0].Times = 1000 }, []string{"seams[0].times 1000"}},
		{func(g *garment.Garment) { g.Seams[0].Spec = seam.Any{}; g.Seams[1].Name = "" }, []string{"seams[0].spec.kind", "seams[1].name"}},
		{func(g *garment.Garment) { g.Work[0].Title = "" }, []string{"work[0].title"}},
		{func(g *garment.Garment) { g.Work[3].Before[0].Do = "" }, []string{"work[3].before[0].do"}},
		{func(g *garment.Garment) { g.Work[3].Before[0].Note = "{5/8 in" }, []string{"work[3].before[0].note"}},
		{func(g *garment.Garment) { g.Work[3].Before[0].Right, g.Work[3].Before[0].Wrong = true, true }, []string{"work[3].before[0].wrong"}},
		{func(g *garment.Garment) { g.Work[5].Check[0].Want = units.Inch.Of(1) }, []string{"work[5].check[0].want"}},
		{func(g *garment.Garment) { g.Work[5].Check[0].Edge = "" }, []string{"work[5].check[0].want: not given"}},
		{func(g *garment.Garment) { g.Kit[0].Text = strings.Repeat("x", 2000) }, []string{"kit[0].text 2000 bytes"}},
		{func(g *garment.Garment) { g.Title = "a\x00b" }, []string{"title"}},
		{func(g *garment.Garment) { g.Work = make([]garment.Task, garment.MaxTasks+1) }, []string{"work 201"}},
		{func(g *garment.Garment) { g.Pairs = append(g.Pairs, edge.Partners{Long: "neck", Short: "brim"}) }, []string{"pairs[3].short"}},
		{func(g *garment.Garment) { g.Edges[9].Crossings[0].Slant = units.Degrees(units.RatioOf(45, 1)) }, []string{"cuffs[0].edge", "exact"}},
	} {
		g := shirt(t)
		c.change(&g)
		_, err := g.Plan(context.Background())
		var fs fault.Faults
		if !errors.As(err, &fs) || len(fs) == 0 {
			t.Errorf("%v: %v", c.wants, err)
			continue
		}
		for _, w := range c.wants {
			if !strings.Contains(fault.Most(err).Error(), w) {
				t.Errorf("no %q in\n%v", w, err)
			}
		}
		for _, f := range fs {
			if f.Path == "" {
				t.Errorf("a fault without a path: %v", f)
			}
		}
	}
}

func TestFill(t *testing.T) {
	got, err := garment.Fill("cut {3/32 in} shorter, {1 cm} wider", func(l units.Length) string { return units.Notation{Unit: units.Millimetre}.Exact(l) })
	if err != nil || got != "cut 2.38125 mm shorter, 10 mm wider" {
		t.Errorf("%q, %v", got, err)
	}
	for _, bad := range []string{"{", "{x}", "{5/8}"} {
		if _, err := garment.Fill(bad, units.Length.String); !errors.Is(err, fault.Form) {
			t.Errorf("%q: %v", bad, err)
		}
	}
}

// A lay that is being looked for when time is up is used as far as it is.
func TestStopped(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	g := shirt(t)
	if _, err := g.Plan(ctx); !errors.Is(err, context.Canceled) {
		t.Errorf("%v", err)
	}
}

func FuzzRead(f *testing.F) {
	text, err := os.ReadFile("shirt.json")
	if err != nil {
		f.Fatal(err)
	}
	f.Add(bytes.Replace(text, []byte(`"ends": "1 in"`), []byte(`"ends": "1 in", "work": 1`), 1))
	f.Add([]byte(`{"edges":[{"name":"a","net":"1 in","crossings":[{"seam":"s","slant":"45 deg"}]}],"seams":[{"name":"s","spec":{"kind":"french"}}]}`))
	f.Add([]byte(`{"edges":[{"name":"a","of":"b","depth":"1 in","turn":"-9"},{"name":"b","net":"1 in"}],"pieces":[{"name":"p","wide":"1 in","long":"2 in","count":3}],"cloth":{"width":"9 in","have":"9 in","work":1}}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		if len(text) > 20_000 {
			return
		}
		g, err := garment.Read(bytes.NewReader(text))
		if err == nil {
			g.Cloth.Work = 1
			_, err = g.Plan(context.Background())
		}
		if err == nil {
			return
		}
		var fs fault.Faults
		if !errors.As(err, &fs) || len(fs) == 0 || err.Error() == "" {
			t.Fatalf("%v", err)
		}
	})
}

// The neck of the shirt: as drafted, as sewn, and with the shoulders cut to what
// the French seam takes.
func Example() {
	g, err := garment.Default()
	if err != nil {
		fmt.Println(err)
		return
	}
	p, err := g.Plan(context.Background())
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, e := range p.Edges[:3] {
		fmt.Println(e.Name, e.Drafted, e.AsSewn, e.AsChosen)
	}
	for _, c := range p.Cuts {
		fmt.Println("cut the", c.Seam, "at", c.Cut)
	}
	// Output:
	// neck 16 1/2 in 17 1/4 in 16 1/2 in
	// facing neck 16 1/2 in 16 1/2 in 16 1/2 in
	// neck, centre to centre 15 in 15 3/4 in 15 in
	// cut the shoulder at 7/16 in
	// cut the bottom hem at 3/4 in
}
