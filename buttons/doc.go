// Package buttons places buttons and their holes: a row of equally spaced
// buttons ([Row]), the length of a buttonhole ([Hole]), whether it crosses the
// topstitching of the front ([Lap]), loops along an edge ([Loop]), the cloth of covered
// buttons ([Cover]), and what to give up when the tin holds fewer buttons than the
// pattern asks for ([Stock]). It is for whoever marks a front, and for programs that
// print the marks.
//
//	p, err := buttons.Row{
//		First: units.Inch.Frac(5, 8), Last: units.Inch.Of(22), Count: 9,
//		From: "the finished neck seam", Step: units.Inch.Frac(1, 16),
//	}.Plan()
//	for _, at := range p.Places {
//		fmt.Println(at.Mark, at.Residue)
//	}
//
// Each noun solves what follows from what is given, then fills what is left with
// a default that its plan names in Assumed. Zero means not given, in every field.
// Faults come all at once, as [fault.Faults]. Every place is exact; it is read
// to a mark of the tape one by one and never from the place before, so that
// errors do not add up.
//
// The tables ([LigneRows], [HoleRules], [LapRules], [Spacings], [CoverRows]) keep the
// printed figures apart where the sources disagree; the law on children's clothes is
// in package safety. Not here: the sizes of hooks and snaps, for which no print was
// found, concealed plackets, and the drawing of a worked hole.
package buttons
