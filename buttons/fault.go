package buttons

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
)

// What is particular to buttons; test for them with errors.Is. The common faults
// are those of package ticket.
const (
	// ErrNoCount is a span that no whole number of gaps fills within the limits.
	ErrNoCount fault.Kind = "no whole number of buttons fits"
	// ErrPastEdge is a button or a hole that reaches past the front edge or the
	// end of the row.
	ErrPastEdge fault.Kind = "reaches past the edge"
)

// The bounds on what is given.
const (
	// MaxCount is the most buttons in a row, in a stock and in all its places.
	MaxCount = 10_000
	// MaxPlaces is the most placements in one stock.
	MaxPlaces = 64
	// MaxDigits is the most characters in the exact text of a place, a gap or the step
	// of a row, times the number of its buttons: every mark works with all of them.
	MaxDigits = 500_000
	// MaxMonths is the greatest age of a wearer, in months: 125 years.
	MaxMonths = 1_500
)

// whole records a count that may be left out, below zero or above MaxCount.
func whole(a *fault.Audit, path string, n, most int) {
	switch {
	case n < 0:
		a.Fault(path, ticket.Of(n).String(), "0 or more", fault.Sign)
	case n > most:
		a.Fault(path, ticket.Of(n).String(), "at most "+ticket.Of(most).String(), fault.Range)
	}
}

// digits records a length with more digits than n marks of it can be worked with.
func digits(a *fault.Audit, path string, l units.Length, n int) {
	var room [64]byte
	text, err := l.AppendText(room[:0])
	if most := MaxDigits / n; err != nil || len(text) > most {
		a.Fault(path, "a longer number", "at most "+strconv.Itoa(min(most, units.MaxText))+" characters of exact text for "+strconv.Itoa(n)+" buttons", units.ErrBound)
	}
}

// unused records a length that is given though nothing here reads it.
func unused(a *fault.Audit, path string, l units.Length, why string) {
	if !l.IsZero() {
		a.Fault(path, l.String(), "none "+why, fault.Unused)
	}
}

// eighth is the default for how far a hole reaches past the button's place, and
// sixteenth the default mark of the tape: see [Spacings].
// On a metric tape they are what one would say there: common practice.
func eighth(t units.Tape) units.Length {
	return t.Of(units.Inch.Frac(1, 8), units.Millimetre.Of(3))
}

func sixteenth(t units.Tape) units.Length {
	return t.Of(units.Inch.Frac(1, 16), units.Millimetre.Of(1))
}

// fillTape fills the tape of a Spec from its lengths.
func fillTape(a *fault.Audit, t *units.Tape, spec any) {
	if *t == 0 {
		*t = noun.Tape(spec)
	}
	t.Check(a, "tape")
}
