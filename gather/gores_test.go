package gather_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

// The skirt of the squire's daughter, in six gores turned top to tail on the cloth.
func ExampleGores_Plan() {
	p, err := gather.Gores{
		Count: 6, Waist: units.MustParse("28 in"), Sweep: units.MustParse("82 in"), Length: units.MustParse("30 in"), Hem: units.MustParse("2 in"),
		Allowance: units.Give(units.MustParse("1/2 in")), Width: units.MustParse("44 in"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.PerRow, "gores side by side,", p.Rows, "rows,", p.Cloth, "of cloth")
	fmt.Println("each edge stands out by", p.Slant)
	// Output:
	// 3 gores side by side, 2 rows, 65 in of cloth
	// each edge stands out by 4 1/2 in
}

// Four quarter circles in the hem of the same skirt.
func ExampleGodet_Plan() {
	p, err := gather.Godet{Slit: units.MustParse("10 in"), Angle: units.Turns(units.RatioOf(1, 4)), Count: 4}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	mark, _, err := p.All.Round(units.MustParse("1/8 in"), units.HalfAway)
	fmt.Println("the hem grows by about", mark, err)
	// Output: the hem grows by about 62 7/8 in <nil>
}

func TestGoresFaults(t *testing.T) {
	n := in("-1")
	for _, test := range []struct {
		why    string
		change func(*gather.Gores)
		want   []string
		err    error
	}{
		{"nothing given", func(s *gather.Gores) { *s = gather.Gores{} }, []string{"count", "waist", "sweep", "length"}, fault.Missing},
		{"everything wrong at once", func(s *gather.Gores) {
			*s = gather.Gores{Tape: 9, Count: math.MaxInt, Waist: n, Hip: n, Sweep: n, Front: n, Length: n, Hem: n, Allowance: units.Give(n), Width: n}
		}, []string{"tape", "count", "waist", "hip", "sweep", "front", "length", "hem", "allowance", "width"}, fault.Sign},
		{"narrower at the hem", func(s *gather.Gores) { s.Sweep = in("27") }, []string{"sweep"}, fault.Range},
		{"all of it in front", func(s *gather.Gores) { s.Front = in("80") }, []string{"front"}, fault.Range},
		{"a front that leaves too little", func(s *gather.Gores) { s.Front = in("57") }, []string{"front"}, fault.Range},
		{"cloth that no gore fits", func(s *gather.Gores) { s.Width = in("14") }, []string{"width"}, fault.Range},
	} {
		s := gather.Gores{Count: 6, Waist: in("28"), Sweep: in("80"), Length: in("30"), Width: in("44")}
		test.change(&s)
		_, err := s.Plan()
		faulty(t, test.why, err, test.err, test.want)
	}
	whole := units.Turns(units.RatioOf(1, 1))
	for _, test := range []struct {
		why  string
		g    gather.Godet
		want []string
		err  error
	}{
		{"nothing given", gather.Godet{}, []string{"slit", "angle"}, fault.Missing},
		{"everything wrong at once", gather.Godet{Tape: 9, Slit: n, Angle: whole.Neg(), Added: n, Count: -1, Hem: n, Allowance: n}, []string{"tape", "slit", "angle", "added", "count", "hem", "allowance"}, fault.Sign},
		{"more than a turn", gather.Godet{Slit: in("10"), Angle: units.Turns(units.RatioOf(9, 8))}, []string{"angle"}, fault.Range},
		{"more than goes round the point", gather.Godet{Slit: in("10"), Added: in("63")}, []string{"added"}, fault.Range},
		{"an angle and another arc", gather.Godet{Slit: in("10"), Angle: rad(1, 1), Added: in("11")}, []string{"added"}, fault.Conflict},
		{"an angle and an arc beside it", gather.Godet{Slit: in("10"), Angle: units.Turns(units.RatioOf(1, 4)), Added: in("15 3/4")}, []string{"added"}, fault.Conflict},
	} {
		_, err := test.g.Plan()
		faulty(t, "godet: "+test.why, err, test.err, test.want)
	}
}

// TestGoresProperties: the gores come to waist, hip and hem, and those of a row fit the
// cloth as their corners lie, turned or not, where one more would not.
func TestGoresProperties(t *testing.T) {
	r := random{rand.New(rand.NewPCG(17, 3))}
	for range nountest.Rounds(2000) {
		s := gather.Gores{
			Count: 2 + r.IntN(10), Waist: r.upTo(40), Length: r.upTo(40), Hem: r.upTo(2), Allowance: units.Give(units.Inch.Frac(r.Int64N(8), 8)), Width: r.upTo(60).Add(in("20")), Nap: r.IntN(2) == 0,
		}
		s.Sweep = s.Waist.Add(r.upTo(90))
		p, err := s.Plan()
		if err != nil {
			continue
		}
		check(t, "", p)
		n := int64(s.Count)
		if p.WaistEach.MulInt(n) != s.Waist || p.SweepEach.MulInt(n) != s.Sweep || p.Slant.MulInt(2).Add(p.WaistEach) != p.SweepEach {
			t.Fatalf("%+v: %v, %v, %v", s, p.WaistEach, p.SweepEach, p.Slant)
		}
		// The middles of two neighbours are half of top and bottom apart, or a bottom.
		row := func(k int) units.Length {
			apart := p.Top.Add(p.Bottom).DivInt(2)
			if s.Nap {
				apart = p.Bottom
			}
			return apart.MulInt(int64(k - 1)).Add(p.Bottom)
		}
		if row(p.PerRow) != p.RowWidth || s.Width.Less(p.RowWidth) || p.PerRow < s.Count && row(p.PerRow+1).Cmp(s.Width) <= 0 || p.PerRow*p.Rows < s.Count {
			t.Fatalf("%+v: %d gores in %v", s, p.PerRow, p.RowWidth)
		}
		low, _ := p.Drop.Bounds()
		if low.Sign() < 0 {
			t.Fatalf("%+v: the seam is %v shorter", s, p.Drop)
		}
	}
}
