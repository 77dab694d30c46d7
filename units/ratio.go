package units

import "math/big"

// A Ratio is an exact pure number, such as a fullness of 2 1/2 or a shrinkage
// of 3 %. Its zero value is 0, == is numeric equality, and its arithmetic never
// rounds or overflows; it panics only on division by zero.
type Ratio struct{ v exact }

// RatioOf is num/den. It panics if den is zero.
func RatioOf(num, den int64) Ratio { return Ratio{fraction(num, den)} }

// FromRat is the ratio equal to r, which is copied; nil is 0.
func FromRat(r *big.Rat) Ratio {
	if r == nil {
		return Ratio{}
	}
	return Ratio{fromRat(new(big.Rat).Set(r))}
}

// Rat is r as a new big.Rat: the way out of this package, and of exact text.
func (r Ratio) Rat() *big.Rat { return r.v.rat() }

// Add is r + s.
func (r Ratio) Add(s Ratio) Ratio { return Ratio{r.v.add(s.v)} }

// Sub is r - s.
func (r Ratio) Sub(s Ratio) Ratio { return Ratio{r.v.sub(s.v)} }

// Mul is r times s.
func (r Ratio) Mul(s Ratio) Ratio { return Ratio{r.v.mul(s.v)} }

// Quo is r / s. It panics if s is zero.
func (r Ratio) Quo(s Ratio) Ratio { return Ratio{r.v.quo(s.v)} }

// Neg is -r.
func (r Ratio) Neg() Ratio { return Ratio{r.v.neg()} }

// Abs is r without its sign.
func (r Ratio) Abs() Ratio { return Ratio{r.v.abs()} }

// Sign is -1, 0 or 1 as r is negative, zero or positive.
func (r Ratio) Sign() int { return r.v.sign() }

// IsZero reports whether r is zero, which a Spec reads as "not given".
func (r Ratio) IsZero() bool { return r == Ratio{} }

// IsInt reports whether r is a whole number.
func (r Ratio) IsInt() bool { return r.v.isMultiple(1) }

// Cmp is -1, 0 or 1 as r is less than, equal to or greater than s.
func (r Ratio) Cmp(s Ratio) int { return r.v.cmp(s.v) }

// Less reports whether r is less than s.
func (r Ratio) Less(s Ratio) bool { return r.v.cmp(s.v) < 0 }

// An Area is an exact area, the product of two lengths. Its zero value is no
// area, == is numeric equality, and its arithmetic never rounds or overflows;
// it panics only on division by zero.
type Area struct{ v exact }

// Add is a + b.
func (a Area) Add(b Area) Area { return Area{a.v.add(b.v)} }

// Sub is a - b.
func (a Area) Sub(b Area) Area { return Area{a.v.sub(b.v)} }

// Neg is -a.
func (a Area) Neg() Area { return Area{a.v.neg()} }

// Sign is -1, 0 or 1 as a is negative, zero or positive.
func (a Area) Sign() int { return a.v.sign() }

// IsZero reports whether a is zero, which a Spec reads as "not given".
func (a Area) IsZero() bool { return a == Area{} }

// Cmp is -1, 0 or 1 as a is less than, equal to or greater than b.
func (a Area) Cmp(b Area) int { return a.v.cmp(b.v) }

// MulInt is n times a.
func (a Area) MulInt(n int64) Area { return Area{a.v.mulInt(n)} }

// Scale is a times r.
func (a Area) Scale(r Ratio) Area { return Area{a.v.mul(r.v)} }

// Over is the length of the side of a rectangle of area a whose other side is
// l. It panics if l is zero.
func (a Area) Over(l Length) Length { return Length{a.v.quo(l.v)} }

// Div is a / b, a pure number. It panics if b is zero.
func (a Area) Div(b Area) Ratio { return Ratio{a.v.quo(b.v)} }

// In is the count of squares of side u in a. It panics if u is not a unit.
func (a Area) In(u Unit) Ratio {
	n := exact{num: u.mustSize()}
	return Ratio{a.v.quo(n.mul(n))}
}
