package units

import (
	"encoding/binary"
	"math/big"
	"math/bits"
	"unique"
)

// A recipe is how an irrational number was made, so that it can be made again
// to more places: a stack program in a string, interned so that amounts stay
// comparable. The zero handle is no recipe.
//
//	'#' key   push the rational in the key, which is length and [encodeWide]
//	'p'       push pi
//	'r'       square root of the top
//	's' 'c'   sine and cosine of the top
//	't'       arc tangent of the top
//	'+' '*' '/'  the two on top
type recipe = unique.Handle[string]

// A making is a recipe, or a root that needs none. The zero making is not known.
type making struct {
	recipe
	root int64 // of a whole number above 1 without square factors, as far as they were found; 0 for none
}

// code is the recipe of what is known to be made.
func (m making) code() string {
	if m.root != 0 {
		return string(m.appendCode(nil))
	}
	return m.Value()
}

func (m making) appendCode(b []byte) []byte {
	if m.root != 0 {
		return append(appendConstant(b, exact{num: m.root}), 'r')
	}
	return append(b, m.Value()...)
}

// maxRecipe bounds the work of refining; a longer recipe is dropped.
const maxRecipe = 1 << 14

// maxBits is the precision at which refining gives up.
const maxBits = 1 << 12

func constant(v exact) string { return string(appendConstant(nil, v)) }

func appendConstant(b []byte, v exact) []byte {
	b = append(b, '#')
	if v.isWide() {
		key := v.wide.Value()
		return append(binary.AppendUvarint(b, uint64(len(key))), key...)
	}
	// The key that encodeWide would write.
	num, den := magnitude(v.num), v.den()
	n, d := (bits.Len64(num)+7)/8, (bits.Len64(den)+7)/8
	sign := byte(0)
	if v.num < 0 {
		sign = 1
	}
	b = append(b, byte(9+n+d), sign, 0, 0, 0, 0, 0, 0, 0, byte(n))
	return appendBytes(appendBytes(b, num, n), den, d)
}

// appendBytes appends the last n bytes of a word, the first of them first.
func appendBytes(b []byte, word uint64, n int) []byte {
	for n--; n >= 0; n-- {
		b = append(b, byte(word>>(8*n)))
	}
	return b
}

// maxAngles bounds the angles in a recipe, which are the most work.
const maxAngles = 24

func newRecipe(code string) recipe {
	if len(code) > maxRecipe {
		return recipe{}
	}
	angles := 0
	for i := 0; i < len(code); i++ {
		switch code[i] {
		case '#':
			_, i = readConstant(code, i)
		case 's', 'c', 't':
			if angles++; angles > maxAngles {
				return recipe{}
			}
		}
	}
	return unique.Make(code)
}

// readConstant is the key of the constant that begins at i, and where it ends.
func readConstant(code string, i int) (key string, last int) {
	size, k := binary.Uvarint([]byte(code[i+1 : min(len(code), i+1+binary.MaxVarintLen64)]))
	last = i + k + int(size)
	return code[i+1+k : last+1], last
}

// fixed is an interval of binary fractions lo/2^bits to hi/2^bits.
type fixed struct{ lo, hi *big.Int }

// evaluate encloses a recipe with so many binary places in every middle value. It
// fails where a divisor cannot be told from zero with so few, or an angle is too
// great.
func evaluate(code string, places uint) (fixed, bool) {
	var stack []fixed
	var pi fixed // made once, however often it is asked for
	pop := func() fixed {
		f := stack[len(stack)-1]
		stack = stack[:len(stack)-1]
		return f
	}
	for i := 0; i < len(code); i++ {
		switch op := code[i]; op {
		case '#':
			var key string
			key, i = readConstant(code, i)
			r := decodeWide(key)
			num := new(big.Int).Lsh(r.Num(), places)
			stack = append(stack, fixed{floorDiv(num, r.Denom()), ceilDiv(num, r.Denom())})
		case 'p':
			if pi.lo == nil {
				pi = piFixed(places)
			}
			stack = append(stack, pi)
		case 'r':
			// What is rooted is above zero, though its lower end may not be yet.
			f := pop()
			lo, hi := new(big.Int).Lsh(f.lo, places), new(big.Int).Lsh(f.hi, places)
			if lo.Sign() < 0 {
				lo.SetInt64(0)
			}
			stack = append(stack, fixed{lo.Sqrt(lo), hi.Add(hi.Sqrt(hi), big.NewInt(1))})
		case 's', 'c':
			quarters := 0
			if op == 'c' {
				quarters = 1
			}
			f, ok := sineFixed(pop(), quarters, places)
			if !ok {
				return fixed{}, false
			}
			stack = append(stack, f)
		case 't':
			stack = append(stack, arcTangentFixed(pop(), places))
		default:
			b, a := pop(), pop()
			if op == '/' && b.lo.Sign() <= 0 && b.hi.Sign() >= 0 {
				return fixed{}, false
			}
			stack = append(stack, combine(op, a, b, places))
		}
	}
	return stack[0], true
}

func combine(op byte, a, b fixed, places uint) fixed {
	if op == '+' {
		return fixed{new(big.Int).Add(a.lo, b.lo), new(big.Int).Add(a.hi, b.hi)}
	}
	// The ends of a product and of a quotient are among those of the four corners.
	one := new(big.Int).Lsh(big.NewInt(1), places)
	var f fixed
	for _, x := range [2]*big.Int{a.lo, a.hi} {
		for _, y := range [2]*big.Int{b.lo, b.hi} {
			n, d := new(big.Int).Mul(x, y), one
			if op == '/' {
				n, d = new(big.Int).Lsh(x, places), y
			}
			if low := floorDiv(n, d); f.lo == nil || low.Cmp(f.lo) < 0 {
				f.lo = low
			}
			if high := ceilDiv(n, d); f.hi == nil || high.Cmp(f.hi) > 0 {
				f.hi = high
			}
		}
	}
	return f
}

// floorDiv and ceilDiv divide towards the lesser and the greater whole number.
func floorDiv(a, b *big.Int) *big.Int {
	q, r := new(big.Int).QuoRem(a, b, new(big.Int))
	if r.Sign() != 0 && r.Sign() != b.Sign() {
		q.Sub(q, big.NewInt(1))
	}
	return q
}

func ceilDiv(a, b *big.Int) *big.Int {
	q := floorDiv(new(big.Int).Neg(a), b)
	return q.Neg(q)
}

// piFixed encloses pi by Machin's formula, 16 atan(1/5) - 4 atan(1/239).
func piFixed(places uint) fixed {
	const guard = 16
	p := atanInverse(5, 16, places+guard)
	p.Sub(p, atanInverse(239, 4, places+guard))
	// Each term is cut by less than one, and there are fewer than places terms
	// in the two series: the guard bits and one step each way cover them.
	slack := big.NewInt(int64(2*places + 64))
	lo := new(big.Int).Sub(p, slack)
	hi := new(big.Int).Add(p, slack)
	lo.Rsh(lo, guard)
	hi.Add(hi.Rsh(hi, guard), big.NewInt(1))
	return fixed{lo, hi}
}

// atanInverse is scale x atan(1/n) by its series, in binary places.
func atanInverse(n, scale int64, places uint) *big.Int {
	term := new(big.Int).Lsh(big.NewInt(scale), places)
	term.Quo(term, big.NewInt(n))
	sum := new(big.Int).Set(term)
	square := big.NewInt(n * n)
	for k := int64(3); term.Sign() != 0; k += 2 {
		term.Quo(term, square)
		part := new(big.Int).Quo(term, big.NewInt(k))
		if k%4 == 3 {
			sum.Sub(sum, part)
		} else {
			sum.Add(sum, part)
		}
	}
	return sum
}
