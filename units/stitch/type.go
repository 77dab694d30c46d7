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
	Chain         Class = iota + 1 // 100, chain stitches of one thread
	Hand                           // 200, hand stitches and those that look like them
	Lock                           // 300, lockstitches: a needle thread and a bobbin thread
	MultiChain                     // 400, chain stitches of several threads
	Overedge                       // 500, overedge stitches, which shut in the raw edge
	Covering                       // 600, covering stitches
	LockOneThread                  // 700, lockstitches of one thread: in one list only
)

var classNames = name.Of[Class]("class", "none", "100", "200", "300", "400", "500", "600", "700")

// String is the number of the class, as in 300.
func (c Class) String() string { return classNames.String(c) }

// MarshalText is the number of the class.
func (c Class) MarshalText() ([]byte, error) { return classNames.Marshal(c) }

// UnmarshalText takes the number of a class.
func (c *Class) UnmarshalText(text []byte) error { return classNames.Unmarshal(c, text) }

// Classes yields every class.
func Classes() iter.Seq[Class] { return classNames.All() }

// A Type is a stitch type, known by its number. Only the types that a source describes
// are here.
type Type uint8

// The types. What the sources say of each is in [TypeRows].
const (
	Chain101    Type = iota + 1 // chain stitch of one thread
	Blind103                    // blind stitch of one thread
	Saddle209                   // saddle stitch
	Lock301                     // lockstitch, what a household machine sews straight
	Zigzag304                   // zigzag lockstitch
	Chain401                    // chain stitch of two threads
	Cover406                    // coverstitch, two needles
	Cover407                    // coverstitch, three needles
	Overedge502                 // overedge stitch
	Overedge503                 // overedge stitch of two threads
	Overedge504                 // overedge stitch
	Mock512                     // mock safety stitch
	Overedge514                 // overedge stitch of four threads
	Safety515                   // safety stitch
	Safety516                   // safety stitch
	Safety519                   // safety stitch
	Cover602                    // covering stitch, two needles
	Cover605                    // covering stitch, three needles
	Cover607                    // covering stitch, four needles
)

var typeNames = name.Of[Type]("type", "none", "101", "103", "209", "301", "304", "401", "406", "407", "502", "503", "504", "512", "514", "515", "516", "519", "602", "605", "607")

// typeClass is the class of each type: the first figure of its number.
var typeClass = [...]Class{
	Chain101: Chain, Blind103: Chain, Saddle209: Hand, Lock301: Lock, Zigzag304: Lock,
	Chain401: MultiChain, Cover406: MultiChain, Cover407: MultiChain,
	Overedge502: Overedge, Overedge503: Overedge, Overedge504: Overedge, Mock512: Overedge, Overedge514: Overedge,
	Safety515: Overedge, Safety516: Overedge, Safety519: Overedge,
	Cover602: Covering, Cover605: Covering, Cover607: Covering,
}

// String is the number of the type, as in 301.
func (t Type) String() string { return typeNames.String(t) }

// MarshalText is the number of the type.
func (t Type) MarshalText() ([]byte, error) { return typeNames.Marshal(t) }

// UnmarshalText takes the number of a type.
func (t *Type) UnmarshalText(text []byte) error { return typeNames.Unmarshal(t, text) }

// Types yields every type.
func Types() iter.Seq[Type] { return typeNames.All() }

// Class is the class of t, by its number.
func (t Type) Class() Class {
	if !typeNames.Valid(t) {
		return 0
	}
	return typeClass[t]
}

// oneThread reports whether the stitch is made of one thread, so that there is
// nothing to split between needle and under thread.
func (t Type) oneThread() bool { return t == Chain101 || t == Blind103 }

// ratios yields the rows of thread per length of seam of the type, the one that
// is the default first.
func (t Type) ratios() iter.Seq[RatioRow] {
	return ratioRows.Where(func(r RatioRow) bool { return r.Type == t })
}

// formula is the formula printed for thread per length of seam of the type, and
// whether there is one.
func (t Type) formula() (FormulaRow, bool) {
	return formulaRows.First(func(r FormulaRow) bool { return r.Type == t })
}
