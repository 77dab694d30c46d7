package fault

import (
	"fmt"
	"reflect"
	"strconv"
)

// An Audit collects faults while a Spec is checked. The zero Audit is ready.
type Audit struct{ faults Faults }

// An Amount is a length, a ratio or another number with a sign and an exact text.
type Amount interface {
	Sign() int
	String() string
}

// Fault records a fault. The limit is words in which {0} stands for the first
// amount, {1} for the second. A number of more than [MaxName] digits is cut.
func (a *Audit) Fault(path, got, limit string, kind Kind, amounts ...fmt.Stringer) {
	f := &Fault{Path: path, Got: cut(got), Kind: kind, Limit: limit}
	for _, amount := range amounts {
		f.Amounts = append(f.Amounts, cut(amount.String()))
	}
	a.faults = append(a.faults, f)
}

// cut is the beginning of a text that nobody would read to its end.
func cut(text string) string { return text[:min(len(text), MaxName)] }

// Include records the faults of a part, under its path.
func (a *Audit) Include(path string, err error) { a.faults = append(a.faults, Under(path, err)...) }

// Failed reports whether anything has been recorded.
func (a *Audit) Failed() bool { return len(a.faults) > 0 }

// Err is the faults recorded, or nil. A fault about a field that assumed names
// says so.
func (a *Audit) Err(assumed ...string) error {
	for _, f := range a.faults {
		for _, name := range assumed {
			f.Assumed = f.Assumed || f.Got != "" && f.Path == name
		}
	}
	return a.faults.OrNil()
}

// Need records an amount that is missing or negative.
func (a *Audit) Need(path string, x Amount) {
	switch x.Sign() {
	case 0:
		a.Fault(path, "", "more than {0}", Missing, zero(x))
	case -1:
		a.Fault(path, x.String(), "more than {0}", Sign, zero(x))
	}
}

// NotNegative records a negative amount.
func (a *Audit) NotNegative(path string, x Amount) {
	if x.Sign() < 0 {
		a.Fault(path, x.String(), "{0} or more", Sign, zero(x))
	}
}

// zero is the zero of the type that x has, as 0 in of a length.
func zero(x Amount) Amount { return reflect.Zero(reflect.TypeOf(x)).Interface().(Amount) }

// AtMost records an amount above a limit; why says where the limit comes from,
// as in cut.
func AtMost[T interface {
	Amount
	Less(T) bool
}](a *Audit, path string, x, limit T, why string, kind Kind) {
	if limit.Less(x) {
		a.Fault(path, x.String(), "at most {0} ("+why+")", kind, limit)
	}
}

// AtLeast records an amount below a limit; why says where the limit comes from.
func AtLeast[T interface {
	Amount
	Less(T) bool
}](a *Audit, path string, x, limit T, why string, kind Kind) {
	if x.Less(limit) {
		a.Fault(path, x.String(), "at least {0} ("+why+")", kind, limit)
	}
}

// Count records a count outside low to high. A count of 0 is missing.
func (a *Audit) Count(path string, n, low, high int) {
	if n >= low && n <= high {
		return
	}
	got, kind := strconv.Itoa(n), Range
	if n == 0 {
		got, kind = "", Missing
	}
	a.Fault(path, got, strconv.Itoa(low)+" to "+strconv.Itoa(high), kind)
}

// Unused records a field that is given though its kind does not read it.
func (a *Audit) Unused(path string, given fmt.Stringer, zero bool, kind fmt.Stringer) {
	if !zero {
		a.Fault(path, given.String(), "none for "+kind.String(), Unused)
	}
}

// Text records a name or a text that [Unfit] refuses.
func (a *Audit) Text(path, s string) {
	if f := Unfit(path, s); f != nil {
		a.faults = append(a.faults, f)
	}
}
