package buttons

import (
	"fmt"

	"example.com/clothyard/units"
)

// An Outline is the shape of a button as its hole meets it.
type Outline uint8

// The outlines. The zero value is not given, which a [Hole] takes as Flat and
// says so in its plan.
const (
	NoOutline Outline = iota
	Flat              // a disc, which passes the hole edge on: diameter and thickness
	Ball              // a ball, which passes the hole as half its girth
)

var outlineNames = [...]string{"", "flat", "ball"}

// Outlines yields every outline, NoOutline excepted.
func Outlines(yield func(Outline) bool) { _ = yield(Flat) && yield(Ball) }

// Valid reports whether o is one of the outlines, NoOutline excepted.
func (o Outline) Valid() bool { return o != NoOutline && int(o) < len(outlineNames) }

// String is flat or ball, empty for NoOutline.
func (o Outline) String() string {
	if int(o) < len(outlineNames) {
		return outlineNames[o]
	}
	return fmt.Sprintf("Outline(%d)", uint8(o))
}

// MarshalText is the outline's name, empty for NoOutline.
func (o Outline) MarshalText() ([]byte, error) {
	if int(o) >= len(outlineNames) {
		return nil, notKind(o.String(), wantOutline)
	}
	return []byte(outlineNames[o]), nil
}

// UnmarshalText takes an outline's name; empty text is NoOutline.
func (o *Outline) UnmarshalText(text []byte) error {
	i, err := kindOf(outlineNames[:], text, wantOutline)
	if err == nil {
		*o = Outline(i)
	}
	return err
}

// A Setting is the direction of a buttonhole on the front.
type Setting uint8

// The settings. The zero value is not given.
const (
	NoSetting  Setting = iota
	Vertical           // on the centre line, along the front edge
	Horizontal         // across the centre line, square to the front edge
)

var settingNames = [...]string{"", "vertical", "horizontal"}

// Settings yields every setting, NoSetting excepted.
func Settings(yield func(Setting) bool) { _ = yield(Vertical) && yield(Horizontal) }

// Valid reports whether s is one of the settings, NoSetting excepted.
func (s Setting) Valid() bool { return s != NoSetting && int(s) < len(settingNames) }

// String is vertical or horizontal, empty for NoSetting.
func (s Setting) String() string {
	if int(s) < len(settingNames) {
		return settingNames[s]
	}
	return fmt.Sprintf("Setting(%d)", uint8(s))
}

// MarshalText is the setting's name, empty for NoSetting.
func (s Setting) MarshalText() ([]byte, error) {
	if int(s) >= len(settingNames) {
		return nil, notKind(s.String(), wantSetting)
	}
	return []byte(settingNames[s]), nil
}

// UnmarshalText takes a setting's name; empty text is NoSetting.
func (s *Setting) UnmarshalText(text []byte) error {
	i, err := kindOf(settingNames[:], text, wantSetting)
	if err == nil {
		*s = Setting(i)
	}
	return err
}

const (
	wantOutline = "flat or ball"
	wantSetting = "vertical or horizontal"
)

// shown is how much of a wrong name an error repeats, in bytes.
const shown = 40

func kindOf(names []string, text []byte, want string) (int, error) {
	for i, name := range names {
		if name == string(text) {
			return i, nil
		}
	}
	return 0, notKind(string(text[:min(len(text), shown)]), want)
}

func notKind(got, want string) error {
	return &units.ParseError{Input: got, Found: fmt.Sprintf("%q", got), Want: want}
}
