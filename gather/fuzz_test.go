package gather_test

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// FuzzSpec reads a noun from any text: it is refused with faults that name their
// fields, or planned, and then its sheet holds and what is solved plans to the same.
func FuzzSpec(f *testing.F) {
	nouns := gather.Nouns()
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
				check(t, e.Name(), p)
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
