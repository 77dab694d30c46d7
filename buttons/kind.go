package buttons

import (
	"example.com/clothyard/units/name"
)

// An Outline is the shape of a button as its hole meets it.
type Outline uint8

// The outlines. A [Hole] takes the zero value as Shaped where it has a wrap, else as
// Flat.
const (
	NoOutline Outline = iota
	Flat              // a disc, which passes the hole edge on: diameter and thickness
	Ball              // a ball, which passes the hole as half its girth
	Shaped            // domed, square or odd: half of what a strip of paper round it measures
)

var outlines = name.Of[Outline]("outline", "", "flat", "ball", "shaped")

// String is the name of the outline, empty for NoOutline.
func (o Outline) String() string { return outlines.String(o) }

// MarshalText is the name of the outline.
func (o Outline) MarshalText() ([]byte, error) { return outlines.Marshal(o) }

// UnmarshalText reads the name of an outline; empty text is NoOutline.
func (o *Outline) UnmarshalText(text []byte) error { return outlines.Unmarshal(o, text) }

// A Setting is the direction of a buttonhole on the front.
type Setting uint8

// The settings. The zero value is not given.
const (
	NoSetting  Setting = iota
	Vertical           // on the centre line, along the front edge
	Horizontal         // across the centre line, square to the front edge
)

var settings = name.Of[Setting]("setting", "", "vertical", "horizontal")

// String is the name of the setting, empty for NoSetting.
func (s Setting) String() string { return settings.String(s) }

// MarshalText is the name of the setting.
func (s Setting) MarshalText() ([]byte, error) { return settings.Marshal(s) }

// UnmarshalText reads the name of a setting; empty text is NoSetting.
func (s *Setting) UnmarshalText(text []byte) error { return settings.Unmarshal(s, text) }

// A Fastening is what a row is made of.
type Fastening uint8

// The fastenings. The zero value is not given: a [Row] is then one of buttons.
const (
	NoFastening Fastening = iota
	Button                // buttons in holes
	Hook                  // hooks and eyes
	Snap                  // press studs
)

var fastenings = name.Of[Fastening]("fastening", "", "button", "hook", "snap")

// String is the name of the fastening, empty for NoFastening.
func (f Fastening) String() string { return fastenings.String(f) }

// MarshalText is the name of the fastening.
func (f Fastening) MarshalText() ([]byte, error) { return fastenings.Marshal(f) }

// UnmarshalText reads the name of a fastening; empty text is NoFastening.
func (f *Fastening) UnmarshalText(text []byte) error { return fastenings.Unmarshal(f, text) }
