package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Gores is a skirt of equal gores, narrow at the waist and wide at the hem. Zero
// means "not given".
type Gores struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Count is how many gores there are, 2 to 100.
	Count int `json:"count,omitzero"`
	// Waist is the waist seam, once round.
	Waist units.Length `json:"waist,omitzero"`
	// Hip is the skirt at the hip, once round. May be omitted.
	Hip units.Length `json:"hip,omitzero"`
	// Sweep is the hem, once round, at least as long as the waist.
	Sweep units.Length `json:"sweep,omitzero"`
	// Front is the width of the front gore at the hem, where it is another; the others
	// share the rest. May be omitted.
	Front units.Length `json:"front,omitzero"`
	// Length is the finished length, along the middle of a gore.
	Length units.Length `json:"length,omitzero"`
	// Hem is the hem allowance. May be omitted; the default is 0.
	Hem units.Length `json:"hem,omitzero" noun:"zero"`
	// Allowance is the seam allowance, at the waist too. May be omitted; the default is
	// 5/8 in or 1.5 cm.
	Allowance units.Given[units.Length] `json:"allowance,omitzero"`
	// Width is the usable width of the cloth. May be omitted; what cloth it takes is
	// then not known.
	Width units.Length `json:"width,omitzero"`
	// Nap says that all gores must lie one way; else every second one is turned, top to
	// tail.
	Nap bool `json:"nap,omitzero"`
}

// A GoresPlan is what a gored skirt comes to.
type GoresPlan struct {
	Spec      Gores        `json:"spec,omitzero"`      // as solved
	Assumed   []string     `json:"assumed,omitzero"`   // the fields filled with a default
	WaistEach units.Length `json:"waistEach,omitzero"` // one gore at the waist, finished
	HipEach   units.Length `json:"hipEach,omitzero"`   // one gore at the hip, finished
	SweepEach units.Length `json:"sweepEach,omitzero"` // one gore at the hem, finished; not the front one, where that is another
	Top       units.Length `json:"top,omitzero"`       // width at the top as cut
	AtHip     units.Length `json:"atHip,omitzero"`     // width at the hip as cut
	Bottom    units.Length `json:"bottom,omitzero"`    // width at the bottom as cut
	Cut       units.Length `json:"cut,omitzero"`       // length as cut
	Slant     units.Length `json:"slant,omitzero"`     // how far each edge stands out at the hem
	Edge      units.Near   `json:"edge,omitzero"`      // length of the slanted seam, from waist to hem
	Drop      units.Near   `json:"drop,omitzero"`      // what the seam is longer than the middle: the hem is curved up by it
	PerRow    int          `json:"perRow,omitzero"`    // how many gores lie side by side on the cloth
	RowWidth  units.Length `json:"rowWidth,omitzero"`  // the width that they take
	Rows      int          `json:"rows,omitzero"`      // how many rows of them
	Cloth     units.Length `json:"cloth,omitzero"`     // length of cloth for all
}

// Plan works out the gores. The faults are [fault.Faults]; one is [units.ErrBound]
// where lengths of thousands of digits have no root.
func (s Gores) Plan() (GoresPlan, error) {
	var a fault.Audit
	zero := units.Length{}
	s.Tape.Check(&a, "tape")
	a.Count("count", s.Count, 2, MaxGores)
	a.Need("waist", s.Waist)
	a.NotNegative("hip", s.Hip)
	a.Need("sweep", s.Sweep)
	a.NotNegative("front", s.Front)
	a.Need("length", s.Length)
	a.NotNegative("hem", s.Hem)
	a.NotNegative("allowance", s.Allowance.Or(zero))
	a.NotNegative("width", s.Width)
	if a.Failed() {
		return GoresPlan{}, a.Err()
	}
	fault.AtLeast(&a, "sweep", s.Sweep, s.Waist, "waist", fault.Range)
	if s.Front.Cmp(s.Sweep) >= 0 {
		a.Fault("front", s.Front.String(), "less than {0} (sweep)", fault.Range, s.Sweep)
	}
	given := s
	s.Tape = noun.Tape(s)
	if s.Allowance.IsZero() {
		s.Allowance = units.Give(usual(seamAllowance, s.Tape).Length)
	}
	p := GoresPlan{Spec: s, Assumed: noun.Assumed(given, s)}
	n, seam := int64(s.Count), s.Allowance.Or(zero)
	p.WaistEach, p.HipEach, p.SweepEach = s.Waist.DivInt(n), s.Hip.DivInt(n), s.Sweep.DivInt(n)
	if !s.Front.IsZero() {
		p.SweepEach = s.Sweep.Sub(s.Front).DivInt(n - 1)
	}
	p.Top, p.Bottom = p.WaistEach.Add(seam.MulInt(2)), p.SweepEach.Add(seam.MulInt(2))
	if !s.Hip.IsZero() {
		p.AtHip = p.HipEach.Add(seam.MulInt(2))
	}
	p.Cut = units.Sum(s.Length, seam, s.Hem)
	p.Slant = p.SweepEach.Sub(p.WaistEach).DivInt(2)
	if p.Slant.Sign() < 0 && !a.Failed() {
		a.Fault("front", s.Front.String(), "at most {0} (or the others are wider at the waist)", fault.Range, s.Sweep.Sub(p.WaistEach.MulInt(n-1)))
	}
	var err error
	if p.Edge, err = units.Hypot(s.Length, p.Slant, zero); err != nil {
		a.Fault("length", s.Length.String(), "a length of fewer digits", fault.KindOf(err))
	}
	p.Drop = p.Edge.Plus(s.Length.Neg())
	p.lay(&a)
	if a.Failed() {
		return GoresPlan{}, a.Err(p.Assumed...)
	}
	units.Settle(&p.Edge, &p.Drop)
	return p, nil
}

// across is the width that so many gores take side by side.
func (p GoresPlan) across(k int64) units.Length {
	wide := p.Bottom.Max(p.front())
	if p.Spec.Nap {
		return wide.MulInt(k)
	}
	// Turned top to tail, two gores take one top and one bottom; at each end of the row
	// half of the slant is lost.
	return p.Top.Add(wide).MulInt(k).Add(wide.Sub(p.Top)).DivInt(2)
}

// front is the width at the bottom of the front gore as cut, where it is another.
func (p GoresPlan) front() units.Length {
	if p.Spec.Front.IsZero() {
		return units.Length{}
	}
	return p.Spec.Front.Add(p.Spec.Allowance.Or(units.Length{}).MulInt(2))
}

// lay fills what cloth the gores take.
func (p *GoresPlan) lay(a *fault.Audit) {
	s := p.Spec
	if s.Width.IsZero() || a.Failed() {
		return
	}
	k := int64(0)
	for k < int64(s.Count) && p.across(k+1).Cmp(s.Width) <= 0 {
		k++
	}
	if k == 0 {
		a.Fault("width", s.Width.String(), "at least {0} (one gore)", fault.Range, p.across(1))
		return
	}
	rows := (int64(s.Count) + k - 1) / k
	p.PerRow, p.Rows, p.RowWidth, p.Cloth = int(k), int(rows), p.across(k), p.Cut.MulInt(rows)
}

// Sheet is how the gores are drawn, cut and joined, with the working behind it.
func (p GoresPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "A gored skirt", Assumed: p.Assumed}
	if s.Count == 0 {
		return sheet
	}
	seam := s.Allowance.Or(units.Length{})
	sheet.Answer = []ticket.Line{ticket.Sum("cut each gore at the top", p.Top), ticket.Sum("at the bottom", p.Bottom), ticket.Sum("and long", p.Cut)}
	width := func(label string, each, cut units.Length) ticket.Line {
		return ticket.Sum(label, cut, ticket.Add(each, "finished"), ticket.Add(seam.MulInt(2), "two allowances"))
	}
	sheet.Lines = []ticket.Line{width("top of a gore as cut", p.WaistEach, p.Top)}
	if !p.AtHip.IsZero() {
		sheet.Lines = append(sheet.Lines, width("at the hip", p.HipEach, p.AtHip))
	}
	sheet.Lines = append(sheet.Lines, width("bottom of a gore as cut", p.SweepEach, p.Bottom))
	if !s.Front.IsZero() {
		sheet.Lines = append(sheet.Lines, width("bottom of the front gore", s.Front, p.front()))
	}
	sheet.Lines = append(sheet.Lines,
		ticket.Sum("length as cut", p.Cut, hemmed(s.Hem, ticket.Add(s.Length, "length"), ticket.Add(seam, "allowance at the waist"))...),
		ticket.Sum("each edge stands out at the hem by", p.Slant, ticket.Add(p.SweepEach, "at the hem"), ticket.Less(p.WaistEach, "at the waist"), ticket.Term{Op: ticket.Over, Amount: ticket.Of(2), Name: "edges"}),
		ticket.Line{Label: "slanted seam", Result: ticket.About(p.Edge)},
		ticket.Line{Label: "the hem is curved up at the seams by", Result: ticket.About(p.Drop)})
	if p.Rows > 0 {
		cloth := ticket.Sum("cloth, "+strconv.Itoa(p.PerRow)+" side by side", p.Cloth, ticket.Add(p.Cut, "one row"), ticket.Multiply(p.Rows, "rows"))
		sheet.Lines = append(sheet.Lines, ticket.Sum("width of a row", p.RowWidth), cloth)
		sheet.Answer = append(sheet.Answer, ticket.Sum("cloth", p.Cloth))
	}
	lay := "turn every second gore, top to tail"
	if s.Nap {
		lay = "all of them one way"
	}
	sheet.Steps = []ticket.Step{
		{Do: "Draw each gore on either side of a line along the thread", At: ticket.Long(p.Bottom.DivInt(2)), From: "the line, at the bottom", Note: "half of each width on either side; " + lay},
		{
			Do: "Curve the lower edge up at both seams", At: ticket.About(p.Drop), From: "the straight lower edge",
			Check: ticket.Check{What: "along the slanted seam line, from waist to hem", Want: ticket.Long(s.Length), Mend: "draw the curve again, deeper at the seam that is too long"},
		},
		{
			Do: "Stitch the gores together from the hem up", Together: ticket.RightTogether, At: ticket.Long(seam), From: "the raw edge", Press: "open",
			Check: ticket.Check{What: "the waist seam, once round", Want: ticket.Long(s.Waist), Mend: "share what it is out among all seams: an error of one is there as often as there are gores"},
		},
		{Do: "Hang the skirt for a day, level it and hem it", Note: "edges cut on the slant drop"},
	}
	sheet.Cautions = []ticket.Caution{ticket.CutCare(), ticket.IronCare()}
	sheet.Sources = []source.Cite{
		{For: "gores turned top to tail", ID: "skirt-sums-page", Known: source.Read},
		source.Practise("each gore is an equal part of waist, hip and hem"),
	}
	return sheet
}
