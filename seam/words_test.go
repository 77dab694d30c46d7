package seam_test

import (
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// lineOf is the line of a sheet so labelled.
func lineOf(t *testing.T, sh ticket.Sheet, label string) ticket.Line {
	t.Helper()
	if err := sh.Check(); err != nil {
		t.Error(err)
	}
	for _, l := range sh.Lines {
		if l.Label == label {
			return l
		}
	}
	t.Errorf("no line %q in %+v", label, sh.Lines)
	return ticket.Line{}
}

// What is less than nothing longer is shorter.
func TestShorterIsSaid(t *testing.T) {
	for _, s := range []seam.Spec{
		{Kind: seam.Plain, First: in(13, 16)},
		{Kind: seam.Plain, Drafted: in(1, 1), DraftedUnder: in(1, 2), Cut: in(1, 1), CutUnder: in(1, 2), First: in(15, 16)},
	} {
		want := in(3, 8)
		p := planned(t, s)
		if got := lineOf(t, p.Sheet(), "an edge crossed square comes out shorter by").Result; got != ticket.Long(want) {
			t.Errorf("shorter by %v, want %v", got, want)
		}
	}
	line := func(name string, net units.Length) edge.Spec { return edge.Spec{Name: name, Net: net} }
	m := edge.Pair{Long: line("sleeve", in(18, 1)), Short: line("armhole", in(147, 8))}
	p, err := m.Plan()
	if err != nil {
		t.Fatal(err)
	}
	for _, label := range []string{"shorter as drafted", "shorter as sewn"} {
		if got := lineOf(t, p.Sheet(), label).Result; got != ticket.Long(in(3, 8)) {
			t.Errorf("%s: %v", label, got)
		}
	}
}

// The limit of ease is said to be what the pattern drew where it is that, and beside
// it stands what lies smooth; more than that is warned of.
func TestEaseDrawnAndSmooth(t *testing.T) {
	for _, c := range []struct {
		long   units.Length
		ease   units.Ratio
		label  string
		limit  units.Length
		warned bool
	}{
		{in(17, 1), units.Ratio{}, "ease that the pattern drew, which is the limit here", in(1, 1), false},
		{in(18, 1), units.Ratio{}, "ease that the pattern drew, which is the limit here", in(2, 1), true},
		{in(18, 1), units.RatioOf(1, 4), "most that may be eased in, by the limit given", in(4, 1), true},
		{in(16, 1), units.RatioOf(1, 4), "most that may be eased in, by the limit given", in(4, 1), false},
	} {
		p, err := edge.Pair{Long: edge.Spec{Name: "sleeve", Net: c.long}, Short: edge.Spec{Name: "armhole", Net: in(16, 1)}, MaxEase: c.ease}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		sh := p.Sheet()
		if got := lineOf(t, sh, c.label).Result; got != ticket.Long(c.limit) {
			t.Errorf("%v: %v, want %v", c.long, got, c.limit)
		}
		if got := lineOf(t, sh, "most that lies smooth, in cloth like lawn").Result; got != ticket.Long(in(1, 1)) {
			t.Errorf("%v lies smooth", got)
		}
		warned := false
		for _, one := range sh.Cautions {
			warned = warned || strings.Contains(one.Text, "lies smooth")
		}
		if warned != c.warned {
			t.Errorf("%v on 16 in: warned %v", c.long, warned)
		}
	}
}

// A strip is sewn to a curve as the curve asks.
func TestBindingFollowsTheCurve(t *testing.T) {
	for _, c := range []struct {
		curve units.Ratio
		says  string
	}{
		{units.RatioOf(-7, 2), "stretch the strip a little"}, {units.RatioOf(7, 2), "ease the strip in"}, {units.Ratio{}, ""},
	} {
		p, err := seam.Binding{Kind: seam.SingleBinding, Finished: in(1, 4), Bias: true, Allowance: in(5, 8), Curve: c.curve, Edge: in(20, 1), Corners: 1}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		for _, st := range p.Sheet().Steps {
			if !strings.HasPrefix(st.Do, "Stitch the strip to the edge") {
				continue
			}
			if !strings.Contains(st.Note, c.says) || c.says == "" && strings.Contains(st.Note, "strip a little") || !strings.Contains(st.Note, "corner") {
				t.Errorf("bend %v: %q", c.curve, st.Note)
			}
		}
	}
}
