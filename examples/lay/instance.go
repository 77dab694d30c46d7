package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
	"example.com/clothyard/yardage/layout"
)

// MaxFile is the longest instance or lay that is read, in bytes.
const MaxFile = 16 << 20

// An instance is a set of pieces for a strip of cloth, as researchers write
// them: x runs along the strip and y across it.
type instance struct {
	Name      string
	Width     number
	Rotations []int   `json:"allowed_rotations"`
	Pieces    []piece `json:"pieces"`
}

type piece struct {
	ID        string
	Qty       int
	Rotations []int
	Points    [][2]number
}

// A number is an exact decimal: a JSON number without exponent, or its digits as
// a string.
type number struct{ units.Ratio }

func (n *number) UnmarshalJSON(data []byte) error {
	text := strings.Trim(string(data), `"`)
	if strings.Trim(text, "+-.0123456789") != "" {
		return fmt.Errorf("%q: want a decimal without exponent", data[:min(len(data), 40)])
	}
	r, err := units.ParseRatio(text)
	n.Ratio = r
	return err
}

// length is the number as inches: on the tape one of the file's units stands for
// an inch.
func (n number) length() units.Length { return units.Inch.Of(1).Scale(n.Ratio) }

// ratio is a length as a number of the file's units.
func ratio(l units.Length) units.Ratio { return l.In(units.Inch) }

func readInstance(r io.Reader) (instance, error) {
	data, err := io.ReadAll(io.LimitReader(r, MaxFile+1))
	if err != nil {
		return instance{}, err
	}
	if len(data) > MaxFile {
		return instance{}, fmt.Errorf("longer than %d bytes", MaxFile)
	}
	var in instance
	if err := json.NewDecoder(bytes.NewReader(data)).Decode(&in); err != nil {
		return instance{}, err
	}
	if len(in.Pieces) == 0 {
		return instance{}, errors.New("no pieces")
	}
	for i := range in.Pieces {
		if p := &in.Pieces[i]; len(p.Rotations) == 0 {
			p.Rotations = in.Rotations
		}
	}
	return in, nil
}

// spec is the instance as a lay: its x is along the cloth, its y across. Where
// all pieces are rectangles they are given as such.
func (in instance) spec() (layout.Spec, error) {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in.Width.length()}}
	var faults []error
	for _, p := range in.Pieces {
		one := layout.Piece{Name: p.ID, Count: p.Qty}
		for _, q := range p.Points {
			one.Outline = append(one.Outline, layout.Point{X: q[1].length(), Y: q[0].length()})
		}
		wide, long, rectangle := p.rectangle()
		if rectangle {
			one.Wide, one.Long, one.Outline = wide, long, nil
		}
		turn, ok := turnOf(p.Rotations, rectangle)
		if !ok {
			faults = append(faults, fmt.Errorf("piece %s: rotations %v, want 0, 0 and 180, all four quarters, or for a rectangle 0 and 90", p.ID, p.Rotations))
		}
		one.Turn = turn
		s.Pieces = append(s.Pieces, one)
	}
	return s, errors.Join(faults...)
}

// rectangle is the size across and along of a piece whose four corners are those
// of a rectangle.
func (p piece) rectangle() (wide, long units.Length, ok bool) {
	if len(p.Points) != 4 {
		return wide, long, false
	}
	lo, hi := p.Points[0], p.Points[0]
	for _, q := range p.Points {
		for k := range q {
			if q[k].Less(lo[k].Ratio) {
				lo[k] = q[k]
			}
			if hi[k].Less(q[k].Ratio) {
				hi[k] = q[k]
			}
		}
	}
	for i, q := range p.Points {
		next := p.Points[(i+1)%4]
		if (q[0] == next[0]) == (q[1] == next[1]) || q[0] != lo[0] && q[0] != hi[0] || q[1] != lo[1] && q[1] != hi[1] {
			return wide, long, false
		}
	}
	return hi[1].length().Sub(lo[1].length()), hi[0].length().Sub(lo[0].length()), p.Points[0] != p.Points[2] && p.Points[1] != p.Points[3]
}

func turnOf(rotations []int, rectangle bool) (layout.Turn, bool) {
	r := slices.Clone(rotations)
	slices.Sort(r)
	switch {
	case slices.Equal(r, []int{0}):
		return layout.Keep, true
	case slices.Equal(r, []int{0, 180}):
		return layout.Half, true
	case slices.Equal(r, []int{0, 90, 180, 270}), slices.Equal(r, []int{0, 90}) && rectangle:
		return layout.Quarter, true
	}
	return layout.Keep, false
}

// corner is the least x and y of a piece turned about its own origin.
func (p piece) corner(rotation int) (x, y units.Ratio) {
	for i, q := range p.Points {
		a, b := q[0].Ratio, q[1].Ratio
		for range rotation / 90 {
			a, b = b.Neg(), a
		}
		if i == 0 || a.Less(x) {
			x = a
		}
		if i == 0 || b.Less(y) {
			y = b
		}
	}
	return x, y
}

// A lay is a lay as it is written, one object a line.
type lay struct {
	Instance   string          `json:"instance"`
	Width      number          `json:"width"`
	Length     number          `json:"length"`
	Density    json.RawMessage `json:"density"` // in percent, rounded for reading; not read
	Seed       uint64          `json:"seed"`
	Work       int             `json:"work"`
	Placements []placement     `json:"placements"`
}

// A placement is where the piece's own origin comes to lie after it is turned
// about that origin.
type placement struct {
	Piece    string `json:"piece"`
	Copy     int    `json:"copy"`
	Rotation int    `json:"rotation"`
	Flip     bool   `json:"flip"`
	X        number `json:"x"`
	Y        number `json:"y"`
}

// MarshalJSON writes the exact decimal as a JSON number.
func (n number) MarshalJSON() ([]byte, error) {
	r := n.Rat()
	digits, exact := r.FloatPrec()
	if !exact {
		return nil, fmt.Errorf("%s is no decimal", r)
	}
	return []byte(r.FloatString(digits)), nil
}

// write is a plan as a lay of the instance.
func (in instance) write(p layout.Plan) lay {
	out := lay{Instance: in.Name, Width: in.Width, Length: number{ratio(p.Lay)}, Density: json.RawMessage(decimal(p.Density.Mul(units.RatioOf(100, 1)), 4)), Seed: p.Spec.Seed, Work: p.Spec.Work}
	for _, at := range p.Placements {
		one := in.Pieces[at.Piece]
		rotation := 0
		if at.Across {
			rotation += 270
		}
		if at.Half {
			rotation += 180
		}
		rotation %= 360
		if !slices.Contains(one.Rotations, rotation) { // a rectangle, the same either way
			rotation = (rotation + 180) % 360
		}
		x, y := one.corner(rotation)
		out.Placements = append(out.Placements, placement{Piece: one.ID, Copy: at.Copy, Rotation: rotation,
			X: number{ratio(at.Y).Sub(x)}, Y: number{ratio(at.X).Sub(y)}})
	}
	return out
}

// read is a lay of the instance as placements; copies are counted as they come.
func (in instance) read(l lay) ([]layout.Placement, error) {
	var a ticket.Audit
	out := make([]layout.Placement, 0, len(l.Placements))
	copies := make([]int, len(in.Pieces))
	for i, at := range l.Placements {
		path := fmt.Sprintf("placements[%d]", i)
		k := slices.IndexFunc(in.Pieces, func(p piece) bool { return p.ID == at.Piece })
		if k < 0 {
			a.Fault(path+".piece", at.Piece, "a piece of "+in.Name, ticket.ErrUnknown)
			continue
		}
		if !slices.Contains(in.Pieces[k].Rotations, at.Rotation) || at.Rotation%90 != 0 {
			a.Fault(path+".rotation", fmt.Sprint(at.Rotation), fmt.Sprint(in.Pieces[k].Rotations), layout.ErrTurn)
			continue
		}
		if at.Flip {
			a.Fault(path+".flip", "true", "false: no piece may be turned over", layout.ErrTurn)
			continue
		}
		copies[k]++
		quarters := (4 - at.Rotation/90) % 4
		x, y := in.Pieces[k].corner(at.Rotation)
		one := layout.Placement{Piece: k, Copy: copies[k], Across: quarters&1 == 1, Half: quarters&2 == 2,
			X: units.Inch.Of(1).Scale(at.Y.Add(y)), Y: units.Inch.Of(1).Scale(at.X.Add(x))}
		if _, _, rectangle := in.Pieces[k].rectangle(); rectangle {
			one.Half = false
		}
		out = append(out, one)
	}
	return out, a.Err()
}
