package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxRings is the greatest number of rings in one flounce.
const MaxRings = 1000

// A Flounce is a strip cut as part of a ring, or joined of several: its inner edge
// lies straight along the seam and its outer one falls in waves. Zero means "not
// given". How much a flounce flares is given by one of fullness, free, radius and
// rings:
//
//	fullness = free / edge = (radius + depth) / radius
type Flounce struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Edge is the edge that it is sewn to, along the seam line.
	Edge units.Length `json:"edge,omitzero"`
	// Depth is the finished depth, from the seam line to the free edge.
	Depth units.Length `json:"depth,omitzero"`
	// Fullness is the length of the free edge over that of the seam, more than 1.
	Fullness units.Ratio `json:"fullness,omitzero"`
	// Free is the length of the finished free edge.
	Free units.Length `json:"free,omitzero"`
	// Radius is the radius of the seam line.
	Radius units.Length `json:"radius,omitzero"`
	// Rings is how many whole rings make up edge, each slit once, 1 to 1000: the radius
	// is then what they need.
	Rings int `json:"rings,omitzero"`
	// Allowance is the seam allowance of the inner edge, which lies towards the centre.
	// May be omitted; the default is 5/8 in or 1.5 cm.
	Allowance units.Length `json:"allowance,omitzero"`
	// Side is the allowance at each end of a ring, where it is joined or finished. May
	// be omitted; the default is allowance.
	Side units.Given[units.Length] `json:"side,omitzero"`
	// Hem is the hem allowance of the free edge. May be omitted; the default is 0.
	Hem units.Length `json:"hem,omitzero" noun:"zero"`
}

// A FlouncePlan is what a flounce comes to. What is not exact holds pi and has a
// bound.
type FlouncePlan struct {
	Spec     Flounce         `json:"spec,omitzero"`     // as solved
	Assumed  []string        `json:"assumed,omitzero"`  // the fields filled with a default
	Radius   units.Near      `json:"radius,omitzero"`   // of the seam line
	Cut      units.Near      `json:"cut,omitzero"`      // of the inner edge as cut: radius less allowance
	Outer    units.Near      `json:"outer,omitzero"`    // of the outer edge as cut: radius, depth and hem
	Fullness units.NearRatio `json:"fullness,omitzero"` // free edge over seam
	Free     units.Near      `json:"free,omitzero"`     // length of the finished free edge
	Turn     units.Angle     `json:"turn,omitzero"`     // the angle of the whole flounce, without allowances; zero where rings is given
	Each     units.Near      `json:"each,omitzero"`     // length of the seam that one ring gives
	Rings    int             `json:"rings,omitzero"`    // how many rings are cut, the last of them in part
	Left     units.Near      `json:"left,omitzero"`     // what the last ring is cut shorter by, along the seam
	Refit    units.Near      `json:"refit,omitzero"`    // the radius with which so many whole rings just do
	Square   units.Near      `json:"square,omitzero"`   // side of the square of cloth for one ring: twice outer
}

// Plan works out the flounce. The faults are [fault.Faults]; one is [units.ErrBound]
// where lengths of thousands of digits cannot be told apart.
func (f Flounce) Plan() (FlouncePlan, error) {
	var a fault.Audit
	f.audit(&a)
	if a.Failed() {
		return FlouncePlan{}, a.Err()
	}
	if f.solve(&a); a.Failed() {
		return FlouncePlan{}, a.Err()
	}
	given := f
	f.Tape = noun.Tape(f)
	fill(&f.Allowance, seamAllowance, f.Tape)
	if f.Side.IsZero() {
		f.Side = units.Give(f.Allowance)
	}
	p := FlouncePlan{Spec: f, Assumed: noun.Assumed(given, f)}
	ends := f.Side.Or(units.Length{}).MulInt(2)
	if f.Rings > 0 {
		p.Rings = f.Rings
		p.Radius = radiusOf(f.Edge.DivInt(int64(f.Rings)).Add(ends))
		more, err := p.Radius.Under(f.Depth)
		if err != nil {
			a.Fault("edge", f.Edge.String(), "an edge that its radius can be told from 0 in", fault.KindOf(err))
		}
		p.Fullness = more.Plus(units.RatioOf(1, 1))
		p.Free = p.Fullness.Of(f.Edge)
	} else {
		p.Radius, p.Free = units.Exactly(f.Radius), units.Exactly(f.Free)
		p.Fullness = units.ExactlyRatio(f.Fullness)
		p.Turn = units.Radians(f.Edge.Div(f.Radius))
	}
	p.Cut = p.Radius.Plus(f.Allowance.Neg())
	p.Outer = p.Radius.Plus(f.Depth.Add(f.Hem))
	p.Square = p.Outer.MulInt(2)
	if sign, err := p.Cut.Sign(); err != nil || sign <= 0 {
		a.Fault("allowance", f.Allowance.String(), "at most {0} (less than the radius)", fault.Range, marked(p.Radius, units.Down))
	}
	p.count(&a, ends)
	if a.Failed() {
		return FlouncePlan{}, a.Err(p.Assumed...)
	}
	units.Settle(&p.Radius, &p.Cut, &p.Outer, &p.Free, &p.Each, &p.Left, &p.Refit, &p.Square)
	p.Fullness = p.Fullness.Settled()
	return p, nil
}

// audit looks at each field by itself, and for what is missing.
func (f Flounce) audit(a *fault.Audit) {
	f.Tape.Check(a, "tape")
	a.Need("edge", f.Edge)
	a.Need("depth", f.Depth)
	switch {
	case f.Fullness.Sign() < 0:
		a.NotNegative("fullness", f.Fullness)
	case !f.Fullness.IsZero() && f.Fullness.Cmp(units.RatioOf(1, 1)) <= 0:
		a.Fault("fullness", f.Fullness.String(), "more than 1", fault.Range)
	case f.Fullness.IsZero() && f.Free.IsZero() && f.Radius.IsZero() && f.Rings == 0:
		a.Fault("fullness", "", "more than 1, or free, radius or rings", fault.Missing)
	}
	a.NotNegative("free", f.Free)
	if f.Free.Sign() > 0 && f.Free.Cmp(f.Edge) <= 0 && f.Edge.Sign() > 0 {
		a.Fault("free", f.Free.String(), "more than {0} (edge)", fault.Range, f.Edge)
	}
	a.NotNegative("radius", f.Radius)
	if f.Rings != 0 {
		a.Count("rings", f.Rings, 1, MaxRings)
		if !f.Fullness.IsZero() || !f.Free.IsZero() || !f.Radius.IsZero() {
			a.Fault("rings", strconv.Itoa(f.Rings), "none beside fullness, free or radius, from which they follow", fault.Unused)
		}
	}
	a.NotNegative("allowance", f.Allowance)
	a.NotNegative("side", f.Side.Or(units.Length{}))
	a.NotNegative("hem", f.Hem)
}

// solve fills fullness, free and radius from one of them.
func (f *Flounce) solve(a *fault.Audit) {
	one := units.RatioOf(1, 1)
	if f.Rings > 0 {
		return
	}
	want := f.Fullness
	switch {
	case !want.IsZero():
	case !f.Free.IsZero():
		want = f.Free.Div(f.Edge)
	default:
		want = f.Depth.Div(f.Radius).Add(one)
	}
	free, radius := f.Edge.Scale(want), f.Depth.Unscale(want.Sub(one))
	if !f.Free.IsZero() && f.Free != free {
		a.Fault("free", f.Free.String(), "{0} (edge x fullness)", fault.Conflict, free)
	}
	if !f.Radius.IsZero() && f.Radius != radius {
		a.Fault("radius", f.Radius.String(), "{0} (depth over fullness less 1)", fault.Conflict, radius)
	}
	f.Fullness, f.Free, f.Radius = want, free, radius
}

// count finds how many rings are cut.
func (p *FlouncePlan) count(a *fault.Audit, ends units.Length) {
	f := p.Spec
	if f.Rings > 0 {
		p.Each = units.Exactly(f.Edge.DivInt(int64(f.Rings)))
		p.Refit = p.Radius
		return
	}
	p.Each = units.Circle(f.Radius.MulInt(2)).Plus(ends.Neg())
	if sign, err := p.Each.Sign(); err != nil || sign <= 0 {
		a.Fault("radius", f.Radius.String(), "at least {0} (or the ends of a ring take all of it)", fault.Range, marked(radiusOf(ends), units.Up))
		return
	}
	rings, err := p.Each.Under(f.Edge)
	if err == nil {
		var n units.Ratio
		n, _, err = rings.Round(units.RatioOf(1, 1), units.Up)
		count, ok := n.Int(units.Up)
		if ok && count <= MaxRings {
			p.Rings = int(count)
		} else if err == nil {
			a.Fault("edge", f.Edge.String(), "an edge that "+strconv.Itoa(MaxRings)+" rings make up", fault.Range)
			return
		}
	}
	if err != nil {
		a.Fault("edge", f.Edge.String(), "an edge of which it can be told how many rings make it up", fault.KindOf(err))
		return
	}
	p.Left = p.Each.MulInt(int64(p.Rings)).Plus(f.Edge.Neg())
	p.Refit = radiusOf(f.Edge.DivInt(int64(p.Rings)).Add(ends))
}

// marked is a limit that is not exact, as the nearest thirty-second of an inch on the
// side that holds; what is exact is less by that much, or more.
func marked(n units.Near, m units.Mode) units.Length {
	step := units.Inch.Frac(1, 32)
	l, exact := n.Exact()
	switch mark, _, err := n.Round(step, m); {
	case err != nil:
		return n.Mid()
	case !exact:
		return mark
	case m == units.Down:
		return l.Sub(step).Max(units.Length{})
	}
	return l.Add(step)
}

// Sheet is how the flounce is drawn, cut and set, with the working behind it.
func (p FlouncePlan) Sheet() ticket.Sheet {
	f := p.Spec
	sheet := ticket.Sheet{Title: "A flounce", Assumed: p.Assumed}
	if p.Rings == 0 {
		return sheet
	}
	near := func(label string, n units.Near) ticket.Line {
		return ticket.Line{Label: label, Result: ticket.About(n)}
	}
	sheet.Answer = []ticket.Line{near("draw the inner edge with a radius of", p.Cut), near("and the outer one with", p.Outer), {Label: "rings", Result: ticket.Of(p.Rings)}}
	sheet.Lines = []ticket.Line{near("radius of the seam line", p.Radius), near("radius as cut", p.Cut), near("radius of the outer edge", p.Outer), near("free edge", p.Free), near("one ring makes", p.Each)}
	if full, ok := p.Fullness.Exact(); ok {
		sheet.Lines[0] = ticket.Sum("radius of the seam line", f.Radius, ticket.Add(f.Depth, "depth"), ticket.Term{Op: ticket.Over, Amount: ticket.Times(full.Sub(units.RatioOf(1, 1))), Name: "the fullness less 1"})
		sheet.Lines[1] = ticket.Sum("radius as cut", f.Radius.Sub(f.Allowance), ticket.Add(f.Radius, "seam line"), ticket.Less(f.Allowance, "allowance"))
		sheet.Lines[2] = ticket.Sum("radius of the outer edge", units.Sum(f.Radius, f.Depth, f.Hem), hemmed(f.Hem, ticket.Add(f.Radius, "seam line"), ticket.Add(f.Depth, "depth"))...)
		sheet.Lines[3] = ticket.Sum("free edge", f.Free, ticket.Add(f.Edge, "edge"), ticket.Term{Op: ticket.By, Amount: ticket.Times(full), Name: "fullness"})
	}
	sheet.Lines = append(sheet.Lines, ticket.Line{Label: "rings to cut", Result: ticket.Of(p.Rings)}, near("each from a square of", p.Square))
	if f.Rings == 0 {
		sheet.Lines = append(sheet.Lines, near("cut off the last", p.Left), near("or draw all of them with a seam line of", p.Refit))
	}
	side := f.Side.Or(units.Length{})
	join := ticket.Step{Do: "Finish both ends", At: ticket.Long(side), From: "the raw end"}
	if p.Rings > 1 {
		join = ticket.Step{Do: "Join the rings end to end", Together: ticket.RightTogether, At: ticket.Long(side), From: "the raw ends", Press: "open"}
	}
	hem := ticket.Step{Do: "Finish the free edge", Note: "a rolled or a narrow hem, or a facing: it is a curve"}
	if !f.Hem.IsZero() {
		hem = ticket.Step{Do: "Hem the free edge", At: ticket.Long(f.Hem), From: "the raw edge", Note: "narrow, as the edge is a curve"}
	}
	sheet.Steps = []ticket.Step{
		{Do: "Draw the inner edge of each ring", At: ticket.About(p.Cut), From: "its centre"},
		{Do: "Draw the outer edge, cut the ring out and slit it along the thread", At: ticket.About(p.Outer), From: "the same centre"},
		join,
		{Do: "Stay the inner edge and clip it to the row", Note: "it must lie straight along the seam"},
		{
			Do: "Stitch the flounce to the edge", Together: ticket.RightTogether, At: ticket.Long(f.Allowance), From: "the raw edge", Press: "the allowances away from the flounce",
			Check: ticket.Check{What: "the inner edge, along the seam line", Want: ticket.Long(f.Edge), Mend: "clip deeper where it is short; trim an end where it is long"},
		},
		hem,
	}
	sheet.Cautions = []ticket.Caution{
		{Text: "The bias parts drop: let the flounce hang before the free edge is levelled.", Refer: "common practice"},
		ticket.CutCare(),
	}
	sheet.Sources = []source.Cite{
		{For: "radius from the two edges and the depth", ID: "clothing-for-women", Place: "draft of a circular flounce", Known: source.Read},
		{For: "fullness of a ring", ID: "circular-flounce-page", Known: source.Read},
	}
	return sheet
}
