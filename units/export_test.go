package units

import (
	"fmt"
	"math/big"
)

// What the tests of the outside need to see of the inside.

// PerInch and PerMillimetre are the base units in an inch and a millimetre.
const (
	PerInch       = perInch
	PerMillimetre = perMillimetre
)

// FormOf says what is wrong with the form of a length, nil if nothing is.
func FormOf(l Length) error { return l.v.form() }

// FormOfRatio is FormOf for a ratio.
func FormOfRatio(r Ratio) error { return r.v.form() }

// FormOfArea is FormOf for an area.
func FormOfArea(a Area) error { return a.v.form() }

// Wide reports whether l is in the form for large terms.
func Wide(l Length) bool { return l.v.isWide() }

func (a exact) form() error {
	if !a.isWide() {
		n, d := new(big.Int).SetInt64(a.num), new(big.Int).SetUint64(a.den())
		if g := new(big.Int).GCD(nil, nil, n.Abs(n), d); g.Cmp(big.NewInt(1)) != 0 {
			return fmt.Errorf("%d/%d has the common factor %v", a.num, a.den(), g)
		}
		if a != (exact{num: a.num, less: a.less}) {
			return fmt.Errorf("a small value with a wide key")
		}
		return nil
	}
	if a.num != 0 || a.less != -1 {
		return fmt.Errorf("a wide value with num %d and less %d", a.num, a.less)
	}
	r := a.rat()
	limit := new(big.Int).Lsh(big.NewInt(1), 63)
	low := new(big.Int).Neg(limit)
	if r.Num().Cmp(limit) < 0 && r.Num().Cmp(low) >= 0 && r.Denom().Cmp(limit) <= 0 {
		return fmt.Errorf("%v is kept wide and would fit", r)
	}
	return nil
}

// AppendAny is the slow way of Notation.Append, which serves every length.
func AppendAny(n Notation, b []byte, l Length) ([]byte, Length) {
	f := n.form()
	return n.appendAny(b, l, &f)
}

// Gcd is the greatest common divisor that the arithmetic uses.
func Gcd(a, b uint64) uint64 { return gcd(a, b) }

// ReadQuickly reports whether a text is one part of a length that is read the quick way.
func ReadQuickly(text string) bool {
	s := scanner{in: text}
	_, u := s.quick(NoUnit)
	return u != NoUnit && s.at == len(text)
}

// WrittenQuickly reports whether Notation.Append writes l the quick way.
func WrittenQuickly(n Notation, l Length) bool {
	f := n.form()
	_, _, ok := n.quick(nil, l.v.num, &f)
	return ok && l.v.less == 0
}

// SquareOut and SquareOutWord are the slow and the quick way to find square factors.
func SquareOut(n *big.Int) (side, rest *big.Int) { return squareOut(n) }

// SquareOutWord is the quick way of SquareOut.
func SquareOutWord(n uint64) (side, rest int64) { return squareOutWord(n) }
