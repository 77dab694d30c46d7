package seam

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Roll is two layers bent together, the inner of which must be shorter so that it does
// not bag: a cuff or a collar stand, closed to a ring (360 deg, whatever its size), a
// collar folded right over (180 deg), a front edge turned square (90 deg). The rule is
// plain geometry.
type Roll struct {
	// Apart is between the middles of the two layers: one thickness, where both are of one
	// cloth and lie together.
	Apart units.Length `json:"apart,omitzero"`
	// Angle is the one through which the layers are bent.
	Angle units.Angle `json:"angle,omitzero"`
	// Length is that of the outer layer along the bend. May be omitted; the difference alone
	// is then worked out.
	Length units.Length `json:"length,omitzero"`
}

// A RollPlan is what the bend takes.
type RollPlan struct {
	Spec    Roll       `json:"spec,omitzero"`    // as given
	Shorter units.Near `json:"shorter,omitzero"` // how much shorter the inner layer must be, or longer the outer
	Inner   units.Near `json:"inner,omitzero"`   // Length less Shorter; zero where Length is omitted

	// Flat is what one flat fold of a cloth as thick as Apart takes from each side of it,
	// (pi/2 - 1)/2 of the thickness: less than a third, and ignored in a hem.
	Flat units.Near `json:"flat,omitzero"`
}

// Plan works out the bend. The faults are [fault.Faults].
func (r Roll) Plan() (RollPlan, error) {
	var a fault.Audit
	a.Need("apart", r.Apart)
	switch r.Angle.Sign() {
	case 0:
		a.Fault("angle", "", "more than 0 deg", fault.Missing)
	case -1:
		a.Fault("angle", r.Angle.String(), "more than 0 deg", fault.Sign)
	}
	a.NotNegative("length", r.Length)
	if a.Failed() {
		return RollPlan{}, a.Err()
	}
	p := RollPlan{Spec: r, Shorter: r.Angle.InRadians().Of(r.Apart)}
	p.Flat = units.Pi().Of(r.Apart.DivInt(4)).Plus(r.Apart.DivInt(-2))
	if !r.Length.IsZero() {
		p.Inner = units.Exactly(r.Length).Sub(p.Shorter)
		if n, err := p.Inner.Sign(); err != nil || n <= 0 {
			a.Fault("length", r.Length.String(), "more than {0} (what the bend takes)", fault.Range, p.Shorter.Settled())
			return RollPlan{}, a.Err()
		}
	}
	units.Settle(&p.Shorter, &p.Inner, &p.Flat)
	return p, nil
}

// Sheet is the plan as work.
func (p RollPlan) Sheet() ticket.Sheet {
	r := p.Spec
	sh := ticket.Sheet{Title: "Layers bent together", Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()}}
	if r.Apart.IsZero() {
		return sh // the plan of no roll has nothing to say
	}
	sh.Answer = []ticket.Line{{Label: "make the inner layer shorter by", Result: ticket.About(p.Shorter)}}
	l := bent("inner layer shorter by", p.Shorter, r.Apart, "between the middles", r.Angle)
	sh.Lines = append(sh.Lines, line("between the middles of the layers", r.Apart), l)
	cut := ticket.Step{Do: "Cut the inner layer shorter than the outer, or take its end seams so much wider", At: ticket.About(p.Shorter), From: "the ends of the outer, both together",
		Note: "half of it at each end where both ends are seamed; the seam lines of the ends still meet"}
	if !r.Length.IsZero() {
		sh.Lines = append(sh.Lines, ticket.Line{Label: "inner layer", Result: ticket.About(p.Inner), Terms: []ticket.Term{
			plus(r.Length, "outer"), {Op: ticket.Minus, Amount: ticket.About(p.Shorter), Name: "the bend"}}})
		cut.Check = ticket.Check{What: "the inner layer along its seam line", Want: ticket.About(p.Inner), Give: sew.Hand(noun.Tape(r)),
			Mend: "move the end seams of the inner layer alone"}
	}
	sh.Steps = []ticket.Step{cut, {Do: "Roll the two layers over the hand as they will lie, and pin them so before the raw edges are trimmed to one"}}
	sh.Sources = []source.Cite{source.Practise("the inner of two layers is shorter by the bend times what lies between them")}
	return sh
}
