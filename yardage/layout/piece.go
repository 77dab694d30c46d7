package layout

import (
	"fmt"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A Piece is a pattern piece with its allowances: by its outline, or else as a
// rectangle, the smallest one, sides along and across the grain, that holds it.
type Piece struct {
	Name    string       `json:"name,omitzero"`             // what it is, as in "sleeve", for one piece only; may be empty; at most fault.MaxName bytes
	Wide    units.Length `json:"wide,omitzero"`             // across the cloth; more than zero; follows from Outline where that is given
	Long    units.Length `json:"long,omitzero"`             // along the cloth, the way the grain line is drawn; more than zero; follows from Outline where that is given
	Outline []Point      `json:"outline,omitzero"`          // corners in order, either way round, the first not repeated; 3 to MaxPoints; none: a rectangle
	Count   int          `json:"count,omitzero"`            // how many are cut, a mirrored pair being 2; 1 to MaxPieces, there is no default
	Pair    bool         `json:"pair,omitzero"`             // left and right: every even copy is mirrored across the cloth; Count must be even
	Turn    Turn         `json:"turn,omitzero"`             // how it may be turned; zero is Keep
	Fold    bool         `json:"fold,omitzero"`             // drawn as its right-hand half: the edge of least X is laid on the fold, or the piece is opened out about it where the cloth is not folded
	Notches []Notch      `json:"notches,omitzero"`          // the points that are matched where the cloth has a repeat; at most MaxNotches
	Centred bool         `json:"centred,omitzero"`          // its centre line, along the grain, lies on the middle of a stripe or half-way between two; it must be the same both hands, with Turn Keep or Half
	Parts   int          `json:"parts,omitzero"`            // in at most how many equal parts it may be cut, to be joined end to end into its longer side; 0 or 1: whole; at most MaxParts, for a plain rectangle only
	Join    units.Length `json:"join,omitzero" noun:"zero"` // taken from each part at a join, so that each join costs twice this; zero where the ends only meet; for Parts only

	// Allowance is what is cut outside the edges drawn: one for all, but a fold
	// edge, or one for each, from each corner to the next (of a rectangle the near
	// one, right, far, left); none: the edges drawn are cut. Corners of less than
	// 60 degrees are cut off square an allowance beyond their point; what comes out
	// in no whole steps is rounded outward, corners within a few of [GrowStep].
	Allowance []units.Length `json:"allowance,omitzero"`
}

// A Notch is a point of a piece that must lie on the same place of the cloth's
// repeat as every notch of that name, on any piece and copy.
type Notch struct {
	Name string `json:"name,omitzero"` // one of its kind on this piece; must be given
	At   Point  `json:"at,omitzero"`   // from the origin of Outline; without one, from the rectangle's corner of least X and Y
}

// Turn says how a piece may be turned on the cloth.
type Turn uint8

// The turns. The zero value is Keep, which is right for any cloth.
const (
	Keep    Turn = iota // grain line along the cloth, as drawn: cloth with nap or a one-way print
	Half                // may be turned end for end, grain still along; for a rectangle it makes no difference
	Quarter             // may also lie across the grain: pockets, facings, squares
	Bias                // must lie on the bias, turned by [Piece.Bias], and by quarters besides
)

var turnNames = [...]string{Keep: "keep", Half: "half", Quarter: "quarter", Bias: "bias"}

// Turns yields every turn.
func Turns(yield func(Turn) bool) {
	for t := range turnNames {
		if !yield(Turn(t)) {
			return
		}
	}
}

// String is keep, half, quarter or bias.
func (t Turn) String() string {
	if int(t) < len(turnNames) {
		return turnNames[t]
	}
	return fmt.Sprintf("turn %d", uint8(t))
}

// MarshalText is the turn's name; it fails for a value that is none.
func (t Turn) MarshalText() ([]byte, error) {
	if int(t) >= len(turnNames) {
		return nil, &fault.Fault{Path: "turn", Got: t.String(), Limit: turnList, Kind: fault.Unknown}
	}
	return []byte(t.String()), nil
}

// UnmarshalText takes a turn's name.
func (t *Turn) UnmarshalText(text []byte) error {
	for one, name := range turnNames {
		if name == string(text) {
			*t = Turn(one)
			return nil
		}
	}
	got := text[:min(len(text), fault.MaxName)]
	return &fault.Fault{Path: "turn", Got: fmt.Sprintf("%q", got), Limit: turnList, Kind: fault.Unknown}
}

const turnList = "keep, half, quarter or bias"

// A Cloth is the cloth laid out flat: a single layer, or folded lengthwise.
type Cloth struct {
	Wide     units.Length `json:"wide,omitzero"`                 // full width of a single layer, selvedge edge to selvedge edge; more than zero
	Selvedge units.Length `json:"selvedge,omitzero" noun:"zero"` // not used at each of the two selvedges; zero is an answer
	Long     units.Length `json:"long,omitzero"`                 // how long the cloth is, cut end to cut end; zero: as long as need be
	Gap      units.Length `json:"gap,omitzero" noun:"zero"`      // least distance between two pieces; zero is an answer, they may share a cut
	Ends     units.Length `json:"ends,omitzero" noun:"zero"`     // not used at each of the two cut ends, as for squaring up; zero is an answer
	Folded   bool         `json:"folded,omitzero"`               // folded lengthwise, right sides together: each placement cuts two layers
	Fold     units.Length `json:"fold,omitzero"`                 // from the fold to the selvedge that is folded over, at most half of Wide; zero: half, selvedges together; for Folded only
	OneWay   bool         `json:"oneWay,omitzero"`               // nap or a print that has a top: every piece lies as drawn, none is turned end for end or across
	RepeatX  units.Length `json:"repeatX,omitzero"`              // width of the stripe's or check's repeat across; zero: none; for a lay with a piece that has Notches or is Centred
	RepeatY  units.Length `json:"repeatY,omitzero"`              // length of the repeat along; zero: none; for a lay with a piece that has Notches
	Axis     units.Length `json:"axis,omitzero" noun:"zero"`     // to the middle of a stripe, from the outer edge of the left-hand selvedge, for a lay with a piece that is Centred; zero is an answer, and the one on folded cloth: the fold lies on it
	Phases   []Phase      `json:"phases,omitzero"`               // where on the repeat notches must lie; those of other names lie where the lay is shortest; at most MaxPhases
	Flaws    []Flaw       `json:"flaws,omitzero"`                // where no piece may lie; at most MaxFlaws
	Counter  units.Length `json:"counter,omitzero"`              // what the shop cuts lengths in, for [Plan.Buy]; zero: any length
}

// A Phase is the place of a notch on the repeat: every notch of that name lies a
// whole number of repeats from it.
type Phase struct {
	Notch string       `json:"notch,omitzero"`         // the name of the notch; must be that of one
	X     units.Length `json:"x,omitzero" noun:"zero"` // across, measured as that of a Placement; zero is an answer, and the one where the cloth has no RepeatX
	Y     units.Length `json:"y,omitzero" noun:"zero"` // along, from the cut end; zero is an answer, and the one where the cloth has no RepeatY
}

// A Flaw is a hole, a stain or a seam in the cloth: a rectangle, or an outline.
// Pieces may touch it. On folded cloth it bars its place in both layers.
type Flaw struct {
	X       units.Length `json:"x,omitzero" noun:"zero"` // to the rectangle's left-hand side, from the outer edge of the left-hand selvedge as the cloth lies open; zero is an answer
	Y       units.Length `json:"y,omitzero" noun:"zero"` // to its near side, from the cut end; zero is an answer
	Wide    units.Length `json:"wide,omitzero"`          // across; more than zero, unless Outline is given
	Long    units.Length `json:"long,omitzero"`          // along; more than zero, unless Outline is given
	Outline []Point      `json:"outline,omitzero"`       // its corners instead, from the left-hand selvedge and the cut end; 3 to MaxPoints
}

// Usable is the width that pieces are laid on: between the selvedges, Wide less
// twice Selvedge; on folded cloth from the fold to the nearer selvedge's inner edge.
func (c Cloth) Usable() units.Length {
	if c.Folded {
		return c.double().Sub(c.Selvedge)
	}
	return c.Wide.Sub(c.Selvedge.MulInt(2))
}

// double is how wide the cloth lies double.
func (c *Cloth) double() units.Length {
	if c.Fold.IsZero() {
		return c.Wide.DivInt(2)
	}
	return c.Fold
}

// first is the least X that a piece may have: the fold, or the inner edge of the
// left-hand selvedge.
func (c *Cloth) first() units.Length {
	if c.Folded {
		return units.Length{}
	}
	return c.Selvedge
}

// layers is how many layers of cloth a placement cuts.
func (c *Cloth) layers() int64 {
	if c.Folded {
		return 2
	}
	return 1
}

// A Placement is where one piece lies, by the corner nearest to the cut end and
// the left-hand selvedge of the smallest rectangle that holds it as it lies. A
// mirrored copy is mirrored first and then turned. On folded cloth a placement of
// a piece that has another hand, or is the same both hands, cuts two copies, see
// [Placement.Copies].
type Placement struct {
	Piece  int          `json:"piece,omitzero"`  // which piece: its index in Spec.Pieces, from 0
	Copy   int          `json:"copy,omitzero"`   // which of its copies, from 1 to Count
	Part   int          `json:"part,omitzero"`   // which part of the copy, from 1 to Of; 0 where it is cut whole
	Of     int          `json:"of,omitzero"`     // how many parts every copy of the piece is cut in; 0 where it is cut whole
	Across bool         `json:"across,omitzero"` // turned a quarter: what points to the right as drawn points away from the cut end, so that Wide lies along the cloth and Long across
	Half   bool         `json:"half,omitzero"`   // turned end for end, besides Across; a piece on the fold is turned over as well, so that its fold edge stays there
	X      units.Length `json:"x,omitzero"`      // across, from the outer edge of the left-hand selvedge; on folded cloth, from the fold, which is on the left
	Y      units.Length `json:"y,omitzero"`      // along, from the cut end
}

// laid is the piece, or the part of it, as the cloth takes it.
func (p Placement) laid(s *Spec) Piece {
	one := s.Pieces[p.Piece].laid(&s.Cloth)
	if p.Of > 1 {
		return one.part(p.Of)
	}
	return one
}

// Size is how much room p takes across and along the cloth. It is zero where
// p's piece is not among those of s.
func (p Placement) Size(s Spec) (wide, long units.Length) {
	if p.Piece < 0 || p.Piece >= len(s.Pieces) {
		return wide, long
	}
	one := p.laid(&s)
	wide, long = one.extent()
	if p.Across {
		return long, wide
	}
	return wide, long
}
