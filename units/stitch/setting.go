package stitch

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// A Setting is how the machine is set for a job on a cloth. Zero means not given;
// one of Job and Cloth is needed. The stitch is looked up by the job, and by the
// cloth where the job is not given or is [Regular] and the cloth has a row; the
// needle by the cloth. What no table has is a fault, never a guess.
type Setting struct {
	Job    Job   // what the row is for
	Cloth  Cloth // what it is sewn on
	Needle int   // metric number of the needle, one of those in [Needles]; default that of the cloth; none without one
}

// A SettingPlan is a setting looked up. It is comparable. Several sources may
// print a density; the first of their table is here, all are on the sheet.
type SettingPlan struct {
	Spec    Setting       // as solved
	Assumed ticket.Fields // Needle, if the table filled it

	Shank units.Length // diameter of the needle's shank; zero without a needle
	Size  int          // the other number of the needle's pair, as 12 in 80/12; zero without a needle

	LeastPerInch, MostPerInch units.Ratio  // stitches to the inch, as printed
	ShortPrinted, LongPrinted units.Length // stitch length as the same row prints it; zero where it does not
	Short, Long               units.Length // stitch length that the printed stitches to the inch are, exactly
}

// Solve fills the needle of the cloth. It fails where [Setting.Plan] does, and
// then returns s as it is.
func (s Setting) Solve() (Setting, error) {
	p, err := s.Plan()
	if err != nil {
		return s, err
	}
	return p.Spec, nil
}

// byCloth reports whether the stitch is looked up by the cloth.
func (s Setting) byCloth() bool { return s.Job == NoJob || s.Job == Regular && s.Cloth != NoCloth }

// reads reports whether a row of the table answers the setting.
func (s Setting) reads(r DensityRow) bool {
	if s.byCloth() {
		return r.Cloth == s.Cloth.weight()
	}
	return r.Job == s.Job
}

// Plan looks the setting up. The faults are [ticket.Faults].
func (s Setting) Plan() (SettingPlan, error) {
	var a ticket.Audit
	switch {
	case int(s.Job) >= len(jobNames):
		a.Fault("Job", s.Job.String(), ticket.NameList(jobNames[:]), ticket.ErrUnknown)
	case s.Job == NoJob && s.Cloth == NoCloth:
		a.Fault("Job", "", "a job or a cloth", ticket.ErrMissing)
	}
	if int(s.Cloth) >= len(clothNames) {
		a.Fault("Cloth", s.Cloth.String(), ticket.NameList(clothNames[:]), ticket.ErrUnknown)
	}
	needle, found := s.needle()
	switch {
	case found:
	case s.Needle != 0:
		a.Fault("Needle", ticket.Of(s.Needle).String(), "one of 60, 70, 75, 80, 90, 100, 110, 120", ticket.ErrUnknown)
	case s.Cloth != NoCloth && int(s.Cloth) < len(clothNames):
		a.Fault("Needle", "", "a size: no row of the table gives one for "+s.Cloth.String(), ticket.ErrMissing)
	}
	if a.Failed() {
		return SettingPlan{}, a.Err()
	}
	p := SettingPlan{Shank: needle.Shank(), Size: needle.Size}
	if s.Needle == 0 && found {
		s.Needle, p.Assumed = needle.Metric, "Needle"
	}
	p.Spec = s
	for _, r := range densityRows {
		if s.reads(r) {
			p.LeastPerInch, p.MostPerInch, p.ShortPrinted, p.LongPrinted = r.LeastPerInch, r.MostPerInch, r.ShortLength, r.LongLength
			p.Short, p.Long = inch(r.MostPerInch), inch(r.LeastPerInch)
			break // the first is the default
		}
	}
	return p, nil
}

// needle is the row of the needle given, else of the cloth.
func (s Setting) needle() (NeedleRow, bool) {
	if s.Needle == 0 {
		return s.Cloth.Needle()
	}
	for _, r := range needleRows {
		if r.Metric == s.Needle {
			return r, true
		}
	}
	return NeedleRow{}, false
}

// Sheet is the setting as work: the needle, the stitch, the trial.
func (p SettingPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sh := ticket.Sheet{Title: "Needle and stitch", Assumed: p.Assumed}
	if p.Long.Sign() <= 0 {
		return sh // the plan of nothing has nothing to say
	}
	one := ticket.Long(units.Inch.Of(1))
	sh.Lines = append(make([]ticket.Line, 0, 5), ticket.Line{
		Label: "shortest stitch", Result: ticket.Long(p.Short),
		Terms: []ticket.Term{term(ticket.Plus, one, "one inch"), term(ticket.Over, ticket.Times(p.MostPerInch), "stitches")},
	}, ticket.Line{
		Label: "longest stitch", Result: ticket.Long(p.Long),
		Terms: []ticket.Term{term(ticket.Plus, one, "one inch"), term(ticket.Over, ticket.Times(p.LeastPerInch), "stitches")},
	})
	if !p.LongPrinted.IsZero() {
		sh.Lines = append(sh.Lines,
			ticket.Line{Label: "shortest stitch as printed beside it", Result: ticket.Long(p.ShortPrinted)},
			ticket.Line{Label: "longest stitch as printed beside it", Result: ticket.Long(p.LongPrinted)})
	}
	sh.Steps = make([]ticket.Step, 0, 2)
	if s.Needle != 0 {
		sh.Lines = append(sh.Lines, ticket.Line{
			Label: "shank of the needle", Result: ticket.Long(p.Shank),
			Terms: []ticket.Term{term(ticket.Plus, ticket.Long(mm(1, 100)), "a hundredth"), term(ticket.By, ticket.Of(s.Needle), "the needle's number")},
		})
		sh.Steps = append(sh.Steps, ticket.Step{
			Do: "Fit a new needle", Check: ticket.Check{What: "the number on its shank", Want: ticket.Of(s.Needle), Mend: "change it: a needle too thick marks the cloth, one too thin breaks"},
		})
	}
	sh.Steps = append(sh.Steps, ticket.Step{
		Do: "Set the stitch and sew ten on a scrap of the same plies", At: ticket.Long(p.Long.Scale(units.RatioOf(10, 1))), From: "the first needle hole to the last of ten stitches",
		Note: "that is the longest stitch of the range: shorten it where the cloth puckers less or the seam must hold more",
	})
	sh.Cautions = []ticket.Caution{
		{Text: "A bent or blunt needle breaks: stop, take the foot off the treadle or the plug out, and change it.", Refer: "the maker's instructions decide"},
		ticket.CutCare(),
	}
	p.cites(&sh)
	return sh
}

func (p SettingPlan) cites(sh *ticket.Sheet) {
	s := p.Spec
	sh.Sources = make([]ticket.Cite, 0, 10)
	if w := s.Cloth.weight(); s.byCloth() && (w == Sheer || w == BottomWeight) {
		sh.Sources = append(sh.Sources, ticket.Practise("which cloths count as fine and as heavy"))
	}
	for _, r := range densityRows {
		if s.reads(r) {
			sh.Sources = append(sh.Sources, r.Cite())
		}
	}
	if p.Assumed.Has("Needle") {
		r, _ := s.Cloth.Needle()
		sh.Sources = append(sh.Sources, ticket.Cite{For: "size of the needle", ID: r.Source, Known: r.Known})
	}
	if s.Needle != 0 {
		sh.Sources = append(sh.Sources, ticket.Practise("what the number of a needle means"))
	}
}
