package seam_test

import (
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/dart"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/units/ticket"
)

// nounSpecs are specs that between them reach every step and caution.
func nounSpecs() []any {
	r := units.RatioOf
	plain := seam.Spec{Kind: seam.Plain, Drafted: in(1, 1)}
	french := seam.Spec{Kind: seam.French, First: in(3, 8), Second: in(1, 4)}
	return []any{
		dart.Spec{Leg: in(29, 4), Other: in(7, 1), Width: in(1, 1), Slope: r(1, 8)},
		dart.Spec{Length: in(1, 1), Width: in(17, 8), Allowance: in(1, 8)},
		dart.Spec{Kind: dart.Double, Length: in(5, 1), Width: in(1, 1)}, dart.Spec{Kind: dart.Double, Length: in(5, 1), Width: in(1, 5), Across: true},
		dart.Spec{Kind: dart.French, Length: in(9, 1), Width: in(5, 2), Stop: in(1, 1)}, dart.Spec{Kind: dart.French, Length: in(9, 1), Width: in(1, 1)},
		dart.Spec{Kind: dart.OpenEnded, Length: in(4, 1), Width: in(1, 1), End: in(1, 2)},
		dart.Pivot{Length: in(6, 1), Width: in(1, 1), To: in(9, 1)}, dart.Pivot{Length: in(6, 1), Width: in(1, 1), Turn: r(1, 20), ToLeg: in(9, 1), X: in(1, 1)},
		seam.Binding{Kind: seam.SingleBinding, Finished: in(1, 4), Bias: true, Allowance: in(5, 8), Curve: r(-7, 2), Edge: in(90, 1), Ends: in(1, 2), Cloth: in(44, 1)},
		seam.Binding{Kind: seam.DoubleBinding, Finished: in(1, 4), Edge: in(80, 1), Ring: true, Corners: 4, Cloth: in(44, 1)},
		seam.Binding{Kind: seam.Piping, Cord: in(1, 4), Edge: in(40, 1), Cloth: in(60, 1), Bias: true}, seam.Binding{Kind: seam.Piping, Cord: in(1, 4)},
		seam.Row{Kind: seam.StayStitch, Trim: in(1, 16)}, seam.Row{Kind: seam.EaseStitch}, seam.Row{Kind: seam.Reinforcement},
		seam.Row{Kind: seam.UnderStitch, Layer: in(1, 16)}, seam.Row{Kind: seam.EdgeStitch},
		seam.Row{Kind: seam.TopStitch, Start: in(1, 8), End: in(1, 2)}, seam.Row{Kind: seam.TopStitch, Start: in(1, 8), End: in(3, 8), Layer: in(1, 1)},
		seam.Row{Kind: seam.TopStitch, Start: in(3, 16), End: in(3, 4)},
		seam.Roll{Apart: in(1, 64), Quarters: 4, Length: in(9, 1)}, seam.Roll{Apart: in(1, 16), Angle: r(3, 2)},
		seam.Favour{}, seam.Favour{Thick: true, Edge: in(16, 1), Bend: r(1, 2)},
		alter.Easing{Long: in(19, 1), Zones: alter.SleeveZones(in(9, 1), in(9, 1))}, alter.Easing{Long: in(3, 1), Limit: r(1, 10), Zones: []alter.Zone{{Length: in(2, 1), Share: r(1, 1)}}},
		alter.Easing{Long: in(2, 1), Zones: []alter.Zone{{Length: in(2, 1)}}},
		edge.Meeting{Drafted: in(5, 8), Taken: in(7, 16), Front: r(1, 4), Back: r(1, 3)}, edge.Meeting{Drafted: in(5, 8), Front: r(-1, 4)}, edge.Meeting{Drafted: in(5, 8), Front: r(2, 1), Back: r(3, 1)},
		alter.Letting{Total: in(1, 1), Seams: []alter.Let{{Name: "side", Spec: plain, Times: 2}, {Name: "back", Spec: french, Sewn: true, Then: seam.Plain}, {Spec: plain, Each: in(1, 16)}}},
		alter.Letting{Total: in(-1, 1), Seams: []alter.Let{{Name: "side", Spec: french, Then: seam.Plain}}},
		alter.Lengthening{By: in(1, 1), Height: in(8, 1), Run: in(1, 1), WithRun: in(1, 2)}, alter.Lengthening{By: in(-1, 1), Height: in(8, 1)},
	}
}

func TestNounSheets(t *testing.T) {
	for _, spec := range nounSpecs() {
		p, err := planNoun(t, spec)
		if err != nil {
			t.Errorf("%+v: %v", spec, err)
			continue
		}
		sh := p.Sheet()
		if err := sh.Check(); err != nil {
			t.Errorf("%+v: %v", spec, err)
		}
		if sh.Title == "" || len(sh.Steps) == 0 || len(sh.Lines) == 0 || len(sh.Cautions) == 0 || len(sh.Sources) == 0 {
			t.Errorf("%+v: the sheet says too little: %+v", spec, sh)
		}
		for _, st := range sh.Steps {
			for _, text := range []string{st.Do, st.Press, st.Note, st.Check.What, st.Check.Mend} {
				if strings.ContainsAny(text, "0123456789") {
					t.Errorf("a measure as text: %q", text)
				}
			}
			if st.Do == "" || !st.At.IsZero() && st.From == "" || st.Check.What != "" && (st.Check.Want.IsZero() || st.Check.Mend == "") {
				t.Errorf("%+v: step without its verb, guide or mend: %+v", spec, st)
			}
		}
		for _, c := range sh.Sources {
			if _, ok := source.Lookup(c.ID); !ok && (c.ID != "" || c.Known != source.Practice) {
				t.Errorf("no such source: %+v", c)
			}
		}
		for line := range strings.SplitSeq(sh.Text(units.Notation{}), "\n") {
			if len(line) > ticket.Columns {
				t.Errorf("a line too long: %q", line)
			}
		}
	}
	for _, p := range []sheeted{dart.Plan{}, dart.PivotPlan{}, seam.BindingPlan{}, seam.RowPlan{}, seam.RollPlan{}, seam.FavourPlan{}, alter.EasingPlan{}, edge.MeetingPlan{}, alter.LettingPlan{}, alter.LengtheningPlan{}} {
		if sh := p.Sheet(); sh.Title == "" || len(sh.Steps) > 0 {
			t.Errorf("%T: the sheet of nothing: %+v", p, sh)
		}
	}
	if sh := (seam.RowPlan{Spec: seam.Row{Kind: 99}}).Sheet(); len(sh.Steps) > 0 {
		t.Errorf("the sheet of no kind of row: %+v", sh)
	}
}

// planOf plans a noun and drops the plan.
func planOf(t *testing.T, spec any) func() {
	t.Helper()
	switch s := spec.(type) {
	case dart.Spec:
		return planner(s.Plan)
	case dart.Pivot:
		return planner(s.Plan)
	case seam.Binding:
		return planner(s.Plan)
	case seam.Row:
		return planner(s.Plan)
	case seam.Roll:
		return planner(s.Plan)
	case seam.Favour:
		return planner(s.Plan)
	case alter.Easing:
		return planner(s.Plan)
	case edge.Meeting:
		return planner(s.Plan)
	case alter.Letting:
		return planner(s.Plan)
	case alter.Lengthening:
		return planner(s.Plan)
	}
	t.Fatalf("no such noun: %T", spec)
	return nil
}

func planner[P any](plan func() (P, error)) func() {
	return func() { _, _ = plan() }
}

// A pivot turns: lengths stay, the two parts of the angle make the whole, and
// moving the whole dart by two moves is moving it by one.
func TestPivotTurns(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 39))
	for range 500 {
		v := dart.Pivot{Length: in(16+r.Int64N(100), 16), Width: in(1+r.Int64N(30), 16), To: in(1+r.Int64N(200), 16), X: in(r.Int64N(200)-100, 16), Y: in(r.Int64N(200)-100, 7)}
		whole := v.Width.DivInt(2).Div(v.Length)
		v.Turn = whole.Mul(units.RatioOf(1+r.Int64N(9), 10))
		p, err := v.Plan()
		if err != nil {
			t.Fatal(err)
		}
		if p.X.Times(p.X).Add(p.Y.Times(p.Y)) != v.X.Times(v.X).Add(v.Y.Times(v.Y)) {
			t.Errorf("%+v: the point comes nearer or goes further: %v, %v", v, p.X, p.Y)
		}
		if p.Sine.Mul(p.Sine).Add(p.Cosine.Mul(p.Cosine)) != units.RatioOf(1, 1) {
			t.Errorf("%+v: sine %v, cosine %v", v, p.Sine, p.Cosine)
		}
		one := units.RatioOf(1, 1)
		if p.LeftTurn.Add(v.Turn).Quo(one.Sub(p.LeftTurn.Mul(v.Turn))) != whole {
			t.Errorf("%+v: the parts do not make the whole", v)
		}
		rest := dart.Pivot{Length: v.Length, Width: v.Length.Scale(p.LeftTurn).MulInt(2), To: v.To, X: p.X, Y: p.Y}
		if p.Left.IsZero() {
			continue
		}
		q, err := rest.Plan()
		if err != nil {
			t.Fatal(err)
		}
		v.Turn = units.Ratio{}
		all, err := v.Plan()
		if err != nil || all.X != q.X || all.Y != q.Y || !all.Left.IsZero() {
			t.Errorf("%+v: in two moves %v, %v; in one %v, %v", v, q.X, q.Y, all.X, all.Y)
		}
	}
}

// The cap of a dart, folded on a drawing of it: the mirror image of the fold's edge
// in the leg lies on the edge of the side it is pressed to.
func TestCapMirrors(t *testing.T) {
	r := rand.New(rand.NewPCG(18, 22))
	capped := 0
	for range 1000 {
		c, w := in(16+r.Int64N(160), 16), in(1+r.Int64N(60), 16)
		d := dart.Spec{Length: c, Width: w, Allowance: in(1, 16), Slope: units.RatioOf(r.Int64N(40)-20, 40)}
		if r.IntN(2) == 0 {
			d.Kind, d.End = dart.OpenEnded, w.Scale(units.RatioOf(1+r.Int64N(10), 10))
		}
		p, err := d.Plan()
		if err != nil {
			t.Fatal(err)
		}
		out, ok := p.Cap.Exact()
		if !ok || !p.Folds {
			if p.Folds || !p.Cap.IsZero() {
				t.Errorf("%+v: cap %v", d, p.Cap)
			}
			continue
		}
		capped++
		// The leg runs from its end (-h, 0) to (-e, -c), y away from the point.
		h, e := w.DivInt(2), d.End.DivInt(2)
		dx, dy := h.Sub(e), c.Neg()
		px, py := h, out // the fold's edge (0, out) from the leg's end
		along := px.Times(dx).Add(py.Times(dy)).Div(dx.Times(dx).Add(dy.Times(dy)))
		mx, my := dx.Scale(along).MulInt(2).Sub(px), dy.Scale(along).MulInt(2).Sub(py)
		if my != mx.Neg().Scale(d.Slope) {
			t.Errorf("%+v: the fold's edge falls on %v, %v from the leg's end", d, mx, my)
		}
	}
	if capped < 500 {
		t.Errorf("only %d caps", capped)
	}
}

// Whatever a letting gives is the total, no ply gives more than it has, and those
// that could give more give alike.
func TestLettingAddsUp(t *testing.T) {
	r := rand.New(rand.NewPCG(35, 8))
	good := 0
	for range 2000 {
		l := alter.Letting{Total: in(1+r.Int64N(64), 16)}
		for range 1 + r.IntN(4) {
			one := alter.Let{Name: "seam", Times: r.IntN(4), Spec: seam.Spec{Kind: seam.Plain, Drafted: in(4+r.Int64N(20), 16)}, Sewn: r.IntN(2) == 0}
			if one.Sewn && r.IntN(2) == 0 {
				one.Spec = seam.Spec{Kind: seam.French, Drafted: in(10+r.Int64N(8), 16)}
				one.Then = seam.Plain
			}
			l.Seams = append(l.Seams, one)
		}
		p, err := l.Plan()
		if err != nil {
			if got := faultPaths(t, err); got != "total" {
				t.Errorf("%+v: %v", l, err)
			}
			continue
		}
		good++
		sum, least := units.Length{}, units.Length{}
		for _, o := range p.Seams {
			sum = sum.Add(o.Total)
			if o.Gives.Less(o.Each) || o.After.Upper.Taken != o.Take && o.After != o.Before || o.Has != o.Take.Add(o.Each) || o.After.Upper.Drift != o.Before.Upper.Drift.Add(o.Each) || o.After.Under.Drift != o.Before.Under.Drift.Add(o.Each) {
				t.Errorf("%+v: %+v", l, o)
			}
			if o.Each.Less(o.Gives) {
				if !least.IsZero() && o.Each != least {
					t.Errorf("%+v: %v and %v where both could give more", l, least, o.Each)
				}
				least = o.Each
			}
		}
		if sum != l.Total || p.Most.Less(sum) {
			t.Errorf("%+v: gives %v of %v", l, sum, p.Most)
		}
	}
	if good < 500 {
		t.Errorf("only %d good", good)
	}
}

// Letting out changes the edges that the seams cross, and nothing else, by what the
// letting says; the partner tells.
func TestLettingThroughAssembly(t *testing.T) {
	plain := seam.Spec{Kind: seam.Plain, Drafted: in(1, 1)}
	a := edge.Assembly{
		Seams: []edge.Joint{{Name: "side", Spec: plain}, {Name: "shoulder", Spec: plain}},
		Edges: []edge.Course{
			{Name: "waist", Net: in(28, 1), Crossings: []edge.Crossing{{Seam: "side", Times: 2}}},
			{Name: "band", Net: in(28, 1)},
			{Name: "neck", Net: in(15, 1), Crossings: []edge.Crossing{{Seam: "shoulder", Times: 2}}},
			{Name: "collar", Net: in(15, 1)},
		},
		Pairs: []edge.Partners{{Long: "waist", Short: "band"}, {Long: "neck", Short: "collar"}},
	}
	l, err := alter.Letting{Total: in(1, 1), Seams: []alter.Let{{Name: "side", Times: 2, Spec: plain}}}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	b, err := l.Apply(a)
	if err != nil {
		t.Fatal(err)
	}
	p, err := b.Plan()
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range map[string]units.Length{"waist": in(1, 1), "band": {}, "neck": {}, "collar": {}} {
		e, _ := p.Edge(name)
		exactTo(t, name, e.Change, want)
	}
	if m, _ := p.Pair("waist", "band"); m.Fit != edge.Mismatch {
		t.Errorf("the waist against its band: %v", m.Fit)
	}
	if m, _ := p.Pair("neck", "collar"); m.Fit != edge.Fits {
		t.Errorf("the neck against its collar: %v", m.Fit)
	}
	if a.Seams[0].Spec != plain {
		t.Error("the assembly given was changed")
	}
	// A remedy mends the waist, for every partner.
	rs, err := b.Remedies()
	if err != nil || len(rs) == 0 {
		t.Fatalf("%v, %v", rs, err)
	}
	for _, r := range rs {
		mended, err := r.Apply(b)
		if err != nil {
			t.Fatal(err)
		}
		if q, err := mended.Plan(); err != nil || q.Mismatched() != p.Mismatched()-r.Mends+r.Breaks {
			t.Errorf("%v: %v", r, err)
		}
	}
	l.Spec.Seams[0].Name = "hem"
	if _, err := l.Apply(a); faultPaths(t, err) != "seams" {
		t.Errorf("a seam that is not there: %v", err)
	}
}

// Every kind of seam, sewn or not, can be let out or taken in, or says why not.
func TestLettingEveryKind(t *testing.T) {
	outs := 0
	for k := range seam.Kinds {
		for _, sewn := range []bool{false, true} {
			for _, total := range []units.Length{in(1, 8), in(-1, 8)} {
				spec := seam.Spec{Kind: k, Drafted: in(1, 1), Fraying: true}
				p, err := alter.Letting{Total: total, Seams: []alter.Let{{Name: "side", Spec: spec, Sewn: sewn}}}.Plan()
				if err != nil {
					faultPaths(t, err)
					continue
				}
				outs++
				o := p.Seams[0]
				if o.Before.Upper.Taken.Less(o.Has) || o.After.Spec.Kind != k || o.After.Upper.Taken != o.Take || o.After.Upper.Drift != o.Before.Upper.Drift.Add(o.Each) {
					t.Errorf("%v, %v: %+v", k, total, o)
				}
				if err := p.Sheet().Check(); err != nil {
					t.Errorf("%v: %v", k, err)
				}
			}
		}
	}
	if outs < 40 {
		t.Errorf("only %d of all kinds can be altered", outs)
	}
}

// The strips bought make the strip needed, and one strip fewer does not.
func TestBindingStrips(t *testing.T) {
	r := rand.New(rand.NewPCG(16, 15))
	for range 500 {
		b := seam.Binding{Kind: seam.DoubleBinding, Finished: in(1+r.Int64N(8), 8), Bias: r.IntN(2) == 0, Ring: r.IntN(2) == 0,
			Edge: in(1+r.Int64N(4000), 8), Corners: r.IntN(5), Cloth: in(160+r.Int64N(400), 8), Join: in(1+r.Int64N(8), 16)}
		if !b.Ring {
			b.Ends = in(r.Int64N(8), 8)
		}
		p, err := b.Plan()
		if err != nil {
			t.Fatal(err)
		}
		if n, err := p.Spare.Sign(); err != nil || n < 0 {
			t.Errorf("%+v: spare %v", b, p.Spare)
		}
		joint := strip.Straight
		if b.Bias {
			joint = strip.Slanted
		}
		joined, err := strip.Binding{Joint: joint, Pieces: p.Pieces, Each: in(1000, 1), Allowance: b.Join}.Plan()
		if err != nil || in(1, 1_000_000).Less(joined.PerJoin.Sub(p.JoinLoss).Mid().Abs()) {
			t.Errorf("%+v: a join takes %v, of a strip %v, %v", b, p.JoinLoss, joined.PerJoin, err)
		}
		if p.Pieces > 1 {
			fewer := p.Spare.Sub(p.Each).Add(p.JoinLoss)
			if n, err := fewer.Sign(); err != nil || n >= 0 {
				t.Errorf("%+v: a strip fewer would do, spare %v", b, fewer)
			}
		}
	}
}

// Two lengthened edges are equally long.
func TestLengtheningMatches(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 4))
	for range 300 {
		l := alter.Lengthening{By: in(1+r.Int64N(40), 8), Height: in(40+r.Int64N(100), 8), Run: in(r.Int64N(40), 8), WithRun: in(r.Int64N(40), 8)}
		p, err := l.Plan()
		if err != nil {
			t.Fatal(err)
		}
		// With's height and change come to an edge as long as After.
		tall := p.WithHeight.Add(p.WithBy).Mid()
		if got, err := units.Sqrt(tall.Times(tall).Add(l.WithRun.Times(l.WithRun)), units.Length{}); err != nil || in(1, 1000).Less(got.Sub(p.After).Mid().Abs()) {
			t.Errorf("%+v: %v against %v", l, got, p.After)
		}
	}
}

// The eases of the zones are the whole, and each lies where its share puts it.
func TestEasingAddsUp(t *testing.T) {
	r := rand.New(rand.NewPCG(29, 9))
	for range 300 {
		e := alter.Easing{}
		all := units.Length{}
		for range 1 + r.IntN(6) {
			z := alter.Zone{Length: in(1+r.Int64N(40), 8), Share: units.RatioOf(r.Int64N(3), 1)}
			e.Zones, all = append(e.Zones, z), all.Add(z.Length)
		}
		e.Zones[0].Share = units.RatioOf(1, 3)
		e.Long = all.Add(in(r.Int64N(20), 16))
		p, err := e.Plan()
		if err != nil {
			t.Fatal(err)
		}
		sum, at := units.Length{}, units.Length{}
		for i, o := range p.Zones {
			if o.From != at || o.Fits != !p.Spec.Limit.Less(o.Per) || !o.Fits && p.Smooth || e.Zones[i].Share.IsZero() && !o.Ease.IsZero() {
				t.Errorf("%+v: %+v", e, o)
			}
			sum, at = sum.Add(o.Long), at.Add(e.Zones[i].Length)
		}
		if sum != e.Long || p.Ease != e.Long.Sub(p.Short) {
			t.Errorf("%+v: zones of %v", e, sum)
		}
	}
}

func TestDartFigures(t *testing.T) {
	n := 0
	for r := range dart.Figures {
		n++
		checkCite(t, r.Cite())
		if r.What == "" || r.Where == "" || r.Least.Sign() <= 0 || !r.Most.IsZero() && !r.Least.Less(r.Most) {
			t.Errorf("%+v", r)
		}
	}
	if n != 27 {
		t.Errorf("%d rows", n)
	}
	for range dart.Figures {
		break
	}
}

func TestAcrossEveryDart(t *testing.T) {
	for _, c := range []struct {
		dart dart.Spec
		h    units.Length
		want units.Length
	}{
		{dart.Spec{Kind: dart.Double, Length: in(4, 1), Lower: in(6, 1), Width: in(1, 1)}, in(2, 1), in(1, 2)},
		{dart.Spec{Kind: dart.Double, Length: in(4, 1), Lower: in(6, 1), Width: in(1, 1)}, in(4, 1), in(1, 1)},
		{dart.Spec{Kind: dart.Double, Length: in(4, 1), Lower: in(6, 1), Width: in(1, 1)}, in(8, 1), in(1, 3)},
		{dart.Spec{Kind: dart.Double, Length: in(4, 1), Lower: in(6, 1), Width: in(1, 1)}, in(10, 1), units.Length{}},
		{dart.Spec{Kind: dart.OpenEnded, Length: in(4, 1), Width: in(1, 1), End: in(1, 2)}, units.Length{}, in(1, 2)},
		{dart.Spec{Kind: dart.OpenEnded, Length: in(4, 1), Width: in(1, 1), End: in(1, 2)}, in(2, 1), in(3, 4)},
	} {
		p, err := c.dart.Plan()
		if err != nil {
			t.Fatal(err)
		}
		n, err := p.Across(c.h)
		if err != nil {
			t.Fatal(err)
		}
		exactTo(t, c.dart.Kind.String(), n, c.want)
		if _, err := p.Across(p.Centre.Mid().Add(in(1, 16))); err == nil {
			t.Errorf("%v: off the dart", c.dart.Kind)
		}
	}
	if _, err := (dart.Plan{Spec: dart.Spec{Kind: dart.Double}}).Across(units.Length{}); err == nil {
		t.Error("across no dart")
	}
}
