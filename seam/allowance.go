package seam

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
)

// An Allowance is what every seam is told of its two plies and of the cloth.
type Allowance struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`

	// Drafted is the allowance that the pattern drew on the upper ply, from the drafted
	// stitching line to the raw edge. May be omitted; the default is 5/8 in, or 1.5 cm.
	Drafted units.Length `json:"drafted,omitzero"`
	// DraftedUnder is the allowance that the pattern drew on the under ply. May be
	// omitted; the default is drafted.
	DraftedUnder units.Length `json:"draftedUnder,omitzero"`
	// Cut is the allowance left on the upper ply when it was cut, or trimmed before the
	// first row, from the drafted stitching line. Where it differs from drafted it is
	// also the most that the seam may take from that ply. May be omitted; the default is
	// drafted.
	Cut units.Length `json:"cut,omitzero"`
	// CutUnder is the allowance left on the under ply, as cut is on the upper one. May be
	// omitted; the default is draftedUnder, but where cut is given and draftedUnder is
	// not, it is cut.
	CutUnder units.Length `json:"cutUnder,omitzero"`

	// Thickness is that of one ply. It is what folds take up, and what edges that are
	// shut in leave room for. May be omitted; the cloth then counts as thin.
	Thickness units.Length `json:"thickness,omitzero"`
	// Fraying says that the cloth frays, so that trims are kept wider and raw edges are
	// warned of.
	Fraying bool `json:"fraying,omitzero"`
}

// Plies is the allowance.
func (a Allowance) Plies() Allowance { return a }

func (a *Allowance) plies() *Allowance { return a }

// fill fills the allowances of both plies.
func (a *Allowance) fill(tape units.Tape) {
	a.Tape = tape
	other := a.DraftedUnder
	if !a.Cut.IsZero() && other.IsZero() {
		other = a.Cut
	}
	fill(&a.Drafted, sew.Standard(a.Tape))
	fill(&a.DraftedUnder, a.Drafted)
	fill(&a.Cut, a.Drafted)
	fill(&a.CutUnder, other)
	fill(&a.CutUnder, a.DraftedUnder)
}

// fill puts a default into a field that is not given.
func fill(to *units.Length, l units.Length) {
	if to.IsZero() {
		*to = l
	}
}
