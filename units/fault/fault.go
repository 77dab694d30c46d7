// Package fault says what is wrong with an input: which field, the value as it
// was given, what kind of fault it is, and what would have been right.
//
// Every Plan of the library fails with [Faults], which errors.Is and errors.As
// look into:
//
//	if errors.Is(err, fault.Missing) { ... }
//	var all fault.Faults
//	if errors.As(err, &all) { ... }
//
// A Fault is data: it marshals with encoding/json and reads back equal. Amounts
// are held as exact text, so that they can be written again in another notation.
package fault

import (
	"errors"
	"slices"
	"strconv"
	"strings"
)

// A Kind is a kind of fault. It is an error, so that errors.Is finds it.
type Kind string

// The kinds that every package shares. A package adds its own for what is
// particular to its trade; no two have the same text.
const (
	Missing  Kind = "not given"
	Unused   Kind = "not used here"
	Sign     Kind = "wrong sign"
	Range    Kind = "out of range"
	Conflict Kind = "disagrees with what else is given"
	Unknown  Kind = "not known"
	Twice    Kind = "given twice"
	Form     Kind = "cannot be read"
)

// Error is the text of k.
func (k Kind) Error() string { return string(k) }

// A Fault is one thing wrong with an input.
type Fault struct {
	Path    string   `json:"path,omitzero"`    // the field, by its keys in JSON, as in takes[2].taken
	At      string   `json:"at,omitzero"`      // where it stands in a text that was read, as in line 3, column 14
	Got     string   `json:"got,omitzero"`     // the value with its unit; empty if none was given
	Assumed bool     `json:"assumed,omitzero"` // the value was not given but assumed
	Kind    Kind     `json:"kind,omitzero"`    // the kind of fault, for errors.Is
	Limit   string   `json:"limit,omitzero"`   // what would have been right, in words; {0} stands for Amounts[0]
	Amounts []string `json:"amounts,omitzero"` // the amounts that Limit names, each as exact text with its unit
}

// Want is Limit with its amounts put in.
func (f *Fault) Want() string { return f.wantIn(func(amount string) string { return amount }) }

// wantIn is Limit with its amounts put in, each as write writes it.
func (f *Fault) wantIn(write func(amount string) string) string {
	if len(f.Amounts) == 0 {
		return f.Limit
	}
	pairs := make([]string, 0, 2*len(f.Amounts))
	for i, a := range f.Amounts {
		pairs = append(pairs, "{"+strconv.Itoa(i)+"}", write(a))
	}
	return strings.NewReplacer(pairs...).Replace(f.Limit)
}

// Error is the field, the value, the kind of fault and what would have been
// right.
func (f *Fault) Error() string { return f.Text(func(amount string) string { return amount }) }

// Text is Error with each amount as write writes it. What cannot be seen is
// escaped; see [Visible].
func (f *Fault) Text(write func(amount string) string) string {
	var b strings.Builder
	b.WriteString(f.Path)
	if f.Got != "" {
		if f.Path != "" {
			b.WriteByte(' ')
		}
		b.WriteString(write(f.Got))
	}
	if f.Assumed {
		b.WriteString(" (assumed)")
	}
	if f.Kind != "" {
		if b.Len() > 0 {
			b.WriteString(": ")
		}
		b.WriteString(string(f.Kind))
	}
	if f.Limit != "" {
		b.WriteString(", want ")
		b.WriteString(f.wantIn(write))
	}
	if f.At != "" {
		b.WriteString(" (" + f.At + ")")
	}
	return Visible(b.String())
}

// Unwrap is the kind of fault.
func (f *Fault) Unwrap() error { return f.Kind }

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

// InOrder puts faults in the order of the fields that have the keys. An error that is not
// Faults stays as it is.
func InOrder(err error, keys []string) error {
	var fs Faults
	if errors.As(err, &fs) {
		slices.SortStableFunc(fs, func(a, b *Fault) int { return slices.Index(keys, a.Path) - slices.Index(keys, b.Path) })
	}
	return err
}

// Under puts a path before each fault of err, where a Spec is part of another:
// Under("seams[1]", err). An error that is not Faults becomes one.
func Under(path string, err error) Faults {
	if err == nil {
		return nil
	}
	var fs Faults
	if !errors.As(err, &fs) {
		return Faults{{Path: path, Kind: KindOf(err)}}
	}
	out := make(Faults, len(fs))
	for i, f := range fs {
		g := *f
		g.Path = Join(path, f.Path)
		out[i] = &g
	}
	return out
}

// KindOf is the kind that err wraps, or its text as a kind.
func KindOf(err error) Kind {
	var k Kind
	if errors.As(err, &k) {
		return k
	}
	return Kind(err.Error())
}

// Join is a path and one below it: strip and each make strip.each, strip and [1]
// make strip[1].
func Join(path, below string) string {
	switch {
	case path == "":
		return below
	case below == "" || below[0] == '[':
		return path + below
	}
	return path + "." + below
}
