package main

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/iotest"

	"example.com/clothyard/examples/garment"
	"example.com/clothyard/examples/internal/console"
	"example.com/clothyard/units"
)

func TestBadGarments(t *testing.T) {
	wants := map[string][]string{
		"brace.json":                {"work[7].before[0].note", `"3/32"`, "a unit"},
		"empty.json":                {"the text ends too early"},
		"list.json":                 {"a list", "an object"},
		"many.json":                 {`cloth.have "two yards"`, "edges[6].net null", `rows[0].row.count "nine"`},
		"negative.json":             {"cloth.width -45 in", "more than 0 in"},
		"no-such-seam.json":         {`edges[6].crossings[0].seam "sleve"`, "the name of a seam"},
		"no-unit.json":              {`edges[0].net "16 1/2"`, "a unit"},
		"not-json.json":             {"the text ends too early"},
		"raw-edge-shows.json":       {"seams[0].spec.trim 1/4 in", "raw edge would show", "less than 1/4 in"},
		"too-few-buttons.json":      {"tin.have 2", "at least 3"},
		"twice.json":                {`title "B"`, "given twice"},
		"unknown-key.json":          {"Scene", "not known", "scene"},
		"wider-than-the-cloth.json": {"pieces[0]", "25 1/4 in", "across"},
		"work.json":                 {`work[1].swatch "sholder"`},
		"zero.json":                 {`seams[0].spec.first "0 in"`, "zero means not given"},
	}
	files, err := filepath.Glob("testdata/bad/*.json")
	if err != nil || len(files) != len(wants) {
		t.Fatalf("%d files, want %d (%v)", len(files), len(wants), err)
	}
	for _, f := range files {
		want := wants[filepath.Base(f)]
		var out, errs bytes.Buffer
		if code := run([]string{f}, nil, &out, &errs); code != 1 || out.Len() > 0 {
			t.Errorf("%s: code %d, %d bytes on standard output", f, code, out.Len())
		}
		for _, w := range want {
			if !strings.Contains(errs.String(), w) {
				t.Errorf("%s: no %q in\n%s", f, w, errs.String())
			}
		}
	}
}

// All faults are reported at once, in the order of the text.
func TestFaultsInOrder(t *testing.T) {
	var out, errs bytes.Buffer
	run([]string{"testdata/bad/many.json"}, nil, &out, &errs)
	lines := strings.Split(strings.TrimSpace(errs.String()), "\n")
	if len(lines) != 3 || !strings.Contains(lines[0], "cloth.have") || !strings.Contains(lines[1], "edges[6].net") || !strings.Contains(lines[2], "rows[0].row.count") {
		t.Errorf("faults:\n%s", errs.String())
	}
}

func TestUsage(t *testing.T) {
	for _, args := range [][]string{{"-units", "cubits"}, {"-form", "stone"}, {"a", "b"}, {"-nonsense"}} {
		var out, errs bytes.Buffer
		if code := run(args, nil, &out, &errs); code != 2 || out.Len() > 0 || errs.Len() == 0 {
			t.Errorf("%v: code %d, out %q, errors %q", args, code, out.String(), errs.String())
		}
	}
	var out, errs bytes.Buffer
	if code := run([]string{"-help"}, nil, &out, &errs); code != 0 || !strings.Contains(errs.String(), "-units") {
		t.Errorf("-help: code %d, %s", code, errs.String())
	}
	if code := run([]string{"testdata/no-such-file.json"}, nil, &out, &errs); code != 1 || out.Len() > 0 {
		t.Errorf("a missing file: code %d", code)
	}
}

func TestStandardInput(t *testing.T) {
	text, err := os.ReadFile("testdata/good/plain-edge.json")
	if err != nil {
		t.Fatal(err)
	}
	var out, errs bytes.Buffer
	if code := run([]string{"-"}, bytes.NewReader(text), &out, &errs); code != 0 || out.String() != write(t, "testdata/good/plain-edge.json") {
		t.Errorf("code %d, %s", code, errs.String())
	}
	out.Reset()
	if code := run([]string{"-"}, iotest.ErrReader(os.ErrPermission), &out, &errs); code != 1 || out.Len() > 0 {
		t.Errorf("a reader that fails: code %d", code)
	}
	if code := run([]string{"-"}, strings.NewReader(strings.Repeat(" ", 3<<20)), &out, &errs); code != 1 || out.Len() > 0 {
		t.Errorf("a text too long: code %d", code)
	}
}

// The JSON form holds the same figures, lengths in exact text.
func TestJSON(t *testing.T) {
	var p struct {
		Edges []struct{ Name, Drafted, AsSewn, AsChosen string }
		Cuts  []struct{ Seam, Tissue, Cut string }
		Stock struct{ Short int }
		Cloth struct{ Need string }
	}
	for _, units := range []string{"inches", "metric"} {
		if err := json.Unmarshal([]byte(write(t, "-form", "json", "-units", units)), &p); err != nil {
			t.Fatal(err)
		}
		if e := p.Edges[0]; e.Name != "neck" || e.Drafted != "16 1/2 in" || e.AsSewn != "17 1/4 in" || e.AsChosen != "16 1/2 in" {
			t.Errorf("the neck is %+v", e)
		}
		if len(p.Cuts) != 2 || p.Cuts[0].Cut != "7/16 in" || p.Stock.Short != 2 || p.Cloth.Need != "76 3/16 in" {
			t.Errorf("cuts %+v, short %d, need %s", p.Cuts, p.Stock.Short, p.Cloth.Need)
		}
	}
}

func TestGoodGarments(t *testing.T) {
	files, err := filepath.Glob("testdata/good/*.json")
	if err != nil || len(files) < 4 {
		t.Fatal(files, err)
	}
	for _, f := range files {
		text, err := open(f, nil)
		if err != nil {
			t.Fatal(err)
		}
		g, err := garment.Read(bytes.NewReader(text))
		if err != nil {
			t.Fatal(err)
		}
		p, err := g.Plan(context.Background())
		if err != nil {
			t.Fatalf("%s: %v", f, err)
		}
		for _, u := range []string{"inches", "metric", "both"} {
			in, _ := console.Notations(u)
			for name, form := range map[string]func(garment.Plan, []units.Notation) ([]byte, error){"text": asText, "markdown": asMarkdown, "json": asJSON} {
				if b, err := form(p, in); err != nil || len(b) < 500 {
					t.Errorf("%s as %s in %s: only %q, %v", f, name, u, b, err)
				}
			}
		}
	}
	// A slanted seam has no exact length along the edge: about is said, and the bound kept.
	has(t, write(t, "-units", "metric", "testdata/good/slanted.json"), "about", "raglan")
}

// The lay is drawn into a file besides; one that cannot be is a fault.
func TestDrawing(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shirt.svg")
	var out, errs bytes.Buffer
	if code := run([]string{"-lay", path}, strings.NewReader(""), &out, &errs); code != 0 {
		t.Fatal(errs.String())
	}
	svg, err := os.ReadFile(path)
	if err != nil || !bytes.Contains(svg, []byte(">sleeve, copy 2<")) || bytes.Count(svg, []byte("z\" fill=")) < 8 {
		t.Error(err, string(svg))
	}
	if !strings.Contains(out.String(), "by a lay of the outlines: ") {
		t.Error("the sheet says nothing of it")
	}
	const edges = `"edges":[{"name":"hem","net":"30 in"}]`
	const rectangles = `{"cloth":{"width":"45 in","have":"1 yd"},` + edges + `,"pieces":[{"name":"sash","wide":"8 in","long":"30 in","count":2}]}`
	if code := run([]string{"-lay", path, "-"}, strings.NewReader(rectangles), &out, &errs); code != 0 {
		t.Fatal(errs.String())
	}
	if svg, err = os.ReadFile(path); err != nil || bytes.Count(svg, []byte("<rect")) != 4 {
		t.Error(err, string(svg))
	}
	for _, test := range [][2]string{{path, "{" + edges + "}"}, {t.TempDir(), rectangles}} {
		out.Reset()
		if code := run([]string{"-lay", test[0], "-"}, strings.NewReader(test[1]), &out, &errs); code != 1 || out.Len() > 0 {
			t.Errorf("%s: %d %s", test[1], code, out.String())
		}
	}
}
