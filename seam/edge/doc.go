// Package edge works out edges that seams cross: how much longer or shorter a neck or
// an armhole comes out, whether two edges still go together, and what mends them.
//
// A [Spec] is one edge and what crosses it; a [Pair] is two edges sewn together; an
// [Assembly] is all seams and edges of a garment, with its remedies. A [Meeting] is a
// seam that crosses an edge between two pieces, each at its own angle.
package edge
