package yardage

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Verdict says what is known about whether a piece of cloth does. Area never
// decides it.
type Verdict uint8

// The verdicts. The zero Verdict is none, and no plan has it.
const (
	NoVerdict Verdict = iota
	LayItOut          // nothing here decides: lay the pieces out
	AsAsked           // as long and as wide as the envelope asks
	Fits              // the lay given goes on the washed and squared cloth
	TooLong           // the lay given is longer than the cloth will be
	TooWide           // the lay given is wider than the cloth will be
)

var verdicts = name.Of[Verdict]("verdict", "none", "lay-it-out", "as-asked", "fits-by-lay", "lay-too-long", "lay-too-wide")

// Verdicts yields every Verdict but NoVerdict.
func Verdicts(yield func(Verdict) bool) { verdicts.All()(yield) }

// String is the name of v, and none for [NoVerdict].
func (v Verdict) String() string { return verdicts.String(v) }

// MarshalText is the name of v, empty for [NoVerdict].
func (v Verdict) MarshalText() ([]byte, error) { return verdicts.Marshal(v) }

// UnmarshalText reads the name of a Verdict; empty text is [NoVerdict].
func (v *Verdict) UnmarshalText(text []byte) error { return verdicts.Unmarshal(v, text) }

// A Remnant is a piece of cloth in hand, set against what the envelope asks and,
// if one is known, against the length of a lay.
type Remnant struct {
	Have         units.Length `json:"have,omitzero"`                     // its length, unwashed, at the shorter selvedge
	HaveWidth    units.Length `json:"haveWidth,omitzero"`                // its width, selvedges included
	Asked        units.Length `json:"asked,omitzero"`                    // the length the envelope asks; none if not known
	AskedWidth   units.Length `json:"askedWidth,omitzero"`               // the width it is asked on; none if not known; needs Asked
	Need         units.Length `json:"need,omitzero"`                     // the length of a lay of the pieces on washed cloth; none if not known
	NeedWidth    units.Length `json:"needWidth,omitzero"`                // the width of that lay; none if not known; needs Need
	ShrinkLength units.Ratio  `json:"shrinkLength,omitzero" noun:"zero"` // the shrinkage in length, 3 % being 3/100; zero is an answer
	ShrinkWidth  units.Ratio  `json:"shrinkWidth,omitzero" noun:"zero"`  // the shrinkage across; zero is an answer
	Selvedge     units.Length `json:"selvedge,omitzero" noun:"zero"`     // the width of one selvedge, lost on both sides after washing; zero is an answer
	Ends         units.Length `json:"ends,omitzero" noun:"zero"`         // lost in squaring, both ends together, after washing; zero is an answer
}

// A RemnantPlan is what the remnant comes to.
type RemnantPlan struct {
	Spec        Remnant      `json:"spec,omitzero"`        // as given
	Short       units.Length `json:"short,omitzero"`       // Asked less Have: below zero where there is more than asked; zero if Asked is not given
	ByArea      units.Length `json:"byArea,omitzero"`      // Asked x AskedWidth / HaveWidth: an estimate that decides nothing; zero if not given
	Washed      units.Length `json:"washed,omitzero"`      // length expected after washing
	Length      units.Length `json:"length,omitzero"`      // length left after the ends: what can be laid on
	WashedWidth units.Length `json:"washedWidth,omitzero"` // width expected after washing
	Width       units.Length `json:"width,omitzero"`       // width left between the selvedges: what can be laid on
	Spare       units.Length `json:"spare,omitzero"`       // Length less Need: below zero where the lay is too long; zero if Need is not given
	SpareWidth  units.Length `json:"spareWidth,omitzero"`  // Width less NeedWidth; zero if NeedWidth is not given
	LeastWashed units.Length `json:"leastWashed,omitzero"` // the least length after washing that takes the lay; zero if Need is not given
	Least       units.Length `json:"least,omitzero"`       // the same before washing
	Verdict     Verdict      `json:"verdict,omitzero"`     // what is known about whether it does
}

func (s Remnant) audit(a *fault.Audit) {
	a.Need("have", s.Have)
	a.Need("haveWidth", s.HaveWidth)
	a.NotNegative("asked", s.Asked)
	if s.Asked.IsZero() && !s.AskedWidth.IsZero() {
		a.Fault("askedWidth", s.AskedWidth.String(), "none without asked", fault.Unused)
	} else {
		a.NotNegative("askedWidth", s.AskedWidth)
	}
	a.NotNegative("need", s.Need)
	if s.Need.IsZero() && !s.NeedWidth.IsZero() {
		a.Fault("needWidth", s.NeedWidth.String(), "none without need", fault.Unused)
	} else {
		a.NotNegative("needWidth", s.NeedWidth)
	}
	shrinkage(a, "shrinkLength", s.ShrinkLength)
	shrinkage(a, "shrinkWidth", s.ShrinkWidth)
	a.NotNegative("selvedge", s.Selvedge)
	a.NotNegative("ends", s.Ends)
}

// Plan works out what can be laid on and what is known of the fit.
func (s Remnant) Plan() (RemnantPlan, error) {
	var a fault.Audit
	if s.audit(&a); a.Failed() {
		return RemnantPlan{}, a.Err()
	}
	p := RemnantPlan{Spec: s}
	p.Washed = s.Have.Scale(left(s.ShrinkLength))
	p.Length = p.Washed.Sub(s.Ends)
	p.WashedWidth = s.HaveWidth.Scale(left(s.ShrinkWidth))
	p.Width = p.WashedWidth.Sub(s.Selvedge.MulInt(2))
	if p.Width.Sign() <= 0 {
		a.Fault("selvedge", s.Selvedge.String(), "less than "+p.WashedWidth.DivInt(2).String()+" (half of the washed width)", fault.Range)
	}
	if p.Length.Sign() <= 0 {
		a.Fault("ends", s.Ends.String(), "less than "+p.Washed.String()+" (the washed length)", fault.Range)
	}
	if a.Failed() {
		return RemnantPlan{}, a.Err()
	}
	p.Verdict = LayItOut
	if !s.Asked.IsZero() {
		p.Short = s.Asked.Sub(s.Have)
		if !s.AskedWidth.IsZero() {
			p.ByArea = s.Asked.Times(s.AskedWidth).Over(s.HaveWidth)
		}
		if p.Short.Sign() <= 0 && !s.AskedWidth.IsZero() && !s.HaveWidth.Less(s.AskedWidth) {
			p.Verdict = AsAsked
		}
	}
	if !s.Need.IsZero() {
		p.Spare = p.Length.Sub(s.Need)
		p.LeastWashed = s.Need.Add(s.Ends)
		p.Least = p.LeastWashed.Unscale(left(s.ShrinkLength))
		if !s.NeedWidth.IsZero() {
			p.SpareWidth = p.Width.Sub(s.NeedWidth)
		}
		switch {
		case p.Spare.Sign() < 0:
			p.Verdict = TooLong
		case p.SpareWidth.Sign() < 0:
			p.Verdict = TooWide
		case !s.NeedWidth.IsZero():
			p.Verdict = Fits
		}
	}
	return p, nil
}

// Sheet is the working, and what to measure before anything is cut.
func (p RemnantPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sh := ticket.Sheet{Title: "A remnant: " + verdictText(p.Verdict)}
	sh.Lines = make([]ticket.Line, 0, 8)
	if !s.Asked.IsZero() {
		if p.Short.Sign() > 0 {
			sh.Lines = append(sh.Lines, line("short of what is asked", ticket.Long(p.Short), long(s.Asked, "asked"), less(s.Have, "had")))
		} else {
			sh.Lines = append(sh.Lines, line("more than is asked", ticket.Long(p.Short.Neg()), long(s.Have, "had"), less(s.Asked, "asked")))
		}
		if !s.AskedWidth.IsZero() {
			sh.Lines = append(sh.Lines, line("asked on this width, by area", ticket.Long(p.ByArea),
				long(s.Asked, "asked"), byLong(s.AskedWidth, "width asked on"), overLong(s.HaveWidth, "width had")))
		}
	}
	sh.Lines = append(sh.Lines,
		line("length to lay on", ticket.Long(p.Length), long(s.Have, "had"), by(left(s.ShrinkLength), "left of 1"), less(s.Ends, "lost in squaring")),
		line("width to lay on", ticket.Long(p.Width), long(s.HaveWidth, "had"), by(left(s.ShrinkWidth), "left of 1"), less(s.Selvedge.MulInt(2), "both selvedges")))
	if !s.Need.IsZero() {
		if p.Spare.Sign() < 0 {
			sh.Lines = append(sh.Lines, line("lay too long by", ticket.Long(p.Spare.Neg()), long(s.Need, "the lay"), less(p.Length, "to lay on")))
		} else {
			sh.Lines = append(sh.Lines, line("spare over the lay", ticket.Long(p.Spare), long(p.Length, "to lay on"), less(s.Need, "the lay")))
		}
		if p.SpareWidth.Sign() < 0 {
			sh.Lines = append(sh.Lines, line("lay too wide by", ticket.Long(p.SpareWidth.Neg()), long(s.NeedWidth, "the lay"), less(p.Width, "to lay on")))
		} else if !s.NeedWidth.IsZero() {
			sh.Lines = append(sh.Lines, line("spare in width", ticket.Long(p.SpareWidth), long(p.Width, "to lay on"), less(s.NeedWidth, "the lay")))
		}
		sh.Lines = append(sh.Lines,
			line("least that does, washed", ticket.Long(p.LeastWashed), long(s.Need, "the lay"), long(s.Ends, "lost in squaring")),
			line("least that does, unwashed", ticket.Long(p.Least), long(p.LeastWashed, "washed"), over(left(s.ShrinkLength), "left of 1")))
	}
	wash := ticket.Check{What: "length after washing, expected", Want: ticket.Long(p.Washed), Mend: "go by what it measures, not by what was expected"}
	if !s.Need.IsZero() {
		wash = ticket.Check{What: "length after washing, at least", Want: ticket.Long(p.LeastWashed), Mend: "if it is less, lay the pieces again before anything is cut"}
	}
	sh.Steps = []ticket.Step{
		{Do: "Wash, press and straighten the remnant", Press: "flat, along the grain", Check: wash},
		{Do: "Square the ends and mark the selvedges off",
			Check: ticket.Check{What: "width between the selvedges", Want: ticket.Long(p.Width), Mend: "if it is less, no piece of the lay may lie on the selvedge: lay again"}},
	}
	sh.Cautions = []ticket.Caution{
		{Text: "Whether the pieces fit is for a lay to show, never for an area; nap, repeat and flaws belong to the lay.", Refer: "a lay decides"},
		swatchCare(), ticket.IronCare(), ticket.CutCare(),
	}
	sh.Sources = []source.Cite{source.Practise("selvedges and ends taken off after washing"), {For: "the working", Known: source.Computed}}
	return sh
}

func verdictText(v Verdict) string {
	switch v {
	case AsAsked:
		return "as long and as wide as the envelope asks"
	case Fits:
		return "the lay given goes on it"
	case TooLong:
		return "the lay given is too long for it"
	case TooWide:
		return "the lay given is too wide for it"
	}
	return "lay the pieces out to know"
}
