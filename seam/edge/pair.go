package edge

import (
	"cmp"
	"fmt"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// A Fit is how an edge goes onto its partner.
type Fit uint8

// The fits. An edge that is shorter than its partner is a mismatch, never ease.
const (
	NoFit    Fit = iota // not worked out
	Fits                // the two are equally long
	Eases               // the long edge is longer, within the limit of ease
	Gathers             // the long edge is longer, within the limit of gathers
	Mismatch            // the long edge is shorter than its partner, or longer than the limits allow
)

var fitNames = [...]string{NoFit: "none", Fits: "fits", Eases: "eases", Gathers: "gathers", Mismatch: "mismatch"}

// String is the fit's name, as in eases; none for [NoFit].
func (f Fit) String() string {
	if int(f) < len(fitNames) {
		return fitNames[f]
	}
	return fmt.Sprintf("Fit(%d)", uint8(f))
}

// MarshalText is the fit's name, empty for [NoFit]. A value that is no fit is a
// fault.
func (f Fit) MarshalText() ([]byte, error) { return ticket.NameText(f, fitNames[:], "fit") }

// UnmarshalText takes a fit's name. Empty text is [NoFit].
func (f *Fit) UnmarshalText(text []byte) error {
	return ticket.ReadName(f, text, fitNames[:], "fit")
}

// Verdicts yields every [Fit], [NoFit] excepted.
func Verdicts(yield func(Fit) bool) {
	for f := Fits; int(f) < len(fitNames); f++ {
		if !yield(f) {
			return
		}
	}
}

// A Pair sets two edges against each other that must be sewn together, such as
// the top of a sleeve into an armhole. An edge with several partners needs a
// Pair with each.
//
// How much ease or gathering is right is the caller's to say: the limits are
// shares of Short as sewn.
type Pair struct {
	Long       Spec        `json:"long,omitzero"`       // the edge that may be the longer: it is eased or gathered; Name defaults to "long edge"
	Short      Spec        `json:"short,omitzero"`      // the edge it goes onto; Name defaults to "short edge"
	MaxEase    units.Ratio `json:"maxEase,omitzero"`    // most that Long may be longer, as a share of Short, and be eased in; zero: the difference that the pattern drew
	MaxGathers units.Ratio `json:"maxGathers,omitzero"` // most that Long may be longer, as a share of Short, and be gathered; zero: it is not gathered
}

// A PairPlan is how two edges go together. Differences are Long less Short.
type PairPlan struct {
	Spec    Pair       `json:"spec,omitzero"`    // as solved; MaxEase stays zero where it was, since the pattern's difference then is the limit
	Assumed []string   `json:"assumed,omitzero"` // what a default filled; a field of Takes is named once for all of them
	Long    Plan       `json:"long,omitzero"`    // the longer edge by itself
	Short   Plan       `json:"short,omitzero"`   // the shorter edge by itself
	Drafted units.Near `json:"drafted,omitzero"` // the difference that the pattern drew: ease or fullness on purpose
	Sewn    units.Near `json:"sewn,omitzero"`    // the difference as sewn
	Change  units.Near `json:"change,omitzero"`  // Sewn less Drafted
	Limit   units.Near `json:"limit,omitzero"`   // most that Sewn may be and still be eased in
	Fit     Fit        `json:"fit,omitzero"`     // whether and how the two go together
}

// matchWork is a match with its lengths before they are enclosed.
type matchWork struct {
	long, short   edgeWork
	drafted, sewn sum
	limit         sum
	fit           Fit
}

// Plan works out both edges and judges the fit. The faults are [fault.Faults];
// where a comparison of slanted crossings passes the limit of work, it is a
// fault with [units.ErrBound].
func (m Pair) Plan() (PairPlan, error) {
	assumed, w, err := m.solve()
	if err != nil {
		return PairPlan{}, err
	}
	p := w.plan(w.long.plan(), w.short.plan(), m.MaxEase, m.MaxGathers)
	p.Assumed = assumed.list()
	return p, nil
}

// solve works out both edges; their takes share one piece of memory.
func (m Pair) solve() (matchFields, matchWork, error) {
	var a fault.Audit
	var set matchFields
	if m.Long.Name == "" {
		m.Long.Name, set = "long edge", set|longName
	}
	if m.Short.Name == "" {
		m.Short.Name, set = "short edge", set|shortName
	}
	space := make([]Take, 0, min(len(m.Long.Takes), MaxTakes)+min(len(m.Short.Takes), MaxTakes))
	long, err := m.Long.work(space)
	if err != nil {
		a.Include("long", err)
	} else {
		space = space[:len(long.spec.Takes)]
	}
	short, err := m.Short.work(space)
	if err != nil {
		a.Include("short", err)
	}
	if m.Long.Name == m.Short.Name {
		a.Fault("short.name", fmt.Sprintf("%.*q", fault.MaxName, m.Short.Name), "a name other than long has", fault.Conflict)
	}
	limits(&a, m.MaxEase, m.MaxGathers)
	if a.Failed() {
		return 0, matchWork{}, a.Err()
	}
	set |= matchFields(long.assumed)<<longShift | matchFields(short.assumed)<<shortShift
	if m.MaxEase.IsZero() {
		set |= maxEase
	}
	w, err := compare(&long, &short, m.MaxEase, m.MaxGathers)
	if err != nil {
		a.Fault("long", "", "amounts of fewer places", fault.KindOf(err))
	}
	return set, w, a.Err()
}

// limits checks the limits of ease and gathers.
func limits(a *fault.Audit, ease, gathers units.Ratio) {
	if ease.Sign() < 0 {
		a.Fault("maxEase", ease.String(), "0 or more", fault.Sign)
	}
	switch {
	case gathers.Sign() < 0:
		a.Fault("maxGathers", gathers.String(), "0 or more", fault.Sign)
	case gathers.Sign() > 0 && gathers.Less(ease):
		a.Fault("maxGathers", gathers.String(), "at least "+ease.String()+" (maxEase)", fault.Conflict)
	}
}

// compare judges the fit of two edges.
func compare(long, short *edgeWork, ease, gathers units.Ratio) (matchWork, error) {
	w := matchWork{
		long:    *long,
		short:   *short,
		drafted: long.drafted.sub(short.drafted),
		sewn:    long.sewn.sub(short.sewn),
		fit:     Mismatch,
	}
	drawn, err1 := w.drafted.sign()
	switch {
	case !ease.IsZero():
		w.limit = short.sewn.scale(ease)
	case drawn > 0:
		w.limit = w.drafted
	}
	sign, err2 := w.sewn.sign()
	over, err3 := w.sewn.sub(w.limit).sign()
	full, err4 := 1, error(nil)
	if !gathers.IsZero() {
		full, err4 = w.sewn.sub(short.sewn.scale(gathers)).sign()
	}
	switch {
	case sign == 0:
		w.fit = Fits
	case sign > 0 && over <= 0:
		w.fit = Eases
	case sign > 0 && full <= 0:
		w.fit = Gathers
	}
	return w, cmp.Or(err1, err2, err3, err4)
}

// change is the difference beyond what the pattern drew.
func (w matchWork) change() sum { return w.sewn.sub(w.drafted) }

func (w matchWork) plan(long, short Plan, ease, gathers units.Ratio) PairPlan {
	return PairPlan{
		Spec:    Pair{long.Spec, short.Spec, ease, gathers},
		Long:    long,
		Short:   short,
		Drafted: w.drafted.near().Settled(),
		Sewn:    w.sewn.near().Settled(),
		Change:  w.change().near().Settled(),
		Limit:   w.limit.near().Settled(),
		Fit:     w.fit,
	}
}

// matchFields is a set of what was assumed of a match, in the order of its
// fields.
type matchFields uint16

const (
	longName   matchFields = 1
	longShift              = 1
	shortName  matchFields = 1 << (longShift + len(edgeFieldNames))
	shortShift             = longShift + len(edgeFieldNames) + 1
	maxEase    matchFields = 1 << (shortShift + len(edgeFieldNames))
)

// list names the fields of a set.
func (f matchFields) list() (names []string) {
	if f&longName != 0 {
		names = append(names, "long.name")
	}
	names = append(names, edgeFields(f>>longShift&(1<<len(edgeFieldNames)-1)).list("long.")...)
	if f&shortName != 0 {
		names = append(names, "short.name")
	}
	names = append(names, edgeFields(f>>shortShift&(1<<len(edgeFieldNames)-1)).list("short.")...)
	if f&maxEase != 0 {
		names = append(names, "maxEase")
	}
	return names
}
