package ticket_test

import (
	"encoding/json"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

func TestAmountJSON(t *testing.T) {
	for text, a := range map[string]ticket.Amount{
		`null`:                 {},
		`{"length":"3/16 in"}`: ticket.Long(units.Inch.Frac(3, 16)),
		`{"length":"0 in"}`:    ticket.Long(units.Length{}),
		`{"machine":"2 mm"}`:   ticket.Machine(units.Millimetre.Of(2)),
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

// A sheet reads back equal, whatever stands in it.
func TestSheetJSON(t *testing.T) {
	s := ticket.Sheet{
		Title: "A hem",
		Steps: []ticket.Step{{
			Do: "Fold the hem", Together: ticket.WrongTogether, At: ticket.Long(units.Inch.Frac(3, 8)), From: "the raw edge", Trim: ticket.Long(units.Inch.Frac(1, 8)),
			Press: "up", Note: "twice", Check: ticket.Check{What: "depth", Want: ticket.About(units.Pi().Of(units.Inch.Of(3))), Give: ticket.Long(units.Inch.Frac(1, 16)), Mend: "fold again"},
		}},
		Lines: []ticket.Line{{Label: "taken", Terms: []ticket.Term{
			{Amount: ticket.Long(units.Inch.Frac(3, 8)), Name: "depth"}, {Op: ticket.By, Amount: ticket.Of(2)},
		}, Result: ticket.Long(units.Inch.Frac(3, 4))}},
		Assumed:  []string{"drafted", "cut"},
		Cautions: []ticket.Caution{ticket.CutCare()},
		Sources:  []source.Cite{{For: "depth", ID: "us-drawstring-rule", Place: "page 1", Known: source.Read}, source.Practise("pressing")},
	}
	text, err := json.Marshal(s)
	if err != nil {
		t.Fatal(err)
	}
	var back ticket.Sheet
	if err := json.Unmarshal(text, &back); err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(s, back) {
		t.Errorf("%s\nreads back as\n%+v", text, back)
	}
	if !strings.Contains(string(text), `"assumed":["drafted","cut"]`) {
		t.Errorf("the assumed fields are no list in %s", text)
	}
}
