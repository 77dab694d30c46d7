package edge

import (
	"slices"

	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// MaxTerm is the greatest numerator and denominator of a Slant: finer than any
// angle that can be measured on cloth.
const MaxTerm = 1_000_000

// A slope is 1/sine of the angle at which a seam crosses an edge, as times x the
// square root of root: a whole number without a square in it. A root of 1 is
// none, so that a square crossing, and one whose sine is a fraction, stay exact.
type slope struct {
	times units.Ratio
	root  int64
	near  units.NearRatio // the root's square root, where it is not 1
}

func square() slope { return slope{times: units.RatioOf(1, 1), root: 1} }

// slopeOf is 1/sine for an angle of the tangent given; zero is square. It is
// false for a tangent beyond MaxTerm, or below zero.
func slopeOf(tangent units.Ratio) (slope, bool) {
	if tangent.IsZero() {
		return square(), true
	}
	u, v, ok := sew.Terms(tangent)
	if !ok || tangent.Sign() < 0 {
		return square(), false
	}
	// For u/v, 1/sine is the root of u x u + v x v, over u.
	outside, root := squareFree(u*u + v*v)
	s := slope{times: units.RatioOf(outside, u), root: root}
	if root != 1 {
		var err error
		s.near, err = units.SqrtRatio(units.RatioOf(root, 1))
		return s, err == nil
	}
	return s, true
}

// squareFree splits n into a square, whose side comes first, and a number
// without one. What is left once every prime to the cube root is out is a prime,
// the product of two, or the square of one.
func squareFree(n int64) (side, rest int64) {
	side, rest = 1, 1
	for p := int64(2); p*p*p <= n; p++ {
		for n%(p*p) == 0 {
			side, n = side*p, n/(p*p)
		}
		if n%p == 0 {
			rest, n = rest*p, n/p
		}
	}
	low, high := int64(1), int64(1)<<31
	for low < high {
		if mid := (low + high + 1) / 2; mid*mid <= n {
			low = mid
		} else {
			high = mid - 1
		}
	}
	if low*low == n {
		return side * low, rest
	}
	return side, rest * n
}

// slant checks a tangent and finds its slope.
func slant(a *fault.Audit, tangent units.Ratio) slope {
	s, ok := slopeOf(tangent)
	switch {
	case tangent.Sign() < 0:
		a.Fault("slant", tangent.String(), "0 (square) or more, the angle below a right angle", fault.Sign)
	case !ok:
		a.Fault("slant", sew.Short(tangent.String()), "a numerator and a denominator of at most "+ticket.Of(MaxTerm).String(), fault.Range)
	}
	return s
}

// along is l measured along the edge.
func (s slope) along(l units.Length) units.Near {
	l = l.Scale(s.times)
	if s.root == 1 {
		return units.Exactly(l)
	}
	return s.near.Of(l)
}

// A sum is an exact length and exact multiples of square roots, so that lengths
// which hold the same slanted crossing compare exactly: the roots that cancel
// are gone before anything is enclosed.
type sum struct {
	exact units.Length
	surds []surd
}

type surd struct {
	root int64
	near units.NearRatio
	coef units.Length
}

func just(l units.Length) sum { return sum{exact: l} }

func (s sum) isExact() bool { return len(s.surds) == 0 }

// put adds l along an edge of the slope given to a sum that shares nothing.
func (s *sum) put(l units.Length, by slope) {
	l = l.Scale(by.times)
	if by.root == 1 {
		s.exact = s.exact.Add(l)
		return
	}
	s.putSurd(surd{by.root, by.near, l})
}

func (s *sum) putSurd(t surd) {
	for i := range s.surds {
		one := &s.surds[i]
		if one.root != t.root {
			continue
		}
		if one.coef = one.coef.Add(t.coef); one.coef.IsZero() {
			s.surds = slices.Delete(s.surds, i, i+1)
		}
		return
	}
	if !t.coef.IsZero() {
		s.surds = append(s.surds, t)
	}
}

func (s sum) add(t sum) sum {
	s.exact = s.exact.Add(t.exact)
	if t.isExact() {
		return s
	}
	s.surds = append(make([]surd, 0, len(s.surds)+len(t.surds)), s.surds...)
	for _, one := range t.surds {
		s.putSurd(one)
	}
	return s
}

func (s sum) scale(r units.Ratio) sum {
	s.exact = s.exact.Scale(r)
	if s.isExact() {
		return s
	}
	s.surds = slices.Clone(s.surds)
	for i := range s.surds {
		s.surds[i].coef = s.surds[i].coef.Scale(r)
	}
	s.surds = slices.DeleteFunc(s.surds, func(o surd) bool { return o.coef.IsZero() })
	return s
}

func (s sum) neg() sum { return s.scale(units.RatioOf(-1, 1)) }

func (s sum) sub(t sum) sum {
	if t.isExact() {
		s.exact = s.exact.Sub(t.exact)
		return s
	}
	return s.add(t.neg())
}

func (s sum) near() units.Near {
	n := units.Exactly(s.exact)
	for _, t := range s.surds {
		n = n.Add(t.near.Of(t.coef))
	}
	return n
}

// sign is decided even where the sum is irrational: one with a root left in it
// is never zero, since the roots are independent. It fails with units.ErrBound
// past the limit of work only.
func (s sum) sign() (int, error) {
	low, high := s.exact, s.exact
	for _, t := range s.surds {
		a, b := t.near.Bounds()
		x, y := t.coef.Scale(a), t.coef.Scale(b)
		low, high = low.Add(x.Min(y)), high.Add(x.Max(y))
	}
	switch {
	case low.Sign() > 0:
		return 1, nil
	case high.Sign() < 0:
		return -1, nil
	case s.isExact():
		return 0, nil
	}
	return s.near().Sign()
}

// without is s without its sign.
func (s sum) without() (sum, error) {
	sign, err := s.sign()
	if sign < 0 {
		s = s.neg()
	}
	return s, err
}
