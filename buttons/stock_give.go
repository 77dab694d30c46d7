package buttons

// A giver looks for ways to give up buttons. Room and step bound what the
// placements from i on can give: no more than room, and only multiples of step.
type giver struct {
	stock Stock
	need  int
	room  [MaxPlaces + 1]int
	step  [MaxPlaces + 1]int
	count [MaxPlaces]int
	work  int
	gives []Give
	block []int
}

// small is the number of placements for which the alternatives take one
// allocation.
const small = 8

func (s Stock) gives(need, floor int) []Give {
	n := len(s.Places)
	g := giver{stock: s, need: need}
	for i := n - 1; i >= 0; i-- {
		p := s.Places[i]
		g.room[i] = g.room[i+1] + (p.Count-p.Least)*p.Times
		g.step[i] = g.step[i+1]
		if p.Count > p.Least {
			g.step[i] = gcd(p.Times, g.step[i+1])
		}
	}
	if n <= small {
		b := new(struct {
			gives  [MaxGives]Give
			counts [MaxGives * small]int
		})
		g.gives, g.block = b.gives[:0], b.counts[:]
	} else {
		g.gives, g.block = make([]Give, 0, MaxGives), make([]int, MaxGives*n)
	}
	for up := need - s.Have; up <= need-floor && g.more(); up++ {
		g.search(0, up, up)
	}
	return g.gives
}

func gcd(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

func (g *giver) more() bool { return len(g.gives) < MaxGives && g.work < maxSearch }

// search gives up left buttons from placement i on, the later ones first.
func (g *giver) search(i, left, up int) {
	g.work++
	n := len(g.stock.Places)
	if i == n {
		if left == 0 {
			c := g.block[:n:n]
			g.block = g.block[n:]
			copy(c, g.count[:n])
			g.gives = append(g.gives, Give{Counts: c, Up: up, Spare: g.stock.Have - g.need + up})
		}
		return
	}
	if left > g.room[i] || g.step[i] == 0 && left > 0 || g.step[i] > 0 && left%g.step[i] != 0 {
		return
	}
	p := g.stock.Places[i]
	// Placement i must give at least what those after it cannot.
	from := max(0, left-g.room[i+1]+p.Times-1) / p.Times
	for k := from; k <= p.Count-p.Least && k*p.Times <= left && g.more(); k++ {
		g.count[i] = p.Count - k
		g.search(i+1, left-k*p.Times, up)
	}
}
