// Package bind joins text to the Specs and Plans of the library: it reads a Spec
// from JSON or from name=value pairs and writes a Plan as JSON, by reflection,
// so that a new noun needs no parser of its own.
//
// A key is the name of the field with its first letter lowered. Unknown,
// repeated and differently written keys are faults, as is an explicit zero in a
// field where zero means "not given". All faults are found at once, each with
// its path.
package bind
