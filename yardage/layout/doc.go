// Package layout lays pieces on cloth: where each goes, how much length the lay
// uses, and a proof that no two overlap and none hangs over the edge. A piece is
// its outline, or else its bounding rectangle; the cloth lies open, or folded
// lengthwise, and one pattern does for both: a half drawn to the fold is opened out
// where there is none, and a pair is cut by one placement where there is.
//
//	s := layout.Spec{Cloth: layout.Cloth{Wide: wide, Selvedge: half}, Pieces: pieces}
//	p, err := s.Plan(ctx)
//
// All of it is exact: the result of [Spec.Plan] lies on a grid, goes through
// [Verify] before it is returned, and anybody may hand [Verify] a lay of his own.
// The search may weigh places by approximation; what it finds counts only once
// it is proven. A lay is the best one found, not always the shortest there is;
// Plan.Bound tells how short any lay could be. That no lay was found is not proof
// that there is none.
//
// The same Spec gives the same lay on any machine; more Work never gives a
// longer one, unless one of fewer parts. Outlines are laid by two searches side by
// side: each takes a first lay, shortens the cloth a little, lets the pieces
// overlap, and moves them apart again, a pair that will not part weighing more each
// time.
//
// The cloth may have flaws, a nap, and repeats that notches are matched on or
// pieces centred on; then pieces are laid one by one where they may lie, in one
// order after another. A long strip may be cut in parts that are joined.
//
// The rules here are common practice of the trade; the test cases are printed
// ones, with their sources.
package layout
