package outline

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// A point is a point of a drawing, in its own units.
type point struct{ x, y units.Ratio }

func (p point) add(q point) point { return point{p.x.Add(q.x), p.y.Add(q.y)} }
func (p point) sub(q point) point { return point{p.x.Sub(q.x), p.y.Sub(q.y)} }

// A stroke is a part of an outline, from where the last one ended: a straight
// line, or a curve by its two control points.
type stroke struct {
	curve  bool
	c1, c2 point
	to     point
}

// maxDigits is the longest number of a drawing, in bytes.
const maxDigits = 60

// A scan reads numbers one after another from an attribute.
type scan struct {
	text  string
	at    int
	comma bool // a comma may come next: there was none since the last number
}

// space passes what separates two numbers: blanks and a single comma.
func (s *scan) space() {
	for s.at < len(s.text) {
		switch c := s.text[s.at]; {
		case c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f':
		case c == ',' && s.comma:
			s.comma = false
		default:
			return
		}
		s.at++
	}
}

// number is the next number, a decimal that may have an exponent.
func (s *scan) number() (units.Ratio, bool) {
	s.space()
	start, digits := s.at, 0
	run := func() {
		for s.at < len(s.text) && s.text[s.at] >= '0' && s.text[s.at] <= '9' {
			s.at++
			digits++
		}
	}
	if s.at < len(s.text) && (s.text[s.at] == '+' || s.text[s.at] == '-') {
		s.at++
	}
	run()
	if s.at < len(s.text) && s.text[s.at] == '.' {
		s.at++
		run()
	}
	whole := strings.TrimSuffix(s.text[start:s.at], ".")
	r, err := units.ParseRatio(whole)
	if digits == 0 || err != nil || len(whole) > maxDigits {
		s.at = start
		return r, false
	}
	s.comma = true
	from := s.at
	if s.at < len(s.text) && (s.text[s.at] == 'e' || s.text[s.at] == 'E') {
		s.at++
		if s.at < len(s.text) && (s.text[s.at] == '+' || s.text[s.at] == '-') {
			s.at++
		}
		if digits = 0; s.at < len(s.text) {
			run()
		}
		if digits == 0 { // not an exponent: em, ex or a fault
			s.at = from
			return r, true
		}
		tens, err := strconv.Atoi(s.text[from+1 : s.at])
		if err != nil || tens > 18 || tens < -18 {
			s.at = start
			return r, false
		}
		power := int64(1)
		for range max(tens, -tens) {
			power *= 10
		}
		if tens < 0 {
			return r.Quo(units.RatioOf(power, 1)), true
		}
		r = r.Mul(units.RatioOf(power, 1))
	}
	return r, true
}

// points are pairs of numbers, as of a polygon, those left out that repeat the one
// before; one more than most of them where there are more.
func (s *scan) points(most int) ([]point, bool) {
	var out []point
	for s.space(); s.at < len(s.text) && len(out) <= most; s.space() {
		x, ok := s.number()
		if !ok {
			return nil, false
		}
		y, ok := s.number()
		if !ok {
			return nil, false
		}
		if p := (point{x, y}); len(out) == 0 || out[len(out)-1] != p {
			out = append(out, p)
		}
	}
	return out, true
}

// A badPath says where path data stop making sense.
type badPath struct {
	at    int
	got   string
	limit string
	err   error
}

// arguments is how many numbers a command takes.
func arguments(command byte) (int, bool) {
	switch command | 0x20 {
	case 'm', 'l', 't':
		return 2, true
	case 'h', 'v':
		return 1, true
	case 'c':
		return 6, true
	case 's', 'q':
		return 4, true
	case 'z':
		return 0, true
	}
	return 0, false
}

// parsePath reads path data that are one closed outline: its first point and the
// strokes from there.
func parsePath(text string) (start point, strokes []stroke, bad *badPath) {
	s := scan{text: text}
	fail := func(at int, limit string, err error) (point, []stroke, *badPath) {
		return point{}, nil, &badPath{at, text[at:min(at+12, len(text))], limit, err}
	}
	var now, control point
	var command, last byte
	done := false
	for s.space(); s.at < len(text); s.space() {
		at := s.at
		c := text[at]
		if c|0x20 >= 'a' && c|0x20 <= 'z' {
			s.at++
			s.comma = false
		} else if c = command; c == 0 || c|0x20 == 'z' {
			return fail(at, "a command", fault.Form)
		}
		n, known := arguments(c)
		switch {
		case c|0x20 == 'a':
			return fail(at, "M, L, H, V, C, S, Q, T and Z: write the arc as curves", ErrCurve)
		case !known:
			return fail(at, "M, L, H, V, C, S, Q, T and Z", fault.Unknown)
		case done || c|0x20 == 'm' && command != 0:
			return fail(at, "one outline in a path, closed at its end", fault.Form)
		case len(strokes) > layout.MaxPoints:
			return fail(at, fmt.Sprintf("at most %d lines and curves", layout.MaxPoints), fault.Range)
		case command == 0 && c|0x20 != 'm':
			return fail(at, "M first", fault.Form)
		}
		var v [6]units.Ratio
		for k := range n {
			number := s.at
			var ok bool
			if v[k], ok = s.number(); !ok {
				return fail(min(number, len(text)), fmt.Sprintf("%d numbers of at most %d digits after %c", n, maxDigits, c), fault.Form)
			}
		}
		base := point{}
		if c >= 'a' {
			base = now
		}
		to := base.add(point{v[max(n-2, 0)], v[max(n-1, 0)]})
		step := stroke{to: to}
		mirrored := func(kind string) point {
			if strings.IndexByte(kind, last|0x20) >= 0 {
				return now.add(now.sub(control))
			}
			return now
		}
		switch c | 0x20 {
		case 'm':
			start = to
		case 'h':
			step.to = point{base.x.Add(v[0]), now.y}
		case 'v':
			step.to = point{now.x, base.y.Add(v[0])}
		case 'c':
			step.curve, step.c1, step.c2 = true, base.add(point{v[0], v[1]}), base.add(point{v[2], v[3]})
			control = step.c2
		case 's':
			step.curve, step.c1, step.c2 = true, mirrored("cs"), base.add(point{v[0], v[1]})
			control = step.c2
		case 'q', 't':
			if c|0x20 == 'q' {
				control = base.add(point{v[0], v[1]})
			} else {
				control = mirrored("qt")
			}
			step.curve, step.c1, step.c2 = true, raised(now, control), raised(to, control)
		case 'z':
			step.to, done = start, true
		}
		last, command = c, c
		switch c {
		case 'm': // what follows without a command is lines
			command = 'l'
		case 'M':
			command = 'L'
		}
		if c|0x20 != 'm' && (step.curve || step.to != now) {
			strokes = append(strokes, step)
		}
		now = step.to
	}
	if !done && (len(strokes) == 0 || now != start) {
		return fail(len(text), "Z, or an end where it began", ErrOpen)
	}
	return start, strokes, nil
}

// raised is the control point of a cubic that is the quadratic with the control
// point c, at the end p.
func raised(p, c point) point {
	d := c.sub(p)
	two := units.RatioOf(2, 3)
	return p.add(point{d.x.Mul(two), d.y.Mul(two)})
}
