package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.com/clothyard/seam/garment"
)

// What is sewn otherwise is said in one line, and answered in every form.
func TestLike(t *testing.T) {
	ask := []string{"-like", "blouse", "shoulder.kind=french", "shoulder.first=3/16 in", "shoulder.second=1/4 in"}
	for form, wants := range map[string][]string{
		"text":     {"neck comes out longer by: 3/4 in", "to mend, cut-drift shoulder (3 pairs mended)", "Stitch the first pass, WRONG SIDES TOGETHER"},
		"markdown": {"# Blouse with a flat collar and a faced neck: 3 edges do not go onto their partners\n", "- neck comes out longer by: 3/4 in\n"},
		"json":     {`"fit":"mismatch"`, `"name":"cut-drift shoulder"`},
	} {
		var out, errs bytes.Buffer
		if code := run(append([]string{"-form", form}, ask...), nil, &out, &errs); code != 0 || errs.Len() > 0 {
			t.Fatalf("%s: code %d, %s", form, code, errs.String())
		}
		for _, want := range wants {
			if !strings.Contains(out.String(), want) {
				t.Errorf("%s: no %q in\n%s", form, want, out.String())
			}
		}
	}
	var out, errs bytes.Buffer
	if code := run([]string{"-units", "metric", "-like", "blouse", "side.first=1 cm"}, nil, &out, &errs); code != 0 || !strings.Contains(out.String(), "armhole comes out longer by: 10 mm") {
		t.Errorf("metric: code %d, %s%s", code, out.String(), errs.String())
	}
}

// The file that -new writes is planned as it is, from a file and from a pipe.
func TestNew(t *testing.T) {
	for _, name := range garment.Starters() {
		var file, out, errs bytes.Buffer
		if code := run([]string{"-new", name}, nil, &file, &errs); code != 0 || !json.Valid(file.Bytes()) {
			t.Fatalf("%s: code %d, %s", name, code, errs.String())
		}
		path := filepath.Join(t.TempDir(), "mine.json")
		if err := os.WriteFile(path, file.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
		for _, from := range []string{path, "-"} {
			out.Reset()
			if code := run([]string{from}, bytes.NewReader(file.Bytes()), &out, &errs); code != 0 || !strings.HasPrefix(out.String(), strings.Fields(title(t, name))[0]) {
				t.Errorf("%s from %s: code %d, %s%s", name, from, code, out.String(), errs.String())
			}
		}
	}
	var out, errs bytes.Buffer
	if code := run([]string{"-starters"}, nil, &out, &errs); code != 0 || strings.Count(out.String(), "\n") != len(garment.Starters()) {
		t.Errorf("-starters: code %d, %s", code, out.String())
	}
}

func title(t *testing.T, name string) string {
	t.Helper()
	g, err := garment.Starter(name)
	if err != nil {
		t.Fatal(err)
	}
	return g.Title
}

// What is wrong is told by its path, and nothing is written.
func TestLikeRefused(t *testing.T) {
	for _, test := range []struct {
		args []string
		code int
		want string
	}{
		{[]string{"-like", "ballgown"}, 1, `like "ballgown": not known, want one of a-line-skirt`},
		{[]string{"-new", "ballgown"}, 1, `like "ballgown": not known`},
		{[]string{"-like", "blouse", "shoulder.kind"}, 2, `"shoulder.kind" is not NAME.FIELD=VALUE`},
		{[]string{"-like", "blouse", "shoulder.kind=frensh"}, 1, `changes.shoulder.sewn.kind "frensh": not known`},
		{[]string{"-like", "blouse", "sholder.kind=french"}, 1, `sholder.kind "sholder": not known, want one of shoulder, facing shoulder`},
		{[]string{"-like", "blouse", "shoulder.first=3/16"}, 1, `changes.shoulder.sewn.first "3/16": cannot be read, want a unit`},
	} {
		var out, errs bytes.Buffer
		if code := run(test.args, nil, &out, &errs); code != test.code || out.Len() > 0 || !strings.Contains(errs.String(), test.want) {
			t.Errorf("%v: code %d, %s%s", test.args, code, out.String(), errs.String())
		}
	}
}
