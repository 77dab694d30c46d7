package nountest

import (
	"bytes"
	"testing"

	"example.com/clothyard/units/noun"
)

// Fuzz reads any text as any of the nouns, beginning with their examples: it is
// refused with faults, or planned, and then its working comes out.
func Fuzz(f *testing.F, nouns []noun.Entry) {
	for i, e := range nouns {
		for _, text := range e.Examples() {
			f.Add(byte(i), []byte(text))
		}
	}
	f.Fuzz(func(t *testing.T, which byte, text []byte) {
		e := nouns[int(which)%len(nouns)]
		spec := e.New()
		if err := noun.Read(bytes.NewReader(text), spec); err != nil {
			Paths(t, err)
			return
		}
		p, err := e.Plan(spec)
		if err != nil {
			Paths(t, err)
			return
		}
		sh := p.Sheet()
		if err := sh.Check(); err != nil || sh.Title == "" || len(sh.Steps) == 0 {
			t.Errorf("%s %s: a sheet titled %q with %d steps, %v", e.Name(), text, sh.Title, len(sh.Steps), err)
		}
	})
}
