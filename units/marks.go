package units

import (
	"errors"
	"iter"
	"strconv"

	"example.com/clothyard/units/fault"
)

// MaxMarks is the greatest number of marks of a [Division].
const MaxMarks = 1_000_000

// MaxPinned is the greatest number of pinned points of a [Division].
const MaxPinned = 1000

// A Division lays marks on a span in equal gaps: buttons on a front, tucks on a
// yoke, quarter marks round a neck. Places are measured from the start of the
// span. The zero value of a field is "not given".
//
// Count, Gap, Least or Most is needed. Where Count is not given it follows, by
// stretches, if there are pinned points:
//
//	Gap            the number whose gap is nearest to it, of two as near the fewer
//	Most           the fewest marks with no gap greater
//	Least          the most marks with no gap less
//	Least, Most    the fewest within both
//
// Gap is what one would like; Least and Most are kept. A Count given beside them
// must agree. Pinned points divide the span into stretches; a Count alone is shared
// among them so that the widest gap is as narrow as can be.
type Division struct {
	Span      Length   // the whole, from its start to its end, or once round a ring
	First     Length   // from the start to where the gaps begin: the first mark, unless HalfFirst; none if left out
	Last      Length   // from where the gaps end to the end of the span; none in a ring
	Count     int      // how many marks, at most [MaxMarks]
	Gap       Length   // the gap wanted, from one mark to the next
	Least     Length   // the least gap that serves
	Most      Length   // the greatest gap that serves
	Ring      bool     // the span closes: the last gap leads round to the first mark, which is counted once
	HalfFirst bool     // half a gap lies before the first mark, after First; not in a ring
	HalfLast  bool     // half a gap lies after the last mark, before Last; not in a ring
	Pinned    []Length // places that have a mark whatever the gap, rising, at most [MaxPinned]
}

// A Stretch is a part of a [Division] that is divided by itself.
type Stretch struct {
	From, To Length // where it begins and ends: at a mark, or half a gap from one
	Gaps     int    // how many whole gaps it holds
	Gap      Length // from one mark to the next
	half     bool   // it begins with half a gap
}

// ErrDivision is what every [DivisionError] is.
const ErrDivision fault.Kind = "units: no such division"

// ErrNoCount is what a [DivisionError] is, besides, where no whole number of gaps
// lies within Least and Most. It names the gaps on either side.
const ErrNoCount fault.Kind = "units: no whole number of gaps"

// A DivisionError is one thing wrong with a [Division].
type DivisionError struct {
	Field string // the field, as in Pinned[2]
	Got   string // what was given
	Want  string // what would have been right
	Err   error  // [ErrDivision] or [ErrNoCount]
}

// Error names the field, what was given and what would be right.
func (e *DivisionError) Error() string {
	return "units: division: " + e.Field + " " + e.Got + ", want " + e.Want
}

// Unwrap is the kind of fault.
func (e *DivisionError) Unwrap() []error {
	if e.Err == ErrDivision {
		return []error{ErrDivision}
	}
	return []error{e.Err, ErrDivision}
}

// Solve fills Count. The error joins a [DivisionError] for each fault, in the order
// of the fields; d is then as it was.
func (d Division) Solve() (Division, error) {
	all, err := d.divide()
	if err != nil {
		return d, err
	}
	d.Count = d.count(all)
	return d, nil
}

// count is how many marks the stretches have.
func (d Division) count(all []Stretch) int {
	n := 1
	if d.Ring {
		n = 0
	}
	for i := range all {
		n += all[i].Gaps
	}
	return n
}

// Stretches yields the parts that are divided each by itself: one, or one more than
// there are pinned points. Where d cannot be solved nothing is yielded.
func (d Division) Stretches() iter.Seq[Stretch] {
	return func(yield func(Stretch) bool) {
		all, _ := d.divide()
		for _, s := range all {
			if !yield(s) {
				return
			}
		}
	}
}

// Places yields the exact place of each mark, from the start of the span. A ring is
// gone round once, from First. Where d cannot be solved nothing is yielded.
func (d Division) Places() iter.Seq[Length] {
	return func(yield func(Length) bool) {
		all, _ := d.divide()
		for i, s := range all {
			last := s.Gaps
			if i < len(all)-1 || d.Ring {
				last-- // the next stretch begins with it, or it is the first
			}
			at := s.From
			if s.half {
				at = at.Add(s.Gap.DivInt(2))
			}
			for k := 0; k <= last; k++ {
				if !yield(at.Add(s.Gap.MulInt(int64(k)))) {
					return
				}
			}
		}
	}
}

// Marks yields each place of [Division.Places] rounded to step, with its residue:
// the exact place is mark + residue. A step of zero or less does not round.
func (d Division) Marks(step Length, m Mode) iter.Seq2[Length, Length] {
	return func(yield func(mark, residue Length) bool) {
		for at := range d.Places() {
			if !yield(at.Round(step, m)) {
				return
			}
		}
	}
}

// end is where the gaps end.
func (d Division) end() Length {
	if d.Ring {
		return d.First.Add(d.Span)
	}
	return d.Span.Sub(d.Last)
}

// stretches are the parts of the span with no gaps yet.
func (d Division) stretches() []Stretch {
	all := make([]Stretch, len(d.Pinned)+1)
	from := d.First
	for i, at := range d.Pinned {
		all[i].From, all[i].To = from, at
		from = at
	}
	all[0].half = d.HalfFirst
	last := &all[len(all)-1]
	last.From, last.To = from, d.end()
	return all
}

// halves is how many half gaps stretch i of n has.
func (d Division) halves(i, n int) int64 {
	h := int64(0)
	if d.HalfFirst && i == 0 {
		h++
	}
	if d.HalfLast && i == n-1 {
		h++
	}
	return h
}

// part divides s into so many gaps and half gaps.
func (s *Stretch) part(gaps, halves int64) {
	s.Gaps, s.Gap = int(gaps), s.To.Sub(s.From).MulInt(2).DivInt(2*gaps+halves)
}

// faults collects what is wrong with a division.
type faults []error

func (f *faults) add(field, got, want string, err error) {
	*f = append(*f, &DivisionError{field, got, want, err})
}

// divide is the solved stretches.
func (d Division) divide() ([]Stretch, error) {
	var f faults
	if d.check(&f); len(f) > 0 {
		return nil, errors.Join(f...)
	}
	all := d.stretches()
	gaps := int64(d.Count) - 1
	if d.Ring {
		gaps++
	}
	if ranged := d.Least.Sign() > 0 || d.Most.Sign() > 0; d.Gap.Sign() > 0 || ranged {
		d.byGap(all, &f)
		agree := d.Count == 0 || d.count(all) == d.Count
		if len(f) > 0 && (d.Count == 0 || d.Gap.Sign() > 0) {
			return nil, errors.Join(f...)
		}
		if len(f) == 0 && agree {
			return all, nil
		}
		if d.Gap.Sign() > 0 {
			f.add("Count", strconv.Itoa(d.Count), strconv.Itoa(d.count(all))+", which Gap makes", ErrDivision)
			return nil, errors.Join(f...)
		}
		f = nil
	}
	d.share(all, gaps, &f)
	if len(f) > 0 {
		return nil, errors.Join(f...)
	}
	return all, nil
}

// byGap finds the gaps of each stretch by Gap, Least and Most.
func (d Division) byGap(all []Stretch, f *faults) {
	total := int64(0)
	for i := range all {
		s, halves := &all[i], d.halves(i, len(all))
		long, half := s.To.Sub(s.From), RatioOf(halves, 2)
		fewest, most := 1-min(halves, 1), int64(MaxMarks)
		low, high, ok := fewest, most, true
		if d.Most.Sign() > 0 {
			low, ok = long.Div(d.Most).Sub(half).Int(Up)
			low = max(low, fewest)
		}
		if d.Least.Sign() > 0 && ok {
			if n, fits := long.Div(d.Least).Sub(half).Int(Down); fits {
				high = min(n, most)
			}
		}
		if !ok || low > most {
			f.add("Most", d.Most.String(), "a gap with at most "+strconv.Itoa(MaxMarks)+" marks", ErrDivision)
			return
		}
		if low > high {
			d.noCount(s, high, fewest, halves, f)
			return
		}
		n := low
		switch {
		case d.Gap.Sign() > 0:
			below, fits := long.Div(d.Gap).Sub(half).Int(Down)
			if !fits {
				below = most
			}
			n = min(max(below, low), high)
			next := min(n+1, high)
			s.part(n, halves)
			over := s.Gap.Sub(d.Gap).Abs()
			if s.part(next, halves); below >= low && s.Gap.Sub(d.Gap).Abs().Less(over) {
				n = next
			}
		case d.Most.IsZero():
			n = high
		}
		s.part(n, halves)
		if total += n; total >= MaxMarks {
			f.add("Count", strconv.FormatInt(total, 10)+" or more", "at most "+strconv.Itoa(MaxMarks)+" marks", ErrDivision)
			return
		}
	}
}

// noCount says between which gaps the limits fall.
func (d Division) noCount(s *Stretch, n, fewest, halves int64, f *faults) {
	field, got := "Most", d.Most
	if got.IsZero() {
		field, got = "Least", d.Least
	}
	want := ""
	for k := max(n, fewest); k <= max(n+1, fewest); k++ {
		if want != "" {
			want += " or "
		}
		s.part(k, halves)
		want += s.Gap.String() + " (gaps: " + strconv.FormatInt(k, 10) + ")"
	}
	f.add(field, got.String(), "limits about "+want+" from "+s.From.String()+" to "+s.To.String(), ErrNoCount)
}

// share divides the stretches into so many gaps in all, the widest as narrow as can
// be: a gap goes where the widest is. The start is what is at least needed.
func (d Division) share(all []Stretch, gaps int64, f *faults) {
	n := int64(len(all))
	halves := d.halves(0, 1)
	long := d.end().Sub(d.First)
	// With this gap taken up in each stretch there are no more than gaps in all.
	var start Length
	if 2*(gaps-n)+halves > 0 {
		start = long.MulInt(2).DivInt(2*(gaps-n) + halves)
	}
	left := gaps
	for i := range all {
		h := d.halves(i, len(all))
		least := 1 - min(h, 1)
		if !start.IsZero() {
			k, _ := all[i].To.Sub(all[i].From).Div(start).Sub(RatioOf(h, 2)).Int(Up)
			least = max(least, k)
		}
		left -= least
		all[i].part(least, h)
	}
	if left < 0 {
		f.add("Count", strconv.Itoa(d.Count), "at least "+strconv.FormatInt(int64(d.Count)-left, 10)+", for the ends and the pinned points", ErrDivision)
		return
	}
	if n == 1 {
		all[0].part(gaps, halves)
		left = 0
	}
	for ; left > 0; left-- {
		widest := 0
		for i := range all {
			if all[widest].Gap.Less(all[i].Gap) {
				widest = i
			}
		}
		all[widest].part(int64(all[widest].Gaps)+1, d.halves(widest, len(all)))
	}
	for _, s := range all {
		if s.Gap.Less(d.Least) {
			f.add("Least", d.Least.String(), "at most "+s.Gap.String()+", a gap of so many marks", ErrDivision)
			break
		}
	}
	for _, s := range all {
		if !d.Most.IsZero() && d.Most.Less(s.Gap) {
			f.add("Most", d.Most.String(), "at least "+s.Gap.String()+", a gap of so many marks", ErrDivision)
			break
		}
	}
}

// check looks at each field by itself and at what it is within.
func (d Division) check(f *faults) {
	if d.Span.Sign() <= 0 {
		f.add("Span", d.Span.String(), "more than 0 in", ErrDivision)
	}
	sign := func(field string, l Length) {
		if l.Sign() < 0 {
			f.add(field, l.String(), "0 in or more", ErrDivision)
		}
	}
	unused := func(field, got string, given bool) {
		if d.Ring && given {
			f.add(field, got, "none in a ring", ErrDivision)
		}
	}
	sign("First", d.First)
	margins := d.First
	if !d.Ring {
		margins = margins.Add(d.Last)
	}
	if d.First.Sign() >= 0 && d.Last.Sign() >= 0 && d.Span.Sign() > 0 && !margins.Less(d.Span) {
		f.add("First", d.First.String(), "less than "+d.Span.Sub(margins.Sub(d.First)).String()+", what is left of Span", ErrDivision)
	}
	sign("Last", d.Last)
	unused("Last", d.Last.String(), d.Last.Sign() > 0)
	if d.Count < 0 || d.Count > MaxMarks {
		f.add("Count", strconv.Itoa(d.Count), "1 to "+strconv.Itoa(MaxMarks), ErrDivision)
	} else if d.Count == 0 && d.Gap.IsZero() && d.Least.IsZero() && d.Most.IsZero() {
		f.add("Count", "0", "Count, Gap, Least or Most", ErrDivision)
	}
	sign("Gap", d.Gap)
	sign("Least", d.Least)
	sign("Most", d.Most)
	if d.Most.Sign() > 0 && d.Most.Less(d.Least) {
		f.add("Most", d.Most.String(), "at least "+d.Least.String()+", which is Least", ErrDivision)
	}
	unused("HalfFirst", "true", d.HalfFirst)
	unused("HalfLast", "true", d.HalfLast)
	if len(d.Pinned) > MaxPinned {
		f.add("Pinned", strconv.Itoa(len(d.Pinned)), "at most "+strconv.Itoa(MaxPinned)+" points", ErrDivision)
		return
	}
	before := d.First
	for i, at := range d.Pinned {
		if !before.Less(at) || !at.Less(d.end()) {
			f.add("Pinned["+strconv.Itoa(i)+"]", at.String(), "more than "+before.String()+" and less than "+d.end().String(), ErrDivision)
		}
		before = at
	}
}
