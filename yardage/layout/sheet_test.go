package layout_test

import (
	"context"
	"encoding/xml"
	"errors"
	"io"
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/yardage/layout"
)

func TestSheet(t *testing.T) {
	s := doublet()
	s.Pieces[0].Name = ""
	s.Pieces[1].Wide, s.Pieces[1].Long = in("15"), in("20")
	s.Cloth.Long, s.Pieces[1].Count = in("37"), 2
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	sheet := p.Sheet()
	if err := sheet.Check(); err != nil {
		t.Error(err)
	}
	text := sheet.Text(units.Notation{}, units.Notation{Unit: units.Millimetre})
	for _, want := range []string{"Lay piece 1.", "Lay pocket, copy 2.", "usable width: 35 in", "from the cut end", "cloth to spare"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	for _, cite := range sheet.Sources {
		if _, ok := source.Lookup(cite.ID); !ok && cite.Known != source.Practice {
			t.Errorf("no source for %+v", cite)
		}
	}
	// The steps follow the cloth from its cut end.
	var last units.Length
	for _, step := range sheet.Steps[1 : len(sheet.Steps)-1] {
		at, _ := step.At.Near().Exact()
		if at.Less(last) {
			t.Errorf("%s at %v after %v", step.Do, at, last)
		}
		last = at
	}
	for _, at := range p.Placements {
		if at.Across && !strings.Contains(text, "turned a quarter") {
			t.Errorf("no word of the turn in\n%s", text)
		}
	}
}

// A turned piece is said to be turned.
func TestSheetAcross(t *testing.T) {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("9")}, Work: 1, Pieces: []layout.Piece{{Name: "facing", Wide: in("2"), Long: in("9"), Count: 3, Turn: layout.Quarter}}}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	text := p.Sheet().Text()
	if p.Lay != in("6") || strings.Count(text, "turned a quarter") != 3 || !strings.Contains(text, "grain line decides") {
		t.Errorf("lay %v\n%s", p.Lay, text)
	}
}

// The zero Plan has a sheet too, and nothing to draw.
func TestZeroPlan(t *testing.T) {
	var p layout.Plan
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
	if svg := p.SVG(); svg != "" {
		t.Error(svg)
	}
	p.Placements = []layout.Placement{{Piece: 3, Copy: 1}, {Piece: -1}}
	for _, at := range p.Placements {
		if wide, long := at.Size(p.Spec); !wide.IsZero() || !long.IsZero() {
			t.Errorf("%v by %v", wide, long)
		}
	}
	if text := p.Sheet().Text(); strings.Count(text, "Lay a piece.") != 2 {
		t.Error(text)
	}
}

func TestSVG(t *testing.T) {
	s := doublet()
	s.Pieces[0].Name = `back <"&'>`
	s.Pieces = append(s.Pieces, layout.Piece{Name: "facing", Wide: in("2"), Long: in("35"), Count: 1, Turn: layout.Quarter})
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	svg := p.SVG()
	dec := xml.NewDecoder(strings.NewReader(svg))
	elements, text := map[string]int{}, ""
	for {
		tok, err := dec.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatalf("%v in\n%s", err, svg)
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			elements[tok.Name.Local]++
		case xml.CharData:
			text += string(tok)
		}
	}
	if elements["rect"] != 2+4 || elements["text"] != 4+1 || elements["path"] != 4+2 {
		t.Errorf("%v in\n%s", elements, svg)
	}
	for _, want := range []string{s.Pieces[0].Name, "pocket, copy 1", "pocket, copy 2", "facing", "1 ft"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, svg)
		}
	}
	if strings.Count(svg, "rotate(90)") < 4 {
		t.Errorf("names and grain lines do not follow the pieces:\n%s", svg)
	}
	// What is too large to draw is not drawn, whole or in part.
	for _, far := range []units.Length{huge(), units.Inch.Of(1 << 50)} {
		for _, change := range []func(*layout.Plan){
			func(p *layout.Plan) { p.Spec.Cloth.Wide = far },
			func(p *layout.Plan) { p.Used = far },
			func(p *layout.Plan) { p.Placements = []layout.Placement{{X: far.Neg()}} },
		} {
			q := p
			change(&q)
			if svg := q.SVG(); svg != "" {
				t.Errorf("drawn:\n%s", svg)
			}
		}
	}
}

func TestTurn(t *testing.T) {
	n := 0
	for turn := range layout.Turns {
		text, err := turn.MarshalText()
		var back layout.Turn
		if err != nil || string(text) != turn.String() || back.UnmarshalText(text) != nil || back != turn {
			t.Errorf("%v: %s, %v, %v", turn, text, err, back)
		}
		n++
	}
	for range layout.Turns {
		break
	}
	if n != 4 {
		t.Errorf("%d turns", n)
	}
	if got := layout.Turn(7).String(); got != "turn 7" {
		t.Error(got)
	}
	var turn layout.Turn
	if _, err := layout.Turn(7).MarshalText(); !errors.Is(err, fault.Unknown) {
		t.Error(err)
	}
	if err := turn.UnmarshalText([]byte("Half")); !errors.Is(err, fault.Unknown) || turn != layout.Keep {
		t.Error(turn, err)
	}
	if err := turn.UnmarshalText(make([]byte, 1<<20)); err == nil || len(err.Error()) > 2000 {
		t.Error("a long text is not shortened")
	}
}

// Flaws, stripes and places are marked on the open cloth before anything is laid,
// after its end is square; what the lower layer gives too much is said where it
// is cut.
func TestSheetMarks(t *testing.T) {
	waist := []layout.Notch{{Name: "waist", At: layout.Point{X: in("1"), Y: in("2")}}}
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("45"), RepeatX: in("3"), Axis: in("1"), OneWay: true,
		Flaws: []layout.Flaw{{X: in("9"), Y: in("2"), Wide: in("1"), Long: in("1")}, {Outline: outline("12,4 15,6 13,8")}}, Phases: []layout.Phase{{Notch: "waist", X: in("2")}}},
		Pieces: []layout.Piece{
			{Name: "yoke", Wide: in("9"), Long: in("4"), Count: 1, Centred: true},
			{Name: "front", Outline: outline("0,0 6,0 6,9 1,12"), Count: 1, Notches: waist},
		}}
	for _, folded := range []bool{false, true} {
		s.Cloth.Folded = folded
		want := []string{"square the cut end, and lay it out", "Mark flaw 1", "2 in from the cut end", "Mark flaw 2", "left-hand edge = 12 in",
			"Mark the middle of a stripe", "Mark the place of notch waist", "Lay ", "none turned end for end", "No piece lies on a flaw"}
		if folded {
			s.Cloth.Axis = units.Length{}
			want = slices.Delete(want, 5, 6)
			want[0], want[6] = "square the cut end, and open it out", "Now fold it lengthwise, right sides together, along the middle of a stripe"
		}
		p, err := s.Plan(context.Background())
		if err != nil {
			t.Fatal(err)
		}
		if err := p.Sheet().Check(); err != nil {
			t.Error(err)
		}
		text := strings.Join(strings.Fields(p.Sheet().Text()), " ")
		if over := strings.Contains(text, "what the lower layer gives is over"); over != folded {
			t.Errorf("folded %v: over is said %v", folded, over)
		}
		if !strings.Contains(text, "its notches on their place of the repeat") {
			t.Error("nothing of the notches")
		}
		if strings.Contains(text, "opened out where") {
			t.Error("nothing is opened out")
		}
		for _, one := range want {
			_, after, found := strings.Cut(text, one)
			if !found {
				t.Fatalf("folded %v: no %q, or too early, in\n%s", folded, one, p.Sheet().Text())
			}
			text = after
		}
	}
}
