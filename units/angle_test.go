package units_test

import (
	"encoding/csv"
	"encoding/json"
	"errors"
	"fmt"
	"math/big"
	"math/rand/v2"
	"os"
	"strings"
	"testing"
	"unsafe"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

func angle(t testing.TB, text string) units.Angle {
	t.Helper()
	a, err := units.ParseAngle(text)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

// TestAngleEqual: what is the same angle is == however it is come by, and nothing else.
func TestAngleEqual(t *testing.T) {
	r := units.RatioOf
	forms := [][]units.Angle{
		{{}, units.Turns(r(0, 1)), units.Degrees(r(0, 1)), units.Slope(r(0, 1)), units.Radians(r(0, 1)), angle(t, "0:12"), angle(t, "-0 rad"), angle(t, "slope 0")},
		{units.Slope(r(1, 1)), units.Turns(r(1, 8)), units.Degrees(r(45, 1)), angle(t, "3:3"), angle(t, "45°")},
		{units.Slope(r(-1, 1)), units.Turns(r(-1, 8)), angle(t, "-slope 1"), angle(t, "-90 deg + slope 1")},
		{angle(t, "90 deg + slope 1"), units.Turns(r(3, 8)), angle(t, "180 deg - slope 1")},
		{units.Slope(r(1, 4)), angle(t, "3:12"), angle(t, "3 in 12"), angle(t, "slope 0.25"), angle(t, "slope 3:12"), angle(t, "90 deg - slope 4")},
		{units.Slope(r(-1, 4)), angle(t, "-3:12"), angle(t, "slope -1/4"), angle(t, "-slope 1/4"), angle(t, "-90 deg + slope 4")},
		{angle(t, "1 1/4 turn"), units.Turns(r(5, 4)), units.Degrees(r(450, 1))},
		{units.Turns(r(1, 4)), units.Degrees(r(90, 1)), angle(t, "90 deg - slope 0")},
		{units.Radians(r(1, 4))}, {units.Turns(r(1, 16))}, {units.Radians(r(1, 1))}, {units.Slope(r(4, 1))}, {units.Radians(r(1, 8))},
	}
	for i, same := range forms {
		for j, others := range forms {
			for _, a := range same {
				for _, b := range others {
					c, err := a.Cmp(b)
					if (a == b) != (i == j) || (c == 0) != (i == j) || err != nil {
						t.Errorf("%v == %v is %v, Cmp %d, %v", a, b, a == b, c, err)
					}
				}
			}
		}
	}
	if n := unsafe.Sizeof(units.Angle{}); n > 32 {
		t.Errorf("an Angle has %d bytes", n)
	}
}

func TestAngleSums(t *testing.T) {
	for _, c := range []struct{ a, b, sum string }{
		{"45 deg", "6 3/7 deg", "51 3/7 deg"},
		{"1/8 turn", "-1/8 turn", "0 deg"},
		{"1/2 rad", "1/3 rad", "5/6 rad"},
		{"1/2 rad", "-1/2 rad", "0 deg"},
		{"slope 1/2", "slope 1/3", "45 deg"},
		{"slope 2", "slope 3", "135 deg"},
		{"slope 2", "slope 1/2", "90 deg"},
		{"slope 1/4", "slope -1/4", "0 deg"},
		{"slope 1/4", "90 deg", "90 deg + slope 1/4"},
		{"slope 1/4", "45 deg", "slope 5/3"},
		{"slope 3", "slope 3", "90 deg + slope 4/3"},
		{"-slope 1/4", "-90 deg", "-90 deg - slope 1/4"},
		{"270 deg + slope 4", "90 deg + slope 1/4", "450 deg"},
		{"720 deg", "slope 1/4", "720 deg + slope 1/4"},
		{"0 deg", "1/2 rad", "1/2 rad"},
		{"0 deg", "slope 7", "slope 7"},
	} {
		got, err := angle(t, c.a).Add(angle(t, c.b))
		if err != nil || got.String() != mixed(c.sum) || got != angle(t, c.sum) {
			t.Errorf("%s + %s is %v, %v, want %s", c.a, c.b, got, err, c.sum)
		}
		if back, err := got.Sub(angle(t, c.b)); err != nil || back != angle(t, c.a) {
			t.Errorf("%s + %s - %[2]s is %v, %v", c.a, c.b, back, err)
		}
	}
	for _, c := range [][2]string{
		{"1/2 rad", "10 deg"}, {"1/2 rad", "slope 1/4"}, {"slope 1/4", "30 deg"}, {"slope 1/4", "1 rad"}, {"10 deg", "-1 rad"},
		{"slope 1/4", "96636764160 deg"}, {"96636764070 deg + slope 1/4", "90 deg"}, {"slope 1/4", "100000000000000000000000000 turns"},
	} {
		got, err := angle(t, c[0]).Add(angle(t, c[1]))
		var f *fault.Fault
		if !errors.Is(err, units.NoSum) || !errors.As(err, &f) || f.Want() != "an angle of the form of "+angle(t, c[0]).String() || f.Got != angle(t, c[1]).String() || got != (units.Angle{}) {
			t.Errorf("%s + %s is %v, %v", c[0], c[1], got, err)
		}
	}
	for _, c := range []struct {
		a    string
		n    int64
		want string
	}{
		{"51 3/7 deg", 7, "360 deg"}, {"1/2 rad", -4, "-2 rad"}, {"slope 1/2", 2, "slope 4/3"}, {"slope 1/2", -3, "-slope 5 1/2"},
		{"slope 1/3", 2, "slope 3/4"}, {"slope 1/4", 0, "0 deg"}, {"slope 1/4", 1, "slope 1/4"}, {"90 deg + slope 1/4", 4, "360 deg + slope 240/161"},
	} {
		if got, err := angle(t, c.a).MulInt(c.n); err != nil || got.String() != mixed(c.want) {
			t.Errorf("%d x %s is %v, %v, want %s", c.n, c.a, got, err, c.want)
		}
	}
	for _, n := range []int64{1 << 62, -1 << 63, units.MaxAngleBits} {
		if got, err := angle(t, "slope 1/4").MulInt(n); !errors.Is(err, fault.Range) || got != (units.Angle{}) {
			t.Errorf("%d times slope 1/4 is %v, %v", n, got, err)
		}
	}
	// The quarter turns run out where the tangent does not.
	if got, err := angle(t, "90000000000 deg + slope 1/4").MulInt(2); !errors.Is(err, units.NoSum) {
		t.Errorf("%v, %v", got, err)
	}
}

// mixed writes improper fractions as an Angle does.
func mixed(text string) string {
	for from, to := range map[string]string{"5/3": "1 2/3", "4/3": "1 1/3", "240/161": "1 79/161"} {
		text = strings.ReplaceAll(text, from, to)
	}
	return text
}

// TestSineTable holds the sines and tangents of whole degrees to five places, as
// tables of natural sines print them.
func TestSineTable(t *testing.T) {
	f, err := os.Open("testdata/sines.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	places := units.RatioOf(1, 100_000)
	agrees := func(what, printed string, n units.NearRatio) {
		t.Helper()
		want, err := units.ParseRatio(printed)
		if err != nil {
			t.Fatal(err)
		}
		if got, _, err := n.Round(places, units.HalfAway); got != want || err != nil {
			t.Errorf("%s is %v, %v, and printed as %s", what, n, err, printed)
		}
	}
	for _, row := range rows[1:] {
		a := angle(t, row[0]+" deg")
		agrees("sin "+row[0], row[1], a.Sin())
		twice, err := a.MulInt(2)
		if err != nil {
			t.Fatal(err)
		}
		agrees("sin of half", row[1], twice.SinHalf())
		over, err := angle(t, "90 deg").Sub(a)
		if err != nil {
			t.Fatal(err)
		}
		agrees("cos", row[1], over.Cos())
		if row[2] != "" {
			tan, err := a.Tan()
			if err != nil {
				t.Fatal(err)
			}
			agrees("tan "+row[0], row[2], tan)
			half, err := twice.TanHalf()
			if err != nil {
				t.Fatal(err)
			}
			agrees("tan of half", row[2], half)
		}
	}
}

func someAngle(r *rand.Rand) units.Angle {
	n := units.RatioOf(r.Int64N(401)-200, 1+r.Int64N(60))
	switch r.IntN(4) {
	case 0:
		return units.Turns(n.Quo(units.RatioOf(1+r.Int64N(100), 1)))
	case 1:
		return units.Radians(n.Quo(units.RatioOf(10, 1)))
	}
	a, err := units.Turns(units.RatioOf(r.Int64N(17)-8, 4)).Add(units.Slope(n))
	if err != nil {
		panic(err)
	}
	return a
}

// inFloat is a in radians by a slower way.
func inFloat(t *testing.T, a units.Angle) *big.Float {
	t.Helper()
	f := func() *big.Float { return new(big.Float).SetPrec(slowPrec) }
	text, part := a.String(), func(s string) *big.Float {
		n, err := units.ParseRatio(s)
		if err != nil {
			t.Fatal(err)
		}
		return f().SetRat(n.Rat())
	}
	if rad, ok := strings.CutSuffix(text, " rad"); ok {
		return part(rad)
	}
	sum := f()
	head, tail, ok := strings.Cut(text, "slope ")
	if !ok {
		head = text
	}
	if deg, _, ok := strings.Cut(head, " deg"); ok {
		sum.Quo(sum.Mul(part(deg), bigPi(slowPrec)), f().SetInt64(180))
	}
	if ok {
		arc := slowArc(part(tail))
		if strings.HasSuffix(strings.TrimSpace(head), "-") {
			arc.Neg(arc)
		}
		sum.Add(sum, arc)
	}
	return sum
}

// TestAngleOracle compares angles at random with a slower computation at ten times the
// precision.
func TestAngleOracle(t *testing.T) {
	r := seeded(41)
	f := func() *big.Float { return new(big.Float).SetPrec(slowPrec) }
	right := f().Quo(bigPi(slowPrec), f().SetInt64(2))
	for range 300 {
		a := someAngle(r)
		x := inFloat(t, a)
		half := f().Quo(x, f().SetInt64(2))
		cos := slowSine(f().Add(x, right))
		encloses(t, a.String(), a.InRadians(), x)
		encloses(t, a.String()+" in degrees", a.InDegrees(), f().Quo(f().Mul(x, f().SetInt64(90)), right))
		encloses(t, a.String()+" in turns", a.InTurns(), f().Quo(x, f().Mul(right, f().SetInt64(4))))
		encloses(t, "the sine of "+a.String(), a.Sin(), slowSine(x))
		encloses(t, "the cosine of "+a.String(), a.Cos(), cos)
		sinHalf, cosHalf := slowSine(half), slowSine(f().Add(half, right))
		encloses(t, "the sine of half of "+a.String(), a.SinHalf(), sinHalf)
		encloses(t, "the cosine of half of "+a.String(), a.CosHalf(), cosHalf)
		for _, c := range []struct {
			what string
			n    func() (units.NearRatio, error)
			s, c *big.Float
		}{{"the tangent of ", a.Tan, slowSine(x), cos}, {"the tangent of half of ", a.TanHalf, sinHalf, cosHalf}} {
			n, err := c.n()
			if errors.Is(err, units.ErrDomain) && c.c.MantExp(nil) < -500 {
				continue
			}
			if err != nil {
				t.Fatal(c.what, a, err)
			}
			encloses(t, c.what+a.String(), n, f().Quo(c.s, c.c))
		}
		for what, n := range map[string]units.NearRatio{"sin": a.Sin(), "cos": a.Cos(), "sin half": a.SinHalf(), "cos half": a.CosHalf()} {
			if units.RatioOf(1, 1e9).Less(n.Within()) {
				t.Errorf("%s of %v is known within %v", what, a, n.Within())
			}
		}
		b := someAngle(r)
		if c, err := a.Cmp(b); err != nil || c != x.Cmp(inFloat(t, b)) {
			t.Fatalf("%v against %v is %d, %v", a, b, c, err)
		}
		if a.Sign() != x.Sign() {
			t.Fatalf("the sign of %v is %d", a, a.Sign())
		}
		if a.Neg().Neg() != a {
			t.Fatal(a)
		}
		if s, err := a.Add(b); err == nil {
			encloses(t, a.String()+" and "+b.String(), s.InRadians(), x.Add(x, inFloat(t, b)))
		} else if !errors.Is(err, units.NoSum) {
			t.Fatal(err)
		}
	}
}

// TestAngleExact: what is rational is exact.
func TestAngleExact(t *testing.T) {
	exact := func(what string, n units.NearRatio, err error, want string) {
		t.Helper()
		if r, ok := n.Exact(); !ok || err != nil || r.String() != want {
			t.Errorf("%s is %v, %v, want %s", what, n, err, want)
		}
	}
	for _, c := range []struct{ angle, sin, cos, tan, sinHalf, cosHalf, tanHalf string }{
		{"0 deg", "0", "1", "0", "0", "1", "0"},
		{"30 deg", "1/2", "", "", "", "", ""},
		{"60 deg", "", "1/2", "", "1/2", "", ""},
		{"45 deg", "", "", "1", "", "", ""},
		{"135 deg", "", "", "-1", "", "", ""},
		{"90 deg", "1", "0", "none", "", "", "1"},
		{"180 deg", "0", "-1", "0", "1", "0", "none"},
		{"-5/4 turn", "-1", "0", "none", "", "", "-1"},
		{"3:4", "3/5", "4/5", "3/4", "", "", "1/3"},
		{"90 deg + slope 3/4", "4/5", "-3/5", "-1 1/3", "", "", "2"},
		{"180 deg + slope 3/4", "-3/5", "-4/5", "3/4", "", "", "-3"},
		{"270 deg + slope 3/4", "-4/5", "3/5", "-1 1/3", "", "", "-1/2"},
		{"slope 24/7", "24/25", "7/25", "3 3/7", "3/5", "4/5", "3/4"},
		{"360 deg + slope 24/7", "24/25", "7/25", "3 3/7", "-3/5", "-4/5", "3/4"},
		{"180 deg + slope 24/7", "-24/25", "-7/25", "3 3/7", "4/5", "-3/5", "-1 1/3"},
		{"-slope 24/7", "-24/25", "7/25", "-3 3/7", "-3/5", "4/5", "-3/4"},
	} {
		a := angle(t, c.angle)
		for _, f := range []struct {
			what, want string
			n          func() (units.NearRatio, error)
		}{
			{"sin", c.sin, none(a.Sin)}, {"cos", c.cos, none(a.Cos)}, {"tan", c.tan, a.Tan},
			{"sin half", c.sinHalf, none(a.SinHalf)}, {"cos half", c.cosHalf, none(a.CosHalf)}, {"tan half", c.tanHalf, a.TanHalf},
		} {
			n, err := f.n()
			_, ok := n.Exact()
			switch {
			case f.want == "none":
				if !errors.Is(err, units.ErrDomain) {
					t.Errorf("%s of %s is %v, %v", f.what, c.angle, n, err)
				}
			case f.want != "":
				exact(f.what+" of "+c.angle, n, err, f.want)
			case ok || err != nil:
				t.Errorf("%s of %s is %v, %v", f.what, c.angle, n, err)
			}
		}
	}
	inDegrees := angle(t, "51 3/7 deg").InDegrees()
	exact("51 3/7 deg", inDegrees, nil, "51 3/7")
	exact("1/8 turn", angle(t, "45 deg").InTurns(), nil, "1/8")
	exact("1/2 rad", angle(t, "1/2 rad").InRadians(), nil, "1/2")
	if l, ok := angle(t, "1/2 rad").Arc(units.Inch.Of(3)).Exact(); !ok || l != units.Inch.Frac(3, 2) {
		t.Error(l)
	}
	if c, err := angle(t, "360 deg").Arc(units.Inch.Of(3)).Cmp(units.Circle(units.Inch.Of(6))); c != 0 || err != nil {
		t.Error(c, err)
	}
	if c, err := angle(t, "60 deg").Sin().Cmp(rootOf(t, units.RatioOf(3, 4))); c != 0 || err != nil {
		t.Error(c, err)
	}
}

func none(f func() units.NearRatio) func() (units.NearRatio, error) {
	return func() (units.NearRatio, error) { return f(), nil }
}

// TestAngleLong: angles of thousands of digits end, and are enclosed.
func TestAngleLong(t *testing.T) {
	long := units.FromRat(new(big.Rat).SetFrac(new(big.Int).Lsh(big.NewInt(1), 70_000), big.NewInt(3)))
	one := units.RatioOf(1, 1)
	for what, a := range map[string]units.Angle{"turns": units.Turns(long), "radians": units.Radians(long), "slope": units.Slope(long), "flat": units.Slope(one.Quo(long))} {
		for _, n := range []units.NearRatio{a.Sin(), a.Cos(), a.SinHalf(), a.CosHalf()} {
			if lo, hi := n.Bounds(); lo.Less(one.Neg()) || one.Less(hi) || hi.Less(lo) {
				t.Errorf("%s: between %.60s and %.60s", what, lo.String(), hi.String())
			}
		}
		if _, err := a.Tan(); err != nil && !errors.Is(err, units.ErrBound) {
			t.Error(what, err)
		}
		if _, err := a.TanHalf(); err != nil && !errors.Is(err, units.ErrBound) {
			t.Error(what, err)
		}
		if _, err := a.MarshalText(); err == nil {
			t.Error(what, "is written")
		}
		lo, hi := a.InRadians().Bounds()
		if lo.Sign() < 0 || hi.Less(lo) {
			t.Errorf("%s: between %.60s and %.60s", what, lo.String(), hi.String())
		}
		if c, err := a.Cmp(units.Angle{}); c != 1 || err != nil {
			t.Error(what, c, err)
		}
	}
}

func TestAngleRefused(t *testing.T) {
	const needs = "deg, turn, slope or rad, as an angle needs one of them"
	for text, want := range map[string]string{
		"45":                               needs,
		"45 ":                              needs,
		"45 furlongs":                      needs,
		"-1/4":                             needs,
		"":                                 "a number",
		"fred":                             "a number",
		"slope":                            "a number",
		"slope deg":                        "a number",
		"slope 1/4 deg":                    "the end, : or in",
		"3:0":                              "a number other than zero",
		"3 in 0/4":                         "a number other than zero",
		"3:":                               "a number",
		"3 in":                             "a number",
		"3:12 deg":                         "the end",
		"3:12 + slope 1/4":                 "the end",
		"3 in : 12 in":                     "a number",
		"45 deg 1/2":                       "the end",
		"45 deg +":                         "slope",
		"90 deg + 45 deg":                  "slope",
		"90 deg + 3:4":                     "slope",
		"30 deg + slope 1/4":               "a slope after quarter turns only, of which there are not too many",
		"99999999999999 turns + slope 1/4": "a slope after quarter turns only, of which there are not too many",
		"1/2 rad + slope 1/4":              "the end",
		"1/2 rad + 1/2 rad":                "the end",
		"1/0 deg":                          "a denominator other than zero",
		strings.Repeat("1", units.MaxText) + " deg": "at most 1024 bytes",
	} {
		before := units.Slope(units.RatioOf(1, 4))
		a := before
		err := a.UnmarshalText([]byte(text))
		var pe *units.ParseError
		if !errors.As(err, &pe) || pe.Want != want || a != before {
			t.Errorf("%q is %v, %v; want %q", text, a, err, want)
		}
	}
	if _, err := units.ParseAngle("45"); err == nil || err.Error() != `units: "45" at byte 2: found the end, want deg, turn, slope or rad, as an angle needs one of them` {
		t.Error(err)
	}
}

func TestAngleText(t *testing.T) {
	for text, want := range map[string]string{
		"45 deg": "45 deg", "51 3/7 deg": "51 3/7 deg", "51 3/7°": "51 3/7 deg", "-45 degrees": "-45 deg", "1/8 turn": "45 deg", "2 turns": "720 deg", "45-degree": "45 deg",
		"slope 1/4": "slope 1/4", "3:12": "slope 1/4", "3 in 12": "slope 1/4", "1 1/2 : 6": "slope 1/4", "\u22123 in 12": "-slope 1/4",
		"90 deg + slope 1/4": "90 deg + slope 1/4", "1/4 turn+slope 1/4": "90 deg + slope 1/4", "90°-slope 1/4": "slope 4",
		"-90 deg - slope 1/4": "-90 deg - slope 1/4", "-90 deg + slope 1/4": "-slope 4", "45 deg + slope 1/4": "slope 1 2/3",
		"1/2 rad": "1/2 rad", "0.5 radians": "1/2 rad", "-1 radian": "-1 rad", " 30 deg ": "30 deg", "½ turn": "180 deg", "100 in 1": "slope 100",
	} {
		a := angle(t, text)
		if a.String() != want || angle(t, a.String()) != a {
			t.Errorf("%q is %v, want %s", text, a, want)
		}
	}
	a := angle(t, "90 deg + slope 1/4")
	if got := fmt.Sprintf("%v|%22s|%q|%d", a, a, a, a); got != `90 deg + slope 1/4|    90 deg + slope 1/4|"90 deg + slope 1/4"|%!d(units.Angle=90 deg + slope 1/4)` {
		t.Error(got)
	}
	r := seeded(42)
	for range 2000 {
		a := someAngle(r)
		text, err := json.Marshal(map[string]units.Angle{"a": a})
		if err != nil {
			t.Fatal(err)
		}
		var back map[string]units.Angle
		if err := json.Unmarshal(text, &back); err != nil || back["a"] != a {
			t.Fatalf("%s is read as %v, %v", text, back, err)
		}
	}
}

func TestAngleZero(t *testing.T) {
	var a units.Angle
	for what, n := range map[string]units.NearRatio{"sin": a.Sin(), "sin half": a.SinHalf(), "radians": a.InRadians(), "degrees": a.InDegrees(), "turns": a.InTurns()} {
		if !n.IsZero() {
			t.Errorf("%s of nothing is %v", what, n)
		}
	}
	sum, err := a.Add(a)
	if a.String() != "0 deg" || !a.IsZero() || a.Sign() != 0 || a.Neg() != a || sum != a || err != nil || !a.Arc(units.Inch.Of(1)).IsZero() || a.Cos() != whole(1) || a.CosHalf() != whole(1) {
		t.Error(a, sum, err)
	}
	if n, err := a.MulInt(-3); n != a || err != nil {
		t.Error(n, err)
	}
	text, err := json.Marshal(struct {
		A units.Angle `json:"a,omitzero"`
	}{})
	if string(text) != "{}" || err != nil {
		t.Errorf("%s, %v", text, err)
	}
}

// FuzzAngleText: a text is refused with its place, or is an angle that is written and read
// back, whose negative and sum with itself are what they should be.
func FuzzAngleText(f *testing.F) {
	for _, s := range []string{"45 deg", "45°", "51 3/7 deg", "1/8 turn", "3:12", "3 in 12", "slope 1/4", "-slope 1/4", "90 deg + slope 1/4", "-90 deg - slope 4", "1/2 rad", "45", "", "slope 0/1", "96636764070 deg + slope 2"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		a, err := units.ParseAngle(s)
		if err != nil {
			var pe *units.ParseError
			if !errors.As(err, &pe) || pe.Offset < 0 || pe.Offset > max(len(s), units.MaxText) {
				t.Fatalf("%q: %v", s, err)
			}
			return
		}
		if text, err := a.MarshalText(); err == nil {
			if back, err := units.ParseAngle(string(text)); err != nil || back != a {
				t.Fatalf("%q is written %s and read as %v, %v", s, text, back, err)
			}
		} else if len(s) < units.MaxText/8 {
			t.Fatalf("%q: %v", s, err)
		}
		if a.Neg().Neg() != a || a.Neg().Sign() != -a.Sign() {
			t.Fatalf("%q: %v", s, a.Neg())
		}
		none, err := a.Sub(a)
		if err != nil || !none.IsZero() {
			t.Fatalf("%q less itself is %v, %v", s, none, err)
		}
		twice, err := a.Add(a)
		if again, e := a.MulInt(2); err == nil && e == nil && again != twice {
			t.Fatalf("%q twice is %v and %v", s, twice, again)
		}
		sin, cos := a.Sin(), a.Cos()
		if lo, hi := sin.Mul(sin).Add(cos.Mul(cos)).Bounds(); units.RatioOf(1, 1).Less(lo) || hi.Less(units.RatioOf(1, 1)) {
			t.Fatalf("%q: the squares come to between %v and %v", s, lo, hi)
		}
	})
}

// A gore of a page's circular cape spreads by 30 degrees at a radius of 24 in.
func ExampleAngle() {
	gore := units.Degrees(units.RatioOf(30, 1))
	hem := gore.Arc(units.Inch.Of(24))
	mark, _, err := hem.Round(units.Inch.Frac(1, 16), units.HalfAway)
	fmt.Println("hem", mark, err)
	across := gore.SinHalf().Of(units.Inch.Of(48))
	mark, _, err = across.Round(units.Inch.Frac(1, 16), units.HalfAway)
	fmt.Println("straight across", mark, err)
	fmt.Println(gore.Sin())
	// Output:
	// hem 12 9/16 in <nil>
	// straight across 12 7/16 in <nil>
	// 1/2
}

// A side seam leans 3 in for each foot, and meets a dart of half its slope.
func ExampleParseAngle() {
	lean, err := units.ParseAngle("3 in 12")
	fmt.Println(lean, err)
	both, err := lean.Add(units.Slope(units.RatioOf(1, 8)))
	fmt.Println(both, err)
	_, err = units.ParseAngle("15")
	fmt.Println(err)
	// Output:
	// slope 1/4 <nil>
	// slope 12/31 <nil>
	// units: "15" at byte 2: found the end, want deg, turn, slope or rad, as an angle needs one of them
}
