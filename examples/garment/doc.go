// Package garment reads a whole garment from JSON and plans it: its seams and
// the edges they cross, hems, frills, cuffs, buttons and cloth, each by the
// package of the library that knows it. It composes them and computes nothing of
// its own but sums.
//
//	g, err := garment.Read(r)
//	p, err := g.Plan(ctx)
//
// A garment is planned twice: as it would come out if the seams are sewn as given
// and nothing is trimmed, and as chosen, with the remedies that mend the most
// edges for the fewest cuts. The keys of the JSON are the fields of [Garment],
// their first letter lowered; lengths carry their units. Pieces are laid as
// rectangles and, where they have an outline of [Corner], by that as well; the
// edges of an outline move with the allowances of the seams they name. The file
// shirt.json in this folder is the garment of [Default] and shows every part.
package garment
