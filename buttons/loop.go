package buttons

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Loop is a row of button loops along an edge, cut from a tube or a cord. The loop and
// the edge between its ends go together round the button, edge on. Zero means not given.
type Loop struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Diameter is across the button. It is needed where wrap is not given.
	Diameter units.Length `json:"diameter,omitzero"`
	// Thickness is that of the button. May be omitted; the default is 1/8 in, or 3 mm on a
	// metric tape.
	Thickness units.Length `json:"thickness,omitzero"`
	// Wrap is what a strip of paper measures that is wrapped once round the button as it
	// passes the loop. May be omitted; it is twice the diameter and the thickness.
	Wrap units.Length `json:"wrap,omitzero"`
	// Apart is from one end of a loop to the other where they are sewn. May be omitted; the
	// default is 0 in: they lie side by side.
	Apart units.Length `json:"apart,omitzero" noun:"zero"`
	// Ease is what each loop is longer than the button needs. May be omitted; the default is
	// 0 in.
	Ease units.Length `json:"ease,omitzero" noun:"zero"`
	// Seam is how much of each end lies in the seam. May be omitted; the default is 5/8 in,
	// or 1.5 cm on a metric tape.
	Seam units.Length `json:"seam,omitzero"`
	// Count is how many loops there are. May be omitted; the default is 1.
	Count int `json:"count,omitzero"`
	// Strip is the width of the bias strip for the tube. May be omitted; the default is 1 in,
	// or 2.5 cm on a metric tape.
	Strip units.Length `json:"strip,omitzero"`
	// Width is from the fold of the strip to the stitching. May be omitted; the default is
	// 3/16 in, or 5 mm on a metric tape.
	Width units.Length `json:"width,omitzero"`
	// Corded says that the tube is drawn over a cord.
	Corded bool `json:"corded,omitzero"`
}

// A LoopPlan is loops worked out.
type LoopPlan struct {
	Spec    Loop         `json:"spec,omitzero"`    // as solved
	Assumed []string     `json:"assumed,omitzero"` // the fields filled with a default
	Length  units.Length `json:"length,omitzero"`  // of a loop from seam to seam, along its middle
	Cut     units.Length `json:"cut,omitzero"`     // of a loop with its ends
	Tube    units.Length `json:"tube,omitzero"`    // of the tube, or the cord, for all loops
	Cord    units.Length `json:"cord,omitzero"`    // of the cord within the tube, and to draw it over; 0 in where it is not corded
}

// rule is the first row of the tape for which ok holds.
func (l Loop) rule(ok func(LoopRow) bool) LoopRow {
	r, _ := loopRows.First(func(r LoopRow) bool { return r.Tape == l.Tape && ok(r) })
	return r
}

func (l Loop) tubeRule() LoopRow { return l.rule(func(r LoopRow) bool { return !r.Strip.IsZero() }) }
func (l Loop) seamRule() LoopRow { return l.rule(func(r LoopRow) bool { return !r.Seam.IsZero() }) }

// audit looks at each field.
func (l Loop) audit(a *fault.Audit) {
	if l.Wrap.IsZero() {
		a.Need("diameter", l.Diameter)
	}
	for _, f := range []struct {
		path string
		l    units.Length
	}{{"diameter", l.Diameter}, {"thickness", l.Thickness}, {"wrap", l.Wrap}, {"apart", l.Apart}, {"ease", l.Ease}, {"seam", l.Seam}} {
		if f.path != "diameter" || !l.Wrap.IsZero() {
			a.NotNegative(f.path, f.l)
		}
	}
	whole(a, "count", l.Count, MaxCount)
	a.NotNegative("strip", l.Strip)
	a.NotNegative("width", l.Width)
}

// Plan works out the loops. The faults are [fault.Faults].
func (l Loop) Plan() (LoopPlan, error) {
	var a fault.Audit
	given := l
	fillTape(&a, &l.Tape, l)
	if l.audit(&a); a.Failed() {
		return LoopPlan{}, a.Err()
	}
	fill := func(to *units.Length, with units.Length) {
		if to.IsZero() {
			*to = with
		}
	}
	if !l.Diameter.IsZero() && l.Wrap.IsZero() {
		fill(&l.Thickness, eighth(l.Tape))
	}
	fill(&l.Seam, l.seamRule().Seam)
	fill(&l.Strip, l.tubeRule().Strip)
	fill(&l.Width, l.tubeRule().Width)
	if l.Count == 0 {
		l.Count = 1
	}
	assumed := noun.Assumed(given, l)
	round := l.Diameter.Add(l.Thickness).MulInt(2)
	fill(&l.Wrap, round)
	if !l.Diameter.IsZero() && !l.Thickness.IsZero() && l.Wrap != round {
		a.Fault("wrap", l.Wrap.String(), "{0}, twice the diameter and the thickness", fault.Conflict, round)
	}
	if !l.Apart.Less(l.Wrap) {
		a.Fault("apart", l.Apart.String(), "less than {0}, once round the button", fault.Range, l.Wrap)
	}
	if l.Strip.Less(l.Width.MulInt(2)) {
		a.Fault("width", l.Width.String(), "at most {0}, half of strip", fault.Range, l.Strip.DivInt(2))
	}
	if a.Failed() {
		return LoopPlan{}, a.Err(assumed...)
	}
	p := LoopPlan{Spec: l, Assumed: assumed, Length: l.Wrap.Sub(l.Apart).Add(l.Ease)}
	p.Cut = p.Length.Add(l.Seam.MulInt(2))
	p.Tube = p.Cut.MulInt(int64(l.Count))
	if l.Corded {
		p.Cord = p.Tube.MulInt(corded)
	}
	return p, nil
}

// Sheet is what to cut, how the tube is made and how the loops are sewn on.
func (p LoopPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "Button loops", Assumed: p.Assumed}
	if s.Count == 0 {
		return sheet // the plan of no loop has nothing to say
	}
	sheet.Answer = []ticket.Line{{Label: "cut loops", Result: ticket.Of(s.Count)}, {Label: "each long", Result: ticket.Long(p.Cut)}}
	if !s.Diameter.IsZero() && !s.Thickness.IsZero() {
		sheet.Lines = append(sheet.Lines, ticket.Sum("once round the button", s.Wrap, ticket.Add(s.Diameter, "diameter"), ticket.Add(s.Thickness, "thickness"), ticket.Multiply(2, "")))
	}
	loop := []ticket.Term{ticket.Add(s.Wrap, "round the button")}
	sew := ticket.Step{Do: "Sew the ends to the edge on the right side of the cloth, the loops away from the edge", Note: "the facing is sewn over them; the buttons stand opposite"}
	if !s.Apart.IsZero() {
		loop = append(loop, ticket.Less(s.Apart, "between the ends"))
		sew.At, sew.From = ticket.Long(s.Apart), "end to end"
	}
	if !s.Ease.IsZero() {
		loop = append(loop, ticket.Add(s.Ease, "ease"))
	}
	sheet.Lines = append(sheet.Lines,
		ticket.Sum("loop from seam to seam", p.Length, loop...),
		ticket.Sum("cut, with two ends in the seam", p.Cut, ticket.Add(p.Length, "loop"), ticket.Add(s.Seam, "one end"), ticket.Add(s.Seam, "the other")))
	if s.Count > 1 {
		sheet.Lines = append(sheet.Lines, ticket.Sum("tube for all", p.Tube, ticket.Add(p.Cut, "each"), ticket.Multiply(s.Count, "loops")))
	}
	tube := ticket.Step{Do: "Cut bias strip for the tube", At: ticket.Long(s.Strip), From: "edge to edge",
		Check: ticket.Check{What: "length of the strip, or of its pieces together", Want: ticket.Long(p.Tube), Mend: "cut another piece; no loop has a join"}}
	stitch := ticket.Step{Do: "Fold the strip along its length and stitch", Together: ticket.RightTogether, At: ticket.Long(s.Width), From: "the fold",
		Note: "stretch it a little as you stitch"}
	turn := ticket.Step{Do: "Turn the tube right side out", Note: "trim the seam where it does not turn"}
	if s.Corded {
		sheet.Lines = append(sheet.Lines, ticket.Sum("cord, to fill the tube and to draw it over", p.Cord, ticket.Add(p.Tube, "tube"), ticket.Multiply(corded, "")))
		stitch.Do = "Fold the strip round one half of the cord, sew it to the middle of the cord across the end, and stitch beside the cord"
		turn.Do = "Draw the tube over the other half of the cord and cut off what is left bare"
	}
	sheet.Steps = []ticket.Step{tube, stitch, turn,
		{Do: "Cut one loop, pin it to a scrap and try the button", Note: "the loop must slip over the button and not fall off it: cord stretches",
			Check: ticket.Check{What: "a loop, end to end", Want: ticket.Long(p.Cut), Mend: "change every loop by the same"}}, sew}
	sheet.Cautions = []ticket.Caution{ticket.CutCare(), ticket.IronCare()}
	sheet.Sources = []source.Cite{source.Practise("the loop and the edge go round the button together"),
		{For: "a loop slips easily over its button", ID: "new-dressmaker", Place: "page 115", Known: source.Read}}
	if slices.Contains(p.Assumed, "strip") || slices.Contains(p.Assumed, "width") {
		r := s.tubeRule()
		sheet.Sources = append(sheet.Sources, source.Cite{For: r.Name, ID: r.Source, Known: r.Known})
	}
	if slices.Contains(p.Assumed, "seam") {
		r := s.seamRule()
		sheet.Sources = append(sheet.Sources, source.Cite{For: r.Name, ID: r.Source, Known: r.Known})
	}
	if s.Corded {
		sheet.Sources = append(sheet.Sources, source.Cite{For: "cord twice as long as the strip", ID: "corded-loop-column-1981", Known: source.Read})
	}
	return sheet
}
