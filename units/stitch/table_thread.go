package stitch

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A RatioRow is how much thread one source reckons for a length of seam.
type RatioRow struct {
	Type   Type         // the stitch type
	Ratio  units.Ratio  // thread, all of it, for a length of seam; 2 1/2 is 2 1/2 in to the inch
	Needle units.Ratio  // the share of the needle threads; zero where the source does not say
	Note   string       // where the sources disagree; empty if they do not
	Source string       // id, see [source.Lookup]
	Place  string       // where in it
	Known  source.Known // how it is known
}

// Cite is the row as a citation.
func (r RatioRow) Cite() source.Cite {
	return source.Cite{For: "thread for a length of seam", ID: r.Source, Place: r.Place, Known: r.Known}
}

// RatioRows yields the table of ratios, 15 rows, for each type the default first:
// what was read before what is from memory.
func RatioRows() iter.Seq[RatioRow] { return ratioRows.All() }

// A FormulaRow is a formula printed for thread by geometry, in lengths of thread
// for one of seam: Fixed + Thick x T/p + Wide x W/p, where T is the thickness of
// the seam, W its width and p the length of a stitch.
type FormulaRow struct {
	Type   Type         // the stitch type
	Fixed  int          // lengths of thread along the seam
	Thick  int          // passes through the thickness in each stitch
	Wide   int          // passes over the width in each stitch; zero where the formula has none
	Source string       // id, see [source.Lookup]
	Place  string       // where in it
	Known  source.Known // how it is known
}

// Cite is the row as a citation.
func (r FormulaRow) Cite() source.Cite {
	return source.Cite{For: "thread by geometry", ID: r.Source, Place: r.Place, Known: r.Known}
}

// FormulaRows yields the table of formulas, 4 rows.
func FormulaRows() iter.Seq[FormulaRow] { return formulaRows.All() }

// A WasteRow is what one source adds for the ends of thread, rethreading and
// seams sewn again, as a part of the thread in the seams.
type WasteRow struct {
	Least, Most units.Ratio  // the range printed, 1/10 for 10 percent
	Source      string       // id, see [source.Lookup]
	Known       source.Known // how it is known
}

// WasteRows yields the table of waste, 2 rows. The default of 15 percent is what
// both allow and both use in their examples.
func WasteRows() iter.Seq[WasteRow] { return wasteRows.All() }

func percent(n int64) units.Ratio { return units.RatioOf(n, 100) }

// usualWaste is the default: the figure on which the two rows of waste meet.
func usualWaste() units.Ratio { return wasteRows[0].Most }

var (
	half = units.RatioOf(1, 2)
	all  = units.RatioOf(1, 1)
	none units.Ratio

	apart = "the sources disagree"

	ratioRows = source.Table[RatioRow]{
		{Chain101, units.RatioOf(5, 1), none, apart, "thread-ratio-guide", "", source.Read},
		{Chain101, units.RatioOf(4, 1), all, apart, "thread-consumption-guide", "", source.Memory},
		{Blind103, units.RatioOf(9, 2), none, "", "thread-ratio-guide", "", source.Read},
		{Lock301, units.RatioOf(5, 2), half, "", "thread-ratio-guide", "", source.Read},
		{Lock301, units.RatioOf(5, 2), half, "", "thread-consumption-guide", "", source.Memory},
		{Zigzag304, units.RatioOf(11, 2), none, apart, "thread-ratio-guide", "", source.Read},
		{Zigzag304, units.RatioOf(7, 1), half, apart, "thread-consumption-guide", "", source.Memory},
		{Chain401, units.RatioOf(11, 2), percent(25), "", "thread-consumption-guide", "", source.Memory},
		{Overedge503, units.RatioOf(12, 1), percent(55), "", "thread-consumption-guide", "", source.Memory},
		{Overedge504, units.RatioOf(14, 1), percent(20), "", "thread-consumption-guide", "", source.Memory},
		{Mock512, units.RatioOf(18, 1), percent(25), "", "thread-consumption-guide", "", source.Memory},
		{Safety516, units.RatioOf(20, 1), percent(20), "", "thread-consumption-guide", "", source.Memory},
		{Cover406, units.RatioOf(18, 1), percent(30), "", "thread-consumption-guide", "", source.Memory},
		{Cover602, units.RatioOf(25, 1), percent(20), "", "thread-consumption-guide", "", source.Memory},
		{Cover605, units.RatioOf(28, 1), percent(30), "", "thread-consumption-guide", "", source.Memory},
	}

	formulaRows = source.Table[FormulaRow]{
		{Chain101, 3, 2, 0, "thread-formula-guide", "", source.Read},
		{Lock301, 2, 2, 0, "thread-formula-page", "", source.Read},
		{Chain401, 4, 2, 0, "thread-formula-page", "", source.Read},
		{Overedge504, 3, 4, 4, "thread-formula-page", "", source.Read},
	}

	wasteRows = source.Table[WasteRow]{
		{percent(10), percent(15), "thread-measuring-page", source.Read},
		{percent(15), percent(20), "thread-estimate-page", source.Read},
	}
)

// ratio is the default of thread to a length of seam, zero where there is none.
func (t Type) ratio() units.Ratio {
	for _, r := range ratioRows {
		if r.Type == t {
			return r.Ratio
		}
	}
	return none
}

// share is the part of the thread that is on the needle: of one thread all, else
// what the first row that says it gives; zero where none does.
func (t Type) share() (units.Ratio, RatioRow) {
	if t.oneThread() {
		return all, RatioRow{}
	}
	for _, r := range ratioRows {
		if r.Type == t && !r.Needle.IsZero() {
			return r.Needle, r
		}
	}
	return none, RatioRow{}
}
