package buttons

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A HoleRuleRow is a printed rule for the length of a buttonhole, a sum of shares of
// the button's measures. They disagree: the longest asks half as much again as
// the shortest. A [Hole] takes diameter + thickness for a flat button, half the girth
// for a ball and half the wrap for others, and leaves the rest to Ease.
type HoleRuleRow struct {
	Name      string       // what it says
	Outline   Outline      // the buttons that it is for
	Diameter  units.Ratio  // times the diameter
	Thickness units.Ratio  // times the thickness, or the height of the shank
	Girth     units.Ratio  // times the way round: of a ball, or of a strip of paper
	Add       units.Length // and so much more
	Source    string       // id of the source, see [source.Lookup]
	Place     string       // page or section
	Known     source.Known // how the figure is known
}

// Length is what the rule gives, before any rounding. It is exact unless the
// rule goes by the girth.
func (r HoleRuleRow) Length(diameter, thickness units.Length) units.Near {
	n := units.Exactly(diameter.Scale(r.Diameter).Add(thickness.Scale(r.Thickness)).Add(r.Add))
	if !r.Girth.IsZero() {
		n = n.Add(units.Pi().Of(diameter.Scale(r.Girth)))
	}
	return n
}

var (
	one  = units.RatioOf(1, 1)
	half = units.RatioOf(1, 2)
	none units.Ratio
)

// As printed. The wrap of a flat button is twice its diameter and
// thickness, so half the wrap is the sum of the two.
var holeRules = source.Table[HoleRuleRow]{
	{"half the wrap and an eighth", Flat, one, one, none, units.Inch.Frac(1, 8), "extension-buttonhole-guide", "", source.Read},
	{"half the wrap and an eighth", Ball, none, none, half, units.Inch.Frac(1, 8), "extension-buttonhole-guide", "", source.Read},
	{"half the wrap and an eighth", Shaped, none, none, half, units.Inch.Frac(1, 8), "extension-buttonhole-guide", "", source.Read},
	{"the diameter", Flat, one, none, none, units.Length{}, "needlework-encyclopedia", "figure 29", source.Read},
	{"one and a quarter times the diameter", Ball, units.RatioOf(5, 4), none, none, units.Length{}, "textiles-and-clothing", "Making button holes", source.Read},
	{"diameter and thickness", Flat, one, one, none, units.Length{}, "buttonhole-measuring-page", "", source.Read},
	{"the diameter and an eighth", Flat, one, none, none, units.Inch.Frac(1, 8), "buttonhole-rules-page", "", source.Read},
	{"diameter, thickness and an eighth, worked by machine", Flat, one, one, none, units.Inch.Frac(1, 8), "bound-buttonhole-page", "", source.Read},
	{"diameter and thickness, bound", Flat, one, one, none, units.Length{}, "bound-buttonhole-page", "", source.Read},
	{"diameter, height of shank and an eighth", Flat, one, one, none, units.Inch.Frac(1, 8), "refashion-tutorial", "page 18", source.Read},
	{"the diameter and an eighth", Flat, one, none, none, units.Inch.Frac(1, 8), "buttonhole-length-page", "", source.Read},
	{"the whole girth and an eighth, which doubles the hole", Ball, none, none, one, units.Inch.Frac(1, 8), "buttonhole-length-page", "", source.Read},
}

// HoleRules yields the printed rules.
func HoleRules() iter.Seq[HoleRuleRow] { return holeRules.All() }
