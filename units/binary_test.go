package units_test

import (
	"bytes"
	"encoding"
	"encoding/gob"
	"testing"

	"example.com/clothyard/units"
)

// kept is a value of each type, as a program keeps them between two runs.
type kept struct {
	Length units.Length
	Ratio  units.Ratio
	Area   units.Area
	Near   units.Near
	Number units.NearRatio
	Unit   units.Unit
	Mode   units.Mode
	Tape   units.Notation
	Reader units.Parser
	Many   []units.Length
	Named  map[string]units.Length
}

// TestGob writes values with encoding/gob and reads them back, those of nothing and of
// more than a word too.
func TestGob(t *testing.T) {
	r := seeded(33)
	for i := range 300 {
		l, q := lengthOf(operand(r)), units.RatioOf(r.Int64N(2001)-1000, r.Int64N(999)+1)
		in := kept{
			Length: l, Ratio: q, Area: l.Times(units.Inch.Of(3)), Near: units.Exactly(l), Number: units.ExactlyRatio(q),
			Unit: units.Yard, Mode: units.Up, Tape: units.Notation{Unit: units.Centimetre, Slack: units.Inch.Frac(1, 64)},
			Reader: units.Parser{DecimalComma: true}, Many: []units.Length{l, {}}, Named: map[string]units.Length{"hem": l},
		}
		if i == 0 {
			in = kept{}
		}
		var buf bytes.Buffer
		if err := gob.NewEncoder(&buf).Encode(in); err != nil {
			t.Fatalf("%+v: %v", in, err)
		}
		var out kept
		if err := gob.NewDecoder(&buf).Decode(&out); err != nil {
			t.Fatalf("%+v: %v", in, err)
		}
		same := out.Length == in.Length && out.Ratio == in.Ratio && out.Area == in.Area && out.Near == in.Near && out.Number == in.Number &&
			out.Unit == in.Unit && out.Mode == in.Mode && out.Tape == in.Tape && out.Reader == in.Reader && len(out.Many) == len(in.Many) && out.Named["hem"] == in.Named["hem"]
		for k := range out.Many {
			same = same && out.Many[k] == in.Many[k]
		}
		if !same {
			t.Fatalf("%+v\nreads back as %+v", in, out)
		}
	}
	// What is irrational reads back to bounds that enclose it.
	root, err := units.Sqrt(units.Inch.Of(2).Times(units.Inch.Of(1)), units.Length{})
	if err != nil {
		t.Fatal(err)
	}
	data, err := root.MarshalBinary()
	var back units.Near
	if err != nil || back.UnmarshalBinary(data) != nil {
		t.Fatal(data, err)
	}
	lo, hi := root.Bounds()
	if l, h := back.Bounds(); lo.Less(l) || h.Less(hi) || h.Sub(l) == (units.Length{}) {
		t.Errorf("%v reads back as %v", root, back)
	}
}

// TestBinary holds each type to the interfaces, and to what it does with bytes that are
// none of its own.
func TestBinary(t *testing.T) {
	l := units.MustParse("5/8 in")
	for _, v := range []any{&l, new(units.Ratio), new(units.Area), new(units.Near), new(units.NearRatio)} {
		data, err := v.(encoding.BinaryMarshaler).MarshalBinary()
		more, err2 := v.(encoding.BinaryAppender).AppendBinary([]byte("x"))
		if err != nil || err2 != nil || string(more) != "x"+string(data) {
			t.Errorf("%T: %q and %q, %v, %v", v, data, more, err, err2)
		}
		for _, bad := range []string{"", "\x00", "\xff\xff", "5/0 in", "1e99999999 in"} {
			if err := v.(encoding.BinaryUnmarshaler).UnmarshalBinary([]byte(bad)); err == nil {
				t.Errorf("%T takes %q", v, bad)
			}
		}
		again, err := v.(encoding.BinaryMarshaler).MarshalBinary()
		if err != nil || !bytes.Equal(again, data) {
			t.Errorf("%T: what is refused has changed it to %q", v, again)
		}
	}
	long := l.Scale(units.FromRat(huge()))
	if _, err := long.MarshalBinary(); err == nil {
		t.Error("longer than can be read back")
	}
}
