package seam_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/dart"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A ply, an act or a fit one past the last is refused by its number, wherever it
// stands.
func TestOnePastTheLast(t *testing.T) {
	none := edge.UnderPly + 1
	if none.String() != "Ply(3)" || edge.UnderPly.String() != "under" {
		t.Errorf("%v and %v", none, edge.UnderPly)
	}
	plain := seam.Spec{Kind: seam.Plain}
	_, err := edge.Assembly{
		Seams: []edge.Joint{{Name: "shoulder", Spec: plain}},
		Edges: []edge.Course{{Name: "neck", Net: in(15, 1), Own: "shoulder", OwnPly: none, Crossings: []edge.Crossing{{Seam: "shoulder", Plies: 1, Ply: none}}}},
	}.Plan()
	if faultPaths(t, err) != "edges[0].crossings[0].ply edges[0].ownPly" || !errors.Is(err, fault.Unknown) {
		t.Error(err)
	}
}

// The first edge of an assembly cannot be its own partner any more than another.
func TestFirstEdgeAgainstItself(t *testing.T) {
	for _, name := range []string{"neck", "collar"} {
		_, err := edge.Assembly{
			Edges: []edge.Course{{Name: "neck", Net: in(15, 1)}, {Name: "collar", Net: in(15, 1)}},
			Pairs: []edge.Partners{{Long: name, Short: name}},
		}.Plan()
		if faultPaths(t, err) != "pairs[0].short" || !errors.Is(err, fault.Conflict) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// A bound seam cites the printed strips for its own width, and those alone.
func TestBoundCites(t *testing.T) {
	for _, finished := range []units.Length{in(1, 4), in(3, 8), in(1, 2), in(7, 16)} {
		var want, got []source.Cite
		for r := range seam.Bindings {
			if r.Finished == finished {
				want = append(want, r.Cite())
			}
		}
		for _, c := range planned(t, seam.Spec{Kind: seam.Bound, Second: finished}).Sheet().Sources {
			if strings.Contains(c.For, "finished") {
				got = append(got, c)
			}
		}
		if d := cmp.Diff(want, got); d != "" {
			t.Errorf("%v:\n%s", finished, d)
		}
	}
}

// One layer of one ply is one ply; the most that is counted fits an int32.
func TestStackedLimits(t *testing.T) {
	plain := planned(t, seam.Spec{Kind: seam.French})
	if plain.Stacked(1) != plain.Plies {
		t.Errorf("alone it has %d plies, not %d", plain.Stacked(1), plain.Plies)
	}
	one := seam.Plan{Plies: 1}
	over := math.MaxInt32
	over++ // below zero where an int has no more
	if one.Stacked(3) != 3 || one.Stacked(math.MaxInt32) != math.MaxInt32 || one.Stacked(over) != 0 {
		t.Errorf("of one ply: %d, %d, %d", one.Stacked(3), one.Stacked(math.MaxInt32), one.Stacked(over))
	}
}

// A leg of half the width leaves no length to the dart, and a trim of all the fold
// nothing to hold it.
func TestDartOfNoLength(t *testing.T) {
	for _, c := range []struct {
		dart dart.Spec
		want string
	}{
		{dart.Spec{Leg: in(1, 1), Width: in(2, 1)}, "leg 1 in: out of range, want more than 1 in (half of width)"},
		{dart.Spec{Leg: in(1, 1), Length: in(1, 2), Width: in(2, 1)}, "leg 1 in: out of range, want more than 1 in (half of width)"},
		{dart.Spec{Length: in(10, 1), Width: in(4, 3), Trim: in(5, 8)}, "trim 5/8 in: out of range, want less than 5/8 in (the fold beyond the stitching, at the seam line)"},
	} {
		if _, err := c.dart.Plan(); err == nil || err.Error() != c.want {
			t.Errorf("%+v:\n%v\nwant\n%s", c.dart, err, c.want)
		}
	}
	if _, err := (dart.Spec{Length: in(10, 1), Width: in(4, 3), Trim: in(9, 16)}).Plan(); err != nil {
		t.Error(err)
	}
}

// Of a deeper back half more is eased into each inch of it, in the same measure; of a
// front half that leaves no room between underarm and shoulder nothing follows.
func TestSleeveShares(t *testing.T) {
	one := units.RatioOf(1, 1)
	for _, c := range []struct {
		front, back units.Length
		share       units.Ratio
	}{
		{in(8, 1), in(10, 1), units.RatioOf(14, 11)}, // 7 in against 5 1/2 in
		{in(8, 1), in(8, 1), one},
		{in(10, 1), in(8, 1), one},
		{in(2, 3), in(8, 1), one},
		{in(1, 2), in(8, 1), one},
	} {
		z := alter.SleeveZones(c.front, c.back)
		if z[1].Share != one || z[4].Share != c.share {
			t.Errorf("%v and %v: shares %v and %v, want %v", c.front, c.back, z[1].Share, z[4].Share, c.share)
		}
	}
}

// As many zones, takes and crossings as may be are worked out, and each is looked at.
func TestAsManyAsMayBe(t *testing.T) {
	zones := make([]alter.Zone, alter.MaxZones)
	for i := range zones {
		zones[i] = alter.Zone{Length: in(1, 8), Share: units.RatioOf(1, 1)}
	}
	p, err := alter.Easing{Long: in(25, 2).Add(in(1, 4)), Zones: zones}.Plan()
	if err != nil || p.Ease != in(1, 4) || len(p.Zones) != alter.MaxZones {
		t.Errorf("%d zones: %v, %v", len(p.Zones), p.Ease, err)
	}
	takes := make([]edge.Take, edge.MaxTakes)
	for i := range takes {
		takes[i].Drafted = in(5, 8)
	}
	e := edge.Spec{Net: in(40, 1), Takes: takes}
	if q := edgeOf(t, e); q.Spec.Along != in(40, 1).Add(in(5, 4).MulInt(edge.MaxTakes)) {
		t.Errorf("%d takes: %v", len(takes), q.Spec.Along)
	}
	takes[edge.MaxTakes-1] = edge.Take{Drafted: in(-5, 8)}
	if _, err := e.Plan(); faultPaths(t, err) != "takes[49].drafted" {
		t.Error(err)
	}
}

// An edge of which nothing is left is refused with the measure that was given.
func TestNothingLeftOfEdge(t *testing.T) {
	take := edge.Take{Drafted: in(5, 8)}
	deep := edge.Take{Drafted: in(5, 8), Taken: in(9, 8)} // a seam taken deeper by 1/2 in
	for _, c := range []struct {
		edge edge.Spec
		want string
	}{
		{edge.Spec{Along: in(5, 4), Takes: []edge.Take{take}}, "along 1 1/4 in: out of range, want more than the drafted allowances take"},
		{edge.Spec{Net: in(1, 1), Takes: []edge.Take{deep}}, "net 1 in: out of range, want more than the seams take away from it"},
		{edge.Spec{Along: in(9, 4), Takes: []edge.Take{deep}}, "along 2 1/4 in: out of range, want more than the seams take away from it"},
		{edge.Spec{Net: in(1, 1), Turn: units.RatioOf(-8, 5), Own: take}, "turn -1 3/5: out of range, want a curve less tight than the allowance is wide"},
	} {
		if _, err := c.edge.Plan(); err == nil || err.Error() != c.want {
			t.Errorf("%+v:\n%v\nwant\n%s", c.edge, err, c.want)
		}
	}
	least := in(5, 4).Add(in(1, 64))
	if _, err := (edge.Spec{Along: least, Takes: []edge.Take{take}}).Plan(); err != nil {
		t.Errorf("%v: %v", least, err)
	}
}

// cited are the sources of a sheet, for what each is cited; sources without an id
// are left out.
func cited(sh ticket.Sheet) map[string][]string {
	out := map[string][]string{}
	for _, c := range sh.Sources {
		if c.ID != "" {
			out[c.For] = append(out[c.For], c.ID)
		}
	}
	return out
}

// A French or a flat-felled seam cites who printed the passes as they are here, and
// who printed others that come to the same, apart.
func TestPassesCited(t *testing.T) {
	for _, c := range []struct {
		spec seam.Spec
		what string
		want []string
	}{
		{seam.Spec{Kind: seam.French}, "passes as here", []string{"extension-construction-card", "clothing-construction-handbook", "french-seam-sums"}},
		{seam.Spec{Kind: seam.French}, "other passes that come to the same", []string{"tablecloth-seams-thread", "french-seam-definition"}},
		{seam.Spec{Kind: seam.French, First: in(1, 4), Second: in(3, 8)}, "passes as here", []string{"tablecloth-seams-thread", "french-seam-definition"}},
		{seam.Spec{Kind: seam.French, Drafted: in(1, 2)}, "passes as here", []string{"french-seam-sums"}},
		{seam.Spec{Kind: seam.French, Drafted: in(1, 2)}, "other passes that come to the same", nil},
		{seam.Spec{Kind: seam.French, Drafted: in(3, 4)}, "passes as here", []string{"extension-french-seam-sheet"}},
		{seam.Spec{Kind: seam.French, First: in(3, 16), Second: in(1, 4)}, "passes as here", nil},
		{seam.Spec{Kind: seam.FlatFelled}, "fell as here", []string{"clothing-construction-handbook", "fell-how-to-sheet", "seam-finish-part-two"}},
		{seam.Spec{Kind: seam.FlatFelled}, "another fell from the same allowance", []string{"tablecloth-seams-thread", "fell-machine-guide", "fell-how-to-page", "self-enclosed-seams"}},
		{seam.Spec{Kind: seam.FlatFelled, Drafted: in(1, 2)}, "fell as here", []string{"self-enclosed-seams"}},
		{seam.Spec{Kind: seam.FlatFelled, Drafted: in(1, 2)}, "another fell from the same allowance", nil},
		{seam.Spec{Kind: seam.FlatFelled, Drafted: in(1, 2)}, "half of the allowance turned in", []string{"tablecloth-seams-thread"}},
		{seam.Spec{Kind: seam.FlatFelled}, "half of the allowance turned in", nil},
		{seam.Spec{Kind: seam.FlatFelled, First: in(5, 8), Second: in(5, 16)}, "half of the allowance turned in", nil},
	} {
		if d := cmp.Diff(c.want, cited(planned(t, c.spec).Sheet())[c.what]); d != "" {
			t.Errorf("%+v, %s:\n%s", c.spec, c.what, d)
		}
	}
}

// does reports whether a step of the sheet does so, with those sides together.
func does(sh ticket.Sheet, what string, together ticket.Sides) bool {
	for _, s := range sh.Steps {
		if strings.Contains(s.Do, what) && s.Together == together {
			return true
		}
	}
	return false
}

// A flat fell is begun with the wrong sides together, so that it shows; a mock one
// with the right sides together, and its last row is sewn from the right side.
func TestFellSides(t *testing.T) {
	flat, mock := planned(t, seam.Spec{Kind: seam.FlatFelled}).Sheet(), planned(t, seam.Spec{Kind: seam.MockFelled}).Sheet()
	if !does(flat, "Stitch the seam", ticket.WrongTogether) || !does(flat, "Lay the fold flat over the trimmed edge", 0) || does(flat, "From the right side", 0) {
		t.Errorf("flat: %+v", flat.Steps)
	}
	if !does(mock, "Stitch the seam", ticket.RightTogether) || !does(mock, "From the right side stitch through the fold", 0) || does(mock, "Lay the fold", 0) {
		t.Errorf("mock: %+v", mock.Steps)
	}
	if got := cited(mock); got["trim of the under ply"] != nil || got["fell as here"] != nil {
		t.Errorf("mock cites what is printed of a flat fell: %v", got)
	}
}

// The allowances of a Hong Kong seam are trimmed where less than all is to be left.
func TestHongKongTrim(t *testing.T) {
	for trim, want := range map[units.Length]bool{{}: false, in(5, 8): false, in(1, 2): true} {
		if got := does(planned(t, seam.Spec{Kind: seam.HongKong, Trim: trim}).Sheet(), "Trim both allowances", 0); got != want {
			t.Errorf("to %v: trimmed %v", trim, got)
		}
	}
}

// A raw lap of both allowances leaves the garment as drafted, and says nothing; a
// narrower one makes it bigger, and says so.
func TestRawLapCaution(t *testing.T) {
	for lap, want := range map[units.Length]bool{in(5, 4): false, in(5, 8): true} {
		p := planned(t, seam.Spec{Kind: seam.LappedRaw, Second: lap})
		got := false
		for _, c := range p.Sheet().Cautions {
			got = got || strings.Contains(c.Text, "leaves the garment bigger")
		}
		if got != want || p.Gain.IsZero() == want {
			t.Errorf("lapped %v: gain %v, caution %v", lap, p.Gain, got)
		}
	}
}

// The sheet of an edge that no seam crosses has no line for what seams take of it.
func TestEdgeWithoutCrossings(t *testing.T) {
	for _, c := range []struct {
		edge edge.Spec
		want bool
	}{
		{edge.Spec{Along: in(15, 1)}, false},
		{edge.Spec{Along: in(15, 1), Takes: []edge.Take{{Drafted: in(5, 8)}}}, true},
		{edge.Spec{Net: in(15, 1)}, false},
	} {
		got := false
		for _, l := range edgeOf(t, c.edge).Sheet().Lines {
			got = got || l.Label == "drafted, between the seam lines"
		}
		if got != c.want {
			t.Errorf("%+v: %v", c.edge, got)
		}
	}
}

// The neck has two partners, facing and collar: more pairs than half of the edges.
func TestNeckOfTwoPartners(t *testing.T) {
	a := edge.Assembly{
		Edges: []edge.Course{{Name: "neck", Net: in(15, 1)}, {Name: "facing", Net: in(15, 1)}, {Name: "collar", Net: in(15, 1)}},
		Pairs: []edge.Partners{{Long: "neck", Short: "facing"}, {Long: "neck", Short: "collar"}},
	}
	p, err := a.Plan()
	if err != nil || p.Pairs[0].Fit != edge.Fits || p.Pairs[1].Fit != edge.Fits {
		t.Fatalf("%+v, %v", p, err)
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
}

// An edge turned in by the whole allowance leaves no fell; the trim is not held
// against it.
func TestFellOfNothing(t *testing.T) {
	_, err := seam.Spec{Kind: seam.FlatFelled, First: in(5, 8), Turned: in(5, 8)}.Plan()
	if faultPaths(t, err) != "turned" || !errors.Is(err, seam.ErrFlat) {
		t.Error(err)
	}
}

// A fit or an act one past the last is named by its number.
func TestNoSuchFitOrAct(t *testing.T) {
	if got := (edge.Mismatch + 1).String(); got != "Fit(5)" {
		t.Error(got)
	}
	if got := (edge.SpreadPartner + 1).String(); got != "Act(5)" {
		t.Error(got)
	}
}

// As many seams as may be are let out together.
func TestMostLettings(t *testing.T) {
	l := alter.Letting{Total: in(1, 8).MulInt(alter.MaxLettings), Seams: make([]alter.Let, alter.MaxLettings)}
	for i := range l.Seams {
		l.Seams[i] = alter.Let{Name: "side", Spec: seam.Spec{Kind: seam.Plain}}
	}
	p, err := l.Plan()
	if err != nil || len(p.Seams) != alter.MaxLettings || p.Seams[0].Each != in(1, 16) {
		t.Errorf("%d seams: %v", len(p.Seams), err)
	}
	l.Seams = append(l.Seams, l.Seams[0])
	if _, err := l.Plan(); faultPaths(t, err) != "seams" {
		t.Errorf("one more: %v", err)
	}
}

// What a default filled in either edge of a match is named by itself.
func TestMatchAssumedByItself(t *testing.T) {
	whole := edge.Take{Name: "shoulder", Drafted: in(5, 8), Cut: in(5, 8), Taken: in(5, 8), Plies: 2}
	full := func() edge.Pair {
		line := func(name string) edge.Spec {
			return edge.Spec{Name: name, Along: in(15, 1), Takes: []edge.Take{whole}, Own: edge.Take{Name: "neck", Drafted: in(5, 8), Cut: in(5, 8), Taken: in(5, 8)}}
		}
		return edge.Pair{Long: line("neck"), Short: line("facing"), MaxEase: units.RatioOf(1, 20), MaxGathers: units.RatioOf(1, 10)}
	}
	for _, c := range []struct {
		want ticket.Fields
		drop func(m *edge.Pair)
	}{
		{"", func(*edge.Pair) {}},
		{"maxEase", func(m *edge.Pair) { m.MaxEase = units.Ratio{} }},
		{"long.name", func(m *edge.Pair) { m.Long.Name = "" }},
		{"long.takes.cut", func(m *edge.Pair) { m.Long.Takes[0].Cut = units.Length{} }},
		{"long.takes.taken", func(m *edge.Pair) { m.Long.Takes[0].Taken = units.Length{} }},
		{"long.takes.plies", func(m *edge.Pair) { m.Long.Takes[0].Plies = 0 }},
		{"long.own.cut", func(m *edge.Pair) { m.Long.Own.Cut = units.Length{} }},
		{"long.own.taken", func(m *edge.Pair) { m.Long.Own.Taken = units.Length{} }},
		{"short.name", func(m *edge.Pair) { m.Short.Name = "" }},
		{"short.takes.cut", func(m *edge.Pair) { m.Short.Takes[0].Cut = units.Length{} }},
		{"short.takes.taken", func(m *edge.Pair) { m.Short.Takes[0].Taken = units.Length{} }},
		{"short.takes.plies", func(m *edge.Pair) { m.Short.Takes[0].Plies = 0 }},
		{"short.own.cut", func(m *edge.Pair) { m.Short.Own.Cut = units.Length{} }},
		{"short.own.taken", func(m *edge.Pair) { m.Short.Own.Taken = units.Length{} }},
	} {
		m := full()
		c.drop(&m)
		if p, err := m.Plan(); err != nil || p.Assumed != c.want {
			t.Errorf("assumed %q, want %q; %v", p.Assumed, c.want, err)
		}
	}
}

// A seam that would have to take nothing is no remedy: taking nothing is not a seam.
// The side seam would have to grow the armhole by all that it takes.
func TestRemedyTakesSomething(t *testing.T) {
	m := edge.Pair{
		Long:    edge.Spec{Name: "sleeve top", Net: in(37, 4), Takes: []edge.Take{{Name: "sleeve seam", Drafted: in(5, 8), Taken: in(1, 4)}}},
		Short:   edge.Spec{Name: "armhole", Net: in(39, 4), Takes: []edge.Take{{Name: "side", Drafted: in(1, 8), Taken: in(1, 2)}}},
		MaxEase: units.RatioOf(1, 20),
	}
	if p, err := m.Plan(); err != nil || p.Fit != edge.Mismatch {
		t.Fatalf("%v, %v", p.Fit, err)
	}
	found := 0
	for r, err := range m.Remedies() {
		if err != nil {
			t.Fatal(err)
		}
		found++
		if r.Spec.Take.Sign() <= 0 {
			t.Errorf("%+v", r)
		}
	}
	if found == 0 {
		t.Error("no remedy at all")
	}
}

// The allowances of a piped seam are trimmed where less than all is to be left.
func TestPipedTrim(t *testing.T) {
	for trim, want := range map[units.Length]bool{in(5, 8): false, in(1, 4): true} {
		if got := does(planned(t, seam.Spec{Kind: seam.Piped, Trim: trim}).Sheet(), "Trim the allowances", 0); got != want {
			t.Errorf("to %v: trimmed %v", trim, got)
		}
	}
}

// The layers of a graded seam are trimmed from the outside of the garment in: the
// first is the widest, the last the narrowest, those between narrower each.
func TestGradedLayers(t *testing.T) {
	for layers := 2; layers <= 6; layers++ {
		var got []string
		var left []ticket.Amount
		for _, s := range planned(t, seam.Spec{Kind: seam.Graded, Layers: layers}).Sheet().Steps {
			if strings.Contains(s.Do, "layer") {
				got, left = append(got, s.Do), append(left, s.Trim)
			}
		}
		want := []string{"Trim the layer next to the outside of the garment, the widest"}
		for range layers - 2 {
			want = append(want, "Trim the next layer narrower")
		}
		want = append(want, "Trim the innermost layer, the narrowest")
		if d := cmp.Diff(want, got); d != "" || left[0] != ticket.Long(in(1, 4)) || left[layers-1] != ticket.Long(in(1, 8)) {
			t.Errorf("%d layers, from %v to %v:\n%s", layers, left[0], left[layers-1], d)
		}
	}
}

// What was trimmed off a made-up seam is gone, also where fraying cloth and a narrow
// second pass leave no choice of the trim; what was never trimmed is there still.
func TestTrimmedAllowanceIsGone(t *testing.T) {
	for _, c := range []struct {
		spec seam.Spec
		has  units.Length
	}{
		{seam.Spec{Kind: seam.French, First: in(7, 16), Second: in(3, 16), Trim: in(1, 8), Fraying: true}, in(5, 16)},
		{seam.Spec{Kind: seam.MockFrench, Trim: in(1, 2)}, in(1, 2)},
		{seam.Spec{Kind: seam.MockFrench}, in(5, 8)},
		{seam.Spec{Kind: seam.Plain}, in(5, 8)},
	} {
		p, err := alter.Letting{Total: in(1, 8), Seams: []alter.Let{{Name: "side", Spec: c.spec, Sewn: true, Then: seam.Plain}}}.Plan()
		if err != nil || p.Seams[0].Has != c.has {
			t.Errorf("%v, trimmed to %v: has %v, want %v; %v", c.spec.Kind, c.spec.Trim, p.Seams[0].Has, c.has, err)
		}
	}
}
