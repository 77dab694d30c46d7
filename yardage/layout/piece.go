package layout

import (
	"fmt"

	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// A Piece is a pattern piece with its allowances: by its outline, or else as a
// rectangle, the smallest one, sides along and across the grain, that holds it.
type Piece struct {
	Name    string       // what it is, as in "sleeve"; at most ticket.MaxName bytes
	Wide    units.Length // across the cloth; more than zero; follows from Outline where that is given
	Long    units.Length // along the cloth, the way the grain line is drawn; more than zero; follows from Outline where that is given
	Outline []Point      // corners in order, either way round, the first not repeated; 3 to MaxPoints; none: a rectangle
	Count   int          // how many are cut, a mirrored pair being 2; 1 to MaxPieces, there is no default
	Pair    bool         // left and right: every even copy is mirrored across the cloth; Count must be even
	Turn    Turn         // how it may be turned; zero is Keep
}

// Turn says how a piece may be turned on the cloth.
type Turn uint8

// The turns. The zero value is Keep, which is right for any cloth.
const (
	Keep    Turn = iota // grain line along the cloth, as drawn: cloth with nap or a one-way print
	Half                // may be turned end for end, grain still along; for a rectangle it makes no difference
	Quarter             // may also lie across the grain: pockets, facings, squares
)

var turnNames = [...]string{Keep: "keep", Half: "half", Quarter: "quarter"}

// Turns yields every turn.
func Turns(yield func(Turn) bool) {
	for t := range turnNames {
		if !yield(Turn(t)) {
			return
		}
	}
}

// String is keep, half or quarter.
func (t Turn) String() string {
	if int(t) < len(turnNames) {
		return turnNames[t]
	}
	return fmt.Sprintf("turn %d", uint8(t))
}

// MarshalText is the turn's name; it fails for a value that is none.
func (t Turn) MarshalText() ([]byte, error) {
	if int(t) >= len(turnNames) {
		return nil, &ticket.Fault{Path: "Turn", Got: t.String(), Limit: turnList, Err: ticket.ErrUnknown}
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
	got := text[:min(len(text), ticket.MaxName)]
	return &ticket.Fault{Path: "Turn", Got: fmt.Sprintf("%q", got), Limit: turnList, Err: ticket.ErrUnknown}
}

const turnList = "keep, half or quarter"

// A Cloth is the cloth laid out flat, a single layer.
type Cloth struct {
	Wide     units.Length // full width, selvedge edge to selvedge edge; more than zero
	Selvedge units.Length // not used at each of the two selvedges; zero is an answer
	Long     units.Length // how long the cloth is, cut end to cut end; zero: as long as need be
	Gap      units.Length // least distance between two pieces; zero is an answer, they may share a cut
	Ends     units.Length // not used at each of the two cut ends, as for squaring up; zero is an answer
}

// Usable is the width between the selvedges, Wide less twice Selvedge.
func (c Cloth) Usable() units.Length { return c.Wide.Sub(c.Selvedge.MulInt(2)) }

// A Placement is where one piece lies, by the corner nearest to the cut end and
// the left-hand selvedge of the smallest rectangle that holds it as it lies. A
// mirrored copy is mirrored first and then turned.
type Placement struct {
	Piece  int          // which piece: its index in Spec.Pieces, from 0
	Copy   int          // which of its copies, from 1 to Count
	Across bool         // turned a quarter: what points to the right as drawn points away from the cut end, so that Wide lies along the cloth and Long across
	Half   bool         // turned end for end, besides Across
	X      units.Length // across, from the outer edge of the left-hand selvedge
	Y      units.Length // along, from the cut end
}

// Size is how much room p takes across and along the cloth. It is zero where
// p's piece is not among those of s.
func (p Placement) Size(s Spec) (wide, long units.Length) {
	if p.Piece < 0 || p.Piece >= len(s.Pieces) {
		return wide, long
	}
	wide, long = s.Pieces[p.Piece].extent()
	if p.Across {
		return long, wide
	}
	return wide, long
}
