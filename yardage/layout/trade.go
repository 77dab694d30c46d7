package layout

import (
	"fmt"
	"slices"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout/internal/nest"
)

// nested reports whether s, as laid, asks for more than a grid of rectangles on
// open cloth.
func (s Spec) nested() bool {
	return s.outlined() || s.Cloth.Folded || len(s.Cloth.Flaws) > 0 || s.matched() || s.centred()
}

// matched reports whether any notches are matched to a repeat.
func (s Spec) matched() bool {
	return (!s.Cloth.RepeatX.IsZero() || !s.Cloth.RepeatY.IsZero()) &&
		slices.ContainsFunc(s.Pieces, func(p Piece) bool { return len(p.Notches) > 0 })
}

// centred reports whether any piece is centred on a stripe.
func (s Spec) centred() bool {
	return slices.ContainsFunc(s.Pieces, func(p Piece) bool { return p.Centred })
}

func flawPath(i int) string { return "cloth.flaws[" + strconv.Itoa(i) + "]" }

// auditTrade checks what the cloth asks of the pieces.
func (c *Cloth) auditTrade(own *fault.Audit) {
	good := !own.Failed()
	switch {
	case !c.Folded:
		if !c.Fold.IsZero() {
			own.Fault("fold", c.Fold.String(), "for folded only", fault.Unused)
		}
	case good && (c.Wide.DivInt(2).Less(c.double()) || !c.Selvedge.Less(c.double())):
		own.Fault("fold", c.Fold.String(), "more than "+c.Selvedge.String()+", the selvedge, to "+c.Wide.DivInt(2).String()+", half the width", fault.Range)
	}
	own.NotNegative("repeatX", c.RepeatX)
	own.NotNegative("repeatY", c.RepeatY)
	own.NotNegative("axis", c.Axis)
	switch {
	case c.Axis.IsZero():
	case c.Folded:
		own.Fault("axis", c.Axis.String(), "0 on folded cloth: the fold lies on it", fault.Conflict)
	case c.RepeatX.IsZero():
		own.Fault("axis", c.Axis.String(), "for a cloth with repeatX only", fault.Unused)
	}
	c.auditPhases(own)
	if n := len(c.Flaws); n > MaxFlaws {
		own.Fault("flaws", strconv.Itoa(n), fmt.Sprintf("at most %d", MaxFlaws), fault.Range)
	} else {
		points := 0
		for i := range c.Flaws {
			if points += len(c.Flaws[i].Outline); points > MaxFlawPoints {
				own.Fault("flaws", strconv.Itoa(points)+" points or more in all outlines", fmt.Sprintf("at most %d", MaxFlawPoints), fault.Range)
				break
			}
			var one fault.Audit
			c.Flaws[i].audit(&one)
			own.Include("flaws["+strconv.Itoa(i)+"]", one.Err())
		}
	}
	own.NotNegative("counter", c.Counter)
}

// auditPhases checks the places of notches by themselves.
func (c *Cloth) auditPhases(own *fault.Audit) {
	if n := len(c.Phases); n > MaxPhases {
		own.Fault("phases", strconv.Itoa(n), fmt.Sprintf("at most %d", MaxPhases), fault.Range)
		return
	}
	for i, ph := range c.Phases {
		path := "phases[" + strconv.Itoa(i) + "]"
		if f := fault.Unfit(path+".notch", ph.Notch); f != nil {
			own.Include("", fault.Faults{f})
		} else if ph.Notch == "" {
			own.Fault(path+".notch", "", "the name of a notch", fault.Missing)
		} else if slices.ContainsFunc(c.Phases[:i], func(o Phase) bool { return o.Notch == ph.Notch }) {
			own.Fault(path+".notch", strconv.Quote(ph.Notch), "each name once", fault.Twice)
		}
		if c.RepeatX.IsZero() && !ph.X.IsZero() {
			own.Fault(path+".x", ph.X.String(), "for a cloth with repeatX only", fault.Unused)
		}
		if c.RepeatY.IsZero() && !ph.Y.IsZero() {
			own.Fault(path+".y", ph.Y.String(), "for a cloth with repeatY only", fault.Unused)
		}
	}
}

// auditRepeats checks that something is matched to what the cloth repeats, and
// that the places given are those of notches that there are.
func (s *Spec) auditRepeats(a *fault.Audit) bool {
	good := true
	unused := func(path string, l units.Length, by string) {
		if !l.IsZero() {
			a.Fault(path, l.String(), "a piece "+by+", else none", fault.Unused)
			good = false
		}
	}
	if !s.matched() && !s.centred() {
		unused("cloth.repeatX", s.Cloth.RepeatX, "with notches or centred")
	} else if !s.centred() {
		unused("cloth.axis", s.Cloth.Axis, "that is centred")
	}
	if !s.matched() {
		unused("cloth.repeatY", s.Cloth.RepeatY, "with notches")
	}
	for i, ph := range s.Cloth.Phases {
		named := slices.ContainsFunc(s.Pieces, func(p Piece) bool {
			return slices.ContainsFunc(p.Notches, func(n Notch) bool { return n.Name == ph.Notch })
		})
		if err := fault.Unknown; !named || s.Cloth.RepeatX.IsZero() && s.Cloth.RepeatY.IsZero() {
			limit := "the name of a notch"
			if named {
				limit, err = "for a cloth with a repeat only", fault.Unused
			}
			a.Fault("cloth.phases["+strconv.Itoa(i)+"].notch", strconv.Quote(ph.Notch), limit, err)
			good = false
		}
	}
	return good
}

// auditCentred checks that a piece has a centre line, and the cloth stripes.
func (p *Piece) auditCentred(own *fault.Audit, c *Cloth) {
	if !p.Centred || own.Failed() {
		return
	}
	upright := *c
	upright.OneWay = true // as it lies: the other hand of it need not be turned
	switch {
	case c.RepeatX.IsZero():
		own.Fault("centred", "true", "for a cloth with repeatX only", fault.Unused)
	case p.Turn > Half:
		own.Fault("centred", "true", "false for turn "+p.Turn.String(), fault.Conflict)
	case !p.Fold && !p.even(&upright):
		own.Fault("centred", "true", "false for a piece that is not the same both hands", fault.Conflict)
	}
}

// audit checks one flaw.
func (f *Flaw) audit(own *fault.Audit) {
	if len(f.Outline) == 0 {
		own.NotNegative("x", f.X)
		own.NotNegative("y", f.Y)
		own.Need("wide", f.Wide)
		own.Need("long", f.Long)
		return
	}
	for _, one := range [...]struct {
		path string
		l    units.Length
	}{{"x", f.X}, {"y", f.Y}, {"wide", f.Wide}, {"long", f.Long}} {
		if !one.l.IsZero() {
			own.Fault(one.path, one.l.String(), "for a flaw without outline only", fault.Unused)
		}
	}
	p := Piece{Outline: f.Outline}
	p.auditOutline(own)
}

// auditTrade checks what a piece, good by its measures, asks of the cloth.
func (p *Piece) auditTrade(own *fault.Audit, c *Cloth) {
	if p.Fold {
		if p.Pair {
			own.Fault("pair", "true", "false for a piece with fold: it is its own other hand", fault.Conflict)
		}
		if c.Folded && p.Turn == Bias {
			own.Fault("turn", p.Turn.String(), "keep, half or quarter for a piece on the fold", fault.Conflict)
		}
		if _, n := foldEdge(p.corners()); n < 2 {
			own.Fault("fold", "true", "an outline with one straight edge of least X, and no other point there", ErrOutline)
		}
	}
	good := !own.Failed() && p.Fold && len(p.Allowance) > 0
	p.auditNotches(own)
	p.auditCentred(own, c)
	p.auditParts(own)
	p.auditAllowance(own)
	if good && !own.Failed() {
		g := p.grown()
		if _, n := foldEdge(g.corners()); n < 2 {
			own.Fault("allowance", "", "allowances that leave nothing beyond the fold edge", ErrOutline)
		}
	}
}

// auditNotches checks that the notches of a piece can be told apart.
func (p *Piece) auditNotches(own *fault.Audit) {
	if n := len(p.Notches); n > MaxNotches {
		own.Fault("notches", strconv.Itoa(n), fmt.Sprintf("at most %d", MaxNotches), fault.Range)
		return
	}
	for i, n := range p.Notches {
		path := "notches[" + strconv.Itoa(i) + "].name"
		if n.Name == "" {
			own.Fault(path, "", "a name", fault.Missing)
			continue
		}
		if f := fault.Unfit(path, n.Name); f != nil {
			own.Include("", fault.Faults{f})
		} else if slices.ContainsFunc(p.Notches[:i], func(o Notch) bool { return o.Name == n.Name }) {
			own.Fault(path, strconv.Quote(n.Name), "each name once", fault.Twice)
		}
	}
}

// A matching is where the first notch of each name lies, and whose it is.
type matching map[string]match

type match struct {
	at    Point
	title string
}

// prove checks that the notches of a placement lie on the same place of the
// repeat as those before of the same names.
func (m matching) prove(a *fault.Audit, path string, s *Spec, at Placement) {
	if !s.matched() {
		return
	}
	for i, n := range at.Notches(*s) {
		first, known := m[n.Name]
		if !known {
			m[n.Name] = match{n.At, s.title(at)}
			continue
		}
		if on(n.At.X.Sub(first.at.X), s.Cloth.RepeatX) && on(n.At.Y.Sub(first.at.Y), s.Cloth.RepeatY) {
			continue
		}
		a.Fault(path, s.title(at)+", notch "+n.Name+" at "+n.At.X.String()+", "+n.At.Y.String(),
			"on the repeat with that of "+first.title+" at "+first.at.X.String()+", "+first.at.Y.String()+" (notches["+strconv.Itoa(i)+"])", ErrMatch)
		return
	}
}

// proveCentre checks that the centre line of a placement lies on the middle of a
// stripe or half-way between two.
func proveCentre(a *fault.Audit, path string, s *Spec, at Placement) {
	if one := &s.Pieces[at.Piece]; !one.Centred || one.Fold && s.Cloth.Folded {
		return
	}
	wide, _ := at.Size(*s)
	centre := at.X.Add(wide.DivInt(2))
	if half := s.Cloth.RepeatX.DivInt(2); !on(centre.Sub(s.Cloth.Axis), half) {
		a.Fault(path+".x", s.title(at)+", centre line at "+centre.String(), "whole halves of the repeat, "+half.String()+", from "+s.Cloth.Axis.String(), ErrCentre)
	}
}

// on reports whether l is a whole number of repeats; where there are none it
// always is.
func on(l, repeat units.Length) bool { return repeat.IsZero() || l.Div(repeat).IsInt() }

// tradeFine makes the mesh fine enough for repeats, notches and flaws.
func (s *Spec) tradeFine(m *mesh) (path string, l units.Length, ok bool) {
	try := func(at string, list ...units.Length) bool {
		for _, one := range list {
			if !m.fine(one) {
				path, l = at, one
				return false
			}
		}
		return true
	}
	if s.matched() {
		if !try("cloth.repeatX", s.Cloth.RepeatX) || !try("cloth.repeatY", s.Cloth.RepeatY) {
			return path, l, false
		}
		for i, ph := range s.Cloth.Phases {
			if !try("cloth.phases["+strconv.Itoa(i)+"]", ph.X.Sub(s.Cloth.first()), ph.Y.Sub(s.Cloth.Ends)) {
				return path, l, false
			}
		}
		for i := range s.Pieces {
			for _, n := range s.Pieces[i].Notches {
				if !try(piecePath(i)+".notches", n.At.X, n.At.Y) {
					return path, l, false
				}
			}
		}
	}
	for i := range s.Pieces {
		if w, _ := s.Pieces[i].extent(); s.Pieces[i].Centred && !try(piecePath(i)+".centred", w.DivInt(2), s.Cloth.RepeatX.DivInt(2), s.Cloth.Axis.Sub(s.Cloth.first())) {
			return path, l, false
		}
	}
	if len(s.Cloth.Flaws) == 0 {
		return "", l, true
	}
	if !try("cloth.selvedge", s.Cloth.first()) || !try("cloth.ends", s.Cloth.Ends) {
		return path, l, false
	}
	for i, flaw := range s.Cloth.barred() {
		for _, q := range flaw {
			if !try(flawPath(i%len(s.Cloth.Flaws)), q.X, q.Y) {
				return path, l, false
			}
		}
	}
	return "", l, true
}

// tradeRoom is how much longer a row of pieces may become by flaws and repeats.
func (s *Spec) tradeRoom() units.Length {
	var row units.Length
	for _, flaw := range s.Cloth.barred() {
		for _, q := range flaw {
			row = row.Max(q.X.Abs()).Max(q.Y.Abs())
		}
	}
	if s.centred() {
		row = row.Add(s.Cloth.RepeatX)
	}
	if s.matched() {
		row = row.Add(s.Cloth.RepeatX)
		for i := range s.Pieces {
			row = row.Add(s.Cloth.RepeatY.MulInt(int64(s.Pieces[i].Count)))
			for _, n := range s.Pieces[i].Notches {
				row = row.Max(n.At.X.Abs()).Max(n.At.Y.Abs())
			}
		}
	}
	return row
}

// tradeNest puts flaws and matched notches into the nest.
func (s *Spec) tradeNest(n *nest.Nest, m mesh, a *fault.Audit) bool {
	for i, flaw := range s.Cloth.barred() {
		pts := make([]vertex, len(flaw))
		for k, q := range flaw {
			x, okX := m.whole(q.X.Sub(s.Cloth.first()))
			y, okY := m.whole(q.Y.Sub(s.Cloth.Ends))
			if !okX || !okY {
				a.Fault(flawPath(i%len(s.Cloth.Flaws)), q.X.String()+", "+q.Y.String(), "a flaw that lies on one grid with the pieces", ErrGrid)
				return false
			}
			pts[k] = vertex{X: x, Y: y}
		}
		n.Barred = append(n.Barred, leftward(pts))
	}
	if s.centred() && !s.centre(n, m, a) {
		return false
	}
	if !s.matched() {
		return true
	}
	var okX, okY bool
	n.RepeatX, okX = m.whole(s.Cloth.RepeatX)
	n.RepeatY, okY = m.whole(s.Cloth.RepeatY)
	if !okX || !okY {
		a.Fault("cloth.repeatX", s.Cloth.RepeatX.String(), "repeats that lie on one grid with the pieces", ErrGrid)
		return false
	}
	return s.match(n, m, a)
}
