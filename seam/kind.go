package seam

import (
	"fmt"
	"strings"

	"example.com/clothyard/units/fault"
)

// A Kind is a way of seaming two plies. The zero value, [NoKind], is not given,
// which a plan refuses. Every kind reads Drafted, DraftedUnder, Cut, CutUnder,
// First, Take and Fraying of a [Spec]; which reads what besides:
//
//	kind                 reads
//	plain                Trim Finish Aside
//	french               Second Trim Thickness
//	flat-felled          Second Trim Turned
//	bound                Second Trim
//	turned-and-stitched  Second Trim Turned
//	mock-french          Second Trim Turned
//	mock-felled          Second Trim Turned
//	untrimmed-fell       Turned Thickness
//	welt                 Second Trim Finish
//	lapped               Second Row Thickness
//	lapped-turned        Second Turned Thickness
//	lapped-raw           Second
//	slot                 Second Trim Strip Finish
//	hairline             Trim
//	hong-kong            Second Trim Strip Thickness
//	self-bound           Second Trim Turned
//	piped                Trim Cord Thickness
//	graded               Trim TrimUnder Layers
//
// A field that a kind does not read must be zero; see also [Kind.Reads].
type Kind uint8

// The kinds.
const (
	NoKind         Kind = iota // not given
	Plain                      // one row, right sides together, allowances pressed open or to one side
	French                     // two passes, the raw edges shut inside the second
	FlatFelled                 // one allowance trimmed, the other turned in over it and stitched down
	Bound                      // one row, both allowances together in a binding
	TurnedStitched             // a plain seam pressed open, the edge of each allowance turned under and stitched
	MockFrench                 // a plain seam, the edges of both allowances turned in towards each other and stitched together
	MockFelled                 // a plain seam, one allowance trimmed, the other folded in round it, two rows topstitched
	UntrimmedFell              // edges offset instead of trimmed: the under allowance folded over the upper edge and stitched down
	Welt                       // a plain seam pressed to one side, one allowance trimmed, the other caught by a row from outside
	Lapped                     // the upper allowance turned under, laid over the under one, stitched from outside
	LappedTurned               // both edges turned, one lapped over the other, a row along each fold
	LappedRaw                  // raw edges lapped, a row along each
	Slot                       // two folds that meet over an underlay, a row beside each
	Hairline                   // a narrow zigzag on the stitching line, trimmed close; for sheer cloth
	HongKong                   // a plain seam pressed open, each allowance by itself in a flat binding
	SelfBound                  // one allowance trimmed, the other folded twice round it as its binding
	Piped                      // a covered cord between the plies
	Graded                     // an enclosed seam, its layers trimmed in steps, the widest next to the outside
)

var kindNames = [...]string{
	NoKind: "none", Plain: "plain", French: "french", FlatFelled: "flat-felled", Bound: "bound",
	TurnedStitched: "turned-and-stitched", MockFrench: "mock-french", MockFelled: "mock-felled", UntrimmedFell: "untrimmed-fell",
	Welt: "welt", Lapped: "lapped", LappedTurned: "lapped-turned", LappedRaw: "lapped-raw", Slot: "slot", Hairline: "hairline",
	HongKong: "hong-kong", SelfBound: "self-bound", Piped: "piped", Graded: "graded",
}

var kindTitles = [...]string{
	NoKind: "No seam", Plain: "Plain seam", French: "French seam", FlatFelled: "Flat-felled seam", Bound: "Bound seam",
	TurnedStitched: "Turned-and-stitched seam", MockFrench: "Mock French seam", MockFelled: "Mock felled seam", UntrimmedFell: "Felled seam without trimming",
	Welt: "Welt seam", Lapped: "Lapped seam", LappedTurned: "Lapped seam, both edges turned", LappedRaw: "Lapped seam, raw edges", Slot: "Slot seam",
	Hairline: "Hairline seam", HongKong: "Seam with a Hong Kong finish", SelfBound: "Self-bound seam", Piped: "Piped seam", Graded: "Graded seam",
}

// String is the kind's name, as in flat-felled; none for [NoKind].
func (k Kind) String() string {
	if int(k) < len(kindNames) {
		return kindNames[k]
	}
	return fmt.Sprintf("Kind(%d)", uint8(k))
}

// Valid reports whether k is one of the kinds, [NoKind] excepted.
func (k Kind) Valid() bool { return k != NoKind && int(k) < len(kindNames) }

// MarshalText is the kind's name, empty for [NoKind]. A value that is no kind is
// a fault.
func (k Kind) MarshalText() ([]byte, error) {
	switch {
	case k == NoKind:
		return nil, nil
	case !k.Valid():
		return nil, unknownKind(k.String())
	}
	return []byte(kindNames[k]), nil
}

// UnmarshalText takes a kind's name. Empty text is [NoKind].
func (k *Kind) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*k = NoKind
		return nil
	}
	for one := range Kinds {
		if kindNames[one] == string(text) {
			*k = one
			return nil
		}
	}
	return unknownKind(fmt.Sprintf("%q", text[:min(len(text), fault.MaxName)]))
}

func unknownKind(got string) *fault.Fault {
	return &fault.Fault{Path: "kind", Got: got, Limit: kindList(), Kind: fault.Unknown}
}

// kindList names the kinds there are, for a fault.
func kindList() string { return "one of " + strings.Join(kindNames[Plain:], ", ") }

// Kinds yields every kind, [NoKind] excepted.
func Kinds(yield func(Kind) bool) {
	for k := Plain; k.Valid(); k++ {
		if !yield(k) {
			return
		}
	}
}

// A field is a bit for one field of a [Spec], in the order of the struct.
type field uint32

const (
	fieldDrafted field = 1 << iota
	fieldDraftedUnder
	fieldCut
	fieldCutUnder
	fieldFirst
	fieldSecond
	fieldTake
	fieldTrim
	fieldTrimUnder
	fieldTurned
	fieldStrip
	fieldCord
	fieldRow
	fieldThickness
	fieldLayers
	fieldFinish
	fieldAside
	fieldFraying
)

var fieldNames = [...]string{
	"drafted", "draftedUnder", "cut", "cutUnder", "first", "second", "take", "trim", "trimUnder", "turned", "strip", "cord", "row",
	"thickness", "layers", "finish", "aside", "fraying",
}

// fieldsAll are read by every kind.
const fieldsAll = fieldDrafted | fieldDraftedUnder | fieldCut | fieldCutUnder | fieldFirst | fieldTake | fieldFraying

var kindFields = [...]field{
	Plain:          fieldsAll | fieldTrim | fieldFinish | fieldAside,
	French:         fieldsAll | fieldSecond | fieldTrim | fieldThickness,
	FlatFelled:     fieldsAll | fieldSecond | fieldTrim | fieldTurned,
	Bound:          fieldsAll | fieldSecond | fieldTrim,
	TurnedStitched: fieldsAll | fieldSecond | fieldTrim | fieldTurned,
	MockFrench:     fieldsAll | fieldSecond | fieldTrim | fieldTurned,
	MockFelled:     fieldsAll | fieldSecond | fieldTrim | fieldTurned,
	UntrimmedFell:  fieldsAll | fieldTurned | fieldThickness,
	Welt:           fieldsAll | fieldSecond | fieldTrim | fieldFinish,
	Lapped:         fieldsAll | fieldSecond | fieldRow | fieldThickness,
	LappedTurned:   fieldsAll | fieldSecond | fieldTurned | fieldThickness,
	LappedRaw:      fieldsAll | fieldSecond,
	Slot:           fieldsAll | fieldSecond | fieldTrim | fieldStrip | fieldFinish,
	Hairline:       fieldsAll | fieldTrim,
	HongKong:       fieldsAll | fieldSecond | fieldTrim | fieldStrip | fieldThickness,
	SelfBound:      fieldsAll | fieldSecond | fieldTrim | fieldTurned,
	Piped:          fieldsAll | fieldTrim | fieldCord | fieldThickness,
	Graded:         fieldsAll | fieldTrim | fieldTrimUnder | fieldLayers,
}

// Reads reports whether k reads the field of [Spec] so named, as in "second".
// Every kind reads Kind. It is false for a name that is no field.
func (k Kind) Reads(name string) bool {
	if !k.Valid() {
		return false
	}
	for i, n := range fieldNames {
		if n == name {
			return k.reads(1 << i)
		}
	}
	return name == "kind"
}

func (k Kind) reads(f field) bool { return kindFields[k]&f != 0 }

// list names the fields of f, in the order of the [Spec].
func (f field) list() (names []string) {
	for i, n := range fieldNames {
		if f&(1<<i) != 0 {
			names = append(names, n)
		}
	}
	return names
}
