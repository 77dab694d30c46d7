package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Bound is an edge enclosed in a binding.
type Bound struct {
	Allowance
	Binding
	// First is the turn of the free edge of the strip, at most depth. May be omitted; the
	// default is depth.
	First units.Length `json:"first,omitzero"`
	Curved
}

// A DoubleBound is an edge enclosed in a binding that is folded in half along
// its length, both raw edges sewn on together.
type DoubleBound struct {
	Allowance
	Binding
	Curved
}

// A Binding is what goes round a bound edge.
type Binding struct {
	// Depth is the width of the binding as it shows. It is needed.
	Depth units.Length `json:"depth,omitzero"`
	// Seam is the seam by which it is sewn on, from the raw edge of the garment, at most
	// depth. May be omitted; the default is depth, and the binding then neither adds to
	// the garment nor takes from it.
	Seam units.Length `json:"seam,omitzero"`
	// Spare is what is added to the width of the strip for the turn of the cloth and the
	// give of the bias; 1/8 in (3 mm) on the bias is common practice. May be omitted;
	// nothing is then added.
	Spare units.Length `json:"spare,omitzero"`
}

// Plan works the hem out.
func (s Bound) Plan() (Plan, error) { return plan(s) }

// Plan works the hem out.
func (s DoubleBound) Plan() (Plan, error) { return plan(s) }

// With is the same hem on an edge of another allowance.
func (s Bound) With(a Allowance) Hem { s.Allowance = a; return s }

// With is the same hem on an edge of another allowance.
func (s DoubleBound) With(a Allowance) Hem { s.Allowance = a; return s }

func (b Binding) taken() units.Length { return b.Seam.Sub(b.Depth) }

// reach is negative: the outer edge of a binding has to give.
func (b Binding) reach() units.Length { return b.Depth.Neg() }

func (b *Binding) derive() {}

func (s *Bound) solve(*solver) {
	fill(&s.Drafted, s.Cut)
	fill(&s.Seam, s.Depth)
	fill(&s.First, s.Depth)
}

func (s *DoubleBound) solve(*solver) {
	fill(&s.Drafted, s.Cut)
	fill(&s.Seam, s.Depth)
}

func (s *Bound) check(v *solver) {
	s.Binding.check(v)
	if !s.Depth.IsZero() {
		fault.AtMost(&v.audit, "first", s.First, s.Depth, "depth", fault.Range)
	}
}

func (b Binding) check(v *solver) {
	if b.Depth.IsZero() {
		v.missing("depth", "more than 0 in")
		return
	}
	// The raw edge would reach past the fold of the binding.
	fault.AtMost(&v.audit, "seam", b.Seam, b.Depth, "depth", fault.Range)
}

func (s Bound) answer(p *Plan) {
	fold := s.Binding.answer(p, 5)
	p.Strips = []Strip{{binding, fold.Add(s.First).Add(s.Spare), fold, 4}}
}

func (s DoubleBound) answer(p *Plan) {
	fold := s.Binding.answer(p, 7)
	p.Strips = []Strip{{binding, fold.MulInt(2).Add(s.Spare), fold, 6}}
}

// answer is from the edge that is sewn on to the fold.
func (b Binding) answer(p *Plan, plies int) units.Length {
	p.Plies = plies
	p.RawToStitch, p.FinishedToStitch = b.Seam, b.Depth
	return b.Seam.Add(b.Depth.MulInt(2))
}

func (s Bound) sheet(p Plan, sh *ticket.Sheet) {
	s.begin(p, sh, plus(s.First, "turn of the free edge"))
	s.steps(p, sh, "Turn in the free edge of the strip", "the edge that is sewn on", "to the wrong side")
	cite(sh, p.assumes("first"), bindingStrip.cite("width of a binding, its turn as deep as itself"))
	s.cite(p, sh)
}

func (s DoubleBound) sheet(p Plan, sh *ticket.Sheet) {
	s.begin(p, sh, term(ticket.By, two, "layers"))
	s.steps(p, sh, "Fold the strip in half along its length", "its raw edges", "wrong side inside")
	cite(sh, true, doubledStrip.cite("width of a doubled binding"))
	s.cite(p, sh)
}

// begin is the working of a binding, its strip with what lies beyond the fold.
func (b Binding) begin(p Plan, sh *ticket.Sheet, beyond ticket.Term) {
	p.begin(sh, p.takes(plus(b.Seam, "seam"), minus(b.Depth, "width of the binding")).Turned("the binding stands out beyond the raw edge by"), longer, shorter)
	p.stripLines(sh, b.Spare, []ticket.Term{plus(b.Depth, "depth"), term(ticket.By, two, "sides"), plus(b.Seam, "seam")}, beyond)
	p.edges(sh, bend{
		terms: []ticket.Term{plus(b.Depth, "depth")},
		each:  "binding, at each side edge, to lose", less: "binding, at each side edge, too short by",
		all: "binding to lose", lacks: "binding too short by",
		circle: "round a circle of the depth as radius",
	})
}

func (b Binding) steps(p Plan, sh *ticket.Sheet, turn, from, press string) {
	p.stripSteps(sh, "Cut it on the true bias where the edge curves; it grows narrower as it is stretched", turn, from, press, ticket.Step{At: ticket.Long(b.Seam),
		Note: "Lay the strip flat along a straight edge; ease it round a convex curve and stretch it a little round a concave one, so that its fold lies flat"})
	sh.Steps = append(sh.Steps,
		ticket.Step{
			Do: "Press the strip away, fold it over the raw edge, and pin its free edge on the line of stitching", Press: "over the edge",
			Check: ticket.Check{
				What: "the binding, from its seam to the finished edge", Want: ticket.Long(b.Depth), Give: ticket.Long(p.give().Min(b.Depth.DivInt(4))),
				Mend: "Trim the raw edges where the binding is wide; unpick and sew a narrower seam where it is scant",
			},
		},
		ticket.Step{
			Do: "Hem the free edge to the stitches by hand, or stitch in the ditch from the right side", At: ticket.Long(p.FinishedToStitch), From: "the finished edge",
		}, p.length())
	if !p.Drift.IsZero() {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "A binding takes nothing from the garment: whatever is left below the drafted line makes it longer, and a neck or an armhole tighter."})
	}
	sh.Cautions = append(sh.Cautions, narrows)
}

func (b Binding) cite(p Plan, sh *ticket.Sheet) {
	cite(sh, p.assumes("seam"), source.Practise("seam of a binding as deep as the binding"))
	p.end(sh, false)
	cite(sh, true, stripAddsUp)
}

func (s Bound) measures() []measure {
	return []measure{{"spec.depth", s.Depth}, {"spec.first", s.First}, {"spec.seam", s.Seam}}
}

func (s DoubleBound) measures() []measure {
	return []measure{{"spec.depth", s.Depth}, {"spec.seam", s.Seam}}
}

const binding = "binding"

func (s Bound) draw(p Plan, k sketch) []section.Drawing {
	out := k
	k.sewn(p, s.First)
	edge, depth, raw := s.over(&out), s.Depth.Neg(), s.taken()
	out.strip(binding, out.from(raw, 2).To(edge).Step(1).To(out.half(1)).Step(-4).To(edge).Step(1).To(depth.Add(s.First)), section.Hidden, section.Hidden, section.Left)
	s.rows(&out, 4, 3, binding, cloth)
	out.measure("turned in", section.Below, depth, depth.Add(s.First), -2, s.First)
	return []section.Drawing{k.Drawing, out.Drawing}
}

func (s DoubleBound) draw(p Plan, k sketch) []section.Drawing {
	out := k
	k.sewn(p, units.Length{})
	edge, depth, raw := s.over(&out), s.Depth.Neg(), s.taken()
	out.strip(binding, out.from(raw, 2).To(depth.Sub(out.half(3))).Step(3).To(out.half(3)).Step(-6).To(edge).Step(1).
		To(out.half(1)).Step(4).To(edge).Step(-1).To(raw), section.Hidden, section.Hidden, section.Left)
	s.rows(&out, 8, 5, binding, binding, cloth)
	return []section.Drawing{k.Drawing, out.Drawing}
}

// over begins the drawing of a binding folded over the raw edge, its free edge on the
// seam. It is where the strip turns there.
func (b Binding) over(k *sketch) units.Length {
	k.begin("", "The cloth lies right side up, its bound edge on the right.")
	k.cloth(k.from(b.Depth.Neg().Sub(k.run), 0).To(b.taken()), section.RunsOn, section.Hidden, section.Left)
	return b.Depth.Neg().Sub(k.half(1))
}

func (b Binding) rows(k *sketch, top, under int64, through ...string) {
	depth := b.Depth.Neg()
	k.row("seam", depth, under, -1, through...)
	k.row("free edge, hemmed to the seam", depth, -1, -5, binding, binding)
	k.measure("binding", section.Above, depth, origin, top, b.Depth)
	k.measure("seam", section.Below, depth, b.taken(), 0, b.Seam)
}
