package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxTubes is the greatest number of cartridge pleats in one section.
const MaxTubes = 10_000

// Cartridge is a section of cloth drawn up in cartridge pleats: rows of even
// stitches, one exactly above the other, so that the cloth stands in tubes that are
// sewn on by their tips. Zero means "not given". Each pleat takes two stitches of
// cloth, one there and one back:
//
//	section = count x pitch
//	cloth   = count x 2 x stitch
type Cartridge struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Section is the length that the pleats are drawn up to.
	Section units.Length `json:"section,omitzero"`
	// Count is how many pleats there are, 1 to 10,000. It follows from section and pitch.
	Count int `json:"count,omitzero"`
	// Pitch is from one pleat to the next, once drawn up. It follows from section and
	// count.
	Pitch units.Length `json:"pitch,omitzero"`
	// Stitch is the length of a stitch, which is the depth of a pleat. It follows from
	// cloth, or may be omitted; the default is 1/2 in or 1 cm.
	Stitch units.Length `json:"stitch,omitzero"`
	// Cloth is the length of the cloth before it is drawn up.
	Cloth units.Length `json:"cloth,omitzero"`
	// Thickness is the thickness of one ply. May be omitted; it is then not known
	// whether the pleats have room.
	Thickness units.Length `json:"thickness,omitzero"`
	// Turn is how much of the upper edge is folded down, which the rows go through. May
	// be omitted; the default is 1 in or 2.5 cm.
	Turn units.Length `json:"turn,omitzero"`
	// Rows is how many rows of stitches there are, 1 to 10. May be omitted; the default
	// is 2.
	Rows int `json:"rows,omitzero"`
	// Apart is from one row to the next. May be omitted; the default is 1/4 in or 6 mm.
	Apart units.Length `json:"apart,omitzero"`
}

// A CartridgePlan is what a section of cartridge pleats comes to.
type CartridgePlan struct {
	Spec     Cartridge    `json:"spec,omitzero"`     // as solved
	Assumed  []string     `json:"assumed,omitzero"`  // the fields filled with a default
	PerPleat units.Length `json:"perPleat,omitzero"` // cloth in one pleat: two stitches
	Stitches int          `json:"stitches,omitzero"` // stitches in one row
	Fullness units.Ratio  `json:"fullness,omitzero"` // cloth over section
	Packed   units.Ratio  `json:"packed,omitzero"`   // how much of the section the plies fill: two of them over the pitch
	LastRow  units.Length `json:"lastRow,omitzero"`  // the lowest row, from the fold
}

// Plan works out the pleats. The faults are [fault.Faults].
func (c Cartridge) Plan() (CartridgePlan, error) {
	var a fault.Audit
	c.audit(&a)
	if a.Failed() {
		return CartridgePlan{}, a.Err()
	}
	if c.solve(&a); a.Failed() {
		return CartridgePlan{}, a.Err()
	}
	given := c
	c.Tape = noun.Tape(c)
	fill(&c.Stitch, cartridgeStitch, c.Tape)
	fill(&c.Turn, cartridgeTurn, c.Tape)
	fillCount(&c.Rows, cartridgeRows)
	fill(&c.Apart, cartridgeApart, c.Tape)
	p := CartridgePlan{Assumed: noun.Assumed(given, c), PerPleat: c.Stitch.MulInt(2), Stitches: 2 * c.Count}
	c.Cloth = p.PerPleat.MulInt(int64(c.Count))
	p.Spec, p.Fullness = c, c.Cloth.Div(c.Section)
	p.LastRow = c.Apart.MulInt(int64(c.Rows))
	if p.Fullness.Cmp(units.RatioOf(1, 1)) <= 0 {
		a.Fault("stitch", c.Stitch.String(), "more than {0} (half of pitch)", fault.Range, c.Pitch.DivInt(2))
	}
	p.Packed = c.Thickness.MulInt(2).Div(c.Pitch)
	fault.AtMost(&a, "thickness", c.Thickness, c.Pitch.DivInt(2), "half of pitch, or the plies have no room", fault.Range)
	fault.AtMost(&a, "apart", c.Apart, c.Turn.DivInt(int64(c.Rows)), "the part of turn for each row", fault.Range)
	if a.Failed() {
		return CartridgePlan{}, a.Err(p.Assumed...)
	}
	return p, nil
}

// audit looks at each field by itself, and for what is missing.
func (c Cartridge) audit(a *fault.Audit) {
	c.Tape.Check(a, "tape")
	if c.Count == 0 || c.Pitch.IsZero() || c.Section.Sign() < 0 {
		a.Need("section", c.Section)
	}
	if c.Count != 0 {
		a.Count("count", c.Count, 1, MaxTubes)
	} else if c.Pitch.IsZero() {
		a.Fault("count", "", "1 to "+strconv.Itoa(MaxTubes)+", or pitch", fault.Missing)
	}
	a.NotNegative("pitch", c.Pitch)
	a.NotNegative("stitch", c.Stitch)
	a.NotNegative("cloth", c.Cloth)
	a.NotNegative("thickness", c.Thickness)
	a.NotNegative("turn", c.Turn)
	if c.Rows != 0 {
		a.Count("rows", c.Rows, 1, 10)
	}
	a.NotNegative("apart", c.Apart)
}

// solve fills section, count, pitch and, where cloth is given, stitch.
func (c *Cartridge) solve(a *fault.Audit) {
	if c.Count == 0 {
		if c.Count = wholePleats(a, "section", c.Section, c.Section, c.Pitch, units.Length{}, MaxTubes); a.Failed() {
			return
		}
	}
	n := int64(c.Count)
	switch {
	case c.Pitch.IsZero():
		c.Pitch = c.Section.DivInt(n)
	case c.Section.IsZero():
		c.Section = c.Pitch.MulInt(n)
	case c.Section != c.Pitch.MulInt(n):
		a.Fault("section", c.Section.String(), "{0} (count x pitch)", fault.Conflict, c.Pitch.MulInt(n))
	}
	switch two := 2 * n; {
	case c.Cloth.IsZero():
	case c.Stitch.IsZero():
		c.Stitch = c.Cloth.DivInt(two)
	case c.Cloth != c.Stitch.MulInt(two):
		a.Fault("cloth", c.Cloth.String(), "{0} (two stitches for each pleat)", fault.Conflict, c.Stitch.MulInt(two))
	}
}

// Sheet is how the pleats are drawn up and sewn on, with the working behind it.
func (p CartridgePlan) Sheet() ticket.Sheet {
	c := p.Spec
	sheet := ticket.Sheet{Title: "Cartridge pleats", Assumed: p.Assumed}
	if c.Count == 0 {
		return sheet
	}
	sheet.Answer = []ticket.Line{ticket.Sum("cloth before it is drawn up", c.Cloth), ticket.Sum("each stitch", c.Stitch)}
	sheet.Lines = []ticket.Line{
		ticket.Sum("section once drawn up", c.Section, ticket.Add(c.Pitch, "from pleat to pleat"), ticket.Multiply(c.Count, "pleats")),
		ticket.Sum("cloth in one pleat", p.PerPleat, ticket.Add(c.Stitch, "stitch"), ticket.Multiply(2, "there and back")),
		ticket.Sum("cloth before it is drawn up", c.Cloth, ticket.Add(p.PerPleat, "one pleat"), ticket.Multiply(c.Count, "pleats")),
		fullness("fullness", p.Fullness, ticket.Add(c.Cloth, "cloth"), c.Section, "section"),
		ticket.Sum("lowest row from the fold", p.LastRow, ticket.Add(c.Apart, "from row to row"), ticket.Multiply(c.Rows, "rows")),
	}
	if !p.Packed.IsZero() {
		sheet.Lines = append(sheet.Lines, ticket.Line{Label: "how much of the section the plies fill", Result: ticket.Times(p.Packed), Terms: []ticket.Term{
			ticket.Add(c.Thickness, "one ply"), ticket.Multiply(2, "in each pleat"), {Op: ticket.Over, Amount: ticket.Long(c.Pitch), Name: "from pleat to pleat"},
		}})
	}
	sheet.Steps = []ticket.Step{
		{Do: "Fold the upper edge down", At: ticket.Long(c.Turn), From: "the raw edge", Press: "to the wrong side", Note: "in thin cloth lay a strip of flannel inside, so that the tubes stand"},
		{
			Do: "Mark the stitches along the fold, every row exactly under the one above", At: ticket.Long(c.Stitch), From: "one mark to the next",
			Note:  "measure each from the start, not from the mark before",
			Check: ticket.Check{What: "from the first mark to the end of the last stitch", Want: ticket.Long(c.Cloth), Mend: "measure the whole edge and mark it again"},
		},
		{Do: "Run strong thread through the marks of each row, in and out", At: ticket.Long(c.Apart), From: "the fold to the first row, and from row to row"},
		{
			Do:    "Draw the threads up together and tie them",
			Check: ticket.Check{What: "the edge as drawn up", Want: ticket.Long(c.Section), Mend: "let the threads out or draw them closer"},
		},
		{Do: "Sew the tip of each fold to the edge with two stitches, right sides together", Note: "nothing is sewn flat: the pleats stand away from the edge"},
	}
	sheet.Cautions = []ticket.Caution{ticket.CutCare()}
	sheet.Sources = []source.Cite{source.Practise("cloth is two stitches for each pleat")}
	sheet.Sources = append(sheet.Sources, cites(p.Assumed, c.Tape, map[string]string{"stitch": cartridgeStitch, "turn": cartridgeTurn, "rows": cartridgeRows, "apart": cartridgeApart})...)
	return sheet
}
