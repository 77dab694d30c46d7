package gather_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

// The gown of the village's Queen Bess: four pleats to the inch on a band of 30 in.
func ExampleCartridge_Plan() {
	p, err := gather.Cartridge{Section: units.MustParse("30 in"), Pitch: units.MustParse("1/4 in"), Stitch: units.MustParse("3/8 in")}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Spec.Count, "pleats of", p.PerPleat, "take", p.Spec.Cloth, "of cloth,", p.Fullness, "times the band")
	// Output: 120 pleats of 3/4 in take 90 in of cloth, 3 times the band
}

func ExampleKick_Plan() {
	p, err := gather.Kick{Height: units.MustParse("8 in"), Depth: units.MustParse("2 in"), Hem: units.MustParse("2 in")}.Plan()
	fmt.Println("cut the underlay", p.UnderlayWidth, "by", p.UnderlayLength, err)
	// Output: cut the underlay 5 1/4 in by 10 5/8 in <nil>
}

func TestCartridgeFaults(t *testing.T) {
	n := in("-1")
	for _, test := range []struct {
		why    string
		change func(*gather.Cartridge)
		want   []string
		err    error
	}{
		{"nothing given", func(c *gather.Cartridge) { *c = gather.Cartridge{} }, []string{"section", "count"}, fault.Missing},
		{"everything wrong at once", func(c *gather.Cartridge) {
			*c = gather.Cartridge{Tape: 9, Section: n, Count: math.MaxInt, Pitch: n, Stitch: n, Cloth: n, Thickness: n, Turn: n, Rows: 11, Apart: n}
		}, []string{"tape", "section", "count", "pitch", "stitch", "cloth", "thickness", "turn", "rows", "apart"}, fault.Sign},
		{"no whole number", func(c *gather.Cartridge) { c.Pitch = in("7") }, []string{"section"}, fault.Conflict},
		{"more than may be", func(c *gather.Cartridge) { c.Pitch = in("1/1000") }, []string{"section"}, fault.Range},
		{"a count that disagrees", func(c *gather.Cartridge) { c.Count = 100 }, []string{"section"}, fault.Conflict},
		{"cloth that disagrees", func(c *gather.Cartridge) { c.Cloth = in("91") }, []string{"cloth"}, fault.Conflict},
		{"nothing to draw up", func(c *gather.Cartridge) { c.Stitch = in("1/8") }, []string{"stitch"}, fault.Range},
		{"no room for the plies", func(c *gather.Cartridge) { c.Thickness = in("9/64") }, []string{"thickness"}, fault.Range},
		{"rows below the fold", func(c *gather.Cartridge) { c.Turn, c.Rows, c.Apart = in("1/2"), 2, in("5/16") }, []string{"apart"}, fault.Range},
	} {
		c := gather.Cartridge{Section: in("30"), Pitch: in("1/4"), Stitch: in("3/8")}
		test.change(&c)
		_, err := c.Plan()
		faulty(t, test.why, err, test.err, test.want)
	}
	_, err := gather.Kick{}.Plan()
	faulty(t, "a kick pleat of nothing", err, fault.Missing, []string{"height"})
	_, err = gather.Kick{Tape: 9, Height: n, Depth: n, Allowance: n, Hem: n}.Plan()
	faulty(t, "a kick pleat all wrong", err, fault.Sign, []string{"tape", "height", "depth", "allowance", "hem"})
}

// TestCartridgeBackwards: whatever is left out is found again from the rest.
func TestCartridgeBackwards(t *testing.T) {
	r := random{rand.New(rand.NewPCG(12, 9))}
	for range nountest.Rounds(2000) {
		c := gather.Cartridge{Count: 1 + r.IntN(400), Pitch: r.upTo(1), Turn: in("1"), Rows: 2, Apart: in("1/4")}
		c.Stitch = c.Pitch.DivInt(2).Add(r.upTo(1))
		p, err := c.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", c, err)
		}
		check(t, "", p)
		for _, forget := range []func(*gather.Cartridge){
			func(c *gather.Cartridge) { c.Count = 0 },
			func(c *gather.Cartridge) { c.Pitch = units.Length{} },
			func(c *gather.Cartridge) { c.Section = units.Length{} },
			func(c *gather.Cartridge) { c.Stitch = units.Length{} },
			func(c *gather.Cartridge) { c.Cloth = units.Length{} },
		} {
			part := p.Spec
			forget(&part)
			q, err := part.Plan()
			if q.Assumed = p.Assumed; err != nil || !reflect.DeepEqual(q, p) {
				t.Fatalf("%+v\nis planned as %+v, %v", part, q, err)
			}
		}
	}
}
