package edge

import (
	"strconv"

	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// Bounds of one edge.
const (
	MaxTakes = 50   // most seams that cross one edge
	MaxPlies = 1000 // most plies of one Take
)

// A Take is one seam, or one open end, that crosses an edge. What it keeps in
// each ply, Cut less Taken, makes the edge longer; what it takes beyond the cut
// allowance makes the edge shorter. The rule is common practice.
type Take struct {
	Name    string       `json:"name,omitzero"`              // the seam's name; takes of one name are one seam
	Drafted units.Length `json:"drafted,omitzero"`           // allowance the pattern drew, beyond its stitching line
	Cut     units.Length `json:"cut,omitzero"`               // allowance as cut, beyond the drafted stitching line; default Drafted; where it differs from Drafted it is the most that may be taken
	Taken   units.Length `json:"taken,omitzero"`             // what is sewn away from each ply, from the raw edge as cut; default Drafted
	Plies   int          `json:"plies,omitzero"`             // plies of this edge in it: a seam between two pieces 2, an open end 1; a fold is no Take; default 2
	Slant   units.Ratio  `json:"slant,omitzero" noun:"zero"` // tangent of the angle between the edge's seam line and this seam, taken below a right angle; zero is square
}

// Drift is what each ply keeps of its allowance: Cut less Taken, measured
// square to the seam. More than zero makes the piece bigger.
func (t Take) Drift() units.Length { return t.Cut.Sub(t.Taken) }

// A Spec is a drafted stitching line (a neck, an armhole, the top of a sleeve)
// and the seams that cross it. All lengths are on the stitching line, never on
// the cut edge.
//
// Along and Net are two readings of one line; give either. Where a slanted
// crossing has no exact sine, Along cannot be stated exactly: give one only.
//
// The edge's own seam, sewn further out or in than drafted, moves the line: a
// straight one stays as long, a curved one grows by Turn x (Cut - Taken). That
// holds while the allowance is less than the radius of the curve; corners are
// not counted. The rules are common practice and plain geometry.
type Spec struct {
	Name  string       `json:"name,omitzero"`  // as the pattern calls it
	Along units.Length `json:"along,omitzero"` // drafted length from raw end to raw end
	Net   units.Length `json:"net,omitzero"`   // drafted length between the drafted seam lines: Along less Plies x Drafted for each of Takes
	// Spread is how much longer the pattern piece is made than it was drafted, between
	// the drafted seam lines; negative where it is folded. Zero leaves it as drafted.
	Spread units.Length `json:"spread,omitzero"`
	Takes  []Take       `json:"takes,omitzero"`            // what crosses the edge, at most [MaxTakes]
	Own    Take         `json:"own,omitzero"`              // the seam along the edge itself, without Plies and Slant; zero where it is sewn as drafted
	Turn   units.Ratio  `json:"turn,omitzero" noun:"zero"` // signed turning of the line in radians: more than zero where the allowance lies outside the curve (a collar), less where inside (a neck, an armhole); zero is straight
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

// edgeFields is a set of what was assumed of an edge.
type edgeFields uint8

const (
	takesCut edgeFields = 1 << iota
	takesTaken
	takesPlies
	ownCut
	ownTaken
)

var edgeFieldNames = [...]string{"takes.cut", "takes.taken", "takes.plies", "own.cut", "own.taken"}

// list names the fields of a set.
func (f edgeFields) list(of string) (names []string) {
	for bit, name := range edgeFieldNames {
		if f>>bit&1 != 0 {
			names = append(names, of+name)
		}
	}
	return names
}

// edgeWork is an edge with its lengths before they are enclosed.
type edgeWork struct {
	spec          Spec
	assumed       edgeFields
	drafted, sewn sum
	cut           sum
}

func (w edgeWork) plan() Plan {
	return Plan{
		Spec:      w.spec,
		Assumed:   w.assumed.list(""),
		Drafted:   w.drafted.near().Settled(),
		Sewn:      w.sewn.near().Settled(),
		Change:    w.sewn.sub(w.drafted).near().Settled(),
		CutLength: w.cut.near().Settled(),
	}
}

// Plan works out the edge. The faults are [fault.Faults]; a sum of slanted
// crossings beyond the limit of work is a fault with [units.ErrBound]. A seam may
// take more than the pattern drew: the edge is then shorter.
func (e Spec) Plan() (Plan, error) {
	w, err := e.work(nil)
	if err != nil {
		return Plan{}, err
	}
	return w.plan(), nil
}

// Solve fills Net from Along, or Along from Net, and the defaults of Takes and
// Own. Where a slanted crossing has no exact sine it leaves the other zero. The
// Takes are copied.
func (e Spec) Solve() (Spec, error) {
	w, err := e.work(nil)
	if err != nil {
		return e, err
	}
	return w.spec, nil
}

// work solves and measures e; its takes are appended to space.
func (e Spec) work(space []Take) (edgeWork, error) {
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
		return edgeWork{}, a.Err()
	}
	if space == nil && len(e.Takes) > 0 {
		space = make([]Take, 0, len(e.Takes))
	}
	start := len(space)
	space = append(space, e.Takes...)
	e.Takes = space[start:len(space):len(space)]
	var set edgeFields
	for i := range e.Takes {
		set |= e.Takes[i].fill()
	}
	if e.Own != (Take{}) {
		set |= e.Own.fill() & (takesCut | takesTaken) << 3
		e.Own.Plies = 0
	}
	w, err := e.measure(nil)
	w.assumed = set
	return w, err
}

// audit checks a crossing.
func (t Take) audit() error {
	var a fault.Audit
	t.lengths(&a)
	a.Count("plies", t.Plies, 0, MaxPlies)
	if !t.Slant.IsZero() {
		slant(&a, t.Slant)
	}
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
		a.Fault("slant", sew.Short(t.Slant.String()), "none for the edge's own seam", fault.Unused)
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
		a.Fault("taken", "", "at most "+t.Cut.String()+" (cut)", fault.Missing)
	default:
		fault.AtMost(a, "taken", t.Taken, t.Cut, "cut", fault.Range)
	}
}

func (t *Take) fill() (set edgeFields) {
	if t.Cut.IsZero() {
		t.Cut, set = t.Drafted, set|takesCut
	}
	if t.Taken.IsZero() {
		t.Taken, set = t.Drafted, set|takesTaken
	}
	if t.Plies == 0 {
		t.Plies, set = 2, set|takesPlies
	}
	return set
}

// measure works out an edge whose takes are solved. The slopes are those of its
// takes; nil works them out.
func (e Spec) measure(slopes []slope) (edgeWork, error) {
	var a fault.Audit
	var drawn, gain sum // the drafted allowances, and the drift, along the edge
	for i, t := range e.Takes {
		s := square()
		if slopes != nil {
			s = slopes[i]
		} else if !t.Slant.IsZero() {
			s, _ = slopeOf(t.Slant)
		}
		drawn.put(t.Drafted.MulInt(int64(t.Plies)), s)
		gain.put(t.Drift().MulInt(int64(t.Plies)), s)
	}
	given := "net"
	exact := drawn.isExact()
	w := edgeWork{drafted: just(e.Net)}
	switch {
	case e.Net.IsZero():
		given = "along"
		w.drafted = just(e.Along).sub(drawn)
		if exact {
			e.Net = w.drafted.exact
		}
	case e.Along.IsZero():
		if exact {
			e.Along = e.Net.Add(drawn.exact)
		}
	case !exact:
		a.Fault("net", e.Net.String(), "along or net, not both, where a slanted seam has no exact sine", fault.Conflict)
	case e.Along.Sub(drawn.exact) != e.Net:
		a.Fault("net", e.Net.String(), e.Along.Sub(drawn.exact).String()+" (along "+e.Along.String()+" less the drafted allowances "+drawn.exact.String()+")", fault.Conflict)
	}
	made := w.drafted.add(just(e.Spread))
	w.sewn = made.add(gain)
	w.cut = made
	if !e.Turn.IsZero() {
		w.sewn.exact = w.sewn.exact.Add(e.Own.Drift().Scale(e.Turn))
		w.cut.exact = w.cut.exact.Add(e.Own.Cut.Scale(e.Turn))
	}
	w.spec = e
	if a.Failed() {
		return w, a.Err()
	}
	value := e.Net
	if given == "along" {
		value = e.Along
	}
	for _, one := range [...]struct {
		path, want string
		is         sum
	}{
		{given, "more than the drafted allowances take", w.drafted},
		{"spread", "less folded out than the edge is long", made},
		{given, "more than the seams take away from it", w.sewn},
		{"turn", "a curve less tight than the allowance is wide", w.cut},
	} {
		sign, err := one.is.sign()
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
			a.Fault(one.path, sew.Short(got), "amounts of fewer places", fault.KindOf(err))
		} else {
			a.Fault(one.path, sew.Short(got), one.want, fault.Range)
		}
		break
	}
	return w, a.Err()
}
