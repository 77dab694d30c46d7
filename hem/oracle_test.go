package hem_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

// A run is a straight stretch of cloth between two folds, seen edge-on: the height
// above the finished edge at its two ends.
type run struct{ from, to units.Length }

// fold lays a strip of cloth in zigzag: it starts at a height, goes up or down, and
// turns back after each of the lengths.
func fold(start units.Length, up bool, lengths ...units.Length) []run {
	var runs []run
	at := start
	for _, l := range lengths {
		to := at.Add(l)
		if !up {
			to = at.Sub(l)
		}
		runs = append(runs, run{at, to})
		at, up = to, !up
	}
	return runs
}

// plies is the most layers that lie one on another anywhere.
func plies(runs []run) int {
	most := 0
	for _, a := range runs {
		for _, at := range [2]units.Length{a.from, a.to} {
			// Just above and just below each end.
			above, below := 0, 0
			for _, r := range runs {
				lo, hi := r.from.Min(r.to), r.from.Max(r.to)
				if !at.Less(lo) && at.Less(hi) {
					above++
				}
				if lo.Less(at) && !hi.Less(at) {
					below++
				}
			}
			most = max(most, above, below)
		}
	}
	return most
}

func total(runs []run) units.Length {
	var sum units.Length
	for _, r := range runs {
		sum = sum.Add(r.to.Sub(r.from).Abs())
	}
	return sum
}

// measures are what can be measured on a folded hem.
type measures struct {
	taken, drift, strip units.Length // off the garment; finished edge below the line; width of the strip
	plies               int
	raw, inner          units.Length // heights of the raw edge and of the inner edge of the hem
	excess, inset       units.Length // of a flared edge, at the inner edge of the hem
	lose                units.Ratio  // the fullness of a curve, in parts of pi inches
}

// far is more garment above the hem than any hem of the tests is deep.
var far = units.Inch.Of(1 << 60).MulInt(1 << 60)

// measure builds the hem of a solved spec out of cloth and measures it.
func measure(s spec) measures {
	var m measures
	var zero units.Length
	garment := far
	// flat and folded are the place of the inner edge of the hem on the flat cloth,
	// below the finished edge, and its height once folded.
	var flat, folded units.Length
	var layers []run
	switch s.Kind {
	case "faced", "bias-faced":
		// The garment comes down, turns at the finished edge, and runs on for the roll
		// to the seam, whose allowance goes on upwards.
		cloth := fold(garment, false, garment, s.Favour.Add(s.Seam))
		m.taken = total(cloth).Sub(garment)
		// The facing's own allowance lies on that one; the facing runs up from the
		// seam to its depth, and its turn comes down again.
		strip := []run{{s.Favour, s.Favour.Add(s.Seam)}}
		strip = append(strip, fold(s.Favour, true, s.Depth.Sub(s.Favour), s.First)...)
		m.strip = total(strip).Add(s.Spare)
		layers = append(cloth, strip...)
		m.raw, m.inner = s.Favour.Add(s.Seam), s.Depth
		flat, folded = s.Favour, s.Depth // as long as the seam; lies at the depth
	case "bound", "double-bound":
		// The finished edge is the fold of the binding; its seam lies Depth above.
		rawAt := s.Depth.Sub(s.Seam)
		cloth := []run{{garment, rawAt}}
		m.taken = rawAt.Neg()
		strip := fold(rawAt, true, s.Seam, s.Depth, s.Depth)
		if s.Kind == "double-bound" {
			strip = append(strip, strip...)
		} else {
			strip = append(strip, run{s.Depth, s.Depth.Sub(s.First)})
		}
		m.strip = total(strip).Add(s.Spare)
		layers = append(cloth, strip...)
		m.raw, m.inner = rawAt, s.Depth
		flat, folded = s.Depth.Neg(), zero // as long as the seam; lies at the fold
	default:
		turns := []units.Length{s.Depth}
		switch {
		case s.Kind == "turn-up":
			turns = append(turns, s.Depth, s.First)
		case !s.First.IsZero():
			turns = append(turns, s.First)
		}
		layers = fold(garment, false, append([]units.Length{garment}, turns...)...)
		m.taken = total(layers).Sub(garment)
		m.raw, m.inner = layers[len(layers)-1].to, s.Depth
		flat, folded = s.Depth, s.Depth
	}
	m.plies = plies(layers)
	m.drift = s.Cut.Sub(m.taken)
	// A side edge runs out by slope as one goes down: the flat cloth is so much wider
	// than the garment where it comes to lie.
	across := func(down units.Length) units.Length { return far.Add(down.Scale(s.Slope)) }
	m.inset = across(flat).Sub(across(folded.Neg()))
	for range s.Edges {
		m.excess = m.excess.Add(m.inset)
	}
	// A circle of a radius R at the finished edge: 2 pi (R + down), in parts of pi.
	girth := func(down units.Length) units.Ratio {
		return far.Add(down).MulInt(2).In(units.Inch).Mul(s.Circle)
	}
	m.lose = girth(flat).Sub(girth(folded.Neg()))
	return m
}

// claims are the same measures as the library gives them.
func claims(p hem.Plan) measures {
	m := measures{taken: p.Taken, drift: p.Drift, strip: stripOf(p).Width, plies: p.Plies, inner: specOf(p.Spec).Depth, excess: p.Excess, inset: p.Inset}
	for _, t := range p.Taper {
		m.raw = t.Up
	}
	switch specOf(p.Spec).Kind {
	case "faced", "bias-faced":
		m.raw = specOf(p.Spec).Favour.Add(p.RawToStitch)
	case "bound", "double-bound":
		m.raw = p.FinishedToStitch.Sub(p.RawToStitch)
	}
	return m
}

// sample is a random spec of a kind, solved.
func sample(r *rand.Rand, k string) hem.Plan {
	depth := some(r)
	part := func(l units.Length) units.Length { return l.Scale(units.RatioOf(r.Int64N(7)+1, 8)) }
	s := spec{Kind: k, Depth: depth, Drafted: some(r), Slope: units.RatioOf(r.Int64N(41)-20, 64), Edges: r.IntN(4) + 1}
	if r.IntN(2) == 0 {
		s.Cut = some(r)
	}
	switch k {
	case "circular", "seam-slit", "slit":
		s.Slope, s.Edges = units.Ratio{}, 0
	case "faced", "bias-faced":
		s.Favour, s.Seam = part(depth).DivInt(4), some(r)
		s.First = part(depth.Sub(s.Favour))
		if r.IntN(2) == 0 {
			s.Spare = some(r)
		}
	case "bound", "double-bound":
		s.Seam = part(depth)
		if k == "bound" {
			s.First = part(depth)
		}
	}
	switch k {
	case "seam-slit", "slit":
		s.SeamTake = some(r)
	case "turn-up":
		s.First = part(depth)
	default:
		s.Circle = units.RatioOf(r.Int64N(9), 4)
		if k == "shirt-tail" && s.Circle.IsZero() {
			s.Circle = units.RatioOf(1, 7)
		}
	}
	if k == "double" || k == "blind" && r.IntN(2) == 0 {
		s.First = part(depth)
	}
	p, err := s.plan()
	if err != nil {
		panic(fmt.Sprint(k, s, err))
	}
	return p
}

// differs names the first measure that is out, or is empty.
func differs(want, got measures) string {
	for _, c := range []struct {
		name string
		same bool
	}{
		{"taken", want.taken == got.taken}, {"drift", want.drift == got.drift}, {"strip", want.strip == got.strip},
		{"plies", want.plies == got.plies}, {"raw", want.raw == got.raw}, {"inner", want.inner == got.inner},
		{"excess", want.excess == got.excess}, {"inset", want.inset == got.inset}, {"lose", want.lose == got.lose},
	} {
		if !c.same {
			return c.name
		}
	}
	return ""
}

// TestOracle folds hems of every kind and of random measures out of cloth, and
// finds on the cloth what the plan says.
func TestOracle(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 29))
	for a := range hem.Kinds() {
		k := a.Kind()
		for range nountest.Rounds(300) {
			p := sample(r, k)
			want, got := measure(specOf(p.Spec)), claims(p)
			if a.Slit() {
				want.raw = units.Length{} // a slit has no taper
			}
			got.lose = want.lose // compared below, as a length
			if d := differs(want, got); d != "" {
				t.Fatalf("%s: %s\ncloth %+v\nplan  %+v\nof %+v", k, d, want, got, p)
			}
			checkCurve(t, p, want)
		}
	}
}

// checkCurve compares the fullness, flare and curve together, with the cloth.
func checkCurve(t *testing.T, p hem.Plan, m measures) {
	t.Helper()
	curve := units.Pi().Of(units.Inch.Of(1)).Scale(m.lose)
	if !meet(p.Fullness.Sub(p.Lack), curve.Plus(m.excess)) {
		t.Fatalf("%s: %v less %v is not %v and %v", specOf(p.Spec).Kind, p.Fullness, p.Lack, curve, m.excess)
	}
	for _, n := range []units.Near{p.Fullness, p.Lack} {
		if lo, _ := n.Bounds(); lo.Sign() < 0 {
			t.Fatalf("%s: below zero: %v", specOf(p.Spec).Kind, n)
		}
	}
}

// TestOracleCatches plants wrong formulas, each of which people use, and sees each
// of them caught by the folded cloth.
func TestOracleCatches(t *testing.T) {
	for _, wrong := range []struct {
		name string
		kind string
		plan func(p hem.Plan, m *measures)
	}{
		{"length and angle times depth, not twice the depth", "single", func(p hem.Plan, m *measures) {
			m.inset = specOf(p.Spec).Depth.Scale(specOf(p.Spec).Slope)
			m.excess = m.inset.MulInt(int64(specOf(p.Spec).Edges))
		}},
		{"a circle's hem as 2 pi d", "circular", func(p hem.Plan, m *measures) {
			m.lose = specOf(p.Spec).Depth.MulInt(2).In(units.Inch).Mul(specOf(p.Spec).Circle)
		}},
		{"a turn-up without its hem inside", "turn-up", func(p hem.Plan, m *measures) { m.taken = specOf(p.Spec).Depth.MulInt(2) }},
		{"a facing that forgets the roll", "faced", func(p hem.Plan, m *measures) {
			m.strip = specOf(p.Spec).Seam.Add(specOf(p.Spec).Depth).Add(specOf(p.Spec).First).Add(specOf(p.Spec).Spare)
		}},
		{"a binding of four times its width whatever the seam", "bound", func(p hem.Plan, m *measures) { m.strip = specOf(p.Spec).Depth.MulInt(4) }},
		{"the drift of a hem from the depth that shows", "double", func(p hem.Plan, m *measures) { m.drift = specOf(p.Spec).Cut.Sub(specOf(p.Spec).Depth) }},
		{"three plies everywhere", "bound", func(_ hem.Plan, m *measures) { m.plies = 3 }},
	} {
		r := rand.New(rand.NewPCG(2, 3))
		caught := 0
		for range 100 {
			p := sample(r, wrong.kind)
			cloth := measure(specOf(p.Spec))
			claim := cloth
			wrong.plan(p, &claim)
			if differs(cloth, claim) != "" {
				caught++
			}
		}
		if caught < 60 {
			t.Errorf("%s: caught %d times in 100", wrong.name, caught)
		}
	}
}

// TestTuckOracle folds a section into tucks and measures it.
func TestTuckOracle(t *testing.T) {
	r := rand.New(rand.NewPCG(13, 17))
	for range 120 {
		depth, n := some(r), r.IntN(12)+2
		s := hem.Tucks{Kind: hem.SpacedTuck, Depth: depth, Count: n, Pitch: depth.Add(some(r)), Edge: some(r)}
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		// Walk along the flat cloth: out to the first stitching, up to the fold, back
		// to the stitching, on to the next.
		var flat, tucked units.Length
		gap := s.Edge
		k := 0
		layers := []run{{units.Length{}, p.Spec.Span}}
		for _, tuck := range p.Places {
			flat, tucked = flat.Add(gap), tucked.Add(gap)
			if k++; tuck.Number != k || tuck.Near != flat || tuck.Fold != flat.Add(depth) || tuck.Far != flat.Add(depth.MulInt(2)) || !tuck.Off.IsZero() {
				t.Fatalf("tuck %d at %v: %+v of %+v", k, flat, tuck, p)
			}
			layers = append(layers, run{tucked, tucked.Add(depth)}, run{tucked, tucked.Add(depth)})
			flat, gap = flat.Add(depth.MulInt(2)), s.Pitch
		}
		flat, tucked = flat.Add(s.Edge), tucked.Add(s.Edge)
		if k != n || flat != p.Cloth || tucked != p.Spec.Span || flat.Sub(tucked) != p.Removed || p.LastFold != flat.Sub(s.Edge).Sub(depth) {
			t.Fatalf("%v flat, %v tucked: %+v", flat, tucked, p)
		}
		if got := plies(layers); got != p.Plies {
			t.Fatalf("%d plies: %+v", got, p)
		}
		if p.Removed == depth.MulInt(int64(n)) {
			t.Fatal("a tuck that takes up its depth once is not caught")
		}
	}
}

// TestCasingOracle folds a casing and measures it.
func TestCasingOracle(t *testing.T) {
	r := rand.New(rand.NewPCG(19, 23))
	for range 300 {
		s := hem.Casing{Kind: hem.ElasticCasing, Width: some(r), Ease: some(r), Drafted: some(r)}
		// Both rows catch the turn, for which a strip has room twice.
		room := s.Width.Add(s.Ease).DivInt(4)
		s.Turn = room.Scale(units.RatioOf(r.Int64N(8)+1, 8))
		heading := s.Turn.Scale(units.RatioOf(r.Int64N(7)+1, 8))
		s.Heading, s.Lower = units.Give(heading), s.Turn.Scale(units.RatioOf(r.Int64N(7)+1, 8))
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		// Down from the finished edge on the inside: the heading, the tunnel, the edge
		// below it; then the turn, hidden.
		cloth := fold(units.Length{}, false, heading.Add(s.Width).Add(s.Ease).Add(s.Lower), s.Turn)
		if total(cloth) != p.Taken || cloth[0].to.Neg() != p.Depth || p.FinishedToLower.Sub(p.FinishedToUpper) != s.Width.Add(s.Ease) ||
			p.Depth.Sub(p.FinishedToLower) != s.Lower || p.Taken.Add(p.Drift) != s.Drafted || plies(append(cloth, run{units.Length{}, far.Neg()})) > p.Plies {
			t.Fatalf("%+v", p)
		}
		s.Applied, s.Drafted = true, units.Length{}
		if p, err = s.Plan(); err != nil || p.StripWidth != total(cloth).Add(s.Turn) || !p.Taken.IsZero() {
			t.Fatalf("%+v %v", p, err)
		}
	}
}
