package fault

import (
	"bytes"
	"fmt"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf16"
	"unicode/utf8"
)

// MaxName is the longest name of a piece, an edge or a seam, in bytes.
const MaxName = 200

// Unfit is the fault of a name or a text that is longer than MaxName or holds a
// character that [Visible] escapes; it is nil where s is fit to print. Every name
// that an input gives is held to it, empty ones included, which are fit.
func Unfit(path, s string) *Fault {
	if len(s) > MaxName {
		return &Fault{Path: path, Got: fmt.Sprintf("%d bytes", len(s)), Limit: fmt.Sprintf("at most %d bytes", MaxName), Kind: Range}
	}
	if strings.ContainsFunc(s, unfit) {
		return &Fault{Path: path, Got: strconv.QuoteToGraphic(s), Limit: "printable text", Kind: Form}
	}
	return nil
}

// unfit reports whether r is no character to print: a control, what turns the
// direction of text round, what ends a line, or what is no character at all.
func unfit(r rune) bool {
	switch {
	case r < utf8.RuneSelf:
		return r < ' ' || r == 0x7f
	case r == utf8.RuneError, r == 0xfeff:
		return true
	}
	return unicode.In(r, unicode.Cc, unicode.Zl, unicode.Zp, unicode.Bidi_Control, unicode.Noncharacter_Code_Point)
}

// Visible is s with each character that is not fit to print written as Go escapes
// it, as in \x1b and \u202e. It is s itself where there is none. What is written
// for people passes through it: faults, sheets and pictures.
func Visible(s string) string {
	if !strings.ContainsFunc(s, unfit) {
		return s
	}
	var b strings.Builder
	for len(s) > 0 {
		r, n := utf8.DecodeRuneInString(s)
		if unfit(r) {
			q := strconv.QuoteToASCII(s[:n])
			b.WriteString(q[1 : len(q)-1])
		} else {
			b.WriteString(s[:n])
		}
		s = s[n:]
	}
	return b.String()
}

// VisibleJSON is a JSON text in which each character that is not fit to print is
// escaped, as in \u202e, so that it reaches no terminal and is read back as it was.
func VisibleJSON(text []byte) []byte {
	if !bytes.ContainsFunc(text, unfit) {
		return text
	}
	var b []byte
	for _, r := range string(text) {
		if r < ' ' || !unfit(r) { // a control in JSON is white space
			b = utf8.AppendRune(b, r)
			continue
		}
		for _, u := range utf16.Encode([]rune{r}) {
			b = fmt.Appendf(b, `\u%04x`, u)
		}
	}
	return b
}
