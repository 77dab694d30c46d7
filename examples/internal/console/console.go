// Package console holds what the programs have in common: what they write for
// people, and in which units.
package console

import (
	"io"
	"strings"

	"example.com/clothyard/units/fault"
)

// Writer is w for messages to people, as [fault.Visible] makes them: names of
// files, flags and whatever else a message repeats can move no cursor and turn no
// text round. Line ends and tabs stay. A message is written at once.
func Writer(w io.Writer) io.Writer { return writer{w} }

type writer struct{ w io.Writer }

func (c writer) Write(p []byte) (int, error) {
	var b strings.Builder
	for text := string(p); text != ""; {
		end := strings.IndexAny(text, "\n\t")
		if end < 0 {
			b.WriteString(fault.Visible(text))
			break
		}
		b.WriteString(fault.Visible(text[:end]))
		b.WriteByte(text[end])
		text = text[end+1:]
	}
	if _, err := io.WriteString(c.w, b.String()); err != nil {
		return 0, err
	}
	return len(p), nil
}
