package ticket_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// TestTurned: what is longer by less than nothing is shorter by so much, and the
// working comes to it.
func TestTurned(t *testing.T) {
	l := func(s string) ticket.Amount { return ticket.Long(units.MustParse(s + " in")) }
	term := func(op ticket.Op, a ticket.Amount, name string) ticket.Term {
		return ticket.Term{Op: op, Amount: a, Name: name}
	}
	root := units.Diagonal().Of(units.Inch.Of(1))
	for _, c := range []struct {
		line ticket.Line
		want string
	}{
		{ticket.Line{Result: l("3/8"), Terms: []ticket.Term{term(ticket.Plus, l("1/2"), "cut"), term(ticket.Minus, l("1/8"), "taken")}}, "longer by: 3/8 in = 1/2 in cut - 1/8 in taken"},
		{ticket.Line{Result: l("0"), Terms: []ticket.Term{term(ticket.Plus, l("1/2"), "cut"), term(ticket.Minus, l("1/2"), "taken")}}, "longer by: 0 in = 1/2 in cut - 1/2 in taken"},
		{ticket.Line{Result: l("-3/8"), Terms: []ticket.Term{term(ticket.Plus, l("1/8"), "cut"), term(ticket.Minus, l("1/2"), "taken")}}, "shorter by: 3/8 in = 1/2 in taken - 1/8 in cut"},
		{ticket.Line{Result: l("-3/8"), Terms: []ticket.Term{term(ticket.Plus, l("-3/16"), "upper"), term(ticket.Plus, l("-3/16"), "under")}}, "shorter by: 3/8 in = 3/16 in upper + 3/16 in under"},
		{ticket.Line{Result: l("-3/8"), Terms: []ticket.Term{term(ticket.Plus, l("1/8"), "upper"), term(ticket.Plus, l("-1/2"), "under")}}, "shorter by: 3/8 in = 1/2 in under - 1/8 in upper"},
		{ticket.Line{Result: l("-25/64")}, "shorter by: full 3/8 in (25/64 in)"},
		{ticket.Line{Result: l("-1/2"), Terms: []ticket.Term{term(ticket.Plus, l("1/8"), "a"), term(ticket.Minus, l("1/4"), "b"), term(ticket.By, ticket.Of(2), "sides"), term(ticket.Minus, l("1/4"), "c")}},
			"shorter by: 1/2 in = 1/4 in b - 1/8 in a x 2 sides + 1/4 in c"},
		{ticket.Line{Result: ticket.About(root.Neg()), Terms: []ticket.Term{term(ticket.Plus, ticket.About(root.Neg()), "a")}}, "shorter by: about 1 7/16 in = about 1 7/16 in a"},
		{ticket.Line{Result: ticket.Of(-2), Terms: []ticket.Term{term(ticket.Plus, ticket.Of(1), "a"), term(ticket.Minus, ticket.Of(3), "b")}}, "shorter by: 2 = 3 b - 1 a"},
		{ticket.Line{Result: ticket.Price("-2.00")}, "longer by: -2.00"},
	} {
		c.line.Label = "longer by"
		before := c.line.Text()
		got := c.line.Turned("shorter by")
		if got.Text() != c.want || got.Check() != nil {
			t.Errorf("%s\nis turned to %s, want %s, %v", before, got.Text(), c.want, got.Check())
		}
		if c.line.Text() != before {
			t.Errorf("%s has become %s", before, c.line.Text())
		}
	}
}

// A sum of lengths comes out.
func TestSum(t *testing.T) {
	in := units.Inch.Frac
	l := ticket.Sum("in all", in(7, 8), ticket.Add(in(3, 8), "first"), ticket.Multiply(3, "rows"), ticket.Less(in(1, 4), "lap"))
	if err := l.Check(); err != nil {
		t.Error(err)
	}
	if got, want := l.Text(), "in all: 7/8 in = 3/8 in first x 3 rows - 1/4 in lap"; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}
