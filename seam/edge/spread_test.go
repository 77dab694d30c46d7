package edge

import (
	"testing"

	"example.com/clothyard/seam"
)

// A piece that is spread gives no more ease than the pattern drew: the band follows
// the neck by 1 1/2 in, and then is 1 1/4 in longer than the facing, which nobody
// meant.
func TestSpreadDrawsNoEase(t *testing.T) {
	a := Assembly{
		Seams: []Joint{
			{"shoulder", seam.Any{Seam: seam.French{Allowance: seam.Allowance{Drafted: in("5/8")}, First: in("3/16"), Second: in("1/4")}}},
			{"facing shoulder", seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in("5/8")}, First: in("1/2")}}},
		},
		Edges: []Course{
			{Name: "neck", Net: in("20"), Crossings: []Crossing{{Seam: "shoulder", Times: 4}}},
			{Name: "band", Net: in("20")},
			{Name: "facing", Net: in("20"), Crossings: []Crossing{{Seam: "facing shoulder"}}},
		},
		Pairs: []Partners{{Long: "neck", Short: "band"}, {Long: "band", Short: "facing"}},
	}
	before := mustPlan(t, a)
	rs, err := remedies(a)
	if err != nil || before.Mismatched() != 2 {
		t.Fatal(before.Mismatched(), err)
	}
	spreads := 0
	for _, r := range rs {
		after := provenBy(t, a, before, r)
		if r.Act != SpreadPartner {
			continue
		}
		spreads++
		e, _ := after.Edge("band")
		if net, _ := e.Sewn.Exact(); r.Mends != 1 || net != r.Net {
			t.Errorf("%v mends %d, leaves %v; the band comes to %v", r.Net, r.Mends, r.Left, e.Sewn)
		}
		m, _ := after.Pair("band", "facing")
		if limit, ok := m.Limit.Exact(); !ok || !limit.IsZero() {
			t.Errorf("the band of %v may be eased by %v, and the pattern drew none", r.Net, m.Limit)
		}
		if err := after.Edges[1].Sheet().Check(); err != nil {
			t.Error(err)
		}
	}
	if spreads != 2 {
		t.Errorf("%d remedies spread the band, want one for each of its partners", spreads)
	}
}

// Both plies of a seam are cut, also where the edge that it crosses has one of them.
func TestCutsOfOpenEnds(t *testing.T) {
	for _, c := range []struct {
		why       string
		crossings []Crossing
		cuts      int
	}{
		{"three seams, each with one ply of the edge", []Crossing{{Seam: "side", Times: 3, Plies: 1}}, 6},
		{"three seams", []Crossing{{Seam: "side", Times: 3}}, 6},
		{"the two plies of two seams", []Crossing{{Seam: "side", Times: 2, Plies: 1}, {Seam: "side", Times: 2, Plies: 1, Ply: UnderPly}}, 4},
		{"one seam, and the upper plies of two", []Crossing{{Seam: "side"}, {Seam: "side", Times: 2, Plies: 1}}, 6},
	} {
		a := Assembly{
			Seams: []Joint{{"side", seam.Any{Seam: seam.French{Allowance: seam.Allowance{Drafted: in("5/8")}, First: in("3/16"), Second: in("1/4")}}}},
			Edges: []Course{{Name: "hem", Net: in("20"), Crossings: c.crossings}, {Name: "band", Net: in("20")}},
			Pairs: []Partners{{Long: "hem", Short: "band"}},
		}
		rs, err := remedies(a)
		if err != nil || len(rs) == 0 || rs[0].Act != CutDrift || rs[0].Cuts != c.cuts {
			t.Errorf("%s: %+v, %v, want %d cuts", c.why, rs, err, c.cuts)
		}
	}
}
