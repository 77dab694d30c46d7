package edge

import (
	"cmp"
	"fmt"
	"slices"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// MaxTries is the most changes that one search for remedies tries. Changes of
// seams that cross a mismatched edge are tried first, in the order of the seams.
const MaxTries = 600

// An Act is what a [Remedy] does.
type Act uint8

// The acts.
const (
	NoAct         Act = iota
	ChangePass        // sew the seam with passes that take what was cut, so that nothing drifts
	CutDrift          // cut both plies of the seam to what it takes before sewing it, and sew it as meant
	SewPartner        // sew the partner's own crossing seam so that the partner drifts too
	SpreadPartner     // no seam crosses the partner: spread or fold its pattern piece where the other edge has its seams
)

var actNames = [...]string{
	NoAct: "none", ChangePass: "change-pass", CutDrift: "cut-drift", SewPartner: "sew-partner", SpreadPartner: "spread-partner",
}

// String is the act's name, as in cut-drift; none for [NoAct].
func (a Act) String() string {
	if int(a) < len(actNames) {
		return actNames[a]
	}
	return fmt.Sprintf("Act(%d)", uint8(a))
}

// MarshalText is the act's name, empty for [NoAct]. A value that is no act is a
// fault.
func (a Act) MarshalText() ([]byte, error) { return ticket.NameText(a, actNames[:], "act") }

// UnmarshalText takes an act's name. Empty text is [NoAct].
func (a *Act) UnmarshalText(text []byte) error {
	return ticket.ReadName(a, text, actNames[:], "act")
}

// Acts yields every [Act], [NoAct] excepted.
func Acts(yield func(Act) bool) {
	for a := ChangePass; int(a) < len(actNames); a++ {
		if !yield(a) {
			return
		}
	}
}

// A Remedy is one change that can be carried out, and what it comes to: its
// counts are found by working out the whole anew with the change made. It is
// comparable.
type Remedy struct {
	Act    Act          `json:"act,omitzero"`    // what it does
	Edge   string       `json:"edge,omitzero"`   // the edge in question: the first mismatched one that the seam crosses; the one spread
	Seam   string       `json:"seam,omitzero"`   // the seam that is changed; empty where none is
	Spec   seam.Any     `json:"spec,omitzero"`   // how that seam is then sewn; none from a [Pair], which knows no kinds
	Cut    units.Length `json:"cut,omitzero"`    // the allowance to which the upper ply of that seam is then cut
	Take   units.Length `json:"take,omitzero"`   // what that seam then takes from its upper ply
	Net    units.Length `json:"net,omitzero"`    // for SpreadPartner, the length of Edge between its drafted seam lines once its piece is spread; else zero
	Left   units.Near   `json:"left,omitzero"`   // the greatest difference, beyond what the pattern drew and without sign, that stays in the pairs which the seam touches
	Mends  int          `json:"mends,omitzero"`  // pairs that were mismatched and no longer are
	Breaks int          `json:"breaks,omitzero"` // pairs that were not mismatched and now are
	Cuts   int          `json:"cuts,omitzero"`   // cut edges to be trimmed: both plies of the seam, as often as it crosses the edge that it crosses most often; from a [Pair], the plies of the edge
}

// Apply is a copy of a with the remedy carried out. It fails as
// [Assembly.With] does, and for a remedy without an Act.
func (r Remedy) Apply(a Assembly) (Assembly, error) {
	switch r.Act {
	case ChangePass, CutDrift, SewPartner:
		return a.With(r.Seam, r.Spec)
	case SpreadPartner:
		i := slices.IndexFunc(a.Edges, func(c Course) bool { return c.Name == r.Edge })
		if i < 0 {
			return Assembly{}, fault.Faults{{Path: "edge", Got: sew.Quote(r.Edge), Limit: "the name of an edge", Kind: fault.Unknown}}
		}
		a = a.clone()
		a.Edges[i].Spread = r.Net.Sub(a.Edges[i].Net)
		return a, nil
	}
	return Assembly{}, r.noAct()
}

func (r Remedy) noAct() error {
	return fault.Faults{{Path: "act", Got: r.Act.String(), Limit: "one of the acts", Kind: fault.Unknown}}
}

// ranked puts the remedies in order: most pairs mended, fewest left mismatched,
// then those that leave the passes as they were meant before those that change
// them, fewest cuts, least left over; and else as found.
func ranked(rs []Remedy) []Remedy {
	keeps := func(r Remedy) int {
		switch r.Act {
		case CutDrift:
			return 0
		case ChangePass, SewPartner:
			return 1
		}
		return 2
	}
	slices.SortStableFunc(rs, func(r, s Remedy) int {
		return cmp.Or(
			cmp.Compare(s.Mends, r.Mends),
			cmp.Compare(r.Breaks, s.Breaks),
			cmp.Compare(keeps(r), keeps(s)),
			cmp.Compare(r.Cuts, s.Cuts),
			r.Left.Mid().Cmp(s.Left.Mid()),
		)
	})
	return rs
}

// Remedies are the single changes that mend at least one mismatched pair, the
// best first: the most pairs mended by the one change, then the fewest left
// mismatched, then cutting before changing a pass, then the fewest cuts. There are
// none where nothing is mismatched, and none that the kind of seam does not allow.
// What the pattern drew stays the limit of ease where a piece is spread.
//
// It fails as [Assembly.Plan] does.
func (a Assembly) Remedies() ([]Remedy, error) {
	f, err := a.frame()
	if err != nil {
		return nil, err
	}
	_, pairs, err := f.measure()
	if err != nil {
		return nil, err
	}
	s := search{frame: f, now: pairs}
	for j := range f.seams {
		s.own(j)
	}
	for i := range pairs {
		if pairs[i].fit == Mismatch {
			s.partner(i)
			s.spread(i)
		}
	}
	return ranked(s.found), nil
}

// A search tries changes of one seam at a time.
type search struct {
	*frame
	now   []matchWork // the pairs before any change
	tries int
	found []Remedy
}

// times is how many seams of that name cross an edge: those of whose plies it has
// both, and those of whose upper, or whose under, it has one; these may be the same.
func (f *frame) times(edge, seam int) int {
	var both, upper, under int
	for k, j := range f.edges[edge].seams {
		if j != seam {
			continue
		}
		switch x := f.spec.Edges[edge].Crossings[k]; {
		case x.Plies == 2:
			both += x.Times
		case x.Ply == UnderPly:
			under += x.Times
		default:
			upper += x.Times
		}
	}
	return both + max(upper, under)
}

// touches reports whether the length of an edge hangs on a seam.
func (f *frame) touches(edge, seam int) bool {
	return f.edges[edge].own == seam && !f.spec.Edges[edge].Turn.IsZero() || f.times(edge, seam) > 0
}

// own tries what can be done to a seam that has drifted and crosses an edge of
// a mismatched pair.
func (s *search) own(j int) {
	p, given := s.seams[j], s.spec.Seams[j].Spec
	if p.Upper.Drift.IsZero() && p.Under.Drift.IsZero() {
		return
	}
	edge := -1
	for i, w := range s.now {
		if w.fit != Mismatch {
			continue
		}
		for _, e := range s.pairs[i] {
			if edge < 0 && s.touches(e, j) {
				edge = e
			}
		}
	}
	if edge < 0 {
		return
	}
	s.try(CutDrift, edge, j, p.Spec.Cutting(p.Upper.Taken, p.Under.Taken))
	// Unequal plies drift by as much again the other way.
	take := p.Upper.Cut.Add(p.Under.Cut).DivInt(2)
	if spec, ok := given.Taking(take); ok {
		s.try(ChangePass, edge, j, spec)
	}
}

// partner tries the seams of the edge that has moved less, and of that edge
// alone, so that it moves as its partner did, or at least comes out as long.
func (s *search) partner(i int) {
	w, at := s.now[i], s.pairs[i]
	targets, ok := w.targets()
	if !ok {
		return
	}
	for side, e := range at {
		if !w.follows(side) {
			continue
		}
		for j, p := range s.seams {
			if !s.touches(e, j) || s.touches(at[1-side], j) || p.Upper.Taken != p.Under.Taken {
				continue
			}
			per, ok := s.share(e, j)
			if !ok || per.IsZero() {
				continue
			}
			if side == 1 {
				per = per.Neg()
			}
			for _, want := range targets {
				take := p.Upper.Taken.Sub(want.Sub(w.sewn.exact).Unscale(per))
				if spec, ok := s.spec.Seams[j].Spec.Taking(take); ok {
					s.try(SewPartner, e, j, spec)
				}
			}
		}
	}
}

// spread tries to make the pattern piece longer, or shorter, whose edge no seam
// crosses, by as much as its partner has moved.
func (s *search) spread(i int) {
	w, at := s.now[i], s.pairs[i]
	if !w.drafted.isExact() || !w.sewn.isExact() {
		return
	}
	moved := w.sewn.exact.Sub(w.drafted.exact)
	for side, e := range at {
		c := s.spec.Edges[e]
		if len(c.Crossings) > 0 || s.tries >= MaxTries {
			continue
		}
		net := c.Net.Add(c.Spread).Add(moved)
		if side == 0 {
			net = c.Net.Add(c.Spread).Sub(moved)
		}
		if net.Sign() <= 0 {
			continue
		}
		s.tries++
		f := *s.frame
		f.spec.Edges = slices.Clone(f.spec.Edges)
		f.spec.Edges[e].Spread = net.Sub(c.Net)
		s.keep(Remedy{Act: SpreadPartner, Edge: c.Name, Net: net}, &f, func(pair [2]int) bool { return pair[0] == e || pair[1] == e })
	}
}

// targets are the differences to aim at: the one that the pattern drew, and
// none. They are exact only where the differences are.
func (w matchWork) targets() (to [2]units.Length, ok bool) {
	to[0] = w.drafted.exact.Max(units.Length{})
	return to, w.drafted.isExact() && w.sewn.isExact()
}

// follows reports whether an edge of the pair, 0 the long and 1 the short, has
// moved no more than the other.
func (w matchWork) follows(side int) bool {
	long, err1 := w.long.sewn.sub(w.long.drafted).without()
	short, err2 := w.short.sewn.sub(w.short.drafted).without()
	if side == 1 {
		long, short = short, long
	}
	sign, err3 := long.sub(short).sign()
	return err1 == nil && err2 == nil && err3 == nil && sign <= 0
}

// share is by how much an edge grows for each unit of drift per ply of a seam,
// where that is exact.
func (f *frame) share(edge, seam int) (r units.Ratio, ok bool) {
	for k, j := range f.edges[edge].seams {
		if j != seam {
			continue
		}
		if f.edges[edge].slopes[k].root != 1 {
			return r, false
		}
		x := f.spec.Edges[edge].Crossings[k]
		r = r.Add(f.edges[edge].slopes[k].times.Mul(units.RatioOf(int64(x.Times*x.Plies), 1)))
	}
	if f.edges[edge].own == seam {
		r = r.Add(f.spec.Edges[edge].Turn)
	}
	return r, true
}

// try works out the whole assembly with one seam changed, and keeps the change
// if it mends a pair.
func (s *search) try(act Act, edge, j int, spec seam.Any) {
	name := s.spec.Seams[j].Name
	if s.tries >= MaxTries || slices.ContainsFunc(s.found, func(r Remedy) bool { return r.Seam == name && r.Spec == spec }) {
		return
	}
	s.tries++
	plan, err := spec.Plan()
	if err != nil {
		return
	}
	f := *s.frame
	f.seams = slices.Clone(s.seams)
	f.seams[j] = plan
	r := Remedy{Act: act, Edge: s.spec.Edges[edge].Name, Seam: name, Spec: spec, Cut: plan.Upper.Cut, Take: plan.Upper.Taken}
	if act == CutDrift {
		r.Cuts = 2
		for e := range s.edges {
			r.Cuts = max(r.Cuts, 2*s.times(e, j))
		}
	}
	s.keep(r, &f, func(pair [2]int) bool { return s.touches(pair[0], j) || s.touches(pair[1], j) })
}

// keep counts what a change comes to, the frame being the assembly with the
// change made, and keeps it if it mends a pair.
func (s *search) keep(r Remedy, changed *frame, touched func(pair [2]int) bool) {
	_, pairs, err := changed.measure()
	if err != nil {
		return
	}
	var most sum
	for i, w := range pairs {
		switch was := s.now[i].fit; {
		case was == Mismatch && w.fit != Mismatch:
			r.Mends++
		case was != Mismatch && w.fit == Mismatch:
			r.Breaks++
		}
		if touched(s.pairs[i]) {
			left, err1 := w.change().without()
			more, err2 := left.sub(most).sign()
			if err1 != nil || err2 != nil {
				return
			}
			if more > 0 {
				most = left
			}
		}
	}
	r.Left = most.near().Settled()
	if r.Mends > 0 {
		s.found = append(s.found, r)
	}
}
