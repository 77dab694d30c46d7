package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// A Mark is one place on both sides of a gathered seam, which are pinned there.
// Each is exact and measured along its own seam line from where that begins, never
// from the mark before.
type Mark struct {
	Full units.Length `json:"full,omitzero"` // on what is gathered
	Edge units.Length `json:"edge,omitzero"` // on the edge that takes it
}

// divide is the marks between equal parts of both sides, after what is kept flat.
func divide(full, edge units.Length, parts int, flat units.Length) []Mark {
	var marks []Mark
	for k := range int64(max(parts, 1) - 1) {
		marks = append(marks, Mark{
			Full: flat.Add(full.MulInt(k + 1).DivInt(int64(parts))),
			Edge: flat.Add(edge.MulInt(k + 1).DivInt(int64(parts))),
		})
	}
	return marks
}

// markNames name the marks that a sheet writes out; with more parts than these
// can name it gives the length of one part only.
var markNames = [...]string{"first mark", "second mark", "third mark", "fourth mark", "fifth mark", "sixth mark", "seventh mark"}

// markLines is a line for each mark on either side: so many parts from the start,
// after what lies before the first part, if anything does.
func markLines(marks []Mark, part Mark, full, edge string, before Mark, name string) []ticket.Line {
	if len(marks) > len(markNames) {
		return nil
	}
	line := func(label string, at, part, before units.Length, k int) ticket.Line {
		terms := []ticket.Term{ticket.Add(part, "one part"), ticket.Multiply(k, "")}
		if !before.IsZero() {
			terms = append(terms, ticket.Add(before, name))
		}
		return ticket.Sum(label, at, terms...)
	}
	var lines []ticket.Line
	for k, m := range marks {
		lines = append(lines, line(markNames[k]+full, m.Full, part.Full, before.Full, k+1), line(markNames[k]+edge, m.Edge, part.Edge, before.Edge, k+1))
	}
	return lines
}
