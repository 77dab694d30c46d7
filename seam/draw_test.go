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
	"example.com/clothyard/units/noun/nountest"
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
func acrossSeam(m measures) string {
	switch m.kind {
	case "plain":
		if !m.aside {
			return "under allowance"
		}
		return "from the seam to the raw edges"
	case "hairline", "piped":
		return "from the seam to the raw edges"
	case "french":
		return "ridge"
	case "flat-felled", "mock-felled", "untrimmed-fell":
		return "fell"
	case "bound", "self-bound":
		return "binding"
	case "turned-and-stitched":
		return "right, from seam to fold"
	case "mock-french":
		return "from seam to folds"
	case "welt":
		return "welt"
	case "lapped":
		return "from the edge beneath to the fold"
	case "lapped-turned", "lapped-raw":
		return "lap"
	case "slot":
		return "from row to row"
	case "hong-kong":
		return "right binding"
	}
	return "upper ply trimmed to"
}

func isRightUp(k string) bool {
	switch k {
	case "flat-felled", "untrimmed-fell", "lapped", "lapped-turned", "lapped-raw":
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
	s, m := p.Spec, measuresOf(p)
	if n := thickest(d); n != p.Plies {
		t.Errorf("%+v: %d plies drawn, %d planned", s, n, p.Plies)
	}
	if n := seen(d, isRightUp(m.kind)); n != p.Rows {
		t.Errorf("%+v: %d rows seen on the drawing, %d planned", s, n, p.Rows)
	}
	if raws(d) > 0 != p.Raw {
		t.Errorf("%+v: %d raw edges drawn, planned %v", s, raws(d), p.Raw)
	}
	if got, ok := measured(d, acrossSeam(m)); !ok || got != p.Finished {
		t.Errorf("%+v: finished %v drawn, %v planned", s, got, p.Finished)
	}
	// What is left of the under ply beyond the seam, or of both.
	seamRow, inside := "the seam", units.Length{}
	switch m.kind {
	case "bound", "hong-kong", "self-bound":
		inside = d.Thickness
	case "french":
		seamRow = "first pass"
	case "turned-and-stitched", "mock-french", "untrimmed-fell", "lapped", "lapped-turned", "lapped-raw", "graded":
		return
	}
	at := rowAt(d, seamRow)
	if m.kind == "flat-felled" && p.Turned == m.second {
		inside = d.Thickness.DivInt(2)
	}
	if off := rawEdge(d, "under ply").Sub(at).Abs(); off != m.trim.Add(inside) {
		t.Errorf("%+v: the under edge drawn %v from the seam, planned %v", s, off, m.trim)
	}
	upper := m.trim
	switch m.kind {
	case "flat-felled", "mock-felled", "self-bound":
		return // turned in
	case "welt":
		upper = m.first
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
		if f.Kind != fault.Range || f.Path == "" || f.Got == "" || !strings.Contains(f.Limit, "at least") && !strings.Contains(f.Limit, "more than") {
			t.Errorf("%v", f)
		}
	}
}

// TestSections draws every kind over random measures and measures the drawings.
func TestSections(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 18))
	drawn, refused, thicker := map[string]int{}, map[string]int{}, map[string]int{}
	for range max(1_200, nountest.Rounds(12_000)) {
		p, err := someSeam(r).Plan()
		if err != nil {
			continue
		}
		ds, err := p.Sections(units.Length{})
		if err != nil {
			t.Fatalf("%+v: %v", p.Spec, err)
		}
		drawn[p.Spec.Kind()]++
		for _, d := range ds {
			if d.True != p.Spec.Plies().Thickness || d.Desc == "" {
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
			thicker[p.Spec.Kind()] += thick.Cmp(ds[0].Thickness) + 1
		default:
			if lacks(t, err); t.Failed() {
				t.Fatalf("%+v at %v", p.Spec, thick)
			}
			refused[p.Spec.Kind()]++
		}
		if t.Failed() {
			t.FailNow()
		}
	}
	for s := range seam.Kinds() {
		if k := s.Kind(); drawn[k] < 5 || refused[k] < 1 || thicker[k] < 1 {
			t.Errorf("%v: only %d drawn, %d of another thickness, %d refused", k, drawn[k], thicker[k], refused[k])
		}
	}
}

// Every distance at which the sheet sews, trims and cuts is a measure in one of the
// drawings, and every stage has a title of its own.
func TestSectionsCoverTheSheet(t *testing.T) {
	for empty := range seam.Kinds() {
		k := empty.Kind()
		for _, drafted := range []units.Length{in(5, 8), in(1, 1), in(3, 4)} {
			p := planned(t, empty.With(seam.Allowance{Drafted: drafted}))
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
	for _, s := range []seam.Seam{
		seam.Plain{Finish: seam.Pinked}, seam.Plain{Finish: seam.Pinked, Trim: in(3, 8)}, seam.Plain{Finish: seam.Pinked, Aside: true},
		seam.Welt{Finish: seam.Pinked}, seam.Slot{Finish: seam.Pinked},
	} {
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
					t.Errorf("%v: %s is %v, on the sheet %v", p.Spec.Kind(), m.Name, got, want)
				}
			}
		}
		if n != 2 {
			t.Errorf("%v: %d pinked edges", p.Spec.Kind(), n)
		}
	}
}

// The description says what the picture cannot.
func TestSectionsWords(t *testing.T) {
	for _, c := range []struct {
		spec  seam.Seam
		stage int
		words string
		said  bool
	}{
		{seam.Plain{}, 0, "Right sides together", true},
		{seam.French{}, 0, "Wrong sides together", true},
		{seam.Plain{}, 0, "unequal allowances", false},
		{seam.Plain{Allowance: seam.Allowance{Cut: in(1, 2), CutUnder: in(5, 8)}, First: in(1, 2)}, 0, "unequal allowances", true},
		{seam.HongKong{Strip: in(9, 8)}, 2, "trimmed off at the seam", false},
		{seam.HongKong{Strip: in(19, 16)}, 2, "trimmed off at the seam", true},
		{seam.Graded{}, 1, "run out at the seam", false},
		{seam.Graded{Layers: 3}, 1, "run out at the seam", true},
		{seam.Piped{}, 0, "The cord is the gap", true},
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
