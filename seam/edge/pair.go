package edge

import (
	"cmp"
	"fmt"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
)

// A Fit is how an edge goes onto its partner.
type Fit uint8

// The fits. An edge that is shorter than its partner is a mismatch, never ease.
const (
	Fits     Fit = iota + 1 // the two are equally long
	Eases                   // the long edge is longer, within the limit of ease
	Gathers                 // the long edge is longer, within the limit of gathers
	Mismatch                // the long edge is shorter than its partner, or longer than the limits allow
)

var fits = name.Of[Fit]("fit", "none", "fits", "eases", "gathers", "mismatch")

// String is the fit's name, as in eases.
func (f Fit) String() string { return fits.String(f) }

// MarshalText is the fit's name.
func (f Fit) MarshalText() ([]byte, error) { return fits.Marshal(f) }

// UnmarshalText takes a fit's name.
func (f *Fit) UnmarshalText(text []byte) error { return fits.Unmarshal(f, text) }

// A Pair is two edges that are sewn together, such as the top of a sleeve and the
// armhole. It is an [Assembly] of two edges whose seams are known by what they take
// alone, of whatever kind they are. An edge with several partners needs a Pair with each.
//
// How much ease or gathering is right is the caller's to say.
type Pair struct {
	// Long is the edge that may be the longer: it is eased or gathered. Its name may be
	// omitted; the default is "long edge".
	Long Spec `json:"long,omitzero"`
	// Short is the edge that it goes onto. Its name may be omitted; the default is "short
	// edge".
	Short Spec `json:"short,omitzero"`
	// MaxEase is the most that long may be longer and be eased in, as a share of short as
	// sewn. May be omitted; the difference that the pattern drew is then the limit.
	MaxEase units.Given[units.Ratio] `json:"maxEase,omitzero"`
	// MaxGathers is the most that long may be longer and be gathered, as a share of short
	// as sewn. May be omitted; it is then not gathered.
	MaxGathers units.Ratio `json:"maxGathers,omitzero" noun:"zero"`
}

// A Match is how two edges go together. Differences are the long one less the short.
type Match struct {
	LongName  string     `json:"longName,omitzero"`  // the edge that may be the longer
	ShortName string     `json:"shortName,omitzero"` // the edge that it goes onto
	LongSewn  units.Near `json:"longSewn,omitzero"`  // the long edge as sewn
	ShortSewn units.Near `json:"shortSewn,omitzero"` // the short edge as sewn
	Drafted   units.Near `json:"drafted,omitzero"`   // the difference that the pattern drew: ease or fullness on purpose
	Sewn      units.Near `json:"sewn,omitzero"`      // the difference as sewn
	Change    units.Near `json:"change,omitzero"`    // Sewn less Drafted
	Limit     units.Near `json:"limit,omitzero"`     // most that Sewn may be and still be eased in
	Fit       Fit        `json:"fit,omitzero"`       // whether and how the two go together
}

// A PairPlan is two edges, how they go together, and what mends it where they do not.
type PairPlan struct {
	Spec    Pair     `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // what a default filled; a field of Takes is named once for all of them
	Long    Plan     `json:"long,omitzero"`    // the long edge by itself
	Short   Plan     `json:"short,omitzero"`   // the short edge by itself
	Match
	Remedies []Remedy `json:"remedies,omitzero"` // what mends a mismatch, the best first; see [AssemblyPlan]. A seam is known here by what it takes alone
}

// Plan works out both edges and judges the fit. The faults are [fault.Faults]; where a
// comparison of slanted crossings passes the limit of work, it is a fault with
// [units.ErrBound].
func (m Pair) Plan() (PairPlan, error) {
	var a fault.Audit
	var p PairPlan
	at := [...]*Spec{&m.Long, &m.Short}
	for i, one := range [...]string{"long", "short"} {
		if at[i].Name == "" {
			at[i].Name = one + " edge"
			p.Assumed = append(p.Assumed, one+".name")
		}
		solved, assumed, err := at[i].solve()
		if err != nil {
			a.Include(one, err)
		}
		*at[i] = solved
		for _, key := range assumed {
			p.Assumed = append(p.Assumed, one+"."+key)
		}
	}
	if m.Long.Name == m.Short.Name {
		a.Fault("short.name", fault.Quote(m.Short.Name), "a name other than long has", fault.Conflict)
	}
	limits(&a, m.MaxEase, m.MaxGathers)
	if a.Failed() {
		return PairPlan{}, a.Err()
	}
	f := m.frame()
	if err := f.measure(func(i int) string { return [...]string{"long", "short"}[i] }, func(int) string { return "long" }); err != nil {
		return PairPlan{}, err
	}
	p.Long, p.Short = f.measured[0].plan(), f.measured[1].plan()
	m.Long, m.Short = p.Long.Spec, p.Short.Spec
	p.Spec, p.Match = m, f.judged[0].match()
	p.Remedies = f.remedies()
	return p, nil
}

// limits checks the limits of ease and gathers.
func limits(a *fault.Audit, ease units.Given[units.Ratio], gathers units.Ratio) {
	most, given := ease.Get()
	if most.Sign() < 0 {
		a.Fault("maxEase", most.String(), "0 or more", fault.Sign)
	}
	switch {
	case gathers.Sign() < 0:
		a.Fault("maxGathers", gathers.String(), "0 or more", fault.Sign)
	case given && gathers.Sign() > 0 && gathers.Less(most):
		a.Fault("maxGathers", gathers.String(), "at least "+most.String()+" (maxEase)", fault.Conflict)
	}
}

// judged is two edges compared, before the differences are settled.
type judged struct {
	long, short          *lengths
	drafted, sewn, limit units.Near
	fit                  Fit
}

// compare judges the fit of two edges.
func compare(long, short *lengths, ease units.Given[units.Ratio], gathers units.Ratio) (judged, error) {
	w := judged{
		long:    long,
		short:   short,
		drafted: long.drafted.Sub(short.drafted),
		sewn:    long.sewn.Sub(short.sewn),
		fit:     Mismatch,
	}
	drawn, err1 := w.drafted.Sign()
	if most, given := ease.Get(); given {
		w.limit = short.sewn.Scale(most)
	} else if drawn > 0 {
		w.limit = w.drafted
	}
	sign, err2 := w.sewn.Sign()
	over, err3 := w.sewn.Sub(w.limit).Sign()
	full, err4 := 1, error(nil)
	if !gathers.IsZero() {
		full, err4 = w.sewn.Sub(short.sewn.Scale(gathers)).Sign()
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
func (w judged) change() units.Near { return w.sewn.Sub(w.drafted) }

func (w judged) match() Match {
	m := Match{
		LongName: w.long.spec.Name, ShortName: w.short.spec.Name, LongSewn: w.long.sewn, ShortSewn: w.short.sewn,
		Drafted: w.drafted, Sewn: w.sewn, Change: w.change(), Limit: w.limit, Fit: w.fit,
	}
	units.Settle(&m.LongSewn, &m.ShortSewn, &m.Drafted, &m.Sewn, &m.Change, &m.Limit)
	return m
}

// without is a length without its sign.
func without(n units.Near) (units.Near, error) {
	sign, err := n.Sign()
	if sign < 0 {
		n = n.Neg()
	}
	return n, err
}

// key tells one take's figures from another's.
type key struct{ drafted, cut, taken units.Length }

// frame is the two edges as an assembly, once they are solved. Takes of one name are one
// seam; those without a name are one for each edge.
func (m Pair) frame() *frame {
	f := &frame{pairs: [][2]int{{0, 1}}, limits: []limit{{m.MaxEase, m.MaxGathers}}}
	at := map[string]int{}
	sides := map[string]int{}
	place := func(t Take, unnamed string) (seam, side int) {
		name := "named " + t.Name
		if t.Name == "" {
			name = unnamed
		}
		seam, ok := at[name]
		if !ok {
			seam = len(f.seams)
			at[name] = seam
			f.seams = append(f.seams, joint{name: t.Name})
		}
		known := fmt.Sprint(seam, key{t.Drafted, t.Cut, t.Taken})
		side, ok = sides[known]
		if !ok {
			side = len(f.seams[seam].sides)
			sides[known] = side
			f.seams[seam].sides = append(f.seams[seam].sides, sideOf(t))
		}
		return seam, side
	}
	for i, e := range [...]Spec{m.Long, m.Short} {
		one := edgeFrame{spec: e, own: -1, of: -1}
		for _, t := range e.Takes {
			seam, side := place(t, fmt.Sprint("across ", i))
			c, _ := cosecant(t.Slant) // checked before
			one.refs = append(one.refs, ref{seam: seam, side: side, name: t.Name, plies: t.Plies, both: t.Plies / 2, ends: t.Plies % 2, slant: t.Slant, cosecant: c})
		}
		if e.Own != (Take{}) {
			one.own, one.ownSide = place(e.Own, fmt.Sprint("along ", i))
		}
		f.edges = append(f.edges, one)
	}
	return f
}
