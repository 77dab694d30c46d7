// Package ticket holds what every sum of this module reports beside its numbers:
// a [Sheet] of work steps, lines of working, cautions and sources, all of them
// amounts and not text, and the [Faults] of an input that cannot be.
//
// A Sheet is written by [Sheet.Text] in any notation, so that inches and metric
// are two writings of one computation.
//
//	p, err := seam.French{First: three16, Second: quarter}.Plan()
//	fmt.Print(p.Sheet().Text(units.Notation{}))
//
// The one list of published sources is here too: a table row or a rule names a
// source by its id, and [Lookup] tells what that is.
package ticket
