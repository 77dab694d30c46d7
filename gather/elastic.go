package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// An Elastic is a piece of elastic, or of a knit that stretches, that goes round the
// body and draws cloth in. Zero means "not given". How long it is at rest follows
// from the body by one of ratio, less and pull, which may all be given where they
// agree:
//
//	relaxed = body x ratio = body - less = body / (1 + pull)
//
// What a seller calls 20 percent may be either: a piece that is 20 percent shorter
// than the body has a ratio of 4/5, one that is stretched by 20 percent when it is
// worn has a pull of 20 %, and is longer.
type Elastic struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Body is the girth of the body where the elastic sits, or the edge that a band is
	// set on.
	Body units.Length `json:"body,omitzero"`
	// Ratio is the relaxed length over the body, at most 1; see [Elastics].
	Ratio units.Ratio `json:"ratio,omitzero"`
	// Less is how much shorter than the body it is.
	Less units.Given[units.Length] `json:"less,omitzero"`
	// Pull is how far it is stretched when it is worn, as a part of its relaxed length.
	Pull units.Ratio `json:"pull,omitzero"`
	// Relaxed is its length round at rest, once joined. It follows from body and one of
	// ratio, less and pull.
	Relaxed units.Length `json:"relaxed,omitzero"`
	// Lap is what the join takes: how far the ends overlap, or two allowances where they
	// are seamed, 0 where they only meet. May be omitted; the default is 1/2 in or 1 cm.
	Lap units.Given[units.Length] `json:"lap,omitzero"`
	// Over is the largest girth that it must pass to be put on, as the hip for a waist.
	// May be omitted.
	Over units.Length `json:"over,omitzero"`
	// Rest is the length of a test piece at rest. May be omitted.
	Rest units.Length `json:"rest,omitzero"`
	// Stretched is the length that the test piece stretches to and comes back from.
	Stretched units.Length `json:"stretched,omitzero"`
	// Stretch is how far it can be stretched, as a part of its relaxed length. It
	// follows from rest and stretched. May be omitted; it is then not known whether it
	// can be put on.
	Stretch units.Ratio `json:"stretch,omitzero"`
	// Cloth is the edge that it draws in, once round. May be omitted.
	Cloth units.Length `json:"cloth,omitzero"`
	// Width is the width of the elastic. May be omitted.
	Width units.Length `json:"width,omitzero"`
	// Opening is what is left open in the casing to thread the elastic. May be omitted;
	// where width is given the default is 2 in or 5 cm, or 1/2 in or 1 cm more than
	// width, if that is longer.
	Opening units.Length `json:"opening,omitzero"`
	// Parts is how many equal parts are marked on elastic and cloth, 1 to 1000. May be
	// omitted; the default is 4.
	Parts int `json:"parts,omitzero"`
}

// An ElasticPlan is what a piece of elastic comes to.
type ElasticPlan struct {
	Spec     Elastic      `json:"spec,omitzero"`     // as solved
	Assumed  []string     `json:"assumed,omitzero"`  // the fields filled with a default
	Relaxed  units.Length `json:"relaxed,omitzero"`  // its length at rest, once joined
	Cut      units.Length `json:"cut,omitzero"`      // length as cut: relaxed and lap
	Shorter  units.Length `json:"shorter,omitzero"`  // how much shorter than the body it is
	Ratio    units.Ratio  `json:"ratio,omitzero"`    // relaxed over body
	Pull     units.Ratio  `json:"pull,omitzero"`     // how far it is stretched when worn, as a part of relaxed
	Needed   units.Ratio  `json:"needed,omitzero"`   // how far it must stretch to be put on, as a part of relaxed
	Most     units.Length `json:"most,omitzero"`     // the largest girth that it passes
	Least    units.Length `json:"least,omitzero"`    // the shortest that it could be at rest, to pass over
	Fullness units.Ratio  `json:"fullness,omitzero"` // cloth over relaxed
	Worn     units.Ratio  `json:"worn,omitzero"`     // cloth over body: what gathers are left when it is worn
	Marks    []Mark       `json:"marks,omitzero"`    // the marks between the equal parts, on the cloth and on the elastic, from the join
}

// Plan works out the elastic. The faults are [fault.Faults]: elastic that is longer
// than the body, or that cannot be put on, is one.
func (e Elastic) Plan() (ElasticPlan, error) {
	var a fault.Audit
	e.audit(&a)
	if a.Failed() {
		return ElasticPlan{}, a.Err()
	}
	e.solve(&a)
	if a.Failed() {
		return ElasticPlan{}, a.Err()
	}
	given := e
	e.Tape = noun.Tape(e)
	if e.Lap.IsZero() {
		e.Lap = units.Give(usual(elasticLap, e.Tape).Length)
	}
	if e.Opening.IsZero() && !e.Width.IsZero() {
		e.Opening = usual(openingLeast, e.Tape).Length.Max(e.Width.Add(usual(openingMore, e.Tape).Length))
	}
	fillCount(&e.Parts, quarters)
	p := ElasticPlan{Spec: e, Assumed: noun.Assumed(given, e), Relaxed: e.Relaxed}
	p.Cut = e.Relaxed.Add(e.Lap.Or(units.Length{}))
	one := units.RatioOf(1, 1)
	if !e.Body.IsZero() {
		fault.AtMost(&a, "relaxed", e.Relaxed, e.Body, "body, or it does not hold", fault.Range)
		p.Shorter, p.Ratio, p.Pull = e.Body.Sub(e.Relaxed), e.Relaxed.Div(e.Body), e.Body.Div(e.Relaxed).Sub(one)
	}
	if !e.Over.IsZero() {
		p.Needed = e.Over.Max(e.Relaxed).Div(e.Relaxed).Sub(one)
	}
	if !e.Stretch.IsZero() {
		p.Most = e.Relaxed.Scale(one.Add(e.Stretch))
		fault.AtMost(&a, "body", e.Body, p.Most, "as far as it stretches", fault.Range)
		fault.AtMost(&a, "over", e.Over, p.Most, "as far as it stretches", fault.Range)
		p.Least = e.Over.Unscale(one.Add(e.Stretch))
	}
	if !e.Cloth.IsZero() {
		fault.AtLeast(&a, "cloth", e.Cloth, e.Relaxed, "relaxed", fault.Range)
		p.Fullness = e.Cloth.Div(e.Relaxed)
		if !e.Body.IsZero() {
			p.Worn = e.Cloth.Div(e.Body)
		}
		p.Marks = divide(e.Cloth, e.Relaxed, e.Parts, units.Length{})
	}
	if a.Failed() {
		return ElasticPlan{}, a.Err(p.Assumed...)
	}
	return p, nil
}

// audit looks at each field by itself, and for what is missing.
func (e Elastic) audit(a *fault.Audit) {
	zero := units.Length{}
	e.Tape.Check(a, "tape")
	by := !e.Ratio.IsZero() || !e.Less.IsZero() || !e.Pull.IsZero()
	if e.Relaxed.IsZero() || by {
		a.Need("body", e.Body)
	} else {
		a.NotNegative("body", e.Body)
	}
	if e.Relaxed.IsZero() && !by {
		a.Fault("ratio", "", "more than 0, or less, or pull, or relaxed", fault.Missing)
	}
	a.NotNegative("ratio", e.Ratio)
	fault.AtMost(a, "ratio", e.Ratio, units.RatioOf(1, 1), "or it does not hold", fault.Range)
	a.NotNegative("less", e.Less.Or(zero))
	a.NotNegative("pull", e.Pull)
	a.NotNegative("relaxed", e.Relaxed)
	a.NotNegative("lap", e.Lap.Or(zero))
	a.NotNegative("over", e.Over)
	a.NotNegative("rest", e.Rest)
	a.NotNegative("stretched", e.Stretched)
	switch {
	case e.Rest.IsZero() && !e.Stretched.IsZero():
		a.Need("rest", e.Rest)
	case !e.Rest.IsZero() && (e.Stretched.Sign() > 0 || e.Stretched.IsZero()) && e.Stretched.Cmp(e.Rest) <= 0:
		a.Fault("stretched", e.Stretched.String(), "more than {0} (rest)", fault.Range, e.Rest)
	}
	a.NotNegative("stretch", e.Stretch)
	a.NotNegative("cloth", e.Cloth)
	a.NotNegative("width", e.Width)
	a.NotNegative("opening", e.Opening)
	if !e.Opening.IsZero() {
		fault.AtLeast(a, "opening", e.Opening, e.Width, "width", fault.Range)
	}
	if e.Parts != 0 {
		a.Count("parts", e.Parts, 1, MaxParts)
	}
}

// solve fills relaxed and stretch, and holds whatever is given to them.
func (e *Elastic) solve(a *fault.Audit) {
	one := units.RatioOf(1, 1)
	agree := func(path, got string, relaxed units.Length) {
		switch {
		case relaxed.Sign() <= 0:
			a.Fault(path, got, "less than {0} (body)", fault.Range, e.Body)
		case e.Relaxed.IsZero():
			e.Relaxed = relaxed
		case e.Relaxed != relaxed:
			a.Fault(path, got, "what leaves {0} at rest", fault.Conflict, e.Relaxed)
		}
	}
	if !e.Ratio.IsZero() {
		agree("ratio", e.Ratio.String(), e.Body.Scale(e.Ratio))
	}
	if less, given := e.Less.Get(); given {
		agree("less", less.String(), e.Body.Sub(less))
	}
	if !e.Pull.IsZero() {
		agree("pull", e.Pull.String(), e.Body.Unscale(one.Add(e.Pull)))
	}
	if e.Rest.IsZero() {
		return
	}
	stretch := e.Stretched.Div(e.Rest).Sub(one)
	if e.Stretch.IsZero() {
		e.Stretch = stretch
	} else if e.Stretch != stretch {
		a.Fault("stretch", e.Stretch.String(), "{0} (stretched over rest, less 1)", fault.Conflict, stretch)
	}
}

// Sheet is how the elastic is cut, joined and set in, with the working behind it.
func (p ElasticPlan) Sheet() ticket.Sheet {
	e := p.Spec
	sheet := ticket.Sheet{Title: "Elastic, drawn round the body", Assumed: p.Assumed, Lines: p.working()}
	sheet.Answer = []ticket.Line{ticket.Sum("cut the elastic", p.Cut)}
	sheet.Cautions = []ticket.Caution{ticket.CutCare()}
	if e.Stretch.IsZero() {
		sheet.Cautions = append(sheet.Cautions, ticket.Caution{
			Text: "How far it stretches is not known: stretch a piece that you have measured, and see that it passes the largest girth and comes back.", Refer: "the test piece decides",
		})
	}
	sheet.Sources = []source.Cite{source.Practise("elastic is measured at rest, by the body and not by the cloth")}
	sheet.Sources = append(sheet.Sources, cites(p.Assumed, e.Tape, map[string]string{"lap": elasticLap, "opening": openingLeast})...)
	join := ticket.Step{
		Do: "Lap the ends, without a twist, and stitch them in a square", At: ticket.Long(e.Lap.Or(units.Length{})), From: "one end to the other, of the lap",
		Check: ticket.Check{What: "the elastic once round, at rest", Want: ticket.Long(p.Relaxed), Mend: "unpick the join and lap it again, before it is set in"},
	}
	if e.Lap.Or(units.Length{}).IsZero() {
		join.Do, join.At, join.From = "Set the ends edge to edge on a patch of cloth, without a twist, and stitch them to it", ticket.Amount{}, ""
	}
	steps := []ticket.Step{{Do: "Cut the elastic, which lies unstretched", At: ticket.Long(p.Cut), From: "one end to the other"}}
	if !e.Opening.IsZero() {
		steps = append(steps, ticket.Step{Do: "Stitch the casing but for an opening, and thread the elastic", At: ticket.Long(e.Opening), From: "one end of the opening to the other", Note: "pin the first end down, so that it cannot slip in; the round of stitching is closed last"})
	}
	steps = append(steps, join)
	if len(p.Marks) > 0 {
		steps = append(steps, ticket.Step{
			Do: "Mark the equal parts on elastic and cloth and pin them mark to mark", Note: "from the join of each, as the working gives it; a side seam is not always a quarter",
			Check: ticket.Check{What: "the elastic from mark to mark, at rest", Want: ticket.Long(p.Relaxed.DivInt(int64(e.Parts))), Mend: "mark it again from the join"},
		})
	}
	sheet.Steps = append(steps, ticket.Step{Do: "Spread the cloth evenly along the elastic, or stretch the elastic between the pins as it is sewn"})
	return sheet
}

func (p ElasticPlan) working() []ticket.Line {
	e, one := p.Spec, units.RatioOf(1, 1)
	relaxed := ticket.Sum("length at rest", p.Relaxed)
	less, byLess := e.Less.Get()
	by := func(op ticket.Op, r units.Ratio, name string) {
		relaxed.Terms = []ticket.Term{ticket.Add(e.Body, "body"), {Op: op, Amount: ticket.Times(r), Name: name}}
	}
	switch {
	case !e.Ratio.IsZero():
		by(ticket.By, e.Ratio, "ratio")
	case byLess:
		relaxed.Terms = []ticket.Term{ticket.Add(e.Body, "body"), ticket.Less(less, "shorter")}
	case !e.Pull.IsZero():
		by(ticket.Over, one.Add(e.Pull), "1 and the pull")
	}
	lines := []ticket.Line{relaxed, ticket.Sum("length as cut", p.Cut, ticket.Add(p.Relaxed, "at rest"), ticket.Add(e.Lap.Or(units.Length{}), "lap"))}
	if !e.Body.IsZero() {
		lines = append(lines, ticket.Sum("shorter than the body by", p.Shorter, ticket.Add(e.Body, "body"), ticket.Less(p.Relaxed, "at rest")),
			ticket.Line{Label: "stretched when worn, as a part of it", Result: ticket.Times(p.Pull)})
	}
	if !p.Needed.IsZero() {
		lines = append(lines, ticket.Line{Label: "stretched to be put on, as a part of it", Result: ticket.Times(p.Needed)})
	}
	if !p.Most.IsZero() {
		lines = append(lines, ticket.Sum("it passes at most", p.Most, ticket.Add(p.Relaxed, "at rest"), ticket.Term{Op: ticket.By, Amount: ticket.Times(one.Add(e.Stretch)), Name: "1 and the stretch"}))
	}
	if !p.Least.IsZero() {
		lines = append(lines, ticket.Sum("to pass the largest girth, at rest at least", p.Least, ticket.Add(e.Over, "largest girth"), ticket.Term{Op: ticket.Over, Amount: ticket.Times(one.Add(e.Stretch)), Name: "1 and the stretch"}))
	}
	if !p.Fullness.IsZero() {
		lines = append(lines, fullness("fullness at rest", p.Fullness, ticket.Add(e.Cloth, "cloth"), p.Relaxed, "elastic"))
	}
	if !p.Worn.IsZero() {
		lines = append(lines, fullness("fullness when worn", p.Worn, ticket.Add(e.Cloth, "cloth"), e.Body, "body"))
	}
	parts := int64(max(1, e.Parts))
	return append(lines, markLines(p.Marks, Mark{e.Cloth.DivInt(parts), p.Relaxed.DivInt(parts)}, " on the cloth", " on the elastic", Mark{}, "")...)
}
