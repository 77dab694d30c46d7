package units_test

import (
	"errors"
	"runtime"
	"strings"
	"testing"

	"example.com/clothyard/units"
)

// TestParseAmbiguities decides by name each text that can be read two ways.
func TestParseAmbiguities(t *testing.T) {
	in, comma := units.Parser{Bare: units.Inch}, units.Parser{DecimalComma: true}
	eighths := func(n int64) units.Length { return units.Inch.Frac(n, 8) }
	for _, c := range []struct {
		text   string
		parser units.Parser
		want   units.Length
		at     int // byte of the fault, where it is refused
		why    string
	}{
		{"1 5/8 in", units.Parser{}, eighths(13), -1, "a mixed number"},
		{"1-5/8 in", units.Parser{}, eighths(13), -1, "a hyphen joins a mixed number"},
		{`1-5/8"`, units.Parser{}, eighths(13), -1, "the same with a prime"},
		{"1⅝ in", units.Parser{}, eighths(13), -1, "a glyph"},
		{"1 ⅝ in", units.Parser{}, eighths(13), -1, "a glyph set apart"},
		{"1-⅝ in", units.Parser{}, eighths(13), -1, "a glyph after a hyphen"},
		{"13/8 in", units.Parser{}, eighths(13), -1, "an improper fraction alone is a number"},
		{"1\u00a05\u20448\u202fin", units.Parser{}, eighths(13), -1, "no-break spaces and a fraction slash"},
		{"1 - 5/8 in", units.Parser{}, units.Length{}, 2, "neither a sum nor a mixed number"},
		{"1 -5/8 in", units.Parser{}, units.Length{}, 2, "no sign inside"},
		{"1- 5/8 in", units.Parser{}, units.Length{}, 2, "no blank after the hyphen"},
		{"-1 5/8 in", units.Parser{}, eighths(-13), -1, "the sign is the whole number's and the fraction's"},
		{"\u22121 5/8 in", units.Parser{}, eighths(-13), -1, "a true minus"},
		{"+5/8 in", units.Parser{}, eighths(5), -1, "a plus says nothing"},
		{"--1 in", units.Parser{}, units.Length{}, 1, "one sign"},
		{"- 1 in", units.Parser{}, units.Length{}, 1, "no blank after the sign"},
		{"-0 in", units.Parser{}, units.Length{}, -1, "there is one zero"},
		{"-1 yd 4 in", units.Parser{}, units.Inch.Of(-40), -1, "the sign is the whole length's"},
		{"1 yd -4 in", units.Parser{}, units.Length{}, 5, "no sign inside a compound"},
		{"1 13/8 in", units.Parser{}, units.Length{}, 2, "an improper fraction after a whole number is a slip"},
		{"1 8/8 in", units.Parser{}, units.Length{}, 2, "so is one that is a whole"},
		{"1 in 3 mm", units.Parser{}, units.Length{}, 7, "two systems"},
		{"3 mm 1 in", units.Parser{}, units.Length{}, 7, "two systems the other way"},
		{"1 in 1 yd", units.Parser{}, units.Length{}, 7, "units fall"},
		{"1 in 1 in", units.Parser{}, units.Length{}, 7, "and do not repeat"},
		{"1 in 4 L", units.Parser{}, units.Length{}, 7, "a ligne stands alone"},
		{`5' 4"`, units.Parser{}, units.Inch.Of(64), -1, "feet and inches"},
		{"5\u20324\u2033", units.Parser{}, units.Inch.Of(64), -1, "true primes"},
		{"5\u20194\u201d", units.Parser{}, units.Inch.Of(64), -1, "curly quotes"},
		{"5''", units.Parser{}, units.Length{}, 2, "two primes are not an inch"},
		{"1 yd 4 1/2 in", units.Parser{}, units.Inch.Frac(81, 2), -1, "yards and inches"},
		{"1 yd 2 ft 4 in", units.Parser{}, units.Inch.Of(64), -1, "all three"},
		{"1 m 15 cm 5 mm", units.Parser{}, units.Millimetre.Of(1155), -1, "metric"},
		{"1yd4in", units.Parser{}, units.Inch.Of(40), -1, "blanks are not needed"},
		{"1,500 mm", units.Parser{}, units.Length{}, 1, "no thousands mark"},
		{"1,500 mm", comma, units.Millimetre.Frac(3, 2), -1, "a decimal comma where it was asked for"},
		{"1,5 mm", units.Parser{}, units.Length{}, 1, "a comma unasked"},
		{"1,5 mm", comma, units.Millimetre.Frac(3, 2), -1, "a comma asked for"},
		{"1.5 mm", comma, units.Length{}, 1, "then the point is refused"},
		{"1 500 mm", units.Parser{}, units.Length{}, 2, "no blank inside a number"},
		{"1e3 mm", units.Parser{}, units.Length{}, 1, "no exponents"},
		{"1e3 mm", in, units.Length{}, 1, "nor with a unit for bare numbers"},
		{"1E-3 in", units.Parser{}, units.Length{}, 1, "of either case"},
		{"1/0 in", units.Parser{}, units.Length{}, 2, "no denominator of zero"},
		{"1 0/0 in", units.Parser{}, units.Length{}, 4, "nor in a mixed number"},
		{"1/ in", units.Parser{}, units.Length{}, 2, "a denominator is needed"},
		{"1/2/4 in", units.Parser{}, units.Length{}, 3, "one slash"},
		{"1/½ in", units.Parser{}, units.Length{}, 2, "a glyph is no denominator"},
		{"½½ in", units.Parser{}, units.Length{}, 2, "one glyph"},
		{"5. in", units.Parser{}, units.Length{}, 2, "a digit after the point"},
		{".5 in", units.Parser{}, eighths(4), -1, "none needed before it"},
		{".625 in", units.Parser{}, eighths(5), -1, "five eighths"},
		{". in", units.Parser{}, units.Length{}, 1, "but one somewhere"},
		{"0x10 in", units.Parser{}, units.Length{}, 1, "decimal digits only"},
		{"1_0 in", units.Parser{}, units.Length{}, 1, "no underscores"},
		{"١ in", units.Parser{}, units.Length{}, 0, "ASCII digits"},
		{"5", units.Parser{}, units.Length{}, 1, "the unit is compulsory"},
		{"5", in, units.Inch.Of(5), -1, "unless the parser has one"},
		{" 5 ", in, units.Inch.Of(5), -1, "blanks round it"},
		{"5 cm", in, units.Centimetre.Of(5), -1, "a unit in the text counts"},
		{"5 ft 4", in, units.Length{}, 6, "a bare number is alone"},
		{"5", units.Parser{Bare: 99}, units.Length{}, 1, "what is no unit is as none"},
		{"24 L", units.Parser{}, units.Inch.Frac(24, 40), -1, "lignes"},
		{"24 l", units.Parser{}, units.Length{}, 3, "case counts: l is too like 1"},
		{"1 IN", units.Parser{}, units.Length{}, 2, "case counts"},
		{"1 ins", units.Parser{}, units.Length{}, 2, "no such word"},
		{"in", units.Parser{}, units.Length{}, 0, "a number first"},
		{"", units.Parser{}, units.Length{}, 0, "nothing"},
		{"   ", units.Parser{}, units.Length{}, 3, "blanks only"},
		{"1 in.", units.Parser{}, units.Inch.Of(1), -1, "a full stop after an abbreviation"},
		{"5 ft. 4 in. ", units.Parser{}, units.Inch.Of(64), -1, "after each"},
		{"1 ft.5 in", units.Parser{}, units.Inch.Frac(25, 2), -1, "with a digit after it, it is the point of the next number"},
		{"1 ft. .5 in", units.Parser{}, units.Inch.Frac(25, 2), -1, "both"},
		{"1 in..", units.Parser{}, units.Length{}, 5, "one full stop"},
		{"1 in .", units.Parser{}, units.Length{}, 6, "next to the unit"},
		{"1 inch.", units.Parser{}, units.Length{}, 7, "a word is no abbreviation"},
		{"1 mm.", units.Parser{}, units.Length{}, 5, "nor is a symbol"},
		{"1 ft.4 in", comma, units.Length{}, 4, "no stop without a blank, where the comma is the mark"},
		{"5/8-inch", units.Parser{}, eighths(5), -1, "a hyphen before the unit, as in a 5/8-inch seam"},
		{"1-5/8-in.", units.Parser{}, eighths(13), -1, "and in a mixed number"},
		{"½-in", units.Parser{}, eighths(4), -1, "after a glyph"},
		{"45-in", units.Parser{}, units.Inch.Of(45), -1, "after a whole number"},
		{"15-mm", units.Parser{}, units.Millimetre.Of(15), -1, "metric too"},
		{"5 -in", units.Parser{}, units.Length{}, 2, "without blanks"},
		{"5- in", units.Parser{}, units.Length{}, 2, "on either side"},
		{`5-"`, units.Parser{}, units.Length{}, 2, "not before a prime"},
		{"5--in", units.Parser{}, units.Length{}, 2, "one hyphen"},
		{"5-x", units.Parser{}, units.Length{}, 2, "before a unit"},
		{"1 in\n", units.Parser{}, units.Length{}, 4, "no end of line"},
		{"1 in\x00", units.Parser{}, units.Length{}, 4, "no other control character"},
		{"\ufeff1 in", units.Parser{}, units.Length{}, 0, "no byte order mark"},
		{"1\xff in", units.Parser{}, units.Length{}, 1, "no broken text"},
		{"NaN in", units.Parser{}, units.Length{}, 0, "numbers only"},
	} {
		got, err := c.parser.Parse(c.text)
		if c.at < 0 {
			if err != nil || got != c.want {
				t.Errorf("%q (%s) = %v, %v; want %v", c.text, c.why, got, err, c.want)
			}
			continue
		}
		var pe *units.ParseError
		if !errors.As(err, &pe) {
			t.Errorf("%q (%s) = %v, %v; want it refused", c.text, c.why, got, err)
			continue
		}
		if pe.Offset != c.at || pe.Input != c.text || !got.IsZero() {
			t.Errorf("%q (%s): fault at %d in %q with %v, want it at %d", c.text, c.why, pe.Offset, pe.Input, got, c.at)
		}
	}
}

func TestParseRatio(t *testing.T) {
	for text, want := range map[string]units.Ratio{
		"2 1/2": units.RatioOf(5, 2), "2.5": units.RatioOf(5, 2), "5:2": units.RatioOf(5, 2), "5 : 2": units.RatioOf(5, 2), "2.5x": units.RatioOf(5, 2), "2½ ×": units.RatioOf(5, 2),
		"5 to 2": units.RatioOf(5, 2), "5to2": units.RatioOf(5, 2), "1 x": units.RatioOf(1, 1),
		"250 %": units.RatioOf(5, 2), "2½": units.RatioOf(5, 2), "-3%": units.RatioOf(-3, 100), "1/2:1/4": units.RatioOf(2, 1), "0": {},
	} {
		if got, err := units.ParseRatio(text); err != nil || got != want {
			t.Errorf("%q = %v, %v; want %v", text, got, err, want)
		}
	}
	for text, at := range map[string]int{"5:0": 2, "5:": 2, "5:-2": 2, "2 in": 2, "3 %%": 3, "": 0, "1/0": 2, "5 5": 2, "2,5": 1, "2xx": 2, "2 to": 4, "2 to 0": 5, "x2": 0, "2 X": 2} {
		var pe *units.ParseError
		if got, err := units.ParseRatio(text); !errors.As(err, &pe) || pe.Offset != at {
			t.Errorf("%q = %v, %v; want a fault at %d", text, got, err, at)
		}
	}
}

func TestParseArea(t *testing.T) {
	inch := units.Inch.Of(1)
	for text, want := range map[string]units.Area{
		"12 1/2 sq in": inch.Times(inch).Scale(units.RatioOf(25, 2)), "3 m²": units.Metre.Of(3).Times(units.Metre.Of(1)),
		`1 sq "`: inch.Times(inch), `1 sq"`: inch.Times(inch), `1 "²`: inch.Times(inch), "-1 in²": inch.Times(inch).Neg(),
		"1 sq L": units.Ligne.Of(1).Times(units.Ligne.Of(1)), "3 m2": units.Metre.Of(3).Times(units.Metre.Of(1)), "3 m^2": units.Metre.Of(3).Times(units.Metre.Of(1)), "1 square inch": inch.Times(inch), `1 square"`: inch.Times(inch), " 2sq ft ": units.Foot.Of(2).Times(units.Foot.Of(1)), "0 sq mm": {},
	} {
		if got, err := units.ParseArea(text); err != nil || got != want {
			t.Errorf("%q = %v, %v; want %v", text, got, err, want)
		}
	}
	for text, at := range map[string]int{"1 in": 4, "1 sqin": 2, "1 sq": 4, "1": 1, "1 sq in²": 7, "1 in² 2": 7, "": 0, "1 squarein": 2, "1 sq. in": 4, "1 m3": 3, "1 m^3": 3, "1 m ²": 3, "1 sq in2": 7, "1-m2": 1, "1/0 sq in": 2} {
		var pe *units.ParseError
		if got, err := units.ParseArea(text); !errors.As(err, &pe) || pe.Offset != at {
			t.Errorf("%q = %v, %v; want a fault at %d", text, got, err, at)
		}
	}
}

// TestParseDigits holds numbers of every length to the reference, about the counts of
// digits at which the parser goes over to another way of reading.
func TestParseDigits(t *testing.T) {
	r := seeded(17)
	counts := [...]int{1, 2, 5, 6, 7, 11, 12, 13, 17, 18, 19, 20, 40}
	number := func() string {
		n := counts[r.IntN(len(counts))]
		switch r.IntN(4) {
		case 0:
			return strings.Repeat("9", n)
		case 1:
			return "1" + strings.Repeat("0", n-1)
		case 2:
			return strings.Repeat("0", n-1) + "8"
		}
		b := make([]byte, n)
		for i := range b {
			b[i] = byte('0' + r.IntN(10))
		}
		return string(b)
	}
	names := [...]string{" yd", " m", "in", "'", ` "`, " L", " mm", " cm", " ft", " inches", " inx", "", " ", " in ", " mm\t"}
	for range *oracleN * 20 {
		text := ""
		for range 1 + r.IntN(2) {
			switch r.IntN(7) {
			case 0:
				text += number()
			case 1:
				text += number() + "/" + number()
			case 2:
				text += number() + [...]string{" ", "-", "  ", "\u00a0"}[r.IntN(4)] + number() + "/" + number()
			case 3:
				text += number() + "." + number()
			case 4:
				text += number() + "," + number()
			case 5:
				text += [...]string{".", "/", "-", ""}[r.IntN(4)] + number()
			case 6:
				text += number() + [...]string{"", " ", "-"}[r.IntN(3)] + "½"
			}
			text += names[r.IntN(len(names))] + [...]string{"", " "}[r.IntN(2)]
		}
		for kind := range readers {
			agree(t, kind, text)
		}
		agree(t, "Ratio", strings.TrimRight(text, " infytdmcLhesx\t'\"")+":"+number())
		agree(t, "Area", text+"²")
	}
	// The largest that is read the quick way, and one that is too large for a word.
	for _, text := range []string{"0/2 in", "0 0/8 in", "0.0 in", "0/7 yd", "999999 999998/999999 m", "999999 999998/999999 in", "0 7/7 in", "00 1/7 in", "999999/999999 yd", "999999.999999 m"} {
		agree(t, "Length", text)
	}
}

// TestHostileText is text made to be slow or to grow.
func TestHostileText(t *testing.T) {
	n := units.MaxText
	for _, text := range []string{
		strings.Repeat("9", n-3) + " in",
		strings.Repeat("0", n-4) + "1 in",
		"." + strings.Repeat("9", n-4) + " in",
		strings.Repeat("9", n/2-2) + "/" + strings.Repeat("7", n/2-2) + " in",
		"1/" + strings.Repeat("0", n-5) + " in",
		"1 1/" + strings.Repeat("9", n-7) + " in",
		strings.Repeat("1/", n/2),
		strings.Repeat("1 ", n/2),
		strings.Repeat("-", n),
		strings.Repeat(" ", n-4) + "1 in",
		strings.Repeat("1 in ", n/5),
		strings.Repeat("\u00a0", n/2),
		strings.Repeat("½", n/2),
		strings.Repeat("a", n),
		strings.Repeat("1", n+1),
		strings.Repeat("1", 10_000_000) + " in",
	} {
		for kind := range readers {
			agree(t, kind, text)
		}
		if l, err := units.Parse(text); err == nil {
			if back, err := units.Parse(l.String()); len(l.String()) <= n && (err != nil || back != l) {
				t.Errorf("%.20q... written as %.20q... is read as %.20q..., %v", text, l, back, err)
			}
		}
	}
	long := strings.Repeat("1", n+1)
	for _, err := range []error{
		new(units.Length).UnmarshalText([]byte(long)), new(units.Ratio).UnmarshalText([]byte(long)), new(units.Area).UnmarshalText([]byte(long)),
		new(units.Near).UnmarshalText([]byte(long)), new(units.NearRatio).UnmarshalText([]byte(long)), new(units.Unit).UnmarshalText([]byte(long)),
	} {
		var pe *units.ParseError
		if !errors.As(err, &pe) || len(pe.Input) > 100 || len(err.Error()) > 300 {
			t.Errorf("too long a text: %v", err)
		}
	}
}

func TestParseErrorText(t *testing.T) {
	_, err := units.Parse("1 5/8 inn")
	want := `units: "1 5/8 inn" at byte 6: found "inn", want a unit: in, ft, yd, mm, cm, m or L`
	if err == nil || err.Error() != want {
		t.Errorf("%v\nwant %s", err, want)
	}
	if _, err = units.Parse("1 5/8"); err == nil || !strings.Contains(err.Error(), "found the end") {
		t.Error(err)
	}
	long := "x" + strings.Repeat("⅝", 40) // three bytes each: the cut must not split one
	if _, err = units.Parse(long); err == nil || strings.Contains(err.Error(), `\x`) || !strings.Contains(err.Error(), "x"+strings.Repeat("⅝", 19)+"...") {
		t.Error(err)
	}
	if _, err = units.Parse("1 in\x00\u202e"); err == nil || strings.ContainsAny(err.Error(), "\x00\u202e") {
		t.Errorf("%q is not escaped", err)
	}
}

func TestMustParse(t *testing.T) {
	if units.MustParse("5/8 in") != units.Inch.Frac(5, 8) {
		t.Error("5/8 in")
	}
	mustPanic(t, "MustParse", func() { units.MustParse("5/8") })
}

// mustPanic wants a panic of the package's own, which tells what was wrong.
func mustPanic(t *testing.T, what string, f func()) {
	t.Helper()
	defer func() {
		switch r := recover().(type) {
		case nil:
			t.Errorf("%s does not panic", what)
		case runtime.Error:
			t.Errorf("%s panics in the machine: %v", what, r)
		}
	}()
	f()
}
