package seam

import (
	"fmt"
	"strings"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// A DartKind is a shape of dart. The zero value, [NoDart], is not given; a [Dart]
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
type DartKind uint8

// The kinds of dart.
const (
	NoDart        DartKind = iota // not given
	SingleDart                    // from an edge to one point
	DoubleDart                    // double-pointed, the fish-eye dart: widest between two points, off every edge
	FrenchDart                    // long and slanting from low in the side seam, cut open before it is sewn where its fold is wide
	OpenEndedDart                 // the dart tuck: stitched from an edge and let go before it comes to a point
)

var dartNames = [...]string{NoDart: "none", SingleDart: "single", DoubleDart: "double-pointed", FrenchDart: "french", OpenEndedDart: "open-ended"}

// String is the kind's name, as in open-ended; none for [NoDart].
func (k DartKind) String() string {
	if int(k) < len(dartNames) {
		return dartNames[k]
	}
	return fmt.Sprintf("DartKind(%d)", uint8(k))
}

// MarshalText is the kind's name, empty for [NoDart]. A value that is no kind is
// a fault.
func (k DartKind) MarshalText() ([]byte, error) { return ticket.NameText(k, dartNames[:], "kind") }

// UnmarshalText takes a kind's name. Empty text is [NoDart].
func (k *DartKind) UnmarshalText(text []byte) error {
	return ticket.ReadName(k, text, dartNames[:], "kind")
}

// DartKinds yields every [DartKind], [NoDart] excepted.
func DartKinds(yield func(DartKind) bool) {
	for k := SingleDart; int(k) < len(dartNames); k++ {
		if !yield(k) {
			return
		}
	}
}

// oneOf refuses a value of an enumeration that is none of its names.
func oneOf(a *fault.Audit, path string, names []string, i int, got string) {
	if i >= len(names) {
		a.Fault(path, got, "one of "+strings.Join(names[1:], ", "), fault.Unknown)
	}
}
