package seam

import (
	"fmt"
	"strings"

	"example.com/clothyard/units/ticket"
)

// A Kind is a way of seaming two plies. The zero value, [NoKind], is not given,
// which a plan refuses. Which kind reads which field of a [Spec]:
//
//	field                            plain french flat-felled bound
//	Drafted DraftedUnder Cut CutUnder  x     x        x         x
//	First Take Trim Fraying            x     x        x         x
//	Second                                   x        x         x
//	Thickness                                x
//
// A field that a kind does not read must be zero.
type Kind uint8

// The kinds.
const (
	NoKind     Kind = iota // not given
	Plain                  // one row, right sides together, allowances pressed open, raw edges left
	French                 // two passes, the raw edges shut inside the second
	FlatFelled             // one allowance trimmed, the other turned in over it and stitched down
	Bound                  // one row, both allowances together in a binding
)

var kindNames = [...]string{NoKind: "none", Plain: "plain", French: "french", FlatFelled: "flat-felled", Bound: "bound"}

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
	return unknownKind(fmt.Sprintf("%q", text[:min(len(text), ticket.MaxName)]))
}

func unknownKind(got string) *ticket.Fault {
	return &ticket.Fault{Path: "Kind", Got: got, Limit: kindList(), Err: ticket.ErrUnknown}
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
type field uint16

const (
	fieldDrafted field = 1 << iota
	fieldDraftedUnder
	fieldCut
	fieldCutUnder
	fieldFirst
	fieldSecond
	fieldTake
	fieldTrim
	fieldThickness
	fieldFraying
)

var fieldNames = [...]string{
	"Drafted", "DraftedUnder", "Cut", "CutUnder", "First", "Second", "Take", "Trim", "Thickness", "Fraying",
}

// fieldsAll are read by every kind.
const fieldsAll = fieldDrafted | fieldDraftedUnder | fieldCut | fieldCutUnder | fieldFirst | fieldTake | fieldTrim | fieldFraying

var kindFields = [...]field{
	Plain:      fieldsAll,
	French:     fieldsAll | fieldSecond | fieldThickness,
	FlatFelled: fieldsAll | fieldSecond,
	Bound:      fieldsAll | fieldSecond,
}

// Reads reports whether k reads the field of [Spec] so named, as in "Second".
// Every kind reads Kind. It is false for a name that is no field.
func (k Kind) Reads(name string) bool {
	if !k.Valid() {
		return false
	}
	for i, n := range fieldNames {
		if n == name {
			return kindFields[k]&(1<<i) != 0
		}
	}
	return name == "Kind"
}

// list names the fields of f, in the order of the [Spec], in one allocation.
func (f field) list() ticket.Fields {
	if f == 0 {
		return ""
	}
	var b [96]byte
	out := b[:0]
	for i, n := range fieldNames {
		if f&(1<<i) == 0 {
			continue
		}
		if len(out) > 0 {
			out = append(out, ' ')
		}
		out = append(out, n...)
	}
	return ticket.Fields(out)
}
