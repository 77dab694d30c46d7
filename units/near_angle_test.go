package units_test

import (
	"errors"
	"fmt"
	"math/big"
	"testing"

	"example.com/clothyard/units"
)

// Fifty published decimals each, from memory; TestAngleSeries works them out anew
// by other ways.
var digits = []struct {
	name   string
	n      func() (units.NearRatio, error)
	digits string
}{
	{"sin 1", whole(1).Sin, "0.84147098480789650665250232163029899962256306079837"},
	{"cos 1", whole(1).Cos, "0.54030230586813971740093660744297660373231042061792"},
	{"tan 1", whole(1).Tan, "1.55740772465490223050697480745836017308725077238152"},
	{"atan 1/2", units.ExactlyRatio(units.RatioOf(1, 2)).Atan, "0.46364760900080611621425623146121440202853705428612"},
	{"sin 10 degrees", degrees(10).Sin, "0.17364817766693034885171662676931479600037567718407"},
	{"root 2", func() (units.NearRatio, error) { return units.Diagonal(), nil }, "1.41421356237309504880168872420969807856967187537694"},
	{"root 3", func() (units.NearRatio, error) { return units.SqrtRatio(units.RatioOf(3, 1)) }, "1.73205080756887729352744634150587236694280525381038"},
	{"pi", func() (units.NearRatio, error) { return units.Pi(), nil }, piDigits[:52]},
}

func whole(n int64) units.NearRatio   { return units.ExactlyRatio(units.RatioOf(n, 1)) }
func degrees(n int64) units.NearRatio { return units.Degrees(units.RatioOf(n, 1)).InRadians() }

func TestPublishedDigits(t *testing.T) {
	last := new(big.Rat).SetFrac(big.NewInt(1), power10(50))
	for _, c := range digits {
		n, err := c.n()
		if err != nil {
			t.Fatal(c.name, err)
		}
		want := bigRat(c.digits)
		lo, hi := n.Bounds()
		if lo.Rat().Cmp(want) > 0 || hi.Rat().Cmp(want) < 0 || units.RatioOf(1, 1e9).Less(n.Within()) {
			t.Errorf("%s is between %v and %v", c.name, lo, hi)
		}
		fine, err := n.Refine(units.FromRat(new(big.Rat).SetFrac(big.NewInt(1), power10(60))))
		if err != nil {
			t.Fatal(c.name, err)
		}
		mid := fine.Mid().Rat()
		if d := mid.Sub(mid, want); d.Abs(d).Cmp(last) > 0 {
			t.Errorf("%s is %s", c.name, fine.Mid().Rat().FloatString(52))
		}
	}
}

// slowSine works by thirds of the angle, from one so small that it is its own
// sine; it shares nothing with the series of the package.
func slowSine(x *big.Float) *big.Float {
	f := func() *big.Float { return new(big.Float).SetPrec(slowPrec) }
	three, four := f().SetInt64(3), f().SetInt64(4)
	s, thirds := f().Set(x), 0
	for s.Sign() != 0 && s.MantExp(nil) > -slowPrec/4 {
		s.Quo(s, three)
		thirds++
	}
	// x - x x x / 6 is near enough for what is left.
	cube := f().Mul(s, s)
	cube.Mul(cube, s)
	s.Sub(s, cube.Quo(cube, f().SetInt64(6)))
	for range thirds {
		cube := f().Mul(s, s)
		cube.Mul(cube, s)
		s.Sub(f().Mul(three, s), f().Mul(four, cube))
	}
	return s
}

// slowArc is the arc tangent by Archimedes' polygons, the means of a sector and
// its tangents.
func slowArc(x *big.Float) *big.Float {
	f := func() *big.Float { return new(big.Float).SetPrec(slowPrec) }
	one, two := f().SetInt64(1), f().SetInt64(2)
	leg := f().Mul(x, x)
	leg.Sqrt(leg.Add(leg, one))
	a, g := f().Quo(one, leg), f().Set(one)
	for range slowPrec / 2 {
		a = f().Quo(f().Add(a, g), two)
		g = f().Sqrt(f().Mul(a, g))
	}
	return f().Quo(x, f().Mul(leg, a))
}

const slowPrec = 1200

// encloses fails where a truth, known to some 250 decimals, lies outside.
func encloses(t *testing.T, what string, n units.NearRatio, truth *big.Float) {
	t.Helper()
	lo, hi := n.Bounds()
	slack := new(big.Rat).SetFrac(big.NewInt(1), power10(200))
	low, high := lo.Rat(), hi.Rat()
	r, _ := truth.Rat(nil)
	if low.Sub(low, slack).Cmp(r) > 0 || high.Add(high, slack).Cmp(r) < 0 {
		t.Fatalf("%s: %s is not between %v and %v", what, truth.Text('g', 30), lo, hi)
	}
}

// TestAngleSeries compares angles at random, small and great, with slower ways at
// ten times the precision.
func TestAngleSeries(t *testing.T) {
	r := seeded(31)
	f := func() *big.Float { return new(big.Float).SetPrec(slowPrec) }
	right := f().Quo(bigPi(slowPrec), f().SetInt64(2))
	for i := range 60 {
		v := big.NewRat(r.Int64N(2_000_001)-1_000_000, 1+r.Int64N(1_000_000))
		switch i % 6 {
		case 0: // many turns
			v.Mul(v, new(big.Rat).SetInt(power10(r.Int64N(30))))
		case 1: // next to nothing
			v.Quo(v, new(big.Rat).SetInt(power10(r.Int64N(30))))
		}
		n := units.ExactlyRatio(units.FromRat(v))
		x := f().SetRat(v)
		within := units.FromRat(new(big.Rat).SetFrac(big.NewInt(1), power10(r.Int64N(100))))
		for _, c := range []struct {
			what  string
			f     func() (units.NearRatio, error)
			truth *big.Float
		}{
			{"sine", n.Sin, slowSine(x)},
			{"cosine", n.Cos, slowSine(f().Add(x, right))},
			{"tangent", n.Tan, f().Quo(slowSine(x), slowSine(f().Add(x, right)))},
			{"arc tangent", n.Atan, slowArc(x)},
		} {
			what := fmt.Sprintf("%s of %v", c.what, v)
			got, err := c.f()
			if err != nil {
				t.Fatal(what, err)
			}
			encloses(t, what, got, c.truth)
			if units.RatioOf(1, 1e9).Less(got.Within()) {
				t.Fatalf("%s within %v", what, got.Within())
			}
			fine, err := got.Refine(within)
			if err != nil || within.Less(fine.Within()) {
				t.Fatal(what, fine, err)
			}
			encloses(t, what, fine, c.truth)
		}
	}
}

// Angles of which the sine is a plain number or a root are known so.
func TestAngleExactly(t *testing.T) {
	root := func(n, d int64) units.NearRatio {
		v, err := units.SqrtRatio(units.RatioOf(n, d))
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	zero, half, one := units.NearRatio{}, units.ExactlyRatio(units.RatioOf(1, 2)), whole(1)
	sines := map[int64]units.NearRatio{0: zero, 30: half, 45: root(1, 2), 60: root(3, 4), 90: one, 120: root(3, 4), 135: root(1, 2), 150: half}
	for d := int64(-720); d <= 720; d += 15 {
		// 15 degrees themselves are no single root.
		want, ok := sines[((d%180)+180)%180]
		if !ok {
			continue
		}
		if ((d%360)+360)%360 >= 180 {
			want = want.Neg()
		}
		s, err := degrees(d).Sin()
		if c, e := s.Cmp(want); c != 0 || err != nil || e != nil {
			t.Errorf("the sine of %d degrees is %v, %v", d, s, err)
		}
		s, err = degrees(d - 90).Cos()
		if c, e := s.Cmp(want); c != 0 || err != nil || e != nil {
			t.Errorf("the cosine of %d degrees is %v, %v", d-90, s, err)
		}
	}
	for d, want := range map[int64]units.NearRatio{0: zero, 30: root(1, 3), 45: one, 60: root(3, 1), -45: one.Neg(), 135: one.Neg(), 225: one, -60: root(3, 1).Neg()} {
		n, err := degrees(d).Tan()
		if c, e := n.Cmp(want); c != 0 || err != nil || e != nil {
			t.Errorf("the tangent of %d degrees is %v, %v", d, n, err)
		}
		if d > -90 && d < 90 {
			a, err := want.Atan()
			if c, e := a.Cmp(degrees(d)); c != 0 || err != nil || e != nil {
				t.Errorf("the arc tangent of %v is %v degrees, %v", want, a.InDegrees(), err)
			}
		}
	}
	for d, s := range map[int64]units.NearRatio{0: zero, 30: half, 45: root(1, 2), 60: root(3, 4), 90: one, -90: one.Neg(), -30: half.Neg(), -45: root(1, 2).Neg()} {
		a, err := s.Asin()
		if c, e := a.Cmp(degrees(d)); c != 0 || err != nil || e != nil {
			t.Errorf("the arc sine of %v is %v degrees, %v", s, a.InDegrees(), err)
		}
	}
	// The others are equal where they mirror each other.
	for _, c := range [][2]func() (units.NearRatio, error){
		{degrees(10).Sin, degrees(170).Sin},
		{degrees(10).Sin, degrees(80).Cos},
		{degrees(200).Sin, func() (units.NearRatio, error) { n, err := degrees(20).Sin(); return n.Neg(), err }},
		{whole(2).Cos, whole(-2).Cos},
		{whole(-2).Sin, func() (units.NearRatio, error) { n, err := whole(2).Sin(); return n.Neg(), err }},
		{third(t).Neg().Sin, func() (units.NearRatio, error) { n, err := third(t).Sin(); return n.Neg(), err }},
		{third(t).Neg().Cos, third(t).Cos},
		{whole(-2).Atan, func() (units.NearRatio, error) { n, err := whole(2).Atan(); return n.Neg(), err }},
	} {
		a, err := c[0]()
		b, err2 := c[1]()
		if d, e := a.Cmp(b); d != 0 || err != nil || err2 != nil || e != nil {
			t.Errorf("%v against %v: %d, %v", a, b, d, e)
		}
	}
	if r, ok := degrees(77).InDegrees().Exact(); !ok || r != units.RatioOf(77, 1) {
		t.Errorf("77 degrees are %v", r)
	}
}

// third is the angle of a slope of 1 in 3.
func third(t *testing.T) units.NearRatio {
	t.Helper()
	n, err := units.ExactlyRatio(units.RatioOf(1, 3)).Atan()
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// An angle may be irrational, or known by its bounds only.
func TestAngleOfAngles(t *testing.T) {
	third := third(t)
	back, err := third.Tan()
	if err != nil {
		t.Fatal(err)
	}
	if lo, hi := back.Bounds(); lo.Cmp(units.RatioOf(1, 3)) > 0 || hi.Cmp(units.RatioOf(1, 3)) < 0 || units.RatioOf(1, 1e9).Less(back.Within()) {
		t.Errorf("the tangent of the arc tangent of 1/3 is %v", back)
	}
	fine, err := back.Refine(units.RatioOf(1, 1e18))
	if err != nil || units.RatioOf(1, 1e18).Less(fine.Within()) {
		t.Error(fine, err)
	}
	cos, err := third.Neg().Cos()
	if err != nil {
		t.Fatal(err)
	}
	// The square of the cosine is 1 / (1 + 1/9).
	if lo, hi := cos.Mul(cos).Bounds(); lo.Cmp(units.RatioOf(9, 10)) > 0 || hi.Cmp(units.RatioOf(9, 10)) < 0 {
		t.Errorf("the square of %v", cos)
	}
	a, err := cos.Asin()
	if err != nil {
		t.Fatal(err)
	}
	// An angle and that of its cosine make a right angle.
	if lo, hi := a.Add(third).InDegrees().Bounds(); lo.Cmp(units.RatioOf(90, 1)) > 0 || hi.Cmp(units.RatioOf(90, 1)) < 0 || units.RatioOf(1, 1e6).Less(hi.Sub(lo)) {
		t.Errorf("%v and %v", a, third)
	}
	// Next to a right angle, of which the cosine is told from zero at many places only.
	little := units.ExactlyRatio(units.RatioOf(1, 1e12))
	if cos, err = little.Cos(); err != nil {
		t.Fatal(err)
	}
	if a, err = cos.Asin(); err != nil {
		t.Fatal(err)
	}
	if a, err = a.Refine(units.RatioOf(1, 1e15)); err != nil {
		t.Fatal(err)
	}
	if lo, hi := a.Add(little).InDegrees().Bounds(); lo.Cmp(units.RatioOf(90, 1)) > 0 || hi.Cmp(units.RatioOf(90, 1)) < 0 {
		t.Errorf("the arc sine of the cosine of %v is %v", little, a)
	}
	steep := units.Diagonal().Plus(units.RatioOf(-5, 1))
	if a, err = steep.Atan(); err != nil {
		t.Fatal(err)
	}
	encloses(t, "a steep slope down", a, slowArc(steepFloat()))
	read, err := units.ParseNearRatio("0.5 +- 0.1")
	if err != nil {
		t.Fatal(err)
	}
	for what, c := range map[string]struct {
		f      func() (units.NearRatio, error)
		lo, hi string
	}{
		"sine":        {read.Sin, "0.379425538604203", "0.579425538604204"},
		"cosine":      {read.Cos, "0.777582561890372", "0.977582561890373"},
		"tangent":     {read.Tan, "0.4", "0.8"},
		"arc tangent": {read.Atan, "0.380506377112365", "0.540419500270584"},
		"arc sine":    {read.Asin, "0.411516846067488", "0.643501108793285"},
		"near 1":      {func() (units.NearRatio, error) { return read.Plus(units.RatioOf(1, 1)).Sin() }, "0.89", "1"},
	} {
		n, err := c.f()
		lo, hi := n.Bounds()
		rough := units.RatioOf(1, 10)
		if err != nil || lo.Rat().Cmp(bigRat(c.lo)) > 0 && what != "tangent" && what != "near 1" || hi.Rat().Cmp(bigRat(c.hi)) < 0 && what != "tangent" ||
			lo.Add(rough).Rat().Cmp(bigRat(c.lo)) < 0 || hi.Sub(rough).Rat().Cmp(bigRat(c.hi)) > 0 {
			t.Errorf("the %s of %v is %v, %v", what, read, n, err)
		}
		if _, err := n.Refine(units.RatioOf(1, 1e6)); !errors.Is(err, units.ErrBound) {
			t.Errorf("the %s of %v is refined: %v", what, read, err)
		}
	}
	if n, _ := read.Plus(units.RatioOf(1, 1)).Sin(); units.RatioOf(1, 1).Less(n.Mid().Add(n.Within())) {
		t.Errorf("a sine greater than 1: %v", n)
	}
}

func TestAngleFaults(t *testing.T) {
	huge := units.ExactlyRatio(units.FromRat(new(big.Rat).SetInt(power10(2000))))
	long := units.ExactlyRatio(units.FromRat(new(big.Rat).SetInt(new(big.Int).Lsh(big.NewInt(1), 1<<18))))
	wide, err := units.ParseNearRatio("1 +- 1/2")
	if err != nil {
		t.Fatal(err)
	}
	low, err := units.ParseNearRatio("-1 +- 1/2")
	if err != nil {
		t.Fatal(err)
	}
	about, err := units.ParseNearRatio("0 +- 1/2")
	if err != nil {
		t.Fatal(err)
	}
	around, err := units.ParseNearRatio("1.6 +- 0.1")
	if err != nil {
		t.Fatal(err)
	}
	most, err := units.SqrtRatio(units.RatioOf(2, 1))
	if err != nil {
		t.Fatal(err)
	}
	sin1, err := whole(1).Sin()
	if err != nil {
		t.Fatal(err)
	}
	over := sin1.Add(sin1).Sub(sin1).Plus(units.RatioOf(1, 2))
	undecided := sin1.Mul(sin1.Add(units.Pi())).Sub(sin1.Mul(sin1)).Sub(sin1.Mul(units.Pi())).Plus(units.RatioOf(1, 1))
	for _, c := range []struct {
		why string
		f   func() (units.NearRatio, error)
		err error
	}{
		{"too many turns", huge.Sin, units.ErrBound},
		{"too many turns", huge.Cos, units.ErrBound},
		{"too many turns", huge.Tan, units.ErrBound},
		{"too long", long.Sin, units.ErrBound},
		{"too long", long.Atan, units.ErrBound},
		{"a right angle", degrees(90).Tan, units.ErrDomain},
		{"three right angles back", degrees(-270).Tan, units.ErrDomain},
		{"may be a right angle", around.Tan, units.ErrBound},
		{"beyond 1", whole(2).Asin, units.ErrDomain},
		{"beyond 1", whole(-2).Asin, units.ErrDomain},
		{"beyond 1", most.Asin, units.ErrDomain},
		{"beyond 1", over.Asin, units.ErrDomain},
		{"its upper end beyond 1", wide.Asin, units.ErrDomain},
		{"its lower end beyond 1", low.Asin, units.ErrDomain},
		{"1, in a way that is not seen", undecided.Asin, units.ErrBound},
		{"one over what may be nothing", func() (units.NearRatio, error) { return whole(1).Quo(about) }, units.ErrBound},
	} {
		if n, err := c.f(); !errors.Is(err, c.err) || !n.IsZero() {
			t.Errorf("%s: %v, %v", c.why, n, err)
		}
	}
	// Angles of angles are followed for a while; then only their bounds are known.
	deep := whole(1)
	for range 24 {
		if deep, err = deep.Sin(); err != nil {
			t.Fatal(err)
		}
	}
	fine := units.FromRat(new(big.Rat).SetFrac(big.NewInt(1), power10(100)))
	if n, err := deep.Refine(fine); err != nil || fine.Less(n.Within()) {
		t.Error(n, err)
	}
	if n, err := deep.Sin(); !errors.Is(err, units.ErrBound) || !n.IsZero() {
		t.Error(n, err)
	}
	arc, err := deep.Asin()
	if err != nil {
		t.Fatal(err)
	}
	back, err := arc.Sin()
	if lo, hi := back.Bounds(); err != nil || deep.Mid().Less(lo) || hi.Less(deep.Mid()) || units.RatioOf(1, 1e7).Less(back.Within()) {
		t.Errorf("the sine of the arc sine of %v is %v, %v", deep, back, err)
	}
	if _, err := arc.Refine(fine); !errors.Is(err, units.ErrBound) {
		t.Error(err)
	}
	// A big angle is well inside.
	n, err := units.ExactlyRatio(units.FromRat(new(big.Rat).SetInt(power10(600)))).Sin()
	if err != nil || units.RatioOf(1, 1e9).Less(n.Within()) {
		t.Error(n, err)
	}
	a, err := units.ExactlyRatio(units.FromRat(new(big.Rat).SetInt(power10(600)))).Atan()
	if c, e := a.Cmp(degrees(90)); c != -1 || err != nil || e != nil {
		t.Error(a, err, c, e)
	}
}

// The rules of the trade that need an angle, with the figures that are printed.
func TestAngleTrade(t *testing.T) {
	reads := func(what string, n units.NearRatio, places int, want string) {
		t.Helper()
		mark, _, err := n.Round(units.FromRat(new(big.Rat).SetFrac(big.NewInt(1), power10(int64(places)))), units.HalfAway)
		if err != nil || mark.Rat().FloatString(places) != want {
			t.Errorf("%s is %s, %v; want %s", what, mark.Rat().FloatString(places), err, want)
		}
	}
	// A dart of 2 cm at the end of legs of 13 cm: 8.8235 degrees.
	half, err := units.ExactlyRatio(units.RatioOf(1, 13)).Asin()
	if err != nil {
		t.Fatal(err)
	}
	angle := half.Scale(units.RatioOf(2, 1))
	reads("the dart", angle.InDegrees(), 4, "8.8235")
	chord, err := units.Chord(units.Centimetre.Of(13), angle)
	if lo, hi := chord.Bounds(); err != nil || units.Centimetre.Of(2).Less(lo) || hi.Less(units.Centimetre.Of(2)) {
		t.Error(chord, err)
	}
	inches := func(n units.Near) units.NearRatio { return n.Div(units.Inch.Of(1)) }
	reads("the true bias of 54 in", inches(units.Diagonal().Of(units.Inch.Of(54))), 4, "76.3675")
	reads("the side for 46 in of bias", inches(units.Diagonal().Of(units.Inch.Of(46)).DivInt(2)), 4, "32.5269")
	reads("a mitre of 1/4 and 3/4", inches(units.Diagonal().Of(units.Inch.Of(1))), 4, "1.4142")
	hem, err := units.Hypot(units.Inch.Frac(3, 4), units.Inch.Frac(3, 4), units.Length{})
	if err != nil {
		t.Fatal(err)
	}
	reads("its seam", inches(hem), 4, "1.0607")
	reads("a quarter circle of 12 in", inches(units.Arc(units.Inch.Of(12), degrees(90))), 4, "18.8496")
	reads("a spool of 1 in", inches(units.Circle(units.Inch.Of(1))), 7, "3.1415927")
	if c, err := units.Arc(units.Inch.Of(12), degrees(360)).Cmp(units.Circle(units.Inch.Of(24))); c != 0 || err != nil {
		t.Error("a whole turn is no circle", err)
	}
	if _, err := units.Chord(units.Inch.Of(1), units.ExactlyRatio(units.FromRat(new(big.Rat).SetInt(power10(2000))))); !errors.Is(err, units.ErrBound) {
		t.Error(err)
	}
	chord, err = units.Chord(units.Inch.Of(5), degrees(60))
	if l, ok := chord.Exact(); !ok || l != units.Inch.Of(5) || err != nil {
		t.Error("the side of a hexagon is its radius:", chord, err)
	}
}

// steepFloat is root 2 less 5.
func steepFloat() *big.Float {
	two := new(big.Float).SetPrec(slowPrec).SetInt64(2)
	return two.Sub(two.Sqrt(two), new(big.Float).SetInt64(5))
}
