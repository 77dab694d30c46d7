package layout

import (
	"cmp"
	"slices"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxSteps is the most pieces that a [Plan.Sheet] tells the places of, those
// nearest the cut end first; Placements has them all.
const MaxSteps = 200

// Sheet is the work of laying and cutting: each piece with its distance from the
// cut end and from the left-hand selvedge, in the order in which a hand lays
// them, and the sums behind the length.
func (p Plan) Sheet() ticket.Sheet {
	s := ticket.Sheet{Title: "Lay of the pieces on the cloth", Lines: p.lines(), Assumed: p.Assumed}
	if !p.Used.IsZero() {
		s.Answer = []ticket.Line{{Label: "length of cloth", Result: ticket.Long(p.Used)}}
	}
	order := slices.Clone(p.Placements)
	slices.SortStableFunc(order, func(a, b Placement) int { return cmp.Or(a.Y.Cmp(b.Y), a.X.Cmp(b.X)) })
	shown := order[:min(len(order), MaxSteps)]
	s.Steps = p.layOut(make([]ticket.Step, 0, len(shown)+4))
	names, edge := p.Spec.titles(shown), "left-hand selvedge to the piece's left-hand edge"
	if p.Spec.Cloth.Folded {
		edge = "fold to the piece's left-hand edge"
	}
	for i, at := range shown {
		st := ticket.Step{Do: names[i], At: ticket.Long(at.Y), From: "the cut end", Check: ticket.Check{
			What: edge, Want: ticket.Long(at.X),
		}}
		st.Note = p.turning(at)
		s.Steps = append(s.Steps, st)
	}
	if len(shown) < len(order) {
		s.Steps = append(s.Steps, ticket.Step{Do: "Lay the other pieces by the list of placements"})
	}
	s.Steps = append(s.Steps, ticket.Step{
		Do:    "Even the grain lines with the selvedge, see that every piece and every copy is there, then cut in the same order",
		Check: ticket.Check{What: "from the cut end to the far edge of the farthest piece", Want: ticket.Long(p.Used.Sub(p.Spec.Cloth.Ends)), Mend: "find the piece that is out of its place before anything is cut"},
	})
	s.Steps = p.joining(s.Steps)
	s.Cautions = p.cautions()
	s.Sources = []source.Cite{source.Practise("grain along the cloth, pieces that may turn stated one by one"), source.Practise("whole lay pinned out before the first cut")}
	return s
}

// mostMarks is the most flaws, and notches with a place, that the sheet has
// marked.
const mostMarks = 20

// marking are the steps on the open cloth: flaws, the middle of a stripe, and
// places of notches.
func (p Plan) marking(steps []ticket.Step) []ticket.Step {
	c := &p.Spec.Cloth
	add := func(do, note, what string, x, y units.Length) {
		steps = append(steps, ticket.Step{Do: do, Note: note, At: ticket.Long(y), From: "the cut end",
			Check: ticket.Check{What: what, Want: ticket.Long(x)}})
	}
	for i := range c.Flaws[:min(len(c.Flaws), mostMarks)] {
		lo, _ := box(c.Flaws[i].corners())
		note := "all round, so that it is seen while the pieces are laid"
		if c.Folded {
			note += " and once the cloth is folded"
		}
		add("Mark flaw "+strconv.Itoa(i+1)+" on the open cloth", note, "left-hand selvedge to the flaw's left-hand edge", lo.X, lo.Y)
	}
	edge := "left-hand selvedge"
	if c.Folded {
		edge = "fold, once there is one,"
	}
	if p.Spec.centred() && !c.Folded {
		steps = append(steps, ticket.Step{Do: "Mark the middle of a stripe all along the cloth",
			Check: ticket.Check{What: "left-hand selvedge to the middle of the stripe", Want: ticket.Long(c.Axis), Mend: "measure it on the cloth and lay again with what it is"}})
	}
	for _, ph := range c.Phases[:min(len(c.Phases), mostMarks)] {
		add("Mark the place of notch "+ph.Notch, "it comes again with every repeat", edge+" to the place", ph.X, ph.Y)
	}
	return steps
}

// layOut are the steps that lay the cloth out, and mark it while it is open.
func (p Plan) layOut(steps []ticket.Step) []ticket.Step {
	c := &p.Spec.Cloth
	begin := "Press the cloth, square the cut end, and "
	st := ticket.Step{Check: ticket.Check{What: p.width(), Want: ticket.Long(c.Usable()), Mend: "measure at several places and lay again with the narrowest"}}
	if !c.Folded {
		st.Do = begin + "lay it out in a single layer"
		return p.marking(append(steps, st))
	}
	if marked := p.marking(nil); len(marked) > 0 {
		steps = append(append(steps, ticket.Step{Do: begin + "open it out"}), marked...)
		begin = "Now "
	}
	switch {
	case c.double().MulInt(2).Less(c.Wide):
		st.Do = begin + "fold one selvedge over, right sides together, with the fold on the left"
	case p.Spec.centred():
		st.Do = begin + "fold it lengthwise, right sides together, along the middle of a stripe, with the fold on the left"
	default:
		st.Do = begin + "fold it lengthwise, right sides together, selvedge on selvedge, with the fold on the left"
	}
	return append(steps, st)
}

// width says what the usable width is measured between.
func (p Plan) width() string {
	if p.Spec.Cloth.Folded {
		return "width of the double cloth from the fold to the nearer selvedge's inner edge"
	}
	return "width of the cloth between the selvedges' inner edges"
}

// turning says how a piece is turned, and which hand it is.
func (p Plan) turning(at Placement) string {
	note := ""
	switch {
	case at.Across && at.Half:
		note = "turned three quarters: its grain line lies across the cloth"
	case at.Across:
		note = "turned a quarter: its grain line lies across the cloth"
	case at.Half:
		note = "turned end for end"
	}
	join := func(more string) {
		if note != "" {
			note += "; "
		}
		note += more
	}
	if at.Piece >= 0 && at.Piece < len(p.Spec.Pieces) {
		one := &p.Spec.Pieces[at.Piece]
		if one.Turn == Bias {
			note = "on the bias: its grain line runs half-way between along and across"
		}
		if one.Fold && p.Spec.Cloth.Folded {
			if at.Half {
				note = "turned end for end and over"
			}
			join("its edge on the fold")
		} else if p.Spec.Cloth.Folded && at.other(&p.Spec).Copy == 0 {
			join("cut once: what the lower layer gives is over")
		} else if one.Fold {
			join("opened out at its fold edge")
		}
	}
	if at.Piece >= 0 && at.Piece < len(p.Spec.Pieces) && p.Spec.matched() && len(p.Spec.Pieces[at.Piece].Notches) > 0 {
		join("its notches on their place of the repeat")
	}
	if at.Piece >= 0 && at.Piece < len(p.Spec.Pieces) && p.Spec.Pieces[at.Piece].Centred {
		join("its centre line on the middle of a stripe, or half-way between two")
	}
	if at.Mirrored(p.Spec) {
		join("the other hand: the pattern lies face down")
	}
	return note
}

func (p Plan) lines() []ticket.Line {
	c := p.Spec.Cloth
	lines := make([]ticket.Line, 0, 7)
	add := func(label string, result ticket.Amount, terms ...ticket.Term) {
		lines = append(lines, ticket.Line{Label: label, Terms: terms, Result: result})
	}
	long := func(op ticket.Op, l units.Length, name string) ticket.Term {
		return ticket.Term{Op: op, Amount: ticket.Long(l), Name: name}
	}
	area := ticket.Square(p.area())
	if c.Folded {
		add("usable width", ticket.Long(c.Usable()), long(ticket.Plus, c.double(), "width that lies double"), long(ticket.Minus, c.Selvedge, "the selvedge"))
	} else {
		add("usable width", ticket.Long(c.Usable()), long(ticket.Plus, c.Wide, "full width"),
			long(ticket.Minus, c.Selvedge, "one selvedge"), long(ticket.Minus, c.Selvedge, "the other"))
	}
	add("area of all the pieces", area)
	if !p.Lay.IsZero() && !c.Usable().IsZero() {
		terms := []ticket.Term{long(ticket.Plus, c.Usable(), "usable width"), long(ticket.By, p.Lay, "the lay")}
		if c.Folded {
			terms = append(terms, ticket.Term{Op: ticket.By, Amount: ticket.Times(units.RatioOf(c.layers(), 1)), Name: "layers"})
		}
		add("area of cloth that the lay covers", ticket.Square(c.Usable().Times(p.Lay).MulInt(c.layers())), terms...)
		if percent, ok := p.Density.Mul(units.RatioOf(100, 1)).Int(units.Down); ok {
			add("percent of it that the pieces take, rounded down", ticket.Of(int(percent)))
		}
	}
	add("no lay is shorter than", ticket.Long(p.Bound))
	add("length of cloth the lay takes", ticket.Long(p.Used), long(ticket.Plus, p.Lay, "the lay"),
		long(ticket.Plus, c.Ends, "one end"), long(ticket.Plus, c.Ends, "the other"))
	p.joints(add)
	if c.Counter.Sign() > 0 {
		add("length to ask for, as the shop cuts it", ticket.Long(p.Buy))
	}
	if !c.Long.IsZero() {
		add("cloth to spare", ticket.Long(p.Spare), long(ticket.Plus, c.Long, "the cloth"), long(ticket.Minus, p.Used, "the lay and its ends"))
	}
	return lines
}

func (p Plan) cautions() []ticket.Caution {
	out := make([]ticket.Caution, 0, 8)
	if !p.Fits {
		out = append(out, ticket.Caution{Text: "This lay is longer than the cloth. A shorter one was not found, which is not proof that there is none: search longer, turn or piece a part, or let the outlines nest.", Refer: "the cutter's own trial lay decides"})
	}
	if p.Stopped {
		out = append(out, ticket.Caution{Text: "The search was stopped early, or left out as the outlines have too many points: there may be a shorter lay."})
	}
	if slices.ContainsFunc(p.Placements, func(at Placement) bool {
		return at.Across && (at.Piece < 0 || at.Piece >= len(p.Spec.Pieces) || p.Spec.Pieces[at.Piece].Turn != Bias)
	}) {
		out = append(out, ticket.Caution{Text: "Pieces laid across the grain hang and shrink otherwise and show on nap, print and sheen.", Refer: "the pattern's grain line decides"})
	}
	if len(p.Spec.Pieces) == 0 || slices.ContainsFunc(p.Spec.Pieces, func(one Piece) bool { return len(one.Outline) == 0 }) {
		text := "Pieces are laid as rectangles, opened out where the pattern says fold; curved outlines may nest closer."
		switch {
		case p.Spec.outlined():
			text = "Pieces that have no outline here are laid as rectangles; the curved ones among them may nest closer."
		case p.Spec.Cloth.Folded:
			text = "Pieces are laid as rectangles; curved outlines may nest closer."
		}
		out = append(out, ticket.Caution{Text: text, Refer: "common practice"})
	}
	if p.Spec.outlined() {
		out = append(out, ticket.Caution{Text: "Pieces with an outline are measured to the edges of the smallest rectangle around them, sides along and across the cloth.", Refer: "the drawing of the lay shows which way each nests"})
	}
	return append(p.trade(out), ticket.CutCare())
}

// trade adds the cautions about fold, bias and matching.
func (p Plan) trade(out []ticket.Caution) []ticket.Caution {
	s := &p.Spec
	if s.Cloth.OneWay {
		out = append(out, ticket.Caution{Text: "Every piece lies the way it is drawn, none turned end for end. Before the first is laid, see which way the nap or the print is to run.", Refer: "common practice"})
	}
	if len(s.Cloth.Flaws) > 0 {
		out = append(out, ticket.Caution{Text: "No piece lies on a flaw that is given; look the whole cloth over, on both sides, for others before it is laid out.", Refer: "common practice"})
	}
	var extra []int
	if s.Cloth.Folded {
		extra = p.Extra
	}
	for i, n := range extra {
		if n > 0 {
			out = append(out, ticket.Caution{Text: "Cut double, " + s.nameOf(i) + " comes out with copies that are not asked for: " + strconv.Itoa(n) + ". Open the cloth out for it, or keep them as spares."})
		}
	}
	if s.Cloth.Folded && s.Cloth.double().MulInt(2).Less(s.Cloth.Wide) {
		out = append(out, ticket.Caution{Text: "The single layer beside the double cloth is left uncut here; what is over can be laid by itself."})
	}
	if slices.ContainsFunc(s.Pieces, func(one Piece) bool { return one.Turn == Bias }) {
		out = append(out, ticket.Caution{Text: "Pieces on the bias are turned by an angle that comes out in whole steps, less than half a right angle by a little: the thread line itself decides.", Refer: "the fold of the cloth, weft on warp, shows the true bias"})
	}
	if s.matched() {
		out = append(out, ticket.Caution{Text: "Notches of one name lie on one place of the repeat as it is given. Measure the repeat along the whole cloth, and match by eye before cutting; on double cloth, pin the layers so that their stripes agree.", Refer: "common practice"})
	}
	return out
}

// titles are what to do with each piece, written in one text.
func (s Spec) titles(order []Placement) []string {
	b := make([]byte, 0, 32*len(order))
	ends := make([]int, len(order))
	for i, at := range order {
		b = append(b, "Lay "...)
		if at.Piece < 0 || at.Piece >= len(s.Pieces) {
			b = append(b, "a piece"...)
		} else if one := s.Pieces[at.Piece]; one.Name == "" {
			b = strconv.AppendInt(append(b, "piece "...), int64(at.Piece)+1, 10)
		} else {
			b = append(b, one.Name...)
		}
		if at.Piece >= 0 && at.Piece < len(s.Pieces) && at.Of > 1 {
			b = s.titleParts(b, at)
		} else if at.Piece >= 0 && at.Piece < len(s.Pieces) && s.Pieces[at.Piece].Count > 1 {
			first, second := at.Copy, 0
			if s.Cloth.Folded {
				first, second = at.Copies(s)
			}
			if second > 0 {
				b = strconv.AppendInt(append(b, ", copies "...), int64(first), 10)
				b = strconv.AppendInt(append(b, " and "...), int64(second), 10)
			} else {
				b = strconv.AppendInt(append(b, ", copy "...), int64(first), 10)
			}
		}
		ends[i] = len(b)
	}
	text, start := string(b), 0
	names := make([]string, len(order))
	for i, end := range ends {
		names[i], start = text[start:end], end
	}
	return names
}
