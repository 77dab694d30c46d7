package units

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"example.com/clothyard/units/fault"
)

// MaxText is the longest text, in bytes, that is parsed as a length, a ratio or
// an area. Longer text is refused before it is read.
const MaxText = 1024

// ErrBound is returned where an irrational amount cannot be enclosed, or a
// rounding of it decided, within the limit of work.
const ErrBound fault.Kind = "units: not decided within the limit of precision"

// ErrNegative is returned for the square root of a negative area.
const ErrNegative fault.Kind = "units: negative"

// A ParseError says where a text stopped making sense.
type ParseError struct {
	Input  string // a copy of the text, shortened where it is longer than MaxText
	Offset int    // the byte at which the fault was found
	Found  string // what stands there, quoted
	Want   string // what would have been right
}

// Error names the text, the place, what was found and what would be right.
func (e *ParseError) Error() string {
	return "units: " + strconv.Quote(clip(e.Input)) + " at byte " + strconv.Itoa(e.Offset) +
		": found " + e.Found + ", want " + e.Want
}

const shown = 60

// clip copies s and shortens it for an error, never inside a character.
func clip(s string) string {
	if len(s) <= shown {
		return strings.Clone(s)
	}
	n := shown
	for n > 0 && !utf8.RuneStart(s[n]) {
		n--
	}
	return s[:n] + "..."
}

func quoteFound(rest string) string {
	if rest == "" {
		return "the end"
	}
	return strconv.Quote(clip(rest))
}

func tooLong(in string) *ParseError {
	return &ParseError{Input: clip(in), Offset: MaxText, Found: "more text", Want: "at most " + strconv.Itoa(MaxText) + " bytes"}
}
