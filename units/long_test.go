package units_test

import (
	"math/rand/v2"
	"runtime"
	"strings"
	"testing"

	"example.com/clothyard/units"
)

// ordinary is a plain number that fills a text of MaxText bytes.
func ordinary() string { return strings.Repeat("7", units.MaxText-3) + " in" }

type longText struct{ name, text string }

// longTexts are made to cost as much as a text of MaxText bytes can.
func longTexts() []longText {
	n := units.MaxText
	return []longText{
		{"ordinary", ordinary()},
		{"blanks", strings.Repeat(" ", n-4) + "1 in"},
		{"wide-blanks", strings.Repeat("\u00a0", n/2-2) + "1 in"},
		{"zeros", strings.Repeat("0", n-4) + "1 in"},
		{"closing-zeros", "1." + strings.Repeat("0", n-5) + " in"},
		{"places", "." + strings.Repeat("9", n-4) + " in"},
		{"small", "." + strings.Repeat("0", n-5) + "1 in"},
		{"fraction", strings.Repeat("9", n/2-2) + "/" + strings.Repeat("7", n/2-2) + " in"},
		{"power-below", strings.Repeat("8", n/2-2) + "/1" + strings.Repeat("0", n/2-3) + " in"},
		{"denominator", "1/" + strings.Repeat("9", n-5) + " in"},
		{"mixed", strings.Repeat("9", 338) + " 1" + strings.Repeat("3", 337) + "/" + strings.Repeat("7", 342) + " in"},
		{"glyph", strings.Repeat("9", n-5) + "½ in"},
		{"three-parts", threeParts("3", "8")},
		{"three-alike", threeParts("6", "6")},
		{"three-decimals", strings.Repeat("9", 170) + "." + strings.Repeat("7", 168) + " yd" + strings.Repeat("1", 170) + "." + strings.Repeat("3", 170) + "ft" + strings.Repeat("9", 168) + "." + strings.Repeat("7", 168) + "in"},
		{"slashes", strings.Repeat("1/", n/2)},
		{"numbers", strings.Repeat("1 ", n/2)},
		{"parts", strings.Repeat("1 in ", n/5) + "    "},
		{"letters", strings.Repeat("a", n)},
		{"signs", strings.Repeat("-", n)},
		{"glyphs", strings.Repeat("½", n/2)},
		{"broken", strings.Repeat("\xff", n)},
		{"minus", "-" + strings.Repeat("7", n-4) + " in"},
	}
}

func threeParts(num, den string) string {
	part := func(unit string) string {
		return strings.Repeat("9", 110) + " 1" + strings.Repeat(num, 109) + "/2" + strings.Repeat(den, 109) + unit
	}
	return part(" yd ") + part("ft") + part("in")
}

// bytesOf is how much memory is taken from the heap by f, in all.
func bytesOf(f func()) uint64 {
	var before, after runtime.MemStats
	const rounds = 16
	f()
	runtime.ReadMemStats(&before)
	for range rounds {
		f()
	}
	runtime.ReadMemStats(&after)
	return (after.TotalAlloc - before.TotalAlloc) / rounds
}

// TestLongText: no text of MaxText bytes takes more than three times the memory of an
// ordinary one of that length, and a longer one takes next to none. The time goes with
// the memory; BenchmarkLongText shows it.
func TestLongText(t *testing.T) {
	times := uint64(3)
	if raceOn {
		times = 6 // the detector makes math/big's pools forget at random
	}
	limit := times * bytesOf(func() { _, _ = units.Parse(ordinary()) })
	if limit/times > 64<<10/3 {
		t.Errorf("an ordinary long text takes %d bytes", limit/times)
	}
	check := func(name, text string) {
		t.Helper()
		for _, parse := range []func(){
			func() { _, _ = units.Parse(text) },
			func() { _, _ = units.Parser{DecimalComma: true, Bare: units.Yard}.Parse(text) },
			func() { _, _ = units.ParseArea(text) },
			func() { _, _ = units.ParseRatio(text) },
		} {
			if n := bytesOf(parse); n > limit {
				t.Errorf("%s: %d bytes, limit %d", name, n, limit)
			}
		}
	}
	for _, c := range longTexts() {
		if len(c.text) > units.MaxText || len(c.text) < units.MaxText-30 {
			t.Fatalf("%s has %d bytes", c.name, len(c.text))
		}
		check(c.name, c.text)
	}
	half := strings.Repeat("9", units.MaxText/2-1)
	check("ratio", half+":"+half)
	check("ratio of decimals", "."+half[1:]+":"+"."+half[1:])
	check("area", strings.Repeat("9", units.MaxText-6)+" sq in")
	r := seeded(18)
	for range *oracleN / 10 {
		text := longChance(r)
		check(text, text)
	}
	long := strings.Repeat("7", 100*units.MaxText)
	if n := bytesOf(func() { _, _ = units.Parse(long) }); n > 4*units.MaxText {
		t.Errorf("too long a text takes %d bytes", n)
	}
}

// longChance is a text of MaxText bytes of numbers at random.
func longChance(r *rand.Rand) string {
	var b strings.Builder
	names := [...]string{" yd ", "ft", "in", "m", "cm ", "mm"}
	next := r.IntN(4)
	for b.Len() < units.MaxText-8 {
		left := units.MaxText - b.Len() - 8
		for range r.IntN(3) + 1 {
			digits := 1 + r.IntN(left)
			left = max(1, left-digits-1)
			for range digits {
				b.WriteByte(byte('0' + r.IntN(10)))
			}
			b.WriteString([...]string{"/1", ".", " 1", "-", ""}[r.IntN(5)])
		}
		b.WriteString("1" + names[next%len(names)])
		next++
	}
	return b.String()[:min(b.Len(), units.MaxText)]
}

// BenchmarkLongText sets the worst texts beside an ordinary one of the same length.
func BenchmarkLongText(b *testing.B) {
	for _, c := range longTexts() {
		b.Run("text="+c.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				_, _ = units.Parse(c.text)
			}
		})
	}
}
