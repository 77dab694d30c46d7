package ticket

import "example.com/clothyard/units"

// Sum is a line of working with lengths: what the result is, the result, and the terms
// that come to it.
func Sum(label string, result units.Length, terms ...Term) Line {
	return Line{Label: label, Result: Long(result), Terms: terms}
}

// Add is a term that adds a length.
func Add(l units.Length, name string) Term { return Term{Op: Plus, Amount: Long(l), Name: name} }

// Less is a term that takes a length away.
func Less(l units.Length, name string) Term { return Term{Op: Minus, Amount: Long(l), Name: name} }

// Multiply is a term that multiplies by a number of things.
func Multiply(n int, name string) Term { return Term{Op: By, Amount: Of(n), Name: name} }
