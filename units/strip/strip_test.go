package strip_test

import (
	"math"
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/strip"
)

// Of pieces, each and least two give the third.
func TestSolved(t *testing.T) {
	for _, test := range []struct {
		why   string
		spec  strip.Spec
		n     int
		each  string
		spare string
	}{
		{"pieces from each", strip.Spec{Each: in("45"), Allowance: give("1/2"), Least: in("100")}, 3, "45", "33"},
		{"exactly enough is enough", strip.Spec{Each: in("45"), Allowance: give("1/2"), Least: in("89")}, 2, "45", "0"},
		{"one does, though a join would take all of it", strip.Spec{Each: in("1"), Allowance: give("1/2"), Least: in("3/4")}, 1, "1", "1/4"},
		{"a ring of one piece", strip.Spec{Each: in("45"), Allowance: give("1/2"), Least: in("44"), Ring: true}, 1, "45", "0"},
		{"a ring has one join more", strip.Spec{Each: in("45"), Allowance: give("1/2"), Least: in("89"), Ring: true}, 3, "45", "43"},
		{"each from pieces", strip.Spec{Pieces: 3, Allowance: give("1/2"), Ends: in("1/2"), Least: in("33 3/4")}, 3, "12 1/4", "0"},
		{"each in thirds", strip.Spec{Pieces: 3, Least: in("10")}, 3, "3 1/3", "0"},
		{"one piece and its ends", strip.Spec{Pieces: 1, Allowance: give("5"), Ends: in("1/2"), Least: in("3")}, 1, "4", "0"},
		{"all three agree", strip.Spec{Pieces: 3, Each: in("12 1/4"), Allowance: give("1/2"), Least: in("30")}, 3, "12 1/4", "4 3/4"},
		{"nothing wanted", strip.Spec{Pieces: 2, Each: in("4")}, 2, "4", "0"},
		// Of two pieces each loses one allowance; a third would lose two, which it has not.
		{"two pieces longer than one join", strip.Spec{Pieces: 2, Each: in("24 7/8"), Allowance: give("14"), Least: in("21 3/4")}, 2, "24 7/8", "0"},
		{"each of two such", strip.Spec{Pieces: 2, Allowance: give("14"), Least: in("21 3/4")}, 2, "24 7/8", "0"},
		{"one of them makes more than two", strip.Spec{Each: in("24 7/8"), Allowance: give("14"), Ends: in("1"), Least: in("19 3/4")}, 1, "24 7/8", "3 1/8"},
		{"two make more than one, a third would be all joins", strip.Spec{Each: in("21 1/2"), Allowance: give("10 1/2"), Least: in("22")}, 2, "21 1/2", "0"},
		{"lengths far beyond any cloth are exact", strip.Spec{Pieces: strip.MaxPieces, Least: in("1" + strings.Repeat("0", 300))}, strip.MaxPieces, "1" + strings.Repeat("0", 296), "0"},
	} {
		p, err := test.spec.Plan()
		if err != nil || p.Spec.Pieces != test.n || p.Spec.Each != in(test.each) || p.Spare != in(test.spare) {
			t.Errorf("%s: %d of %v, spare %v, want %d of %v, spare %v, %v", test.why, p.Spec.Pieces, p.Spec.Each, p.Spare, test.n, test.each, test.spare, err)
		}
	}
}

// A join of which nothing is said takes nothing, and the plan says that it assumed so;
// one that is given as nothing is not assumed, nor where nothing is joined.
func TestAllowanceAssumed(t *testing.T) {
	for _, test := range []struct {
		spec strip.Spec
		want []string
	}{
		{strip.Spec{Pieces: 2, Each: in("9")}, []string{"allowance"}},
		{strip.Spec{Pieces: 2, Each: in("9"), Allowance: give("0")}, nil},
		{strip.Spec{Pieces: 1, Each: in("9")}, nil},
	} {
		if p, err := test.spec.Plan(); err != nil || !reflect.DeepEqual(p.Assumed, test.want) {
			t.Errorf("%+v assumes %v, %v", test.spec, p.Assumed, err)
		}
	}
}

func TestFaults(t *testing.T) {
	for _, test := range []struct {
		spec  strip.Spec
		paths string
		kind  fault.Kind
	}{
		{strip.Spec{}, "pieces each", fault.Missing},
		{strip.Spec{Least: in("9")}, "pieces each", fault.Missing},
		{strip.Spec{Pieces: 2}, "each", fault.Missing},
		{strip.Spec{Each: in("9")}, "pieces", fault.Missing},
		{strip.Spec{Pieces: -1, Each: in("-1"), Allowance: give("-1"), Ends: in("-1"), Ring: true, Least: in("-1")},
			"pieces each allowance ends ends least", fault.Sign},
		{strip.Spec{Pieces: 2, Each: in("9"), Ends: in("1"), Ring: true}, "ends", fault.Unused},
		{strip.Spec{Pieces: strip.MaxPieces + 1, Each: in("1")}, "pieces", fault.Range},
		{strip.Spec{Pieces: math.MaxInt, Each: in("1")}, "pieces", fault.Range},
		{strip.Spec{Pieces: math.MinInt, Each: in("1"), Least: in("1")}, "pieces", fault.Range},
		{strip.Spec{Each: in("1"), Least: in("10001")}, "least", fault.Range},
		{strip.Spec{Each: in("1"), Least: in("1" + strings.Repeat("0", 300))}, "least", fault.Range},
		{strip.Spec{Pieces: 3, Each: in("1"), Allowance: give("1/2")}, "each", fault.Range},
		{strip.Spec{Each: in("1"), Allowance: give("1"), Least: in("5")}, "each", fault.Range},
		{strip.Spec{Each: in("24 7/8"), Allowance: give("14"), Least: in("40")}, "each", fault.Range},
		{strip.Spec{Pieces: 2, Each: in("24 7/8"), Allowance: give("14"), Ring: true}, "each", fault.Range},
		{strip.Spec{Pieces: 1, Each: in("1"), Allowance: give("1/2"), Ring: true}, "each", fault.Range},
		{strip.Spec{Pieces: 1, Each: in("1"), Ends: in("1/2")}, "each", fault.Range},
		{strip.Spec{Pieces: 20, Each: in("1.1"), Allowance: give("1/2"), Ends: in("1")}, "ends", fault.Range},
		{strip.Spec{Pieces: 3, Allowance: give("1"), Least: in("1")}, "least", fault.Range},
		{strip.Spec{Pieces: 2, Each: in("9"), Least: in("19")}, "least", fault.Conflict},
	} {
		nountest.Refused(t, strip.Nouns(), test.spec, test.paths, test.kind)
	}
}

// Strips of random amounts are the same as those laid out piece by piece.
func TestLaidOut(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 25))
	planned := 0
	for range nountest.Rounds(5000) {
		s := strip.Spec{Each: length(r, 60), Allowance: units.Give(length(r, 1)), Ring: r.IntN(2) == 0, Least: length(r, 900)}
		if !s.Ring && r.IntN(2) == 0 {
			s.Ends = length(r, 1)
		}
		p, err := nountest.Planned(t, strip.Nouns(), s)
		if err != nil {
			continue
		}
		planned++
		laid(t, p.(strip.Plan))
	}
	if planned < 100 {
		t.Errorf("only %d strips could be planned", planned)
	}
}

// laid lays the pieces out: each begins where the one before ended, less the join.
func laid(t *testing.T, p strip.Plan) {
	t.Helper()
	s, allowance, n := p.Spec, p.Spec.Allowance.Or(units.Length{}), p.Spec.Pieces
	at := s.Ends.Neg()
	if s.Ring {
		at = allowance.Neg() // the first piece has a seam at its start too
	}
	for k := range n {
		at = at.Add(s.Each)
		if k < p.Joins {
			at = at.Sub(allowance)
			if p.Places[k] != at {
				t.Fatalf("%+v: join %d at %v, laid out %v", s, k, p.Places[k], at)
			}
		}
		if k < n-1 {
			at = at.Sub(allowance)
		}
	}
	if !s.Ring {
		at = at.Sub(s.Ends)
	}
	if p.Sewn != at || p.Sewn.Less(s.Least) || p.Spare != p.Sewn.Sub(s.Least) {
		t.Fatalf("%+v: %v long with %v to spare, laid out %v", s, p.Sewn, p.Spare, at)
	}
	if n > 1 {
		fewer := s
		fewer.Pieces, fewer.Least = n-1, units.Length{}
		if q, err := fewer.Plan(); err == nil && !q.Sewn.Less(s.Least) {
			t.Fatalf("%+v: one piece less would do", s)
		}
	}
	back := s
	back.Each, back.Least = units.Length{}, p.Sewn
	if q, err := back.Plan(); err != nil || q.Spec.Each != s.Each {
		t.Fatalf("%+v: back to each %v, %v", s, q.Spec.Each, err)
	}
}

// length is a length at random, of at most so many inches.
func length(r *rand.Rand, most int64) units.Length {
	dens := []int64{1, 2, 3, 7, 8, 16, 25, 127}
	return units.Inch.Frac(r.Int64N(most*8)+1, dens[r.IntN(len(dens))])
}
