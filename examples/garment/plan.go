package garment

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"example.com/clothyard/buttons"
	"example.com/clothyard/gather"
	"example.com/clothyard/hem"
	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage"
	"example.com/clothyard/yardage/layout"
)

// A Plan is everything that a garment comes to, twice where the choice matters:
// as sewn with nothing trimmed, and as chosen.
type Plan struct {
	Spec     Garment
	AsSewn   seam.AssemblyPlan // the seams as given, nothing trimmed first
	Remedies []seam.Remedy     // what would mend the edges, the best first
	Chosen   []seam.Remedy     // the remedies taken
	AsChosen seam.AssemblyPlan
	Edges    []EdgePlan
	Hems     []HemPlan
	Drops    []DropPlan
	Frills   []FrillPlan
	Cuffs    []CuffPlan
	Stock    buttons.StockPlan
	Hole     buttons.HolePlan
	Rows     []RowPlan
	Cloth    ClothPlan
	Cuts     []Cut
}

// An EdgePlan is an edge, both ways.
type EdgePlan struct {
	Name     string
	Drafted  units.Near
	AsSewn   units.Near
	AsChosen units.Near
	AtHem    units.Near // AsSewn along the hem where it comes out longer than drafted; zero if it does not
}

// A HemPlan is a hem, both ways: as the allowance was drafted, and cut to what
// the hem takes.
type HemPlan struct {
	Name     string
	AsSewn   hem.Plan
	AsChosen hem.Plan
}

// A DropPlan is a length from a seam line to the hem, both ways.
type DropPlan struct {
	Name     string
	Drafted  units.Length
	AsSewn   units.Length
	AsChosen units.Length
}

// A FrillPlan is a frill on its edge as chosen.
type FrillPlan struct {
	Name   string
	Ruffle gather.RufflePlan
	Double units.Length // each piece of the strip for a fullness of exactly 2
	Spread units.Length // the edge if its piece were spread to follow its partner instead; zero where there is nothing to follow
	Thin   units.Ratio  // the fullness on it then
}

// A CuffPlan is a cuff with the sleeve as drafted, as sewn and as chosen.
type CuffPlan struct {
	Name     string
	Drafted  gather.CuffPlan
	AsSewn   gather.CuffPlan
	AsChosen gather.CuffPlan
}

// A RowPlan is a row of buttons as drafted and with the buttons there are.
type RowPlan struct {
	Name      string
	Drafted   buttons.RowPlan
	AsChosen  buttons.RowPlan
	Hole      buttons.HolePlan // in the direction chosen, measured from the button
	Lap       buttons.LapPlan  // in the direction chosen
	Across    buttons.LapPlan  // if the holes were horizontal
	BelowThen units.Length     // from the last button to the finished hem as sewn; zero without a drop
	BelowNow  units.Length     // the same as chosen
}

// A ClothPlan is the cloth set against the pieces.
type ClothPlan struct {
	Width    yardage.WidthPlan // by the printed chart and by area
	Pieces   units.Area        // of all the rectangles
	Own      layout.Plan       // a lay of your own, proven; no placements if none was given or it does not hold
	OwnFault string            // why a lay of your own does not hold, a fault a line; empty if it does
	Lay      layout.Plan       // the lay of rectangles found
	Nest     layout.Plan       // the lay of outlines found; no placements where no piece has one
	Need     units.Length      // the length of the lay that is used: your own, else the one found
	Remnant  yardage.RemnantPlan
	Purchase yardage.PurchasePlan
}

// A Cut is an allowance to be cut otherwise than the tissue has it.
type Cut struct {
	Seam   string
	Where  string
	Tissue units.Length
	Cut    units.Length
}

// planner carries what is found on the way.
type planner struct {
	g     Garment
	p     Plan
	net   []units.Length // of each edge before the seams count
	audit fault.Audit
}

// Plan works out the garment. The faults are [fault.Faults], each with the path
// of its field. When ctx is done while a lay is looked for, the lay found so far
// is used.
func (g Garment) Plan(ctx context.Context) (Plan, error) {
	w := &planner{g: g, p: Plan{Spec: g}}
	if w.check(); w.audit.Failed() {
		return Plan{}, inOrder(w.audit.Err())
	}
	if w.hems(); w.audit.Failed() {
		return Plan{}, inOrder(w.audit.Err())
	}
	if w.nets(); w.audit.Failed() {
		return Plan{}, inOrder(w.audit.Err())
	}
	if err := w.assemble(); err != nil {
		return Plan{}, err
	}
	w.edges()
	w.plies()
	w.drops()
	w.frills()
	w.cuffs()
	w.buttons()
	w.cuts()
	if w.audit.Failed() {
		return Plan{}, inOrder(w.audit.Err())
	}
	if err := w.cloth(ctx); err != nil {
		return Plan{}, err
	}
	return w.p, nil
}

// inOrder sorts faults by the fields of the garment, and within a list by place.
func inOrder(err error) error {
	var faults fault.Faults
	if !errors.As(err, &faults) {
		return err
	}
	garment := reflect.TypeFor[Garment]()
	place := func(f *fault.Fault) (field, index int) {
		name := f.Path
		if i := strings.IndexAny(name, ".["); i >= 0 {
			rest := name[i+1:]
			if k := strings.IndexByte(rest, ']'); name[i] == '[' && k > 0 {
				index, _ = strconv.Atoi(rest[:k])
			}
			name = name[:i]
		}
		if sf, ok := garment.FieldByName(name); ok {
			field = sf.Index[0]
		}
		return field, index
	}
	slices.SortStableFunc(faults, func(a, b *fault.Fault) int {
		fa, ia := place(a)
		fb, ib := place(b)
		return cmp.Or(cmp.Compare(fa, fb), cmp.Compare(ia, ib))
	})
	return faults
}

func at(list string, i int, field string) string {
	return list + "[" + strconv.Itoa(i) + "]." + field
}

// check looks at counts, names and references before any sum.
func (w *planner) check() {
	g, a := w.g, &w.audit
	a.Text("Title", g.Title)
	a.Text("Scene", g.Scene)
	a.Text("Cloth.Name", g.Cloth.Name)
	if g.Cloth.Work != 0 {
		a.Count("Cloth.Work", g.Cloth.Work, 1, maxWork)
	}
	for _, n := range [...]struct {
		list string
		n    int
	}{{"Seams", len(g.Seams)}, {"Edges", len(g.Edges)}, {"Pairs", len(g.Pairs)}, {"Hems", len(g.Hems)}, {"Drops", len(g.Drops)},
		{"Frills", len(g.Frills)}, {"Cuffs", len(g.Cuffs)}, {"Rows", len(g.Rows)}, {"Pieces", len(g.Pieces)}, {"Kit", len(g.Kit)}, {"Care", len(g.Care)}} {
		a.Count(n.list, n.n, 0, MaxParts)
	}
	a.Count("Work", len(g.Work), 0, MaxTasks)
	a.Count("Lay", len(g.Lay), 0, layout.MaxPieces)
	for i, t := range g.Work {
		a.Count(at("Work", i, "Before"), len(t.Before), 0, MaxParts)
		a.Count(at("Work", i, "Seams"), len(t.Seams), 0, MaxParts)
		a.Count(at("Work", i, "After"), len(t.After), 0, MaxParts)
		a.Count(at("Work", i, "Check"), len(t.Check), 0, MaxParts)
	}
	for i, d := range g.Drops {
		a.Count(at("Drops", i, "Seams"), len(d.Seams), 0, MaxParts)
	}
	if a.Failed() {
		return
	}
	if len(g.Edges) == 0 {
		a.Fault("Edges", "", "at least one edge", fault.Missing)
	}
	for i, s := range g.Seams {
		if s.Times != 0 {
			a.Count(at("Seams", i, "Times"), s.Times, 1, MaxParts)
		}
		a.Text(at("Seams", i, "Where"), s.Where)
		a.Text(at("Seams", i, "Press"), s.Press)
		_, err := s.Spec.Plan()
		a.Include(at("Seams", i, "Spec"), err)
	}
	for i, h := range g.Hems {
		_, err := h.Spec.Plan()
		a.Include(at("Hems", i, "Spec"), err)
	}
	for i, r := range g.Rows {
		_, err := r.Row.Plan()
		a.Include(at("Rows", i, "Row"), err)
	}
	w.texts()
	names(a, "Seams", len(g.Seams), func(i int) string { return g.Seams[i].Name })
	names(a, "Edges", len(g.Edges), func(i int) string { return g.Edges[i].Name })
	names(a, "Hems", len(g.Hems), func(i int) string { return g.Hems[i].Name })
	names(a, "Drops", len(g.Drops), func(i int) string { return g.Drops[i].Name })
	names(a, "Frills", len(g.Frills), func(i int) string { return g.Frills[i].Name })
	names(a, "Cuffs", len(g.Cuffs), func(i int) string { return g.Cuffs[i].Name })
	names(a, "Rows", len(g.Rows), func(i int) string { return g.Rows[i].Name })
	names(a, "Pieces", len(g.Pieces), func(i int) string { return g.Pieces[i].Name })
	w.references()
}

// maxWork keeps the search for a lay within a minute or so.
const maxWork = 10_000

func names(a *fault.Audit, list string, n int, name func(int) string) {
	seen := map[string]bool{}
	for i := range n {
		switch s := name(i); {
		case s == "":
			a.Fault(at(list, i, "Name"), "", "a name", fault.Missing)
		case seen[s]:
			a.Fault(at(list, i, "Name"), strconv.Quote(s), "a name that no other has", fault.Twice)
		default:
			a.Text(at(list, i, "Name"), s)
			seen[s] = true
		}
	}
}

func (w *planner) refer(path, name, what string, optional bool, found func(string) int) {
	switch {
	case name == "" && optional:
	case name == "":
		w.audit.Fault(path, "", "the name of "+what, fault.Missing)
	case found(name) < 0:
		w.audit.Fault(path, quote(name), "the name of "+what, fault.Unknown)
	}
}

func (w *planner) references() {
	g := w.g
	for i, e := range g.Edges {
		w.refer(at("Edges", i, "Of"), e.Of, "an edge", true, g.edge)
		if e.Of == e.Name && e.Of != "" || e.Of != "" && g.edge(e.Of) >= 0 && g.Edges[g.edge(e.Of)].Of != "" {
			w.audit.Fault(at("Edges", i, "Of"), strconv.Quote(e.Of), "an edge that is given by its own length", fault.Conflict)
		}
		if e.Of != "" && !e.Net.IsZero() {
			w.audit.Fault(at("Edges", i, "Net"), e.Net.String(), "none where Of is given", fault.Unused)
		}
		if e.Of != "" && len(e.Crossings) > 0 {
			w.audit.Fault(at("Edges", i, "Crossings"), fmt.Sprint(len(e.Crossings)), "none where Of is given, which has them", fault.Unused)
		}
		if e.Of == "" && !e.Depth.IsZero() {
			w.audit.Fault(at("Edges", i, "Depth"), e.Depth.String(), "none without Of", fault.Unused)
		}
		w.refer(at("Edges", i, "Hem"), e.Hem, "a hem", true, g.hem)
		w.refer(at("Edges", i, "Slit"), e.Slit, "a slit hem", true, g.hem)
		if k := g.hem(e.Slit); k >= 0 && g.Hems[k].Spec.Kind != hem.Slit {
			w.audit.Fault(at("Edges", i, "Slit"), strconv.Quote(e.Slit), "a hem of the kind slit", fault.Conflict)
		}
		if k := g.hem(e.Hem); k >= 0 && g.Hems[k].Spec.Kind == hem.Slit {
			w.audit.Fault(at("Edges", i, "Hem"), strconv.Quote(e.Hem), "a hem that is not a slit", fault.Conflict)
		}
		w.audit.Text(at("Edges", i, "Note"), e.Note)
	}
	for i, d := range g.Drops {
		w.audit.Need(at("Drops", i, "Drafted"), d.Drafted)
		for k, s := range d.Seams {
			w.refer(at("Drops", i, "Seams")+"["+strconv.Itoa(k)+"]", s, "a seam", false, g.seam)
		}
		w.checkPlies(at("Drops", i, ""), d.Seams, d.Upper, d.Under, func(string) bool { return false })
		w.refer(at("Drops", i, "Hem"), d.Hem, "a hem", true, g.hem)
	}
	for i, f := range g.Frills {
		w.refer(at("Frills", i, "Edge"), f.Edge, "an edge", false, g.edge)
		if !f.Spec.Strip.Edge.IsZero() {
			w.audit.Fault(at("Frills", i, "Spec.Strip.Edge"), f.Spec.Strip.Edge.String(), "none: Edge names it", fault.Unused)
		}
	}
	for i, c := range g.Cuffs {
		w.refer(at("Cuffs", i, "Edge"), c.Edge, "an edge", false, g.edge)
		if !c.Spec.Sleeve.IsZero() {
			w.audit.Fault(at("Cuffs", i, "Spec.Sleeve"), c.Spec.Sleeve.String(), "none: Edge names it", fault.Unused)
		}
	}
	for i, r := range g.Rows {
		w.refer(at("Rows", i, "Drop"), r.Drop, "a drop", true, g.drop)
		if r.Times != 0 {
			w.audit.Count(at("Rows", i, "Times"), r.Times, 1, MaxParts)
		}
	}
	total := 0
	for i, p := range g.Pieces {
		w.audit.Need(at("Pieces", i, "Wide"), p.Wide)
		w.audit.Need(at("Pieces", i, "Long"), p.Long)
		w.audit.Count(at("Pieces", i, "Count"), p.Count, 1, layout.MaxPieces)
		w.audit.Count(at("Pieces", i, "Sides"), len(p.Sides), 0, 2)
		w.audit.Count(at("Pieces", i, "Ends"), len(p.Ends), 0, 2)
		for k, s := range p.Sides {
			w.refer(at("Pieces", i, "Sides")+"["+strconv.Itoa(k)+"]", s, "a seam", false, g.seam)
		}
		for k, s := range p.Ends {
			w.refer(at("Pieces", i, "Ends")+"["+strconv.Itoa(k)+"]", s, "a seam", false, g.seam)
		}
		w.checkPlies(at("Pieces", i, ""), p.seams(), p.Upper, p.Under, p.both)
		w.refer(at("Pieces", i, "Hem"), p.Hem, "a hem", true, g.hem)
		w.audit.Count(at("Pieces", i, "Outline"), len(p.Outline), 0, MaxParts)
		for k, c := range p.Outline[:min(len(p.Outline), MaxParts)] {
			path := at("Pieces", i, "Outline") + "[" + strconv.Itoa(k) + "]"
			for _, side := range c.sides() {
				w.refer(path+"."+side.field, side.name, "a seam or a hem", true, func(name string) int { return max(g.seam(name), g.hem(name)) })
			}
		}
		total += min(p.Count, layout.MaxPieces)
	}
	w.audit.Count("Pieces", total, 0, layout.MaxPieces)
	for i, l := range g.Lay {
		w.refer(at("Lay", i, "Piece"), l.Piece, "a piece", false, g.piece)
	}
	if len(g.Pieces) > 0 {
		w.audit.Need("Cloth.Width", g.Cloth.Width)
		w.audit.Need("Cloth.Have", g.Cloth.Have)
	}
	if len(g.Rows) > 0 {
		w.audit.Need("Tin.Diameter", g.Tin.Diameter)
		w.audit.Count("Tin.Have", g.Tin.Have, 1, buttons.MaxCount)
	}
	w.tasks()
}

// tasks checks what the work refers to.
func (w *planner) tasks() {
	g := w.g
	for i, t := range g.Work {
		w.audit.Text(at("Work", i, "Title"), t.Title)
		if t.Title == "" {
			w.audit.Fault(at("Work", i, "Title"), "", "what is done", fault.Missing)
		}
		w.refer(at("Work", i, "Swatch"), t.Swatch, "a seam", true, g.seam)
		for k, s := range t.Seams {
			w.refer(at("Work", i, "Seams")+"["+strconv.Itoa(k)+"]", s, "a seam", false, g.seam)
		}
		w.refer(at("Work", i, "Frill"), t.Frill, "a frill", true, g.frill)
		w.refer(at("Work", i, "Cuff"), t.Cuff, "a cuff", true, g.cuff)
		w.refer(at("Work", i, "Hem"), t.Hem, "a hem", true, g.hem)
		w.refer(at("Work", i, "Row"), t.Row, "a row", true, g.row)
		for k, c := range t.Check {
			path := at("Work", i, "Check") + "[" + strconv.Itoa(k) + "]"
			w.refer(path+".Edge", c.Edge, "an edge", true, g.edge)
			w.refer(path+".Drop", c.Drop, "a drop", true, g.drop)
			if c.Edge == "" && c.Drop == "" {
				w.audit.Need(path+".Want", c.Want)
			} else if !c.Want.IsZero() {
				w.audit.Fault(path+".Want", c.Want.String(), "none: the edge or the drop gives it", fault.Unused)
			}
		}
	}
}

func find[T any](list []T, name string, of func(T) string) int {
	for i, x := range list {
		if of(x) == name {
			return i
		}
	}
	return -1
}

func (g Garment) seam(name string) int {
	return find(g.Seams, name, func(s Seam) string { return s.Name })
}

func (g Garment) edge(name string) int {
	return find(g.Edges, name, func(e Edge) string { return e.Name })
}

func (g Garment) hem(name string) int {
	return find(g.Hems, name, func(h Hem) string { return h.Name })
}

func (g Garment) drop(name string) int {
	return find(g.Drops, name, func(d Drop) string { return d.Name })
}

func (g Garment) frill(name string) int {
	return find(g.Frills, name, func(f Frill) string { return f.Name })
}

func (g Garment) cuff(name string) int {
	return find(g.Cuffs, name, func(c Cuff) string { return c.Name })
}

func (g Garment) row(name string) int {
	return find(g.Rows, name, func(r Row) string { return r.Name })
}

func (g Garment) piece(name string) int {
	return find(g.Pieces, name, func(p Piece) string { return p.Name })
}

// nets is every edge before the assembly: its net length, or that of the edge it
// lies along with what the depth adds, less what its own slit takes.
func (w *planner) nets() {
	w.net = make([]units.Length, len(w.g.Edges))
	for i, e := range w.g.Edges {
		w.net[i] = e.Net
		if e.Of != "" {
			w.net[i] = w.g.Edges[w.g.edge(e.Of)].Net.Add(e.Depth.Scale(e.Turn))
		}
		k := w.g.hem(e.Slit)
		if k < 0 || w.net[i].Sign() <= 0 {
			continue
		}
		lost := w.p.Hems[k].AsSewn.Lost
		if !lost.Less(w.net[i]) {
			w.audit.Fault(at("Edges", i, "Slit"), strconv.Quote(e.Slit), "a slit that takes less than the "+w.net[i].String()+" of the edge, not "+lost.String(), fault.Range)
		}
		w.net[i] = w.net[i].Sub(lost)
	}
}

// assemble plans the seams and edges as sewn, and again with the remedies that
// mend the most, one after another.
func (w *planner) assemble() error {
	a := seam.Assembly{Pairs: w.g.Pairs}
	for _, s := range w.g.Seams {
		a.Seams = append(a.Seams, seam.Joint{Name: s.Name, Spec: s.Spec})
	}
	for i, e := range w.g.Edges {
		c := seam.Course{Name: e.Name, Net: w.net[i], Crossings: e.Crossings, Turn: e.Turn}
		if e.Of != "" {
			c.Crossings = w.g.Edges[w.g.edge(e.Of)].Crossings
		}
		a.Edges = append(a.Edges, c)
	}
	var err error
	if w.p.AsSewn, err = a.Plan(); err != nil {
		return err
	}
	if w.p.Remedies, err = w.remedies(a, w.p.AsSewn); err != nil {
		return err
	}
	w.p.AsChosen = w.p.AsSewn
	left := w.p.Remedies
	for range MaxParts {
		best := slices.IndexFunc(left, func(r seam.Remedy) bool { return r.Mends > r.Breaks })
		if w.p.AsChosen.Mismatched() == 0 || best < 0 {
			break
		}
		if a, err = w.g.Apply(left[best], a); err != nil {
			return err
		}
		w.p.Chosen = append(w.p.Chosen, left[best])
		if w.p.AsChosen, err = a.Plan(); err != nil {
			return err
		}
		if left, err = w.remedies(a, w.p.AsChosen); err != nil {
			return err
		}
	}
	return nil
}

// remedies are those of the assembly. Where one spreads an edge that others lie
// along, what it mends and spoils is counted again with these following.
func (w *planner) remedies(a seam.Assembly, now seam.AssemblyPlan) ([]seam.Remedy, error) {
	rs, err := a.Remedies()
	for i := range rs {
		if rs[i].Act != seam.SpreadPartner || !slices.ContainsFunc(w.g.Edges, func(e Edge) bool { return e.Of == rs[i].Edge }) {
			continue
		}
		b, err := w.g.Apply(rs[i], a)
		if err != nil {
			return nil, err
		}
		after, err := b.Plan()
		if err != nil {
			return nil, err
		}
		rs[i].Mends, rs[i].Breaks = 0, 0
		for k, m := range now.Pairs {
			was, is := m.Fit == seam.Mismatch, after.Pairs[k].Fit == seam.Mismatch
			if was && !is {
				rs[i].Mends++
			} else if is && !was {
				rs[i].Breaks++
			}
		}
	}
	return slices.DeleteFunc(rs, func(r seam.Remedy) bool { return r.Mends == 0 }), err
}

// Apply carries a remedy out on an assembly of the garment's seams and edges. An
// edge that lies along one whose piece is spread follows it.
func (g Garment) Apply(r seam.Remedy, a seam.Assembly) (seam.Assembly, error) {
	b, err := r.Apply(a)
	if err != nil || r.Act != seam.SpreadPartner {
		return b, err
	}
	k := g.edge(r.Edge)
	by := b.Edges[k].Spread.Sub(a.Edges[k].Spread)
	for i, e := range g.Edges {
		if e.Of == r.Edge {
			b.Edges[i].Spread = b.Edges[i].Spread.Add(by)
		}
	}
	return b, nil
}

func (w *planner) hems() {
	for i, h := range w.g.Hems {
		p, _ := h.Spec.Plan() // checked before
		q := p
		if h.Spec.Kind != hem.Slit && !p.Drift.IsZero() {
			s := h.Spec
			s.Cut = p.Taken
			var err error
			q, err = s.Plan()
			w.audit.Include(at("Hems", i, "Spec"), err)
		}
		w.p.Hems = append(w.p.Hems, HemPlan{h.Name, p, q})
	}
}

func (w *planner) edges() {
	for i, e := range w.g.Edges {
		then, now := w.p.AsSewn.Edges[i], w.p.AsChosen.Edges[i]
		p := EdgePlan{Name: e.Name, Drafted: then.Drafted, AsSewn: then.Sewn, AsChosen: now.Sewn}
		if k := w.g.hem(e.Hem); k >= 0 {
			if d := w.p.Hems[k].AsSewn.SweepDrift; !d.IsZero() {
				p.AtHem = p.AsSewn.Plus(d)
			}
		}
		w.p.Edges = append(w.p.Edges, p)
	}
}

func (w *planner) drops() {
	for _, d := range w.g.Drops {
		p := DropPlan{d.Name, d.Drafted, d.Drafted, d.Drafted}
		for _, s := range d.Seams {
			p.AsSewn = p.AsSewn.Add(w.ply(w.p.AsSewn, s, d.Upper, d.Under, false).Drift)
			p.AsChosen = p.AsChosen.Add(w.ply(w.p.AsChosen, s, d.Upper, d.Under, false).Drift)
		}
		if k := w.g.hem(d.Hem); k >= 0 {
			p.AsSewn = p.AsSewn.Add(w.p.Hems[k].AsSewn.Drift)
			p.AsChosen = p.AsChosen.Add(w.p.Hems[k].AsChosen.Drift)
		}
		w.p.Drops = append(w.p.Drops, p)
	}
}

// exactly is an edge's length, or a fault where the edge is known only within a
// bound and a sum needs it exact.
func (w *planner) exactly(path string, n units.Near) units.Length {
	l, ok := n.Exact()
	if !ok {
		w.audit.Fault(path, n.String(), "an edge whose length is exact: crossed square, or at a slant with an exact sine", fault.Form)
	}
	return l
}

func (w *planner) frills() {
	for i, f := range w.g.Frills {
		e := w.p.Edges[w.g.edge(f.Edge)]
		spec := f.Spec
		spec.Strip.Edge = w.exactly(at("Frills", i, "Edge"), e.AsChosen)
		r, err := spec.Plan()
		w.audit.Include(at("Frills", i, "Spec"), err)
		if err != nil {
			continue
		}
		p := FrillPlan{Name: f.Name, Ruffle: r}
		twice := spec.Strip
		twice.Fullness = units.RatioOf(2, 1)
		twice.Strip.Pieces, twice.Strip.Each, twice.Strip.Least = r.Strip.Strip.Spec.Pieces, units.Length{}, units.Length{}
		if t, err := twice.Plan(); err == nil {
			p.Double = t.Strip.Spec.Each
		}
		if gap, ok := w.following(f.Edge).Exact(); ok && gap.Sign() > 0 {
			p.Spread = spec.Strip.Edge.Add(gap)
			p.Thin = r.Strip.Strip.Sewn.Div(p.Spread)
		}
		w.p.Frills = append(w.p.Frills, p)
	}
}

// following is how much longer an edge that no drifting seam crosses would have
// to be made to follow its partner as sewn.
func (w *planner) following(name string) units.Near {
	if of := w.g.Edges[w.g.edge(name)].Of; of != "" {
		name = of
	}
	for i, q := range w.g.Pairs {
		if m := w.p.AsSewn.Pairs[i]; q.Short == name && m.Fit == seam.Mismatch {
			return m.Change
		}
	}
	return units.Near{}
}

func (w *planner) cuffs() {
	for i, c := range w.g.Cuffs {
		e := w.p.Edges[w.g.edge(c.Edge)]
		p := CuffPlan{Name: c.Name}
		for _, way := range [...]struct {
			to *gather.CuffPlan
			n  units.Near
		}{{&p.Drafted, e.Drafted}, {&p.AsSewn, e.AsSewn}, {&p.AsChosen, e.AsChosen}} {
			spec := c.Spec
			spec.Sleeve = w.exactly(at("Cuffs", i, "Edge"), way.n)
			plan, err := spec.Plan()
			*way.to = plan
			w.audit.Include(at("Cuffs", i, "Spec"), err)
			if err != nil {
				break
			}
		}
		w.p.Cuffs = append(w.p.Cuffs, p)
	}
}

func (w *planner) cuts() {
	for i, s := range w.p.AsChosen.Seams {
		up, under := s.Upper, s.Under
		if up.Cut != up.Drafted {
			name := w.g.Seams[i].Name
			if under.Drafted != up.Drafted || under.Cut != up.Cut {
				name += " (upper ply)"
			}
			w.p.Cuts = append(w.p.Cuts, Cut{name, w.g.Seams[i].Where, up.Drafted, up.Cut})
		}
		if under.Cut != under.Drafted && (under.Drafted != up.Drafted || under.Cut != up.Cut) {
			w.p.Cuts = append(w.p.Cuts, Cut{w.g.Seams[i].Name + " (under ply)", w.g.Seams[i].Where, under.Drafted, under.Cut})
		}
	}
	for i, h := range w.p.Hems {
		if c := h.AsChosen; c.Spec.Kind != hem.Slit && c.Spec.Cut != c.Spec.Drafted {
			w.p.Cuts = append(w.p.Cuts, Cut{h.Name, w.g.Hems[i].Where, c.Spec.Drafted, c.Spec.Cut})
		}
	}
}
