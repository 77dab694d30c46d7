package garment

import (
	"iter"

	"example.com/clothyard/units/name"
)

// A Grain is the direction in which the lengthwise threads of a piece run.
type Grain uint8

// The grains.
const (
	Lengthwise Grain = iota + 1 // down the body
	Crosswise                   // round the body, or along a band
	Bias                        // half way between the threads
)

var grains = name.Of[Grain]("grain", "none", "lengthwise", "crosswise", "bias")

// String is the name of g.
func (g Grain) String() string { return grains.String(g) }

// MarshalText is the name of g, empty for zero.
func (g Grain) MarshalText() ([]byte, error) { return grains.Marshal(g) }

// UnmarshalText reads the name of a grain. Empty text is zero.
func (g *Grain) UnmarshalText(text []byte) error { return grains.Unmarshal(g, text) }

// Grains yields every grain.
func Grains() iter.Seq[Grain] { return grains.All() }

// A Cloth is what a piece is cut from.
type Cloth uint8

// The cloths.
const (
	Outer Cloth = iota + 1
	Lining
	Contrast
	Stiffening // interfacing, heading tape, elastic
)

var cloths = name.Of[Cloth]("cloth", "none", "outer", "lining", "contrast", "stiffening")

// String is the name of c.
func (c Cloth) String() string { return cloths.String(c) }

// MarshalText is the name of c, empty for zero.
func (c Cloth) MarshalText() ([]byte, error) { return cloths.Marshal(c) }

// UnmarshalText reads the name of a cloth. Empty text is zero.
func (c *Cloth) UnmarshalText(text []byte) error { return cloths.Unmarshal(c, text) }

// Cloths yields every cloth.
func Cloths() iter.Seq[Cloth] { return cloths.All() }

// A How is how an edge goes onto its partner.
type How uint8

// The ways.
const (
	Equal     How = iota + 1 // as long as its partner
	Eased                    // a little longer, and eased in
	Gathered                 // gathered, or laid in pleats
	Stretched                // its partner is cut shorter, and stretched onto it
)

var hows = name.Of[How]("how", "none", "equal", "eased", "gathered", "stretched")

// String is the name of h.
func (h How) String() string { return hows.String(h) }

// MarshalText is the name of h, empty for zero.
func (h How) MarshalText() ([]byte, error) { return hows.Marshal(h) }

// UnmarshalText reads the name of a way. Empty text is zero.
func (h *How) UnmarshalText(text []byte) error { return hows.Unmarshal(h, text) }

// Hows yields every way.
func Hows() iter.Seq[How] { return hows.All() }
