package gather

import (
	"iter"

	"example.com/clothyard/units/name"
)

// A Setting says how a cuff is set to the slit of its sleeve. It has no default:
// the two give different gathers.
type Setting uint8

// The settings. The zero value is none, and must be given.
const (
	NoSetting Setting = iota
	Flush             // both ends of the cuff are flush with the edges of the slit: the gathers go on the whole cuff
	Extended          // one end stands out beyond the slit by the lap: the gathers go on the rest
)

var settings = name.Of[Setting]("setting", "none", "flush", "extended")

// String is the setting's name, as in extended, and none for [NoSetting].
func (s Setting) String() string { return settings.String(s) }

// MarshalText is the setting's name, empty for [NoSetting]. It fails for a number
// that is no setting.
func (s Setting) MarshalText() ([]byte, error) { return settings.Marshal(s) }

// UnmarshalText reads a setting's name; empty text is [NoSetting].
func (s *Setting) UnmarshalText(text []byte) error { return settings.Unmarshal(s, text) }

// Settings yields every setting, [NoSetting] excepted.
func Settings() iter.Seq[Setting] { return settings.All() }
