package seam_test

import (
	"flag"
	"os"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/dart"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
)

// What lies on a limit: the last that is taken, the first that is refused.
func TestNounLimits(t *testing.T) {
	r := units.RatioOf
	for _, c := range []struct {
		why   string
		spec  any
		fault string // none for what is taken
	}{
		{"a slope as fine as may be", dart.Spec{Length: in(6, 1), Width: in(1, 1), Slope: r(1, edge.MaxTerm)}, ""},
		{"a slope as steep as may be", dart.Spec{Length: in(6, 1), Width: in(1, 1), Slope: r(-edge.MaxTerm, 1)}, ""},
		{"a slope finer", dart.Spec{Length: in(6, 1), Width: in(1, 1), Slope: r(2, 2*edge.MaxTerm+1)}, "slope"},
		{"both terms great", dart.Spec{Length: in(6, 1), Width: in(1, 1), Slope: r(edge.MaxTerm, edge.MaxTerm-1)}, ""},
		{"a slope steeper", dart.Spec{Length: in(6, 1), Width: in(1, 1), Slope: r(-edge.MaxTerm-1, 1)}, "slope"},
		{"the whole dart moved", dart.Pivot{Length: in(6, 1), Width: in(1, 1), Turn: r(1, 12), To: in(1, 1)}, ""},
		{"a trim as wide as the allowance", seam.Row{Kind: seam.StayStitch, Trim: in(5, 8)}, ""},
		{"an inner layer of nothing", seam.Roll{Apart: in(1, 1), Angle: r(1, 1), Length: in(1, 1)}, "length"},
		{"an under piece of nothing", seam.Favour{By: in(1, 1), Edge: in(1, 1), Bend: r(1, 1)}, "edge"},
		{"the other edge all across once folded up", alter.Lengthening{By: in(-1, 1), Height: in(4, 1), WithRun: in(3, 1)}, "withRun"},
		{"and before", alter.Lengthening{By: in(1, 1), Height: in(3, 1), WithRun: in(3, 1)}, "withRun"},
		{"all that each ply has", alter.Letting{Total: in(3, 4), Seams: []alter.Let{{Spec: seam.Spec{Kind: seam.Plain}, Each: in(3, 8)}}}, ""},
		{"as many corners as may be", seam.Binding{Kind: seam.DoubleBinding, Finished: in(1, 4), Edge: in(1, 1), Corners: seam.MaxCorners}, ""},
		{"one more", seam.Binding{Kind: seam.DoubleBinding, Finished: in(1, 4), Edge: in(1, 1), Corners: seam.MaxCorners + 1}, "corners"},
		{"as many quarters as may be", seam.Roll{Apart: in(1, 64), Quarters: seam.MaxQuarters}, ""},
		{"one more", seam.Roll{Apart: in(1, 64), Quarters: seam.MaxQuarters + 1}, "quarters"},
		{"as many seams alike as may be", alter.Letting{Total: in(1, 8), Seams: []alter.Let{{Spec: seam.Spec{Kind: seam.Plain}, Times: alter.MaxAlike}}}, ""},
		{"one more", alter.Letting{Total: in(1, 8), Seams: []alter.Let{{Spec: seam.Spec{Kind: seam.Plain}, Times: alter.MaxAlike + 1}}}, "seams[0].times"},
		{"a kind one past the last", seam.Row{Kind: seam.TopStitch + 1}, "kind"},
		{"a strip one past the last", seam.Binding{Kind: seam.Piping + 1}, "kind"},
		{"a dart one past the last", dart.Spec{Kind: dart.OpenEnded + 1}, "kind"},
	} {
		switch _, err := planNoun(t, c.spec); {
		case err == nil && c.fault != "", err != nil && faultPaths(t, err) != c.fault:
			t.Errorf("%s: %v, want a fault of %q", c.why, err, c.fault)
		}
	}
	if sh := (seam.RowPlan{Spec: seam.Row{Kind: seam.TopStitch + 1}}).Sheet(); len(sh.Steps) > 0 {
		t.Errorf("the sheet of no kind: %+v", sh)
	}
	if planned(t, seam.Spec{Kind: seam.French}).Stacked((1<<31-1)/5) == 0 {
		t.Error("the most layers are none")
	}
}

// A dart on the edge of folding, of being cut and of being clipped.
func TestDartLimits(t *testing.T) {
	for _, c := range []struct {
		why   string
		dart  dart.Spec
		folds bool
		trim  units.Length
		clip  units.Length
	}{
		{"as wide as twice its length", dart.Spec{Length: in(2, 1), Width: in(4, 1)}, false, units.Length{}, units.Length{}},
		{"a little less", dart.Spec{Length: in(2, 1), Width: in(63, 16)}, true, units.Length{}, units.Length{}},
		{"the edge as steep as the fold", dart.Spec{Length: in(2, 1), Width: in(2, 1), Slope: units.RatioOf(3, 4)}, false, units.Length{}, units.Length{}},
		{"as steep the other way", dart.Spec{Length: in(2, 1), Width: in(2, 1), Slope: units.RatioOf(-3, 4)}, false, units.Length{}, units.Length{}},
		{"a fold of 5/8 in is not cut", dart.Spec{Kind: dart.French, Length: in(10, 1), Width: in(4, 3)}, true, units.Length{}, units.Length{}},
		{"a wider one is", dart.Spec{Kind: dart.French, Length: in(10, 1), Width: in(3, 2)}, true, in(5, 8), units.Length{}},
		{"a half of 1/8 in is not clipped", dart.Spec{Kind: dart.Double, Length: in(4, 1), Width: in(1, 4)}, false, units.Length{}, units.Length{}},
		{"a wider one is", dart.Spec{Kind: dart.Double, Length: in(4, 1), Width: in(1, 2)}, false, units.Length{}, in(1, 8)},
	} {
		p, err := c.dart.Plan()
		if err != nil || p.Folds != c.folds || p.Spec.Trim != c.trim || p.Clip != c.clip || !p.Folds && !p.Cap.IsZero() {
			t.Errorf("%s: %+v, %v", c.why, p, err)
		}
	}
	short, err := dart.Spec{Kind: dart.Double, Length: in(5, 1), Lower: in(1, 2), Width: in(1, 1)}.Plan()
	if err != nil || short.Spec.Overlap != in(1, 2) {
		t.Errorf("the overlap of a short half: %v, %v", short.Spec.Overlap, err)
	}
}

// A row that touches what it must clear, and two angles that make a right one.
func TestOnTheLine(t *testing.T) {
	for _, at := range []units.Length{in(1, 4), in(3, 4)} {
		p, err := seam.Row{Kind: seam.TopStitch, Distance: at, Start: in(1, 4), End: in(3, 4)}.Plan()
		if err != nil || !p.Crosses.IsZero() || !p.Clear.IsZero() {
			t.Errorf("at %v: %+v, %v", at, p, err)
		}
	}
	far, err := seam.Row{Kind: seam.TopStitch, Distance: in(1, 8), Start: in(1, 4), End: in(3, 4)}.Plan()
	if err != nil || far.Clear != in(1, 8) {
		t.Errorf("short of it: %+v, %v", far, err)
	}
	cut, err := seam.Row{Kind: seam.StayStitch, Distance: in(1, 8), Trim: in(1, 8)}.Plan()
	if err != nil || cut.Caught {
		t.Errorf("trimmed to the row: %+v, %v", cut, err)
	}
	sharp, err := edge.Meeting{Drafted: in(5, 8), Front: units.RatioOf(2, 1), Back: units.RatioOf(1, 2)}.Plan()
	if err != nil || !sharp.Sharp || !sharp.Kink.IsZero() {
		t.Errorf("a right angle: %+v, %v", sharp, err)
	}
	if err := sharp.Sheet().Check(); err != nil {
		t.Error(err)
	}
}

var update = flag.Bool("update", false, "write the golden sheets")

// The sheets of the nouns, as text: read the difference before it is kept.
func TestNounGolden(t *testing.T) {
	const name = "testdata/golden_noun.txt"
	var b strings.Builder
	for i, spec := range nounSpecs() {
		p, err := planNoun(t, spec)
		if err != nil {
			t.Fatal(err)
		}
		b.WriteString("== " + strconv.Itoa(i) + "\n" + p.Sheet().Text(units.Notation{}) + "\n")
	}
	if *update {
		if err := os.WriteFile(name, []byte(b.String()), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	got, wanted := strings.Split(b.String(), "\n"), strings.Split(string(want), "\n")
	for i, line := range got {
		if i >= len(wanted) || line != wanted[i] {
			t.Fatalf("line %d of the sheets is %q; run with -update and read the difference", i+1, line)
		}
	}
	if len(got) != len(wanted) {
		t.Errorf("%d lines, want %d", len(got), len(wanted))
	}
}

// What a fault says would have been right.
func TestNounFaultTexts(t *testing.T) {
	plain := seam.Spec{Kind: seam.Plain}
	for _, c := range []struct {
		spec any
		want string
	}{
		{alter.Letting{Total: in(1, 1), Seams: []alter.Let{{Spec: plain, Each: in(1, 8)}}}, "total 1 in: disagrees with what else is given, want 1/4 in (what each gives in all)"},
		{alter.Letting{Total: in(1, 1), Seams: []alter.Let{{Spec: plain}}}, "total 1 in: out of range, want at most 3/4 in (what the allowances can give)"},
		{alter.Lengthening{By: in(-2, 1), Height: in(2, 1)}, "height 2 in: out of range, want more than 2 in (what is folded up)"},
		{seam.Binding{Kind: seam.DoubleBinding, Finished: in(1, 4), Ring: true}, "ring true: not used here, want none where edge is not given"},
		{dart.Spec{Kind: dart.OpenEnded, Length: in(4, 1), End: in(1, 1)}, "width: not given, want more than 0 in"},
		{seam.Row{Kind: seam.TopStitch, Start: in(1, 4)}, "end 0 in: out of range, want more than 1/4 in (start)"},
		{dart.Pivot{Length: in(6, 1), Width: in(1, 1), Turn: units.RatioOf(1, 2), To: in(1, 1)}, "turn 1/2: out of range, want at most 1/12 (the whole dart: width over twice length)"},
		{alter.Easing{Long: in(1, 1), Zones: []alter.Zone{{Length: in(2, 1)}}}, "long 1 in: out of range, want at least 2 in (all zones): an edge shorter than its partner is a mismatch"},
	} {
		if _, err := planNoun(t, c.spec); err == nil || err.Error() != c.want {
			t.Errorf("%+v:\n%v\nwant\n%s", c.spec, err, c.want)
		}
	}
}

// A seam that has nothing to give stays as it is, or is sewn as it shall be then.
func TestLettingNothingToGive(t *testing.T) {
	narrow := seam.Spec{Kind: seam.Plain, Drafted: in(1, 4)}
	p, err := alter.Letting{Total: in(1, 2), Seams: []alter.Let{
		{Name: "back", Spec: narrow}, {Name: "front", Spec: narrow, Then: seam.Bound}, {Name: "side", Spec: seam.Spec{Kind: seam.Plain}},
	}}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if o := p.Seams[0]; !o.Each.IsZero() || o.After != o.Before || o.Take != in(1, 4) {
		t.Errorf("%+v", o)
	}
	if o := p.Seams[1]; !o.Each.IsZero() || o.After.Spec.Kind != seam.Bound || o.After.Upper.Taken != in(1, 4) {
		t.Errorf("%+v", o)
	}
	if o := p.Seams[2]; o.Each != in(1, 4) {
		t.Errorf("%+v", o)
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
}
