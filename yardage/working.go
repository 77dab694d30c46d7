package yardage

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// line is one line of working. Terms that change nothing, nothing added or a
// factor of 1, are left out.
func line(label string, result ticket.Amount, terms ...ticket.Term) ticket.Line {
	kept := terms[:0]
	for i, t := range terms {
		switch t.Op {
		case ticket.Plus, ticket.Minus:
			if i > 0 && (t.Amount == ticket.Long(units.Length{}) || t.Amount == ticket.Times(units.Ratio{})) {
				continue
			}
		default:
			if t.Amount == ticket.Times(units.RatioOf(1, 1)) {
				continue
			}
		}
		kept = append(kept, t)
	}
	terms = kept
	return ticket.Line{Label: label, Terms: terms, Result: result}
}

// long is a length as a term, first or added.
func long(l units.Length, name string) ticket.Term {
	return ticket.Term{Amount: ticket.Long(l), Name: name}
}

// less is a length as a term taken off.
func less(l units.Length, name string) ticket.Term {
	return ticket.Term{Op: ticket.Minus, Amount: ticket.Long(l), Name: name}
}

// by is a number as a factor.
func by(r units.Ratio, name string) ticket.Term {
	return ticket.Term{Op: ticket.By, Amount: ticket.Times(r), Name: name}
}

// count is a count as a factor.
func count(n int, name string) ticket.Term {
	return ticket.Term{Op: ticket.By, Amount: ticket.Of(n), Name: name}
}

// over is a number as a divisor.
func over(r units.Ratio, name string) ticket.Term {
	return ticket.Term{Op: ticket.Over, Amount: ticket.Times(r), Name: name}
}

// byLong and overLong are lengths as factor and divisor.
func byLong(l units.Length, name string) ticket.Term {
	return ticket.Term{Op: ticket.By, Amount: ticket.Long(l), Name: name}
}

func overLong(l units.Length, name string) ticket.Term {
	return ticket.Term{Op: ticket.Over, Amount: ticket.Long(l), Name: name}
}

// left is what is left of 1 after shrinking by s.
func left(s units.Ratio) units.Ratio { return units.RatioOf(1, 1).Sub(s) }

// shrinkage records a shrinkage that is below 0, or that leaves nothing.
func shrinkage(a *fault.Audit, path string, s units.Ratio) {
	switch {
	case s.Sign() < 0:
		a.Fault(path, s.String(), "0 or more", fault.Sign)
	case s.Cmp(units.RatioOf(1, 1)) >= 0:
		a.Fault(path, s.String(), "less than 1, which is 100 %", fault.Range)
	}
}

// swatchCare is the caution on every shrinkage that is not measured.
func swatchCare() ticket.Caution {
	return ticket.Caution{
		Text:  "Shrinkage differs from bolt to bolt: wash and press a measured square of this very cloth, as the garment will be washed.",
		Refer: "the cloth's care label decides how it may be washed",
	}
}
