package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// The defaults, and the rows of [Defaults] that carry them.
const (
	defaultRows  = 1
	defaultParts = 4
)

func defaultAllowance() units.Length { return units.Inch.Frac(5, 8) }
func defaultInside() units.Length    { return units.Inch.Frac(1, 8) }
func defaultPast() units.Length      { return units.Inch.Frac(1, 8) }

// A Default is what a field is taken to be where it is not given.
type Default struct {
	Field  string       `json:"field,omitzero"`  // the field, as in Ruffle.Allowance
	Length units.Length `json:"length,omitzero"` // its value, where it is a length
	Count  int          `json:"count,omitzero"`  // its value, where it is a count
	Note   string       `json:"note,omitzero"`   // how it is meant, where the value alone does not say it
	Cite   source.Cite  `json:"cite,omitzero"`   // where it comes from
}

// Defaults yields every default of this package.
func Defaults(yield func(Default) bool) {
	inside := source.Cite{For: "row inside the seam", ID: "gathering-stitch-glossary", Known: source.Read}
	quarters := source.Practise("quarters")
	for _, d := range [...]Default{
		{Field: "Ruffle.Allowance", Length: defaultAllowance(), Cite: source.Practise("seam allowance")},
		{Field: "Ruffle.Inside", Length: defaultInside(), Cite: inside},
		{Field: "Ruffle.Rows", Count: defaultRows, Cite: source.Practise("one row, hidden by the seam")},
		{Field: "Ruffle.Parts", Count: defaultParts, Cite: quarters},
		{Field: "Cuff.Allowance", Length: defaultAllowance(), Cite: source.Practise("seam allowance")},
		{Field: "Cuff.Turned", Length: defaultPast(), Note: "this much less than Allowance", Cite: source.Practise("fold past the seam")},
		{Field: "Cuff.Inside", Length: defaultInside(), Cite: inside},
		{Field: "Cuff.Parts", Count: defaultParts, Cite: quarters},
	} {
		if !yield(d) {
			return
		}
	}
}
