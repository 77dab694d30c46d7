package section

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/name"
)

// A Point is a place in the drawing: X along the cloth, plus to the right; Y
// across it, plus upwards.
type Point struct {
	X units.Length `json:"x,omitzero"` // along the cloth
	Y units.Length `json:"y,omitzero"` // across the cloth, in drawn thicknesses
}

// At is the point (x, y).
func At(x, y units.Length) Point { return Point{x, y} }

// A Fill is the pattern that tells a ply from its neighbours without colour. The
// zero value is not given.
type Fill uint8

// The fills.
const (
	Blank   Fill = iota + 1 // white
	Hatched                 // slanted lines
	Dotted                  // dots
	Crossed                 // slanted lines both ways
)

var fillNames = name.Of[Fill]("fill", "none", "blank", "hatched", "dotted", "crossed")

// String is the name of the fill.
func (f Fill) String() string { return fillNames.String(f) }

// MarshalText is the name of the fill.
func (f Fill) MarshalText() ([]byte, error) { return fillNames.Marshal(f) }

// UnmarshalText takes the name of a fill.
func (f *Fill) UnmarshalText(text []byte) error { return fillNames.Unmarshal(f, text) }

// Fills yields every fill.
func Fills() iter.Seq[Fill] { return fillNames.All() }

// An End is how a ply ends. The zero value is not given.
type End uint8

// The ends.
const (
	RunsOn End = iota + 1 // the garment goes on beyond the drawing
	Raw                   // a raw edge that shows
	Hidden                // a raw edge shut in: cloth above and below it, cloth or a stitch ahead
	Neat                  // an edge finished by itself, as overcast, or a selvedge
)

var endNames = name.Of[End]("end", "none", "runs-on", "raw", "hidden", "neat")

// String is the name of the end.
func (e End) String() string { return endNames.String(e) }

// MarshalText is the name of the end.
func (e End) MarshalText() ([]byte, error) { return endNames.Marshal(e) }

// UnmarshalText takes the name of an end.
func (e *End) UnmarshalText(text []byte) error { return endNames.Unmarshal(e, text) }

// Ends yields every end.
func Ends() iter.Seq[End] { return endNames.All() }

// A Face says on which side of its path a ply has its right side, which is drawn
// as a heavy line. The zero value draws none.
type Face uint8

// The faces, as seen going along the path.
const (
	NoFace Face = iota // the right side is not marked
	Left               // the right side of the cloth is on the left
	Right              // the right side of the cloth is on the right
)

var faceNames = name.Of[Face]("face", "none", "left", "right")

// String is the name of the face; none for [NoFace].
func (f Face) String() string { return faceNames.String(f) }

// MarshalText is the name of the face, empty for [NoFace].
func (f Face) MarshalText() ([]byte, error) { return faceNames.Marshal(f) }

// UnmarshalText takes the name of a face. Empty text is [NoFace].
func (f *Face) UnmarshalText(text []byte) error { return faceNames.Unmarshal(f, text) }

// Faces yields every face but [NoFace].
func Faces() iter.Seq[Face] { return faceNames.All() }

// A Ply is one piece of cloth, folded.
type Ply struct {
	Name   string  `json:"name,omitzero"`   // what it is: "upper"; no two plies bear one name
	Fill   Fill    `json:"fill,omitzero"`   // its pattern
	Path   []Point `json:"path,omitzero"`   // the middle of its thickness from one end to the other, each turn square; see [Pen]
	Start  End     `json:"start,omitzero"`  // how it ends at the first point
	Finish End     `json:"finish,omitzero"` // how it ends at the last point
	Face   Face    `json:"face,omitzero"`   // where its right side is
}

// A Pen draws the path of a ply: it runs along, steps up or down over other cloth
// and folds back. A Pen is a value: each method gives a new one.
type Pen struct {
	path []Point
	t    units.Length
}

// From is a pen at the start of a ply, in a drawing of the thickness given.
func From(start Point, thickness units.Length) Pen { return Pen{[]Point{start}, thickness} }

func (p Pen) at() Point { return p.path[len(p.path)-1] }

func (p Pen) move(to Point) Pen {
	if to == p.at() {
		return p
	}
	p.path = append(p.path[:len(p.path):len(p.path)], to)
	return p
}

// To runs along the cloth to the place x.
func (p Pen) To(x units.Length) Pen {
	if len(p.path) == 0 {
		return p
	}
	return p.move(Point{x, p.at().Y})
}

// Along runs along the cloth by d, to the right if plus.
func (p Pen) Along(d units.Length) Pen {
	if len(p.path) == 0 {
		return p
	}
	return p.To(p.at().X.Add(d))
}

// Step goes up by a number of thicknesses, down where it is negative.
func (p Pen) Step(plies int) Pen {
	if len(p.path) == 0 {
		return p
	}
	at := p.at()
	return p.move(Point{at.X, at.Y.Add(p.t.MulInt(int64(plies)))})
}

// Back runs along by d, against the way of the last run along. The last run was
// to the right if there was none.
func (p Pen) Back(d units.Length) Pen {
	for i := len(p.path) - 1; i > 0; i-- {
		if way := p.path[i].X.Cmp(p.path[i-1].X); way != 0 {
			return p.Along(d.MulInt(int64(-way)))
		}
	}
	return p.Along(d.Neg())
}

// Fold steps a number of thicknesses, one to fold flat, and runs back by d.
func (p Pen) Fold(plies int, d units.Length) Pen { return p.Step(plies).Back(d) }

// Path is the path drawn.
func (p Pen) Path() []Point { return append([]Point(nil), p.path...) }
