package ticket

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// Columns is the width that text for people keeps to.
const Columns = 80

// Wrap breaks text at blanks to keep within [Columns], the first line after
// first, the others after rest. A word too long for a line, such as an address,
// is broken after a slash, or where the line ends. What is not fit to print is
// escaped; see [Visible].
func Wrap(first, rest, text string) string {
	var b strings.Builder
	first = fault.Visible(first)
	b.WriteString(strings.TrimRight(first, " "))
	gap := first[len(strings.TrimRight(first, " ")):] // written with the first word only
	col, fresh := utf8.RuneCountInString(first), true
	put := func(word string) {
		n := utf8.RuneCountInString(word)
		if !fresh && col+1+n > Columns || fresh && col > utf8.RuneCountInString(rest) && col+n > Columns {
			b.WriteString("\n" + rest)
			col, fresh, gap = utf8.RuneCountInString(rest), true, ""
		}
		b.WriteString(gap)
		gap = ""
		if !fresh {
			b.WriteByte(' ')
			col++
		}
		b.WriteString(word)
		col, fresh = col+n, false
	}
	room := max(1, Columns-utf8.RuneCountInString(rest))
	for _, word := range measures(fault.Visible(spaced.Replace(text))) {
		for utf8.RuneCountInString(word) > room {
			head := string([]rune(word)[:room])
			if k := strings.LastIndexByte(head, '/'); k > 0 {
				head = head[:k+1]
			}
			put(head)
			word = word[len(head):]
		}
		put(word)
	}
	b.WriteString(gap + "\n")
	return b.String()
}

// spaced has a blank for what only parts words.
var spaced = strings.NewReplacer("\n", " ", "\t", " ", "\r", " ")

// measures splits text at blanks, but keeps a measure together: scant 3 5/16 in,
// 7 mm, 2 3/4 yd.
func measures(text string) []string {
	words := strings.Fields(text)
	out := make([]string, 0, len(words))
	for _, w := range words {
		if n := len(out); n > 0 && together(out[n-1], w) {
			out[n-1] += " " + w
			continue
		}
		out = append(out, w)
	}
	return out
}

// together reports whether next belongs to the measure that before ends with.
func together(before, next string) bool {
	last := before[strings.LastIndexByte(before, ' ')+1:]
	last = strings.TrimLeft(last, "(+-")
	switch {
	case last == "scant" || last == "full":
		return next[0] >= '0' && next[0] <= '9'
	case last == "" || last[0] < '0' || last[0] > '9':
		return false
	case strings.Trim(last, "0123456789") == "" && strings.Contains(next, "/"):
		return next[0] >= '0' && next[0] <= '9'
	case strings.Trim(last, "0123456789./") != "":
		return false
	}
	switch strings.TrimRight(next, "),.;:") {
	case "in", "ft", "yd", "mm", "cm", "m", "L":
		return true
	}
	return false
}

// An Item is one line of a step: a label such as guide, trim or CHECK, and its text.
type Item struct {
	Label string `json:"label,omitzero"` // what the line is about
	Text  string `json:"text,omitzero"`  // the line itself
}

// Head is what to do, with the sides of the cloth in capitals.
func (s Step) Head() string {
	if s.Together == NoSides {
		return s.Do
	}
	return s.Do + ", " + strings.ToUpper(s.Together.String())
}

// Items are the lines under a step's head, one measure in each.
func (s Step) Items(in ...units.Notation) []Item {
	var items []Item
	if !s.At.IsZero() {
		t := s.At.Text(in...)
		if s.From != "" {
			t += " from " + s.From
		}
		items = append(items, Item{"guide", t})
	}
	if !s.Trim.IsZero() {
		items = append(items, Item{"trim", "to " + s.Trim.Text(in...) + " beyond the stitching"})
	}
	if s.Press != "" {
		items = append(items, Item{"press", s.Press})
	}
	if s.Note != "" {
		items = append(items, Item{"note", s.Note})
	}
	return append(items, s.Check.Items(in...)...)
}

// Items are the lines of a check, none where nothing is checked.
func (c Check) Items(in ...units.Notation) []Item {
	if c.Want.IsZero() {
		return nil
	}
	t := c.What + " = " + c.Want.Text(in...)
	if !c.Give.IsZero() {
		t += ", " + c.Give.Text(in[:min(1, len(in))]...) + " either way"
	}
	items := []Item{{"CHECK", t}}
	if c.Mend != "" {
		items = append(items, Item{"if it is out", c.Mend})
	}
	return items
}

// Text is the step for people, indented, each measure on a line of its own.
func (s Step) Text(number int, in ...units.Notation) string {
	var b strings.Builder
	first := "   "
	if number > 0 {
		first = fmt.Sprintf("%2d ", number)
	}
	b.WriteString(Wrap(first, "   ", s.Head()+"."))
	for _, it := range s.Items(in...) {
		b.WriteString(Wrap("     "+it.Label+": ", "       ", it.Text))
	}
	return b.String()
}

// head is the title and the answer, in one line.
func (s Sheet) head(in []units.Notation) string {
	answers := make([]string, len(s.Answer))
	for i, l := range s.Answer {
		answers[i] = l.Label + " " + l.Result.Text(in...)
	}
	head := strings.Join(answers, "; ")
	if s.Title != "" && head != "" {
		return s.Title + ": " + head
	}
	return s.Title + head
}

func writeSheet(s Sheet, in []units.Notation) string {
	var b strings.Builder
	if head := s.head(in); head != "" {
		b.WriteString(Wrap("", "   ", head))
	}
	if len(s.Lines) > 0 {
		b.WriteString("Working\n")
		for _, l := range s.Lines {
			b.WriteString(Wrap("   ", "     ", l.Text(in...)))
		}
	}
	if len(s.Steps) > 0 {
		b.WriteString("Work\n")
		for i, st := range s.Steps {
			b.WriteString(st.Text(i+1, in...))
		}
	}
	if len(s.Assumed) > 0 {
		b.WriteString(Wrap("Assumed: ", "   ", strings.Join(s.Assumed, ", ")))
	}
	if len(s.Cautions) > 0 {
		b.WriteString("Take care\n")
		for _, c := range s.Cautions {
			t := c.Text
			if c.Refer != "" {
				t += " (" + c.Refer + ")"
			}
			b.WriteString(Wrap("   ", "   ", t))
		}
	}
	if len(s.Sources) > 0 {
		b.WriteString("Sources\n")
		for _, c := range s.Sources {
			b.WriteString(Wrap("   ", "     ", c.Text()))
		}
	}
	return b.String()
}
