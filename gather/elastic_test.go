package gather_test

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

// The drawers of the pantomime dame: elastic of nine tenths of the waist, which must
// pass the hip.
func ExampleElastic_Plan() {
	p, err := gather.Elastic{
		Body: units.MustParse("28 in"), Ratio: units.RatioOf(9, 10), Lap: units.Give(units.MustParse("1 in")), Over: units.MustParse("40 in"),
		Rest: units.MustParse("10 in"), Stretched: units.MustParse("16 in"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("cut", p.Cut, "for", p.Relaxed, "at rest")
	fmt.Println("it must stretch by", p.Needed, "of itself and stretches by", p.Spec.Stretch)
	fmt.Println("it could be as short as", p.Least)
	// Output:
	// cut 665.48 mm for 640.08 mm at rest
	// it must stretch by 37/63 of itself and stretches by 3/5
	// it could be as short as 25 in
}

func TestElasticFaults(t *testing.T) {
	n := in("-1")
	waist := func() gather.Elastic {
		return gather.Elastic{Body: in("28"), Ratio: units.RatioOf(7, 8), Over: in("35"), Rest: in("10"), Stretched: in("16"), Cloth: in("44")}
	}
	for _, test := range []struct {
		why    string
		change func(*gather.Elastic)
		want   []string
		err    error
	}{
		{"nothing given", func(e *gather.Elastic) { *e = gather.Elastic{} }, []string{"body", "ratio"}, fault.Missing},
		{"everything wrong at once", func(e *gather.Elastic) {
			*e = gather.Elastic{
				Tape: 9, Body: n, Ratio: units.RatioOf(-1, 2), Less: units.Give(n), Pull: units.RatioOf(-1, 2), Relaxed: n, Lap: units.Give(n), Over: n, Rest: n, Stretched: n,
				Stretch: units.RatioOf(-1, 2), Cloth: n, Width: n, Opening: n, Parts: -1,
			}
		}, []string{"tape", "body", "ratio", "less", "pull", "relaxed", "lap", "over", "rest", "stretched", "stretch", "cloth", "width", "opening", "parts"}, fault.Sign},
		{"a ratio of nobody", func(e *gather.Elastic) { e.Body, e.Relaxed = in("0"), in("20") }, []string{"body"}, fault.Missing},
		{"longer than the body", func(e *gather.Elastic) { e.Ratio = units.RatioOf(9, 8) }, []string{"ratio"}, fault.Range},
		{"longer than the body, at rest", func(e *gather.Elastic) { e.Ratio, e.Relaxed = units.Ratio{}, in("29") }, []string{"relaxed"}, fault.Range},
		{"nothing left", func(e *gather.Elastic) { e.Ratio, e.Less = units.Ratio{}, units.Give(in("28")) }, []string{"less"}, fault.Range},
		{"a ratio and a pull that disagree", func(e *gather.Elastic) { e.Pull = units.RatioOf(1, 8) }, []string{"pull"}, fault.Conflict},
		{"another length at rest", func(e *gather.Elastic) { e.Relaxed = in("24") }, []string{"ratio"}, fault.Conflict},
		{"a test piece that does not stretch", func(e *gather.Elastic) { e.Stretched = in("10") }, []string{"stretched"}, fault.Range},
		{"a test piece without its rest", func(e *gather.Elastic) { e.Rest = in("0") }, []string{"rest"}, fault.Missing},
		{"another stretch than was measured", func(e *gather.Elastic) { e.Stretch = units.RatioOf(1, 2) }, []string{"stretch"}, fault.Conflict},
		{"it does not pass the hip", func(e *gather.Elastic) { e.Over = in("39 1/4") }, []string{"over"}, fault.Range},
		{"nor go round the body", func(e *gather.Elastic) { e.Ratio, e.Over = units.RatioOf(1, 2), in("0") }, []string{"body"}, fault.Range},
		{"an opening too short", func(e *gather.Elastic) { e.Width, e.Opening = in("1"), in("3/4") }, []string{"opening"}, fault.Range},
		{"nothing to draw in", func(e *gather.Elastic) { e.Cloth = in("24") }, []string{"cloth"}, fault.Range},
	} {
		e := waist()
		test.change(&e)
		_, err := e.Plan()
		faulty(t, test.why, err, test.err, test.want)
	}
	e := waist()
	e.Over = in("39 1/5") // 24 1/2 in x 1 3/5
	if p, err := e.Plan(); err != nil || p.Most != e.Over {
		t.Error(p.Most, err)
	}
}

// TestElasticBackwards: ratio, less, pull and the length at rest each give the same
// elastic back.
func TestElasticBackwards(t *testing.T) {
	r := random{rand.New(rand.NewPCG(6, 1))}
	for range nountest.Rounds(3000) {
		body := r.upTo(50)
		e := gather.Elastic{Body: body, Ratio: units.RatioOf(r.Int64N(40)+1, 41), Lap: units.Give(r.upTo(1)), Cloth: body.Add(r.upTo(40)), Parts: 1 + r.IntN(12)}
		p, err := e.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", e, err)
		}
		check(t, "", p)
		for _, other := range []gather.Elastic{
			{Less: units.Give(p.Shorter)}, {Pull: p.Pull}, {Relaxed: p.Relaxed}, {Ratio: p.Ratio, Less: units.Give(p.Shorter), Pull: p.Pull, Relaxed: p.Relaxed},
		} {
			other.Body, other.Lap, other.Cloth, other.Parts = e.Body, e.Lap, e.Cloth, e.Parts
			q, err := other.Plan()
			q.Spec, q.Assumed = p.Spec, p.Assumed
			if err != nil || !reflect.DeepEqual(q, p) {
				t.Fatalf("%+v\nis planned as %+v, %v", other, q, err)
			}
		}
	}
}
