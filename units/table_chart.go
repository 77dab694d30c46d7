package units

import (
	"iter"

	"example.com/clothyard/units/source"
)

// A ChartRow is a row of a printed chart of rounded equivalents. The trade's charts
// disagree with each other, and none is right for all uses, so each stands alone, as
// it was printed, and the caller names the one she follows. Nothing is read between
// two rows.
type ChartRow struct {
	Chart   string       // the chart's name, as in guide-inches
	Of      Length       // what is looked up, exact
	Printed Length       // what the chart prints for it
	Source  string       // id in the list of sources
	Known   source.Known // how the figures are known
}

// Off is how far the printed length is from the exact one: Printed less Of.
func (r ChartRow) Off() Length { return r.Printed.Sub(r.Of) }

var charts = [...]struct {
	name, source string
	known        source.Known
	cells        []chartCell
}{
	{"guide-inches", "imperial-metric-guide", source.Read, guideInches[:]},           // inches to millimetres up to 3/4 in, then to about 1/10 cm; 1/2 in is 12 mm
	{"tailoring-inches", "metric-system-tailoring", source.Read, tailoringInches[:]}, // a tailor's inches to centimetres, the whole inches to easy numbers
	{"quarter-inches", "metric-rounding-article", source.Read, quarterInches[:]},     // inches to the quarter centimetre, with slips
	{"decimal-inches", "decimal-inch-list", source.Read, decimalInches[:]},           // sixteenths of an inch as decimals, exact
	{"envelope-inches", "envelope-metric-chart", source.Memory, envelopeInches[:]},   // seam allowances as pattern envelopes pair them: 5/8 in is 1.5 cm
	{"guide-yards", "imperial-metric-guide", source.Read, guideYards[:]},             // yards to the tenth of a centimetre
	{"mixed-yards", "yardage-conversion-chart", source.Read, mixedYards[:]},          // yards to the half, quarter or tenth of a centimetre
	{"bought-yards", "metric-rounding-article", source.Read, boughtYards[:]},         // yards to metres as bought, see MetresBought
	{"school-yards", "school-needlework", source.Read, schoolYards[:]},               // fractions of a yard in inches, exact
	{"detailed-yards", "yard-fraction-list", source.Read, detailedYards[:]},          // more fractions of a yard in inches, exact
}

type chartCell struct{ of, printed Length }

// ChartRows yields the rows of every chart, each in the order printed.
func ChartRows() iter.Seq[ChartRow] {
	return func(yield func(ChartRow) bool) {
		for _, c := range charts {
			for _, cell := range c.cells {
				if !yield(ChartRow{c.name, cell.of, cell.printed, c.source, c.known}) {
					return
				}
			}
		}
	}
}

// MetresBought is the length of cloth to ask for in metres where l is wanted: the
// next 5 cm at or above l, a surplus of 1 mm or less over 5 cm being let go, as
// 7/8 yd (80.01 cm) is bought as 80 cm. It is zero for a length that is not positive,
// and at least 5 cm for any other. All 29 cells of the chart bought-yards follow
// this rule; that chart leaves some lengths out, and the rule does not.
func MetresBought(l Length) Length {
	if l.Sign() <= 0 {
		return Length{}
	}
	step := Centimetre.Of(5)
	below, surplus := l.Round(step, Down)
	if !below.IsZero() && !Millimetre.Of(1).Less(surplus) {
		return below
	}
	return below.Add(step)
}

// The cells, in the order printed. envelopeInches is recalled from its source: no
// copy was found that could be read.
var envelopeInches = [...]chartCell{
	{Inch.Frac(3, 8), Centimetre.Of(1)},
	{Inch.Frac(1, 2), Centimetre.Frac(13, 10)},
	{Inch.Frac(5, 8), Centimetre.Frac(15, 10)},
	{Inch.Frac(3, 4), Centimetre.Of(2)},
	{Inch.Frac(7, 8), Centimetre.Frac(22, 10)},
}

var guideInches = [...]chartCell{
	{Inch.Frac(1, 8), Millimetre.Of(3)},
	{Inch.Frac(1, 4), Millimetre.Of(6)},
	{Inch.Frac(1, 3), Millimetre.Of(8)},
	{Inch.Frac(3, 8), Millimetre.Of(10)},
	{Inch.Frac(1, 2), Millimetre.Of(12)},
	{Inch.Frac(5, 8), Millimetre.Of(16)},
	{Inch.Frac(2, 3), Millimetre.Of(17)},
	{Inch.Frac(3, 4), Millimetre.Of(19)},
	{Inch.Of(1), Centimetre.Frac(25, 10)},
	{Inch.Frac(5, 4), Centimetre.Frac(32, 10)},
	{Inch.Frac(3, 2), Centimetre.Frac(38, 10)},
	{Inch.Frac(7, 4), Centimetre.Frac(44, 10)},
	{Inch.Of(2), Centimetre.Frac(51, 10)},
	{Inch.Frac(9, 4), Centimetre.Frac(57, 10)},
	{Inch.Frac(5, 2), Centimetre.Frac(64, 10)},
	{Inch.Frac(11, 4), Centimetre.Frac(70, 10)},
	{Inch.Of(3), Centimetre.Frac(76, 10)},
	{Inch.Frac(13, 4), Centimetre.Frac(825, 100)},
	{Inch.Frac(7, 2), Centimetre.Frac(89, 10)},
	{Inch.Of(4), Centimetre.Frac(102, 10)},
	{Inch.Frac(9, 2), Centimetre.Frac(114, 10)},
	{Inch.Of(5), Centimetre.Frac(127, 10)},
	{Inch.Frac(11, 2), Centimetre.Of(14)},
	{Inch.Of(6), Centimetre.Frac(152, 10)},
	{Inch.Of(7), Centimetre.Frac(178, 10)},
	{Inch.Of(8), Centimetre.Frac(203, 10)},
	{Inch.Of(9), Centimetre.Frac(229, 10)},
	{Inch.Of(10), Centimetre.Frac(254, 10)},
	{Inch.Of(11), Centimetre.Of(28)},
	{Inch.Of(12), Centimetre.Frac(305, 10)},
}

var tailoringInches = [...]chartCell{
	{Inch.Frac(1, 4), Centimetre.Frac(6, 10)},
	{Inch.Frac(1, 2), Centimetre.Frac(13, 10)},
	{Inch.Frac(3, 4), Centimetre.Frac(20, 10)},
	{Inch.Of(1), Centimetre.Frac(25, 10)},
	{Inch.Of(4), Centimetre.Frac(100, 10)},
	{Inch.Of(5), Centimetre.Frac(125, 10)},
	{Inch.Of(6), Centimetre.Frac(150, 10)},
	{Inch.Of(7), Centimetre.Frac(180, 10)},
	{Inch.Of(22), Centimetre.Frac(560, 10)},
	{Inch.Of(24), Centimetre.Frac(610, 10)},
	{Inch.Of(26), Centimetre.Frac(660, 10)},
	{Inch.Of(28), Centimetre.Frac(710, 10)},
}

var quarterInches = [...]chartCell{
	{Inch.Frac(1, 4), Millimetre.Of(6)},
	{Inch.Frac(1, 2), Centimetre.Frac(125, 100)},
	{Inch.Frac(3, 4), Centimetre.Of(2)},
	{Inch.Of(1), Centimetre.Frac(25, 10)},
	{Inch.Frac(5, 4), Centimetre.Of(3)},
	{Inch.Frac(3, 2), Centimetre.Frac(375, 100)},
	{Inch.Frac(7, 4), Centimetre.Frac(45, 10)},
	{Inch.Of(2), Centimetre.Of(5)},
	{Inch.Frac(9, 4), Centimetre.Frac(575, 100)},
	{Inch.Frac(11, 4), Centimetre.Of(7)},
	{Inch.Of(3), Centimetre.Frac(77, 10)},
	{Inch.Frac(21, 4), Centimetre.Frac(135, 10)},
	{Inch.Frac(11, 2), Centimetre.Of(14)},
	{Inch.Frac(25, 4), Centimetre.Of(16)},
	{Inch.Frac(13, 2), Centimetre.Frac(165, 10)},
	{Inch.Frac(21, 2), Centimetre.Frac(265, 10)},
	{Inch.Frac(29, 2), Centimetre.Frac(3675, 100)},
}

var guideYards = [...]chartCell{
	{Yard.Frac(1, 8), Centimetre.Frac(114, 10)},
	{Yard.Frac(1, 4), Centimetre.Frac(229, 10)},
	{Yard.Frac(1, 3), Centimetre.Frac(305, 10)},
	{Yard.Frac(3, 8), Centimetre.Frac(343, 10)},
	{Yard.Frac(1, 2), Centimetre.Frac(457, 10)},
	{Yard.Frac(5, 8), Centimetre.Frac(572, 10)},
	{Yard.Frac(2, 3), Centimetre.Of(61)},
	{Yard.Frac(3, 4), Centimetre.Frac(686, 10)},
	{Yard.Of(1), Centimetre.Frac(914, 10)},
	{Yard.Frac(5, 4), Centimetre.Frac(1143, 10)},
	{Yard.Frac(3, 2), Centimetre.Frac(1372, 10)},
	{Yard.Frac(7, 4), Centimetre.Of(160)},
	{Yard.Of(2), Centimetre.Frac(1829, 10)},
	{Yard.Frac(9, 4), Centimetre.Frac(2057, 10)},
	{Yard.Frac(5, 2), Centimetre.Frac(2286, 10)},
	{Yard.Frac(11, 4), Centimetre.Frac(2515, 10)},
	{Yard.Of(3), Centimetre.Frac(2743, 10)},
	{Yard.Frac(7, 2), Centimetre.Of(320)},
	{Yard.Of(4), Centimetre.Frac(3658, 10)},
}

var mixedYards = [...]chartCell{
	{Yard.Frac(1, 8), Centimetre.Frac(114, 10)},
	{Yard.Frac(1, 4), Centimetre.Of(23)},
	{Yard.Frac(1, 3), Centimetre.Frac(305, 10)},
	{Yard.Frac(3, 8), Centimetre.Frac(3425, 100)},
	{Yard.Frac(1, 2), Centimetre.Frac(4575, 100)},
	{Yard.Frac(5, 8), Centimetre.Of(57)},
	{Yard.Frac(2, 3), Centimetre.Of(61)},
	{Yard.Frac(3, 4), Centimetre.Frac(685, 10)},
	{Yard.Frac(7, 8), Centimetre.Of(80)},
	{Yard.Of(1), Centimetre.Frac(915, 10)},
}

var boughtYards = [...]chartCell{
	{Yard.Frac(1, 4), Metre.Frac(25, 100)},
	{Yard.Frac(3, 8), Metre.Frac(35, 100)},
	{Yard.Frac(1, 2), Metre.Frac(50, 100)},
	{Yard.Frac(5, 8), Metre.Frac(60, 100)},
	{Yard.Frac(3, 4), Metre.Frac(70, 100)},
	{Yard.Frac(7, 8), Metre.Frac(80, 100)},
	{Yard.Of(1), Metre.Frac(95, 100)},
	{Yard.Frac(9, 8), Metre.Frac(105, 100)},
	{Yard.Frac(5, 4), Metre.Frac(115, 100)},
	{Yard.Frac(11, 8), Metre.Frac(130, 100)},
	{Yard.Frac(13, 8), Metre.Frac(150, 100)},
	{Yard.Frac(7, 4), Metre.Frac(160, 100)},
	{Yard.Frac(15, 8), Metre.Frac(175, 100)},
	{Yard.Of(2), Metre.Frac(185, 100)},
	{Yard.Frac(17, 8), Metre.Frac(195, 100)},
	{Yard.Frac(9, 4), Metre.Frac(210, 100)},
	{Yard.Frac(19, 8), Metre.Frac(22, 10)},
	{Yard.Frac(5, 2), Metre.Frac(23, 10)},
	{Yard.Frac(21, 8), Metre.Frac(24, 10)},
	{Yard.Frac(11, 4), Metre.Frac(255, 100)},
	{Yard.Of(3), Metre.Frac(275, 100)},
	{Yard.Frac(25, 8), Metre.Frac(29, 10)},
	{Yard.Frac(13, 4), Metre.Of(3)},
	{Yard.Frac(27, 8), Metre.Frac(31, 10)},
	{Yard.Frac(7, 2), Metre.Frac(32, 10)},
	{Yard.Frac(29, 8), Metre.Frac(335, 100)},
	{Yard.Frac(15, 4), Metre.Frac(345, 100)},
	{Yard.Frac(31, 8), Metre.Frac(355, 100)},
	{Yard.Of(4), Metre.Frac(37, 10)},
}

var detailedYards = [...]chartCell{
	{Yard.Frac(1, 36), Inch.Of(1)},
	{Yard.Frac(1, 8), Inch.Frac(9, 2)},
	{Yard.Frac(1, 6), Inch.Of(6)},
	{Yard.Frac(1, 4), Inch.Of(9)},
	{Yard.Frac(1, 3), Inch.Of(12)},
	{Yard.Frac(3, 8), Inch.Frac(27, 2)},
	{Yard.Frac(1, 2), Inch.Of(18)},
	{Yard.Frac(5, 8), Inch.Frac(45, 2)},
	{Yard.Frac(2, 3), Inch.Of(24)},
	{Yard.Frac(3, 4), Inch.Of(27)},
	{Yard.Frac(7, 8), Inch.Frac(63, 2)},
	{Yard.Of(1), Inch.Of(36)},
}

var schoolYards = [...]chartCell{
	{Yard.Of(1), Inch.Of(36)},
	{Yard.Frac(3, 4), Inch.Of(27)},
	{Yard.Frac(1, 2), Inch.Of(18)},
	{Yard.Frac(1, 4), Inch.Of(9)},
	{Yard.Frac(1, 8), Inch.Frac(9, 2)},
	{Yard.Frac(1, 16), Inch.Frac(9, 4)},
}

var decimalInches = [...]chartCell{
	{Inch.Frac(1, 16), Inch.Frac(625, 10000)},
	{Inch.Frac(1, 8), Inch.Frac(1250, 10000)},
	{Inch.Frac(3, 16), Inch.Frac(1875, 10000)},
	{Inch.Frac(1, 4), Inch.Frac(2500, 10000)},
	{Inch.Frac(5, 16), Inch.Frac(3125, 10000)},
	{Inch.Frac(3, 8), Inch.Frac(3750, 10000)},
	{Inch.Frac(7, 16), Inch.Frac(4375, 10000)},
	{Inch.Frac(1, 2), Inch.Frac(5000, 10000)},
	{Inch.Frac(9, 16), Inch.Frac(5625, 10000)},
	{Inch.Frac(5, 8), Inch.Frac(6250, 10000)},
	{Inch.Frac(11, 16), Inch.Frac(6875, 10000)},
	{Inch.Frac(3, 4), Inch.Frac(7500, 10000)},
	{Inch.Frac(13, 16), Inch.Frac(8125, 10000)},
	{Inch.Frac(7, 8), Inch.Frac(8750, 10000)},
	{Inch.Frac(15, 16), Inch.Frac(9375, 10000)},
}
