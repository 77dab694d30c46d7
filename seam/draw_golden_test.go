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
	spec seam.Seam
}

func pictures() (every, finished []picture) {
	for s := range seam.Kinds() {
		every = append(every, picture{s.Kind(), s.Seam})
	}
	return every, []picture{
		{"plain", seam.Plain{Aside: true}},
		{"plain", seam.Plain{Aside: true, Finish: seam.Pinked}},
		{"plain", seam.Plain{Finish: seam.Overcast}},
		{"plain", seam.Plain{Finish: seam.Zigzagged, Aside: true, Trim: in(1, 4)}},
		{"plain", seam.Plain{Finish: seam.Pinked}},
		{"plain-unequal", seam.Plain{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(1, 1)}, First: in(1, 2), Trim: in(3, 8)}},
		{"french-thick", seam.French{Allowance: seam.Allowance{Thickness: in(1, 96)}, First: in(3, 16), Second: in(1, 4)}},
		{"flat-felled-halved", seam.FlatFelled{First: in(5, 8), Width: in(5, 16)}},
		{"flat-felled-roomy", seam.FlatFelled{First: in(5, 8), Turned: in(1, 8)}},
		{"mock-felled-roomy", seam.MockFelled{First: in(5, 8), Turned: in(1, 8)}},
		{"bound-to-the-seam", seam.Bound{First: in(3, 8), Width: in(3, 8)}},
		{"turned-and-stitched-halved", seam.TurnedStitched{Allowance: seam.Allowance{Drafted: in(1, 2)}}},
		{"untrimmed-fell-narrow", seam.UntrimmedFell{Width: in(3, 8), Turned: in(1, 4)}},
		{"welt", seam.Welt{Finish: seam.Pinked}},
		{"welt", seam.Welt{Finish: seam.Overcast}},
		{"lapped-unequal", seam.Lapped{Allowance: seam.Allowance{Drafted: in(3, 8), DraftedUnder: in(5, 8)}}},
		{"lapped-turned-roomy", seam.LappedTurned{Lap: in(3, 4), Turned: in(1, 4)}},
		{"slot", seam.Slot{Finish: seam.Overcast, Strip: in(1, 1)}},
		{"slot", seam.Slot{Finish: seam.Pinked, Strip: in(3, 2)}},
		{"hong-kong-wide-strip", seam.HongKong{Allowance: seam.Allowance{Thickness: in(1, 64)}, Strip: in(3, 2)}},
		{"self-bound-narrow-fold", seam.SelfBound{First: in(3, 4), Width: in(5, 16)}},
		{"self-bound-thirds", seam.SelfBound{First: in(3, 4), Width: in(1, 4)}},
		{"piped-trimmed", seam.Piped{Trim: in(3, 8), Cord: in(1, 8)}},
		{"graded-four", seam.Graded{Layers: 4, Widest: in(1, 2)}},
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
