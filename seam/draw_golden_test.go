package seam_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"flag"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
)

var update = flag.Bool("update", false, "write the golden pictures")

// A picture is a seam whose drawings are kept in testdata/draw: every stage of
// each kind as it is by default, and the finished seam of some that differ.
type picture struct {
	name string
	spec seam.Spec
}

func pictures() (every, finished []picture) {
	for k := range seam.Kinds {
		every = append(every, picture{k.String(), seam.Spec{Kind: k}})
	}
	return every, []picture{
		{"plain", seam.Spec{Kind: seam.Plain, Aside: true}},
		{"plain", seam.Spec{Kind: seam.Plain, Aside: true, Finish: seam.Pinked}},
		{"plain", seam.Spec{Kind: seam.Plain, Finish: seam.Overcast}},
		{"plain", seam.Spec{Kind: seam.Plain, Finish: seam.Zigzagged, Aside: true, Trim: in(1, 4)}},
		{"plain", seam.Spec{Kind: seam.Plain, Finish: seam.Pinked}},
		{"plain-unequal", seam.Spec{Kind: seam.Plain, Drafted: in(5, 8), DraftedUnder: in(1, 1), First: in(1, 2), Trim: in(3, 8)}},
		{"french-thick", seam.Spec{Kind: seam.French, First: in(3, 16), Second: in(1, 4), Thickness: in(1, 96)}},
		{"flat-felled-halved", seam.Spec{Kind: seam.FlatFelled, First: in(5, 8), Second: in(5, 16)}},
		{"flat-felled-roomy", seam.Spec{Kind: seam.FlatFelled, First: in(5, 8), Turned: in(1, 8)}},
		{"mock-felled-roomy", seam.Spec{Kind: seam.MockFelled, First: in(5, 8), Turned: in(1, 8)}},
		{"bound-to-the-seam", seam.Spec{Kind: seam.Bound, First: in(3, 8), Second: in(3, 8)}},
		{"turned-and-stitched-halved", seam.Spec{Kind: seam.TurnedStitched, Drafted: in(1, 2)}},
		{"untrimmed-fell-narrow", seam.Spec{Kind: seam.UntrimmedFell, First: in(3, 8), Turned: in(1, 4)}},
		{"welt", seam.Spec{Kind: seam.Welt, Finish: seam.Pinked}},
		{"welt", seam.Spec{Kind: seam.Welt, Finish: seam.Overcast}},
		{"lapped-unequal", seam.Spec{Kind: seam.Lapped, Drafted: in(3, 8), DraftedUnder: in(5, 8)}},
		{"lapped-turned-roomy", seam.Spec{Kind: seam.LappedTurned, Second: in(3, 4), Turned: in(1, 4)}},
		{"slot", seam.Spec{Kind: seam.Slot, Finish: seam.Overcast, Strip: in(1, 1)}},
		{"slot", seam.Spec{Kind: seam.Slot, Finish: seam.Pinked, Strip: in(3, 2)}},
		{"hong-kong-wide-strip", seam.Spec{Kind: seam.HongKong, Strip: in(3, 2), Thickness: in(1, 64)}},
		{"self-bound-narrow-fold", seam.Spec{Kind: seam.SelfBound, First: in(3, 4), Second: in(5, 16)}},
		{"self-bound-thirds", seam.Spec{Kind: seam.SelfBound, First: in(3, 4), Second: in(1, 4)}},
		{"piped-trimmed", seam.Spec{Kind: seam.Piped, Trim: in(3, 8), Cord: in(1, 8)}},
		{"graded-four", seam.Spec{Kind: seam.Graded, Layers: 4, Trim: in(1, 2)}},
	}
}

// stage is the stage of a drawing as part of the name of a file: what its title has
// beyond that of the sheet.
func stage(p seam.Plan, d section.Drawing) string {
	return strings.NewReplacer(", ", "-", " ", "-").Replace(strings.TrimPrefix(d.Title, p.Sheet().Title+", "))
}

// TestSectionsGolden holds every picture, as it was rendered and looked at.
func TestSectionsGolden(t *testing.T) {
	var files []string
	every, finished := pictures()
	for i, c := range append(every, finished...) {
		p := planned(t, c.spec)
		ds, err := p.Sections(units.Length{})
		if err != nil {
			t.Fatalf("%s: %v", c.name, err)
		}
		if i >= len(every) {
			ds = ds[len(ds)-1:]
		}
		for _, d := range ds {
			svg, err := d.SVG(units.Notation{}, units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 10)})
			if err != nil {
				t.Fatalf("%s: %v", d.Title, err)
			}
			file := filepath.Join("testdata", "draw", c.name+"-"+stage(p, d)+".svg")
			files = append(files, file)
			if *update {
				if err := os.WriteFile(file, svg, 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(string(want), string(svg)); diff != "" {
				t.Errorf("%s (-want +got):\n%s", file, diff)
			}
			valid(t, file, svg)
		}
	}
	kept, err := filepath.Glob("testdata/draw/*.svg")
	if err != nil {
		t.Fatal(err)
	}
	slices.Sort(files)
	if diff := cmp.Diff(files, kept); diff != "" {
		t.Errorf("files kept (-drawn +kept):\n%s", diff)
	}
}

// valid reads a picture as XML: one svg, with its title and its description in words.
func valid(t *testing.T, name string, svg []byte) {
	t.Helper()
	in, found := xml.NewDecoder(bytes.NewReader(svg)), map[string]int{}
	for {
		token, err := in.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if start, ok := token.(xml.StartElement); ok {
			found[start.Name.Local]++
		}
	}
	if found["svg"] != 1 || found["title"] != 1 || found["desc"] != 1 {
		t.Errorf("%s: %v", name, found)
	}
}
