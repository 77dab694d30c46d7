package outline_test

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout/outline"
)

// FuzzRead reads any text as both: it never panics, a fault has a path, and what
// is read can be written and read again.
func FuzzRead(f *testing.F) {
	f.Add("piece,x,y\na,0 in,0 in\na,1 in,0 in\na,0 in,1 in\n")
	f.Add(head + `<path id="a" d="M0 0C1 1 2 1 3 0v9h-3z"/></svg>`)
	f.Add(head + `<g><polygon id="b" points="1,2 3-4.5.6 7e1"/></g><rect id="c" width="1" height="2"/></svg>`)
	f.Fuzz(func(t *testing.T, text string) {
		r := outline.Reader{Numbers: units.Parser{Bare: units.Centimetre}, Within: units.Millimetre.Of(1)}
		for _, read := range []func() error{
			func() error {
				got, err := r.CSV(strings.NewReader(text))
				if err != nil {
					return err
				}
				var b bytes.Buffer
				if err := outline.WriteCSV(&b, got); err != nil {
					t.Fatal(err)
				}
				if again, err := r.CSV(&b); err != nil || !cmp.Equal(got, again, exactly) {
					t.Fatal(err, got, again)
				}
				return nil
			},
			func() error { _, err := r.SVG(strings.NewReader(text)); return err },
		} {
			var fs fault.Faults
			if err := read(); err != nil && !errors.As(err, &fs) {
				t.Fatalf("%T is no list of faults", err)
			}
			for _, one := range fs {
				if one.Path == "" || one.Kind == "" {
					t.Fatalf("%+v", one)
				}
			}
		}
	})
}
