package gather_test

import (
	"errors"
	"math"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/strip"
	"github.com/google/go-cmp/cmp"
)

// faulty asserts the faults of err, in order, and one kind of them.
func faulty(t *testing.T, why string, err, kind error, want []string) {
	t.Helper()
	var faults fault.Faults
	if !errors.As(err, &faults) {
		t.Errorf("%s: no faults but %v", why, err)
		return
	}
	var paths []string
	for _, f := range faults {
		paths = append(paths, f.Path)
		if f.Limit == "" || f.Kind == "" {
			t.Errorf("%s: %q names no limit or no kind", why, f)
		}
	}
	if d := cmp.Diff(want, paths); d != "" || !errors.Is(err, kind) {
		t.Errorf("%s: %v\n%s", why, err, d)
	}
}

func TestStripFaults(t *testing.T) {
	whole := strip.Spec{Pieces: 3, Each: in("12 1/4"), Allowance: units.Give(in("1/2")), Ends: in("1/2")}
	two := units.RatioOf(2, 1)
	for _, test := range []struct {
		why  string
		spec gather.Strip
		want []string
		err  error
	}{
		{"nothing given", gather.Strip{}, []string{"strip.pieces", "strip.each", "edge", "fullness"}, fault.Missing},
		{"a strip alone", gather.Strip{Strip: whole}, []string{"edge"}, fault.Missing},
		{"pieces and edge", gather.Strip{Strip: strip.Spec{Pieces: 2}, Edge: in("9")}, []string{"strip.each", "fullness"}, fault.Missing},
		{"each and fullness", gather.Strip{Strip: strip.Spec{Each: in("9")}, Fullness: two}, []string{"strip.pieces", "edge"}, fault.Missing},
		{"edge and fullness", gather.Strip{Edge: in("9"), Fullness: two}, []string{"strip.pieces", "strip.each"}, fault.Missing},
		{"signs", gather.Strip{Strip: strip.Spec{Pieces: 2, Allowance: units.Give(in("-1"))}, Edge: in("-9"), Fullness: two.Neg()}, []string{"strip.allowance", "edge", "fullness"}, fault.Sign},
		{"a strip shorter than its edge", gather.Strip{Strip: whole, Edge: in("34")}, []string{"edge"}, fault.Range},
		{"a fullness below one", gather.Strip{Strip: whole, Fullness: units.RatioOf(1, 2)}, []string{"fullness"}, fault.Range},
		{"below one with all else", gather.Strip{Strip: strip.Spec{Pieces: 2}, Edge: in("9"), Fullness: units.RatioOf(99, 100)}, []string{"fullness"}, fault.Range},
		{"they disagree", gather.Strip{Strip: whole, Edge: in("15 3/4"), Fullness: two}, []string{"fullness"}, fault.Conflict},
		{"the least wanted is another", gather.Strip{Strip: strip.Spec{Pieces: 3, Allowance: units.Give(in("0")), Least: in("30")}, Edge: in("10"), Fullness: two}, []string{"fullness"}, fault.Conflict},
		{"more than the pieces there may be", gather.Strip{Strip: strip.Spec{Each: in("1")}, Edge: in("5001"), Fullness: two}, []string{"edge"}, fault.Range},
		{"a join without an allowance", gather.Strip{Strip: strip.Spec{Pieces: 3, Each: in("20")}, Edge: in("20")}, []string{"strip.allowance"}, fault.Missing},
		{"joins that follow", gather.Strip{Strip: strip.Spec{Each: in("20")}, Edge: in("20"), Fullness: two}, []string{"strip.allowance"}, fault.Missing},
		{"the join of a ring of one piece", gather.Strip{Strip: strip.Spec{Pieces: 1, Each: in("40"), Ring: true}, Edge: in("20")}, []string{"strip.allowance"}, fault.Missing},
		{"counts beyond sense", gather.Strip{Strip: strip.Spec{Pieces: math.MaxInt, Each: in("1")}, Edge: in("1")}, []string{"strip.pieces"}, fault.Range},
	} {
		p, err := test.spec.Plan()
		faulty(t, test.why, err, test.err, test.want)
		if !reflect.ValueOf(p).IsZero() {
			t.Errorf("%s: a plan beside a fault", test.why)
		}
	}
	// A conflict states both sides.
	_, err := gather.Strip{Strip: whole, Edge: in("15 3/4"), Fullness: two}.Plan()
	if text := err.Error(); !strings.Contains(text, "fullness 2:") || !strings.Contains(text, "2 1/7 (strip 33 3/4 in over edge 15 3/4 in)") {
		t.Error(text)
	}
}

func TestRuffleFaults(t *testing.T) {
	for _, test := range []struct {
		why    string
		change func(*gather.Ruffle)
		want   []string
		err    error
	}{
		{"nothing given", func(r *gather.Ruffle) { *r = gather.Ruffle{} }, []string{"strip.strip.pieces", "strip.strip.each", "strip.edge", "strip.fullness", "depth"}, fault.Missing},
		{"everything wrong at once", func(r *gather.Ruffle) {
			r.Strip.Edge, r.Cut, r.Depth, r.Hem, r.Heading, r.Top, r.Allowance, r.Inside, r.Width = in("-1"), in("-1"), in("-1"), in("-1"), in("-1"), in("-1"), in("-1"), in("-1"), in("-1")
			r.Rows, r.Corners, r.Parts = -1, math.MinInt, math.MaxInt
		}, []string{"strip.edge", "cut", "depth", "hem", "heading", "top", "allowance", "inside", "rows", "corners", "parts", "width"}, fault.Sign},
		{"a join without an allowance", func(r *gather.Ruffle) { r.Strip.Strip.Allowance = units.Given[units.Length]{} }, []string{"strip.strip.allowance"}, fault.Missing},
		{"a hem on a fold", func(r *gather.Ruffle) { r.Hem = in("1") }, []string{"hem"}, fault.Unused},
		{"a heading on a fold", func(r *gather.Ruffle) { r.Heading = in("1") }, []string{"heading"}, fault.Unused},
		{"the hem of no heading", func(r *gather.Ruffle) { r.Top = in("1/4") }, []string{"top"}, fault.Unused},
		{"a heading in a seam", func(r *gather.Ruffle) { r.Folded, r.Heading, r.Allowance = false, in("1"), in("5/8") }, []string{"allowance"}, fault.Unused},
		{"rows above the heading", func(r *gather.Ruffle) { r.Folded, r.Heading, r.Rows = false, in("3/8"), 3 }, []string{"heading"}, fault.Range},
		{"cut too shallow for its heading", func(r *gather.Ruffle) {
			r.Folded, r.Heading, r.Top, r.Depth, r.Cut = false, in("1"), in("1/4"), in("0"), in("1 1/4")
		}, []string{"cut"}, fault.Range},
		{"cut another depth than its heading makes", func(r *gather.Ruffle) { r.Folded, r.Heading, r.Cut = false, in("1"), in("3") }, []string{"cut"}, fault.Conflict},
		{"cloth too narrow for any piece", func(r *gather.Ruffle) { r.Width = in("3 23/32") }, []string{"width"}, fault.Range},
		{"too many rows", func(r *gather.Ruffle) { r.Rows = gather.MaxRows + 1 }, []string{"rows"}, fault.Range},
		{"too many parts", func(r *gather.Ruffle) { r.Parts = gather.MaxParts + 1 }, []string{"parts"}, fault.Range},
		{"too many corners", func(r *gather.Ruffle) { r.Corners = gather.MaxCorners + 1 }, []string{"corners"}, fault.Range},
		{"a row outside the allowance", func(r *gather.Ruffle) { r.Allowance = in("1/8") }, []string{"allowance"}, fault.Range},
		{"a third row off the cloth", func(r *gather.Ruffle) { r.Allowance, r.Rows = in("3/8"), 3 }, []string{"allowance"}, fault.Range},
		{"a second row beyond the free edge", func(r *gather.Ruffle) { r.Depth, r.Rows = in("1/8"), 2 }, []string{"rows"}, fault.Range},
		{"cut too shallow for its seam", func(r *gather.Ruffle) { r.Cut, r.Depth = in("1 1/4"), in("0") }, []string{"cut"}, fault.Range},
		{"cut too shallow for its depth", func(r *gather.Ruffle) { r.Cut = in("2 1/2") }, []string{"cut"}, fault.Conflict},
		{"cut another depth", func(r *gather.Ruffle) { r.Cut, r.Allowance = in("4"), in("5/8") }, []string{"cut"}, fault.Conflict},
		{"cut less than its hem", func(r *gather.Ruffle) { r.Folded, r.Hem, r.Cut, r.Depth = false, in("1"), in("1/2"), in("0") }, []string{"cut"}, fault.Range},
		{"too hollow", func(r *gather.Ruffle) { r.Turn = units.Radians(units.RatioOf(-63, 5)) }, []string{"turn"}, gather.ErrCurve},
		{"too many inward corners", func(r *gather.Ruffle) { r.Corners = -9 }, []string{"corners"}, gather.ErrCurve},
	} {
		r := frill()
		test.change(&r)
		p, err := r.Plan()
		faulty(t, test.why, err, test.err, test.want)
		if !reflect.ValueOf(p).IsZero() {
			t.Errorf("%s: a plan beside a fault", test.why)
		}
	}
	// Just short of too many: 15 3/4 in less eight quarter turns of 1 1/4 in.
	r := frill()
	r.Turn, r.Corners = units.Angle{}, -8
	if p, err := r.Plan(); err != nil || p.Spec.Rows != 1 {
		t.Error(err)
	}
}

func TestCuffFaults(t *testing.T) {
	for _, test := range []struct {
		why    string
		change func(*gather.Cuff)
		want   []string
		err    error
	}{
		{"nothing given", func(c *gather.Cuff) { *c = gather.Cuff{} }, []string{"wrist", "ease", "depth", "sleeve", "setting"}, fault.Missing},
		{"everything wrong at once", func(c *gather.Cuff) {
			n := in("-1")
			*c = gather.Cuff{Wrist: n, Ease: n, Lap: units.Give(n), Finished: n, Depth: n, Allowance: n, Turned: n, Inside: n, Sleeve: n, Flat: n, Setting: 7, Parts: -1}
		}, []string{"wrist", "ease", "lap", "finished", "depth", "allowance", "turned", "inside", "sleeve", "flat", "setting", "parts"}, fault.Unknown},
		{"the library asks which", func(c *gather.Cuff) { c.Setting = gather.NoSetting }, []string{"setting"}, fault.Missing},
		{"an end that is not there", func(c *gather.Cuff) { c.Lap, c.Setting = units.Given[units.Length]{}, gather.Extended }, []string{"lap"}, fault.Missing},
		{"nothing left for the end", func(c *gather.Cuff) {
			c.Lap, c.Finished, c.Setting = units.Given[units.Length]{}, in("8"), gather.Extended
		}, []string{"lap"}, fault.Missing},
		{"all extension", func(c *gather.Cuff) {
			c.Wrist, c.Ease, c.Lap, c.Finished, c.Setting = in("0"), in("0"), units.Give(in("9")), in("9"), gather.Extended
		}, []string{"lap"}, fault.Range},
		{"a lap of nothing where finished has one", func(c *gather.Cuff) { c.Lap, c.Finished = units.Give(in("0")), in("9") }, []string{"finished"}, fault.Conflict},
		{"finished too short", func(c *gather.Cuff) { c.Finished = in("8") }, []string{"finished"}, fault.Conflict},
		{"finished too long", func(c *gather.Cuff) { c.Finished = in("10") }, []string{"finished"}, fault.Conflict},
		{"all ease", func(c *gather.Cuff) { c.Wrist, c.Lap, c.Finished = in("0"), units.Given[units.Length]{}, in("1 1/4") }, []string{"finished"}, fault.Range},
		{"ease and lap only", func(c *gather.Cuff) { c.Wrist, c.Finished = in("0"), in("2 1/4") }, []string{"finished"}, fault.Range},
		{"less than ease and lap", func(c *gather.Cuff) { c.Wrist, c.Finished = in("0"), in("2") }, []string{"finished"}, fault.Range},
		{"no ease", func(c *gather.Cuff) { c.Ease, c.Finished = in("0"), in("7 3/4") }, []string{"finished"}, fault.Range},
		{"neither ease nor lap", func(c *gather.Cuff) { c.Ease, c.Lap, c.Finished = in("0"), units.Given[units.Length]{}, in("6 3/4") }, []string{"finished"}, fault.Range},
		{"all lap", func(c *gather.Cuff) {
			c.Wrist, c.Ease, c.Lap, c.Finished = in("0"), in("0"), units.Give(in("9")), in("9")
		}, []string{"lap"}, fault.Range},
		{"more than all lap", func(c *gather.Cuff) {
			c.Wrist, c.Ease, c.Lap, c.Finished = in("0"), in("0"), units.Give(in("10")), in("9")
		}, []string{"lap"}, fault.Range},
		{"turned past the seam", func(c *gather.Cuff) { c.Turned = in("3/4") }, []string{"turned"}, fault.Range},
		{"no room to turn", func(c *gather.Cuff) { c.Allowance = in("1/8") }, []string{"allowance"}, fault.Range},
		{"no room for the row", func(c *gather.Cuff) { c.Allowance, c.Turned = in("1/8"), in("1/16") }, []string{"allowance"}, fault.Range},
		{"a sleeve too narrow", func(c *gather.Cuff) { c.Sleeve = in("8 7/8") }, []string{"sleeve"}, fault.Range},
		{"all of it flat", func(c *gather.Cuff) { c.Flat = in("4 1/2") }, []string{"flat"}, fault.Range},
		{"too narrow and too flat", func(c *gather.Cuff) { c.Sleeve, c.Flat = in("8"), in("5") }, []string{"sleeve", "flat"}, fault.Range},
		{"too many parts", func(c *gather.Cuff) { c.Parts = math.MaxInt }, []string{"parts"}, fault.Range},
	} {
		c := cuff()
		test.change(&c)
		p, err := c.Plan()
		faulty(t, test.why, err, test.err, test.want)
		if !reflect.ValueOf(p).IsZero() {
			t.Errorf("%s: a plan beside a fault", test.why)
		}
	}
}

// TestHuge is a ruffle far beyond any cloth: it is exact, or refused, and does
// not hang.
func TestHuge(t *testing.T) {
	huge := units.MustParse("1" + strings.Repeat("0", 300) + " in")
	r := frill()
	r.Strip.Strip.Each, r.Strip.Edge, r.Depth = huge, huge, huge
	p, err := r.Plan()
	if err != nil || p.Outer != units.Exactly(huge.Scale(units.RatioOf(3, 2))) {
		t.Error(p.Outer, err)
	}
	r.Corners = gather.MaxCorners
	if p, err = r.Plan(); err != nil {
		t.Error(err)
	}
	r.Corners = -gather.MaxCorners
	_, err = r.Plan()
	faulty(t, "huge and hollow", err, gather.ErrCurve, []string{"corners"})
	// So huge that no text of it is taken: it is worked out all the same.
	r = frill()
	r.Corners = 1
	r.Strip.Strip.Each = units.MustParse("1" + strings.Repeat("0", 1000) + " in")
	r.Strip.Strip.Pieces = 1
	for range 3 {
		r.Strip.Strip.Each = r.Strip.Strip.Each.Scale(units.RatioOf(math.MaxInt64, 1))
	}
	if _, err = r.Plan(); err != nil {
		t.Error(err)
	}
}
