package nountest

import (
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A tape of a few lengths; its fault says what limit names.
type tape struct {
	Long  units.Length
	Count int
	Parts []part
	limit string
}

type part struct{ Full units.Ratio }

type tapePlan struct {
	Spec    tape
	Assumed []string
	Twice   units.Length
}

func (s tape) Plan() (tapePlan, error) {
	var a fault.Audit
	fault.AtMost(&a, "Long", s.Long, units.Inch.Of(9), "the tape", fault.Range)
	if s.Count > 3 {
		a.Fault("Count", "", s.limit, fault.Range)
	}
	for _, p := range s.Parts {
		if p.Full.Less(units.RatioOf(1, 1)) {
			a.Fault("Parts[0].Full", p.Full.String(), "1 or more", fault.Range)
		}
	}
	return tapePlan{Spec: s, Twice: s.Long.MulInt(2)}, a.Err()
}

func TestLimits(t *testing.T) {
	for limit, want := range map[string]string{
		"0 to 3":           "",
		"at most 3 (why)":  "",
		"less than 4":      "",
		"2, which is left": "",
		"at most 2":        "may be beyond its limit",
		"at most 4":        "yet with these limits",
		"fewer":            "the limit is no value of Count",
	} {
		s := tape{Long: units.Inch.Of(12), Count: 7, Parts: []part{{}}, limit: limit}
		got := strings.Join(limits(s), "\n")
		if (got == "") != (want == "") || !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", limit, got, want)
		}
		if s.Parts[0].Full.Sign() != 0 {
			t.Error("the Spec was written to")
		}
	}
	if got := limits(tape{}); len(got) != 1 || got[0] != "no faults" {
		t.Errorf("%q", got)
	}
}

func TestSolved(t *testing.T) {
	p, err := tape{Long: units.Inch.Of(1), Count: 1}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	Solved(t, p)
}
