package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// A Dart is a straight dart that runs from an edge to one point: a wedge folded
// down the middle and stitched along its legs. Zero means not given. Its length
// is given along the centre line or along a leg; given both ways it must agree.
type Dart struct {
	Length    units.Length // along the centre line, from the drawn point to the cut edge, square to it; or give Leg
	Leg       units.Length // along either leg, from the point to the cut edge, both legs trued to this; or give Length
	Width     units.Length // straight across between the ends of the legs, at the cut edge
	Allowance units.Length // of the seam that crosses the legs, from the cut edge; default 5/8 in, [Standard]
	Stop      units.Length // how far short of the drawn point the stitching ends, the legs redrawn to there; zero: at the point; with Length only
	Trim      units.Length // what is left beyond the stitching, at the seam line; zero: the fold is not cut
	Across    bool         // it lies across the body and is pressed down; else it is upright and pressed to the centre
}

// A DartPlan is what a dart comes to. Where Length is given all but Leg are
// exact; where only Leg is given they are irrational as a rule. It is comparable.
type DartPlan struct {
	Spec    Dart          // as solved
	Assumed ticket.Fields // the fields of Spec filled with a default

	Centre units.Near // the centre line, from where the stitching ends to the cut edge
	Leg    units.Near // either leg, between the same
	Sewn   units.Near // the centre line, from where the stitching ends to the seam line

	// AtSeam is what the dart takes from the seam line that crosses it, both
	// halves together: less than Width, which is measured at the cut edge.
	AtSeam units.Near
	Half   units.Near // half of AtSeam: each leg from the fold, at the seam line
}

// Solve fills in the default. The faults are [ticket.Faults].
func (d Dart) Solve() (Dart, error) {
	d, _, err := d.solve()
	return d, err
}

func (d Dart) solve() (Dart, ticket.Fields, error) {
	var a ticket.Audit
	if d.Length.IsZero() && d.Leg.IsZero() {
		a.Fault("Length", "", "more than 0 in, or Leg", ticket.ErrMissing)
	}
	a.NotNegative("Length", d.Length)
	a.NotNegative("Leg", d.Leg)
	a.Need("Width", d.Width)
	a.NotNegative("Allowance", d.Allowance)
	a.NotNegative("Stop", d.Stop)
	if d.Length.IsZero() && !d.Leg.IsZero() && d.Stop.Sign() > 0 {
		a.Fault("Stop", d.Stop.String(), "none where only Leg is given", ticket.ErrUnused)
	}
	a.NotNegative("Trim", d.Trim)
	if a.Failed() {
		return d, "", a.Err()
	}
	var assumed ticket.Fields
	if d.Allowance.IsZero() {
		d.Allowance = Standard()
		assumed = "Allowance"
	}
	return d, assumed, nil
}

// Plan works out the dart. The faults are [ticket.Faults]; a square root too
// large to be enclosed is [units.ErrBound].
func (d Dart) Plan() (DartPlan, error) {
	d, assumed, err := d.solve()
	if err != nil {
		return DartPlan{}, err
	}
	p := DartPlan{Spec: d, Assumed: assumed}
	drawn := d.Length.Times(d.Length) // the square of the centre line as drawn
	var a ticket.Audit
	half := d.Width.DivInt(2)
	longest, path := d.Length, "Length"
	if !d.Leg.IsZero() {
		square := d.Leg.Times(d.Leg).Sub(half.Times(half))
		switch {
		case square.Sign() <= 0:
			a.Fault("Leg", d.Leg.String(), "more than "+half.String()+" (half of Width)", ticket.ErrRange)
		case d.Length.IsZero():
			drawn, longest, path = square, d.Leg, "Leg"
		case square != drawn:
			a.Fault("Leg", d.Leg.String(), "none, or the leg that Length "+d.Length.String()+" and Width "+d.Width.String()+" make", ticket.ErrConflict)
		}
	}
	gone := d.Allowance.Add(d.Stop)
	if !a.Failed() && drawn.Cmp(gone.Times(gone)) <= 0 {
		a.Fault(path, longest.String(), "a centre line of more than "+gone.String()+" (Allowance and Stop)", ticket.ErrRange)
	}
	if a.Failed() {
		return DartPlan{}, a.Err()
	}
	if err := p.measure(); err != nil {
		a.Fault(path, longest.String(), "a length whose square root can be enclosed", err)
		return DartPlan{}, a.Err()
	}
	if over, err := units.Exactly(d.Trim).Cmp(p.Half); err != nil || over >= 0 {
		a.Fault("Trim", d.Trim.String(), "less than "+p.Half.String()+" (the fold beyond the stitching, at the seam line)", ticket.ErrRange)
		return DartPlan{}, a.Err()
	}
	return p, nil
}

// square is the square of the centre line as sewn, to the cut edge.
func (d Dart) square() units.Area {
	if !d.Length.IsZero() {
		c := d.Length.Sub(d.Stop)
		return c.Times(c)
	}
	half := d.Width.DivInt(2)
	return d.Leg.Times(d.Leg).Sub(half.Times(half))
}

// measure fills the plan once the dart is known to be one.
func (p *DartPlan) measure() error {
	d := p.Spec
	square := d.square()
	if !d.Length.IsZero() {
		p.Centre = units.Exactly(d.Length.Sub(d.Stop))
	} else {
		c, err := units.Sqrt(square, units.Length{})
		if err != nil {
			return err
		}
		p.Centre = c
	}
	if !d.Leg.IsZero() && d.Stop.IsZero() {
		p.Leg = units.Exactly(d.Leg)
	} else {
		half := d.Width.DivInt(2)
		leg, err := units.Sqrt(square.Add(half.Times(half)), units.Length{})
		if err != nil {
			return err
		}
		p.Leg = leg
	}
	p.Sewn = p.Centre.Plus(d.Allowance.Neg())
	p.AtSeam = units.Exactly(d.Width).Sub(p.share(d.Allowance))
	p.Half = p.AtSeam.DivInt(2)
	return nil
}

// share is how wide the dart is at h from where its stitching ends: Width x h /
// Centre, with Centre brought out of the denominator.
func (p DartPlan) share(h units.Length) units.Near {
	if c, ok := p.Centre.Exact(); ok {
		return units.Exactly(p.Spec.Width.Scale(h.Div(c)))
	}
	return p.Centre.Scale(p.Spec.Width.Times(h).Div(p.Spec.square()))
}

// Across is how wide the dart is at h from where its stitching ends, along the
// centre line: what it takes there, both halves together. It fails with
// [ticket.ErrRange] for an h that lies off the dart.
func (p DartPlan) Across(h units.Length) (units.Near, error) {
	if h.Sign() < 0 || p.Spec.square().Cmp(h.Times(h)) < 0 {
		return units.Near{}, &ticket.Fault{Path: "h", Got: h.String(), Limit: "0 in to " + p.Centre.String() + " (the centre line)", Err: ticket.ErrRange}
	}
	if h.IsZero() {
		return units.Near{}, nil
	}
	return p.share(h), nil
}

// Sheet is the plan as work.
func (p DartPlan) Sheet() ticket.Sheet {
	d := p.Spec
	sh := ticket.Sheet{Title: "Dart", Assumed: p.Assumed, Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()}}
	if d.Width.IsZero() {
		return sh // the plan of no dart has nothing to say
	}
	sh.Lines = append(make([]ticket.Line, 0, 6),
		ticket.Line{Label: "leg, both trued to it", Result: ticket.About(p.Leg)},
		ticket.Line{Label: "centre line as sewn, to the cut edge", Result: ticket.About(p.Centre)},
		ticket.Line{Label: "centre line as sewn, to the seam line", Result: ticket.About(p.Sewn), Terms: []ticket.Term{
			{Amount: ticket.About(p.Centre), Name: "to the cut edge"}, minus(d.Allowance, "allowance")}},
		ticket.Line{Label: "narrower at the seam line by", Result: ticket.About(p.share(d.Allowance))},
		ticket.Line{Label: "taken from the seam line", Result: ticket.About(p.AtSeam), Terms: []ticket.Term{
			plus(d.Width, "at the cut edge"), {Op: ticket.Minus, Amount: ticket.About(p.share(d.Allowance)), Name: "narrower"}}},
		ticket.Line{Label: "each leg from the fold, at the seam line", Result: ticket.About(p.Half), Terms: []ticket.Term{
			{Amount: ticket.About(p.AtSeam), Name: "both"}, {Op: ticket.Over, Amount: ticket.Of(2)}}})

	press := "towards the centre front or the centre back"
	if d.Across {
		press = "downwards"
	}
	sh.Steps = append(make([]ticket.Step, 0, 8),
		ticket.Step{Do: "Draw both legs from the point to the cut edge, and true the shorter to the longer", At: ticket.About(p.Leg), From: "the point"},
		ticket.Step{Do: "Fold the paper dart the way it will be pressed, and only then cut the edge across it", Press: press,
			Note: "this gives the cap its shape; an edge cut flat leaves the dart short of the seam"})
	if !d.Stop.IsZero() {
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Mark where the stitching ends, and draw the legs again to there", At: ticket.Long(d.Stop), From: "the drawn point"})
	}
	sh.Steps = append(sh.Steps,
		ticket.Step{
			Do: "Fold on the centre line, legs matched, and stitch from the edge to the point", Together: ticket.RightTogether,
			Note: "the last stitches lie on the fold; tie the threads, do not backstitch at the point",
			Check: ticket.Check{
				What: "from the fold to the stitching, at the seam line", Want: ticket.About(p.Half), Give: ticket.Long(straightness()),
				Mend: "unpick from the edge to where it strays, and stitch along the drawn leg",
			},
		})
	if !d.Trim.IsZero() {
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Slit the fold and trim it", Trim: ticket.Long(d.Trim), Note: "stop well short of the point"})
	}
	sh.Steps = append(sh.Steps, ticket.Step{Do: "Press the dart over a curved pad", Press: press})
	sh.Sources = []ticket.Cite{
		{For: "which way a dart is pressed", ID: "dress-making-trade-theory", Place: "p. 200", Known: ticket.Read},
		{For: "the last stitches on the fold", ID: "darts-course-page", Known: ticket.Read},
		ticket.Practise("width in proportion to the distance from the point"),
	}
	if p.Assumed.Has("Allowance") {
		sh.Sources = append(sh.Sources, standardCite())
	}
	return sh
}
