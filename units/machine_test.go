package units_test

import (
	"math/big"
	"os/exec"
	"runtime"
	"strconv"
	"strings"
	"sync"
	"testing"
	"unsafe"

	"example.com/clothyard/units"
)

// TestSize: a number is 24 bytes on a 64-bit machine.
func TestSize(t *testing.T) {
	want := uintptr(24)
	if strconv.IntSize == 32 {
		want = 20
	}
	if n := unsafe.Sizeof(units.Length{}); n != want {
		t.Errorf("a Length is %d bytes, want %d", n, want)
	}
	if a, b := unsafe.Sizeof(units.Ratio{}), unsafe.Sizeof(units.Area{}); a != want || b != want {
		t.Errorf("a Ratio is %d bytes, an Area %d", a, b)
	}
}

// TestAllocations: ordinary work takes nothing from the heap.
func TestAllocations(t *testing.T) {
	l, m := units.MustParse("23 1/2 in"), units.MustParse("15 mm")
	third, seventh := units.MustParse("1/3 in"), units.MustParse("1/7 in")
	step := units.MustParse("1/16 in")
	area := l.Times(m)
	ratio := units.RatioOf(5, 2)
	note := units.Notation{Glyphs: true}
	metric := units.Notation{Unit: units.Centimetre}
	yards := units.Notation{Unit: units.Yard, Compound: true}
	buf := make([]byte, 0, 128)
	var sink units.Length
	var text string
	parse := func(text string) func() {
		return func() {
			if _, err := units.Parse(text); err != nil {
				t.Error(err)
			}
		}
	}
	for _, c := range []struct {
		name string
		want float64
		f    func()
	}{
		{"Add", 0, func() { sink = l.Add(m) }},
		{"Add fractions", 0, func() { sink = third.Add(seventh) }},
		{"Sub", 0, func() { sink = l.Sub(m) }},
		{"Cmp", 0, func() { _ = l.Cmp(m) + third.Cmp(seventh) }},
		{"MulInt", 0, func() { sink = l.MulInt(7) }},
		{"DivInt", 0, func() { sink = l.DivInt(7) }},
		{"Scale", 0, func() { sink = l.Scale(ratio) }},
		{"Div", 0, func() { _ = l.Div(m) }},
		{"Times and Over", 0, func() { sink = area.Over(l) }},
		{"Round", 0, func() { sink, _ = third.Round(step, units.HalfAway) }},
		{"Sum", 0, func() { sink = units.Sum(l, m, third, seventh) }},
		{"Marks", 0, func() {
			for mark, residue := range units.Marks(l, 13, step, units.HalfAway) {
				sink = mark.Add(residue)
			}
		}},
		{"Parse mixed", 0, parse("1 5/8 in")},
		{"Parse glyph", 0, parse("1⅝ in")},
		{"Parse decimal", 0, parse("1.625 in")},
		{"Parse long decimal", 0, parse("12.3456789 in")},
		{"Parse long fraction", 0, parse("1 1234567/2345678 inches")},
		{"Parse stops", 0, parse("5 ft. 4 in.")},
		{"Parse compound", 0, parse("1 yd 4 1/2 in")},
		{"Parse metric", 0, parse("15 mm")},
		{"Append", 0, func() { buf, _ = note.Append(buf[:0], l) }},
		{"Append scant", 0, func() { buf, _ = note.Append(buf[:0], m) }},
		{"Append metric", 0, func() { buf, _ = metric.Append(buf[:0], l) }},
		{"Append yards", 0, func() { buf, _ = yards.Append(buf[:0], l) }},
		{"AppendText", 0, func() { buf, _ = l.AppendText(buf[:0]) }},
		{"String", 1, func() { text = m.String() }},
		{"Format", 1, func() { text, _ = note.Format(m) }},
		{"MetresBought", 0, func() { sink = units.MetresBought(l) }},
	} {
		if n := testing.AllocsPerRun(100, c.f); n != c.want {
			t.Errorf("%s: %v allocations, want %v", c.name, n, c.want)
		}
	}
	_, _ = sink, text
}

// TestQuick: what people mostly write is read and written the quick way, which nothing
// but a clock would tell otherwise.
func TestQuick(t *testing.T) {
	for _, text := range []string{
		"5 in", "1 5/8 in", "1-5/8 in", "5/8 in", "0.625 in", "15 mm", "1.5 cm", "3 m", "2 ft", "1 3/4 yd", `1 5/8"`, "6'", "24 L", "5in", "1/3 in",
		"999999 in", "1 999998/999999 in", "123456.654321 mm", "0 in",
	} {
		if !units.ReadQuickly(text) {
			t.Errorf("%s is read the slow way", text)
		}
	}
	for _, text := range []string{"1⅝ in", "1 inch", "9999999 in", "1 8/8 in", "1,5 mm", "1", "", "in", "1 in.", "1- 5/8 in", "999999 999998/999999 m"} {
		if units.ReadQuickly(text) {
			t.Errorf("%q is not for the quick way", text)
		}
	}
	for _, n := range []units.Notation{{}, {Step: units.Inch.Frac(1, 128)}, {Step: units.Inch.Frac(1, 10)}, {Mode: units.Up, Slack: units.Inch.Of(1)}, {Unit: units.Millimetre}, {Unit: units.Centimetre}, {Unit: units.Metre, Step: units.Centimetre.Of(1)}, {Unit: units.Yard, Slack: units.Yard.Of(1)}, {Step: units.Inch.Frac(1, 100), Decimal: true}} {
		for _, l := range []units.Length{{}, n.Spacing(), n.Spacing().MulInt(-37), n.Spacing().MulInt(1000).Add(base()), n.Spacing().MulInt(-5).Sub(base())} {
			if !units.WrittenQuickly(n, l) {
				t.Errorf("%v in %+v is written the slow way", l, n)
			}
		}
	}
}

// TestLinks: whoever imports units links nothing that she did not ask for: of the
// module the faults, names and sources that units is made with, and of database/sql the words
// between it and a driver, which Value is declared with, but neither it nor any driver.
func TestLinks(t *testing.T) {
	out, err := exec.Command("go", "list", "-deps", ".").Output()
	if err != nil {
		t.Fatal(err)
	}
	for pkg := range strings.FieldsSeq(string(out)) {
		switch {
		case pkg == "example.com/clothyard/units", pkg == "example.com/clothyard/units/fault", pkg == "example.com/clothyard/units/name", pkg == "example.com/clothyard/units/source":
		case strings.Contains(pkg, "."), pkg == "database/sql", pkg == "encoding/json", pkg == "net", pkg == "regexp":
			t.Errorf("units links %s", pkg)
		}
	}
}

// TestHeap: values in the large form are dropped again. They are kept in a table of
// the machine's, which the collector must empty.
func TestHeap(t *testing.T) {
	n := 500_000
	if raceOn {
		n /= 10 // the race detector is slow
	}
	large := lengthOf(new(big.Rat).SetInt(new(big.Int).Lsh(big.NewInt(1), 70)))
	step := base()
	for range n {
		large = large.Add(step)
	}
	if !units.Wide(large) {
		t.Fatal("not large")
	}
	runtime.GC()
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	if m.HeapAlloc > 64<<20 {
		t.Errorf("%d MiB live after %d large values", m.HeapAlloc>>20, n)
	}
	runtime.KeepAlive(large)
}

// TestGoroutines uses the same values in many goroutines at once, for the race
// detector to watch.
func TestGoroutines(t *testing.T) {
	third := units.MustParse("1/3 in")
	large := units.MustParse("100000000000000000000/7 in")
	pi := units.Pi().Of(third)
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			for i := range int64(50) {
				if large.Add(third).MulInt(i+1).DivInt(i+1).Sub(large) != third {
					t.Error("one third is lost")
				}
				if c, err := pi.Cmp(units.Exactly(third)); c != 1 || err != nil {
					t.Error(c, err)
				}
				for range units.ChartRows() {
				}
			}
		})
	}
	wg.Wait()
}
