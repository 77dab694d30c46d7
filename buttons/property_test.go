package buttons_test

import (
	"math/rand/v2"
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

const rounds = 2000

func seeded(n uint64) *rand.Rand { return rand.New(rand.NewPCG(n, 18)) }

// some is a length of one of several kinds: whole inches, eighths, millimetres,
// thirds, sevenths, prime denominators, near 2^61, wide.
func some(r *rand.Rand) units.Length {
	n := 1 + r.Int64N(400)
	switch r.IntN(8) {
	case 0:
		return units.Inch.Of(n)
	case 1:
		return units.Inch.Frac(n, 8)
	case 2:
		return units.Millimetre.Of(n)
	case 3:
		return units.Inch.Frac(n, 3)
	case 4:
		return units.Inch.Frac(n, 7)
	case 5:
		return units.Inch.Frac(n, []int64{101, 9973, 104729}[r.IntN(3)])
	case 6:
		return units.Inch.Frac(1<<61+n, 1<<50)
	}
	wide := units.Inch.Frac(1<<61+n, 3)
	return wide.Scale(wide.Div(units.Inch.Frac(1<<40, 7)))
}

// TestRowRoads finds the same row by every road that leads to it.
func TestRowRoads(t *testing.T) {
	r := seeded(1)
	for range rounds / 4 {
		first, gap, count := some(r), some(r), 2+r.IntN(20)
		want, err := buttons.Row{First: first, Gap: gap, Count: count, Step: gap}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		last := want.Spec.Last
		for i, road := range []buttons.Row{
			{First: first, Last: last, Count: count},
			{First: first, Last: last, Gap: gap},
			{Last: last, Gap: gap, Count: count},
			{First: first, Last: last, MinGap: gap, MaxGap: gap},
			{First: first, Last: last, MinGap: gap},
			{First: first, Last: last, MaxGap: gap},
			{First: first, Last: last, Have: count},
			{First: first, Gap: gap, Have: count},
		} {
			road.Step = gap
			got, err := road.Plan()
			if err != nil {
				t.Fatalf("road %d, %+v: %v", i, road, err)
			}
			if s := got.Spec; s.First != first || s.Last != last || s.Gap != gap || s.Count != count || got.Span != want.Span || got.WorstMark != want.WorstMark {
				t.Fatalf("road %d: %+v, want %+v", i, got, want)
			}
		}
		checkRow(t, want)
	}
}

// TestRowLimitsHold finds counts whose gaps lie within the limits, and that no
// smaller and no larger count does.
func TestRowLimitsHold(t *testing.T) {
	r := seeded(2)
	faults := 0
	for range rounds {
		first, least := units.Inch.Frac(1+r.Int64N(16), 16), units.Inch.Frac(8+r.Int64N(60), 16)
		most := least.Add(units.Inch.Frac(r.Int64N(8), 16))
		last := first.Add(units.Inch.Frac(40+r.Int64N(400), 16))
		p, err := buttons.Row{First: first, Last: last, MinGap: least, MaxGap: most}.Plan()
		fits := func(buttons int) bool {
			if buttons < 2 {
				return false
			}
			gap := last.Sub(first).DivInt(int64(buttons - 1))
			return !gap.Less(least) && !most.Less(gap)
		}
		if err != nil {
			faults++
			for n := 2; n < 1000; n++ {
				if fits(n) {
					t.Fatalf("%d buttons fit: %v", n, err)
				}
			}
			continue
		}
		if p.Spec.Count != p.Fewest || !fits(p.Fewest) || !fits(p.Most) || fits(p.Fewest-1) || fits(p.Most+1) {
			t.Fatalf("%+v", p)
		}
	}
	if faults == 0 || faults == rounds {
		t.Errorf("%d faults: the draw tests one side only", faults)
	}
}

// TestReusedAgrees compares Reused with a plain comparison of every pair.
func TestReusedAgrees(t *testing.T) {
	r := seeded(3)
	found := 0
	for range rounds / 4 {
		first := units.Inch.Frac(1+r.Int64N(4), 2)
		last := first.Add(units.Inch.Of(12))
		drafted := buttons.Row{First: first, Last: last, Count: 2 + r.IntN(12)}
		now, err := buttons.Row{First: first.Add(units.Inch.Of(r.Int64N(3))), Last: last, Count: 2 + r.IntN(12)}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		d, err := drafted.Plan()
		if err != nil {
			t.Fatal(err)
		}
		want := map[[2]int]bool{}
		i := 0
		for _, a := range d.Places {
			i++
			k := 0
			for _, b := range now.Places {
				if k++; a.Exact == b.Exact {
					want[[2]int{i, k}] = true
				}
			}
		}
		seq, err := now.Reused(drafted)
		if err != nil {
			t.Fatal(err)
		}
		n := 0
		for _, one := range seq {
			n++
			if !want[[2]int{one.Old, one.New}] {
				t.Fatalf("%d is not %d of %+v", one.Old, one.New, now)
			}
		}
		if n != len(want) {
			t.Fatalf("%d serve, want %d", n, len(want))
		}
		found += n
	}
	if found == 0 {
		t.Error("no mark was reused at all")
	}
}

// TestHoleHolds finds that the cut takes the button, and less than a step more.
func TestHoleHolds(t *testing.T) {
	r := seeded(4)
	for range rounds / 4 {
		h := buttons.Hole{Diameter: some(r), Step: units.Inch.Frac(1+r.Int64N(4), 32), Ease: units.Inch.Frac(r.Int64N(4), 32)}
		if h.Outline = buttons.Ball; r.IntN(4) > 0 {
			h.Outline, h.Thickness = buttons.Flat, some(r)
		}
		p, err := h.Plan()
		if err != nil {
			t.Fatal(err)
		}
		checkHole(t, p)
		if c, err := p.Spare.Cmp(units.Exactly(h.Step)); err != nil || c >= 0 {
			t.Fatalf("spare %v of step %v, %v", p.Spare, h.Step, err)
		}
		if whole := p.Exact.Add(p.Spare); whole.Sub(units.Exactly(p.Cut)).Within().Cmp(units.DefaultWithin().MulInt(4)) > 0 {
			t.Fatalf("%v and %v do not make %v", p.Exact, p.Spare, p.Cut)
		}
	}
}

// TestStockComplete compares the first way to make do with a search of all.
func TestStockComplete(t *testing.T) {
	r := seeded(5)
	ways := 0
	for range rounds / 2 {
		s := buttons.Stock{Have: 1 + r.IntN(30)}
		for range 1 + r.IntN(3) {
			n := 1 + r.IntN(9)
			s.Places = append(s.Places, buttons.Placement{Count: n, Times: 1 + r.IntN(4), Least: 1 + r.IntN(n)})
		}
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		checkStock(t, p)
		if p.Short == 0 {
			continue
		}
		best := p.Need + 1
		var try func(i, up int)
		try = func(i, up int) {
			if i == len(s.Places) {
				if up >= p.Short {
					best = min(best, up)
				}
				return
			}
			for k := 0; k <= s.Places[i].Count-s.Places[i].Least; k++ {
				try(i+1, up+k*s.Places[i].Times)
			}
		}
		try(0, 0)
		switch {
		case best > p.Need && len(p.Gives) > 0, best <= p.Need && (len(p.Gives) == 0 || p.Gives[0].Up != best):
			t.Fatalf("the best gives up %d: %+v", best, p)
		}
		ways += len(p.Gives)
	}
	if ways == 0 {
		t.Error("no stock was short")
	}
}

// TestStockLarge bounds the work where the ways are many and hardly any fits.
func TestStockLarge(t *testing.T) {
	s := buttons.Stock{Have: 5001}
	for range buttons.MaxPlaces {
		s.Places = append(s.Places, buttons.Placement{Count: 26, Times: 6})
	}
	s.Places[0].Times = 4
	p, err := s.Plan()
	if err != nil {
		t.Fatal(err)
	}
	checkStock(t, p)
	if p.Short == 0 || len(p.Gives) == 0 {
		t.Errorf("need %d, short %d, %d ways", p.Need, p.Short, len(p.Gives))
	}
}

func checkSheet(t *testing.T, s ticket.Sheet) {
	t.Helper()
	if err := s.Check(); err != nil {
		t.Error(err)
	}
	if s.Text() == "" || len(s.Steps) == 0 {
		t.Errorf("an empty sheet: %+v", s)
	}
}

func checkRow(t *testing.T, p buttons.RowPlan) {
	t.Helper()
	s := p.Spec
	if p.Span != s.Last.Sub(s.First) || p.Gap.MulInt(int64(s.Count-1)) != p.Span {
		t.Errorf("the gaps do not make the span: %+v", p)
	}
	n, before := 0, units.Length{}
	for _, place := range p.Places {
		at, mark, residue := place.Exact, place.Mark, place.Residue
		if n > 0 && at.Sub(before) != p.Gap {
			t.Fatalf("gap %v in %+v", at.Sub(before), p)
		}
		if n == 0 && at != s.First || !mark.IsMultiple(s.Step) || s.Step.Less(residue.Abs().MulInt(2)) {
			t.Fatalf("mark %v, residue %v in %+v", mark, residue, p)
		}
		n, before = n+1, at
	}
	if n != s.Count || before != s.Last {
		t.Errorf("%d marks, last at %v: %+v", n, before, p)
	}
	if s.Step.Less(p.WorstMark.MulInt(2)) || s.Step.Less(p.WorstGap) {
		t.Errorf("worst mark %v, gap %v: %+v", p.WorstMark, p.WorstGap, p)
	}
	if p.CreepUp.Sign() < 0 || p.CreepDown.Sign() > 0 || p.Creep != p.CreepUp && p.Creep != p.CreepDown {
		t.Errorf("creep: %+v", p)
	}
	if n < 100 {
		checkSheet(t, p.Sheet())
	}
}

func checkHole(t *testing.T, p buttons.HolePlan) {
	t.Helper()
	if c, err := p.Spare.Sign(); err == nil && c < 0 || !p.Cut.IsMultiple(p.Spec.Step) {
		t.Errorf("%+v", p)
	}
	if p.Spec.Setting != buttons.NoSetting && p.End.Sub(p.Start) != p.Cut {
		t.Errorf("%+v", p)
	}
	checkSheet(t, p.Sheet())
}

func checkLap(t *testing.T, p buttons.LapPlan) {
	t.Helper()
	if p.InnerEnd.Less(p.OuterEnd) || p.OuterEnd.Sign() < 0 || p.Beyond.Sign() < 0 || p.Clash.Sign() < 0 || p.Clear.Sign() < 0 {
		t.Errorf("%+v", p)
	}
	for _, l := range p.Remedies {
		if q, err := l.Plan(); err != nil || q.Crosses {
			t.Errorf("the remedy %+v: %v", l, err)
		}
	}
	checkSheet(t, p.Sheet())
}

func checkStock(t *testing.T, p buttons.StockPlan) {
	t.Helper()
	s := p.Spec
	if p.Need+p.Spare != s.Have+p.Short || p.Short > 0 && p.Spare > 0 {
		t.Errorf("%+v", p)
	}
	last := 0
	for _, g := range p.Gives {
		q, err := s.With(g).Plan()
		if err != nil || q.Short != 0 || q.Spare != g.Spare || q.Need != p.Need-g.Up || g.Up < last {
			t.Errorf("%+v is no way for %+v: %v", g, s, err)
		}
		last = g.Up
	}
	checkSheet(t, p.Sheet())
}
