package layout

import (
	"math/big"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout/internal/nest"
)

// grid finds the coarsest grid that all pieces and the gap share.
func (s Spec) grid(a *fault.Audit) (ground, bool) {
	den := big.NewInt(1)
	widen := func(l units.Length) (num *big.Int, ok bool) {
		r := l.In(units.Inch).Rat()
		common := new(big.Int).GCD(nil, nil, den, r.Denom())
		den.Mul(den, common.Quo(r.Denom(), common))
		return r.Num(), den.BitLen() < 60 && r.Num().BitLen() < 128
	}
	limit := units.Inch.Of(MaxGrid)
	tooFine := func(path string, l units.Length) (ground, bool) {
		a.Fault(path, l.String(), "lengths that lie on one grid, all pieces in a row at most "+limit.In(units.Inch).String()+" steps", ErrGrid)
		return ground{}, false
	}
	if _, ok := widen(s.Cloth.Gap); !ok {
		return tooFine("cloth.gap", s.Cloth.Gap)
	}
	for i, p := range s.Pieces {
		if _, ok := widen(p.Wide); !ok {
			return tooFine(piecePath(i)+".wide", p.Wide)
		}
		if _, ok := widen(p.Long); !ok {
			return tooFine(piecePath(i)+".long", p.Long)
		}
	}
	return s.fill(den.Int64(), tooFine)
}

// fill makes the whole numbers; each inch is perInch of them before they are
// divided by what they have in common.
func (s Spec) fill(perInch int64, tooFine func(string, units.Length) (ground, bool)) (ground, bool) {
	whole := func(l units.Length) (int64, bool) {
		n, ok := l.In(units.Inch).Mul(units.RatioOf(perInch, 1)).Int(units.Down)
		return n, ok && n <= MaxGrid
	}
	g := &nest.Grid{}
	var ok bool
	if g.Gap, ok = whole(s.Cloth.Gap); !ok {
		return tooFine("cloth.gap", s.Cloth.Gap)
	}
	size := g.Gap
	sizes := make([][2]int64, len(s.Pieces))
	var row int64 // all pieces side by side, the longer way
	for i, p := range s.Pieces {
		w, okWide := whole(p.Wide)
		l, okLong := whole(p.Long)
		if !okWide || !okLong || max(w, l)+g.Gap > (MaxGrid-row)/int64(p.Count) {
			return tooFine(piecePath(i), p.Wide.Max(p.Long))
		}
		row += (max(w, l) + g.Gap) * int64(p.Count)
		sizes[i] = [2]int64{w, l}
		size = common(size, common(w, l))
	}
	// A cloth wider than all pieces side by side is as good as one just so wide.
	usable := s.Cloth.Usable().Min(units.Inch.Frac(row-g.Gap, perInch))
	g.Wide, _ = whole(usable)
	g.Gap /= size
	g.Wide = g.Wide/size + g.Gap
	for i, p := range s.Pieces {
		g.Add(i, p.Count, sizes[i][0]/size+g.Gap, sizes[i][1]/size+g.Gap, p.Turn == Quarter)
	}
	g.Least()
	return ground{grid: g, step: units.Inch.Frac(size, perInch)}, true
}

// common is the greatest common divisor; 0 counts as a multiple of anything.
func common(a, b int64) int64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}
