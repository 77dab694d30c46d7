package seam_test

import (
	"math/rand/v2"
	"reflect"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

// someLength is a length as patterns have them, now and then an odd one, or none.
func someLength(r *rand.Rand) units.Length {
	switch r.IntN(6) {
	case 0:
		return units.Length{}
	case 1:
		return units.Millimetre.Of(r.Int64N(30))
	case 2:
		return units.Inch.Frac(r.Int64N(30), 7)
	}
	return units.Inch.Frac(r.Int64N(24), 16)
}

// specLengths are the lengths of a spec by name, in the order of its fields.
func specLengths(s *seam.Spec) []specLength {
	return []specLength{
		{"drafted", &s.Drafted}, {"draftedUnder", &s.DraftedUnder}, {"cut", &s.Cut}, {"cutUnder", &s.CutUnder}, {"first", &s.First},
		{"second", &s.Second}, {"take", &s.Take}, {"trim", &s.Trim}, {"trimUnder", &s.TrimUnder}, {"turned", &s.Turned}, {"strip", &s.Strip},
		{"cord", &s.Cord}, {"row", &s.Row}, {"thickness", &s.Thickness},
	}
}

type specLength struct {
	name string
	at   *units.Length
}

// someSpec is a spec of any kind, some of the fields that it reads given.
func someSpec(r *rand.Rand) seam.Spec {
	s := seam.Spec{Kind: seam.Kind(1 + r.IntN(int(seam.Graded))), Fraying: r.IntN(2) == 0}
	for _, l := range specLengths(&s) {
		if s.Kind.Reads(l.name) && l.name != "thickness" && r.IntN(3) == 0 {
			*l.at = someLength(r)
		}
	}
	switch s.Kind {
	case seam.UntrimmedFell, seam.Lapped, seam.LappedTurned:
		if !s.First.IsZero() {
			s.Thickness = in(1, 64)
		}
	default:
		if s.Kind.Reads("thickness") && r.IntN(3) == 0 {
			s.Thickness = in(r.Int64N(8), 64)
		}
	}
	if s.Kind.Reads("layers") && r.IntN(2) == 0 {
		s.Layers = r.IntN(seam.MaxLayers + 1)
	}
	if s.Kind.Reads("finish") {
		s.Finish = seam.Finish(r.IntN(4))
	}
	s.Aside = s.Kind.Reads("aside") && r.IntN(2) == 0
	return s
}

// holds checks what is true of every plan.
func holds(t *testing.T, given seam.Spec, p seam.Plan) {
	t.Helper()
	s := p.Spec
	for _, d := range []seam.Side{p.Upper, p.Under} {
		if d.Taken.Add(d.Drift) != d.Cut {
			t.Errorf("%+v: taken and drift are not what was cut", given)
		}
		if d.TrimMax.Less(d.TrimMin) || d.TrimMin.Sign() <= 0 {
			t.Errorf("%+v: side %+v", given, d)
		}
	}
	under := s.Take
	switch s.Kind {
	case seam.Lapped:
		under = s.Second
	case seam.UntrimmedFell:
		under = s.First.Add(s.Turned)
	}
	if p.Upper.Taken != s.Take || p.Under.Taken != under {
		t.Errorf("%+v: takes %v and %v", given, p.Upper.Taken, p.Under.Taken)
	}
	if p.Gain != p.Upper.Drift.Add(p.Under.Drift) || p.Finished.Sign() <= 0 || p.Plies < 2 || p.Rows < 0 || p.Rows > 2 {
		t.Errorf("%+v: %+v", given, p)
	}
	if s.Kind != seam.French && s.Take != s.First {
		t.Errorf("%+v: takes %v", given, s.Take)
	}
	good := true
	switch s.Kind {
	case seam.French:
		good = s.First.Add(s.Second) == s.Take && s.Trim.Less(s.Second) && !s.First.Less(s.Trim)
	case seam.FlatFelled, seam.MockFelled:
		good = s.Second.Add(p.Turned) == s.First && !s.Second.Less(p.Turned) && s.Trim.Less(s.Second)
	case seam.Bound:
		good = !s.First.Less(s.Second)
	case seam.TurnedStitched, seam.MockFrench:
		good = s.Second.Add(p.Turned) == s.Trim && !s.Second.Less(p.Turned) && p.Turned.Sign() > 0
	case seam.UntrimmedFell:
		good = !s.First.Less(p.Turned) && p.Turned.Sign() > 0
	case seam.Welt:
		good = s.Trim.Less(s.Second) && s.Second.Less(s.First)
	case seam.Lapped:
		good = s.Row.Less(s.First) && s.Row.Less(s.Second) && p.Turned == s.First
	case seam.LappedTurned:
		good = s.Turned.Less(s.Second) && s.Turned.Sign() > 0 && s.Turned.Add(s.Second.DivInt(2)) == s.First
	case seam.LappedRaw:
		good = s.Second == s.First.MulInt(2)
	case seam.Slot:
		good = s.Second.Less(s.Trim) && !s.Strip.Less(p.StripLeast)
	case seam.HongKong:
		good = s.Second.Less(s.Trim) && p.StripLeast.Less(s.Strip) && s.Second.Less(p.Wrapped)
	case seam.SelfBound:
		good = s.First == s.Turned.Add(s.Second.MulInt(2)) && s.Trim.Less(s.Second) && !s.First.Less(s.Trim.Add(s.Turned.MulInt(2)))
	case seam.Piped:
		good = s.Cord.Sign() > 0 && !p.StripCorded.IsZero()
	case seam.Graded:
		good = p.Grade(0) == s.Trim && p.Grade(s.Layers-1) == s.TrimUnder && p.Grade(1).Less(p.Grade(0)) && p.Grade(-1).IsZero() && p.Grade(s.Layers).IsZero()
	}
	if !good {
		t.Errorf("%+v: %+v", given, s)
	}
	// A solved spec is a fixed point, with nothing left to assume.
	again, err := s.Plan()
	if err != nil || again.Spec != s || len(again.Assumed) > 0 {
		t.Errorf("%+v: planned again %+v, %v", given, again, err)
	}
	again.Assumed = p.Assumed
	if again.Turn, again.StripCorded = p.Turn, p.StripCorded; !reflect.DeepEqual(again, p) {
		t.Errorf("%+v: planned again differs", given)
	}
	// What was given stays.
	was := specLengths(&given)
	for i, l := range specLengths(&s) {
		if !was[i].at.IsZero() && *was[i].at != *l.at {
			t.Errorf("%+v: %s was given and is changed: %+v", given, l.name, s)
		}
	}
	if err := p.Sheet().Check(); err != nil {
		t.Errorf("%+v: %v", given, err)
	}
}

func TestProperties(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 8))
	good := map[seam.Kind]int{}
	for range 60_000 {
		s := someSpec(r)
		p, err := s.Plan()
		if err != nil {
			faultPaths(t, err)
			continue
		}
		good[s.Kind]++
		holds(t, s, p)
	}
	for k := range seam.Kinds {
		if good[k] < 300 {
			t.Errorf("%v: only %d good seams", k, good[k])
		}
	}
}

// With the allowance alone no kind drifts, but the fell whose edges are offset:
// that takes unequal amounts by its nature, and drifts by nothing where they are
// cut for it.
func TestAllowanceAlone(t *testing.T) {
	for k := range seam.Kinds {
		for sixteenths := int64(5); sixteenths < 40; sixteenths++ {
			s := seam.Spec{Kind: k, Drafted: in(sixteenths, 16)}
			if k == seam.UntrimmedFell {
				s.DraftedUnder = in(sixteenths, 8)
			}
			p := planned(t, s)
			if !p.Upper.Drift.IsZero() || !p.Under.Drift.IsZero() {
				t.Errorf("%v of %d/16 in: drift %v and %v", k, sixteenths, p.Upper.Drift, p.Under.Drift)
			}
		}
	}
}

// Trimming never changes what a seam takes.
func TestTrimTakesNothing(t *testing.T) {
	for k := range seam.Kinds {
		if !k.Reads("trim") {
			continue
		}
		given := seam.Spec{Kind: k, Drafted: in(1, 1), First: in(5, 8)}
		a := planned(t, given)
		given.Trim = a.Spec.Trim.Sub(in(1, 64))
		b := planned(t, given)
		if a.Upper != (seam.Side{}) && (a.Upper.Drift != b.Upper.Drift || a.Under.Drift != b.Under.Drift || a.Gain != b.Gain) {
			t.Errorf("%v: the trim changes the drift", k)
		}
	}
}
