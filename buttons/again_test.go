package buttons_test

import (
	"math/rand/v2"
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

// The solved Spec of every noun is valid input and gives the same plan.
func TestSolvedAgain(t *testing.T) {
	r := seeded(6)
	or := func() units.Length {
		if r.IntN(2) == 0 {
			return units.Length{}
		}
		return some(r)
	}
	for name, plan := range map[string]func(r *rand.Rand) (any, error){
		"row": func(r *rand.Rand) (any, error) {
			s := buttons.Row{First: some(r), Step: units.Inch.Frac(1, 64)}
			switch r.IntN(6) {
			case 0:
				s.Last, s.Count = s.First.Add(some(r)), 1+r.IntN(20)
			case 1:
				s.Gap, s.Have, s.Months = some(r), 1+r.IntN(20), 30
			case 2:
				s.Last, s.MinGap, s.Have = s.First.Add(some(r)), some(r), 2+r.IntN(20)
			case 3:
				s.Last, s.MaxGap = s.First.Add(some(r)), some(r)
			case 4:
				s.Last, s.Gap, s.Count, s.First = s.First.Add(units.Inch.Of(900)), units.Inch.Frac(1+r.Int64N(99), 7), 2+r.IntN(9), units.Length{}
			case 5:
				s.Have, s.From = 1, "the hem"
			}
			p, err := s.Plan()
			return p, err
		},
		"hole": func(r *rand.Rand) (any, error) {
			s := buttons.Hole{Diameter: some(r), Ease: or(), Step: or(), Setting: buttons.Setting(r.IntN(3))}
			if s.Outline = buttons.Outline(r.IntN(3)); s.Outline != buttons.Ball {
				s.Thickness = or()
			}
			if s.Setting != buttons.NoSetting {
				s.Place, s.Reach = or(), or()
			}
			p, err := s.Plan()
			return p, err
		},
		"lap": func(r *rand.Rand) (any, error) {
			s := buttons.Lap{Lap: or(), Hole: some(r), Diameter: or(), Topstitch: or(), Setting: buttons.Horizontal, Reach: or()}
			if r.IntN(2) == 0 {
				s.Setting, s.Reach = buttons.Vertical, units.Length{}
			}
			p, err := s.Plan()
			return p, err
		},
		"stock": func(r *rand.Rand) (any, error) {
			s := buttons.Stock{Have: 1 + r.IntN(20), Months: r.IntN(3)}
			for range 1 + r.IntN(3) {
				s.Places = append(s.Places, buttons.Placement{Name: "cuff", Count: 1 + r.IntN(9), Times: r.IntN(3), Least: r.IntN(2)})
			}
			p, err := s.Plan()
			return p, err
		},
	} {
		t.Run(name, func(t *testing.T) {
			*r = *seeded(6)
			done := 0
			for range 400 {
				if p, err := plan(r); err == nil {
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
