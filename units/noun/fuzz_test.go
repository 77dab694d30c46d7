package noun_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// FuzzRead reads any text: what is read reads back equal, and what is refused is
// refused with faults that are JSON.
func FuzzRead(f *testing.F) {
	f.Add([]byte(full))
	f.Add([]byte(`{"sewn":{"kind":"plain","first":"1 in"},"parts":{"a":{},"a":1}}`))
	f.Add([]byte(`[[[[`))
	f.Fuzz(func(t *testing.T, text []byte) {
		var b, back bag
		if err := noun.Read(bytes.NewReader(text), &b); err != nil {
			var fs fault.Faults
			if !errors.As(err, &fs) || len(fs) == 0 {
				t.Fatal(err)
			}
			if written, err := json.Marshal(fs); err != nil || !json.Valid(written) {
				t.Fatalf("%s %v", written, err)
			}
			return
		}
		written, err := json.Marshal(b)
		if err != nil {
			t.Fatal(err)
		}
		if err := json.Unmarshal(written, &back); err != nil {
			t.Fatalf("%s: %v", written, err)
		}
		if diff := cmp.Diff(b, back, exact, cmp.AllowUnexported(bag{}, french{}, plain{})); diff != "" {
			t.Fatalf("%s\n%s", written, diff)
		}
	})
}
