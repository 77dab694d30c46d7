package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxShirrs is the greatest number of rows of shirring.
const MaxShirrs = 1000

// Shirring is cloth drawn in by rows of gathering, or of elastic thread. Zero means
// "not given". Elastic thread draws in by its tension, by the cloth and by steam, so
// that a sample which is sewn, steamed and measured says more than any rule.
type Shirring struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Finished is the width that the rows are drawn in to.
	Finished units.Length `json:"finished,omitzero"`
	// Flat is the width of a sample before it is shirred. May be omitted.
	Flat units.Length `json:"flat,omitzero"`
	// Drawn is the width of the sample once it is shirred and steamed, with as many
	// rows.
	Drawn units.Length `json:"drawn,omitzero"`
	// Fullness is the width of the cloth over that of the shirring, more than 1. It
	// follows from the sample, or may be omitted; the default is 2.
	Fullness units.Ratio `json:"fullness,omitzero"`
	// Ends is the seam allowance at each side. May be omitted; the default is 5/8 in or
	// 1.5 cm.
	Ends units.Given[units.Length] `json:"ends,omitzero"`
	// Depth is from the first row to the last, at least.
	Depth units.Length `json:"depth,omitzero"`
	// Apart is from one row to the next. May be omitted; the default is 1/4 in or 6 mm.
	Apart units.Length `json:"apart,omitzero"`
}

// A ShirringPlan is what shirring comes to.
type ShirringPlan struct {
	Spec    Shirring     `json:"spec,omitzero"`    // as solved
	Assumed []string     `json:"assumed,omitzero"` // the fields filled with a default
	Cloth   units.Length `json:"cloth,omitzero"`   // the cloth between the seams: finished x fullness
	Cut     units.Length `json:"cut,omitzero"`     // width as cut, with an allowance at each side
	Rows    int          `json:"rows,omitzero"`    // how many rows there are
	LastRow units.Length `json:"lastRow,omitzero"` // the last row, from the first
}

// Plan works out the shirring. The faults are [fault.Faults].
func (s Shirring) Plan() (ShirringPlan, error) {
	var a fault.Audit
	s.audit(&a)
	if a.Failed() {
		return ShirringPlan{}, a.Err()
	}
	if !s.Flat.IsZero() {
		if sample := s.Flat.Div(s.Drawn); s.Fullness.IsZero() {
			s.Fullness = sample
		} else if s.Fullness != sample {
			a.Fault("fullness", s.Fullness.String(), "{0} (flat over drawn)", fault.Conflict, sample)
		}
	}
	given := s
	s.Tape = noun.Tape(s)
	if s.Fullness.IsZero() {
		s.Fullness = fullnessFor("shirring").Low
	}
	if s.Ends.IsZero() {
		s.Ends = units.Give(usual(seamAllowance, s.Tape).Length)
	}
	fill(&s.Apart, shirringApart, s.Tape)
	p := ShirringPlan{Spec: s, Assumed: noun.Assumed(given, s)}
	gaps, ok := s.Depth.Div(s.Apart).Int(units.Up)
	if !ok || gaps >= MaxShirrs {
		a.Fault("apart", s.Apart.String(), "at least {0} ("+strconv.Itoa(MaxShirrs)+" rows)", fault.Range, s.Depth.DivInt(MaxShirrs-1))
	}
	if a.Failed() {
		return ShirringPlan{}, a.Err(p.Assumed...)
	}
	p.Cloth = s.Finished.Scale(s.Fullness)
	p.Cut = p.Cloth.Add(s.Ends.Or(units.Length{}).MulInt(2))
	p.Rows, p.LastRow = int(gaps)+1, s.Apart.MulInt(gaps)
	return p, nil
}

// audit looks at each field by itself, and for what is missing.
func (s Shirring) audit(a *fault.Audit) {
	s.Tape.Check(a, "tape")
	a.Need("finished", s.Finished)
	a.NotNegative("flat", s.Flat)
	if !s.Flat.IsZero() || s.Drawn.Sign() < 0 {
		a.Need("drawn", s.Drawn)
	}
	switch {
	case s.Flat.IsZero() && s.Drawn.Sign() > 0:
		a.Fault("drawn", s.Drawn.String(), "none without flat", fault.Unused)
	case s.Flat.Sign() > 0 && s.Drawn.Cmp(s.Flat) >= 0:
		a.Fault("drawn", s.Drawn.String(), "less than {0} (flat)", fault.Range, s.Flat)
	}
	if !s.Fullness.IsZero() && s.Fullness.Cmp(units.RatioOf(1, 1)) <= 0 {
		a.Fault("fullness", s.Fullness.String(), "more than 1", fault.Range)
	}
	a.NotNegative("ends", s.Ends.Or(units.Length{}))
	a.Need("depth", s.Depth)
	a.NotNegative("apart", s.Apart)
}

// Sheet is how the shirring is cut and sewn, with the working behind it.
func (p ShirringPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "Shirring", Assumed: p.Assumed}
	if p.Rows == 0 {
		return sheet
	}
	ends := s.Ends.Or(units.Length{})
	sheet.Answer = []ticket.Line{ticket.Sum("cut the cloth wide", p.Cut), {Label: "rows", Result: ticket.Of(p.Rows)}}
	if !s.Flat.IsZero() {
		sheet.Lines = append(sheet.Lines, fullness("fullness of the sample", s.Fullness, ticket.Add(s.Flat, "flat"), s.Drawn, "drawn in"))
	}
	sheet.Lines = append(sheet.Lines,
		ticket.Sum("cloth between the seams", p.Cloth, ticket.Add(s.Finished, "drawn in"), ticket.Term{Op: ticket.By, Amount: ticket.Times(s.Fullness), Name: "fullness"}),
		ticket.Sum("width as cut", p.Cut, ticket.Add(p.Cloth, "between the seams"), ticket.Add(ends.MulInt(2), "two allowances")),
		ticket.Sum("last row from the first", p.LastRow, ticket.Add(s.Apart, "from row to row"), ticket.Multiply(p.Rows-1, "gaps")))
	sheet.Steps = []ticket.Step{
		{Do: "Cut the cloth wide enough", At: ticket.Long(p.Cut), From: "one side to the other"},
		{Do: "Mark and stitch the first row from the right side, with the longest stitch", Note: "wind elastic thread on the bobbin by hand, without stretching it; knot the ends, as a backstitch can cut it"},
		{
			Do: "Stitch the other rows, holding those before flat", At: ticket.Long(s.Apart), From: "the row before",
			Check: ticket.Check{What: "from the first row to the last", Want: ticket.Long(p.LastRow), Mend: "sew one row more, or leave one out, at the lower end"},
		},
		{
			Do: "Hold the iron over it and steam it, without touching", Press: "never flat",
			Check: ticket.Check{What: "the shirring, between the seams", Want: ticket.Long(s.Finished), Mend: "where it is wide, steam it again or sew rows between; where it is narrow, cut the next piece wider"},
		},
	}
	sheet.Cautions = []ticket.Caution{ticket.IronCare(), ticket.CutCare()}
	if s.Flat.IsZero() {
		sheet.Cautions = append(sheet.Cautions, ticket.Caution{Text: "No sample is measured: steam alone can draw elastic thread in by a third. Sew as many rows on a scrap, steam it and measure it.", Refer: "the sample decides"})
	}
	sheet.Sources = append([]source.Cite{fullnessFor("shirring").Cite(), {For: "steam draws it in by 30 percent", ID: "elastic-thread-page", Known: source.Read}},
		cites(p.Assumed, s.Tape, map[string]string{"apart": shirringApart})...)
	return sheet
}
