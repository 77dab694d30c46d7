package hem_test

import (
	"errors"
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/section"
)

// A span is from one place to another.
type span [2]units.Length

// A want is what a drawing must show, said from the plan and not from the drawing.
type want struct {
	plies    int
	creases  [][]units.Length // of each ply: its ends and the inside of each fold; an end that runs on is left out
	ends     [][2]section.End // of each ply
	rows     []units.Length   // where the upright rows are
	pierced  []int            // how many plies each goes through
	measures map[string]span  // all of them
	gap      bool             // whether air is left between the plies where they are the most
	up       []bool           // whether the first level part of each ply has its right side up
}

// creases are the ends of a ply and the inside of each fold that turns back, in
// the order of its path; steps over other cloth are none.
func creases(d section.Drawing, p section.Ply) []units.Length {
	half := d.Thickness.DivInt(2)
	out := []units.Length{p.Path[0].X}
	for i := 1; i+2 < len(p.Path); i++ {
		a, b, c, e := p.Path[i-1], p.Path[i], p.Path[i+1], p.Path[i+2]
		if b.X != c.X {
			continue
		}
		switch in, on := b.X.Cmp(a.X), e.X.Cmp(c.X); {
		case in > 0 && on < 0:
			out = append(out, b.X.Sub(half))
		case in < 0 && on > 0:
			out = append(out, b.X.Add(half))
		}
	}
	return append(out, p.Path[len(p.Path)-1].X)
}

// layers is the most plies that one upright line crosses, and whether they lie one
// on another there without a gap.
func layers(d section.Drawing) (most int, flat bool) {
	var xs []units.Length
	for _, p := range d.Plies {
		for _, at := range p.Path {
			xs = append(xs, at.X)
		}
	}
	slices.SortFunc(xs, units.Length.Cmp)
	for i := 1; i < len(xs); i++ {
		mid := xs[i-1].Add(xs[i]).DivInt(2)
		if mid == xs[i] {
			continue
		}
		var ys []units.Length
		for _, p := range d.Plies {
			for k := 1; k < len(p.Path); k++ {
				if a, b := p.Path[k-1].X, p.Path[k].X; a.Min(b).Less(mid) && mid.Less(a.Max(b)) {
					ys = append(ys, p.Path[k].Y)
				}
			}
		}
		high := slices.MaxFunc(append(ys, units.Length{}), units.Length.Cmp)
		low := slices.MinFunc(append(ys, units.Length{}), units.Length.Cmp)
		even := high.Sub(low) == d.Thickness.MulInt(int64(len(ys)-1))
		switch {
		case len(ys) > most:
			most, flat = len(ys), even
		case len(ys) == most:
			flat = flat || even
		}
	}
	return most, flat
}

// runOn is whether cloth that runs on does so beyond everything else.
func runOn(d section.Drawing, end, in section.Point) bool {
	if end.Y != in.Y {
		return true
	}
	for _, p := range d.Plies {
		for _, at := range p.Path {
			if end.X.Less(in.X) && at.X.Less(end.X) || in.X.Less(end.X) && end.X.Less(at.X) {
				return false
			}
		}
	}
	return true
}

// compare holds a drawing against what it must show. A zero ply of want is not
// looked at; the end of cloth that runs on is not either.
func compare(t *testing.T, d section.Drawing, w want) {
	t.Helper()
	if err := d.Check(); err != nil {
		t.Errorf("%s: %v", d.Title, err)
	}
	if n, flat := layers(d); n != w.plies || flat == w.gap {
		t.Errorf("%s: %d plies at the thickest, flat %v, want %d", d.Title, n, flat, w.plies)
	}
	if len(d.Plies) != len(w.creases) {
		t.Fatalf("%s: %d plies", d.Title, len(d.Plies))
	}
	for i, p := range d.Plies {
		got := creases(d, p)
		if p.Start == section.RunsOn {
			got = got[1:]
		}
		if p.Finish == section.RunsOn {
			got = got[:len(got)-1]
		}
		if !slices.Equal(got, w.creases[i]) {
			t.Errorf("%s: %s is creased at %v, want %v (thickness %v)", d.Title, p.Name, got, w.creases[i], d.Thickness)
		}
		if p.Start != w.ends[i][0] || p.Finish != w.ends[i][1] {
			t.Errorf("%s: %s ends %v and %v, want %v", d.Title, p.Name, p.Start, p.Finish, w.ends[i])
		}
	}
	for i, p := range d.Plies {
		n := len(p.Path)
		if p.Start == section.RunsOn && !runOn(d, p.Path[0], p.Path[1]) || p.Finish == section.RunsOn && !runOn(d, p.Path[n-1], p.Path[n-2]) {
			t.Errorf("%s: %s does not run on", d.Title, p.Name)
		}
		k := 1
		for p.Path[k].Y != p.Path[k-1].Y {
			k++
		}
		if up := p.Path[k-1].X.Less(p.Path[k].X) == (p.Face == section.Left); p.Face == section.NoFace || up != w.up[i] {
			t.Errorf("%s: the right side of %s is %v, up %v", d.Title, p.Name, p.Face, up)
		}
	}
	var rows []units.Length
	var pierced []int
	for _, s := range d.Stitches {
		if s.From.X == s.To.X { // upright
			rows = append(rows, s.From.X)
			pierced = append(pierced, len(s.Pierce))
		}
	}
	if !slices.Equal(rows, w.rows) || !slices.Equal(pierced, w.pierced) {
		t.Errorf("%s: rows at %v through %v, want %v through %v", d.Title, rows, pierced, w.rows, w.pierced)
	}
	got := map[string]span{}
	for _, m := range d.Dimensions {
		got[m.Name] = span{m.From.X, m.To.X}
	}
	if len(got) != len(d.Dimensions) || !maps.Equal(got, w.measures) {
		t.Errorf("%s: measures %v, want %v", d.Title, got, w.measures)
	}
}

const (
	on, raw, hid, neat = section.RunsOn, section.Raw, section.Hidden, section.Neat
)

// wanted are what the drawings of a hem must show, stage by stage, in the terms of
// the trade: the finished edge at 0, each fold and row where the plan has it.
func wanted(p hem.Plan, thick units.Length) []want {
	s := specOf(p.Spec)
	var o units.Length
	row, depth := p.FinishedToStitch.Neg(), s.Depth.Neg()
	turn := s.First
	if s.Trim.Sign() > 0 {
		turn = s.Trim
	}
	turned := depth.Add(turn)
	caught := 0 // of the first turn
	if s.Stitch.Less(turn) {
		caught = 1
	}
	switch {
	case s.Kind == "single":
		return []want{{plies: p.Plies, up: []bool{false}, creases: [][]units.Length{{o, p.Folds[0].Raw.Neg()}}, ends: [][2]section.End{{on, neat}},
			rows: []units.Length{p.RawToStitch.Sub(p.Folds[0].Raw)}, pierced: []int{2},
			measures: map[string]span{"hem": {depth, o}, "from the raw edge to the row": {depth, row}, "from the finished edge to the row": {row, o}}}}
	case s.Kind == "blind":
		back := p.Others[0].Long.Neg()
		first, then := want{plies: 3, up: []bool{false}, creases: [][]units.Length{{depth, o, back.Add(thick)}}, ends: [][2]section.End{{neat, on}},
			rows: []units.Length{row}, pierced: []int{1},
			measures: map[string]span{"hem": {depth, o}, "stands out": {depth, back}, "from the finished edge to the row": {row, o}, "from the finished edge to the fold of the garment": {back, o}}},
			want{plies: p.Plies, up: []bool{false}, creases: [][]units.Length{{o, depth}}, ends: [][2]section.End{{on, neat}},
				rows: []units.Length{row, back}, pierced: []int{1, 1},
				measures: map[string]span{"hem": {depth, o}, "from the finished edge to the row": {row, o}, "from the finished edge to the bites": {back, o}}}
		if s.First.Sign() > 0 {
			first.creases, then.creases = [][]units.Length{{turned, depth, o, back.Add(thick)}}, [][]units.Length{{o, depth, turned}}
			first.pierced[0] += caught
			then.pierced[0] += caught
			first.ends[0][0], then.ends[0][1] = hid, hid
			first.up[0] = true // the turn, wrong side to the wrong side of the hem
			first.plies++
			if s.First.Cmp(s.Back.Add(thick.DivInt(2))) <= 0 { // the turn ends before the garment is past its fold
				first.plies, first.gap = 3, true
			}
			if s.First.Less(s.Back) {
				first.ends[0][0] = raw
			}
			then.measures["first turn"] = span{depth, turned}
		}
		return []want{first, then}
	case s.Kind == "faced" || s.Kind == "bias-faced":
		favour := s.Favour.Neg()
		edge := favour.Sub(s.Seam)
		sewn := stripOf(p).Fold.Neg()
		ours, theirs := hid, hid
		// Where the row does not, only the facing shuts the allowances in: stepping down
		// beyond both, or with its turn level with its own.
		if edge.Sub(turned).Less(thick) && edge.Less(row) {
			if ours = raw; edge.Less(turned) {
				theirs = raw
			}
		}
		pierced := 2 + caught
		if edge.Less(row) {
			pierced += 2
		}
		m := map[string]span{"facing": {depth, o}, "from the finished edge to the row": {row, o}, "seam": {edge, favour}, "turned in": {depth, turned}}
		if s.Favour.Sign() > 0 {
			m["favour"] = span{favour, o}
		}
		return []want{
			{plies: 3, up: []bool{true, false}, creases: [][]units.Length{{o}, {o, sewn, sewn.Add(s.First)}}, ends: [][2]section.End{{on, raw}, {raw, raw}},
				rows: []units.Length{s.Seam.Neg()}, pierced: []int{2},
				measures: map[string]span{"seam": {s.Seam.Neg(), o}, "from the sewn edge to the fold of the facing": {sewn, o}, "turned in": {sewn, sewn.Add(s.First)}}},
			{plies: p.Plies, up: []bool{false, false}, creases: [][]units.Length{{o, p.Folds[0].Raw.Neg()}, {edge, favour, depth, turned}}, ends: [][2]section.End{{on, ours}, {theirs, hid}},
				rows: []units.Length{favour, row}, pierced: []int{2, pierced}, measures: m},
		}
	case s.Kind == "bound" || s.Kind == "double-bound":
		edge := p.Taken // the raw edge of the garment, plus outwards beyond the finished edge
		sewn := stripOf(p).Fold.Neg()
		first := want{plies: 3, up: []bool{true, false}, creases: [][]units.Length{{o}, {o, sewn, sewn.Add(s.First)}}, ends: [][2]section.End{{on, raw}, {raw, raw}},
			rows: []units.Length{s.Seam.Neg()}, pierced: []int{2},
			measures: map[string]span{"seam": {s.Seam.Neg(), o}, "from the sewn edge to the fold of the binding": {sewn, o}, "turned in": {sewn, sewn.Add(s.First)}}}
		then := want{plies: p.Plies, up: []bool{true, false}, creases: [][]units.Length{{edge}, {edge, depth, o, depth, turned}}, ends: [][2]section.End{{on, hid}, {hid, hid}},
			rows: []units.Length{depth, row}, pierced: []int{2, 2},
			measures: map[string]span{"binding": {depth, o}, "seam": {depth, edge}, "turned in": {depth, turned}}}
		if s.Kind == "double-bound" {
			first.creases[1][2], first.pierced[0], then.pierced[0] = o, 3, 3
			then.creases[1] = []units.Length{edge, depth.Sub(thick), thick, depth, o, depth, edge}
			delete(first.measures, "turned in")
			delete(then.measures, "turned in")
		}
		return []want{first, then}
	case s.Kind == "turn-up":
		top := p.Folds[1].Raw.Neg()
		return []want{
			{plies: 2, up: []bool{false}, creases: [][]units.Length{{o, top}}, ends: [][2]section.End{{on, neat}}, rows: []units.Length{top.Add(p.RawToStitch)}, pierced: []int{2},
				measures: map[string]span{"from the raw edge to the top fold": {top, o}, "from the raw edge to the row": {top, top.Add(p.RawToStitch)}}},
			{plies: p.Plies, up: []bool{false}, creases: [][]units.Length{{o, depth, thick, p.Folds[0].Raw.Neg()}}, ends: [][2]section.End{{on, neat}}, rows: []units.Length{row}, pierced: []int{2},
				measures: map[string]span{"turn-up": {depth, o}, "hem inside": {s.First.Neg(), o}, "from the foot to the row": {row, o}}},
		}
	}
	// Turned twice: the folds are where they are from the raw edge.
	second := p.Folds[0].Raw.Sub(p.Folds[1].Raw)
	name, out := "first turn", []want{}
	if s.Trim.Sign() > 0 {
		name = "first turn, trimmed"
		out = append(out, want{plies: 1, up: []bool{false}, creases: [][]units.Length{{o}}, ends: [][2]section.End{{on, raw}}, rows: []units.Length{s.First.Neg()}, pierced: []int{1},
			measures: map[string]span{"first turn": {s.First.Neg(), o}}})
	}
	return append(out, want{plies: p.Plies, up: []bool{false}, creases: [][]units.Length{{o, second, second.Add(turn)}}, ends: [][2]section.End{{on, hid}},
		rows: []units.Length{p.RawToStitch.Sub(p.Folds[1].Raw)}, pierced: []int{2 + caught},
		measures: map[string]span{"hem": {depth, o}, "from the finished edge to the row": {row, o}, name: {depth, turned}}})
}

// few is a length up to 4 in, of a family that a sewer or a school might use.
func few(r *rand.Rand) units.Length {
	n := r.Int64N(32) + 1
	switch r.IntN(4) {
	case 0:
		return units.Inch.Frac(n, 16)
	case 1:
		return units.Millimetre.Of(n)
	case 2:
		return units.Inch.Frac(n, 7)
	}
	return units.Inch.Frac(n, 8)
}

// part is a part of l, at most all of it.
func part(r *rand.Rand, l units.Length) units.Length {
	n := r.Int64N(12) + 1
	return l.Scale(units.RatioOf(r.Int64N(n)+1, n))
}

// within is a part of l, less than all of it.
func within(r *rand.Rand, l units.Length) units.Length { return part(r, l.MulInt(7).DivInt(8)) }

// anyHem is a hem of the kind, every measure of which is within the others.
func anyHem(r *rand.Rand, k string) spec {
	s := spec{Kind: k, Depth: few(r)}
	switch k {
	case "single":
		s.Stitch = part(r, s.Depth.DivInt(2))
	case "blind":
		s.Back = part(r, s.Depth.DivInt(2))
		s.Stitch = part(r, s.Back)
		if r.IntN(2) == 0 {
			s.First = part(r, s.Depth)
			s.Stitch = s.Stitch.Min(within(r, s.First))
		}
	case "faced", "bias-faced":
		s.Seam, s.Spare = few(r), few(r)
		if r.IntN(2) == 0 {
			s.Favour = part(r, s.Depth.DivInt(3))
		}
		s.Stitch, s.First = within(r, s.Depth.Sub(s.Favour)), part(r, s.Depth.Sub(s.Favour))
		if s.Stitch == s.First {
			s.Stitch = s.First.DivInt(2)
		}
	case "bound", "double-bound":
		s.Seam = part(r, s.Depth)
		if k == "bound" {
			s.First = part(r, s.Depth)
		}
	case "turn-up":
		s.First = few(r)
		s.Stitch = part(r, s.First.DivInt(2))
	case "seam-slit", "slit":
		s.SeamTake = few(r)
		fallthrough
	default:
		s.First = part(r, s.Depth)
		if r.IntN(4) == 0 {
			s.First, s.Trim = few(r), part(r, s.Depth)
			s.Trim = s.Trim.Min(s.First)
		}
		if s.Stitch = within(r, s.First); s.Trim.Sign() > 0 {
			s.Stitch = within(r, s.Trim)
		}
		if k == "shirt-tail" {
			s.Circle = units.RatioOf(1, 4)
		}
	}
	return s
}

// thickness is one that a ply of the plan can be drawn at.
func thickness(r *rand.Rand, least ...units.Length) units.Length {
	t := least[0]
	for _, l := range least[1:] {
		if l.Sign() > 0 {
			t = t.Min(l)
		}
	}
	return part(r, t)
}

// TestDrawn: whatever the measures, the drawings of every kind show what the plan
// says.
func TestDrawn(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 49))
	for a := range hem.Kinds() {
		k := a.Kind()
		drawn, refused := 0, 0
		for range nountest.Rounds(400) {
			s := anyHem(r, k)
			p, err := s.plan()
			if err != nil {
				t.Fatalf("%+v: %v", s, err)
			}
			s = specOf(p.Spec)
			thick := thickness(r, s.Depth, s.First, s.Trim, s.Seam, s.Depth.Sub(s.Back))
			ds, err := p.Sections(thick)
			if s.Seam.Sign() > 0 && s.Kind != "bound" && s.Kind != "double-bound" && p.FinishedToStitch == s.Seam.Add(s.Favour) {
				if refused++; err == nil || !strings.Contains(err.Error(), "the seam allowances") {
					t.Errorf("%+v: %v", s, err)
				}
				continue
			}
			if err != nil {
				t.Fatalf("%+v at %v: %v", s, thick, err)
			}
			drawn++
			ws := wanted(p, thick)
			if len(ds) != len(ws) {
				t.Fatalf("%+v: %d stages", s, len(ds))
			}
			for i, d := range ds {
				if d.Thickness != thick {
					t.Errorf("%v is drawn at %v", thick, d.Thickness)
				}
				compare(t, d, ws[i])
			}
			if t.Failed() {
				t.Fatalf("%+v", p)
			}
			if _, err := p.Sections(units.Length{}); err != nil {
				t.Fatalf("%+v: %v", s, err)
			}
		}
		if drawn < 300 {
			t.Errorf("%v: %d drawn, %d refused", k, drawn, refused)
		}
	}
}

// TestDrawnCasing: the rows of a casing are where the plan says.
func TestDrawnCasing(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 51))
	drawn := 0
	for range 1500 {
		kinds := slices.Collect(hem.CasingKinds())
		s := hem.Casing{Kind: kinds[r.IntN(len(kinds))], Applied: r.IntN(3) == 0, Width: few(r), Ease: few(r)}
		if r.IntN(2) == 0 {
			s.Heading = units.Give(few(r))
		}
		if r.IntN(2) == 0 {
			s.Lower = few(r)
		}
		all := s.Width.Add(s.Ease).Add(s.Heading.Or(units.Length{})).Add(s.Lower)
		if s.Turn = part(r, all); s.Applied {
			s.Turn = part(r, all.DivInt(2))
		}
		if s.Turn.Cmp(s.Lower) <= 0 || s.Applied && s.Turn.Cmp(s.Heading.Or(units.Length{})) <= 0 {
			if p, err := s.Plan(); !errors.Is(err, fault.Range) {
				t.Fatalf("%+v: %v", p, err)
			}
			continue
		}
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		s = p.Spec
		thick := thickness(r, p.Depth, s.Turn)
		ds, err := p.Sections(thick)
		if err != nil {
			if s.Applied || p.FinishedToUpper != p.Depth.Sub(s.Turn) {
				t.Fatalf("%+v: %v", s, err)
			}
			continue
		}
		drawn++
		var o units.Length
		depth, upper, lower, turned := p.Depth.Neg(), p.FinishedToUpper.Neg(), p.FinishedToLower.Neg(), s.Turn.Sub(p.Depth)
		w := want{plies: p.Plies, up: []bool{false, false}, creases: [][]units.Length{{o, p.RawToFold.Sub(p.RawToEdge), p.RawToFold.MulInt(2).Sub(p.RawToEdge)}}, ends: [][2]section.End{{on, hid}},
			measures: map[string]span{"casing": {depth, o}, "tunnel": {lower, upper}, "turned in": {depth, turned}}}
		if s.Applied {
			w.creases, w.ends = [][]units.Length{{}, {s.Turn.Neg(), o, depth, turned}}, [][2]section.End{{on, on}, {hid, hid}}
		}
		if !s.Heading.Or(units.Length{}).IsZero() {
			w.measures["above the upper row"] = span{upper, o}
		}
		if s.Lower.Sign() > 0 {
			w.measures["below the lower row"] = span{depth, lower}
		}
		through := func(x units.Length) {
			n := 2
			if x.Less(turned) || s.Applied && s.Turn.Neg().Less(x) {
				n = 3
			}
			w.rows, w.pierced = append(w.rows, x), append(w.pierced, n)
		}
		if p.Rows == 2 {
			through(upper)
		}
		through(lower)
		if len(ds) != 1 || len(w.rows) != p.Rows {
			t.Fatalf("%d drawings, %d rows", len(ds), len(w.rows))
		}
		compare(t, ds[0], w)
		if t.Failed() {
			t.Fatalf("%+v", p)
		}
	}
	if drawn < 1000 {
		t.Errorf("only %d drawn", drawn)
	}
}

// TestDrawnTuck: a tuck takes up two plies of its depth, and lies on a third.
func TestDrawnTuck(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 52))
	for range 300 {
		for k := range hem.TuckKinds() {
			s := hem.Tucks{Kind: k, Depth: few(r), Count: 1, Edge: few(r)}
			p, err := s.Plan()
			if err != nil {
				t.Fatal(err)
			}
			thick := thickness(r, s.Depth)
			ds, err := p.Sections(thick)
			if err != nil || len(ds) != 3 {
				t.Fatalf("%+v: %v", s, err)
			}
			var o units.Length
			depth := s.Depth.Neg()
			compare(t, ds[0], want{plies: 2, up: []bool{false}, creases: [][]units.Length{{o}}, ends: [][2]section.End{{on, on}}, rows: []units.Length{depth}, pierced: []int{2}, measures: map[string]span{"depth": {depth, o}}})
			compare(t, ds[1], want{plies: 2, up: []bool{true}, creases: [][]units.Length{{s.Depth}}, ends: [][2]section.End{{on, on}}, rows: []units.Length{o}, pierced: []int{2}, measures: map[string]span{"depth": {o, s.Depth}}})
			compare(t, ds[2], want{plies: p.Plies, up: []bool{true}, creases: [][]units.Length{{o, depth}}, ends: [][2]section.End{{on, on}}, rows: []units.Length{o}, pierced: []int{2}, measures: map[string]span{"depth": {depth, o}}})
			if t.Failed() {
				t.Fatalf("%+v", p)
			}
		}
	}
}
