package seam

import "example.com/clothyard/units"

// A usual is a figure that stands in where none is given: one for a tape of inches, one
// for a metric tape. Each is a row of the tables where a comment names one, and common
// practice where none does; the metric ones are what a metric source prints, or a whole
// half millimetre, and never the inch ones converted.
type usual struct{ inch, metric units.Length }

// on is the figure for a tape.
func (u usual) on(t units.Tape) units.Length { return t.Of(u.inch, u.metric) }

var (
	usualFirst   = usual{inch(3, 8), mm(9)}  // Enclosed: French, of a school handbook
	usualSecond  = usual{inch(1, 4), mm(6)}  // the same
	usualTrim    = usual{inch(1, 8), mm(3)}  // the same
	usualBinding = usual{inch(1, 4), mm(6)}  // Enclosed: bound; metric practice
	usualTurned  = usual{inch(1, 4), mm(3)}  // Enclosed: turned-and-stitched, a row for each tape
	usualWelt    = usual{inch(3, 8), mm(10)} // Enclosed: welt, half way along the range; metric practice
	weltTrim     = usual{inch(1, 4), mm(6)}  // Enclosed: welt; metric practice
	usualCord    = usual{inch(1, 4), mm(6)}  // Enclosed: piped; metric practice
	usualLap     = usual{inch(1, 2), mm(12)} // Enclosed: lapped-turned, the greatest; metric practice
	usualStrip   = usual{inch(1, 1), mm(25)} // Enclosed: hong-kong; metric practice
	roomyTrim    = usual{inch(1, 2), mm(12)} // practice: from here on a strip so wide reaches no further than the seam
	pinkedRow    = usual{inch(1, 4), mm(6)}  // Enclosed: pinked; metric practice

	usualGrade = usual{inch(1, 4), mm(6)} // Trims: the layer next to the outside; metric practice
	edgeStitch = usual{inch(1, 8), mm(3)} // Trims: edge-stitch, which is printed beside 3 mm

	clearance = usual{inch(1, 16), units.Millimetre.Frac(3, 2)} // how much narrower an edge is than the pass that shuts it in
	narrowest = usual{inch(1, 8), mm(3)}                        // a second pass of a French seam that is already too narrow
	snip      = usual{inch(1, 4), mm(6)}                        // how deep a notch is snipped
	fixedSeam = usual{inch(1, 1), mm(25)}                       // Bindings: what a strip folded double has more than four times its width; metric practice
	swatch    = usual{inch(6, 1), mm(150)}                      // the least width of a test piece
)

// leastTrim is the narrowest edge that should be left: common practice.
func (a Allowance) leastTrim() units.Length {
	if a.Fraying {
		return usual{inch(1, 8), mm(3)}.on(a.Tape)
	}
	return usual{inch(1, 16), units.Millimetre.Frac(3, 2)}.on(a.Tape)
}

// leastAccepted is the narrowest trim that is not refused: the metric measure printed
// beside the inch one, which is the lesser.
func leastAccepted(fraying bool) units.Length {
	if fraying {
		return mm(3)
	}
	return units.Millimetre.Frac(3, 2)
}
