package ticket_test

import (
	"encoding/json"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

func TestAmountJSON(t *testing.T) {
	for text, a := range map[string]ticket.Amount{
		`null`:                 {},
		`{"length":"3/16 in"}`: ticket.Long(units.Inch.Frac(3, 16)),
		`{"length":"0 in"}`:    ticket.Long(units.Length{}),
		`{"ratio":"2 1/7"}`:    ticket.Times(units.RatioOf(15, 7)),
		`{"ratio":"3"}`:        ticket.Times(units.RatioOf(3, 1)),
		`{"count":3}`:          ticket.Of(3),
		`{"area":"12 sq in"}`:  ticket.Square(units.Inch.Of(3).Times(units.Inch.Of(4))),
		`{"money":"4.50"}`:     ticket.Price("4.50"),
	} {
		got, err := json.Marshal(a)
		if err != nil || string(got) != text {
			t.Errorf("got %s, %v, want %s", got, err, text)
		}
		back := ticket.Of(9)
		if err := json.Unmarshal(got, &back); err != nil || back != a {
			t.Errorf("%s reads back as %v, %v", got, back, err)
		}
	}
	var a ticket.Amount
	if err := json.Unmarshal([]byte(`{"length":"3"}`), &a); err == nil {
		t.Error("a length without a unit is read")
	}
}
