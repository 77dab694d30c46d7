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

// The waistband of the innkeeper's wife: 28 in and an inch of ease, and a skirt of
// 80 in that is gathered onto it.
func ExampleBand_Plan() {
	p, err := gather.Band{
		Body: units.MustParse("28 in"), Ease: units.Give(units.MustParse("1 in")), Underlap: units.Give(units.MustParse("1 1/4 in")),
		Depth: units.MustParse("1 1/4 in"), Edge: units.MustParse("80 in"), Thickness: units.MustParse("0.5 mm"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("cut", p.CutLength, "by", p.CutDepth)
	fmt.Println(p.Spec.Taken, p.Fullness, "and the plies fill", p.Packed, "of the seam")
	for _, m := range p.Marks {
		fmt.Println("mark", m.Full, "to", m.Edge)
	}
	// Output:
	// cut 31 1/2 in by 3 3/4 in
	// gathered 2 22/29 and the plies fill 10/29 of the seam
	// mark 20 in to 7 1/4 in
	// mark 40 in to 14 1/2 in
	// mark 60 in to 21 3/4 in
}

func waistband() gather.Band {
	return gather.Band{Body: in("28"), Ease: units.Give(in("1")), Underlap: units.Give(in("1")), Depth: in("1 1/4"), Allowance: in("5/8"), Edge: in("30")}
}

func TestBandFaults(t *testing.T) {
	n := in("-1")
	for _, test := range []struct {
		why    string
		change func(*gather.Band)
		want   []string
		err    error
	}{
		{"nothing given", func(b *gather.Band) { *b = gather.Band{} }, []string{"body", "depth"}, fault.Missing},
		{"everything wrong at once", func(b *gather.Band) {
			*b = gather.Band{
				Tape: 9, Body: n, Ease: units.Give(n), Closed: n, Underlap: units.Give(n), Overlap: n, Depth: n, Lower: n, Allowance: n, Ends: n, Edge: n,
				Taken: 9, Count: math.MaxInt, Inside: n, Stitch: n, Thickness: n, Parts: -1,
			}
		}, []string{"tape", "body", "ease", "closed", "underlap", "overlap", "depth", "lower", "allowance", "ends", "edge", "taken", "count", "inside", "stitch", "thickness", "parts"}, fault.Sign},
		{"laps of a ring", func(b *gather.Band) { b.Ring, b.Overlap = true, in("1") }, []string{"underlap", "overlap"}, fault.Unused},
		{"ease of nobody", func(b *gather.Band) { b.Body, b.Closed = in("0"), in("29") }, []string{"ease"}, fault.Unused},
		{"closed of another length", func(b *gather.Band) { b.Closed = in("30") }, []string{"closed"}, fault.Conflict},
		{"closed tighter than the body", func(b *gather.Band) { b.Closed, b.Ease = in("27"), units.Given[units.Length]{} }, []string{"closed"}, fault.Range},
		{"an inner half of two pieces", func(b *gather.Band) { b.Faced, b.Inner = true, units.Give(in("1/2")) }, []string{"inner"}, fault.Unused},
		{"an inner half past the fold", func(b *gather.Band) { b.Inner = units.Give(in("1 1/2")) }, []string{"inner"}, fault.Range},
		{"narrower below", func(b *gather.Band) { b.Lower = in("28") }, []string{"lower"}, fault.Range},
		{"an edge that must be stretched", func(b *gather.Band) { b.Edge = in("28 3/4") }, []string{"edge"}, fault.Range},
		{"80 in onto 29 is no ease", func(b *gather.Band) { b.Edge, b.Taken = in("80"), gather.Eased }, []string{"taken"}, fault.Range},
		{"just more than can be eased", func(b *gather.Band) { b.Edge, b.Taken = in("31 1/32"), gather.Eased }, []string{"taken"}, fault.Range},
		{"nothing to take up", func(b *gather.Band) { b.Edge, b.Taken = in("29"), gather.Gathered }, []string{"taken"}, fault.Unused},
		{"pleats without a count", func(b *gather.Band) { b.Taken = gather.Pleated }, []string{"count"}, fault.Missing},
		{"a count of what", func(b *gather.Band) { b.Count = 3 }, []string{"taken"}, fault.Missing},
		{"a count of gathers", func(b *gather.Band) { b.Count, b.Taken = 3, gather.Gathered }, []string{"count"}, fault.Unused},
		{"the stitch of an eased edge", func(b *gather.Band) {
			b.Taken, b.Inside, b.Stitch, b.Thickness = gather.Eased, in("1/8"), in("1/8"), in("1/64")
		}, []string{"inside", "stitch", "thickness"}, fault.Unused},
		{"no room for the row", func(b *gather.Band) { b.Allowance, b.Edge = in("1/8"), in("60") }, []string{"allowance"}, fault.Range},
		{"no room for the plies", func(b *gather.Band) { b.Edge, b.Thickness = in("116"), units.MustParse("1.1 mm") }, []string{"thickness"}, fault.Range},
	} {
		b := waistband()
		test.change(&b)
		_, err := b.Plan()
		faulty(t, test.why, err, test.err, test.want)
	}
	// The limits themselves hold.
	for _, change := range []func(*gather.Band){
		func(b *gather.Band) { b.Edge, b.Taken = in("31"), gather.Eased },
		func(b *gather.Band) { b.Edge, b.Thickness = in("116"), units.MustParse("1 mm") },
		func(b *gather.Band) { b.Inner = units.Give(in("1 1/4")) },
		func(b *gather.Band) { b.Lower, b.Edge = in("29"), in("29") },
	} {
		b := waistband()
		change(&b)
		if p, err := b.Plan(); err != nil {
			t.Error(err)
		} else {
			check(t, "at the limit", p)
		}
	}
}

// TestBandProperties: what is taken up and the band come to the edge, the marks divide
// both sides alike, and a shaped band's edges are arcs of its angle.
func TestBandProperties(t *testing.T) {
	r := random{rand.New(rand.NewPCG(11, 4))}
	for range nountest.Rounds(3000) {
		b := gather.Band{
			Body: r.upTo(40), Ease: units.Give(r.upTo(3)), Underlap: units.Give(r.upTo(2)), Overlap: r.upTo(2), Depth: r.upTo(4), Allowance: r.upTo(1).Add(in("1/4")),
			Inner: units.Give(units.Length{}), Parts: 1 + r.IntN(12),
		}
		closed := b.Body.Add(b.Ease.Or(units.Length{}))
		b.Edge = closed.Add(r.upTo(30))
		if r.IntN(3) == 0 {
			b.Lower, b.Inner = closed.Add(r.upTo(6)), units.Given[units.Length]{}
			b.Edge = b.Lower.Add(r.upTo(30))
		}
		b.Taken = gather.TakeUp(2 + r.IntN(3))
		if b.Taken != gather.Gathered {
			b.Count = 1 + r.IntN(30)
		}
		p, err := b.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", b, err)
		}
		if p.Onto.Add(p.Surplus) != b.Edge || p.Onto.Scale(p.Fullness) != b.Edge || b.Count > 0 && p.PerTake.MulInt(int64(b.Count)) != p.Surplus {
			t.Fatalf("%+v: %v onto, %v to take up, %v each", b, p.Onto, p.Surplus, p.PerTake)
		}
		if p.CutLength.Sub(p.Finished) != p.Spec.Ends.MulInt(2) || p.Finished.Sub(closed) != p.Fastening.MulInt(2) {
			t.Fatalf("%+v: %v, %v", b, p.CutLength, p.Finished)
		}
		for k, m := range p.Marks {
			part := units.RatioOf(int64(k+1), int64(b.Parts))
			if m.Full != b.Edge.Scale(part) || m.Edge.Sub(b.Overlap) != p.Onto.Scale(part) {
				t.Fatalf("%+v: mark %d at %v", b, k, m)
			}
		}
		if !b.Lower.IsZero() {
			upper, _ := p.Turn.Arc(p.Inner).Exact()
			lower, _ := p.Turn.Arc(p.Outer).Exact()
			if upper != closed || lower != b.Lower {
				t.Fatalf("%+v: arcs of %v and %v", b, upper, lower)
			}
		}
		check(t, "", p)
	}
}
