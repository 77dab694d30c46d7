package section_test

import (
	"errors"
	"math/rand/v2"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
)

// Seams and hems of random measures that can be are drawn and pass; the same with
// one measure that cannot be do not.
func TestRandomMeasures(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 3))
	n := func(from, to int64) units.Length { return units.Inch.Frac(from+r.Int64N(to-from+1), 96) }
	for range 200 {
		thick := units.Inch.Frac(1, 1+r.Int64N(30)*3+32) // 1/33 in or less
		second := n(28, 60)
		trim := n(3, 15)
		fell, turned, trimmed := n(60, 90), n(12, 24), n(6, 18)
		for name, d := range map[string]section.Drawing{
			"open":    open(n(24, 96), thick, n(24, 96)),
			"first":   frenchFirst(n(12, 60), thick, n(24, 96)),
			"second":  frenchSecond(second, trim, thick, n(24, 96)),
			"pressed": frenchPressed(second, trim, thick, n(24, 96)),
			"felled":  felled(fell, turned, trimmed, n(3, 6), thick, n(24, 96)),
			"bound":   bound(n(48, 96), n(24, 40), n(3, 6), thick, n(24, 96)),
			"hem":     doubleHem(n(12, 30), n(40, 96), n(3, 6), thick, n(24, 96)),
		} {
			if err := d.Check(); err != nil {
				t.Fatalf("%s: %v", name, err)
			}
		}
		for name, d := range map[string]section.Drawing{
			"an edge past the second pass":  frenchSecond(second, second.Add(n(1, 20)), thick, n(48, 96)),
			"the same, pressed":             frenchPressed(second, second.Add(n(1, 20)), thick, n(48, 96)),
			"more turned than the fell has": felled(fell, fell.Add(n(1, 20)), trimmed, n(3, 6), thick, n(24, 96)),
			"a fell row past its fold":      felled(fell, turned, trimmed, n(1, 6).Neg(), thick, n(24, 96)),
			"a hem that is all first turn":  doubleHem(n(100, 120), n(40, 96), n(3, 6), thick, n(24, 96)),
			"a binding row past its edge":   bound(n(48, 96), n(24, 40), n(1, 6).Neg(), thick, n(24, 96)),
		} {
			err := d.Check()
			if !errors.Is(err, section.ErrCross) && !errors.Is(err, section.ErrPierce) && !errors.Is(err, section.ErrEdge) {
				t.Fatalf("%s: %v", name, err)
			}
		}
	}
}

// turns are ways to turn a drawing.
func turns() map[string]func(p section.Point) section.Point {
	return map[string]func(p section.Point) section.Point{
		"not":        func(p section.Point) section.Point { return p },
		"over":       func(p section.Point) section.Point { return at(p.X, p.Y.Neg()) },
		"end to end": func(p section.Point) section.Point { return at(p.X.Neg(), p.Y) },
		"upright":    func(p section.Point) section.Point { return at(p.Y, p.X) },
		"down":       func(p section.Point) section.Point { return at(p.Y, p.X.Neg()) },
	}
}

// turned turns the cloth and the stitches, and drops the measures, which are
// along the cloth only.
func turned(d *section.Drawing, turn func(p section.Point) section.Point) {
	for i, p := range d.Plies {
		for k := range p.Path {
			d.Plies[i].Path[k] = turn(p.Path[k])
		}
	}
	for i := range d.Stitches {
		d.Stitches[i].From, d.Stitches[i].To = turn(d.Stitches[i].From), turn(d.Stitches[i].To)
	}
	d.Dimensions = nil
}

// Where no cloth is ahead of a raw edge, a stitch shuts it in: one that is ahead,
// and that reaches both above and below it.
func TestStitchAhead(t *testing.T) {
	const h = 64 // half a thickness is 1/64 in
	y := func(n int64) units.Length { return units.Inch.Frac(n, h) }
	for name, turn := range turns() {
		for _, test := range []struct {
			why      string
			at       string // where the second pass is
			from, to int64  // its ends, in half thicknesses
			pierce   []string
			upper    bool // the edge of the upper ply is shut in
			under    bool
		}{
			{"through all", "-1/4", 6, -6, []string{"upper", "under"}, true, true},
			{"through all, upwards", "-1/4", -6, 6, []string{"under", "upper"}, true, true},
			{"from above to between", "-1/4", 6, 0, []string{"upper"}, true, false},
			{"from below to between", "-1/4", -6, 0, []string{"under"}, false, true},
			{"behind the edges", "-5/64", 6, -6, []string{"upper", "upper", "under", "under"}, false, false},
		} {
			d := frenchSecond(in("1/4"), in("1/8"), in("1/32"), in("3/4"))
			for i := range d.Plies { // no walls: the plies run straight
				p := &d.Plies[i]
				p.Path = append([]section.Point{at(p.Path[0].X, p.Path[2].Y)}, p.Path[3:]...)
				p.Finish = section.Raw
			}
			if test.upper {
				d.Plies[0].Finish = section.Hidden
			}
			if test.under {
				d.Plies[1].Finish = section.Hidden
			}
			s := &d.Stitches[1]
			s.From, s.To, s.Pierce = at(in(test.at), y(test.from)), at(in(test.at), y(test.to)), test.pierce
			// A row elsewhere, that reaches neither edge.
			d.Stitches = append([]section.Stitch{{Name: "elsewhere", From: at(in("-1/2"), y(6)), To: at(in("-1/2"), y(2)), Pierce: []string{"upper"}}}, d.Stitches...)
			turned(&d, turn)
			if err := d.Check(); err != nil {
				t.Errorf("%s, turned %s: %v", test.why, name, err)
			}
			for i := range d.Plies {
				if d.Plies[i].Finish == section.Raw {
					d.Plies[i].Finish = section.Hidden
				} else {
					d.Plies[i].Finish = section.Raw
				}
			}
			if err := d.Check(); !errors.Is(err, section.ErrEdge) {
				t.Errorf("%s, turned %s, told wrongly: %v", test.why, name, err)
			}
		}
	}
}

// A measure may end at either end of a ply, at a fold's middle or either face of
// it, and at a stitch.
func TestMarks(t *testing.T) {
	d := good()
	p := d.Plies[0].Path
	half := in("1/64")
	for _, x := range []units.Length{p[0].X, p[len(p)-1].X, p[1].X, p[1].X.Add(half), p[1].X.Sub(half), d.Stitches[0].From.X} {
		d.Dimensions = []section.Dimension{dim("it", section.Above, x, zero, half.Neg(), zero)}
		if err := d.Check(); err != nil {
			t.Errorf("at %v: %v", x, err)
		}
	}
	d = open(in("5/8"), in("1/32"), in("1")) // its stitch lies level
	for _, x := range []units.Length{d.Stitches[0].From.X, d.Stitches[0].To.X} {
		d.Dimensions = []section.Dimension{dim("it", section.Above, x, zero, zero, zero)}
		if err := d.Check(); err != nil {
			t.Errorf("at %v: %v", x, err)
		}
	}
}

// Check says the same of a drawing turned over, upside down or end to end, and of
// one turned upright.
func TestMirrors(t *testing.T) {
	for name, turn := range turns() {
		for kind, d := range golden() {
			turned(&d, turn)
			if err := d.Check(); err != nil {
				t.Errorf("%s, turned %s: %v", kind, name, err)
			}
			if _, err := d.SVG(); err != nil {
				t.Errorf("%s, turned %s: %v", kind, name, err)
			}
			for i := range d.Plies {
				p := &d.Plies[i]
				switch p.Finish {
				case section.Hidden:
					p.Finish = section.Raw
				case section.Raw:
					p.Finish = section.Hidden
				}
			}
			if err := d.Check(); !errors.Is(err, section.ErrEdge) {
				t.Errorf("%s, turned %s: edges that are not so: %v", kind, name, err)
			}
		}
	}
}

// A pen is a value, and draws nothing from nowhere.
func TestPen(t *testing.T) {
	tt := in("1/32")
	a := section.From(at(zero, zero), tt).To(in("1"))
	b, c := a.Step(1), a.Step(-1)
	if b.Path()[2] == c.Path()[2] || len(a.Path()) != 2 {
		t.Error("one pen has moved another")
	}
	b.Path()[0] = at(in("9"), in("9"))
	if b.Path()[0] != at(zero, zero) {
		t.Error("a path that is handed out is the pen's own")
	}
	if got := a.Fold(1, in("1/4")).Path()[3]; got != at(in("3/4"), tt) {
		t.Error("folded to", got)
	}
	if got := a.Fold(2, in("1/4")).Fold(-1, in("1/8")).Path(); got[5] != at(in("7/8"), tt) {
		t.Error("folded twice to", got)
	}
	if got := section.From(at(zero, zero), tt).Back(in("1")).Path()[1]; got != at(in("-1"), zero) {
		t.Error("back from the start is to the left, not", got)
	}
	if got := a.Along(zero).Step(0).To(in("1")).Path(); len(got) != 2 {
		t.Error("standing still is a point", got)
	}
	var none section.Pen
	if got := none.To(in("1")).Along(in("1")).Step(1).Back(in("1")).Fold(1, in("1")).Path(); len(got) != 0 {
		t.Error("a path from nowhere", got)
	}
	if low, high := (section.Drawing{}).Extent(); low != high {
		t.Error("an extent of nothing", low, high)
	}
}
