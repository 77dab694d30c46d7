package nountest

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// Fuzz reads the nouns of a package from any text: it is refused with faults that name
// their fields, or planned, and then the working on the sheet comes out, plan and sheet
// read back equal, and the solved Spec plans to the same, but for the exceptions that
// [Contract] has.
func Fuzz(f *testing.F, nouns []noun.Entry, exceptions ...string) {
	for i, e := range nouns {
		f.Add(uint8(i), []byte("{}"))
		for _, text := range e.Examples() {
			f.Add(uint8(i), []byte(text))
			f.Add(uint8(i), []byte(strings.ReplaceAll(string(text), `"1`, `"-1`)))
			f.Add(uint8(i), []byte(strings.ReplaceAll(string(text), ` in"`, `000000000000000000000000000001/3 in"`)))
			f.Add(uint8(i), []byte(strings.ReplaceAll(string(text), `: "`, `: "7/`)))
		}
	}
	f.Fuzz(func(t *testing.T, which uint8, text []byte) {
		e := nouns[int(which)%len(nouns)]
		spec := e.New()
		err := noun.Read(bytes.NewReader(text), spec)
		if err == nil {
			var p noun.Plan
			if p, err = e.Plan(spec); err == nil {
				planned(t, e, p, exceptions)
				return
			}
		}
		var faults fault.Faults
		if !errors.As(err, &faults) || len(faults) == 0 {
			t.Fatalf("no faults: %v", err)
		}
		for _, f := range faults {
			if f.Kind == "" || f.Path == "" && f.At == "" {
				t.Fatalf("a fault without a field: %v", f)
			}
		}
	})
}
