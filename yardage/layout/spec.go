package layout

import (
	"fmt"
	"slices"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// The bounds on what is given.
const (
	MaxPieces = 1000      // most pieces in one lay, every copy counted
	MaxWork   = 1_000_000 // most Work
	MaxGrid   = 1 << 60   // longest row of all the pieces, in steps of the grid they share

	MaxFlaws      = 1000   // most flaws of a cloth
	MaxFlawPoints = 10_000 // most points of the outlines of all its flaws
	MaxNotches    = 50     // most notches of a piece
	MaxPhases     = 1000   // most phases of a cloth
)

// DefaultWork is the Work done where none is given: less than a second on most machines.
const DefaultWork = 20

// The faults of a lay, found by [Verify], and of lengths that share no grid.
const (
	ErrOverlap fault.Kind = "pieces overlap"
	ErrOutside fault.Kind = "off the cloth"
	ErrCount   fault.Kind = "not every piece is laid"
	ErrTurn    fault.Kind = "turned more than it may be"
	ErrGrid    fault.Kind = "too fine and too long together"
	ErrFlaw    fault.Kind = "on a flaw"
	ErrFold    fault.Kind = "not on the fold"
	ErrMatch   fault.Kind = "notches do not match"
	ErrCentre  fault.Kind = "not centred on a stripe"
)

// A Spec is what is to be laid on what. Zero means not given.
type Spec struct {
	Cloth  Cloth   `json:"cloth,omitzero"`            // the cloth laid on
	Pieces []Piece `json:"pieces,omitzero"`           // at least one; at most MaxPieces with all their copies
	Work   int     `json:"work,omitzero"`             // how long to search, in millions of steps, each a look at one piece for one place; zero is DefaultWork, at most MaxWork
	Seed   uint64  `json:"seed,omitzero" noun:"zero"` // which way to search; every seed is good, zero too
}

// Solve checks s and fills Work where it is not given, and Wide and Long of the
// pieces that have an outline. The faults are
// [fault.Faults], in the order of the fields. A piece that is wider or longer
// than the cloth can take, any way it may be turned, is ErrRange, and so is a
// cloth whose length is less than any lay of these pieces needs (see
// Plan.Bound); that a length is enough is never claimed here.
func (s Spec) Solve() (Spec, error) {
	_, err := s.check(nil)
	if err == nil && s.Work == 0 {
		s.Work = DefaultWork
	}
	if err == nil && s.outlined() {
		s.Pieces = slices.Clone(s.Pieces)
		for i, p := range s.Pieces {
			s.Pieces[i] = p.filled()
		}
	}
	return s, err
}

// check audits all of s; the ground is good where there is no fault. It is errLate
// where c ends it before that.
func (s Spec) check(c *clock) (ground, error) {
	var a fault.Audit
	good := s.auditCloth(&a)
	good = s.auditPieces(&a, c) && good
	good = good && s.auditRepeats(&a)
	var g ground
	if good {
		g, _ = s.rooms(&a, c) // the ground is not used where a has faults
	}
	if c != nil && c.late {
		return g, errLate
	}
	if s.Work < 0 || s.Work > MaxWork {
		a.Fault("work", strconv.Itoa(s.Work), fmt.Sprintf("1 to %d, or 0 for %d", MaxWork, DefaultWork), fault.Range)
	}
	return g, a.Err()
}

// auditCloth checks the cloth by itself.
func (s Spec) auditCloth(a *fault.Audit) bool {
	var own fault.Audit
	c := s.Cloth
	own.Need("wide", c.Wide)
	own.NotNegative("selvedge", c.Selvedge)
	if flat := c.Wide.Sub(c.Selvedge.MulInt(2)); !own.Failed() && flat.Sign() <= 0 {
		own.Fault("selvedge", c.Selvedge.String(), "less than half the width, "+c.Wide.DivInt(2).String(), fault.Range)
	}
	own.NotNegative("long", c.Long)
	own.NotNegative("gap", c.Gap)
	own.NotNegative("ends", c.Ends)
	if c.Long.Sign() > 0 && c.Ends.Sign() > 0 && !c.Ends.MulInt(2).Less(c.Long) {
		own.Fault("ends", c.Ends.String(), "less than half the length, "+c.Long.DivInt(2).String(), fault.Range)
	}
	c.auditTrade(&own)
	a.Include("cloth", own.Err())
	return !own.Failed()
}

// auditPieces checks the pieces by themselves.
func (s Spec) auditPieces(a *fault.Audit, c *clock) bool {
	if n := len(s.Pieces); n == 0 {
		a.Fault("pieces", "", "at least 1", fault.Missing)
		return false
	} else if n > MaxPieces {
		a.Fault("pieces", strconv.Itoa(n), fmt.Sprintf("at most %d", MaxPieces), fault.Range)
		return false
	}
	good, total, all := true, 0, 0
	names := make(map[string]bool, len(s.Pieces))
	for i, p := range s.Pieces {
		var own fault.Audit
		if c.over(p.toil() * len(p.Outline)) {
			return false
		}
		own.Text("name", p.Name)
		if names[p.Name] && !own.Failed() {
			own.Fault("name", strconv.Quote(p.Name), "each name once", fault.Twice)
		}
		names[p.Name] = p.Name != ""
		if len(p.Outline) == 0 {
			own.Need("wide", p.Wide)
			own.Need("long", p.Long)
		} else {
			p.auditOutline(&own)
		}
		own.Count("count", p.Count, 1, MaxPieces)
		if p.Pair && p.Count > 0 && p.Count%2 == 1 {
			own.Fault("count", strconv.Itoa(p.Count), "an even number, for pair", fault.Conflict)
		}
		if int(p.Turn) >= len(turnNames) {
			own.Fault("turn", p.Turn.String(), turnList, fault.Unknown)
		}
		if !own.Failed() {
			p.auditTrade(&own, &s.Cloth)
		}
		if own.Failed() {
			a.Include(piecePath(i), own.Err())
			good = false
			continue
		}
		total += p.Count
		all += p.Count * len(p.Outline)
	}
	if all > MaxCorners {
		a.Fault("pieces", strconv.Itoa(all)+" points with all copies", fmt.Sprintf("at most %d", MaxCorners), fault.Range)
		good = false
	}
	if total > MaxPieces {
		a.Fault("pieces", strconv.Itoa(total)+" with all copies", fmt.Sprintf("at most %d", MaxPieces), fault.Range)
		good = false
	}
	return good
}

// inside is the length of cloth between its ends; zero is no limit.
func (c *Cloth) inside() units.Length {
	if c.Long.IsZero() {
		return c.Long
	}
	return c.Long.Sub(c.Ends.MulInt(2))
}

// fits reports whether a piece, as laid, is no larger than the cloth that may be
// used, as it may be turned.
func (s *Spec) fits(p Piece) bool {
	wide, long := s.Cloth.Usable(), s.Cloth.inside()
	in := func(w, l units.Length) bool { return !wide.Less(w) && (long.IsZero() || !long.Less(l)) }
	w, l := p.extent()
	return in(w, l) || p.Turn == Quarter && in(l, w)
}

// auditRoom checks the pieces against the cloth. Both are good by themselves.
func (s Spec) auditRoom(a *fault.Audit, c *clock) (ground, bool) {
	drawn := s
	s.Pieces = slices.Clone(s.Pieces)
	for i := range s.Pieces {
		p := &s.Pieces[i]
		if c.over(p.toil() * len(p.Outline)) {
			return ground{}, false
		}
		*p = p.laid(&s.Cloth)
	}
	wide, long := s.Cloth.Usable(), s.Cloth.inside()
	good := true
	for i, p := range s.Pieces {
		p.Wide, p.Long = p.extent()
		if s.fits(p) {
			continue
		}
		good = false
		room := "at most " + wide.String() + " across"
		if !long.IsZero() {
			room += " and " + long.String() + " along"
		}
		if p.Turn == Quarter {
			room += ", either way round"
		}
		a.Fault(piecePath(i), p.Wide.String()+" by "+p.Long.String(), room+" (the cloth inside its selvedges and ends)", fault.Range)
	}
	if !good {
		return ground{}, false
	}
	var g ground
	if s.nested() {
		g, good = s.nest(a, drawn.Pieces, c)
	} else {
		g, good = s.grid(a)
	}
	if good && !long.IsZero() {
		if least := g.bound().Add(s.Cloth.Ends.MulInt(2)); s.Cloth.Long.Less(least) {
			a.Fault("cloth.long", s.Cloth.Long.String(), "at least "+least.String()+" (what the pieces take up, whatever the lay)", fault.Range)
			return g, false
		}
	}
	return g, good
}

func piecePath(i int) string { return "pieces[" + strconv.Itoa(i) + "]" }
