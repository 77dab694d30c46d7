package section

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
	"example.com/clothyard/units/ticket"
)

// Bounds of a drawing.
const (
	MaxPlies      = 16 // the most plies
	MaxPoints     = 64 // the most points of one path
	MaxStitches   = 32 // the most stitches
	MaxDimensions = 32 // the most measures
	MaxPierced    = 64 // the most plies that one stitch names
	MaxReach      = 20 // how far any point may lie from the origin, in metres
)

// What is wrong with a drawing, beside the faults that every package shares.
const (
	ErrCross  fault.Kind = "section: plies cross"
	ErrPierce fault.Kind = "section: the stitch does not pierce what it names"
	ErrEdge   fault.Kind = "section: the raw edge is not where it is said to be"
	ErrSquare fault.Kind = "section: not square"
	ErrNoMark fault.Kind = "section: no fold, edge or stitch is there"
)

// A Stitch is a row of stitching seen end-on: a straight thread across the plies,
// upright or level.
type Stitch struct {
	Name   string   `json:"name,omitzero"`   // what it is: "first pass"
	From   Point    `json:"from,omitzero"`   // one end of the thread; the picture numbers the row above it
	To     Point    `json:"to,omitzero"`     // the other end
	Pierce []string `json:"pierce,omitzero"` // the plies that it goes through, in order from From to To; a ply folded twice is named twice
}

// A Side says where a measure is drawn. The zero value is not given.
type Side uint8

// The sides.
const (
	Above Side = iota + 1 // over the cloth
	Below                 // under the cloth
)

var sideNames = name.Of[Side]("side", "none", "above", "below")

// String is the name of the side.
func (s Side) String() string { return sideNames.String(s) }

// MarshalText is the name of the side.
func (s Side) MarshalText() ([]byte, error) { return sideNames.Marshal(s) }

// UnmarshalText takes the name of a side.
func (s *Side) UnmarshalText(text []byte) error { return sideNames.Unmarshal(s, text) }

// Sides yields every side.
func Sides() iter.Seq[Side] { return sideNames.All() }

// A Dimension is a measure along the cloth, between two places that are each a
// fold, an end of a ply or a stitch.
type Dimension struct {
	Name   string        `json:"name,omitzero"`   // what it measures: "second pass"
	From   Point         `json:"from,omitzero"`   // one end
	To     Point         `json:"to,omitzero"`     // the other end; its X is not that of From
	Side   Side          `json:"side,omitzero"`   // where the picture has it; the first of a side is nearest the cloth
	Amount ticket.Amount `json:"amount,omitzero"` // the length: the distance from From to To along the cloth, or an enclosure of it
}

// A Drawing is cloth seen edge-on. Zero means not given.
type Drawing struct {
	Title      string       `json:"title,omitzero"`      // what it shows: "French seam, second pass"
	Desc       string       `json:"desc,omitzero"`       // a sentence that the description in words begins with; may be empty
	Thickness  units.Length `json:"thickness,omitzero"`  // of every ply as drawn
	True       units.Length `json:"true,omitzero"`       // of every ply as it is, so that the picture can tell how much it exaggerates; may be left out
	Scale      units.Ratio  `json:"scale,omitzero"`      // size of the picture against the cloth; default as large as fits 160 mm, by halves; at most MaxScale
	Plies      []Ply        `json:"plies,omitzero"`      // the cloth, from 1 to MaxPlies
	Stitches   []Stitch     `json:"stitches,omitzero"`   // the rows of stitching, numbered from 1
	Dimensions []Dimension  `json:"dimensions,omitzero"` // the measures
}

// MaxScale is the greatest scale of a picture.
const MaxScale = 1000

func reach() units.Length { return units.Metre.Of(MaxReach) }

// Check proves that the drawing is what it says. The faults are [fault.Faults].
func (d Drawing) Check() error {
	var a fault.Audit
	if d.Title == "" {
		a.Fault("title", "", "what the drawing shows", fault.Missing)
	}
	a.Text("title", d.Title)
	if len(d.Desc) > units.MaxText {
		a.Fault("desc", ticket.Of(len(d.Desc)).String()+" bytes", "at most "+ticket.Of(units.MaxText).String()+" bytes", fault.Range)
	}
	a.Need("thickness", d.Thickness)
	fault.AtMost(&a, "thickness", d.Thickness, reach(), "the greatest reach", fault.Range)
	a.NotNegative("true", d.True)
	if d.Scale.Sign() < 0 || units.RatioOf(MaxScale, 1).Less(d.Scale) {
		a.Fault("scale", d.Scale.String(), "more than 0, at most "+ticket.Of(MaxScale).String(), fault.Range)
	}
	a.Count("plies", len(d.Plies), 1, MaxPlies)
	if len(d.Stitches) > MaxStitches {
		a.Count("stitches", len(d.Stitches), 0, MaxStitches)
	}
	if len(d.Dimensions) > MaxDimensions {
		a.Count("dimensions", len(d.Dimensions), 0, MaxDimensions)
	}
	if a.Failed() {
		return a.Err()
	}
	for i, p := range d.Plies {
		p.check(&a, index("plies", i))
		for _, q := range d.Plies[:i] {
			if p.Name != "" && q.Name == p.Name {
				a.Fault(index("plies", i)+".name", p.Name, "a name of its own", fault.Twice)
				break
			}
		}
	}
	for i, s := range d.Stitches {
		s.check(&a, index("stitches", i))
	}
	for i, m := range d.Dimensions {
		m.check(&a, index("dimensions", i))
	}
	if a.Failed() {
		return a.Err()
	}
	boxes := d.boxes()
	crossings(&a, d, boxes)
	for i, s := range d.Stitches {
		s.pierces(&a, index("stitches", i), d, boxes)
	}
	for i, p := range d.Plies {
		d.edge(&a, index("plies", i)+".start", p.Start, p.Path[0], p.Path[1], boxes)
		n := len(p.Path)
		d.edge(&a, index("plies", i)+".finish", p.Finish, p.Path[n-1], p.Path[n-2], boxes)
	}
	for i, m := range d.Dimensions {
		d.marked(&a, index("dimensions", i)+".from", m.From)
		d.marked(&a, index("dimensions", i)+".to", m.To)
	}
	return a.Err()
}

func index(name string, i int) string { return name + "[" + ticket.Of(i).String() + "]" }

func (p Point) text() string { return "(" + p.X.String() + ", " + p.Y.String() + ")" }

// near records a point that is out of reach.
func (p Point) near(a *fault.Audit, path string) {
	if reach().Less(p.X.Abs()) || reach().Less(p.Y.Abs()) {
		a.Fault(path, p.text(), "within {0} of the origin", fault.Range, reach())
	}
}

// level and upright tell how two points lie.
func level(p, q Point) bool   { return p.Y == q.Y && p.X != q.X }
func upright(p, q Point) bool { return p.X == q.X && p.Y != q.Y }

func (p Ply) check(a *fault.Audit, path string) {
	if p.Name == "" {
		a.Fault(path+".name", "", "what the ply is", fault.Missing)
	}
	a.Text(path+".name", p.Name)
	fillNames.Check(a, path+".fill", p.Fill)
	if len(p.Path) < 2 || len(p.Path) > MaxPoints {
		a.Count(path+".path", len(p.Path), 2, MaxPoints)
	} else {
		for i, at := range p.Path {
			where := path + "." + index("path", i)
			at.near(a, where)
			switch {
			case i == 0:
			case !level(p.Path[i-1], at) && !upright(p.Path[i-1], at):
				a.Fault(where, at.text(), "level with the point before, or straight above or below it", ErrSquare)
			case i > 1 && level(p.Path[i-2], p.Path[i-1]) == level(p.Path[i-1], at):
				a.Fault(where, at.text(), "a turn at the point before", ErrSquare)
			}
		}
	}
	endNames.Check(a, path+".start", p.Start)
	endNames.Check(a, path+".finish", p.Finish)
	if p.Face != 0 {
		faceNames.Check(a, path+".face", p.Face)
	}
}

func (s Stitch) check(a *fault.Audit, path string) {
	if s.Name == "" {
		a.Fault(path+".name", "", "what the row is", fault.Missing)
	}
	a.Text(path+".name", s.Name)
	s.From.near(a, path+".from")
	s.To.near(a, path+".to")
	if !level(s.From, s.To) && !upright(s.From, s.To) {
		a.Fault(path+".to", s.To.text(), "level with from, or straight above or below it", ErrSquare)
	}
	if len(s.Pierce) == 0 || len(s.Pierce) > MaxPierced {
		a.Count(path+".pierce", len(s.Pierce), 1, MaxPierced)
	}
}

func (m Dimension) check(a *fault.Audit, path string) {
	if m.Name == "" {
		a.Fault(path+".name", "", "what is measured", fault.Missing)
	}
	a.Text(path+".name", m.Name)
	m.From.near(a, path+".from")
	m.To.near(a, path+".to")
	sideNames.Check(a, path+".side", m.Side)
	drawn := m.To.X.Sub(m.From.X).Abs()
	low, high := m.Amount.Near().Bounds()
	switch {
	case drawn.IsZero():
		a.Fault(path+".to", m.To.text(), "another place along the cloth than from", fault.Missing)
	case m.Amount.Measure() != ticket.Length:
		a.Fault(path+".amount", m.Amount.String(), "a length", fault.Missing)
	case drawn.Less(low) || high.Less(drawn):
		a.Fault(path+".amount", m.Amount.String(), "{0} (the distance between its ends)", fault.Conflict, drawn)
	}
}
