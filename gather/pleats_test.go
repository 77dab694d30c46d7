package gather_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

// The kilted skirt of the village school's teacher: 40 in at the hip, 28 at the
// waist, in pleats of about 2 in.
func ExamplePleats_Plan() {
	p, err := gather.Pleats{
		Kind: gather.KnifePleat, Section: units.MustParse("40 in"), About: units.MustParse("2 in"), Waist: units.MustParse("28 in"),
		Width: units.MustParse("44 in"), Allowance: units.MustParse("1/2 in"), Drop: units.MustParse("30 in"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Spec.Count, "pleats,", p.Spec.Depth, "deep, of", p.Spec.Cloth)
	fmt.Println("at the waist each fold is", p.Deeper, "deeper")
	fmt.Println("widths cut to", p.Pieces, "for", p.Bought)
	fmt.Println("the second fold lies at", p.Places[1].Outer, "and goes on", p.Places[1].Place)
	// Output:
	// 20 pleats, 2 in deep, of 120 in
	// at the waist each fold is 7.62 mm deeper
	// widths cut to [39 in 43 in 41 in] for 90 in
	// the second fold lies at 6 in and goes on 10 in
}

func TestPleatsFaults(t *testing.T) {
	n := in("-1")
	knife := func() gather.Pleats {
		return gather.Pleats{Kind: gather.KnifePleat, Section: in("40"), Count: 20, Depth: in("1 1/2")}
	}
	for _, test := range []struct {
		why    string
		change func(*gather.Pleats)
		want   []string
		err    error
	}{
		{"nothing given", func(s *gather.Pleats) { *s = gather.Pleats{} }, []string{"kind"}, fault.Missing},
		{"everything wrong at once", func(s *gather.Pleats) {
			*s = gather.Pleats{
				Tape: 9, Kind: 9, Section: n, Count: math.MaxInt, Pitch: n, About: n, Flat: n, Lead: n, Face: n, Depth: n, Cloth: n, Waist: n, Step: n, Width: n, Allowance: n, Drop: n,
			}
		}, []string{"tape", "kind", "section", "count", "pitch", "about", "flat", "lead", "face", "face", "depth", "cloth", "waist", "step", "width", "allowance", "drop"}, fault.Sign},
		{"no count", func(s *gather.Pleats) { s.Count = 0 }, []string{"count"}, fault.Missing},
		{"a count alone", func(s *gather.Pleats) { s.Section = in("0") }, []string{"section"}, fault.Missing},
		{"no whole number", func(s *gather.Pleats) { s.Count, s.Pitch = 0, in("3") }, []string{"section"}, fault.Conflict},
		{"no whole number in the cloth", func(s *gather.Pleats) { s.Count, s.Section, s.Pitch, s.Cloth = 0, in("0"), in("2"), in("99") }, []string{"cloth"}, fault.Conflict},
		{"more than may be", func(s *gather.Pleats) { s.Count, s.Pitch = 0, in("1/100") }, []string{"section"}, fault.Range},
		{"about nothing", func(s *gather.Pleats) { s.Count, s.About = 0, in("1/100") }, []string{"about"}, fault.Range},
		{"another count than about", func(s *gather.Pleats) { s.About = in("3") }, []string{"count"}, fault.Conflict},
		{"about beside a pitch", func(s *gather.Pleats) { s.Count, s.Pitch, s.About = 0, in("2"), in("2") }, []string{"about"}, fault.Unused},
		{"a pitch that disagrees", func(s *gather.Pleats) { s.Pitch = in("3") }, []string{"section"}, fault.Conflict},
		{"cloth that disagrees", func(s *gather.Pleats) { s.Cloth = in("90") }, []string{"cloth"}, fault.Conflict},
		{"no more cloth than section", func(s *gather.Pleats) { s.Cloth, s.Depth = in("40"), in("0") }, []string{"cloth"}, fault.Range},
		{"all hidden", func(s *gather.Pleats) { s.Section, s.Cloth = in("0"), in("60") }, []string{"cloth"}, fault.Range},
		{"all flat", func(s *gather.Pleats) { s.Flat = in("40") }, []string{"flat"}, fault.Range},
		{"a lead past the flat part", func(s *gather.Pleats) { s.Lead = in("1") }, []string{"lead"}, fault.Range},
		{"the face of a knife pleat", func(s *gather.Pleats) { s.Face = in("1") }, []string{"face"}, fault.Unused},
		{"a face wider than the pitch", func(s *gather.Pleats) { s.Kind, s.Face, s.Depth = gather.BoxPleat, in("3"), in("1") }, []string{"face"}, fault.Range},
		{"folds that overlap", func(s *gather.Pleats) { s.Depth = in("2 1/32") }, []string{"depth"}, fault.Range},
		{"box pleats that overlap", func(s *gather.Pleats) { s.Kind, s.Depth = gather.BoxPleat, in("1 1/32") }, []string{"depth"}, fault.Range},
		{"the last one overlaps", func(s *gather.Pleats) { s.Grow = in("1/32") }, []string{"depth"}, fault.Range},
		{"the last one has no depth", func(s *gather.Pleats) { s.Grow = in("-1/8") }, []string{"grow"}, fault.Range},
		{"a thousand layers", func(s *gather.Pleats) { s.Overlapping, s.Depth = true, in("3000") }, []string{"depth"}, fault.Range},
		{"a waist wider than the hip", func(s *gather.Pleats) { s.Waist = in("41") }, []string{"waist"}, fault.Range},
		{"a waist of nothing but flat", func(s *gather.Pleats) { s.Flat, s.Waist = in("1"), in("1") }, []string{"waist"}, fault.Range},
		{"a waist without faces", func(s *gather.Pleats) {
			s.Kind, s.Depth, s.Face, s.Waist = gather.BoxPleat, in("1/2"), in("1"), in("20")
		}, []string{"waist"}, fault.Range},
		{"a step too coarse", func(s *gather.Pleats) { s.Step = in("2") }, []string{"step"}, fault.Range},
		{"widths of nothing", func(s *gather.Pleats) { s.Allowance, s.Anywhere, s.Drop = in("1"), true, in("9") }, []string{"allowance", "anywhere", "drop"}, fault.Unused},
		{"a width of two allowances", func(s *gather.Pleats) { s.Width, s.Allowance = in("2"), in("1") }, []string{"width"}, fault.Range},
		{"a width that holds no pleat", func(s *gather.Pleats) { s.Width, s.Allowance = in("5"), in("1/2") }, []string{"width"}, fault.Range},
		{"too many widths", func(s *gather.Pleats) { s.Width, s.Allowance, s.Anywhere = in("1 1/1000"), in("1/2"), true }, []string{"width"}, fault.Range},
	} {
		s := knife()
		test.change(&s)
		_, err := s.Plan()
		faulty(t, test.why, err, test.err, test.want)
	}
	for _, change := range []func(*gather.Pleats){
		func(s *gather.Pleats) { s.Depth = in("2") },
		func(s *gather.Pleats) { s.Kind, s.Depth = gather.BoxPleat, in("1") },
		func(s *gather.Pleats) { s.Depth, s.Overlapping = in("3"), true },
		func(s *gather.Pleats) { s.Grow = in("1/38") },
		func(s *gather.Pleats) { s.Grow, s.Step = in("-1/16"), in("1") },
		func(s *gather.Pleats) { s.Width, s.Allowance = in("6"), in("1/2") },
		func(s *gather.Pleats) { s.Flat, s.Lead, s.Width = in("5"), in("1"), in("45") },
	} {
		s := knife()
		change(&s)
		if p, err := s.Plan(); err != nil {
			t.Error(err)
		} else {
			check(t, "at the limit", p)
		}
	}
}

// TestPleatsProperties: what is seen and what is hidden come to the cloth, the folds
// lie where both say, and whatever is left out is found again from the rest.
func TestPleatsProperties(t *testing.T) {
	r := random{rand.New(rand.NewPCG(2, 21))}
	for range nountest.Rounds(3000) {
		s := gather.Pleats{
			Kind: gather.PleatKind(1 + r.IntN(3)), Count: 1 + r.IntN(40), Pitch: r.upTo(4), Depth: r.upTo(3), Grow: units.Inch.Frac(r.Int64N(3), 16),
			Overlapping: true, Flat: r.upTo(9),
		}
		s.Lead = s.Flat.DivInt(1 + r.Int64N(3))
		if s.Kind == gather.BoxPleat {
			s.Face = s.Pitch.Scale(units.RatioOf(r.Int64N(8)+1, 8))
		}
		if r.IntN(2) == 0 {
			s.Step = s.Depth.DivInt(1 + r.Int64N(9))
		}
		if r.IntN(2) == 0 {
			s.Width, s.Allowance = r.upTo(60).Add(in("12")), units.Inch.Frac(r.Int64N(8)+1, 8)
			s.Anywhere = r.IntN(2) == 0
		}
		p, err := s.Plan()
		if err != nil {
			if s.Width.IsZero() {
				t.Fatalf("%+v: %v", s, err)
			}
			continue
		}
		full := p.Spec
		if full.Section.Add(p.Hidden) != full.Cloth || full.Section != full.Pitch.MulInt(int64(s.Count)).Add(s.Flat) {
			t.Fatalf("%+v: %v and %v are not %v", s, full.Section, p.Hidden, full.Cloth)
		}
		// Walk over the flat cloth: all that lies between a fold and its line is hidden.
		hidden, last := units.Length{}, units.Length{}
		for _, f := range p.Places {
			low, high := f.Outer.Min(f.Place), f.Outer.Max(f.Place)
			if low.Less(last) || f.Inner.MulInt(2) != low.Add(high) {
				t.Fatalf("%+v: %+v after %v", s, f, last)
			}
			seen := f.Place.Sub(hidden)
			if f.Place == high {
				seen = f.Outer.Sub(hidden)
			}
			if seen != f.On {
				t.Fatalf("%+v: %+v comes to lie on %v", s, f, seen)
			}
			hidden, last = hidden.Add(high.Sub(low)), high
		}
		if hidden != p.Hidden || full.Cloth.Less(last) || len(p.Places) != p.Folds {
			t.Fatalf("%+v: the folds hide %v of %v", s, hidden, p.Hidden)
		}
		pieces := p.Left
		for i, piece := range p.Pieces {
			if pieces = pieces.Add(piece).Sub(s.Allowance.MulInt(2)); s.Width.Less(piece) {
				t.Fatalf("%+v: a piece of %v", s, piece)
			}
			if i < len(p.Joins) && !s.Anywhere && !slices.ContainsFunc(p.Places, func(f gather.Fold) bool { return f.Inner == p.Joins[i] }) {
				t.Fatalf("%+v: a join at %v, in no fold", s, p.Joins[i])
			}
		}
		if p.Widths > 0 && pieces != full.Cloth.Add(p.Left) {
			t.Fatalf("%+v: the pieces come to %v of %v", s, pieces, full.Cloth)
		}
		for _, forget := range []func(*gather.Pleats){
			func(s *gather.Pleats) { s.Section = units.Length{} },
			func(s *gather.Pleats) { s.Pitch = units.Length{} },
			func(s *gather.Pleats) { s.Depth = units.Length{} },
			func(s *gather.Pleats) { s.Cloth = units.Length{} },
			func(s *gather.Pleats) { s.Count = 0 },
			func(s *gather.Pleats) { s.Section, s.Pitch = units.Length{}, units.Length{} },
		} {
			part := full
			forget(&part)
			q, err := part.Plan()
			if q.Assumed = p.Assumed; err != nil || !reflect.DeepEqual(q, p) {
				t.Fatalf("%+v\nis planned as %+v, %v", part, q.Spec, err)
			}
		}
		check(t, "", p)
	}
}

// TestPleatPlaces are folds as a hand would mark them.
func TestPleatPlaces(t *testing.T) {
	for _, test := range []struct {
		s    gather.Pleats
		want []gather.Fold
	}{
		{gather.Pleats{Kind: gather.KnifePleat, Count: 2, Pitch: in("2"), Depth: in("1"), Flat: in("3"), Lead: in("1")},
			[]gather.Fold{{1, in("1"), in("2"), in("3"), in("1")}, {2, in("5"), in("6"), in("7"), in("3")}}},
		{gather.Pleats{Kind: gather.BoxPleat, Count: 1, Pitch: in("4"), Face: in("2"), Depth: in("1")},
			[]gather.Fold{{1, in("3"), in("2"), in("1"), in("1")}, {1, in("5"), in("6"), in("7"), in("3")}}},
		{gather.Pleats{Kind: gather.InvertedPleat, Count: 1, Pitch: in("4"), Depth: in("2")},
			[]gather.Fold{{1, in("2"), in("4"), in("6"), in("2")}, {1, in("10"), in("8"), in("6"), in("2")}}},
	} {
		p, err := test.s.Plan()
		if err != nil || !slices.Equal(p.Places, test.want) {
			t.Errorf("%v: %v, %v", test.s.Kind, p.Places, err)
		}
	}
}
