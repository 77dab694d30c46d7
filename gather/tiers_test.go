package gather_test

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

// The gypsy's skirt of the operetta: three tiers, each once and a half the one above.
func ExampleTiers_Plan() {
	p, err := gather.Tiers{
		Edge: units.MustParse("28 in"), Count: 3, Length: units.MustParse("24 in"), Grow: units.MustParse("1 in"),
		Allowance: units.MustParse("1/2 in"), Hem: units.MustParse("1 in"), Width: units.MustParse("44 in"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, t := range p.Tiers {
		fmt.Println(t.Strips, "strips of", t.Each, "by", t.Cut, "make", t.Round)
	}
	fmt.Println(p.Cloth, "of cloth")
	// Output:
	// 1 strips of 43 in by 8 in make 42 in
	// 2 strips of 32 1/2 in by 9 in make 63 in
	// 3 strips of 32 1/2 in by 10 1/2 in make 94 1/2 in
	// 57 1/2 in of cloth
}

func TestTiersFaults(t *testing.T) {
	n := in("-1")
	for _, test := range []struct {
		why    string
		change func(*gather.Tiers)
		want   []string
		err    error
	}{
		{"nothing given", func(s *gather.Tiers) { *s = gather.Tiers{} }, []string{"edge", "count", "length"}, fault.Missing},
		{"everything wrong at once", func(s *gather.Tiers) {
			*s = gather.Tiers{
				Tape: 9, Edge: n, Fullness: units.RatioOf(-1, 1), First: units.RatioOf(1, 2), Count: -1, Length: n, Depths: []units.Length{n},
				Allowance: n, Top: units.Give(n), Hem: n, Width: n, Join: units.Give(n),
			}
		}, []string{"tape", "edge", "fullness", "first", "count", "length", "depths[0]", "allowance", "top", "hem", "width", "join"}, fault.Sign},
		{"more tiers than anybody wears", func(s *gather.Tiers) { s.Count, s.Depths = 0, make([]units.Length, 51) }, append([]string{"depths"}, depths(50)...), fault.Range},
		{"another count than depths", func(s *gather.Tiers) { s.Depths = []units.Length{in("12"), in("12")} }, []string{"count"}, fault.Conflict},
		{"another length than depths", func(s *gather.Tiers) { s.Depths = []units.Length{in("8"), in("8"), in("9")} }, []string{"length"}, fault.Conflict},
		{"depths that grow otherwise", func(s *gather.Tiers) {
			s.Depths, s.Grow = []units.Length{in("7"), in("8"), in("9")}, in("2")
		}, []string{"grow"}, fault.Conflict},
		{"a tier of no depth", func(s *gather.Tiers) { s.Grow = in("8") }, []string{"grow"}, fault.Range},
		{"the joins of no strips", func(s *gather.Tiers) { s.Width, s.Join = in("0"), units.Give(in("1/2")) }, []string{"join"}, fault.Unused},
		{"cloth that the joins take", func(s *gather.Tiers) { s.Width, s.Join = in("1"), units.Give(in("1/2")) }, []string{"width"}, fault.Range},
		{"a thousand strips", func(s *gather.Tiers) { s.Width, s.Join = in("1/50"), units.Give(in("0")) }, []string{"width"}, fault.Range},
	} {
		s := gather.Tiers{Edge: in("28"), Count: 3, Length: in("24"), Width: in("44")}
		test.change(&s)
		_, err := s.Plan()
		faulty(t, test.why, err, test.err, test.want)
	}
}

// depths are the paths of so many depths.
func depths(n int) (paths []string) {
	for i := range n {
		paths = append(paths, fmt.Sprintf("depths[%d]", i))
	}
	return paths
}

// TestTiersProperties: the depths come to the length, the strips make their tier and
// fit the cloth, and depths alone give the same tiers.
func TestTiersProperties(t *testing.T) {
	r := random{rand.New(rand.NewPCG(7, 70))}
	for range nountest.Rounds(2000) {
		s := gather.Tiers{
			Edge: r.upTo(40), Fullness: units.RatioOf(r.Int64N(8)+8, 8), First: units.RatioOf(r.Int64N(8)+8, 8), Count: 1 + r.IntN(5), Length: r.upTo(30).Add(in("10")),
			Grow: units.Inch.Frac(r.Int64N(9)-4, 2), Hem: r.upTo(2), Top: units.Give(r.upTo(2)), Allowance: in("1/2"),
		}
		if r.IntN(2) == 0 {
			s.Width, s.Join = r.upTo(50).Add(in("10")), units.Give(units.Inch.Frac(r.Int64N(4), 4))
		}
		p, err := s.Plan()
		if err != nil {
			continue
		}
		check(t, "", p)
		length, cloth, sewn := units.Length{}, units.Length{}, s.Edge
		for i, tier := range p.Tiers {
			length, cloth = length.Add(tier.Depth), cloth.Add(tier.Cloth)
			if tier.Onto != sewn || i > 0 && tier.Depth.Sub(p.Tiers[i-1].Depth) != s.Grow {
				t.Fatalf("%+v: tier %d is %+v", s, i, tier)
			}
			sewn = tier.Round
			ends := s.Join.Or(units.Length{}).MulInt(2)
			if tier.Strips > 0 && (s.Width.Less(tier.Each) || tier.Each.Sub(ends).MulInt(int64(tier.Strips)) != tier.Round) {
				t.Fatalf("%+v: %d strips of %v for %v", s, tier.Strips, tier.Each, tier.Round)
			}
		}
		if length != s.Length || cloth != p.Cloth || sewn != p.Sweep || s.Edge.Scale(p.Fullness) != p.Sweep {
			t.Fatalf("%+v: %v long, %v of cloth, %v round", s, length, cloth, sewn)
		}
		part := p.Spec
		part.Count, part.Length, part.Grow = 0, units.Length{}, units.Length{}
		q, err := part.Plan()
		q.Spec.Grow = s.Grow
		if q.Assumed = p.Assumed; err != nil || !reflect.DeepEqual(q, p) {
			t.Fatalf("%+v\nis planned as %+v, %v", part, q, err)
		}
	}
}
