package spacing

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// Bounds of a [Spec].
const (
	MaxMarks  = 10_000 // most marks
	MaxPinned = 1000   // most pinned points
)

// A Spec is a row of marks in equal gaps along a span: buttons on a front, tucks on a
// yoke, quarter marks round a neck. Places are measured from the start of the span.
//
// Count, gap, least or most is needed. Where count is not given it follows, by
// stretches, if there are pinned points:
//
//	gap            the number whose gap is nearest to it, of two as near the fewer
//	most           the fewest marks with no gap greater
//	least          the most marks with no gap less
//	least, most    the fewest within both
//
// Gap is what one would like; least and most are kept. A count given beside them
// must agree. Pinned points divide the span into stretches; a count alone is shared
// among them so that the widest gap is as narrow as can be.
type Spec struct {
	// Span is the whole, from its start to its end, or once round a ring.
	Span units.Length `json:"span,omitzero"`
	// First is how far from the start the gaps begin. May be omitted; they begin there.
	First units.Length `json:"first,omitzero"`
	// Last is how far from the end the gaps end. May be omitted; they end there.
	Last units.Length `json:"last,omitzero"`
	// Count is how many marks there are. May be omitted; it then follows from the gaps.
	Count int `json:"count,omitzero"`
	// Gap is the gap wanted, from one mark to the next. May be omitted.
	Gap units.Length `json:"gap,omitzero"`
	// Least is the least gap that serves. May be omitted.
	Least units.Length `json:"least,omitzero"`
	// Most is the greatest gap that serves. May be omitted.
	Most units.Length `json:"most,omitzero"`
	// Ring says that the span closes: the last gap leads round to the first mark.
	Ring bool `json:"ring,omitzero"`
	// HalfFirst says that half a gap lies before the first mark.
	HalfFirst bool `json:"halfFirst,omitzero"`
	// HalfLast says that half a gap lies after the last mark.
	HalfLast bool `json:"halfLast,omitzero"`
	// Pinned are places that have a mark whatever the gap, rising. May be omitted.
	Pinned []units.Length `json:"pinned,omitzero"`
}

// A Stretch is a part of the span that is divided by itself.
type Stretch struct {
	From units.Length `json:"from,omitzero"` // From is where it begins: at a mark, or half a gap before one.
	To   units.Length `json:"to,omitzero"`   // To is where it ends: at a mark, or half a gap after one.
	Gaps int          `json:"gaps,omitzero"` // Gaps is how many whole gaps it holds.
	Gap  units.Length `json:"gap,omitzero"`  // Gap is from one mark to the next.
}

// A Plan is where the marks lie.
type Plan struct {
	Spec      Spec           `json:"spec,omitzero"`      // Spec is the row as solved.
	Stretches []Stretch      `json:"stretches,omitzero"` // Stretches are the parts that are divided each by itself: one, or one more than there are pinned points.
	Places    []units.Length `json:"places,omitzero"`    // Places are the exact places of the marks from the start of the span. A ring is gone round once.
}

// ErrNoCount is the fault of limits within which no whole number of gaps lies. It names
// the gaps on either side.
const ErrNoCount fault.Kind = "no whole number of gaps"

// Lay finds where the marks lie. The faults are [fault.Faults].
func (d Spec) Lay() (Plan, error) {
	var a fault.Audit
	all := d.divide(&a)
	if a.Failed() {
		return Plan{}, a.Err()
	}
	d.Count = d.count(all)
	return Plan{Spec: d, Stretches: all, Places: d.places(all)}, nil
}

// count is how many marks the stretches have.
func (d Spec) count(all []Stretch) int {
	n := 1
	if d.Ring {
		n = 0
	}
	for _, s := range all {
		n += s.Gaps
	}
	return n
}

// places are the exact places of the marks.
func (d Spec) places(all []Stretch) []units.Length {
	places := make([]units.Length, 0, d.Count)
	for i, s := range all {
		last := s.Gaps
		if i < len(all)-1 || d.Ring {
			last-- // the next stretch begins with it, or it is the first
		}
		at := s.From
		if d.HalfFirst && i == 0 {
			at = at.Add(s.Gap.DivInt(2))
		}
		for k := 0; k <= last; k++ {
			places = append(places, at.Add(s.Gap.MulInt(int64(k))))
		}
	}
	return places
}

// end is where the gaps end.
func (d Spec) end() units.Length {
	if d.Ring {
		return d.First.Add(d.Span)
	}
	return d.Span.Sub(d.Last)
}

// stretches are the parts of the span with no gaps yet.
func (d Spec) stretches() []Stretch {
	all := make([]Stretch, len(d.Pinned)+1)
	from := d.First
	for i, at := range d.Pinned {
		all[i].From, all[i].To = from, at
		from = at
	}
	last := &all[len(all)-1]
	last.From, last.To = from, d.end()
	return all
}

// halves is how many half gaps stretch i of n has.
func (d Spec) halves(i, n int) int64 {
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

// divide is the stretches with their gaps.
func (d Spec) divide(a *fault.Audit) []Stretch {
	if d.check(a); a.Failed() {
		return nil
	}
	all := d.stretches()
	gaps := int64(d.Count) - 1
	if d.Ring {
		gaps++
	}
	if d.Gap.Sign() > 0 || d.Least.Sign() > 0 || d.Most.Sign() > 0 {
		var b fault.Audit
		d.byGap(all, &b)
		switch {
		case b.Failed() && (d.Count == 0 || d.Gap.Sign() > 0):
			a.Include("", b.Err())
			return nil
		case !b.Failed() && (d.Count == 0 || d.count(all) == d.Count):
			return all
		case d.Gap.Sign() > 0:
			a.Fault("count", strconv.Itoa(d.Count), strconv.Itoa(d.count(all))+" (gap)", fault.Conflict)
			return nil
		}
	}
	d.share(all, gaps, a)
	return all
}

// byGap finds the gaps of each stretch by Gap, Least and Most.
func (d Spec) byGap(all []Stretch, a *fault.Audit) {
	total := int64(0)
	for i := range all {
		s, halves := &all[i], d.halves(i, len(all))
		long, half := s.To.Sub(s.From), units.RatioOf(halves, 2)
		fewest, most := 1-min(halves, 1), int64(MaxMarks)
		low, high, ok := fewest, most, true
		if d.Most.Sign() > 0 {
			low, ok = long.Div(d.Most).Sub(half).Int(units.Up)
			low = max(low, fewest)
		}
		if d.Least.Sign() > 0 && ok {
			if n, fits := long.Div(d.Least).Sub(half).Int(units.Down); fits {
				high = min(n, most)
			}
		}
		if !ok || low > most {
			a.Fault("most", d.Most.String(), "a gap with at most "+strconv.Itoa(MaxMarks)+" marks", fault.Range)
			return
		}
		if low > high {
			d.noCount(s, high, fewest, halves, a)
			return
		}
		n := low
		switch {
		case d.Gap.Sign() > 0:
			below, fits := long.Div(d.Gap).Sub(half).Int(units.Down)
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
			a.Fault("count", strconv.FormatInt(total, 10)+" or more", "at most "+strconv.Itoa(MaxMarks), fault.Range)
			return
		}
	}
}

// noCount says between which gaps the limits fall.
func (d Spec) noCount(s *Stretch, n, fewest, halves int64, a *fault.Audit) {
	path, got := "most", d.Most
	if got.IsZero() {
		path, got = "least", d.Least
	}
	want := ""
	for k := max(n, fewest); k <= max(n+1, fewest); k++ {
		if want != "" {
			want += " or "
		}
		s.part(k, halves)
		want += s.Gap.String() + " (gaps: " + strconv.FormatInt(k, 10) + ")"
	}
	a.Fault(path, got.String(), "limits about "+want+" from "+s.From.String()+" to "+s.To.String(), ErrNoCount)
}

// share divides the stretches into so many gaps in all, the widest as narrow as can
// be: a gap goes where the widest is. The start is what is at least needed.
func (d Spec) share(all []Stretch, gaps int64, a *fault.Audit) {
	n := int64(len(all))
	halves := d.halves(0, 1)
	long := d.end().Sub(d.First)
	// With this gap taken up in each stretch there are no more than gaps in all.
	var start units.Length
	if 2*(gaps-n)+halves > 0 {
		start = long.MulInt(2).DivInt(2*(gaps-n) + halves)
	}
	left := gaps
	for i := range all {
		h := d.halves(i, len(all))
		least := 1 - min(h, 1)
		if !start.IsZero() {
			k, _ := all[i].To.Sub(all[i].From).Div(start).Sub(units.RatioOf(h, 2)).Int(units.Up)
			least = max(least, k)
		}
		left -= least
		all[i].part(least, h)
	}
	if left < 0 {
		a.Fault("count", strconv.Itoa(d.Count), "at least "+strconv.FormatInt(int64(d.Count)-left, 10)+", for the ends and the pinned points", fault.Range)
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
			a.Fault("least", d.Least.String(), "at most {0}, a gap of so many marks", fault.Conflict, s.Gap)
			break
		}
	}
	for _, s := range all {
		if !d.Most.IsZero() && d.Most.Less(s.Gap) {
			a.Fault("most", d.Most.String(), "at least {0}, a gap of so many marks", fault.Conflict, s.Gap)
			break
		}
	}
}

// check looks at each field by itself and at what it is within.
func (d Spec) check(a *fault.Audit) {
	a.Need("span", d.Span)
	a.NotNegative("first", d.First)
	margins := d.First
	if !d.Ring {
		margins = margins.Add(d.Last)
	}
	if d.First.Sign() >= 0 && d.Last.Sign() >= 0 && d.Span.Sign() > 0 && !margins.Less(d.Span) {
		a.Fault("first", d.First.String(), "less than {0} (what is left of span)", fault.Range, d.Span.Sub(margins.Sub(d.First)))
	}
	a.NotNegative("last", d.Last)
	if d.Count == 0 && d.Gap.IsZero() && d.Least.IsZero() && d.Most.IsZero() {
		a.Fault("count", "", "count, gap, least or most", fault.Missing)
	} else {
		a.Count("count", d.Count, 0, MaxMarks)
	}
	a.NotNegative("gap", d.Gap)
	a.NotNegative("least", d.Least)
	a.NotNegative("most", d.Most)
	if d.Most.Sign() > 0 {
		fault.AtLeast(a, "most", d.Most, d.Least, "least", fault.Conflict)
	}
	for _, end := range []struct {
		path, got string
		given     bool
	}{{"last", d.Last.String(), d.Last.Sign() > 0}, {"halfFirst", "true", d.HalfFirst}, {"halfLast", "true", d.HalfLast}} {
		if d.Ring && end.given {
			a.Fault(end.path, end.got, "none in a ring", fault.Unused)
		}
	}
	a.Count("pinned", len(d.Pinned), 0, MaxPinned)
	if len(d.Pinned) > MaxPinned {
		return
	}
	before := d.First
	for i, at := range d.Pinned {
		if !before.Less(at) || !at.Less(d.end()) {
			a.Fault("pinned["+strconv.Itoa(i)+"]", at.String(), "more than {0} and less than {1}", fault.Range, before, d.end())
		}
		before = at
	}
}
