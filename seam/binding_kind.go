package seam

import (
	"fmt"

	"example.com/clothyard/units/ticket"
)

// A BindingKind is a kind of strip that is laid over or into an edge. The zero
// value, [NoBinding], is not given, which a plan refuses. Which kind reads which
// field of a [Binding]:
//
//	field                                single double piping
//	Seam Give Bias Edge Ring Ends Join     x      x      x
//	Cloth                                  x      x      x
//	Finished Allowance Curve Corners       x      x
//	Turn                                   x
//	Cord                                                 x
//
// A field that a kind does not read must be zero.
type BindingKind uint8

// The kinds of strip.
const (
	NoBinding     BindingKind = iota // not given
	SingleBinding                    // one thickness round the raw edge, its own free edge turned in
	DoubleBinding                    // the strip folded in half along its length first, so that a fold lies where the other has a turned edge
	Piping                           // the strip folded over a cord and caught into a seam
)

var bindingNames = [...]string{NoBinding: "none", SingleBinding: "single", DoubleBinding: "double", Piping: "piping"}

// String is the kind's name, as in double; none for [NoBinding].
func (k BindingKind) String() string {
	if int(k) < len(bindingNames) {
		return bindingNames[k]
	}
	return fmt.Sprintf("BindingKind(%d)", uint8(k))
}

// MarshalText is the kind's name, empty for [NoBinding]. A value that is no kind
// is a fault.
func (k BindingKind) MarshalText() ([]byte, error) {
	return ticket.NameText(k, bindingNames[:], "kind")
}

// UnmarshalText takes a kind's name. Empty text is [NoBinding].
func (k *BindingKind) UnmarshalText(text []byte) error {
	return ticket.ReadName(k, text, bindingNames[:], "kind")
}

// BindingKinds yields every [BindingKind], [NoBinding] excepted.
func BindingKinds(yield func(BindingKind) bool) {
	for k := SingleBinding; int(k) < len(bindingNames); k++ {
		if !yield(k) {
			return
		}
	}
}
