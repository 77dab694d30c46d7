package gather

import "example.com/clothyard/units/fault"

// ErrCurve is the fault of an edge that turns inward so sharply, for the depth
// of its ruffle, that nothing is left of the free edge.
const ErrCurve fault.Kind = "turns too sharply for the depth"
