package ticket_test

import (
	"errors"
	"strings"
	"testing"
	"unicode/utf8"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// unfit are texts with one character each that no page, terminal or picture may get.
var unfit = []string{
	"a\x00", "\x1b[2J", "a\nb", "a\tb", "a\x7f", "a\u0085b", "a\u009b31m", // controls, C1 too
	"a\u061cb", "a\u200eb", "a\u200fb", "a\u202ab", "a\u202eb", "a\u2066b", "a\u2069b", // turns the text round
	"a\u2028b", "a\u2029b", "a\ufeffb", // ends a line, or marks the order of bytes
	"a\uffff", "a\ufffe", "a\ufdd0", "a\U0001ffff", "a\ufffd", "a\xff", "\xed\xa0\x80", // no characters
}

var fit = []string{"", "side seam", "Naht über Kante", "ふち", "حافة", "1⅝ in", "~~~", "<b> & \"c\"", "e\u0301", "\U0001f9f5", "می\u200cخواهم"}

// TestFit holds every way to ask for a fit name to the same answer.
func TestFit(t *testing.T) {
	for _, s := range unfit {
		var a fault.Audit
		a.Text("Name", s)
		f := fault.Unfit("Name", s)
		if f == nil || a.Err() == nil || a.Err().Error() != f.Error() || !errors.Is(f, fault.Form) || f.Limit == "" || f.Path != "Name" {
			t.Errorf("%q is taken as a name: %v, %v", s, f, a.Err())
			continue
		}
		if !clean(f.Error()) || !clean(f.Got) {
			t.Errorf("the fault of %q echoes it: %q", s, f.Error())
		}
	}
	for _, s := range fit {
		var a fault.Audit
		if a.Text("Name", s); a.Failed() || fault.Unfit("Name", s) != nil || fault.Visible(s) != s {
			t.Errorf("%q is refused: %v", s, a.Err())
		}
	}
	long := strings.Repeat("x", fault.MaxName+1)
	if f := fault.Unfit("Name", long); !errors.Is(f, fault.Range) || fault.Unfit("Name", long[1:]) != nil {
		t.Errorf("%v", f)
	}
}

// clean reports whether a terminal takes s as text and nothing else.
func clean(s string) bool {
	return utf8.ValidString(s) && !strings.ContainsAny(s, "\x00\x1b\n\t\x7f\u0085\u009b\u061c\u200e\u200f\u202a\u202e\u2066\u2069\u2028\u2029\ufeff\uffff\ufffe\ufdd0\U0001ffff")
}

// TestNothingUnfitIsWritten puts such characters wherever a caller can, past all checks.
func TestNothingUnfitIsWritten(t *testing.T) {
	for _, s := range unfit {
		for _, err := range []error{
			&fault.Fault{Path: s, Got: s, Limit: s, Kind: fault.Kind(s)},
			fault.Faults{{Path: s, Got: s, Limit: s, Kind: fault.Form}},
			fault.Under(s, fault.Faults{{Path: "Name", Kind: fault.Form}}),
		} {
			if !clean(err.Error()) {
				t.Errorf("a fault of %q is %q", s, err.Error())
			}
		}
		sheet := ticket.Sheet{
			Title: s, Assumed: []string{s},
			Steps:    []ticket.Step{{Do: s, At: ticket.Of(1), From: s, Press: s, Note: s, Check: ticket.Check{What: s, Want: ticket.Price(s), Mend: s}}},
			Lines:    []ticket.Line{{Label: s, Result: ticket.Price(s), Terms: []ticket.Term{{Amount: ticket.Price(s), Name: s}}}},
			Cautions: []ticket.Caution{{Text: s, Refer: s}},
			Sources:  []source.Cite{{For: s, ID: s, Place: s}},
		}
		for line := range strings.Lines(sheet.Text()) {
			if !clean(strings.TrimSuffix(line, "\n")) {
				t.Errorf("a sheet of %q has the line %q", s, line)
			}
		}
	}
	for _, s := range fit {
		if got := (ticket.Sheet{Title: s}).Text(); strings.TrimSpace(got) != s {
			t.Errorf("%q is written %q", s, got)
		}
	}
}

// TestColumns keeps to the columns whatever the words are: long ones, wide ones, and
// measures of many digits.
func TestColumns(t *testing.T) {
	long := units.MustParse("1/" + strings.Repeat("7", 300) + " in")
	for _, s := range []string{
		strings.Repeat("x", 150), strings.Repeat("x", 150) + " " + strings.Repeat("y", 79), "seam/" + strings.Repeat("x", 200), strings.Repeat("/", 300),
		strings.Repeat("é", 150), "to " + strings.Repeat("1", 150) + " in", "1 " + strings.Repeat("1", 100) + "/" + strings.Repeat("3", 100) + " in",
	} {
		sheet := ticket.Sheet{
			Title: s, Assumed: []string{s},
			Steps:    []ticket.Step{{Do: s, At: ticket.Long(long), From: s, Press: s, Note: s, Check: ticket.Check{What: s, Want: ticket.Long(long), Mend: s}}},
			Lines:    []ticket.Line{{Label: s, Result: ticket.Long(long), Terms: []ticket.Term{{Amount: ticket.Long(long), Name: s}}}},
			Cautions: []ticket.Caution{{Text: s, Refer: s}},
			Sources:  []source.Cite{{For: s, Place: s}},
		}
		all := sheet.Text()
		for line := range strings.Lines(all) {
			if n := utf8.RuneCountInString(strings.TrimSuffix(line, "\n")); n > ticket.Columns {
				t.Errorf("%.20s...: %d columns: %q", s, n, line)
			}
		}
		// Nothing is lost by the breaks.
		bare := func(s string) string { return strings.Join(strings.Fields(s), "") }
		if n := strings.Count(bare(all), bare(s)); n < 10 {
			t.Errorf("%.20s... stands %d times", s, n)
		}
	}
}
