// Package outline reads the outlines of pattern pieces from tables of points and
// from drawings, and makes those of trapezoids and circle sectors, for
// [layout.Spec].
//
//	r := outline.Reader{Numbers: units.Parser{Bare: units.Millimetre}, Within: mark}
//	pieces, err := r.SVG(file)
//
// Points stay exactly what they are in the file. A curve becomes a polygon that
// holds all of it and lies nowhere farther outside than the bound that the caller
// states, so that no piece is ever laid smaller than drawn. What cannot be read
// in full is refused, with the line and the column of every fault: a transform,
// an arc, an outline that is not closed, a drawing without a scale. That an
// outline does not cross itself is for [layout.Spec.Solve] to say.
//
// The bounds of all that is read are constants; the rules are common practice.
package outline
