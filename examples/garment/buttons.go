package garment

import (
	"strconv"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// buttons counts the tin over all rows and sets each row with what it has.
func (w *planner) buttons() {
	if len(w.g.Rows) == 0 {
		return
	}
	drafted := make([]buttons.RowPlan, len(w.g.Rows))
	stock := buttons.Stock{Have: w.g.Tin.Have, Months: w.g.Tin.Months}
	for i, r := range w.g.Rows {
		p, _ := r.Row.Plan() // checked before
		drafted[i] = p
		stock.Places = append(stock.Places, buttons.Placement{Name: r.Name, Count: p.Spec.Count, Times: max(1, r.Times)})
	}
	hole := buttons.Hole{Diameter: w.g.Tin.Diameter, Thickness: w.g.Tin.Thickness}
	var err error
	w.p.Hole, err = hole.Plan()
	w.audit.Include("tin", err)
	if w.audit.Failed() {
		return
	}
	w.p.Stock, err = stock.Plan()
	if err != nil {
		w.audit.Include("tin", err)
		return
	}
	if w.p.Stock.Short > 0 && len(w.p.Stock.Gives) == 0 {
		w.audit.Fault("tin.have", strconv.Itoa(w.g.Tin.Have), "at least "+strconv.Itoa(w.p.Stock.Floor)+", one for each place", fault.Range)
		return
	}
	for i, r := range w.g.Rows {
		p := RowPlan{Name: r.Name, Drafted: drafted[i], AsChosen: drafted[i]}
		if w.p.Stock.Short > 0 {
			if n := w.p.Stock.Gives[0].Counts[i]; n != drafted[i].Spec.Count {
				p.AsChosen, err = Recount(drafted[i].Spec, n).Plan()
				w.audit.Include(at("rows", i, "row"), err)
			}
		}
		hole.Setting = r.Setting
		p.Hole, err = hole.Plan()
		w.audit.Include("tin", err)
		lap := buttons.Lap{Lap: r.Lap, Hole: w.p.Hole.Cut, Diameter: w.g.Tin.Diameter, Topstitch: r.Topstitch, Setting: r.Setting}
		p.Lap, err = lap.Plan()
		w.audit.Include("rows["+strconv.Itoa(i)+"]", err)
		lap.Setting = buttons.Horizontal
		if across, err := lap.Plan(); err == nil {
			p.Across = across
		}
		if k := w.g.drop(r.Drop); k >= 0 {
			d := w.p.Drops[k]
			last := p.AsChosen.Spec.Last
			p.BelowThen, p.BelowNow = d.AsSewn.Sub(last), d.AsChosen.Sub(last)
			for _, left := range [...]units.Length{p.BelowThen, p.BelowNow} {
				if left.Sign() < 0 {
					w.audit.Fault(at("rows", i, "row.last"), last.String(), "above the finished hem, at most "+d.AsChosen.String(), fault.Range)
					break
				}
			}
		}
		w.p.Rows = append(w.p.Rows, p)
	}
}

// Recount is a row with another number of buttons between the same two places;
// a single one goes half way between them.
func Recount(r buttons.Row, n int) buttons.Row {
	r.Count, r.Gap = n, units.Length{}
	if n == 1 && !r.Last.IsZero() {
		r.First, r.Last = r.First.Add(r.Last).DivInt(2), units.Length{}
	}
	return r
}
