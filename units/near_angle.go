package units

import "example.com/clothyard/units/fault"

// ErrDomain is returned where there is no answer: for the tangent of a right
// angle.
const ErrDomain fault.Kind = "units: no such angle"

// inDegrees is the angle n, in radians, in degrees.
func (n NearRatio) inDegrees() NearRatio {
	// Pi is not zero, so there is nothing to fail.
	v, _ := n.v.times(exact{num: 180}).over(Pi().v)
	return NearRatio{v}
}

// Circle is the length round a circle of the diameter given.
func Circle(diameter Length) Near { return Pi().Of(diameter) }

// closely refines what is made to the bound of a pure number.
func (n interval) closely() (interval, error) {
	if !n.isMade() {
		return n, nil
	}
	return n.refine(ratioWithin())
}

// sine is the sine of a number of radians and so many right angles.
func (x exact) sine(quarters int64) (interval, error) {
	if x.isZero() {
		return sinePi(fraction(quarters, 2))
	}
	// The sine of a negative angle is that of the positive, negative.
	sign, op := exact{num: 1}, [2]string{"s", "c"}[quarters]
	if x.sign() < 0 {
		x = x.neg()
		if quarters == 0 {
			sign.num = -1
		}
	}
	s, err := made(exact{num: -1}, exact{num: 1}, point(x).code()+op)
	return s.times(sign), err
}

// made is a number made by a recipe, enclosed closely.
func made(lo, hi exact, code string) (interval, error) {
	n, err := irrational(lo, hi, code).refine(ratioWithin())
	if err != nil {
		return interval{}, err
	}
	return n, nil
}

// sinePi is the sine of r pi: by way of the angle between 0 and a right angle that
// has the same, so that equal sines are made alike.
func sinePi(r exact) (interval, error) {
	one := exact{num: 1}
	r = r.sub(r.round(exact{num: 2}, Down))
	negative := r.cmp(one) >= 0
	if negative {
		r = r.sub(one)
	}
	if r.cmp(fraction(1, 2)) > 0 {
		r = one.sub(r)
	}
	var s interval
	var err error
	switch r {
	case exact{}:
	case fraction(1, 6):
		s = point(fraction(1, 2))
	case fraction(1, 4):
		s = Diagonal().v.quo(exact{num: 2})
	case fraction(1, 3):
		s, err = root(fraction(3, 4)).refine(ratioWithin())
	case fraction(1, 2):
		s = point(one)
	default:
		s, err = made(exact{}, one, "p"+constant(r)+"*s")
	}
	if negative {
		s = s.times(one.neg())
	}
	return s, err
}
