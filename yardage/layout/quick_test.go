package layout_test

import (
	"context"
	"math/rand/v2"
	"testing"

	"example.com/clothyard/yardage/layout"
)

// On any cloth a context that is done at once leaves a lay that keeps whatever the
// trade asks.
func TestFirstLayAny(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(51, 52))
	good := 0
	for k := range often(120) {
		s := trial(t, r)
		if k%4 == 0 {
			s = nested(t, r)
		}
		p, err := s.Plan(&counted{Context: context.Background(), left: make(chan struct{}, 1)})
		if list(err) != nil {
			continue // notches that no turning matches
		} else if err != nil {
			t.Fatal(err)
		}
		if err := layout.Verify(s, p.Placements); err != nil || !p.Stopped && p.Lay != p.Bound {
			t.Fatalf("stopped %v, %v", p.Stopped, err)
		}
		good++
	}
	if good < often(60) {
		t.Errorf("%d lays", good)
	}
}
