package buttons

import (
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// A Lap is the front past the centre line, with the hole and the topstitching in
// it. Places in a lap are measured from the finished front edge inwards, square
// to it. Zero means not given.
type Lap struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Lap is from the centre line to the front edge. May be omitted where the diameter is
	// given; the default is row, half of the diameter and 1/4 in, or 6 mm on a metric tape.
	Lap units.Length `json:"lap,omitzero"`
	// Hole is the length of the buttonhole as cut. May be omitted where it is vertical.
	Hole units.Length `json:"hole,omitzero"`
	// Row is how far the buttons lie from the centre line: a double-breasted front has one
	// row at each side of it, and the holes lie in the row nearer to the edge. May be
	// omitted; the one row then lies on the centre line.
	Row units.Length `json:"row,omitzero"`
	// Diameter is across the button. It is checked against the edge. May be omitted where
	// the lap is given.
	Diameter units.Length `json:"diameter,omitzero"`
	// Topstitch is the row of topstitching, from the front edge. May be omitted.
	Topstitch units.Length `json:"topstitch,omitzero"`
	// Setting is the direction of the hole.
	Setting Setting `json:"setting,omitzero"`
	// Reach is how far a horizontal hole goes past the line of the buttons towards the
	// edge. May be omitted; the default is 1/8 in, or 3 mm on a metric tape.
	Reach units.Length `json:"reach,omitzero"`
}

// A LapPlan is a lap worked out.
type LapPlan struct {
	Spec    Lap      `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields filled with a default

	OuterEnd units.Length `json:"outerEnd,omitzero"` // of the hole nearer the edge; a vertical hole lies on the line of the buttons with both
	InnerEnd units.Length `json:"innerEnd,omitzero"` // of the hole farther from the edge
	Beyond   units.Length `json:"beyond,omitzero"`   // of the lap past the button as fastened; zero if Diameter is not given

	Apart  units.Length `json:"apart,omitzero"`  // between the two rows of a double-breasted front
	Across units.Length `json:"across,omitzero"` // how much of the two fronts lies double: twice the lap

	Crosses bool         `json:"crosses,omitzero"` // whether the topstitching runs through the hole
	Clash   units.Length `json:"clash,omitzero"`   // how far the hole reaches past the topstitching; the whole hole where a vertical one lies along it
	Clear   units.Length `json:"clear,omitzero"`   // between the hole and the topstitching; zero if they cross or there is none

	// Remedies are the laps that mend a crossing, the least work first: the hole set
	// vertical on the centre line, then the row of topstitching moved inwards to lie reach
	// clear of the hole, for which the facing must be deep enough. A row along vertical
	// holes is moved half way to the edge.
	Remedies []Lap `json:"remedies,omitzero"`
}

func (l Lap) solve() (Lap, []string, error) {
	var a fault.Audit
	given := l
	fillTape(&a, &l.Tape, l)
	half := l.Diameter.DivInt(2)
	reach := l.Reach
	if reach.IsZero() {
		reach = eighth(l.Tape)
	}
	if l.Lap.IsZero() && l.Diameter.Sign() > 0 {
		l.Lap = l.Row.Add(defaultLap(l.Tape).Lap(l.Diameter))
	}
	why := " (reach)"
	if !l.Row.IsZero() {
		why = " (row and reach)"
	}
	switch line := l.line(); {
	case l.Lap.Sign() <= 0:
		a.Need("lap", l.Lap)
	case l.Setting == Horizontal && !reach.Less(line) && !reach.Less(half):
		a.Fault("lap", l.Lap.String(), "more than {0}"+why, ErrPastEdge, l.Row.Add(reach))
	case line.Less(half): // which is then more than Reach
		a.Fault("lap", l.Lap.String(), "at least {0}"+strings.Replace(why, "reach", "half of diameter", 1), ErrPastEdge, l.Row.Add(half))
	}
	if l.Setting == Vertical {
		a.NotNegative("hole", l.Hole)
	} else if a.Need("hole", l.Hole); l.Setting == Horizontal && l.Hole.Sign() > 0 && !reach.Less(l.Hole) {
		a.Fault("hole", l.Hole.String(), "more than {0} (reach)", fault.Range, reach)
	}
	a.NotNegative("row", l.Row)
	a.NotNegative("diameter", l.Diameter)
	a.NotNegative("topstitch", l.Topstitch)
	settings.Check(&a, "setting", l.Setting)
	switch l.Setting {
	case Vertical:
		unused(&a, "reach", l.Reach, "for a vertical hole, which lies along the line of the buttons")
	case Horizontal:
		if l.Reach.IsZero() {
			l.Reach = reach
		}
		a.NotNegative("reach", l.Reach)
	}
	assumed := noun.Assumed(given, l)
	return l, assumed, a.Err(assumed...)
}

// line is the line of the buttons, from the front edge.
func (l Lap) line() units.Length { return l.Lap.Sub(l.Row) }

// Plan works the lap out. The faults are those of [Lap].
func (l Lap) Plan() (LapPlan, error) {
	s, assumed, err := l.solve()
	if err != nil {
		return LapPlan{}, err
	}
	line := s.line()
	p := LapPlan{Spec: s, Assumed: assumed, OuterEnd: line, InnerEnd: line, Apart: s.Row.MulInt(2), Across: s.Lap.MulInt(2)}
	if s.Setting == Horizontal {
		p.OuterEnd = line.Sub(s.Reach)
		p.InnerEnd = p.OuterEnd.Add(s.Hole)
	}
	if !s.Diameter.IsZero() {
		p.Beyond = line.Sub(s.Diameter.DivInt(2))
	}
	row := s.Topstitch
	switch {
	case row.IsZero():
	case s.Setting == Vertical && row == line:
		p.Crosses, p.Clash = true, s.Hole
	case !p.OuterEnd.Less(row):
		p.Clear = p.OuterEnd.Sub(row)
	case !row.Less(p.InnerEnd):
		p.Clear = row.Sub(p.InnerEnd)
	default:
		p.Crosses, p.Clash = true, p.InnerEnd.Sub(row)
	}
	p.Remedies = p.remedies()
	return p, nil
}

// remedies are the laps that mend a crossing.
func (p LapPlan) remedies() (laps []Lap) {
	if !p.Crosses {
		return nil
	}
	if turned := p.Spec; turned.Setting == Horizontal && turned.Topstitch != turned.line() {
		turned.Setting, turned.Reach = Vertical, units.Length{}
		laps = append(laps, turned)
	}
	moved := p.Spec
	if moved.Topstitch = p.InnerEnd.Add(moved.Reach); moved.Setting == Vertical {
		moved.Topstitch = moved.line().DivInt(2)
	}
	return append(laps, moved)
}
