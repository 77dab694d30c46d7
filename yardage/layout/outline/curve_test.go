package outline_test

import (
	"fmt"
	"math/big"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
	"example.com/clothyard/yardage/layout/outline"
)

// xy is a point in big.Rat: what is measured here shares nothing with the code.
type xy [2]*big.Rat

func at(q layout.Point) xy { return xy{q.X.In(units.Inch).Rat(), q.Y.In(units.Inch).Rat()} }

func sub(a, b xy) xy {
	return xy{new(big.Rat).Sub(a[0], b[0]), new(big.Rat).Sub(a[1], b[1])}
}

func mul(a, b *big.Rat) *big.Rat { return new(big.Rat).Mul(a, b) }

func cross(a, b xy) *big.Rat { return new(big.Rat).Sub(mul(a[0], b[1]), mul(a[1], b[0])) }

func dot(a, b xy) *big.Rat { return new(big.Rat).Add(mul(a[0], b[0]), mul(a[1], b[1])) }

// holds reports whether p is inside the polygon or on it, by the crossings of a
// ray and the edges.
func holds(poly []layout.Point, p xy) bool {
	inside := false
	for i := range poly {
		a, b := at(poly[i]), at(poly[(i+1)%len(poly)])
		c := cross(sub(b, a), sub(p, a))
		if c.Sign() == 0 && dot(sub(p, a), sub(p, b)).Sign() <= 0 {
			return true
		}
		if up := a[1].Cmp(p[1]) <= 0; up != (b[1].Cmp(p[1]) <= 0) && up == (c.Sign() > 0) {
			inside = !inside
		}
	}
	return inside
}

// far2 is the square of the distance of p from the nearest of the chords.
func far2(p xy, chain []xy) *big.Rat {
	var best *big.Rat
	for i, a := range chain[:len(chain)-1] {
		d := sub(chain[i+1], a)
		q, l := sub(p, a), dot(d, d)
		if l.Sign() > 0 {
			t := new(big.Rat).Quo(dot(d, q), l)
			if t.Sign() < 0 {
				t.SetInt64(0)
			} else if t.Cmp(big.NewRat(1, 1)) > 0 {
				t.SetInt64(1)
			}
			q = sub(q, xy{mul(d[0], t), mul(d[1], t)})
		}
		if d2 := dot(q, q); best == nil || d2.Cmp(best) < 0 {
			best = d2
		}
	}
	return best
}

// bezier is a point of a cubic.
func bezier(c [4]xy, t *big.Rat) xy {
	s := new(big.Rat).Sub(big.NewRat(1, 1), t)
	w := [4]*big.Rat{mul(s, mul(s, s)), mul(mul(big.NewRat(3, 1), t), mul(s, s)), mul(mul(big.NewRat(3, 1), s), mul(t, t)), mul(t, mul(t, t))}
	out := xy{new(big.Rat), new(big.Rat)}
	for i, p := range c {
		for k := range out {
			out[k].Add(out[k], mul(w[i], p[k]))
		}
	}
	return out
}

// A curve of any bend, on either side of an outline that goes either way round,
// lies inside its polygon, and no corner of that is farther away than stated.
func TestCurves(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 9))
	number := func(n, less int64) int64 { return rng.Int64N(n) - less }
	refused := 0
	for range 60 {
		c := [4][2]int64{{0, 0}, {10 + number(40, 0), number(61, 30)}, {50 + number(40, 0), number(61, 30)}, {100, 0}}
		within := units.Inch.Frac(1, 4+number(60, 0))
		body := fmt.Sprintf(`<path d="M0 0C%d %d %d %d 100 0V90H0z"/>`, c[1][0], c[1][1], c[2][0], c[2][1])
		if rng.IntN(2) == 0 { // the same outline, the other way round
			body = fmt.Sprintf(`<path d="M0 0V90h100V0c%d %d %d %d -100 0z"/>`, c[2][0]-100, c[2][1], c[1][0]-100, c[1][1])
		}
		got, err := draw(outline.Reader{Within: within}, body)
		if err != nil {
			refused++
			continue
		}
		poly := got[0].Outline
		var control [4]xy
		for i, p := range c {
			control[i] = xy{big.NewRat(p[0], 10), big.NewRat(p[1], 10)}
		}
		chain := []xy{{big.NewRat(0, 1), big.NewRat(9, 1)}}
		for k := range int64(65) {
			p := bezier(control, big.NewRat(k, 64))
			if !holds(poly, p) {
				t.Fatalf("%s within %v: the point at %d/64 of the curve is outside", body, within, k)
			}
			chain = append(chain, p)
		}
		chain = append(chain, xy{big.NewRat(10, 1), big.NewRat(9, 1)}, xy{big.NewRat(0, 1), big.NewRat(9, 1)})
		// A chord of 1/64 of such a curve lies less than 1/100 in from it.
		most := new(big.Rat).Add(within.In(units.Inch).Rat(), big.NewRat(1, 100))
		for _, q := range poly {
			if far := far2(at(q), chain); far.Cmp(mul(most, most)) > 0 {
				t.Fatalf("%s within %v: the corner %v is the root of %s in away", body, within, q, far.FloatString(6))
			}
		}
	}
	if refused > 15 {
		t.Errorf("%d of 60 refused", refused)
	}
}

// Smooth and quadratic curves are the same as the cubics they stand for.
func TestCurveCommands(t *testing.T) {
	r := outline.Reader{Within: in("1/16")}
	for _, pair := range [][2]string{
		{"M0 0C10 10 20 10 30 0S50 -10 60 0V50H0z", "M0 0C10 10 20 10 30 0C40 -10 50 -10 60 0V50H0z"},
		{"m0 0c10 10 20 10 30 0s20-10 30 0v50h-60z", "M0 0C10 10 20 10 30 0C40 -10 50 -10 60 0V50H0z"},
		{"M0 0Q15 12 30 0T60 0V50H0z", "M0 0C10 8 20 8 30 0C40 -8 50 -8 60 0V50H0z"},
		{"M0 0q15 12 30 0t30 0v50h-60z", "M0 0Q15 12 30 0Q45 -12 60 0V50H0z"},
		{"M0 0S20 10 30 0V50H0z", "M0 0C0 0 20 10 30 0V50H0z"},
		{"M0 0H30T60 3V50H0z", "M0 0H30Q30 0 60 3V50H0z"},
		{"M0 0C10 -10 20 -10 30 0L0 0", "M0 0C10 -10 20 -10 30 0Z"},
	} {
		a, err := draw(r, `<path d="`+pair[0]+`"/>`)
		if err != nil {
			t.Fatal(pair[0], err)
		}
		b, err := draw(r, `<path d="`+pair[1]+`"/>`)
		if err != nil || fmt.Sprint(a) != fmt.Sprint(b) {
			t.Errorf("%s: %v\n%s: %v %v", pair[0], a, pair[1], b, err)
		}
	}
}

// What cannot be followed is refused.
func TestCurvesRefused(t *testing.T) {
	for _, d := range []string{
		"M0 0C1e6 1e6 -1e6 1e6 100 0V50H0z",               // bends too much
		"M0 0C10 10 20 10 30 0C20 10 10 10 0 0z",          // no area
		"M0 0C0 0 0 0 0 0h10C10 0 10 0 10 0h-10v0z",       // no area at all
		"M0 0" + repeat("q5 9 10 0t10 0", 400) + "v50H0z", // too many points
	} {
		if got, err := draw(outline.Reader{Within: in("1/1000")}, `<path d="`+d+`"/>`); err == nil {
			t.Errorf("%s: %d points", d, len(got[0].Outline))
		}
	}
}

// However many paths bend too much, no more than MaxCurves curves are followed.
func TestCurvesBounded(t *testing.T) {
	one := `<path d="M0 0` + repeat("q5 9 10 0", 1900) + `v50H0z"/>`
	_, err := draw(outline.Reader{Within: in("1/1000")}, repeat(one, 90))
	fs := strings.Split(paths(err), "\n")
	if n := outline.MaxCurves / 1900; len(fs) != n+1 || !strings.HasSuffix(fs[n], ": out of range") {
		t.Errorf("%d faults, the last %s", len(fs), fs[len(fs)-1])
	}
}

func repeat(s string, n int) string {
	out := ""
	for range n {
		out += s
	}
	return out
}
