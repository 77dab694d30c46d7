package section

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// Measures of the page, in thousandths of a millimetre, in which the picture is
// written.
const (
	pageMargin  = 14_000
	pageText    = 3_600 // height of the letters, about 10 points
	pageTitle   = 4_400
	pageLetter  = 1_950 // width reckoned for one letter
	pageRow     = 8_500 // from one measure to the next
	pageLabel   = 6_000 // from one row of stitch numbers to the next
	pageLine    = 250   // width of the outline
	pageHeavy   = 900   // width of the right side of the cloth
	pageTooth   = 1_000 // how far a raw edge is jagged
	pageCloth   = 160_000
	pageLeast   = 130_000
	pageRunsOn  = 6_000
	pageArrow   = 1_900
	pageSwatchX = 10_000
	pageSwatchY = 4_400
)

// A page is a drawing on its way to a picture.
type page struct {
	strings.Builder
	d       Drawing
	in      []units.Notation
	id      string // begins every id, so that pictures on one page do not clash
	scale   units.Ratio
	low     Point
	high    Point
	left    int64 // where the cloth begins
	top     int64 // where the cloth begins
	width   int64 // of the page
	bottom  int64 // where the cloth ends
	labels  []label
	clothed int64 // width of the cloth
}

// A label is the number of a row of stitching.
type label struct {
	number int
	x      int64
	tier   int64 // from the cloth upwards
}

// SVG is the picture, as text in UTF-8, with the measures in the notations given:
// the first, and the others after it in brackets. It fails where [Drawing.Check]
// does. Only here is anything rounded: a place on the page to the thousandth of a
// millimetre.
//
// The picture is black and white. It has the role of an image, a title, and a
// description that tells the plies, the stitching and the measures in words; its
// size is in millimetres at the scale it names, and its view box lets it be shown
// at any other. Ids in it begin with the title, so that two pictures can stand on
// one page.
func (d Drawing) SVG(in ...units.Notation) ([]byte, error) {
	if err := d.Check(); err != nil {
		return nil, err
	}
	p := page{d: d, in: in, id: slug(d.Title)}
	p.low, p.high = d.Extent()
	for _, s := range d.Stitches {
		for _, at := range [...]Point{s.From, s.To} {
			p.low = Point{p.low.X.Min(at.X), p.low.Y.Min(at.Y)}
			p.high = Point{p.high.X.Max(at.X), p.high.Y.Max(at.Y)}
		}
	}
	p.scale = d.scale(p.high.X.Sub(p.low.X))
	p.clothed = p.size(p.high.X.Sub(p.low.X))
	p.width = max(p.clothed+2*pageMargin, pageLeast)
	p.left = (p.width - p.clothed) / 2
	p.tiers()
	tiers := int64(0)
	for _, l := range p.labels {
		tiers = max(tiers, l.tier+1)
	}
	above, below := d.count(Above), d.count(Below)
	p.top = 12_000 + above*pageRow + tiers*pageLabel + 3_000
	p.bottom = p.top + p.size(p.high.Y.Sub(p.low.Y))
	for _, ply := range d.Plies {
		p.ply(ply)
	}
	words := p.measures(tiers)
	p.stitches()
	p.WriteString(words)
	height := p.legend(p.bottom + below*pageRow + 8_000)
	body := p.String()
	p.Reset()
	p.head(height)
	p.WriteString(body)
	p.WriteString("</svg>\n")
	return []byte(p.String()), nil
}

// slug is a title as an id.
func slug(title string) string {
	var b strings.Builder
	b.WriteString("section")
	gap := true
	for _, r := range strings.ToLower(title) {
		if r >= 'a' && r <= 'z' || r >= '0' && r <= '9' {
			if gap {
				b.WriteByte('-')
			}
			b.WriteRune(r)
		}
		gap = r < '0' || r > '9' && r < 'a' || r > 'z'
	}
	return b.String()
}

// scale is the scale given, or the greatest by halves at which so much cloth fits
// the page, or else the greatest of the form 1/n.
func (d Drawing) scale(wide units.Length) units.Ratio {
	if !d.Scale.IsZero() {
		return d.Scale
	}
	fits := units.Millimetre.Frac(pageCloth, 1000).Div(wide)
	if units.RatioOf(MaxScale, 1).Less(fits) {
		return units.RatioOf(MaxScale, 1)
	}
	if s, _ := fits.Round(units.RatioOf(1, 2), units.Down); !s.Less(units.RatioOf(1, 1)) {
		return s
	}
	n, _ := units.RatioOf(1, 1).Quo(fits).Int(units.Up)
	return units.RatioOf(1, n)
}

func (d Drawing) count(s Side) (n int64) {
	for _, m := range d.Dimensions {
		if m.Side == s {
			n++
		}
	}
	return n
}

// size is a length of cloth on the page.
func (p *page) size(l units.Length) int64 {
	n, _ := l.Scale(p.scale).In(units.Millimetre).Mul(units.RatioOf(1000, 1)).Int(units.HalfAway)
	return n // in reach: Check bounds the length and the scale
}

func (p *page) x(x units.Length) int64 { return p.left + p.size(x.Sub(p.low.X)) }
func (p *page) y(y units.Length) int64 { return p.top + p.size(p.high.Y.Sub(y)) }

func (p *page) write(format string, args ...any) { fmt.Fprintf(&p.Builder, format, args...) }

// head is all that stands before the drawing itself.
func (p *page) head(height int64) {
	p.write(`<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="%s-title %s-desc" width="%smm" height="%smm" viewBox="0 0 %d %d">`+"\n",
		p.id, p.id, millimetres(p.width), millimetres(height), p.width, height)
	p.write(`<title id="%s-title">%s</title>`+"\n", p.id, escape(p.d.Title))
	p.write(`<desc id="%s-desc">%s</desc>`+"\n", p.id, escape(p.words()))
	p.WriteString("<defs>\n")
	for f := range Fills() {
		if !slices.ContainsFunc(p.d.Plies, func(q Ply) bool { return q.Fill == f }) {
			continue
		}
		switch f {
		case Hatched:
			p.pattern(f, 1300, ` patternTransform="rotate(45)"`, `<path d="M650 0V1300" stroke="#000" stroke-width="260"/>`)
		case Dotted:
			p.pattern(f, 1100, "", `<circle cx="550" cy="550" r="230"/>`)
		case Crossed:
			p.pattern(f, 1400, ` patternTransform="rotate(45)"`, `<path d="M700 0V1400M0 700H1400" stroke="#000" stroke-width="170"/>`)
		}
	}
	p.WriteString("</defs>\n")
	p.write(`<rect width="%d" height="%d" fill="#fff"/>`+"\n", p.width, height)
	p.text(p.width/2, 7_500, pageTitle, "middle", p.d.Title)
}

func (p *page) pattern(f Fill, side int, transform, mark string) {
	p.write(`<pattern id="%s-%s" width="%d" height="%d" patternUnits="userSpaceOnUse"%s><rect width="%d" height="%d" fill="#fff"/>%s</pattern>`+"\n",
		p.id, f, side, side, transform, side, side, mark)
}

func (p *page) fill(f Fill) string {
	if f == Blank {
		return "#fff"
	}
	return "url(#" + p.id + "-" + f.String() + ")"
}

// millimetres is a number of thousandths of a millimetre in millimetres.
func millimetres(n int64) string {
	return strings.TrimSuffix(strings.TrimRight(fmt.Sprintf("%d.%03d", n/1000, n%1000), "0"), ".")
}

var escaper = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;", "\n", " ", "\t", " ", "\r", " ")

// escape is s as the text of an element; what is not fit to print is written as
// [fault.Visible] does.
func escape(s string) string { return fault.Visible(escaper.Replace(s)) }

// text is a line of words.
func (p *page) text(x, y, size int64, anchor, s string) {
	p.write(`<text x="%d" y="%d" font-family="sans-serif" font-size="%d" text-anchor="%s">%s</text>`+"\n", x, y, size, anchor, escape(s))
}

// ply draws one ply: its pattern, its two faces, its right side, its ends.
func (p *page) ply(q Ply) {
	left, right := q.faces(p.d.Thickness)
	n := len(q.Path)
	back := slices.Clone(right)
	slices.Reverse(back)
	finish := p.end(q.Finish, left[n-1].at, right[n-1].at, q.Path[n-2], q.Path[n-1])
	start := p.end(q.Start, right[0].at, left[0].at, q.Path[1], q.Path[0])
	p.write(`<path d="%s%s%s%sZ" fill="%s"/>`+"\n", p.line("M", left), finish, p.line("L", back), start, p.fill(q.Fill))
	p.write(`<path d="%s%s" fill="none" stroke="#000" stroke-width="%d"/>`+"\n", p.line("M", left), p.line("M", right), pageLine)
	switch q.Face {
	case Left:
		p.write(`<path d="%s" fill="none" stroke="#000" stroke-width="%d"/>`+"\n", p.line("M", left), pageHeavy)
	case Right:
		p.write(`<path d="%s" fill="none" stroke="#000" stroke-width="%d"/>`+"\n", p.line("M", right), pageHeavy)
	}
	p.close(q.Finish, left[n-1].at, right[n-1].at, finish, q.Path[n-2], q.Path[n-1])
	p.close(q.Start, right[0].at, left[0].at, start, q.Path[1], q.Path[0])
}

// line is the path through the corners, rounded where they are.
func (p *page) line(first string, face []corner) string {
	var b strings.Builder
	for i, c := range face {
		x, y := p.x(c.at.X), p.y(c.at.Y)
		letter := "L"
		if i == 0 {
			letter = first
		}
		if c.radius.IsZero() {
			fmt.Fprintf(&b, "%s%d %d", letter, x, y)
			continue
		}
		r := p.size(c.radius)
		ax, ay := heading(face[i-1].at, c.at)
		bx, by := heading(c.at, face[i+1].at)
		sweep := 0 // to the left
		if ax*by-ay*bx < 0 {
			sweep = 1
		}
		// Upwards on the cloth is downwards in numbers on the page.
		fmt.Fprintf(&b, "%s%d %dA%d %d 0 0 %d %d %d", letter, x-int64(ax)*r, y+int64(ay)*r, r, r, sweep, x+int64(bx)*r, y-int64(by)*r)
	}
	return b.String()
}

// end is the path from one face to the other at an end of the ply, jagged where
// the edge is raw.
func (p *page) end(e End, a, b, in, at Point) string {
	x0, y0, x1, y1 := p.x(a.X), p.y(a.Y), p.x(b.X), p.y(b.Y)
	var s strings.Builder
	if e == Raw || e == Hidden {
		dx, dy := heading(in, at)
		for k := int64(1); k < 6; k++ {
			out := pageTooth * (k % 2)
			fmt.Fprintf(&s, "L%d %d", x0+(x1-x0)*k/6+int64(dx)*out, y0+(y1-y0)*k/6-int64(dy)*out)
		}
	}
	fmt.Fprintf(&s, "L%d %d", x1, y1)
	return s.String()
}

// close draws an end: a line, jagged where raw and heavy where neat, or the faces
// running on in dashes.
func (p *page) close(e End, a, b Point, path string, in, at Point) {
	x0, y0 := p.x(a.X), p.y(a.Y)
	if e == RunsOn {
		dx, dy := heading(in, at)
		ox, oy := int64(dx)*pageRunsOn, -int64(dy)*pageRunsOn
		p.write(`<path d="M%d %dl%d %dM%d %dl%d %d" stroke="#000" stroke-width="%d" stroke-dasharray="1400 1000"/>`+"\n",
			x0, y0, ox, oy, p.x(b.X), p.y(b.Y), ox, oy, pageLine)
		return
	}
	wide := pageLine
	if e == Neat {
		wide = 2 * pageHeavy
	}
	p.write(`<path d="M%d %d%s" fill="none" stroke="#000" stroke-width="%d"/>`+"\n", x0, y0, path, wide)
}

// head of a stitch is its upper end, or the first of two level ones.
func (s Stitch) upper() Point {
	if s.From.Y.Less(s.To.Y) {
		return s.To
	}
	return s.From
}

// tiers sets the numbers of the rows above the cloth, so that none covers another.
func (p *page) tiers() {
	for i, s := range p.d.Stitches {
		p.labels = append(p.labels, label{number: i + 1, x: p.x(s.upper().X)})
	}
	slices.SortStableFunc(p.labels, func(a, b label) int { return cmp.Compare(a.x, b.x) })
	for i := range p.labels {
		for j := 0; j < i; {
			if p.labels[j].tier == p.labels[i].tier && p.labels[i].x-p.labels[j].x < pageLabel {
				p.labels[i].tier++
				j = 0
				continue
			}
			j++
		}
	}
}

// stitches draws the rows, with their numbers over the cloth: the highest first, so
// that the line from a number is under the numbers that it passes.
func (p *page) stitches() {
	slices.SortStableFunc(p.labels, func(a, b label) int { return cmp.Compare(b.tier, a.tier) })
	for _, l := range p.labels {
		s := p.d.Stitches[l.number-1]
		y := p.top - 5_000 - l.tier*pageLabel
		p.write(`<path d="M%d %dV%d" stroke="#000" stroke-width="150"/>`+"\n", l.x, y, p.y(s.upper().Y))
		p.write(`<path d="M%d %dL%d %d" stroke="#fff" stroke-width="1300" stroke-linecap="round"/>`+"\n", p.x(s.From.X), p.y(s.From.Y), p.x(s.To.X), p.y(s.To.Y))
		p.write(`<path d="M%d %dL%d %d" stroke="#000" stroke-width="800" stroke-linecap="round"/>`+"\n", p.x(s.From.X), p.y(s.From.Y), p.x(s.To.X), p.y(s.To.Y))
		for _, at := range [...]Point{s.From, s.To} {
			p.write(`<circle cx="%d" cy="%d" r="900"/>`+"\n", p.x(at.X), p.y(at.Y))
		}
		p.number(l.x, y, l.number)
	}
}

// number is the number of a row in a ring.
func (p *page) number(x, y int64, n int) {
	p.write(`<circle cx="%d" cy="%d" r="2300" fill="#fff" stroke="#000" stroke-width="%d"/>`+"\n", x, y, pageLine)
	p.write(`<text x="%d" y="%d" font-family="sans-serif" font-size="3200" text-anchor="middle">%d</text>`+"\n", x, y+1_150, n)
}

// measures draws the measures and gives their words, to be written over the lines.
func (p *page) measures(tiers int64) string {
	var words page
	rows := map[Side]int64{}
	for _, m := range p.d.Dimensions {
		rows[m.Side]++
		away := (rows[m.Side]-1)*pageRow + 4_500
		y, end := p.bottom+away, int64(1_000)
		if m.Side == Above {
			y, end = p.top-tiers*pageLabel-away, -1_000
		}
		a, b := m.From, m.To
		if b.X.Less(a.X) {
			a, b = b, a
		}
		x0, x1 := p.x(a.X), p.x(b.X)
		p.write(`<path d="M%d %dV%dM%d %dV%dM%d %dH%d" stroke="#000" stroke-width="150"/>`+"\n",
			x0, p.y(a.Y), y+end, x1, p.y(b.Y), y+end, x0, y, x1)
		in := int64(pageArrow)
		if x1-x0 < 3*pageArrow { // no room between: the arrows stand outside
			in = -in
			p.write(`<path d="M%d %dH%dM%d %dH%d" stroke="#000" stroke-width="150"/>`+"\n", x0, y, x0-2*pageArrow, x1, y, x1+2*pageArrow)
		}
		p.write(`<path d="M%d %dl%d 600v-1200zM%d %dl%d 600v-1200z"/>`+"\n", x0, y, in, x1, y, -in)
		t := m.Name + " " + m.Amount.Text(p.in...)
		half := wide(t)/2 + 1_500
		x := min(max((x0+x1)/2, half), p.width-half)
		foot := y + 4_200
		if m.Side == Above {
			foot = y - 1_300
		}
		// A white ground keeps the words clear of the lines of other measures.
		words.write(`<rect x="%d" y="%d" width="%d" height="%d" fill="#fff"/>`+"\n", x-half+1_000, foot-3_000, 2*half-2_000, 4_000)
		words.text(x, foot, pageText, "middle", t)
	}
	return words.String()
}

// wide is the width reckoned for a text.
func wide(s string) int64 { return int64(utf8.RuneCountInString(s)) * pageLetter }

// legend tells the signs, row by row, and gives the height of the page.
func (p *page) legend(y int64) int64 {
	x := int64(pageMargin)
	place := func(sign int64, name string) (at int64) {
		need := sign + 2_000 + wide(name) + 5_000
		if x > pageMargin && x+need > p.width-pageMargin/2 {
			x, y = pageMargin, y+7_000
		}
		at = x
		p.text(x+sign+2_000, y+1_200, pageText, "start", name)
		x += need
		return at
	}
	seen := map[End]bool{}
	face := false
	for _, q := range p.d.Plies {
		at := place(pageSwatchX, q.Name)
		p.write(`<rect x="%d" y="%d" width="%d" height="%d" fill="%s" stroke="#000" stroke-width="%d"/>`+"\n",
			at, y-pageSwatchY/2, pageSwatchX, pageSwatchY, p.fill(q.Fill), pageLine)
		seen[q.Start], seen[q.Finish] = true, true
		face = face || q.Face != NoFace
	}
	if face {
		at := place(8_000, "right side of the cloth")
		p.write(`<path d="M%d %dh8000" stroke="#000" stroke-width="%d"/>`+"\n", at, y, pageHeavy)
	}
	if seen[Raw] || seen[Hidden] {
		at := place(3_000, "raw edge")
		p.write(`<path d="M%d %dl1000 800l-1000 800l1000 800l-1000 800l1000 800l-1000 800" fill="none" stroke="#000" stroke-width="%d"/>`+"\n", at+1_000, y-2_400, pageLine)
	}
	if seen[Neat] {
		at := place(3_000, "edge finished by itself")
		p.write(`<path d="M%d %dv4000" stroke="#000" stroke-width="%d"/>`+"\n", at+1_500, y-2_000, 2*pageHeavy)
	}
	for i, s := range p.d.Stitches {
		at := place(4_600, s.Name)
		p.number(at+2_300, y, i+1)
	}
	for _, note := range p.notes() {
		y += 7_000
		p.text(pageMargin, y+1_200, pageText, "start", note)
	}
	return y + 6_000
}

// notes say how the picture is to scale and how it is not.
func (p *page) notes() []string {
	size := p.scale.String() + " times life size"
	switch one := units.RatioOf(1, 1); {
	case p.scale == one:
		size = "life size"
	case p.scale.Less(one):
		size = p.scale.String() + " of life size"
	}
	across := "Across it the thickness is exaggerated."
	if !p.d.True.IsZero() {
		times := p.d.Thickness.Div(p.d.True)
		tenth, _ := times.Round(units.RatioOf(1, 10), units.HalfAway)
		about := ""
		if tenth != times {
			about = "about "
		}
		across = "Across it the thickness is exaggerated " + about + tenth.String() + " times."
		if times == units.RatioOf(1, 1) {
			across = "Across it too: the thickness is not exaggerated."
		}
	}
	return []string{"Along the cloth: " + size + ".", across}
}

// words are the picture told in words.
func (p *page) words() string {
	var b strings.Builder
	if p.d.Desc != "" {
		b.WriteString(p.d.Desc)
		b.WriteByte(' ')
	}
	for _, q := range p.d.Plies {
		fmt.Fprintf(&b, "Ply %s: %s at one end, %s at the other. ", q.Name, endWords[q.Start], endWords[q.Finish])
	}
	for i, s := range p.d.Stitches {
		fmt.Fprintf(&b, "Row %d, %s: through %s. ", i+1, s.Name, strings.Join(s.Pierce, ", "))
	}
	for _, m := range p.d.Dimensions {
		fmt.Fprintf(&b, "Measure: %s %s. ", m.Name, m.Amount.Text(p.in...))
	}
	b.WriteString(strings.Join(p.notes(), " "))
	return b.String()
}

var endWords = [...]string{RunsOn: "runs on", Raw: "a raw edge that shows", Hidden: "a raw edge shut in", Neat: "a finished edge"}
