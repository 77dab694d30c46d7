package units

import "iter"

// A Length is an exact length: a rational number of a small base unit. It is an
// immutable value. The zero value is no length; == is numeric equality, so a
// Length may be a map key; it is safe to use from several goroutines.
//
// Arithmetic never rounds and never overflows. It panics only on division by
// zero. A length beyond 576 million kilometres, or a fraction whose terms pass
// 63 bits, still works and is still exact, but is slower and takes memory from
// the heap; repeated multiplication can grow one without bound, as in math/big.
type Length struct{ v exact }

// Add is l + m.
func (l Length) Add(m Length) Length { return Length{l.v.add(m.v)} }

// Sub is l - m.
func (l Length) Sub(m Length) Length { return Length{l.v.sub(m.v)} }

// Neg is -l.
func (l Length) Neg() Length { return Length{l.v.neg()} }

// Abs is l without its sign.
func (l Length) Abs() Length { return Length{l.v.abs()} }

// Sign is -1, 0 or 1 as l is negative, zero or positive.
func (l Length) Sign() int { return l.v.sign() }

// IsZero reports whether l is zero, which a Spec reads as "not given".
func (l Length) IsZero() bool { return l == Length{} }

// Cmp is -1, 0 or 1 as l is shorter than, equal to or longer than m.
func (l Length) Cmp(m Length) int { return l.v.cmp(m.v) }

// Less reports whether l is shorter than m.
func (l Length) Less(m Length) bool { return l.v.cmp(m.v) < 0 }

// Min is the shorter of l and m.
func (l Length) Min(m Length) Length {
	if m.Less(l) {
		return m
	}
	return l
}

// Max is the longer of l and m.
func (l Length) Max(m Length) Length {
	if l.Less(m) {
		return m
	}
	return l
}

// MulInt is n times l.
func (l Length) MulInt(n int64) Length { return Length{l.v.mulInt(n)} }

// DivInt is l / n, exactly. It panics if n is zero.
func (l Length) DivInt(n int64) Length { return Length{l.v.divInt(n)} }

// Scale is l times r.
func (l Length) Scale(r Ratio) Length { return Length{l.v.mul(r.v)} }

// Unscale is l / r. It panics if r is zero.
func (l Length) Unscale(r Ratio) Length { return Length{l.v.quo(r.v)} }

// Div is l / m, a pure number. It panics if m is zero.
func (l Length) Div(m Length) Ratio { return Ratio{l.v.quo(m.v)} }

// Times is the area l x m.
func (l Length) Times(m Length) Area { return Area{l.v.mul(m.v)} }

// In is the count of u in l, as in 15 7/8 for 5/8 in In(Millimetre). It panics
// if u is not a unit.
func (l Length) In(u Unit) Ratio { return Ratio{l.v.quo(exact{num: u.mustSize()})} }

// IsMultiple reports whether l is a whole number of steps. It is false for a
// step of zero, unless l is zero too.
func (l Length) IsMultiple(step Length) bool {
	if step.IsZero() {
		return l.IsZero()
	}
	return l.Div(step).IsInt()
}

// Sum adds lengths. The sum of none is zero.
func Sum(lengths ...Length) Length {
	var s exact
	for len(lengths) > 0 {
		// Five whole values, each within 60 bits, add up within 63: one test for them all.
		if len(lengths) >= 4 {
			four := (*[4]Length)(lengths)
			a, b, c, d := &four[0].v, &four[1].v, &four[2].v, &four[3].v
			far := uint64(a.num+bound) | uint64(b.num+bound) | uint64(c.num+bound) | uint64(d.num+bound) | uint64(s.num+bound)
			if far < 2*bound && s.less|a.less|b.less|c.less|d.less == 0 {
				s.num += a.num + b.num + (c.num + d.num)
				lengths = lengths[4:]
				continue
			}
		}
		s = s.add(lengths[0].v)
		lengths = lengths[1:]
	}
	return Length{s}
}

// Whole values from -bound to below bound are added without a test each.
const bound = 1 << 60

// Marks divides span into equal gaps and yields gaps + 1 marks, measured from
// the start and rounded to step one by one, each with its residue: the exact
// place is mark + residue. Since no mark is found from the one before, errors
// do not add up. A step of zero or less does not round. With fewer than one gap
// nothing is yielded.
func Marks(span Length, gaps int, step Length, m Mode) iter.Seq2[Length, Length] {
	return func(yield func(mark, residue Length) bool) {
		if gaps < 1 {
			return
		}
		t := newTape(span.v, uint64(gaps), step.v)
		for k := 0; ; k++ {
			mark, residue, ok := t.at(uint64(k), m)
			if !ok {
				mark, residue = span.MulInt(int64(k)).DivInt(int64(gaps)).Round(step, m)
			}
			if !yield(mark, residue) || k == gaps {
				return
			}
		}
	}
}
