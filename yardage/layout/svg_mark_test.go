package layout_test

import (
	"context"
	"fmt"
	"math/rand/v2"
	"regexp"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

var (
	grainLine = regexp.MustCompile(`<path( transform="rotate\((-?\d+)\)")? d="M(-?\d+) (-?\d+)H(-?\d+)M`)
	pieceName = regexp.MustCompile(`<text( transform="rotate\((-?\d+)\)( rotate\(180\))?")? x="(-?\d+)" y="(-?\d+)" text-anchor="middle" font-size="(\d+)">part`)
)

// onPage is a point of the drawing, in inches, out of a frame turned by so much.
func onPage(turn string, x, y int64) corner {
	switch turn {
	case "90":
		x, y = -y, x
	case "45":
		x, y = (x-y)*7071/10_000, (x+y)*7071/10_000
	case "-45":
		x, y = (x+y)*7071/10_000, (y-x)*7071/10_000
	}
	tenth := units.Millimetre.Frac(1, 10)
	return cornersOf([]layout.Point{{X: tenth.MulInt(x), Y: tenth.MulInt(y)}})[0]
}

func number(t *testing.T, text string) int64 {
	t.Helper()
	var n int64
	if _, err := fmt.Sscan(text, &n); err != nil {
		t.Fatal(err)
	}
	return n
}

// The grain line of every piece, and the middle of its name, are inside its
// outline, however hollow that is.
func TestMarksInside(t *testing.T) {
	hollow := [...]string{
		"0,0 9,0 9,9 8,9 8,1 1,1 1,9 0,9",
		"0,3 4,0 12,0 16,3 15,5 12,3 4,3 1,5",
		"0,0 3,0 3,3 5,5 7,3 7,0 10,0 10,5 7,8 3,8 0,5",
		"0,0 10,0 10,1 2,1 2,7 10,7 10,8 0,8",
		"0,0 6,0 0,6",
		"0,0 1/2,0 8,9 7,9",
	}
	r := rand.New(rand.NewPCG(51, 52))
	lines, names := 0, 0
	for i := range 40 {
		s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("40"), Folded: i%3 == 0}}
		one := layout.Piece{Name: "part", Count: 1, Turn: layout.Turn(r.IntN(4))}
		if i < 2*len(hollow) {
			one.Outline = outline(hollow[i%len(hollow)])
		} else {
			one.Outline = shapes(t, r, 1)[0].Outline
		}
		s.Pieces = []layout.Piece{one}
		p, err := s.Plan(context.Background())
		if err != nil {
			if list(err) == nil {
				t.Fatal(err)
			}
			continue
		}
		svg, edge := p.SVG(), cornersOf(p.Placements[0].Corners(s))
		if m := grainLine.FindStringSubmatch(svg); m != nil {
			lines++
			from, to, y := number(t, m[3]), number(t, m[5]), number(t, m[4])
			for k := range int64(9) {
				if at := onPage(m[2], from+(to-from)*k/8, y); !inside(edge, at) {
					t.Errorf("%v, %v: the grain line leaves it at %v\n%s", one.Outline, p.Placements, at, svg)
				}
			}
		}
		if m := pieceName.FindStringSubmatch(svg); m != nil {
			names++
			x, y := number(t, m[4]), number(t, m[5])-number(t, m[6])/3
			if m[3] != "" {
				x, y = -x, -y
			}
			if at := onPage(m[2], x, y); !inside(edge, at) {
				t.Errorf("%v, %v: the name is outside, at %v\n%s", one.Outline, p.Placements, at, svg)
			}
		}
		if i < len(hollow) && strings.Count(svg, "part") == 0 {
			t.Errorf("no name in\n%s", svg)
		}
	}
	if lines < 25 || names < 25 {
		t.Errorf("%d grain lines, %d names", lines, names)
	}
}
