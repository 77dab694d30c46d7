package alter

import (
	"strconv"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Bounds of one [Letting].
const (
	MaxLettings = 50  // most kinds of seam that share it
	MaxAlike    = 100 // most seams sewn alike
)

// A Let is a seam, or several sewn alike, that is let out or taken in.
type Let struct {
	// Name is the seam's name, as in an [edge.Assembly].
	Name string `json:"name,omitzero"`
	// Spec is how it is sewn now.
	Spec seam.Any `json:"spec,omitzero"`
	// Times is how many seams of the garment are sewn alike: two side seams. May be omitted;
	// the default is 1.
	Times int `json:"times,omitzero"`
	// Sewn says that the seam has been made up, so that what it trimmed away is gone: a
	// French seam, both of whose plies were trimmed, has little left to let out. May be
	// omitted; all that was cut is then still there.
	Sewn bool `json:"sewn,omitzero"`
	// Least is the narrowest allowance that the new seam is to take from each ply. May be
	// omitted; the default is 1/4 in, or 6 mm: common practice.
	Least units.Length `json:"least,omitzero"`
	// Each is the change of each ply, which this seam is to give and no more; a negative one
	// takes in. May be omitted; the seam then gives an equal share.
	Each units.Length `json:"each,omitzero"`
	// Then is how the seam is sewn afterwards, its allowance being that of spec. May be
	// omitted; the default is as now.
	Then seam.Any `json:"then,omitzero"`
}

// A Letting is a garment let out, or taken in, by a total that is spread over chosen
// seams. Every ply gives alike; a seam that cannot give so much gives what it can, and
// the others more.
type Letting struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape on
	// whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Total is the change of the garment, all plies of all seams together: positive lets it
	// out, negative takes it in.
	Total units.Length `json:"total,omitzero"`
	// Seams are the seams that give it, 1 to 50.
	Seams []Let `json:"seams,omitzero"`
}

// A LetPlan is what one of the seams gives.
type LetPlan struct {
	Has   units.Length `json:"has,omitzero"`   // what is left of the allowance on each ply beyond the drafted or the sewn line: all that the seam takes, less what was trimmed off the shorter ply
	Gives units.Length `json:"gives,omitzero"` // the most that each ply can give: Has less Least; zero where it can give nothing
	Each  units.Length `json:"each,omitzero"`  // what each ply gives; it is negative where it takes in
	Seam  units.Length `json:"seam,omitzero"`  // what each seam gives: twice Each
	Total units.Length `json:"total,omitzero"` // what all seams alike give
	Take  units.Length `json:"take,omitzero"`  // what the seam then takes from each ply, from the raw edge as it is then: Has less Each

	Before seam.Plan `json:"before,omitzero"` // the seam as it is now
	After  seam.Plan `json:"after,omitzero"`  // the seam as it is then sewn; where it was trimmed, Drafted and Cut of its spec are what is left of them; Before where it is left alone
}

// A LettingPlan is the change, seam by seam.
type LettingPlan struct {
	Spec    Letting      `json:"spec,omitzero"`    // as solved; a copy of the caller's Seams, their specs as given
	Assumed []string     `json:"assumed,omitzero"` // the fields filled with a default, named once for all seams
	Most    units.Length `json:"most,omitzero"`    // the most that the seams can let out together
	Seams   []LetPlan    `json:"seams,omitzero"`   // in the order of the spec
}

// leastTake is the narrowest allowance that a seam let out should keep.
func leastTake(t units.Tape) units.Length { return t.Of(sew.Inch(1, 4), units.Millimetre.Of(6)) }

// Plan spreads the change. The faults are [fault.Faults]: a total beyond what
// the seams can give states that.
func (l Letting) Plan() (LettingPlan, error) {
	var a fault.Audit
	l.Tape.Check(&a, "tape")
	if l.Total.IsZero() {
		a.Fault("total", "", "more than 0 in to let out, less to take in", fault.Missing)
	}
	if a.Count("seams", len(l.Seams), 1, MaxLettings); len(l.Seams) > MaxLettings {
		return LettingPlan{}, a.Err()
	}
	given := l.Tape
	l.Tape = noun.Tape(l)
	p := LettingPlan{Spec: l, Seams: make([]LetPlan, len(l.Seams))}
	p.Spec.Seams = append(make([]Let, 0, len(l.Seams)), l.Seams...)
	var assumed filled
	for i := range p.Spec.Seams {
		var one fault.Audit
		p.Spec.Seams[i].look(&one, &assumed, &p.Seams[i], l.Total.Sign(), l.Tape)
		if one.Failed() {
			a.Include("seams["+strconv.Itoa(i)+"]", one.Err())
		}
	}
	if a.Failed() {
		return LettingPlan{}, a.Err()
	}
	if given == 0 {
		p.Assumed = []string{"tape"}
	}
	p.Assumed = append(p.Assumed, assumed.keys()...)
	if p.spread(&a); a.Failed() {
		return LettingPlan{}, a.Err()
	}
	for i := range p.Seams {
		if err := p.resew(i); err != nil {
			a.Include("seams["+strconv.Itoa(i)+"]", err)
		}
	}
	if a.Failed() {
		return LettingPlan{}, a.Err()
	}
	return p, nil
}

// filled says which fields of the seams a default filled.
type filled struct{ times, least, then bool }

func (f filled) keys() (names []string) {
	for _, one := range [...]struct {
		set bool
		key string
	}{{f.times, "seams.times"}, {f.least, "seams.least"}, {f.then, "seams.then"}} {
		if one.set {
			names = append(names, one.key)
		}
	}
	return names
}

// look checks one seam, fills its defaults and finds what it has to give.
func (s *Let) look(a *fault.Audit, set *filled, p *LetPlan, sign int, tape units.Tape) {
	a.Text("name", s.Name)
	before, err := s.Spec.On(tape).Plan()
	if err != nil {
		a.Include("spec", err)
	}
	a.Count("times", s.Times, 0, MaxAlike)
	a.NotNegative("least", s.Least)
	if s.Each.Sign() == -sign {
		a.Fault("each", s.Each.String(), "of the sign of total", fault.Conflict)
	}
	if a.Failed() {
		return
	}
	if s.Times == 0 {
		s.Times, set.times = 1, true
	}
	if s.Least.IsZero() {
		s.Least, set.least = leastTake(tape), true
	}
	if s.Then.Kind() == "" {
		s.Then, set.then = s.Spec, true
	}
	if before.Upper.Taken != before.Under.Taken {
		a.Fault("spec", before.Under.Taken.String()+" from the under ply", before.Upper.Taken.String()+", as from the upper: both plies give alike", fault.Conflict)
		return
	}
	p.Before = before
	p.Has = before.Upper.Taken
	if s.Sewn {
		p.Has = before.Upper.Left.Min(before.Under.Left)
	}
	p.Gives = p.Has.Sub(s.Least).Max(units.Length{})
	if s.Each.Sign() > 0 {
		fault.AtMost(a, "each", s.Each, p.Gives, "what its allowance can give", fault.Range)
	}
}

// spread shares the total out: first the amounts that are fixed, then equal
// shares of what remains, a seam that cannot give its share giving all it can.
func (p *LettingPlan) spread(a *fault.Audit) {
	rest := p.Spec.Total
	out := rest.Sign() > 0
	var space [MaxLettings]int
	open := space[:0]
	var plies int64
	for i, s := range p.Spec.Seams {
		n := 2 * int64(s.Times)
		if !s.Each.IsZero() {
			p.Seams[i].Each = s.Each
			rest = rest.Sub(s.Each.MulInt(n))
			p.Most = p.Most.Add(s.Each.MulInt(n))
			continue
		}
		p.Most = p.Most.Add(p.Seams[i].Gives.MulInt(n))
		open, plies = append(open, i), plies+n
	}
	switch {
	case rest.Sign() == -p.Spec.Total.Sign(), !rest.IsZero() && len(open) == 0:
		a.Fault("total", p.Spec.Total.String(), p.Spec.Total.Sub(rest).String()+" (what each gives in all)", fault.Conflict)
		return
	case out && p.Most.Less(p.Spec.Total):
		a.Fault("total", p.Spec.Total.String(), "at most "+p.Most.String()+" (what the allowances can give)", fault.Range)
		return
	case !out:
		p.Most = units.Length{}.Max(p.Most)
	}
	for again := true; again && plies > 0; {
		again = false
		share := rest.DivInt(plies)
		kept := open[:0]
		for _, i := range open {
			if n := 2 * int64(p.Spec.Seams[i].Times); out && p.Seams[i].Gives.Less(share) {
				p.Seams[i].Each = p.Seams[i].Gives
				rest = rest.Sub(p.Seams[i].Gives.MulInt(n))
				plies -= n
				again = true
				continue
			}
			kept = append(kept, i)
		}
		open = kept
	}
	for _, i := range open {
		p.Seams[i].Each = rest.DivInt(plies)
	}
}

// resew is the seam as it is sewn afterwards. What was trimmed off is gone from
// the allowance, so that its guides are measured from the raw edge that is there,
// and its drift is still from the drafted line.
func (p *LettingPlan) resew(i int) error {
	s, o := p.Spec.Seams[i], &p.Seams[i]
	o.Seam = o.Each.MulInt(2)
	o.Total = o.Seam.MulInt(int64(s.Times))
	o.Take = o.Has.Sub(o.Each)
	if o.Each.IsZero() && s.Then == s.Spec {
		o.After = o.Before // left alone
		return nil
	}
	before := o.Before.Spec.Plies()
	plies := s.Spec.On(p.Spec.Tape).Plies()
	if s.Then != s.Spec {
		plies = seam.Allowance{Tape: before.Tape, Drafted: before.Drafted, DraftedUnder: before.DraftedUnder, Fraying: before.Fraying}
	}
	if off := o.Before.Upper.Taken.Sub(o.Has); !off.IsZero() {
		plies.Drafted, plies.DraftedUnder = before.Cut.Sub(off), before.CutUnder.Sub(off)
		plies.Cut, plies.CutUnder = plies.Drafted, plies.DraftedUnder
	}
	made, ok := s.Then.With(plies).Taking(o.Take)
	if !ok {
		return fault.Faults{{Path: "then", Got: s.Then.Kind(), Limit: "a kind that can be sewn with " + o.Take.String() + " from each ply", Kind: fault.Conflict}}
	}
	after, err := made.Plan()
	o.After = after
	return err
}

// Apply is a copy of a in which every seam of the letting that a knows by name is
// sewn as it is afterwards, so that its plan tells what every edge crossed by them,
// and every partner of these, comes to. It fails as [edge.Assembly.With] does.
func (p LettingPlan) Apply(a edge.Assembly) (edge.Assembly, error) {
	for i, s := range p.Spec.Seams {
		var err error
		if a, err = a.With(s.Name, p.Seams[i].After.Spec); err != nil {
			return edge.Assembly{}, err
		}
	}
	return a, nil
}

// Sheet is the change as work.
func (p LettingPlan) Sheet() ticket.Sheet {
	l := p.Spec
	sh := ticket.Sheet{Title: "Letting out", Assumed: p.Assumed, Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()}}
	if l.Total.IsZero() {
		return sh // the plan of no change has nothing to say
	}
	verb, way, sign := "Let out the ", "let out", ticket.Minus
	if l.Total.Sign() < 0 {
		sh.Title, verb, way, sign = "Taking in", "Take in the ", "taken in", ticket.Plus
	}
	sh.Lines = make([]ticket.Line, 0, 1+3*len(p.Seams))
	sh.Steps = append(make([]ticket.Step, 0, 2+len(p.Seams)), ticket.Step{Do: "Try the garment on inside out, and mark the seams before they are unpicked", Note: "on the side that is altered, and copy to the other"})
	sum := ticket.Sum("all seams, "+way, l.Total.Abs())
	for i, o := range p.Seams {
		s := l.Seams[i]
		name := sew.OrElse(s.Name, "unnamed")
		if sign == ticket.Minus {
			sh.Lines = append(sh.Lines, ticket.Sum("each ply of the "+name+" seam can give", o.Gives, ticket.Add(s.Least.Add(o.Gives), "allowance left"), ticket.Less(s.Least, "to be kept")))
		}
		sum.Terms = append(sum.Terms, ticket.Add(o.Total.Abs(), name))
		if o.Each.IsZero() {
			continue
		}
		if len(sh.Answer) < 3 {
			sh.Answer = append(sh.Answer, ticket.Line{Label: "each ply of the " + name + " seam " + way + " by", Result: ticket.Long(o.Each.Abs())})
		}
		sh.Lines = append(sh.Lines,
			ticket.Sum("the "+name+" seams, "+way, o.Total.Abs(), ticket.Add(o.Each.Abs(), "each ply"), ticket.Multiply(2, ""), ticket.Multiply(s.Times, "")),
			ticket.Sum("the new "+name+" seam takes", o.Take, ticket.Add(o.Has, "there is now"), ticket.Term{Op: sign, Amount: ticket.Long(o.Each.Abs()), Name: "each ply"}))
		sh.Steps = append(sh.Steps, ticket.Step{
			Do: verb + name + " seam and sew it again (" + o.After.Sheet().Title + ")", At: ticket.Long(o.Each.Abs()), From: "the old seam line, on each ply",
			Note: "press out the old crease first; where the old stitches have marked the cloth, letting out shows",
			Check: ticket.Check{What: "from the new seam line to the old on one ply", Want: ticket.Long(o.Each.Abs()), Give: ticket.Long(sew.Straightness(l.Tape)),
				Mend: "unpick the new row only, and sew it again from the old line"},
		})
	}
	sh.Lines = append(sh.Lines, sum)
	sh.Steps = append(sh.Steps, ticket.Step{Do: "Measure every edge that these seams cross, and its partner, before anything is sewn to it", Note: "waist, armhole and hem have moved with them"})
	sh.Sources = []source.Cite{source.Practise("a change is shared equally by the plies of the seams chosen"), source.Practise("the allowance to be kept")}
	return sh
}
