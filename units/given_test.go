package units_test

import (
	"encoding/json"
	"testing"

	"example.com/clothyard/units"
)

func TestGiven(t *testing.T) {
	type spec struct {
		Lap units.Given[units.Length] `json:"lap,omitzero"`
	}
	for _, c := range []struct {
		spec spec
		text string
	}{
		{spec{}, `{}`},
		{spec{units.Give(units.Length{})}, `{"lap":"0 in"}`},
		{spec{units.Give(units.Inch.Of(1))}, `{"lap":"1 in"}`},
	} {
		text, err := json.Marshal(c.spec)
		if err != nil || string(text) != c.text {
			t.Errorf("got %s, %v, want %s", text, err, c.text)
		}
		var back spec
		if err := json.Unmarshal(text, &back); err != nil || back != c.spec {
			t.Errorf("%s reads back as %v, %v", text, back, err)
		}
	}
	none, zero := units.Given[units.Length]{}, units.Give(units.Length{})
	if none == zero || !none.IsZero() || zero.IsZero() {
		t.Error("zero given is not told from not given")
	}
	if none.Or(units.Inch.Of(2)) != units.Inch.Of(2) || zero.Or(units.Inch.Of(2)) != (units.Length{}) {
		t.Error("Or takes the wrong one")
	}
	if _, given := none.Get(); given {
		t.Error("Get says that nothing is given")
	}
	back := zero
	if err := back.UnmarshalText(nil); err != nil || back != none {
		t.Errorf("empty text is %v, %v", back, err)
	}
	if err := back.UnmarshalText([]byte("1 furlong")); err == nil || back != none {
		t.Errorf("a length that cannot be read is %v", back)
	}
}
