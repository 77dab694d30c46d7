package gather

import (
	"strconv"

	"example.com/clothyard/units/fault"
)

// A Setting says how a cuff is set to the slit of its sleeve. It has no
// default: the two give different gathers.
type Setting uint8

// The settings. The zero value is none, and must be given.
const (
	NoSetting Setting = iota
	Flush             // both ends of the cuff are flush with the edges of the slit: the gathers go on the whole cuff
	Extended          // one end stands out beyond the slit by the lap: the gathers go on the rest
)

var settingNames = [...]string{NoSetting: "", Flush: "flush", Extended: "extended"}

// String is the setting's name, as in extended; it is empty for NoSetting.
func (s Setting) String() string {
	if int(s) < len(settingNames) {
		return settingNames[s]
	}
	return "Setting(" + strconv.Itoa(int(s)) + ")"
}

// MarshalText is the setting's name. It fails for a value that is no setting.
func (s Setting) MarshalText() ([]byte, error) {
	if int(s) >= len(settingNames) {
		return nil, &fault.Fault{Path: "setting", Got: s.String(), Limit: "flush or extended", Kind: fault.Unknown}
	}
	return []byte(settingNames[s]), nil
}

// UnmarshalText takes a setting's name; empty text is NoSetting.
func (s *Setting) UnmarshalText(text []byte) error {
	for i, name := range settingNames {
		if name == string(text) {
			*s = Setting(i)
			return nil
		}
	}
	got := string(text[:min(len(text), fault.MaxName)])
	return &fault.Fault{Path: "setting", Got: strconv.Quote(got), Limit: "flush or extended", Kind: fault.Unknown}
}

// Settings yields every setting, NoSetting excepted.
func Settings(yield func(Setting) bool) {
	for s := Flush; int(s) < len(settingNames); s++ {
		if !yield(s) {
			return
		}
	}
}
