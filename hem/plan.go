package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// A Plan is a hem worked out. It is comparable. Distances from the raw edge and
// from the finished edge are never below zero; those that begin with Line are
// from the line drafted for the finished edge, plus downwards, that is towards
// the raw edge as cut, minus upwards into the garment. For a slit the line is
// that of the slit, or of the seam as drafted, and plus is towards the raw edge.
type Plan struct {
	Spec    Spec          // as solved
	Assumed ticket.Fields // the fields that rest on a default

	Taken units.Length // what the hem takes: First + Depth, or Depth for a single hem
	// Drift is Cut - Taken: how much longer the garment comes out than drafted;
	// below zero, how much shorter. For a slit, how far each finished edge of it
	// lies outside the line, which is below zero for one that is cut.
	Drift  units.Length
	CutOff units.Length // Drafted - Cut: what is cut off the allowance drafted; below zero if more was left on
	Plies  int          // layers of cloth in the hem: 2 for a single hem, else 3

	RawToFirstFold   units.Length // from the raw edge as cut to the first fold made; the only fold of a single hem
	RawToSecondFold  units.Length // from the raw edge as cut to the second fold, which is the finished edge; zero for a single hem
	RawToStitch      units.Length // from the raw edge as cut to the stitching, on the flat cloth of the hem
	FinishedToStitch units.Length // from the finished edge up to the stitching: the guide at the machine
	LineToFirstFold  units.Length // from the drafted line to the first fold made
	LineToSecondFold units.Length // from the drafted line to the second fold; zero for a single hem
	LineToRaw        units.Length // from the drafted line to the raw edge as cut
	LineToStitch     units.Length // from the drafted line to the stitching as seen from the right side

	// Excess is how much longer the turned cloth is than the garment it is sewn
	// to, over all flared edges: 2 x Depth x Slope x Edges, the same at the inner
	// fold and at the raw edge. Below zero it is too short by that.
	Excess units.Length
	// Inset is Excess for one edge: how far inside the straight run of a flared
	// side edge the first fold and the raw edge of the hem each lie, if the edge
	// is cut as its own mirror image about each fold so that nothing is left to
	// ease. Of a single hem it is for the raw edge.
	Inset units.Length
	// SweepDrift is what the drift adds to the edge: Drift x Slope x Edges along
	// a flared hem, 2 x Drift across a slit.
	SweepDrift units.Length
	Swept      units.Length // Sweep + SweepDrift; zero where no Sweep is given

	// Lost is what the hems of the two sides of a slit take in, 2 x Taken, from
	// the raw edges: all of it is off the edge that a cut slit opens into.
	Lost units.Length
	// Jog is, for an opening in a seam, SeamTake - Taken: how far each finished
	// edge of the opening lies beyond the line of the seam. Plus, the two edges
	// lap by twice this; minus, they gape by twice this.
	Jog units.Length
	Run units.Length // length of hem to sew: twice Slit, or Swept; zero where that is not given
}

// Plan works out the hem. The faults are [ticket.Faults].
func (s Spec) Plan() (Plan, error) {
	s, names, err := s.solve()
	if err != nil {
		return Plan{}, err
	}
	p := Plan{Spec: s, Assumed: names, Taken: s.Take, Drift: s.drift(), CutOff: s.Drafted.Sub(s.Cut), Plies: 3}
	p.RawToFirstFold, p.RawToSecondFold = s.First, s.Take
	p.LineToFirstFold, p.LineToSecondFold = p.Drift.Add(s.Depth), p.Drift
	p.RawToStitch = s.First.Add(s.Stitch)
	if s.Kind == Single {
		p.Plies = 2
		p.RawToFirstFold, p.RawToSecondFold = s.Take, units.Length{}
		p.LineToFirstFold, p.LineToSecondFold = p.Drift, units.Length{}
	}
	p.FinishedToStitch = s.Depth.Sub(s.Stitch)
	p.LineToRaw = s.Cut
	p.LineToStitch = p.Drift.Sub(p.FinishedToStitch)
	p.Inset = s.Depth.Scale(s.Slope).MulInt(2)
	p.Excess = p.Inset.MulInt(int64(s.Edges))
	p.SweepDrift = s.sweepDrift()
	if !s.Sweep.IsZero() {
		p.Swept = s.Sweep.Add(p.SweepDrift)
	}
	p.Run = p.Swept
	if s.Kind == Slit {
		p.Lost = s.Take.MulInt(2)
		p.Run = s.Slit.MulInt(2)
	}
	if s.inSeam() {
		p.Jog = s.SeamTake.Sub(s.Take)
	}
	return p, nil
}

// Crossing is how many layers lie one on another where the hem crosses a seam
// whose ridge is of so many plies: the plies of the hem times those of the ridge,
// 3 x 5 = 15 for a double hem over the pressed ridge of a French seam. It is zero
// for a ridge of less than 1 or of more than [MaxRidge] plies.
func (p Plan) Crossing(ridge int) int {
	if ridge < 1 || ridge > MaxRidge {
		return 0
	}
	return p.Plies * ridge
}

// MaxRidge is the greatest number of plies of a ridge that a hem crosses.
const MaxRidge = 1_000

// Finished is what is left of a piece cut to a length, once so many of its ends
// have this hem: cut - hems x Taken. It is below zero where the hems take more
// than there is, and zero for fewer than 1 hem or more than [MaxHems].
func (p Plan) Finished(cut units.Length, hems int) units.Length {
	if hems < 1 || hems > MaxHems {
		return units.Length{}
	}
	return cut.Sub(p.Taken.MulInt(int64(hems)))
}

// CutFor is what a piece must be cut to so that it is of a finished length with
// this hem at so many of its ends: finished + hems x Taken. It is zero for fewer
// than 1 hem or more than [MaxHems].
func (p Plan) CutFor(finished units.Length, hems int) units.Length {
	if hems < 1 || hems > MaxHems {
		return units.Length{}
	}
	return finished.Add(p.Taken.MulInt(int64(hems)))
}
