package seam

import "example.com/clothyard/units/name"

// A BindingKind is a kind of strip that is laid over or into an edge. Which kind reads
// which field of a [Binding]:
//
//	field                                single double piping
//	Seam Give Bias Edge Ring Ends Join     x      x      x
//	Cloth                                  x      x      x
//	Finished Allowance Curve Corners       x      x
//	Turn                                   x
//	Cord                                                 x
//
// A field that a kind does not read must be omitted.
type BindingKind uint8

// The kinds of strip.
const (
	SingleBinding BindingKind = iota + 1 // one thickness round the raw edge, its own free edge turned in
	DoubleBinding                        // the strip folded in half along its length first, so that a fold lies where the other has a turned edge
	Piping                               // the strip folded over a cord and caught into a seam
)

var bindingNames = name.Of[BindingKind]("kind", "none", "single", "double", "piping")

// String is the kind's name, as in double.
func (k BindingKind) String() string { return bindingNames.String(k) }

// MarshalText is the kind's name.
func (k BindingKind) MarshalText() ([]byte, error) { return bindingNames.Marshal(k) }

// UnmarshalText takes a kind's name.
func (k *BindingKind) UnmarshalText(text []byte) error { return bindingNames.Unmarshal(k, text) }
