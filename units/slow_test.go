package units_test

import (
	"math/big"
	"regexp"
	"strings"

	"example.com/clothyard/units"
)

// The reference parser: a regular expression for the shape and big.Rat for the
// value. It shares nothing with the package but the size of a unit.

const (
	reSpace = `(?:[ \t\x{a0}\x{2009}\x{202f}])`
	reGlyph = `[½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚⅐⅑⅒]`
	reSlash = `[/\x{2044}]`
	reMixed = `[0-9]+(?:` + reSlash + `[0-9]+|` + reGlyph + `|(?:` + reSpace + `+|-)(?:` + reGlyph + `|[0-9]+` + reSlash + `[0-9]+))?|` + reGlyph
	reShort = `in|ft|yds?`
	reWord  = `in|inch|inches|ft|foot|feet|yds?|yards?|mm|millimet(?:re|er)s?|cm|centimet(?:re|er)s?|m|met(?:re|er)s?|L|lignes?`
	rePrime = `["'\x{2032}\x{2033}\x{2019}\x{201d}]`
	reSign  = `([-+\x{2212}]?)`
)

func reNumber(mark string) string { return `([0-9]*` + mark + `[0-9]+|` + reMixed + `)` }

// reLength has four groups for each part: the number, and one of the unit's three forms.
func reLength(mark string) *regexp.Regexp {
	joint := `(?:` + reSpace + `*|-)`
	part := reNumber(mark) + `(?:` + joint + `(` + reShort + `)\.(?:` + reSpace + `+|$)|` + joint + `(` + reWord + `)` + reSpace + `*|` + reSpace + `*(` + rePrime + `)` + reSpace + `*)`
	more := `(?:` + part + `)?`
	return regexp.MustCompile(`^` + reSpace + `*` + reSign + part + more + more + `$`)
}

var (
	lengthRE = reLength(`\.`)
	commaRE  = reLength(`,`)
	ratioRE  = regexp.MustCompile(`^` + reSpace + `*` + reSign + reNumber(`\.`) + reSpace + `*(?:(%)|[x×]|(?::|to)` + reSpace + `*` + reNumber(`\.`) + `)?` + reSpace + `*$`)
	areaRE   = regexp.MustCompile(`^` + reSpace + `*` + reSign + reNumber(`\.`) + reSpace + `*(?:(?:sq|square)(?:` + reSpace + `+(` + reWord + `)|` + reSpace + `*(` + rePrime + `))|(` + reWord + `|` + rePrime + `)(?:²|\^2|2))` + reSpace + `*$`)
	bareRE   = regexp.MustCompile(`^` + reSpace + `*` + reSign + reNumber(`\.`) + reSpace + `*$`)
	glyphRE  = regexp.MustCompile(reGlyph)
)

var glyphText = map[string]string{
	"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8", "⅓": "1/3", "⅔": "2/3",
	"⅕": "1/5", "⅖": "2/5", "⅗": "3/5", "⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅐": "1/7", "⅑": "1/9", "⅒": "1/10",
}

// slowNumber is the value of a number of the right shape, if it has one.
func slowNumber(text string) (*big.Rat, bool) {
	text = strings.ReplaceAll(strings.ReplaceAll(text, "\u2044", "/"), ",", ".")
	text = glyphRE.ReplaceAllStringFunc(text, func(g string) string { return " " + glyphText[g] })
	fields := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune("- \t\u00a0\u2009\u202f", r) })
	sum := new(big.Rat)
	for i, f := range fields {
		num, den, isFraction := strings.Cut(f, "/")
		if isFraction && strings.Trim(den, "0") == "" {
			return nil, false
		}
		if strings.HasPrefix(num, ".") {
			f = "0" + f
		}
		v := new(big.Rat)
		if isFraction {
			n, _ := new(big.Int).SetString(num, 10)
			d, _ := new(big.Int).SetString(den, 10)
			v.SetFrac(n, d)
		} else if _, ok := v.SetString(f); !ok {
			return nil, false
		}
		if i > 0 && v.Cmp(big.NewRat(1, 1)) >= 0 {
			return nil, false
		}
		sum.Add(sum, v)
	}
	return sum, true
}

// slowUnit is a unit's size in base units and its rank in its system, the
// greater the longer; a ligne has a system of its own.
func slowUnit(name string) (size *big.Rat, system, rank int) {
	in, mm := int64(units.PerInch), int64(units.PerMillimetre)
	switch {
	case name == "L" || strings.HasPrefix(name, "lig"):
		return big.NewRat(in, 40), 3, 1
	case strings.Contains("\"\u2033\u201d", name) || strings.HasPrefix(name, "in"):
		return big.NewRat(in, 1), 1, 1
	case strings.Contains("'\u2032\u2019", name) || strings.HasPrefix(name, "f"):
		return big.NewRat(12*in, 1), 1, 2
	case strings.HasPrefix(name, "y"):
		return big.NewRat(36*in, 1), 1, 3
	case strings.HasPrefix(name, "mm") || strings.HasPrefix(name, "mi"):
		return big.NewRat(mm, 1), 2, 1
	case strings.HasPrefix(name, "c"):
		return big.NewRat(10*mm, 1), 2, 2
	}
	return big.NewRat(1000*mm, 1), 2, 3
}

func signed(sign string, v *big.Rat) *big.Rat {
	if sign == "-" || sign == "\u2212" {
		v.Neg(v)
	}
	return v
}

// match is the parts of a text of the shape given, nil if it is of another.
func match(re *regexp.Regexp, text string) []string {
	if len(text) > units.MaxText {
		return nil
	}
	return re.FindStringSubmatch(text)
}

// slowLength is the value of a text in base units, if it is a length.
func slowLength(text string, comma bool) (*big.Rat, bool) {
	re := lengthRE
	if comma {
		re = commaRE
	}
	m := match(re, text)
	if m == nil {
		return nil, false
	}
	sum := new(big.Rat)
	lastSystem, lastRank := 0, 0
	for i := 2; i < len(m) && m[i] != ""; i += 4 {
		v, ok := slowNumber(m[i])
		if !ok {
			return nil, false
		}
		size, system, rank := slowUnit(m[i+1] + m[i+2] + m[i+3])
		if lastSystem != 0 && (system != lastSystem || rank >= lastRank) {
			return nil, false
		}
		lastSystem, lastRank = system, rank
		sum.Add(sum, v.Mul(v, size))
	}
	return signed(m[1], sum), true
}

func slowRatio(text string) (*big.Rat, bool) {
	m := match(ratioRE, text)
	if m == nil {
		return nil, false
	}
	v, ok := slowNumber(m[2])
	if !ok {
		return nil, false
	}
	if m[3] != "" {
		v.Quo(v, big.NewRat(100, 1))
	}
	if m[4] != "" {
		by, ok := slowNumber(m[4])
		if !ok || by.Sign() == 0 {
			return nil, false
		}
		v.Quo(v, by)
	}
	return signed(m[1], v), true
}

func slowArea(text string) (*big.Rat, bool) {
	m := match(areaRE, text)
	if m == nil {
		return nil, false
	}
	v, ok := slowNumber(m[2])
	if !ok {
		return nil, false
	}
	size, _, _ := slowUnit(m[3] + m[4] + m[5])
	return signed(m[1], v.Mul(v, size.Mul(size, size))), true
}

// slowBare is a number without a unit, in inches.
func slowBare(text string) (*big.Rat, bool) {
	if v, ok := slowLength(text, false); ok {
		return v, true
	}
	m := match(bareRE, text)
	if m == nil {
		return nil, false
	}
	v, ok := slowNumber(m[2])
	if !ok {
		return nil, false
	}
	return signed(m[1], v.Mul(v, big.NewRat(units.PerInch, 1))), true
}
