package hem

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// A solver is a hem being solved: the tape that its defaults follow, what is wrong, and
// what was given.
type solver struct {
	tape  units.Tape
	audit fault.Audit
	was   map[string]units.Length // the lengths as given
}

func (v *solver) missing(path, limit string) { v.audit.Fault(path, "", limit, fault.Missing) }

// plan works out a hem of any kind: first what follows from what is given, then the
// defaults, and what is wrong with both.
func plan[S Hem, P interface {
	*S
	tape() *units.Tape
	derive()
	solve(*solver)
	check(*solver)
}](s S) (Plan, error) {
	var v solver
	v.each(s)
	if v.audit.Failed() {
		return Plan{}, v.audit.Err()
	}
	v.tape = noun.Tape(s)
	P(&s).derive()
	derived := s
	*P(&s).tape() = v.tape
	P(&s).solve(&v)
	P(&s).check(&v)
	if e := s.edge(); e.edges == 0 && !e.slope.IsZero() {
		v.missing("edges", "1 to "+strconv.Itoa(MaxEdges)+", since slope is given")
	}
	p := Plan{Spec: Any{s}, Assumed: noun.Assumed(derived, s)}
	if !v.audit.Failed() {
		p.fill(&v)
	}
	if v.audit.Failed() {
		return Plan{}, fault.InOrder(v.audit.Err(p.Assumed...), noun.Keys(s))
	}
	s.answer(&p)
	p.LineToStitch = p.Drift.Sub(p.FinishedToStitch)
	p.Fullness, p.Lack, p.Round = p.Fullness.Settled(), p.Lack.Settled(), p.Round.Settled()
	return p, nil
}

// each looks at every field of a hem by itself.
func (v *solver) each(s Hem) {
	v.was = map[string]units.Length{}
	for key, value := range noun.Values(s) {
		switch x := value.(type) {
		case units.Length:
			v.audit.NotNegative(key, x)
			v.was[key] = x
		case int:
			if x != 0 {
				v.audit.Count(key, x, 1, MaxEdges)
			}
		case units.Tape:
			x.Check(&v.audit, key)
		case units.Angle:
			v.angle(key, x)
		}
	}
}

// angle looks at a slope, which must have a tangent in numbers, or at what an edge turns
// through, which must be a part of a turn in numbers.
func (v *solver) angle(key string, x units.Angle) {
	got := x.String()
	turns, exact := x.InTurns().Exact()
	switch {
	case key == "slope":
		if x.Sign() < 0 {
			x = x.Neg()
		}
		side, err := x.Cmp(units.Turns(units.RatioOf(1, 4)))
		if _, exact = tangent(x); !exact || err != nil || side >= 0 {
			v.audit.Fault(key, got, "a slope, as in slope 1/8, or 45 deg", fault.Range)
		}
	case x.Sign() < 0:
		v.audit.Fault(key, got, "0 deg or more", fault.Sign)
	case !exact:
		v.audit.Fault(key, got, "a part of a turn, as in 90 deg or 1/4 turn", fault.Range)
	case units.RatioOf(MaxCircle, 1).Less(turns):
		v.audit.Fault(key, got, "at most "+strconv.Itoa(MaxCircle)+" turns", fault.Range)
	}
}

// fill fills the plan of a solved hem with what all kinds answer, and looks for an edge of
// which nothing would be left.
func (p *Plan) fill(v *solver) {
	s, e := p.Spec, p.Spec.edge()
	a := s.Allowed()
	p.Taken = s.taken()
	p.Drift, p.CutOff, p.LineToRaw = a.Cut.Sub(p.Taken), a.Drafted.Sub(a.Cut), a.Cut
	reach := s.reach()
	p.Inset = reach.Scale(e.slope)
	p.Excess = p.Inset.MulInt(int64(e.edges))
	lose, gain, reach := e.bends(reach)
	p.Fullness, p.Lack = arc(lose, reach), arc(gain, reach)
	if p.Excess.Sign() > 0 {
		p.Fullness = p.Fullness.Plus(p.Excess)
	} else {
		p.Lack = p.Lack.Plus(p.Excess.Neg())
	}
	p.SweepDrift = p.Drift.Scale(e.slope).MulInt(int64(e.edges))
	if s.Slit() {
		p.SweepDrift = p.Drift.MulInt(2)
	}
	if !e.radius.IsZero() {
		p.Round = arc(e.circle, e.radius.Add(p.Drift))
	}
	if e.sweep.IsZero() {
		return
	}
	p.Swept = e.sweep.Add(p.SweepDrift)
	p.Run = p.Swept
	curves := arc(e.circle.Sub(e.hollow), p.Drift)
	p.Round = curves.Plus(p.Swept)
	if p.Swept.Sign() <= 0 {
		v.audit.Fault("sweep", e.sweep.String(), "more than {0}, which the hem takes from it", fault.Range, p.SweepDrift.Neg())
	} else if lo, _ := p.Round.Bounds(); lo.Sign() <= 0 {
		v.audit.Fault("sweep", e.sweep.String(), "more than {0}, which the hem takes from it round its curves", fault.Range, curves.Plus(p.SweepDrift).Neg().Settled())
	}
}

// bends are the curves round which the turned cloth is too long, and those round which it
// is too short, and by how much the radius of it differs. What is laid on the outside, as
// a binding is, has them the other way round.
func (e edge) bends(reach units.Length) (lose, gain units.Ratio, by units.Length) {
	if reach.Sign() < 0 {
		return e.hollow, e.circle, reach.Neg()
	}
	return e.circle, e.hollow, reach
}

// arc is the length along a part of a circle.
func arc(part units.Ratio, radius units.Length) units.Near {
	if part.IsZero() || radius.IsZero() {
		return units.Near{}
	}
	return units.Pi().Of(radius).Scale(part).MulInt(2)
}
