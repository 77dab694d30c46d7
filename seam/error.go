package seam

import "errors"

// The faults particular to seams; see also those of package ticket.
var (
	// ErrHidden is a raw edge that the pass, the fell or the binding over it
	// does not hide.
	ErrHidden = errors.New("raw edge would show")

	// ErrFlat is a fell whose turned-in edge is wider than the fell, so that it
	// would reach past the seam and not lie flat.
	ErrFlat = errors.New("would not lie flat")
)
