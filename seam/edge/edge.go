package edge

import (
	"strconv"

	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// Bounds of one edge.
const (
	MaxTakes = 50   // most seams that cross one edge
	MaxPlies = 1000 // most plies of one Take
)

// A Take is one seam, or one open end, that crosses an edge. What it keeps in each
// ply, Cut less Taken, makes the edge longer; what it takes beyond the cut allowance
// makes the edge shorter. The rule is common practice.
type Take struct {
	// Name is the seam's name. Takes of one name are one seam.
	Name string `json:"name,omitzero"`
	// Drafted is the allowance that the pattern drew beyond its stitching line.
	Drafted units.Length `json:"drafted,omitzero"`
	// Cut is the allowance as cut, beyond the drafted stitching line. May be omitted; the
	// default is drafted. Where it differs from drafted it is the most that may be taken.
	Cut units.Length `json:"cut,omitzero"`
	// Taken is what is sewn away from each ply, from the raw edge as cut. May be omitted;
	// the default is drafted.
	Taken units.Length `json:"taken,omitzero"`
	// Plies is how many plies of this edge are in it: a seam between two pieces has 2, an
	// open end 1. A fold is no take. May be omitted; the default is 2.
	Plies int `json:"plies,omitzero"`
	// Slant is the angle between the edge's seam line and this seam. May be omitted; the
	// seam is then square to the edge.
	Slant units.Angle `json:"slant,omitzero"`
}

// Drift is what each ply keeps of its allowance: Cut less Taken, measured square to the
// seam. A positive drift makes the piece bigger.
func (t Take) Drift() units.Length { return t.Cut.Sub(t.Taken) }

// A Spec is a drafted stitching line (a neck, an armhole, the top of a sleeve) and the
// seams that cross it. All lengths are on the stitching line, never on the cut edge.
//
// Along and Net are two readings of one line; give either. Where a slanted crossing has
// no exact sine, the other cannot be stated exactly: give one only.
//
// The edge's own seam, sewn further out or in than drafted, moves the line: a straight
// one stays as long, a curved one grows by Turn x (Cut - Taken). That holds while the
// allowance is less than the radius of the curve; corners are not counted. The rules are
// common practice and plain geometry.
type Spec struct {
	// Name is what the pattern calls it.
	Name string `json:"name,omitzero"`
	// Along is the drafted length from raw end to raw end. May be omitted where net is
	// given.
	Along units.Length `json:"along,omitzero"`
	// Net is the drafted length between the drafted seam lines: along less what is drafted
	// of each ply of each take. May be omitted where along is given.
	Net units.Length `json:"net,omitzero"`
	// Spread is how much longer the pattern piece is made than it was drafted, between
	// the drafted seam lines; it is negative where the piece is folded. May be omitted; the
	// default is 0, as drafted.
	Spread units.Length `json:"spread,omitzero" noun:"zero"`
	// Takes are the seams that cross the edge, at most 50. May be omitted; none crosses it
	// then.
	Takes []Take `json:"takes,omitzero"`
	// Own is the seam along the edge itself, without plies and slant. May be omitted; the
	// edge is then sewn as drafted.
	Own Take `json:"own,omitzero"`
	// Turn is how far the line turns in all: positive where the allowance lies outside the
	// curve (a collar), negative where it lies inside (a neck, an armhole). May be omitted;
	// the default is a straight line.
	Turn units.Angle `json:"turn,omitzero" noun:"zero"`
}

// A Plan is what an edge comes to once the seams that cross it are sewn.
type Plan struct {
	Spec      Spec       `json:"spec,omitzero"`      // as solved; a copy of the caller's Takes
	Assumed   []string   `json:"assumed,omitzero"`   // what a default filled; a field of Takes is named once for all of them
	Drafted   units.Near `json:"drafted,omitzero"`   // between the drafted seam lines
	Sewn      units.Near `json:"sewn,omitzero"`      // between the seam lines as sewn, along the edge's own seam line as sewn
	Change    units.Near `json:"change,omitzero"`    // Sewn less Drafted
	CutLength units.Near `json:"cutLength,omitzero"` // along the raw edge of the own seam, between the drafted seam lines, once spread; shorter than Drafted where the line is concave. Never compare it with another edge
}

// filled says which fields of takes a default filled.
type filled struct{ cut, taken, plies bool }

func (f filled) or(g filled) filled {
	return filled{f.cut || g.cut, f.taken || g.taken, f.plies || g.plies}
}

// keys are the fields filled, as they are named in what of holds.
func (f filled) keys(of string) []string {
	return chosen(of, []string{"cut", "taken", "plies"}, f.cut, f.taken, f.plies)
}

// chosen are the names that are set, each under what it belongs to.
func chosen(of string, names []string, set ...bool) (out []string) {
	for i, name := range names {
		if set[i] {
			out = append(out, of+name)
		}
	}
	return out
}

// lengths is an edge with its lengths before they are settled.
type lengths struct {
	spec               Spec
	drafted, sewn, cut units.Near
}

func (w lengths) change() units.Near { return w.sewn.Sub(w.drafted) }

func (w lengths) plan() Plan {
	p := Plan{Spec: w.spec, Drafted: w.drafted, Sewn: w.sewn, Change: w.change(), CutLength: w.cut}
	units.Settle(&p.Drafted, &p.Sewn, &p.Change, &p.CutLength)
	return p
}

// Budget is how far the edge may come out either way where each ply of each seam that
// crosses it wanders by 1/16 in, or 2 mm, as sewers are allowed: a neck crossed by two
// shoulder seams, 4 plies, 1/4 in. A difference below it is finer than the hand. The
// figure is in [seam.Trims].
func (p Plan) Budget() units.Length {
	plies := 0
	for _, t := range p.Spec.Takes {
		plies += t.Plies
	}
	return sew.Straightness(noun.Tape(p.Spec)).MulInt(int64(plies))
}

// Plan works out the edge. The faults are [fault.Faults]; a sum of slanted crossings
// beyond the limit of work is a fault with [units.ErrBound]. A seam may take more than
// the pattern drew: the edge is then shorter.
func (e Spec) Plan() (Plan, error) {
	e, assumed, err := e.solve()
	if err != nil {
		return Plan{}, err
	}
	w, err := e.measure(nil)
	if err != nil {
		return Plan{}, err
	}
	p := w.plan()
	p.Assumed = assumed
	return p, nil
}

// solve checks e and fills the defaults of its takes, of which it makes a copy.
func (e Spec) solve() (Spec, []string, error) {
	var a fault.Audit
	a.Text("name", e.Name)
	a.NotNegative("along", e.Along)
	a.NotNegative("net", e.Net)
	if e.Along.IsZero() && e.Net.IsZero() {
		a.Fault("along", "", "along or net, more than 0 in", fault.Missing)
	}
	a.Count("takes", len(e.Takes), 0, MaxTakes)
	if len(e.Takes) <= MaxTakes {
		for i, t := range e.Takes {
			if err := t.audit(); err != nil {
				a.Include("takes["+strconv.Itoa(i)+"]", err)
			}
		}
	}
	if err := e.Own.auditOwn(); err != nil {
		a.Include("own", err)
	}
	if a.Failed() {
		return e, nil, a.Err()
	}
	e.Takes = append([]Take(nil), e.Takes...)
	var takes, own filled
	for i := range e.Takes {
		takes = takes.or(e.Takes[i].fill())
	}
	if e.Own != (Take{}) {
		own = e.Own.fill()
		e.Own.Plies, own.plies = 0, false
	}
	return e, append(takes.keys("takes."), own.keys("own.")...), nil
}

// audit checks a crossing.
func (t Take) audit() error {
	var a fault.Audit
	t.lengths(&a)
	a.Count("plies", t.Plies, 0, MaxPlies)
	slanted(&a, "slant", t.Slant)
	return a.Err()
}

// auditOwn checks the seam along the edge.
func (t Take) auditOwn() error {
	if t == (Take{}) {
		return nil
	}
	var a fault.Audit
	t.lengths(&a)
	if t.Plies != 0 {
		a.Fault("plies", strconv.Itoa(t.Plies), "none for the edge's own seam", fault.Unused)
	}
	if !t.Slant.IsZero() {
		a.Fault("slant", t.Slant.String(), "none for the edge's own seam", fault.Unused)
	}
	return a.Err()
}

func (t Take) lengths(a *fault.Audit) {
	a.Text("name", t.Name)
	a.Need("drafted", t.Drafted)
	a.NotNegative("cut", t.Cut)
	a.NotNegative("taken", t.Taken)
	if t.Cut.Sign() <= 0 || t.Cut == t.Drafted {
		return
	}
	switch {
	case t.Taken.IsZero() && t.Cut.Less(t.Drafted):
		a.Fault("taken", "", "at most {0} (cut)", fault.Missing, t.Cut)
	default:
		fault.AtMost(a, "taken", t.Taken, t.Cut, "cut", fault.Range)
	}
}

func (t *Take) fill() (set filled) {
	if t.Cut.IsZero() {
		t.Cut, set.cut = t.Drafted, true
	}
	if t.Taken.IsZero() {
		t.Taken, set.taken = t.Drafted, true
	}
	if t.Plies == 0 {
		t.Plies, set.plies = 2, true
	}
	return set
}

// measure works out an edge whose takes are solved. The cosecants are those of its
// takes; nil works them out.
func (e Spec) measure(cosecants []units.NearRatio) (lengths, error) {
	var a fault.Audit
	var drawn, gain units.Near // the drafted allowances, and the drift, along the edge
	for i, t := range e.Takes {
		var c units.NearRatio
		if cosecants != nil {
			c = cosecants[i]
		} else {
			c, _ = cosecant(t.Slant) // checked before
		}
		drawn = drawn.Add(c.Of(t.Drafted.MulInt(int64(t.Plies))))
		gain = gain.Add(c.Of(t.Drift().MulInt(int64(t.Plies))))
	}
	given, value := "net", e.Net
	off, exact := drawn.Exact()
	w := lengths{drafted: units.Exactly(e.Net)}
	switch {
	case e.Net.IsZero():
		given, value = "along", e.Along
		w.drafted = units.Exactly(e.Along).Sub(drawn)
		if exact {
			e.Net, _ = w.drafted.Exact()
		}
	case e.Along.IsZero():
		if exact {
			e.Along = e.Net.Add(off)
		}
	case !exact:
		a.Fault("net", e.Net.String(), "along or net, not both, where a slanted seam has no exact sine", fault.Conflict)
	case e.Along.Sub(off) != e.Net:
		a.Fault("net", e.Net.String(), "{0} (along {1} less the drafted allowances {2})", fault.Conflict, e.Along.Sub(off), e.Along, off)
	}
	made := w.drafted.Plus(e.Spread)
	turn := e.Turn.InRadians()
	w.sewn = made.Add(gain).Add(turn.Of(e.Own.Drift()))
	w.cut = made.Add(turn.Of(e.Own.Cut))
	w.spec = e
	if a.Failed() {
		return w, a.Err()
	}
	for _, one := range [...]struct {
		path, want string
		is         units.Near
	}{
		{given, "more than the drafted allowances take", w.drafted},
		{"spread", "less folded out than the edge is long", made},
		{given, "more than the seams take away from it", w.sewn},
		{"turn", "a curve less tight than the allowance is wide", w.cut},
	} {
		sign, err := one.is.Sign()
		if err == nil && sign > 0 {
			continue
		}
		got := value.String()
		switch one.path {
		case "spread":
			got = e.Spread.String()
		case "turn":
			got = e.Turn.String()
		}
		if err != nil {
			a.Fault(one.path, got, "amounts of fewer places", fault.KindOf(err))
		} else {
			a.Fault(one.path, got, one.want, fault.Range)
		}
		break
	}
	return w, a.Err()
}
