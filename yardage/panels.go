package yardage

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxWidths is the greatest number of widths joined.
const MaxWidths = 10_000

// Panels are widths of cloth joined side by side: a stage curtain, a backcloth,
// a bed curtain. Part of a width counts as a whole one. Of Cover, Fullness and
// Widths two give the third; Widths alone gives the length of cloth only.
type Panels struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape     units.Tape   `json:"tape,omitzero"`
	Cover    units.Length `json:"cover,omitzero"`    // the finished width to cover, overlaps and returns included
	Fullness units.Ratio  `json:"fullness,omitzero"` // flat width to Cover, at least 1, which is flat
	Widths   int          `json:"widths,omitzero"`   // how many widths of cloth
	Width    units.Length `json:"width,omitzero"`    // one width of cloth, selvedges off
	// Seam is what a join takes from each width, 0 in where the widths only meet edge to
	// edge. May be omitted; the default is 1/2 in, or 1.5 cm on a metric tape.
	Seam  units.Given[units.Length] `json:"seam,omitzero"`
	Sides units.Length              `json:"sides,omitzero" noun:"zero"` // taken at each of the two side edges, as a side hem; zero is an answer
	// Sideways is set where the cloth is turned, so that its width runs down the drop and
	// nothing is joined: wide cloth for sheers. The drop with its hems is at most a width.
	Sideways bool         `json:"sideways,omitzero"`
	Drop     units.Length `json:"drop,omitzero"`             // the finished length
	Hems     units.Length `json:"hems,omitzero" noun:"zero"` // what the hem and the heading take of the length, together; zero is an answer
	// Repeat is the length of the pattern repeat; none for plain cloth. Every drop
	// is cut in whole repeats.
	Repeat units.Length `json:"repeat,omitzero"`
	// HalfDrop is set where the pattern steps down half a repeat from one width to
	// the next. It needs a Repeat.
	HalfDrop bool `json:"halfDrop,omitzero"`
	// Starts is how many further repeats the order takes so that the first drop can
	// begin where it should; one is usual. Zero is an answer. It needs a Repeat.
	Starts int `json:"starts,omitzero" noun:"zero"`
}

// A PanelsPlan is the widths joined and the cloth for them.
type PanelsPlan struct {
	Spec     Panels       `json:"spec,omitzero"`     // as solved
	Assumed  []string     `json:"assumed,omitzero"`  // the fields filled with a default
	Joins    int          `json:"joins,omitzero"`    // how many joins between the widths
	Flat     units.Length `json:"flat,omitzero"`     // the joined width between the side edges as finished, not gathered
	Made     units.Ratio  `json:"made,omitzero"`     // the fullness made: Flat to Cover; zero if Cover is not known
	Cut      units.Length `json:"cut,omitzero"`      // one drop before repeats: Drop and Hems
	Repeats  int          `json:"repeats,omitzero"`  // whole repeats in a drop; zero for plain cloth
	Drop     units.Length `json:"drop,omitzero"`     // one drop as cut, in whole repeats
	Waste    units.Length `json:"waste,omitzero"`    // what is cut off each drop
	Extra    units.Length `json:"extra,omitzero"`    // added once to the order: Starts repeats, and half a repeat if a half drop needs it
	Length   units.Length `json:"length,omitzero"`   // the cloth for it all, to be the Need of a [Purchase] with no Repeat
	ByAdding units.Length `json:"byAdding,omitzero"` // the other rule in print, a repeat added to every drop; zero for plain cloth
}

// seam is what a join takes, 0 in where nothing is said.
func (s Panels) seam() units.Length { return s.Seam.Or(units.Length{}) }

func (s Panels) audit(a *fault.Audit) {
	s.Tape.Check(a, "tape")
	one := units.RatioOf(1, 1)
	need := s.Widths == 0
	if a.NotNegative("cover", s.Cover); need && s.Cover.IsZero() {
		a.Fault("cover", "", "more than 0 in, or widths", fault.Missing)
	}
	switch {
	case need && s.Fullness.IsZero():
		a.Fault("fullness", "", "1 or more, or widths", fault.Missing)
	case s.Fullness.Sign() < 0:
		a.Fault("fullness", s.Fullness.String(), "1 or more", fault.Sign)
	case !s.Fullness.IsZero() && s.Fullness.Less(one):
		a.Fault("fullness", s.Fullness.String(), "1 or more: less does not cover", fault.Range)
	}
	if !need {
		a.Count("widths", s.Widths, 1, MaxWidths)
	}
	a.Need("width", s.Width)
	a.NotNegative("seam", s.seam())
	a.NotNegative("sides", s.Sides)
	a.Need("drop", s.Drop)
	a.NotNegative("hems", s.Hems)
	a.NotNegative("repeat", s.Repeat)
	if s.Sideways {
		if s.Widths != 0 {
			a.Fault("widths", ticket.Of(s.Widths).String(), "none with sideways", fault.Unused)
		}
		if !s.Seam.IsZero() {
			a.Fault("seam", s.seam().String(), "none with sideways", fault.Unused)
		}
		if !s.Repeat.IsZero() {
			a.Fault("repeat", s.Repeat.String(), "none with sideways", fault.Unused)
		}
	}
	if s.HalfDrop && s.Repeat.IsZero() {
		a.Fault("halfDrop", "true", "none without a repeat", fault.Unused)
	}
	if s.Starts != 0 && s.Repeat.IsZero() {
		a.Fault("starts", ticket.Of(s.Starts).String(), "none without a repeat", fault.Unused)
	} else if s.Starts < 0 || s.Starts > MaxRepeats {
		a.Fault("starts", ticket.Of(s.Starts).String(), "0 to "+ticket.Of(MaxRepeats).String(), fault.Range)
	}
}

// flat is what n widths make once they are joined and the sides are turned.
func (s Panels) flat(n int) units.Length {
	return s.Width.MulInt(int64(n)).Sub(s.lost(n))
}

// lost is what the joins of n widths and the two sides take.
func (s Panels) lost(n int) units.Length {
	return s.seam().MulInt(2 * int64(n-1)).Add(s.Sides.MulInt(2))
}

// enough is the least number of widths that make the flat width given, up to one
// more than MaxWidths; that also where no number does.
func (s Panels) enough(flat units.Length) int {
	for n := 1; n <= 2; n++ {
		if !s.flat(n).Less(flat) && s.sewable(n) {
			return n
		}
	}
	// From the third on each width adds the same.
	more := s.Width.Sub(s.seam().MulInt(2))
	if more.Sign() <= 0 || !s.sewable(3) {
		return MaxWidths + 1
	}
	n, ok := flat.Sub(s.flat(2)).Div(more).Int(units.Up)
	if !ok || n > MaxWidths-2 {
		return MaxWidths + 1
	}
	return int(n) + 2
}

// taken is what the joins and the sides take of one of n widths, of the one that
// loses most; something of it must be left.
func (s Panels) taken(n int) units.Length {
	switch side := s.seam().Add(s.Sides); n {
	case 1:
		return s.Sides.MulInt(2)
	case 2:
		return side
	default:
		return side.Max(s.seam().MulInt(2))
	}
}

func (s Panels) sewable(n int) bool { return s.taken(n).Less(s.Width) }

// join fills the tape, the seam and the number of widths, and names what is assumed.
func (s Panels) join(a *fault.Audit) (Panels, []string) {
	given := s
	s.Tape = noun.Tape(s)
	if s.Seam.IsZero() {
		s.Seam = units.Give(joinDefault(s.Tape))
	}
	flat := s.Cover.Scale(s.Fullness)
	if s.Widths == 0 {
		s.Widths = s.enough(flat)
	}
	switch n := min(s.Widths, MaxWidths); {
	case !s.sewable(n):
		s.narrow(a, n, flat, given)
	case n < s.Widths:
		fault.AtMost(a, "cover", s.Cover, s.flat(n).Unscale(s.Fullness), "what "+ticket.Of(n).String()+" widths cover", fault.Range)
	}
	var assumed []string
	if given.Tape == 0 {
		assumed = append(assumed, "tape")
	}
	switch {
	case s.Widths == 1:
		s.Seam = given.Seam
	case given.Seam.IsZero():
		assumed = append(assumed, "seam")
	}
	return s, assumed
}

// narrow records a width of which nothing is left. The limit is a width that does.
func (s Panels) narrow(a *fault.Audit, n int, flat units.Length, given Panels) {
	taken := s.taken(n)
	limit, why := "more than "+taken.String(), "what the joins and the sides take of one width"
	if given.Widths == 0 {
		if does := flat.Add(s.lost(n)).DivInt(int64(n)); taken.Less(does) {
			limit, why = "at least "+does.String(), "for "+ticket.Of(n).String()+" widths"
		}
	}
	if given.Seam.IsZero() && n > 1 {
		why += ", a seam of " + s.seam().String() + " assumed"
	}
	a.Fault("width", s.Width.String(), limit+" ("+why+")", fault.Range)
}

// Plan works out the widths and the length of cloth.
func (s Panels) Plan() (PanelsPlan, error) {
	var a fault.Audit
	if s.audit(&a); a.Failed() {
		return PanelsPlan{}, a.Err()
	}
	if s.Sideways {
		return s.sideways()
	}
	var p PanelsPlan
	if s, p.Assumed = s.join(&a); a.Failed() {
		return PanelsPlan{}, a.Err()
	}
	p.Joins, p.Flat = s.Widths-1, s.flat(s.Widths)
	full := s.Fullness
	if full.IsZero() {
		full = units.RatioOf(1, 1)
	}
	switch most := p.Flat.Unscale(full); {
	case s.Cover.IsZero():
		if !s.Fullness.IsZero() {
			s.Cover = most
		}
	case most.Less(s.Cover):
		fault.AtMost(&a, "cover", s.Cover, most, "what the widths given cover", fault.Conflict)
	case s.Fullness.IsZero():
		s.Fullness = p.Flat.Div(s.Cover)
	}
	p.Cut = s.Drop.Add(s.Hems)
	if !s.Cover.IsZero() {
		p.Made = p.Flat.Div(s.Cover)
	}
	p.Drop = p.Cut
	n := int64(s.Widths)
	if !s.Repeat.IsZero() {
		k, ok := p.Cut.Div(s.Repeat).Int(units.Up)
		if !ok || k > MaxRepeats {
			a.Fault("repeat", s.Repeat.String(), "at least "+p.Cut.DivInt(MaxRepeats).String()+" ("+ticket.Of(MaxRepeats).String()+" repeats in a drop)", fault.Range)
		}
		p.Repeats = int(k)
		p.Drop = s.Repeat.MulInt(k)
		p.Waste = p.Drop.Sub(p.Cut)
		p.Extra = s.Repeat.MulInt(int64(s.Starts))
		if half := s.Repeat.DivInt(2); s.HalfDrop && s.Widths > 1 && p.Waste.Less(half) {
			p.Extra = p.Extra.Add(half)
		}
		p.ByAdding = p.Cut.Add(s.Repeat).MulInt(n)
	}
	if a.Failed() {
		return PanelsPlan{}, a.Err()
	}
	p.Spec = s
	p.Length = p.Drop.MulInt(n).Add(p.Extra)
	return p, nil
}

// sideways plans cloth whose width runs down the drop.
func (s Panels) sideways() (PanelsPlan, error) {
	var a fault.Audit
	given := s
	s.Tape = noun.Tape(s)
	p := PanelsPlan{Spec: s, Assumed: noun.Assumed(given, s)}
	p.Cut = s.Drop.Add(s.Hems)
	if s.Width.Less(p.Cut) {
		fault.AtLeast(&a, "width", s.Width, p.Cut, "drop and hems", fault.Range)
		return PanelsPlan{}, a.Err()
	}
	p.Drop, p.Waste, p.Made = s.Width, s.Width.Sub(p.Cut), s.Fullness
	p.Flat = s.Cover.Scale(s.Fullness)
	p.Length = p.Flat.Add(s.Sides.MulInt(2))
	return p, nil
}

// sheetSideways is the working of cloth that is turned.
func (p PanelsPlan) sheetSideways() ticket.Sheet {
	s := p.Spec
	sh := ticket.Sheet{Title: "Cloth turned on its side", Assumed: p.Assumed}
	sh.Answer = []ticket.Line{{Label: "cloth", Result: ticket.Cloth(p.Length)}}
	sh.Lines = []ticket.Line{
		line("flat width", ticket.Long(p.Flat), long(s.Cover, "to cover"), by(s.Fullness, "fullness")),
		line("cloth", ticket.Long(p.Length), long(p.Flat, "flat width"), long(s.Sides.MulInt(2), "both sides")),
		line("cut off the width", ticket.Long(p.Waste), long(s.Width, "width"), less(s.Drop, "finished"), less(s.Hems, "hem and heading")),
	}
	sh.Steps = []ticket.Step{{Do: "Cut the length, and trim the width to the drop", At: ticket.Long(p.Cut), From: "the lower selvedge, which may serve as the hem",
		Check: ticket.Check{What: "the drop at both ends", Want: ticket.Long(p.Cut), Mend: "trim it again from the lower edge"}}}
	sh.Cautions = []ticket.Caution{
		{Text: "The grain runs across the curtain, and so does a pattern: see how it hangs before it is cut.", Refer: "a test on the roll decides"},
		ticket.CutCare(),
	}
	sh.Sources = []source.Cite{{For: "the length along the curtain", ID: srcSideways, Known: source.Read}}
	return sh
}

// Sheet is the working, and the order of cutting and joining.
func (p PanelsPlan) Sheet() ticket.Sheet {
	s := p.Spec
	if s.Sideways {
		return p.sheetSideways()
	}
	sh := ticket.Sheet{Title: "Widths joined", Assumed: p.Assumed}
	if !p.Length.IsZero() {
		sh.Answer = []ticket.Line{{Label: "widths", Result: ticket.Of(s.Widths)}, {Label: "cloth", Result: ticket.Cloth(p.Length)}}
	}
	sh.Lines = make([]ticket.Line, 0, 8)
	sh.Lines = append(sh.Lines,
		line("widths of cloth", ticket.Of(s.Widths)),
		line("flat width", ticket.Long(p.Flat), long(s.Width, "one width"), count(s.Widths, "widths"),
			less(s.seam().MulInt(2*int64(p.Joins)), "the joins"), less(s.Sides.MulInt(2), "both sides")))
	if !s.Cover.IsZero() {
		sh.Lines = append(sh.Lines, line("fullness made", ticket.Times(p.Made), long(p.Flat, "flat"), overLong(s.Cover, "to cover")))
	}
	sh.Lines = append(sh.Lines, line("one drop", ticket.Long(p.Cut), long(s.Drop, "finished"), long(s.Hems, "hem and heading")))
	if !s.Repeat.IsZero() {
		sh.Lines = append(sh.Lines,
			line("one drop in whole repeats", ticket.Long(p.Drop), long(s.Repeat, "repeat"), count(p.Repeats, "repeats")),
			line("cut off each drop", ticket.Long(p.Waste), long(p.Drop, "as cut"), less(p.Cut, "used")))
	}
	sh.Lines = append(sh.Lines, line("cloth", ticket.Long(p.Length), long(p.Drop, "one drop"), count(s.Widths, "widths"), long(p.Extra, "for the start and the half drop")))
	if !s.Repeat.IsZero() {
		sh.Lines = append(sh.Lines, line("by the rule that adds a repeat to each", ticket.Long(p.ByAdding), long(p.Cut.Add(s.Repeat), "one drop and a repeat"), count(s.Widths, "widths")))
	}
	cut := ticket.Step{Do: "Cut the drops one after another, each square to the selvedge", At: ticket.Long(p.Drop), From: "the last cut",
		Check: ticket.Check{What: "each drop at both selvedges", Want: ticket.Long(p.Drop), Mend: "square the end again before the next drop is cut"}}
	if s.HalfDrop {
		cut.Note = "cut the odd widths first, move on half a repeat, then the even ones"
	}
	sh.Steps = append(make([]ticket.Step, 0, 2), cut)
	if p.Joins > 0 {
		join := ticket.Step{Do: "Join the widths", Together: ticket.RightTogether, At: ticket.Long(s.seam()), From: "the edge of each width", Press: "open"}
		if s.seam().IsZero() {
			join = ticket.Step{Do: "Join the widths edge to edge", Note: "no allowance is taken and nothing overlaps"}
		}
		join.Check = ticket.Check{What: "width of the joined cloth before the sides are turned", Want: ticket.Long(p.Flat.Add(s.Sides.MulInt(2))), Mend: "see which join was taken too wide or too narrow"}
		sh.Steps = append(sh.Steps, join)
	}
	sh.Cautions = []ticket.Caution{
		{Text: "Cloth that will be washed must be bought longer: take this length to a purchase with its shrinkage.", Refer: "a measured swatch decides"},
		{Text: "Curtains and cloths on a stage may have to be of cloth treated against fire.", Refer: "local codes and the fire authority decide"},
		ticket.CutCare(),
	}
	sh.Sources = append(make([]source.Cite, 0, 5), source.Cite{For: "whole widths", ID: srcDrapery, Known: source.Read})
	if slices.Contains(p.Assumed, "seam") {
		sh.Sources = append(sh.Sources, joinCite(s.Tape))
	}
	if !s.Repeat.IsZero() {
		sh.Sources = append(sh.Sources, source.Cite{For: "every drop in whole repeats", ID: srcWorkroomLeaflet, Place: "August 2011", Known: source.Read},
			source.Cite{For: "the rule that adds a repeat to each drop", ID: srcRepeatAdding, Known: source.Read})
		if s.HalfDrop {
			sh.Sources = append(sh.Sources, source.Cite{For: "half a repeat more only where the waste is less than half", ID: srcHalfDrop, Known: source.Read})
		}
	}
	return sh
}
