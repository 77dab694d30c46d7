package spacing_test

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
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/spacing"
)

func inches(texts ...string) []units.Length {
	var all []units.Length
	for _, s := range texts {
		all = append(all, units.MustParse(s+" in"))
	}
	return all
}

func inch(s string) units.Length { return inches(s)[0] }

func TestLay(t *testing.T) {
	cm := func(s string) units.Length { return units.MustParse(s + " cm") }
	for _, c := range []struct {
		why   string
		d     spacing.Spec
		count int
		want  []units.Length // all places, or the first of them
	}{
		{"ends and all", spacing.Spec{Span: inch("10"), Count: 5}, 5, inches("0", "2 1/2", "5", "7 1/2", "10")},
		{"two marks", spacing.Spec{Span: inch("10"), Count: 2}, 2, inches("0", "10")},
		{"unequal margins", spacing.Spec{Span: inch("10"), First: inch("1"), Last: inch("3"), Count: 4}, 4, inches("1", "3", "5", "7")},
		{"thirds", spacing.Spec{Span: inch("1"), Count: 4}, 4, inches("0", "1/3", "2/3", "1")},
		{"half a gap at both ends", spacing.Spec{Span: inch("10"), Count: 5, HalfFirst: true, HalfLast: true}, 5, inches("1", "3", "5", "7", "9")},
		{"one in the middle", spacing.Spec{Span: inch("10"), Count: 1, HalfFirst: true, HalfLast: true}, 1, inches("5")},
		{"half a gap before", spacing.Spec{Span: inch("10"), Count: 2, HalfFirst: true}, 2, inches("3 1/3", "10")},
		{"half a gap after", spacing.Spec{Span: inch("10"), Count: 2, HalfLast: true}, 2, inches("0", "6 2/3")},
		{"one at the start", spacing.Spec{Span: inch("10"), Count: 1, HalfLast: true}, 1, inches("0")},
		{"half gaps inside margins", spacing.Spec{Span: inch("10"), First: inch("1"), Last: inch("1"), Count: 2, HalfFirst: true, HalfLast: true}, 2, inches("3", "7")},
		{"quarters of a neck", spacing.Spec{Span: inch("15"), Count: 4, Ring: true}, 4, inches("0", "3 3/4", "7 1/2", "11 1/4")},
		{"a ring from its join", spacing.Spec{Span: inch("15"), First: inch("2"), Count: 3, Ring: true}, 3, inches("2", "7", "12")},
		{"one mark on a ring", spacing.Spec{Span: inch("15"), Count: 1, Ring: true}, 1, inches("0")},
		{"the waist button is pinned", spacing.Spec{Span: inch("22"), Count: 8, Pinned: inches("10")}, 8, inches("0", "3 1/3", "6 2/3", "10", "13", "16", "19", "22")},
		{"pinned, by the gap wanted", spacing.Spec{Span: inch("22"), Gap: inch("3"), Pinned: inches("10")}, 8, inches("0", "3 1/3", "6 2/3", "10", "13")},
		{"pinned, no gap greater", spacing.Spec{Span: inch("22"), Most: inch("3"), Pinned: inches("10")}, 9, inches("0", "2 1/2", "5", "7 1/2", "10", "13")},
		{"pinned, no gap less", spacing.Spec{Span: inch("22"), Least: inch("4"), Pinned: inches("10")}, 6, inches("0", "5", "10", "14", "18", "22")},
		{"pinned in a ring", spacing.Spec{Span: inch("12"), Count: 4, Ring: true, Pinned: inches("3")}, 4, inches("0", "3", "6", "9")},
		{"pinned in a ring, from a join", spacing.Spec{Span: inch("12"), First: inch("6"), Count: 3, Ring: true, Pinned: inches("14")}, 3, inches("6", "10", "14")},
		{"pinned between half gaps", spacing.Spec{Span: inch("10"), Count: 3, HalfFirst: true, HalfLast: true, Pinned: inches("4")}, 3, inches("1 1/3", "4", "8")},
		{"a pinned point alone between half gaps", spacing.Spec{Span: inch("10"), Count: 1, HalfFirst: true, HalfLast: true, Pinned: inches("4")}, 1, inches("4")},
		{"two gaps as near: the fewer", spacing.Spec{Span: inch("12"), Gap: inch("5")}, 3, inches("0", "6", "12")},
		{"of 4 and 6 the nearer", spacing.Spec{Span: inch("12"), Gap: inch("4.9")}, 4, inches("0", "4", "8", "12")},
		{"a gap wider than the span", spacing.Spec{Span: inch("12"), Gap: inch("50")}, 2, inches("0", "12")},
		{"nearest within limits", spacing.Spec{Span: inch("12"), Gap: inch("6"), Most: inch("5")}, 4, inches("0", "4", "8", "12")},
		{"nearest within limits below", spacing.Spec{Span: inch("12"), Gap: inch("2"), Least: inch("5")}, 3, inches("0", "6", "12")},
		{"the fewest within both", spacing.Spec{Span: inch("12"), Least: inch("2"), Most: inch("4")}, 4, inches("0", "4", "8", "12")},
		{"a count that agrees", spacing.Spec{Span: inch("12"), Count: 4, Gap: inch("4")}, 4, inches("0", "4")},
		{"a count within limits, not the fewest", spacing.Spec{Span: inch("12"), Count: 5, Least: inch("2"), Most: inch("4")}, 5, inches("0", "3")},
		{"a count beside limits that no other count keeps", spacing.Spec{Span: inch("12"), Count: 2, Least: inch("12"), Most: inch("12")}, 2, inches("0", "12")},
		{"half gaps by the gap wanted", spacing.Spec{Span: inch("10"), Gap: inch("2"), HalfFirst: true, HalfLast: true}, 5, inches("1", "3")},
		{"half gaps by the greatest", spacing.Spec{Span: inch("10"), Most: inch("20"), HalfFirst: true, HalfLast: true}, 1, inches("5")},
		{"printed: eight buttons over 15 in", spacing.Spec{Span: inch("15"), Count: 8}, 8, inches("0", "2 1/7", "4 2/7")},
		{"printed: nine holes over 16 in", spacing.Spec{Span: inch("16"), Count: 9}, 9, inches("0", "2", "4")},
		{"printed: five holes in 56 rows", spacing.Spec{Span: inch("56"), First: inch("4"), Last: inch("4"), Count: 5}, 5, inches("4", "16", "28", "40", "52")},
		{"printed: nine goblets in 50 in", spacing.Spec{Span: inch("50"), Count: 9, HalfFirst: true, HalfLast: true}, 9, inches("2 7/9", "8 1/3")},
		{"printed: pleats 7 in apart in 49", spacing.Spec{Span: inch("49"), Gap: inch("7")}, 8, inches("0", "7")},
		{"printed: spaces of 3.2 in 36", spacing.Spec{Span: inch("36"), Most: inch("3.2")}, 13, inches("0", "3", "6")},
		{"printed: 31 tucks in 39 cm", spacing.Spec{Span: cm("39"), First: cm("1.5"), Last: cm("1.5"), Gap: cm("1.2")}, 31, []units.Length{cm("1.5"), cm("2.7")}},
		{"printed: 16 tucks in 28 cm, taken up", spacing.Spec{Span: cm("28"), First: cm("2"), Last: cm("2"), Most: cm("1.7")}, 16, []units.Length{cm("2"), cm("3.6")}},
		{"exercise: 21 tucks in 44 cm", spacing.Spec{Span: cm("44"), First: cm("2"), Last: cm("2"), Gap: cm("2")}, 21, []units.Length{cm("2"), cm("4")}},
		{"exercise: 15 tucks in 24 cm", spacing.Spec{Span: cm("24"), First: cm("1.5"), Last: cm("1.5"), Gap: cm("1.5")}, 15, []units.Length{cm("1.5"), cm("3")}},
	} {
		p, err := c.d.Lay()
		if err != nil {
			t.Errorf("%s: %v", c.why, err)
			continue
		}
		got, s := p.Places, p.Spec
		if s.Count != c.count || len(got) != c.count || !slices.Equal(got[:min(len(c.want), len(got))], c.want) {
			t.Errorf("%s: %d marks, %d places %v", c.why, s.Count, len(got), got)
		}
		checkLaid(t, c.d, p)
	}
}

// checkLaid holds what was laid to what it promises.
func checkLaid(t *testing.T, given spacing.Spec, p spacing.Plan) {
	t.Helper()
	d, places := p.Spec, p.Places
	if given.Count != 0 && given.Count != d.Count || len(places) != d.Count {
		t.Fatalf("%+v: %d marks, %d places", given, d.Count, len(places))
	}
	if again, err := d.Lay(); err != nil || !reflect.DeepEqual(again, p) {
		t.Fatalf("%+v laid again is %+v, %v", d, again, err)
	}
	end := d.Span.Sub(d.Last)
	if d.Ring {
		end = d.First.Add(d.Span)
	}
	// The stretches follow one another, and the gaps of each make it up.
	at, gaps, sum, n := d.First, 0, units.Length{}, 0
	for _, s := range p.Stretches {
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
	for _, at := range d.Pinned {
		if !slices.Contains(places, at) {
			t.Fatalf("%+v: no mark at %v", d, at)
		}
	}
	if !d.HalfFirst && places[0] != d.First || !d.Ring && !d.HalfLast && places[len(places)-1] != end {
		t.Fatalf("%+v: %v", d, places)
	}
}

func someSpec(r *rand.Rand) spacing.Spec {
	dens := []int64{1, 2, 3, 7, 8, 16, 25, 127}
	length := func(most int64) units.Length {
		return units.Inch.Frac(1+r.Int64N(most*4), dens[r.IntN(len(dens))])
	}
	d := spacing.Spec{Span: length(60), Ring: r.IntN(3) == 0}
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

func TestLaws(t *testing.T) {
	r := rand.New(rand.NewPCG(33, 0))
	solved := 0
	rounds := nountest.Rounds(6000)
	for range rounds {
		d := someSpec(r)
		p, err := d.Lay()
		if err != nil {
			checkRefused(t, d, err)
			continue
		}
		solved++
		checkLaid(t, d, p)
		if d.Count > 0 && d.Gap.IsZero() && d.Least.IsZero() && d.Most.IsZero() && len(d.Pinned) > 0 {
			checkEven(t, p)
		}
		if d.Count == 0 && d.Most.IsZero() && d.Least.IsZero() {
			checkNearest(t, d, p)
		}
	}
	if solved < rounds/3 {
		t.Errorf("only %d divisions of 6000 can be solved", solved)
	}
}

// checkEven: no gap can be moved from one stretch to another so that the widest of
// the two becomes narrower.
func checkEven(t *testing.T, p spacing.Plan) {
	t.Helper()
	d, all := p.Spec, p.Stretches
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
func checkNearest(t *testing.T, d spacing.Spec, p spacing.Plan) {
	t.Helper()
	if d.Gap.IsZero() {
		return
	}
	n := 0
	for _, s := range p.Stretches {
		parts := s.To.Sub(s.From).Div(s.Gap)
		off := s.Gap.Sub(d.Gap).Abs()
		for _, k := range []int64{-1, 1} {
			q := parts.Add(units.RatioOf(k, 1))
			if s.Gaps+int(k) < 0 || q.Sign() <= 0 || s.Gaps+int(k) == 0 && q.IsInt() && q == units.RatioOf(int64(s.Gaps)+k, 1) {
				continue
			}
			if other := s.To.Sub(s.From).Unscale(q).Sub(d.Gap).Abs(); other.Less(off) || k < 0 && other == off {
				t.Fatalf("%+v: stretch %d with %d gaps would be nearer by %d", d, n, s.Gaps, k)
			}
		}
		n++
	}
}

// checkRefused holds the faults to what they promise.
func checkRefused(t *testing.T, d spacing.Spec, err error) {
	t.Helper()
	var faults fault.Faults
	if !errors.As(err, &faults) {
		t.Fatalf("%+v: %v", d, err)
	}
	for _, f := range faults {
		if f.Path == "" || f.Limit == "" || f.Kind == "" {
			t.Fatalf("%+v: %v", d, f)
		}
	}
}

func TestFaults(t *testing.T) {
	many := make([]units.Length, spacing.MaxPinned+1)
	huge := units.MustParse("1" + strings.Repeat("0", 300) + " in")
	for _, c := range []struct {
		why    string
		d      spacing.Spec
		fields string // and none where no count serves
	}{
		{"nothing", spacing.Spec{}, "span count"},
		{"everything at once", spacing.Spec{Span: inch("-1"), First: inch("-1"), Last: inch("-1"), Count: -1, Gap: inch("-1"), Least: inch("-1"), Most: inch("-1"), Pinned: inches("-3")},
			"span first last count gap least most pinned[0]"},
		{"a ring has no ends", spacing.Spec{Span: inch("9"), Last: inch("1"), Count: 3, Ring: true, HalfFirst: true, HalfLast: true}, "last halfFirst halfLast"},
		{"margins take all", spacing.Spec{Span: inch("9"), First: inch("4"), Last: inch("5"), Count: 3}, "first"},
		{"once round is enough", spacing.Spec{Span: inch("9"), First: inch("9"), Count: 3, Ring: true}, "first"},
		{"one mark at two ends", spacing.Spec{Span: inch("9"), Count: 1}, "count"},
		{"too many", spacing.Spec{Span: inch("9"), Count: math.MaxInt}, "count"},
		{"too few for the points", spacing.Spec{Span: inch("9"), Count: 3, Pinned: inches("1", "2", "3")}, "count"},
		{"a gap too narrow", spacing.Spec{Span: inch("9"), Gap: inch("0.000001")}, "count"},
		{"a gap too narrow for numbers", spacing.Spec{Span: huge, Gap: inch("1")}, "count"},
		{"limits too narrow", spacing.Spec{Span: inch("9"), Most: inch("0.000001")}, "most"},
		{"limits too narrow for numbers", spacing.Spec{Span: huge, Most: inch("1")}, "most"},
		{"limits too narrow below", spacing.Spec{Span: huge, Least: inch("1")}, "count"},
		{"limits crossed", spacing.Spec{Span: inch("9"), Least: inch("3"), Most: inch("2")}, "most"},
		{"between 3 and 4 1/2", spacing.Spec{Span: inch("9"), Least: inch("3 1/2"), Most: inch("4")}, "most none"},
		{"one gap is less already", spacing.Spec{Span: inch("9"), Least: inch("10")}, "least none"},
		{"a stretch is less", spacing.Spec{Span: inch("9"), Least: inch("2"), Pinned: inches("1")}, "least none"},
		{"a count that the gap denies", spacing.Spec{Span: inch("9"), Count: 5, Gap: inch("3")}, "count"},
		{"a count beside a gap and limits that none keeps", spacing.Spec{Span: inch("9"), Count: 5, Gap: inch("3"), Least: inch("3 1/2"), Most: inch("4")}, "most none"},
		{"a count that the limits deny", spacing.Spec{Span: inch("9"), Count: 2, Most: inch("3")}, "most"},
		{"and below", spacing.Spec{Span: inch("9"), Count: 10, Least: inch("3")}, "least"},
		{"a count between limits that no count keeps", spacing.Spec{Span: inch("9"), Count: 3, Least: inch("3 1/2"), Most: inch("4")}, "most"},
		{"points out of order", spacing.Spec{Span: inch("9"), Count: 9, Pinned: inches("3", "2", "9")}, "pinned[1] pinned[2]"},
		{"a point before the first", spacing.Spec{Span: inch("9"), First: inch("3"), Count: 9, Pinned: inches("3")}, "pinned[0]"},
		{"too many points", spacing.Spec{Span: inch("9"), Count: 9, Pinned: many}, "pinned"},
	} {
		_, err := c.d.Lay()
		checkRefused(t, c.d, err)
		var faults fault.Faults
		errors.As(err, &faults)
		var fields []string
		for _, f := range faults {
			fields = append(fields, f.Path)
			if f.Kind == spacing.ErrNoCount {
				fields = append(fields, "none")
			}
		}
		if got := strings.Join(fields, " "); got != c.fields {
			t.Errorf("%s: faults in %s, want %s\n%v", c.why, got, c.fields, err)
		}
	}
}

// TestBounds: the greatest counts are laid.
func TestBounds(t *testing.T) {
	d := spacing.Spec{Span: inch("100"), Count: spacing.MaxMarks}
	p, err := d.Lay()
	if err != nil || len(p.Places) != spacing.MaxMarks || p.Places[spacing.MaxMarks-1] != d.Span {
		t.Errorf("%d places, %v", len(p.Places), err)
	}
	d.Ring = true
	for k := range int64(spacing.MaxPinned) {
		d.Pinned = append(d.Pinned, units.Inch.Frac(k+1, spacing.MaxPinned+1).Add(units.Inch.Frac(k*k, 1e6)))
	}
	if p, err = d.Lay(); err != nil || len(p.Stretches) != spacing.MaxPinned+1 {
		t.Errorf("%d stretches, %v", len(p.Stretches), err)
	}
}

func FuzzLay(f *testing.F) {
	f.Add(int64(220), int64(10), int64(10), 8, int64(0), int64(0), int64(0), int64(8), int64(70), uint8(0))
	f.Add(int64(150), int64(0), int64(0), 4, int64(0), int64(0), int64(0), int64(1), int64(0), uint8(1))
	f.Add(int64(1<<62), int64(3), int64(1), 0, int64(7), int64(5), int64(1<<61), int64(7), int64(-1), uint8(6))
	f.Fuzz(func(t *testing.T, span, first, last int64, count int, gap, least, most, den, pin int64, flags uint8) {
		if den == 0 {
			den = 1
		}
		l := func(n int64) units.Length { return units.Inch.Frac(n, den) }
		d := spacing.Spec{Span: l(span), First: l(first), Last: l(last), Count: count, Gap: l(gap), Least: l(least), Most: l(most),
			Ring: flags&1 > 0, HalfFirst: flags&2 > 0, HalfLast: flags&4 > 0}
		if pin != 0 {
			d.Pinned = []units.Length{l(pin)}
		}
		p, err := d.Lay()
		switch {
		case err != nil:
			checkRefused(t, d, err)
		case p.Spec.Count <= 1000:
			checkLaid(t, d, p)
		}
	})
}

// The highwayman's coat: a button at the neck, one at the waist, one at the hem,
// and others about 3 in apart.
func ExampleSpec_Lay() {
	p, err := spacing.Spec{
		Span:   units.MustParse("24 in"),
		First:  units.MustParse("5/8 in"),
		Last:   units.MustParse("1 in"),
		Gap:    units.MustParse("3 in"),
		Pinned: []units.Length{units.MustParse("15 in")},
	}.Lay()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Spec.Count, "buttons")
	for _, s := range p.Stretches {
		fmt.Println(s.Gaps, "gaps of", s.Gap, "from", s.From, "to", s.To)
	}
	fmt.Println(p.Places)
	// Output:
	// 9 buttons
	// 5 gaps of 2 7/8 in from 5/8 in to 15 in
	// 3 gaps of 2 2/3 in from 15 in to 23 in
	// [5/8 in 3 1/2 in 6 3/8 in 9 1/4 in 12 1/8 in 15 in 17 2/3 in 20 1/3 in 23 in]
}

// Limits that no whole number of gaps keeps are refused, and the neighbours named.
func ExampleErrNoCount() {
	_, err := spacing.Spec{
		Span:  units.MustParse("9 in"),
		Least: units.MustParse("3 1/2 in"),
		Most:  units.MustParse("4 in"),
	}.Lay()
	fmt.Println(err)
	// Output: most 4 in: no whole number of gaps, want limits about 4 1/2 in (gaps: 2) or 3 in (gaps: 3) from 0 in to 9 in
}
