package seam_test

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

// The oracle lays the plies of a seam edge-on, as they lie when it is finished:
// each ply is a polyline of level stretches, x across the seam, z the layer. It
// knows where the trade puts each fold, and no formula of the package: what a
// seam takes, how thick it is and what shows is measured on the drawing.

// A bend is a corner of a ply: the cloth runs level to x, and goes on at z.
type bend struct {
	x units.Length
	z int
}

// A run of cloth, from its raw edge to where it leaves the seam.
type run struct {
	name  string
	bends []bend       // the first is the raw edge
	off   units.Length // what was trimmed off before it was laid
	body  int          // the side to which the garment goes on from the last bend: -1, 1, or 0 if it ends there
	round units.Length // what the cloth needs to go round an edge
}

// arc is the cloth between the raw edge and the last bend, with what was cut off.
func (r run) arc() units.Length {
	l := r.off.Add(r.round)
	for i := 1; i < len(r.bends); i++ {
		l = l.Add(r.bends[i].x.Sub(r.bends[i-1].x).Abs())
	}
	return l
}

// A stretch is a level piece of a run.
type stretch struct {
	lo, hi units.Length
	z      int
	run    int
}

// A row of stitching.
type row struct {
	x      units.Length
	pierce []int // the layers that it goes through
}

// A drawing is a finished seam, edge-on.
type drawing struct {
	runs  []run
	rows  []row
	right int // the right side of the garment: 1 above, -1 below
	// keep names for each run the raw edge must stop short of x, seen from the run.
	keep []keep
	// fault says what cannot be laid.
	fault string
}

// A keep is a line that the raw edge of a run must not reach: a row sewn later, or,
// for the turned edges, the seam that they may touch and not pass.
type keep struct {
	run   int
	x     units.Length
	side  int // where the raw edge must lie: 1 to the right of x, -1 to the left
	touch bool
}

const far = 1000

func (d drawing) stretches(eps units.Length) []stretch {
	var out []stretch
	for i, r := range d.runs {
		add := func(a, b units.Length, z int) {
			if a != b {
				out = append(out, stretch{a.Min(b), a.Max(b), z, i})
			}
		}
		for k := 1; k < len(r.bends); k++ {
			a := r.bends[k-1].x
			if k == 1 && r.bends[1].x != a && !d.against(i) { // edges that meet count as lying over one another
				if a.Less(r.bends[1].x) {
					a = a.Sub(eps)
				} else {
					a = a.Add(eps)
				}
			}
			add(a, r.bends[k].x, r.bends[k-1].z)
		}
		last := r.bends[len(r.bends)-1]
		if r.body != 0 {
			add(last.x, in(int64(r.body)*far, 1), last.z)
		}
	}
	return out
}

// against reports whether the raw edge of a run lies against the seam itself, and
// so meets no edge from the other side of it.
func (d drawing) against(run int) bool {
	return slices.ContainsFunc(d.keep, func(k keep) bool { return k.run == run && k.touch && k.x == d.runs[run].bends[0].x })
}

// plies counts the layers at the thickest place.
func (d drawing) plies() int {
	all := d.stretches(in(1, 1_000_000))
	var at []units.Length
	for _, s := range all {
		at = append(at, s.lo, s.hi)
	}
	slices.SortFunc(at, units.Length.Cmp)
	most := 0
	for i := 1; i < len(at); i++ {
		mid := at[i-1].Add(at[i]).DivInt(2)
		n := 0
		for _, s := range all {
			if s.lo.Less(mid) && mid.Less(s.hi) {
				n++
			}
		}
		most = max(most, n)
	}
	return most
}

// shows reports whether a raw edge is seen from above or below.
func (d drawing) shows() bool {
	all := d.stretches(units.Length{})
	for i, r := range d.runs {
		e := r.bends[0]
		var above, below bool
		for _, s := range all {
			if s.hi.Less(e.x) || e.x.Less(s.lo) || s.run == i && s.z == e.z {
				continue
			}
			above, below = above || s.z > e.z, below || s.z < e.z
		}
		if !above || !below {
			return true
		}
	}
	return false
}

// lies reports whether every raw edge stays where it must.
func (d drawing) lies() bool {
	for _, k := range d.keep {
		n := d.runs[k.run].bends[0].x.Cmp(k.x) * k.side
		if n < 0 || n == 0 && !k.touch {
			return false
		}
	}
	return d.fault == ""
}

// seen counts the rows on the right side: those with no whole layer over them.
func (d drawing) seen() int {
	n := 0
	for _, r := range d.rows {
		hidden := false
		for _, s := range d.stretches(units.Length{}) {
			if s.hi.Less(r.x) || r.x.Less(s.lo) || slices.Contains(r.pierce, s.z) {
				continue
			}
			over := true
			for _, z := range r.pierce {
				over = over && (s.z-z)*d.right > 0
			}
			hidden = hidden || over
		}
		if !hidden {
			n++
		}
	}
	return n
}

// draw lays a seam by its figures.
func draw(m measures) drawing {
	zero := units.Length{}
	first, second, trim, turned := m.first, m.second, m.trim, m.turned
	off := first.Sub(trim)
	at := func(pairs ...any) (b []bend) { // x, z, x, z
		for i := 0; i < len(pairs); i += 2 {
			b = append(b, bend{pairs[i].(units.Length), pairs[i+1].(int)})
		}
		return b
	}
	seamRow := row{zero, []int{1, 2, 3, 4}}
	switch m.kind {
	case "plain", "hairline":
		upper := at(trim.Neg(), 1, zero, 0)
		if m.aside || m.kind == "hairline" {
			upper = at(trim, 2, zero, 0)
		}
		return drawing{runs: []run{{"upper", upper, off, -1, zero}, {"under", at(trim, 1, zero, 0), off, 1, zero}}, rows: []row{seamRow}, right: -1}
	case "french":
		edge := second.Sub(trim)
		return drawing{
			runs:  []run{{"upper", at(edge, 3, second, 4, zero, 0), off, -1, zero}, {"under", at(edge, 2, second, 1, zero, 0), off, 1, zero}},
			rows:  []row{{second, []int{2, 3}}, seamRow},
			right: -1, keep: []keep{{0, zero, 1, false}, {1, zero, 1, false}},
		}
	case "flat-felled":
		return drawing{
			runs:  []run{{"upper", at(second.Sub(turned), 2, second, 3, zero, 3), zero, -1, zero}, {"under", at(trim, 1, zero, 0), off, 1, zero}},
			rows:  []row{{zero, []int{0, 1, 3}}, {second, []int{0, 1, 2, 3}}},
			right: 1, keep: []keep{{0, zero, 1, true}, {1, second, -1, false}},
		}
	case "mock-felled":
		return drawing{
			runs:  []run{{"upper", at(second.Sub(turned), 2, second, 3, zero, 0), zero, -1, zero}, {"under", at(trim, 1, zero, 0), off, 1, zero}},
			rows:  []row{seamRow, {second, []int{0, 1, 2, 3}}, {second.DivInt(16), []int{0, 1, 2, 3}}},
			right: -1, keep: []keep{{0, zero, 1, true}, {1, second, -1, false}},
		}
	case "bound":
		b, edge := second, trim
		in := edge.Sub(b)
		return drawing{
			runs: []run{
				{"upper", at(edge, 4, zero, 0), off, -1, zero}, {"under", at(edge, 3, zero, 0), off, 1, zero},
				{"strip", at(edge, 5, in, 6, edge, 1, in, 2, edge, 2), zero, 0, zero},
			},
			rows: []row{seamRow, {in, []int{1, 2, 3, 4, 5, 6}}}, right: -1,
		}
	case "turned-and-stitched":
		in := second.Sub(turned)
		return drawing{
			runs: []run{{"upper", at(in.Neg(), 1, second.Neg(), 2, zero, 0), off, -1, zero}, {"under", at(in, 1, second, 2, zero, 0), off, 1, zero}},
			rows: []row{seamRow, {second, []int{1, 2}}, {second.Neg(), []int{1, 2}}}, right: -1,
			keep: []keep{{0, zero, -1, true}, {1, zero, 1, true}},
		}
	case "mock-french":
		in := second.Sub(turned)
		return drawing{
			runs: []run{{"upper", at(in, 3, second, 4, zero, 0), off, -1, zero}, {"under", at(in, 2, second, 1, zero, 0), off, 1, zero}},
			rows: []row{seamRow, {second, []int{1, 2, 3, 4}}}, right: -1,
			keep: []keep{{0, zero, 1, true}, {1, zero, 1, true}},
		}
	case "untrimmed-fell":
		edge := first.Neg()
		return drawing{
			runs:  []run{{"upper", at(edge, 2, zero, 0), zero, -1, zero}, {"under", at(edge.Add(turned), 1, edge, 3, zero, 3), zero, 1, zero}},
			rows:  []row{{zero, []int{0, 1, 2, 3}}, {edge, []int{0, 1, 2, 3}}},
			right: 1, keep: []keep{{1, zero, -1, true}},
		}
	case "welt":
		return drawing{
			runs:  []run{{"upper", at(first, 2, zero, 0), zero, -1, zero}, {"under", at(trim, 1, zero, 0), off, 1, zero}},
			rows:  []row{{zero, []int{1, 2}}, {second, []int{0, 1, 2}}},
			right: -1, keep: []keep{{0, second, 1, false}, {1, second, -1, false}},
		}
	case "lapped":
		r := m.row.Neg()
		return drawing{
			runs:  []run{{"upper", at(first.Neg(), 1, zero, 2), zero, -1, zero}, {"under", at(second.Neg(), 0, zero, 0), zero, 1, zero}},
			rows:  []row{{r, []int{0, 1, 2}}},
			right: 1, keep: []keep{{0, r, -1, false}, {1, r, -1, false}},
		}
	case "lapped-turned":
		half := second.DivInt(2)
		return drawing{
			runs:  []run{{"upper", at(half.Sub(turned), 2, half, 3, zero, 3), zero, -1, zero}, {"under", at(turned.Sub(half), 1, half.Neg(), 0, zero, 0), zero, 1, zero}},
			rows:  []row{{half, []int{0, 1, 2, 3}}, {half.Neg(), []int{0, 1, 2, 3}}},
			right: 1, keep: []keep{{0, half.Neg(), 1, false}, {1, half, -1, false}, {0, half, -1, false}},
		}
	case "lapped-raw":
		half := second.DivInt(2)
		return drawing{
			runs:  []run{{"upper", at(half, 1, zero, 1), zero, -1, zero}, {"under", at(half.Neg(), 0, zero, 0), zero, 1, zero}},
			rows:  []row{{half, []int{0, 1}}, {half.Neg(), []int{0, 1}}},
			right: 1,
		}
	case "slot":
		lay := m.strip.DivInt(2)
		return drawing{
			runs:  []run{{"upper", at(trim.Neg(), 1, zero, 0), off, -1, zero}, {"under", at(trim, 1, zero, 0), off, 1, zero}, {"strip", at(lay.Neg(), 2, lay, 2), zero, 0, zero}},
			rows:  []row{{second, []int{0, 1, 2}}, {second.Neg(), []int{0, 1, 2}}},
			right: -1, keep: []keep{{0, second.Neg(), -1, false}, {1, second, 1, false}, {2, second.Neg(), -1, false}},
		}
	case "hong-kong":
		edge, in := trim, trim.Sub(second)
		end := edge.Sub(m.wrapped).Max(zero)
		past := m.wrapped.Sub(edge).Max(zero) // trimmed off at the end
		strip := at(end, 2, edge, 5, in, 4, edge, 4)
		mirror := slices.Clone(strip)
		for i := range mirror {
			mirror[i].x = mirror[i].x.Neg()
		}
		return drawing{
			runs: []run{
				{"upper", at(edge.Neg(), 3, zero, 0), off, -1, zero}, {"under", at(edge, 3, zero, 0), off, 1, zero},
				{"strip", strip, past, 0, m.thickness}, {"strip", mirror, past, 0, m.thickness},
			},
			rows: []row{seamRow, {in, []int{2, 3, 4}}, {in.Neg(), []int{2, 3, 4}}}, right: -1,
			keep: []keep{{2, in, -1, false}, {3, in.Neg(), 1, false}},
		}
	case "self-bound":
		b, back := second, second.MulInt(2).Sub(turned)
		wide := at(turned, 2, zero, 1, b, 5, zero, 0)
		keeps := []keep{{1, b, -1, false}}
		if b.Less(turned) {
			wide = at(back, 4, b, 2, zero, 1, b, 5, zero, 0)
			keeps = append(keeps, keep{0, trim, 1, true})
		}
		return drawing{
			runs: []run{{"upper", wide, zero, -1, zero}, {"under", at(trim, 3, zero, 0), off, 1, zero}},
			rows: []row{{zero, []int{1, 2, 3, 4, 5}}}, right: -1, keep: keeps,
		}
	case "piped":
		return drawing{
			runs: []run{
				{"upper", at(trim, 4, zero, 0), off, -1, zero}, {"under", at(trim, 1, zero, 0), off, 1, zero},
				{"strip", at(trim, 2, zero, 3, trim, 3), off.MulInt(2), 0, zero},
			},
			rows: []row{seamRow}, right: -1,
		}
	case "graded":
		d := drawing{right: -1, rows: []row{{zero, []int{1, 2, 3, 4, 5, 6}}}}
		n := len(m.grades)
		for i := range n {
			g := m.grades[i]
			r := run{fmt.Sprint("layer ", i), at(g, 1+i, zero, 1+i), first.Sub(g), 0, zero}
			switch i {
			case 0:
				r.name, r.bends[1].z, r.body = "upper", 0, 1
			case n - 1:
				r.name, r.bends[1].z, r.body = "under", n+1, 1
			}
			d.runs = append(d.runs, r)
			if i > 0 {
				d.keep = append(d.keep, keep{i, m.grades[i-1], -1, false})
			}
		}
		return d
	}
	return drawing{fault: "no such kind"}
}

// differs compares a plan with its drawing.
func differs(p seam.Plan, m measures) (out []string) {
	d := draw(m)
	say := func(what string, got, drawn any) {
		if got != drawn {
			out = append(out, fmt.Sprintf("%s: planned %v, drawn %v", what, got, drawn))
		}
	}
	if !d.lies() {
		out = append(out, "does not lie as planned "+d.fault)
	}
	for _, r := range d.runs {
		switch r.name {
		case "upper":
			say("taken of the upper ply", p.Upper.Taken, r.arc())
			say("drift of the upper ply", p.Upper.Drift, m.cut.Sub(r.arc()))
		case "under":
			say("taken of the under ply", p.Under.Taken, r.arc())
			say("drift of the under ply", p.Under.Drift, m.cutUnder.Sub(r.arc()))
		case "strip":
			switch m.kind {
			case "bound":
				say("strip", width(p, 0), r.arc())
			case "piped":
				around := p.Strips[0].Width.Plus(r.arc().Neg()) // what goes round the cord: 333/106 < pi < 355/113
				lo, hi := around.Bounds()
				d := m.cord.Add(m.thickness)
				if !d.Scale(units.RatioOf(333, 106)).Less(lo) || !hi.Less(d.Scale(units.RatioOf(355, 113))) {
					out = append(out, fmt.Sprintf("strip: %v goes round a cord of %v", around, d))
				}
			default:
				say("strip", m.strip, r.arc())
			}
		}
	}
	say("plies", p.Plies, d.plies())
	say("rows seen", p.Rows, d.seen())
	if m.finish == 0 {
		say("raw", p.Raw, d.shows())
	}
	say("finished", p.Finished, finished(m.kind, d))
	return out
}

// finished measures the width of the seam on its drawing: from the seam to the
// furthest fold or edge of the upper ply, or between the rows.
func finished(k string, d drawing) units.Length {
	width := func(r run) (w units.Length) {
		for _, b := range r.bends {
			w = w.Max(b.x.Abs())
		}
		return w
	}
	switch k {
	case "slot", "lapped-turned", "lapped-raw":
		return d.rows[0].x.Sub(d.rows[1].x)
	case "welt":
		return d.rows[1].x
	case "lapped":
		return width(d.runs[1])
	case "bound":
		return width(d.runs[2]).Sub(d.rows[1].x)
	case "hong-kong":
		return width(d.runs[1]).Sub(d.rows[1].x)
	}
	return width(d.runs[0])
}

func TestOracle(t *testing.T) {
	r := rand.New(rand.NewPCG(18, 7))
	good := map[string]int{}
	for range max(1_200, nountest.Rounds(60_000)) {
		p, err := someSeam(r).Plan()
		if err != nil {
			continue
		}
		good[p.Spec.Kind()]++
		if out := differs(p, measuresOf(p)); len(out) > 0 {
			t.Fatalf("%+v:\n%v", p.Spec, out)
		}
	}
	for s := range seam.Kinds() {
		if good[s.Kind()] < 5 {
			t.Errorf("%v: only %d seams drawn", s.Kind(), good[s.Kind()])
		}
	}
}

// The widest trim that a plan gives stays hidden on the drawing, and as much more
// as the clearance does not.
func TestOracleTrimBounds(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 29))
	tried := map[string]int{}
	for range max(3_000, nountest.Rounds(60_000)) {
		p, err := someSeam(r).Plan()
		if err != nil {
			continue
		}
		m := measuresOf(p)
		switch m.kind {
		case "french", "flat-felled", "mock-felled", "welt", "self-bound":
		default:
			continue
		}
		if m.first == p.Under.TrimMax || m.trim == p.Under.TrimMax || p.Under.TrimMin == p.Under.TrimMax {
			continue
		}
		tried[m.kind]++
		most := p.Under.TrimMax
		if m.kind == "french" {
			most = most.Add(m.thickness) // the folds of the drawing take no room
		}
		if m.trim = most; !draw(m).lies() {
			t.Fatalf("%+v: trimmed to %v it does not lie", p.Spec, m.trim)
		}
		if m.trim = most.Add(in(1, 16)); draw(m).lies() {
			t.Fatalf("%+v: trimmed to %v it lies just as well", p.Spec, m.trim)
		}
	}
	if len(tried) != 5 {
		t.Errorf("%v tried", tried)
	}
}

// A plan is refused as not hidden or not flat just where the drawing does not lie.
func TestOracleRefusals(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 12))
	sixteenths := func(low, high int64) units.Length { return in(low+r.Int64N(high-low), 16) }
	good, bad := map[string]int{}, map[string]int{}
	for range max(3_000, nountest.Rounds(40_000)) {
		first, a, b := sixteenths(4, 20), sixteenths(1, 16), sixteenths(1, 8)
		rest, half := first.Sub(a), first.Sub(a).DivInt(2)
		m := measures{first: first, turned: a, trim: b}
		var s seam.Seam
		switch r.IntN(10) {
		case 0:
			m.second = a
			s = seam.French{First: first, Second: a, Trim: b}
		case 1:
			m.second = a
			s = seam.Welt{First: first, Row: a, Trim: b}
		case 2:
			m.second = rest
			s = seam.FlatFelled{First: first, Width: rest, Turned: a, Trim: b}
		case 3:
			m.second = rest
			s = seam.MockFelled{First: first, Width: rest, Turned: a, Trim: b}
		case 4:
			m.second = half
			s = seam.SelfBound{First: first, Width: half, Turned: a, Trim: b}
		case 5:
			m.second, m.trim = rest, first
			s = seam.TurnedStitched{First: first, Width: rest, Turned: a, Trim: first}
		case 6:
			m.second, m.trim = rest, first
			s = seam.MockFrench{First: first, Width: rest, Turned: a, Trim: first}
		case 7:
			m.second = first
			s = seam.UntrimmedFell{Width: first, Turned: a}
		case 8:
			m.second = rest.MulInt(2)
			s = seam.LappedTurned{Lap: rest.MulInt(2), Turned: a}
		case 9:
			m.trim, m.second, m.strip = first, b, sixteenths(4, 32)
			m.wrapped = m.strip.Sub(b.MulInt(2))
			s = seam.HongKong{First: first, Width: b, Trim: first, Strip: m.strip}
		}
		if m.second.Sign() <= 0 {
			continue
		}
		_, err := s.Plan()
		if errors.Is(err, fault.Range) {
			continue
		}
		m.kind = seam.Any{Seam: s}.Kind()
		if lies := draw(m).lies(); lies != (err == nil) {
			t.Fatalf("%+v: lies as drawn %v, planned %v", s, lies, err)
		}
		if err == nil {
			good[m.kind]++
		} else {
			bad[m.kind]++
		}
	}
	if len(good) != 10 || len(bad) != 10 {
		t.Errorf("%d kinds good, %d bad", len(good), len(bad))
	}
}

// Each of these wrong formulas gives a figure that the drawing contradicts.
func TestOracleFindsWrongFormulas(t *testing.T) {
	drafted := seam.Allowance{Drafted: in(7, 8)}
	for _, w := range []struct {
		why   string
		seam  seam.Seam
		plant func(*seam.Plan, *measures)
	}{
		{"a French seam takes its first pass", seam.French{}, func(p *seam.Plan, m *measures) { p.Upper = side(p.Upper, m.first) }},
		{"a French seam drifts by its first pass", seam.French{}, func(p *seam.Plan, m *measures) { p.Upper.Drift = m.first }},
		{"trimming takes from the ply", seam.FlatFelled{}, func(p *seam.Plan, m *measures) { p.Under = side(p.Under, m.trim) }},
		{"a fell is what is left beside the trimmed edge", seam.FlatFelled{}, func(p *seam.Plan, m *measures) {
			m.second = m.first.Sub(m.trim)
			p.Finished = m.second
		}},
		{"the binding of a self-bound seam is (T - u)/4", seam.SelfBound{}, func(p *seam.Plan, m *measures) {
			m.second = m.first.Sub(m.trim).DivInt(4)
			p.Finished = m.second
		}},
		{"a Hong Kong strip loses its seam once", seam.HongKong{}, func(_ *seam.Plan, m *measures) { m.wrapped = m.strip.Sub(m.second) }},
		{"a lapped seam takes the lap and the turns from each ply", seam.LappedTurned{}, func(p *seam.Plan, m *measures) {
			p.Upper = side(p.Upper, m.second.Add(m.turned.MulInt(2)))
		}},
		{"raw edges lapped take the lap from each ply", seam.LappedRaw{}, func(p *seam.Plan, m *measures) { p.Under = side(p.Under, m.second) }},
		{"an untrimmed fell takes the same from both plies", seam.UntrimmedFell{}, func(p *seam.Plan, m *measures) { p.Under = side(p.Under, m.first) }},
		{"a single binding is three times its width", seam.Bound{}, func(p *seam.Plan, m *measures) {
			p.Strips[0].Width = units.Exactly(m.second.MulInt(3))
		}},
		{"a ridge is four plies thick", seam.French{}, func(p *seam.Plan, _ *measures) { p.Plies = 4 }},
		{"a fell is always three plies thick", seam.MockFelled{}, func(p *seam.Plan, _ *measures) { p.Plies = 3 }},
		{"nothing of a fell is seen but its edge", seam.FlatFelled{}, func(p *seam.Plan, _ *measures) { p.Rows = 1 }},
		{"a mock French seam is as wide as its allowance", seam.MockFrench{}, func(p *seam.Plan, m *measures) { p.Finished = m.trim }},
		{"the cord takes its width twice", seam.Piped{}, func(p *seam.Plan, m *measures) {
			p.Strips[0].Width = units.Exactly(m.cord.MulInt(2).Add(m.first.MulInt(2)))
		}},
		{"a welt leaves no raw edge", seam.Welt{}, func(p *seam.Plan, _ *measures) { p.Raw = false }},
	} {
		p := planned(t, on(w.seam, drafted))
		m := measuresOf(p)
		if out := differs(p, m); len(out) > 0 {
			t.Fatalf("%v: differs before anything is planted: %v", m.kind, out)
		}
		w.plant(&p, &m)
		if out := differs(p, m); len(out) == 0 {
			t.Errorf("not found: %s", w.why)
		}
	}
}

func side(d seam.Side, taken units.Length) seam.Side {
	d.Taken, d.Drift = taken, d.Cut.Sub(taken)
	return d
}
