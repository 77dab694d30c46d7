package units

import (
	"cmp"
	"slices"
	"unique"
)

// A sum of several irrational numbers is kept as its terms, so that those which cancel
// are gone before anything is enclosed. Roots of whole numbers without square factors,
// and pi, are independent: a sum of them with a term left is not zero.

// A term is a multiple of one irrational number.
type term struct {
	how   making
	scale exact
}

// maxTerms bounds how many terms are kept apart.
const maxTerms = 64

// addTerms is a + b, which are irrational and no multiples of one number.
func (a interval) addTerms(b interval) interval {
	n := interval{lo: a.lo.add(b.lo), hi: a.hi.add(b.hi)}
	if !a.isMade() || !b.isMade() {
		return n.snap()
	}
	var space [8]term
	terms, shift := a.appendTerms(space[:0])
	terms, more := b.appendTerms(terms)
	shift = shift.add(more)
	switch len(terms) {
	case 0:
		return point(shift)
	case 1:
		n.how = terms[0].how
	default:
		if len(terms) > maxTerms {
			return join(n.lo, n.hi, a, b, '+')
		}
		n.how = makingOf(terms)
	}
	if n.isMade() {
		n.scale, n.shift = terms[0].scale, shift
	}
	return n.snap()
}

// makingOf is the making of a sum over the scale of its first term; it is none where
// that would be too long. It sorts the terms, so that equal sums are made alike.
func makingOf(terms []term) making {
	slices.SortFunc(terms, func(s, t term) int {
		if s.how.root != 0 && t.how.root != 0 {
			return cmp.Compare(s.how.root, t.how.root)
		}
		if s.how.root != 0 || t.how.root != 0 {
			return cmp.Compare(t.how.root, s.how.root) // roots first
		}
		return cmp.Compare(s.how.Value(), t.how.Value())
	})
	var space [256]byte
	code, long := space[:0], 0
	for i, t := range terms {
		if t.scale.isWide() {
			long += len(t.scale.wide.Value())
		}
		if long+len(code) >= maxRecipe {
			return making{}
		}
		code = t.how.appendCode(code)
		if scale := t.scale.quo(terms[0].scale); scale != (exact{num: 1}) {
			code = append(appendConstant(code, scale), '*')
		}
		if i > 0 {
			code = append(code, '+')
		}
	}
	return making{recipe: newRecipe(string(code))}
}

// appendTerms adds the terms of n to others, and gives what of n is exact.
func (n interval) appendTerms(terms []term) ([]term, exact) {
	shift := n.shift
	if n.how.root != 0 {
		return addTerm(terms, term{n.how, n.scale}), shift
	}
	code := n.how.Value()
	if code[len(code)-1] != '+' {
		return addTerm(terms, term{n.how, n.scale}), shift
	}
	for _, s := range summands(code) {
		text, scale := code[s.from:s.to], n.scale
		if s.times > s.from {
			key, _ := readConstant(code, s.times)
			text, scale = code[s.from:s.times], scale.mul(fromRat(decodeWide(key)))
		}
		if key, last := "", 0; text[0] == '#' {
			if key, last = readConstant(text, 0); last+1 == len(text) {
				shift = shift.add(scale.mul(fromRat(decodeWide(key))))
				continue
			} else if v := fromRat(decodeWide(key)); last+2 == len(text) && text[last+1] == 'r' && v.less == 0 {
				terms = addTerm(terms, term{making{root: v.num}, scale})
				continue
			}
		}
		terms = addTerm(terms, term{making{recipe: unique.Make(text)}, scale})
	}
	return terms, shift
}

// addTerm adds a term to the one of the same number, or of a root that is a multiple of
// its own, and drops what cancels.
func addTerm(terms []term, t term) []term {
	i := slices.IndexFunc(terms, func(s term) bool { return s.how == t.how })
	if i < 0 {
		i = slices.IndexFunc(terms, func(s term) bool {
			if s.how.isSquareFree() && t.how.isSquareFree() {
				return false
			}
			n := interval{how: t.how, scale: t.scale}
			if n = n.inRootOf(interval{how: s.how}); n.how != s.how {
				return false
			}
			t.scale = n.scale
			return true
		})
	}
	if i < 0 {
		return append(terms, t)
	}
	s := &terms[i]
	if s.scale = s.scale.add(t.scale); s.scale.isZero() {
		return slices.Delete(terms, i, i+1)
	}
	return terms
}

// isSquareFree reports whether m is a root whose every square factor was found: of two
// such neither is a multiple of the other.
func (m making) isSquareFree() bool { return 0 < m.root && m.root < greatestFactor*greatestFactor }

// A summand is a part of the recipe of a sum: where it begins and ends and, where it is a
// multiple, the place of the constant that multiplies it.
type summand struct{ from, to, times int }

// An operand is a part of a recipe that has been read: its summands, the last of them
// apart, and whether it is a constant.
type operand struct {
	first []summand
	last  summand
	plain bool
}

func (o operand) from() int {
	if len(o.first) > 0 {
		return o.first[0].from
	}
	return o.last.from
}

// summands are the parts of a recipe that are added up last; one where it is no sum.
func summands(code string) []summand {
	var stack []operand
	for i := 0; i < len(code); i++ {
		from, top := i, len(stack)-1
		switch op := code[i]; op {
		case '#':
			_, i = readConstant(code, i)
			stack = append(stack, operand{last: summand{from: from, to: i + 1}, plain: true})
		case 'p':
			stack = append(stack, operand{last: summand{from: from, to: i + 1}})
		case 'r', 's', 'c', 't':
			stack[top] = operand{last: summand{from: stack[top].from(), to: i + 1}}
		default:
			a, b := stack[top-1], stack[top]
			stack = stack[:top]
			one := operand{last: summand{from: a.from(), to: i + 1}}
			switch {
			case op == '+' && len(b.first) == 0:
				one = operand{last: b.last, first: append(a.first, a.last)}
			case op == '+':
				one = operand{last: summand{from: b.from(), to: i}, first: append(a.first, a.last)}
			case op == '*' && b.plain && len(a.first) == 0:
				one.last.times = b.last.from
			}
			stack[top-1] = one
		}
	}
	return append(stack[0].first, stack[0].last)
}
