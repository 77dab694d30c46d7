package gather

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// markNames name the marks that a sheet writes out; with more parts than these
// can name it gives the length of one part only.
var markNames = [...]string{"first mark", "second mark", "third mark", "fourth mark", "fifth mark", "sixth mark", "seventh mark"}

// markLines appends a line for each mark on either side. A mark is so many
// parts from the start, after what is kept flat, if anything is.
func markLines(lines []ticket.Line, marks iter.Seq2[units.Length, units.Length], parts int, part [2]ticket.Term, where [2]string, flat ...units.Length) []ticket.Line {
	if parts < 2 || parts-1 > len(markNames) {
		return lines
	}
	k := 0
	all := make([]ticket.Term, 0, 6*parts) // the terms of all the lines
	for a, b := range marks {
		for side, at := range [2]units.Length{a, b} {
			terms := append(all[len(all):], part[side], ticket.Term{Op: ticket.By, Amount: ticket.Of(k + 1)})
			for _, l := range flat {
				if !l.IsZero() {
					terms = append(terms, ticket.Term{Amount: ticket.Long(l), Name: "kept flat"})
				}
			}
			all = all[:len(all)+len(terms)]
			lines = append(lines, ticket.Line{Label: markNames[k] + where[side], Terms: terms[:len(terms):len(terms)], Result: ticket.Long(at)})
		}
		k++
	}
	return lines
}
