package dart

import "example.com/clothyard/units/name"

// A Kind is a shape of dart. Which kind reads which field:
//
//	field                  single double-pointed french open-ended
//	Length Width Across     x      x              x      x
//	Leg Other Stop Trim     x                     x
//	Allowance Slope         x                     x      x
//	Lower Overlap                  x
//	End                                                  x
//
// A field that a kind does not read must be omitted.
type Kind uint8

// The kinds of dart.
const (
	Single    Kind = iota + 1 // from an edge to one point
	Double                    // double-pointed, the fish-eye dart: widest between two points, off every edge
	French                    // long and slanting from low in the side seam, cut open before it is sewn where its fold is wide
	OpenEnded                 // the dart tuck: stitched from an edge and let go before it comes to a point
)

var kinds = name.Of[Kind]("kind", "none", "single", "double-pointed", "french", "open-ended")

// String is the kind's name, as in open-ended.
func (k Kind) String() string { return kinds.String(k) }

// MarshalText is the kind's name.
func (k Kind) MarshalText() ([]byte, error) { return kinds.Marshal(k) }

// UnmarshalText takes a kind's name.
func (k *Kind) UnmarshalText(text []byte) error { return kinds.Unmarshal(k, text) }
