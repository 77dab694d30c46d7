package units

import "example.com/clothyard/units/fault"

// ErrDomain is returned where there is no answer: for the tangent of a right
// angle, and for the arc sine of a number greater than 1.
const ErrDomain fault.Kind = "units: no such angle"

// InDegrees is the angle n, in radians, in degrees.
func (n NearRatio) InDegrees() NearRatio {
	// Pi is not zero, so there is nothing to fail.
	v, _ := n.v.times(exact{num: 180}).over(Pi().v)
	return NearRatio{v}
}

// Arc is the length of an arc, its radius times its angle in radians.
func Arc(radius Length, angle NearRatio) Near { return angle.Of(radius) }

// Circle is the length round a circle of the diameter given.
func Circle(diameter Length) Near { return Pi().Of(diameter) }

// Chord is the straight way between the ends of an arc, twice the radius times the
// sine of half the angle. It fails where [NearRatio.Sin] does.
func Chord(radius Length, angle NearRatio) (Near, error) {
	half, err := NearRatio{angle.v.quo(exact{num: 2})}.Sin()
	return half.Of(radius.MulInt(2)), err
}

// Sin is the sine of the angle n, in radians, within a thousand-millionth, or as
// closely as n itself where n was read from text. It fails with [ErrBound] past
// the limit of work.
func (n NearRatio) Sin() (NearRatio, error) {
	v, err := n.v.sine(0)
	return NearRatio{v}, err
}

// Cos is the cosine of the angle n, in radians, as [NearRatio.Sin] is its sine.
func (n NearRatio) Cos() (NearRatio, error) {
	v, err := n.v.sine(1)
	return NearRatio{v}, err
}

// Tan is the tangent of the angle n, in radians, as [NearRatio.Sin] is its sine. It
// fails with [ErrDomain] for a right angle.
func (n NearRatio) Tan() (NearRatio, error) {
	s, err := n.v.sine(0)
	c := s
	if err == nil {
		c, err = n.v.sine(1)
	}
	if err == nil && c == (interval{}) {
		err = ErrDomain
	}
	if err == nil {
		s, err = s.over(c)
	}
	if err == nil {
		s, err = s.closely()
	}
	if err != nil {
		return NearRatio{}, err
	}
	return NearRatio{s}, nil
}

// Atan is the angle, in radians, whose tangent is n: between a right angle either
// way, within a thousand-millionth, or as closely as n itself where n was read from
// text. It fails with [ErrBound] past the limit of work.
func (n NearRatio) Atan() (NearRatio, error) {
	v, err := n.v.arcTangent()
	return NearRatio{v}, err
}

// Asin is the angle, in radians, whose sine is n, as [NearRatio.Atan] is that of
// its tangent. It fails with [ErrDomain] for a number greater than 1 either way.
func (n NearRatio) Asin() (NearRatio, error) {
	v, err := n.v.arcSine()
	return NearRatio{v}, err
}

// closely refines what is made to the bound of a pure number.
func (n interval) closely() (interval, error) {
	if !n.isMade() {
		return n, nil
	}
	return n.refine(ratioWithin())
}

// sine is the sine of n and so many right angles.
func (n interval) sine(quarters int64) (interval, error) {
	turns, ok := n.ofPi()
	switch {
	case ok:
		return sinePi(turns.add(fraction(quarters, 2)))
	case !n.isExact() && !n.isMade():
		// Nowhere is a sine steeper than its angle.
		mid, half := n.lo.add(n.hi).divInt(2), n.hi.sub(n.lo).divInt(2)
		s, err := point(mid).sine(quarters)
		one := exact{num: 1}
		return interval{lo: s.lo.sub(half), hi: s.hi.add(half)}.cut(one.neg(), one), err
	}
	// The sine of a negative angle is that of the positive, negative.
	sign := exact{num: 1}
	if n.isNegative() {
		n = n.times(exact{num: -1})
		if quarters == 0 {
			sign.num = -1
		}
	}
	op := "s"
	if quarters == 1 {
		op = "c"
	}
	s, err := made(exact{num: -1}, exact{num: 1}, n.code()+op)
	return s.times(sign), err
}

// isNegative tells a number that is exact, or a multiple of what is made, and
// written with a minus.
func (n interval) isNegative() bool {
	return n.isExact() && n.lo.sign() < 0 || n.isMade() && n.scale.sign() < 0 && n.shift.isZero()
}

// made is a number made by a recipe, enclosed closely.
func made(lo, hi exact, code string) (interval, error) {
	n, err := irrational(lo, hi, code).refine(ratioWithin())
	if err != nil {
		return interval{}, err
	}
	return n, nil
}

// ofPi is r where n is r pi, as is zero.
func (n interval) ofPi() (r exact, ok bool) {
	if n.isExact() {
		return exact{}, n.lo.isZero()
	}
	return n.scale, n.how == Pi().v.how && n.shift.isZero()
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

func (n interval) arcTangent() (interval, error) {
	pi := Pi().v
	k, rooted := n.radicand()
	switch {
	case n.isNegative():
		a, err := n.times(exact{num: -1}).arcTangent()
		return a.times(exact{num: -1}), err
	case n == interval{}:
		return n, nil
	case n == point(exact{num: 1}):
		return pi.quo(exact{num: 4}), nil
	case rooted && k == exact{num: 3} && n.shift.isZero() && n.scale == exact{num: 1}:
		return pi.quo(exact{num: 3}), nil
	case rooted && k == exact{num: 3} && n.shift.isZero() && n.scale == fraction(1, 3):
		return pi.quo(exact{num: 6}), nil
	case !n.isExact() && !n.isMade():
		return n.each(interval.arcTangent)
	}
	return made(exact{num: -2}, exact{num: 2}, n.code()+"t")
}

func (n interval) arcSine() (interval, error) {
	if !n.isExact() && !n.isMade() {
		return n.each(interval.arcSine)
	}
	// The sine is to its cosine as the tangent is to 1.
	square := point(exact{num: 1}).sub(n.mul(n))
	sign, err := square.decided()
	switch {
	case err != nil:
		return interval{}, err
	case sign < 0:
		return interval{}, ErrDomain
	case sign == 0:
		return Pi().v.times(n.lo.divInt(2)), nil
	case square.isExact() && square.lo.size() > MaxRoot:
		return interval{}, ErrBound
	case !square.isExact() && !square.isMade():
		// Its making was too long to be kept.
		return n.each(interval.arcSine)
	}
	t, err := n.over(rootOf(square))
	if err == nil {
		t, err = t.arcTangent()
	}
	return t, err
}

// each encloses a growing function of an enclosure whose making is not known.
func (n interval) each(f func(interval) (interval, error)) (interval, error) {
	lo, err := f(point(n.lo))
	if err != nil {
		return interval{}, err
	}
	hi, err := f(point(n.hi))
	if err != nil {
		return interval{}, err
	}
	return interval{lo: lo.lo, hi: hi.hi}, nil
}
