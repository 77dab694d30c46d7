// Package units holds exact lengths, ratios, areas and angles for sewing: inches with
// their fractions, millimetres, yards and lignes in one sum, nothing rounded
// until the caller asks. It is for programs that must agree with a tape.
//
//	seam := units.MustParse("1-5/8 in").Add(units.Millimetre.Of(3))
//	mark, residue := seam.Round(units.Inch.Frac(1, 16), units.HalfAway)
//	text, _ := units.Notation{Glyphs: true}.Format(seam)
//
// # Conventions
//
//   - Exact: all but a [Near] is rational. Arithmetic never
//     rounds or overflows; beyond 63 bits it is slower. An inch is 25.4 mm.
//   - The zero value is zero, and a Spec reads it as "not given".
//   - == is numeric equality; values are immutable, may be map keys and may be
//     shared between goroutines.
//   - Rounding happens only where a step or a [Notation] is passed, and gives the
//     residue back: exact == mark + residue.
//   - scant is a little less than the mark, full a little more, from 1/4 mm to
//     [Notation].Slack; more is written out.
//   - What is irrational is a [Near]: two exact bounds, refined as a question
//     needs, until [ErrBound].
//   - Errors in text are a [*ParseError] with the byte. Only dividing by
//     zero, counting in no [Unit] and [MustParse] panic.
//   - Text above [MaxText] bytes is refused, and roots above [MaxRoot] bits.
//
// Signs, counts and directions:
//
//	              plus                      minus
//	residue       the mark is too short     the mark is too long
//	drift, ease   the made thing is bigger  smaller
//	turning       convex edge               concave edge
//	distance      away from the line named  never
//	count         how many, from 1; a mark is numbered from 0
//
// # Grammar
//
// [Parse] takes Length, [ParseRatio] and [ParseArea] the others. For a [Parser] with
// DecimalComma mark is ",". Case counts.
//
//	Text    = Length | Ratio | Area .
//	Length  = [ space ] [ sign ] { number more } number last [ space ] .
//	Ratio   = [ space ] [ sign ] number [ space ] [ "%" | "x" | "×" | ( ":" | "to" ) [ space ] number ] [ space ] .
//	Area    = [ space ] [ sign ] number [ space ] square [ space ] .
//
//	more    = measure [ space ] | stopped space .
//	last    = measure | stopped .
//	measure = [ space | "-" ] word | [ space ] prime .
//	stopped = [ space | "-" ] short "." .
//	square  = ( "sq" | "square" ) ( space word | [ space ] prime ) | unit ( "²" | "^2" | "2" ) .
//	number  = [ digits ] mark digits | mixed .
//	mark    = "." .
//	mixed   = digits [ slash digits | glyph | ( space | "-" ) below ] | glyph .
//	below   = glyph | digits slash digits .
//	digits  = digit { digit } .
//	digit   = "0" … "9" .
//	glyph   = "¼" … "¾" | "⅐" … "⅞" .
//	sign    = "+" | "-" | "\u2212" .
//	slash   = "/" | "\u2044" .
//	space   = blank { blank } .
//	blank   = " " | "\t" | "\u00a0" | "\u2009" | "\u202f" .
//	unit    = word | prime .
//	short   = "in" | "ft" | "yd" [ "s" ] .
//	word    = short | "inch" [ "es" ] | "foot" | "feet" | "yard" [ "s" ] | "mm" | "cm" | "m" |
//	          [ "milli" | "centi" ] ( "metre" | "meter" ) [ "s" ] | "L" | "ligne" [ "s" ] .
//	prime   = "\"" | "\u2033" | "\u201d" | "'" | "\u2032" | "\u2019" .
//
// Narrower than the grammar: no denominator or divisor is zero; below is less
// than one (1 13/8 in is refused, 13/8 in is not); the units of a compound length
// fall and stay in one system (1 in 3 mm is refused), and a ligne stands alone.
//
// The sign is the whole length's: -1 5/8 in is minus 1 5/8 in, and 1-5/8 in is a
// mixed number. 1 - 5/8 in, exponents, 5. in and thousands marks (1,500 mm) are
// refused, and 1 ft.5 in is half an inch more than a foot; with DecimalComma 1,500 mm is 1 1/2 mm. Parser.Bare is the unit of a
// lone number.
package units
