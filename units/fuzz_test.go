package units_test

import (
	"encoding/json"
	"fmt"
	"math/big"
	"testing"

	"example.com/clothyard/units"
)

// FuzzParse holds the parsers to the reference and what they read to its text.
func FuzzParse(f *testing.F) {
	for _, seed := range []string{
		"1 5/8 in", `1-5/8"`, "1⅝ in", ".625 in", "1 yd 4 1/2 in", "24 L", "5' 4\"", "1\u00a05\u20448\u202fin",
		"0/2 in",                              // zero has one form
		"5/8-in.", "5 ft. 4 in.", "1 ft.5 in", // hyphens and full stops
		"2.5x", "5 to 2", "1 square in", "3 m^2",
		"1 13/8 in",        // an improper fraction after a whole number
		"1 in 3 mm",        // two systems
		"1e3 mm", "1/0 in", // exponents, nothing to divide by
		"1,5 mm", "-1 5/8 in", // a comma, a sign
		"9223372036854775808 in", "1/9223372036854775809 in", // out of the machine's words
		"12 1/2 sq in", "3 m²", "2 1/2", "3 %", "5:2",
		"\xff", "½½ in", "1 in\x00",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for kind := range readers {
			agree(t, kind, text)
		}
		if l, err := units.Parse(text); err == nil {
			roundTrip(t, l)
		}
		if r, err := units.ParseRatio(text); err == nil && len(r.String()) <= units.MaxText {
			if back, err := units.ParseRatio(r.String()); err != nil || back != r {
				t.Fatalf("%v is read as %v, %v", r, back, err)
			}
		}
		if a, err := units.ParseArea(text); err == nil && len(a.String()) <= units.MaxText {
			if back, err := units.ParseArea(a.String()); err != nil || back != a {
				t.Fatalf("%v is read as %v, %v", a, back, err)
			}
		}
		if n, err := units.ParseNear(text); err == nil && len(n.String()) <= units.MaxText {
			checkNearText(t, n)
		}
		var u units.Unit
		if u.UnmarshalText([]byte(text)) == nil && text != "" && !u.Valid() {
			t.Fatalf("%q is the unit %v", text, u)
		}
	})
}

func roundTrip(t *testing.T, l units.Length) {
	t.Helper()
	if err := units.FormOf(l); err != nil {
		t.Fatal(err)
	}
	text := l.String()
	b, err := l.AppendText(nil)
	if len(text) > units.MaxText {
		if err == nil {
			t.Fatalf("%d bytes of text are given out", len(text))
		}
		return
	}
	back, perr := units.Parse(text)
	if err != nil || string(b) != text || perr != nil || back != l || fmt.Sprint(l) != text {
		t.Fatalf("%s is read as %v, %v, %v", text, back, err, perr)
	}
	for u := range units.Units {
		exact := units.Notation{Unit: u, Compound: true}.Exact(l)
		if back, err := units.Parse(exact); len(exact) <= units.MaxText && (err != nil || back != l) {
			t.Fatalf("%s in %v is exactly %s, read as %v, %v", text, u, exact, back, err)
		}
	}
	b, err = json.Marshal(l)
	if err != nil || json.Unmarshal(b, &back) != nil || back != l {
		t.Fatalf("%s through JSON is %s, %v", text, b, err)
	}
}

// tape hands out the bytes of a fuzz input.
type tape struct{ b []byte }

func (p *tape) next() byte {
	if len(p.b) == 0 {
		return 0
	}
	c := p.b[0]
	p.b = p.b[1:]
	return c
}

// IntN makes the tape a source of chance.
func (p *tape) IntN(n int) int { return int(p.next()) % n }

// number is a rational of a length that the tape says.
func (p *tape) number() *big.Rat {
	part := func() *big.Int {
		v := new(big.Int)
		for range p.IntN(12) {
			v.Lsh(v, 8)
			v.Or(v, big.NewInt(int64(p.next())))
		}
		return v
	}
	num, den := part(), part()
	if den.Sign() == 0 {
		den.SetInt64(units.PerInch / 8)
		num.Mul(num, big.NewInt(units.PerInch*units.PerInch/64))
	}
	if p.next()&1 == 1 {
		num.Neg(num)
	}
	return new(big.Rat).SetFrac(num, den)
}

// FuzzArith reads its input as a program of operations and runs it beside math/big.
func FuzzArith(f *testing.F) {
	f.Add([]byte{1, 5, 1, 8, 0, 0, 1, 1, 1, 3, 0})
	f.Add([]byte{8, 127, 255, 255, 255, 255, 255, 255, 255, 1, 1, 0, 0, 1, 1, 1, 1, 0}) // the largest whole value and one more
	f.Add([]byte{8, 128, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 2})                              // the least one turned about
	f.Add([]byte{11, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 9, 1, 2, 3, 4, 5, 6, 7, 8, 9, 0, 3, 200, 4, 7})
	f.Fuzz(func(t *testing.T, program []byte) {
		p := &tape{program}
		want := p.number()
		got := lengthOf(want)
		for len(p.b) > 0 && want.Num().BitLen()+want.Denom().BitLen() < 3000 {
			next := new(big.Rat)
			k := int64(int8(p.next()))
			switch p.IntN(8) {
			case 0:
				y := p.number()
				got, next = got.Add(lengthOf(y)), next.Add(want, y)
			case 1:
				y := p.number()
				got, next = got.Sub(lengthOf(y)), next.Sub(want, y)
			case 2:
				got, next = got.Neg(), next.Neg(want)
			case 3:
				got, next = got.MulInt(k), next.Mul(want, ratInt(k))
			case 4:
				if k == 0 {
					continue
				}
				got, next = got.DivInt(k), next.Quo(want, ratInt(k))
			case 5:
				y := p.number()
				got, next = got.Scale(units.FromRat(y)), next.Mul(want, y)
			case 6:
				y := p.number()
				if y.Sign() == 0 {
					continue
				}
				got, next = base().Scale(got.Div(lengthOf(y))), next.Quo(want, y)
			case 7:
				y := p.number()
				if got.Cmp(lengthOf(y)) != want.Cmp(y) || (got == lengthOf(y)) != (want.Cmp(y) == 0) {
					t.Fatalf("comparing %v with %v", want, y)
				}
				next.Set(want)
			}
			same(t, "program", got, next)
			want = next
		}
	})
}

// FuzzRound holds rounding and marks to the slow rule.
func FuzzRound(f *testing.F) {
	f.Add([]byte{2, 5, 1, 1, 16, 0, 1, 1, 1, 16, 0, 0, 13})
	f.Add([]byte{9, 1, 0, 0, 0, 0, 0, 0, 0, 0, 1, 3, 1, 1, 7, 0, 1, 1, 40})
	f.Fuzz(func(t *testing.T, b []byte) {
		p := &tape{b}
		span, step := p.number(), p.number()
		m := modes[p.IntN(len(modes))]
		mark, residue := lengthOf(span).Round(lengthOf(step), m)
		want := slowRound(span, step, m)
		same(t, "mark", mark, want)
		same(t, "residue", residue, new(big.Rat).Sub(span, want))
		gaps := 1 + p.IntN(60)
		k := int64(0)
		for mark, residue := range units.Marks(lengthOf(span), gaps, lengthOf(step), m) {
			place := new(big.Rat).Mul(span, big.NewRat(k, int64(gaps)))
			want := slowRound(place, step, m)
			same(t, "mark", mark, want)
			same(t, "residue", residue, place.Sub(place, want))
			k++
		}
		if k != int64(gaps)+1 {
			t.Fatalf("%d marks for %d gaps", k, gaps)
		}
	})
}

// FuzzNotation writes any length in any notation, and reads it back.
func FuzzNotation(f *testing.F) {
	f.Add([]byte{3, 1, 16, 8, 1, 1, 0, 0, 2, 5, 1, 1, 8, 0})
	f.Add([]byte{6, 1, 0, 3, 0, 1, 3, 2, 9, 1, 0, 0, 0, 0, 0, 0, 0, 0, 1, 3, 1})
	f.Fuzz(func(t *testing.T, b []byte) {
		p := &tape{b}
		n := aNotation(p)
		checkNotation(t, n, lengthOf(p.number()))
	})
}

// FuzzNear makes an irrational amount by a program: its bounds stay in order, and
// refining it stays within them.
func FuzzNear(f *testing.F) {
	f.Add([]byte{1, 2, 1, 1, 0, 0, 1, 1, 1, 3, 0, 5})
	f.Add([]byte{2, 1, 1, 1, 7, 0, 3, 3, 4, 200, 2, 5, 9})
	f.Fuzz(func(t *testing.T, b []byte) {
		p := &tape{b}
		part := func() units.Near {
			v := p.number()
			switch p.IntN(3) {
			case 0:
				return units.Exactly(lengthOf(v))
			case 1:
				return units.Pi().Of(lengthOf(v))
			}
			n, err := units.Sqrt(areaOf(v.Abs(v)), units.Length{})
			if err != nil {
				t.Fatal(v, err)
			}
			return n
		}
		n := part()
		for range 20 {
			if len(p.b) == 0 {
				break
			}
			switch p.IntN(5) {
			case 0:
				n = n.Add(part())
			case 1:
				n = n.Sub(part())
			case 2:
				n = n.Scale(units.FromRat(p.number()))
			case 3:
				n = n.Plus(lengthOf(p.number()))
			case 4:
				n = n.DivInt(int64(p.IntN(9) + 1))
			}
		}
		lo, hi := n.Bounds()
		if hi.Less(lo) || units.FormOf(lo) != nil || units.FormOf(hi) != nil {
			t.Fatalf("between %v and %v", lo, hi)
		}
		if len(n.String()) <= units.MaxText {
			checkNearText(t, n)
		}
		finer, err := n.Refine(base())
		if err != nil {
			return // too large a sum of parts
		}
		l, h := finer.Bounds()
		if h.Less(l) || hi.Less(l) || h.Less(lo) || base().Less(finer.Within()) {
			t.Fatalf("between %v and %v refined to between %v and %v", lo, hi, l, h)
		}
	})
}
