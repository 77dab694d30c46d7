package garment_test

import (
	"context"
	"encoding/xml"
	"errors"
	"io"
	"math/big"
	"strings"
	"testing"

	"example.com/clothyard/examples/garment"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// line is how long the seam line through some corners of a piece is, each of its
// parts to a thousandth of an inch.
func line(c []garment.Corner) units.Length {
	sum := new(big.Int)
	for i := range c[:len(c)-1] {
		x := c[i+1].X.Sub(c[i].X).In(units.Inch).Rat()
		y := c[i+1].Y.Sub(c[i].Y).In(units.Inch).Rat()
		square := new(big.Rat).Add(x.Mul(x, x), y.Mul(y, y))
		square.Mul(square, big.NewRat(1_000_000, 1))
		sum.Add(sum, new(big.Int).Sqrt(new(big.Int).Quo(square.Num(), square.Denom())))
	}
	return units.Inch.Frac(sum.Int64(), 1000)
}

func ring(c []garment.Corner, from, n int) []garment.Corner {
	var out []garment.Corner
	for k := range n {
		out = append(out, c[(from+k)%len(c)])
	}
	return out
}

// The outlines of the shirt have the edges that the garment states.
func TestOutlinesAgree(t *testing.T) {
	g, err := garment.Default()
	if err != nil {
		t.Fatal(err)
	}
	outline := func(name string) []garment.Corner {
		for _, p := range g.Pieces {
			if p.Name == name {
				return p.Outline
			}
		}
		t.Fatal(name)
		return nil
	}
	edge := func(name string) units.Length {
		for _, e := range g.Edges {
			if e.Name == name {
				return e.Net
			}
		}
		t.Fatal(name)
		return units.Length{}
	}
	in := func(s string) units.Length { return units.MustParse(s + " in") }
	back, front, sleeve := outline("back"), outline("front"), outline("sleeve")
	// across is how wide a piece is at a height, by its left and right sides.
	across := func(c []garment.Corner, y units.Length) units.Length {
		var x []units.Length
		for i, a := range c {
			b := c[(i+1)%len(c)]
			if (a.Y.Cmp(y) > 0) != (b.Y.Cmp(y) > 0) {
				x = append(x, a.X.Add(b.X.Sub(a.X).Scale(y.Sub(a.Y).Div(b.Y.Sub(a.Y)))))
			}
		}
		if len(x) != 2 {
			t.Fatalf("%d sides", len(x))
		}
		return x[0].Sub(x[1]).Abs()
	}
	stand := in("3/4") // beyond the centre front, on each front
	backNeck, frontNeck := line(ring(back, 15, 5)), line(ring(front, 9, 5))
	backArm, frontArm := line(ring(back, 2, 5)), line(ring(front, 2, 5))
	for _, test := range []struct {
		what      string
		got, want units.Length
		exact     bool
	}{
		{"neck", frontNeck.MulInt(2).Add(backNeck), edge("neck"), false},
		{"neck, centre to centre", frontNeck.Sub(stand).MulInt(2).Add(backNeck), edge("neck, centre to centre"), false},
		{"armhole", backArm.Add(frontArm), edge("armhole"), false},
		{"sleeve top", line(append(ring(sleeve, 7, 4), ring(sleeve, 0, 5)...)), edge("sleeve top"), false},
		{"shoulders", line(ring(front, 1, 2)), line(ring(back, 1, 2)), false},
		{"side seams", line(ring(front, 6, 2)), line(ring(back, 6, 2)), false},
		{"body at bust", across(back, in("14")).Add(across(front, in("14")).Sub(stand).MulInt(2)), edge("body at bust"), true},
		{"hem sweep", across(back, in("29 9999/10000")).Add(across(front, in("29 9999/10000")).MulInt(2)), edge("hem sweep"), false},
		{"sleeve bottom", across(sleeve, in("21")), edge("sleeve bottom"), true},
		{"front edge, neck seam to hem", front[8].Y.Sub(front[9].Y), g.Drops[0].Drafted, true},
		{"shoulder at the neck to hem", front[8].Y.Sub(front[0].Y), g.Drops[1].Drafted, true},
	} {
		off := test.got.Sub(test.want).Abs()
		if test.exact && !off.IsZero() || units.Inch.Frac(1, 8).Less(off) {
			t.Errorf("%s: drawn %v, stated %v", test.what, test.got, test.want)
		}
	}
	if both := backNeck.Sub(in("6 1/4")).Abs(); units.Inch.Frac(1, 16).Less(both) {
		t.Errorf("neck of the back: %v", backNeck)
	}
}

// Every cut edge lies as far outside its seam line as is cut there, or farther,
// the back's by the perpendicular.
func TestOutlinesCut(t *testing.T) {
	g, err := garment.Default()
	if err != nil {
		t.Fatal(err)
	}
	g.Cloth.Work = 1
	p, err := g.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	checked := 0
	for i, one := range g.Pieces {
		cut := p.Cloth.Nest.Spec.Pieces[i]
		if cut.Wide != p.Cloth.Lay.Spec.Pieces[i].Wide || cut.Long != p.Cloth.Lay.Spec.Pieces[i].Long {
			t.Errorf("%s: the outline takes %v by %v", one.Name, cut.Wide, cut.Long)
		}
		area := layout.Piece{Outline: cut.Outline, Wide: cut.Wide, Long: cut.Long}.Area()
		if len(one.Outline) > 0 && area.Cmp(cut.Wide.Times(cut.Long)) >= 0 {
			t.Errorf("%s: %v", one.Name, area)
		}
		for k, c := range one.Outline {
			if c.Left+c.Right+c.Above+c.Below == "" {
				continue
			}
			next := (k + 1) % len(one.Outline)
			a, b := cut.Outline[k], cut.Outline[next]
			// How far the seam line's two corners lie inside the cut edge, squared. The
			// narrowest allowance, 7/16, is measured straight up from a sloping line.
			d := [2]*big.Rat{b.X.Sub(a.X).In(units.Inch).Rat(), b.Y.Sub(a.Y).In(units.Inch).Rat()}
			long := new(big.Rat).Add(new(big.Rat).Mul(d[0], d[0]), new(big.Rat).Mul(d[1], d[1]))
			least := units.Inch.Frac(13, 32).In(units.Inch).Rat()
			for _, c := range []garment.Corner{c, one.Outline[next]} {
				q := [2]*big.Rat{c.X.Sub(a.X).In(units.Inch).Rat(), c.Y.Sub(a.Y).In(units.Inch).Rat()}
				cross := new(big.Rat).Sub(new(big.Rat).Mul(d[0], q[1]), new(big.Rat).Mul(d[1], q[0]))
				far := new(big.Rat).Quo(new(big.Rat).Mul(cross, cross), long)
				if far.Cmp(new(big.Rat).Mul(least, least)) < 0 {
					t.Errorf("%s: the edge from corner %d lies the root of %s in from its seam line", one.Name, k, far.FloatString(4))
				}
			}
			checked++
		}
	}
	if checked < 40 {
		t.Errorf("%d edges", checked)
	}
}

// The lay of the outlines holds on the shirt's cloth, is shorter than that of the
// rectangles, and leaves that as it is; it can be drawn.
func TestNest(t *testing.T) {
	g, err := garment.Default()
	if err != nil {
		t.Fatal(err)
	}
	p, err := g.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	n := p.Cloth.Nest
	if err := layout.Verify(n.Spec, n.Placements); err != nil || !n.Fits {
		t.Error(err, n.Fits)
	}
	if own := units.MustParse("76 3/16 in"); p.Cloth.Own.Used != own || !n.Used.Less(own.Sub(units.Inch.Of(3))) {
		t.Errorf("%v by rectangles, %v by outlines", p.Cloth.Own.Used, n.Used)
	}
	svg := n.SVG()
	for dec := xml.NewDecoder(strings.NewReader(svg)); ; {
		if _, err := dec.Token(); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			t.Fatal(err)
		}
	}
	for _, one := range g.Pieces {
		if !strings.Contains(svg, ">"+one.Name) {
			t.Errorf("%s has no name in the drawing", one.Name)
		}
	}
	bare := g
	bare.Pieces = append([]garment.Piece(nil), g.Pieces...)
	for i := range bare.Pieces {
		bare.Pieces[i].Outline = nil
	}
	q, err := bare.Plan(context.Background())
	if err != nil || len(q.Cloth.Nest.Placements) != 0 || q.Cloth.Lay.Used != p.Cloth.Lay.Used {
		t.Error(err, q.Cloth.Lay.Used)
	}
}

// Outlines that cannot be are refused where they stand. A seam that is cut wider
// moves the edges that name it and no others.
func TestOutlineFaults(t *testing.T) {
	for _, test := range []struct {
		change func(*garment.Piece)
		want   string
		reason error
	}{
		{func(p *garment.Piece) { p.Outline[2].Left = "cape" }, "pieces[0].outline[2].left", fault.Unknown},
		{func(p *garment.Piece) { p.Outline = make([]garment.Corner, garment.MaxParts+1) }, "pieces[0].outline", fault.Range},
		{func(p *garment.Piece) { p.Outline[0].Y = units.Inch.Of(-1) }, "pieces[0].outline", fault.Conflict},
		{func(p *garment.Piece) { p.Outline[7], p.Outline[8] = p.Outline[8], p.Outline[7] }, "pieces[0].outline", layout.ErrOutline},
		{func(p *garment.Piece) { p.Outline = p.Outline[:2] }, "pieces[0].outline", fault.Range},
		{func(p *garment.Piece) { p.Pair = true }, "pieces[0].outline", fault.Conflict},
	} {
		g, err := garment.Default()
		if err != nil {
			t.Fatal(err)
		}
		test.change(&g.Pieces[0])
		_, err = g.Plan(context.Background())
		var fs fault.Faults
		if !errors.As(err, &fs) || fs[0].Path != test.want || !errors.Is(err, test.reason) {
			t.Errorf("%v, want %s", err, test.want)
		}
	}
	g, err := garment.Default()
	if err != nil {
		t.Fatal(err)
	}
	g.Cloth.Work = 1
	before, err := g.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	for i, s := range g.Seams {
		if s.Name == "armhole" {
			g.Seams[i].Spec = s.Spec.Cutting(units.Inch.Frac(7, 8), units.Length{})
		}
	}
	after, err := g.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	a, b := before.Cloth.Nest.Spec.Pieces, after.Cloth.Nest.Spec.Pieces
	for i, p := range g.Pieces {
		for k, c := range p.Outline {
			x, y := b[i].Outline[k].X.Sub(a[i].Outline[k].X), b[i].Outline[k].Y.Sub(a[i].Outline[k].Y)
			if (c.Left == "armhole" || c.Right == "armhole") == x.IsZero() || (c.Above == "armhole") == y.IsZero() {
				t.Errorf("%s: corner %d moved by %v and %v", p.Name, k, x, y)
			}
		}
	}
}
