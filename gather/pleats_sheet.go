package gather

import (
	"strconv"

	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is how the pleats are cut, marked and laid, with the working behind it.
func (p PleatsPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "Pleats", Assumed: p.Assumed}
	if len(p.Places) == 0 {
		return sheet
	}
	sheet.Title = [...]string{"Pleats", "Knife pleats", "Box pleats", "Inverted pleats"}[s.Kind]
	sheet.Answer = []ticket.Line{ticket.Sum("cloth before it is pleated", s.Cloth), {Label: "pleats", Result: ticket.Of(s.Count)}, ticket.Sum("fold each deep", p.Marked)}
	if p.Widths > 0 {
		sheet.Answer = append(sheet.Answer, ticket.Line{Label: "widths of cloth", Result: ticket.Of(p.Widths)})
	}
	sheet.Lines, sheet.Steps, sheet.Cautions, sheet.Sources = p.working(), p.steps(), p.cautions(), p.sources()
	return sheet
}

func (p PleatsPlan) working() []ticket.Line {
	s, folds := p.Spec, int(p.Spec.Kind.folds())
	each := []ticket.Term{ticket.Add(s.Depth, "depth"), ticket.Multiply(2, "there and back")}
	if folds == 2 {
		each = append(each, ticket.Multiply(2, "folds"))
	}
	section := []ticket.Term{ticket.Add(s.Pitch, "from pleat to pleat"), ticket.Multiply(s.Count, "pleats")}
	if !s.Flat.IsZero() {
		section = append(section, ticket.Add(s.Flat, "flat"))
	}
	hidden := []ticket.Term{ticket.Add(p.PerPleat, "by one"), ticket.Multiply(s.Count, "pleats")}
	if n := int64(s.Count); !s.Grow.IsZero() && n > 1 {
		more := s.Grow.MulInt(n * (n - 1) * int64(folds))
		term := ticket.Add(more, "for those that are deeper")
		if more.Sign() < 0 {
			term = ticket.Less(more.Neg(), "for those that are shallower")
		}
		hidden = append(hidden, term)
	}
	lines := []ticket.Line{
		ticket.Sum("hidden by the first pleat", p.PerPleat, each...),
		ticket.Sum("section once pleated", s.Section, section...),
		ticket.Sum("hidden by all", p.Hidden, hidden...),
		ticket.Sum("cloth before it is pleated", s.Cloth, ticket.Add(s.Section, "once pleated"), ticket.Add(p.Hidden, "hidden")),
		fullness("cloth to section", p.Fullness, ticket.Add(s.Cloth, "cloth"), s.Section, "section"),
	}
	if !p.Rest.IsZero() {
		lines = append(lines, ticket.Sum("left for the last pleat to hide", p.Rest,
			ticket.Add(s.Depth, "depth"), ticket.Less(p.Marked, "as marked"), ticket.Multiply(2*folds*s.Count, "plies hidden")))
	}
	if !s.Waist.IsZero() {
		lines = append(lines,
			ticket.Sum("from pleat to pleat at the waist", p.WaistPitch, ticket.Add(s.Waist, "waist"), ticket.Less(s.Flat, "flat"), ticket.Term{Op: ticket.Over, Amount: ticket.Of(s.Count), Name: "pleats"}),
			ticket.Sum("each fold deeper there by", p.Deeper, ticket.Add(s.Section, "section"), ticket.Less(s.Waist, "waist"), ticket.Term{Op: ticket.Over, Amount: ticket.Of(2 * folds * s.Count), Name: "plies hidden"}))
	}
	if len(p.Pieces) <= len(markNames) {
		for i, piece := range p.Pieces {
			lines = append(lines, ticket.Sum("width "+strconv.Itoa(i+1)+" is cut to", piece))
		}
	}
	if !p.Bought.IsZero() {
		lines = append(lines, ticket.Sum("cloth to buy", p.Bought, ticket.Add(s.Drop, "length of a width"), ticket.Multiply(p.Widths, "widths")))
	}
	return lines
}

func (p PleatsPlan) steps() []ticket.Step {
	s, first := p.Spec, p.Places[0]
	last := p.Places[len(p.Places)-1]
	var steps []ticket.Step
	if p.Widths > 0 {
		steps = append(steps, ticket.Step{Do: "Cut the widths, each to its own measure", At: ticket.Long(p.Pieces[0]), From: "one long edge to the other, of the first", Note: "the working gives the others; keep them in order"})
	}
	if p.Widths > 1 {
		note := "each join comes to lie on an inner fold"
		if s.Anywhere {
			note = "turn the strip so that a join falls on an inner fold, or move the first pleat"
		}
		steps = append(steps, ticket.Step{Do: "Join the widths", Together: ticket.RightTogether, At: ticket.Long(s.Allowance), From: "the raw edges", Press: "open", Note: note})
	}
	steps = append(steps, ticket.Step{
		Do: "Hem the lower edge before pleating, unless it is levelled on the wearer", Note: "clip a join above the hem and press it flat below, so that the fold lies flat",
		Check: ticket.Check{What: "the section before it is pleated", Want: ticket.Long(s.Cloth), Mend: "cut it again before it is marked: pleats cannot make up for missing cloth"},
	})
	mark := ticket.Step{
		Do: "Mark the first fold and the line it is laid on", At: ticket.Long(first.Outer), From: "the start of the section to the fold",
		Note: "the line lies twice the depth of the fold away",
	}
	if s.Count > 1 {
		mark.Do = "Mark every fold and the line it is laid on"
		mark.From += ", for the first"
		mark.Note = "each from the start, as the places give it, never from the mark before; " + mark.Note
		mark.Check = ticket.Check{What: "from the start of the section to the last line that a fold is laid on", Want: ticket.Long(last.Place), Mend: "measure every mark again from the start: an error of one mark goes on in all that follow it"}
	}
	fold := ticket.Step{
		Do: "Fold each pleat, lay it on its line, pin and baste it", At: ticket.Long(p.Marked), From: "the outer fold to the inner one", Press: p.press(),
		Check: ticket.Check{What: "the section once pleated", Want: ticket.Long(s.Section), Mend: "let out or take in the hidden folds, the last one first; leave the faces as they are"},
	}
	if !p.Rest.IsZero() {
		fold.Note = "the last pleat hides what is left over"
	}
	steps = append(steps, mark, fold)
	if !s.Waist.IsZero() {
		steps = append(steps, ticket.Step{
			Do: "Lay each fold deeper towards the waist, evenly from the widest line up", At: ticket.Long(p.Deeper), From: "the fold as it lay, at the waist",
			Note:  "take it half on either side of a face to keep a stripe in the middle, or all on one side to keep the fold straight",
			Check: ticket.Check{What: "the section at the waist", Want: ticket.Long(s.Waist), Mend: "share the error among pleats that lie at the back"},
		})
	}
	return steps
}

func (p PleatsPlan) press() string {
	switch p.Spec.Kind {
	case KnifePleat:
		return "all one way"
	case BoxPleat:
		return "the two folds of each pleat away from each other"
	}
	return "the two folds of each pleat towards each other"
}

func (p PleatsPlan) cautions() []ticket.Caution {
	s := p.Spec
	cautions := []ticket.Caution{ticket.IronCare(), ticket.CutCare()}
	add := func(text string) { cautions = append(cautions, ticket.Caution{Text: text, Refer: "common practice"}) }
	if p.Plies > 3 {
		add("Folds lie over each other, five plies thick or more: press each layer by itself, and keep them out of a seam in heavy cloth.")
	}
	if p.WaistPlies > 3 {
		add("At the waist folds lie over each other, five plies thick or more: in thick cloth cut some of the hidden part away there.")
	}
	if s.Step.Sign() > 0 && s.room().Less(p.Last) && !s.Overlapping {
		add("What is left over makes the last fold overlap its neighbour: share it among several, or hide it behind a join.")
	}
	return cautions
}

func (p PleatsPlan) sources() []source.Cite {
	cites := []source.Cite{{For: "cloth is the section and twice the depth of each fold", ID: "vocational-dressmaking-practice", Place: "page 203", Known: source.Read}}
	for _, key := range p.Assumed {
		if key == "depth" {
			cites = append(cites, source.Cite{For: "folds that just meet", ID: "vocational-dressmaking-practice", Place: "page 202", Known: source.Read})
		}
	}
	if p.Widths > 1 && !p.Spec.Anywhere {
		cites = append(cites, source.Cite{For: "joins form the inner fold of a pleat", ID: "new-dressmaker", Place: "page 99", Known: source.Read})
	}
	if !p.Spec.Waist.IsZero() {
		cites = append(cites, source.Cite{For: "every pleat is deeper at the waist", ID: "kilt-taper-note", Known: source.Read})
	}
	if !p.Rest.IsZero() {
		cites = append(cites, source.Practise("the face stays exact, the depth takes what rounding leaves"))
	}
	return cites
}
