package seam_test

import (
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

// A thick ply is drawn by the middle of its cloth: level pieces, and half rounds
// from one level to another. What the seam takes of it is measured on the drawing,
// the half rounds by polygons inside and outside of them.
type thick struct {
	t      units.Length
	lo, hi units.Length // how long the middle is, at least and at most
}

// flat adds a piece that is measured before it is folded.
func (k *thick) flat(l units.Length) { k.lo, k.hi = k.lo.Add(l), k.hi.Add(l) }

// fold goes half round with so many plies inside. Before and after are measured
// from the outer face of the fold; each piece ends where the half round begins.
func (k *thick) fold(plies int64, pieces ...units.Length) {
	radius := k.t.MulInt(plies + 1).DivInt(2)
	outer := radius.Add(k.t.DivInt(2))
	for _, p := range pieces {
		k.flat(p.Sub(outer))
	}
	lo, hi := halfRound()
	k.lo, k.hi = k.lo.Add(radius.Scale(lo)), k.hi.Add(radius.Scale(hi))
}

// halfRound is a half round of radius 1, by the chords and the tangents of 4 x 64
// parts: a quarter is walked by the tangent of half of its angle, from 0 to 1.
func halfRound() (lo, hi units.Ratio) {
	const parts = 64
	one := units.RatioOf(1, 1)
	for k := range int64(parts) {
		u, v := units.RatioOf(k, parts), units.RatioOf(k+1, parts)
		half := v.Sub(u).Quo(one.Add(u.Mul(v))) // the tangent of half of the angle between
		hi = hi.Add(half.Add(half))
		// A chord is 2 half / root of (1 + half x half), and that root less than 1 + half x half / 2.
		lo = lo.Add(half.Add(half).Quo(one.Add(half.Mul(half).Quo(units.RatioOf(2, 1)))))
	}
	grid := units.RatioOf(1, 1<<30)
	lo, _ = lo.Round(grid, units.Down)
	hi, _ = hi.Round(grid, units.Up)
	return lo.Add(lo), hi.Add(hi)
}

// drawThick draws the two plies of a seam from the raw edge to where it lies.
func drawThick(p seam.Plan) (upper, under thick, ok bool) {
	thick := p.Spec.Plies().Thickness
	upper.t, under.t = thick, thick
	switch s := p.Spec.Seam.(type) {
	case seam.French:
		// The first row is sewn on flat cloth; from there round, and back to the second.
		upper.flat(s.First)
		upper.fold(0, s.Second)
		under = upper
	case seam.UntrimmedFell:
		// The under ply is turned over the raw edge, which meets the fold inside.
		under.flat(s.Turned)
		under.fold(1, s.Width)
		upper.flat(s.Width.Sub(thick.MulInt(3).DivInt(2)))
	case seam.Lapped:
		// From the raw edge to the fold, and along the face back to above the fold.
		upper.fold(0, s.Turned, units.Length{})
		under.flat(s.Lap)
	case seam.LappedTurned:
		upper.fold(0, s.Turned, s.Lap.DivInt(2))
		under = upper
	default:
		return upper, under, false
	}
	return upper, under, true
}

// TestTurnDrawn: what a plan says that folds take is what the drawing takes beside
// Taken, and none of some wrong figures is.
func TestTurnDrawn(t *testing.T) {
	inside := func(taken units.Length, turn units.Near, drawn thick) bool {
		lo, hi := turn.Plus(taken).Bounds()
		return !hi.Less(drawn.lo) && !drawn.hi.Less(lo)
	}
	for _, s := range []seam.Seam{
		seam.French{First: in(3, 16), Second: in(1, 4)}, seam.French{Allowance: seam.Allowance{Cut: in(3, 4)}, First: in(3, 8), Second: in(1, 4)},
		seam.UntrimmedFell{}, seam.UntrimmedFell{Width: in(3, 8), Turned: in(1, 4)},
		seam.Lapped{}, seam.Lapped{Turned: in(1, 2), Lap: in(5, 8)},
		seam.LappedTurned{}, seam.LappedTurned{Turned: in(1, 8), Lap: in(1, 4)},
	} {
		flat := planned(t, s)
		if !flat.Turn.IsZero() || !flat.TurnUnder.IsZero() {
			t.Errorf("%+v: a turn of cloth without a thickness", s)
		}
		for _, thick := range []units.Length{in(1, 125), in(1, 32), in(1, 16)} {
			plies := s.Plies()
			plies.Thickness = thick
			p := planned(t, on(s, plies))
			upper, under, ok := drawThick(p)
			if !ok || !inside(p.Upper.Taken, p.Turn, upper) || !inside(p.Under.Taken, p.TurnUnder, under) {
				t.Errorf("%v of %v: turn %v and %v, drawn %v to %v and %v to %v", p.Spec.Kind(), thick, p.Turn, p.TurnUnder, upper.lo, upper.hi, under.lo, under.hi)
			}
			pi := units.Pi().Of(thick)
			for _, wrong := range []units.Near{
				{}, pi, pi.DivInt(2), pi.DivInt(4), pi.DivInt(2).Plus(thick.Neg()), pi.DivInt(2).Plus(thick.MulInt(-2)), pi.Plus(thick.MulInt(3).DivInt(-2)), units.Exactly(thick),
			} {
				if c, err := wrong.Cmp(p.Turn); err == nil && c != 0 && inside(p.Upper.Taken, wrong, upper) {
					t.Errorf("%v: a turn of %v would not be found", p.Spec.Kind(), wrong)
				}
			}
			// The sheet says it, and the sums of the sheet hold.
			if sh := p.Sheet(); sh.Check() != nil || len(sh.Lines) <= len(flat.Sheet().Lines) {
				t.Errorf("%v: the sheet has no line for the turn: %v", p.Spec.Kind(), sh.Check())
			}
		}
	}
}

// TestTurnKinds: the folds of the kinds without a turn lie beyond a row sewn flat, in the
// allowance.
func TestTurnKinds(t *testing.T) {
	for s := range seam.Kinds() {
		switch p := planned(t, s.With(seam.Allowance{Thickness: in(1, 64)})); s.Seam.(type) {
		case seam.French, seam.UntrimmedFell, seam.Lapped, seam.LappedTurned:
			if p.Turn.IsZero() {
				t.Errorf("%v: no turn", s.Kind())
			}
		case seam.LappedRaw: // has no fold
		default:
			// After the swatch, the first thing at the machine is the row that makes the seam.
			if st := p.Sheet().Steps[1]; s.Kind() != "piped" && st.From != "the raw edge" && st.From != "the raw edges" || st.At.IsZero() || !p.Turn.IsZero() {
				t.Errorf("%v: a turn of %v; the first step is %q, from %q", s.Kind(), p.Turn, st.Do, st.From)
			}
		}
	}
}
