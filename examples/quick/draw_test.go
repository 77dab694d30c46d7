package main

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// drawings are the names of the files in a folder, in order.
func drawings(t *testing.T, dir string) []string {
	t.Helper()
	files, err := os.ReadDir(dir)
	if err != nil && !errors.Is(err, os.ErrNotExist) {
		t.Fatal(err)
	}
	var names []string
	for _, f := range files {
		names = append(names, f.Name())
	}
	return names
}

// Each stage is a file of its own, which is XML and has the measures in the units
// that were asked for.
func TestDraw(t *testing.T) {
	for _, c := range []struct {
		args  string
		files []string
		has   string // in the last file
	}{
		{"seam.french first=3/16_in second=1/4_in", []string{"french-seam-first-pass.svg", "french-seam-pressed.svg", "french-seam-second-pass.svg"}, "1/4 in"},
		{"-units metric seam.flat-felled drafted=5/8_in", []string{"flat-felled-seam-felled.svg", "flat-felled-seam-sewn.svg"}, " mm"},
		{"-units both hem.blind depth=2_in", []string{"blind-hem-folded-back-for-stitching.svg", "blind-hem-opened-out.svg"}, "2 in ("},
		{"hem.casing kind=elastic width=1/2_in", []string{"casing-for-elastic.svg"}, "casing"},
		{"hem.tucks kind=spaced depth=1/4_in count=5 pitch=1_in", []string{"spaced-tucks-one-tuck-pressed.svg", "spaced-tucks-one-tuck-standing.svg", "spaced-tucks-one-tuck-stitched.svg"}, "1/4 in"},
	} {
		dir := filepath.Join(t.TempDir(), "made", "here")
		args := []string{"-draw", dir}
		for _, w := range strings.Fields(c.args) {
			args = append(args, strings.ReplaceAll(w, "_", " "))
		}
		out, errs, code := quick(args, "")
		if code != 0 || errs != "" {
			t.Errorf("%s: code %d, %s", c.args, code, errs)
		}
		got := drawings(t, dir)
		if !slices.Equal(got, c.files) {
			t.Errorf("%s: drew %q, want %q", c.args, got, c.files)
			continue
		}
		var last []byte
		for _, name := range got {
			file := filepath.Join(dir, name)
			if strings.Count(out, "drawn: "+file+"\n") != 1 {
				t.Errorf("%s: %s is not named in\n%s", c.args, file, out)
			}
			svg, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			for read := xml.NewDecoder(bytes.NewReader(svg)); err == nil; {
				_, err = read.Token()
			}
			if !errors.Is(err, io.EOF) || !bytes.Contains(svg, []byte("<svg ")) {
				t.Errorf("%s: %v", file, err)
			}
			last = svg
		}
		if !bytes.Contains(last, []byte(c.has)) {
			t.Errorf("%s: no %q in %s", c.args, c.has, got[len(got)-1])
		}
		// In JSON the answer is that of no drawing, and the pictures are written over.
		plain, _, _ := quick(append([]string{"-json"}, args[2:]...), "")
		if out, errs, code := quick(append([]string{"-json"}, args...), ""); code != 0 || out != plain || errs != "" {
			t.Errorf("%s: in JSON code %d, %s%s", c.args, code, out, errs)
		}
		if again := drawings(t, dir); !slices.Equal(again, got) {
			t.Errorf("%s: the second time there are %q", c.args, again)
		}
	}
}

// What cannot be drawn is refused, with nothing on standard output and no file.
func TestDrawRefused(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "pictures")
	blocked := filepath.Join(t.TempDir(), "a file")
	if err := os.WriteFile(blocked, nil, 0o644); err != nil {
		t.Fatal(err)
	}
	taken := t.TempDir()
	if err := os.Mkdir(filepath.Join(taken, "plain-seam-sewn.svg"), 0o755); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		dir, args, want string
		code            int
	}{
		{dir, "", "one sum", 2},
		{dir, "-sums", "one sum", 2},
		{dir, "-fields seam.plain", "one sum", 2},
		{dir, "gather.cuff wrist=7_in", "gather.cuff has no pictures", 2},
		{dir, "seam.brim", "no sum is named", 2},
		{dir, "seam.french trim=3_in first=1_in second=1_in", "trim 3 in", 1},
		{dir, "seam.plain first=3_m", "spec.first", 1},
		{dir, "seam.plain colour=red", "colour", 1},
		{blocked, "seam.plain first=1_in", "a file", 1},
		{taken, "seam.plain first=1_in", "plain-seam-sewn.svg", 1},
	} {
		args := []string{"-draw", c.dir}
		for _, w := range strings.Fields(c.args) {
			args = append(args, strings.ReplaceAll(w, "_", " "))
		}
		if out, errs, code := quick(args, `{"sum":"seam.plain"}`); code != c.code || out != "" || !strings.Contains(errs, c.want) {
			t.Errorf("%q: code %d, %q, want %q in %q", c.args, code, out, c.want, errs)
		}
		if got := drawings(t, dir); got != nil {
			t.Errorf("%q: drew %q", c.args, got)
		}
	}
}

// A file is named after its title, and four nouns have pictures.
func TestDrawNames(t *testing.T) {
	for title, want := range map[string]string{
		"French seam, first pass":      "french-seam-first-pass.svg",
		"Lapped seam, raw edges, sewn": "lapped-seam-raw-edges-sewn.svg",
		"Hem of a circle":              "hem-of-a-circle.svg",
	} {
		if got := fileName(title); got != want {
			t.Errorf("%s: %s, want %s", title, got, want)
		}
	}
	var names []string
	for e := range sums.All() {
		if _, drawn := e.NewPlan().(picture); drawn {
			names = append(names, e.Name())
		}
	}
	for _, want := range []string{"seam.french", "seam.graded", "hem.double", "hem.casing", "hem.tucks"} {
		if !slices.Contains(names, want) {
			t.Errorf("the sums with pictures are %q, without %s", names, want)
		}
	}
}
