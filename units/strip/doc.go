// Package strip counts joined strips: how long a strip is once its pieces are
// sewn together, where the joins fall, and how many pieces a length needs. Each
// join costs two allowances; the two open ends may cost something too. In a
// closed ring there is one join more and no end.
//
//	// three pieces of 12 1/4 in, joined and ended with 1/2 in: 33 3/4 in
//	p, err := strip.Spec{Pieces: 3, Each: each, Allowance: half, Ends: half}.Plan()
//
// Lengths are exact and nothing is rounded, except that a number of pieces is a
// whole number, taken up. The joins of a [Spec] are straight, square to the strip.
// A [Binding] may be joined on the slant, which costs more along the strip and is
// an irrational length, and goes round the corners of an edge with mitres.
package strip
