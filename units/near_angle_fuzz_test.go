package units_test

import (
	"errors"
	"testing"

	"example.com/clothyard/units"
)

// FuzzAngle works with enclosures by a program in bytes. Nothing panics; what fails
// says why and is nothing; refined bounds still touch those before; what is written
// is read back around it.
func FuzzAngle(f *testing.F) {
	f.Add([]byte{0, 7, 1, 4, 9, 30})            // roots and pi
	f.Add([]byte{2, 45, 10, 2, 45, 11, 6})      // sines of degrees
	f.Add([]byte{0, 3, 13, 1, 12, 14, 3, 5, 8}) // arcs of arcs
	f.Add([]byte{3, 100, 3, 200, 8, 10, 12, 7}) // quotients
	f.Fuzz(func(t *testing.T, program []byte) {
		stack := []units.NearRatio{units.ExactlyRatio(units.RatioOf(1, 1))}
		pop := func() units.NearRatio {
			n := stack[len(stack)-1]
			if len(stack) > 1 {
				stack = stack[:len(stack)-1]
			}
			return n
		}
		for i := 0; i < min(len(program), 24); i++ {
			arg := int64(1)
			if i+1 < len(program) {
				arg = int64(program[i+1])
			}
			var n units.NearRatio
			var err error
			switch program[i] % 14 {
			case 0:
				n, err = units.SqrtRatio(units.RatioOf(arg, 3))
				i++
			case 1:
				n = units.Pi()
			case 2:
				n = units.Degrees(units.RatioOf(arg, 1)).InRadians()
				i++
			case 3:
				n = units.ExactlyRatio(units.RatioOf(arg-128, 7))
				i++
			case 4:
				n = pop().Add(pop())
			case 5:
				n = pop().Sub(pop())
			case 6:
				n = pop().Mul(pop())
			case 7:
				n = pop().Neg().Plus(units.RatioOf(arg, 5))
			case 8:
				n, err = pop().Quo(pop())
			case 9:
				n, err = pop().Refine(units.RatioOf(1, 1+arg*arg*arg*arg))
			case 10:
				n = units.Radians(units.RatioOf(arg-128, 7)).Sin()
			case 11:
				n = units.Slope(units.RatioOf(arg-128, 7)).Cos()
			case 12:
				n, err = degrees(arg).Tan()
			case 13:
				n = units.Slope(units.RatioOf(arg, 7)).InRadians()
			}
			if err != nil && !errors.Is(err, units.ErrBound) && !errors.Is(err, units.ErrDomain) {
				t.Fatal(err)
			}
			lo, hi := n.Bounds()
			if hi.Less(lo) {
				t.Fatalf("between %v and %v", lo, hi)
			}
			stack = append(stack, n)
		}
		n := pop()
		lo, hi := n.Bounds()
		if fine, err := n.Refine(units.RatioOf(1, 1e15)); err == nil {
			if l, h := fine.Bounds(); h.Less(lo) || hi.Less(l) || units.RatioOf(1, 1e15).Less(fine.Within()) {
				t.Fatalf("%v is refined to %v", n, fine)
			}
		}
		if !n.Sub(n).IsZero() {
			// What was read, or is too long, is not known to be itself.
			if l, h := n.Sub(n).Bounds(); l.Sign() > 0 || h.Sign() < 0 {
				t.Fatalf("%v less itself is %v", n, n.Sub(n))
			}
		}
		text := n.String()
		if len(text) > units.MaxText {
			return
		}
		back, err := units.ParseNearRatio(text)
		if err != nil {
			t.Fatalf("%s: %v", text, err)
		}
		if l, h := back.Bounds(); lo.Less(l) || h.Less(hi) {
			t.Fatalf("%v is written %s and read as %v", n, text, back)
		}
	})
}
