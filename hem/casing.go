package hem

import (
	"iter"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
	"example.com/clothyard/units/noun"
)

// MaxMonths is the greatest age of a wearer, in months.
const MaxMonths = 1_500

// A CasingKind is what a casing holds.
type CasingKind uint8

// The kinds of casing. The zero value is not given, which [Casing] refuses.
const (
	NoCasing      CasingKind = iota
	ElasticCasing            // for elastic
	CordCasing               // for a cord, tape or ribbon that is drawn up
	RodCasing                // for a curtain rod
)

var casings = name.Of[CasingKind]("kind of casing", "none", "elastic", "drawstring", "rod")

// CasingKinds yields every kind of casing, [NoCasing] excepted.
func CasingKinds() iter.Seq[CasingKind] { return casings.All() }

// Valid reports whether k is one of the kinds, [NoCasing] excepted.
func (k CasingKind) Valid() bool { return casings.Valid(k) }

// String is the name of the kind, as in drawstring, and none for [NoCasing].
func (k CasingKind) String() string { return casings.String(k) }

// MarshalText is the name of the kind, empty for [NoCasing]. It fails for a number
// that is no kind.
func (k CasingKind) MarshalText() ([]byte, error) { return casings.Marshal(k) }

// UnmarshalText reads the name of a kind; empty text is [NoCasing].
func (k *CasingKind) UnmarshalText(text []byte) error { return casings.Unmarshal(k, text) }

// A Casing is a hem that something is threaded through: folded down from the
// garment, or a strip applied to it. Zero means not given; lengths may not be
// negative. The measures from top to bottom are Heading, Tunnel and Lower, and
// Turn is hidden inside.
type Casing struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Kind is what the casing holds. It is needed.
	Kind CasingKind `json:"kind,omitzero"`
	// Applied says that a strip with both long edges turned is sewn on; else the
	// garment is folded down.
	Applied bool `json:"applied,omitzero"`

	// Drafted is the allowance that the pattern drew above the finished edge.
	// May be omitted; the default is what the casing takes. An applied casing has
	// none.
	Drafted units.Length `json:"drafted,omitzero"`
	// Width is the width of the elastic or of the cord laid flat, or the diameter
	// of the rod. It follows from Tunnel and Ease, and is needed where neither Tunnel
	// nor Girth is given.
	Width units.Length `json:"width,omitzero"`
	// Girth is the measure round a rod, in place of Width.
	Girth units.Length `json:"girth,omitzero"`
	// Ease is how much wider the tunnel is than what it holds, Width, or, with
	// Girth, how much longer the measure round the tunnel is. It follows from
	// Tunnel, or may be omitted; the default is 1/4 in or 6 mm, for a rod as much as Width, or 1/2 in or 1 cm with Girth, so
	// that the rod goes through.
	Ease units.Length `json:"ease,omitzero"`
	// Tunnel is the clear room between the two rows of stitching, or between the
	// fold and the row: Width + Ease, or (Girth + Ease) / 2, which is the default.
	Tunnel units.Length `json:"tunnel,omitzero"`
	// Turn is the raw edge turned under, on both long edges of an applied strip: at
	// most Heading + Tunnel + Lower, or half of that on a strip. May be omitted; the
	// default is 1/4 in or 6 mm, or as much of it as there is
	// room for.
	Turn units.Length `json:"turn,omitzero"`
	// Heading is from the finished edge, which is the fold, down to the upper row
	// of stitching; at 0 there is no upper row and the tunnel begins at the fold. On an
	// applied strip it is the part above that row, more than 0 and less than turn, so that
	// the row catches it. May be omitted; the default is 0, on an applied strip that of
	// lower.
	Heading units.Given[units.Length] `json:"heading,omitzero"`
	// Lower is from the lower row of stitching to the inner fold, less than Turn so
	// that the row catches it. May be omitted; the default is 1/8 in or 3 mm,, or half of Turn where that is less.
	Lower units.Length `json:"lower,omitzero"`

	// Opening is how much of the lower row is left open for elastic to be threaded
	// through, and is closed last. May be omitted; the default is 2 in or 5 cm,, or Width + 1/2 in or 1 cm where that is more. A rod has none,
	// nor a cord, which comes out through eyelets, but where a rule bars it.
	Opening units.Length `json:"opening,omitzero"`

	// Around is the finished length of the casing, round the garment or across
	// the curtain. May be omitted; the lengths of strip and cord need it.
	Around units.Length `json:"around,omitzero"`
	// End is turned in at each end of an applied strip. May be omitted; the default
	// is 1/4 in or 6 mm where Around is given, common practice.
	End units.Length `json:"end,omitzero"`
	// Tail is, for a cord, what hangs free at each end when the casing is at its
	// full width. May be omitted; the length of the cord needs it.
	Tail units.Length `json:"tail,omitzero"`
	// Neck says that the cord is at the hood or the neck; else it is at the waist or
	// the hem.
	Neck bool `json:"neck,omitzero"`
	// Months is the age of the wearer of a cord in months, at most [MaxMonths]. May
	// be omitted; no limit is then known.
	Months int `json:"months,omitzero"`
}

// A CasingPlan is a casing worked out.
type CasingPlan struct {
	Spec    Casing   `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields that rest on a default

	Depth units.Length `json:"depth,omitzero"` // from the finished edge to the inner fold, Heading + Tunnel + Lower; of an applied strip, its width once turned
	Taken units.Length `json:"taken,omitzero"` // what the casing takes off the garment, Depth + Turn; zero for an applied one
	Drift units.Length `json:"drift,omitzero"` // Drafted - Taken: how much longer the garment comes out than drafted; zero for an applied one
	// FromTunnel is the allowance measured from the upper row of stitching instead
	// of the finished edge, Taken + Heading, as curtains are reckoned from the rod.
	FromTunnel units.Length `json:"fromTunnel,omitzero"`

	RawToFold       units.Length `json:"rawToFold,omitzero"`       // from the raw edge to the inner fold, Turn
	RawToEdge       units.Length `json:"rawToEdge,omitzero"`       // from the raw edge to the finished edge, Taken; zero for an applied one
	FinishedToUpper units.Length `json:"finishedToUpper,omitzero"` // from the finished edge, or the upper edge of the strip, down to the upper row; zero where there is none
	FinishedToLower units.Length `json:"finishedToLower,omitzero"` // from the same edge down to the lower row
	Rows            int          `json:"rows,omitzero"`            // rows of stitching round the casing: 1 where the tunnel begins at the fold, else 2; an applied strip has 2
	Plies           int          `json:"plies,omitzero"`           // layers of cloth at the thickest, without what is threaded: 3

	StripWidth  units.Length `json:"stripWidth,omitzero"`  // width to cut an applied strip, Depth + 2 x Turn; else zero
	StripLength units.Length `json:"stripLength,omitzero"` // length to cut it, Around + 2 x End; zero where Around is not given, or not applied
	CordLength  units.Length `json:"cordLength,omitzero"`  // length of the cord, Around + 2 x Tail; zero unless both are given

	HalfGirth units.Near `json:"halfGirth,omitzero"` // half the measure round a rod, pi x Width / 2 or Girth / 2; zero for the rest
	// Room is Tunnel - HalfGirth: below zero the rod does not go through. Zero but
	// for a rod.
	Room units.Near `json:"room,omitzero"`

	TailMost units.Length `json:"tailMost,omitzero"` // the shortest limit on Tail that this package knows for the age and the place; zero where it knows none
	Barred   bool         `json:"barred,omitzero"`   // a rule allows no cord there at that age
	Over     units.Length `json:"over,omitzero"`     // how much longer Tail is than TailMost; zero where it is not
}

// Plan works out the casing. The faults are [fault.Faults].
func (s Casing) Plan() (CasingPlan, error) {
	var a fault.Audit
	full, names := s.fill()
	s.audit(&a, full)
	if a.Failed() {
		return CasingPlan{}, a.Err(names...)
	}
	s = full
	p := CasingPlan{Spec: s, Assumed: names, Plies: 3, Rows: 2}
	p.Depth = s.depth()
	p.RawToFold = s.Turn
	p.FinishedToUpper = s.heading()
	p.FinishedToLower = s.heading().Add(s.Tunnel)
	if s.Applied {
		p.StripWidth = p.Depth.Add(s.Turn.MulInt(2))
		if !s.Around.IsZero() {
			p.StripLength = s.Around.Add(s.End.MulInt(2))
		}
	} else {
		p.Taken = p.Depth.Add(s.Turn)
		p.RawToEdge = p.Taken
		p.FromTunnel = p.Taken.Add(s.heading())
		p.Drift = s.Drafted.Sub(p.Taken)
		if s.heading().IsZero() {
			p.Rows = 1
		}
	}
	if !s.Around.IsZero() && !s.Tail.IsZero() {
		p.CordLength = s.Around.Add(s.Tail.MulInt(2))
	}
	if s.Kind == RodCasing {
		p.HalfGirth = units.Exactly(s.Girth.DivInt(2))
		if s.Girth.IsZero() {
			p.HalfGirth = units.Pi().Of(s.Width).DivInt(2)
		}
		p.Room = units.Exactly(s.Tunnel).Sub(p.HalfGirth).Settled()
		p.HalfGirth = p.HalfGirth.Settled()
	}
	if s.Kind == CordCasing {
		p.TailMost, p.Barred = tailMost(s.Months, s.Neck)
		if !p.TailMost.IsZero() && p.TailMost.Less(s.Tail) {
			p.Over = s.Tail.Sub(p.TailMost)
		}
	}
	return p, nil
}

// fill works out what is not given, and names what rests on a default. Where a
// length is negative it does nothing: the audit names it.
func (s Casing) fill() (Casing, []string) {
	for _, l := range [...]units.Length{s.Drafted, s.Width, s.Girth, s.Ease, s.Tunnel, s.Turn, s.heading(), s.Lower, s.Opening} {
		if l.Sign() < 0 {
			return s, nil
		}
	}
	if !s.Kind.Valid() {
		return s, nil
	}
	given, drafted := s, s.Drafted.IsZero() && !s.Applied
	s.Tape = noun.Tape(s)
	if s.Ease.IsZero() && (s.Tunnel.IsZero() || s.Width.IsZero() && s.Girth.IsZero()) {
		e := casingEase(s.Kind, !s.Girth.IsZero(), s.Tape)
		switch s.Ease = e.Ease; {
		case e.Part.IsZero():
		case s.Tunnel.IsZero():
			s.Ease = s.Width.Scale(e.Part)
		default: // of a tunnel that is Width x (1 + Part)
			s.Ease = s.Tunnel.Sub(s.Tunnel.Unscale(e.Part.Add(units.RatioOf(1, 1))))
		}
	}
	switch {
	case s.Tunnel.IsZero():
		s.Tunnel = s.holds()
	case s.Width.IsZero() && s.Girth.IsZero():
		s.Width = s.Tunnel.Sub(s.Ease)
	case s.Ease.IsZero() && s.Girth.IsZero():
		s.Ease = s.Tunnel.Sub(s.Width)
	case s.Ease.IsZero():
		s.Ease = s.Tunnel.MulInt(2).Sub(s.Girth)
	}
	if s.Turn.IsZero() {
		room, _ := s.room()
		s.Turn = casingTurn(s.Tape).Turn.Min(room)
	}
	row := casingRow(s.Tape).Lower.Min(s.Turn.DivInt(2))
	if s.Heading.IsZero() && s.Applied {
		s.Heading = units.Give(row)
	}
	if s.Lower.IsZero() {
		s.Lower = row
	}
	if drafted {
		s.Drafted = s.depth().Add(s.Turn)
	}
	if s.Opening.IsZero() && s.threaded() {
		s.Opening = casingOpening(s.Tape).Open.Max(s.Width.Add(threading(s.Tape)))
	}
	end := s.Applied && s.End.IsZero() && s.Around.Sign() > 0
	if end {
		s.End = casingTurn(s.Tape).Turn
	}
	var names []string
	for _, f := range [...]struct {
		name    string
		assumed bool
	}{
		{"tape", given.Tape == 0},
		{"drafted", drafted},
		{"ease", given.Ease.IsZero() && (given.Tunnel.IsZero() || given.Width.IsZero() && given.Girth.IsZero())},
		{"turn", given.Turn.IsZero()},
		{"heading", given.Heading.IsZero() && s.Applied},
		{"lower", given.Lower.IsZero()},
		{"opening", given.Opening != s.Opening},
		{"end", end},
	} {
		if f.assumed {
			names = append(names, f.name)
		}
	}
	return s, names
}

// threading is how much longer an opening is than the elastic is wide; common practice.
func threading(t units.Tape) units.Length { return t.Of(inches(0, 1, 2), units.Centimetre.Of(1)) }

// threaded reports whether elastic is threaded through an opening of the casing: in
// place of a cord too, where a rule bars that.
func (s Casing) threaded() bool {
	if s.Kind == CordCasing {
		_, barred := tailMost(s.Months, s.Neck)
		return barred
	}
	return s.Kind == ElasticCasing
}

func (s Casing) heading() units.Length { return s.Heading.Or(units.Length{}) }

// depth is from the finished edge to the inner fold.
func (s Casing) depth() units.Length { return s.heading().Add(s.Tunnel).Add(s.Lower) }

// room is the most that may be turned under, and what it is.
func (s Casing) room() (units.Length, string) {
	if s.Applied {
		return s.depth().DivInt(2), "half of heading + tunnel + lower"
	}
	return s.depth(), "heading + tunnel + lower"
}

// holds is the tunnel that what is threaded asks for.
func (s Casing) holds() units.Length {
	switch {
	case !s.Girth.IsZero():
		return s.Girth.Add(s.Ease).DivInt(2)
	case !s.Width.IsZero():
		return s.Width.Add(s.Ease)
	}
	return units.Length{}
}

// audit records what is wrong with s, in the order of its fields; full is s filled.
func (s Casing) audit(a *fault.Audit, full Casing) {
	s.Tape.Check(a, "tape")
	casings.Check(a, "kind", s.Kind)
	known := s.Kind.Valid()
	unused := func(path string, l units.Length, not bool, what string) {
		switch {
		case l.IsZero():
		case known && not:
			a.Fault(path, l.String(), "none for "+what, fault.Unused)
		default:
			a.NotNegative(path, l)
		}
	}
	unused("drafted", s.Drafted, s.Applied, "an applied casing")
	rod, cord := s.Kind == RodCasing, s.Kind == CordCasing
	unused("width", s.Width, rod && !s.Girth.IsZero(), "a rod of which girth is given")
	if known && s.Girth.IsZero() && s.Width.Sign() >= 0 && full.Width.Sign() <= 0 && s.Ease.Sign() >= 0 {
		switch {
		case s.Tunnel.IsZero():
			a.Fault("width", "", "more than 0 in", fault.Missing)
		case s.Tunnel.Sign() > 0:
			a.Fault("tunnel", s.Tunnel.String(), "more than {0} (ease)", fault.Range, full.Ease)
		}
	}
	unused("girth", s.Girth, !rod, s.Kind.String())
	a.NotNegative("ease", s.Ease)
	a.NotNegative("tunnel", s.Tunnel)
	s.auditTunnel(a, full)
	s.auditRows(a, full)
	unused("opening", s.Opening, !s.threaded(), s.Kind.String())
	a.NotNegative("around", s.Around)
	unused("end", s.End, !s.Applied, "a casing folded down")
	unused("tail", s.Tail, !cord, s.Kind.String())
	if s.Neck && known && !cord {
		a.Fault("neck", "true", "false for "+s.Kind.String(), fault.Unused)
	}
	switch {
	case s.Months < 0 || s.Months > MaxMonths:
		a.Fault("months", strconv.Itoa(s.Months), "0 to "+strconv.Itoa(MaxMonths), fault.Range)
	case s.Months > 0 && known && !cord:
		a.Fault("months", strconv.Itoa(s.Months), "none for "+s.Kind.String(), fault.Unused)
	}
}

// auditTunnel records a tunnel that disagrees with what it holds.
func (s Casing) auditTunnel(a *fault.Audit, full Casing) {
	if s.Tunnel.Sign() <= 0 || full.Tunnel != s.Tunnel || s.Width.Sign() < 0 || s.Girth.Sign() < 0 || s.Ease.Sign() < 0 {
		return
	}
	holds := s.holds()
	switch {
	case s.Width.IsZero() && s.Girth.IsZero():
	case s.Ease.IsZero() && s.Tunnel.Less(holds):
		what := " (width)"
		if !s.Girth.IsZero() {
			what = " (half of girth)"
		}
		a.Fault("tunnel", s.Tunnel.String(), "at least {0}"+what, fault.Range, holds)
	case !s.Ease.IsZero() && s.Tunnel != holds:
		what := " (width + ease)"
		if !s.Girth.IsZero() {
			what = " (half of girth + ease)"
		}
		a.Fault("tunnel", s.Tunnel.String(), "{0}"+what, fault.Conflict, holds)
	}
}

// auditRows records a turn for which there is no room, and a row that does not
// catch its turn. What rests on a negative length, or on a tunnel that is not
// known, is left out.
func (s Casing) auditRows(a *fault.Audit, full Casing) {
	room, what := full.room()
	known := full.Tunnel.Sign() > 0 && full.Turn.Sign() > 0 && s.heading().Sign() >= 0 && s.Lower.Sign() >= 0
	a.NotNegative("turn", s.Turn)
	if known {
		fault.AtMost(a, "turn", s.Turn, room, what, fault.Range)
	}
	// A turn that is too deep has its own fault.
	known = known && !room.Less(full.Turn)
	caught := func(path string, row units.Length) {
		if a.NotNegative(path, row); known && !row.Less(full.Turn) {
			a.Fault(path, row.String(), "less than {0} (turn), or the row does not catch the turn", fault.Range, full.Turn)
		}
	}
	if s.Applied {
		if !s.Heading.IsZero() && s.heading().IsZero() {
			a.Fault("heading", "0 in", "more than 0 in, or the row does not catch the turn", fault.Range)
		}
		caught("heading", s.heading())
	} else {
		a.NotNegative("heading", s.heading())
	}
	caught("lower", s.Lower)
}
