package name_test

import (
	"encoding/json"
	"errors"
	"iter"
	"slices"
	"testing"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
)

type nap uint8

const (
	oneWay nap = iota + 1
	eitherWay
)

var naps = name.Of[nap]("nap", "none", "one-way", "either-way")

func (n nap) String() string                { return naps.String(n) }
func (n nap) MarshalText() ([]byte, error)  { return naps.Marshal(n) }
func (n *nap) UnmarshalText(t []byte) error { return naps.Unmarshal(n, t) }
func all() iter.Seq[nap]                    { return naps.All() }

func TestRoundTrip(t *testing.T) {
	if got := slices.Collect(all()); !slices.Equal(got, []nap{oneWay, eitherWay}) {
		t.Errorf("All yields %v", got)
	}
	for _, n := range append(slices.Collect(all()), 0) {
		text, err := json.Marshal(n)
		if err != nil {
			t.Fatal(err)
		}
		back := nap(9)
		if err := json.Unmarshal(text, &back); err != nil || back != n {
			t.Errorf("%s reads back as %v, %v", text, back, err)
		}
	}
}

func TestUnknown(t *testing.T) {
	if got := nap(9).String(); got != "nap(9)" || naps.Valid(9) || naps.Valid(0) || !naps.Valid(eitherWay) {
		t.Errorf("a value without a name is %s", got)
	}
	if _, err := nap(9).MarshalText(); !errors.Is(err, fault.Unknown) {
		t.Errorf("a value without a name is written: %v", err)
	}
	n := oneWay
	err := n.UnmarshalText([]byte("up"))
	want := `nap "up": not known, want one of one-way, either-way`
	if !errors.Is(err, fault.Unknown) || err.Error() != want || n != oneWay {
		t.Errorf("got %v and %v, want %s", n, err, want)
	}
}

func TestCheck(t *testing.T) {
	var a fault.Audit
	naps.Check(&a, "nap", oneWay)
	naps.Check(&a, "nap", 0)
	naps.Check(&a, "nap", 7)
	want := "nap: not given, want one of one-way, either-way\nnap nap(7): not known, want one of one-way, either-way"
	if err := a.Err(); err == nil || err.Error() != want {
		t.Errorf("got %v, want %s", err, want)
	}
}
