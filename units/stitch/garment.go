package stitch

import (
	"cmp"
	"slices"

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
	// Name is what they are, as in side seams. May be omitted.
	Name string `json:"name,omitzero"`
	// Count is how many they are. May be omitted; the default is 1.
	Count int `json:"count,omitzero"`
	// Thread is one of them.
	Thread Thread `json:"thread,omitzero"`
}

// A Garment is all the seams that are sewn with one thread.
type Garment struct {
	// Seams are the seams, from 1 to 10,000 rows.
	Seams []Run `json:"seams,omitzero"`
	// Waste is that of each seam that gives none of its own. May be omitted; the default
	// is that of a thread.
	Waste units.Ratio `json:"waste,omitzero"`
	// Spool is how much thread is on a spool. May be omitted; no spools are counted then.
	Spool units.Length `json:"spool,omitzero"`
}

// A RunPlan is the thread of some seams that are alike.
type RunPlan struct {
	Name   string       `json:"name,omitzero"`   // what they are
	Count  int          `json:"count,omitzero"`  // how many, as solved
	Thread ThreadPlan   `json:"thread,omitzero"` // one of them
	Total  units.Length `json:"total,omitzero"`  // all of them, waste apart
	Need   units.Length `json:"need,omitzero"`   // all of them, with the waste
}

// A GarmentPlan is the thread of a garment.
type GarmentPlan struct {
	Spec    Garment  `json:"spec,omitzero"`    // as solved, its rows too
	Assumed []string `json:"assumed,omitzero"` // the fields of a row filled with a default, once for all rows

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
	p := GarmentPlan{Split: true}
	var solved []Run
	for i, r := range g.Seams {
		q, err := r.plan(g.Waste)
		if err != nil {
			a.Include("seams["+ticket.Of(i).String()+"]", err)
			continue
		}
		for _, key := range q.assumed(r) {
			if !slices.Contains(p.Assumed, key) {
				p.Assumed = append(p.Assumed, key)
			}
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
	q := RunPlan{Name: r.Name, Count: cmp.Or(r.Count, 1)}
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

// assumed are the keys of what a row assumed.
func (q RunPlan) assumed(r Run) (keys []string) {
	if r.Count == 0 {
		keys = append(keys, "seams.count")
	}
	for _, key := range q.Thread.Assumed {
		keys = append(keys, "seams.thread."+key)
	}
	return keys
}

// Sheet is the working, a line for each row and the sum, and the spools.
func (p GarmentPlan) Sheet() ticket.Sheet {
	sh := ticket.Sheet{Title: "Thread for a garment", Assumed: p.Assumed}
	if len(p.Runs) == 0 {
		return sh // the plan of nothing has nothing to say
	}
	sh.Answer = []ticket.Line{{Label: "thread to have", Result: ticket.Long(p.Need)}}
	line := func(label string, result units.Length, terms ...ticket.Term) {
		sh.Lines = append(sh.Lines, ticket.Sum(label, result, terms...))
	}
	var runs []ticket.Term
	for _, r := range p.Runs {
		line(cmp.Or(r.Name, "seams"), r.Need, ticket.Add(r.Thread.Need, "each, with the waste"), ticket.Multiply(r.Count, ""))
		runs = append(runs, ticket.Add(r.Need, r.Name))
	}
	line("all the thread", p.Need, runs...)
	if p.Split {
		line("of which under thread", p.UnderNeed, ticket.Add(p.Need, "all"), ticket.Less(p.NeedleNeed, "needle thread"))
	}
	buy := ticket.Step{Do: "Have the thread in hand before the first seam, all of one dye lot", At: ticket.Long(p.Need), From: "one end of the thread to the other"}
	if p.Spools > 0 {
		line("left on the spools", p.Spare, ticket.Add(p.Spec.Spool, "on a spool"), ticket.Multiply(p.Spools, "spools"), ticket.Less(p.Need, "needed"))
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
	for _, r := range p.Runs {
		t := r.Thread.Spec
		if seen[t.Stitch] || t.By != ByRatio {
			continue
		}
		seen[t.Stitch] = true
		for row := range t.Stitch.ratios() {
			sh.Sources = append(sh.Sources, row.Cite())
		}
	}
	for _, w := range wasteRows {
		sh.Sources = append(sh.Sources, source.Cite{For: "waste", ID: w.Source, Known: w.Known})
	}
}
