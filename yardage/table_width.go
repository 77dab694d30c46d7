package yardage

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// Widths in which cloth is woven and sold: pairs of inches and the rounded
// centimetres sold as the same width, and old trade widths by material.

// A ClothWidth is one width, or range of widths, in which a cloth is sold.
type ClothWidth struct {
	Cloth    string       // the material; empty for a pair of widths of any cloth
	From, To units.Length // in inches, equal where one is printed
	Metric   units.Length // the metric width sold as the same; zero if none is printed
	Source   string       // id of the source, see [source.Lookup]
	Known    source.Known // how the figure is known
}

type clothPair struct {
	from, to, cm int64
	source       string
	known        source.Known
}

var clothPairs = [...]clothPair{
	{25, 25, 65, srcEnvelope, source.Memory},
	{27, 27, 70, srcEnvelope, source.Memory},
	{35, 36, 90, srcEnvelope, source.Memory},
	{39, 39, 100, srcEnvelope, source.Memory},
	{44, 44, 112, srcInchGuide, source.Read},
	{44, 45, 115, srcEnvelope, source.Memory},
	{48, 48, 122, srcCurtainWidths, source.Read},
	{50, 50, 127, srcEnvelope, source.Memory},
	{54, 54, 135, srcWidthGlossary, source.Read},
	{54, 56, 140, srcEnvelope, source.Memory},
	{58, 60, 150, srcEnvelope, source.Memory},
	{68, 70, 175, srcEnvelope, source.Memory},
	{72, 72, 180, srcEnvelope, source.Memory},
}

var clothOld = [...]struct {
	cloth    string
	from, to int64
	source   string
}{
	{"albatross", 44, 44, srcDomesticArt},
	{"alpaca", 40, 40, srcDomesticArt},
	{"basket cloth", 45, 45, srcDomesticArt},
	{"batiste, cotton", 44, 44, srcDomesticArt},
	{"batiste, linen", 28, 28, srcDomesticArt},
	{"beaver cloth", 56, 56, srcDomesticArt},
	{"bedford cord, wool", 54, 54, srcDomesticArt},
	{"bengaline", 26, 26, srcDomesticArt},
	{"brilliantine", 36, 36, srcDomesticArt},
	{"brocade", 27, 27, srcDomesticArt},
	{"calico", 36, 36, srcDomesticArt},
	{"cambric", 25, 36, srcDomesticArt},
	{"gingham", 24, 30, srcSchoolSewing},
	{"velvet", 18, 24, srcTextiles},
	{"velveteen", 27, 27, srcTextiles},
	{"bodice lining", 35, 38, srcTextiles},
	{"pillow case muslin", 38, 54, srcTextiles},
	{"sheeting", 36, 90, srcTextiles},
}

// ClothWidths yields every width: the pairs first, then the old trade widths.
func ClothWidths(yield func(ClothWidth) bool) {
	for _, p := range clothPairs {
		if !yield(ClothWidth{"", units.Inch.Of(p.from), units.Inch.Of(p.to), units.Centimetre.Of(p.cm), p.source, p.known}) {
			return
		}
	}
	for _, o := range clothOld {
		if !yield(ClothWidth{o.cloth, units.Inch.Of(o.from), units.Inch.Of(o.to), units.Length{}, o.source, source.Read}) {
			return
		}
	}
}

// WidthsOf yields the widths printed for one material, by its name in
// [ClothWidths]; none if no source prints it.
func WidthsOf(cloth string) iter.Seq[ClothWidth] {
	return func(yield func(ClothWidth) bool) {
		for w := range ClothWidths {
			if w.Cloth == cloth && !yield(w) {
				return
			}
		}
	}
}
