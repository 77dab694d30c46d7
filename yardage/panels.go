package yardage

import (
	"errors"

	"example.com/clothyard/units"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/units/ticket"
)

// MaxWidths is the greatest number of widths joined.
const MaxWidths = strip.MaxPieces

// Panels are widths of cloth joined side by side: a stage curtain, a backcloth,
// a bed curtain. Part of a width counts as a whole one. Of Cover, Fullness and
// Widths two give the third; Widths alone gives the length of cloth only.
type Panels struct {
	Cover    units.Length // the finished width to cover, overlaps and returns included
	Fullness units.Ratio  // flat width to Cover, at least 1, which is flat
	Widths   int          // how many widths of cloth
	Width    units.Length // one width of cloth, selvedges off
	Seam     units.Length // taken from each width at a join; zero where the widths only meet
	Sides    units.Length // taken at each of the two side edges, as a side hem; zero is an answer
	Drop     units.Length // the finished length
	Hems     units.Length // what the hem and the heading take of the length, together; zero is an answer
	// Repeat is the length of the pattern repeat; none for plain cloth. Every drop
	// is cut in whole repeats.
	Repeat units.Length
	// HalfDrop is set where the pattern steps down half a repeat from one width to
	// the next. It needs a Repeat.
	HalfDrop bool
	// Starts is how many further repeats the order takes so that the first drop can
	// begin where it should; one is usual. Zero is an answer. It needs a Repeat.
	Starts int
}

// A PanelsPlan is the widths joined and the cloth for them.
type PanelsPlan struct {
	Spec     Panels        // as solved
	Assumed  ticket.Fields // always empty
	Joins    int           // how many joins between the widths
	Flat     units.Length  // the joined width between the side edges as finished, not gathered
	Made     units.Ratio   // the fullness made: Flat to Cover; zero if Cover is not known
	Cut      units.Length  // one drop before repeats: Drop and Hems
	Repeats  int           // whole repeats in a drop; zero for plain cloth
	Drop     units.Length  // one drop as cut, in whole repeats
	Waste    units.Length  // what is cut off each drop
	Extra    units.Length  // added once to the order: Starts repeats, and half a repeat if a half drop needs it
	Length   units.Length  // the cloth for it all, to be the Need of a [Purchase] with no Repeat
	ByAdding units.Length  // the other rule in print, a repeat added to every drop; zero for plain cloth
}

var panelsFields = [...][2]string{{"Pieces", "Widths"}, {"Each", "Width"}, {"Allowance", "Seam"}, {"Ends", "Sides"}, {"Least", "Cover"}}

func (s Panels) audit(a *ticket.Audit) {
	one := units.RatioOf(1, 1)
	need := s.Widths == 0
	if a.NotNegative("Cover", s.Cover); need && s.Cover.IsZero() {
		a.Fault("Cover", "", "more than 0 in, or Widths", ticket.ErrMissing)
	}
	switch {
	case need && s.Fullness.IsZero():
		a.Fault("Fullness", "", "1 or more, or Widths", ticket.ErrMissing)
	case s.Fullness.Sign() < 0:
		a.Fault("Fullness", s.Fullness.String(), "1 or more", ticket.ErrSign)
	case !s.Fullness.IsZero() && s.Fullness.Less(one):
		a.Fault("Fullness", s.Fullness.String(), "1 or more: less does not cover", ticket.ErrRange)
	}
	if !need {
		a.Count("Widths", s.Widths, 1, MaxWidths)
	}
	a.Need("Width", s.Width)
	a.NotNegative("Seam", s.Seam)
	a.NotNegative("Sides", s.Sides)
	a.Need("Drop", s.Drop)
	a.NotNegative("Hems", s.Hems)
	a.NotNegative("Repeat", s.Repeat)
	if s.HalfDrop && s.Repeat.IsZero() {
		a.Fault("HalfDrop", "true", "none without a Repeat", ticket.ErrUnused)
	}
	if s.Starts != 0 && s.Repeat.IsZero() {
		a.Fault("Starts", ticket.Of(s.Starts).String(), "none without a Repeat", ticket.ErrUnused)
	} else if s.Starts < 0 || s.Starts > MaxRepeats {
		a.Fault("Starts", ticket.Of(s.Starts).String(), "0 to "+ticket.Of(MaxRepeats).String(), ticket.ErrRange)
	}
}

// joined is the strip of the widths, with the faults under the names used here.
func (s Panels) joined() (strip.Plan, error) {
	p, err := strip.Spec{Pieces: s.Widths, Each: s.Width, Allowance: s.Seam, Ends: s.Sides, Least: s.Cover.Scale(s.Fullness)}.Plan()
	if err == nil {
		return p, nil
	}
	var a ticket.Audit
	var fs ticket.Faults
	errors.As(err, &fs)
	for _, f := range fs {
		path := f.Path
		for _, n := range panelsFields {
			if n[0] == path {
				path = n[1]
				break
			}
		}
		a.Fault(path, f.Got, f.Limit, f.Err)
	}
	return p, a.Err()
}

// Solve fills Widths, rounded up to whole widths, or Fullness or Cover exactly.
func (s Panels) Solve() (Panels, error) {
	s, _, err := s.solve()
	return s, err
}

func (s Panels) solve() (Panels, strip.Plan, error) {
	var a ticket.Audit
	if s.audit(&a); a.Failed() {
		return s, strip.Plan{}, a.Err()
	}
	j, err := s.joined()
	if err != nil {
		return s, j, err
	}
	switch {
	case s.Widths == 0:
		s.Widths = j.Spec.Pieces
	case s.Fullness.IsZero() && !s.Cover.IsZero():
		if j.Sewn.Less(s.Cover) {
			a.Fault("Widths", ticket.Of(s.Widths).String(), "enough to cover "+s.Cover.String()+": they make "+j.Sewn.String(), ticket.ErrConflict)
			return s, j, a.Err()
		}
		s.Fullness = j.Sewn.Div(s.Cover)
	case s.Cover.IsZero() && !s.Fullness.IsZero():
		s.Cover = j.Sewn.Unscale(s.Fullness)
	}
	return s, j, nil
}

// Plan works out the widths and the length of cloth.
func (s Panels) Plan() (PanelsPlan, error) {
	s, j, err := s.solve()
	if err != nil {
		return PanelsPlan{}, err
	}
	p := PanelsPlan{Spec: s, Joins: j.Joins, Flat: j.Sewn, Cut: s.Drop.Add(s.Hems)}
	if !s.Cover.IsZero() {
		p.Made = p.Flat.Div(s.Cover)
	}
	p.Drop = p.Cut
	n := int64(s.Widths)
	if !s.Repeat.IsZero() {
		k, ok := p.Cut.Div(s.Repeat).Int(units.Up)
		if !ok || k > MaxRepeats {
			var a ticket.Audit
			a.Fault("Repeat", s.Repeat.String(), "a repeat of which "+ticket.Of(MaxRepeats).String()+" make a drop", ticket.ErrRange)
			return PanelsPlan{}, a.Err()
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
	p.Length = p.Drop.MulInt(n).Add(p.Extra)
	return p, nil
}

// Sheet is the working, and the order of cutting and joining.
func (p PanelsPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sh := ticket.Sheet{Title: "Widths joined"}
	sh.Lines = make([]ticket.Line, 0, 8)
	sh.Lines = append(sh.Lines,
		line("widths of cloth", ticket.Of(s.Widths)),
		line("flat width", ticket.Long(p.Flat), long(s.Width, "one width"), count(s.Widths, "widths"),
			less(s.Seam.MulInt(2*int64(p.Joins)), "the joins"), less(s.Sides.MulInt(2), "both sides")))
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
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Join the widths", Together: ticket.RightTogether, At: ticket.Long(s.Seam), From: "the edge of each width", Press: "open",
			Check: ticket.Check{What: "width of the joined cloth before the sides are turned", Want: ticket.Long(p.Flat.Add(s.Sides.MulInt(2))), Mend: "if it is out, see which join was taken too wide or too narrow"}})
	}
	sh.Cautions = []ticket.Caution{
		{Text: "Cloth that will be washed must be bought longer: take this length to a purchase with its shrinkage.", Refer: "a measured swatch decides"},
		{Text: "Curtains and cloths on a stage may have to be of cloth treated against fire.", Refer: "local codes and the fire authority decide"},
		ticket.CutCare(),
	}
	sh.Sources = append(make([]ticket.Cite, 0, 4), ticket.Cite{For: "whole widths", ID: srcDrapery, Known: ticket.Read})
	if !s.Repeat.IsZero() {
		sh.Sources = append(sh.Sources, ticket.Cite{For: "every drop in whole repeats", ID: srcWorkroomLeaflet, Place: "August 2011", Known: ticket.Read},
			ticket.Cite{For: "the rule that adds a repeat to each drop", ID: srcRepeatAdding, Known: ticket.Read})
		if s.HalfDrop {
			sh.Sources = append(sh.Sources, ticket.Cite{For: "half a repeat more only where the waste is less than half", ID: srcHalfDrop, Known: ticket.Read})
		}
	}
	return sh
}
