package outline

import (
	"fmt"
	"io"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// The bounds on what is read.
const (
	MaxBytes  = 8 << 20 // most bytes of one file
	MaxFaults = 100     // most faults that are told of; reading stops there
	MaxDepth  = 64      // how deep the elements of a drawing may be nested
	MaxCurves = 50_000  // most curves of all the paths of a drawing
)

// The faults of a drawing that ticket's own do not say.
const (
	ErrTransform fault.Kind = "transforms are not applied"
	ErrCurve     fault.Kind = "curve cannot be made a polygon"
	ErrOpen      fault.Kind = "outline is not closed"
)

// A Reader reads outlines. The zero Reader wants a unit on every number of a
// table, a drawing whose size is in physical units, and straight lines.
type Reader struct {
	Numbers units.Parser `json:"numbers,omitzero"` // how numbers of a table are written; Bare is also a unit of a drawing that states no physical size
	Within  units.Length `json:"within,omitzero"`  // how far outside a curve its polygon may lie; zero: curves are refused
}

// A place is where in a file something stands, both counted from 1, the column
// in bytes.
type place struct{ line, column int }

func (p place) String() string { return fmt.Sprintf("line %d, column %d", p.line, p.column) }

// faults are what is wrong with a file.
type faults struct{ list fault.Faults }

// at notes a fault; false where there are so many that reading stops.
func (f *faults) at(path, got, limit string, err error) bool {
	if len(f.list) >= MaxFaults {
		return false
	}
	if len(got) > fault.MaxName {
		got = got[:fault.MaxName]
	}
	f.list = append(f.list, &fault.Fault{Path: path, Got: fmt.Sprintf("%q", got), Limit: limit, Kind: fault.KindOf(err)})
	return len(f.list) < MaxFaults
}

// name checks the name of a piece.
func (f *faults) name(path, name string) {
	var a fault.Audit
	if a.Text("", name); a.Failed() {
		f.at(path, name, fmt.Sprintf("a name of at most %d bytes, all of it text", fault.MaxName), fault.Form)
	}
}

// full reports whether reading stops for faults.
func (f *faults) full() bool { return len(f.list) >= MaxFaults }

// check is what is wrong with the Reader itself.
func (r Reader) check() error {
	var a fault.Audit
	if r.Numbers.Bare != units.NoUnit && !r.Numbers.Bare.Valid() {
		a.Fault("numbers.bare", fmt.Sprint(uint8(r.Numbers.Bare)), "a unit", fault.Unknown)
	}
	a.NotNegative("within", r.Within)
	return a.Err()
}

// whole reads all of a file, which is at most MaxBytes long.
func whole(in io.Reader) ([]byte, error) {
	text, err := io.ReadAll(io.LimitReader(in, MaxBytes+1))
	if err != nil {
		return nil, fmt.Errorf("reading the outlines: %w", err)
	}
	if len(text) > MaxBytes {
		return nil, fault.Faults{{Path: "file", Got: fmt.Sprintf("more than %d bytes", MaxBytes), Limit: fmt.Sprintf("at most %d", MaxBytes), Kind: fault.Range}}
	}
	return text, nil
}

// closed is pts without a last point that repeats the first.
func closed(pts []layout.Point) []layout.Point {
	if n := len(pts); n > 1 && pts[0] == pts[n-1] {
		return pts[:n-1]
	}
	return pts
}

// sized is the fault of an outline with too few points or too many.
func (f *faults) sized(path string, pts []layout.Point) bool {
	if n := len(pts); n < 3 || n > layout.MaxPoints {
		f.at(path, fmt.Sprintf("%d points", n), fmt.Sprintf("3 to %d", layout.MaxPoints), fault.Range)
		return false
	}
	return true
}

// most is the fault of more pieces or points than one lay may have.
func (f *faults) most(path string, pieces []layout.Piece, points int) bool {
	if len(pieces) > layout.MaxPieces {
		f.at(path, fmt.Sprintf("%d pieces", len(pieces)), fmt.Sprintf("at most %d", layout.MaxPieces), fault.Range)
		return false
	}
	if points > layout.MaxCorners {
		f.at(path, fmt.Sprintf("%d points in all", points), fmt.Sprintf("at most %d", layout.MaxCorners), fault.Range)
		return false
	}
	return true
}

// end is what reading comes to.
func (f *faults) end(pieces []layout.Piece, path, want string) ([]layout.Piece, error) {
	if len(pieces) == 0 && len(f.list) == 0 {
		f.at(path, "", want, fault.Missing)
	}
	if len(f.list) > 0 {
		return nil, f.list
	}
	return pieces, nil
}
