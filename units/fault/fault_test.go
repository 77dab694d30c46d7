package fault_test

import (
	"encoding/json"
	"errors"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"github.com/google/go-cmp/cmp"
)

const hidden fault.Kind = "raw edge would show"

func some() fault.Faults {
	var a fault.Audit
	a.Need("edge", units.Length{})
	a.Need("depth", units.Inch.Frac(-1, 2))
	a.NotNegative("fullness", units.RatioOf(-1, 2))
	fault.AtMost(&a, "cut", units.Inch.Of(2), units.Inch.Of(1), "drafted", fault.Range)
	fault.AtLeast(&a, "trim", units.Inch.Frac(1, 16), units.Inch.Frac(1, 8), "cloth that frays", hidden)
	a.Count("pieces", 0, 1, 9)
	a.Count("corners", 10, 0, 9)
	var part fault.Audit
	part.Fault("[2].taken", "1 in", "{1}, or {0} less", fault.Conflict, units.Inch.Of(3), units.Inch.Of(4))
	part.Fault("", "", "", fault.Missing)
	a.Include("takes", part.Err())
	a.Include("root", units.ErrBound)
	var all fault.Faults
	errors.As(a.Err("trim"), &all)
	return all
}

func TestAudit(t *testing.T) {
	want := `edge: not given, want more than 0 in
depth -1/2 in: wrong sign, want more than 0 in
fullness -1/2: wrong sign, want 0 or more
cut 2 in: out of range, want at most 1 in (drafted)
trim 1/16 in (assumed): raw edge would show, want at least 1/8 in (cloth that frays)
pieces: not given, want 1 to 9
corners 10: out of range, want 0 to 9
takes[2].taken 1 in: disagrees with what else is given, want 4 in, or 3 in less
takes: not given
root: units: not decided within the limit of precision`
	if got := some().Error(); got != want {
		t.Error(cmp.Diff(want, got))
	}
	var none fault.Audit
	none.Include("takes", nil)
	none.NotNegative("edge", units.Length{})
	none.Need("edge", units.Inch.Of(1))
	fault.AtMost(&none, "cut", units.Inch.Of(1), units.Inch.Of(1), "drafted", fault.Range)
	none.Count("pieces", 9, 1, 9)
	none.Unused("cut", units.Inch.Of(1), true, units.Inch)
	none.Text("name", "neck, centre to centre")
	if none.Failed() || none.Err() != nil {
		t.Error("an audit without faults fails")
	}
}

func TestIs(t *testing.T) {
	var err error = some()
	for kind, want := range map[fault.Kind]bool{fault.Missing: true, hidden: true, fault.Conflict: true, fault.Twice: false} {
		if errors.Is(err, kind) != want {
			t.Errorf("errors.Is(%q) is %v", kind, !want)
		}
	}
	var one *fault.Fault
	if !errors.As(err, &one) || one.Path != "edge" {
		t.Errorf("errors.As finds %v", one)
	}
}

func TestJSON(t *testing.T) {
	text, err := json.Marshal(some())
	if err != nil {
		t.Fatal(err)
	}
	var back fault.Faults
	if err := json.Unmarshal(text, &back); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(some(), back); diff != "" {
		t.Error(diff)
	}
}

func TestText(t *testing.T) {
	f := some()[3]
	metric := func(amount string) string {
		return units.Notation{Unit: units.Millimetre}.Exact(units.MustParse(amount))
	}
	if got, want := f.Text(metric), "cut 50.8 mm: out of range, want at most 25.4 mm (drafted)"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestWords(t *testing.T) {
	var a fault.Audit
	a.Unused("cord", units.Inch.Of(1), false, units.RatioOf(2, 1))
	a.Unused("row", units.Length{}, true, units.RatioOf(2, 1))
	a.Text("name", "a\x1bb")
	a.Text("name", strings.Repeat("x", fault.MaxName+1))
	a.Text("name", "Bündchen")
	want := `cord 1 in: not used here, want none for 2
name "a\x1bb": cannot be read, want printable text
name 201 bytes: out of range, want at most 200 bytes`
	if err := a.Err(); err.Error() != want {
		t.Error(cmp.Diff(want, err.Error()))
	}
	f := some()[3]
	if f.Want() != "at most 1 in (drafted)" || f.Error() != some()[3].Error() {
		t.Errorf("got %q", f.Want())
	}
	if got := fault.Under("", errors.New("odd"))[0].Error(); got != "odd" {
		t.Errorf("an error that is no fault is %q", got)
	}
	at := &fault.Fault{Kind: fault.Form, At: "line 3, column 14"}
	if got := at.Error(); got != "cannot be read (line 3, column 14)" {
		t.Errorf("got %q", got)
	}
	for _, c := range [][3]string{{"", "a", "a"}, {"a", "", "a"}, {"a", "[1]", "a[1]"}, {"a", "b", "a.b"}} {
		if got := fault.Join(c[0], c[1]); got != c[2] {
			t.Errorf("%q and %q make %q", c[0], c[1], got)
		}
	}
}

func TestVisible(t *testing.T) {
	for in, want := range map[string]string{
		"plain, Naht, ふち":    "plain, Naht, ふち",
		"a\u202eb\uffff\xff": `a\u202eb\uffff\xff`,
		"a\u2028b\ufeff":     `a\u2028b\ufeff`,
	} {
		if got := fault.Visible(in); got != want {
			t.Errorf("%q is %q, want %q", in, got, want)
		}
	}
}

func TestQuote(t *testing.T) {
	for in, want := range map[string]string{
		"a\x1b[31m": `"a\x1b[31m"`,
		"\u202e":    `"\u202e"`,
		string(make([]byte, fault.MaxQuote+1))[:fault.MaxQuote+1]: "",
	} {
		got := fault.Quote(in)
		if want == "" {
			if n := len(got); n > 4*fault.MaxQuote+5 {
				t.Errorf("%d bytes for a long text", n)
			}
			continue
		}
		if got != want {
			t.Errorf("Quote(%q) is %s, want %s", in, got, want)
		}
	}
}

// Many faults are cut short and counted; one too many is told in full.
func TestMost(t *testing.T) {
	for n, want := range map[int]int{1: 1, fault.MaxFaults: fault.MaxFaults, fault.MaxFaults + 1: fault.MaxFaults + 1, 1000: fault.MaxFaults + 1} {
		var a fault.Audit
		for range n {
			a.Fault("takes", "1 in", "none", fault.Range)
		}
		var fs fault.Faults
		if !errors.As(fault.Most(a.Err()), &fs) || len(fs) != want || n > want && fs[fault.MaxFaults].Got != strconv.Itoa(n-fault.MaxFaults)+" faults more" {
			t.Errorf("%d faults are %d, the last %v", n, len(fs), fs[len(fs)-1])
		}
	}
	plain := errors.New("plain")
	if fault.Most(plain) != plain || fault.Most(nil) != nil {
		t.Error("an error without faults is changed")
	}
}

// Text that cannot be seen is escaped in JSON, and is read back as it was.
func TestVisibleJSON(t *testing.T) {
	for _, s := range []string{"", "ruff", "Rüsche \"a\\b\" </>", "\x1b[31m\x7f", "\u009b \u202e \u2066 \ufeff \u2028", "\uffff \U0001fffe \U0001f600"} {
		b, err := json.Marshal(s)
		if err != nil {
			t.Fatal(err)
		}
		b = fault.VisibleJSON(b)
		var back string
		if err := json.Unmarshal(b, &back); err != nil || back != s || fault.Visible(string(b)) != string(b) {
			t.Errorf("%q is written as %q and read as %q, %v", s, b, back, err)
		}
	}
	if got := string(fault.VisibleJSON([]byte("[\n\t\"\u202e\"\n]"))); got != "[\n\t\"\\u202e\"\n]" {
		t.Errorf("%q", got)
	}
}

func TestUnder(t *testing.T) {
	for _, c := range []struct{ path, inner, want string }{
		{"seams[1]", "spec.trim", "seams[1].spec.trim"},
		{"takes", "[2].taken", "takes[2].taken"},
		{"tin", "", "tin"},
		{"", "trim", "trim"},
	} {
		given := fault.Faults{{Path: c.inner, Kind: fault.Range}}
		if got := fault.Under(c.path, given); len(got) != 1 || got[0].Path != c.want || given[0].Path != c.inner {
			t.Errorf("%q under %q is %v", c.inner, c.path, got)
		}
	}
	plain := fault.Kind("broken")
	if got := fault.Under("lay", plain); len(got) != 1 || got[0].Path != "lay" || !errors.Is(got, plain) {
		t.Errorf("%v", got)
	}
	if fault.Under("lay", nil) != nil || fault.Faults(nil).OrNil() != nil {
		t.Error("no error becomes one")
	}
}
