// Package noun is the contract that every noun of the library keeps, and what
// can be done with any noun because it keeps it.
//
// A noun is a Spec, a struct of plain fields in which zero means "not given",
// whose method Plan works it out:
//
//	func (s Strip) Plan() (StripPlan, error)
//
// The error is [fault.Faults]. The plan holds the solved Spec, the names of the
// fields that were assumed, and the answers, all of them fields; its method Sheet
// tells how the work is done. Spec, plan, sheet and faults marshal with
// encoding/json and read back equal.
//
// [Read] reads a Spec from JSON that a person wrote. It refuses what
// encoding/json lets through: a key that is not known, written in another case or
// given twice, a zero that would be taken for "not given", text after the end. A
// handler on a server is Read, Plan and json.Encode.
//
// A package lists its nouns in a function Nouns; a [Registry] finds them by name.
package noun
