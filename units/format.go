package units

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// Format writes l for fmt: %v and %s are the exact text of [Length.String], %q
// the same in quotes; width and the flag - pad it. Another verb is reported in
// the text, as fmt does.
func (l Length) Format(s fmt.State, verb rune) { format(s, verb, "units.Length", l.String()) }

// Format writes r for fmt as [Length.Format] does a length.
func (r Ratio) Format(s fmt.State, verb rune) { format(s, verb, "units.Ratio", r.String()) }

// Format writes a for fmt as [Length.Format] does a length.
func (a Area) Format(s fmt.State, verb rune) { format(s, verb, "units.Area", a.String()) }

func format(s fmt.State, verb rune, kind, text string) {
	switch verb {
	case 'v', 's':
	case 'q':
		text = `"` + text + `"`
	default:
		text = "%!" + string(verb) + "(" + kind + "=" + text + ")"
	}
	pad := ""
	if w, ok := s.Width(); ok {
		pad = strings.Repeat(" ", max(0, w-utf8.RuneCountInString(text)))
	}
	if s.Flag('-') {
		text, pad = text+pad, ""
	}
	_, _ = s.Write([]byte(pad + text))
}
