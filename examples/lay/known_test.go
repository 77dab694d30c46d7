package main

import (
	"bytes"
	"context"
	"path/filepath"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

// Where the instance is here, the best density, the shortest length and the area
// are those of one lay, but for rounding.
func TestKnown(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range rows {
		if seen[r.name] {
			t.Errorf("%s twice", r.name)
		}
		seen[r.name] = true
		for _, text := range append([]string{r.best, r.short, r.mean}, r.older[:]...) {
			if text == "" {
				continue
			}
			if _, err := units.ParseRatio(text); err != nil {
				t.Errorf("%s: %v", r.name, err)
			}
		}
	}
	if len(seen) < 26 {
		t.Errorf("%d rows", len(seen))
	}
	names, err := filepath.Glob("testdata/*.json")
	if err != nil {
		t.Fatal(err)
	}
	compared := 0
	for _, path := range names {
		in := open(t, strings.TrimSuffix(filepath.Base(path), ".json"))
		r, ok := known(in.Name)
		if !ok {
			continue
		}
		s := in.spec()
		short, _ := units.ParseRatio(r.short)
		best, _ := units.ParseRatio(r.best)
		density := s.Area().In(units.Inch).Quo(short.Mul(in.Width.Ratio)).Mul(units.RatioOf(100, 1))
		off := best.Sub(density)
		switch {
		case r.how == optimum && !off.IsZero():
			t.Errorf("%s: %s by %s is %s %%", in.Name, r.short, in.Width.Rat().RatString(), density)
		case r.wider && off.Sign() < 0 && units.RatioOf(1, 100).Less(off.Abs()), !r.wider && units.RatioOf(1, 100).Less(off.Abs()):
			t.Errorf("%s: length %s is %s %%, not %s", in.Name, r.short, density.Rat().FloatString(3), r.best)
		}
		compared++
	}
	if compared < 18 {
		t.Errorf("%d compared", compared)
	}
	for _, name := range []string{"c0p1", "c8p1", "c1p0", "c1p4", "rect", "poly1a", ""} {
		if _, ok := known(name); ok {
			t.Errorf("%q is known", name)
		}
	}
	if r, ok := known("c7p3"); !ok || r.short != "240" {
		t.Error(r)
	}
}

// A lay as short as the best known is written out, and so is a shorter one.
func TestRecord(t *testing.T) {
	one := layout.Piece{Name: "piece", Wide: units.Inch.Of(1), Long: units.Inch.Of(1), Count: 1}
	for _, test := range []struct {
		name string
		long int64
		want string
	}{
		{"jakobs1", 11, "jakobs1: as short as the best known of this width, 11:\n{\"instance\":\"jakobs1\""},
		{"jakobs1", 10, "jakobs1: shorter than the best known of this width, 11:\n{"},
		{"jakobs1", 12, ""}, {"dighe1", 1, ""}, {"c1p1", 1, ""}, {"hat", 1, ""},
	} {
		in := instance{Name: test.name, Pieces: []piece{{ID: "piece", Qty: 1, Rotations: []number{numberOf(units.Ratio{})}, Points: [][2]number{{}}}}}
		one.Long = units.Inch.Of(test.long)
		p, err := layout.Spec{Cloth: layout.Cloth{Wide: units.Inch.Of(2)}, Pieces: []layout.Piece{one}, Work: 1}.Plan(context.Background())
		if err != nil {
			t.Fatal(err)
		}
		var b bytes.Buffer
		if err := record(in, []layout.Plan{p}, &b); err != nil || !strings.HasPrefix(b.String(), test.want) || test.want == "" && b.Len() > 0 {
			t.Errorf("%s %d: %v %s", test.name, test.long, err, b.String())
		}
		if _, line, ok := strings.Cut(b.String(), "\n"); ok {
			if len(oneLay(t, line).Placements) != 1 {
				t.Error(line)
			}
		}
	}
	r, _ := known("jakobs1")
	if text := gap("jakobs1", units.RatioOf(9, 10)); !strings.Contains(text, "0.740 points above the best known") || !r.wider {
		t.Error(text)
	}
}

// Coordinates of twenty places are read exactly, and refused for a lay, with
// their reason, where they are too fine.
func TestFine(t *testing.T) {
	code, _, errs := lays(t, "-work", "1", "testdata/bad/fine.json")
	if code != 1 || !strings.Contains(errs, "pieces[0].outline") || !strings.Contains(errs, layout.ErrGrid.Error()) {
		t.Error(code, errs)
	}
	in := open(t, "bad/fine")
	want, err := units.ParseRatio("10.00000000000000000003")
	if err != nil || in.Pieces[0].Points[1][0].Ratio != want {
		t.Error(in.Pieces[0].Points, err)
	}
}

func TestHelp(t *testing.T) {
	if code, _, errs := lays(t, "-h"); code != 0 || !strings.Contains(errs, "-table") {
		t.Error(code, errs)
	}
}
