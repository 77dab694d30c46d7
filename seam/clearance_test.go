package seam_test

import (
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// TestRoomInARidge: the first pass of a French seam lies inside the fold, so that the
// trimmed edges have as much less room as the cloth is thick. Passes 3/16 and 1/4,
// trimmed to 1/8.
func TestRoomInARidge(t *testing.T) {
	const (
		label = "clear inside the ridge"
		tight = "Very little cloth"
	)
	for _, c := range []struct {
		thick, clear, most units.Length
		label, caution     string
	}{
		{units.Length{}, in(1, 8), in(3, 16), label, ""},
		{in(1, 32), in(3, 32), in(5, 32), label, ""},
		{in(1, 16), in(1, 16), in(1, 8), label, ""},
		{in(5, 64), in(3, 64), in(7, 64), label, tight},
		{in(7, 64), in(1, 64), in(5, 64), label, tight},
	} {
		p := planned(t, seam.French{Allowance: seam.Allowance{Drafted: in(7, 16), Thickness: c.thick}, First: in(3, 16), Second: in(1, 4), Trim: in(1, 8)})
		sh := p.Sheet()
		i := slices.IndexFunc(sh.Lines, func(l ticket.Line) bool { return strings.HasPrefix(l.Label, label) })
		if i < 0 {
			t.Fatalf("%v thick: no line", c.thick)
		}
		l := sh.Lines[i]
		if err := l.Check(); err != nil || l.Label != c.label || l.Result != ticket.Long(c.clear) || (len(l.Terms) == 3) == c.thick.IsZero() {
			t.Errorf("%v thick: %+v, %v", c.thick, l, err)
		}
		if p.Upper.TrimMax != c.most || p.Under.TrimMax != c.most {
			t.Errorf("%v thick: trimmed to %v and %v at most", c.thick, p.Upper.TrimMax, p.Under.TrimMax)
		}
		got := ""
		for _, caution := range sh.Cautions {
			if strings.HasPrefix(caution.Text, tight) {
				got += tight
			}
		}
		if got != c.caution {
			t.Errorf("%v thick: cautions %q, want %q", c.thick, got, c.caution)
		}
	}
	// Drawn as thick as it is, the trimmed edge lies where the sheet says.
	p := planned(t, seam.French{Allowance: seam.Allowance{Thickness: in(1, 32)}, First: in(3, 16), Second: in(1, 4), Trim: in(1, 8)})
	ds, err := p.Sections(in(1, 32))
	if err != nil {
		t.Fatal(err)
	}
	for _, d := range ds[1:] {
		for _, ply := range d.Plies {
			if edge := ply.Path[len(ply.Path)-1].X; edge != in(3, 32) {
				t.Errorf("%s: the edge of %s is drawn %v from the second pass", d.Title, ply.Name, edge)
			}
		}
	}
}

// TestThickCloth: what a fold takes of the room in it is refused where nothing is left,
// named by what was given, and taken where anything is.
func TestThickCloth(t *testing.T) {
	quarter := in(1, 4)
	for _, c := range []struct {
		spec  seam.Seam
		least units.Length // the thickness that is refused
		fault string
	}{
		{seam.French{Second: quarter, Trim: in(15, 64)}, in(1, 64), "thickness 1/64 in: raw edge would show, want less than 1/64 in (second less trim)"},
		{seam.French{First: in(3, 8), Second: quarter}, in(1, 8), "thickness 1/8 in: raw edge would show, want less than 1/8 in (second less trim)"},
		{seam.UntrimmedFell{Allowance: seam.Allowance{Drafted: in(1, 1)}, Width: in(3, 8)}, in(1, 4), "thickness 1/4 in: out of range, want less than 1/4 in (two thirds of width: the row must go through the upper ply)"},
	} {
		plies := c.spec.Plies()
		plies.Thickness = c.least.Sub(in(1, 1000))
		p := planned(t, on(c.spec, plies))
		if err := p.Sheet().Check(); err != nil {
			t.Errorf("%+v: %v", c.spec, err)
		}
		plies.Thickness = c.least
		if _, err := on(c.spec, plies).Plan(); err == nil || err.Error() != c.fault {
			t.Errorf("%+v: %v, want %s", c.spec, err, c.fault)
		}
	}
}

// A turned edge must reach past the row that holds it, also in cloth so thick that
// the fold takes much of it; and a strip that is assumed goes round thick cloth.
func TestThickFolds(t *testing.T) {
	for _, c := range []struct {
		spec seam.Seam
		path string
	}{
		{seam.Lapped{Allowance: seam.Allowance{Thickness: in(13, 64)}, Turned: in(1, 2), Row: in(3, 8)}, ""},
		{seam.Lapped{Allowance: seam.Allowance{Thickness: in(15, 64)}, Turned: in(1, 2), Row: in(3, 8)}, "thickness"},
		{seam.Lapped{Allowance: seam.Allowance{Thickness: in(2, 1)}}, "thickness"},
		{seam.LappedTurned{Allowance: seam.Allowance{Thickness: in(7, 32)}, Lap: in(1, 2), Turned: in(3, 8)}, ""},
		{seam.LappedTurned{Allowance: seam.Allowance{Thickness: in(1, 4)}, Lap: in(1, 2), Turned: in(3, 8)}, "thickness"},
		{seam.HongKong{Allowance: seam.Allowance{Thickness: in(1, 4)}}, ""},
		{seam.HongKong{Allowance: seam.Allowance{Thickness: in(1, 4)}, Strip: in(1, 1)}, "strip"},
	} {
		if _, err := c.spec.Plan(); err == nil && c.path != "" || err != nil && nountest.Paths(t, err) != c.path {
			t.Errorf("%+v: %v, want a fault of %q", c.spec, err, c.path)
		}
	}
	p := planned(t, seam.HongKong{Allowance: seam.Allowance{Thickness: in(1, 16)}, First: in(3, 8)})
	if wrapped := width(p, 1); wrapped != in(3, 8) {
		t.Errorf("the under edge of the strip lies %v from the raw edge, the seam 3/8 in", wrapped)
	}
}

// TestRowsOfAnUntrimmedFell: the row that makes the seam goes through both plies and
// misses the edge folded over, which the row close to the fold holds; the sheet says
// which.
func TestRowsOfAnUntrimmedFell(t *testing.T) {
	for _, c := range []struct {
		turned units.Length
		says   string
	}{
		{units.Length{}, "just reaches this row"}, // 1/4 in, as wide as the fell
		{in(1, 4), "just reaches this row"},
		{in(15, 64), "ends short of this row"},
		{in(1, 8), "ends short of this row"},
	} {
		p := planned(t, seam.UntrimmedFell{Width: in(1, 4), Turned: c.turned})
		var first, last ticket.Step
		for _, st := range p.Sheet().Steps {
			switch {
			case strings.HasPrefix(st.Do, "Stitch the seam"):
				first = st
			case strings.HasPrefix(st.Do, "Stitch close"):
				last = st
			}
		}
		if !strings.Contains(first.Do, "both plies") || !strings.Contains(first.Note, c.says) || !strings.Contains(last.Do, "four layers") || !strings.Contains(last.Note, "the edge folded over") {
			t.Errorf("turned %v: %q, %q, then %q, %q", c.turned, first.Do, first.Note, last.Do, last.Note)
		}
		ds, err := p.Sections(units.Length{})
		if err != nil {
			t.Fatal(err)
		}
		pierced := map[string]int{}
		for _, s := range ds[len(ds)-1].Stitches {
			pierced[s.Name] = len(s.Pierce)
		}
		if pierced["the seam"] != 2 || pierced["the fell"] != 4 {
			t.Errorf("turned %v: the rows pierce %v", c.turned, pierced)
		}
	}
}

// TestLayersThatRunOut: a graded seam has the plies of its allowances and of the two
// that run on over them. The layers between run out at the seam.
func TestLayersThatRunOut(t *testing.T) {
	for n := 2; n <= seam.MaxLayers; n++ {
		p := planned(t, seam.Graded{Layers: n})
		ds, err := p.Sections(units.Length{})
		if err != nil {
			t.Fatal(err)
		}
		d := ds[len(ds)-1]
		over, out := 0, 0
		for _, ply := range d.Plies {
			switch far := ply.Path[0].X; {
			case ply.Start != section.RunsOn:
			case far.Sign() > 0:
				over++
			default:
				out++
			}
		}
		if p.Plies != n+2 || thickest(d) != n+2 || over != 2 || out != n-2 {
			t.Errorf("%d layers: %d plies, %d drawn, %d run on over the allowances and %d out at the seam", n, p.Plies, thickest(d), over, out)
		}
	}
}
