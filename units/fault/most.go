package fault

import (
	"errors"
	"slices"
	"strconv"
)

// MaxFaults is how many faults of one input are told; the rest are counted.
const MaxFaults = 100

// Most keeps the first [MaxFaults] faults of an error and counts the rest, where
// that is more than one. An error that is not Faults stays as it is.
func Most(err error) error {
	var fs Faults
	if !errors.As(err, &fs) || len(fs) <= MaxFaults+1 {
		return err
	}
	return append(slices.Clip(fs[:MaxFaults]), More(len(fs)-MaxFaults))
}

// More counts n faults that are left out.
func More(n int) *Fault { return &Fault{Got: strconv.Itoa(n) + " faults more", Kind: Form} }
