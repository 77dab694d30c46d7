package nest

// Costs on a lattice are whole numbers of 15 bits, four to a word of 64. The bit
// above each is clear, so that four are added, or compared, at once.
const (
	lanes   = 4
	fullest = 1<<15 - 1             // what a place costs at most
	each    = 0x0001_0001_0001_0001 // times a number: that number four times
	tops    = each << 15
)

// lane is the cost of a place in its word.
func lane(word uint64, x int) uint16 { return uint16(word >> (16 * (x & (lanes - 1)))) }

// lesser is the lesser of two costs, of each of the four.
func lesser(a, b uint64) uint64 {
	d := (a | tops) - b
	less := d & tops // where b is no more than a
	return a - d&(less-less>>15)
}

// leastOf is the least of four costs.
func leastOf(word uint64) uint16 {
	word = lesser(word, word>>32)
	return uint16(lesser(word, word>>16))
}

// below has the bit above each of four costs that is less than its limit.
func below(word, limit uint64) uint64 { return ^((word | tops) - limit) & tops }

// A patch is what two variants cost, for each place of the one that moves from
// lo on as seen from the other, row by row. It is kept four times, begun at each
// place of a word.
type patch struct {
	lo, size mark
	words    int // to a row
	cost     [lanes][]uint64
}

func newPatch(lo, size mark) patch {
	p := patch{lo: lo, size: size, words: (size.x + 2*(lanes-1)) / lanes}
	for shift := range p.cost {
		p.cost[shift] = make([]uint64, p.words*size.y)
	}
	return p
}

// set makes a place that costs nothing so dear.
func (p *patch) set(x, y int, cost uint16) {
	for shift := range p.cost {
		at := x + shift
		p.cost[shift][y*p.words+at/lanes] |= uint64(cost) << (16 * (at & (lanes - 1)))
	}
}

// at is what a place costs that is so far from where the other one lies.
func (p *patch) at(x, y int) uint16 {
	x, y = x-p.lo.x, y-p.lo.y
	if x < 0 || y < 0 || x >= p.size.x || y >= p.size.y {
		return 0
	}
	return lane(p.cost[0][y*p.words+x/lanes], x)
}

// A plane is what all items cost a variant at each of its places, row by row.
type plane struct {
	room   mark
	words  int      // to a row
	places uint64   // in the last word of a row, those that are
	spare  uint64   // the others there, which cost the most
	pegs   []peg    // where the items lie that it counts
	cost   []uint64 // the first place of a word is its lowest
	low    []uint64 // by row: no first place of a word of it costs less than the first of this, and so on
}

func newPlane(room mark, items int) plane {
	p := plane{room: room, pegs: make([]peg, items), words: (room.x + lanes - 1) / lanes}
	p.places = ^uint64(0) >> (16 * (p.words*lanes - room.x))
	p.spare = fullest * each &^ p.places
	p.cost, p.low = make([]uint64, p.words*room.y), make([]uint64, room.y)
	p.clear(room.y)
	return p
}

// clear takes all items from it, and leaves it so many rows.
func (p *plane) clear(rows int) {
	p.room.y, p.low, p.cost = rows, p.low[:rows], p.cost[:rows*p.words]
	clear(p.low)
	clear(p.cost)
	for i := range p.pegs {
		p.pegs[i].variant = nowhere
	}
	for w := p.words - 1; w < len(p.cost); w += p.words {
		p.cost[w] = p.spare
	}
}

// at is what a place costs.
func (p *plane) at(m mark) uint16 { return lane(p.cost[m.y*p.words+m.x/lanes], m.x) }

// A shade is the part of a plane that lies under a patch.
type shade struct {
	top, end  int // rows of the plane
	from, to  int // words of them
	cost      []uint64
	first, by int // where in these the first row is, and how far the next
}

// under is what a patch does to a plane, the other item lying at fixed.
func (p *plane) under(a *patch, fixed mark) shade {
	x, y := fixed.x+a.lo.x, fixed.y+a.lo.y
	word := x >> 2
	s := shade{
		top: max(y, 0), end: min(y+a.size.y, p.room.y),
		from: max(word, 0), to: min(word+a.words, p.words),
		cost: a.cost[x&(lanes-1)], by: a.words,
	}
	s.first = (s.top-y)*a.words + s.from - word
	if s.from >= s.to {
		s.end = s.top
	}
	return s
}

// words is how many it is of, and two to each row.
func (s *shade) words() int { return max(s.end-s.top, 0) * (s.to - s.from + 2) }

// put adds what an item costs.
func (p *plane) put(s shade) {
	at := s.first
	for y := s.top; y < s.end; y++ {
		add := s.cost[at:][:s.to-s.from]
		row := p.cost[y*p.words+s.from:][:len(add)]
		for w, c := range add {
			row[w] += c
		}
		if s.to == p.words {
			last := &row[len(row)-1]
			*last = *last&p.places | p.spare
		}
		at += s.by
	}
}

// lift takes it off again.
func (p *plane) lift(s shade) {
	at := s.first
	for y := s.top; y < s.end; y++ {
		sub := s.cost[at:][:s.to-s.from]
		row := p.cost[y*p.words+s.from:][:len(sub)]
		low := p.low[y]
		for w, c := range sub {
			c = row[w] - c
			row[w] = c
			low = lesser(low, c)
		}
		if s.to == p.words {
			last := &row[len(row)-1]
			*last = *last&p.places | p.spare
		}
		p.low[y] = low
		at += s.by
	}
}
