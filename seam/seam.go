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

// A kind is a kind of seam: its name in JSON, the title of its sheet, and what is done
// with its type.
type kind struct {
	name, title string
	empty       Seam
	begin       func() any                 // a pointer to a new one
	seam        func(of any) Seam          // the one that such a pointer points to, nil for another
	with        func(Seam, Allowance) Seam // the same on plies of another allowance, nil for another
}

func kindOf[S Seam, P pointer[S]](name, title string) kind {
	var empty S
	return kind{name, title, empty, func() any { return new(S) },
		func(of any) Seam {
			if s, ok := of.(*S); ok {
				return *s
			}
			return nil
		},
		func(of Seam, a Allowance) Seam {
			s, ok := of.(S)
			if !ok {
				return nil
			}
			*P(&s).plies() = a
			return s
		}}
}

var kinds = [...]kind{
	kindOf[Plain]("plain", "Plain seam"),
	kindOf[French]("french", "French seam"),
	kindOf[FlatFelled]("flat-felled", "Flat-felled seam"),
	kindOf[Bound]("bound", "Bound seam"),
	kindOf[TurnedStitched]("turned-and-stitched", "Turned-and-stitched seam"),
	kindOf[MockFrench]("mock-french", "Mock French seam"),
	kindOf[MockFelled]("mock-felled", "Mock felled seam"),
	kindOf[UntrimmedFell]("untrimmed-fell", "Felled seam without trimming"),
	kindOf[Welt]("welt", "Welt seam"),
	kindOf[Lapped]("lapped", "Lapped seam"),
	kindOf[LappedTurned]("lapped-turned", "Lapped seam, both edges turned"),
	kindOf[LappedRaw]("lapped-raw", "Lapped seam, raw edges"),
	kindOf[Slot]("slot", "Slot seam"),
	kindOf[Hairline]("hairline", "Hairline seam"),
	kindOf[HongKong]("hong-kong", "Seam with a Hong Kong finish"),
	kindOf[SelfBound]("self-bound", "Self-bound seam"),
	kindOf[Piped]("piped", "Piped seam"),
	kindOf[Graded]("graded", "Graded seam"),
}

// Kinds yields a seam of every kind, of which nothing is given.
func Kinds() iter.Seq[Any] {
	return func(yield func(Any) bool) {
		for _, k := range kinds {
			if !yield(Any{k.empty}) {
				return
			}
		}
	}
}

// Any holds a seam of any kind. In JSON its key kind says which.
type Any struct{ Seam }

// kind is the kind held; an empty one where none is.
func (a Any) kind() kind {
	for _, k := range kinds {
		if k.with(a.Seam, Allowance{}) != nil {
			return k
		}
	}
	return kind{title: "No seam"}
}

// Kind is the name of the kind held, as in flat-felled; empty where none is.
func (a Any) Kind() string { return a.kind().name }

// Title is the name of the kind held as people say it, as in French seam.
func (a Any) Title() string { return a.kind().title }

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
	return Any{a.kind().with(a.Seam, b)}
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
func (*Any) Kinds() []string {
	var names []string
	for _, k := range kinds {
		names = append(names, k.name)
	}
	return names
}

// Begin is a pointer to a new seam of a kind, nil where there is no such kind.
func (*Any) Begin(kind string) any {
	for _, k := range kinds {
		if k.name == kind {
			return k.begin()
		}
	}
	return nil
}

// Choose holds the seam that a pointer points to.
func (a *Any) Choose(seam any) {
	for _, k := range kinds {
		if s := k.seam(seam); s != nil {
			a.Seam = s
		}
	}
}

// Chosen is the kind of the seam held, and the seam.
func (a Any) Chosen() (string, any) {
	if k := a.Kind(); k != "" {
		return k, a.Seam
	}
	return "", nil
}
