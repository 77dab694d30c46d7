package seam

import "example.com/clothyard/units/name"

// A RowKind is a kind of finishing row. Which kind reads which field of a [Row], and what
// it is measured from:
//
//	kind           Distance from                       also reads
//	staystitch     the seam line, in the allowance     Allowance Trim
//	ease-stitch    the seam line, in the allowance     Allowance Trim
//	reinforcement  the seam line, in the allowance     Allowance Trim
//	understitch    the seam, on the facing             Layer Margin Start End
//	edgestitch     the finished edge                   Layer Margin Start End
//	topstitch      the finished edge                   Layer Margin Start End
//
// A field that a kind does not read must be omitted.
type RowKind uint8

// The kinds of row.
const (
	StayStitch    RowKind = iota + 1 // one thickness, so that a curved or slanting edge does not stretch before it is seamed
	EaseStitch                       // drawn up to ease the longer edge in
	Reinforcement                    // a second row in the allowance, where a seam is strained
	UnderStitch                      // through facing and allowances, so that the facing rolls in
	EdgeStitch                       // along a finished edge or seam, close to it
	TopStitch                        // along a finished edge or seam, further off
)

var rowNames = name.Of[RowKind]("kind", "none", "staystitch", "ease-stitch", "reinforcement", "understitch", "edgestitch", "topstitch")

// String is the kind's name, as in understitch.
func (k RowKind) String() string { return rowNames.String(k) }

// MarshalText is the kind's name.
func (k RowKind) MarshalText() ([]byte, error) { return rowNames.Marshal(k) }

// UnmarshalText takes a kind's name.
func (k *RowKind) UnmarshalText(text []byte) error { return rowNames.Unmarshal(k, text) }

// inAllowance reports whether the row lies in the allowance of a seam.
func (k RowKind) inAllowance() bool { return k <= Reinforcement }

func (k RowKind) title() string {
	return [...]string{
		StayStitch: "Staystitching", EaseStitch: "Ease stitching", Reinforcement: "Reinforcing row",
		UnderStitch: "Understitching", EdgeStitch: "Edgestitching", TopStitch: "Topstitching",
	}[k]
}
