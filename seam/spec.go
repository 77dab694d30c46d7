package seam

import (
	"errors"
	"slices"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// MaxLayers is the most layers that a graded seam has.
const MaxLayers = 6

// A Spec is a seam between two plies. Zero means not given, in every field; see
// [Kind] for which kind reads which, and [Spec.Solve] for what follows from what.
type Spec struct {
	Kind Kind `json:"kind,omitzero"` // how it is sewn; there is no default

	// Drafted is the allowance that the pattern drew on the upper ply, from the
	// drafted stitching line to the raw edge. Default 5/8 in, [Standard].
	Drafted units.Length `json:"drafted,omitzero"`
	// DraftedUnder is the same of the under ply. Default Drafted.
	DraftedUnder units.Length `json:"draftedUnder,omitzero"`

	// Cut is the allowance actually left on the upper ply when it was cut or
	// trimmed before the first pass, from the drafted stitching line. Default
	// Drafted. Where it is given and differs from Drafted it is also the most
	// that the seam may take from that ply.
	Cut units.Length `json:"cut,omitzero"`
	// CutUnder is the same of the under ply. Default DraftedUnder; but where Cut
	// was given and DraftedUnder was not, Cut.
	CutUnder units.Length `json:"cutUnder,omitzero"`

	// First is the first pass, from the raw edges as cut, which lie together. For
	// an untrimmed fell it is measured from the raw edge of the upper ply, for
	// lapped seams from each raw edge to where the seam lies: the fold that is
	// seen, and where both edges are alike the middle of the lap. Default: see
	// [Spec.Solve].
	First units.Length `json:"first,omitzero"`
	// Second is the second pass, or what the finished seam has in its place:
	//
	//	french                           from the fold: the width of the ridge
	//	flat-felled, mock-felled         the width of the finished fell, from seam to fold
	//	bound, hong-kong, self-bound     the finished width of the binding
	//	turned-and-stitched, mock-french what is left of the allowance, from seam to fold
	//	welt                             the row from the seam, caught from outside
	//	slot                             each row from its fold
	//	lapped                           the under allowance, from its raw edge to where the upper fold lies
	//	lapped-turned                    the lap, from fold to fold
	//	lapped-raw                       the lap, from raw edge to raw edge
	Second units.Length `json:"second,omitzero"`
	// Take is what the seam takes from each ply: First and Second for French,
	// First for the others. Where the plies give up unequal amounts (untrimmed
	// fell, lapped) it is the upper ply's.
	Take units.Length `json:"take,omitzero"`

	// Trim is what is left of the allowance beyond the first row of stitching
	// before the next stage: of both plies, but for the fells, the welt and the
	// self-bound seam of the under ply only, and for a graded seam of the layer
	// next to the outside. As wide as First it says that nothing is trimmed off.
	// Default 1/8 in for French (or the trim of the printed set, see [Enclosed]),
	// fells and hairline, 1/4 in for welt and graded, nothing trimmed for the others.
	// The default of a self-bound seam is 1/8 in, or as much less as a quarter of
	// First, the first fold or the binding asks for, but no less than 1/16 in, or
	// 1/8 in where the cloth frays.
	Trim units.Length `json:"trim,omitzero"`
	// TrimUnder is what is left of the innermost layer of a graded seam, the
	// narrowest. Default 1/8 in.
	TrimUnder units.Length `json:"trimUnder,omitzero"`
	// Turned is what is turned in, from fold to raw edge: of the upper allowance
	// for the fells, of the under one that is folded over the upper edge for the
	// untrimmed fell, of both for the others; for self-bound the first fold.
	Turned units.Length `json:"turned,omitzero"`
	// Strip is the width to cut of the strip of a Hong Kong finish, and of the
	// underlay of a slot seam, default twice First. The default of a Hong Kong finish
	// is 1 in where Trim is 1/2 in or more, Second 1/4 in, and that is wide enough;
	// else Trim, twice Second and Thickness, so that its under edge lies along the seam.
	Strip units.Length `json:"strip,omitzero"`
	// Cord is the diameter of the cord of a piped seam. Default 1/4 in.
	Cord units.Length `json:"cord,omitzero"`
	// Row is the row of a lapped seam from the fold that is seen. Default 1/8 in,
	// the widest edge-stitch.
	Row units.Length `json:"row,omitzero"`

	// Thickness of one ply, from which [Plan].Turn and TurnUnder follow, and which
	// leaves the trimmed edges of a French seam that much less room. A thickness that
	// leaves no room for an edge or a row is refused. No default: the turn of cloth is
	// left out unless asked.
	Thickness units.Length `json:"thickness,omitzero"`

	// Layers is how many layers of allowance a graded seam has, interfacing
	// included, 2 to [MaxLayers]. Default 2.
	Layers int `json:"layers,omitzero"`
	// Finish keeps raw edges from fraying. No default: the edges stay as cut.
	Finish Finish `json:"finish,omitzero"`
	// Aside says that a plain seam is pressed to one side and not open.
	Aside bool `json:"aside,omitzero"`
	// Fraying says that the cloth frays, so that trims are kept wider and raw
	// edges are warned of.
	Fraying bool `json:"fraying,omitzero"`
}

// solver carries a spec while it is solved: what is assumed, what is wrong.
type solver struct {
	Spec
	assumed field
	audit   fault.Audit
}

// Solve fills in the fields that follow from those given, and then the defaults:
//
//   - French: Take = First + Second, any one from the other two. Where too little
//     is given, the printed set of [Enclosed] whose passes add up to the
//     allowance cut (or to Take), of several the source of highest rank. Where no
//     set is printed: half each of the allowance; with one pass given, 3/8 in
//     first or 1/4 in second.
//   - The others: Take = First, by default the allowance cut.
//   - Fells: First = Second + Turned, any one from the other two. Flat-felled:
//     Second is by default the printed fell for that First, where there is one,
//     else half of First; mock felled half.
//   - Turned-and-stitched and mock French: the same of Trim, which is by default
//     First. Turned is by default 1/4 in or half of Trim, for mock French half.
//   - Self-bound: First = Turned + 2 Second; by default the first fold meets the
//     trimmed edge.
//   - Untrimmed fell: First is by default 1/4 in, but where Cut is less than
//     CutUnder it is Cut. Turned is by default as wide as First; where First is Cut,
//     no wider than CutUnder less Cut.
//   - Lapped: Second is by default the under allowance cut. Both edges turned:
//     First = Turned + half of Second, by default a lap of 1/2 in where that
//     hides the turned edges. Raw: First = half of Second.
//   - Bound: Second is by default 1/4 in; Hong Kong the same or half of First;
//     welt 3/8 in where the trimmed edge lies inside it and the wide one beyond
//     it, else half way between them; slot 1/4 in or half of First.
//
// Where the two plies are cut with unequal allowances, and nothing says what the
// seam takes, First is missing. The faults are [fault.Faults] in the order of the
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
	case FlatFelled, MockFelled:
		v.felled()
	case Bound:
		v.bound()
	case TurnedStitched, MockFrench:
		v.turned()
	case UntrimmedFell:
		v.untrimmed()
	case Welt:
		v.welt()
	case Lapped:
		v.lapped()
	case LappedTurned:
		v.lappedTurned()
	case LappedRaw:
		v.lappedRaw()
	case Slot:
		v.slot()
	case HongKong:
		v.hongKong()
	case SelfBound:
		v.selfBound()
	case Piped:
		v.piped()
	case Graded:
		v.graded()
	default:
		v.plain()
	}
	return inOrder(v.audit.Err())
}

// inOrder puts faults in the order of the fields.
func inOrder(err error) error {
	var fs fault.Faults
	if errors.As(err, &fs) {
		slices.SortStableFunc(fs, func(a, b *fault.Fault) int {
			return slices.Index(fieldNames[:], a.Path) - slices.Index(fieldNames[:], b.Path)
		})
	}
	return err
}

// each looks at every field by itself.
func (v *solver) each() {
	switch {
	case v.Kind == NoKind:
		v.audit.Fault("kind", "", kindList(), fault.Missing)
	case !v.Kind.Valid():
		v.audit.Fault("kind", v.Kind.String(), kindList(), fault.Unknown)
	}
	lengths := [...]units.Length{
		v.Drafted, v.DraftedUnder, v.Cut, v.CutUnder, v.First, v.Second, v.Take, v.Trim, v.TrimUnder, v.Turned, v.Strip, v.Cord, v.Row, v.Thickness,
	}
	for i, l := range lengths {
		switch {
		case v.Kind.Valid() && !v.Kind.reads(1<<i):
			if !l.IsZero() {
				v.audit.Unused(fieldNames[i], l, false, v.Kind)
			}
		case l.Sign() < 0:
			v.audit.NotNegative(fieldNames[i], l)
		}
	}
	v.options()
}

// options looks at the fields that are no lengths.
func (v *solver) options() {
	reads := func(f field) bool { return !v.Kind.Valid() || v.Kind.reads(f) }
	switch {
	case v.Layers == 0:
	case !reads(fieldLayers):
		v.audit.Fault("layers", strconv.Itoa(v.Layers), "none for "+v.Kind.String(), fault.Unused)
	default:
		v.audit.Count("layers", v.Layers, 2, MaxLayers)
	}
	switch {
	case v.Finish == NoFinish:
	case !reads(fieldFinish):
		v.audit.Unused("finish", v.Finish, false, v.Kind)
	case !v.Finish.Valid():
		v.audit.Fault("finish", v.Finish.String(), finishList(), fault.Unknown)
	}
	if v.Aside && !reads(fieldAside) {
		v.audit.Fault("aside", "true", "false for "+v.Kind.String(), fault.Unused)
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

// single solves the kinds whose seam is sewn in one row: Take = First. It reports
// whether there is a First.
func (v *solver) single() bool {
	if v.First.IsZero() && v.Take.IsZero() {
		if all, ok := v.whole(); ok {
			v.fill(&v.First, fieldFirst, all)
		}
	}
	v.same()
	v.enough()
	if v.First.IsZero() {
		v.missing()
	}
	return !v.First.IsZero()
}

// same holds Take to First, and fills either from the other.
func (v *solver) same() {
	switch {
	case v.First.IsZero():
		v.First = v.Take
	case v.Take.IsZero():
		v.Take = v.First
	case v.Take != v.First:
		v.audit.Fault("take", v.Take.String(), v.First.String()+" (first)", fault.Conflict)
	}
}

// missing is the fault of unequal plies about which nothing more is said.
func (v *solver) missing() {
	v.audit.Fault("first", "", "what is taken, since the plies are cut with "+v.Cut.String()+" and "+v.CutUnder.String(), fault.Missing)
}

// takeUnder is what a solved seam takes from the under ply.
func (s *Spec) takeUnder() units.Length {
	switch s.Kind {
	case Lapped:
		return s.Second
	case UntrimmedFell:
		return s.First.Add(s.Turned)
	}
	return s.Take
}

// enough refuses to take more than was cut on purpose.
func (v *solver) enough() {
	short := func(path string, cut, drafted, take units.Length) {
		if cut != drafted && cut.Less(take) {
			v.audit.Fault(path, cut.String(), "at least "+take.String()+" (what the seam takes)", fault.Range)
		}
	}
	short("cut", v.Cut, v.Drafted, v.Take)
	short("cutUnder", v.CutUnder, v.DraftedUnder, v.takeUnder())
}

// trimmed fills Trim and holds it between the least that the cloth allows and
// the first pass.
func (v *solver) trimmed(usual units.Length) {
	v.fill(&v.Trim, fieldTrim, usual.Min(v.First))
	v.holds("trim", v.Trim)
}

// holds refuses a trim that is wider than the first pass or frays away.
func (v *solver) holds(path string, trim units.Length) {
	switch low := leastAccepted(v.Fraying); {
	case v.First.Less(trim):
		fault.AtMost(&v.audit, path, trim, v.First, "first", fault.Range)
	case trim.Less(v.First) && trim.Less(low):
		why := "cloth that holds"
		if v.Fraying {
			why = "cloth that frays"
		}
		v.audit.Fault(path, trim.String(), "at least "+low.String()+" ("+why+")", fault.Range)
	}
}

// hides refuses a trimmed edge that what lies over it does not hide.
func (v *solver) hides(over units.Length, name string) {
	if !v.Trim.Less(over) {
		v.audit.Fault("trim", v.Trim.String(), "less than "+over.String()+" ("+name+")", ErrHidden)
	}
}

// fold solves whole = Second + Turned, where one at least is given or filled; of
// is the name of the whole. It refuses a turned edge that is nothing, or that
// reaches past the seam. It reports whether the two are good.
func (v *solver) fold(whole units.Length, of string) bool {
	path, value := "second", v.Second
	switch {
	case v.Second.IsZero():
		path, value = "turned", v.Turned
		v.Second = whole.Sub(v.Turned)
	case v.Turned.IsZero():
		v.Turned = whole.Sub(v.Second)
	case v.Second.Add(v.Turned) != whole:
		v.audit.Fault("turned", v.Turned.String(), whole.Sub(v.Second).String()+" ("+of+" less second)", fault.Conflict)
		return false
	}
	half := whole.DivInt(2)
	switch {
	case v.Turned.Sign() <= 0:
		v.audit.Fault(path, value.String(), "less than "+whole.String()+" ("+of+"), to leave an edge to turn in", ErrHidden)
	case v.Second.Less(v.Turned) && path == "turned":
		v.audit.Fault(path, value.String(), "at most "+half.String()+" (half of "+of+")", ErrFlat)
	case v.Second.Less(v.Turned):
		v.audit.Fault(path, value.String(), "at least "+half.String()+
			" (half of "+of+"), or "+of+" trimmed to "+value.MulInt(2).String()+" at most", ErrFlat)
	default:
		return true
	}
	return false
}
