package layout

import (
	"cmp"
	"html"
	"slices"
	"unicode/utf8"

	"example.com/clothyard/yardage/layout/internal/whole"
)

// A frame is a way to draw in: what is level in it is turned so on the page.
type frame uint8

const (
	level   frame = iota
	upright       // by a quarter
	falling       // by half a quarter
	rising        // by half a quarter, the other way
)

var frameTurns = [...]string{level: "", upright: " rotate(90)", falling: " rotate(45)", rising: " rotate(-45)"}

// in is a point of the page as the frame has it, to the nearest where that is
// slanted.
func (f frame) in(q vertex) vertex {
	slanted := func(n int64) int64 { return n * 7071 / 10_000 }
	switch f {
	case upright:
		return vertex{X: q.Y, Y: -q.X}
	case falling:
		return vertex{X: slanted(q.X + q.Y), Y: slanted(q.Y - q.X)}
	case rising:
		return vertex{X: slanted(q.X - q.Y), Y: slanted(q.X + q.Y)}
	}
	return q
}

// all are points of the page as the frame has them.
func (f frame) all(pts []vertex) []vertex {
	out := make([]vertex, len(pts))
	for i, q := range pts {
		out[i] = f.in(q)
	}
	return out
}

// A run is a stretch of a level line, or of a level band.
type run struct{ from, to int64 }

func (r run) long() int64 { return r.to - r.from }

// mostCuts is the most lines that a band is looked at on.
const mostCuts = 12

// inside is the longest run of a band of the height given, half of it on either
// side of y, that lies in the outline; it has no length where there is none.
func inside(pts []vertex, y, half int64) run {
	// All is doubled: lines at odd numbers meet no corner.
	low, high := 2*(y-half)-1, 2*(y+half)+1
	lines := []int64{low, high}
	for _, q := range pts {
		if c := 2 * q.Y; low < c && c < high {
			lines = append(lines, c-1, c+1)
		}
	}
	slices.Sort(lines)
	lines = slices.Compact(lines)
	step := len(lines)/mostCuts + 1
	var free []run
	for i := 0; i < len(lines); i += step {
		runs := crossed(pts, lines[i])
		if i > 0 {
			runs = shared(free, runs)
		}
		free = runs
	}
	if step > 1 {
		free = shared(free, crossed(pts, high))
	}
	if len(free) == 0 {
		return run{}
	}
	return slices.MaxFunc(free, func(a, b run) int { return cmp.Compare(a.long(), b.long()) })
}

// crossed are the runs of a line within the outline, rounded inward. The line is
// twice as high as it says, an odd number.
func crossed(pts []vertex, line int64) []run {
	var at []int64
	for i, a := range pts {
		b := pts[(i+1)%len(pts)]
		if a.Y > b.Y {
			a, b = b, a
		}
		if 2*a.Y < line && line < 2*b.Y {
			along, _ := whole.Times(b.X-a.X, line-2*a.Y).Over(2 * (b.Y - a.Y))
			at = append(at, a.X+along)
		}
	}
	slices.Sort(at)
	var out []run
	for i := 1; i < len(at); i += 2 {
		if r := (run{at[i-1] + 1, at[i] - 1}); r.long() > 0 {
			out = append(out, r)
		}
	}
	return out
}

// shared are the runs that both have, each in order.
func shared(a, b []run) []run {
	var out []run
	for len(a) > 0 && len(b) > 0 {
		if r := (run{max(a[0].from, b[0].from), min(a[0].to, b[0].to)}); r.long() > 0 {
			out = append(out, r)
		}
		if a[0].to < b[0].to {
			a = a[1:]
		} else {
			b = b[1:]
		}
	}
	return out
}

// A label is where a name is written, in a frame.
type label struct {
	size, x, y int64 // height of the letters; the middle of the name
	wide       int64 // how long the name is, about
}

// label finds the place in an outline, as the frame has it, where a name can be
// written largest, no larger than most; the nearest to the middle of these.
func (d *drawing) label(pts []vertex, name string, most int64) label {
	lo, hi := corners(pts)
	letters := int64(max(utf8.RuneCountInString(name), 1))
	var best label
	middle := (lo.Y + hi.Y) / 2
	for want := min(most, (hi.Y-lo.Y)*2/5); want > best.size && want > 0; want = want * 2 / 3 {
		for k := int64(1); k < 16; k++ {
			y := lo.Y + (hi.Y-lo.Y)*k/16
			r := inside(pts, y, want/2)
			one := label{size: min(want, r.long()*5/4/letters), y: y}
			if one.size < best.size || one.size == best.size && abs(y-middle) >= abs(best.y-middle) {
				continue
			}
			one.wide = one.size * letters * 4 / 5
			one.x = min(max((lo.X+hi.X)/2, r.from+one.wide/2), r.to-one.wide/2)
			best = one
		}
	}
	return best
}

// grain finds a run for the grain line in an outline, as its frame has it, beside
// the name in another frame or the same: a long one, and not far from it.
func (d *drawing) grain(pts []vertex, tip int64, along, grain frame, at label) (best run, line int64) {
	half := at.size * 3 / 5
	lo, hi := vertex{X: at.x - at.wide/2, Y: at.y - half}, vertex{X: at.x + at.wide/2, Y: at.y + half}
	if along != grain { // one is level, the other upright: back to the page, and on to the grain's
		if along == upright {
			lo, hi = vertex{X: -hi.Y, Y: lo.X}, vertex{X: -lo.Y, Y: hi.X}
		}
		lo, hi = corners([]vertex{grain.in(lo), grain.in(hi)})
	}
	from, to := corners(pts)
	lines := []int64{lo.Y - 2*tip, hi.Y + 2*tip}
	for k := int64(1); k < 16; k++ {
		lines = append(lines, from.Y+(to.Y-from.Y)*k/16)
	}
	var worth int64
	for _, y := range lines {
		r := inside(pts, y, tip)
		if y+tip > lo.Y && y-tip < hi.Y { // the name parts it
			before, behind := run{r.from, min(r.to, lo.X)}, run{max(r.from, hi.X), r.to}
			if r = before; behind.long() > r.long() {
				r = behind
			}
		}
		if one := 3*r.long() - abs(2*y-lo.Y-hi.Y); r.long() > 0 && (best.long() <= 0 || one > worth) {
			best, line, worth = r, y, one
		}
	}
	return best, line
}

func abs(n int64) int64 { return max(n, -n) }

// mark writes the name of a piece and draws its grain line, both inside its
// outline. The name stands on its head where the piece does; it is written smaller
// where it leaves the grain line little room.
func (d *drawing) mark(page []vertex, name string, along, grain frame, head bool) {
	named, grained := along.all(page), grain.all(page)
	at := d.label(named, name, d.font)
	tip := d.font / 3
	r, y := d.grain(grained, tip, along, grain, at)
	for tries := 0; tries < 3 && r.long() < 3*tip && at.size > 3; tries++ {
		at = d.label(named, name, at.size*3/4)
		tip = tip * 4 / 5
		r, y = d.grain(grained, tip, along, grain, at)
	}
	if r.long() > 2 {
		r.from, r.to = r.from+min(tip, r.long()/8), r.to-min(tip, r.long()/8)
		tip = min(tip, r.long()/4)
		d.printf("<path%s d=\"M%d %dH%dM%d %dl%d %dl%d %dM%d %dl%d %dl%d %d\" fill=\"none\" stroke=\"#555\"/>\n", transform(frameTurns[grain]),
			r.from, y, r.to, r.from+tip, y-tip, -tip, tip, tip, tip, r.to-tip, y-tip, tip, tip, -tip, tip)
	}
	if at.size > 0 {
		turn, down := frameTurns[along], at.size/3
		if head {
			turn += " rotate(180)"
			at.x, at.y = -at.x, -at.y
		}
		d.printf("<text%s x=\"%d\" y=\"%d\" text-anchor=\"middle\" font-size=\"%d\">%s</text>\n", transform(turn), at.x, at.y+down, at.size, html.EscapeString(name))
	}
}

// transform is the attribute that turns by so much.
func transform(turn string) string {
	if turn == "" {
		return ""
	}
	return " transform=\"" + turn[1:] + "\""
}
