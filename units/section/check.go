package section

import (
	"slices"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A box is one straight part of a ply in its thickness, with the square of each
// turn in it.
type box struct {
	ply, part      int
	x0, y0, x1, y1 units.Length
	a, b           Point // the middle line
}

// boxes are the straight parts of all plies.
func (d Drawing) boxes() []box {
	half := d.Thickness.DivInt(2)
	var out []box
	for i, p := range d.Plies {
		for k := 1; k < len(p.Path); k++ {
			a, b := p.Path[k-1], p.Path[k]
			before, after := units.Length{}, units.Length{}
			if k > 1 {
				before = half
			}
			if k < len(p.Path)-1 {
				after = half
			}
			bx := box{ply: i, part: k, a: a, b: b}
			if level(a, b) {
				bx.y0, bx.y1 = a.Y.Sub(half), a.Y.Add(half)
				bx.x0, bx.x1 = span(a.X, b.X, before, after)
			} else {
				bx.x0, bx.x1 = a.X.Sub(half), a.X.Add(half)
				bx.y0, bx.y1 = span(a.Y, b.Y, before, after)
			}
			out = append(out, bx)
		}
	}
	return out
}

// span is from a to b, longer by before at a and by after at b, the lesser first.
func span(a, b, before, after units.Length) (low, high units.Length) {
	if b.Less(a) {
		return b.Sub(after), a.Add(before)
	}
	return a.Sub(before), b.Add(after)
}

// crossings records the parts that overlap what was drawn before them: two plies
// in one place, or one ply folded into itself. Parts that touch do not overlap.
func crossings(a *fault.Audit, d Drawing, boxes []box) {
	for j, q := range boxes {
		for _, p := range boxes[:j] {
			if p.ply == q.ply && q.part-p.part == 1 {
				continue // a turn
			}
			if p.x0.Less(q.x1) && q.x0.Less(p.x1) && p.y0.Less(q.y1) && q.y0.Less(p.y1) {
				a.Fault(index("plies", q.ply)+"."+index("path", q.part), q.b.text(),
					"clear of "+d.Plies[p.ply].Name+" on its way to "+p.b.text(), ErrCross)
				break
			}
		}
	}
}

// pierces finds what the thread goes through and compares it with what it names.
func (s Stitch) pierces(a *fault.Audit, path string, d Drawing, boxes []box) {
	type hit struct {
		at   units.Length // from From
		name string
	}
	var hits []hit
	flat := level(s.From, s.To)
	for _, b := range boxes {
		// along is the thread's own way, across the other.
		lo, hi, cLo, cHi, across, mid, from, to := b.y0, b.y1, b.x0, b.x1, s.From.X, b.a.Y, s.From.Y, s.To.Y
		if flat {
			lo, hi, cLo, cHi, across, mid, from, to = b.x0, b.x1, b.y0, b.y1, s.From.Y, b.a.X, s.From.X, s.To.X
		}
		low, high := across.Cmp(cLo), across.Cmp(cHi)
		if low < 0 || high > 0 {
			continue // it passes by
		}
		if level(b.a, b.b) == flat {
			// Between two plies the thread may lie, within one it may not.
			if low > 0 && high < 0 && lo.Less(from.Max(to)) && from.Min(to).Less(hi) {
				a.Fault(path, s.From.text(), "across the plies, not within "+d.Plies[b.ply].Name, ErrPierce)
				return
			}
			continue
		}
		if from.Min(to).Cmp(mid) <= 0 && mid.Cmp(from.Max(to)) <= 0 {
			if low == 0 || high == 0 {
				a.Fault(path, s.From.text(), "clear of the edge of "+d.Plies[b.ply].Name, ErrPierce)
				return
			}
			hits = append(hits, hit{mid.Sub(from).Abs(), d.Plies[b.ply].Name})
		}
	}
	slices.SortStableFunc(hits, func(p, q hit) int { return p.at.Cmp(q.at) })
	names := make([]string, len(hits))
	for i, h := range hits {
		names[i] = h.name
	}
	if !slices.Equal(names, s.Pierce) {
		a.Fault(path+".pierce", list(s.Pierce), list(names), ErrPierce)
	}
}

func list(names []string) string {
	if len(names) == 0 {
		return "nothing"
	}
	return strings.Join(names, ", ")
}

// edge proves what is said of one end of a ply, the point at; the ply comes from
// the point in.
func (d Drawing) edge(a *fault.Audit, path string, end End, at, in Point, boxes []box) {
	if end != Raw && end != Hidden {
		return
	}
	hidden := d.shut(at, in, boxes)
	switch {
	case end == Hidden && !hidden:
		a.Fault(path, at.text(), "cloth above and below, and cloth or a stitch ahead", ErrEdge)
	case end == Raw && hidden:
		a.Fault(path, at.text(), "open to one side at least: this edge is hidden", ErrEdge)
	}
}

// shut reports whether an end has cloth on both of its sides, and cloth or a
// stitch ahead of it.
func (d Drawing) shut(at, in Point, boxes []box) bool {
	flat := level(at, in)
	var over, under, ahead bool
	for _, b := range boxes {
		lo, hi, cLo, cHi, x, y, back := b.x0, b.x1, b.y0, b.y1, at.X, at.Y, in.X
		if !flat {
			lo, hi, cLo, cHi, x, y, back = b.y0, b.y1, b.x0, b.x1, at.Y, at.X, in.Y
		}
		if lo.Cmp(x) <= 0 && x.Cmp(hi) <= 0 { // it lies beside the edge
			over = over || y.Cmp(cLo) < 0
			under = under || cHi.Cmp(y) < 0
		}
		if cLo.Cmp(y) < 0 && y.Cmp(cHi) < 0 { // it lies in the way of the edge
			ahead = ahead || back.Less(x) && x.Cmp(lo) <= 0 || x.Less(back) && hi.Cmp(x) <= 0
		}
	}
	for _, s := range d.Stitches {
		lo, hi, sx, x, y, back := s.From.Y.Min(s.To.Y), s.From.Y.Max(s.To.Y), s.From.X, at.X, at.Y, in.X
		if !flat {
			lo, hi, sx, x, y, back = s.From.X.Min(s.To.X), s.From.X.Max(s.To.X), s.From.Y, at.Y, at.X, in.Y
		}
		if level(s.From, s.To) == flat || y.Less(lo) || hi.Less(y) {
			continue
		}
		ahead = ahead || back.Less(x) && x.Less(sx) || x.Less(back) && sx.Less(x)
	}
	return over && under && ahead
}

// marked records a measure that ends on nothing: neither a fold, at its middle or
// either face, nor an end of a ply, nor a stitch.
func (d Drawing) marked(a *fault.Audit, path string, at Point) {
	half := d.Thickness.DivInt(2)
	for _, p := range d.Plies {
		for k, q := range p.Path {
			if (k == 0 || k == len(p.Path)-1) && q.X == at.X {
				return
			}
			if k > 0 && upright(p.Path[k-1], q) && (q.X == at.X || q.X.Sub(half) == at.X || q.X.Add(half) == at.X) {
				return
			}
		}
	}
	for _, s := range d.Stitches {
		if s.From.X == at.X || s.To.X == at.X {
			return
		}
	}
	a.Fault(path, at.text(), "the place of a fold, an end of a ply or a stitch", ErrNoMark)
}
