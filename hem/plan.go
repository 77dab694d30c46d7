package hem

import (
	"example.com/clothyard/units"
)

// A Plan is a hem worked out. Distances from the raw edge and
// from the finished edge are never below zero; those that begin with Line are
// from the line drafted for the finished edge, plus downwards, that is towards
// the raw edge as cut, minus upwards into the garment. For a slit the line is
// that of the slit, or of the seam as drafted, and plus is towards the raw edge.
type Plan struct {
	Spec    Spec     `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields that rest on a default

	// Taken is what the hem takes: First + Depth, Depth for a hem turned once,
	// First + 2 x Depth for a turn-up, Seam + Favour for a faced edge. For a bound
	// edge it is Seam - Depth: zero where the binding is as deep as its seam, below
	// zero where it stands out beyond the raw edge.
	Taken units.Length `json:"taken,omitzero"`
	// Drift is Cut - Taken: how much longer the garment comes out than drafted;
	// below zero, how much shorter. For a slit, how far each finished edge of it
	// lies outside the line, which is below zero for one that is cut.
	Drift  units.Length `json:"drift,omitzero"`
	CutOff units.Length `json:"cutOff,omitzero"` // Drafted - Cut: what is cut off the allowance drafted; below zero if more was left on
	// Plies is the layers of cloth in the hem at its thickest: 2 for a hem turned
	// once, 3 turned twice, 4 for a turn-up and a faced edge, or 5 for a facing so
	// narrow that its turn lies on the allowances of its seam, 5 for a bound edge and
	// 7 where the binding is doubled.
	Plies int `json:"plies,omitzero"`

	RawToFirstFold   units.Length `json:"rawToFirstFold,omitzero"`   // from the raw edge as cut to the first fold made; the only fold of a single hem; zero for a bound edge
	RawToSecondFold  units.Length `json:"rawToSecondFold,omitzero"`  // from the raw edge as cut to the second fold, which is the finished edge, or the top of a turn-up; zero for a hem of one fold
	RawToThirdFold   units.Length `json:"rawToThirdFold,omitzero"`   // from the raw edge as cut to the foot of a turn-up, its finished edge; zero for the rest
	RawToStitch      units.Length `json:"rawToStitch,omitzero"`      // from the raw edge as cut to the stitching, on the flat cloth of the hem; of a faced or bound edge, to the seam of the strip
	FinishedToStitch units.Length `json:"finishedToStitch,omitzero"` // from the finished edge up to the stitching: the guide at the machine; of a bound edge, to the seam of the binding
	FinishedToBack   units.Length `json:"finishedToBack,omitzero"`   // from the finished edge up to the fold of the garment, folded back for a blind hem; zero for the rest
	LineToFirstFold  units.Length `json:"lineToFirstFold,omitzero"`  // from the drafted line to the first fold made; zero for a bound edge
	LineToSecondFold units.Length `json:"lineToSecondFold,omitzero"` // from the drafted line to the second fold; zero for a hem of one fold
	LineToThirdFold  units.Length `json:"lineToThirdFold,omitzero"`  // from the drafted line to the foot of a turn-up; zero for the rest
	LineToRaw        units.Length `json:"lineToRaw,omitzero"`        // from the drafted line to the raw edge as cut
	LineToStitch     units.Length `json:"lineToStitch,omitzero"`     // from the drafted line to the stitching as seen from the right side

	// Excess is how much longer the turned cloth is than the garment it is sewn
	// to, over all flared edges: 2 x Depth x Slope x Edges, the same at the inner
	// fold and at the raw edge, or at the top fold of a turn-up. Of a straight
	// facing it is (Depth + Favour) x Slope x Edges, of a binding minus
	// Depth x Slope x Edges. Below zero it is too short by that.
	Excess units.Length `json:"excess,omitzero"`
	// Inset is Excess for one edge: how far inside the straight run of a flared
	// side edge the first fold and the raw edge of the hem each lie, if the edge
	// is cut as its own mirror image about each fold so that nothing is left to
	// ease. Of a single hem it is for the raw edge, of a turn-up for its top fold,
	// of a facing cut to shape for its free edge. Taper has the points.
	Inset units.Length `json:"inset,omitzero"`
	// Fullness is all that the turned cloth is too long by and has to lose, over
	// the flared edges and the convex curves: on a curve 2 x pi x Circle x twice
	// the Depth, or as for Excess. A circle of any size has the same.
	Fullness units.Near `json:"fullness,omitzero"`
	// Lack is all that the turned cloth is too short by and has to gain, over the
	// edges that narrow and the concave curves.
	Lack units.Near `json:"lack,omitzero"`
	// SweepDrift is what the drift adds to the edge: Drift x Slope x Edges along
	// a flared hem, 2 x Drift across a slit.
	SweepDrift units.Length `json:"sweepDrift,omitzero"`
	Swept      units.Length `json:"swept,omitzero"` // Sweep + SweepDrift; zero where no Sweep is given
	// Round is the finished edge as sewn, its curves and all: Swept, and on a curve
	// 2 x pi x (Circle - Hollow) x Drift more; for a circular hem
	// 2 x pi x Circle x (Radius + Drift). Zero where neither is given.
	Round units.Near `json:"round,omitzero"`

	// Lost is what the hems of the two sides of a slit take in, 2 x Taken, from
	// the raw edges: all of it is off the edge that a cut slit opens into.
	Lost units.Length `json:"lost,omitzero"`
	// Jog is, for an opening in a seam, SeamTake - Taken: how far each finished
	// edge of the opening lies beyond the line of the seam. Plus, the two edges
	// lap by twice this; minus, they gape by twice this.
	Jog units.Length `json:"jog,omitzero"`
	Run units.Length `json:"run,omitzero"` // length of hem to sew: twice Slit, or Swept; zero where that is not given

	// StripWidth is the width of the strip as cut: of a facing
	// Seam + Depth - Favour + First, of a binding Seam + 2 x Depth + First, of a
	// doubled one 2 x (Seam + 2 x Depth); each with Spare. Zero for the rest.
	StripWidth units.Length `json:"stripWidth,omitzero"`
	// StripToFold is from the edge of the strip that is sewn on to the fold of its
	// free edge; of a doubled binding to the fold along its middle. Zero for the
	// rest. Spare lies beyond it.
	StripToFold units.Length `json:"stripToFold,omitzero"`

	// Taper is the points of one side edge below the finished edge, from the
	// finished edge down to the raw edge, where the edge is cut as its own mirror
	// image about each fold. It is empty for a slit, and for a faced or bound edge,
	// whose allowance goes no further than its seam; a facing cut to shape has Inset.
	Taper []Taper `json:"taper,omitzero"`
}

// Plan works out the hem. The faults are [fault.Faults].
func (s Spec) Plan() (Plan, error) {
	s, names, err := s.solve()
	if err != nil {
		return Plan{}, err
	}
	p := Plan{Spec: s, Assumed: names, Taken: s.taken(), Drift: s.drift(), CutOff: s.Drafted.Sub(s.Cut)}
	p.folds()
	p.shape()
	p.SweepDrift = s.sweepDrift()
	if !s.Sweep.IsZero() {
		p.Swept = s.Sweep.Add(p.SweepDrift)
		p.Round = arc(s.Circle.Sub(s.Hollow), p.Drift).Plus(p.Swept)
	}
	if !s.Radius.IsZero() {
		p.Round = arc(s.Circle, s.Radius.Add(p.Drift))
	}
	p.Run = p.Swept
	if s.Kind == Slit {
		p.Lost = s.Take.MulInt(2)
		p.Run = s.Slit.MulInt(2)
	}
	if s.inSeam() {
		p.Jog = s.SeamTake.Sub(s.Take)
	}
	p.Fullness, p.Lack, p.Round = p.Fullness.Settled(), p.Lack.Settled(), p.Round.Settled()
	p.Taper = p.taper()
	return p, nil
}

// folds fills the places of the folds and the rows, and the strip.
func (p *Plan) folds() {
	s := p.Spec
	p.Plies = 3
	p.RawToFirstFold, p.RawToSecondFold = s.First, s.Take
	p.LineToFirstFold, p.LineToSecondFold = p.Drift.Add(s.Depth), p.Drift
	p.RawToStitch = s.First.Add(s.Stitch)
	p.FinishedToStitch = s.Depth.Sub(s.Stitch)
	switch {
	case s.oneFold(), s.Kind.faced():
		p.Plies = 2
		p.RawToFirstFold, p.RawToSecondFold = s.Take, units.Length{}
		p.LineToFirstFold, p.LineToSecondFold = p.Drift, units.Length{}
	case s.Kind == TurnUp:
		p.Plies = 4
		p.RawToSecondFold, p.RawToThirdFold = s.First.Add(s.Depth), s.Take
		p.LineToFirstFold = p.Drift.Add(s.Depth.MulInt(2))
		p.LineToSecondFold, p.LineToThirdFold = p.Drift.Add(s.Depth), p.Drift
		p.RawToStitch, p.FinishedToStitch = s.Stitch, s.First.Sub(s.Stitch)
	case s.Kind == Bound:
		p.RawToFirstFold, p.RawToSecondFold = units.Length{}, units.Length{}
		p.LineToFirstFold, p.LineToSecondFold = units.Length{}, units.Length{}
	}
	switch {
	case s.Kind == Blind:
		p.FinishedToBack = s.Depth.Sub(s.Back)
	case s.Kind.faced():
		p.Plies = 4
		if s.Depth.Less(s.Favour.Add(s.Seam).Add(s.First)) {
			p.Plies = 5 // the turn of the free edge lies on the allowances of the seam
		}
		p.RawToStitch = s.Seam
		p.StripToFold = s.Seam.Add(s.Depth).Sub(s.Favour)
		p.StripWidth = p.StripToFold.Add(s.First).Add(s.Spare)
	case s.Kind == Bound:
		p.Plies = 5
		p.RawToStitch = s.Seam
		p.StripToFold = s.Seam.Add(s.Depth.MulInt(2))
		p.StripWidth = p.StripToFold.Add(s.First).Add(s.Spare)
		if s.Doubled {
			p.Plies = 7
			p.StripWidth = p.StripToFold.MulInt(2).Add(s.Spare)
		}
	}
	p.LineToRaw = s.Cut
	p.LineToStitch = p.Drift.Sub(p.FinishedToStitch)
}

// shape fills what the turned cloth has to lose or to gain.
func (p *Plan) shape() {
	s := p.Spec
	reach := s.reach()
	p.Inset = reach.Scale(s.Slope)
	p.Excess = p.Inset.MulInt(int64(s.Edges))
	lose, gain := s.Circle, s.Hollow
	if reach.Sign() < 0 {
		lose, gain, reach = gain, lose, reach.Neg()
	}
	p.Fullness, p.Lack = arc(lose, reach), arc(gain, reach)
	if p.Excess.Sign() > 0 {
		p.Fullness = p.Fullness.Plus(p.Excess)
	} else {
		p.Lack = p.Lack.Plus(p.Excess.Neg())
	}
}

// arc is the length along a part of a circle.
func arc(part units.Ratio, radius units.Length) units.Near {
	if part.IsZero() || radius.IsZero() {
		return units.Near{}
	}
	return units.Pi().Of(radius).Scale(part).MulInt(2)
}

// Crossing is how many layers lie one on another where the hem crosses a seam
// whose ridge is of so many plies: the plies of the hem times those of the ridge,
// 3 x 5 = 15 for a double hem over the pressed ridge of a French seam. The strip
// of a faced or bound edge does not have the seam, so that its plies count once.
// It is zero for a ridge of less than 1 or of more than [MaxRidge] plies.
func (p Plan) Crossing(ridge int) int {
	if ridge < 1 || ridge > MaxRidge {
		return 0
	}
	strip := 0
	switch k := p.Spec.Kind; {
	case k.faced():
		strip = p.Plies - 2
	case k == Bound:
		strip = p.Plies - 1
	}
	return (p.Plies-strip)*ridge + strip
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
