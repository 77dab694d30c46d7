package main

import (
	"bytes"
	"fmt"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// markdown writes a sheet as Markdown.
func markdown(s ticket.Sheet, in []units.Notation) []byte {
	var b bytes.Buffer
	fmt.Fprintf(&b, "# %s\n", opening(s.Title))
	for _, l := range s.Answer {
		fmt.Fprintf(&b, "\n%s.\n", opening(l.Text(in...)))
	}
	list := func(head string, n int, text func(int) string) {
		if n > 0 {
			fmt.Fprintf(&b, "\n## %s\n\n", head)
		}
		for i := range n {
			fmt.Fprintf(&b, "- %s\n", opening(text(i)))
		}
	}
	list("What changes", len(s.Lines), func(i int) string { return s.Lines[i].Text(in...) })
	if len(s.Steps) > 0 {
		b.WriteString("\n## Work\n\n")
	}
	for i, step := range s.Steps {
		fmt.Fprintf(&b, "%d. %s.\n", i+1, opening(step.Head()))
		for _, it := range step.Items(in...) {
			fmt.Fprintf(&b, "   - **%s**: %s\n", escape(it.Label), escape(it.Text))
		}
	}
	list("Take care", len(s.Cautions), func(i int) string {
		if c := s.Cautions[i]; c.Refer != "" {
			return c.Text + " (" + c.Refer + ")"
		}
		return s.Cautions[i].Text
	})
	return b.Bytes()
}

var marks = strings.NewReplacer(`\`, `\\`, "`", "\\`", "*", `\*`, "_", `\_`, "<", "&lt;", "|", `\|`, "[", `\[`, "#", `\#`, "~", `\~`, "&", `\&`, "\n", " ")

// escape keeps names from being read as markup.
func escape(s string) string { return marks.Replace(s) }

// opening escapes what stands first in a line, which a mark or a number there
// would make a list, a quotation or a heading.
func opening(s string) string {
	s = escape(strings.TrimSpace(s))
	digits := len(s) - len(strings.TrimLeft(s, "0123456789"))
	if digits < len(s) && strings.IndexByte("-+=>.)", s[digits]) >= 0 && (digits > 0) == (s[digits] == '.' || s[digits] == ')') {
		return s[:digits] + `\` + s[digits:]
	}
	return s
}
