package units_test

import (
	"encoding"
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"math/big"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/units"
)

func TestString(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"1.625 in", "1 5/8 in"},
		{"127/128 in", "127/128 in"},
		{"1/256 in", "1/256 in"},
		{"15 mm", "15 mm"},
		{"15.0625 mm", "15.0625 mm"},
		{"0.0001 mm", "0.0001 mm"},
		{"-0.005 mm", "-0.005 mm"},
		{"0.00005 mm", "1/508000 in"},
		{"1/3 mm", "5/381 in"},
		{"25.4 mm", "1 in"},
		{"1 yd", "36 in"},
		{"1 L", "0.635 mm"},
		{"-1 5/8 in", "-1 5/8 in"},
		{"1/7 in", "1/7 in"},
		{"0 m", "0 in"},
		{"100000000000000000000 in", "100000000000000000000 in"},
		{"-100000000000000000001/3 in", "-33333333333333333333 2/3 in"},
		{"1/100000000000000000001 in", "1/100000000000000000001 in"},
		{"-100000000000000000000.5 mm", "-100000000000000000000.5 mm"},
		{"100000000000000000000 mm", "100000000000000000000 mm"},
	} {
		l := units.MustParse(c.text)
		if l.String() != c.want {
			t.Errorf("%s is written %s, want %s", c.text, l, c.want)
		}
		if back := units.MustParse(c.want); back != l {
			t.Errorf("%s is read as %v", c.want, back)
		}
	}
	for r, want := range map[units.Ratio]string{units.RatioOf(15, 7): "2 1/7", units.RatioOf(-1, 2): "-1/2", {}: "0", units.RatioOf(6, 2): "3"} {
		if r.String() != want {
			t.Errorf("%v is written %s, want %s", r, r.String(), want)
		}
	}
	inch, mm := units.Inch.Of(1), units.Millimetre.Of(1)
	wide := units.MustParse("100000000000000000000 in")
	for a, want := range map[units.Area]string{
		inch.Times(inch).Scale(units.RatioOf(25, 2)): "12 1/2 sq in", mm.Times(mm): "1 sq mm", {}: "0 sq in", inch.Times(inch).Neg(): "-1 sq in",
		wide.Times(inch): "100000000000000000000 sq in", units.MustParse("100000000000000000000 mm").Times(mm): "100000000000000000000 sq mm",
	} {
		if a.String() != want {
			t.Errorf("%v, want %s", a, want)
		}
	}
}

// text is what every number of the package can do.
type text interface {
	fmt.Stringer
	fmt.Formatter
	encoding.TextMarshaler
	encoding.TextAppender
}

// TestTextRoundTrips sends each kind through each form of text and back.
func TestTextRoundTrips(t *testing.T) {
	r := seeded(12)
	for range *oracleN * 5 {
		v := operand(r)
		l, q, a := lengthOf(v), units.FromRat(v), areaOf(v)
		n, nr := units.Exactly(l), units.ExactlyRatio(q)
		trip(t, l, new(units.Length), units.Parse)
		trip(t, q, new(units.Ratio), units.ParseRatio)
		trip(t, a, new(units.Area), units.ParseArea)
		trip(t, n, new(units.Near), units.ParseNear)
		trip(t, nr, new(units.NearRatio), units.ParseNearRatio)
	}
	for u := range units.Units {
		b, err := u.MarshalText()
		var back units.Unit
		if err != nil || back.UnmarshalText(b) != nil || back != u {
			t.Errorf("%v through %q: %v, %v", u, b, back, err)
		}
	}
	for _, m := range modes {
		b, err := m.MarshalText()
		var back units.Mode
		if err != nil || back.UnmarshalText(b) != nil || back != m {
			t.Errorf("%v through %q: %v, %v", m, b, back, err)
		}
	}
}

func trip[T interface {
	comparable
	text
}, P interface {
	*T
	encoding.TextUnmarshaler
}](t *testing.T, v T, into P, parse func(string) (T, error)) {
	t.Helper()
	s := v.String()
	if back, err := parse(s); err != nil || back != v {
		t.Fatalf("%s is read as %v, %v", s, back, err)
	}
	b, err := v.AppendText([]byte("x"))
	if err != nil || string(b) != "x"+s {
		t.Fatalf("AppendText of %s: %q, %v", s, b, err)
	}
	b, err = v.MarshalText()
	if err != nil || string(b) != s || into.UnmarshalText(b) != nil || *into != v {
		t.Fatalf("MarshalText of %s: %q, %v, read as %v", s, b, err, *into)
	}
	if got := fmt.Sprint(v); got != s {
		t.Fatalf("Sprint of %s: %s", s, got)
	}
	b, err = json.Marshal(map[string]T{"v": v})
	var m map[string]T
	if err != nil || json.Unmarshal(b, &m) != nil || m["v"] != v {
		t.Fatalf("JSON of %s: %s, %v, read as %v", s, b, err, m)
	}
	if into.UnmarshalText([]byte("no measure")) == nil || *into != v {
		t.Fatalf("a fault in text changes the value to %v", *into)
	}
}

// TestTextTooLong: exact text that could not be read back is refused, and what
// stood in the buffer stays.
func TestTextTooLong(t *testing.T) {
	n := new(big.Int).Exp(big.NewInt(10), big.NewInt(units.MaxText+10), nil)
	v := new(big.Rat).SetFrac(n, big.NewInt(7))
	l, q, a := lengthOf(v), units.FromRat(v), areaOf(v)
	pi := units.Pi().Of(l)
	many := units.Pi().Scale(q)
	for _, x := range []text{l, q, a, units.Exactly(l), units.ExactlyRatio(q), pi, many} {
		b, err := x.AppendText([]byte("x"))
		if err == nil || string(b) != "x" {
			t.Errorf("%T: %.20q, %v", x, b, err)
		}
		if b, err := x.MarshalText(); err == nil || len(b) != 0 {
			t.Errorf("%T: %.20q, %v", x, b, err)
		}
		if len(x.String()) < units.MaxText {
			t.Errorf("%T: String shortens", x)
		}
	}
	long := make([]byte, 2*units.MaxText)
	if b, err := units.Inch.Of(1).AppendText(long); err != nil || len(b) != len(long)+len("1 in") {
		t.Error("a long buffer counts as text:", err)
	}
	if _, err := json.Marshal(l); err == nil {
		t.Error("JSON takes what is too long")
	}
}

func TestJSONStruct(t *testing.T) {
	type cut struct {
		Width    units.Length
		Fullness units.Ratio
		Cloth    units.Area
		Round    units.Near
		In       units.Unit
		Mode     units.Mode
		Marks    map[units.Length]string
	}
	in := cut{
		Width: units.MustParse("4 1/2 in"), Fullness: units.RatioOf(5, 2), Cloth: units.Inch.Of(3).Times(units.Inch.Of(2)),
		Round: units.Exactly(units.MustParse("1/7 in")), In: units.Yard, Mode: units.Up, Marks: map[units.Length]string{units.MustParse("15 mm"): "notch"},
	}
	b, err := json.Marshal(in)
	if err != nil {
		t.Fatal(err)
	}
	want := `{"Width":"4 1/2 in","Fullness":"2 1/2","Cloth":"6 sq in","Round":"1/7 in","In":"yd","Mode":"up","Marks":{"15 mm":"notch"}}`
	if string(b) != want {
		t.Errorf("%s\nwant %s", b, want)
	}
	var out cut
	if err := json.Unmarshal(b, &out); err != nil || !reflect.DeepEqual(in, out) {
		t.Errorf("%+v, %v", out, err)
	}
	for _, bad := range []string{`{"Width":4.5}`, `{"Width":"4.5"}`, `{"Width":""}`, `{"Marks":{"15":"notch"}}`, `{"In":"ell"}`, `{"Mode":"UP"}`} {
		if json.Unmarshal([]byte(bad), new(cut)) == nil {
			t.Errorf("%s is taken", bad)
		}
	}
}

func TestFlag(t *testing.T) {
	var l units.Length
	var u units.Unit
	fs := flag.NewFlagSet("cut", flag.ContinueOnError)
	fs.SetOutput(io.Discard)
	fs.TextVar(&l, "seam", units.MustParse("5/8 in"), "seam allowance")
	fs.TextVar(&u, "unit", units.Inch, "unit")
	if l != units.MustParse("5/8 in") || u != units.Inch {
		t.Errorf("defaults %v, %v", l, u)
	}
	if err := fs.Parse([]string{"-seam", "15 mm", "-unit", "cm"}); err != nil || l != units.MustParse("15 mm") || u != units.Centimetre {
		t.Errorf("%v, %v, %v", l, u, err)
	}
	if err := fs.Parse([]string{"-seam", "15"}); err == nil || !strings.Contains(err.Error(), "want a unit") {
		t.Errorf("%v", err)
	}
}

func TestFormatVerbs(t *testing.T) {
	l := units.MustParse("1 5/8 in")
	for _, c := range []struct {
		verb string
		v    any
		want string
	}{
		{"%v", l, "1 5/8 in"}, {"%s", l, "1 5/8 in"}, {"%q", l, `"1 5/8 in"`}, {"%+v", l, "1 5/8 in"}, {"%#v", l, "1 5/8 in"},
		{"%12v|", l, "    1 5/8 in|"}, {"%-12v|", l, "1 5/8 in    |"}, {"%12q|", l, `  "1 5/8 in"|`}, {"%2s|", l, "1 5/8 in|"},
		{"%d", l, "%!d(units.Length=1 5/8 in)"}, {"%x", l, "%!x(units.Length=1 5/8 in)"}, {"%.1f", l, "%!f(units.Length=1 5/8 in)"},
		{"%d", units.RatioOf(1, 2), "%!d(units.Ratio=1/2)"}, {"%-5v|", units.RatioOf(1, 2), "1/2  |"},
		{"%d", l.Times(l), "%!d(units.Area=2 41/64 sq in)"}, {"%q", l.Times(l), `"2 41/64 sq in"`},
		{"%d", units.Exactly(l), "%!d(units.Near=1 5/8 in)"}, {"%10s", units.Exactly(l), "  1 5/8 in"},
		{"%d", units.Pi(), "%!d(units.NearRatio=3.1415926535 +- 0.0000000005)"}, {"%v", units.Pi(), "3.1415926535 +- 0.0000000005"},
		{"%v", units.Inch, "in"}, {"%v", units.NoUnit, "none"}, {"%v", units.Unit(99), "Unit(99)"}, {"%v", units.Up, "up"}, {"%v", units.Mode(99), "Mode(99)"}, {"%v", units.Mode(5), "Mode(5)"},
	} {
		if got := fmt.Sprintf(c.verb, c.v); got != c.want {
			t.Errorf("%s of %s is %s, want %s", c.verb, c.want, got, c.want)
		}
	}
}

func TestKindsOfText(t *testing.T) {
	var u units.Unit
	for text, want := range map[string]units.Unit{
		"": units.NoUnit, "in": units.Inch, `"`: units.Inch, "\u2033": units.Inch, "feet": units.Foot, "'": units.Foot, "yards": units.Yard, "yds": units.Yard,
		"millimeters": units.Millimetre, "centimetre": units.Centimetre, "meter": units.Metre, "ligne": units.Ligne, "L": units.Ligne,
	} {
		if err := u.UnmarshalText([]byte(text)); err != nil || u != want {
			t.Errorf("%q = %v, %v", text, u, err)
		}
	}
	u = units.Yard
	for _, bad := range []string{"ell", "none", "IN", "in ", " in", "in2", "5"} {
		if u.UnmarshalText([]byte(bad)) == nil || u != units.Yard {
			t.Errorf("%q is taken for %v", bad, u)
		}
	}
	if b, err := units.NoUnit.MarshalText(); err != nil || len(b) != 0 {
		t.Error("NoUnit")
	}
	var m units.Mode
	if m.UnmarshalText([]byte("")) == nil || m.UnmarshalText([]byte("nearest")) == nil {
		t.Error("a mode's name")
	}
	for _, bad := range []encoding.TextMarshaler{units.Unit(99), units.Unit(units.Ligne + 1), units.Mode(99), units.Mode(units.ToZero + 1)} {
		if b, err := bad.MarshalText(); err == nil || b != nil {
			t.Errorf("%v is written %q", bad, b)
		}
	}
}
