package stitch

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Density is how close stitches lie. Any one of three settles it: stitchLength,
// perInch, or run with stitches; more than one may be given where they agree to the
// last fraction. What a dial or a page rounds must be rounded by the caller: 12 to
// the inch is not 2 mm.
type Density struct {
	// StitchLength is what one stitch covers of the cloth, along the row.
	StitchLength units.Length `json:"stitchLength,omitzero"`
	// Space is what is left free between two stitches of a hand row. May be omitted; the
	// default is 0 in: the stitches touch.
	Space units.Length `json:"space,omitzero" noun:"zero"`
	// PerInch is how many stitches, each with its space, lie in an inch.
	PerInch units.Ratio `json:"perInch,omitzero"`
	// Run is a length of row. May be omitted.
	Run units.Length `json:"run,omitzero"`
	// Stitches is how many stitches, each with its space, lie in run. May be omitted.
	Stitches units.Ratio `json:"stitches,omitzero"`
}

// A DensityPlan is a density both ways.
type DensityPlan struct {
	Spec          Density      `json:"spec,omitzero"`          // as solved; Run and Stitches are zero unless one of them was given
	Pitch         units.Length `json:"pitch,omitzero"`         // from the start of one stitch to the start of the next: 1 in / PerInch
	PerCentimetre units.Ratio  `json:"perCentimetre,omitzero"` // stitches in a centimetre
}

func inch(n units.Ratio) units.Length { return units.Inch.Of(1).Unscale(n) }

// Plan works out the density. The faults are [fault.Faults].
func (d Density) Plan() (DensityPlan, error) {
	var a fault.Audit
	a.NotNegative("stitchLength", d.StitchLength)
	a.NotNegative("space", d.Space)
	a.NotNegative("perInch", d.PerInch)
	a.NotNegative("run", d.Run)
	a.NotNegative("stitches", d.Stitches)
	byLength, byInch := !d.StitchLength.IsZero(), !d.PerInch.IsZero()
	byCount := !d.Run.IsZero() && !d.Stitches.IsZero()
	if !byLength && !byInch && !byCount {
		a.Fault("stitchLength", "", "a stitch length, or perInch, or both run and stitches", fault.Missing)
	}
	if a.Failed() {
		return DensityPlan{}, a.Err()
	}
	var pitch units.Length
	switch {
	case byLength:
		pitch = d.StitchLength.Add(d.Space)
	case byInch:
		pitch = inch(d.PerInch)
	default:
		pitch = d.Run.Unscale(d.Stitches)
	}
	per := units.Inch.Of(1).Div(pitch)
	if byInch && d.PerInch != per {
		a.Fault("perInch", d.PerInch.String(), "{0} (what the stitch length gives)", fault.Conflict, per)
	}
	if byCount && d.Run != pitch.Scale(d.Stitches) {
		a.Fault("stitches", d.Stitches.String(), "{0} (what the density gives in run)", fault.Conflict, d.Run.Div(pitch))
	}
	if pitch.Cmp(d.Space) <= 0 {
		a.Fault("space", d.Space.String(), "less than {0} (from one stitch to the next)", fault.Conflict, pitch)
	}
	if a.Failed() {
		return DensityPlan{}, a.Err()
	}
	d.StitchLength, d.PerInch = pitch.Sub(d.Space), per
	switch {
	case d.Run.IsZero():
		d.Run = pitch.Scale(d.Stitches)
	default:
		d.Stitches = d.Run.Div(pitch)
	}
	return DensityPlan{Spec: d, Pitch: pitch, PerCentimetre: units.Centimetre.Of(1).Div(pitch)}, nil
}

func term(op ticket.Op, amount ticket.Amount, name string) ticket.Term {
	return ticket.Term{Op: op, Amount: amount, Name: name}
}

// Sheet is the working, and how to try the density on a scrap.
func (p DensityPlan) Sheet() ticket.Sheet {
	d := p.Spec
	sh := ticket.Sheet{Title: "Stitch length and stitches to the inch"}
	if p.Pitch.Sign() <= 0 {
		return sh // the plan of nothing has nothing to say
	}
	sh.Answer = []ticket.Line{{Label: "from one stitch to the next", Result: ticket.Machine(p.Pitch)}, {Label: "stitches to the inch", Result: ticket.Times(d.PerInch)}}
	sh.Lines = append(sh.Lines, ticket.Line{
		Label: "from one stitch to the next", Result: ticket.Machine(p.Pitch),
		Terms: []ticket.Term{term(ticket.Plus, ticket.Machine(d.StitchLength), "stitch"), term(ticket.Plus, ticket.Machine(d.Space), "space")},
	}, ticket.Line{
		Label: "stitches to the inch", Result: ticket.Times(d.PerInch),
		Terms: []ticket.Term{term(ticket.Plus, ticket.Long(units.Inch.Of(1)), "one inch"), term(ticket.Over, ticket.Machine(p.Pitch), "from one stitch to the next")},
	}, ticket.Line{
		Label: "stitches to the centimetre", Result: ticket.Times(p.PerCentimetre),
		Terms: []ticket.Term{term(ticket.Plus, ticket.Long(units.Centimetre.Of(1)), "one centimetre"), term(ticket.Over, ticket.Machine(p.Pitch), "from one stitch to the next")},
	})
	if !d.Run.IsZero() {
		sh.Lines = append(sh.Lines, ticket.Line{
			Label: "stitches in the row", Result: ticket.Times(d.Stitches),
			Terms: []ticket.Term{term(ticket.Plus, ticket.Long(d.Run), "row"), term(ticket.Over, ticket.Machine(p.Pitch), "from one stitch to the next")},
		})
	}
	sh.Steps = []ticket.Step{{
		Do: "Sew ten stitches on a scrap of the same plies", Note: "a dial shows a rounded figure, and feed and cloth change it",
		Check: ticket.Check{What: "from the start of the first stitch to the end of the tenth space", Want: ticket.Long(p.Pitch.MulInt(10)),
			Mend: "turn the dial and sew ten more"},
	}}
	sh.Cautions = []ticket.Caution{ticket.CutCare()}
	sh.Sources = []source.Cite{{For: "an inch is exactly 25.4 mm", Known: source.Computed}}
	return sh
}
