package seam

import "example.com/clothyard/units/fault"

// The faults particular to seams; see also those of package ticket.
const (
	// ErrHidden is a raw edge that the pass, the fell or the binding over it
	// does not hide.
	ErrHidden fault.Kind = "raw edge would show"

	// ErrFlat is a fell whose turned-in edge is wider than the fell, so that it
	// would reach past the seam and not lie flat.
	ErrFlat fault.Kind = "would not lie flat"
)
