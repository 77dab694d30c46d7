package nest

// A view is how a pairing is seen for two variants: the place (x, y) of the one
// that moves is at (c*x - s*y + ox, s*x + c*y + oy) in the pairing. So those that
// differ by a turn of both, or by which of the two moves, share one.
type view struct {
	c, s, ox, oy float64 // whole numbers all
	*pairing
}

// A likeness is a pair of variants that is another one, both turned by so many
// quarters, and perhaps the one that moves for the one that does not.
type likeness struct {
	fixed, moving int
	quarters      int
	swapped       bool
}

// like is the first of the pairs that are a and b turned.
func (t *table) like(a, b int) likeness {
	first := likeness{fixed: a, moving: b}
	for r, fixed := range t.images[a] {
		moving := t.images[b][r]
		if fixed < 0 || moving < 0 {
			continue
		}
		swapped := moving < fixed
		if swapped {
			fixed, moving = moving, fixed
		}
		if fixed < first.fixed || fixed == first.fixed && moving < first.moving {
			first = likeness{fixed, moving, r, swapped}
		}
	}
	return first
}

// view is that of a fixed variant a with b.
func (t *table) view(a, b int) view {
	l := t.like(a, b)
	if l.fixed == a && l.moving == b {
		return view{c: 1, pairing: t.pair(a, b)}
	}
	v := view{pairing: t.at(l.fixed, l.moving).pairing}
	v.c, v.s = [...]float64{1, 0, -1, 0}[l.quarters], [...]float64{0, 1, 0, -1}[l.quarters]
	ax, ay := t.n.Variants[a].corner(l.quarters)
	bx, by := t.n.Variants[b].corner(l.quarters)
	v.ox, v.oy = float64(ax-bx), float64(ay-by)
	if l.swapped {
		v.c, v.s, v.ox, v.oy = -v.c, -v.s, -v.ox, -v.oy
	}
	return v
}

// corner is where the origin comes to lie when the rectangle of a variant is
// turned by so many quarters and put with its corner at the origin.
func (v *Variant) corner(quarters int) (x, y int64) {
	return [...]int64{0, v.Long, v.Wide, 0}[quarters], [...]int64{0, 0, v.Long, v.Wide}[quarters]
}

// images are for each variant which one is the same turned by 0 to 3 quarters, or
// -1.
func (n *Nest) images() [][4]int {
	out := make([][4]int, len(n.Variants))
	for i := range n.Variants {
		for r := range 4 {
			out[i][r] = -1
			pts := turned(n.Variants[i].pts, false, r)
			for _, v := range n.Kinds[n.Variants[i].kind].Variants {
				if same(n.Variants[v].pts, pts) {
					out[i][r] = v
					break
				}
			}
		}
	}
	return out
}

// turn is a place as it is in the pairing.
func (v *view) turn(x, y float64) (float64, float64) {
	return float64(v.c*x) - float64(v.s*y) + v.ox, float64(v.s*x) + float64(v.c*y) + v.oy
}

// depth is how far the place of the second variant is inside the deepest sum, not
// more than 0 if it is in none.
func (v *view) depth(x, y float64) float64 {
	d, _ := v.chart.deepest(v.turn(x, y))
	return d
}

// deepest is depth, and in which direction is the way out.
func (v *view) deepest(x, y float64) (d, nx, ny float64) {
	d, edge := v.chart.deepest(v.turn(x, y))
	if edge == nil {
		return 0, 0, 0
	}
	return d, float64(v.c*edge.nx) + float64(v.s*edge.ny), float64(v.c*edge.ny) - float64(v.s*edge.nx)
}

// about reports whether a place is where the two may overlap, or not farther from
// there than reach either way.
func (v *view) about(x, y, reach float64) bool {
	x, y = v.turn(x, y)
	return x > v.lox-reach && x < v.hix+reach && y > v.loy-reach && y < v.hiy+reach
}

// exactly is turn for whole numbers.
func (v *view) exactly(x, y int64) (int64, int64) {
	c, s := int64(v.c), int64(v.s)
	return c*x - s*y + int64(v.ox), s*x + c*y + int64(v.oy)
}

// holds reports whether a place is strictly inside any of the sums.
func (v *view) holds(x, y int64) bool {
	return v.pairing.holds(v.exactly(x, y))
}

// clear is the least y from at on at which a place at x is in none of the sums;
// with along false it is the least x from at on, and the place is at y.
func (v *view) clear(place, at int64, along bool) int64 {
	var x, y, dx, dy int64
	if along {
		x, y = v.exactly(place, at)
		dx, dy = -int64(v.s), int64(v.c)
	} else {
		x, y = v.exactly(at, place)
		dx, dy = int64(v.c), int64(v.s)
	}
	if dx != 0 {
		return at + dx*(v.pairing.clear(y, x, dx, false)-x)
	}
	return at + dy*(v.pairing.clear(x, y, dy, true)-y)
}
