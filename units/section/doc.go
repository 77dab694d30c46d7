// Package section draws folded cloth edge-on: the plies of a seam or a hem as
// lines of a thickness, the stitches that pierce them, and the measures. Along
// the cloth the drawing is to scale; the thickness is whatever the drawing gives
// and is meant to be exaggerated, which the picture says.
//
//	t := units.MustParse("1/24 in")
//	hem := section.From(section.At(units.MustParse("-2 in"), units.Length{}), t).
//		To(t.DivInt(-2)).Step(2).Back(units.MustParse("1 in")).Fold(-1, units.MustParse("1/4 in"))
//
// A [Drawing] is exact points and no more: it knows no kind of seam. Cloth turns
// square in it, which keeps every question about it decidable: [Drawing.Check]
// proves that no ply crosses another, that each stitch pierces the plies it names
// in their order and no others, that a raw edge said to be hidden has cloth above
// and below it and cloth or a stitch ahead, and that each measure is the distance
// it is written at. [Drawing.SVG] refuses a drawing that does not pass.
//
// The picture is black on white: plies are told apart by pattern and not by
// colour. It carries its title and a description in words, prints at the scale
// that it names and can be shown at any size.
package section
