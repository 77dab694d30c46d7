package gather

import (
	"iter"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
	"example.com/clothyard/units/noun"
)

// MaxPleats is the greatest number of pleats in one section.
const MaxPleats = 1000

// A PleatKind is a kind of pleat.
type PleatKind uint8

// The kinds of pleat. The zero value is none, and must be given.
const (
	NoPleat       PleatKind = iota
	KnifePleat              // one fold, all turned the same way
	BoxPleat                // two folds turned away from each other, under the face
	InvertedPleat           // two folds that meet in front: a box pleat seen from behind
)

var pleatKinds = name.Of[PleatKind]("kind of pleat", "none", "knife", "box", "inverted")

// String is the name of the kind, as in box, and none for [NoPleat].
func (k PleatKind) String() string { return pleatKinds.String(k) }

// MarshalText is the name of the kind, empty for [NoPleat]. It fails for a number
// that is no kind.
func (k PleatKind) MarshalText() ([]byte, error) { return pleatKinds.Marshal(k) }

// UnmarshalText reads the name of a kind; empty text is [NoPleat].
func (k *PleatKind) UnmarshalText(text []byte) error { return pleatKinds.Unmarshal(k, text) }

// PleatKinds yields every kind of pleat, [NoPleat] excepted.
func PleatKinds() iter.Seq[PleatKind] { return pleatKinds.All() }

// folds is how many folds a pleat of the kind has.
func (k PleatKind) folds() int64 {
	if k == KnifePleat {
		return 1
	}
	return 2
}

// Pleats is a section of cloth laid in pleats. Zero means "not given". Whatever the
// pleats show, each fold hides twice its depth:
//
//	section = count x pitch + flat
//	cloth   = section + 2 x depth x folds, a knife pleat having one fold, the others two
//
// so that what is not given follows from the rest: count from section and pitch, or
// from cloth; pitch from section and count; depth, or section, from cloth.
type Pleats struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Kind is what pleats they are. It must be given.
	Kind PleatKind `json:"kind,omitzero"`
	// Section is the length of the section once pleated, where it is widest, as at the
	// hip.
	Section units.Length `json:"section,omitzero"`
	// Count is how many pleats there are, 1 to 1000.
	Count int `json:"count,omitzero"`
	// Pitch is from one pleat to the next on the pleated section.
	Pitch units.Length `json:"pitch,omitzero"`
	// About is the pitch that one would like: count is the number of pleats whose pitch
	// is nearest to it. May be omitted.
	About units.Length `json:"about,omitzero"`
	// Flat is the part of the section that has no pleats. May be omitted; the default
	// is 0.
	Flat units.Length `json:"flat,omitzero" noun:"zero"`
	// Lead is the part of flat that lies before the first pleat. May be omitted; the
	// default is 0.
	Lead units.Length `json:"lead,omitzero" noun:"zero"`
	// Face is what a box pleat shows between its two folds, at most pitch. May be
	// omitted; the default is pitch, pleats without a space between them.
	Face units.Length `json:"face,omitzero"`
	// Depth is the depth of a fold, from its outer to its inner edge; of graduated
	// pleats, that of the first. May be omitted; it follows from cloth, or the folds
	// just meet: it is pitch for knife pleats, half of face or of pitch for the others.
	Depth units.Length `json:"depth,omitzero"`
	// Grow is how much deeper each pleat is than the one before, negative where
	// shallower. May be omitted; the default is 0, all alike.
	Grow units.Length `json:"grow,omitzero" noun:"zero"`
	// Overlapping says that folds may lie over each other, five plies thick and more;
	// else that is refused.
	Overlapping bool `json:"overlapping,omitzero"`
	// Cloth is the length of the section before it is pleated.
	Cloth units.Length `json:"cloth,omitzero"`
	// Waist is the length of the pleated section where it is narrowest: every pleat is
	// deeper there. May be omitted; the section is then as wide all the way.
	Waist units.Length `json:"waist,omitzero"`
	// Step is the mark that the depth is rounded down to; what that leaves is hidden in
	// the last pleat, never in a face. May be omitted; nothing is then rounded.
	Step units.Length `json:"step,omitzero"`
	// Width is the usable width of the cloth. May be omitted; nothing is then joined.
	Width units.Length `json:"width,omitzero"`
	// Allowance is the seam allowance of the joins and the two ends. May be omitted; the
	// default is 5/8 in or 1.5 cm where width is given.
	Allowance units.Length `json:"allowance,omitzero"`
	// Anywhere says that joins may fall anywhere; else each width holds whole pleats and
	// every join lies on an inner fold, where it is not seen.
	Anywhere bool `json:"anywhere,omitzero"`
	// Drop is the length of each width as cut. May be omitted; the cloth to buy is then
	// not known.
	Drop units.Length `json:"drop,omitzero"`
}

// A Fold is where one fold is marked on the flat cloth, each line measured from the
// start of the section.
type Fold struct {
	Pleat int          `json:"pleat,omitzero"` // the pleat it belongs to, from 1
	Outer units.Length `json:"outer,omitzero"` // the edge that is seen
	Inner units.Length `json:"inner,omitzero"` // the edge that is hidden
	Place units.Length `json:"place,omitzero"` // the line that the outer edge is laid on
	On    units.Length `json:"on,omitzero"`    // where the outer edge then lies, on the pleated section
}

// A PleatsPlan is what a section of pleats comes to.
type PleatsPlan struct {
	Spec     Pleats       `json:"spec,omitzero"`     // as solved
	Assumed  []string     `json:"assumed,omitzero"`  // the fields filled with a default
	Folds    int          `json:"folds,omitzero"`    // how many folds there are
	Hidden   units.Length `json:"hidden,omitzero"`   // what the pleats hide: cloth less section
	PerPleat units.Length `json:"perPleat,omitzero"` // what the first pleat hides
	Fullness units.Ratio  `json:"fullness,omitzero"` // cloth over section
	Plies    int          `json:"plies,omitzero"`    // layers of cloth at the thickest, below the waist

	Marked units.Length `json:"marked,omitzero"` // the depth that is marked: depth, rounded down to step
	Rest   units.Length `json:"rest,omitzero"`   // what the rounding leaves, hidden in the last pleat
	Last   units.Length `json:"last,omitzero"`   // depth of the folds of the last pleat

	WaistPitch units.Length `json:"waistPitch,omitzero"` // from one pleat to the next at the waist
	WaistDepth units.Length `json:"waistDepth,omitzero"` // depth of the first fold there
	Deeper     units.Length `json:"deeper,omitzero"`     // how much deeper each fold is there
	WaistPlies int          `json:"waistPlies,omitzero"` // layers of cloth at the thickest, there

	Widths int            `json:"widths,omitzero"` // how many widths of cloth are cut
	Pieces []units.Length `json:"pieces,omitzero"` // what each width is cut to, in order
	Joins  []units.Length `json:"joins,omitzero"`  // where they are joined, on the flat section
	Bought units.Length   `json:"bought,omitzero"` // the cloth for them
	Left   units.Length   `json:"left,omitzero"`   // what is cut off the last width

	Places []Fold `json:"places,omitzero"` // every fold, exactly
}

// Plan works out the pleats. The faults are [fault.Faults].
func (s Pleats) Plan() (PleatsPlan, error) {
	var a fault.Audit
	s.audit(&a)
	if a.Failed() {
		return PleatsPlan{}, a.Err()
	}
	if s.solve(&a); a.Failed() {
		return PleatsPlan{}, a.Err()
	}
	given := s
	s.Tape = noun.Tape(s)
	if s.Kind == BoxPleat && s.Face.IsZero() {
		s.Face = s.Pitch
	}
	if s.Depth.IsZero() {
		s.Depth = s.room()
	}
	if !s.Width.IsZero() {
		fill(&s.Allowance, seamAllowance, s.Tape)
	}
	p := PleatsPlan{Assumed: noun.Assumed(given, s)}
	fault.AtMost(&a, "face", s.Face, s.Pitch, "pitch", fault.Range)
	s.Cloth = s.Section.Add(s.hidden())
	p.Spec = s
	p.work(&a)
	if a.Failed() {
		return PleatsPlan{}, a.Err(p.Assumed...)
	}
	p.taper(&a)
	p.place()
	p.widths(&a)
	if a.Failed() {
		return PleatsPlan{}, a.Err(p.Assumed...)
	}
	return p, nil
}

// audit looks at each field by itself.
func (s Pleats) audit(a *fault.Audit) {
	s.Tape.Check(a, "tape")
	pleatKinds.Check(a, "kind", s.Kind)
	a.NotNegative("section", s.Section)
	if s.Count != 0 {
		a.Count("count", s.Count, 1, MaxPleats)
	}
	a.NotNegative("pitch", s.Pitch)
	a.NotNegative("about", s.About)
	if !s.About.IsZero() && (s.Section.IsZero() || s.Count == 0 && !s.Pitch.IsZero()) {
		a.Fault("about", s.About.String(), "none unless section is given, and pitch is not", fault.Unused)
	}
	a.NotNegative("flat", s.Flat)
	a.NotNegative("lead", s.Lead)
	fault.AtMost(a, "lead", s.Lead, s.Flat, "flat", fault.Range)
	a.NotNegative("face", s.Face)
	if s.Kind != BoxPleat {
		a.Unused("face", s.Face, s.Face.IsZero(), s.Kind)
	}
	a.NotNegative("depth", s.Depth)
	a.NotNegative("cloth", s.Cloth)
	a.NotNegative("waist", s.Waist)
	a.NotNegative("step", s.Step)
	a.NotNegative("width", s.Width)
	a.NotNegative("allowance", s.Allowance)
	if s.Width.IsZero() {
		if !s.Allowance.IsZero() {
			a.Fault("allowance", s.Allowance.String(), "none without width", fault.Unused)
		}
		if s.Anywhere {
			a.Fault("anywhere", "true", "none without width", fault.Unused)
		}
		if !s.Drop.IsZero() {
			a.Fault("drop", s.Drop.String(), "none without width", fault.Unused)
		}
	}
	a.NotNegative("drop", s.Drop)
}

// solve fills count, section, pitch and, where cloth is given, depth.
func (s *Pleats) solve(a *fault.Audit) {
	both := s.Kind.folds() * 2
	if s.Count == 0 || !s.About.IsZero() {
		n := s.counted(a)
		if s.Count != 0 && s.Count != n && !a.Failed() {
			a.Fault("count", strconv.Itoa(s.Count), strconv.Itoa(n)+", whose pitch is nearest to about", fault.Conflict)
		}
		s.Count = n
	}
	if a.Failed() {
		return
	}
	n := int64(s.Count)
	if s.Section.IsZero() && s.Pitch.IsZero() {
		if s.Cloth.IsZero() || s.Depth.IsZero() {
			a.Fault("section", "", "more than 0 in, or pitch, or cloth and depth", fault.Missing)
			return
		}
		s.Section = s.Cloth.Sub(s.hidden())
		if s.Section.Cmp(s.Flat) <= 0 {
			a.Fault("cloth", s.Cloth.String(), "more than {0} (what the pleats hide, and flat)", fault.Range, s.hidden().Add(s.Flat))
			return
		}
	}
	switch even := s.Flat.Add(s.Pitch.MulInt(n)); {
	case s.Pitch.IsZero():
		if s.Section.Cmp(s.Flat) <= 0 {
			a.Fault("flat", s.Flat.String(), "less than {0} (section)", fault.Range, s.Section)
			return
		}
		s.Pitch = s.Section.Sub(s.Flat).DivInt(n)
	case s.Section.IsZero():
		s.Section = even
	case s.Section != even:
		a.Fault("section", s.Section.String(), "{0} (count x pitch + flat)", fault.Conflict, even)
		return
	}
	if s.Cloth.IsZero() {
		return
	}
	if s.Depth.IsZero() {
		s.Depth = s.Cloth.Sub(s.Section).DivInt(both * n).Sub(s.Grow.MulInt(n - 1).DivInt(2))
		if s.Depth.Sign() <= 0 {
			a.Fault("cloth", s.Cloth.String(), "more than {0} (section, and what grow hides)", fault.Range, s.Cloth.Sub(s.Depth.MulInt(both*n)))
		}
		return
	}
	if want := s.Section.Add(s.hidden()); want != s.Cloth {
		a.Fault("cloth", s.Cloth.String(), "{0} (section and twice the depth of each fold)", fault.Conflict, want)
	}
}

// counted is the number of pleats that follows.
func (s Pleats) counted(a *fault.Audit) int {
	pleated, both := s.Section.Sub(s.Flat), 2*s.Kind.folds()
	alike := s.Grow.IsZero() && !s.Depth.IsZero() && !s.Cloth.IsZero()
	switch {
	case !s.About.IsZero():
		n, ok := pleated.Div(s.About).Sub(units.RatioOf(1, 2)).Int(units.Up) // of two as near the fewer
		if !ok || n > MaxPleats || pleated.Sign() <= 0 {
			a.Fault("about", s.About.String(), "a pitch of 1 to "+strconv.Itoa(MaxPleats)+" pleats in {0}", fault.Range, pleated)
			return 0
		}
		return int(max(1, n))
	case !s.Section.IsZero() && !s.Pitch.IsZero():
		return wholePleats(a, "section", s.Section, pleated, s.Pitch, s.Flat, MaxPleats)
	case alike && !s.Pitch.IsZero():
		return wholePleats(a, "cloth", s.Cloth, s.Cloth.Sub(s.Flat), s.Pitch.Add(s.Depth.MulInt(both)), s.Flat, MaxPleats)
	case alike && !s.Section.IsZero():
		return wholePleats(a, "cloth", s.Cloth, s.Cloth.Sub(s.Section), s.Depth.MulInt(both), s.Section, MaxPleats)
	}
	a.Fault("count", "", "1 to "+strconv.Itoa(MaxPleats)+", or section and pitch, or about", fault.Missing)
	return 0
}

// wholePleats is how many steps a length holds, where that is a whole number; else
// it records a fault that names the lengths on either side, beside what is fixed.
func wholePleats(a *fault.Audit, path string, got, length, step, fixed units.Length, most int64) int {
	n, ok := length.Div(step).Int(units.Down)
	switch {
	case !ok || n > most || n < 0:
		a.Fault(path, got.String(), "for 1 to "+strconv.FormatInt(most, 10)+" pleats", fault.Range)
		return 0
	case n > 0 && step.MulInt(n) == length:
		return int(n)
	}
	more := strconv.FormatInt(n+1, 10)
	if n == 0 {
		a.Fault(path, got.String(), "{0} (1 pleat)", fault.Conflict, fixed.Add(step))
	} else {
		a.Fault(path, got.String(), "{0} ("+strconv.FormatInt(n, 10)+" pleats) or {1} ("+more+")", fault.Conflict, fixed.Add(step.MulInt(n)), fixed.Add(step.MulInt(n+1)))
	}
	return 0
}

// hidden is what all the pleats hide.
func (s Pleats) hidden() units.Length {
	n := int64(s.Count)
	depths := s.Depth.MulInt(n).Add(s.Grow.MulInt(n * (n - 1)).DivInt(2))
	return depths.MulInt(2 * s.Kind.folds())
}

// room is how deep a fold may be that lies over no other.
func (s Pleats) room() units.Length {
	switch s.Kind {
	case BoxPleat:
		return s.Face.DivInt(2)
	case InvertedPleat:
		return s.Pitch.DivInt(2)
	}
	return s.Pitch
}

// plies is the number of layers at the thickest, where folds have so much room.
func plies(a *fault.Audit, path string, got, depth, room units.Length) int {
	n, ok := depth.Div(room).Int(units.Up)
	if !ok || n > MaxPleats {
		a.Fault(path, got.String(), "one with which at most "+strconv.Itoa(MaxPleats)+" folds lie over each other", fault.Range)
		return 0
	}
	return 1 + 2*int(n)
}

// work fills what the pleats come to.
func (p *PleatsPlan) work(a *fault.Audit) {
	s, folds := p.Spec, p.Spec.Kind.folds()
	n := int64(s.Count)
	last := s.Depth.Add(s.Grow.MulInt(n - 1))
	deepest := s.Depth.Max(last)
	if room := s.room(); room.Less(deepest) && !s.Overlapping {
		a.Fault("depth", s.Depth.String(), "at most {0} (or the deepest fold lies over the next), or overlapping", fault.Range, room.Sub(deepest.Sub(s.Depth)))
	} else if !a.Failed() {
		p.Plies = plies(a, "depth", s.Depth, deepest, room)
	}
	if last.Sign() <= 0 {
		a.Fault("grow", s.Grow.String(), "more than {0} (or the last pleat has no depth)", fault.Range, s.Depth.Neg().DivInt(max(1, n-1)))
	}
	p.Folds = s.Count * int(folds)
	p.Hidden, p.PerPleat = s.hidden(), s.Depth.MulInt(2*folds)
	p.Fullness = s.Cloth.Div(s.Section)
	p.Marked, p.Last = s.Depth, last
	if !s.Step.IsZero() {
		var left units.Length
		p.Marked, left = s.Depth.Round(s.Step, units.Down)
		p.Rest = left.MulInt(2 * folds * n)
		p.Last = last.Sub(left).Add(left.MulInt(n))
		if p.Marked.IsZero() {
			a.Fault("step", s.Step.String(), "at most {0} (depth)", fault.Range, s.Depth)
		}
	}
}

// taper fills what the pleats come to at the waist.
func (p *PleatsPlan) taper(a *fault.Audit) {
	s := p.Spec
	if s.Waist.IsZero() {
		return
	}
	fault.AtMost(a, "waist", s.Waist, s.Section, "section", fault.Range)
	if s.Waist.Cmp(s.Flat) <= 0 {
		a.Fault("waist", s.Waist.String(), "more than {0} (flat)", fault.Range, s.Flat)
		return
	}
	n := int64(s.Count)
	p.WaistPitch = s.Waist.Sub(s.Flat).DivInt(n)
	p.Deeper = s.Section.Sub(s.Waist).DivInt(2 * n * s.Kind.folds())
	p.WaistDepth = s.Depth.Add(p.Deeper)
	narrow := s
	narrow.Pitch = p.WaistPitch
	narrow.Face = s.Face.Sub(s.Pitch.Sub(p.WaistPitch))
	if s.Kind == BoxPleat && narrow.Face.Sign() <= 0 {
		a.Fault("waist", s.Waist.String(), "more than {0} (or a box pleat shows no face there)", fault.Range, s.Section.Sub(s.Face.MulInt(n)))
		return
	}
	p.WaistPlies = plies(a, "waist", s.Waist, p.WaistDepth.Max(p.Spec.Depth.Add(s.Grow.MulInt(n-1)).Add(p.Deeper)), narrow.room())
}

// widths fills how many widths of cloth are cut, and to what.
func (p *PleatsPlan) widths(a *fault.Audit) {
	s := p.Spec
	if s.Width.IsZero() {
		return
	}
	seams := s.Allowance.MulInt(2)
	usable := s.Width.Sub(seams)
	if usable.Sign() <= 0 {
		a.Fault("width", s.Width.String(), "more than {0} (two allowances)", fault.Range, seams)
		return
	}
	at, next := units.Length{}, 0
	for usable.Less(s.Cloth.Sub(at)) {
		join := at.Add(usable)
		if !s.Anywhere {
			// The last inner fold that the width reaches.
			reach, last := join, at
			for ; next < len(p.Places) && p.Places[next].Inner.Cmp(reach) <= 0; next++ {
				last = p.Places[next].Inner
			}
			if last == at {
				need := s.Cloth
				if next < len(p.Places) {
					need = p.Places[next].Inner
				}
				a.Fault("width", s.Width.String(), "at least {0} (from one hidden fold to the next and two allowances), or joins anywhere", fault.Range, need.Sub(at).Add(seams))
				return
			}
			join = last
		}
		p.Joins = append(p.Joins, join)
		p.Pieces = append(p.Pieces, join.Sub(at).Add(seams))
		if at = join; len(p.Joins) > 2*MaxPleats {
			a.Fault("width", s.Width.String(), "a width of which "+strconv.Itoa(2*MaxPleats)+" are enough", fault.Range)
			return
		}
	}
	rest := s.Cloth.Sub(at)
	p.Pieces = append(p.Pieces, rest.Add(seams))
	p.Widths, p.Left = len(p.Pieces), usable.Sub(rest)
	p.Bought = s.Drop.MulInt(int64(p.Widths))
}

// place lists the folds. Each place is found from the start, none from the one
// before.
func (p *PleatsPlan) place() {
	s := p.Spec
	for k := range int64(s.Count) {
		d := p.Marked.Add(s.Grow.MulInt(k))
		// What the k pleats before take of the flat cloth.
		at := s.Lead.Add(s.Pitch.MulInt(k)).Add(p.Marked.MulInt(k).Add(s.Grow.MulInt(k * (k - 1)).DivInt(2)).MulInt(2 * s.Kind.folds()))
		on := s.Lead.Add(s.Pitch.MulInt(k))
		if k == int64(s.Count)-1 {
			d = p.Last
		}
		two := d.MulInt(2)
		fold := func(outer, inner, place, on units.Length) {
			p.Places = append(p.Places, Fold{Pleat: int(k) + 1, Outer: outer, Inner: inner, Place: place, On: on})
		}
		switch s.Kind {
		case KnifePleat:
			fold(at, at.Add(d), at.Add(two), on)
		case BoxPleat:
			half := s.Pitch.Sub(s.Face).DivInt(2)
			first := at.Add(half)
			fold(first.Add(two), first.Add(d), first, on.Add(half))
			second := first.Add(two).Add(s.Face)
			fold(second, second.Add(d), second.Add(two), on.Add(half).Add(s.Face))
		case InvertedPleat:
			half := s.Pitch.DivInt(2)
			centre := at.Add(half).Add(two)
			fold(at.Add(half), at.Add(half).Add(d), centre, on.Add(half))
			fold(centre.Add(two), centre.Add(d), centre, on.Add(half))
		}
	}
}
