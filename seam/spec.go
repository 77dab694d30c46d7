package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// A Spec is a seam between two plies. Zero means not given, in every field; see
// [Kind] for which kind reads which, and [Spec.Solve] for what follows from what.
type Spec struct {
	Kind Kind // how it is sewn; there is no default

	// Drafted is the allowance that the pattern drew on the upper ply, from the
	// drafted stitching line to the raw edge. Default 5/8 in, [Standard].
	Drafted units.Length
	// DraftedUnder is the same of the under ply. Default Drafted.
	DraftedUnder units.Length

	// Cut is the allowance actually left on the upper ply when it was cut or
	// trimmed before the first pass, from the drafted stitching line. Default
	// Drafted. Where it is given and differs from Drafted it is also the most
	// that the seam may take from that ply.
	Cut units.Length
	// CutUnder is the same of the under ply. Default DraftedUnder; but where Cut
	// was given and DraftedUnder was not, Cut.
	CutUnder units.Length

	// First is the first pass, from the raw edges as cut, which lie together.
	// Default: see [Spec.Solve].
	First units.Length
	// Second is, for French, the second pass from the fold, and so the width of
	// the ridge; for flat-felled the width of the finished fell, from seam to
	// fold; for bound the finished width of the binding.
	Second units.Length
	// Take is what the seam takes from each ply: First and Second for French,
	// First for the others.
	Take units.Length

	// Trim is what is left of the allowance beyond the first row of stitching
	// before the next stage: of both plies, but for flat-felled of the under ply
	// only. As wide as First it says that nothing is trimmed off. Default 1/8 in
	// for French (or the trim of the printed set, see [Enclosed]) and
	// flat-felled, nothing trimmed for the others.
	Trim units.Length

	// Thickness of one ply, from which [Plan].Turn follows. No default: the turn
	// of cloth is left out unless asked.
	Thickness units.Length

	// Fraying says that the cloth frays, so that trims are kept wider and raw
	// edges are warned of.
	Fraying bool
}

// solver carries a spec while it is solved: what is assumed, what is wrong.
type solver struct {
	Spec
	assumed field
	audit   ticket.Audit
}

// Solve fills in the fields that follow from those given, and then the defaults:
//
//   - French: Take = First + Second, any one from the other two. Where too little
//     is given, the printed set of [Enclosed] whose passes add up to the
//     allowance cut (or to Take), of several the source of highest rank. Where no
//     set is printed: half each of the allowance; with one pass given, 3/8 in
//     first or 1/4 in second.
//   - The others: Take = First, by default the allowance cut.
//   - Flat-felled: Second is by default the printed fell for that First, where
//     there is one, else half of First; bound: 1/4 in.
//
// Where the two plies are cut with unequal allowances, and nothing says what the
// seam takes, First is missing. The faults are [ticket.Faults] in the order of the
// fields: first those of single fields, and where there are none those between
// fields. Solving a solved Spec changes nothing.
func (s Spec) Solve() (Spec, error) {
	v := solver{Spec: s}
	err := v.solve()
	return v.Spec, err
}

func (v *solver) solve() error {
	v.each()
	if v.audit.Failed() {
		return v.audit.Err()
	}
	v.plies()
	switch v.Kind {
	case French:
		v.french()
	case FlatFelled:
		v.felled()
	case Bound:
		v.bound()
	default:
		v.plain()
	}
	return v.audit.Err()
}

// each looks at every field by itself.
func (v *solver) each() {
	switch {
	case v.Kind == NoKind:
		v.audit.Fault("Kind", "", kindList(), ticket.ErrMissing)
	case !v.Kind.Valid():
		v.audit.Fault("Kind", v.Kind.String(), kindList(), ticket.ErrUnknown)
	}
	lengths := [...]units.Length{v.Drafted, v.DraftedUnder, v.Cut, v.CutUnder, v.First, v.Second, v.Take, v.Trim, v.Thickness}
	for i, l := range lengths {
		switch {
		case v.Kind.Valid() && kindFields[v.Kind]&(1<<i) == 0:
			if !l.IsZero() {
				v.audit.Unused(fieldNames[i], l, false, v.Kind)
			}
		case l.Sign() < 0:
			v.audit.NotNegative(fieldNames[i], l)
		}
	}
}

// fill puts a default into a field not given, and notes it.
func (v *solver) fill(to *units.Length, f field, l units.Length) {
	if to.IsZero() {
		*to = l
		v.assumed |= f
	}
}

// plies fills the allowances of both plies.
func (v *solver) plies() {
	under := !v.DraftedUnder.IsZero()
	cut := !v.Cut.IsZero()
	v.fill(&v.Drafted, fieldDrafted, Standard())
	v.fill(&v.DraftedUnder, fieldDraftedUnder, v.Drafted)
	v.fill(&v.Cut, fieldCut, v.Drafted)
	if cut && !under {
		v.fill(&v.CutUnder, fieldCutUnder, v.Cut)
	}
	v.fill(&v.CutUnder, fieldCutUnder, v.DraftedUnder)
}

// whole is the allowance cut where both plies have the same.
func (v *solver) whole() (units.Length, bool) { return v.Cut, v.Cut == v.CutUnder }

// single solves the kinds whose seam is sewn in one row: Take = First.
func (v *solver) single() {
	switch {
	case v.First.IsZero() && v.Take.IsZero():
		if all, ok := v.whole(); ok {
			v.fill(&v.First, fieldFirst, all)
		}
	case v.First.IsZero():
		v.First = v.Take
	}
	if v.Take.IsZero() {
		v.Take = v.First
	}
	v.enough()
	switch {
	case v.First.IsZero():
		v.missing()
	case v.Take != v.First:
		v.audit.Fault("Take", v.Take.String(), v.First.String()+" (First)", ticket.ErrConflict)
	}
}

// missing is the fault of unequal plies about which nothing more is said.
func (v *solver) missing() {
	v.audit.Fault("First", "", "what is taken, since the plies are cut with "+v.Cut.String()+" and "+v.CutUnder.String(), ticket.ErrMissing)
}

// enough refuses to take more than was cut on purpose.
func (v *solver) enough() {
	short := func(path string, cut, drafted units.Length) {
		if cut != drafted && cut.Less(v.Take) {
			v.audit.Fault(path, cut.String(), "at least "+v.Take.String()+" (what the seam takes)", ticket.ErrRange)
		}
	}
	short("Cut", v.Cut, v.Drafted)
	short("CutUnder", v.CutUnder, v.DraftedUnder)
}

// trimmed fills Trim and holds it between the least that the cloth allows and
// the first pass.
func (v *solver) trimmed(usual units.Length) {
	v.fill(&v.Trim, fieldTrim, usual.Min(v.First))
	switch low := leastAccepted(v.Fraying); {
	case v.First.Less(v.Trim):
		v.audit.AtMost("Trim", v.Trim, v.First, "First", ticket.ErrRange)
	case v.Trim.Less(v.First) && v.Trim.Less(low):
		why := "cloth that holds"
		if v.Fraying {
			why = "cloth that frays"
		}
		v.audit.Fault("Trim", v.Trim.String(), "at least "+low.String()+" ("+why+")", ticket.ErrRange)
	}
}
