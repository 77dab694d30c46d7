package hem

import "example.com/clothyard/units"

// A Plan is a hem worked out. Distances from the raw edge and from the finished edge are
// never negative; those from the line drafted for the finished edge are positive
// downwards, that is towards the raw edge as cut, and negative upwards into the garment.
// For a slit the line is that of the slit, or of the seam as drafted, and positive is
// towards the raw edge.
type Plan struct {
	Spec    Any      `json:"spec,omitzero"`    // the hem as solved
	Assumed []string `json:"assumed,omitzero"` // the fields that rest on a default

	// Taken is what the hem takes: first + depth, depth for a hem turned once,
	// first + 2 x depth for a turn-up, seam + favour for a faced edge. For a bound edge it
	// is seam - depth: zero where the binding is as deep as its seam, negative where it
	// stands out beyond the raw edge.
	Taken units.Length `json:"taken,omitzero"`
	// Drift is cut - taken: how much longer the garment comes out than drafted, negative
	// where it comes out shorter. For a slit it is how far each finished edge lies outside
	// the line, which is negative for one that is cut.
	Drift  units.Length `json:"drift,omitzero"`
	CutOff units.Length `json:"cutOff,omitzero"` // drafted - cut: what is cut off the allowance drafted; negative if more was left on
	// Plies is the layers of cloth in the hem at its thickest: 2 for a hem turned
	// once, 3 turned twice, 4 for a turn-up and a faced edge, or 5 for a facing so
	// narrow that its turn lies on the allowances of its seam, 5 for a bound edge and
	// 7 where the binding is doubled.
	Plies int `json:"plies,omitzero"`

	// Folds are the folds in the order in which they are made. A bound edge has none; a
	// hem turned once and a faced edge have one, which is the finished edge; a hem turned
	// twice has two, the finished edge last; a turn-up three, the foot of the leg last.
	Folds []Fold `json:"folds,omitzero"`

	RawToStitch      units.Length `json:"rawToStitch,omitzero"`      // from the raw edge as cut to the stitching, on the flat cloth of the hem; of a faced or bound edge, to the seam of the strip
	FinishedToStitch units.Length `json:"finishedToStitch,omitzero"` // from the finished edge up to the stitching: the guide at the machine; of a bound edge, to the seam of the binding
	LineToRaw        units.Length `json:"lineToRaw,omitzero"`        // from the drafted line to the raw edge as cut
	LineToStitch     units.Length `json:"lineToStitch,omitzero"`     // from the drafted line to the stitching as seen from the right side

	// Excess is how much longer the turned cloth is than the garment it is sewn
	// to, over all flared edges: 2 x depth x slope x edges, the same at the inner
	// fold and at the raw edge, or at the top fold of a turn-up. Of a straight
	// facing it is (depth + favour) x slope x edges, of a binding minus
	// depth x slope x edges. It is negative where the turned cloth is too short.
	Excess units.Length `json:"excess,omitzero"`
	// Inset is Excess for one edge: how far inside the straight run of a flared
	// side edge the first fold and the raw edge of the hem each lie, if the edge
	// is cut as its own mirror image about each fold so that nothing is left to
	// ease. Of a single hem it is for the raw edge, of a turn-up for its top fold,
	// of a facing cut to shape for its free edge. Taper has the points.
	Inset units.Length `json:"inset,omitzero"`
	// Fullness is all that the turned cloth is too long by and has to lose, over
	// the flared edges and the convex curves: on a curve twice the depth, or as for
	// Excess, times the angle turned through. A circle of any size has the same.
	Fullness units.Near `json:"fullness,omitzero"`
	// Lack is all that the turned cloth is too short by and has to gain, over the
	// edges that narrow and the concave curves.
	Lack units.Near `json:"lack,omitzero"`
	// SweepDrift is what the drift adds to the edge: drift x slope x edges along
	// a flared hem, 2 x drift across a slit.
	SweepDrift units.Length `json:"sweepDrift,omitzero"`
	Swept      units.Length `json:"swept,omitzero"` // sweep + SweepDrift; zero where no sweep is given
	// Round is the finished edge as sewn, its curves and all: Swept, and on a curve
	// the drift round circle less hollow more; for a circular hem circle round
	// radius + drift. Zero where neither sweep nor radius is given.
	Round units.Near   `json:"round,omitzero"`
	Run   units.Length `json:"run,omitzero"` // length of hem to sew: twice the slit, or Swept; zero where that is not given

	Strips []Strip `json:"strips,omitzero"` // the facing or the binding to cut; none for other kinds
	// Others are amounts that one kind alone asks for: of a blind hem where the garment is
	// folded back, of a slit what both sides take in, of an opening in a seam how far
	// each finished edge lies beyond the line of the seam: positive, the edges lap by
	// twice this; negative, they gape by twice this.
	Others []Other `json:"others,omitzero"`
	// Taper is the points of one side edge below the finished edge, from the
	// finished edge down to the raw edge, where the edge is cut as its own mirror
	// image about each fold. It is empty for a slit, and for a faced or bound edge,
	// whose allowance goes no further than its seam; a facing cut to shape has Inset.
	Taper []Taper `json:"taper,omitzero"`
}

// A Fold is where the cloth is folded.
type Fold struct {
	Name string       `json:"name,omitzero"` // which fold it is, as in finished edge
	Raw  units.Length `json:"raw,omitzero"`  // from the raw edge as cut
	Line units.Length `json:"line,omitzero"` // from the drafted line, positive downwards
}

// A Strip is a facing or a binding to cut.
type Strip struct {
	Name  string       `json:"name,omitzero"`  // facing or binding
	Width units.Length `json:"width,omitzero"` // as cut, with what is spare
	Fold  units.Length `json:"fold,omitzero"`  // from the edge that is sewn on to the fold of the free edge; of a doubled binding to the fold along its middle
	Plies int          `json:"plies,omitzero"` // the layers of it in the hem
}

// An Other is an amount that one kind of hem alone asks for.
type Other struct {
	Name string       `json:"name,omitzero"` // what it is
	Long units.Length `json:"long,omitzero"` // how long it is
}

// A Taper is where a side edge of the hem has to be cut so that the turned cloth
// lies on the garment with nothing to lose and nothing to gain.
type Taper struct {
	At   string       `json:"at,omitzero"`   // a fold or the raw edge, as in first fold
	Down units.Length `json:"down,omitzero"` // below the finished edge, on the flat cloth
	Up   units.Length `json:"up,omitzero"`   // above the finished edge, where it comes to lie when the hem is turned
	// Out is how far the side edge lies outside its end at the finished edge:
	// minus slope x Up, negative where it lies inside.
	Out units.Length `json:"out,omitzero"`
	// Inset is how far inside the straight run of the side edge that is:
	// slope x (Down + Up).
	Inset units.Length `json:"inset,omitzero"`
}

// fold adds a fold.
func (p *Plan) fold(name string, raw units.Length) {
	p.Folds = append(p.Folds, Fold{name, raw, p.LineToRaw.Sub(raw)})
}

// taper adds a point of a side edge.
func (p *Plan) taper(at string, down, up units.Length) {
	slope := p.Spec.edge().slope
	p.Taper = append(p.Taper, Taper{At: at, Down: down, Up: up, Out: up.Scale(slope).Neg(), Inset: down.Add(up).Scale(slope)})
}

func (p *Plan) other(name string, long units.Length) {
	p.Others = append(p.Others, Other{name, long})
}

// MaxRidge is the greatest number of plies of a ridge that a hem crosses, and MaxHems the
// greatest number of hems on one piece.
const (
	MaxRidge = 1_000
	MaxHems  = 1_000
)

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
	for _, s := range p.Strips {
		strip += s.Plies
	}
	return (p.Plies-strip)*ridge + strip
}

// Finished is what is left of a piece cut to a length, once so many of its ends
// have this hem: cut - hems x Taken. It is negative where the hems take more
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

// turnedOnce is the fold of a hem that is turned once.
func (p *Plan) turnedOnce(depth, take units.Length) {
	p.Plies = 2
	p.fold("finished edge", take)
	p.taper("finished edge", units.Length{}, units.Length{})
	p.taper("raw edge", depth, depth)
}
