package hem

import (
	"iter"
	"slices"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
	"example.com/clothyard/units/noun"
)

// MaxTucks is the greatest number of tucks in one section.
const MaxTucks = 10_000

// A TuckKind is a kind of tuck, a fold of the cloth stitched along its length.
type TuckKind uint8

// The kinds of tuck. The zero value is not given, which [Tucks] refuses.
const (
	NoTuck     TuckKind = iota
	SpacedTuck          // with clear cloth between the fold of one and the stitching of the next
	PinTuck             // as narrow as can be stitched
	BlindTuck           // the fold of each meets the stitching of the next, which it hides
	GrowthTuck          // to be let out as a child grows
)

var tuckKinds = name.Of[TuckKind]("kind of tuck", "none", "spaced", "pin", "blind", "growth")

// TuckKinds yields every kind of tuck, [NoTuck] excepted.
func TuckKinds() iter.Seq[TuckKind] { return tuckKinds.All() }

// Valid reports whether k is one of the kinds, [NoTuck] excepted.
func (k TuckKind) Valid() bool { return tuckKinds.Valid(k) }

// String is the name of the kind, as in growth, and none for [NoTuck].
func (k TuckKind) String() string { return tuckKinds.String(k) }

// MarshalText is the name of the kind, empty for [NoTuck]. It fails for a number
// that is no kind.
func (k TuckKind) MarshalText() ([]byte, error) { return tuckKinds.Marshal(k) }

// UnmarshalText reads the name of a kind; empty text is [NoTuck].
func (k *TuckKind) UnmarshalText(text []byte) error { return tuckKinds.Unmarshal(k, text) }

// Tucks is a row of equal tucks across one section. Zero means not given; lengths
// may not be negative. Depth, Count and Removed follow from each other, and so do
// Count, Pitch and Span.
type Tucks struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Kind is what tucks they are. It is needed.
	Kind TuckKind `json:"kind,omitzero"`

	// Depth is the depth of a tuck, from its fold to its stitching. Of Removed it
	// is the part for one layer of one tuck. May be omitted for a pin tuck; the
	// default is 1/16 in or 2 mm.
	Depth units.Length `json:"depth,omitzero"`
	// Count is how many tucks, at most [MaxTucks]. It follows from Span and Pitch,
	// or from Removed and Depth, where that comes to a whole number. May be omitted
	// for a growth tuck; the default is 1.
	Count int `json:"count,omitzero"`
	// Removed is all the length that the tucks take up, 2 x Depth x Count.
	Removed units.Length `json:"removed,omitzero"`
	// Pitch is from the stitching of one tuck to that of the next, on the tucked
	// cloth. It follows from Span and Count, or may be omitted; the default for more
	// than one tuck is Depth for blind tucks, and Depth and the space of [TuckSpaces]
	// for spaced and growth tucks. A single tuck has none.
	Pitch units.Length `json:"pitch,omitzero"`
	// Edge is from each edge of the section to the nearest stitching, on the tucked
	// cloth. May be omitted; the default is 0, where the first and the last tuck are
	// stitched at the very edges.
	Edge units.Length `json:"edge,omitzero" noun:"zero"`
	// Span is the length of the section once tucked, 2 x Edge + (Count - 1) x
	// Pitch. Of a single tuck it may be longer than that, and the tuck lies at Edge
	// from the first edge.
	Span units.Length `json:"span,omitzero"`
}

// A TucksPlan is a row of tucks worked out.
type TucksPlan struct {
	Spec    Tucks    `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields that rest on a default

	Removed   units.Length `json:"removed,omitzero"`   // what the tucks take up, 2 x Depth x Count
	Cloth     units.Length `json:"cloth,omitzero"`     // the section before it is tucked, Span + Removed
	PerTuck   units.Length `json:"perTuck,omitzero"`   // what one tuck takes up, 2 x Depth
	FlatPitch units.Length `json:"flatPitch,omitzero"` // from one fold to the next on the flat cloth, Pitch + 2 x Depth; zero for a single tuck
	Space     units.Length `json:"space,omitzero"`     // clear cloth between the fold of one tuck and the stitching of the next, Pitch - Depth
	FirstFold units.Length `json:"firstFold,omitzero"` // from the edge of the section to the first fold on the flat cloth, Edge + Depth
	LastFold  units.Length `json:"lastFold,omitzero"`  // from the same edge to the last fold on the flat cloth
	Plies     int          `json:"plies,omitzero"`     // layers of cloth where a tuck lies on the section, 3
	Places    []Tuck       `json:"places,omitzero"`    // every tuck on the flat cloth, exactly
}

// A Tuck is where one tuck is marked on the flat cloth, each line measured from
// the same edge of the section.
type Tuck struct {
	Number int          `json:"number,omitzero"` // from 1
	Near   units.Length `json:"near,omitzero"`   // the line of stitching nearer the edge
	Fold   units.Length `json:"fold,omitzero"`   // the fold
	Far    units.Length `json:"far,omitzero"`    // the line of stitching beyond the fold
	// Off is how far the exact place of the tuck lies beyond the place given,
	// which was rounded to a step.
	Off units.Length `json:"off,omitzero"`
}

// Plan works out the tucks. The faults are [fault.Faults].
func (s Tucks) Plan() (TucksPlan, error) {
	var a fault.Audit
	s.audit(&a)
	if a.Failed() {
		return TucksPlan{}, a.Err()
	}
	full, names := s.fill(&a)
	if a.Failed() {
		return TucksPlan{}, a.Err(names...)
	}
	p := TucksPlan{Spec: full, Assumed: names, Removed: full.Removed, Plies: 3}
	p.Cloth = full.Span.Add(full.Removed)
	p.PerTuck = full.Depth.MulInt(2)
	p.FirstFold = full.Edge.Add(full.Depth)
	p.LastFold = p.FirstFold
	if full.Count > 1 {
		p.FlatPitch = full.Pitch.Add(p.PerTuck)
		p.Space = full.Pitch.Sub(full.Depth)
		p.LastFold = p.FirstFold.Add(p.FlatPitch.MulInt(int64(full.Count - 1)))
	}
	p.Places = slices.Collect(p.Marks(units.Length{}, units.HalfAway))
	return p, nil
}

// audit looks at each field by itself.
func (s Tucks) audit(a *fault.Audit) {
	s.Tape.Check(a, "tape")
	tuckKinds.Check(a, "kind", s.Kind)
	a.NotNegative("depth", s.Depth)
	if s.Count < 0 || s.Count > MaxTucks {
		a.Fault("count", strconv.Itoa(s.Count), "1 to "+strconv.Itoa(MaxTucks), fault.Range)
	}
	a.NotNegative("removed", s.Removed)
	a.NotNegative("pitch", s.Pitch)
	a.NotNegative("edge", s.Edge)
	a.NotNegative("span", s.Span)
}

// fill works out what is not given, and names what rests on a default.
func (s Tucks) fill(a *fault.Audit) (Tucks, []string) {
	var names []string
	given := s
	if s.Tape == 0 {
		s.Tape, names = noun.Tape(s), append(names, "tape")
	}
	if s.Depth.IsZero() && s.Kind == PinTuck && (s.Removed.IsZero() || s.Count == 0) {
		s.Depth, names = pinWidth(s.Tape).Depth, append(names, "depth")
	}
	s = s.counted(a)
	if s.Count == 0 && s.Kind == GrowthTuck && s.Pitch.IsZero() && !a.Failed() {
		s.Count, names = 1, append(names, "count")
	}
	if s.Count > 0 && s.Depth.IsZero() {
		s.Depth = s.Removed.DivInt(2 * int64(s.Count))
	}
	if s.Depth.IsZero() {
		a.Fault("depth", "", "more than 0 in, or removed and count", fault.Missing)
	}
	if s.Count == 0 && !a.Failed() {
		a.Fault("count", "", "1 to "+strconv.Itoa(MaxTucks)+", or span and pitch, or removed", fault.Missing)
	}
	if a.Failed() {
		return given, nil
	}
	s.Removed = s.Depth.MulInt(2 * int64(s.Count))
	if !given.Removed.IsZero() && given.Removed != s.Removed {
		a.Fault("removed", given.Removed.String(), "{0} (2 x depth x count)", fault.Conflict, s.Removed)
	}
	if s.Count == 1 {
		return s.single(a), names
	}
	inner := s.Span.Sub(s.Edge.MulInt(2))
	switch gaps := int64(s.Count - 1); {
	case !s.Span.IsZero() && inner.Sign() <= 0:
		a.Fault("span", s.Span.String(), "more than {0} (twice edge)", fault.Range, s.Edge.MulInt(2))
		return s, names
	case !s.Span.IsZero() && s.Pitch.IsZero():
		s.Pitch = inner.DivInt(gaps)
	case s.Pitch.IsZero():
		s.Pitch, names = s.pitch(), append(names, "pitch")
		if s.Pitch.IsZero() {
			a.Fault("pitch", "", "more than 0 in, or span", fault.Missing)
			return s, names
		}
		fallthrough
	case s.Span.IsZero():
		s.Span = s.Edge.MulInt(2).Add(s.Pitch.MulInt(gaps))
	case s.Pitch.MulInt(gaps) != inner:
		want := s.Edge.MulInt(2).Add(s.Pitch.MulInt(gaps))
		a.Fault("span", s.Span.String(), "{0} (2 x edge + (count - 1) x pitch)", fault.Conflict, want)
		return s, names
	}
	switch {
	case s.Pitch.Less(s.Depth):
		// The tuck would cover the stitching of the next.
		a.Fault("pitch", s.Pitch.String(), "at least {0} (depth)", fault.Range, s.Depth)
	case s.Kind == BlindTuck && s.Pitch != s.Depth:
		a.Fault("pitch", s.Pitch.String(), "{0} (depth), since the tucks meet", fault.Conflict, s.Depth)
	}
	return s, names
}

// counted fills Count where the rest comes to a whole number of tucks.
func (s Tucks) counted(a *fault.Audit) Tucks {
	if s.Count != 0 {
		return s
	}
	inner := s.Span.Sub(s.Edge.MulInt(2))
	switch {
	case !s.Removed.IsZero() && !s.Depth.IsZero():
		s.Count = whole(a, "removed", s.Removed, s.Removed.Div(s.Depth.MulInt(2)), s.Depth.MulInt(2), units.Length{}, 0)
	case inner.Sign() > 0 && !s.Pitch.IsZero():
		s.Count = whole(a, "span", s.Span, inner.Div(s.Pitch), s.Pitch, s.Edge.MulInt(2), 1)
	}
	return s
}

// whole is n and more, where n is a whole number; else it records a fault that
// names the lengths on either side, each so many steps beside what is fixed.
func whole(a *fault.Audit, path string, got units.Length, n units.Ratio, step, fixed units.Length, more int) int {
	below, ok := n.Int(units.Down)
	switch {
	case !ok || below > int64(MaxTucks-more):
		a.Fault(path, got.String(), "for 1 to "+strconv.Itoa(MaxTucks)+" tucks", fault.Range)
		return 0
	case n.IsInt():
		return int(below) + more
	}
	tucks := func(k int64) string { return " (" + strconv.FormatInt(k+int64(more), 10) + " tucks)" }
	next := fixed.Add(step.MulInt(below + 1))
	if below == 0 {
		a.Fault(path, got.String(), "{0}"+tucks(1), fault.Conflict, next)
	} else {
		a.Fault(path, got.String(), "{0}"+tucks(below)+" or {1}"+tucks(below+1), fault.Conflict, fixed.Add(step.MulInt(below)), next)
	}
	return 0
}

// single ends the solving of one tuck alone.
func (s Tucks) single(a *fault.Audit) Tucks {
	if !s.Pitch.IsZero() {
		a.Fault("pitch", s.Pitch.String(), "none for a single tuck", fault.Unused)
	}
	least := s.Edge.MulInt(2)
	switch {
	case s.Span.IsZero():
		s.Span = least
	case s.Span.Less(least):
		a.Fault("span", s.Span.String(), "at least {0} (twice edge)", fault.Range, least)
	}
	return s
}

// pitch is the default pitch, zero where the kind has none.
func (s Tucks) pitch() units.Length {
	if s.Kind == BlindTuck {
		return s.Depth
	}
	for _, t := range tuckSpaces {
		if t.Kind == s.Kind {
			return s.Depth.Add(s.Depth.Scale(t.Space))
		}
	}
	return units.Length{}
}

// Marks yields every tuck on the flat cloth. The folds are divided equally and each
// place is rounded to the step by itself, as [units.Marks] does; a step of zero does
// not round.
func (p TucksPlan) Marks(step units.Length, m units.Mode) iter.Seq[Tuck] {
	return func(yield func(Tuck) bool) {
		s, n := p.Spec, 0
		at := func(mark, residue units.Length) Tuck {
			n++
			fold := mark.Add(p.FirstFold)
			return Tuck{Number: n, Near: fold.Sub(s.Depth), Fold: fold, Far: fold.Add(s.Depth), Off: residue}
		}
		if s.Count == 1 {
			yield(at(units.Length{}, units.Length{}))
			return
		}
		for mark, residue := range units.Marks(p.LastFold.Sub(p.FirstFold), s.Count-1, step, m) {
			if !yield(at(mark, residue)) {
				return
			}
		}
	}
}
