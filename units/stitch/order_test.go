package stitch_test

import (
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/units/stitch"
)

func set(t *testing.T, j stitch.Job, c stitch.Cloth) stitch.SettingPlan {
	t.Helper()
	p, err := stitch.Setting{Job: j, Cloth: c}.Plan()
	if err != nil {
		t.Fatalf("%v on %v: %v", j, c, err)
	}
	return p
}

// TestSeamIsFinest holds the trade's order on every cloth: a seam is no coarser than
// its topstitching, and that no coarser than its basting. What is finer than a seam
// is held to it too.
func TestSeamIsFinest(t *testing.T) {
	for c := range stitch.Cloths() {
		rows := []stitch.SettingPlan{set(t, stitch.Reinforce, c), set(t, stitch.Regular, c), set(t, stitch.Topstitch, c), set(t, stitch.Basting, c)}
		for i, p := range rows[1:] {
			if q := rows[i]; p.Short.Less(q.Short) || p.Long.Less(q.Long) {
				t.Errorf("%v: %v takes %v to %v, %v takes %v to %v", c, q.Spec.Job, q.Short, q.Long, p.Spec.Job, p.Short, p.Long)
			}
		}
		if p, q := set(t, 0, c), rows[1]; p.Short != q.Short || p.Long != q.Long {
			t.Errorf("%v: a cloth alone takes %v to %v, a regular seam %v to %v", c, p.Short, p.Long, q.Short, q.Long)
		}
	}
}

// TestHeavyCloth is stitched by what is printed for it: seams of denim and twill at 8
// to 10 to the inch, basting and topstitching at 5 to 6.
func TestHeavyCloth(t *testing.T) {
	for _, c := range []stitch.Cloth{stitch.BottomWeight, stitch.Denim, stitch.Canvas, stitch.BoatCanvas} {
		for _, test := range []struct {
			job         stitch.Job
			least, most int64
		}{
			{0, 8, 10}, {stitch.Regular, 8, 10}, {stitch.Topstitch, 5, 6}, {stitch.Basting, 5, 6}, {stitch.Easing, 8, 10},
		} {
			p := set(t, test.job, c)
			if p.LeastPerInch != of(test.least, 1) || p.MostPerInch != of(test.most, 1) {
				t.Errorf("%v on %v: %v to %v to the inch", test.job, c, p.LeastPerInch, p.MostPerInch)
			}
			for _, cite := range p.Sheet().Sources {
				if strings.Contains(cite.For, "basting") && test.job == 0 {
					t.Errorf("a seam of %v by the figure of its basting", c)
				}
			}
		}
	}
}

// TestOneValue writes a figure once that has no range.
func TestOneValue(t *testing.T) {
	for c := range stitch.Cloths() {
		p := set(t, 0, c)
		seen := map[string]string{}
		for _, l := range p.Sheet().Lines {
			kind, value := strings.HasSuffix(l.Label, "beside it"), l.Result.String()
			if strings.Contains(l.Label, "stitch") && seen[value] != "" && strings.HasSuffix(seen[value], "beside it") == kind {
				t.Errorf("%v: %q and %q are both %s", c, seen[value], l.Label, value)
			}
			seen[value] = l.Label
		}
		if p.Short == p.Long && strings.Contains(p.Sheet().Text(), "longest stitch of the range") {
			t.Errorf("%v: a range of one value", c)
		}
	}
}

// TestEveryClothHasANeedle asks each for the needle that its own source prints, where
// it prints one.
func TestEveryClothHasANeedle(t *testing.T) {
	for c := range stitch.Cloths() {
		if p := set(t, 0, c); p.Spec.Needle == 0 || !slices.Equal(p.Assumed, []string{"needle"}) {
			t.Errorf("%v: needle %d", c, p.Spec.Needle)
		}
	}
	for c, want := range map[stitch.Cloth]int{stitch.Shirting: 70, stitch.Brocade: 90} {
		if p, err := (stitch.Setting{Cloth: c}).Plan(); err != nil || p.Spec.Needle != want {
			t.Errorf("%v: needle %d, want %d, %v", c, p.Spec.Needle, want, err)
		}
	}
}
