package ticket

import (
	"errors"
	"fmt"
	"strings"

	"example.com/clothyard/units"
)

// The faults that every package shares; test for them with errors.Is. A package
// adds its own for what is particular to its trade.
var (
	ErrMissing  = errors.New("not given")
	ErrUnused   = errors.New("not used here")
	ErrSign     = errors.New("wrong sign")
	ErrRange    = errors.New("out of range")
	ErrConflict = errors.New("disagrees with what else is given")
	ErrUnknown  = errors.New("not known")
	ErrTwice    = errors.New("given twice")
	ErrForm     = errors.New("cannot be read")
)

// A Fault is one thing wrong with an input.
type Fault struct {
	Path  string // the field, as in Takes[2].Taken
	Got   string // the value with its unit, as given; empty if none was
	Limit string // what would have been right, with its unit
	Err   error  // the kind of fault, for errors.Is
}

// Error is the field, the value, the kind of fault and the limit, [Visible].
func (f *Fault) Error() string {
	var b strings.Builder
	b.WriteString(f.Path)
	if f.Got != "" {
		if f.Path != "" {
			b.WriteByte(' ')
		}
		b.WriteString(f.Got)
	}
	if f.Err != nil {
		b.WriteString(": ")
		b.WriteString(f.Err.Error())
	}
	if f.Limit != "" {
		b.WriteString(", want ")
		b.WriteString(f.Limit)
	}
	return Visible(b.String())
}

// Unwrap is the kind of fault.
func (f *Fault) Unwrap() error { return f.Err }

// Faults are all that is wrong with an input, in the order of its fields. As an
// error it is never empty.
type Faults []*Fault

// Error is one fault a line.
func (f Faults) Error() string {
	lines := make([]string, len(f))
	for i, one := range f {
		lines[i] = one.Error()
	}
	return strings.Join(lines, "\n")
}

// Unwrap is each fault, for errors.Is and errors.As.
func (f Faults) Unwrap() []error {
	errs := make([]error, len(f))
	for i, one := range f {
		errs[i] = one
	}
	return errs
}

// OrNil is f as an error, nil where there is no fault.
func (f Faults) OrNil() error {
	if len(f) == 0 {
		return nil
	}
	return f
}

// Under puts a path before each fault of err, as where a Spec is part of
// another: Under("Seams[1]", err). An error that is not Faults becomes one.
func Under(path string, err error) Faults {
	if err == nil {
		return nil
	}
	var fs Faults
	if !errors.As(err, &fs) {
		return Faults{{Path: path, Err: err}}
	}
	out := make(Faults, len(fs))
	for i, f := range fs {
		g := *f
		switch {
		case path == "":
		case g.Path == "":
			g.Path = path
		case strings.HasPrefix(g.Path, "["):
			g.Path = path + g.Path
		default:
			g.Path = path + "." + g.Path
		}
		out[i] = &g
	}
	return out
}

// An Audit collects faults while a Spec is checked. The zero Audit is ready.
type Audit struct{ faults Faults }

// Fault records a fault.
func (a *Audit) Fault(path, got, limit string, err error) {
	a.faults = append(a.faults, &Fault{path, got, limit, err})
}

// Include records the faults of a part, under its path.
func (a *Audit) Include(path string, err error) { a.faults = append(a.faults, Under(path, err)...) }

// Failed reports whether anything has been recorded.
func (a *Audit) Failed() bool { return len(a.faults) > 0 }

// Err is the faults recorded, or nil.
func (a *Audit) Err() error { return a.faults.OrNil() }

// Need records a missing length, or one that is not more than zero.
func (a *Audit) Need(path string, l units.Length) {
	switch l.Sign() {
	case 0:
		a.Fault(path, "", "more than 0 in", ErrMissing)
	case -1:
		a.Fault(path, l.String(), "more than 0 in", ErrSign)
	}
}

// NotNegative records a length below zero.
func (a *Audit) NotNegative(path string, l units.Length) {
	if l.Sign() < 0 {
		a.Fault(path, l.String(), "0 in or more", ErrSign)
	}
}

// AtMost records a length above a limit; why says where the limit comes from,
// as in "Cut".
func (a *Audit) AtMost(path string, l, limit units.Length, why string, err error) {
	if limit.Less(l) {
		a.Fault(path, l.String(), "at most "+limit.String()+" ("+why+")", err)
	}
}

// Unused records a field that is given though its kind does not read it.
func (a *Audit) Unused(path string, given fmt.Stringer, zero bool, kind fmt.Stringer) {
	if !zero {
		a.Fault(path, given.String(), "none for "+kind.String(), ErrUnused)
	}
}

// Count records a count outside low to high.
func (a *Audit) Count(path string, n, low, high int) {
	if n < low || n > high {
		err := ErrRange
		if n == 0 {
			err = ErrMissing
		}
		a.Fault(path, fmt.Sprint(n), fmt.Sprintf("%d to %d", low, high), err)
	}
}

// Text records a name or a text that [Unfit] refuses.
func (a *Audit) Text(path, s string) {
	if f := Unfit(path, s); f != nil {
		a.faults = append(a.faults, f)
	}
}

// Fields names the fields that a Plan filled with a default, in the order of
// the Spec, separated by blanks. It is empty where nothing was assumed.
type Fields string

// With is f and one more name.
func (f Fields) With(name string) Fields {
	if f == "" {
		return Fields(name)
	}
	return f + " " + Fields(name)
}

// Has reports whether name is among f.
func (f Fields) Has(name string) bool {
	for n := range strings.FieldsSeq(string(f)) {
		if n == name {
			return true
		}
	}
	return false
}
