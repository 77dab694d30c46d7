package layout

import (
	"fmt"
	"html"

	"example.com/clothyard/units"
)

// SVG draws the lay to scale, the cut end at the top: the cloth with its
// selvedges and ends shaded, its fold, repeats and flaws, every piece with its
// name, notches and grain line, and a bar of a foot. It is a drawing to look at, rounded to a tenth of a millimetre;
// Placements has the figures. It is empty for a Plan that no cloth is given for
// or that is too large to draw.
func (p Plan) SVG() string {
	c := p.Spec.Cloth
	end := p.Used.Max(c.Long)
	d := drawing{ok: true}
	wide, long := d.tenths(c.Wide), d.tenths(end)
	left, right, head := d.tenths(c.Selvedge), d.tenths(c.Selvedge), d.tenths(c.Ends)
	if c.Folded {
		wide, left = d.tenths(c.double()), 0
	}
	if !d.ok || wide <= 0 || long <= 0 {
		return ""
	}
	d.font = max(wide/45, 1)
	margin, line := 2*d.font, max(d.font/10, 1)
	w, h := wide+2*margin, long+2*margin+3*d.font
	const screen = 720 // width on the screen, in pixels
	d.printf("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" viewBox=\"%d %d %d %d\" font-family=\"sans-serif\" stroke-width=\"%d\">\n",
		screen, max(min(h/max(w/screen, 1), 100*screen), 1), -margin, -margin, w, h, line)
	d.printf("<title>Lay of %d pieces</title>\n", len(p.Placements))
	d.printf("<rect width=\"%d\" height=\"%d\" fill=\"#ddd\" stroke=\"#000\"/>\n", wide, long)
	d.printf("<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"#fff\"/>\n", left, head, max(wide-left-right, 0), max(long-2*head, 0))
	d.repeats(&c, wide, long)
	names, laid := p.Spec.titles(p.Placements), p.Spec.laid()
	for i, at := range p.Placements {
		d.piece(laid, at, names[i][len("Lay "):], at.Piece >= 0 && at.Piece < len(p.Spec.Pieces) && p.Spec.Pieces[at.Piece].Turn == Bias)
	}
	for _, flaw := range c.barred() {
		d.flaw(flaw, wide, long)
	}
	if c.Folded {
		d.printf("<path d=\"M0 0V%d\" stroke=\"#000\" stroke-width=\"%d\"/>\n<text transform=\"translate(%d,%d) rotate(90)\" text-anchor=\"middle\" font-size=\"%d\">fold</text>\n", long, 4*line, -d.font, long/2, d.font)
	}
	used := d.tenths(p.Used)
	d.printf("<path d=\"M%d %dH%d\" stroke=\"#000\" stroke-dasharray=\"%d\"/>\n", -margin/2, used, wide+margin/2, d.font/2)
	foot := d.tenths(units.Foot.Of(1))
	d.printf("<path d=\"M0 %dv%dh%dv%d\" fill=\"none\" stroke=\"#000\"/>\n", long+d.font, d.font, foot, -d.font)
	d.printf("<text x=\"%d\" y=\"%d\" font-size=\"%d\">1 ft; the broken line ends the lay</text>\n</svg>\n", foot+d.font, long+2*d.font, d.font)
	if !d.ok {
		return ""
	}
	return string(d.out)
}

// A drawing is an SVG in the making, in tenths of a millimetre.
type drawing struct {
	out  []byte
	font int64
	ok   bool // every length so far could be drawn
}

func (d *drawing) printf(format string, args ...any) { d.out = fmt.Appendf(d.out, format, args...) }

// tenths is l in tenths of a millimetre, to the nearest.
func (d *drawing) tenths(l units.Length) int64 {
	n, ok := l.In(units.Millimetre).Mul(units.RatioOf(10, 1)).Int(units.HalfAway)
	if !ok || n > 1<<40 || n < -1<<40 {
		d.ok = false
		return 0
	}
	return n
}

// mostLines is the most repeat lines that are drawn each way.
const mostLines = 400

// repeats draws where the repeats begin, from the cut end and from Axis.
func (d *drawing) repeats(c *Cloth, wide, long int64) {
	if across := d.tenths(c.RepeatX); across > 0 && wide/across <= mostLines {
		for x := (d.tenths(c.Axis)+across-1)%across + 1; x < wide; x += across {
			d.printf("<path d=\"M%d 0V%d\" stroke=\"#e2c8c8\"/>\n", x, long)
		}
	}
	if along := d.tenths(c.RepeatY); along > 0 && long/along <= mostLines {
		for y := along; y < long; y += along {
			d.printf("<path d=\"M0 %dH%d\" stroke=\"#e2c8c8\"/>\n", y, wide)
		}
	}
}

// flaw draws a flaw with hatching over the rectangle around it, as much of it as
// is on the cloth.
func (d *drawing) flaw(pts []Point, wide, long int64) {
	lo, hi := box(pts)
	x0, x1 := max(d.tenths(lo.X), 0), min(d.tenths(hi.X), wide)
	y0, y1 := max(d.tenths(lo.Y), 0), min(d.tenths(hi.Y), long)
	if x0 >= x1 || y0 >= y1 {
		return
	}
	d.printf("<path d=\"")
	for i, q := range pts {
		d.printf("%c%d %d", "ML"[min(i, 1)], max(d.tenths(q.X), 0), d.tenths(q.Y))
	}
	d.printf("z\" fill=\"#f4b0b0\" stroke=\"#a00\"/>\n")
	gap := max((x1-x0+y1-y0)/12, 1)
	for k := gap; k < x1-x0+y1-y0; k += gap { // from the left or lower side up to the right
		fromX, fromY := x0, y0+k
		if fromY > y1 {
			fromX, fromY = x0+fromY-y1, y1
		}
		toX, toY := x0+k, y0
		if toX > x1 {
			toX, toY = x1, y0+toX-x1
		}
		d.printf("<path d=\"M%d %dL%d %d\" stroke=\"#a00\"/>\n", fromX, fromY, toX, toY)
	}
}

// piece draws one piece. Its name runs along its longer side.
func (d *drawing) piece(s Spec, at Placement, name string, bias bool) {
	wide, long := at.Size(s)
	x, y, w, h := d.tenths(at.X), d.tenths(at.Y), d.tenths(wide), d.tenths(long)
	fill := "#cfe3f2"
	if at.Across {
		fill = "#f2dcc2"
	}
	page := []vertex{{X: x, Y: y}, {X: x + w, Y: y}, {X: x + w, Y: y + h}, {X: x, Y: y + h}}
	if one := at.Piece; one >= 0 && one < len(s.Pieces) && len(s.Pieces[one].Outline) > 0 {
		page = page[:0]
		d.printf("<path d=\"")
		for i, q := range at.Corners(s) {
			page = append(page, vertex{X: d.tenths(q.X), Y: d.tenths(q.Y)})
			d.printf("%c%d %d", "ML"[min(i, 1)], page[i].X, page[i].Y)
		}
		d.printf("z\" fill=\"%s\" stroke=\"#000\"/>\n", fill)
	} else {
		d.printf("<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" fill=\"%s\" stroke=\"#000\"/>\n", x, y, w, h, fill)
	}
	along, grain := level, upright
	if h > w {
		along = upright
	}
	if at.Across {
		grain = level
	}
	if bias {
		grain = falling
		if at.Across == at.flipped(&s) {
			grain = rising
		}
		along = grain
	}
	d.mark(page, name, along, grain, at.Half)
	tip := d.font / 3
	for _, n := range at.Notches(s) {
		d.printf("<path d=\"M%d %dm%d %dl%d %dl%d %dz\" fill=\"#000\"><title>%s</title></path>\n",
			d.tenths(n.At.X), d.tenths(n.At.Y), -tip, tip, tip, -2*tip, tip, 2*tip, html.EscapeString(n.Name))
	}
}
