package hem

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// A Hem is a hem of any kind: [Double], [Faced] and the others. Each kind is a struct of
// its own fields and those that several kinds share.
type Hem interface {
	// Plan works the hem out. The faults are [fault.Faults] in the order of the fields:
	// those of single fields, and where there are none those between fields.
	Plan() (Plan, error)
	// With is the same hem on an edge of another allowance. A [Slit] has none, and takes
	// the tape alone.
	With(Allowance) Hem
	// Allowed is the hem's own allowance.
	Allowed() Allowance

	taken() units.Length // what a solved hem takes off the garment
	reach() units.Length // how far apart the inner edge of the hem and the line that it is sewn to lie on the flat cloth
	edge() edge          // the edge that is hemmed
	answer(*Plan)        // fills what the kind alone knows
	sheet(Plan, *ticket.Sheet)
	measures() []measure // what must have room for a ply that is drawn
	draw(Plan, sketch) []section.Drawing
}

// A kind is a kind of hem: its name in JSON, the title of its sheet, and its type.
type kind struct {
	name, title string
	empty       Hem
	begin       func() any       // a pointer to a new one
	hem         func(of any) Hem // the one that such a pointer points to, nil for another
	is          func(of Hem) bool
}

func kindOf[S Hem](name, title string) kind {
	var empty S
	return kind{name, title, empty, func() any { return new(S) },
		func(of any) Hem {
			if s, ok := of.(*S); ok {
				return *s
			}
			return nil
		},
		func(of Hem) bool { _, is := of.(S); return is }}
}

var kinds = [...]kind{
	kindOf[Single]("single", "Single hem"),
	kindOf[Double]("double", "Double hem"),
	kindOf[Narrow]("narrow", "Narrow hem"),
	kindOf[Rolled]("rolled", "Rolled hem"),
	kindOf[ShirtTail]("shirt-tail", "Shirt-tail hem"),
	kindOf[Circular]("circular", "Hem of a circle"),
	kindOf[Slit]("slit", "Hem round a cut slit"),
	kindOf[SeamSlit]("seam-slit", "Hem round an opening left in a seam"),
	kindOf[Blind]("blind", "Blind hem"),
	kindOf[Faced]("faced", "Faced hem"),
	kindOf[BiasFaced]("bias-faced", "Hem faced on the bias"),
	kindOf[Bound]("bound", "Bound edge"),
	kindOf[DoubleBound]("double-bound", "Edge bound with a doubled binding"),
	kindOf[TurnUp]("turn-up", "Trouser turn-up"),
}

// Kinds yields a hem of every kind, of which nothing is given.
func Kinds() iter.Seq[Any] {
	return func(yield func(Any) bool) {
		for _, k := range kinds {
			if !yield(Any{k.empty}) {
				return
			}
		}
	}
}

// Any holds a hem of any kind. In JSON its key kind says which.
type Any struct{ Hem }

// kind is the kind held; an empty one where none is.
func (a Any) kind() kind {
	for _, k := range kinds {
		if k.is(a.Hem) {
			return k
		}
	}
	return kind{title: "No hem"}
}

// Kind is the name of the kind held, as in shirt-tail; empty where none is.
func (a Any) Kind() string { return a.kind().name }

// Title is the name of the kind held as people say it, as in Shirt-tail hem.
func (a Any) Title() string { return a.kind().title }

// Plan works out the hem held. It is a fault to hold none.
func (a Any) Plan() (Plan, error) {
	if a.Kind() == "" {
		return Plan{}, fault.Faults{{Path: "kind", Limit: "a kind of hem", Kind: fault.Missing}}
	}
	return a.Hem.Plan()
}

// With is the same hem on an edge of another allowance. Where none is held it is a.
func (a Any) With(b Allowance) Any {
	if a.Kind() == "" {
		return a
	}
	return Any{a.Hem.With(b)}
}

// Allowed is the allowance of the hem held.
func (a Any) Allowed() Allowance {
	if a.Kind() == "" {
		return Allowance{}
	}
	return a.Hem.Allowed()
}

// Slit reports whether the hem held goes round a slit.
func (a Any) Slit() bool {
	switch a.Hem.(type) {
	case Slit, SeamSlit:
		return true
	}
	return false
}

// MarshalJSON is the hem with its kind, null where none is held.
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

// Begin is a pointer to a new hem of a kind, nil where there is no such kind.
func (*Any) Begin(kind string) any {
	for _, k := range kinds {
		if k.name == kind {
			return k.begin()
		}
	}
	return nil
}

// Choose holds the hem that a pointer points to.
func (a *Any) Choose(hem any) {
	for _, k := range kinds {
		if s := k.hem(hem); s != nil {
			a.Hem = s
		}
	}
}

// Chosen is the kind of the hem held, and the hem.
func (a Any) Chosen() (string, any) {
	if k := a.Kind(); k != "" {
		return k, a.Hem
	}
	return "", nil
}
