package main

import (
	"bytes"
	"fmt"
	"strings"
	"unicode/utf8"

	"example.com/clothyard/units/ticket"
)

// A page is the worksheet, ready to be written in one form or another.
type page struct {
	title string
	intro []string
	parts []part
}

// A part is a numbered heading and what stands under it.
type part struct {
	title  string
	blocks []block
}

// A block is one of: a smaller heading, a paragraph, a point of a list, lines with
// labels, a table, an operation with its steps.
type block struct {
	head   string
	para   string
	bullet string
	items  []ticket.Item
	table  *table
	steps  []step // under head
}

// A table has a name in its first column and figures in the others.
type table struct {
	head []string
	rows [][]string
}

// A step is a line of what to do, with its measures under it.
type step struct {
	head  string
	items []ticket.Item
}

func (p *part) say(format string, args ...any) {
	p.blocks = append(p.blocks, block{para: fmt.Sprintf(format, args...)})
}

func (p *part) under(head string) { p.blocks = append(p.blocks, block{head: head}) }

// item adds a line with a label to the lines just before, or starts new ones.
func (p *part) item(label, format string, args ...any) {
	it := ticket.Item{Label: label, Text: fmt.Sprintf(format, args...)}
	if n := len(p.blocks); n > 0 && p.blocks[n-1].items != nil && p.blocks[n-1].head == "" {
		p.blocks[n-1].items = append(p.blocks[n-1].items, it)
		return
	}
	p.blocks = append(p.blocks, block{items: []ticket.Item{it}})
}

func (p *part) tabulate(t table) {
	if len(t.rows) > 0 {
		p.blocks = append(p.blocks, block{table: &t})
	}
}

// text writes a page for a printer of 80 columns.
func text(p page) []byte {
	var b bytes.Buffer
	b.WriteString(ticket.Wrap("", "", strings.ToUpper(p.title)))
	for _, s := range p.intro {
		b.WriteString(ticket.Wrap("", "", s))
	}
	for i, part := range p.parts {
		fmt.Fprintf(&b, "\n%s\n%s\n", strings.Repeat("=", ticket.Columns), strings.ToUpper(fmt.Sprintf("%d. %s", i+1, part.title)))
		for _, k := range part.blocks {
			textBlock(&b, k)
		}
	}
	return b.Bytes()
}

func textBlock(b *bytes.Buffer, k block) {
	if k.head != "" {
		b.WriteString("\n" + ticket.Wrap("", "  ", k.head))
	}
	if k.para != "" {
		b.WriteString(ticket.Wrap("  ", "  ", k.para))
	}
	if k.bullet != "" {
		b.WriteString(ticket.Wrap("  * ", "    ", k.bullet))
	}
	for _, it := range k.items {
		b.WriteString(ticket.Wrap("  "+it.Label+": ", "    ", it.Text))
	}
	for i, s := range k.steps {
		b.WriteString(ticket.Wrap(fmt.Sprintf("  %c ", letter(i)), "    ", s.head+"."))
		for _, it := range s.items {
			b.WriteString(ticket.Wrap("      "+it.Label+": ", "        ", it.Text))
		}
	}
	if k.table != nil {
		textTable(b, *k.table)
	}
}

// letter numbers the steps of an operation: a to z, then # for any beyond.
func letter(i int) rune {
	if i < 26 {
		return rune('a' + i)
	}
	return '#'
}

// leastName is the narrowest that the first column of a table is set.
const leastName = 18

// textTable sets a table in columns, the first folded where it must be, or row by
// row with the heads as labels where the others would be too wide.
func textTable(b *bytes.Buffer, t table) {
	wide := make([]int, len(t.head))
	total := 0
	for _, row := range append([][]string{t.head}, t.rows...) {
		for i, cell := range row {
			wide[i] = max(wide[i], utf8.RuneCountInString(cell))
		}
	}
	for _, w := range wide {
		total += w + 2
	}
	if over := total - ticket.Columns; over > 0 {
		wide[0] -= over
	}
	if wide[0] < min(leastName, len(t.head[0])) || total > ticket.Columns && wide[0] < leastName {
		for _, row := range t.rows {
			b.WriteString(ticket.Wrap("  ", "    ", row[0]))
			for i, cell := range row[1:] {
				if cell != "" {
					b.WriteString(ticket.Wrap("      "+t.head[i+1]+": ", "        ", cell))
				}
			}
		}
		return
	}
	line := func(row []string) {
		names := fold(row[0], wide[0])
		s := "  " + pad(names[0], wide[0])
		for i, cell := range row[1:] {
			s += "  " + pad(cell, wide[i+1])
		}
		b.WriteString(strings.TrimRight(s, " ") + "\n")
		for _, name := range names[1:] {
			b.WriteString("    " + name + "\n")
		}
	}
	line(t.head)
	rule := make([]string, len(t.head))
	for i, w := range wide {
		rule[i] = strings.Repeat("-", w)
	}
	line(rule)
	for _, row := range t.rows {
		line(row)
	}
}

func pad(s string, wide int) string {
	return s + strings.Repeat(" ", max(0, wide-utf8.RuneCountInString(s)))
}

// fold breaks a name at blanks into lines of at most wide, those after the first
// two less for the indent; a longer word stands as it is.
func fold(s string, wide int) []string {
	lines := []string{""}
	for word := range strings.FieldsSeq(s) {
		last := &lines[len(lines)-1]
		room := wide
		if len(lines) > 1 {
			room -= 2
		}
		switch {
		case *last == "":
			*last = word
		case utf8.RuneCountInString(*last)+1+utf8.RuneCountInString(word) <= room:
			*last += " " + word
		default:
			lines = append(lines, word)
		}
	}
	return lines
}

// markdown writes a page as Markdown.
func markdown(p page) []byte {
	var b bytes.Buffer
	fmt.Fprintf(&b, "# %s\n", opening(p.title))
	for _, s := range p.intro {
		fmt.Fprintf(&b, "\n%s\n", opening(s))
	}
	for i, part := range p.parts {
		fmt.Fprintf(&b, "\n## %d. %s\n", i+1, escape(part.title))
		for _, k := range part.blocks {
			markdownBlock(&b, k)
		}
	}
	return b.Bytes()
}

func markdownBlock(b *bytes.Buffer, k block) {
	if k.head != "" {
		fmt.Fprintf(b, "\n### %s\n", opening(k.head))
	}
	if k.para != "" {
		fmt.Fprintf(b, "\n%s\n", opening(k.para))
	}
	if k.bullet != "" {
		fmt.Fprintf(b, "- %s\n", opening(k.bullet))
	}
	if len(k.items) > 0 {
		b.WriteByte('\n')
	}
	for _, it := range k.items {
		fmt.Fprintf(b, "- **%s**: %s\n", escape(it.Label), escape(it.Text))
	}
	if len(k.steps) > 0 {
		b.WriteByte('\n')
	}
	for i, s := range k.steps {
		fmt.Fprintf(b, "%d. %s.\n", i+1, opening(s.head))
		for _, it := range s.items {
			fmt.Fprintf(b, "   - **%s**: %s\n", escape(it.Label), escape(it.Text))
		}
	}
	if t := k.table; t != nil {
		b.WriteByte('\n')
		row := func(cells []string) {
			for _, c := range cells {
				fmt.Fprintf(b, "| %s ", escape(c))
			}
			b.WriteString("|\n")
		}
		row(t.head)
		b.WriteString(strings.Repeat("| --- ", len(t.head)) + "|\n")
		for _, r := range t.rows {
			row(r)
		}
	}
}

// escape keeps names from being read as markup.
func escape(s string) string {
	return strings.NewReplacer(`\`, `\\`, "`", "\\`", "*", `\*`, "_", `\_`, "<", "&lt;", "|", `\|`, "[", `\[`, "#", `\#`, "~", `\~`, "&", `\&`, "\n", " ").Replace(s)
}

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
