package yardage_test

import (
	"math/rand/v2"
	"testing"

	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/yardage"
)

// The solved Spec of every noun is valid input and gives the same plan.
func TestSolvedAgain(t *testing.T) {
	r := rand.New(rand.NewPCG(6, 7))
	some := func(most int64) units.Length { return randomLength(r, most) }
	or := func(most int64) units.Length { return maybe(r, most) }
	shrink := func() units.Ratio { return units.RatioOf(r.Int64N(30), 100) }
	full := func() units.Ratio { return units.RatioOf(10+r.Int64N(20), 10) }
	flip := func() bool { return r.IntN(2) == 0 }
	for name, plan := range map[string]func() (planned, error){
		"width": func() (planned, error) {
			return of(yardage.Width{Asked: some(300), From: some(60), To: some(60), Nap: flip()}.Plan())
		},
		"purchase": func() (planned, error) {
			s := yardage.Purchase{Need: some(300), Repeat: or(40), Ends: or(4), Shrink: shrink(), Counter: or(20)}
			if !s.Repeat.IsZero() {
				s.Starts = r.IntN(3)
			}
			return of(s.Plan())
		},
		"remnant": func() (planned, error) {
			s := yardage.Remnant{Have: some(300), HaveWidth: some(60), Asked: or(300), Need: or(300), ShrinkLength: shrink(), ShrinkWidth: shrink(), Selvedge: or(1), Ends: or(2)}
			if !s.Asked.IsZero() {
				s.AskedWidth = or(60)
			}
			if !s.Need.IsZero() {
				s.NeedWidth = or(60)
			}
			return of(s.Plan())
		},
		"price": func() (planned, error) {
			s := yardage.Price{Length: some(300), Each: decimal.New(1+r.Int64N(9999), -2), Per: units.Metre, Mode: units.Mode(r.IntN(5))}
			if flip() {
				s.Coin, s.Currency = units.RatioOf(1, 20), "CHF"
			}
			return of(s.Plan())
		},
		"swatch": func() (planned, error) {
			s := yardage.Swatch{Before: some(30)}
			if s.After = s.Before.Scale(units.RatioOf(70+r.Int64N(31), 100)); flip() {
				s.Before, s.Shrink = units.Length{}, units.RatioOf(1+r.Int64N(30), 100)
			}
			if flip() {
				s.WidthBefore, s.WidthShrink = some(30), units.RatioOf(1+r.Int64N(30), 100)
			}
			return of(s.Plan())
		},
		"panels": func() (planned, error) {
			s := yardage.Panels{Cover: some(300), Fullness: full(), Width: some(40).Add(in("10 in")), Seam: or(1), Sides: or(3),
				Drop: some(90), Hems: or(12), Repeat: or(30)}
			switch r.IntN(3) {
			case 0:
				s.Fullness, s.Widths = units.Ratio{}, 1+r.IntN(60)
			case 1:
				s.Cover, s.Widths = units.Length{}, 1+r.IntN(60)
			}
			if s.Seam.IsZero() {
				s.Butted = flip()
			}
			if !s.Repeat.IsZero() {
				s.HalfDrop, s.Starts = flip(), r.IntN(3)
			}
			return of(s.Plan())
		},
		"bias": func() (planned, error) {
			s := yardage.Bias{Strip: some(4), Wanted: some(300), Seam: or(1), Step: or(2)}
			if flip() {
				s.Square, s.Step = some(300), units.Length{}
			}
			return of(s.Plan())
		},
	} {
		t.Run(name, func(t *testing.T) {
			*r = *rand.New(rand.NewPCG(6, 7))
			done := 0
			for range 400 {
				if p, err := plan(); err == nil {
					nountest.Solved(t, p)
					done++
				}
			}
			if done < 40 {
				t.Errorf("%d of 400 specs are good", done)
			}
		})
	}
}
