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

// The dancer's skirt of the village players: a whole circle on a waist of 28 in.
func ExampleCircleSkirt_Plan() {
	p, err := gather.CircleSkirt{
		Waist: units.MustParse("28 in"), Length: units.MustParse("22 in"), Hem: units.MustParse("1/4 in"), Width: units.MustParse("60 in"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("draw the waist with", p.Chalk, "and the hem with", p.ChalkOuter)
	for _, l := range p.Lays {
		fmt.Println(l.Pieces, "pieces:", l.Cloth, "of cloth, the skirt at most", l.Longest)
	}
	// Output:
	// draw the waist with 3 13/16 in and the hem with 26 11/16 in
	// 1 pieces: 53 3/8 in of cloth, the skirt at most 25 5/16 in
	// 2 pieces: 53 3/8 in of cloth, the skirt at most 54 11/16 in
	// 4 pieces: 54 5/8 in of cloth, the skirt at most 54 11/16 in
}

// A flounce of 4 in on the page's tunic, three times as full at its free edge.
func ExampleFlounce_Plan() {
	p, err := gather.Flounce{
		Edge: units.MustParse("30 in"), Depth: units.MustParse("4 in"), Fullness: units.RatioOf(3, 1), Allowance: units.MustParse("1/4 in"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Rings, "rings, drawn with", p.Cut, "and", p.Outer)
	refit, _, err := p.Refit.Round(units.MustParse("1/16 in"), units.Up)
	fmt.Println("or", refit, "to the seam line, so that nothing is left", err)
	// Output:
	// 3 rings, drawn with 1 3/4 in and 6 in
	// or 1 11/16 in to the seam line, so that nothing is left <nil>
}

func TestCircleFaults(t *testing.T) {
	n := in("-1")
	full := func() gather.CircleSkirt {
		return gather.CircleSkirt{Waist: in("28"), Length: in("20"), Allowance: in("5/8"), Width: in("60")}
	}
	for _, test := range []struct {
		why    string
		change func(*gather.CircleSkirt)
		want   []string
		err    error
	}{
		{"nothing given", func(s *gather.CircleSkirt) { *s = gather.CircleSkirt{} }, []string{"waist", "length"}, fault.Missing},
		{"everything wrong at once", func(s *gather.CircleSkirt) {
			*s = gather.CircleSkirt{
				Tape: 9, Waist: n, Ease: n, Part: units.RatioOf(-1, 2), Pieces: math.MaxInt, Length: n, Hem: n, Allowance: n, Side: units.Give(n), Step: n, Width: n,
			}
		}, []string{"tape", "waist", "ease", "part", "pieces", "length", "hem", "allowance", "side", "step", "width"}, fault.Sign},
		{"more circles than anybody wears", func(s *gather.CircleSkirt) { s.Part = units.RatioOf(9, 1) }, []string{"part"}, fault.Range},
		{"two circles in one piece", func(s *gather.CircleSkirt) { s.Part, s.Pieces = units.RatioOf(2, 1), 1 }, []string{"pieces"}, fault.Range},
		{"an allowance past the centre", func(s *gather.CircleSkirt) { s.Allowance = in("4 1/2") }, []string{"allowance"}, fault.Range},
		{"a mark past the radius", func(s *gather.CircleSkirt) { s.Step = in("4") }, []string{"allowance"}, fault.Range},
		{"a cloth too narrow", func(s *gather.CircleSkirt) { s.Width = in("25 1/32") }, []string{"width"}, fault.Range},
	} {
		s := full()
		test.change(&s)
		_, err := s.Plan()
		faulty(t, test.why, err, test.err, test.want)
	}
	s := full()
	s.Width = in("25 11/16") // 3 13/16 + 5/8 + 20 in, and the side of a quarter
	s.Side = units.Give(in("1 1/4"))
	if p, err := s.Plan(); err != nil || len(p.Lays) != 2 || p.Lays[1].Longest != in("20") {
		t.Errorf("%+v, %v", p.Lays, err)
	}
}

func TestFlounceFaults(t *testing.T) {
	n := in("-1")
	ring := func() gather.Flounce {
		return gather.Flounce{Edge: in("30"), Depth: in("4"), Radius: in("2"), Allowance: in("1/4")}
	}
	for _, test := range []struct {
		why    string
		change func(*gather.Flounce)
		want   []string
		err    error
	}{
		{"nothing given", func(f *gather.Flounce) { *f = gather.Flounce{} }, []string{"edge", "depth", "fullness"}, fault.Missing},
		{"everything wrong at once", func(f *gather.Flounce) {
			*f = gather.Flounce{
				Tape: 9, Edge: n, Depth: n, Fullness: units.RatioOf(-1, 1), Free: n, Radius: n, Rings: -1, Allowance: n, Side: units.Give(n), Hem: n,
			}
		}, []string{"tape", "edge", "depth", "fullness", "free", "radius", "rings", "rings", "allowance", "side", "hem"}, fault.Sign},
		{"a flounce that does not flare", func(f *gather.Flounce) { f.Fullness, f.Radius = units.RatioOf(1, 1), in("0") }, []string{"fullness"}, fault.Range},
		{"a free edge no longer than the seam", func(f *gather.Flounce) { f.Free, f.Radius = in("30"), in("0") }, []string{"free"}, fault.Range},
		{"a fullness and a radius that disagree", func(f *gather.Flounce) { f.Fullness = units.RatioOf(2, 1) }, []string{"radius"}, fault.Conflict},
		{"a free edge and a radius that disagree", func(f *gather.Flounce) { f.Free = in("80") }, []string{"radius"}, fault.Conflict},
		{"a free edge and a fullness that disagree", func(f *gather.Flounce) { f.Free, f.Fullness, f.Radius = in("80"), units.RatioOf(3, 1), in("0") }, []string{"free"}, fault.Conflict},
		{"rings beside a radius", func(f *gather.Flounce) { f.Rings = 3 }, []string{"rings"}, fault.Unused},
		{"an allowance past the centre", func(f *gather.Flounce) { f.Allowance = in("2") }, []string{"allowance"}, fault.Range},
		{"ends that take all of a ring", func(f *gather.Flounce) { f.Side = units.Give(in("6 3/10")) }, []string{"radius"}, fault.Range},
		{"more rings than may be", func(f *gather.Flounce) { f.Edge, f.Side = in("12600"), units.Give(in("0")) }, []string{"edge"}, fault.Range},
	} {
		f := ring()
		test.change(&f)
		_, err := f.Plan()
		faulty(t, test.why, err, test.err, test.want)
	}
}

// TestCircleProperties: the waist drawn comes to what is asked for but for less than a
// mark, and the hem to the waist and 2 pi times the part and the length, by a pi of
// forty digits.
func TestCircleProperties(t *testing.T) {
	pi, err := units.ParseRatio("3.1415926535897932384626433832795028841972")
	if err != nil {
		t.Fatal(err)
	}
	r := random{rand.New(rand.NewPCG(31, 4))}
	bound := units.Millimetre.Frac(1, 1_000_000)
	off := func(n units.Near, want units.Length) bool {
		lo, hi := n.Bounds()
		return hi.Add(bound).Less(want) || want.Less(lo.Sub(bound))
	}
	for range nountest.Rounds(2000) {
		s := gather.CircleSkirt{
			Waist: r.upTo(40).Add(in("20")), Ease: r.upTo(2), Part: units.RatioOf(r.Int64N(8)+1, 4), Length: r.upTo(40), Hem: r.upTo(2),
			Allowance: units.Inch.Frac(r.Int64N(8)+1, 16), Within: r.IntN(2) == 0, Pieces: 2 + r.IntN(6), Side: units.Give(units.Inch.Frac(r.Int64N(8), 8)),
		}
		if r.IntN(2) == 0 {
			s.Width = r.upTo(60).Add(in("80"))
		}
		p, err := s.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", s, err)
		}
		check(t, "", p)
		around := pi.Mul(s.Part).Mul(units.RatioOf(2, 1))
		arc := p.Seam
		if s.Within {
			arc = arc.Add(s.Side.Or(units.Length{}).MulInt(2 * int64(s.Pieces)))
		}
		if off(p.Radius, arc.Unscale(around)) || off(p.HemLine, p.Seam.Add(s.Length.Scale(around))) || off(p.CutEdge, arc.Sub(s.Allowance.Scale(around))) {
			t.Fatalf("%+v: radius %v, hem %v, cut edge %v", s, p.Radius, p.HemLine, p.CutEdge)
		}
		if off(p.Made.Add(p.Off), p.Seam) || !off(p.Off, p.Spec.Step.Scale(around)) && p.Off.Mid().Cmp(p.Spec.Step.Scale(around)) > 0 || p.Off.Mid().Sign() < 0 {
			t.Fatalf("%+v: made %v, off %v", s, p.Made, p.Off)
		}
		if p.ChalkOuter.Sub(p.Chalk) != units.Sum(s.Allowance, s.Length, s.Hem) {
			t.Fatalf("%+v: from %v to %v", s, p.Chalk, p.ChalkOuter)
		}
		for _, l := range p.Lays {
			if l.Across*l.Rows < l.Pieces || l.Longest.Less(s.Length) && s.Part == units.RatioOf(1, 1) && l.Pieces == 1 {
				t.Fatalf("%+v: %+v", s, l)
			}
		}
	}
}

// TestFlounceProperties: what is given of a flounce follows from what it gives, its
// arcs are the two edges, and the rings are enough and none is too many.
func TestFlounceProperties(t *testing.T) {
	r := random{rand.New(rand.NewPCG(8, 15))}
	for range nountest.Rounds(2000) {
		f := gather.Flounce{Edge: r.upTo(90), Depth: r.upTo(12), Radius: r.upTo(9).Add(in("1")), Allowance: in("1/4"), Side: units.Give(units.Inch.Frac(r.Int64N(5), 8)), Hem: r.upTo(1)}
		p, err := f.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", f, err)
		}
		check(t, "", p)
		inner, _ := p.Turn.Arc(f.Radius).Exact()
		outer, _ := p.Turn.Arc(f.Radius.Add(f.Depth)).Exact()
		if inner != f.Edge || outer != p.Spec.Free {
			t.Fatalf("%+v: arcs of %v and %v", f, inner, outer)
		}
		if left, err := p.Left.Sign(); err != nil || left < 0 {
			t.Fatalf("%+v: %v left, %v", f, p.Left, err)
		}
		if c, err := p.Left.Cmp(p.Each); err != nil || c >= 0 {
			t.Fatalf("%+v: %d rings, and %v left of %v", f, p.Rings, p.Left, p.Each)
		}
		for _, other := range []gather.Flounce{{Fullness: p.Spec.Fullness}, {Free: p.Spec.Free}, {Fullness: p.Spec.Fullness, Free: p.Spec.Free, Radius: f.Radius}} {
			other.Edge, other.Depth, other.Allowance, other.Side, other.Hem = f.Edge, f.Depth, f.Allowance, f.Side, f.Hem
			other.Tape = p.Spec.Tape
			if q, err := other.Plan(); err != nil || q.Spec != p.Spec {
				t.Fatalf("%+v\nis planned as %+v, %v", other, q.Spec, err)
			}
		}
		whole := gather.Flounce{Edge: f.Edge, Depth: f.Depth, Rings: p.Rings, Allowance: in("1/1000"), Side: f.Side}
		if q, err := whole.Plan(); err != nil || q.Radius != p.Refit {
			t.Fatalf("%+v: %d whole rings of %v, not %v, %v", f, p.Rings, q.Radius, p.Refit, err)
		}
	}
}
