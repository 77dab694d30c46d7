package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// The bounds of a [CircleSkirt].
const (
	MaxCircles = 8   // whole circles in one skirt
	MaxGores   = 100 // pieces of one skirt
)

// A CircleSkirt is a skirt cut as part of a circle, or of several: the waist is an
// arc round the centre, the hem another. Zero means "not given".
type CircleSkirt struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Waist is the waist of the skirt, once round.
	Waist units.Length `json:"waist,omitzero"`
	// Ease is what the seam at the waist is longer than that. May be omitted; the
	// default is 0.
	Ease units.Length `json:"ease,omitzero" noun:"zero"`
	// Part is how much of a circle the skirt is, as 1/2 for a half circle, at most 8.
	// May be omitted; the default is 1, a whole circle.
	Part units.Ratio `json:"part,omitzero"`
	// Pieces is how many equal pieces it is cut in, 1 to 100, none more than a circle.
	// May be omitted; the default is the fewest.
	Pieces int `json:"pieces,omitzero"`
	// Length is the finished length, from the waist seam to the hem.
	Length units.Length `json:"length,omitzero"`
	// Hem is the hem allowance. May be omitted; the default is 0.
	Hem units.Length `json:"hem,omitzero" noun:"zero"`
	// Allowance is the seam allowance of the waist, which lies towards the centre. May
	// be omitted; the default is 5/8 in or 1.5 cm.
	Allowance units.Length `json:"allowance,omitzero"`
	// Side is the seam allowance of the side seams, 0 where selvedges lie there. May be
	// omitted; the default is allowance.
	Side units.Given[units.Length] `json:"side,omitzero"`
	// Within says that the side allowances are taken out of the circle, whose waist is
	// the longer by them; else a strip as wide is added beside each straight edge.
	Within bool `json:"within,omitzero"`
	// Step is the mark that the radius drawn is rounded down to. May be omitted; the
	// default is 1/16 in or 1 mm.
	Step units.Length `json:"step,omitzero"`
	// Width is the usable width of the cloth. May be omitted; what cloth it takes is
	// then not known.
	Width units.Length `json:"width,omitzero"`
}

// A CircleSkirtPlan is what a circle skirt comes to. What is not exact holds pi and
// has a bound.
type CircleSkirtPlan struct {
	Spec    CircleSkirt  `json:"spec,omitzero"`    // as solved
	Assumed []string     `json:"assumed,omitzero"` // the fields filled with a default
	Seam    units.Length `json:"seam,omitzero"`    // the waist seam, once round
	Turn    units.Angle  `json:"turn,omitzero"`    // the angle of one piece, without strips beside it
	Radius  units.Near   `json:"radius,omitzero"`  // of the waist seam line
	Cut     units.Near   `json:"cut,omitzero"`     // of the waist as cut: radius less allowance
	CutEdge units.Near   `json:"cutEdge,omitzero"` // length of the waist as cut, shorter than the seam: it is stayed, and clipped to the line
	HemLine units.Near   `json:"hemLine,omitzero"` // length of the finished hem, once round

	Chalk      units.Length `json:"chalk,omitzero"`      // radius to draw the waist with, as cut: cut, rounded down to step
	ChalkOuter units.Length `json:"chalkOuter,omitzero"` // radius to draw the lower edge with, from the same centre
	Made       units.Near   `json:"made,omitzero"`       // the waist seam that this gives
	Off        units.Near   `json:"off,omitzero"`        // what it is shorter than asked for, to be eased out

	Lays []CircleLay `json:"lays,omitzero"` // the cloth it takes, cut whole, in halves and in quarters of circles, as far as the width allows
}

// A CircleLay is how the pieces of a circle skirt are laid on the cloth.
type CircleLay struct {
	Pieces  int          `json:"pieces,omitzero"`  // how many pieces there are
	Across  int          `json:"across,omitzero"`  // how many lie side by side
	Rows    int          `json:"rows,omitzero"`    // how many rows of them
	Cloth   units.Length `json:"cloth,omitzero"`   // length of cloth for all
	Longest units.Length `json:"longest,omitzero"` // the longest skirt that the width allows, cut so
}

// Plan works out the skirt. The faults are [fault.Faults]; one is [units.ErrBound]
// where a radius cannot be told from a mark, as with lengths of thousands of digits.
func (s CircleSkirt) Plan() (CircleSkirtPlan, error) {
	var a fault.Audit
	s.audit(&a)
	if a.Failed() {
		return CircleSkirtPlan{}, a.Err()
	}
	given := s
	s.fill()
	p := CircleSkirtPlan{Spec: s, Assumed: noun.Assumed(given, s), Seam: s.Waist.Add(s.Ease)}
	least, _ := s.Part.Int(units.Up)
	if int64(s.Pieces) < least {
		a.Fault("pieces", strconv.Itoa(s.Pieces), "at least "+strconv.FormatInt(least, 10)+" (a piece is no more than a circle)", fault.Range)
		return CircleSkirtPlan{}, a.Err(p.Assumed...)
	}
	p.Turn = units.Turns(s.Part.Quo(units.RatioOf(int64(s.Pieces), 1)))
	p.Radius = s.radius(s.Pieces)
	p.Cut = p.Radius.Plus(s.Allowance.Neg())
	p.Chalk = s.chalk(&a, s.Pieces)
	if a.Failed() {
		return CircleSkirtPlan{}, a.Err(p.Assumed...)
	}
	around := units.Turns(s.Part)
	p.CutEdge = units.Exactly(p.Seam.Add(s.within(s.Pieces))).Add(around.Arc(s.Allowance).Neg())
	p.HemLine = around.Arc(s.Length).Plus(p.Seam)
	p.ChalkOuter = p.Chalk.Add(s.depth())
	p.Made = around.Arc(p.Chalk.Add(s.Allowance)).Plus(s.within(s.Pieces).Neg())
	p.Off = p.Made.Neg().Plus(p.Seam)
	p.lay(&a)
	if a.Failed() {
		return CircleSkirtPlan{}, a.Err(p.Assumed...)
	}
	units.Settle(&p.Radius, &p.Cut, &p.CutEdge, &p.HemLine, &p.Made, &p.Off)
	return p, nil
}

// audit looks at each field by itself, and for what is missing.
func (s CircleSkirt) audit(a *fault.Audit) {
	s.Tape.Check(a, "tape")
	a.Need("waist", s.Waist)
	a.NotNegative("ease", s.Ease)
	a.NotNegative("part", s.Part)
	fault.AtMost(a, "part", s.Part, units.RatioOf(MaxCircles, 1), "whole circles", fault.Range)
	if s.Pieces != 0 {
		a.Count("pieces", s.Pieces, 1, MaxGores)
	}
	a.Need("length", s.Length)
	a.NotNegative("hem", s.Hem)
	a.NotNegative("allowance", s.Allowance)
	a.NotNegative("side", s.Side.Or(units.Length{}))
	a.NotNegative("step", s.Step)
	a.NotNegative("width", s.Width)
}

// fill sets what is not given to its default.
func (s *CircleSkirt) fill() {
	s.Tape = noun.Tape(*s)
	if s.Part.IsZero() {
		s.Part = units.RatioOf(1, 1)
	}
	if s.Pieces == 0 {
		n, _ := s.Part.Int(units.Up)
		s.Pieces = int(n)
	}
	fill(&s.Allowance, seamAllowance, s.Tape)
	if s.Side.IsZero() {
		s.Side = units.Give(s.Allowance)
	}
	fill(&s.Step, chalkStep, s.Tape)
}

// within is what the side allowances take out of the circle, where they do.
func (s CircleSkirt) within(pieces int) units.Length {
	if !s.Within {
		return units.Length{}
	}
	return s.Side.Or(units.Length{}).MulInt(2 * int64(pieces))
}

// depth is from the cut waist to the lower edge.
func (s CircleSkirt) depth() units.Length { return units.Sum(s.Allowance, s.Length, s.Hem) }

// radius is that of the waist seam line.
func (s CircleSkirt) radius(pieces int) units.Near {
	return radiusOf(units.Sum(s.Waist, s.Ease, s.within(pieces)).Unscale(s.Part))
}

// radiusOf is the radius of a circle of so much round.
func radiusOf(round units.Length) units.Near {
	perTurn, _ := units.ExactlyRatio(units.RatioOf(1, 2)).Quo(units.Pi()) // pi is not zero
	return perTurn.Of(round)
}

// chalk is the radius to draw the cut waist with.
func (s CircleSkirt) chalk(a *fault.Audit, pieces int) units.Length {
	radius := s.radius(pieces)
	mark, _, err := radius.Plus(s.Allowance.Neg()).Round(s.Step, units.Down)
	if err != nil {
		a.Fault("step", s.Step.String(), "a mark that the radius can be told from", fault.KindOf(err))
	} else if mark.Sign() <= 0 {
		least, _, _ := radius.Round(s.Step, units.Down)
		a.Fault("allowance", s.Allowance.String(), "at most {0} (the radius of the waist, less a mark for the centre)", fault.Range, least.Sub(s.Step).Max(units.Length{}))
	}
	return mark
}

// lay fills what cloth the skirt takes.
func (p *CircleSkirtPlan) lay(a *fault.Audit) {
	s := p.Spec
	if s.Width.IsZero() {
		return
	}
	narrowest := units.Length{}
	for _, parts := range [...]int64{1, 2, 4} {
		n := s.Part.Mul(units.RatioOf(parts, 1))
		pieces, ok := n.Int(units.Down)
		if !ok || !n.IsInt() || pieces > MaxGores {
			continue
		}
		mark := s.chalk(a, int(pieces))
		if a.Failed() {
			return
		}
		side := s.Side.Or(units.Length{})
		if parts == 1 || s.Within {
			side = units.Length{}
		}
		outer := mark.Add(s.depth())
		// A piece lies in a box: short from the centre down, and long.
		short, long := outer.Add(side), outer.Add(side)
		switch parts {
		case 1:
			short, long = outer.MulInt(2), outer.MulInt(2)
		case 2:
			long = outer.MulInt(2)
		}
		if narrowest.IsZero() || short.Less(narrowest) {
			narrowest = short
		}
		best := CircleLay{Pieces: int(pieces)}
		for _, way := range [...][2]units.Length{{short, long}, {long, short}} {
			across, ok := s.Width.Div(way[0]).Int(units.Down)
			if !ok || across > pieces {
				across = pieces
			}
			if across == 0 {
				continue
			}
			rows := (pieces + across - 1) / across
			if cloth := way[1].MulInt(rows); best.Across == 0 || cloth.Less(best.Cloth) {
				best.Across, best.Rows, best.Cloth = int(across), int(rows), cloth
			}
		}
		if best.Across == 0 {
			continue
		}
		radius := s.Width.Sub(side)
		if parts == 1 {
			radius = s.Width.DivInt(2)
		}
		best.Longest = radius.Sub(outer).Add(s.Length)
		p.Lays = append(p.Lays, best)
	}
	if len(p.Lays) == 0 && !narrowest.IsZero() {
		a.Fault("width", s.Width.String(), "at least {0} (the radius of the lower edge, and a seam), or more gores", fault.Range, narrowest)
	}
}
