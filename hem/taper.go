package hem

import (
	"iter"

	"example.com/clothyard/units"
)

// A Taper is where a side edge of the hem has to be cut so that the turned cloth
// lies on the garment with nothing to lose and nothing to gain.
type Taper struct {
	At   string       `json:"at,omitzero"`   // a fold or the raw edge, as in first fold
	Down units.Length `json:"down,omitzero"` // below the finished edge, on the flat cloth
	Up   units.Length `json:"up,omitzero"`   // above the finished edge, where it comes to lie when the hem is turned
	// Out is how far the side edge lies outside its end at the finished edge:
	// -Slope x Up, below zero where it lies inside.
	Out units.Length `json:"out,omitzero"`
	// Inset is how far inside the straight run of the side edge that is:
	// Slope x (Down + Up).
	Inset units.Length `json:"inset,omitzero"`
}

// Taper yields the points of one side edge below the finished edge, from the
// finished edge down to the raw edge, the edge cut as its own mirror image about
// each fold. It yields nothing for a slit, and for a faced or bound edge, whose
// allowance goes no further than its seam; a facing cut to shape has Plan.Inset.
func (p Plan) Taper() iter.Seq[Taper] {
	return func(yield func(Taper) bool) {
		points, n := p.tapers()
		for _, t := range points[:n] {
			t.Out = t.Up.Scale(p.Spec.Slope).Neg()
			t.Inset = t.Down.Add(t.Up).Scale(p.Spec.Slope)
			if !yield(t) {
				return
			}
		}
	}
}

// tapers are the points, and how many of them there are, without the slope.
func (p Plan) tapers() (points [4]Taper, n int) {
	s := p.Spec
	points[0] = Taper{At: "finished edge"}
	switch {
	case !s.Kind.Valid() || s.Kind == Slit || s.Kind.stripped():
		return points, 0
	case s.oneFold():
		points[1] = Taper{At: "raw edge", Down: s.Depth, Up: s.Depth}
		return points, 2
	case s.Kind == TurnUp:
		points[1] = Taper{At: "top of the turn-up", Down: s.Depth, Up: s.Depth}
		points[2] = Taper{At: "lower fold", Down: s.Depth.MulInt(2)}
		points[3] = Taper{At: "raw edge", Down: s.Take, Up: s.First}
		return points, 4
	}
	points[1] = Taper{At: "first fold", Down: s.Depth, Up: s.Depth}
	points[2] = Taper{At: "raw edge", Down: s.Take, Up: s.Depth.Sub(s.First)}
	return points, 3
}
