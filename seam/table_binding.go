package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A BindingRow is one printed width of strip for a finished width of binding.
type BindingRow struct {
	Rule     string       // the rule, as in "single, 4 times finished"
	Finished units.Length // the width that shows on each face
	Strip    units.Length // the width to cut
	Note     string       // what else the source says; empty if nothing
	Source   string       // id, see [source.Lookup]
	Place    string       // page or section; empty if none
	Known    source.Known // how the figure is known
}

// Cite is the row as a citation.
func (r BindingRow) Cite() source.Cite {
	return source.Cite{For: r.Rule, ID: r.Source, Place: r.Place, Known: r.Known}
}

// Bindings yields the printed widths of binding strips. The two rules for a
// strip folded double agree only where the finished width is 1/2 in.
func Bindings(yield func(BindingRow) bool) {
	for _, r := range bindings {
		if !yield(r) {
			return
		}
	}
}

const (
	ruleSingle     = "single, 4 times finished"
	ruleDouble     = "folded double, 6 times finished"
	ruleDoubleWide = "folded double, 4 times finished and 1 in"
	ruleTurned     = "single, twice finished and two turns"
)

// bindings is the table: 11 rows.
var bindings = [...]BindingRow{
	{Rule: ruleTurned, Finished: inch(1, 4), Strip: inch(3, 4), Note: "turns of 1/8 in", Source: "handicraft-for-girls", Place: "Bound Seam, line 2914", Known: source.Read},
	{Rule: ruleSingle, Finished: inch(1, 4), Strip: inch(1, 1), Source: "bias-bound-page", Known: source.Read},
	{Rule: ruleSingle, Finished: inch(1, 4), Strip: inch(1, 1), Source: "bias-tape-maker-page", Known: source.Read},
	{Rule: ruleSingle, Finished: inch(1, 2), Strip: inch(2, 1), Source: "binding-width-note", Known: source.Read},
	{Rule: ruleSingle, Finished: mm(10), Strip: mm(40), Note: "1 1/2 in and 1/2 in are printed beside it; 1 1/2 in belongs to 3/8 in", Source: "binding-width-note", Known: source.Read},
	{Rule: ruleDouble, Finished: inch(1, 4), Strip: inch(3, 2), Note: "the rule is printed, the figure follows", Source: "bias-binding-guideline", Known: source.Read},
	{Rule: ruleDoubleWide, Finished: inch(1, 4), Strip: inch(2, 1), Source: "binding-width-page", Known: source.Read},
	{Rule: ruleDoubleWide, Finished: inch(3, 8), Strip: inch(5, 2), Source: "binding-width-page", Known: source.Read},
	{Rule: ruleDoubleWide, Finished: inch(1, 2), Strip: inch(3, 1), Source: "binding-width-page", Known: source.Read},
	{Rule: ruleDoubleWide, Finished: inch(3, 4), Strip: inch(4, 1), Source: "binding-width-page", Known: source.Read},
	{Rule: ruleDoubleWide, Finished: inch(1, 1), Strip: inch(5, 1), Source: "binding-width-page", Known: source.Read},
}
