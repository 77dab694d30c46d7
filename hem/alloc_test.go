package hem_test

import "testing"

// TestAllocs: a Plan costs the text of Assumed, a Sheet its slices.
func TestAllocs(t *testing.T) {
	for name, s := range every() {
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		if n := testing.AllocsPerRun(100, func() { _, _ = s.Plan() }); n > 2 {
			t.Errorf("%s: a Plan allocates %v times", name, n)
		}
		if n := testing.AllocsPerRun(100, func() { _ = p.Sheet() }); n > 40 {
			t.Errorf("%s: a Sheet allocates %v times", name, n)
		}
	}
}
