package strip

import (
	"iter"

	"example.com/clothyard/units/name"
)

// A Joint is how the pieces of a [Binding] are joined, and so what one join takes
// from the length of the strip:
//
//	straight   square to the strip: two allowances
//	slanted    at 45 degrees, both ends cut so: two allowances times the root of 2
//	crossed    at 45 degrees from square ends laid across each other: the width
//
// A joint at 45 degrees spreads its layers along the strip, so that a binding
// folds over it smoothly (common practice).
type Joint uint8

// The joints.
const (
	Straight Joint = iota + 1 // the ends cut square, seamed square to the strip
	Slanted                   // the ends cut at 45 degrees, as the thread runs in a bias strip, and seamed along the cut
	Crossed                   // the ends cut square, laid at a right angle and seamed from corner to corner
)

var joints = name.Of[Joint]("joint", "none", "straight", "slanted", "crossed")

// Joints yields every joint.
func Joints() iter.Seq[Joint] { return joints.All() }

// String is the joint's name, as in slanted.
func (j Joint) String() string { return joints.String(j) }

// MarshalText is the joint's name.
func (j Joint) MarshalText() ([]byte, error) { return joints.Marshal(j) }

// UnmarshalText reads a joint's name.
func (j *Joint) UnmarshalText(text []byte) error { return joints.Unmarshal(j, text) }
