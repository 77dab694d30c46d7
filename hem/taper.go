package hem

import "example.com/clothyard/units"

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

// taper is the points of a side edge.
func (p Plan) taper() []Taper {
	s := p.Spec
	var points []Taper
	add := func(at string, down, up units.Length) {
		points = append(points, Taper{At: at, Down: down, Up: up, Out: up.Scale(s.Slope).Neg(), Inset: down.Add(up).Scale(s.Slope)})
	}
	none := units.Length{}
	if s.Kind == Slit || s.Kind.stripped() {
		return nil
	}
	add("finished edge", none, none)
	switch {
	case s.oneFold():
		add("raw edge", s.Depth, s.Depth)
	case s.Kind == TurnUp:
		add("top of the turn-up", s.Depth, s.Depth)
		add("lower fold", s.Depth.MulInt(2), none)
		add("raw edge", s.Take, s.First)
	default:
		add("first fold", s.Depth, s.Depth)
		add("raw edge", s.Take, s.Depth.Sub(s.First))
	}
	return points
}
