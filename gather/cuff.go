package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// A Cuff is a straight cuff, folded along its length, and the sleeve that is
// gathered into it. Zero means "not given".
//
// Finished is wrist + ease + lap: it follows from them, or one of them from it and
// the others. Finished may also stand without wrist and ease, for a cuff whose
// wearer is not known.
type Cuff struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Wrist is the girth of the wrist.
	Wrist units.Length `json:"wrist,omitzero"`
	// Ease is what the closed cuff is wider than the wrist.
	Ease units.Length `json:"ease,omitzero"`
	// Lap is what one end laps over the other, 0 in where the ends only meet. May be
	// omitted; it then follows from the rest, or is 0 in.
	Lap units.Given[units.Length] `json:"lap,omitzero"`
	// Finished is the length of the finished cuff, from end to end laid flat.
	Finished units.Length `json:"finished,omitzero"`
	// Depth is the finished depth, from the seam line to the fold.
	Depth units.Length `json:"depth,omitzero"`
	// Allowance is the seam allowance all round. May be omitted; the default is 5/8 in
	// or 1.5 cm.
	Allowance units.Length `json:"allowance,omitzero"`
	// Turned is how much of the inner edge is turned under, at most the allowance. May
	// be omitted; the default is 1/8 in or 3 mm less than that.
	Turned units.Length `json:"turned,omitzero"`
	// Inside is how far the gathering row lies from the seam line, inside the
	// allowance. May be omitted; the default is 1/8 in or 3 mm.
	Inside units.Length `json:"inside,omitzero"`
	// Sleeve is the bottom of the sleeve along the seam line, as sewn, from one
	// finished edge of the slit to the other.
	Sleeve units.Length `json:"sleeve,omitzero"`
	// Flat is what stays ungathered at each edge of the slit. May be omitted; the
	// default is 0.
	Flat units.Length `json:"flat,omitzero" noun:"zero"`
	// Setting is how the cuff meets the slit. It must be given.
	Setting Setting `json:"setting,omitzero"`
	// Parts is how many equal parts are marked on sleeve and cuff, 1 to 1000. May be
	// omitted; the default is 4.
	Parts int `json:"parts,omitzero"`
}

// A CuffPlan is what a cuff comes to.
type CuffPlan struct {
	Spec      Cuff         `json:"spec,omitzero"`      // as solved
	Assumed   []string     `json:"assumed,omitzero"`   // the fields filled with a default
	Finished  units.Length `json:"finished,omitzero"`  // length of the finished cuff
	CutLength units.Length `json:"cutLength,omitzero"` // length as cut: finished and an allowance at each end
	CutDepth  units.Length `json:"cutDepth,omitzero"`  // depth as cut, before it is folded: twice depth and allowance
	Onto      units.Length `json:"onto,omitzero"`      // the part of the cuff that the sleeve goes on
	Gathered  units.Length `json:"gathered,omitzero"`  // the part of the sleeve that is gathered: sleeve less what stays flat
	Into      units.Length `json:"into,omitzero"`      // the part of the cuff that takes the gathers: onto less what stays flat
	Fullness  units.Ratio  `json:"fullness,omitzero"`  // gathered over into
	Overall   units.Ratio  `json:"overall,omitzero"`   // sleeve over onto; equal to fullness where nothing stays flat
	Row       units.Length `json:"row,omitzero"`       // gathering row, from the raw edge of the sleeve
	Past      units.Length `json:"past,omitzero"`      // how far the turned inner edge reaches past the seam line, where it is caught; zero: felled by hand
	Marks     []Mark       `json:"marks,omitzero"`     // the marks between the equal parts of what is gathered: on the sleeve from the finished edge of the slit, on the cuff from the finished end that has no extension
}

// Plan works out the cuff. The faults are [fault.Faults].
func (c Cuff) Plan() (CuffPlan, error) {
	var a fault.Audit
	c.audit(&a)
	if a.Failed() {
		return CuffPlan{}, a.Err()
	}
	c.solveGirth(&a)
	if c.Setting == Extended && c.lap().IsZero() && !a.Failed() {
		a.Fault("lap", "", "more than 0 in (an extended end stands out by it)", fault.Missing)
	}
	given := c
	c.Tape = noun.Tape(c)
	past := usual(foldPast, c.Tape).Length
	fill(&c.Allowance, seamAllowance, c.Tape)
	if c.Turned.IsZero() {
		c.Turned = c.Allowance.Sub(past)
	}
	fill(&c.Inside, rowInside, c.Tape)
	fillCount(&c.Parts, quarters)
	p := CuffPlan{Assumed: noun.Assumed(given, c)}
	switch {
	case c.Turned.Sign() <= 0:
		a.Fault("allowance", c.Allowance.String(), "more than {0} (the turned edge passes the seam by as much)", fault.Range, past)
	case c.Allowance.Cmp(c.Inside) <= 0:
		a.Fault("allowance", c.Allowance.String(), "more than {0} (inside)", fault.Range, c.Inside)
	}
	fault.AtMost(&a, "turned", c.Turned, c.Allowance, "allowance, or the seam would show", fault.Range)
	if a.Failed() {
		return CuffPlan{}, a.Err(p.Assumed...)
	}
	flat := c.Flat.MulInt(2)
	p.Spec = c
	p.Finished, p.Onto = c.Finished, c.Finished
	p.CutLength = c.Finished.Add(c.Allowance.MulInt(2))
	p.CutDepth = c.Depth.Add(c.Allowance).MulInt(2)
	p.Row = c.Allowance.Sub(c.Inside)
	p.Past = c.Allowance.Sub(c.Turned)
	if c.Setting == Extended {
		p.Onto = c.Finished.Sub(c.lap())
	}
	p.Gathered, p.Into = c.Sleeve.Sub(flat), p.Onto.Sub(flat)
	fault.AtLeast(&a, "sleeve", c.Sleeve, p.Onto, "the part of the cuff it goes on", fault.Range)
	if p.Into.Sign() <= 0 {
		a.Fault("flat", c.Flat.String(), "less than {0} (half the part of the cuff it goes on)", fault.Range, p.Onto.DivInt(2))
	}
	if a.Failed() {
		return CuffPlan{}, a.Err(p.Assumed...)
	}
	p.Fullness, p.Overall = p.Gathered.Div(p.Into), c.Sleeve.Div(p.Onto)
	p.Marks = divide(p.Gathered, p.Into, c.Parts, c.Flat)
	return p, nil
}

// audit looks at each field by itself, and for what is missing.
func (c Cuff) audit(a *fault.Audit) {
	c.Tape.Check(a, "tape")
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
	settings.Check(a, "setting", c.Setting)
	if c.Parts != 0 {
		a.Count("parts", c.Parts, 1, MaxParts)
	}
}

// lap is the lap given, or 0 in.
func (c Cuff) lap() units.Length { return c.Lap.Or(units.Length{}) }

// solveGirth fills whichever of wrist, ease, lap and finished follows. Something
// must be left for the wrist and for its ease.
func (c *Cuff) solveGirth(a *fault.Audit) {
	_, given := c.Lap.Get()
	sum := units.Sum(c.Wrist, c.Ease, c.lap())
	rest := c.Finished.Sub(sum)
	refuse := func(limit string, kind fault.Kind) { a.Fault("finished", c.Finished.String(), limit, kind, sum) }
	switch {
	case c.Finished.IsZero():
		c.Finished, c.Lap = sum, units.Give(c.lap())
	case c.Wrist.IsZero() && c.Ease.IsZero():
		if rest.Sign() <= 0 {
			a.Fault("lap", c.lap().String(), "less than {0} (finished)", fault.Range, c.Finished)
		}
	case c.Wrist.IsZero():
		if c.Wrist = rest; rest.Sign() <= 0 {
			refuse("more than {0} (ease + lap, or nothing is left for the wrist)", fault.Range)
		}
	case c.Ease.IsZero():
		if c.Ease = rest; rest.Sign() <= 0 {
			refuse("more than {0} (wrist + lap, or nothing is left for ease)", fault.Range)
		}
	case !given && rest.Sign() >= 0:
		c.Lap = units.Give(rest)
	case !given:
		refuse("{0} (wrist + ease) or more", fault.Conflict)
	case !rest.IsZero():
		refuse("{0} (wrist + ease + lap)", fault.Conflict)
	}
}
