package stitch

import (
	"iter"

	"example.com/clothyard/units/name"
)

// A Class is one of the classes into which stitch types are sorted. The zero
// value is no class.
type Class uint8

// The classes. Most lists have six; one adds a seventh, see [ClassRows].
const (
	NoClass       Class = iota
	Chain               // 100, chain stitches of one thread
	Hand                // 200, hand stitches and those that look like them
	Lock                // 300, lockstitches: a needle thread and a bobbin thread
	MultiChain          // 400, chain stitches of several threads
	Overedge            // 500, overedge stitches, which shut in the raw edge
	Covering            // 600, covering stitches
	LockOneThread       // 700, lockstitches of one thread: in one list only
)

var classNames = name.Of[Class]("class", "none", "100", "200", "300", "400", "500", "600", "700")

// String is the number of the class, as in 300; none for [NoClass].
func (c Class) String() string { return classNames.String(c) }

// MarshalText is the number of the class, empty for [NoClass].
func (c Class) MarshalText() ([]byte, error) { return classNames.Marshal(c) }

// UnmarshalText takes the number of a class. Empty text is [NoClass].
func (c *Class) UnmarshalText(text []byte) error { return classNames.Unmarshal(c, text) }

// Classes yields every class, [NoClass] excepted.
func Classes() iter.Seq[Class] { return classNames.All() }

// Rows yields what the sources say of the class.
func (c Class) Rows() iter.Seq[ClassRow] {
	return func(yield func(ClassRow) bool) {
		for _, r := range classRows {
			if r.Class == c && !yield(r) {
				return
			}
		}
	}
}

// A Type is a stitch type, known by its number. The zero value, [NoType], is not
// given. Only the types that a source describes are here.
type Type uint8

// The types. What the sources say of each is in [TypeRows].
const (
	NoType      Type = iota // not given
	Chain101                // chain stitch of one thread
	Blind103                // blind stitch of one thread
	Saddle209               // saddle stitch
	Lock301                 // lockstitch, what a household machine sews straight
	Zigzag304               // zigzag lockstitch
	Chain401                // chain stitch of two threads
	Cover406                // coverstitch, two needles
	Cover407                // coverstitch, three needles
	Overedge502             // overedge stitch
	Overedge503             // overedge stitch of two threads
	Overedge504             // overedge stitch
	Mock512                 // mock safety stitch
	Overedge514             // overedge stitch of four threads
	Safety515               // safety stitch
	Safety516               // safety stitch
	Safety519               // safety stitch
	Cover602                // covering stitch, two needles
	Cover605                // covering stitch, three needles
	Cover607                // covering stitch, four needles
)

var typeNames = name.Of[Type]("type", "none", "101", "103", "209", "301", "304", "401", "406", "407", "502", "503", "504", "512", "514", "515", "516", "519", "602", "605", "607")

// typeClass is the class of each type: the first figure of its number.
var typeClass = [...]Class{
	NoType: NoClass, Chain101: Chain, Blind103: Chain, Saddle209: Hand, Lock301: Lock, Zigzag304: Lock,
	Chain401: MultiChain, Cover406: MultiChain, Cover407: MultiChain,
	Overedge502: Overedge, Overedge503: Overedge, Overedge504: Overedge, Mock512: Overedge, Overedge514: Overedge,
	Safety515: Overedge, Safety516: Overedge, Safety519: Overedge,
	Cover602: Covering, Cover605: Covering, Cover607: Covering,
}

// String is the number of the type, as in 301; none for [NoType].
func (t Type) String() string { return typeNames.String(t) }

// Valid reports whether t is one of the types, [NoType] excepted.
func (t Type) Valid() bool { return typeNames.Valid(t) }

// MarshalText is the number of the type, empty for [NoType]. A value that is no
// type is a fault.
func (t Type) MarshalText() ([]byte, error) { return typeNames.Marshal(t) }

// UnmarshalText takes the number of a type. Empty text is [NoType].
func (t *Type) UnmarshalText(text []byte) error { return typeNames.Unmarshal(t, text) }

// Types yields every type, [NoType] excepted.
func Types() iter.Seq[Type] { return typeNames.All() }

// Class is the class of t, by its number; [NoClass] for what is no type.
func (t Type) Class() Class {
	if !t.Valid() {
		return NoClass
	}
	return typeClass[t]
}

// oneThread reports whether the stitch is made of one thread, so that there is
// nothing to split between needle and under thread.
func (t Type) oneThread() bool { return t == Chain101 || t == Blind103 }

// Rows yields what the sources say of the type; rows that disagree all stand.
func (t Type) Rows() iter.Seq[TypeRow] {
	return func(yield func(TypeRow) bool) {
		for _, r := range typeRows {
			if r.Type == t && !yield(r) {
				return
			}
		}
	}
}

// Ratios yields the rows of thread per length of seam of the type, the one that
// is the default first.
func (t Type) Ratios() iter.Seq[RatioRow] {
	return func(yield func(RatioRow) bool) {
		for _, r := range ratioRows {
			if r.Type == t && !yield(r) {
				return
			}
		}
	}
}

// Formula is the formula printed for thread per length of seam of the type, and
// whether there is one.
func (t Type) Formula() (FormulaRow, bool) {
	for _, r := range formulaRows {
		if r.Type == t {
			return r, true
		}
	}
	return FormulaRow{}, false
}
