package units

import "math/big"

// The series behind the angles, in binary fractions with guard places. Each step
// cuts its result by less than a few units of the last guard place, and there are
// fewer steps than there are places, at most some 2^14; so the guard places hold
// all the error, and one unit of the last place each way encloses the rest.
const guardPlaces = 32

// sineFixed is the sine of an angle and so many right angles. It fails for an
// angle so great that pi would be wanted to more places than are worked with.
func sineFixed(x fixed, quarters int, places uint) (fixed, bool) {
	whole := max(new(big.Int).Abs(x.lo).BitLen(), new(big.Int).Abs(x.hi).BitLen()) - int(places)
	if whole > maxBits {
		return fixed{}, false
	}
	// The whole turns cost pi as many places as they have themselves.
	p := places + guardPlaces
	turned := p + uint(max(whole, 0))
	mid, half := x.middle(turned - places)
	pi := piFixed(turned)
	// One right angle is pi/2: angles are doubled to stay in whole numbers.
	mid.Lsh(mid, 1)
	n := floorDiv(new(big.Int).Add(mid, new(big.Int).Rsh(pi.lo, 1)), pi.lo)
	mid.Sub(mid, new(big.Int).Mul(n, pi.lo))
	mid.Rsh(mid, turned-p+1)
	quarter := (int(new(big.Int).And(n, big.NewInt(3)).Int64()) + quarters) % 4
	s := sineSeries(mid, quarter%2 == 1, p)
	if quarter >= 2 {
		s.Neg(s)
	}
	return around(s, half, places), true
}

// middle is the middle of x with so many more places, and half its width in the
// places that x has, taken up.
func (x fixed) middle(more uint) (mid, half *big.Int) {
	mid = new(big.Int).Add(x.lo, x.hi)
	mid.Lsh(mid, more-1)
	half = new(big.Int).Sub(x.hi, x.lo)
	half.Add(half, big.NewInt(1))
	return mid, half.Rsh(half, 1)
}

// around takes the guard places off a result and encloses it.
func around(s, half *big.Int, places uint) fixed {
	lo := new(big.Int).Rsh(s, guardPlaces)
	hi := new(big.Int).Add(lo, big.NewInt(2))
	lo.Sub(lo, big.NewInt(1))
	return fixed{lo.Sub(lo, half), hi.Add(hi, half)}
}

// sineSeries is the sine, or the cosine, of an angle of less than a right angle
// either way.
func sineSeries(x *big.Int, cosine bool, places uint) *big.Int {
	square := new(big.Int).Mul(x, x)
	square.Rsh(square, places)
	term := new(big.Int).Set(x)
	k := int64(2)
	if cosine {
		term.Lsh(big.NewInt(1), places)
		k = 1
	}
	sum := new(big.Int).Set(term)
	for ; term.Sign() != 0; k += 2 {
		term.Mul(term, square)
		term.Rsh(term, places)
		term.Quo(term, big.NewInt(k*(k+1)))
		term.Neg(term)
		sum.Add(sum, term)
	}
	return sum
}

// arcTangentFixed is the arc tangent of x.
func arcTangentFixed(x fixed, places uint) fixed {
	const halvings = 8
	p := places + guardPlaces
	mid, half := x.middle(guardPlaces)
	one := new(big.Int).Lsh(big.NewInt(1), p)
	over := mid.CmpAbs(one) > 0
	y := new(big.Int).Set(mid)
	if over {
		// A right angle less the arc tangent of 1/x.
		y.Quo(new(big.Int).Lsh(one, p), mid)
	}
	// Half the angle has the tangent y / (1 + root(1 + yy)).
	for range halvings {
		r := new(big.Int).Mul(y, y)
		r.Add(r, new(big.Int).Lsh(one, p))
		r.Sqrt(r)
		y.Lsh(y, p)
		y.Quo(y, r.Add(r, one))
	}
	square := new(big.Int).Mul(y, y)
	square.Rsh(square, p)
	sum := new(big.Int).Set(y)
	for k := int64(3); y.Sign() != 0; k += 2 {
		y.Mul(y, square)
		y.Quo(y, one)
		y.Neg(y)
		sum.Add(sum, new(big.Int).Quo(y, big.NewInt(k)))
	}
	sum.Lsh(sum, halvings)
	if over {
		right := new(big.Int).Rsh(piFixed(p).lo, 1)
		if mid.Sign() < 0 {
			right.Neg(right)
		}
		sum.Sub(right, sum)
	}
	return around(sum, half, places)
}
