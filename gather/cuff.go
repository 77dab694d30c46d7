package gather

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// A Cuff is a straight cuff, folded along its length, and the sleeve that is
// gathered into it. Zero means not given.
//
// Finished is Wrist + Ease + Lap: it follows from them, or one of them from it
// and the others. Wrist and Ease are more than zero. Finished may also stand
// without both, for a cuff whose wearer is not known.
type Cuff struct {
	Wrist units.Length `json:"wrist,omitzero"` // girth of the wrist
	Ease  units.Length `json:"ease,omitzero"`  // what the closed cuff is wider than the wrist
	// Lap is what one end laps over the other, 0 in where the ends only meet. May be
	// omitted; it then follows from the rest, or is 0 in.
	Lap       units.Given[units.Length] `json:"lap,omitzero"`
	Finished  units.Length              `json:"finished,omitzero"`         // length of the finished cuff, from end to end laid flat
	Depth     units.Length              `json:"depth,omitzero"`            // finished depth, from the seam line to the fold
	Allowance units.Length              `json:"allowance,omitzero"`        // seam allowance all round; default 5/8 in, common practice
	Turned    units.Length              `json:"turned,omitzero"`           // how much of the inner edge is turned under; at most Allowance; default 1/8 in less than it, common practice
	Inside    units.Length              `json:"inside,omitzero"`           // how far the gathering row lies from the seam line, inside the allowance; default 1/8 in
	Sleeve    units.Length              `json:"sleeve,omitzero"`           // bottom of the sleeve along the seam line, as sewn, from one finished edge of the slit to the other
	Flat      units.Length              `json:"flat,omitzero" noun:"zero"` // kept flat, ungathered, at each edge of the slit; zero is an answer
	Setting   Setting                   `json:"setting,omitzero"`          // how the cuff meets the slit; must be given
	Parts     int                       `json:"parts,omitzero"`            // equal parts marked on sleeve and cuff, 1 to MaxParts; default 4, common practice
}

// A CuffPlan is what a cuff comes to.
type CuffPlan struct {
	Spec      Cuff          `json:"spec,omitzero"`      // as solved
	Assumed   ticket.Fields `json:"assumed,omitzero"`   // the fields filled with a default
	Finished  units.Length  `json:"finished,omitzero"`  // length of the finished cuff
	CutLength units.Length  `json:"cutLength,omitzero"` // length as cut: Finished and an allowance at each end
	CutDepth  units.Length  `json:"cutDepth,omitzero"`  // depth as cut, before it is folded: twice Depth and Allowance
	Onto      units.Length  `json:"onto,omitzero"`      // the part of the cuff that the sleeve goes on
	Gathered  units.Length  `json:"gathered,omitzero"`  // the part of the sleeve that is gathered: Sleeve less what stays flat
	Into      units.Length  `json:"into,omitzero"`      // the part of the cuff that takes the gathers: Onto less what stays flat
	Fullness  units.Ratio   `json:"fullness,omitzero"`  // Gathered over Into
	Overall   units.Ratio   `json:"overall,omitzero"`   // Sleeve over Onto; equal to Fullness where nothing stays flat
	Row       units.Length  `json:"row,omitzero"`       // gathering row, from the raw edge of the sleeve
	Past      units.Length  `json:"past,omitzero"`      // how far the turned inner edge reaches past the seam line, where it is caught; zero: felled by hand
}

// Solve fills what follows from the fields given, and the defaults. It fails
// where [Cuff.Plan] does, and then returns c as it is.
func (c Cuff) Solve() (Cuff, error) {
	p, err := c.Plan()
	if err != nil {
		return c, err
	}
	return p.Spec, nil
}

// Plan works out the cuff. The faults are [fault.Faults].
func (c Cuff) Plan() (CuffPlan, error) {
	var a fault.Audit
	c.check(&a)
	if a.Failed() {
		return CuffPlan{}, a.Err()
	}
	var names assumed
	c.solveGirth(&a)
	if c.Setting == Extended && c.lap().IsZero() && !a.Failed() {
		a.Fault("lap", "", "more than 0 in (an extended end stands out by it)", fault.Missing)
	}
	if c.Allowance.IsZero() {
		c.Allowance = defaultAllowance()
		names.add("allowance")
	}
	if c.Turned.IsZero() {
		c.Turned = c.Allowance.Sub(defaultPast())
		names.add("turned")
	}
	if c.Inside.IsZero() {
		c.Inside = defaultInside()
		names.add("inside")
	}
	if c.Parts == 0 {
		c.Parts = defaultParts
		names.add("parts")
	}
	switch {
	case c.Turned.Sign() <= 0:
		a.Fault("allowance", c.Allowance.String(), "more than "+defaultPast().String()+" (the turned edge passes the seam by as much)", fault.Range)
	case c.Allowance.Cmp(c.Inside) <= 0:
		a.Fault("allowance", c.Allowance.String(), "more than "+c.Inside.String()+" (inside)", fault.Range)
	}
	fault.AtMost(&a, "turned", c.Turned, c.Allowance, "allowance, or the seam would show", fault.Range)
	if a.Failed() {
		return CuffPlan{}, a.Err()
	}
	p := CuffPlan{
		Spec:      c,
		Finished:  c.Finished,
		CutLength: c.Finished.Add(c.Allowance.MulInt(2)),
		CutDepth:  c.Depth.Add(c.Allowance).MulInt(2),
		Onto:      c.Finished,
		Row:       c.Allowance.Sub(c.Inside),
		Past:      c.Allowance.Sub(c.Turned),
	}
	if c.Setting == Extended {
		p.Onto = c.Finished.Sub(c.lap())
	}
	flat := c.Flat.MulInt(2)
	p.Gathered, p.Into = c.Sleeve.Sub(flat), p.Onto.Sub(flat)
	if c.Sleeve.Less(p.Onto) {
		a.Fault("sleeve", c.Sleeve.String(), p.Onto.String()+" or more (the part of the cuff it goes on)", fault.Range)
	}
	if p.Into.Sign() <= 0 {
		a.Fault("flat", c.Flat.String(), "less than "+p.Onto.DivInt(2).String()+" (half the part of the cuff it goes on)", fault.Range)
	}
	if a.Failed() {
		return CuffPlan{}, a.Err()
	}
	p.Fullness, p.Overall = p.Gathered.Div(p.Into), c.Sleeve.Div(p.Onto)
	p.Assumed = names.fields()
	return p, nil
}

// check looks at each field by itself, and for what is missing.
func (c Cuff) check(a *fault.Audit) {
	if c.Finished.IsZero() {
		a.Need("wrist", c.Wrist)
		a.Need("ease", c.Ease)
	} else {
		a.NotNegative("wrist", c.Wrist)
		a.NotNegative("ease", c.Ease)
	}
	a.NotNegative("lap", c.lap())
	if c.Setting == Extended && c.lap().IsZero() && (c.Finished.IsZero() || c.Wrist.IsZero() || c.Ease.IsZero()) {
		a.Fault("lap", "", "more than 0 in (an extended end stands out by it)", fault.Missing)
	}
	a.NotNegative("finished", c.Finished)
	a.Need("depth", c.Depth)
	a.NotNegative("allowance", c.Allowance)
	a.NotNegative("turned", c.Turned)
	a.NotNegative("inside", c.Inside)
	a.Need("sleeve", c.Sleeve)
	a.NotNegative("flat", c.Flat)
	switch {
	case c.Setting == NoSetting:
		a.Fault("setting", "", "flush or extended", fault.Missing)
	case c.Setting > Extended:
		a.Fault("setting", c.Setting.String(), "flush or extended", fault.Unknown)
	}
	if c.Parts != 0 {
		a.Count("parts", c.Parts, 1, MaxParts)
	}
}

// lap is the lap given, or 0 in.
func (c Cuff) lap() units.Length { return c.Lap.Or(units.Length{}) }

// solveGirth fills whichever of Wrist, Ease, Lap and Finished follows. Something
// must be left for the wrist and for its ease.
func (c *Cuff) solveGirth(a *fault.Audit) {
	_, given := c.Lap.Get()
	sum := units.Sum(c.Wrist, c.Ease, c.lap())
	rest := c.Finished.Sub(sum)
	more := func(what string) {
		a.Fault("finished", c.Finished.String(), "more than "+sum.String()+" ("+what+")", fault.Range)
	}
	switch {
	case c.Finished.IsZero():
		c.Finished, c.Lap = sum, units.Give(c.lap())
	case c.Wrist.IsZero() && c.Ease.IsZero():
		if rest.Sign() <= 0 {
			a.Fault("lap", c.lap().String(), "less than "+c.Finished.String()+" (finished)", fault.Range)
		}
	case c.Wrist.IsZero():
		if c.Wrist = rest; rest.Sign() <= 0 {
			more("ease + lap, or nothing is left for the wrist")
		}
	case c.Ease.IsZero():
		if c.Ease = rest; rest.Sign() <= 0 {
			more("wrist + lap, or nothing is left for ease")
		}
	case !given && rest.Sign() >= 0:
		c.Lap = units.Give(rest)
	case !given:
		a.Fault("finished", c.Finished.String(), sum.String()+" (wrist + ease) or more", fault.Conflict)
	case !rest.IsZero():
		a.Fault("finished", c.Finished.String(), sum.String()+" (wrist + ease + lap)", fault.Conflict)
	}
}

// Quarters yields the marks that sleeve and cuff are pinned together by: the
// first place on the sleeve, from the finished edge of the slit, the second on
// the cuff, from the finished end that has no extension. The part between the
// flat stretches is divided, so that the gathers are even. The two ends of that
// part are not among the marks.
func (p CuffPlan) Quarters() iter.Seq2[units.Length, units.Length] {
	return pairs(p.Gathered, p.Spec.Parts, p.Spec.Flat, p.Spec.Flat, p.Fullness)
}
