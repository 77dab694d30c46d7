package units

// Neg is -n.
func (n NearRatio) Neg() NearRatio { return NearRatio{n.v.times(exact{num: -1})} }

// Plus is n + r.
func (n NearRatio) Plus(r Ratio) NearRatio { return NearRatio{n.v.plus(r.v)} }

// Quo is n / m. It fails with [ErrBound] where m cannot be told from zero.
func (n NearRatio) Quo(m NearRatio) (NearRatio, error) {
	v, err := n.v.over(m.v)
	return NearRatio{v}, err
}

// Refine encloses n again to the bound given, as [Near.Refine] does a length.
func (n NearRatio) Refine(within Ratio) (NearRatio, error) {
	v, err := n.v.refine(within.v)
	return NearRatio{v}, err
}

// Cmp is -1, 0 or 1 as n is less than, equal to or greater than m, decided as
// [Near.Cmp] does.
func (n NearRatio) Cmp(m NearRatio) (int, error) { return n.Sub(m).Sign() }

// Round is the multiple of step that n is read to and the residue, n less the
// mark, decided as [Near.Round] does.
func (n NearRatio) Round(step Ratio, m Mode) (mark Ratio, residue NearRatio, err error) {
	at, left, err := Near(n).Round(Length(step), m)
	return Ratio(at), NearRatio(left), err
}
