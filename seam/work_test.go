package seam_test

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/strip"
)

func rad(num, den int64) units.Angle { return units.Radians(units.RatioOf(num, den)) }

func TestWorkRefusals(t *testing.T) {
	minus := in(-1, 8)
	inch := in(1, 1)
	for _, c := range []struct {
		why   string
		spec  any
		paths string // none for what is taken
		kind  fault.Kind
	}{
		{"no strip", seam.Binding{}, "kind", fault.Missing},
		{"no such strip", seam.Binding{Kind: 99}, "kind", fault.Unknown},
		{"single, nothing", seam.Binding{Kind: seam.SingleBinding}, "finished", fault.Missing},
		{"single, below zero", seam.Binding{Kind: seam.SingleBinding, Finished: minus, Cord: minus, Seam: minus, Turn: minus, Give: units.Give(minus), Allowance: minus, Edge: minus, Corners: -1, Ends: minus, Join: minus, Cloth: minus},
			"finished cord seam turn give allowance edge corners ends join cloth", fault.Sign},
		{"single, without an edge", seam.Binding{Kind: seam.SingleBinding, Finished: inch, Curve: rad(1, 2), Ring: true, Corners: 4, Ends: inch, Join: inch, Cloth: inch}, "curve ring corners ends join cloth", fault.Unused},
		{"double, what it does not read", seam.Binding{Kind: seam.DoubleBinding, Finished: inch, Cord: inch, Turn: inch}, "cord turn", fault.Unused},
		{"piping, what it does not read", seam.Binding{Kind: seam.Piping, Finished: inch, Cord: inch, Turn: inch, Allowance: inch, Curve: rad(1, 2), Edge: inch, Corners: 4}, "finished turn allowance curve corners", fault.Unused},
		{"piping, nothing", seam.Binding{Kind: seam.Piping}, "cord", fault.Missing},
		{"a ring with ends", seam.Binding{Kind: seam.DoubleBinding, Finished: inch, Edge: inch, Ring: true, Ends: inch}, "ends", fault.Unused},
		{"a join in no cloth", seam.Binding{Kind: seam.DoubleBinding, Finished: inch, Edge: inch, Join: inch}, "join", fault.Unused},
		{"too many corners", seam.Binding{Kind: seam.DoubleBinding, Finished: inch, Edge: inch, Corners: math.MaxInt}, "corners", fault.Range},
		{"cloth all joins", seam.Binding{Kind: seam.DoubleBinding, Finished: inch, Edge: in(90, 1), Cloth: in(1, 2)}, "cloth", fault.Range},
		{"too many strips", seam.Binding{Kind: seam.DoubleBinding, Finished: inch, Bias: true, Edge: huge(1), Cloth: in(44, 1)}, "cloth", fault.Range},
		{"no row", seam.Row{}, "kind", fault.Missing},
		{"no such row", seam.Row{Kind: 99}, "kind", fault.Unknown},
		{"staystitch, below zero", seam.Row{Kind: seam.StayStitch, Allowance: minus, Distance: minus, Trim: minus}, "allowance distance trim", fault.Sign},
		{"staystitch, what it does not read", seam.Row{Kind: seam.StayStitch, Layer: inch, Margin: inch, Start: inch, End: inch}, "layer margin start end", fault.Unused},
		{"topstitch, what it does not read", seam.Row{Kind: seam.TopStitch, Allowance: inch, Trim: inch, Margin: inch}, "allowance trim margin", fault.Unused},
		{"topstitch, below zero", seam.Row{Kind: seam.TopStitch, Distance: minus, Layer: minus, Margin: minus, Start: minus, End: minus}, "distance layer margin start end", fault.Sign},
		{"an end before its start", seam.Row{Kind: seam.TopStitch, Start: inch, End: inch}, "end", fault.Range},
		{"a row in the raw edge, a trim beyond it", seam.Row{Kind: seam.StayStitch, Distance: in(5, 8), Trim: inch}, "distance trim", fault.Range},
		{"no roll", seam.Roll{}, "apart angle", fault.Missing},
		{"a roll below zero", seam.Roll{Apart: minus, Angle: rad(-1, 2), Length: minus}, "apart angle length", fault.Sign},
		{"a roll of nothing", seam.Roll{Apart: inch, Angle: units.Turns(units.RatioOf(1, 1)), Length: inch}, "length", fault.Range},
		{"a favour below zero", seam.Favour{By: minus, Edge: minus}, "by edge", fault.Sign},
		{"a favour of nothing", seam.Favour{By: inch, Edge: inch, Bend: rad(1, 1)}, "edge", fault.Range},
		{"a trim as wide as the allowance", seam.Row{Kind: seam.StayStitch, Trim: in(5, 8)}, "", fault.Range},
		{"an inner layer of nothing", seam.Roll{Apart: in(1, 1), Angle: rad(1, 1), Length: in(1, 1)}, "length", fault.Range},
		{"an under piece of nothing", seam.Favour{By: in(1, 1), Edge: in(1, 1), Bend: rad(1, 1)}, "edge", fault.Range},
		{"as many corners as may be", seam.Binding{Kind: seam.DoubleBinding, Finished: in(1, 4), Edge: in(1, 1), Corners: seam.MaxCorners}, "", fault.Range},
		{"one more", seam.Binding{Kind: seam.DoubleBinding, Finished: in(1, 4), Edge: in(1, 1), Corners: seam.MaxCorners + 1}, "corners", fault.Range},
		{"a kind one past the last", seam.Row{Kind: seam.TopStitch + 1}, "kind", fault.Unknown},
		{"a strip one past the last", seam.Binding{Kind: seam.Piping + 1}, "kind", fault.Unknown},
	} {
		t.Run(c.why, func(t *testing.T) { nountest.Refused(t, seam.Nouns(), c.spec, c.paths, c.kind) })
	}
}

// What a fault says would have been right.
func TestWorkLimits(t *testing.T) {
	for _, c := range []struct {
		spec any
		want string
	}{
		{seam.Binding{Kind: seam.DoubleBinding, Finished: in(1, 4), Ring: true}, "ring true: not used here, want none where edge is not given"},
		{seam.Row{Kind: seam.TopStitch, Start: in(1, 4)}, "end 0 in: out of range, want more than 1/4 in (start)"},
	} {
		if _, err := nountest.Planned(t, seam.Nouns(), c.spec); err == nil || err.Error() != c.want {
			t.Errorf("%+v:\n%v\nwant\n%s", c.spec, err, c.want)
		}
	}
}

// Lengths beyond measure are worked out, or refused with a fault.
func TestWorkHuge(t *testing.T) {
	for _, big := range []units.Length{huge(16), huge(400)} {
		for _, spec := range []any{
			seam.Binding{Kind: seam.Piping, Cord: big, Edge: big, Cloth: big, Bias: true}, seam.Binding{Kind: seam.DoubleBinding, Finished: big, Edge: big, Corners: 1000},
			seam.Row{Kind: seam.StayStitch, Allowance: big}, seam.Row{Kind: seam.TopStitch, Distance: big, Layer: big, Start: in(1, 1), End: big},
			seam.Roll{Apart: big, Angle: rad(6, 1)}, seam.Roll{Apart: in(1, 64), Angle: units.Turns(units.RatioOf(1, 4)), Length: big},
			seam.Favour{By: big, Bend: rad(-1, 3), Edge: big},
		} {
			if _, err := nountest.Planned(t, seam.Nouns(), spec); err != nil {
				nountest.Paths(t, err)
			}
		}
	}
}

// A row that touches what it must clear, and two angles that make a right one.
func TestOnTheLine(t *testing.T) {
	for _, at := range []units.Length{in(1, 4), in(3, 4)} {
		p, err := seam.Row{Kind: seam.TopStitch, Distance: at, Start: in(1, 4), End: in(3, 4)}.Plan()
		if err != nil || !p.Crosses.IsZero() || !p.Clear.IsZero() {
			t.Errorf("at %v: %+v, %v", at, p, err)
		}
	}
	far, err := seam.Row{Kind: seam.TopStitch, Distance: in(1, 8), Start: in(1, 4), End: in(3, 4)}.Plan()
	if err != nil || far.Clear != in(1, 8) {
		t.Errorf("short of it: %+v, %v", far, err)
	}
	cut, err := seam.Row{Kind: seam.StayStitch, Distance: in(1, 8), Trim: in(1, 8)}.Plan()
	if err != nil || cut.Caught {
		t.Errorf("trimmed to the row: %+v, %v", cut, err)
	}
}

// The strips bought make the strip needed, and one strip fewer does not.
func TestBindingStrips(t *testing.T) {
	r := rand.New(rand.NewPCG(16, 15))
	for range 500 {
		b := seam.Binding{Kind: seam.DoubleBinding, Finished: in(1+r.Int64N(8), 8), Bias: r.IntN(2) == 0, Ring: r.IntN(2) == 0,
			Edge: in(1+r.Int64N(4000), 8), Corners: r.IntN(5), Cloth: in(160+r.Int64N(400), 8), Join: in(1+r.Int64N(8), 16)}
		if !b.Ring {
			b.Ends = in(r.Int64N(8), 8)
		}
		p, err := b.Plan()
		if err != nil {
			t.Fatal(err)
		}
		if n, err := p.Spare.Sign(); err != nil || n < 0 {
			t.Errorf("%+v: spare %v", b, p.Spare)
		}
		joint := strip.Straight
		if b.Bias {
			joint = strip.Slanted
		}
		joined, err := strip.Binding{Joint: joint, Pieces: p.Pieces, Each: in(1000, 1), Allowance: b.Join}.Plan()
		if err != nil || in(1, 1_000_000).Less(joined.PerJoin.Sub(p.JoinLoss).Mid().Abs()) {
			t.Errorf("%+v: a join takes %v, of a strip %v, %v", b, p.JoinLoss, joined.PerJoin, err)
		}
		if p.Pieces > 1 {
			fewer := p.Spare.Sub(p.Each).Add(p.JoinLoss)
			if n, err := fewer.Sign(); err != nil || n >= 0 {
				t.Errorf("%+v: a strip fewer would do, spare %v", b, fewer)
			}
		}
	}
}

// A strip is sewn to a curve as the curve asks.
func TestBindingFollowsTheCurve(t *testing.T) {
	for _, c := range []struct {
		curve units.Angle
		says  string
	}{
		{rad(-7, 2), "stretch the strip a little"}, {rad(7, 2), "ease the strip in"}, {units.Angle{}, ""},
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
