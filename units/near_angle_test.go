package units_test

import (
	"math/big"
	"testing"

	"example.com/clothyard/units"
)

// Fifty published decimals each, from memory; TestAngleOracle works them out again by
// other ways.
var digits = []struct {
	name   string
	n      func() (units.NearRatio, error)
	digits string
}{
	{"sin 1", func() (units.NearRatio, error) { return radian().Sin(), nil }, "0.84147098480789650665250232163029899962256306079837"},
	{"cos 1", func() (units.NearRatio, error) { return radian().Cos(), nil }, "0.54030230586813971740093660744297660373231042061792"},
	{"tan 1", radian().Tan, "1.55740772465490223050697480745836017308725077238152"},
	{"atan 1/2", func() (units.NearRatio, error) { return units.Slope(units.RatioOf(1, 2)).InRadians(), nil }, "0.46364760900080611621425623146121440202853705428612"},
	{"sin 10 degrees", func() (units.NearRatio, error) { return degrees(10).Sin(), nil }, "0.17364817766693034885171662676931479600037567718407"},
	{"root 2", func() (units.NearRatio, error) { return units.Diagonal(), nil }, "1.41421356237309504880168872420969807856967187537694"},
	{"root 3", func() (units.NearRatio, error) { return units.SqrtRatio(units.RatioOf(3, 1)) }, "1.73205080756887729352744634150587236694280525381038"},
	{"pi", func() (units.NearRatio, error) { return units.Pi(), nil }, piDigits[:52]},
}

func whole(n int64) units.NearRatio { return units.ExactlyRatio(units.RatioOf(n, 1)) }
func degrees(n int64) units.Angle   { return units.Degrees(units.RatioOf(n, 1)) }
func radian() units.Angle           { return units.Radians(units.RatioOf(1, 1)) }

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

// The rules of the trade that need an angle, with the figures that are printed.
func TestAngleTrade(t *testing.T) {
	reads := func(what string, n units.NearRatio, places int, want string) {
		t.Helper()
		mark, _, err := n.Round(units.FromRat(new(big.Rat).SetFrac(big.NewInt(1), power10(int64(places)))), units.HalfAway)
		if err != nil || mark.Rat().FloatString(places) != want {
			t.Errorf("%s is %s, %v; want %s", what, mark.Rat().FloatString(places), err, want)
		}
	}
	inches := func(n units.Near) units.NearRatio { return n.Div(units.Inch.Of(1)) }
	// Legs of 13 cm at 8.8235 degrees end 2 cm apart.
	dart := units.Degrees(units.RatioOf(88235, 10000)).SinHalf().Scale(units.RatioOf(26, 1))
	reads("the dart", dart, 4, "2.0000")
	reads("the true bias of 54 in", inches(units.Diagonal().Of(units.Inch.Of(54))), 4, "76.3675")
	reads("the side for 46 in of bias", inches(units.Diagonal().Of(units.Inch.Of(46)).DivInt(2)), 4, "32.5269")
	reads("a mitre of 1/4 and 3/4", inches(units.Diagonal().Of(units.Inch.Of(1))), 4, "1.4142")
	hem, err := units.Hypot(units.Inch.Frac(3, 4), units.Inch.Frac(3, 4), units.Length{})
	if err != nil {
		t.Fatal(err)
	}
	reads("its seam", inches(hem), 4, "1.0607")
	reads("a quarter circle of 12 in", inches(degrees(90).Arc(units.Inch.Of(12))), 4, "18.8496")
	reads("a spool of 1 in", inches(units.Circle(units.Inch.Of(1))), 7, "3.1415927")
	if c, err := degrees(360).Arc(units.Inch.Of(12)).Cmp(units.Circle(units.Inch.Of(24))); c != 0 || err != nil {
		t.Error("a whole turn is no circle", err)
	}
	if l, ok := degrees(60).SinHalf().Of(units.Inch.Of(10)).Exact(); !ok || l != units.Inch.Of(5) {
		t.Error("the side of a hexagon is not its radius:", l)
	}
}
