package gather_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

// The bodice of the milkmaid, by a sample of 10 in that came out at 6.
func ExampleShirring_Plan() {
	p, err := gather.Shirring{
		Finished: units.MustParse("12 in"), Flat: units.MustParse("10 in"), Drawn: units.MustParse("6 in"),
		Ends: units.Give(units.MustParse("1/2 in")), Depth: units.MustParse("4 in"), Apart: units.MustParse("3/8 in"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("cut", p.Cut, "and sew", p.Rows, "rows")
	// Output: cut 21 in and sew 12 rows
}

func TestShirringFaults(t *testing.T) {
	n := in("-1")
	for _, test := range []struct {
		why  string
		s    gather.Shirring
		want []string
		err  error
	}{
		{"nothing given", gather.Shirring{}, []string{"finished", "depth"}, fault.Missing},
		{"everything wrong at once", gather.Shirring{Tape: 9, Finished: n, Flat: n, Drawn: n, Fullness: units.RatioOf(-1, 1), Ends: units.Give(n), Depth: n, Apart: n},
			[]string{"tape", "finished", "flat", "drawn", "fullness", "ends", "depth", "apart"}, fault.Sign},
		{"a sample that is not drawn in", gather.Shirring{Finished: in("9"), Flat: in("6"), Drawn: in("6"), Depth: in("4")}, []string{"drawn"}, fault.Range},
		{"a sample of which one width is known", gather.Shirring{Finished: in("9"), Flat: in("6"), Depth: in("4")}, []string{"drawn"}, fault.Missing},
		{"or the other", gather.Shirring{Finished: in("9"), Drawn: in("6"), Depth: in("4")}, []string{"drawn"}, fault.Unused},
		{"a fullness that the sample has not", gather.Shirring{Finished: in("9"), Flat: in("6"), Drawn: in("3"), Fullness: units.RatioOf(3, 1), Depth: in("4")}, []string{"fullness"}, fault.Conflict},
		{"a fullness of none", gather.Shirring{Finished: in("9"), Fullness: units.RatioOf(1, 1), Depth: in("4")}, []string{"fullness"}, fault.Range},
		{"a thousand rows", gather.Shirring{Finished: in("9"), Depth: in("4"), Apart: in("1/300")}, []string{"apart"}, fault.Range},
	} {
		_, err := test.s.Plan()
		faulty(t, test.why, err, test.err, test.want)
	}
}

// TestShirringProperties: the rows reach the depth and one fewer would not, and cloth of
// the width found draws in as the sample did.
func TestShirringProperties(t *testing.T) {
	r := random{rand.New(rand.NewPCG(3, 33))}
	for range nountest.Rounds(2000) {
		s := gather.Shirring{Finished: r.upTo(40), Drawn: r.upTo(9), Depth: r.upTo(12), Apart: r.upTo(1), Ends: units.Give(r.upTo(1))}
		s.Flat = s.Drawn.Add(r.upTo(9))
		p, err := s.Plan()
		if err != nil {
			continue
		}
		check(t, "", p)
		if p.LastRow.Less(s.Depth) || s.Depth.Cmp(p.LastRow.Sub(s.Apart)) <= 0 || p.Cloth.Scale(s.Drawn.Div(s.Flat)) != s.Finished {
			t.Fatalf("%+v: %d rows to %v, %v of cloth", s, p.Rows, p.LastRow, p.Cloth)
		}
	}
}
