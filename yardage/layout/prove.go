package layout

import (
	"fmt"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// Verify checks a lay, anybody's, against s: every copy of every piece cut
// once, none turned more than it may be, all inside the cloth's selvedges, ends
// and length (where Cloth.Long is given), and no two nearer than Cloth.Gap, the
// greater of the distances across and along; nothing on a flaw, halves with their
// edge on the fold, notches of one name on one place of the repeat, the one given
// if any, centred pieces on a stripe, and of a piece cut in parts every part, all
// its copies in as many. Rectangles are compared by the lengths themselves.
// Outlines are compared on a grid that all points and places lie on: no edge of one
// may enter another, nor may one lie in another. Pieces may touch, and an overlap of one
// step is found. It shares nothing with the search but what a piece is, opened out or
// turned to the bias. On folded cloth a placement counts for each of its [Placement.Copies].
//
// The faults are [fault.Faults]: those of Cloth and Pieces each by itself (Work
// and Seed are not read), ErrGrid where there is no such grid of less than 2^60
// steps, else ErrOverlap, ErrOutside, ErrTurn, ErrFlaw, ErrFold, ErrMatch and
// ErrCentre with the path of the placement, and ErrCount with that of the piece. Of the overlaps
// of one placement, the first with an earlier one is named.
func Verify(s Spec, placements []Placement) error {
	var a fault.Audit
	s.auditCloth(&a)
	if s.auditPieces(&a, nil) {
		s.auditRepeats(&a)
	}
	if a.Failed() {
		return a.Err()
	}
	return s.prove(nil, placements)
}

// prove is Verify of a Spec that is good by itself; it is errLate where c ends it
// before that.
func (s Spec) prove(c *clock, placements []Placement) error {
	var a fault.Audit
	if n := len(placements); n > MaxPieces {
		return fault.Faults{{Path: "placements", Got: strconv.Itoa(n), Limit: fmt.Sprintf("at most %d", MaxPieces), Kind: fault.Range}}
	}
	if s, placements = s.proveParts(placements, &a); a.Failed() {
		return a.Err()
	}
	given := s
	s = s.laid()
	laid := make([][]bool, len(s.Pieces))
	twofold := make([]bool, len(s.Pieces))
	for i, p := range s.Pieces {
		laid[i] = make([]bool, p.Count)
		twofold[i] = given.Pieces[i].twofold(&s.Cloth)
	}
	set := matching{}
	for i, ph := range s.Cloth.Phases {
		set[ph.Notch] = match{Point{ph.X, ph.Y}, "cloth.phases[" + strconv.Itoa(i) + "]"}
	}
	known, rooms := make([]bool, len(placements)), make([]Rest, len(placements))
	cut := s.cut(c, placements, &a)
	if a.Failed() {
		return a.Err()
	}
	for i, at := range placements {
		path := "placements[" + strconv.Itoa(i) + "]"
		if at.Piece < 0 || at.Piece >= len(s.Pieces) {
			a.Fault(path+".piece", strconv.Itoa(at.Piece), fmt.Sprintf("0 to %d", len(s.Pieces)-1), fault.Unknown)
			continue
		}
		known[i] = true
		wide, long := at.Size(s)
		rooms[i] = Rest{at.X, at.Y, wide, long}
		if c.over(i / 100) {
			return errLate
		}
		proveCopy(&a, path, given, at, laid[at.Piece], twofold[at.Piece])
		proveInside(&a, path, s, at)
		for k := range cut.flaws {
			if !cut.clear(cut.pieces[i], cut.flaws[k], 0) {
				a.Fault(path, s.title(at), "clear of "+flawPath(k%len(s.Cloth.Flaws)), ErrFlaw)
				break
			}
		}
		set.prove(&a, path, &s, at)
		proveCentre(&a, path, &s, at)
		for j, other := range placements[:i] {
			if known[j] && !rooms[i].separate(&rooms[j], s.Cloth.Gap) && (cut.pieces == nil || !cut.clear(cut.pieces[i], cut.pieces[j], cut.gap)) {
				a.Fault(path, s.title(at), s.clearance()+s.title(other)+", placements["+strconv.Itoa(j)+"]", ErrOverlap)
				break
			}
		}
	}
	if c.over(0) {
		return errLate
	}
	for i, p := range s.Pieces {
		n := 0
		for _, done := range laid[i] {
			if done {
				n++
			}
		}
		if n != p.Count {
			a.Fault(piecePath(i)+".count", strconv.Itoa(n)+" laid", strconv.Itoa(p.Count), ErrCount)
		}
	}
	return a.Err()
}

// proveCopy checks that this copy is one of the piece's, is laid for the first
// time, and is not turned against the rule.
func proveCopy(a *fault.Audit, path string, s Spec, at Placement, laid []bool, twofold bool) {
	switch {
	case at.Copy < 1 || at.Copy > len(laid):
		a.Fault(path+".copy", strconv.Itoa(at.Copy), fmt.Sprintf("1 to %d", len(laid)), fault.Range)
	case laid[at.Copy-1]:
		a.Fault(path+".copy", strconv.Itoa(at.Copy), "each copy once", fault.Twice)
	default:
		laid[at.Copy-1] = true
		if other := mate(at.Copy, len(laid)); twofold && other > 0 {
			laid[other-1] = true // never so before: a pair is cut by one placement
		}
	}
	one := &s.Pieces[at.Piece]
	why := "turn " + one.Turn.String()
	if s.Cloth.OneWay {
		why = "cloth that runs one way"
	}
	if at.Across && (one.Turn < Quarter || s.Cloth.OneWay) {
		a.Fault(path+".across", "true", "false for "+why, ErrTurn)
	}
	if at.Half && (one.Turn == Keep || s.Cloth.OneWay) {
		a.Fault(path+".half", "true", "false for "+why, ErrTurn)
	}
	if s.Cloth.Folded && one.Fold && (at.Across || !at.X.IsZero()) {
		got := at.X.String() + " from the fold"
		if at.Across {
			got = "turned across"
		}
		a.Fault(path+".x", got, "its edge of least X on the fold", ErrFold)
	}
}

// proveInside checks that the piece is within the cloth that may be used.
func proveInside(a *fault.Audit, path string, s Spec, at Placement) {
	c := s.Cloth
	wide, long := at.Size(s)
	first := c.first()
	if room := c.Usable(); room.Less(wide) {
		a.Fault(path, s.title(at)+", "+wide.String()+" across", "at most "+room.String()+" across", ErrOutside)
	} else if last := first.Add(c.Usable()).Sub(wide); at.X.Less(first) || last.Less(at.X) {
		a.Fault(path+".x", at.X.String(), first.String()+" to "+last.String(), ErrOutside)
	}
	if at.Y.Less(c.Ends) {
		a.Fault(path+".y", at.Y.String(), "at least "+c.Ends.String(), ErrOutside)
		return
	}
	if room := c.inside(); !c.Long.IsZero() && room.Less(long) {
		a.Fault(path, s.title(at)+", "+long.String()+" along", "at most "+room.String()+" along", ErrOutside)
	} else if last := c.Long.Sub(c.Ends).Sub(long); !c.Long.IsZero() && last.Less(at.Y) {
		a.Fault(path+".y", at.Y.String(), c.Ends.String()+" to "+last.String(), ErrOutside)
	}
}

// clearance says how far apart pieces must be.
func (s Spec) clearance() string {
	if s.Cloth.Gap.IsZero() {
		return "clear of "
	}
	return "at least " + s.Cloth.Gap.String() + " clear of "
}

// separate reports whether two rectangles are a gap apart across or along.
func (a *Rest) separate(b *Rest, gap units.Length) bool {
	return apart(a.X, a.Wide, b.X, b.Wide, gap) || apart(a.Y, a.Long, b.Y, b.Long, gap)
}

// apart reports whether two spans, each from its start on, are a gap apart.
func apart(a, along, b, blong, gap units.Length) bool {
	return !b.Less(a.Add(along).Add(gap)) || !a.Less(b.Add(blong).Add(gap))
}

// title names a placement for people: the piece's name and, where there are
// several, which copy.
func (s Spec) title(at Placement) string {
	p := s.Pieces[at.Piece]
	name := p.Name
	if name == "" {
		name = piecePath(at.Piece)
	}
	copies := p.Count
	if p.Parts > 1 { // every part is a copy here
		at = at.unserial(p.Parts)
		copies /= p.Parts
	}
	if copies > 1 {
		name += " " + strconv.Itoa(at.Copy)
	}
	if at.Of > 1 {
		name += ", part " + strconv.Itoa(at.Part) + " of " + strconv.Itoa(at.Of)
	}
	return name
}
