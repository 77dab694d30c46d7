package stitch

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Bounds of a garment.
const (
	MaxRuns   = 10_000    // the most rows of a Garment
	MaxCount  = 10_000    // the most seams alike in one row
	MaxSpools = 1_000_000 // the most spools that are counted
)

// A Run is some seams of a garment that are alike.
type Run struct {
	Name   string `json:"name,omitzero"`   // what they are: "side seams"
	Count  int    `json:"count,omitzero"`  // how many; default 1
	Thread Thread `json:"thread,omitzero"` // one of them
}

// A Garment is all the seams that are sewn with one thread. Zero means not given.
type Garment struct {
	Seams []Run        `json:"seams,omitzero"` // the seams, from 1 to MaxRuns rows
	Waste units.Ratio  `json:"waste,omitzero"` // for each seam that gives none of its own; default as of a Thread
	Spool units.Length `json:"spool,omitzero"` // how much thread is on a spool; without it no spools are counted
}

// A RunPlan is the thread of some seams that are alike.
type RunPlan struct {
	Name    string       `json:"name,omitzero"`    // what they are
	Count   int          `json:"count,omitzero"`   // how many, as solved
	Assumed []string     `json:"assumed,omitzero"` // Count, if the default filled it; what a seam assumes is in Thread
	Thread  ThreadPlan   `json:"thread,omitzero"`  // one of them
	Total   units.Length `json:"total,omitzero"`   // all of them, waste apart
	Need    units.Length `json:"need,omitzero"`    // all of them, with the waste
}

// A GarmentPlan is the thread of a garment.
type GarmentPlan struct {
	Spec    Garment  `json:"spec,omitzero"`    // as solved, its rows too
	Assumed []string `json:"assumed,omitzero"` // always empty: what a row assumes is in its RunPlan

	Runs  []RunPlan    `json:"runs,omitzero"`  // a row for each row of Seams
	Total units.Length `json:"total,omitzero"` // all the thread, waste apart
	Need  units.Length `json:"need,omitzero"`  // all the thread, with the waste

	Split      bool         `json:"split,omitzero"`      // whether it is known of every seam how its thread divides; if not, the next two are zero
	NeedleNeed units.Length `json:"needleNeed,omitzero"` // needle thread, with the waste
	UnderNeed  units.Length `json:"underNeed,omitzero"`  // bobbin and looper thread, with the waste

	Spools int          `json:"spools,omitzero"` // whole spools to have, rounded up; zero without Spool
	Spare  units.Length `json:"spare,omitzero"`  // what is left on them
}

// Plan works out the thread. The faults are [fault.Faults].
func (g Garment) Plan() (GarmentPlan, error) {
	var a fault.Audit
	if len(g.Seams) == 0 || len(g.Seams) > MaxRuns {
		a.Count("seams", len(g.Seams), 1, MaxRuns)
		return GarmentPlan{}, a.Err()
	}
	p := GarmentPlan{Split: true, Runs: make([]RunPlan, 0, len(g.Seams))}
	solved := make([]Run, 0, len(g.Seams))
	for i, r := range g.Seams {
		q, err := r.plan(g.Waste)
		if err != nil {
			a.Include("seams["+ticket.Of(i).String()+"]", err)
			continue
		}
		solved = append(solved, Run{Name: r.Name, Count: q.Count, Thread: q.Thread.Spec})
		p.Runs = append(p.Runs, q)
		n := int64(q.Count)
		p.Total, p.Need = p.Total.Add(q.Total), p.Need.Add(q.Need)
		p.NeedleNeed, p.UnderNeed = p.NeedleNeed.Add(q.Thread.NeedleNeed.MulInt(n)), p.UnderNeed.Add(q.Thread.UnderNeed.MulInt(n))
		p.Split = p.Split && q.Thread.Split
	}
	if g.Waste.Sign() < 0 || all.Less(g.Waste) {
		a.Fault("waste", g.Waste.String(), "0 to 1, as 15 %", fault.Range)
	}
	a.NotNegative("spool", g.Spool)
	if !a.Failed() && g.Spool.Sign() > 0 {
		n, ok := p.Need.Div(g.Spool).Int(units.Up)
		if !ok || n > MaxSpools {
			a.Fault("spool", g.Spool.String(), "enough that "+ticket.Of(MaxSpools).String()+" spools do", fault.Range)
		} else {
			p.Spools = int(n)
			p.Spare = g.Spool.MulInt(n).Sub(p.Need)
		}
	}
	if a.Failed() {
		return GarmentPlan{}, a.Err()
	}
	if !p.Split {
		p.NeedleNeed, p.UnderNeed = units.Length{}, units.Length{}
	}
	g.Seams = solved
	p.Spec = g
	return p, nil
}

// plan works out one row; waste is that of the garment.
func (r Run) plan(waste units.Ratio) (RunPlan, error) {
	var a fault.Audit
	a.Text("name", r.Name)
	q := RunPlan{Name: r.Name, Count: r.Count}
	if r.Count == 0 {
		q.Count, q.Assumed = 1, []string{"count"}
	}
	a.Count("count", q.Count, 1, MaxCount)
	t := r.Thread
	if t.Waste.IsZero() && waste.Sign() > 0 && !all.Less(waste) {
		t.Waste = waste
	}
	p, err := t.Plan()
	a.Include("thread", err)
	if a.Failed() {
		return RunPlan{}, a.Err()
	}
	q.Thread, q.Total, q.Need = p, p.Total.MulInt(int64(q.Count)), p.Need.MulInt(int64(q.Count))
	return q, nil
}

// Sheet is the working, a line for each row and the sum, and the spools.
func (p GarmentPlan) Sheet() ticket.Sheet {
	sh := ticket.Sheet{Title: "Thread for a garment", Assumed: p.Assumed}
	if len(p.Runs) == 0 {
		return sh // the plan of nothing has nothing to say
	}
	terms := make([]ticket.Term, 0, 3*len(p.Runs)+6) // one piece of memory for all the lines
	sh.Lines = make([]ticket.Line, 0, len(p.Runs)+3)
	line := func(label string, result ticket.Amount, add ...ticket.Term) {
		from := len(terms)
		terms = append(terms, add...)
		sh.Lines = append(sh.Lines, ticket.Line{Label: label, Result: result, Terms: terms[from:len(terms):len(terms)]})
	}
	for _, r := range p.Runs {
		name := r.Name
		if name == "" {
			name = "seams"
		}
		line(name, ticket.Long(r.Need), term(ticket.Plus, ticket.Long(r.Thread.Need), "each, with the waste"), term(ticket.By, ticket.Of(r.Count), ""))
	}
	from := len(terms)
	for _, r := range p.Runs {
		terms = append(terms, term(ticket.Plus, ticket.Long(r.Need), r.Name))
	}
	sh.Lines = append(sh.Lines, ticket.Line{Label: "all the thread", Result: ticket.Long(p.Need), Terms: terms[from:len(terms):len(terms)]})
	if p.Split {
		line("of which under thread", ticket.Long(p.UnderNeed), term(ticket.Plus, ticket.Long(p.Need), "all"), term(ticket.Minus, ticket.Long(p.NeedleNeed), "needle thread"))
	}
	buy := ticket.Step{Do: "Have the thread in hand before the first seam, all of one dye lot", At: ticket.Long(p.Need), From: "one end of the thread to the other"}
	if p.Spools > 0 {
		line("left on the spools", ticket.Long(p.Spare), term(ticket.Plus, ticket.Long(p.Spec.Spool), "on a spool"),
			term(ticket.By, ticket.Of(p.Spools), "spools"), term(ticket.Minus, ticket.Long(p.Need), "needed"))
		buy.Check = ticket.Check{What: "whole spools", Want: ticket.Of(p.Spools), Mend: "buy the spools that are short now: a later dye lot may differ"}
	}
	sh.Steps = []ticket.Step{buy}
	sh.Cautions = []ticket.Caution{ticket.CutCare()}
	p.cites(&sh)
	return sh
}

// cites are those of the seams, each once.
func (p GarmentPlan) cites(sh *ticket.Sheet) {
	seen := map[Type]bool{}
	sh.Sources = make([]source.Cite, 0, 8)
	for _, r := range p.Runs {
		t := r.Thread.Spec
		if seen[t.Stitch] || t.By != ByRatio {
			continue
		}
		seen[t.Stitch] = true
		for row := range t.Stitch.Ratios() {
			sh.Sources = append(sh.Sources, row.Cite())
		}
	}
	for _, w := range wasteRows {
		sh.Sources = append(sh.Sources, source.Cite{For: "waste", ID: w.Source, Known: w.Known})
	}
}
