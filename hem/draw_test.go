package hem_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"maps"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
)

// pictures are the names, in every, casings and tucks, of which a picture is kept.
var pictures = [...]string{
	"single", "double", "double, trimmed", "narrow", "slit, tucked", "slit, lapping", "blind", "blind, turned under", "rolled",
	"faced", "faced, plain", "bias-faced", "bound", "bound, left on", "bound, doubled", "shirt-tail", "circular", "turn-up", "turn-up, straight",
	"casing: elastic", "casing: cord", "casing: rod", "casing: elastic, applied", "casing: elastic, applied, no",
	"tucks: spaced", "tucks: pin", "tucks: blind", "tucks: growth",
}

// others are pictures of facings too narrow for what lies under them, and of a narrow
// hem whose row lies half way along a turn of 1/16 in.
func others() map[string]hem.Any {
	return map[string]hem.Any{
		"faced, on the allowances": of("faced; depth=7/8 in; seam=5/8 in; first=3/8 in"),
		"narrow, little turned":    of("narrow; first=1/16 in; depth=1/8 in"),
		"faced, level":             of("faced; depth=1 in; seam=5/8 in; first=5/16 in"),
		"faced, through them":      of("faced; depth=1 in; seam=5/8 in; first=1/4 in; stitch=1/2 in"),
		"faced, standing out":      of("faced; depth=1/2 in; seam=5/8 in; first=1/4 in; favour=1/16 in"),
	}
}

// drawn are the drawings of those, by name and stage.
func drawn(t *testing.T) map[string][]section.Drawing {
	t.Helper()
	out := map[string][]section.Drawing{}
	add := func(name string, ds []section.Drawing, err error) {
		if err != nil {
			t.Errorf("%s: %v", name, err)
		}
		out[name] = ds
	}
	all := every()
	maps.Copy(all, others())
	for name, s := range all {
		p, err := s.Plan()
		if err != nil {
			t.Fatal(name, err)
		}
		ds, err := p.Sections(units.Length{})
		add(name, ds, err)
	}
	for name, s := range casings() {
		p, err := s.Plan()
		if err != nil {
			t.Fatal(name, err)
		}
		ds, err := p.Sections(units.Length{})
		add("casing: "+name, ds, err)
	}
	for name, s := range tucks() {
		p, err := s.Plan()
		if err != nil {
			t.Fatal(name, err)
		}
		ds, err := p.Sections(units.Length{})
		add("tucks: "+name, ds, err)
	}
	return out
}

// TestDrawGolden holds the pictures, as they were rendered and looked at.
func TestDrawGolden(t *testing.T) {
	all := drawn(t)
	kept := slices.AppendSeq(slices.Clone(pictures[:]), maps.Keys(others()))
	count := 0
	for _, name := range kept {
		for i, d := range all[name] {
			svg, err := d.SVG(units.Notation{}, units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 10)})
			if err != nil {
				t.Errorf("%s: %v", name, err)
				continue
			}
			count++
			file := "testdata/draw/" + strings.ReplaceAll(strings.NewReplacer(",", "", ":", "").Replace(name), " ", "-") + "-" + strconv.Itoa(i+1) + ".svg"
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
		}
	}
	if files, err := os.ReadDir("testdata/draw"); err != nil || len(files) != count {
		t.Errorf("%d pictures are kept, %d are drawn: %v", len(files), count, err)
	}
}

// TestDrawXML: every picture is XML, in any notation.
func TestDrawXML(t *testing.T) {
	for name, ds := range drawn(t) {
		for _, d := range ds {
			svg, err := d.SVG()
			if err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			for read := xml.NewDecoder(bytes.NewReader(svg)); ; {
				if _, err = read.Token(); err != nil {
					break
				}
			}
			if !errors.Is(err, io.EOF) {
				t.Errorf("%s: %v", name, err)
			}
		}
	}
}
