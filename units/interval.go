package units

import (
	"bytes"
	"math/big"
	"math/bits"
)

// interval is the one enclosure under Near and NearRatio: the true value lies
// between lo and hi. Where the two are equal it is exact and the rest is zero.
// Else it is shift + scale X, where X is the irrational number that how makes; so
// sums and multiples of one X need no recipe of their own, take no memory, and
// are known to be equal where they are. With a zero how the making is not known.
type interval struct {
	lo, hi       exact
	how          making
	scale, shift exact
}

func point(v exact) interval { return interval{lo: v, hi: v} }

// irrational is the number that a recipe makes, enclosed.
func irrational(lo, hi exact, code string) interval {
	return interval{lo: lo, hi: hi, how: making{recipe: newRecipe(code)}, scale: exact{num: 1}}
}

func (n interval) isExact() bool { return n.lo == n.hi }

func (n interval) isMade() bool { return n.how != making{} }

// code is a recipe for all of n, or the constant that an exact interval stands
// for; it is empty for an enclosure whose making is not known.
func (n interval) code() string { return string(n.appendCode(nil)) }

func (n interval) appendCode(b []byte) []byte {
	switch {
	case n.isExact():
		return appendConstant(b, n.lo)
	case !n.isMade():
		return b
	}
	b = n.how.appendCode(b)
	if n.scale != (exact{num: 1}) {
		b = append(appendConstant(b, n.scale), '*')
	}
	if !n.shift.isZero() {
		b = append(appendConstant(b, n.shift), '+')
	}
	return b
}

// join is an interval with the recipe of an operation on two others, where both
// are known and it is not too long. Sums and products are the same both ways round.
func join(lo, hi exact, a, b interval, op byte) interval {
	var space, other [128]byte
	x, y := a.appendCode(space[:0]), b.appendCode(other[:0])
	if len(x) == 0 || len(y) == 0 || len(x)+len(y) >= maxRecipe {
		return interval{lo: lo, hi: hi}.snap()
	}
	if op != '/' && bytes.Compare(y, x) < 0 {
		x, y = y, x
	}
	return irrational(lo, hi, string(append(append(x, y...), op))).snap()
}

// plus is n moved by an exact number.
func (n interval) plus(v exact) interval {
	n.lo, n.hi = n.lo.add(v), n.hi.add(v)
	if n.isMade() {
		n.shift = n.shift.add(v)
	}
	return n.snap()
}

// times is n multiplied by an exact number.
func (n interval) times(v exact) interval {
	if v.isZero() {
		return interval{}
	}
	n.lo, n.hi = n.lo.mul(v), n.hi.mul(v)
	if v.sign() < 0 {
		n.lo, n.hi = n.hi, n.lo
	}
	n.scale, n.shift = n.scale.mul(v), n.shift.mul(v)
	return n.snap()
}

// quo divides by an exact number; zero panics.
func (n interval) quo(by exact) interval { return n.times(exact{num: 1}.quo(by)) }

// bare is the X of n alone, as closely as n knows it.
func (n interval) bare() interval {
	x := interval{lo: n.lo.sub(n.shift), hi: n.hi.sub(n.shift), how: n.how, scale: exact{num: 1}}
	x.lo, x.hi = x.lo.quo(n.scale), x.hi.quo(n.scale)
	if n.scale.sign() < 0 {
		x.lo, x.hi = x.hi, x.lo
	}
	return x
}

func (a interval) add(b interval) interval {
	switch b = b.inRootOf(a); {
	case b.isExact():
		if a.isExact() {
			return point(a.lo.add(b.lo))
		}
		return a.plus(b.lo)
	case a.isExact():
		return b.plus(a.lo)
	case a.isMade() && a.how == b.how:
		scale, shift := a.scale.add(b.scale), a.shift.add(b.shift)
		if scale.isZero() {
			return point(shift)
		}
		return a.finer(b).times(scale).plus(shift)
	}
	return a.addTerms(b)
}

func (a interval) sub(b interval) interval {
	if b.isExact() {
		if a.isExact() {
			return point(a.lo.sub(b.lo))
		}
		return a.plus(b.lo.neg())
	}
	return a.add(b.times(exact{num: -1}))
}

func (a interval) mul(b interval) interval {
	switch {
	case a.isExact() && b.isExact():
		return point(a.lo.mul(b.lo))
	case b.isExact():
		return a.times(b.lo)
	case a.isExact():
		return b.times(a.lo)
	}
	r, ok := mulRoots(a, b)
	if r.isExact() && ok {
		return r
	}
	lo := a.lo.mul(b.lo)
	hi := lo
	for _, v := range [3]exact{a.lo.mul(b.hi), a.hi.mul(b.lo), a.hi.mul(b.hi)} {
		if v.cmp(lo) < 0 {
			lo = v
		}
		if v.cmp(hi) > 0 {
			hi = v
		}
	}
	if ok {
		return r.cut(lo, hi)
	}
	return join(lo, hi, a, b, '*')
}

// cut narrows an enclosure to another of the same irrational number.
func (n interval) cut(lo, hi exact) interval {
	if n.lo.cmp(lo) < 0 {
		n.lo = lo
	}
	if n.hi.cmp(hi) > 0 {
		n.hi = hi
	}
	return n.snap()
}

// under is v / n. It fails where n cannot be told from zero.
func (n interval) under(v exact) (interval, error) {
	sign, n, err := decide(n, exact.sign)
	switch {
	case err != nil:
		return interval{}, err
	case sign == 0:
		return interval{}, ErrBound
	case v.isZero():
		return interval{}, nil
	case n.isExact():
		return point(v.quo(n.lo)), nil
	}
	lo, hi := v.quo(n.hi), v.quo(n.lo)
	if hi.cmp(lo) < 0 {
		lo, hi = hi, lo
	}
	if k, ok := n.radicand(); ok {
		// 1 / (s x + t) = (s x - t) / (ssk - tt), where x x = k.
		by := v.quo(n.scale.mul(n.scale).mul(k).sub(n.shift.mul(n.shift)))
		return n.plus(n.shift.mulInt(-2)).times(by).cut(lo, hi), nil
	}
	return join(lo, hi, point(v), n, '/'), nil
}

// over is n / d. It fails where d cannot be told from zero.
func (n interval) over(d interval) (interval, error) {
	if d = d.inRootOf(n); n.isMade() && n.how == d.how && n.shift.isZero() && d.shift.isZero() {
		return point(n.scale.quo(d.scale)), nil
	}
	by, err := d.under(exact{num: 1})
	return n.mul(by), err
}

// snap widens the ends to a binary grid once their fractions have grown, so that
// they do not grow with the number of steps taken. The grid is so much finer than
// the width that thousands of steps widen it by a little only.
func (n interval) snap() interval {
	const plain, finer = 1 << 32, 18
	if n.lo.less >= 0 && n.lo.less < plain && n.hi.less >= 0 && n.hi.less < plain || n.isExact() {
		return n
	}
	if s := n.hi.sub(n.lo); !s.isWide() {
		exp := bits.Len64(magnitude(s.num)) - bits.Len64(s.den()) - finer
		if step := (exact{num: 1, less: 1<<max(-exp, 0) - 1}); -63 < exp && exp <= 0 {
			n.lo, n.hi = n.lo.round(step, Down), n.hi.round(step, Up)
			return n
		}
	}
	grid := n.hi.sub(n.lo).rat()
	exp := grid.Num().BitLen() - grid.Denom().BitLen() - finer
	step := new(big.Rat).SetInt64(1)
	if exp >= 0 {
		step.SetInt(new(big.Int).Lsh(big.NewInt(1), uint(exp)))
	} else {
		step.SetFrac(big.NewInt(1), new(big.Int).Lsh(big.NewInt(1), uint(-exp)))
	}
	s := fromRat(step)
	n.lo, n.hi = n.lo.round(s, Down), n.hi.round(s, Up)
	return n
}

// refine encloses n again so that lo and hi are at most 2 x within apart.
func (n interval) refine(within exact) (interval, error) {
	if n.isExact() || n.hi.sub(n.lo).cmp(within.mulInt(2)) <= 0 {
		return n, nil
	}
	if !n.isMade() || within.sign() <= 0 {
		return n, ErrBound
	}
	if r, ok := n.refineRoot(within); ok {
		return r, nil
	}
	code := n.how.code()
	for places := uint(64); places <= maxBits; places *= 2 {
		f, ok := evaluate(code, places)
		if !ok {
			continue
		}
		one := new(big.Int).Lsh(big.NewInt(1), places)
		r := interval{lo: fromRat(new(big.Rat).SetFrac(f.lo, one)), hi: fromRat(new(big.Rat).SetFrac(f.hi, one)), how: n.how, scale: n.scale, shift: n.shift}
		r.lo, r.hi = r.lo.mul(n.scale).add(n.shift), r.hi.mul(n.scale).add(n.shift)
		if width := r.hi.sub(r.lo).abs(); width.cmp(within) <= 0 {
			return r.inMarks(within), nil
		}
	}
	return n, ErrBound
}

// decide refines n until f gives the same answer at both ends, and gives n as
// closely as that took.
func decide[T comparable](n interval, f func(exact) T) (T, interval, error) {
	finer := fraction(1, 1<<16)
	for {
		lo, hi := f(n.lo), f(n.hi)
		if lo == hi {
			return lo, n, nil
		}
		var err error
		n, err = n.refine(n.hi.sub(n.lo).mul(finer))
		finer = finer.mul(finer)
		if err != nil {
			var none T
			return none, n, err
		}
	}
}

// decided is the sign of n.
func (n interval) decided() (int, error) {
	sign, _, err := decide(n, exact.sign)
	return sign, err
}
