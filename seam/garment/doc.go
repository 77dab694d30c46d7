// Package garment plans a whole garment from what is sewn otherwise than its pattern
// says: what becomes of every edge, which edges no longer go together, and what mends
// them.
//
// A garment begins with a starter, which is a garment as patterns usually draw it, and
// names what is changed:
//
//	{"version": 1, "like": "blouse",
//	 "changes": {"shoulder": {"sewn": {"kind": "french", "first": "3/16 in", "second": "1/4 in"}}}}
//
// No measure is needed to learn which edges a change moves, and by how much. Where the
// cloth and the sizes of the pieces are given, they are laid with their allowances as
// they are then cut, and parts take what they need from the edges as sewn.
package garment
