package units_test

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/units"
)

func inches(texts ...string) []units.Length {
	var all []units.Length
	for _, s := range texts {
		all = append(all, units.MustParse(s+" in"))
	}
	return all
}

func inch(s string) units.Length { return inches(s)[0] }

func TestDivision(t *testing.T) {
	cm := func(s string) units.Length { return units.MustParse(s + " cm") }
	for _, c := range []struct {
		why   string
		d     units.Division
		count int
		want  []units.Length // all places, or the first of them
	}{
		{"ends and all", units.Division{Span: inch("10"), Count: 5}, 5, inches("0", "2 1/2", "5", "7 1/2", "10")},
		{"two marks", units.Division{Span: inch("10"), Count: 2}, 2, inches("0", "10")},
		{"unequal margins", units.Division{Span: inch("10"), First: inch("1"), Last: inch("3"), Count: 4}, 4, inches("1", "3", "5", "7")},
		{"thirds", units.Division{Span: inch("1"), Count: 4}, 4, inches("0", "1/3", "2/3", "1")},
		{"half a gap at both ends", units.Division{Span: inch("10"), Count: 5, HalfFirst: true, HalfLast: true}, 5, inches("1", "3", "5", "7", "9")},
		{"one in the middle", units.Division{Span: inch("10"), Count: 1, HalfFirst: true, HalfLast: true}, 1, inches("5")},
		{"half a gap before", units.Division{Span: inch("10"), Count: 2, HalfFirst: true}, 2, inches("3 1/3", "10")},
		{"half a gap after", units.Division{Span: inch("10"), Count: 2, HalfLast: true}, 2, inches("0", "6 2/3")},
		{"one at the start", units.Division{Span: inch("10"), Count: 1, HalfLast: true}, 1, inches("0")},
		{"half gaps inside margins", units.Division{Span: inch("10"), First: inch("1"), Last: inch("1"), Count: 2, HalfFirst: true, HalfLast: true}, 2, inches("3", "7")},
		{"quarters of a neck", units.Division{Span: inch("15"), Count: 4, Ring: true}, 4, inches("0", "3 3/4", "7 1/2", "11 1/4")},
		{"a ring from its join", units.Division{Span: inch("15"), First: inch("2"), Count: 3, Ring: true}, 3, inches("2", "7", "12")},
		{"one mark on a ring", units.Division{Span: inch("15"), Count: 1, Ring: true}, 1, inches("0")},
		{"the waist button is pinned", units.Division{Span: inch("22"), Count: 8, Pinned: inches("10")}, 8, inches("0", "3 1/3", "6 2/3", "10", "13", "16", "19", "22")},
		{"pinned, by the gap wanted", units.Division{Span: inch("22"), Gap: inch("3"), Pinned: inches("10")}, 8, inches("0", "3 1/3", "6 2/3", "10", "13")},
		{"pinned, no gap greater", units.Division{Span: inch("22"), Most: inch("3"), Pinned: inches("10")}, 9, inches("0", "2 1/2", "5", "7 1/2", "10", "13")},
		{"pinned, no gap less", units.Division{Span: inch("22"), Least: inch("4"), Pinned: inches("10")}, 6, inches("0", "5", "10", "14", "18", "22")},
		{"pinned in a ring", units.Division{Span: inch("12"), Count: 4, Ring: true, Pinned: inches("3")}, 4, inches("0", "3", "6", "9")},
		{"pinned in a ring, from a join", units.Division{Span: inch("12"), First: inch("6"), Count: 3, Ring: true, Pinned: inches("14")}, 3, inches("6", "10", "14")},
		{"pinned between half gaps", units.Division{Span: inch("10"), Count: 3, HalfFirst: true, HalfLast: true, Pinned: inches("4")}, 3, inches("1 1/3", "4", "8")},
		{"a pinned point alone between half gaps", units.Division{Span: inch("10"), Count: 1, HalfFirst: true, HalfLast: true, Pinned: inches("4")}, 1, inches("4")},
		{"two gaps as near: the fewer", units.Division{Span: inch("12"), Gap: inch("5")}, 3, inches("0", "6", "12")},
		{"of 4 and 6 the nearer", units.Division{Span: inch("12"), Gap: inch("4.9")}, 4, inches("0", "4", "8", "12")},
		{"a gap wider than the span", units.Division{Span: inch("12"), Gap: inch("50")}, 2, inches("0", "12")},
		{"nearest within limits", units.Division{Span: inch("12"), Gap: inch("6"), Most: inch("5")}, 4, inches("0", "4", "8", "12")},
		{"nearest within limits below", units.Division{Span: inch("12"), Gap: inch("2"), Least: inch("5")}, 3, inches("0", "6", "12")},
		{"the fewest within both", units.Division{Span: inch("12"), Least: inch("2"), Most: inch("4")}, 4, inches("0", "4", "8", "12")},
		{"a count that agrees", units.Division{Span: inch("12"), Count: 4, Gap: inch("4")}, 4, inches("0", "4")},
		{"a count within limits, not the fewest", units.Division{Span: inch("12"), Count: 5, Least: inch("2"), Most: inch("4")}, 5, inches("0", "3")},
		{"a count beside limits that no other count keeps", units.Division{Span: inch("12"), Count: 2, Least: inch("12"), Most: inch("12")}, 2, inches("0", "12")},
		{"half gaps by the gap wanted", units.Division{Span: inch("10"), Gap: inch("2"), HalfFirst: true, HalfLast: true}, 5, inches("1", "3")},
		{"half gaps by the greatest", units.Division{Span: inch("10"), Most: inch("20"), HalfFirst: true, HalfLast: true}, 1, inches("5")},
		{"printed: eight buttons over 15 in", units.Division{Span: inch("15"), Count: 8}, 8, inches("0", "2 1/7", "4 2/7")},
		{"printed: nine holes over 16 in", units.Division{Span: inch("16"), Count: 9}, 9, inches("0", "2", "4")},
		{"printed: five holes in 56 rows", units.Division{Span: inch("56"), First: inch("4"), Last: inch("4"), Count: 5}, 5, inches("4", "16", "28", "40", "52")},
		{"printed: nine goblets in 50 in", units.Division{Span: inch("50"), Count: 9, HalfFirst: true, HalfLast: true}, 9, inches("2 7/9", "8 1/3")},
		{"printed: pleats 7 in apart in 49", units.Division{Span: inch("49"), Gap: inch("7")}, 8, inches("0", "7")},
		{"printed: spaces of 3.2 in 36", units.Division{Span: inch("36"), Most: inch("3.2")}, 13, inches("0", "3", "6")},
		{"printed: 31 tucks in 39 cm", units.Division{Span: cm("39"), First: cm("1.5"), Last: cm("1.5"), Gap: cm("1.2")}, 31, []units.Length{cm("1.5"), cm("2.7")}},
		{"printed: 16 tucks in 28 cm, taken up", units.Division{Span: cm("28"), First: cm("2"), Last: cm("2"), Most: cm("1.7")}, 16, []units.Length{cm("2"), cm("3.6")}},
		{"exercise: 21 tucks in 44 cm", units.Division{Span: cm("44"), First: cm("2"), Last: cm("2"), Gap: cm("2")}, 21, []units.Length{cm("2"), cm("4")}},
		{"exercise: 15 tucks in 24 cm", units.Division{Span: cm("24"), First: cm("1.5"), Last: cm("1.5"), Gap: cm("1.5")}, 15, []units.Length{cm("1.5"), cm("3")}},
	} {
		s, err := c.d.Solve()
		if err != nil {
			t.Errorf("%s: %v", c.why, err)
			continue
		}
		got := slices.Collect(s.Places())
		if s.Count != c.count || len(got) != c.count || !slices.Equal(got[:min(len(c.want), len(got))], c.want) {
			t.Errorf("%s: %d marks, %d places %v", c.why, s.Count, len(got), got)
		}
		checkDivision(t, c.d, s)
	}
}

// checkDivision holds a solved division to what it promises.
func checkDivision(t *testing.T, given, d units.Division) {
	t.Helper()
	if given.Count != 0 && given.Count != d.Count {
		t.Fatalf("%+v: %d marks", given, d.Count)
	}
	again, err := d.Solve()
	if err != nil || !reflect.DeepEqual(again, d) {
		t.Fatalf("%+v solved again is %+v, %v", d, again, err)
	}
	places := slices.Collect(d.Places())
	if len(places) != d.Count || !slices.Equal(places, slices.Collect(given.Places())) {
		t.Fatalf("%+v: %d places, want %d", d, len(places), d.Count)
	}
	end := d.Span.Sub(d.Last)
	if d.Ring {
		end = d.First.Add(d.Span)
	}
	// The stretches follow one another, and the gaps of each make it up.
	at, gaps, sum, n := d.First, 0, units.Length{}, 0
	for s := range d.Stretches() {
		halves := 0
		if n == 0 && d.HalfFirst {
			halves++
		}
		if n == len(d.Pinned) && d.HalfLast {
			halves++
		}
		whole := s.Gap.MulInt(int64(2*s.Gaps + halves)).DivInt(2)
		if s.From != at || s.To.Sub(s.From) != whole || s.Gap.Sign() <= 0 || s.Gaps < 1-min(halves, 1) {
			t.Fatalf("%+v: stretch %d is %+v", d, n, s)
		}
		if s.Gap.Less(d.Least) || !d.Most.IsZero() && d.Most.Less(s.Gap) {
			t.Fatalf("%+v: a gap of %v", d, s.Gap)
		}
		at, gaps, sum, n = s.To, gaps+s.Gaps, sum.Add(whole), n+1
	}
	if at != end || n != len(d.Pinned)+1 || sum != end.Sub(d.First) {
		t.Fatalf("%+v: %d stretches to %v, %v in all", d, n, at, sum)
	}
	if want := d.Count; d.Ring && gaps != want || !d.Ring && gaps != want-1 {
		t.Fatalf("%+v: %d gaps", d, gaps)
	}
	// Every pinned point has a mark; the places rise; the ends are where they should be.
	if !slices.IsSortedFunc(places, units.Length.Cmp) {
		t.Fatalf("%+v: %v", d, places)
	}
	for _, p := range d.Pinned {
		if !slices.Contains(places, p) {
			t.Fatalf("%+v: no mark at %v", d, p)
		}
	}
	if !d.HalfFirst && places[0] != d.First || !d.Ring && !d.HalfLast && places[len(places)-1] != end {
		t.Fatalf("%+v: %v", d, places)
	}
	step := units.Inch.Frac(1, 16)
	k := 0
	for mark, residue := range d.Marks(step, units.HalfAway) {
		if !mark.IsMultiple(step) || mark.Add(residue) != places[k] || step.DivInt(2).Less(residue.Abs()) {
			t.Fatalf("%+v: mark %v, residue %v at %v", d, mark, residue, places[k])
		}
		k++
	}
	if k != d.Count {
		t.Fatalf("%+v: %d marks", d, k)
	}
}

func someDivision(r *rand.Rand) units.Division {
	dens := []int64{1, 2, 3, 7, 8, 16, 25, 127}
	length := func(most int64) units.Length {
		return units.Inch.Frac(1+r.Int64N(most*4), dens[r.IntN(len(dens))])
	}
	d := units.Division{Span: length(60), Ring: r.IntN(3) == 0}
	if r.IntN(2) == 0 {
		d.First = length(4)
	}
	if !d.Ring {
		if r.IntN(2) == 0 {
			d.Last = length(4)
		}
		d.HalfFirst, d.HalfLast = r.IntN(3) == 0, r.IntN(3) == 0
	}
	for range r.IntN(4) {
		d.Pinned = append(d.Pinned, d.First.Add(d.Span.Scale(units.RatioOf(1+r.Int64N(99), 100))))
	}
	slices.SortFunc(d.Pinned, units.Length.Cmp)
	if r.IntN(2) == 0 {
		d.Count = 1 + r.IntN(30)
	} else if r.IntN(2) == 0 {
		d.Gap = length(3)
	}
	if r.IntN(3) == 0 {
		d.Least = length(2)
	}
	if r.IntN(3) == 0 {
		d.Most = d.Least.Add(length(6))
	}
	return d
}

func TestDivisionLaws(t *testing.T) {
	r := seeded(33)
	solved := 0
	for range 6000 {
		d := someDivision(r)
		s, err := d.Solve()
		if err != nil {
			checkDivisionError(t, d, err)
			continue
		}
		solved++
		checkDivision(t, d, s)
		if d.Count > 0 && d.Gap.IsZero() && d.Least.IsZero() && d.Most.IsZero() && len(d.Pinned) > 0 {
			checkEven(t, s)
		}
		if d.Count == 0 && d.Most.IsZero() && d.Least.IsZero() {
			checkNearest(t, s)
		}
	}
	if solved < 2000 {
		t.Errorf("only %d divisions of 6000 can be solved", solved)
	}
}

// checkEven: no gap can be moved from one stretch to another so that the widest of
// the two becomes narrower.
func checkEven(t *testing.T, d units.Division) {
	t.Helper()
	all := slices.Collect(d.Stretches())
	widest := units.Length{}
	for _, s := range all {
		widest = widest.Max(s.Gap)
	}
	// As few gaps as keep all below the widest would be more than there are.
	need := 0
	for i, s := range all {
		halves := 0
		if i == 0 && d.HalfFirst {
			halves++
		}
		if i == len(all)-1 && d.HalfLast {
			halves++
		}
		n := 1 - min(halves, 1)
		for long := s.To.Sub(s.From).MulInt(2); !long.DivInt(int64(2*n + halves)).Less(widest); n++ {
		}
		need += n
	}
	have := d.Count
	if !d.Ring {
		have--
	}
	if need <= have {
		t.Fatalf("%+v: the widest gap %v could be narrower", d, widest)
	}
}

// checkNearest: neither one gap more nor one less is nearer to what is wanted.
func checkNearest(t *testing.T, d units.Division) {
	t.Helper()
	if d.Gap.IsZero() {
		return
	}
	n := 0
	for s := range d.Stretches() {
		parts := s.To.Sub(s.From).Div(s.Gap)
		off := s.Gap.Sub(d.Gap).Abs()
		for _, k := range []int64{-1, 1} {
			p := parts.Add(units.RatioOf(k, 1))
			if s.Gaps+int(k) < 0 || p.Sign() <= 0 || s.Gaps+int(k) == 0 && p.IsInt() && p == units.RatioOf(int64(s.Gaps)+k, 1) {
				continue
			}
			if other := s.To.Sub(s.From).Unscale(p).Sub(d.Gap).Abs(); other.Less(off) || k < 0 && other == off {
				t.Fatalf("%+v: stretch %d with %d gaps would be nearer by %d", d, n, s.Gaps, k)
			}
		}
		n++
	}
}

func checkDivisionError(t *testing.T, d units.Division, err error) {
	t.Helper()
	many, ok := err.(interface{ Unwrap() []error })
	if !ok || !errors.Is(err, units.ErrDivision) {
		t.Fatalf("%+v: %v", d, err)
	}
	for _, e := range many.Unwrap() {
		var de *units.DivisionError
		if !errors.As(e, &de) || de.Field == "" || de.Got == "" || de.Want == "" || de.Err == nil || !strings.Contains(e.Error(), de.Field) {
			t.Fatalf("%+v: %v", d, e)
		}
	}
	if s, again := d.Solve(); again == nil || !reflect.DeepEqual(s, d) {
		t.Fatalf("%+v: solved to %+v, %v", d, s, again)
	}
	for at := range d.Places() {
		t.Fatalf("%+v: a place at %v beside a fault", d, at)
	}
	for s := range d.Stretches() {
		t.Fatalf("%+v: the stretch %v beside a fault", d, s)
	}
}

func TestDivisionFaults(t *testing.T) {
	many := make([]units.Length, units.MaxPinned+1)
	huge := units.MustParse("1" + strings.Repeat("0", 300) + " in")
	for _, c := range []struct {
		why    string
		d      units.Division
		fields string
		err    error
	}{
		{"nothing", units.Division{}, "Span Count", units.ErrDivision},
		{"everything at once", units.Division{Span: inch("-1"), First: inch("-1"), Last: inch("-1"), Count: -1, Gap: inch("-1"), Least: inch("-1"), Most: inch("-1"), Pinned: inches("-3")},
			"Span First Last Count Gap Least Most Pinned[0]", units.ErrDivision},
		{"a ring has no ends", units.Division{Span: inch("9"), Last: inch("1"), Count: 3, Ring: true, HalfFirst: true, HalfLast: true}, "Last HalfFirst HalfLast", units.ErrDivision},
		{"margins take all", units.Division{Span: inch("9"), First: inch("4"), Last: inch("5"), Count: 3}, "First", units.ErrDivision},
		{"once round is enough", units.Division{Span: inch("9"), First: inch("9"), Count: 3, Ring: true}, "First", units.ErrDivision},
		{"one mark at two ends", units.Division{Span: inch("9"), Count: 1}, "Count", units.ErrDivision},
		{"too many", units.Division{Span: inch("9"), Count: math.MaxInt}, "Count", units.ErrDivision},
		{"too few for the points", units.Division{Span: inch("9"), Count: 3, Pinned: inches("1", "2", "3")}, "Count", units.ErrDivision},
		{"a gap too narrow", units.Division{Span: inch("9"), Gap: inch("0.000001")}, "Count", units.ErrDivision},
		{"a gap too narrow for numbers", units.Division{Span: huge, Gap: inch("1")}, "Count", units.ErrDivision},
		{"limits too narrow", units.Division{Span: inch("9"), Most: inch("0.000001")}, "Most", units.ErrDivision},
		{"limits too narrow for numbers", units.Division{Span: huge, Most: inch("1")}, "Most", units.ErrDivision},
		{"limits too narrow below", units.Division{Span: huge, Least: inch("1")}, "Count", units.ErrDivision},
		{"limits crossed", units.Division{Span: inch("9"), Least: inch("3"), Most: inch("2")}, "Most", units.ErrDivision},
		{"between 3 and 4 1/2", units.Division{Span: inch("9"), Least: inch("3 1/2"), Most: inch("4")}, "Most", units.ErrNoCount},
		{"one gap is less already", units.Division{Span: inch("9"), Least: inch("10")}, "Least", units.ErrNoCount},
		{"a stretch is less", units.Division{Span: inch("9"), Least: inch("2"), Pinned: inches("1")}, "Least", units.ErrNoCount},
		{"a count that the gap denies", units.Division{Span: inch("9"), Count: 5, Gap: inch("3")}, "Count", units.ErrDivision},
		{"a count beside a gap and limits that none keeps", units.Division{Span: inch("9"), Count: 5, Gap: inch("3"), Least: inch("3 1/2"), Most: inch("4")}, "Most", units.ErrNoCount},
		{"a count that the limits deny", units.Division{Span: inch("9"), Count: 2, Most: inch("3")}, "Most", units.ErrDivision},
		{"and below", units.Division{Span: inch("9"), Count: 10, Least: inch("3")}, "Least", units.ErrDivision},
		{"a count between limits that no count keeps", units.Division{Span: inch("9"), Count: 3, Least: inch("3 1/2"), Most: inch("4")}, "Most", units.ErrDivision},
		{"points out of order", units.Division{Span: inch("9"), Count: 9, Pinned: inches("3", "2", "9")}, "Pinned[1] Pinned[2]", units.ErrDivision},
		{"a point before the first", units.Division{Span: inch("9"), First: inch("3"), Count: 9, Pinned: inches("3")}, "Pinned[0]", units.ErrDivision},
		{"too many points", units.Division{Span: inch("9"), Count: 9, Pinned: many}, "Pinned", units.ErrDivision},
	} {
		_, err := c.d.Solve()
		if !errors.Is(err, c.err) {
			t.Errorf("%s: %v", c.why, err)
			continue
		}
		checkDivisionError(t, c.d, err)
		var fields []string
		for _, e := range err.(interface{ Unwrap() []error }).Unwrap() {
			fields = append(fields, e.(*units.DivisionError).Field)
		}
		if got := strings.Join(fields, " "); got != c.fields {
			t.Errorf("%s: faults in %s, want %s\n%v", c.why, got, c.fields, err)
		}
	}
	_, err := units.Division{Span: inch("9"), Least: inch("3 1/2"), Most: inch("4")}.Solve()
	if want := "units: division: Most 4 in, want limits about 4 1/2 in (gaps: 2) or 3 in (gaps: 3) from 0 in to 9 in"; err == nil || err.Error() != want {
		t.Errorf("%v", err)
	}
}

// TestDivisionBounds: the greatest counts are done, and iterators that are left stop.
func TestDivisionBounds(t *testing.T) {
	d := units.Division{Span: inch("100"), Count: units.MaxMarks}
	n := 0
	for at := range d.Places() {
		if n++; n == units.MaxMarks && at != d.Span {
			t.Error(at)
		}
	}
	if n != units.MaxMarks {
		t.Error(n)
	}
	d.Ring = true
	for k := range int64(units.MaxPinned) {
		d.Pinned = append(d.Pinned, units.Inch.Frac(k+1, units.MaxPinned+1).Add(units.Inch.Frac(k*k, 1e6)))
	}
	n = 0
	for range d.Stretches() {
		if n++; n == 5 {
			break
		}
	}
	for range d.Places() {
		if n++; n == 10 {
			break
		}
	}
	for range d.Marks(inch("1"), units.Up) {
		if n++; n == 15 {
			break
		}
	}
	if n != 15 {
		t.Error(n)
	}
}

func FuzzDivision(f *testing.F) {
	f.Add(int64(220), int64(10), int64(10), 8, int64(0), int64(0), int64(0), int64(8), int64(70), uint8(0))
	f.Add(int64(150), int64(0), int64(0), 4, int64(0), int64(0), int64(0), int64(1), int64(0), uint8(1))
	f.Add(int64(1<<62), int64(3), int64(1), 0, int64(7), int64(5), int64(1<<61), int64(7), int64(-1), uint8(6))
	f.Fuzz(func(t *testing.T, span, first, last int64, count int, gap, least, most, den, pin int64, flags uint8) {
		if den == 0 {
			den = 1
		}
		l := func(n int64) units.Length { return units.Inch.Frac(n, den) }
		d := units.Division{Span: l(span), First: l(first), Last: l(last), Count: count, Gap: l(gap), Least: l(least), Most: l(most),
			Ring: flags&1 > 0, HalfFirst: flags&2 > 0, HalfLast: flags&4 > 0}
		if pin != 0 {
			d.Pinned = []units.Length{l(pin)}
		}
		s, err := d.Solve()
		switch {
		case err != nil:
			checkDivisionError(t, d, err)
		case s.Count <= 1000:
			checkDivision(t, d, s)
		}
	})
}

func TestDivisionAllocations(t *testing.T) {
	d := units.Division{Span: inch("22"), First: inch("5/8"), Last: inch("1"), Count: 9}
	if n := testing.AllocsPerRun(100, func() { _, _ = d.Solve() }); n > 2 {
		t.Errorf("Solve takes %v allocations", n)
	}
	step := inch("1/16")
	if n := testing.AllocsPerRun(100, func() {
		for range d.Marks(step, units.HalfAway) {
		}
	}); n > 4 {
		t.Errorf("Marks takes %v allocations", n)
	}
}

// The highwayman's coat: a button at the neck, one at the waist, one at the hem,
// and others about 3 in apart.
func ExampleDivision() {
	d, err := units.Division{
		Span:   units.MustParse("24 in"),
		First:  units.MustParse("5/8 in"),
		Last:   units.MustParse("1 in"),
		Gap:    units.MustParse("3 in"),
		Pinned: []units.Length{units.MustParse("15 in")},
	}.Solve()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(d.Count, "buttons")
	for s := range d.Stretches() {
		fmt.Println(s.Gaps, "gaps of", s.Gap, "from", s.From, "to", s.To)
	}
	for mark, residue := range d.Marks(units.MustParse("1/16 in"), units.HalfAway) {
		fmt.Println(mark, "and", residue)
	}
	// Output:
	// 9 buttons
	// 5 gaps of 2 7/8 in from 5/8 in to 15 in
	// 3 gaps of 2 2/3 in from 15 in to 23 in
	// 5/8 in and 0 in
	// 3 1/2 in and 0 in
	// 6 3/8 in and 0 in
	// 9 1/4 in and 0 in
	// 12 1/8 in and 0 in
	// 15 in and 0 in
	// 17 11/16 in and -1/48 in
	// 20 5/16 in and 1/48 in
	// 23 in and 0 in
}

// Limits that no whole number of gaps keeps are refused, and the neighbours named.
func ExampleDivision_Solve() {
	_, err := units.Division{
		Span:  units.MustParse("9 in"),
		Least: units.MustParse("3 1/2 in"),
		Most:  units.MustParse("4 in"),
	}.Solve()
	fmt.Println(err)
	// Output: units: division: Most 4 in, want limits about 4 1/2 in (gaps: 2) or 3 in (gaps: 3) from 0 in to 9 in
}
