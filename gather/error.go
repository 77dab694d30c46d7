package gather

import "errors"

// ErrCurve is the fault of an edge that turns inward so sharply, for the depth
// of its ruffle, that nothing is left of the free edge.
var ErrCurve = errors.New("turns too sharply for the depth")
