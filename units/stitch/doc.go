// Package stitch reckons stitches: how long a stitch is against how many go to
// the inch, how much thread a seam or a whole garment takes, and which needle
// and stitch suit a cloth or a job.
//
//	// a lockstitched side seam of 18 in: 45 in of thread, half of it in the bobbin
//	p, err := stitch.Thread{Stitch: stitch.Lock301, Seam: units.Inch.Of(18)}.Plan()
//
// The nouns are [Density], [Thread], [Garment] and [Setting]. The sums are exact;
// a stitch length is never rounded to what a dial can be set to. The figures of
// the trade disagree with each other: a ratio, a density or a description of a
// stitch stands in its table once for each source that prints it, with how it is
// known, and a default names the row it is. Thread per inch of seam by geometry
// is reckoned from the formulas that the sources print, no others.
package stitch
