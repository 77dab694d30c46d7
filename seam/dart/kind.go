package dart

import (
	"iter"

	"example.com/clothyard/units/name"
)

// A Kind is a shape of dart. The zero value, [NoKind], is not given; a [Spec]
// is then single. Which kind reads which field:
//
//	field                  single double-pointed french open-ended
//	Length Width Across     x      x              x      x
//	Leg Other Stop Trim     x                     x
//	Allowance Slope         x                     x      x
//	Lower Overlap                  x
//	End                                                  x
//
// A field that a kind does not read must be zero.
type Kind uint8

// The kinds of dart.
const (
	NoKind    Kind = iota // not given
	Single                // from an edge to one point
	Double                // double-pointed, the fish-eye dart: widest between two points, off every edge
	French                // long and slanting from low in the side seam, cut open before it is sewn where its fold is wide
	OpenEnded             // the dart tuck: stitched from an edge and let go before it comes to a point
)

var dartNames = name.Of[Kind]("kind", "none", "single", "double-pointed", "french", "open-ended")

// String is the kind's name, as in open-ended; none for [NoKind].
func (k Kind) String() string { return dartNames.String(k) }

// MarshalText is the kind's name, empty for [NoKind]. A value that is no kind is
// a fault.
func (k Kind) MarshalText() ([]byte, error) { return dartNames.Marshal(k) }

// UnmarshalText takes a kind's name. Empty text is [NoKind].
func (k *Kind) UnmarshalText(text []byte) error { return dartNames.Unmarshal(k, text) }

// Kinds yields every [Kind], [NoKind] excepted.
func Kinds() iter.Seq[Kind] { return dartNames.All() }
