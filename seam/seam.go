package seam

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
)

// A Seam is a seam between two plies, of any kind: [French], [Bound] and the others.
// Each kind is a struct of its own fields and an [Allowance].
type Seam interface {
	// Plan works the seam out. The faults are [fault.Faults] in the order of the fields:
	// those of single fields, and where there are none those between fields.
	Plan() (Plan, error)
	// Taking is the same kind of seam, made to take so much from each ply. It is false
	// where the kind cannot.
	Taking(each units.Length) (Seam, bool)
	// Plies is the seam's own allowance.
	Plies() Allowance

	answer(*Plan)              // fills what the kind alone knows
	sheet(Plan, *ticket.Sheet) // adds the work
	size(Plan) size            // what a drawing must have room for
	draw(*sketch)              // draws the stages
}

// kinds are the kinds of seam.
var kinds = noun.Kinds[Seam]{
	{Name: "plain", Title: "Plain seam", Empty: Plain{}},
	{Name: "french", Title: "French seam", Empty: French{}},
	{Name: "flat-felled", Title: "Flat-felled seam", Empty: FlatFelled{}},
	{Name: "bound", Title: "Bound seam", Empty: Bound{}},
	{Name: "turned-and-stitched", Title: "Turned-and-stitched seam", Empty: TurnedStitched{}},
	{Name: "mock-french", Title: "Mock French seam", Empty: MockFrench{}},
	{Name: "mock-felled", Title: "Mock felled seam", Empty: MockFelled{}},
	{Name: "untrimmed-fell", Title: "Felled seam without trimming", Empty: UntrimmedFell{}},
	{Name: "welt", Title: "Welt seam", Empty: Welt{}},
	{Name: "lapped", Title: "Lapped seam", Empty: Lapped{}},
	{Name: "lapped-turned", Title: "Lapped seam, both edges turned", Empty: LappedTurned{}},
	{Name: "lapped-raw", Title: "Lapped seam, raw edges", Empty: LappedRaw{}},
	{Name: "slot", Title: "Slot seam", Empty: Slot{}},
	{Name: "hairline", Title: "Hairline seam", Empty: Hairline{}},
	{Name: "hong-kong", Title: "Seam with a Hong Kong finish", Empty: HongKong{}},
	{Name: "self-bound", Title: "Self-bound seam", Empty: SelfBound{}},
	{Name: "piped", Title: "Piped seam", Empty: Piped{}},
	{Name: "graded", Title: "Graded seam", Empty: Graded{}},
}

// Kinds yields a seam of every kind, of which nothing is given.
func Kinds() iter.Seq[Any] {
	return func(yield func(Any) bool) {
		for s := range kinds.All() {
			if !yield(Any{s}) {
				return
			}
		}
	}
}

// Any holds a seam of any kind. In JSON its key kind says which.
type Any struct{ Seam }

// Kind is the name of the kind held, as in flat-felled; empty where none is.
func (a Any) Kind() string { k, _ := kinds.Of(a.Seam); return k.Name }

// Title is the name of the kind held as people say it, as in French seam.
func (a Any) Title() string {
	if k, ok := kinds.Of(a.Seam); ok {
		return k.Title
	}
	return "No seam"
}

// Plan works out the seam held. It is a fault to hold none.
func (a Any) Plan() (Plan, error) {
	if a.Kind() == "" {
		return Plan{}, fault.Faults{{Path: "kind", Limit: "a kind of seam", Kind: fault.Missing}}
	}
	return a.Seam.Plan()
}

// Taking is the same kind of seam, made to take so much from each ply. It is false
// where the kind cannot, or none is held.
func (a Any) Taking(each units.Length) (Any, bool) {
	if a.Kind() == "" {
		return a, false
	}
	s, ok := a.Seam.Taking(each)
	return Any{s}, ok
}

// With is the same seam on plies of another allowance. Where none is held it is a.
func (a Any) With(b Allowance) Any {
	if a.Kind() == "" {
		return a
	}
	p := noun.Pointer(a.Seam)
	*p.(interface{ plies() *Allowance }).plies() = b
	a.Choose(p)
	return a
}

// On is the same seam with defaults that follow a tape, where it has none of its own.
func (a Any) On(tape units.Tape) Any {
	b := a.Plies()
	if b.Tape != 0 {
		return a
	}
	b.Tape = tape
	return a.With(b)
}

// Plies is the allowance of the seam held.
func (a Any) Plies() Allowance {
	if a.Kind() == "" {
		return Allowance{}
	}
	return a.Seam.Plies()
}

// Cutting is the same seam, its plies cut so. Where a is solved it takes what it took.
func (a Any) Cutting(upper, under units.Length) Any {
	b := a.Plies()
	b.Cut, b.CutUnder = upper, under
	return a.With(b)
}

// MarshalJSON is the seam with its kind, null where none is held.
func (a Any) MarshalJSON() ([]byte, error) { return noun.MarshalChoice(&a) }

// UnmarshalJSON reads what [Any.MarshalJSON] wrote.
func (a *Any) UnmarshalJSON(text []byte) error { return noun.UnmarshalChoice(a, text) }

// Kinds are the names of the kinds.
func (*Any) Kinds() []string { return kinds.Names() }

// Begin is a pointer to a new seam of a kind, nil where there is no such kind.
func (*Any) Begin(kind string) any { return kinds.Begin(kind) }

// Choose holds the seam that a pointer from Begin points to.
func (a *Any) Choose(seam any) {
	if s, ok := kinds.Held(seam); ok {
		a.Seam = s
	}
}

// Chosen is the kind of the seam held, and the seam.
func (a Any) Chosen() (string, any) {
	if k := a.Kind(); k != "" {
		return k, a.Seam
	}
	return "", nil
}
