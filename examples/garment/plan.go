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
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/yardage"
	"example.com/clothyard/yardage/layout"
)

// A Plan is everything that a garment comes to, twice where the choice matters:
// as sewn with nothing trimmed, and as chosen.
type Plan struct {
	Spec     Garment           `json:"spec,omitzero"`
	AsSewn   edge.AssemblyPlan `json:"asSewn,omitzero"` // the seams as given, nothing trimmed first
	Chosen   []edge.Remedy     `json:"chosen,omitzero"` // the remedies taken
	AsChosen edge.AssemblyPlan `json:"asChosen,omitzero"`
	Edges    []EdgePlan        `json:"edges,omitzero"`
	Hems     []HemPlan         `json:"hems,omitzero"`
	Drops    []DropPlan        `json:"drops,omitzero"`
	Frills   []FrillPlan       `json:"frills,omitzero"`
	Cuffs    []CuffPlan        `json:"cuffs,omitzero"`
	Stock    buttons.StockPlan `json:"stock,omitzero"`
	Hole     buttons.HolePlan  `json:"hole,omitzero"`
	Rows     []RowPlan         `json:"rows,omitzero"`
	Cloth    ClothPlan         `json:"cloth,omitzero"`
	Cuts     []Cut             `json:"cuts,omitzero"`
}

// An EdgePlan is an edge, both ways.
type EdgePlan struct {
	Name     string     `json:"name,omitzero"`
	Drafted  units.Near `json:"drafted,omitzero"`
	AsSewn   units.Near `json:"asSewn,omitzero"`
	AsChosen units.Near `json:"asChosen,omitzero"`
	AtHem    units.Near `json:"atHem,omitzero"` // AsSewn along the hem where it comes out longer than drafted; zero if it does not
}

// A HemPlan is a hem, both ways: as the allowance was drafted, and cut to what
// the hem takes.
type HemPlan struct {
	Name     string   `json:"name,omitzero"`
	AsSewn   hem.Plan `json:"asSewn,omitzero"`
	AsChosen hem.Plan `json:"asChosen,omitzero"`
}

// A DropPlan is a length from a seam line to the hem, both ways.
type DropPlan struct {
	Name     string       `json:"name,omitzero"`
	Drafted  units.Length `json:"drafted,omitzero"`
	AsSewn   units.Length `json:"asSewn,omitzero"`
	AsChosen units.Length `json:"asChosen,omitzero"`
}

// A FrillPlan is a frill on its edge as chosen.
type FrillPlan struct {
	Name   string            `json:"name,omitzero"`
	Ruffle gather.RufflePlan `json:"ruffle,omitzero"`
	Double units.Length      `json:"double,omitzero"` // each piece of the strip for a fullness of exactly 2
	Spread units.Length      `json:"spread,omitzero"` // the edge if its piece were spread to follow its partner instead; zero where there is nothing to follow
	Thin   units.Ratio       `json:"thin,omitzero"`   // the fullness on it then
}

// A CuffPlan is a cuff with the sleeve as drafted, as sewn and as chosen.
type CuffPlan struct {
	Name     string          `json:"name,omitzero"`
	Drafted  gather.CuffPlan `json:"drafted,omitzero"`
	AsSewn   gather.CuffPlan `json:"asSewn,omitzero"`
	AsChosen gather.CuffPlan `json:"asChosen,omitzero"`
}

// A RowPlan is a row of buttons as drafted and with the buttons there are.
type RowPlan struct {
	Name      string           `json:"name,omitzero"`
	Drafted   buttons.RowPlan  `json:"drafted,omitzero"`
	AsChosen  buttons.RowPlan  `json:"asChosen,omitzero"`
	Hole      buttons.HolePlan `json:"hole,omitzero"`      // in the direction chosen, measured from the button
	Lap       buttons.LapPlan  `json:"lap,omitzero"`       // in the direction chosen
	Across    buttons.LapPlan  `json:"across,omitzero"`    // if the holes were horizontal
	BelowThen units.Length     `json:"belowThen,omitzero"` // from the last button to the finished hem as sewn; zero without a drop
	BelowNow  units.Length     `json:"belowNow,omitzero"`  // the same as chosen
}

// A ClothPlan is the cloth set against the pieces.
type ClothPlan struct {
	Width    yardage.WidthPlan    `json:"width,omitzero"`    // by the printed chart and by area
	Pieces   units.Area           `json:"pieces,omitzero"`   // of all the rectangles
	Own      layout.Plan          `json:"own,omitzero"`      // a lay of your own, proven; no placements if none was given or it does not hold
	OwnFault string               `json:"ownFault,omitzero"` // why a lay of your own does not hold, a fault a line; empty if it does
	Lay      layout.Plan          `json:"lay,omitzero"`      // the lay of rectangles found
	Nest     layout.Plan          `json:"nest,omitzero"`     // the lay of outlines found; no placements where no piece has one
	Need     units.Length         `json:"need,omitzero"`     // the length of the lay that is used: your own, else the one found
	Remnant  yardage.RemnantPlan  `json:"remnant,omitzero"`
	Purchase yardage.PurchasePlan `json:"purchase,omitzero"`
}

// A Cut is an allowance to be cut otherwise than the tissue has it.
type Cut struct {
	Seam   string       `json:"seam,omitzero"`
	Where  string       `json:"where,omitzero"`
	Tissue units.Length `json:"tissue,omitzero"`
	Cut    units.Length `json:"cut,omitzero"`
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
		return Plan{}, fault.Most(err)
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
		return Plan{}, fault.Most(err)
	}
	return w.p, nil
}

// inOrder sorts faults by the fields of the garment, and within a list by place.
func inOrder(err error) error {
	var faults fault.Faults
	if !errors.As(fault.Most(err), &faults) {
		return err
	}
	fields := reflect.VisibleFields(reflect.TypeFor[Garment]())
	place := func(f *fault.Fault) (field, index int) {
		name := f.Path
		if i := strings.IndexAny(name, ".["); i >= 0 {
			rest := name[i+1:]
			if k := strings.IndexByte(rest, ']'); name[i] == '[' && k > 0 {
				index, _ = strconv.Atoi(rest[:k])
			}
			name = name[:i]
		}
		field = slices.IndexFunc(fields, func(f reflect.StructField) bool { return noun.Key(f.Name) == name })
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
	a.Text("title", g.Title)
	a.Text("scene", g.Scene)
	a.Text("cloth.name", g.Cloth.Name)
	if g.Cloth.Work != 0 {
		a.Count("cloth.work", g.Cloth.Work, 1, maxWork)
	}
	for _, n := range [...]struct {
		list string
		n    int
	}{{"seams", len(g.Seams)}, {"edges", len(g.Edges)}, {"pairs", len(g.Pairs)}, {"hems", len(g.Hems)}, {"drops", len(g.Drops)},
		{"frills", len(g.Frills)}, {"cuffs", len(g.Cuffs)}, {"rows", len(g.Rows)}, {"pieces", len(g.Pieces)}, {"kit", len(g.Kit)}, {"care", len(g.Care)}} {
		a.Count(n.list, n.n, 0, MaxParts)
	}
	a.Count("work", len(g.Work), 0, MaxTasks)
	a.Count("lay", len(g.Lay), 0, layout.MaxPieces)
	for i, t := range g.Work {
		a.Count(at("work", i, "before"), len(t.Before), 0, MaxParts)
		a.Count(at("work", i, "seams"), len(t.Seams), 0, MaxParts)
		a.Count(at("work", i, "after"), len(t.After), 0, MaxParts)
		a.Count(at("work", i, "check"), len(t.Check), 0, MaxParts)
	}
	for i, d := range g.Drops {
		a.Count(at("drops", i, "seams"), len(d.Seams), 0, MaxParts)
	}
	if a.Failed() {
		return
	}
	if len(g.Edges) == 0 {
		a.Fault("edges", "", "at least one edge", fault.Missing)
	}
	for i, s := range g.Seams {
		if s.Times != 0 {
			a.Count(at("seams", i, "times"), s.Times, 1, MaxParts)
		}
		a.Text(at("seams", i, "where"), s.Where)
		a.Text(at("seams", i, "press"), s.Press)
		_, err := s.Spec.Plan()
		a.Include(at("seams", i, "spec"), err)
	}
	for i, h := range g.Hems {
		_, err := h.Spec.Plan()
		a.Include(at("hems", i, "spec"), err)
	}
	for i, r := range g.Rows {
		_, err := r.Row.Plan()
		a.Include(at("rows", i, "row"), err)
	}
	w.texts()
	names(a, "seams", len(g.Seams), func(i int) string { return g.Seams[i].Name })
	names(a, "edges", len(g.Edges), func(i int) string { return g.Edges[i].Name })
	names(a, "hems", len(g.Hems), func(i int) string { return g.Hems[i].Name })
	names(a, "drops", len(g.Drops), func(i int) string { return g.Drops[i].Name })
	names(a, "frills", len(g.Frills), func(i int) string { return g.Frills[i].Name })
	names(a, "cuffs", len(g.Cuffs), func(i int) string { return g.Cuffs[i].Name })
	names(a, "rows", len(g.Rows), func(i int) string { return g.Rows[i].Name })
	names(a, "pieces", len(g.Pieces), func(i int) string { return g.Pieces[i].Name })
	w.references()
}

// maxWork keeps the search for a lay within a minute or so.
const maxWork = 10_000

func names(a *fault.Audit, list string, n int, name func(int) string) {
	seen := map[string]bool{}
	for i := range n {
		switch s := name(i); {
		case s == "":
			a.Fault(at(list, i, "name"), "", "a name", fault.Missing)
		case seen[s]:
			a.Fault(at(list, i, "name"), strconv.Quote(s), "a name that no other has", fault.Twice)
		default:
			a.Text(at(list, i, "name"), s)
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
		w.refer(at("edges", i, "of"), e.Of, "an edge", true, g.edge)
		if e.Of == e.Name && e.Of != "" || e.Of != "" && g.edge(e.Of) >= 0 && g.Edges[g.edge(e.Of)].Of != "" {
			w.audit.Fault(at("edges", i, "of"), strconv.Quote(e.Of), "an edge that is given by its own length", fault.Conflict)
		}
		if e.Of != "" && !e.Net.IsZero() {
			w.audit.Fault(at("edges", i, "net"), e.Net.String(), "none where Of is given", fault.Unused)
		}
		if e.Of != "" && len(e.Crossings) > 0 {
			w.audit.Fault(at("edges", i, "crossings"), fmt.Sprint(len(e.Crossings)), "none where Of is given, which has them", fault.Unused)
		}
		if e.Of == "" && !e.Depth.IsZero() {
			w.audit.Fault(at("edges", i, "depth"), e.Depth.String(), "none without Of", fault.Unused)
		}
		w.refer(at("edges", i, "hem"), e.Hem, "a hem", true, g.hem)
		w.refer(at("edges", i, "slit"), e.Slit, "a slit hem", true, g.hem)
		if k := g.hem(e.Slit); k >= 0 && g.Hems[k].Spec.Kind != hem.Slit {
			w.audit.Fault(at("edges", i, "slit"), strconv.Quote(e.Slit), "a hem of the kind slit", fault.Conflict)
		}
		if k := g.hem(e.Hem); k >= 0 && g.Hems[k].Spec.Kind == hem.Slit {
			w.audit.Fault(at("edges", i, "hem"), strconv.Quote(e.Hem), "a hem that is not a slit", fault.Conflict)
		}
		w.audit.Text(at("edges", i, "note"), e.Note)
	}
	for i, d := range g.Drops {
		w.audit.Need(at("drops", i, "drafted"), d.Drafted)
		for k, s := range d.Seams {
			w.refer(at("drops", i, "seams")+"["+strconv.Itoa(k)+"]", s, "a seam", false, g.seam)
		}
		w.checkPlies(at("drops", i, ""), d.Seams, d.Upper, d.Under, func(string) bool { return false })
		w.refer(at("drops", i, "hem"), d.Hem, "a hem", true, g.hem)
	}
	for i, f := range g.Frills {
		w.refer(at("frills", i, "edge"), f.Edge, "an edge", false, g.edge)
		if !f.Spec.Strip.Edge.IsZero() {
			w.audit.Fault(at("frills", i, "spec.strip.edge"), f.Spec.Strip.Edge.String(), "none: Edge names it", fault.Unused)
		}
	}
	for i, c := range g.Cuffs {
		w.refer(at("cuffs", i, "edge"), c.Edge, "an edge", false, g.edge)
		if !c.Spec.Sleeve.IsZero() {
			w.audit.Fault(at("cuffs", i, "spec.sleeve"), c.Spec.Sleeve.String(), "none: Edge names it", fault.Unused)
		}
	}
	for i, r := range g.Rows {
		w.refer(at("rows", i, "drop"), r.Drop, "a drop", true, g.drop)
		if r.Times != 0 {
			w.audit.Count(at("rows", i, "times"), r.Times, 1, MaxParts)
		}
	}
	total := 0
	for i, p := range g.Pieces {
		w.audit.Need(at("pieces", i, "wide"), p.Wide)
		w.audit.Need(at("pieces", i, "long"), p.Long)
		w.audit.Count(at("pieces", i, "count"), p.Count, 1, layout.MaxPieces)
		w.audit.Count(at("pieces", i, "sides"), len(p.Sides), 0, 2)
		w.audit.Count(at("pieces", i, "ends"), len(p.Ends), 0, 2)
		for k, s := range p.Sides {
			w.refer(at("pieces", i, "sides")+"["+strconv.Itoa(k)+"]", s, "a seam", false, g.seam)
		}
		for k, s := range p.Ends {
			w.refer(at("pieces", i, "ends")+"["+strconv.Itoa(k)+"]", s, "a seam", false, g.seam)
		}
		w.checkPlies(at("pieces", i, ""), p.seams(), p.Upper, p.Under, p.both)
		w.refer(at("pieces", i, "hem"), p.Hem, "a hem", true, g.hem)
		w.audit.Count(at("pieces", i, "outline"), len(p.Outline), 0, MaxParts)
		for k, c := range p.Outline[:min(len(p.Outline), MaxParts)] {
			path := at("pieces", i, "outline") + "[" + strconv.Itoa(k) + "]"
			for _, side := range c.sides() {
				w.refer(path+"."+side.field, side.name, "a seam or a hem", true, func(name string) int { return max(g.seam(name), g.hem(name)) })
			}
		}
		total += min(p.Count, layout.MaxPieces)
	}
	w.audit.Count("pieces", total, 0, layout.MaxPieces)
	for i, l := range g.Lay {
		w.refer(at("lay", i, "piece"), l.Piece, "a piece", false, g.piece)
	}
	if len(g.Pieces) > 0 {
		w.audit.Need("cloth.width", g.Cloth.Width)
		w.audit.Need("cloth.have", g.Cloth.Have)
	}
	if len(g.Rows) > 0 {
		w.audit.Need("tin.diameter", g.Tin.Diameter)
		w.audit.Count("tin.have", g.Tin.Have, 1, buttons.MaxCount)
	}
	w.tasks()
}

// tasks checks what the work refers to.
func (w *planner) tasks() {
	g := w.g
	for i, t := range g.Work {
		w.audit.Text(at("work", i, "title"), t.Title)
		if t.Title == "" {
			w.audit.Fault(at("work", i, "title"), "", "what is done", fault.Missing)
		}
		w.refer(at("work", i, "swatch"), t.Swatch, "a seam", true, g.seam)
		for k, s := range t.Seams {
			w.refer(at("work", i, "seams")+"["+strconv.Itoa(k)+"]", s, "a seam", false, g.seam)
		}
		w.refer(at("work", i, "frill"), t.Frill, "a frill", true, g.frill)
		w.refer(at("work", i, "cuff"), t.Cuff, "a cuff", true, g.cuff)
		w.refer(at("work", i, "hem"), t.Hem, "a hem", true, g.hem)
		w.refer(at("work", i, "row"), t.Row, "a row", true, g.row)
		for k, c := range t.Check {
			path := at("work", i, "check") + "[" + strconv.Itoa(k) + "]"
			w.refer(path+".edge", c.Edge, "an edge", true, g.edge)
			w.refer(path+".drop", c.Drop, "a drop", true, g.drop)
			if c.Edge == "" && c.Drop == "" {
				w.audit.Need(path+".want", c.Want)
			} else if !c.Want.IsZero() {
				w.audit.Fault(path+".want", c.Want.String(), "none: the edge or the drop gives it", fault.Unused)
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
			w.audit.Fault(at("edges", i, "slit"), strconv.Quote(e.Slit), "a slit that takes less than the "+w.net[i].String()+" of the edge, not "+lost.String(), fault.Range)
		}
		w.net[i] = w.net[i].Sub(lost)
	}
}

// assemble plans the seams and edges as sewn, and again with the remedies that
// mend the most, one after another.
func (w *planner) assemble() error {
	a := edge.Assembly{Pairs: w.g.Pairs}
	for _, s := range w.g.Seams {
		a.Seams = append(a.Seams, edge.Joint{Name: s.Name, Spec: s.Spec})
	}
	for i, e := range w.g.Edges {
		c := edge.Course{Name: e.Name, Net: w.net[i], Of: e.Of, Crossings: e.Crossings, Turn: units.Radians(e.Turn)}
		if e.Of != "" {
			c.Crossings = w.g.Edges[w.g.edge(e.Of)].Crossings
		}
		a.Edges = append(a.Edges, c)
	}
	var err error
	if w.p.AsSewn, err = a.Plan(); err != nil {
		return err
	}
	w.p.AsChosen = w.p.AsSewn
	for range MaxParts {
		best := slices.IndexFunc(w.p.AsChosen.Remedies, func(r edge.Remedy) bool { return r.Mends > r.Breaks })
		if best < 0 {
			break
		}
		r := w.p.AsChosen.Remedies[best]
		w.p.Chosen = append(w.p.Chosen, r)
		if w.p.AsChosen, err = w.p.AsChosen.Mended(r); err != nil {
			return err
		}
	}
	return nil
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
			w.audit.Include(at("hems", i, "spec"), err)
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
		spec.Strip.Edge = w.exactly(at("frills", i, "edge"), e.AsChosen)
		r, err := spec.Plan()
		w.audit.Include(at("frills", i, "spec"), err)
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
		if m := w.p.AsSewn.Pairs[i]; q.Short == name && m.Fit == edge.Mismatch {
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
			spec.Sleeve = w.exactly(at("cuffs", i, "edge"), way.n)
			plan, err := spec.Plan()
			*way.to = plan
			w.audit.Include(at("cuffs", i, "spec"), err)
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
