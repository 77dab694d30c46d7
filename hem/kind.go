package hem

import (
	"iter"

	"example.com/clothyard/units/name"
)

// A Kind is a way to hem. The fields that each kind reads beside Kind
// and Tape:
//
//	            Drafted Cut First Depth Take Trim Stitch Back Seam Favour Doubled Spare Slope Edges Sweep Circle Hollow Radius
//	single      d       d   -     S     S    -    d      -    -    -      -       -     o     o     o     o      o      -
//	double      d       d   D     S     S    o    d      -    -    -      -       -     o     o     o     o      o      -
//	narrow      d       d   D     D     S    o    d      -    -    -      -       -     o     o     o     o      o      -
//	slit        d       d   D     S     S    o    d      -    -    -      -       -     -     -     o     -      -      -
//	blind       d       d   o     S     S    -    d      d    -    -      -       -     o     o     o     o      o      -
//	rolled      d       d   D     D     S    o    d      -    -    -      -       -     o     o     o     o      o      -
//	faced       d       d   d     N     S    -    d      -    D    o      -       o     o     o     o     o      o      -
//	bias-faced  d       d   d     N     S    -    d      -    D    o      -       o     o     o     o     o      o      -
//	bound       d       o   d     N     -    -    -      -    d    -      o       o     o     o     o     o      o      -
//	shirt-tail  d       d   D     D     S    o    d      -    -    -      -       -     o     o     o     o      o      -
//	circular    d       d   D     D     S    o    d      -    -    -      -       -     -     -     -     d      -      o
//	turn-up     d       d   D     S     S    -    d      -    -    -      -       -     o     o     o     -      -      -
//
// N is needed, S follows from others or is needed, D the same but with a default,
// d has a default, o may be left out, - must be zero. A slit also reads Slit,
// which may be left out, Opening, which is needed, and, where it is an opening
// left in a seam, SeamTake; only such an opening reads Drafted and Cut. A shirt
// tail needs Circle or Hollow. First is not read by a doubled binding.
type Kind uint8

// The kinds. The zero value is not given, which a [Spec] refuses.
const (
	NoKind    Kind = iota
	Single         // the raw edge finished flat and turned once
	Double         // turned twice, by equal or unequal turns, so that the raw edge is hidden
	Narrow         // a double hem of small depth, with defaults
	Slit           // a double hem along both sides of a slit, or of an opening left in a seam
	Blind          // turned up, the garment folded back over it, and caught so that no stitching shows
	Rolled         // the raw edge rolled over twice between the fingers or by the foot
	FacedHem       // a strip or shaped facing of the straight cloth sewn to the edge and turned in
	BiasFaced      // the same with a strip cut on the bias
	Bound          // the raw edge enclosed in a binding, single or doubled
	ShirtTail      // a narrow double hem along a curved tail
	Circular       // a narrow double hem round a circle or a sector of one
	TurnUp         // a trouser turn-up: the hem turned in and the leg turned up over it, to the outside
)

var kinds = name.Of[Kind]("kind", "none", "single", "double", "narrow", "slit", "blind", "rolled", "faced", "bias-faced", "bound", "shirt-tail", "circular", "turn-up")

// Kinds yields every kind, [NoKind] excepted.
func Kinds() iter.Seq[Kind] { return kinds.All() }

// Valid reports whether k is one of the kinds, [NoKind] excepted.
func (k Kind) Valid() bool { return kinds.Valid(k) }

// twoTurns reports whether k is turned twice by First and then Depth.
func (k Kind) twoTurns() bool {
	switch k {
	case Double, Narrow, Slit, Rolled, ShirtTail, Circular:
		return true
	}
	return false
}

// narrow reports whether both turns of k have defaults.
func (k Kind) narrow() bool {
	return k == Narrow || k == Rolled || k == ShirtTail || k == Circular
}

// faced reports whether a strip is sewn to the edge and turned in.
func (k Kind) faced() bool { return k == FacedHem || k == BiasFaced }

// stripped reports whether a strip is sewn to the edge.
func (k Kind) stripped() bool { return k.faced() || k == Bound }

// String is the name of the kind, as in double, and none for [NoKind].
func (k Kind) String() string { return kinds.String(k) }

// MarshalText is the name of the kind, empty for [NoKind]. It fails for a number
// that is no kind.
func (k Kind) MarshalText() ([]byte, error) { return kinds.Marshal(k) }

// UnmarshalText reads the name of a kind; empty text is [NoKind].
func (k *Kind) UnmarshalText(text []byte) error { return kinds.Unmarshal(k, text) }

// An Opening is how a slit ends at its top, where a hem alone has no cloth to
// turn. Every [Slit] must say.
type Opening uint8

// The openings. The zero value is not given; it is the only one for a hem that is
// not round a slit.
const (
	NoOpening Opening = iota
	Tucked            // cut into the cloth, the top taken as a tapering tuck across its end
	Faced             // cut into the cloth, the top finished with a small facing
	InSeam            // left open in a seam, the allowance clipped where the seam ends
)

var openings = name.Of[Opening]("opening", "none", "tucked", "faced", "in-seam")

// Openings yields every opening, [NoOpening] excepted.
func Openings() iter.Seq[Opening] { return openings.All() }

// Valid reports whether o is one of the openings, [NoOpening] excepted.
func (o Opening) Valid() bool { return openings.Valid(o) }

// String is the name of the opening, as in in-seam, and none for [NoOpening].
func (o Opening) String() string { return openings.String(o) }

// MarshalText is the name of the opening, empty for [NoOpening]. It fails for a
// number that is no opening.
func (o Opening) MarshalText() ([]byte, error) { return openings.Marshal(o) }

// UnmarshalText reads the name of an opening; empty text is [NoOpening].
func (o *Opening) UnmarshalText(text []byte) error { return openings.Unmarshal(o, text) }
