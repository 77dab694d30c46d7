// Package seam works out seams: what a seam takes from each ply, how much bigger
// or smaller that leaves the piece than the pattern drew it, how wide and how
// thick the finished seam is, and how it is sewn, stage by stage.
//
//	p, err := seam.French{First: three16, Second: quarter}.Plan()
//	// p.Upper.Taken is 7/16 in, p.Upper.Drift 3/16 in, p.Gain 3/8 in
//	fmt.Print(p.Sheet().Text(units.Notation{}))
//
// Each kind of seam is a type: a struct of the fields that it reads, with the
// [Allowance] of its plies. All are a [Seam]; [Any] holds one of any kind and says in
// JSON which; [Kinds] yields them. [Codes] has what they are called in the standards, as
// far as that is known. [Plan.Sections] draws the seam edge-on, stage by stage.
//
// Package edge carries what a seam takes into the edges that it crosses and their
// partners, package dart works out darts, package alter lets out, lengthens and eases.
// [Binding], [Row], [Roll] and [Favour] are the rest of the work.
//
// Every pass is measured from the raw edge as cut, or from a fold that the sheet
// names. The drift of a ply is what was cut beyond the drafted stitching line
// less what the seam takes: it is positive where the piece comes out bigger. Zero means
// "not given" in every field; what a plan assumed it names, and defaults follow the
// tape. The rules are common practice of the trade, or cited on the row of the table
// they stand in.
package seam
