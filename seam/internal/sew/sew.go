// Package sew holds what the packages of seam share on their sheets and in their
// faults.
package sew

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Inch is a length in inches.
func Inch(num, den int64) units.Length { return units.Inch.Frac(num, den) }

// MM is a length in millimetres.
func MM(n int64) units.Length { return units.Millimetre.Of(n) }

// OrElse is the name, or the other where it is empty.
func OrElse(name, other string) string {
	if name == "" {
		return other
	}
	return name
}

// Hand is how closely a length round a garment can be sewn and measured.
func Hand(t units.Tape) ticket.Amount { return ticket.Long(Straightness(t)) }

// Straightness is how far a row of stitching may wander: a row of Trims, and 2 mm on a
// metric tape by common practice.
func Straightness(t units.Tape) units.Length { return t.Of(Inch(1, 16), units.Millimetre.Of(2)) }

// StraightnessCite cites [Straightness].
func StraightnessCite(t units.Tape) source.Cite {
	if t == units.MetricTape {
		return source.Practise("how far a row may wander")
	}
	return source.Cite{For: "how far a row may wander", ID: "clothing-sewing-specification", Place: "p. 17", Known: source.Read}
}

// Standard is the allowance of home patterns. Both figures stand on one page.
func Standard(t units.Tape) units.Length { return t.Of(Inch(5, 8), units.Millimetre.Of(15)) }

// StandardCite cites [Standard].
func StandardCite() source.Cite {
	return source.Cite{For: "allowance of home patterns", ID: "clothing-construction-handbook", Place: "plain seam", Known: source.Read}
}

// SmoothEase is what can be eased into each unit of cloth like lawn and lie smooth:
// common practice, and not a sure figure.
func SmoothEase() units.Ratio { return units.RatioOf(1, 16) }
