package units

// InRadians is a in radians: exact for an arc.
func (a Angle) InRadians() NearRatio {
	switch a.form {
	case turned:
		return Pi().Scale(Ratio{a.v.mulInt(2)})
	case arced:
		return NearRatio{point(a.v)}
	}
	rise := a.rise()
	return rise.Add(Pi().Scale(Ratio{fraction(int64(a.quarters), 2)}))
}

// rise is the angle of the tangent of a slope, in radians. One of thousands of
// digits is enclosed as far as any.
func (a Angle) rise() NearRatio {
	v, err := made(exact{}, exact{num: 2}, point(a.v).code()+"t")
	if err != nil {
		v = interval{hi: exact{num: 2}}
	}
	return NearRatio{v.cut(exact{}, exact{num: 2})}
}

// InDegrees is a in degrees: exact for a part of a turn.
func (a Angle) InDegrees() NearRatio {
	switch a.form {
	case turned:
		return NearRatio{point(a.v.mulInt(360))}
	case arced:
		return a.InRadians().inDegrees()
	}
	return a.rise().inDegrees().Plus(Ratio{exact{num: 90 * int64(a.quarters)}})
}

// InTurns is a as a part of a turn: exact for what is one.
func (a Angle) InTurns() NearRatio { return a.InDegrees().Scale(Ratio{fraction(1, 360)}) }

// Arc is the length of the arc that a cuts out of a circle of the radius given.
func (a Angle) Arc(radius Length) Near { return a.InRadians().Of(radius) }

// Sin is the sine of a, within a thousand-millionth, and exact where it is rational.
// The sine of an arc of thousands of digits is between -1 and 1.
func (a Angle) Sin() NearRatio { return NearRatio{a.sine(0)} }

// Cos is the cosine of a, as [Angle.Sin] is its sine.
func (a Angle) Cos() NearRatio { return NearRatio{a.sine(1)} }

// Tan is the tangent of a, as [Angle.Sin] is its sine. It fails with [ErrDomain] for a
// right angle and [ErrBound] past the limit of work.
func (a Angle) Tan() (NearRatio, error) {
	if a.form == sloped {
		if a.quarters&1 == 0 {
			return NearRatio{point(a.v)}, nil
		}
		return NearRatio{point(exact{num: -1}.quo(a.v))}, nil
	}
	if a.form == turned {
		// Half a turn has the tangent of none, and of two equal tangents one is made.
		a.v = a.v.sub(a.v.round(fraction(1, 2), Down))
		if a.v == fraction(1, 8) {
			return NearRatio{point(exact{num: 1})}, nil
		}
		if a.v == fraction(3, 8) {
			return NearRatio{point(exact{num: -1})}, nil
		}
	}
	s, err := a.mixed(0)
	c := s
	if err == nil {
		c, err = a.mixed(1)
	}
	switch {
	case err != nil:
		return NearRatio{}, err
	case c == interval{}:
		return NearRatio{}, ErrDomain
	}
	if s, err = s.over(c); err == nil {
		s, err = s.closely()
	}
	if err != nil {
		return NearRatio{}, err
	}
	return NearRatio{s}, nil
}

// mixed is the sine of so many quarter turns and a, which is no slope.
func (a Angle) mixed(quarters int64) (interval, error) {
	if a.form == turned {
		return sinePi(a.v.mulInt(2).add(fraction(quarters, 2)))
	}
	return a.v.sine(quarters)
}

// sine is the sine of a and so many quarter turns.
func (a Angle) sine(quarters int64) interval {
	one := exact{num: 1}
	if a.form == sloped {
		// Where h h = 1 + t t, the sine is t/h and the cosine 1/h.
		square := one.add(a.v.mul(a.v))
		up := [4]exact{a.v, one, a.v.neg(), one.neg()}[(int64(a.quarters)+quarters)&3]
		return root(square).times(up.quo(square)).nearly().cut(one.neg(), one)
	}
	s, err := a.mixed(quarters)
	if err != nil {
		return interval{lo: one.neg(), hi: one}
	}
	return s
}

// nearly is n to the bound of a pure number, or as near as it can be made.
func (n interval) nearly() interval {
	if r, err := n.refine(ratioWithin()); err == nil {
		return r
	}
	return n
}

// half is half of a, which has a form unless a is a slope.
func (a Angle) half() Angle {
	a.v = a.v.divInt(2)
	return a
}

// SinHalf is the sine of half of a, as [Angle.Sin] is that of a.
func (a Angle) SinHalf() NearRatio {
	if a.form != sloped {
		return a.half().Sin()
	}
	return NearRatio{a.rootHalf(-1, a.quarters&7 >= 4)}
}

// CosHalf is the cosine of half of a, as [Angle.Sin] is the sine of a.
func (a Angle) CosHalf() NearRatio {
	if a.form != sloped {
		return a.half().Cos()
	}
	return NearRatio{a.rootHalf(1, (a.quarters+2)&7 >= 4)}
}

// rootHalf is the root of half of 1 and the cosine of a slope, or of 1 less it.
func (a Angle) rootHalf(sign int64, negative bool) interval {
	r := interval{hi: exact{num: 1}}
	if v := a.sine(1).times(exact{num: sign}).plus(exact{num: 1}).quo(exact{num: 2}); v.isExact() || v.isMade() {
		r = rootOf(v).nearly().cut(r.lo, r.hi)
	}
	if negative {
		return r.times(exact{num: -1})
	}
	return r
}

// TanHalf is the tangent of half of a, as [Angle.Tan] is that of a. It fails with
// [ErrDomain] for half a turn.
func (a Angle) TanHalf() (NearRatio, error) {
	if a.form != sloped {
		return a.half().Tan()
	}
	// It is the sine over 1 and the cosine: with h h = 1 + t t a plain multiple of h,
	// and more.
	t, one := a.v, exact{num: 1}
	h := root(one.add(t.mul(t)))
	switch a.quarters & 3 {
	case 0:
		h = h.plus(one.neg()).quo(t)
	case 1:
		h = h.plus(t)
	case 2:
		h = h.plus(one).quo(t.neg())
	default:
		h = h.times(one.neg()).plus(t)
	}
	return NearRatio{h.nearly()}, nil
}
