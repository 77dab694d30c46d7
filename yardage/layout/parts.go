package layout

import (
	"fmt"
	"slices"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/units/ticket"
)

// MaxParts is the most parts that a piece may be cut in.
const MaxParts = 50

// strip is the piece as so many equal parts joined end to end, its allowances
// counted: what they come to sewn is the whole of its longer side.
func (p *Piece) strip(parts int) (strip.Plan, error) {
	one := p.grown()
	return strip.Spec{Pieces: parts, Allowance: units.Give(p.Join), Least: one.Wide.Max(one.Long)}.Plan()
}

// part is one of so many parts of the piece as drawn, its allowances counted.
func (p Piece) part(parts int) Piece {
	if parts <= 1 {
		return p
	}
	each, err := p.strip(parts)
	if err != nil {
		return p // never of a piece that is good
	}
	p = p.grown()
	if p.Long.Less(p.Wide) {
		p.Wide = each.Spec.Each
	} else {
		p.Long = each.Spec.Each
	}
	return p
}

// auditParts checks what is asked of a piece that may be cut in parts.
func (p *Piece) auditParts(own *fault.Audit) {
	if p.Parts < 0 || p.Parts > MaxParts {
		own.Fault("parts", strconv.Itoa(p.Parts), fmt.Sprintf("1 to %d, or 0 for a piece cut whole", MaxParts), fault.Range)
		return
	}
	own.NotNegative("join", p.Join)
	switch {
	case p.Parts <= 1:
		if p.Join.Sign() > 0 {
			own.Fault("join", p.Join.String(), "for parts of 2 or more only", fault.Unused)
		}
	case len(p.Outline) > 0 || p.Fold || p.Pair || p.Centred || p.Turn == Bias || len(p.Notches) > 0:
		own.Fault("parts", strconv.Itoa(p.Parts), "1 for a piece with outline, fold, pair, centred, notches or on the bias", fault.Conflict)
	case !own.Failed():
		if _, err := p.strip(p.Parts); err != nil {
			one := p.grown()
			own.Fault("join", p.Join.String(), "less than half the longer side, "+one.Wide.Max(one.Long).DivInt(2).String()+", for three parts or more", fault.Range)
		}
	}
}

// joined reports whether any piece may be cut in parts.
func (s *Spec) joined() bool {
	return slices.ContainsFunc(s.Pieces, func(p Piece) bool { return p.Parts > 1 })
}

// ways are the numbers of parts that the pieces are tried with: each in as few
// as the cloth can take, then each in one more as far as it may, and so forth.
func (s *Spec) ways() [][]int {
	if !s.joined() {
		return [][]int{nil}
	}
	first := make([]int, len(s.Pieces))
	more := 0
	for i := range s.Pieces {
		one := &s.Pieces[i]
		first[i] = 1
		for first[i] < one.Parts {
			as := one.part(first[i])
			if s.fits(as.laid(&s.Cloth)) {
				break
			}
			first[i]++
		}
		more = max(more, one.Parts-first[i])
	}
	out := make([][]int, more+1)
	for k := range out {
		out[k] = slices.Clone(first)
		for i := range first {
			out[k][i] = max(first[i], min(first[i]+k, s.Pieces[i].Parts))
		}
	}
	return out
}

// parted is s with its pieces cut in so many parts, each part counted as a copy:
// the parts of the first copy first. Parts is then how many there are.
func (s Spec) parted(parts []int) Spec {
	if parts == nil {
		return s
	}
	s.Pieces = slices.Clone(s.Pieces)
	for i, n := range parts {
		if n > 1 {
			s.Pieces[i] = s.Pieces[i].part(n)
			s.Pieces[i].Count *= n
		}
		s.Pieces[i].Parts = n
	}
	return s
}

// room checks the pieces, cut in so many parts, against the cloth.
func (s Spec) room(parts []int, a *fault.Audit, c *clock) (ground, bool) {
	s = s.parted(parts)
	total := 0
	for _, p := range s.Pieces {
		total += p.Count
	}
	if total > MaxPieces {
		a.Fault("pieces", strconv.Itoa(total)+" with all copies and parts", fmt.Sprintf("at most %d", MaxPieces), fault.Range)
		return ground{}, false
	}
	g, good := s.auditRoom(a, c)
	g.parts = parts
	return g, good
}

// rooms is room for the first of the ways to cut the pieces that is good; the
// faults are those of the last.
func (s Spec) rooms(a *fault.Audit, c *clock) (ground, bool) {
	var own fault.Audit
	for _, parts := range s.ways() {
		own = fault.Audit{}
		if g, good := s.room(parts, &own, c); good {
			return g, true
		}
	}
	a.Include("", own.Err())
	return ground{}, false
}

// serial counts the placement's copy as [Spec.parted] does.
func (p Placement) serial() int {
	if p.Of <= 1 {
		return p.Copy
	}
	return (p.Copy-1)*p.Of + p.Part
}

// unserial is the placement of a copy that is counted so.
func (p Placement) unserial(of int) Placement {
	if of > 1 {
		p.Part, p.Of, p.Copy = (p.Copy-1)%of+1, of, (p.Copy-1)/of+1
	}
	return p
}

// partsOf is how many parts each piece is cut in, as the placements have it; nil
// where all are cut whole.
func (s *Spec) partsOf(placements []Placement) []int {
	var parts []int
	for _, at := range placements {
		if at.Of > 1 && at.Piece >= 0 && at.Piece < len(s.Pieces) {
			if parts == nil {
				parts = slices.Repeat([]int{1}, len(s.Pieces))
			}
			parts[at.Piece] = at.Of
		}
	}
	return parts
}

// proveParts checks that each placement is of one whole piece or of one part,
// that no copy has others than the copies before it, and that a piece may be cut
// so. It gives s and the placements with every part as a copy; that no part is
// missing is for them to show.
func (s Spec) proveParts(placements []Placement, a *fault.Audit) (Spec, []Placement) {
	if !s.joined() && !slices.ContainsFunc(placements, func(at Placement) bool { return at.Of != 0 || at.Part != 0 }) {
		return s, placements
	}
	parts, out := make([]int, len(s.Pieces)), slices.Clone(placements) // 0: not yet known
	for i, at := range placements {
		if at.Piece < 0 || at.Piece >= len(s.Pieces) {
			continue // found later
		}
		path := "placements[" + strconv.Itoa(i) + "]"
		whole := at.Of == 0 && at.Part == 0
		switch most := max(1, s.Pieces[at.Piece].Parts); {
		case !whole && (at.Of < 2 || at.Of > most):
			a.Fault(path+".of", strconv.Itoa(at.Of), fmt.Sprintf("2 to %d, or 0 for a piece cut whole", most), fault.Range)
		case !whole && (at.Part < 1 || at.Part > at.Of):
			a.Fault(path+".part", strconv.Itoa(at.Part), fmt.Sprintf("1 to %d", at.Of), fault.Range)
		case parts[at.Piece] > 0 && max(1, at.Of) != parts[at.Piece]:
			a.Fault(path+".of", strconv.Itoa(at.Of), fmt.Sprintf("%d parts, as the piece has before", parts[at.Piece]), fault.Conflict)
		case !whole && (at.Copy < 1 || at.Copy > s.Pieces[at.Piece].Count):
			a.Fault(path+".copy", strconv.Itoa(at.Copy), fmt.Sprintf("1 to %d", s.Pieces[at.Piece].Count), fault.Range)
		default:
			parts[at.Piece] = max(1, at.Of)
			out[i].Copy, out[i].Part, out[i].Of = at.serial(), 0, 0
		}
	}
	if a.Failed() {
		return s, out
	}
	for i := range parts {
		parts[i] = max(1, parts[i])
	}
	return s.parted(parts), out
}

// cut is s with its pieces cut as the plan has it.
func (p *Plan) cut() Spec { return p.Spec.parted(p.Spec.partsOf(p.Placements)) }

// best finds the best lay of the ways to cut the pieces, and its ground. Of two
// lays within Cloth.Long that of fewer parts is the better, of others the shorter.
// Where no piece may be cut in parts there is but one way, with that ground.
func (p *Plan) best(only ground, find func(*Plan, ground)) (best ground) {
	whole, found, stopped := *p, false, false
	for _, parts := range p.Spec.ways() {
		var a fault.Audit
		g, good := only, true
		if parts != nil {
			g, good = whole.Spec.room(parts, &a, nil)
		}
		if !good {
			continue
		}
		one := whole.lay(g, find)
		stopped = stopped || one.Stopped
		if !found || one.Lay.Less(p.Lay) {
			*p, best, found = one, g, true
		}
		if stopped || p.Fits && !p.Spec.Cloth.Long.IsZero() {
			break
		}
	}
	p.Stopped = stopped
	return best
}

// lay is the plan with the lay that is found on a ground, and what it comes to.
func (p Plan) lay(g ground, find func(*Plan, ground)) Plan {
	whole := p.Spec
	p.Spec, p.Placements = whole.parted(g.parts), nil
	find(&p, g)
	for i, at := range p.Placements {
		if g.parts != nil {
			p.Placements[i] = at.unserial(g.parts[at.Piece])
		}
	}
	p.Spec = whole
	p.measure()
	p.Bound = g.bound()
	return p
}

// joints are the sums behind the pieces that are cut in parts.
func (p *Plan) joints(add func(label string, result ticket.Amount, terms ...ticket.Term)) {
	for i, n := range p.Spec.partsOf(p.Placements) {
		one := &p.Spec.Pieces[i]
		each, err := one.strip(n)
		if n <= 1 || err != nil {
			continue
		}
		name := p.Spec.nameOf(i)
		long := func(op ticket.Op, l units.Length, name string) ticket.Term {
			return ticket.Term{Op: op, Amount: ticket.Long(l), Name: name}
		}
		times := func(n int, name string) ticket.Term {
			return ticket.Term{Op: ticket.By, Amount: ticket.Times(units.RatioOf(int64(n), 1)), Name: name}
		}
		joins := one.Join.MulInt(2 * int64(each.Joins))
		add(name+": taken by the joins", ticket.Long(joins), long(ticket.Plus, one.Join, "each side of a join"), times(2, "sides"), times(each.Joins, "joins"))
		add(name+": length of each part", ticket.Long(each.Spec.Each),
			long(ticket.Plus, each.Sewn, "the whole strip"), long(ticket.Plus, joins, "the joins"),
			ticket.Term{Op: ticket.Over, Amount: ticket.Times(units.RatioOf(int64(n), 1)), Name: "parts"})
		add(name+": first join, from the strip's end", ticket.Long(each.Places[0]), long(ticket.Plus, each.Spec.Each, "one part"), long(ticket.Minus, one.Join, "its side of the join"))
		if each.Joins > 1 {
			step := each.Places[1].Sub(each.Places[0])
			add(name+": from one join to the next", ticket.Long(step), long(ticket.Plus, each.Spec.Each, "one part"),
				long(ticket.Minus, one.Join, "one join"), long(ticket.Minus, one.Join, "the next"))
		}
	}
}

// joining are the steps that make whole strips of the parts.
func (p *Plan) joining(steps []ticket.Step) []ticket.Step {
	for i, n := range p.Spec.partsOf(p.Placements) {
		one := &p.Spec.Pieces[i]
		each, err := one.strip(n)
		if n <= 1 || err != nil {
			continue
		}
		st := ticket.Step{
			Do:    "Join the parts of " + p.Spec.nameOf(i) + " end to end, right sides together",
			Note:  "square across, a strip's parts in one direction of the cloth",
			Check: ticket.Check{What: "whole length of each strip", Want: ticket.Long(each.Sewn), Mend: "unpick one join and take it wider or narrower"},
		}
		if !one.Join.IsZero() {
			st.At, st.From = ticket.Long(one.Join), "the raw ends"
		}
		steps = append(steps, st)
	}
	return steps
}

// titleParts adds which part, or parts, of a piece a placement cuts.
func (s *Spec) titleParts(b []byte, at Placement) []byte {
	add := func(text string, n int) { b = strconv.AppendInt(append(b, text...), int64(n), 10) }
	many, other := s.Pieces[at.Piece].Count > 1, at.other(s)
	if many {
		add(", copy ", at.Copy)
	}
	if other.Copy == at.Copy {
		add(", parts ", at.Part)
		add(" and ", other.Part)
		add(" of ", at.Of)
		return b
	}
	add(", part ", at.Part)
	add(" of ", at.Of)
	if other.Copy > 0 {
		add(", and copy ", other.Copy)
		add(", part ", other.Part)
	}
	return b
}

// nameOf is what a piece is called.
func (s *Spec) nameOf(i int) string {
	if name := s.Pieces[i].Name; name != "" {
		return name
	}
	return "piece " + strconv.Itoa(i+1)
}
