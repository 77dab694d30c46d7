package ticket

import (
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// An Op joins a term of a [Line] to what stands before it.
type Op uint8

// The operations. A line is worked strictly from left to right.
const (
	Plus Op = iota
	Minus
	By   // multiplied by
	Over // divided by
)

// A Term is an amount of a line and how it joins what stands before. The Op of
// the first term is Plus.
type Term struct {
	Op     Op     `json:"op,omitzero"`     // how it joins; Plus for the first
	Amount Amount `json:"amount,omitzero"` // the term itself
	Name   string `json:"name,omitzero"`   // what the amount is, as in "first pass"
}

// A Line is one line of working: terms worked from left to right, and what they
// come to.
type Line struct {
	Label  string `json:"label,omitzero"`  // what the result is
	Terms  []Term `json:"terms,omitzero"`  // empty for a figure that is merely stated
	Result Amount `json:"result,omitzero"` // what the terms come to
}

// ErrWorking is what [Line.Check] finds: a line that does not come to its result.
const ErrWorking fault.Kind = "the working does not come to the result"

// Check works the line again and compares. It fails with [ErrWorking] where the
// terms do not come to the result, or cannot be joined: two lengths are added
// or divided, and a length is multiplied by a number.
func (l Line) Check() error {
	if len(l.Terms) == 0 {
		return nil
	}
	sum := l.Terms[0].Amount
	for _, t := range l.Terms[1:] {
		var ok bool
		if sum, ok = join(sum, t.Op, t.Amount); !ok {
			return ErrWorking
		}
	}
	if !same(sum, l.Result) {
		return ErrWorking
	}
	return nil
}

func same(a, b Amount) bool {
	if a == b {
		return true
	}
	switch {
	case a.measure == Length && b.measure == Length:
		// Two enclosures of one number overlap.
		alo, ahi := a.near.Bounds()
		blo, bhi := b.near.Bounds()
		return !bhi.Less(alo) && !ahi.Less(blo)
	case pure(a) && pure(b):
		return a.Number() == b.Number()
	}
	return false
}

func pure(a Amount) bool { return a.measure == Ratio || a.measure == Count }

func join(a Amount, op Op, b Amount) (Amount, bool) {
	switch {
	case a.measure == Length && b.measure == Length:
		switch op {
		case Plus:
			return About(a.near.Add(b.near)), true
		case Minus:
			return About(a.near.Sub(b.near)), true
		case By:
			x, okx := a.near.Exact()
			y, oky := b.near.Exact()
			return Square(x.Times(y)), okx && oky
		case Over:
			x, okx := a.near.Exact()
			y, oky := b.near.Exact()
			if !okx || !oky || y.IsZero() {
				return Amount{}, false
			}
			return Times(x.Div(y)), true
		}
	case a.measure == Length && pure(b):
		switch op {
		case By:
			return About(a.near.Scale(b.Number())), true
		case Over:
			if b.Number().IsZero() {
				return Amount{}, false
			}
			return About(a.near.Scale(units.RatioOf(1, 1).Quo(b.Number()))), true
		}
	case pure(a) && b.measure == Length && op == By:
		return About(b.near.Scale(a.Number())), true
	case a.measure == Area && b.measure == Length && op == Over:
		y, ok := b.near.Exact()
		if !ok || y.IsZero() {
			return Amount{}, false
		}
		return Long(a.area.Over(y)), true
	case a.measure == Area && b.measure == Area && op == Plus:
		return Square(a.area.Add(b.area)), true
	case a.measure == Area && b.measure == Area && op == Minus:
		return Square(a.area.Sub(b.area)), true
	case a.measure == Area && pure(b) && op == By:
		return Square(a.area.Scale(b.Number())), true
	case pure(a) && pure(b):
		x, y := a.Number(), b.Number()
		switch op {
		case Plus:
			return Times(x.Add(y)), true
		case Minus:
			return Times(x.Sub(y)), true
		case By:
			return Times(x.Mul(y)), true
		case Over:
			if y.IsZero() {
				return Amount{}, false
			}
			return Times(x.Quo(y)), true
		}
	}
	return Amount{}, false
}

// Text is the line written out: label, result, then the working behind it.
func (l Line) Text(in ...units.Notation) string {
	var b strings.Builder
	b.WriteString(l.Label)
	b.WriteString(": ")
	b.WriteString(l.Result.Text(in...))
	for i, t := range l.Terms {
		switch {
		case i == 0:
			b.WriteString(" = ")
		default:
			b.WriteString(" " + t.Op.String() + " ")
		}
		b.WriteString(t.Amount.exactText(in))
		if t.Name != "" {
			b.WriteString(" " + t.Name)
		}
	}
	return b.String()
}

// exactText is a in the first notation without rounding: working is never rounded.
func (a Amount) exactText(in []units.Notation) string {
	l, ok := a.near.Exact()
	if a.measure != Length || !ok {
		return a.Text(in[:min(1, len(in))]...)
	}
	return a.notations(in)[0].Exact(l)
}
