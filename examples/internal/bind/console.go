package bind

import (
	"io"
	"strings"

	"example.com/clothyard/units/fault"
)

// Console is w for messages to people, as [fault.Visible] makes them: names of
// files, flags and whatever else a message repeats can move no cursor and turn no
// text round. Line ends and tabs stay. A message is written at once.
func Console(w io.Writer) io.Writer { return console{w} }

type console struct{ w io.Writer }

func (c console) Write(p []byte) (int, error) {
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
