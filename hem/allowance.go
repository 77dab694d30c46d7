package hem

import (
	"example.com/clothyard/units"
)

// An Allowance is what every hem is told of the allowance below the finished line.
type Allowance struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Drafted is the allowance that the pattern drew, from the finished line down to the
	// cutting line; for an opening in a seam, the allowance of the seam. May be omitted;
	// the default is cut.
	Drafted units.Length `json:"drafted,omitzero"`
	// Cut is the allowance as cut, from the drafted finished line to the raw edge. It is
	// no limit: a hem that takes more makes the garment shorter. May be omitted; the
	// default is drafted, or what the hem takes where that is omitted too; for an opening
	// in a seam, what the seam takes. Of a bound edge the default is nothing, as a
	// binding takes nothing.
	Cut units.Length `json:"cut,omitzero"`
}

// Allowed is the allowance.
func (a Allowance) Allowed() Allowance { return a }

func (a *Allowance) tape() *units.Tape { return &a.Tape }

// fill fills what is cut and drafted, once it is known what the hem takes.
func (a *Allowance) fill(take units.Length) {
	fill(&a.Cut, a.Drafted)
	fill(&a.Cut, take)
	fill(&a.Drafted, a.Cut)
}

// fill puts a default into a length that is not given.
func fill(to *units.Length, l units.Length) {
	if to.IsZero() {
		*to = l
	}
}

// MaxEdges is the greatest number of flared edges, and MaxCircle the greatest number of
// full turns of an edge.
const (
	MaxEdges  = 1_000
	MaxCircle = 1_000
)

// A Flare is the edge that is hemmed, and how the side edges run to it.
type Flare struct {
	// Slope is how each flared side edge runs out as it goes down: the slope of so much
	// outwards for one unit down, negative where the garment narrows towards the hem. May
	// be omitted; the edges then run straight down.
	Slope units.Angle `json:"slope,omitzero" noun:"zero"`
	// Edges is how many side edges slope so, two at each side seam, at most 1,000. It is
	// needed where slope is given.
	Edges int `json:"edges,omitzero"`
	// Sweep is the drafted length of the edge, along the finished line. May be omitted;
	// the plan then has no length of the edge.
	Sweep units.Length `json:"sweep,omitzero"`
}

// A Curved edge is one that may have curves.
type Curved struct {
	Flare
	// Circle is how far the convex curves of the edge turn in all: 360 deg for a circle,
	// 90 deg for a corner rounded square; at most 1,000 turns. May be omitted; the edge
	// then has none.
	Circle units.Angle `json:"circle,omitzero"`
	// Hollow is the same of the concave curves, as those at the side seams of a shirt
	// tail. May be omitted; the edge then has none.
	Hollow units.Angle `json:"hollow,omitzero"`
}

// An edge is the line that is hemmed, its angles as numbers.
type edge struct {
	slope          units.Ratio // how far each side edge runs out for one unit down
	edges          int
	sweep, radius  units.Length
	circle, hollow units.Ratio // parts of a turn
}

func (f Flare) edge() edge {
	slope, _ := tangent(f.Slope)
	return edge{slope: slope, edges: f.Edges, sweep: f.Sweep}
}

func (c Curved) edge() edge {
	e := c.Flare.edge()
	e.circle, _ = c.Circle.InTurns().Exact()
	e.hollow, _ = c.Hollow.InTurns().Exact()
	return e
}

// tangent is the tangent of an angle; false where it is no rational number.
func tangent(a units.Angle) (units.Ratio, bool) {
	n, err := a.Tan()
	t, exact := n.Exact()
	return t, exact && err == nil
}
