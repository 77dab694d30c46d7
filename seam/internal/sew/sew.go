// Package sew holds what the packages of seam share on their sheets and in their
// faults.
package sew

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxTerm is the greatest numerator and denominator of a ratio that is an angle.
const MaxTerm = 1_000_000

// Inch is a length in inches.
func Inch(num, den int64) units.Length { return units.Inch.Frac(num, den) }

// MM is a length in millimetres.
func MM(n int64) units.Length { return units.Millimetre.Of(n) }

// Quote quotes a name, cut to the length of one.
func Quote(name string) string { return strconv.Quote(Short(name)) }

// Short keeps what a fault repeats to the length of a name.
func Short(text string) string { return text[:min(len(text), fault.MaxName)] }

// OrElse is the name, or the other where it is empty.
func OrElse(name, other string) string {
	if name == "" {
		return other
	}
	return name
}

// Hand is how closely a length round a garment can be sewn and measured.
func Hand(t units.Tape) ticket.Amount { return ticket.Long(Straightness(t)) }

// Straightness is how far a row of stitching may wander: a row of Trims, and 1.5 mm on a
// metric tape by common practice.
func Straightness(t units.Tape) units.Length { return t.Of(Inch(1, 16), units.Millimetre.Frac(3, 2)) }

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
func StandardCite(units.Tape) source.Cite {
	return source.Cite{For: "allowance of home patterns", ID: "clothing-construction-handbook", Place: "plain seam", Known: source.Read}
}

// SmoothEase is what can be eased into each unit of cloth like lawn and lie smooth:
// common practice, and not a sure figure.
func SmoothEase() units.Ratio { return units.RatioOf(1, 16) }

// Slight reports whether the terms of a ratio are at most MaxTerm.
func Slight(r units.Ratio) bool {
	_, _, ok := Terms(r)
	return ok
}

// Terms are the numerator, without its sign, and the denominator of a ratio, where
// neither is more than MaxTerm. They are those of the last of the fractions that
// come nearer and nearer to it, which takes no memory to find.
func Terms(r units.Ratio) (num, den int64, ok bool) {
	r = r.Abs()
	one := units.RatioOf(1, 1)
	var num0, den0 int64 = 0, 1
	num, den = 1, 0
	for {
		n, fits := r.Int(units.Down)
		if !fits || n > MaxTerm {
			return 0, 0, false
		}
		num0, den0, num, den = num, den, n*num+num0, n*den+den0
		if num > MaxTerm || den > MaxTerm {
			return 0, 0, false
		}
		if r.IsInt() {
			return num, den, true
		}
		r = one.Quo(r.Sub(units.RatioOf(n, 1)))
	}
}
