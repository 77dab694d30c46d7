package buttons

import (
	"strconv"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/spacing"
	"example.com/clothyard/units/ticket"
)

// A Row is a row of buttons with equal gaps, from the first place to the last.
// All places are measured along the row from one named end. Zero means not
// given. What is left out is found by [Row]:
//
//	given                            found
//	First, Last, Count               Gap
//	First, Count, Gap                Last
//	Last, Count, Gap                 First
//	First, Last, Gap                 Count, if it comes out whole
//	First, Last, MinGap, MaxGap      Count, the fewest buttons within both
//	First, Last, MinGap              Count, the most buttons
//	First, Last, MaxGap              Count, the fewest buttons
//	First, Last, Have                Count: all there are
//	First, Count 1                   a single button
//
// Have stands in for Count where nothing else gives it. Where there are fewer than
// Count, those there are go from the first place to the last. What is given twice and
// agrees is accepted.
//
// Pins are places that have a button whatever the gap, as at the bust line and the
// waist. The gaps between them are as equal as can be, and Gap is then the one wanted.
type Row struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Fastening is what the row is made of: buttons, hooks and eyes, or snaps. May be
	// omitted; the row is then one of buttons.
	Fastening Fastening `json:"fastening,omitzero"`
	// Hem is the place of the finished hem, from the named end. May be omitted; first, last
	// and maxGap then have no defaults.
	Hem units.Length `json:"hem,omitzero"`
	// First is the place of the first button, from the named end. May be omitted where it
	// follows, or where hem is given; the default is 1 in, or 2.5 cm on a metric tape.
	First units.Length `json:"first,omitzero"`
	// Last is the place of the last button, from the same end. May be omitted where it
	// follows, or where hem is given; the default is 4 in above that, or 10 cm on a metric
	// tape.
	Last units.Length `json:"last,omitzero"`
	// Pins are places between them that have a button, rising. May be omitted.
	Pins []units.Length `json:"pins,omitzero"`
	// Count is how many buttons the pattern has. May be omitted; it then follows.
	Count int `json:"count,omitzero"`
	// Gap is from one place to the next. May be omitted; it then follows.
	Gap units.Length `json:"gap,omitzero"`
	// MinGap is the least gap that serves. May be omitted.
	MinGap units.Length `json:"minGap,omitzero"`
	// MaxGap is the greatest gap that serves. May be omitted; where hem or fastening is
	// given and nothing tells how many, the default is 3 1/2 in for buttons, 1 1/4 in for
	// hooks and 2 in for snaps, or 9, 3 and 5 cm on a metric tape.
	MaxGap units.Length `json:"maxGap,omitzero"`
	// Hole is the length of the holes where they lie along the row. What is clear between
	// two of them is then told. May be omitted.
	Hole units.Length `json:"hole,omitzero"`
	// Cloth is the thickness of the cloth that lies under a buttoned button: the shank is as
	// long. May be omitted.
	Cloth units.Length `json:"cloth,omitzero"`
	// SetBack is from the edge to the hooks or snaps. May be omitted; the default is 1/8 in,
	// or 3 mm on a metric tape.
	SetBack units.Length `json:"setBack,omitzero"`
	// From is the named end. May be omitted; the default is the top edge.
	From string `json:"from,omitzero"`
	// Step is the mark of the tape to which places are read. May be omitted; the default
	// is 1/16 in, or 1 mm on a metric tape.
	Step units.Length `json:"step,omitzero"`
	// Have is how many buttons there are: no more are used. May be omitted.
	Have int `json:"have,omitzero"`
	// Months is the age of the wearer in months, for the cautions. May be omitted.
	Months int `json:"months,omitzero"`
}

const topEdge = "the top edge"

// solve is the row with what follows and what is assumed, and how many buttons are set.
func (r Row) solve() (s Row, set int, assumed []string, err error) {
	var a fault.Audit
	given := r
	fillTape(&a, &r.Tape, r)
	r = r.defaults()
	assumed = noun.Assumed(given, r)
	if up, _ := spacingOf(hemRule, r.Tape); given.lastByHem() && r.First.Sign() > 0 && !r.First.Less(r.Last) {
		a.Fault("hem", r.Hem.String(), "more than {0}, or last", ErrPastEdge, r.First.Add(up))
		return r, 0, nil, a.Err(assumed...)
	}
	if r.audit(&a); a.Failed() {
		return r, 0, nil, a.Err(assumed...)
	}
	if r.single() {
		r.Count, r.Last = 1, r.First
	} else if r = r.fill(&a); !a.Failed() {
		digits(&a, "first", given.First, r.Count)
		digits(&a, "last", given.Last, r.Count)
		digits(&a, "gap", given.Gap, r.Count)
		digits(&a, "step", given.Step, r.Count)
		digits(&a, "hole", given.Hole, r.Count)
	}
	set = r.Count
	if r.Have > 0 {
		set = min(set, r.Have)
	}
	return r, set, assumed, a.Err(assumed...)
}

// defaults is the row with what stands where nothing is given.
func (r Row) defaults() Row {
	counted := r.Count != 0 || r.Have != 0
	if r.Hem.Sign() > 0 {
		if r.First.IsZero() && (r.Last.IsZero() || r.Gap.IsZero() || !counted) {
			r.First, _ = spacingOf(neckRule, r.Tape)
		}
		if r.lastByHem() {
			up, _ := spacingOf(hemRule, r.Tape)
			r.Last = r.Hem.Sub(up)
		}
	}
	if (r.Hem.Sign() > 0 || r.Fastening != NoFastening) && !counted && r.Gap.IsZero() && !r.limited() {
		r.MaxGap, _ = spacingOf(r.gapRule(), r.Tape)
	}
	if r.sewn() && r.SetBack.IsZero() {
		r.SetBack, _ = spacingOf("edge to "+r.Fastening.String(), r.Tape)
	}
	if r.From == "" {
		r.From = topEdge
	}
	if r.Step.IsZero() {
		r.Step = sixteenth(r.Tape)
	}
	return r
}

// lastByHem reports whether the last place is not given and follows from the hem.
func (r Row) lastByHem() bool {
	return r.Hem.Sign() > 0 && r.Last.IsZero() && !r.single() && (r.Gap.IsZero() || r.Count == 0 && r.Have == 0)
}

// sewn reports whether the row has hooks or snaps, which are sewn to both edges.
func (r Row) sewn() bool { return r.Fastening == Hook || r.Fastening == Snap }

// gapRule is the item of the table from which maxGap comes.
func (r Row) gapRule() string {
	if r.sewn() {
		return "gap, " + r.Fastening.String()
	}
	return gapRule
}

// single reports whether r is one button and no row.
func (r Row) single() bool {
	return r.Count == 1 || r.Count == 0 && r.Have == 1 && r.Last.IsZero() && r.Gap.IsZero() && !r.limited() && len(r.Pins) == 0
}

// limited reports whether the gap has a limit.
func (r Row) limited() bool { return !r.MinGap.IsZero() || !r.MaxGap.IsZero() }

// audit checks each field, and that enough is given, in the order of the fields.
func (r Row) audit(a *fault.Audit) {
	single := r.single()
	first, last, gap := !r.First.IsZero(), !r.Last.IsZero(), !r.Gap.IsZero()
	counted := r.Count != 0 || r.Have != 0

	if r.Fastening != NoFastening {
		fastenings.Check(a, "fastening", r.Fastening)
	}
	a.NotNegative("hem", r.Hem)
	if r.Hem.Sign() > 0 {
		fault.AtLeast(a, "hem", r.Hem, r.Last.Max(r.First), "the last of the row", ErrPastEdge)
	}
	if first || single || !(last && gap && counted) {
		a.Need("first", r.First)
	}
	switch {
	case single && last && r.Last != r.First:
		a.Fault("last", r.Last.String(), "{0}, the first of a single button", fault.Conflict, r.First)
	case single:
	case last && r.Last.Sign() > 0 && r.First.Sign() > 0 && !r.First.Less(r.Last):
		a.Fault("last", r.Last.String(), "more than {0} (first)", fault.Range, r.First)
	case last || !(gap && counted):
		a.Need("last", r.Last)
	}
	switch {
	case r.Count < 0:
		a.Fault("count", strconv.Itoa(r.Count), "1 or more", fault.Sign)
	case r.Count > MaxCount:
		whole(a, "count", r.Count, MaxCount)
	case r.Count > 0:
	case r.Have == 0 && !(first && last && (gap || r.limited() || len(r.Pins) > 0)):
		a.Fault("count", "", "count or have, or first and last with gap, minGap or maxGap", fault.Missing)
	}
	if single {
		unused(a, "gap", r.Gap, "for a single button")
		unused(a, "minGap", r.MinGap, "for a single button")
		unused(a, "maxGap", r.MaxGap, "for a single button")
	} else {
		a.NotNegative("gap", r.Gap)
		a.NotNegative("minGap", r.MinGap)
		a.NotNegative("maxGap", r.MaxGap)
		if r.MaxGap.Sign() > 0 && r.MaxGap.Less(r.MinGap) {
			a.Fault("maxGap", r.MaxGap.String(), "at least {0} (minGap)", fault.Conflict, r.MinGap)
		}
	}
	if r.sewn() {
		unused(a, "hole", r.Hole, "for hooks and snaps")
		unused(a, "cloth", r.Cloth, "for hooks and snaps")
	} else {
		unused(a, "setBack", r.SetBack, "for buttons")
	}
	a.NotNegative("hole", r.Hole)
	a.NotNegative("cloth", r.Cloth)
	a.NotNegative("setBack", r.SetBack)
	a.Text("from", r.From)
	a.NotNegative("step", r.Step)
	whole(a, "have", r.Have, MaxCount)
	if len(r.Pins) > 0 && (!first || !last) {
		a.Fault("pins", ticket.Of(len(r.Pins)).String(), "none without first and last", fault.Unused)
	}
	if r.Have == 1 && !single {
		a.Fault("have", "1", "at least 2 for a row with last or a gap", fault.Conflict)
	}
	whole(a, "months", r.Months, MaxMonths)
}

// fill finds Count, then the one of First, Last and Gap that is left out, and
// compares where none is.
func (r Row) fill(a *fault.Audit) Row {
	if len(r.Pins) > 0 {
		return r.pinned(a)
	}
	span := r.Last.Sub(r.First)
	pinned := !r.First.IsZero() && !r.Last.IsZero()
	if r.Count == 0 {
		switch {
		case pinned && !r.Gap.IsZero():
			r.Count = r.countByGap(a, span)
		case pinned && r.limited():
			least, most := r.gaps(a, span)
			r.Count = least + 1
			if r.MaxGap.IsZero() {
				r.Count = most + 1
			}
		default:
			r.Count = r.Have
		}
		if a.Failed() {
			return r
		}
	}
	gaps := int64(r.Count - 1)
	switch {
	case !pinned && r.First.IsZero():
		if r.First = r.Last.Sub(r.Gap.MulInt(gaps)); r.First.Sign() <= 0 {
			a.Fault("last", r.Last.String(), "more than {0}, what the gaps take", ErrPastEdge, r.Gap.MulInt(gaps))
			return r
		}
	case !pinned:
		r.Last = r.First.Add(r.Gap.MulInt(gaps))
	case r.Gap.IsZero():
		r.Gap = span.DivInt(gaps)
	case r.Gap.MulInt(gaps) != span:
		a.Fault("gap", r.Gap.String(), "{0}, which "+strconv.Itoa(r.Count)+" buttons from first to last make", fault.Conflict, span.DivInt(gaps))
		return r
	}
	if r.Gap.Less(r.MinGap) {
		a.Fault("minGap", r.MinGap.String(), "at most {0}, the gap of "+strconv.Itoa(r.Count)+" buttons", fault.Conflict, r.Gap)
	}
	if !r.MaxGap.IsZero() && r.MaxGap.Less(r.Gap) {
		a.Fault("maxGap", r.MaxGap.String(), "at least {0}, the gap of "+strconv.Itoa(r.Count)+" buttons", fault.Conflict, r.Gap)
	}
	return r
}

// pinned finds Count for a row with pins.
func (r Row) pinned(a *fault.Audit) Row {
	d := r.spaced(r.Count)
	d.Gap, d.Least, d.Most = r.Gap, r.MinGap, r.MaxGap
	if d.Count == 0 && d.Gap.IsZero() && d.Least.IsZero() && d.Most.IsZero() {
		d.Count = r.Have
	}
	p, err := d.Lay()
	if err != nil {
		a.Include("", renamed(err))
		return r
	}
	r.Count = p.Spec.Count
	return r
}

// spaced is the row as so many marks from the first place to the last.
func (r Row) spaced(count int) spacing.Spec {
	d := spacing.Spec{Span: r.Last.Sub(r.First), Count: count}
	for _, at := range r.Pins {
		d.Pinned = append(d.Pinned, at.Sub(r.First))
	}
	return d
}

// renamed is the faults of a spacing by the keys of a row.
func renamed(err error) fault.Faults {
	faults := fault.Under("", err)
	for _, f := range faults {
		switch {
		case f.Path == "least":
			f.Path = "minGap"
		case f.Path == "most":
			f.Path = "maxGap"
		case strings.HasPrefix(f.Path, "pinned"):
			f.Path = "pins" + strings.TrimPrefix(f.Path, "pinned")
			f.Limit = "between first and last, and rising"
		}
	}
	return faults
}

// countByGap is the number of buttons whose gap is exactly Gap.
func (r Row) countByGap(a *fault.Audit, span units.Length) int {
	n, ok := span.Div(r.Gap).Int(units.Down)
	switch {
	case !ok || n >= MaxCount:
		a.Fault("gap", r.Gap.String(), "at least {0} ("+strconv.Itoa(MaxCount)+" buttons)", fault.Range, span.DivInt(MaxCount-1))
	case r.Gap.MulInt(n) != span:
		a.Fault("gap", r.Gap.String(), neighbours(span, n, n+1), ErrNoCount)
	case r.Have > 0 && n+1 > int64(r.Have):
		a.Fault("have", strconv.Itoa(r.Have), "at least "+strconv.FormatInt(n+1, 10)+", which gap asks for", fault.Conflict)
	}
	return int(n + 1)
}

// gaps are the fewest and the most gaps that MinGap, MaxGap and Have allow.
func (r Row) gaps(a *fault.Audit, span units.Length) (least, most int) {
	alone := r.Count == 0 && r.Have == 0 && r.MaxGap.IsZero()
	low, high := int64(1), int64(MaxCount-1)
	if !r.MaxGap.IsZero() {
		n, ok := span.Div(r.MaxGap).Int(units.Up)
		if !ok || n > high {
			a.Fault("maxGap", r.MaxGap.String(), "at least {0} ("+strconv.Itoa(MaxCount)+" buttons)", fault.Range, span.DivInt(high))
			return 0, 0
		}
		low = n
	}
	if !r.MinGap.IsZero() {
		n, ok := span.Div(r.MinGap).Int(units.Down)
		if ok && n < high {
			high = n
		} else if (!ok || n > high) && alone {
			a.Fault("minGap", r.MinGap.String(), "more than {0} ("+strconv.Itoa(MaxCount)+" buttons)", fault.Range, span.DivInt(MaxCount))
			return 0, 0
		}
	}
	if high < low {
		// Without MinGap high is the bound, and low has been held to that.
		a.Fault("minGap", r.MinGap.String(), neighbours(span, low-1, low), ErrNoCount)
		return 0, 0
	}
	if have := int64(r.Have) - 1; r.Have > 0 && have < high {
		if have < low {
			a.Fault("have", strconv.Itoa(r.Have), "at least "+strconv.FormatInt(low+1, 10)+", which the gaps ask for", fault.Conflict)
			return 0, 0
		}
		high = have
	}
	return int(low), int(high)
}

// neighbours names two counts of gaps, one too few and one too many, that a row may
// have.
func neighbours(span units.Length, few, many int64) string {
	t := ""
	for _, gaps := range [...]int64{few, many} {
		if gaps < 1 || gaps >= MaxCount {
			continue
		}
		if t != "" {
			t += ", "
		}
		t += strconv.FormatInt(gaps+1, 10) + " buttons are " + span.DivInt(gaps).String() + " apart"
	}
	return "another limit: " + t
}
