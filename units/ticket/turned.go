package ticket

import "slices"

// Turned is l where its result is zero or more. Where it is negative it is the line
// turned round, with the label given and a result above zero, so that "longer by"
// becomes "shorter by" and no reader meets a negative length. The working still
// comes to the result; [Line.Check] holds for it as for l.
func (l Line) Turned(label string) Line {
	if l.Result.sign() >= 0 {
		return l
	}
	l.Label, l.Result = label, l.Result.neg()
	// The terms before the first factor are added: each changes its side.
	n := slices.IndexFunc(l.Terms, func(t Term) bool { return t.Op == By || t.Op == Over })
	if n < 0 {
		n = len(l.Terms)
	}
	var more, less []Term
	for _, t := range l.Terms[:n] {
		added := t.Op == Minus // once it is turned
		if t.Amount.sign() < 0 {
			t.Amount, added = t.Amount.neg(), !added
		}
		if t.Op = Minus; added {
			t.Op = Plus
			more = append(more, t)
		} else {
			less = append(less, t)
		}
	}
	terms := append(more, less...)
	if len(more) == 0 && len(terms) > 0 {
		terms[0].Op, terms[0].Amount = Plus, terms[0].Amount.neg()
	}
	for _, t := range l.Terms[n:] {
		switch t.Op {
		case Plus:
			t.Op = Minus
		case Minus:
			t.Op = Plus
		}
		terms = append(terms, t)
	}
	l.Terms = terms
	return l
}

// sign is -1, 0 or 1; what cannot be told from zero, and money, counts as zero.
func (a Amount) sign() int {
	switch a.measure {
	case Length:
		s, _ := a.near.Sign()
		return s
	case Area:
		return a.area.Sign()
	}
	return a.Number().Sign()
}

// neg is the amount with the other sign.
func (a Amount) neg() Amount {
	a.near, a.ratio, a.area, a.count = a.near.Neg(), a.ratio.Neg(), a.area.Neg(), -a.count
	return a
}
