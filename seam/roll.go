package seam

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxQuarters is the most quarter turns of one [Roll].
const MaxQuarters = 1000

// A Roll is two layers bent together, the inner of which must be shorter so that
// it does not bag: a cuff or a collar stand, closed to a ring (4 quarter turns,
// whatever its size), a collar folded right over (2), a front edge turned square
// (1). The rule is plain geometry. Zero means not given.
type Roll struct {
	Apart    units.Length `json:"apart,omitzero"`    // between the middles of the two layers: one thickness, where both are of one cloth and lie together
	Quarters int          `json:"quarters,omitzero"` // quarter turns that the layers are bent through, at most [MaxQuarters]; or give Angle
	Angle    units.Ratio  `json:"angle,omitzero"`    // the bend in radians; or give Quarters
	Length   units.Length `json:"length,omitzero"`   // of the outer layer along the bend; not given: only the difference is worked out
}

// A RollPlan is what the bend takes. It is comparable.
type RollPlan struct {
	Spec    Roll       `json:"spec,omitzero"`    // as given
	Assumed []string   `json:"assumed,omitzero"` // always empty: a roll has no default
	Shorter units.Near `json:"shorter,omitzero"` // how much shorter the inner layer must be, or longer the outer
	Inner   units.Near `json:"inner,omitzero"`   // Length less Shorter; zero where Length is not given

	// Flat is what one flat fold of a cloth as thick as Apart takes from each side
	// of it, (pi/2 - 1)/2 of the thickness: less than a third, and ignored in a
	// hem.
	Flat units.Near `json:"flat,omitzero"`
}

// Plan works out the bend. The faults are [fault.Faults].
func (r Roll) Plan() (RollPlan, error) {
	var a fault.Audit
	a.Need("apart", r.Apart)
	switch {
	case r.Quarters == 0 && r.Angle.IsZero():
		a.Fault("quarters", "", "1 or more, or angle", fault.Missing)
	case r.Quarters != 0:
		a.Count("quarters", r.Quarters, 1, MaxQuarters)
	}
	switch {
	case r.Angle.Sign() < 0:
		a.Fault("angle", short(r.Angle.String()), "more than 0", fault.Sign)
	case r.Angle.Sign() > 0 && r.Quarters != 0:
		a.Fault("angle", short(r.Angle.String()), "none where quarters is "+strconv.Itoa(r.Quarters), fault.Unused)
	}
	a.NotNegative("length", r.Length)
	if a.Failed() {
		return RollPlan{}, a.Err()
	}
	p := RollPlan{Spec: r, Shorter: units.Exactly(r.Apart.Scale(r.Angle))}
	if r.Quarters > 0 {
		p.Shorter = units.Pi().Of(r.Apart.MulInt(int64(r.Quarters)).DivInt(2))
	}
	p.Flat = units.Pi().Of(r.Apart.DivInt(4)).Plus(r.Apart.DivInt(-2))
	if !r.Length.IsZero() {
		p.Inner = units.Exactly(r.Length).Sub(p.Shorter)
		if n, err := p.Inner.Sign(); err != nil || n <= 0 {
			a.Fault("length", short(r.Length.String()), "more than "+short(p.Shorter.String())+" (what the bend takes)", fault.Range)
			return RollPlan{}, a.Err()
		}
	}
	units.Settle(&p.Shorter, &p.Inner, &p.Flat)
	return p, nil
}

// Solve is r, which has no default. It fails as [Roll.Plan] does.
func (r Roll) Solve() (Roll, error) {
	_, err := r.Plan()
	return r, err
}

// Sheet is the plan as work.
func (p RollPlan) Sheet() ticket.Sheet {
	r := p.Spec
	sh := ticket.Sheet{Title: "Layers bent together", Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()}}
	if r.Apart.IsZero() {
		return sh // the plan of no roll has nothing to say
	}
	l := ticket.Line{Label: "inner layer shorter by", Result: ticket.About(p.Shorter)}
	if r.Quarters == 0 {
		l.Terms = []ticket.Term{plus(r.Apart, "between the middles"), {Op: ticket.By, Amount: ticket.Times(r.Angle), Name: "bend in radians"}}
	}
	sh.Lines = append(sh.Lines, line("between the middles of the layers", r.Apart), l) // a quarter turn is irrational: the result is stated
	cut := ticket.Step{Do: "Cut the inner layer shorter than the outer, or take its end seams so much wider", At: ticket.About(p.Shorter), From: "the ends of the outer, both together",
		Note: "half of it at each end where both ends are seamed; the seam lines of the ends still meet"}
	if !r.Length.IsZero() {
		sh.Lines = append(sh.Lines, ticket.Line{Label: "inner layer", Result: ticket.About(p.Inner), Terms: []ticket.Term{
			plus(r.Length, "outer"), {Op: ticket.Minus, Amount: ticket.About(p.Shorter), Name: "the bend"}}})
		cut.Check = ticket.Check{What: "the inner layer along its seam line", Want: ticket.About(p.Inner), Give: hand(),
			Mend: "move the end seams of the inner layer alone"}
	}
	sh.Steps = []ticket.Step{cut, {Do: "Roll the two layers over the hand as they will lie, and pin them so before the raw edges are trimmed to one"}}
	sh.Sources = []source.Cite{source.Practise("the inner of two layers is shorter by the bend times what lies between them")}
	return sh
}
