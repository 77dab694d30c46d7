package yardage

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxRepeats is the greatest number of pattern repeats in one length.
const MaxRepeats = 1_000_000

// A Purchase is a length of cloth to buy. The order of the sum is fixed, since
// another order buys too little: the lay, whole repeats of the washed cloth, the
// ends lost in squaring, the shrinkage, and last the counter's step.
type Purchase struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Need is the length of the lay on washed and squared cloth. Nap is in the
	// lay already, as a with-nap layout: nothing is added for it here.
	Need units.Length `json:"need,omitzero"`
	// Repeat is the length of the pattern repeat on the cloth as sold; none for
	// plain cloth. The washed repeat is shorter by Shrink.
	Repeat units.Length `json:"repeat,omitzero"`
	// Starts is how many further repeats the order takes so that the first piece
	// can begin where the pattern wants; one is usual in furnishing. Zero is an
	// answer. It needs a Repeat.
	Starts int `json:"starts,omitzero" noun:"zero"`
	// Ends is lost in squaring the two ends, both together, after washing. Zero
	// is an answer.
	Ends units.Length `json:"ends,omitzero" noun:"zero"`
	// Shrink is the shrinkage in length, 3 % being 3/100; at least 0 and less than
	// 1. Zero is an answer: cloth that is not washed before it is cut.
	Shrink units.Ratio `json:"shrink,omitzero" noun:"zero"`
	// Counter is the step in which the shop cuts. May be omitted; the default is 1/8 yd, or
	// 10 cm on a metric tape.
	Counter units.Length `json:"counter,omitzero"`
}

// A PurchasePlan is the length to buy and how it came about.
type PurchasePlan struct {
	Spec         Purchase     `json:"spec,omitzero"`         // as solved
	Assumed      []string     `json:"assumed,omitzero"`      // the fields filled with a default
	WashedRepeat units.Length `json:"washedRepeat,omitzero"` // the repeat after washing; zero for plain cloth
	Repeats      int          `json:"repeats,omitzero"`      // whole repeats bought, Starts included; zero for plain cloth
	InRepeats    units.Length `json:"inRepeats,omitzero"`    // the lay in whole washed repeats; the lay itself for plain cloth
	Squared      units.Length `json:"squared,omitzero"`      // with the ends: what must be there after washing
	Unshrunk     units.Length `json:"unshrunk,omitzero"`     // the same before washing: the least that does
	Steps        units.Ratio  `json:"steps,omitzero"`        // how many of the counter's steps are bought, a whole number
	Buy          units.Length `json:"buy,omitzero"`          // what to ask for: whole steps of the counter
	Surplus      units.Length `json:"surplus,omitzero"`      // Buy less Unshrunk, never below zero
	Washed       units.Length `json:"washed,omitzero"`       // what Buy is expected to measure after washing
}

func (s Purchase) audit(a *fault.Audit) {
	s.Tape.Check(a, "tape")
	a.Need("need", s.Need)
	a.NotNegative("repeat", s.Repeat)
	if s.Starts != 0 && s.Repeat.IsZero() {
		a.Fault("starts", ticket.Of(s.Starts).String(), "none without a repeat", fault.Unused)
	} else if s.Starts < 0 || s.Starts >= MaxRepeats {
		a.Fault("starts", ticket.Of(s.Starts).String(), "0 to "+ticket.Of(MaxRepeats-1).String()+", as the lay takes one or more", fault.Range)
	}
	a.NotNegative("ends", s.Ends)
	shrinkage(a, "shrink", s.Shrink)
	a.NotNegative("counter", s.Counter)
}

// Plan works out the length to buy.
func (s Purchase) Plan() (PurchasePlan, error) {
	var a fault.Audit
	if s.audit(&a); a.Failed() {
		return PurchasePlan{}, a.Err()
	}
	p := PurchasePlan{InRepeats: s.Need}
	given := s
	if s.Tape = noun.Tape(s); s.Counter.IsZero() {
		s.Counter = counterDefault(s.Tape)
	}
	p.Assumed = noun.Assumed(given, s)
	stay := left(s.Shrink)
	if !s.Repeat.IsZero() {
		p.WashedRepeat = s.Repeat.Scale(stay)
		n, ok := s.Need.Div(p.WashedRepeat).Int(units.Up)
		if most := MaxRepeats - int64(s.Starts); !ok || n > most {
			a.Fault("repeat", s.Repeat.String(), "at least "+s.Need.Unscale(stay).DivInt(most).String()+" ("+ticket.Of(int(most)).String()+" repeats in the lay)", fault.Range)
			return PurchasePlan{}, a.Err()
		}
		p.Repeats = int(n) + s.Starts
		p.InRepeats = p.WashedRepeat.MulInt(int64(p.Repeats))
	}
	p.Spec = s
	p.Squared = p.InRepeats.Add(s.Ends)
	p.Unshrunk = p.Squared.Unscale(stay)
	p.Buy, _ = p.Unshrunk.Round(s.Counter, units.Up)
	p.Steps = p.Buy.Div(s.Counter)
	p.Surplus = p.Buy.Sub(p.Unshrunk)
	p.Washed = p.Buy.Scale(stay)
	return p, nil
}

// Sheet is the working, and what to measure at the counter and after the wash.
func (p PurchasePlan) Sheet() ticket.Sheet {
	s := p.Spec
	sh := ticket.Sheet{Title: "Cloth to buy", Assumed: p.Assumed}
	if !p.Buy.IsZero() {
		sh.Answer = []ticket.Line{{Label: "buy", Result: ticket.Cloth(p.Buy)}}
	}
	stay := left(s.Shrink)
	sh.Lines = make([]ticket.Line, 0, 6)
	if s.Repeat.IsZero() {
		sh.Lines = append(sh.Lines, line("length of the lay", ticket.Long(s.Need)))
	} else {
		sh.Lines = append(sh.Lines,
			line("repeat after washing", ticket.Long(p.WashedRepeat), long(s.Repeat, "repeat as sold"), by(stay, "left of 1")),
			line("lay in whole repeats", ticket.Long(p.InRepeats), long(p.WashedRepeat, "repeat"), count(p.Repeats, "repeats")))
	}
	if !s.Ends.IsZero() {
		sh.Lines = append(sh.Lines, line("with the ends", ticket.Long(p.Squared), long(p.InRepeats, "for the lay"), long(s.Ends, "lost in squaring")))
	}
	if !s.Shrink.IsZero() {
		sh.Lines = append(sh.Lines, line("before washing", ticket.Long(p.Unshrunk), long(p.Squared, "after washing"), over(stay, "left of 1")))
	}
	sh.Lines = append(sh.Lines, line("to buy", ticket.Cloth(p.Buy), long(s.Counter, "step of the counter"), by(p.Steps, "steps")),
		line("surplus", ticket.Long(p.Surplus), long(p.Buy, "bought"), less(p.Unshrunk, "least that does")))
	sh.Steps = make([]ticket.Step, 0, 3)
	sh.Steps = append(sh.Steps, ticket.Step{Do: "Have the cloth cut", At: ticket.Cloth(p.Buy), From: "the squared end of the bolt",
		Check: ticket.Check{What: "length cut, at the shorter selvedge", Want: ticket.Long(p.Buy), Mend: "if it is short or torn crooked, have the loss made good before it is paid for"}})
	if !s.Shrink.IsZero() {
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Wash and press the cloth as the garment will be washed", Press: "flat, along the grain",
			Check: ticket.Check{What: "length after washing, expected", Want: ticket.Long(p.Washed), Mend: "measure again and go by the least length below; nothing is cut yet"}})
	}
	sh.Steps = append(sh.Steps, ticket.Step{Do: "Square both ends and press out the fold",
		Check: ticket.Check{What: "length between the squared ends, at least", Want: ticket.Long(p.InRepeats), Mend: "if it is shorter, lay the pieces again before cutting anything"}})
	sh.Cautions = []ticket.Caution{ticket.CutCare()}
	if !s.Shrink.IsZero() {
		sh.Cautions = []ticket.Caution{swatchCare(), ticket.IronCare(), ticket.CutCare()}
	}
	sh.Sources = make([]source.Cite, 0, 4)
	if slices.Contains(p.Assumed, "counter") {
		sh.Sources = append(sh.Sources, s.counterCite())
	}
	if !s.Shrink.IsZero() {
		sh.Sources = append(sh.Sources, source.Cite{For: "dividing by what is left, never adding the shrinkage", ID: srcShrinkMath, Known: source.Read})
	}
	if !s.Repeat.IsZero() {
		sh.Sources = append(sh.Sources, source.Cite{For: "whole repeats", ID: srcWorkroomLeaflet, Place: "August 2011", Known: source.Read})
	}
	sh.Sources = append(sh.Sources, source.Practise("the order of the sum"))
	return sh
}

// counterCite is the source of the counter's default step.
func (s Purchase) counterCite() source.Cite {
	if s.Tape == units.MetricTape {
		return source.Practise("the counter's step")
	}
	return source.Cite{For: "the counter's step", ID: srcSchool, Place: "Amount of material for garments", Known: source.Read}
}
