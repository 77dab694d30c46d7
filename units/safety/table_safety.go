// Package safety holds the limits of laws and standards on children's clothes, each
// once: small parts, cords, nightwear. They are short extracts with the country and the
// age that each is for; the text in force decides, and so do local codes.
package safety

import (
	"iter"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A LimitRow is one limit of a law or of a standard.
type LimitRow struct {
	ID     string       // of the row
	Rule   string       // the paragraph or standard
	Item   string       // what it is about
	Below  int          // applies to wearers below this age in months; zero where the row is not by age
	From   int          // and from this age in months on
	Tail   bool         // it is about the free ends of a cord
	Neck   bool         // at the hood or the neck; else at the waist or the hem
	None   bool         // none at all is allowed
	Length units.Length // the greatest length; zero where the row has none
	Newton int          // force that it must hold, in newtons; zero where the row has none
	Exempt bool         // the rule leaves this item out
	Source string       // id of the source, see [source.Lookup]
	Known  source.Known // how the figure is known
}

// Country is where the rule holds.
func (l LimitRow) Country() string {
	for prefix, country := range map[string]string{"us": "United States", "eu": "Europe", "uk": "United Kingdom", "cn": "China"} {
		if strings.HasPrefix(l.Source, prefix+"-") {
			return country
		}
	}
	return ""
}

// At reports whether the limit goes by age and applies to a wearer of the age in months.
func (l LimitRow) At(months int) bool { return months >= 1 && months >= l.From && months < l.Below }

// Ages in months. The sizes of the US rule on drawstrings are taken as years, as
// a size 12 at 12 years: it speaks of sizes.
const (
	threeYears    = 36
	sevenYears    = 7 * 12
	fourteenYears = 14 * 12
)

// Taken from the extracts of the rules.
var limits = source.Table[LimitRow]{
	{ID: "small-parts-age", Rule: "16 CFR 1501.2", Item: "small parts", Below: threeYears, Source: "us-small-parts-rule", Known: source.Read},
	{ID: "small-parts-buttons", Rule: "16 CFR 1501.3(d)", Item: "buttons on clothing", Below: threeYears, Exempt: true, Source: "us-small-parts-rule", Known: source.Read},
	{ID: "small-parts-cylinder-width", Rule: "16 CFR 1501.4", Item: "width of the test cylinder", Below: threeYears, Length: units.Inch.Mixed(1, 1, 4), Source: "us-small-parts-rule", Known: source.Read},
	{ID: "small-parts-cylinder-depth", Rule: "16 CFR 1501.4", Item: "greatest depth of the test cylinder", Below: threeYears, Length: units.Inch.Mixed(2, 1, 4), Source: "us-small-parts-rule", Known: source.Read},
	{ID: "small-parts-cylinder-shallow", Rule: "16 CFR 1501.4 figure 1", Item: "least depth of the test cylinder", Below: threeYears, Length: units.Inch.Of(1), Source: "us-small-parts-rule", Known: source.Memory},
	{ID: "button-pull", Rule: "CEN/TS 17394-1", Item: "pull on a button of 6 mm or more", Below: threeYears, Newton: 70, Source: "eu-infant-button-strength", Known: source.Read},
	{ID: "button-pull-small", Rule: "CEN/TS 17394-1", Item: "pull on a button of 3 mm to under 6 mm", Below: threeYears, Newton: 50, Source: "eu-infant-button-strength", Known: source.Read},
	{ID: "us-neck-cord", Rule: "16 CFR 1120", Item: "drawstring at hood or neck", From: 24, Below: 13 * 12, None: true, Tail: true, Neck: true, Source: "us-drawstring-rule", Known: source.Read},
	{ID: "us-waist-cord", Rule: "16 CFR 1120", Item: "drawstring at waist or bottom, outside its channel at full width", From: 24, Below: 17 * 12, Length: units.Inch.Of(3), Tail: true, Source: "us-drawstring-rule", Known: source.Read},
	{ID: "eu-neck-cord-young", Rule: "EN 14682", Item: "cord at hood or neck", Below: sevenYears, None: true, Tail: true, Neck: true, Source: "eu-cords-standard", Known: source.Read},
	{ID: "eu-neck-cord", Rule: "EN 14682", Item: "cord at hood or neck, no free-ended drawstring", From: sevenYears, Below: fourteenYears, Length: units.Millimetre.Of(75), Tail: true, Neck: true, Source: "eu-cords-standard", Known: source.Read},
	{ID: "eu-waist-cord", Rule: "EN 14682", Item: "free end of a cord at chest or waist", Below: fourteenYears, Length: units.Millimetre.Of(140), Tail: true, Source: "eu-cords-standard", Known: source.Read},
	{ID: "eu-neck-loop", Rule: "EN 14682", Item: "loop at the neck, round, as worn", From: sevenYears, Below: fourteenYears, Length: units.Centimetre.Of(15), Source: "eu-cords-standard", Known: source.Read},
	{ID: "eu-waist-closed", Rule: "EN 14682", Item: "drawstring at waist, closed to the smallest", Below: fourteenYears, Length: units.Centimetre.Of(28), Source: "eu-cords-standard", Known: source.Read},
	{ID: "eu-belt", Rule: "EN 14682", Item: "belt or sash tied in front, untied", Below: fourteenYears, Length: units.Millimetre.Of(360), Source: "eu-cords-standard", Known: source.Read},
	{ID: "cn-waist-cord", Rule: "GB/T 22702", Item: "drawstring at waist or hem", Length: units.Millimetre.Of(75), Source: "cn-cords-standard", Known: source.Read},
	{ID: "cn-cord", Rule: "GB/T 22702", Item: "cord at other places", Length: units.Centimetre.Of(14), Source: "cn-cords-standard", Known: source.Read},
	{ID: "cn-neck-loop", Rule: "GB/T 22702", Item: "loop at the neck, round", Length: units.Centimetre.Of(15), Source: "cn-cords-standard", Known: source.Read},
	{ID: "us-trim-longest", Rule: "16 CFR 1615, trim", Item: "longest measure of a trimming that is left out of the test", Length: units.Inch.Of(2), Source: "us-sleepwear-small-rule", Known: source.Read},
	{ID: "toy-pull", Rule: "EN 71-1", Item: "pull on a part of more than 6 mm, toys", Newton: 90, Source: "eu-toy-standard", Known: source.Read},
	{ID: "toy-pull-small", Rule: "EN 71-1", Item: "pull on a part of 6 mm or less, toys", Newton: 50, Source: "eu-toy-standard", Known: source.Read},
	{ID: "us-sleepwear-char", Rule: "16 CFR 1616.3", Item: "average charred length of five specimens", Length: units.Inch.Of(7), Source: "us-sleepwear-rule", Known: source.Read},
	{ID: "us-sleepwear-char-small", Rule: "16 CFR 1615.3", Item: "average charred length of five specimens", Length: units.Inch.Of(7), Source: "us-sleepwear-small-rule", Known: source.Memory},
	{ID: "us-infant-garment", Rule: "16 CFR 1615.1(c)", Item: "length of an infant garment in one piece, size 9 months or smaller", Length: units.Inch.Mixed(25, 3, 4), Source: "us-sleepwear-small-rule", Known: source.Read},
	{ID: "us-infant-garment-piece", Rule: "16 CFR 1615.1(c)", Item: "length of each piece of an infant garment in two", Length: units.Inch.Mixed(15, 3, 4), Source: "us-sleepwear-small-rule", Known: source.Read},
	{ID: "uk-nightdress-chest", Rule: "SI 1985/2043", Item: "chest of a child's nightdress", Below: 13 * 12, Length: units.Centimetre.Of(91), Source: "uk-nightwear-regulations", Known: source.Read},
	{ID: "uk-nightdress-length", Rule: "SI 1985/2043", Item: "length of a child's nightdress", Below: 13 * 12, Length: units.Centimetre.Of(122), Source: "uk-nightwear-regulations", Known: source.Read},
	{ID: "uk-gown-chest", Rule: "SI 1985/2043", Item: "chest of a child's dressing gown", Length: units.Centimetre.Of(97), Source: "uk-nightwear-regulations", Known: source.Read},
	{ID: "uk-gown-sleeve", Rule: "SI 1985/2043", Item: "sleeve of a child's dressing gown", Length: units.Centimetre.Of(69), Source: "uk-nightwear-regulations", Known: source.Read},
	{ID: "uk-baby-chest", Rule: "SI 1985/2043", Item: "chest of a baby garment, up to three months", Length: units.Centimetre.Of(53), Source: "uk-nightwear-regulations", Known: source.Read},
}

// Limits are the limits that are known here.
func Limits() iter.Seq[LimitRow] { return limits.All() }

// Tails are the limits on the free ends of cords for a wearer of the age in months, at
// the hood and the neck or below.
func Tails(months int, neck bool) iter.Seq[LimitRow] {
	return limits.Where(func(l LimitRow) bool { return l.Tail && l.Neck == neck && l.At(months) })
}

// Decides is to whom every caution defers.
const Decides = "the law and the standards of the place decide, with the workroom's own practice"

// Cautions are the cautions for the wearer's age in months.
func Cautions(out []ticket.Caution, months int) []ticket.Caution {
	switch {
	case months == 0:
		return append(out, ticket.Caution{
			Text:  "A button that comes off can choke a small child: for a child's garment give the wearer's age.",
			Refer: Decides,
		})
	case months < threeYears:
		out = append(out, ticket.Caution{
			Text: "Under three years a loose button can choke. The small-parts rule leaves buttons on clothing out, so the law named " +
				"does not forbid them; it is wise all the same to use none, or to sew each on by hand with a knotted shank and pull-test it.",
			Refer: "16 CFR 1501.2 and 1501.3(d), United States; CEN/TS 17394-1 for the strength of buttons, Europe; " + Decides,
		})
	}
	if months < 17*12 {
		out = append(out, ticket.Caution{
			Text: "Cords, ties and toggles on children's clothes catch and strangle: none at the hood or neck of a small child, " +
				"short ones elsewhere, no knots or toggles at the ends.",
			Refer: "16 CFR 1120, United States; EN 14682, Europe; " + Decides,
		})
	}
	if months < fourteenYears {
		out = append(out, ticket.Caution{
			Text:  "Children's sleepwear must not flare up: buy cloth and trimmings sold for it, and no loose-fitting cotton.",
			Refer: "16 CFR 1615 and 1616, United States; SI 1985/2043, United Kingdom; " + Decides,
		})
	}
	return out
}

// Cites are the sources of the cautions.
func Cites(out []source.Cite, months int) []source.Cite {
	if months > 0 && months < threeYears {
		out = append(out,
			source.Cite{For: "small parts, and the exemption of buttons", ID: "us-small-parts-rule", Place: "1501.2, 1501.3(d)", Known: source.Read},
			source.Cite{For: "strength of buttons for infants", ID: "eu-infant-button-strength", Known: source.Read})
	}
	if months > 0 && months < 17*12 {
		out = append(out,
			source.Cite{For: "drawstrings", ID: "us-drawstring-rule", Known: source.Read},
			source.Cite{For: "cords", ID: "eu-cords-standard", Known: source.Read})
	}
	if months > 0 && months < fourteenYears {
		out = append(out,
			source.Cite{For: "sleepwear, sizes up to 6X", ID: "us-sleepwear-small-rule", Place: "1615.1 and 1615.3", Known: source.Read},
			source.Cite{For: "sleepwear, larger sizes", ID: "us-sleepwear-rule", Place: "1616.3", Known: source.Read},
			source.Cite{For: "nightwear", ID: "uk-nightwear-regulations", Known: source.Read})
	}
	return out
}
