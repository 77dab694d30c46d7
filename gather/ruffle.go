package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// The bounds on the counts of a [Ruffle] and a [Cuff].
const (
	MaxRows    = 3      // gathering rows
	MaxParts   = 1000   // equal parts that are marked
	MaxCorners = 10_000 // corners, either way
)

// A Ruffle is a strip gathered by one long edge onto an edge of the garment,
// the other long edge free. Zero means not given.
//
// Of Cut, Depth and Allowance one may be left out: Cut is Depth + Hem +
// Allowance, or twice Depth + Allowance where the strip is folded.
type Ruffle struct {
	Strip     Strip        `json:"strip,omitzero"`               // the strip along its length, and the edge it goes on
	Cut       units.Length `json:"cut,omitzero"`                 // depth of the strip as cut, from long edge to long edge
	Depth     units.Length `json:"depth,omitzero"`               // finished depth, from the seam line to the free edge
	Folded    bool         `json:"folded,omitzero"`              // double, folded along its length, the fold being the free edge
	Hem       units.Length `json:"hem,omitzero" noun:"zero"`     // hem allowance of the free edge; zero is an answer; none where Folded
	Allowance units.Length `json:"allowance,omitzero"`           // seam allowance of the gathered edge; default 5/8 in, common practice
	Inside    units.Length `json:"inside,omitzero"`              // how far the gathering row lies from the seam line, inside the allowance; default 1/8 in
	Rows      int          `json:"rows,omitzero"`                // gathering rows, 1 to MaxRows; default 1, common practice; see [RufflePlan]
	Turn      units.Ratio  `json:"turn,omitzero" noun:"zero"`    // how far the edge's seam line turns in all, in radians: more than zero where it bulges outward, less where it is hollow; corners apart
	Corners   int          `json:"corners,omitzero" noun:"zero"` // square corners of the edge, outward ones less inward ones; each turns by a quarter of a circle
	Parts     int          `json:"parts,omitzero"`               // equal parts marked on strip and edge, 1 to MaxParts; default 4, common practice
}

// A RufflePlan is what a ruffle comes to.
//
// The first row lies Inside the seam line, within the allowance, so that the
// seam hides it. A second lies as far on the other side of the seam line, where
// it holds the folds flat and is unpicked afterwards; a third lies twice Inside
// nearer the raw edge than the first.
type RufflePlan struct {
	Spec          Ruffle          `json:"spec,omitzero"`          // as solved
	Assumed       ticket.Fields   `json:"assumed,omitzero"`       // the fields filled with a default
	Strip         StripPlan       `json:"strip,omitzero"`         // the strip and its fullness at the seam
	CutDepth      units.Length    `json:"cutDepth,omitzero"`      // depth of the strip as cut
	Outer         units.Near      `json:"outer,omitzero"`         // length of the finished ruffle along its free edge: Edge + turning x Depth; exact without corners
	OuterFullness units.NearRatio `json:"outerFullness,omitzero"` // fullness at the free edge: strip as sewn over Outer
	Row           units.Length    `json:"row,omitzero"`           // first gathering row, from the raw edge
	SecondRow     units.Length    `json:"secondRow,omitzero"`     // second row, from the raw edge; zero where there is none
	ThirdRow      units.Length    `json:"thirdRow,omitzero"`      // third row, from the raw edge; zero where there is none
	StripPart     units.Length    `json:"stripPart,omitzero"`     // one of the equal parts, on the strip
	EdgePart      units.Length    `json:"edgePart,omitzero"`      // one of the equal parts, on the edge
	Clear         units.Length    `json:"clear,omitzero"`         // least distance on the strip from a join to a mark between its ends; zero where there is no such pair
	Crowded       bool            `json:"crowded,omitzero"`       // a join lies so near a mark that the mark falls on the join's own allowance
}

// Solve fills what follows from the fields given, and the defaults. It fails
// where [Ruffle.Plan] does, and then returns r as it is.
func (r Ruffle) Solve() (Ruffle, error) {
	p, err := r.Plan()
	if err != nil {
		return r, err
	}
	return p.Spec, nil
}

// Plan works out the ruffle. The faults are [fault.Faults]; [ErrCurve] is the
// fault of an edge whose free edge would come to nothing.
func (r Ruffle) Plan() (RufflePlan, error) {
	var a fault.Audit
	sp, err := r.Strip.Plan()
	a.Include("strip", err)
	r.check(&a)
	if a.Failed() {
		return RufflePlan{}, a.Err()
	}
	var names assumed
	r.solveDepth(&a, &names)
	if r.Inside.IsZero() {
		r.Inside = defaultInside()
		names.add("inside")
	}
	if r.Rows == 0 {
		r.Rows = defaultRows
		names.add("rows")
	}
	if r.Parts == 0 {
		r.Parts = defaultParts
		names.add("parts")
	}
	if a.Failed() {
		return RufflePlan{}, a.Err()
	}
	r.Strip = sp.Spec
	p := RufflePlan{Spec: r, Strip: sp, CutDepth: r.Cut}
	p.placeRows(&a)
	p.curve(&a)
	if a.Failed() {
		return RufflePlan{}, a.Err()
	}
	p.Assumed = names.fields()
	p.StripPart = sp.Strip.Sewn.DivInt(int64(r.Parts))
	p.EdgePart = sp.Edge.DivInt(int64(r.Parts))
	p.clearance()
	units.Settle(&p.Outer)
	p.OuterFullness = p.OuterFullness.Settled()
	return p, nil
}

// check looks at each field by itself, and for what is missing.
func (r Ruffle) check(a *fault.Audit) {
	a.NotNegative("cut", r.Cut)
	if r.Cut.IsZero() || r.Depth.Sign() < 0 {
		a.Need("depth", r.Depth)
	}
	a.NotNegative("hem", r.Hem)
	if r.Folded && r.Hem.Sign() > 0 {
		a.Fault("hem", r.Hem.String(), "none where folded", fault.Unused)
	}
	a.NotNegative("allowance", r.Allowance)
	a.NotNegative("inside", r.Inside)
	if r.Rows != 0 {
		a.Count("rows", r.Rows, 1, MaxRows)
	}
	a.Count("corners", r.Corners, -MaxCorners, MaxCorners)
	if r.Parts != 0 {
		a.Count("parts", r.Parts, 1, MaxParts)
	}
}

// solveDepth fills Cut, Depth and Allowance.
func (r *Ruffle) solveDepth(a *fault.Audit, names *assumed) {
	// net is Depth + Allowance, where Cut is given.
	net := r.Cut.Sub(r.Hem)
	if r.Folded {
		net = r.Cut.DivInt(2)
	}
	cut := !r.Cut.IsZero()
	switch {
	case cut && r.Allowance.IsZero() && !r.Depth.IsZero():
		r.Allowance = net.Sub(r.Depth)
		if r.Allowance.Sign() <= 0 {
			r.Allowance = units.Length{}
			a.Fault("cut", r.Cut.String(), "more than "+r.around(r.Depth).String()+" (what depth and hem come to)", fault.Conflict)
		}
		return
	case r.Allowance.IsZero():
		r.Allowance = defaultAllowance()
		names.add("allowance")
	}
	sum := r.Depth.Add(r.Allowance)
	switch {
	case cut && r.Depth.IsZero():
		r.Depth = net.Sub(r.Allowance)
		if r.Depth.Sign() <= 0 {
			a.Fault("cut", r.Cut.String(), "more than "+r.around(r.Allowance).String()+" (what seam and hem take)", fault.Range)
		}
	case cut && net != sum:
		a.Fault("cut", r.Cut.String(), r.around(sum).String()+" (what depth, hem and allowance come to)", fault.Conflict)
	case !cut:
		r.Cut = r.around(sum)
	}
}

// around is the depth as cut whose depth and seam allowance are net.
func (r *Ruffle) around(net units.Length) units.Length {
	if r.Folded {
		return net.MulInt(2)
	}
	return net.Add(r.Hem)
}

// placeRows finds the gathering rows, which must lie on the strip.
func (p *RufflePlan) placeRows(a *fault.Audit) {
	r := p.Spec
	least, why := r.Inside, "inside"
	if r.Rows > 2 {
		least, why = r.Inside.MulInt(3), "the third row lies three times inside from the seam"
	}
	if r.Allowance.Cmp(least) <= 0 {
		a.Fault("allowance", r.Allowance.String(), "more than "+least.String()+" ("+why+")", fault.Range)
	}
	if r.Rows > 1 && r.Depth.Cmp(r.Inside) <= 0 {
		a.Fault("rows", strconv.Itoa(r.Rows), "1 (the second would lie beyond the free edge)", fault.Range)
	}
	p.Row = r.Allowance.Sub(r.Inside)
	if r.Rows > 1 {
		p.SecondRow = r.Allowance.Add(r.Inside)
	}
	if r.Rows > 2 {
		p.ThirdRow = r.Allowance.Sub(r.Inside.MulInt(3))
	}
}
