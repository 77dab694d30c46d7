package edge

import (
	"cmp"
	"slices"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
)

// Bounds of one search for remedies.
const (
	maxTries   = 600 // changes that are tried; those of seams that cross a mismatched edge come first, in the order of the seams
	maxMatches = 600 // matches that the remedies kept hold in all; the best remedies are kept
)

// An Act is what a [Remedy] does.
type Act uint8

// The acts.
const (
	ChangePass    Act = iota + 1 // sew the seam with passes that take what was cut, so that nothing drifts
	CutDrift                     // cut both plies of the seam to what it takes before sewing it, and sew it as meant
	SewPartner                   // sew the partner's own crossing seam so that the partner drifts too
	SpreadPartner                // no seam crosses the partner: spread or fold its pattern piece where the other edge has its seams
)

var acts = name.Of[Act]("act", "none", "change-pass", "cut-drift", "sew-partner", "spread-partner")

// String is the act's name, as in cut-drift.
func (a Act) String() string { return acts.String(a) }

// MarshalText is the act's name.
func (a Act) MarshalText() ([]byte, error) { return acts.Marshal(a) }

// UnmarshalText takes an act's name.
func (a *Act) UnmarshalText(text []byte) error { return acts.Unmarshal(a, text) }

// A Remedy is one change that can be carried out, and what it comes to: the whole is
// worked out again with the change made.
type Remedy struct {
	Act    Act          `json:"act,omitzero"`    // what it does
	Edge   string       `json:"edge,omitzero"`   // the edge in question: the first mismatched one that the seam crosses; the one spread
	Seam   string       `json:"seam,omitzero"`   // the seam that is changed; empty where none is
	Spec   seam.Any     `json:"spec,omitzero"`   // how that seam is then sewn; none of a [Pair], which knows no kinds
	Cut    units.Length `json:"cut,omitzero"`    // the allowance to which the upper ply of that seam is then cut
	Take   units.Length `json:"take,omitzero"`   // what that seam then takes from its upper ply
	Net    units.Length `json:"net,omitzero"`    // for SpreadPartner, the length of Edge between its drafted seam lines once its piece is spread; else zero
	Left   units.Near   `json:"left,omitzero"`   // the greatest difference, beyond what the pattern drew and without sign, that stays in the pairs which the seam touches
	Mends  int          `json:"mends,omitzero"`  // pairs that were mismatched and no longer are
	Breaks int          `json:"breaks,omitzero"` // pairs that were not mismatched and now are
	Cuts   int          `json:"cuts,omitzero"`   // cut edges to be trimmed: both plies of the seam, as often as it crosses the edge that it crosses most often
	After  []Match      `json:"after,omitzero"`  // every pair, in the order of the plan, once the remedy is carried out
}

// Apply is a copy of a with the remedy carried out. It fails where a has no such seam or
// edge, and for a remedy without an Act.
func (r Remedy) Apply(a Assembly) (Assembly, error) {
	switch r.Act {
	case ChangePass, CutDrift, SewPartner:
		return a.With(r.Seam, r.Spec)
	case SpreadPartner:
		i := slices.IndexFunc(a.Edges, func(c Course) bool { return c.Name == r.Edge })
		if i < 0 {
			return Assembly{}, r.noEdge()
		}
		a = a.clone()
		by := r.Net.Sub(a.Edges[i].Net).Sub(a.Edges[i].Spread)
		for k := range a.Edges {
			if k == i || a.Edges[k].Of == r.Edge {
				a.Edges[k].Spread = a.Edges[k].Spread.Add(by)
			}
		}
		return a, nil
	}
	return Assembly{}, r.noAct()
}

// ApplyPair is a copy of m, which is solved, with the remedy carried out: on every take
// of the seam, or on those of the edge where they have no name.
func (r Remedy) ApplyPair(m Pair) (Pair, error) {
	edges := [...]*Spec{&m.Long, &m.Short}
	if r.Edge != m.Long.Name && r.Edge != m.Short.Name {
		return Pair{}, r.noEdge()
	}
	found := false
	change := func(t *Take) {
		found = true
		if r.Act == CutDrift {
			t.Cut = t.Taken
		} else {
			t.Taken = r.Take
		}
	}
	switch r.Act {
	case SpreadPartner:
		for _, e := range edges {
			if e.Name == r.Edge {
				e.Spread = r.Net.Sub(e.Net)
			}
		}
		return m, nil
	case ChangePass, CutDrift, SewPartner:
	default:
		return Pair{}, r.noAct()
	}
	for _, e := range edges {
		if r.Seam == "" && e.Name != r.Edge {
			continue
		}
		e.Takes = slices.Clone(e.Takes)
		for i := range e.Takes {
			if e.Takes[i].Name == r.Seam {
				change(&e.Takes[i])
			}
		}
		if e.Own.Name == r.Seam && r.Seam != "" {
			change(&e.Own)
		}
	}
	if !found {
		return Pair{}, fault.Faults{{Path: "seam", Got: fault.Quote(r.Seam), Limit: "the name of a seam that crosses the edge", Kind: fault.Unknown}}
	}
	return m, nil
}

func (r Remedy) noEdge() error {
	return fault.Faults{{Path: "edge", Got: fault.Quote(r.Edge), Limit: "the name of an edge", Kind: fault.Unknown}}
}

func (r Remedy) noAct() error {
	return fault.Faults{{Path: "act", Got: r.Act.String(), Limit: acts.List(), Kind: fault.Unknown}}
}

// ranked puts the remedies in order: most pairs mended, fewest left mismatched, then
// those that leave the passes as they were meant before those that change them, fewest
// cuts, least left over; and else as found.
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

// remedies are what mends the mismatched pairs, the best first.
func (f *frame) remedies() []Remedy {
	if !slices.ContainsFunc(f.judged, judged.mismatched) {
		return nil
	}
	s := search{frame: f}
	for j := range f.seams {
		s.own(j)
	}
	for i, w := range f.judged {
		if w.mismatched() {
			s.partner(i)
			s.spread(i)
		}
	}
	found := ranked(s.found)
	return found[:min(len(found), max(1, maxMatches/len(f.pairs)))]
}

func (w judged) mismatched() bool { return w.fit == Mismatch }

// A search tries changes of one seam at a time.
type search struct {
	*frame
	tries int
	found []Remedy
}

// times is how many seams of that name cross an edge: those of whose plies it has both,
// and those of whose one ply, or other, it has one; these may be the same.
func (f *frame) times(edge, seam int) int {
	both, ends := 0, map[int]int{}
	most := 0
	for _, r := range f.edges[edge].refs {
		if r.seam == seam {
			both += r.both
			ends[r.side] += r.ends
			most = max(most, ends[r.side])
		}
	}
	return both + most
}

// touches reports whether the length of an edge hangs on a seam.
func (f *frame) touches(edge, seam int) bool {
	e := f.edges[edge]
	return e.own == seam && !e.spec.Turn.IsZero() || slices.ContainsFunc(e.refs, func(r ref) bool { return r.seam == seam })
}

// own tries what can be done to a seam that has drifted and crosses an edge of a
// mismatched pair.
func (s *search) own(j int) {
	if !s.seams[j].drifts() {
		return
	}
	edge := -1
	for i, w := range s.judged {
		for _, e := range s.pairs[i] {
			if w.mismatched() && edge < 0 && s.touches(e, j) {
				edge = e
			}
		}
	}
	if edge < 0 {
		return
	}
	if cut, ok := s.seams[j].cutting(); ok {
		s.try(CutDrift, edge, j, cut)
	}
	if sewn, ok := s.seams[j].taking(s.whole(j)); ok {
		s.try(ChangePass, edge, j, sewn)
	}
}

// whole is what each ply of a seam must lose for the edges to stay as drafted: unequal
// plies drift by as much again the other way.
func (s *search) whole(j int) units.Length {
	if s.seams[j].plan != nil {
		return s.seams[j].sides[0].Cut.Add(s.seams[j].sides[1].Cut).DivInt(2)
	}
	var cut units.Length
	plies := 0
	for _, e := range s.edges {
		for _, r := range e.refs {
			if r.seam == j {
				cut, plies = cut.Add(s.seams[j].sides[r.side].Cut.MulInt(int64(r.plies))), plies+r.plies
			}
		}
	}
	if plies == 0 {
		return s.seams[j].sides[0].Cut
	}
	return cut.DivInt(int64(plies))
}

// partner tries the seams of the edge that has moved less, and of that edge alone, so
// that it moves as its partner did, or at least comes out as long.
func (s *search) partner(i int) {
	w, at := s.judged[i], s.pairs[i]
	drafted, ok1 := w.drafted.Exact()
	sewn, ok2 := w.sewn.Exact()
	if !ok1 || !ok2 {
		return
	}
	for side, e := range at {
		if !w.follows(side) {
			continue
		}
		for j := range s.seams {
			taken, alike := s.seams[j].taken()
			if !alike || !s.touches(e, j) || s.touches(at[1-side], j) {
				continue
			}
			per, ok := s.share(e, j)
			if !ok || per.IsZero() {
				continue
			}
			if side == 1 {
				per = per.Neg()
			}
			// The difference that the pattern drew, and none.
			for _, want := range [...]units.Length{drafted.Max(units.Length{}), {}} {
				if again, ok := s.seams[j].taking(taken.Sub(want.Sub(sewn).Unscale(per))); ok {
					s.try(SewPartner, e, j, again)
				}
			}
		}
	}
}

// spread tries to make the pattern piece longer, or shorter, whose edge no seam crosses,
// by as much as its partner has moved.
func (s *search) spread(i int) {
	w, at := s.judged[i], s.pairs[i]
	moved, ok := w.change().Exact()
	if !ok {
		return
	}
	for side, e := range at {
		one := s.measured[e].spec
		if len(s.edges[e].refs) > 0 || s.edges[e].of >= 0 || s.tries >= maxTries || one.Net.IsZero() {
			continue
		}
		net := one.Net.Add(one.Spread).Add(moved)
		if side == 0 {
			net = one.Net.Add(one.Spread).Sub(moved)
		}
		if net.Sign() <= 0 {
			continue
		}
		s.tries++
		f := *s.frame
		f.edges = slices.Clone(f.edges)
		with := func(k int) bool { return k == e || f.edges[k].of == e }
		for k := range f.edges {
			if with(k) {
				f.edges[k].spec.Spread = f.edges[k].spec.Spread.Add(net.Sub(one.Net).Sub(one.Spread))
			}
		}
		s.keep(Remedy{Act: SpreadPartner, Edge: one.Name, Net: net}, &f, func(pair [2]int) bool { return with(pair[0]) || with(pair[1]) })
	}
}

// follows reports whether an edge of the pair, 0 the long and 1 the short, has moved no
// more than the other.
func (w judged) follows(side int) bool {
	long, err1 := without(w.long.change())
	short, err2 := without(w.short.change())
	if side == 1 {
		long, short = short, long
	}
	sign, err3 := long.Sub(short).Sign()
	return err1 == nil && err2 == nil && err3 == nil && sign <= 0
}

// share is by how much an edge grows for each unit of drift per ply of a seam, where
// that is exact.
func (f *frame) share(edge, seam int) (share units.Ratio, ok bool) {
	for _, r := range f.edges[edge].refs {
		if r.seam != seam {
			continue
		}
		c, exact := r.cosecant.Exact()
		if !exact {
			return share, false
		}
		share = share.Add(c.Mul(units.RatioOf(int64(r.plies), 1)))
	}
	if f.edges[edge].own == seam {
		turn, exact := f.edges[edge].spec.Turn.InRadians().Exact()
		return share.Add(turn), exact
	}
	return share, true
}

// try works out the whole with one seam changed, and keeps the change if it mends a pair.
func (s *search) try(act Act, edge, j int, again joint) {
	name := s.seams[j].name
	r := Remedy{Act: act, Edge: s.edges[edge].spec.Name, Seam: name, Spec: again.spec, Cut: again.sides[0].Cut, Take: again.sides[0].Taken}
	if s.tries >= maxTries || slices.ContainsFunc(s.found, func(o Remedy) bool {
		return o.Seam == name && o.Spec == again.spec && o.Cut == r.Cut && o.Take == r.Take && (name != "" || o.Edge == r.Edge)
	}) {
		return
	}
	s.tries++
	f := *s.frame
	f.seams = slices.Clone(s.seams)
	f.seams[j] = again
	if act == CutDrift {
		r.Cuts = 2
		for e := range s.edges {
			r.Cuts = max(r.Cuts, 2*s.times(e, j))
		}
	}
	s.keep(r, &f, func(pair [2]int) bool { return s.touches(pair[0], j) || s.touches(pair[1], j) })
}

// keep counts what a change comes to, the frame being the whole with the change made, and
// keeps it if it mends a pair.
func (s *search) keep(r Remedy, changed *frame, touched func(pair [2]int) bool) {
	none := func(int) string { return "" }
	if changed.measure(none, none) != nil {
		return
	}
	var most units.Near
	for i, w := range changed.judged {
		switch was := s.judged[i]; {
		case was.mismatched() && !w.mismatched():
			r.Mends++
		case !was.mismatched() && w.mismatched():
			r.Breaks++
		}
		if touched(s.pairs[i]) {
			left, err1 := without(w.change())
			more, err2 := left.Sub(most).Sign()
			if err1 != nil || err2 != nil {
				return
			}
			if more > 0 {
				most = left
			}
		}
	}
	r.Left = most.Settled()
	if r.Mends > 0 {
		r.After = changed.matches()
		s.found = append(s.found, r)
	}
}
