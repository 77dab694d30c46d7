package units

import "math/big"

// Diagonal is the square root of 2, the diagonal of a square to its side, within
// a thousand-millionth. What is cut or joined at 45 degrees is made with it.
func Diagonal() NearRatio {
	return NearRatio{irrational(fraction(1414213562, billion), fraction(1414213563, billion), rootTwo)}
}

// rootTwo is the recipe of [Diagonal]: the constant 2, as [constant] writes it,
// and its root.
const rootTwo = "#\x0b\x00\x00\x00\x00\x00\x00\x00\x00\x01\x02\x01r"

// Hypot is the diagonal of a rectangle with sides a and b, enclosed to within the
// bound given; zero asks for [DefaultWithin]. It is exact where the diagonal is
// rational, as for 3 and 4, and fails with [ErrBound] past the limit of work.
func Hypot(a, b, within Length) (Near, error) {
	return Sqrt(a.Times(a).Add(b.Times(b)), within)
}

// root is the square root of a number of zero or more, as a multiple of the root
// of a whole number without square factors: so that the root of 8 and twice the
// root of 2 are one. Its ends are rough; the caller refines them.
func root(v exact) interval {
	r := v.rat()
	// The root of n/d is that of n x d, over d.
	side, rest := squareOut(new(big.Int).Mul(r.Num(), r.Denom()))
	scale := fromRat(new(big.Rat).SetFrac(side, r.Denom()))
	if rest.IsUint64() && rest.Uint64() < 2 {
		return point(scale.mulInt(rest.Int64()))
	}
	if rest.Cmp(big.NewInt(2)) == 0 {
		return Diagonal().v.times(scale)
	}
	lo := new(big.Int).Sqrt(rest)
	hi := new(big.Int).Add(lo, big.NewInt(1))
	x := irrational(fromRat(new(big.Rat).SetInt(lo)), fromRat(new(big.Rat).SetInt(hi)), constant(fromRat(new(big.Rat).SetInt(rest)))+"r")
	return x.times(scale)
}

// greatestFactor bounds the search for square factors.
const greatestFactor = 128

// squareOut is n of zero or more as side x side x rest. Square factors up to
// greatestFactor are found in any number that is not too long to be worked with,
// and a greater one where the rest of n is made of small factors.
func squareOut(n *big.Int) (side, rest *big.Int) {
	side, rest = big.NewInt(1), big.NewInt(1)
	left := new(big.Int).Set(n)
	if n.Sign() > 0 && n.BitLen() <= maxBits {
		quo, rem, by := new(big.Int), new(big.Int), new(big.Int)
		for d := int64(2); d <= greatestFactor; d++ {
			// What is left is a prime, a square or a product of two primes.
			if left.IsInt64() && left.Int64() < d*d*d {
				break
			}
			by.SetInt64(d)
			for odd := true; ; odd = !odd {
				if quo.QuoRem(left, by, rem); rem.Sign() != 0 {
					break
				}
				left.Set(quo)
				if odd {
					rest.Mul(rest, by)
				} else {
					rest.Quo(rest, by)
					side.Mul(side, by)
				}
			}
		}
	}
	whole := new(big.Int).Sqrt(left)
	if new(big.Int).Mul(whole, whole).Cmp(left) == 0 && n.Sign() > 0 {
		return side.Mul(side, whole), rest
	}
	return side, rest.Mul(rest, left)
}

// radicand is k where n is scale x root k + shift.
func (n interval) radicand() (k exact, ok bool) {
	if !n.isMade() {
		return exact{}, false
	}
	code := n.how.Value()
	if code[0] != '#' || code[len(code)-1] != 'r' {
		return exact{}, false
	}
	key, last := readConstant(code, 0)
	if last+2 != len(code) {
		return exact{}, false
	}
	return fromRat(decodeWide(key)), true
}

// mulRoots is a x b where it is a multiple of one root, or exact: where the two
// have the same root, or are plain multiples of roots.
func mulRoots(a, b interval) (interval, bool) {
	k, ok := a.radicand()
	if !ok {
		return interval{}, false
	}
	if b = b.inRootOf(a); a.how == b.how {
		// (s x + t)(u x + v) = suk + tv + (sv + tu) x, where x x = k.
		whole := a.scale.mul(b.scale).mul(k).add(a.shift.mul(b.shift))
		scale := a.scale.mul(b.shift).add(a.shift.mul(b.scale))
		if scale.isZero() {
			return point(whole), true
		}
		return a.finer(b).times(scale).plus(whole), true
	}
	l, ok := b.radicand()
	if !ok || !a.shift.isZero() || !b.shift.isZero() {
		return interval{}, false
	}
	return root(k.mul(l)).times(a.scale.mul(b.scale)), true
}

// inRootOf is b by way of the root that a has, where theirs are multiples of each
// other for a factor that was not found.
func (b interval) inRootOf(a interval) interval {
	if a.how == b.how {
		return b
	}
	k, okA := a.radicand()
	l, okB := b.radicand()
	if !okA || !okB {
		return b
	}
	square := k.mul(l).rat().Num()
	m := new(big.Int).Sqrt(square)
	if new(big.Int).Mul(m, m).Cmp(square) != 0 {
		return b
	}
	// Where root k x root l = m, root l = m/k x root k.
	b.how, b.scale = a.how, b.scale.mul(fromRat(new(big.Rat).SetInt(m))).quo(k)
	return b
}

// finer is the X of a or of b, which is the same, as it is known more closely.
func (a interval) finer(b interval) interval {
	x, y := a.bare(), b.bare()
	if y.hi.sub(y.lo).cmp(x.hi.sub(x.lo)) < 0 {
		return y
	}
	return x
}

// rootOf is the square root of a made or exact n, whose sign is known to be plus.
func rootOf(n interval) interval {
	if n.isExact() {
		return root(n.lo)
	}
	return irrational(exact{}, n.hi.add(exact{num: 1}), n.code()+"r")
}
