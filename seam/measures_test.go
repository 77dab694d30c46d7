package seam_test

import (
	"math/rand/v2"
	"reflect"
	"slices"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

// measures are the figures of a planned seam as the tests draw it, whatever its kind:
// first is where the seam lies, second the ridge, fell, binding, row or lap.
type measures struct {
	kind                                              string
	first, second, trim, turned, strip, wrapped, cord units.Length
	row, thickness, cut, cutUnder                     units.Length
	grades                                            []units.Length
	finish                                            seam.Finish
	aside                                             bool
}

func measuresOf(p seam.Plan) measures {
	a := p.Spec.Plies()
	m := measures{kind: p.Spec.Kind(), turned: p.Turned, thickness: a.Thickness, cut: a.Cut, cutUnder: a.CutUnder, grades: p.Grades}
	switch s := p.Spec.Seam.(type) {
	case seam.Plain:
		m.first, m.trim, m.finish, m.aside = s.First, s.Trim, s.Finish, s.Aside
	case seam.French:
		m.first, m.second, m.trim = s.First, s.Second, s.Trim
	case seam.FlatFelled:
		m.first, m.second, m.trim = s.First, s.Width, s.Trim
	case seam.MockFelled:
		m.first, m.second, m.trim = s.First, s.Width, s.Trim
	case seam.Bound:
		m.first, m.second, m.trim = s.First, s.Width, s.Trim
	case seam.TurnedStitched:
		m.first, m.second, m.trim = s.First, s.Width, s.Trim
	case seam.MockFrench:
		m.first, m.second, m.trim = s.First, s.Width, s.Trim
	case seam.UntrimmedFell:
		m.first = s.Width
	case seam.Welt:
		m.first, m.second, m.trim, m.finish = s.First, s.Row, s.Trim, s.Finish
	case seam.Lapped:
		m.first, m.second, m.row = s.Turned, s.Lap, s.Row
	case seam.LappedTurned:
		m.first, m.second = p.Upper.Taken, s.Lap
	case seam.LappedRaw:
		m.first, m.second = p.Upper.Taken, s.Lap
	case seam.Slot:
		m.first, m.second, m.trim, m.strip, m.finish = s.First, s.Row, s.Trim, s.Strip, s.Finish
	case seam.Hairline:
		m.first, m.trim = s.First, s.Trim
	case seam.HongKong:
		m.first, m.second, m.trim, m.strip, m.wrapped = s.First, s.Width, s.Trim, s.Strip, width(p, 1)
	case seam.SelfBound:
		m.first, m.second, m.trim = s.First, s.Width, s.Trim
	case seam.Piped:
		m.first, m.trim, m.cord = s.First, s.Trim, s.Cord
	case seam.Graded:
		m.first, m.trim = s.First, s.Widest
	}
	return m
}

// width is that of a strip of the plan, where it is exact.
func width(p seam.Plan, i int) units.Length {
	l, _ := p.Strips[i].Width.Exact()
	return l
}

// someLength is a length as patterns have them, now and then an odd one, or none.
func someLength(r *rand.Rand) units.Length {
	switch r.IntN(6) {
	case 0:
		return units.Length{}
	case 1:
		return units.Millimetre.Of(r.Int64N(30))
	case 2:
		return units.Inch.Frac(r.Int64N(30), 7)
	}
	return units.Inch.Frac(r.Int64N(24), 16)
}

// someSeam is a seam of any kind, some of its fields given.
func someSeam(r *rand.Rand) seam.Any {
	kinds := slices.Collect(seam.Kinds())
	s := kinds[r.IntN(len(kinds))]
	of := s.Begin(s.Kind())
	give(r, reflect.ValueOf(of).Elem())
	s.Choose(of)
	b := s.Plies()
	b.Thickness = units.Length{}
	if r.IntN(3) == 0 {
		b.Thickness = in(r.Int64N(8), 128)
	}
	return s.With(b)
}

func give(r *rand.Rand, v reflect.Value) {
	for i := range v.NumField() {
		switch f := v.Field(i); f.Interface().(type) {
		case seam.Allowance:
			give(r, f)
		case units.Length:
			if r.IntN(3) == 0 {
				f.Set(reflect.ValueOf(someLength(r)))
			}
		case seam.Finish:
			f.SetUint(uint64(r.IntN(4)))
		case int:
			if r.IntN(2) == 0 {
				f.SetInt(int64(r.IntN(seam.MaxLayers + 1)))
			}
		case bool:
			f.SetBool(r.IntN(2) == 0)
		}
	}
}
