package yardage

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// Shrinkage by cloth, as printed. The spread is wide and the sources weak: no
// plan takes a figure from here. Wash a [Swatch] of the cloth itself.

// A Shrinkage is a printed figure for one cloth: a range each way, equal ends
// where one figure is printed, both zero where a direction is not.
type Shrinkage struct {
	Cloth              string       // the material
	Length, LengthMost units.Ratio  // along the grain
	Width, WidthMost   units.Ratio  // across
	Source             string       // id of the source, see [source.Lookup]
	Known              source.Known // how the figure is known
}

// The figures are in tenths of a per cent.
var shrinkRows = [...]struct {
	cloth            string
	lo, hi, wlo, whi int64
	source           string
}{
	{"cotton, plain", 60, 60, 25, 25, srcShrinkTable},
	{"cotton, mercerised plain", 35, 35, 35, 35, srcShrinkTable},
	{"cotton, twill", 40, 40, 30, 30, srcShrinkTable},
	{"cotton, any", 40, 100, 0, 0, srcShrinkTable},
	{"cotton, preshrunk", 20, 50, 0, 0, srcShrinkAnswers},
	{"cotton, preshrunk", 50, 60, 0, 0, srcPreshrinking},
	{"cotton, width at each wash", 0, 0, 100, 100, srcHomeNote},
	{"cotton jersey", 20, 30, 0, 0, srcShrinkAnswers},
	{"linen", 40, 40, 0, 0, srcShrinkAnswers},
	{"rayon, at most", 0, 100, 0, 0, srcShrinkAnswers},
	{"silk", 100, 100, 30, 30, srcShrinkTable},
	{"wool, worsted", 40, 40, 35, 35, srcShrinkTable},
	{"uniform twill 65/35, at most", 0, 30, 0, 30, srcUniformCloth},
}

// Shrinkages yields every printed figure. Sources disagree: both rows stay.
func Shrinkages(yield func(Shrinkage) bool) {
	for _, r := range shrinkRows {
		s := Shrinkage{r.cloth, units.RatioOf(r.lo, 1000), units.RatioOf(r.hi, 1000), units.RatioOf(r.wlo, 1000), units.RatioOf(r.whi, 1000), r.source, source.Read}
		if !yield(s) {
			return
		}
	}
}

// ShrinkagesOf yields the figures printed for one cloth, by its name in
// [Shrinkages]; none if no source prints it.
func ShrinkagesOf(cloth string) iter.Seq[Shrinkage] {
	return func(yield func(Shrinkage) bool) {
		for s := range Shrinkages {
			if s.Cloth == cloth && !yield(s) {
				return
			}
		}
	}
}
