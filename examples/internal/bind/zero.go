package bind

import "slices"

// answers are the fields, as package.Type.Field in alphabetical order, in which
// zero is an answer and not "not given".
var answers = [...]string{
	"buttons.Hole.Ease",
	"garment.Cloth.Ends",
	"garment.Cloth.Selvedge",
	"garment.Cloth.ShrinkLong",
	"garment.Cloth.ShrinkWide",
	"garment.Corner.X",
	"garment.Corner.Y",
	"garment.Edge.Turn",
	"garment.Place.X",
	"garment.Place.Y",
	"gather.Cuff.Flat",
	"gather.Cuff.Lap",
	"gather.Ruffle.Corners",
	"gather.Ruffle.Hem",
	"gather.Ruffle.Turn",
	"hem.Casing.Heading",
	"hem.Casing.Lower",
	"hem.HemSide.First",
	"hem.Mitre.Lean",
	"hem.Spec.Slope",
	"hem.Tucks.Edge",
	"layout.Cloth.Ends",
	"layout.Cloth.Gap",
	"layout.Cloth.Selvedge",
	"layout.Flaw.X",
	"layout.Flaw.Y",
	"layout.Point.X",
	"layout.Point.Y",
	"layout.Spec.Seed",
	"outline.Sector.Inner",
	"outline.Sector.Rest",
	"outline.Trapezoid.Lean",
	"seam.Course.Turn",
	"seam.Crossing.Slant",
	"seam.Edge.Turn",
	"seam.Take.Slant",
	"stitch.Density.Space",
	"strip.Binding.Allowance",
	"strip.Binding.Corners",
	"strip.Binding.Ends",
	"strip.Binding.Mitre",
	"strip.Binding.Over",
	"strip.Spec.Allowance",
	"strip.Spec.Ends",
	"yardage.Panels.Hems",
	"yardage.Panels.Seam",
	"yardage.Panels.Sides",
	"yardage.Panels.Starts",
	"yardage.Purchase.Ends",
	"yardage.Purchase.Shrink",
	"yardage.Purchase.Starts",
	"yardage.Remnant.Ends",
	"yardage.Remnant.Selvedge",
	"yardage.Remnant.ShrinkLength",
	"yardage.Remnant.ShrinkWidth",
}

func zeroAnswers(field string) bool {
	_, found := slices.BinarySearch(answers[:], field)
	return found
}
