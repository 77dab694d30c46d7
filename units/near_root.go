package units

import (
	"math/big"
	"math/bits"
)

// Diagonal is the square root of 2, the diagonal of a square to its side, within
// a thousand-millionth. What is cut or joined at 45 degrees is made with it.
func Diagonal() NearRatio {
	return NearRatio{rooted(fraction(1414213562, billion), fraction(1414213563, billion), 2)}
}

// Hypot is the diagonal of a rectangle with sides a and b, enclosed to within the
// bound given; zero asks for [DefaultWithin]. It is exact where the diagonal is
// rational, as for 3 and 4, and fails with [ErrBound] past the limit of work, where a
// side has more bits than [MaxRoot] too.
func Hypot(a, b, within Length) (Near, error) {
	if a.v.size() > MaxRoot || b.v.size() > MaxRoot {
		return Near{}, ErrBound
	}
	return Sqrt(a.Times(a).Add(b.Times(b)), within)
}

// MaxRoot bounds the numbers of which a square root is taken: the bits of numerator
// and denominator together, some 20,000 digits. The work grows with their square.
const MaxRoot = 1 << 16

// size is how many bits numerator and denominator have together.
func (a exact) size() int {
	if a.isWide() {
		r := a.rat()
		return r.Num().BitLen() + r.Denom().BitLen()
	}
	return bits.Len64(magnitude(a.num)) + bits.Len64(a.den())
}

// boundedRoot is the [root] of a number, refined, or a refusal past the limits.
func boundedRoot(v, within exact) (interval, error) {
	if v.size() > MaxRoot {
		return interval{}, ErrBound
	}
	return root(v).refine(within)
}

// root is the square root of a number of zero or more, as a multiple of the root
// of a whole number without square factors: so that the root of 8 and twice the
// root of 2 are one. Its ends are rough; the caller refines them.
func root(v exact) interval {
	// The root of n/d is that of n x d, over d.
	if !v.isWide() {
		if n := mul64(uint64(v.num), v.den()); n.hi == 0 && n.lo < top {
			side, rest := squareOutWord(n.lo)
			return rootOfWord(rest).times(exact{num: side}.quo(exact{num: int64(v.den())}))
		}
	}
	r := v.rat()
	side, rest := squareOut(new(big.Int).Mul(r.Num(), r.Denom()))
	scale := fromRat(new(big.Rat).SetFrac(side, r.Denom()))
	if rest.IsInt64() {
		return rootOfWord(rest.Int64()).times(scale)
	}
	lo := new(big.Int).Sqrt(rest)
	hi := new(big.Int).Add(lo, big.NewInt(1))
	x := irrational(fromRat(new(big.Rat).SetInt(lo)), fromRat(new(big.Rat).SetInt(hi)), constant(fromRat(new(big.Rat).SetInt(rest)))+"r")
	return x.times(scale)
}

// rooted is the square root of a whole number without square factors that is not 1,
// enclosed.
func rooted(lo, hi exact, k int64) interval {
	return interval{lo: lo, hi: hi, how: making{root: k}, scale: exact{num: 1}}
}

// rootOfWord is the root of k of zero or more without square factors.
func rootOfWord(k int64) interval {
	switch {
	case k < 2:
		return point(exact{num: k})
	case k == 2:
		return Diagonal().v
	}
	lo := int64(uint128{lo: uint64(k)}.root())
	return rooted(exact{num: lo}, exact{num: lo + 1}, k)
}

// root is the whole part of the square root of a number below 1<<124.
func (a uint128) root() uint64 {
	if a.isZero() {
		return 0
	}
	size := bits.Len64(a.lo)
	if a.hi > 0 {
		size = 64 + bits.Len64(a.hi)
	}
	// From above, each step of Newton's is nearer until it is there.
	for x := uint64(1) << ((size + 1) / 2); ; {
		q, _ := a.quoRem(x)
		y := (x + q) / 2
		if y >= x {
			return x
		}
		x = y
	}
}

// refineRoot refines a multiple of a root as [interval.refine] does, within 128
// bits. It leaves what does not fit into them.
func (n interval) refineRoot(within exact) (interval, bool) {
	k := uint64(n.how.root)
	if k == 0 || n.scale.isWide() || within.isWide() {
		return n, false
	}
	// With so many binary places the root is known to within/16 once multiplied,
	// and with the spare ones its ends mostly lie between the same two marks.
	const spare = 12
	places := bits.Len64(magnitude(n.scale.num)) - bits.Len64(n.scale.den()) + bits.Len64(within.den()) - bits.Len64(uint64(within.num)) + 6
	places = max(places, 0) + spare
	if bits.Len64(k)+2*places > 124 {
		return n, false
	}
	at := uint128{lo: k}.shift(2 * uint(places)).root()
	lo := exact{num: int64(at)}.quo(exact{num: 1 << places})
	hi := exact{num: int64(at) + 1}.quo(exact{num: 1 << places})
	n.lo, n.hi = lo.mul(n.scale).add(n.shift), hi.mul(n.scale).add(n.shift)
	return n.inMarks(within), true
}

// inMarks turns the ends of n round where its scale has, and widens them to marks
// of a quarter of the bound asked, which leaves room for them.
func (n interval) inMarks(within exact) interval {
	if n.scale.sign() < 0 {
		n.lo, n.hi = n.hi, n.lo
	}
	s := within.divInt(4)
	n.lo, n.hi = n.lo.round(s, Down), n.hi.round(s, Up)
	return n
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

// squareOutWord is [squareOut] of a number of less than 63 bits.
func squareOutWord(n uint64) (side, rest int64) {
	side, rest = 1, 1
	left := n
	for d := uint64(2); d <= greatestFactor && left >= d*d*d; d++ {
		for odd := true; left%d == 0; odd = !odd {
			left /= d
			if odd {
				rest *= int64(d)
			} else {
				rest /= int64(d)
				side *= int64(d)
			}
		}
	}
	if whole := (uint128{lo: left}).root(); left > 0 && whole*whole == left {
		return side * int64(whole), rest
	}
	return side, rest * int64(left)
}

// radicand is k where n is scale x root k + shift.
func (n interval) radicand() (k exact, ok bool) {
	switch {
	case n.how.root != 0:
		return exact{num: n.how.root}, true
	case !n.isMade():
		return exact{}, false
	}
	code := n.how.code()
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
	if n := mul64(uint64(a.how.root), uint64(b.how.root)); !n.isZero() && n.hi < 1<<60 {
		m := n.root()
		if mul64(m, m) != n {
			return b
		}
		b.how, b.scale = a.how, b.scale.mul(exact{num: int64(m)}).quo(k)
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

// Hypot is the diagonal of a rectangle with sides n and m, as the function [Hypot] is
// that of exact sides. Of bounds that were read it is known as far as they go.
func (n Near) Hypot(m Near, within Length) (Near, error) {
	if within.IsZero() {
		within = DefaultWithin()
	}
	square := n.v.mul(n.v).add(m.v.mul(m.v))
	if square.isExact() || square.isMade() {
		v, err := rootOf(square).refine(within.v)
		return Near{v}, err
	}
	square = square.cut(exact{}, square.hi)
	v, err := square.each(func(end interval) (interval, error) { return root(end.lo).refine(within.v) })
	return Near{v}, err
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
