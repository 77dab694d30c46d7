package fault_test

import (
	"errors"
	"testing"

	"example.com/clothyard/units/fault"
)

// Faults stand in the order of the fields, those of one field as they were; another error
// stays as it is.
func TestInOrder(t *testing.T) {
	first, twice, last := &fault.Fault{Path: "a"}, &fault.Fault{Path: "a", Got: "2"}, &fault.Fault{Path: "b"}
	var got fault.Faults
	if err := fault.InOrder(fault.Faults{last, first, twice}, []string{"a", "b"}); !errors.As(err, &got) || got[0] != first || got[1] != twice || got[2] != last {
		t.Errorf("%v", got)
	}
	other := errors.New("other")
	if err := fault.InOrder(other, nil); err != other {
		t.Error(err)
	}
}
