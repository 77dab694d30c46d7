package seam_test

import (
	"math/rand/v2"
	"reflect"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/dart"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// planAny plans a spec of any noun, whose plan is to have Spec and Assumed.
func planAny(spec reflect.Value) (plan reflect.Value, err error) {
	out := spec.MethodByName("Plan").Call(nil)
	err, _ = out[1].Interface().(error)
	return out[0], err
}

// again plans what was solved, and looks that the plan is the same with nothing
// assumed in it that was not.
func again(t *testing.T, spec reflect.Value) bool {
	t.Helper()
	p, err := planAny(spec)
	if err != nil {
		return false
	}
	q, err := planAny(p.FieldByName("Spec"))
	if err != nil {
		t.Errorf("%T %+v:\nsolved %+v: %v", spec.Interface(), spec.Interface(), p.FieldByName("Spec").Interface(), err)
		return true
	}
	for _, one := range []*reflect.Value{&p, &q} {
		copied := reflect.New(one.Type()).Elem()
		copied.Set(*one)
		unassumed(copied)
		*one = copied
	}
	if !reflect.DeepEqual(p.Interface(), q.Interface()) {
		t.Errorf("%T %+v:\nplanned %+v,\nsolved  %+v", spec.Interface(), spec.Interface(), p.Interface(), q.Interface())
	}
	return true
}

// unassumed clears Assumed in a plan and in the plans inside it.
func unassumed(v reflect.Value) {
	switch {
	case v.Type() == reflect.TypeOf(ticket.Fields("")):
		v.SetZero()
	case v.Kind() == reflect.Struct:
		for i := range v.NumField() {
			if v.Field(i).CanSet() {
				unassumed(v.Field(i))
			}
		}
	case v.Kind() == reflect.Slice:
		for i := range v.Len() {
			unassumed(v.Index(i))
		}
	}
}

// The solved spec of every noun, fed back, gives the same plan.
func TestSolvedSpecsPlanAlike(t *testing.T) {
	r := rand.New(rand.NewPCG(19, 20))
	seams := 0
	for range 5_000 {
		if again(t, reflect.ValueOf(someSpec(r))) {
			seams++
		}
	}
	if seams < 1_000 {
		t.Errorf("only %d seams", seams)
	}
	for _, spec := range nounSpecs() {
		if !again(t, reflect.ValueOf(spec)) {
			t.Errorf("%+v cannot be planned", spec)
		}
	}
	planned := map[string]int{}
	for range 1_500 {
		for _, noun := range []any{
			dart.Spec{}, dart.Pivot{}, seam.Binding{}, seam.Row{}, seam.Roll{}, seam.Favour{}, alter.Easing{}, edge.Meeting{}, alter.Lengthening{},
			anyLetting(r), anyMatch(r), anyAssembly(r),
		} {
			spec := reflect.New(reflect.TypeOf(noun)).Elem()
			if spec.Set(reflect.ValueOf(noun)); spec.IsZero() {
				b := make([]byte, 200)
				for k := range b {
					if b[k] = byte(r.IntN(256)); r.IntN(3) == 0 {
						b[k] = byte(r.IntN(3))
					}
				}
				(&reader{b}).fill(spec)
			}
			if n := spec.Type().Name(); again(t, spec) {
				planned[n]++
			} else {
				planned[n] += 0
			}
			if t.Failed() {
				return
			}
		}
	}
	for noun, n := range planned {
		if n == 0 {
			t.Errorf("no %s was planned", noun)
		}
	}
}

// anyLetting shares a change over seams of any kind.
func anyLetting(r *rand.Rand) alter.Letting {
	l := alter.Letting{Total: in(1+r.Int64N(32), 16)}
	for range 1 + r.IntN(3) {
		one := alter.Let{Spec: someSpec(r), Times: r.IntN(3), Sewn: r.IntN(2) == 0}
		if r.IntN(3) == 0 {
			one.Then = seam.Plain
		}
		l.Seams = append(l.Seams, one)
	}
	return l
}

// anyEdge is crossed by up to three seams, and may lie along another.
func anyEdge(r *rand.Rand, name string) edge.Spec {
	e := edge.Spec{Name: name, Net: in(160+r.Int64N(160), 16)}
	for range r.IntN(4) {
		x := edge.Take{Drafted: in(4+r.Int64N(12), 16), Plies: r.IntN(4)}
		if r.IntN(2) == 0 {
			x.Taken = in(1+r.Int64N(12), 16)
		}
		if r.IntN(3) == 0 {
			x.Slant = units.RatioOf(1+r.Int64N(4), 1+r.Int64N(4))
		}
		e.Takes = append(e.Takes, x)
	}
	if r.IntN(2) == 0 {
		e.Own, e.Turn = edge.Take{Drafted: in(5, 8), Taken: in(3, 8)}, units.RatioOf(r.Int64N(7)-3, 2)
	}
	if r.IntN(3) == 0 {
		e.Spread = in(r.Int64N(33)-16, 16)
	}
	return e
}

func anyMatch(r *rand.Rand) edge.Pair {
	return edge.Pair{Long: anyEdge(r, ""), Short: anyEdge(r, "armhole"), MaxEase: units.RatioOf(r.Int64N(3), 20)}
}

// anyAssembly has seams, and a pair of edges that they cross.
func anyAssembly(r *rand.Rand) edge.Assembly {
	a := edge.Assembly{
		Seams: []edge.Joint{{Name: "side", Spec: someSpec(r)}, {Name: "neck seam", Spec: seam.Spec{Kind: seam.Plain, First: in(3, 8)}}},
		Edges: []edge.Course{{Name: "neck", Net: in(16, 1), Own: "neck seam", Turn: units.RatioOf(-7, 2)}, {Name: "collar", Net: in(16, 1), Spread: in(r.Int64N(8), 16)}},
		Pairs: []edge.Partners{{Long: "neck", Short: "collar"}},
	}
	for i := range a.Edges {
		for range r.IntN(3) {
			x := edge.Crossing{Seam: "side", Times: r.IntN(3), Plies: r.IntN(3)}
			if x.Plies == 1 {
				x.Ply = edge.Ply(r.IntN(3))
			}
			a.Edges[i].Crossings = append(a.Edges[i].Crossings, x)
		}
	}
	return a
}

// The zero of every plan has a sheet that says nothing wrong.
func TestSheetsOfZeroPlans(t *testing.T) {
	for _, p := range []sheeted{
		seam.Plan{}, edge.Plan{}, edge.PairPlan{}, edge.AssemblyPlan{}, dart.Plan{}, dart.PivotPlan{}, seam.BindingPlan{},
		seam.RowPlan{}, seam.RollPlan{}, seam.FavourPlan{}, alter.EasingPlan{}, edge.MeetingPlan{}, alter.LettingPlan{}, alter.LengtheningPlan{},
	} {
		sh := p.Sheet()
		if err := sh.Check(); err != nil || sh.Title == "" {
			t.Errorf("%T: %+v, %v", p, sh, err)
		}
		for _, st := range sh.Steps {
			t.Errorf("%T: a step of nothing: %+v", p, st)
		}
	}
}
