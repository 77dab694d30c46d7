package seam_test

import (
	"math/rand/v2"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/noun/nountest"
)

// What was given stays as it was, what a seam takes and its drift are what was cut, the
// sheet comes out, and the solved seam plans to the same.
func TestProperties(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 8))
	good := map[string]int{}
	for range max(1_200, nountest.Rounds(60_000)) {
		s := someSeam(r)
		p, err := s.Plan()
		if err != nil {
			nountest.Paths(t, err)
			continue
		}
		good[s.Kind()]++
		for _, d := range []seam.Side{p.Upper, p.Under} {
			if d.Taken.Add(d.Drift) != d.Cut || d.TrimMax.Less(d.TrimMin) || d.TrimMin.Sign() <= 0 || d.Left.Sign() <= 0 || d.Taken.Less(d.Left) {
				t.Errorf("%+v: side %+v", s, d)
			}
		}
		solved := map[string]any{}
		for key, value := range noun.Values(p.Spec.Seam) {
			solved[key] = value
		}
		for key, value := range noun.Values(s.Seam) {
			if l, ok := value.(units.Length); ok && !l.IsZero() && solved[key] != value {
				t.Errorf("%+v: %s was given and is changed to %v", s, key, solved[key])
			}
		}
		if err := p.Sheet().Check(); err != nil {
			t.Errorf("%+v: %v", s, err)
		}
		nountest.Solved(t, p)
	}
	for s := range seam.Kinds() {
		if good[s.Kind()] < 5 {
			t.Errorf("%v: only %d good seams", s.Kind(), good[s.Kind()])
		}
	}
}

// With the allowance alone no kind drifts, but the fell whose edges are offset:
// that takes unequal amounts by its nature, and drifts by nothing where they are
// cut for it.
func TestAllowanceAlone(t *testing.T) {
	for s := range seam.Kinds() {
		for sixteenths := int64(5); sixteenths < 40; sixteenths++ {
			plies := seam.Allowance{Drafted: in(sixteenths, 16)}
			if _, offset := s.Seam.(seam.UntrimmedFell); offset {
				plies.DraftedUnder = in(sixteenths, 8)
			}
			p := planned(t, s.With(plies))
			if !p.Upper.Drift.IsZero() || !p.Under.Drift.IsZero() {
				t.Errorf("%v of %d/16 in: drift %v and %v", s.Kind(), sixteenths, p.Upper.Drift, p.Under.Drift)
			}
		}
	}
}

// Trimming never changes what a seam takes, and Taking makes it take as much as is asked.
func TestTaking(t *testing.T) {
	for _, s := range []seam.Seam{
		seam.Plain{Trim: in(1, 4)}, seam.FlatFelled{Trim: in(3, 32)}, seam.MockFelled{Trim: in(3, 32)}, seam.Bound{Trim: in(3, 8)}, seam.TurnedStitched{Trim: in(1, 2)},
		seam.MockFrench{Trim: in(1, 2)}, seam.Welt{Trim: in(1, 8)}, seam.Slot{Trim: in(1, 2)}, seam.Hairline{Trim: in(1, 4)}, seam.HongKong{Trim: in(1, 2)},
		seam.SelfBound{Trim: in(3, 32)}, seam.Piped{Trim: in(1, 4)}, seam.Graded{Widest: in(3, 8)}, seam.French{Trim: in(1, 16)}, seam.Lapped{}, seam.LappedTurned{}, seam.LappedRaw{},
	} {
		if p := planned(t, s); !p.Gain.IsZero() {
			t.Errorf("%+v drifts by %v", s, p.Gain)
		}
		for _, each := range []units.Length{in(3, 8), in(1, 2), in(3, 4)} {
			q, ok := s.Taking(each)
			if !ok {
				t.Errorf("%+v cannot take %v", s, each)
			} else if p := planned(t, q); p.Upper.Taken != each || p.Under.Taken != each {
				t.Errorf("%+v takes %v and %v, want %v", q, p.Upper.Taken, p.Under.Taken, each)
			}
		}
		for _, each := range []units.Length{{}, in(-1, 8)} {
			if q, ok := s.Taking(each); ok {
				t.Errorf("%+v takes %v: %+v", s, each, q)
			}
		}
	}
	if _, ok := (seam.UntrimmedFell{}).Taking(in(1, 4)); ok {
		t.Error("both plies of a fell with offset edges take alike")
	}
	// Of two passes a wider take widens the first, a narrower one narrows the second.
	french := seam.French{First: in(3, 8), Second: in(1, 4)}
	for each, want := range map[units.Length]seam.French{
		in(3, 4): {First: in(1, 2), Second: in(1, 4)}, in(9, 16): {First: in(3, 8), Second: in(3, 16)}, in(3, 8): {First: in(1, 8), Second: in(1, 4)},
	} {
		if got, ok := french.Taking(each); !ok || got != want {
			t.Errorf("taking %v: %+v, want %+v", each, got, want)
		}
	}
}
