package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// The bounds on the counts of a [Ruffle] and a [Cuff].
const (
	MaxRows    = 3      // gathering rows
	MaxParts   = 1000   // equal parts that are marked
	MaxCorners = 10_000 // corners, either way
)

// ErrCurve is the fault of an edge that turns inward so sharply, for the depth of
// its ruffle, that nothing is left of the free edge.
const ErrCurve fault.Kind = "turns too sharply for the depth"

// A Ruffle is a strip gathered by one long edge onto an edge of the garment, the
// other long edge free; or, with a heading, gathered below its upper edge and laid
// on, both edges free. Zero means "not given".
//
// Of cut, depth and allowance one may be left out: cut is depth + hem + allowance,
// or twice depth + allowance where the strip is folded. With a heading it is depth +
// hem + heading + top.
type Ruffle struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Strip is the strip along its length, and the edge it goes on.
	Strip Strip `json:"strip,omitzero"`
	// Cut is the depth of the strip as cut, from long edge to long edge.
	Cut units.Length `json:"cut,omitzero"`
	// Depth is the finished depth, from the seam line to the free edge.
	Depth units.Length `json:"depth,omitzero"`
	// Folded says that the strip is folded along its length, the fold being the free
	// edge.
	Folded bool `json:"folded,omitzero"`
	// Hem is the hem allowance of the free edge. May be omitted; the default is 0, for
	// a selvedge or an edge finished in another way. A folded strip has none.
	Hem units.Length `json:"hem,omitzero" noun:"zero"`
	// Heading is how far the ruffle stands up beyond the row that it is stitched on by:
	// as far as depth where it is gathered along its middle, a double heading. May be
	// omitted; the gathered edge is then in a seam. A folded strip has none.
	Heading units.Length `json:"heading,omitzero"`
	// Top is the hem allowance of the heading's edge. May be omitted; the default is 0.
	Top units.Length `json:"top,omitzero" noun:"zero"`
	// Allowance is the seam allowance of the gathered edge. May be omitted; the
	// default is 5/8 in or 1.5 cm. A ruffle with a heading has none.
	Allowance units.Length `json:"allowance,omitzero"`
	// Inside is how far the gathering row lies from the seam line, inside the
	// allowance; with a heading and several rows, from the row of stitching. May be
	// omitted; the default is 1/8 in or 3 mm.
	Inside units.Length `json:"inside,omitzero"`
	// Rows is how many gathering rows there are, 1 to 3; see [RufflePlan]. May be
	// omitted; the default is 1.
	Rows int `json:"rows,omitzero"`
	// Turn is how far the seam line of the edge turns in all, as an angle: positive
	// where it bulges outward, negative where it is hollow, corners apart. May be
	// omitted; the default is 0, a straight edge.
	Turn units.Angle `json:"turn,omitzero" noun:"zero"`
	// Corners is the number of square corners of the edge, outward ones less inward
	// ones; each turns by a quarter of a circle. May be omitted; the default is 0.
	Corners int `json:"corners,omitzero" noun:"zero"`
	// Parts is how many equal parts are marked on strip and edge, 1 to 1000. May be
	// omitted; the default is 4.
	Parts int `json:"parts,omitzero"`
	// Width is the usable width of the cloth. May be omitted; what cloth it takes is
	// then not known.
	Width units.Length `json:"width,omitzero"`
}

// A RufflePlan is what a ruffle comes to.
//
// The first row lies inside the seam line, within the allowance, so that the seam
// hides it. A second lies as far on the other side of the seam line, where it holds
// the folds flat and is unpicked afterwards; a third lies twice as far nearer the
// raw edge than the first. With a heading a single row lies where the ruffle is
// stitched on.
type RufflePlan struct {
	Spec          Ruffle          `json:"spec,omitzero"`          // as solved
	Assumed       []string        `json:"assumed,omitzero"`       // the fields filled with a default
	Strip         StripPlan       `json:"strip,omitzero"`         // the strip and its fullness at the seam
	CutDepth      units.Length    `json:"cutDepth,omitzero"`      // depth of the strip as cut
	Outer         units.Near      `json:"outer,omitzero"`         // length of the finished ruffle along its free edge: the edge and the arc that its turns make at the depth
	OuterFullness units.NearRatio `json:"outerFullness,omitzero"` // fullness at the free edge: strip as sewn over outer
	Row           units.Length    `json:"row,omitzero"`           // first gathering row, from the raw edge
	SecondRow     units.Length    `json:"secondRow,omitzero"`     // second row, from the raw edge; zero where there is none
	ThirdRow      units.Length    `json:"thirdRow,omitzero"`      // third row, from the raw edge; zero where there is none
	StripPart     units.Length    `json:"stripPart,omitzero"`     // one of the equal parts, on the strip
	EdgePart      units.Length    `json:"edgePart,omitzero"`      // one of the equal parts, on the edge
	Marks         []Mark          `json:"marks,omitzero"`         // the marks between the equal parts, without the two ends, or in a ring the start
	Joins         []Mark          `json:"joins,omitzero"`         // each join of the strip, and where it lies on the edge once the strip is gathered evenly; in a ring the last closes it
	Clear         units.Length    `json:"clear,omitzero"`         // least distance on the strip from a join to a mark between its ends; zero where there is no such pair
	Crowded       bool            `json:"crowded,omitzero"`       // a join lies so near a mark that the mark falls on the join's own allowance
	Shift         units.Length    `json:"shift,omitzero"`         // of a ring, how far from the closing join the first mark is best set, so that all joins are as clear of the marks
	ForTwo        units.Length    `json:"forTwo,omitzero"`        // length to cut each piece to for a fullness of exactly 2
	Across        units.Length    `json:"across,omitzero"`        // the cloth it takes with the pieces cut across it; zero where they are longer than width
	Along         units.Length    `json:"along,omitzero"`         // the cloth it takes with the pieces cut along it; zero where they are deeper than width
}

// Plan works out the ruffle. The faults are [fault.Faults]; [ErrCurve] is the fault
// of an edge whose free edge would come to nothing.
func (r Ruffle) Plan() (RufflePlan, error) {
	var a fault.Audit
	sp, err := r.Strip.Plan()
	r.audit(&a, err)
	if a.Failed() {
		return RufflePlan{}, a.Err()
	}
	if net := r.net(); !r.Cut.IsZero() && !r.Depth.IsZero() && r.Allowance.IsZero() && r.Heading.IsZero() {
		if r.Allowance = net.Sub(r.Depth); r.Allowance.Sign() <= 0 {
			a.Fault("cut", r.Cut.String(), "more than {0} (what depth and hem come to)", fault.Conflict, r.around(r.Depth))
			return RufflePlan{}, a.Err()
		}
	}
	given := r
	r.Tape = noun.Tape(r)
	if r.Heading.IsZero() {
		fill(&r.Allowance, seamAllowance, r.Tape)
	}
	fill(&r.Inside, rowInside, r.Tape)
	fillCount(&r.Rows, oneRow)
	fillCount(&r.Parts, quarters)
	p := RufflePlan{Assumed: noun.Assumed(given, r), Strip: sp}
	r.solveDepth(&a)
	if a.Failed() {
		return RufflePlan{}, a.Err(p.Assumed...)
	}
	r.Strip = sp.Spec
	p.Spec, p.CutDepth = r, r.Cut
	p.placeRows(&a)
	p.curve(&a)
	if a.Failed() {
		return RufflePlan{}, a.Err(p.Assumed...)
	}
	p.StripPart = sp.Strip.Sewn.DivInt(int64(r.Parts))
	p.EdgePart = sp.Edge.DivInt(int64(r.Parts))
	p.Marks = divide(sp.Strip.Sewn, sp.Edge, r.Parts, units.Length{})
	for _, at := range sp.Strip.Places {
		p.Joins = append(p.Joins, Mark{Full: at, Edge: at.Unscale(sp.Fullness)})
	}
	p.clearance()
	st := sp.Strip.Spec
	p.ForTwo = sp.Edge.MulInt(2).Add(sp.Strip.Lost).DivInt(int64(st.Pieces))
	if p.cloth(&a); a.Failed() {
		return RufflePlan{}, a.Err(p.Assumed...)
	}
	units.Settle(&p.Outer)
	p.OuterFullness = p.OuterFullness.Settled()
	return p, nil
}

// audit looks at each field by itself, and for what is missing.
func (r Ruffle) audit(a *fault.Audit, strip error) {
	r.Tape.Check(a, "tape")
	a.Include("strip", strip)
	a.NotNegative("cut", r.Cut)
	if r.Cut.IsZero() || r.Depth.Sign() < 0 {
		a.Need("depth", r.Depth)
	}
	a.NotNegative("hem", r.Hem)
	if r.Folded && r.Hem.Sign() > 0 {
		a.Fault("hem", r.Hem.String(), "none where folded", fault.Unused)
	}
	a.NotNegative("heading", r.Heading)
	if r.Folded && r.Heading.Sign() > 0 {
		a.Fault("heading", r.Heading.String(), "none where folded", fault.Unused)
	}
	a.NotNegative("top", r.Top)
	if r.Heading.IsZero() && r.Top.Sign() > 0 {
		a.Fault("top", r.Top.String(), "none without heading", fault.Unused)
	}
	a.NotNegative("allowance", r.Allowance)
	if r.Heading.Sign() > 0 && r.Allowance.Sign() > 0 {
		a.Fault("allowance", r.Allowance.String(), "none with a heading", fault.Unused)
	}
	a.NotNegative("inside", r.Inside)
	if r.Rows != 0 {
		a.Count("rows", r.Rows, 1, MaxRows)
	}
	a.Count("corners", r.Corners, -MaxCorners, MaxCorners)
	if r.Parts != 0 {
		a.Count("parts", r.Parts, 1, MaxParts)
	}
	a.NotNegative("width", r.Width)
}

// upper is what the strip has above the line that it is stitched on by.
func (r Ruffle) upper() units.Length { return units.Sum(r.Heading, r.Top, r.Allowance) }

// net is what of cut is not hem: depth, and what lies above the seam line.
func (r Ruffle) net() units.Length {
	if r.Folded {
		return r.Cut.DivInt(2)
	}
	return r.Cut.Sub(r.Hem)
}

// around is the depth as cut that leaves net.
func (r Ruffle) around(net units.Length) units.Length {
	if r.Folded {
		return net.MulInt(2)
	}
	return net.Add(r.Hem)
}

// solveDepth fills cut or depth.
func (r *Ruffle) solveDepth(a *fault.Audit) {
	sum, what := r.Depth.Add(r.upper()), "depth, hem and allowance"
	if !r.Heading.IsZero() {
		what = "depth, hem, heading and top"
	}
	switch {
	case r.Cut.IsZero():
		r.Cut = r.around(sum)
	case r.Depth.IsZero():
		if r.Depth = r.net().Sub(r.upper()); r.Depth.Sign() <= 0 {
			a.Fault("cut", r.Cut.String(), "more than {0} (what seam and hem take)", fault.Range, r.around(r.upper()))
		}
	case r.net() != sum:
		a.Fault("cut", r.Cut.String(), "{0} (what "+what+" come to)", fault.Conflict, r.around(sum))
	}
}

// placeRows finds the gathering rows, which must lie on the strip.
func (p *RufflePlan) placeRows(a *fault.Audit) {
	r, upper := p.Spec, p.Spec.upper()
	if !r.Heading.IsZero() && r.Rows == 1 {
		p.Row = upper
		return
	}
	least, why := r.Inside, "inside"
	if r.Rows > 2 {
		least, why = r.Inside.MulInt(3), "the third row lies three times inside from the seam"
	}
	path, room := "allowance", r.Allowance
	if !r.Heading.IsZero() {
		path, room = "heading", r.Heading
	}
	if room.Cmp(least) <= 0 {
		a.Fault(path, room.String(), "more than {0} ("+why+")", fault.Range, least)
	}
	if r.Rows > 1 && r.Depth.Cmp(r.Inside) <= 0 {
		a.Fault("rows", strconv.Itoa(r.Rows), "1 (the second would lie beyond the free edge)", fault.Range)
	}
	p.Row = upper.Sub(r.Inside)
	if r.Rows > 1 {
		p.SecondRow = upper.Add(r.Inside)
	}
	if r.Rows > 2 {
		p.ThirdRow = upper.Sub(r.Inside.MulInt(3))
	}
}

// cloth finds what cloth the strip takes.
func (p *RufflePlan) cloth(a *fault.Audit) {
	r, st := p.Spec, p.Strip.Strip.Spec
	if r.Width.IsZero() {
		return
	}
	// rows is the cloth of all pieces, so long across it and so long along it.
	rows := func(across, along units.Length) units.Length {
		side, ok := r.Width.Div(across).Int(units.Down)
		if !ok || side > int64(st.Pieces) {
			side = int64(st.Pieces)
		}
		if side == 0 {
			return units.Length{}
		}
		return along.MulInt((int64(st.Pieces) + side - 1) / side)
	}
	p.Across, p.Along = rows(st.Each, p.CutDepth), rows(p.CutDepth, st.Each)
	if p.Across.IsZero() && p.Along.IsZero() {
		a.Fault("width", r.Width.String(), "at least {0} (one piece, laid along the cloth or across it)", fault.Range, st.Each.Min(p.CutDepth))
	}
}

// arcs are how much longer the free edge is than the edge: by the arc of what it
// turns, and by that of its corners. A line at a distance from a curve is longer than
// the curve by the distance times what the curve turns.
func (r Ruffle) arcs() (turn, corners units.Near) {
	return r.Turn.Arc(r.Depth), units.Turns(units.RatioOf(int64(r.Corners), 4)).Arc(r.Depth)
}

// curve finds the length of the free edge.
func (p *RufflePlan) curve(a *fault.Audit) {
	r := p.Spec
	turn, corners := r.arcs()
	outer := turn.Add(corners).Plus(p.Strip.Edge)
	if within := units.DefaultWithin(); within.Less(outer.Within()) {
		if finer, err := outer.Refine(within); err == nil {
			outer = finer
		}
	}
	path, got := "corners", strconv.Itoa(r.Corners)
	if r.Corners == 0 {
		path, got = "turn", r.Turn.String()
	}
	sign, err := outer.Sign()
	switch {
	case err == nil && sign <= 0 && r.Corners == 0:
		a.Fault(path, got, "more than {0} (edge over depth)", ErrCurve, units.Radians(p.Strip.Edge.Div(r.Depth).Neg()))
		return
	case err == nil && sign <= 0:
		a.Fault(path, got, "a free edge longer than 0 in", ErrCurve)
		return
	}
	p.Outer = outer
	if err == nil {
		p.OuterFullness, err = outer.Under(p.Strip.Strip.Sewn)
	}
	if err != nil {
		a.Fault(path, got, "a free edge that can be told from 0 in", units.ErrBound)
	}
}

// clearance finds how near a join comes to a mark. The join that closes a ring is
// left out: the marks are measured from it.
func (p *RufflePlan) clearance() {
	joins := p.Joins
	if p.Strip.Strip.Spec.Ring {
		// Marks that begin elsewhere meet the joins again and again, at every common part
		// of the ring: half of that is as clear of all as can be.
		both := int64(len(joins)) * int64(p.Spec.Parts)
		p.Shift = p.Strip.Strip.Sewn.MulInt(gcd(int64(len(joins)), int64(p.Spec.Parts))).DivInt(2 * both)
		joins = joins[:len(joins)-1]
	}
	if len(joins) == 0 || len(p.Marks) == 0 {
		return
	}
	next := 0 // the first join at or beyond the mark
	for k, mark := range p.Marks {
		for next < len(joins)-1 && joins[next].Full.Less(mark.Full) {
			next++
		}
		near := joins[next].Full.Sub(mark.Full).Abs()
		if next > 0 {
			near = near.Min(mark.Full.Sub(joins[next-1].Full).Abs())
		}
		if k == 0 || near.Less(p.Clear) {
			p.Clear = near
		}
	}
	p.Crowded = p.Clear.Less(p.Strip.Strip.Spec.Allowance.Or(units.Length{})) || p.Clear.IsZero()
}

// gcd is the greatest common divisor of two numbers from 1 on.
func gcd(a, b int64) int64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}
