package yardage

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxSide is the greatest number of steps in the side of a square for bias.
const MaxSide = 1_000_000

// A Bias is a continuous bias strip cut from a square of cloth: the square is cut
// from corner to corner, joined to a slanted piece, joined again to a tube and
// cut round and round. Of Square and Wanted one is needed; Wanted gives the
// least Square. Given both, the square must be big enough.
type Bias struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape   units.Tape   `json:"tape,omitzero"`
	Strip  units.Length `json:"strip,omitzero"`  // the width of the strip as cut, square to its edge
	Wanted units.Length `json:"wanted,omitzero"` // the length of strip wanted, before its ends are joined
	Square units.Length `json:"square,omitzero"` // the side of the square, as cut
	// Seam is the allowance of the two joins. May be omitted; the default is 1/4 in, or 6 mm
	// on a metric tape.
	Seam units.Length `json:"seam,omitzero"`
	// Step is the mark the side goes up to where it follows from wanted. May be omitted; the
	// default is 1 in, or 1 cm on a metric tape. Given with square, square lies on it.
	Step units.Length `json:"step,omitzero"`
}

// A BiasPlan is the square and what it yields.
type BiasPlan struct {
	Spec       Bias         `json:"spec,omitzero"`       // as solved
	Assumed    []string     `json:"assumed,omitzero"`    // the fields filled with a default
	ByArea     units.Length `json:"byArea,omitzero"`     // Square x Square / Strip: more than any square yields
	Length     units.Length `json:"length,omitzero"`     // Square x (Square - 4 Seam) / Strip: what is left of it by the two joins, to be taken as about
	Spare      units.Length `json:"spare,omitzero"`      // Length less Wanted; zero if Wanted is not given
	SideByArea units.Length `json:"sideByArea,omitzero"` // the side that the rule of area alone asks; in steps; zero without Wanted or Step
}

// yield is the length of strip in a square of the side given.
func (s Bias) yield(square, seam units.Length) units.Length {
	return square.Times(square.Sub(seam.MulInt(4))).Over(s.Strip)
}

// floor is the least side there is. The second join is in a piece as high as the
// square less the first join, and one turn of the tube must hold at least the strip
// itself.
func (s Bias) floor(seam units.Length) units.Length { return seam.MulInt(4).Add(s.Strip) }

// least is the least whole number of steps whose square yields Wanted, if MaxSide
// of them or fewer do.
func (s Bias) least(seam units.Length) (units.Length, bool) {
	floor := s.floor(seam)
	enough := func(n int64) bool {
		q := s.Step.MulInt(n)
		return !q.Less(floor) && !s.yield(q, seam).Less(s.Wanted)
	}
	// Doubling first keeps the areas small.
	low, high := int64(1), int64(1)
	for !enough(high) {
		if high == MaxSide {
			return units.Length{}, false
		}
		low, high = high+1, min(2*high, MaxSide)
	}
	for low < high {
		if mid := (low + high) / 2; enough(mid) {
			high = mid
		} else {
			low = mid + 1
		}
	}
	return s.Step.MulInt(low), true
}

func (s Bias) audit(a *fault.Audit) {
	s.Tape.Check(a, "tape")
	a.Need("strip", s.Strip)
	a.NotNegative("wanted", s.Wanted)
	if a.NotNegative("square", s.Square); s.Square.IsZero() && s.Wanted.IsZero() {
		a.Fault("square", "", "more than 0 in, or wanted", fault.Missing)
	}
	a.NotNegative("seam", s.Seam)
	switch {
	case !s.Step.IsZero() && s.Wanted.IsZero():
		a.Fault("step", s.Step.String(), "none without wanted", fault.Unused)
	case s.Step.Sign() > 0 && s.Square.Sign() > 0 && !s.Square.IsMultiple(s.Step):
		a.Fault("step", s.Step.String(), "a mark that "+s.Square.String()+" (square) lies on", fault.Conflict)
	default:
		a.NotNegative("step", s.Step)
	}
}

// beyond records a side of more than MaxSide steps.
func (s Bias) beyond(a *fault.Audit, assumed bool) {
	longest := s.Step.MulInt(MaxSide)
	steps := ticket.Of(MaxSide).String() + " steps in the side"
	if floor := s.floor(s.Seam).Max(s.Square); longest.Less(floor) {
		got := s.Step.String()
		if assumed {
			got += ", assumed"
		}
		a.Fault("step", got, "at least "+floor.DivInt(MaxSide).String()+" ("+steps+")", fault.Range)
		longest = floor
	}
	fault.AtMost(a, "wanted", s.Wanted, s.yield(longest, s.Seam), "what a square yields with "+steps, fault.Range)
}

// short records a square that yields less than Wanted.
func (s Bias) short(a *fault.Audit, yields units.Length) {
	limit := "wanted at most " + yields.String() + ", which this yields"
	if s.Step.IsZero() {
		s.Step = biasStep(s.Tape)
	}
	if q, ok := s.least(s.Seam); ok {
		limit = "at least " + q.String() + " in steps of " + s.Step.String() + ", or " + limit
	}
	a.Fault("square", s.Square.String(), limit, fault.Conflict)
}

func biasStep(t units.Tape) units.Length {
	return t.Of(units.Inch.Of(1), units.Centimetre.Of(1))
}

// Plan works out the square and what it yields.
func (s Bias) Plan() (BiasPlan, error) {
	var a fault.Audit
	if s.audit(&a); a.Failed() {
		return BiasPlan{}, a.Err()
	}
	var p BiasPlan
	given := s
	s.Tape = noun.Tape(s)
	if s.Seam.IsZero() {
		s.Seam = s.Tape.Of(units.Inch.Frac(1, 4), units.Millimetre.Of(6))
	}
	if s.Square.IsZero() && s.Step.IsZero() {
		s.Step = biasStep(s.Tape)
	}
	p.Assumed = noun.Assumed(given, s)
	if !s.Step.IsZero() {
		ok := !s.Step.MulInt(MaxSide).Less(s.Square)
		if s.Square.IsZero() {
			s.Square, ok = s.least(s.Seam)
		}
		if !ok {
			s.beyond(&a, slices.Contains(p.Assumed, "step"))
			return BiasPlan{}, a.Err()
		}
		p.SideByArea, _ = s.least(units.Length{})
	}
	if low := s.floor(s.Seam); s.Square.Less(low) {
		a.Fault("square", s.Square.String(), "at least "+low.String()+" (four seams and the strip)", fault.Range)
		return BiasPlan{}, a.Err()
	}
	p.Spec = s
	p.ByArea = s.yield(s.Square, units.Length{})
	p.Length = s.yield(s.Square, s.Seam)
	if !s.Wanted.IsZero() {
		if p.Spare = p.Length.Sub(s.Wanted); p.Spare.Sign() < 0 {
			s.short(&a, p.Length)
			return BiasPlan{}, a.Err()
		}
	}
	return p, nil
}

// Along is what one strip takes along the straight edge of the cloth: Strip times
// the root of 2, since the strip lies at 45 degrees to it.
func (p BiasPlan) Along() units.Near { return units.Diagonal().Of(p.Spec.Strip) }

// Diagonal is the corner to corner of the square, the longest single strip in it.
func (p BiasPlan) Diagonal() units.Near { return units.Diagonal().Of(p.Spec.Square) }

// Sheet is the working, and how the strip is made.
func (p BiasPlan) Sheet() ticket.Sheet {
	s := p.Spec
	area := ticket.Square(s.Square.Times(s.Square))
	short := s.Square.Sub(s.Seam.MulInt(4))
	sh := ticket.Sheet{Title: "Continuous bias from a square", Assumed: p.Assumed}
	if !s.Square.IsZero() {
		sh.Answer = []ticket.Line{{Label: "a square of", Result: ticket.Long(s.Square)}, {Label: "yields about", Result: ticket.Long(p.Length)}}
	}
	sh.Lines = append(make([]ticket.Line, 0, 5),
		line("by area, more than it yields", ticket.Long(p.ByArea), ticket.Term{Amount: area, Name: "square"}, overLong(s.Strip, "strip")),
		line("side less four seams", ticket.Long(short), long(s.Square, "side"), less(s.Seam, "seam"), less(s.Seam, "seam"), less(s.Seam, "seam"), less(s.Seam, "seam")),
		line("with the two joins, about", ticket.Long(p.Length), long(s.Square, "side"), byLong(short, "side less four seams"), overLong(s.Strip, "strip")))
	if !s.Wanted.IsZero() {
		sh.Lines = append(sh.Lines, line("spare", ticket.Long(p.Spare), long(p.Length, "about"), less(s.Wanted, "wanted")))
	}
	mark := ticket.Step{Do: "Rule lines parallel to the bias edges", At: ticket.Long(s.Strip), From: "the bias edge, square to it",
		Note:  "measured along the straight edge the lines are farther apart than the strip is wide",
		Check: ticket.Check{What: "line to line along the straight edge", Want: ticket.About(p.Along()), Mend: "rule again from the bias edge"}}
	sh.Steps = []ticket.Step{
		{Do: "Cut a true square on the straight grain", At: ticket.Long(s.Square), From: "each edge to the one opposite"},
		{Do: "Cut it corner to corner and join two straight edges", Together: ticket.RightTogether, At: ticket.Long(s.Seam), From: "the raw edge", Press: "open"},
		mark,
		{Do: "Join the other straight edges to a tube, one line farther on at the start", Together: ticket.RightTogether, At: ticket.Long(s.Seam), From: "the raw edge", Press: "open"},
		{Do: "Cut along the line, round and round",
			Check: ticket.Check{What: "length of strip, about", Want: ticket.Long(p.Length), Mend: "the last part of a turn is narrower than the strip and is cut off"}},
	}
	sh.Cautions = []ticket.Caution{{Text: "The figure by area is never reached: two joins and the last part of a turn come off it.", Refer: "the cut strip decides"}, ticket.CutCare(), ticket.IronCare()}
	sh.Sources = append(make([]source.Cite, 0, 3),
		source.Cite{For: "the figure by area", ID: srcBiasPage, Known: source.Read},
		source.Cite{For: "that a square yields less than its area", ID: srcContinuousBias, Known: source.Read})
	if slices.Contains(p.Assumed, "seam") || slices.Contains(p.Assumed, "step") {
		sh.Sources = append(sh.Sources, source.Practise("the seam and the step assumed"))
	}
	return sh
}
