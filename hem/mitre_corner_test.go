package hem_test

import (
	"strings"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
)

// A trim that comes just to the corner leaves nothing to cut off.
func TestMitreTrimToTheCorner(t *testing.T) {
	for _, c := range []struct{ trim, has, not string }{
		{"1 1/5 in", "Leave the corner on", "Cut the corner off"},
		{"1 19/100 in", "Cut the corner off", "Leave the corner on"},
	} {
		m := hem.Mitre{Trim: units.MustParse(c.trim)}
		m.A.Depth, m.B.Depth = units.MustParse("3/4 in"), units.MustParse("1 in")
		p, err := m.Plan()
		if err != nil {
			t.Fatal(err)
		}
		text := p.Sheet().Text(units.Notation{})
		if !strings.Contains(text, c.has) || strings.Contains(text, c.not) {
			t.Errorf("trimmed to %s, cut %v: want %q and not %q in\n%s", c.trim, p.CutA, c.has, c.not, text)
		}
	}
}

// The trim outside the seam is the printed quarter inch, and at most half of the
// lesser hem; raw edges leave two plies beside the seam, first turns three.
func TestMitreDefaults(t *testing.T) {
	for _, c := range []struct {
		first, depth, trim string
		plies              int
	}{
		{"0 in", "1 in", "1/4 in", 2},
		{"1/4 in", "1 in", "1/4 in", 3},
		{"0 in", "3/8 in", "3/16 in", 2},
	} {
		p, err := hem.Mitre{A: hem.HemSide{First: units.MustParse(c.first), Depth: units.MustParse(c.depth)}}.Plan()
		if err != nil || p.Spec.Trim != units.MustParse(c.trim) || p.Plies != c.plies {
			t.Errorf("%+v: trim %v, %d plies, %v", c, p.Spec.Trim, p.Plies, err)
		}
	}
}
