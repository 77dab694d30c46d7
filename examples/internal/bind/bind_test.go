package bind

import (
	"encoding/json"
	"errors"
	"iter"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// inner is a part of a Plan.
type inner struct {
	Deep units.Length
	List []int
}

// listing is a Plan with every kind of method that is listed, and some that are not.
type listing struct {
	Spec lister
	Size int
}

type lister struct{ Fail bool }

func (listing) Pairs() iter.Seq2[units.Length, units.Length] {
	return func(yield func(a, b units.Length) bool) { yield(units.Inch.Of(1), units.Inch.Of(2)) }
}
func (listing) Singles() iter.Seq[units.Length] {
	return func(yield func(units.Length) bool) { yield(units.Inch.Of(3)) }
}
func (listing) At(int) units.Length       { return units.Length{} }
func (listing) Sheet() ticket.Sheet       { return ticket.Sheet{} }
func (l lister) Plan() (listing, error)   { return listing{}, nil }
func (l lister) Solved() ([]inner, error) { return []inner{{Deep: units.Inch.Of(4)}}, l.err() }
func (l lister) Tried() iter.Seq2[inner, error] {
	return func(yield func(inner, error) bool) {
		_ = yield(inner{}, nil) && yield(inner{Deep: units.Inch.Of(5)}, l.err())
	}
}
func (l lister) err() error {
	if l.Fail {
		return errors.New("failed")
	}
	return nil
}

func TestLists(t *testing.T) {
	for fail, want := range map[bool]string{
		false: `{"spec":{},"size":0,"pairs":[["1 in","2 in"]],"singles":["3 in"],"solved":[{"deep":"4 in","list":[]}],"tried":[{"deep":"0 in","list":[]},{"deep":"5 in","list":[]}]}`,
		true:  `{"spec":{"fail":true},"size":0,"pairs":[["1 in","2 in"]],"singles":["3 in"]}`,
	} {
		b, err := AppendFields([]byte("{"), listing{Spec: lister{fail}})
		if got := string(b) + "}"; got != want || err != nil {
			t.Errorf("got  %s, %v\nwant %s", got, err, want)
		}
	}
}

// Text that cannot be seen is escaped, and is read back from JSON as it was.
func TestEscapes(t *testing.T) {
	for _, s := range []string{"", "ruff", "Rüsche \"a\\b\" </>", "\x1b[31m\x7f", "\u009b \u202e \u2066 \ufeff \u2028", "\uffff \U0001fffe \U0001f600"} {
		b, err := Append(nil, s)
		if err != nil || fault.Visible(string(b)) != string(b) {
			t.Errorf("%q is written as %q, %v", s, b, err)
		}
		var back string
		if err := json.Unmarshal(b, &back); err != nil || back != s {
			t.Errorf("%s is read as %q, %v", b, back, err)
		}
	}
}
