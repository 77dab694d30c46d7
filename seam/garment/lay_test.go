package garment_test

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	"example.com/clothyard/seam/garment"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// read is a garment of a text.
func read(t *testing.T, text string) garment.Garment {
	t.Helper()
	g, _, err := garment.Read(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	return g
}

// sash is a garment of two rectangles, joined by a seam whose plies are cut unlike, and
// a hem.
const sash = `{"version": 1, "title": "Sash",
 "cloths": {"outer": {"wide": "45 in", "ends": "1/2 in", "long": "2 yd"}},
 "pieces": {
  "band": {"wide": "20 in", "long": "10 in", "along": ["join", "end", "border", "end"]},
  "tail": {"wide": "20 in", "long": "8 in", "along": ["", "", "join", ""]}},
 "seams": {"join": {"joins": ["tail", "band"], "sewn": {"kind": "plain", "draftedUnder": "3/8 in", "first": "3/8 in"}}, "end": {"joins": ["band", "band"]}},
 "hems": {"border": {"on": ["band"], "allowance": {"inch": "1 in"}}},
 "parts": {
  "bought": {"noun": "yardage.purchase", "takes": {"need": "outer"}},
  "frill": {"noun": "gather.ruffle", "takes": {"strip.edge": "edge"}, "spec": {"depth": "1 in"}}},
 "edges": {"edge": {}}}`

// TestLaid: a piece is cut larger by the allowance of each seam and hem along it, as the
// ply that it is of each.
func TestLaid(t *testing.T) {
	p, err := read(t, sash).Plan()
	if err != nil {
		t.Fatal(err)
	}
	sizes := map[string]string{
		"band": "5/8 + 20 + 5/8, 3/8 + 10 + 1", // under ply of the join, both plies of the ends, the hem
		"tail": "20, 8 + 5/8",                  // upper ply of the join
	}
	lay := p.Lays[0].Lay
	for _, at := range lay.Placements {
		piece := lay.Spec.Pieces[at.Piece]
		wide, long := at.Size(lay.Spec)
		if at.Across {
			wide, long = long, wide
		}
		w, l, _ := strings.Cut(sizes[piece.Name], ", ")
		if wide != inches(t, w) || long != inches(t, l) {
			t.Errorf("%s is cut %v by %v, want %s", piece.Name, wide, long, sizes[piece.Name])
		}
	}
	if !lay.Fits || p.Parts[0].Sheet.Title == "" || p.Parts[0].Needs != nil {
		t.Errorf("the cloth to buy is not planned: %+v", p.Parts[0])
	}
	if got := fmt.Sprint(p.Parts[1].Needs); !strings.HasPrefix(got, "[strip.edge") {
		t.Errorf("the frill needs %s, want the edge whose length is not known", got)
	}
	if steps := len(p.Sheet().Steps); steps < 5 {
		t.Errorf("%d steps", steps)
	}
	done := read(t, strings.Replace(sash, `"edges"`, `"done": ["cut"], "edges"`, 1))
	after, err := done.Plan()
	if err != nil || len(after.Sheet().Steps) >= len(p.Sheet().Steps) {
		t.Errorf("what is cut is laid again: %v", err)
	}
}

// TestNotLaid: nothing is laid where the size of a piece is not known; what is too short
// is told, with what is wanting.
func TestNotLaid(t *testing.T) {
	p, err := read(t, strings.Replace(sash, `"wide": "20 in", "long": "8 in",`, "", 1)).Plan()
	if err != nil || fmt.Sprint(p.Lays[0].Needs) != "[tail]" || len(p.Lays[0].Lay.Placements) > 0 {
		t.Errorf("%+v, %v", p.Lays, err)
	}
	p, err = read(t, strings.Replace(sash, "2 yd", "11 in", 1)).Plan()
	if err != nil || p.Lays[0].Lay.Fits || p.Lays[0].Lay.Spare.Sign() >= 0 || !strings.Contains(p.Sheet().Title, "too short") {
		t.Errorf("%+v, %v", p.Lays, err)
	}
}

// TestLayFaults: what is wrong with a piece, a cloth or what a part takes has its path.
func TestLayFaults(t *testing.T) {
	for _, test := range [][3]string{
		{`"along": ["", "", "join", ""]`, `"along": ["join"]`, "pieces.tail.along 1: out of range, want 4"},
		{`["", "", "join", ""]`, `["", "", "jion", ""]`, `pieces.tail.along[2] "jion": not known, want the name of a seam or a hem, or nothing`},
		{`"joins": ["tail", "band"]`, `"joins": ["tail"]`, `pieces.band.along[0] "join": disagrees with what else is given, want a seam that joins band`},
		{`"outer": {"wide"`, `"cotton": {"wide"`, `cloths "cotton": not known, want one of outer, lining`},
		{`"wide": "20 in", "long": "8 in"`, `"wide": "90 in", "long": "90 in"`, "pieces.tail 90 in by 90 5/8 in: out of range"},
		{`"need": "outer"`, `"need": "uoter"`, `parts.bought.takes.need "uoter": not known, want the name of an edge, or of a cloth`},
		{`"need": "outer"`, `"ned": "outer"`, `parts.bought.takes.ned`},
		{`"tail": {"wide"`, `"cut": {"wide"`, `pieces.cut: not known, want another name`},
	} {
		_, err := read(t, strings.Replace(sash, test[0], test[1], 1)).Plan()
		if err == nil || !strings.Contains(err.Error(), test[2]) {
			t.Errorf("%s:\n%v, want\n%s", test[1], err, test[2])
		}
	}
}

// FuzzRead: any text is planned, or refused with faults.
func FuzzRead(f *testing.F) {
	f.Add([]byte(sash))
	for _, name := range garment.Starters() {
		f.Add([]byte(`{"like":"` + name + `","changes":{"side":{"sewn":{"first":"3/8 in"}}},"done":["cut"]}`))
	}
	f.Add([]byte(`{"version":1,"edges":{"a":{"net":"1 in","own":"s","turn":"-9","crossed":{"s":{"slant":"1/2"}}}},"seams":{"s":{"sewn":{"kind":"french"}}}}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		if len(text) > 20_000 {
			return
		}
		ctx, cancel := context.WithTimeout(context.Background(), 50*time.Millisecond)
		defer cancel()
		g, _, err := garment.Read(bytes.NewReader(text))
		if err == nil {
			var p garment.Plan
			if p, err = g.PlanContext(ctx); err == nil {
				_ = p.Sheet().Text(units.Notation{})
				return
			}
		}
		var fs fault.Faults
		if !errors.As(err, &fs) && !errors.Is(err, context.DeadlineExceeded) || err.Error() == "" {
			t.Fatalf("%v", err)
		}
	})
}

// A blouse whose shoulders are sewn as French seams: its neck comes out longer than its
// facing.
func Example() {
	patch, err := garment.Patch("blouse", []string{"shoulder.kind=french", "shoulder.first=3/16 in", "shoulder.second=1/4 in"})
	if err != nil {
		fmt.Println(err)
		return
	}
	g, _, err := garment.Read(bytes.NewReader(patch))
	if err != nil {
		fmt.Println(err)
		return
	}
	p, err := g.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, e := range p.Edges[:3] {
		fmt.Println(e.Name, e.Change)
	}
	fmt.Println(p.Remedies[0].Name)
	// Output:
	// neck 3/4 in
	// neck, centre to centre 3/4 in
	// facing neck 0 in
	// cut-drift shoulder
}
