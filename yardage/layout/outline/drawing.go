package outline

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// The names of the languages whose elements are read.
const (
	namespace = "http://www.w3.org/2000/svg"
	hypertext = "http://www.w3.org/1999/xhtml" // a style of its own is of the drawing too
)

// SVG reads a drawing: every path, polygon, closed polyline and rect is a piece,
// the cut end of the cloth at the top. Its name is its title, else its id. A rect
// is a piece without an outline. Count is 1 and Turn is Keep: they are the
// caller's to set.
//
// A path is one outline of the commands M, L, H, V, C, S, Q, T and Z, either
// case. A curve is refused with ErrCurve where r.Within is zero, and where it
// goes back on itself or bends too much for 128 parts; an arc always is.
//
// The drawing's own unit is its width and height, in mm, cm, in, pt, pc or Q,
// over those of its viewBox, as it is shown: the lesser of the two, which may
// differ by less than one part in a thousand; without a viewBox it is 1/96 in. A drawing without such
// a size is in r.Numbers.Bare, and without that refused.
//
// Groups are read through. Text, lines and what a drawing only defines are passed
// by, as is what belongs to other namespaces; everything else that is drawn is
// refused. So is what may move or size what is drawn, hide it or cut it off: the
// attribute transform, a style of anything but colours, lines and letters, wherever
// it stands, scripts and animations. Points that repeat the one before are dropped.
//
// The faults are [fault.Faults], with the line and the column in bytes of the
// element, both from 1, and the byte of path data; at most MaxFaults of them.
func (r Reader) SVG(in io.Reader) ([]layout.Piece, error) {
	if err := r.check(); err != nil {
		return nil, err
	}
	text, err := whole(in)
	if err != nil {
		return nil, err
	}
	d := drawing{Reader: r, text: text, xml: xml.NewDecoder(bytes.NewReader(text))}
	for !d.full() && d.token() {
	}
	return d.end(d.pieces, "drawing", "at least one path, polygon or rect")
}

// drawing is a drawing being read.
type drawing struct {
	Reader
	faults
	text    []byte
	xml     *xml.Decoder
	open    []element
	unit    units.Length // one unit of the drawing
	within  units.Ratio  // Within in those
	pieces  []layout.Piece
	points  int
	curves  int
	started bool
}

// An element is one that has begun and not ended.
type element struct {
	name   string
	piece  int    // which piece it is; negative for none
	passed bool   // it is passed by with all that is in it
	at     string // where its text begins
	text   []byte // of a title or a style
}

// passed are the elements that are passed by with all that is in them.
var passed = [...]string{"desc", "metadata", "defs", "text", "line", "symbol", "marker", "clipPath", "mask", "pattern", "linearGradient", "radialGradient"}

// movers are the elements that may move others, wherever they stand.
var movers = [...]string{"animate", "animateMotion", "animateTransform", "link", "script", "set"}

// token reads a token; false where reading stops.
func (d *drawing) token() bool {
	line, column := d.xml.InputPos()
	at := place{line, column}.String()
	t, err := d.xml.Token()
	if err != nil {
		d.broken(err)
		return false
	}
	switch t := t.(type) {
	case xml.StartElement:
		return d.begin(at, t)
	case xml.EndElement:
		d.close()
	case xml.CharData:
		return d.words(at, t)
	case xml.ProcInst:
		if t.Target == "xml-stylesheet" {
			d.moved(at, t.Target)
		}
	case xml.Directive:
		if bytes.IndexByte(t, '[') >= 0 {
			d.moved(at, string(t)) // it may give any element any attribute
		}
	}
	return true
}

// words are text: of a title, of a style, or in passing; false where reading stops.
func (d *drawing) words(at string, text []byte) bool {
	n := len(d.open)
	if n == 0 {
		if !d.started {
			text = bytes.TrimPrefix(text, []byte("\ufeff"))
		}
		if text = bytes.TrimSpace(text); len(text) > 0 {
			d.at(at, string(text), "a drawing alone", fault.Form)
		}
		return len(text) == 0
	}
	one := &d.open[n-1]
	if one.name == "style" || one.name == "title" && len(one.text) <= fault.MaxName {
		if one.text == nil {
			one.at = at
		}
		one.text = append(one.text, text...)
	}
	return true
}

// broken notes what ends the reading: the end of the file, or a fault in it.
func (d *drawing) broken(err error) {
	if errors.Is(err, io.EOF) && d.started {
		return
	}
	line, column := d.xml.InputPos()
	why := err.Error()
	var syntax *xml.SyntaxError
	if errors.As(err, &syntax) {
		why = syntax.Msg
	}
	d.at(place{line, column}.String(), "", "a drawing that can be read: "+why, fault.Form)
}

// close ends the innermost element. A title names what it stands in, a style is
// one of the whole drawing.
func (d *drawing) close() {
	n := len(d.open)
	if n == 0 {
		return
	}
	last := d.open[n-1]
	d.open = d.open[:n-1]
	if last.name == "style" {
		if got := moving(string(last.text), true); got != "" {
			d.moved(last.at, got)
		}
	}
	if last.name != "title" || last.passed || n < 2 {
		return
	}
	if k := d.open[n-2].piece; k >= 0 {
		if name := strings.Join(strings.Fields(string(last.text)), " "); name != "" {
			line, column := d.xml.InputPos()
			d.name(place{line, column}.String(), name)
			d.pieces[k].Name = name
		}
	}
}

// begin begins an element; false where reading stops.
func (d *drawing) begin(at string, e xml.StartElement) bool {
	name, own := e.Name.Local, e.Name.Space == "" || e.Name.Space == namespace
	if len(d.open) >= MaxDepth {
		d.at(at, name, fmt.Sprintf("elements at most %d deep", MaxDepth), fault.Range)
		return false
	}
	if twice := repeated(e.Attr); twice != "" {
		d.at(at, twice, "each attribute once", fault.Twice)
	}
	if len(d.open) == 0 {
		if d.started {
			d.at(at, name, "one drawing in a file", fault.Form)
			return false
		}
		d.started = true
		if !own || name != "svg" {
			d.at(at, name, "svg", fault.Unknown)
			return false
		}
		d.open = append(d.open, element{name: "svg", piece: -1})
		d.placed(at, e)
		return d.scale(at, e.Attr)
	}
	in := &d.open[len(d.open)-1]
	one := element{name: name, piece: -1, passed: in.passed || !own || slices.Contains(passed[:], name)}
	switch known := own || e.Name.Space == hypertext; {
	case !known:
		one.name = ""
	case slices.Contains(movers[:], name):
		d.moved(at, name)
		one.passed = true
	case one.passed:
	case in.name == "title" || in.name == "style":
		d.at(at, name, "text alone in a "+in.name, fault.Unknown)
		one.passed = true
	default:
		d.placed(at, e)
		d.shape(at, &one, e.Attr)
	}
	d.open = append(d.open, one)
	if d.curves > MaxCurves {
		return false
	}
	return !d.full() && d.most(at, d.pieces, d.points)
}

// shape reads the piece that an element is.
func (d *drawing) shape(at string, one *element, list []xml.Attr) {
	switch one.name {
	case "g", "a", "title", "style":
	case "rect":
		d.rect(at, one, list)
	case "path":
		d.path(at, one, list)
	case "polygon", "polyline":
		d.polygon(at, one, list)
	default:
		d.at(at, one.name, "path, polygon, polyline, rect or g", fault.Unknown)
		one.passed = true
	}
}

// repeated is the name of an attribute that is given twice, empty where none is.
func repeated(list []xml.Attr) string {
	seen := make(map[xml.Name]bool, len(list))
	for _, a := range list {
		if seen[a.Name] {
			return a.Name.Local
		}
		seen[a.Name] = true
	}
	return ""
}

// attribute is the value of one of the drawing's own attributes.
func attribute(list []xml.Attr, name string) string {
	for _, a := range list {
		if a.Name.Space == "" && a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

// physical are the units of a drawing's size.
var physical = [...]struct {
	name string
	unit units.Length
}{
	{"mm", units.Millimetre.Of(1)}, {"cm", units.Centimetre.Of(1)}, {"in", units.Inch.Of(1)},
	{"pt", units.Inch.Frac(1, 72)}, {"pc", units.Inch.Frac(1, 6)}, {"Q", units.Millimetre.Frac(1, 4)},
}

// size is a physical size; false where the text is none.
func size(text string) (units.Length, bool) {
	s := scan{text: strings.TrimSpace(text)}
	n, ok := s.number()
	for _, p := range physical {
		if ok && s.text[s.at:] == p.name && n.Sign() > 0 {
			return p.unit.Scale(n), true
		}
	}
	return units.Length{}, false
}

// scale finds the unit of the drawing; false where it has none.
func (d *drawing) scale(at string, list []xml.Attr) bool {
	box := attribute(list, "viewBox")
	s := scan{text: box}
	var view [4]units.Ratio
	ok := true
	for i := range view {
		var good bool
		view[i], good = s.number()
		ok = ok && good
	}
	if s.space(); box != "" && (!ok || s.at < len(box) || view[2].Sign() <= 0 || view[3].Sign() <= 0) {
		return d.at(at+", viewBox", box, "four numbers, the last two more than zero", fault.Form)
	}
	wide, okW := size(attribute(list, "width"))
	high, okH := size(attribute(list, "height"))
	switch {
	case !okW && !okH && d.Numbers.Bare != units.NoUnit:
		d.unit = d.Numbers.Bare.Of(1)
	case !okW || !okH:
		for i, ok := range [...]bool{okW, okH} {
			if name := [...]string{"width", "height"}[i]; !ok {
				d.at(at+", "+name, attribute(list, name), "a size in mm, cm, in, pt, pc or Q, or state the unit of bare numbers", fault.Missing)
			}
		}
		return false
	case box == "":
		d.unit = units.Inch.Frac(1, 96)
	default:
		if keep := attribute(list, "preserveAspectRatio"); strings.Contains(keep, "none") || strings.Contains(keep, "slice") {
			d.at(at+", preserveAspectRatio", keep, "meet", ErrTransform)
			return false
		}
		x, y := wide.Unscale(view[2]), high.Unscale(view[3])
		d.unit = x.Min(y)
		if x.Max(y).Sub(d.unit).MulInt(1000).Cmp(d.unit) >= 0 {
			d.at(at+", viewBox", box, "one scale across and along: "+x.String()+" and "+y.String(), fault.Conflict)
			return false
		}
	}
	d.within = d.Within.Div(d.unit)
	return true
}

// length is a number of the drawing's units.
func (d *drawing) length(n units.Ratio) units.Length { return d.unit.Scale(n) }

// add adds a piece of its name.
func (d *drawing) add(at string, e *element, list []xml.Attr, p layout.Piece) {
	p.Name, p.Count = attribute(list, "id"), 1
	d.name(at+", id", p.Name)
	e.piece = len(d.pieces)
	d.points += len(p.Outline)
	d.pieces = append(d.pieces, p)
}

// outline adds a piece by its points.
func (d *drawing) outline(at string, e *element, list []xml.Attr, pts []point) {
	out := make([]layout.Point, len(pts))
	for i, p := range pts {
		out[i] = layout.Point{X: d.length(p.x), Y: d.length(p.y)}
	}
	if out = closed(slices.Compact(out)); d.sized(at, out) {
		d.add(at, e, list, layout.Piece{Outline: out})
	}
}

func (d *drawing) rect(at string, e *element, list []xml.Attr) {
	var n [2]units.Ratio
	for i, name := range [...]string{"width", "height"} {
		s := scan{text: attribute(list, name)}
		v, ok := s.number()
		if s.space(); !ok || s.at < len(s.text) || v.Sign() <= 0 {
			d.at(at+", "+name, s.text, "a number more than zero", fault.Form)
			return
		}
		n[i] = v
	}
	if attribute(list, "rx") != "" || attribute(list, "ry") != "" {
		d.at(at, "rect", "square corners", ErrCurve)
		return
	}
	d.add(at, e, list, layout.Piece{Wide: d.length(n[0]), Long: d.length(n[1])})
}

func (d *drawing) polygon(at string, e *element, list []xml.Attr) {
	s := scan{text: attribute(list, "points")}
	pts, ok := s.points(layout.MaxPoints + 1)
	switch {
	case !ok:
		d.at(fmt.Sprintf("%s, points, byte %d", at, s.at+1), s.text[s.at:min(s.at+12, len(s.text))], "pairs of numbers", fault.Form)
	case e.name == "polyline" && (len(pts) == 0 || pts[0] != pts[len(pts)-1]):
		d.at(at, "polyline", "an end where it began, or a polygon", ErrOpen)
	default:
		d.outline(at, e, list, pts)
	}
}

func (d *drawing) path(at string, e *element, list []xml.Attr) {
	start, strokes, bad := parsePath(attribute(list, "d"))
	if bad != nil {
		d.at(fmt.Sprintf("%s, d, byte %d", at, bad.at+1), bad.got, bad.limit, bad.err)
		return
	}
	curves := 0
	for _, s := range strokes {
		if s.curve {
			curves++
		}
	}
	if d.curves += curves; d.curves > MaxCurves {
		d.at(at, fmt.Sprintf("%d curves in all", d.curves), fmt.Sprintf("at most %d", MaxCurves), fault.Range)
		return
	}
	curved := curves > 0
	if curved && d.within.IsZero() {
		d.at(at, "path", "straight lines, or state how far outside its curves a polygon may lie", ErrCurve)
		return
	}
	pts := make([]point, 1, 1+len(strokes))
	pts[0] = start
	if curved {
		var ok bool
		if pts, ok = polygon(start, strokes, d.within, layout.MaxPoints); !ok {
			d.at(at, "path", fmt.Sprintf("an outline that holds an area and comes to at most %d points, its curves not going back on themselves and bending no more than 128 parts can follow", layout.MaxPoints), ErrCurve)
			return
		}
	} else {
		for _, s := range strokes {
			pts = append(pts, s.to)
		}
	}
	d.outline(at, e, list, pts)
}
