package hem

import (
	"example.com/clothyard/units/ticket"
)

// A Kind is a way to hem. The fields that each kind reads beside Kind:
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

var kindNames = [...]string{"none", "single", "double", "narrow", "slit", "blind", "rolled", "faced", "bias-faced", "bound", "shirt-tail", "circular", "turn-up"}

// Kinds yields every kind, [NoKind] excepted.
func Kinds(yield func(Kind) bool) {
	for k := Single; k.Valid(); k++ {
		if !yield(k) {
			return
		}
	}
}

// Valid reports whether k is one of the kinds, [NoKind] excepted.
func (k Kind) Valid() bool { return k > NoKind && int(k) < len(kindNames) }

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

// String is the kind's name, as in double, and none for [NoKind].
func (k Kind) String() string { return ticket.NameOf(k, kindNames[:], "Kind") }

// MarshalText is the kind's name, empty for [NoKind]. It fails for a number that
// is no kind.
func (k Kind) MarshalText() ([]byte, error) { return ticket.NameText(k, kindNames[:], "kind") }

// UnmarshalText takes a kind's name; empty text is [NoKind].
func (k *Kind) UnmarshalText(text []byte) error {
	return ticket.ReadName(k, text, kindNames[:], "kind")
}

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

var openingNames = [...]string{"none", "tucked", "faced", "in-seam"}

// Openings yields every opening, [NoOpening] excepted.
func Openings(yield func(Opening) bool) {
	for o := Tucked; o <= InSeam; o++ {
		if !yield(o) {
			return
		}
	}
}

// Valid reports whether o is one of the openings, [NoOpening] excepted.
func (o Opening) Valid() bool { return o > NoOpening && int(o) < len(openingNames) }

// String is the opening's name, as in in-seam, and none for [NoOpening].
func (o Opening) String() string { return ticket.NameOf(o, openingNames[:], "Opening") }

// MarshalText is the opening's name, empty for [NoOpening]. It fails for a number
// that is no opening.
func (o Opening) MarshalText() ([]byte, error) {
	return ticket.NameText(o, openingNames[:], "opening")
}

// UnmarshalText takes an opening's name; empty text is [NoOpening].
func (o *Opening) UnmarshalText(text []byte) error {
	return ticket.ReadName(o, text, openingNames[:], "opening")
}

const (
	kindList    = "single, double, narrow, slit, blind, rolled, faced, bias-faced, bound, shirt-tail, circular or turn-up"
	openingList = "tucked, faced or in-seam"
)
