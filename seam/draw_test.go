package seam_test

import (
	"errors"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// A span is a level part of a ply in a drawing.
type span struct {
	low, high, y units.Length
}

// spans are the level parts of all plies, each loose end longer by a hair: edges
// that just meet count as lying over one another.
func spans(d section.Drawing) (out []span) {
	hair := d.Thickness.DivInt(1000)
	for _, p := range d.Plies {
		n := len(p.Path)
		for k := 1; k < n; k++ {
			a, b := p.Path[k-1], p.Path[k]
			if a.Y != b.Y {
				continue
			}
			s := span{a.X.Min(b.X), a.X.Max(b.X), a.Y}
			for _, end := range [...]struct {
				here bool
				at   units.Length
			}{{k == 1 && p.Start != section.RunsOn, a.X}, {k == n-1 && p.Finish != section.RunsOn, b.X}} {
				switch {
				case !end.here:
				case end.at == s.low:
					s.low = s.low.Sub(hair)
				default:
					s.high = s.high.Add(hair)
				}
			}
			out = append(out, s)
		}
	}
	return out
}

// thickest counts the plies on the vertical line that crosses the most.
func thickest(d section.Drawing) (most int) {
	all := spans(d)
	var at []units.Length
	for _, s := range all {
		at = append(at, s.low, s.high)
	}
	slices.SortFunc(at, units.Length.Cmp)
	for i := 1; i < len(at); i++ {
		mid, n := at[i-1].Add(at[i]).DivInt(2), 0
		for _, s := range all {
			if s.low.Less(mid) && mid.Less(s.high) {
				n++
			}
		}
		most = max(most, n)
	}
	return most
}

// seen counts the rows that come out on the right side of the garment.
func seen(d section.Drawing, rightUp bool) (n int) {
	for _, s := range d.Stitches {
		if s.From.X != s.To.X {
			continue // between plies
		}
		out := true
		for _, p := range spans(d) {
			if s.From.X.Less(p.low) || p.high.Less(s.From.X) {
				continue
			}
			if rightUp && s.From.Y.Max(s.To.Y).Less(p.y) || !rightUp && p.y.Less(s.From.Y.Min(s.To.Y)) {
				out = false
			}
		}
		if out {
			n++
		}
	}
	return n
}

// raws counts the raw edges that show.
func raws(d section.Drawing) (n int) {
	for _, p := range d.Plies {
		for _, e := range [...]section.End{p.Start, p.Finish} {
			if e == section.Raw {
				n++
			}
		}
	}
	return n
}

// measured is the measure so named, from its ends.
func measured(d section.Drawing, name string) (units.Length, bool) {
	for _, m := range d.Dimensions {
		if m.Name == name {
			return m.From.X.Sub(m.To.X).Abs(), true
		}
	}
	return units.Length{}, false
}

// acrossSeam is the name of the finished width in the last drawing of a kind.
func acrossSeam(s seam.Spec) string {
	switch s.Kind {
	case seam.Plain:
		if !s.Aside {
			return "under allowance"
		}
		return "from the seam to the raw edges"
	case seam.Hairline, seam.Piped:
		return "from the seam to the raw edges"
	case seam.French:
		return "ridge"
	case seam.FlatFelled, seam.MockFelled, seam.UntrimmedFell:
		return "fell"
	case seam.Bound, seam.SelfBound:
		return "binding"
	case seam.TurnedStitched:
		return "right, from seam to fold"
	case seam.MockFrench:
		return "from seam to folds"
	case seam.Welt:
		return "welt"
	case seam.Lapped:
		return "from the edge beneath to the fold"
	case seam.LappedTurned, seam.LappedRaw:
		return "lap"
	case seam.Slot:
		return "from row to row"
	case seam.HongKong:
		return "right binding"
	}
	return "upper ply trimmed to"
}

func isRightUp(k seam.Kind) bool {
	switch k {
	case seam.FlatFelled, seam.UntrimmedFell, seam.Lapped, seam.LappedTurned, seam.LappedRaw:
		return true
	}
	return false
}

// rawEdge is where a ply ends on the drawing.
func rawEdge(d section.Drawing, name string) units.Length {
	for _, p := range d.Plies {
		if p.Name == name {
			return p.Path[len(p.Path)-1].X
		}
	}
	return units.Length{}
}

// rowAt is where a row is, the middle of one that lies level.
func rowAt(d section.Drawing, name string) units.Length {
	for _, s := range d.Stitches {
		if s.Name == name {
			return s.From.X.Add(s.To.X).DivInt(2)
		}
	}
	return units.Length{}
}

// disagrees compares the finished drawing with its plan.
func disagrees(t *testing.T, p seam.Plan, d section.Drawing) {
	t.Helper()
	s := p.Spec
	if n := thickest(d); n != p.Plies {
		t.Errorf("%+v: %d plies drawn, %d planned", s, n, p.Plies)
	}
	if n := seen(d, isRightUp(s.Kind)); n != p.Rows {
		t.Errorf("%+v: %d rows seen on the drawing, %d planned", s, n, p.Rows)
	}
	if raws(d) > 0 != p.Raw {
		t.Errorf("%+v: %d raw edges drawn, planned %v", s, raws(d), p.Raw)
	}
	if got, ok := measured(d, acrossSeam(s)); !ok || got != p.Finished {
		t.Errorf("%+v: finished %v drawn, %v planned", s, got, p.Finished)
	}
	// What is left of the under ply beyond the seam, or of both.
	seamRow, inside := "the seam", units.Length{}
	switch s.Kind {
	case seam.Bound, seam.HongKong, seam.SelfBound:
		inside = d.Thickness
	case seam.French:
		seamRow = "first pass"
	case seam.TurnedStitched, seam.MockFrench, seam.UntrimmedFell, seam.Lapped, seam.LappedTurned, seam.LappedRaw, seam.Graded:
		return
	}
	at := rowAt(d, seamRow)
	if s.Kind == seam.FlatFelled && p.Turned == s.Second {
		inside = d.Thickness.DivInt(2)
	}
	if off := rawEdge(d, "under ply").Sub(at).Abs(); off != s.Trim.Add(inside) {
		t.Errorf("%+v: the under edge drawn %v from the seam, planned %v", s, off, s.Trim)
	}
	upper := s.Trim
	switch s.Kind {
	case seam.FlatFelled, seam.MockFelled, seam.SelfBound:
		return // turned in
	case seam.Welt:
		upper = s.First
	}
	if off := rawEdge(d, "upper ply").Sub(at).Abs(); off != upper.Add(inside) {
		t.Errorf("%+v: the upper edge drawn %v from the seam, planned %v", s, off, upper)
	}
}

// lacks fails unless err is a list of measures that have too little room.
func lacks(t *testing.T, err error) {
	t.Helper()
	var fs fault.Faults
	if !errors.As(err, &fs) || len(fs) == 0 {
		t.Fatalf("%v", err)
	}
	for _, f := range fs {
		if f.Kind != fault.Range || f.Path == "" || f.Got == "" || !strings.Contains(f.Limit, "at least") {
			t.Errorf("%v", f)
		}
	}
}

// TestSections draws every kind over random measures and measures the drawings.
func TestSections(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 18))
	drawn, refused, thicker := map[seam.Kind]int{}, map[seam.Kind]int{}, map[seam.Kind]int{}
	for range 12_000 {
		p, err := someSpec(r).Plan()
		if err != nil {
			continue
		}
		ds, err := p.Sections(units.Length{})
		if err != nil {
			t.Fatalf("%+v: %v", p.Spec, err)
		}
		drawn[p.Spec.Kind]++
		for _, d := range ds {
			if d.True != p.Spec.Thickness || d.Desc == "" {
				t.Fatalf("%+v: %s, %q", p.Spec, d.True, d.Desc)
			}
		}
		disagrees(t, p, ds[len(ds)-1])
		if t.Failed() {
			t.FailNow()
		}
		// At any thickness the seam is drawn as planned, or what it lacks is named.
		thick := ds[0].Thickness.Scale(units.RatioOf(1+r.Int64N(24), 8))
		switch ds, err := p.Sections(thick); {
		case err == nil:
			disagrees(t, p, ds[len(ds)-1])
			thicker[p.Spec.Kind] += thick.Cmp(ds[0].Thickness) + 1
		default:
			if lacks(t, err); t.Failed() {
				t.Fatalf("%+v at %v", p.Spec, thick)
			}
			refused[p.Spec.Kind]++
		}
		if t.Failed() {
			t.FailNow()
		}
	}
	for k := range seam.Kinds {
		if drawn[k] < 60 || refused[k] < 10 || thicker[k] < 20 {
			t.Errorf("%v: only %d drawn, %d of another thickness, %d refused", k, drawn[k], thicker[k], refused[k])
		}
	}
}

// Every distance at which the sheet sews, trims and cuts is a measure in one of the
// drawings, and every stage has a title of its own.
func TestSectionsCoverTheSheet(t *testing.T) {
	for k := range seam.Kinds {
		for _, s := range []seam.Spec{{Kind: k}, {Kind: k, First: in(1, 1), Drafted: in(1, 1)}, {Kind: k, Drafted: in(3, 4), First: in(3, 4)}} {
			p := planned(t, s)
			ds, err := p.Sections(units.Length{})
			if err != nil {
				t.Fatal(err)
			}
			titles, amounts := map[string]bool{}, map[units.Length]bool{}
			for _, d := range ds {
				titles[d.Title] = true
				for _, m := range d.Dimensions {
					amounts[m.From.X.Sub(m.To.X).Abs()] = true
				}
			}
			if len(titles) != len(ds) {
				t.Errorf("%v: %d titles for %d stages", k, len(titles), len(ds))
			}
			for _, step := range p.Sheet().Steps {
				if strings.Contains(step.Do, "test pieces") {
					continue
				}
				for _, a := range [...]ticket.Amount{step.At, step.Trim, step.Check.Want} {
					if l, ok := a.Near().Exact(); ok && !l.IsZero() && !amounts[l] {
						t.Errorf("%v: %s: %v is in no drawing", k, step.Do, l)
					}
				}
			}
		}
	}
}

// The row beside a pinked edge is drawn where the sheet has it.
func TestSectionsPinked(t *testing.T) {
	for _, s := range []seam.Spec{
		{Kind: seam.Plain}, {Kind: seam.Plain, Trim: in(3, 8)}, {Kind: seam.Plain, Aside: true}, {Kind: seam.Welt}, {Kind: seam.Slot},
	} {
		s.Finish = seam.Pinked
		p := planned(t, s)
		ds, err := p.Sections(units.Length{})
		if err != nil {
			t.Fatal(err)
		}
		var want units.Length
		for _, step := range p.Sheet().Steps {
			if strings.Contains(step.Do, "pink") {
				want, _ = step.At.Near().Exact()
			}
		}
		n := 0
		for _, m := range ds[len(ds)-1].Dimensions {
			if strings.HasPrefix(m.Name, "row to pinked") {
				n++
				if got := m.From.X.Sub(m.To.X).Abs(); got != want || want.IsZero() {
					t.Errorf("%v: %s is %v, on the sheet %v", s.Kind, m.Name, got, want)
				}
			}
		}
		if n != 2 {
			t.Errorf("%v: %d pinked edges", s.Kind, n)
		}
	}
}

// The description says what the picture cannot.
func TestSectionsWords(t *testing.T) {
	for _, c := range []struct {
		spec  seam.Spec
		stage int
		words string
		said  bool
	}{
		{seam.Spec{Kind: seam.Plain}, 0, "Right sides together", true},
		{seam.Spec{Kind: seam.French}, 0, "Wrong sides together", true},
		{seam.Spec{Kind: seam.Plain}, 0, "unequal allowances", false},
		{seam.Spec{Kind: seam.Plain, Cut: in(1, 2), CutUnder: in(5, 8), First: in(1, 2)}, 0, "unequal allowances", true},
		{seam.Spec{Kind: seam.HongKong, Strip: in(9, 8)}, 2, "trimmed off at the seam", false},
		{seam.Spec{Kind: seam.HongKong, Strip: in(19, 16)}, 2, "trimmed off at the seam", true},
		{seam.Spec{Kind: seam.Graded}, 1, "run out at the seam", false},
		{seam.Spec{Kind: seam.Graded, Layers: 3}, 1, "run out at the seam", true},
		{seam.Spec{Kind: seam.Piped}, 0, "The cord is the gap", true},
	} {
		ds, err := planned(t, c.spec).Sections(units.Length{})
		if err != nil {
			t.Fatal(err)
		}
		if d := ds[c.stage]; strings.Contains(d.Desc, c.words) != c.said {
			t.Errorf("%s: %q", d.Title, d.Desc)
		}
	}
}
