package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Kick is a kick pleat: an inverted pleat at the lower end of a seam, whose two
// panels are extended and joined by an underlay of their own. Zero means "not
// given".
type Kick struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Height is the height of the pleat, from its top to the finished hem.
	Height units.Length `json:"height,omitzero"`
	// Depth is the depth of each of the two folds, from the seam line to the inner fold.
	// May be omitted; the default is 2 in or 5.5 cm.
	Depth units.Length `json:"depth,omitzero"`
	// Allowance is the seam allowance of panels and underlay. May be omitted; the
	// default is 5/8 in or 1.5 cm.
	Allowance units.Length `json:"allowance,omitzero"`
	// Hem is the hem allowance. May be omitted; the default is 0.
	Hem units.Length `json:"hem,omitzero" noun:"zero"`
}

// A KickPlan is what a kick pleat comes to.
type KickPlan struct {
	Spec           Kick         `json:"spec,omitzero"`           // as solved
	Assumed        []string     `json:"assumed,omitzero"`        // the fields filled with a default
	Hidden         units.Length `json:"hidden,omitzero"`         // what the pleat hides: twice each of its two folds
	Extension      units.Length `json:"extension,omitzero"`      // what each panel has beyond the seam line: depth and allowance
	Beyond         units.Length `json:"beyond,omitzero"`         // what each panel is cut beyond the edge that it has above: depth
	UnderlayWidth  units.Length `json:"underlayWidth,omitzero"`  // width of the underlay as cut: two depths and two allowances
	UnderlayLength units.Length `json:"underlayLength,omitzero"` // length of the underlay as cut: height, an allowance at the top and hem
}

// Plan works out the pleat. The faults are [fault.Faults].
func (k Kick) Plan() (KickPlan, error) {
	var a fault.Audit
	k.Tape.Check(&a, "tape")
	a.Need("height", k.Height)
	a.NotNegative("depth", k.Depth)
	a.NotNegative("allowance", k.Allowance)
	a.NotNegative("hem", k.Hem)
	if a.Failed() {
		return KickPlan{}, a.Err()
	}
	given := k
	k.Tape = noun.Tape(k)
	fill(&k.Depth, kickDepth, k.Tape)
	fill(&k.Allowance, seamAllowance, k.Tape)
	return KickPlan{
		Spec: k, Assumed: noun.Assumed(given, k),
		Hidden: k.Depth.MulInt(4), Extension: k.Depth.Add(k.Allowance), Beyond: k.Depth,
		UnderlayWidth: k.Depth.Add(k.Allowance).MulInt(2), UnderlayLength: units.Sum(k.Height, k.Allowance, k.Hem),
	}, nil
}

// Sheet is how the pleat is cut and sewn, with the working behind it.
func (p KickPlan) Sheet() ticket.Sheet {
	k := p.Spec
	sheet := ticket.Sheet{Title: "A kick pleat with its underlay", Assumed: p.Assumed}
	if k.Height.IsZero() {
		return sheet
	}
	sheet.Answer = []ticket.Line{ticket.Sum("cut the underlay wide", p.UnderlayWidth), ticket.Sum("and long", p.UnderlayLength)}
	sheet.Lines = []ticket.Line{
		ticket.Sum("each panel beyond the seam line", p.Extension, ticket.Add(k.Depth, "depth"), ticket.Add(k.Allowance, "allowance")),
		ticket.Sum("width of the underlay", p.UnderlayWidth, ticket.Add(k.Depth, "depth"), ticket.Add(k.Allowance, "allowance"), ticket.Multiply(2, "sides")),
		ticket.Sum("length of the underlay", p.UnderlayLength, hemmed(k.Hem, ticket.Add(k.Height, "height"), ticket.Add(k.Allowance, "allowance at the top"))...),
		ticket.Sum("hidden by the pleat", p.Hidden, ticket.Add(k.Depth, "depth"), ticket.Multiply(4, "plies")),
	}
	sheet.Steps = []ticket.Step{
		{Do: "Cut both panels wider below the top of the pleat", At: ticket.Long(p.Beyond), From: "the cut edge above", Note: "let the upper edge of the extension rise at 45 degrees to the seam, which holds it up"},
		{Do: "Cut the underlay", At: ticket.Long(p.UnderlayWidth), From: "one long edge to the other"},
		{Do: "Stitch the seam down to the top of the pleat and along the extensions", Together: ticket.RightTogether, At: ticket.Long(k.Allowance), From: "the raw edge", Note: "baste the seam line on below, as long as the pleat is pressed"},
		{
			Do: "Stitch the underlay to both extensions", Together: ticket.RightTogether, At: ticket.Long(k.Allowance), From: "the raw edges", Press: "both folds to the middle of the underlay",
			Check: ticket.Check{What: "from the seam line to each inner fold", Want: ticket.Long(k.Depth), Mend: "unpick the side that is out: a pleat that is deeper on one side swings open"},
		},
		{
			Do:    "Stay the top of the underlay to the allowances of the seam, slantwise",
			Check: ticket.Check{What: "from the top of the pleat to the hem", Want: ticket.Long(k.Height), Mend: "move the end of the seam before the basting is taken out"},
		},
	}
	sheet.Cautions = []ticket.Caution{ticket.IronCare(), ticket.CutCare()}
	sheet.Sources = append([]source.Cite{source.Practise("the underlay is two depths and two allowances wide")}, cites(p.Assumed, k.Tape, map[string]string{"depth": kickDepth})...)
	return sheet
}
