// Package yardage works out lengths of cloth: the length to ask for on another
// width, what a remnant comes to once it is washed and squared, the length to
// buy, curtain-like widths joined, pieces of one size, bias from a square, shrinkage
// from a measured swatch, the price, and a bill of several cloths.
//
//	p, err := yardage.Purchase{Need: lay, Ends: inch, Shrink: threePercent}.Plan()
//	fmt.Println(p.Buy) // 81 in: 2 1/4 yd, in steps of 1/8 yd
//
// All of it is exact; only what is bought goes up to a step, and the surplus is
// said. Area never decides whether cloth does: it is an estimate on another width
// and an upper bound for bias. Laying out the pieces is the matter of the package
// layout below this one. The printed chart of widths is kept as it stands, never
// computed and never extended. Each table row carries the id of its source.
//
// A field left at zero is not given. Faults are [fault.Faults].
package yardage
