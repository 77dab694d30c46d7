package ticket_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"unicode/utf8"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

func in(s string) units.Length { return units.MustParse(s + " in") }

// A stitch is read at the machine: in millimetres, in whatever notation the rest is.
func TestMachine(t *testing.T) {
	l := ticket.Line{Label: "stitch", Result: ticket.Machine(units.Inch.Frac(1, 12)), Terms: []ticket.Term{
		{Amount: ticket.Long(units.Inch.Of(1)), Name: "one inch"}, {Op: ticket.Over, Amount: ticket.Of(12), Name: "stitches"}}}
	if got, want := l.Text(units.Notation{}), "stitch: 2.1 mm (2 7/60 mm) = 1 in one inch / 12 stitches"; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
	if got := ticket.Machine(units.Millimetre.Frac(5, 2)).Text(); got != "2.5 mm" {
		t.Error(got)
	}
}

func TestAmounts(t *testing.T) {
	mm := units.Notation{Unit: units.Millimetre}
	circle := units.Pi().Of(in("10"))
	small := units.Pi().Of(in("1/1000")).Settled()
	for _, c := range []struct {
		a             ticket.Amount
		exact, inches string
		both          string
	}{
		{ticket.Amount{}, "", "", ""},
		{ticket.Long(in("5/8")), "5/8 in", "5/8 in", "5/8 in (15.875 mm)"},
		{ticket.Long(in("3 19/64")), "3 19/64 in", "scant 3 5/16 in (3 19/64 in)", "scant 3 5/16 in (3 19/64 in, 83.740625 mm)"},
		{ticket.Long(in("1/64")), "1/64 in", "1/64 in", "1/64 in (0.396875 mm)"},
		{ticket.About(circle), circle.String(), "about 31 7/16 in", "about 31 7/16 in (about 798 mm)"},
		{ticket.About(small), small.String(), "less than 1/16 in", "less than 1/16 in (less than 1 mm)"},
		{ticket.Cloth(in("81")), "81 in", "2 1/4 yd (81 in)", "2 1/4 yd (81 in, 2057.4 mm)"},
		{ticket.Cloth(units.Metre.Frac(11, 5)), "2200 mm", "scant 86 5/8 in (86 78/127 in)", "scant 86 5/8 in (86 78/127 in, 2200 mm)"},
		{ticket.Times(units.RatioOf(15, 7)), "2 1/7", "2 1/7", "2 1/7"},
		{ticket.Square(in("2").Times(in("3"))), "6 sq in", "6 sq in", "6 sq in"},
		{ticket.Of(9), "9", "9", "9"},
		{ticket.Price("18.90"), "18.90", "18.90", "18.90"},
	} {
		if got := c.a.String(); got != c.exact {
			t.Errorf("%q, want %q", got, c.exact)
		}
		if got := c.a.Text(); got != c.inches {
			t.Errorf("%q, want %q", got, c.inches)
		}
		if got := c.a.Text(units.Notation{}, mm); got != c.both {
			t.Errorf("%q, want %q", got, c.both)
		}
	}
	if ticket.Long(units.Length{}).IsZero() || !(ticket.Amount{}).IsZero() {
		t.Error("0 in is an amount, and no amount is none")
	}
	if ticket.Of(3).Number() != units.RatioOf(3, 1) || ticket.Long(in("1")).Measure() != ticket.Length {
		t.Error("accessors")
	}
	if l, ok := ticket.Long(in("1")).Near().Exact(); !ok || l != in("1") {
		t.Error("Near")
	}
}

// A line joins what can be joined, and nothing else.
func TestLineKinds(t *testing.T) {
	l, n, a := ticket.Long(in("6")), ticket.Of(2), ticket.Square(in("6").Times(in("2")))
	circle := ticket.About(units.Pi().Of(in("1")))
	for _, c := range []struct {
		x    ticket.Amount
		op   ticket.Op
		y    ticket.Amount
		want ticket.Amount
		ok   bool
	}{
		{l, ticket.Plus, l, ticket.Long(in("12")), true},
		{l, ticket.Minus, l, ticket.Long(in("0")), true},
		{l, ticket.By, l, ticket.Square(in("6").Times(in("6"))), true},
		{l, ticket.Over, l, ticket.Of(1), true},
		{l, ticket.Over, ticket.Long(in("0")), l, false},
		{l, ticket.By, n, ticket.Long(in("12")), true},
		{n, ticket.By, l, ticket.Long(in("12")), true},
		{l, ticket.Over, n, ticket.Long(in("3")), true},
		{l, ticket.Over, ticket.Of(0), l, false},
		{l, ticket.Plus, n, l, false},
		{n, ticket.Plus, l, l, false},
		{a, ticket.Over, ticket.Long(in("2")), l, true},
		{a, ticket.Over, ticket.Long(in("0")), l, false},
		{a, ticket.Plus, a, ticket.Square(in("6").Times(in("4"))), true},
		{a, ticket.Minus, a, ticket.Square(units.Area{}), true},
		{a, ticket.By, n, ticket.Square(in("6").Times(in("4"))), true},
		{a, ticket.By, l, a, false},
		{n, ticket.Plus, n, ticket.Of(4), true},
		{n, ticket.Minus, n, ticket.Of(0), true},
		{n, ticket.By, n, ticket.Times(units.RatioOf(4, 1)), true},
		{n, ticket.Over, n, ticket.Of(1), true},
		{n, ticket.Over, ticket.Of(0), n, false},
		{n, ticket.Op(9), n, n, false},
		{circle, ticket.Plus, l, ticket.About(units.Pi().Of(in("1")).Plus(in("6"))), true},
		{circle, ticket.By, l, l, false},
		{circle, ticket.Over, l, l, false},
		{a, ticket.Over, circle, l, false},
		{ticket.Price("1"), ticket.Plus, ticket.Price("1"), ticket.Price("2"), false},
		{l, ticket.Plus, l, ticket.Of(12), false},
	} {
		line := ticket.Line{Label: "x", Terms: []ticket.Term{{Amount: c.x}, {Op: c.op, Amount: c.y, Name: "y"}}, Result: c.want}
		if err := line.Check(); (err == nil) != c.ok || err != nil && !errors.Is(err, ticket.ErrWorking) {
			t.Errorf("%s: %v", line.Text(), err)
		}
	}
	if err := (ticket.Line{Label: "stated", Result: l}).Check(); err != nil {
		t.Errorf("a figure that is merely stated: %v", err)
	}
	line := ticket.Line{Label: "taken", Result: ticket.Long(in("7/16")), Terms: []ticket.Term{{Amount: ticket.Long(in("3/16")), Name: "first"}, {Op: ticket.Plus, Amount: ticket.Long(in("1/4")), Name: "second"}}}
	if got, want := line.Text(), "taken: 7/16 in = 3/16 in first + 1/4 in second"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
	if got, want := line.Text(units.Notation{Unit: units.Millimetre}), "taken: 11 mm (11.1125 mm) = 4.7625 mm first + 6.35 mm second"; got != want {
		t.Errorf("%s, want %s", got, want)
	}
}

func TestNames(t *testing.T) {
	for o, want := range []string{"+", "-", "x", "/", "operation(4)"} {
		if got := ticket.Op(o).String(); got != want {
			t.Errorf("Op %d is %s", o, got)
		}
	}
	for s, want := range []string{"", "right sides together", "wrong sides together", "right side on wrong side", "wrong side on right side", "sides(5)"} {
		if got := ticket.Sides(s).String(); got != want {
			t.Errorf("Sides %d is %s", s, got)
		}
	}
}

func TestWrap(t *testing.T) {
	for _, text := range []string{"", "one", strings.Repeat("word ", 60), strings.Repeat("x", 300), "see www." + strings.Repeat("path/", 40) + " there"} {
		s := ticket.Wrap("* ", "  ", text)
		for _, line := range strings.Split(s, "\n") {
			if utf8.RuneCountInString(line) > ticket.Columns {
				t.Errorf("%d columns: %s", utf8.RuneCountInString(line), line)
			}
		}
		if got, want := strings.Join(strings.Fields(strings.ReplaceAll(s, "* ", "")), ""), strings.Join(strings.Fields(text), ""); got != want {
			t.Errorf("lost text: %q", s)
		}
	}
}

// A measure is never broken: a sewer reads it in one piece.
func TestWrapKeepsMeasures(t *testing.T) {
	for _, m := range []string{"scant 3 5/16 in", "(full 12 1/2 in)", "16 1/2 in,", "83.740625 mm", "2 3/4 yd.", "18 L", "+3/4 in"} {
		for pad := range 90 {
			s := ticket.Wrap("", "", strings.Repeat("x", pad)+" "+m+" wide")
			if !strings.Contains(s, m) {
				t.Errorf("%q is broken in\n%s", m, s)
			}
		}
	}
	// What only looks like one is broken where the line ends.
	for _, c := range [][2]string{{"full", "of holes"}, {"9", "stitches/inch"}, {"twelve", "in"}, {"3/4", "wide"}, {"2nd", "m"}} {
		s := ticket.Wrap("", "", strings.Repeat("x", ticket.Columns-len(c[0])-1)+" "+c[0]+" "+c[1])
		if !strings.Contains(s, c[0]+"\n") {
			t.Errorf("%q is kept together:\n%s", c, s)
		}
	}
}

func TestSheetText(t *testing.T) {
	s := ticket.Sheet{
		Title:  "French seam",
		Answer: []ticket.Line{{Label: "each ply gives up", Result: ticket.Long(in("7/16"))}, {Label: "an edge across it grows", Result: ticket.Long(in("3/8"))}},
		Lines:  []ticket.Line{{Label: "taken", Result: ticket.Long(in("7/16"))}},
		Steps: []ticket.Step{
			{Do: "Stitch", Together: ticket.WrongTogether, At: ticket.Long(in("3/16")), From: "the raw edge", Note: "slowly"},
			{Do: "Trim", Trim: ticket.Long(in("1/8")), Press: "open", At: ticket.Long(in("1/4")), Check: ticket.Check{What: "the ridge", Want: ticket.Long(in("1/4")), Give: ticket.Long(in("1/16")), Mend: "sew it again"}},
		},
		Assumed:  []string{"Drafted", "Trim"},
		Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare(), {Text: "Mind the cat."}},
		Sources:  []source.Cite{source.Practise("the trim")},
	}
	want := `French seam: each ply gives up 7/16 in; an edge across it grows 3/8 in
Working
   taken: 7/16 in
Work
 1 Stitch, WRONG SIDES TOGETHER.
     guide: 3/16 in from the raw edge
     note: slowly
 2 Trim.
     guide: 1/4 in
     trim: to 1/8 in beyond the stitching
     press: open
     CHECK: the ridge = 1/4 in, 1/16 in either way
     if it is out: sew it again
Assumed: Drafted, Trim
Take care
   Needles, pins, shears and rotary cutters cut: keep fingers clear, put them
   away, count the pins. (the maker's instructions and the workroom's own rules
   decide)
   An iron burns and can set cloth alight: test on a scrap, start cool, never
   leave it face down. (the cloth's care label decides (ISO 3758 symbols))
   Mind the cat.
Sources
   the trim: common practice
`
	if got := s.Text(); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	if err := s.Check(); err != nil {
		t.Error(err)
	}
	s.Lines = append(s.Lines, ticket.Line{Label: "wrong", Result: ticket.Of(3), Terms: []ticket.Term{{Amount: ticket.Of(1)}, {Amount: ticket.Of(1)}}})
	if err := s.Check(); !errors.Is(err, ticket.ErrWorking) || !strings.Contains(err.Error(), "wrong") {
		t.Error(err)
	}
	if got := (ticket.Sheet{}).Text(); got != "" {
		t.Errorf("the zero sheet says %q", got)
	}
	if got := (ticket.Step{Do: "Press"}).Text(0); got != "   Press.\n" {
		t.Errorf("%q", got)
	}
}

func ExampleLine() {
	l := ticket.Line{
		Label:  "each ply keeps",
		Result: ticket.Long(units.Inch.Frac(3, 16)),
		Terms: []ticket.Term{
			{Amount: ticket.Long(units.Inch.Frac(5, 8)), Name: "drafted"},
			{Op: ticket.Minus, Amount: ticket.Long(units.Inch.Frac(7, 16)), Name: "taken"},
		},
	}
	fmt.Println(l.Text())
	fmt.Println(l.Text(units.Notation{Unit: units.Millimetre}))
	fmt.Println(l.Check())
	// Output:
	// each ply keeps: 3/16 in = 5/8 in drafted - 7/16 in taken
	// each ply keeps: 5 mm (4.7625 mm) = 15.875 mm drafted - 11.1125 mm taken
	// <nil>
}
