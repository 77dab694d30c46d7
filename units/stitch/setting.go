package stitch

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Setting is how the machine is set for a job on a cloth. One of job and cloth is
// needed. The stitch is that of the job on the cloth where a row of the table has
// both, else that of the job on any cloth. The job regular, and a cloth without a job,
// mean the seams of the cloth. The needle is that of the cloth. What no table has is a
// fault, never a guess.
type Setting struct {
	// Job is what the row of stitching is for. May be omitted where cloth is given.
	Job Job `json:"job,omitzero"`
	// Cloth is what it is sewn on. May be omitted where job is given.
	Cloth Cloth `json:"cloth,omitzero"`
	// Needle is the metric number of the needle, one of those in the table of needles.
	// May be omitted; the default is that of the cloth, none without a cloth.
	Needle int `json:"needle,omitzero"`
}

// A SettingPlan is a setting looked up. Several sources may print a density; the
// first of their table is here, all are on the sheet.
type SettingPlan struct {
	Spec    Setting  `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // needle, if the table filled it

	Shank units.Length `json:"shank,omitzero"` // diameter of the needle's shank; zero without a needle
	Size  int          `json:"size,omitzero"`  // the other number of the needle's pair, as 12 in 80/12; zero without a needle

	LeastPerInch units.Ratio  `json:"leastPerInch,omitzero"` // the fewest stitches to the inch, as printed
	MostPerInch  units.Ratio  `json:"mostPerInch,omitzero"`  // the most stitches to the inch, as printed
	ShortPrinted units.Length `json:"shortPrinted,omitzero"` // the shortest stitch as the same row prints it; zero where it does not
	LongPrinted  units.Length `json:"longPrinted,omitzero"`  // the longest stitch as the same row prints it; zero where it does not
	Short        units.Length `json:"short,omitzero"`        // the shortest stitch: an inch over MostPerInch, exactly
	Long         units.Length `json:"long,omitzero"`         // the longest stitch: an inch over LeastPerInch, exactly
}

// rows yields those of the table that answer the setting, the default first.
func (s Setting) rows(yield func(DensityRow) bool) {
	j, c := s.Job, s.Cloth.weight()
	if j == Regular && c != 0 {
		j = 0 // the seams of the cloth
	}
	if !slices.ContainsFunc(densityRows, func(r DensityRow) bool { return r.Job == j && r.Cloth == c }) {
		j, c = s.Job, 0
	}
	densityRows.Where(func(r DensityRow) bool { return r.Job == j && r.Cloth == c })(yield)
}

// Plan looks the setting up. The faults are [fault.Faults].
func (s Setting) Plan() (SettingPlan, error) {
	var a fault.Audit
	switch {
	case s.Job != 0 && !jobNames.Valid(s.Job):
		a.Fault("job", s.Job.String(), jobNames.List(), fault.Unknown)
	case s.Job == 0 && s.Cloth == 0:
		a.Fault("job", "", "a job or a cloth", fault.Missing)
	}
	if s.Cloth != 0 && !clothNames.Valid(s.Cloth) {
		a.Fault("cloth", s.Cloth.String(), clothNames.List(), fault.Unknown)
	}
	needle, found := s.needle()
	if !found && s.Needle != 0 {
		a.Fault("needle", ticket.Of(s.Needle).String(), "one of 60, 70, 75, 80, 90, 100, 110, 120", fault.Unknown)
	}
	if a.Failed() {
		return SettingPlan{}, a.Err()
	}
	p := SettingPlan{Shank: needle.Shank(), Size: needle.Size}
	if s.Needle == 0 && found {
		s.Needle, p.Assumed = needle.Metric, []string{"needle"}
	}
	p.Spec = s
	for r := range s.rows { // the first is the default
		p.LeastPerInch, p.MostPerInch, p.ShortPrinted, p.LongPrinted = r.LeastPerInch, r.MostPerInch, r.ShortLength, r.LongLength
		p.Short, p.Long = inch(r.MostPerInch), inch(r.LeastPerInch)
		break
	}
	return p, nil
}

// needle is the row of the needle given, else of the cloth.
func (s Setting) needle() (NeedleRow, bool) {
	if s.Needle == 0 {
		return s.Cloth.needle()
	}
	return needleRows.First(func(r NeedleRow) bool { return r.Metric == s.Needle })
}

// Sheet is the setting as work: the needle, the stitch, the trial.
func (p SettingPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sh := ticket.Sheet{Title: "Needle and stitch", Assumed: p.Assumed}
	if p.Long.Sign() <= 0 {
		return sh // the plan of nothing has nothing to say
	}
	if s.Needle != 0 {
		sh.Answer = append(sh.Answer, ticket.Line{Label: "needle", Result: ticket.Of(s.Needle)})
	}
	sh.Answer = append(sh.Answer, ticket.Line{Label: "stitch from", Result: ticket.Machine(p.Short)}, ticket.Line{Label: "to", Result: ticket.Machine(p.Long)})
	sh.Lines = append(sh.Lines, p.perInch("shortest stitch", p.MostPerInch, p.Short))
	if p.Short == p.Long {
		sh.Answer = append(sh.Answer[:len(sh.Answer)-2], ticket.Line{Label: "stitch", Result: ticket.Machine(p.Long)})
		sh.Lines[0].Label = "stitch"
	} else {
		sh.Lines = append(sh.Lines, p.perInch("longest stitch", p.LeastPerInch, p.Long))
	}
	switch {
	case p.LongPrinted.IsZero():
	case p.ShortPrinted == p.LongPrinted:
		sh.Lines = append(sh.Lines, ticket.Line{Label: "stitch as printed beside it", Result: ticket.Machine(p.LongPrinted)})
	default:
		sh.Lines = append(sh.Lines,
			ticket.Line{Label: "shortest stitch as printed beside it", Result: ticket.Machine(p.ShortPrinted)},
			ticket.Line{Label: "longest stitch as printed beside it", Result: ticket.Machine(p.LongPrinted)})
	}
	if s.Needle != 0 {
		sh.Lines = append(sh.Lines, ticket.Line{
			Label: "shank of the needle", Result: ticket.Machine(p.Shank),
			Terms: []ticket.Term{term(ticket.Plus, ticket.Machine(mm(1, 100)), "a hundredth"), term(ticket.By, ticket.Of(s.Needle), "the needle's number")},
		})
		sh.Steps = append(sh.Steps, ticket.Step{
			Do: "Fit a new needle", Check: ticket.Check{What: "the number on its shank", Want: ticket.Of(s.Needle), Mend: "change it: a needle too thick marks the cloth, one too thin breaks"},
		})
	}
	trial := ticket.Step{
		Do: "Set the stitch and sew ten on a scrap of the same plies", At: ticket.Long(p.Long.MulInt(10)), From: "the first needle hole to the last of ten stitches",
	}
	if p.Short != p.Long {
		trial.Note = "that is the longest stitch of the range: shorten it where the cloth puckers less or the seam must hold more"
	}
	sh.Steps = append(sh.Steps, trial)
	sh.Cautions = []ticket.Caution{
		{Text: "A bent or blunt needle breaks: stop, take the foot off the treadle or the plug out, and change it.", Refer: "the maker's instructions decide"},
		ticket.CutCare(),
	}
	p.cites(&sh)
	return sh
}

// perInch is a line that works a stitch out.
func (p SettingPlan) perInch(label string, per units.Ratio, stitch units.Length) ticket.Line {
	return ticket.Line{Label: label, Result: ticket.Machine(stitch), Terms: []ticket.Term{
		term(ticket.Plus, ticket.Long(units.Inch.Of(1)), "one inch"), term(ticket.Over, ticket.Times(per), "stitches"),
	}}
}

func (p SettingPlan) cites(sh *ticket.Sheet) {
	s := p.Spec
	for r := range s.rows {
		if len(sh.Sources) == 0 && (r.Cloth == Sheer || r.Cloth == BottomWeight) {
			sh.Sources = append(sh.Sources, source.Practise("which cloths count as fine and as heavy"))
		}
		sh.Sources = append(sh.Sources, r.Cite())
	}
	if slices.Contains(p.Assumed, "needle") {
		r, _ := s.Cloth.needle()
		sh.Sources = append(sh.Sources, source.Cite{For: "size of the needle", ID: r.Source, Known: r.Known})
	}
	if s.Needle != 0 {
		sh.Sources = append(sh.Sources, source.Practise("what the number of a needle means"))
	}
}
