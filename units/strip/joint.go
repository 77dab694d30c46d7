package strip

import (
	"errors"
	"strconv"
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

// The joints. The zero value is not given, which a [Binding] refuses.
const (
	NoJoint  Joint = iota
	Straight       // the ends cut square, seamed square to the strip
	Slanted        // the ends cut at 45 degrees, as the thread runs in a bias strip, and seamed along the cut
	Crossed        // the ends cut square, laid at a right angle and seamed from corner to corner
)

var jointNames = [...]string{"none", "straight", "slanted", "crossed"}

// Joints yields every joint, [NoJoint] excepted.
func Joints(yield func(Joint) bool) {
	for j := Straight; j <= Crossed; j++ {
		if !yield(j) {
			return
		}
	}
}

// Valid reports whether j is one of the joints, [NoJoint] excepted.
func (j Joint) Valid() bool { return j > NoJoint && j <= Crossed }

// String is the joint's name, as in slanted, and none for [NoJoint].
func (j Joint) String() string {
	if int(j) < len(jointNames) {
		return jointNames[j]
	}
	return "Joint(" + strconv.Itoa(int(j)) + ")"
}

// MarshalText is the joint's name, empty for [NoJoint]. It fails for a number that
// is no joint.
func (j Joint) MarshalText() ([]byte, error) {
	switch {
	case j == NoJoint:
		return nil, nil
	case !j.Valid():
		return nil, errors.New("strip: " + j.String() + " is no joint")
	}
	return []byte(j.String()), nil
}

// UnmarshalText takes a joint's name; empty text is [NoJoint].
func (j *Joint) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*j = NoJoint
		return nil
	}
	for k := range Joints {
		if k.String() == string(text) {
			*j = k
			return nil
		}
	}
	return errors.New("strip: no such joint, want straight, slanted or crossed")
}
