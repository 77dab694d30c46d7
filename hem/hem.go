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

// kinds are the kinds of hem.
var kinds = noun.Kinds[Hem]{
	{Name: "single", Title: "Single hem", Empty: Single{}},
	{Name: "double", Title: "Double hem", Empty: Double{}},
	{Name: "narrow", Title: "Narrow hem", Empty: Narrow{}},
	{Name: "rolled", Title: "Rolled hem", Empty: Rolled{}},
	{Name: "shirt-tail", Title: "Shirt-tail hem", Empty: ShirtTail{}},
	{Name: "circular", Title: "Hem of a circle", Empty: Circular{}},
	{Name: "slit", Title: "Hem round a cut slit", Empty: Slit{}},
	{Name: "seam-slit", Title: "Hem round an opening left in a seam", Empty: SeamSlit{}},
	{Name: "blind", Title: "Blind hem", Empty: Blind{}},
	{Name: "faced", Title: "Faced hem", Empty: Faced{}},
	{Name: "bias-faced", Title: "Hem faced on the bias", Empty: BiasFaced{}},
	{Name: "bound", Title: "Bound edge", Empty: Bound{}},
	{Name: "double-bound", Title: "Edge bound with a doubled binding", Empty: DoubleBound{}},
	{Name: "turn-up", Title: "Trouser turn-up", Empty: TurnUp{}},
}

// Kinds yields a hem of every kind, of which nothing is given.
func Kinds() iter.Seq[Any] {
	return func(yield func(Any) bool) {
		for h := range kinds.All() {
			if !yield(Any{h}) {
				return
			}
		}
	}
}

// Any holds a hem of any kind. In JSON its key kind says which.
type Any struct{ Hem }

// Kind is the name of the kind held, as in shirt-tail; empty where none is.
func (a Any) Kind() string { k, _ := kinds.Of(a.Hem); return k.Name }

// Title is the name of the kind held as people say it, as in Shirt-tail hem.
func (a Any) Title() string {
	if k, ok := kinds.Of(a.Hem); ok {
		return k.Title
	}
	return "No hem"
}

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
func (*Any) Kinds() []string { return kinds.Names() }

// Begin is a pointer to a new hem of a kind, nil where there is no such kind.
func (*Any) Begin(kind string) any { return kinds.Begin(kind) }

// Choose holds the hem that a pointer from Begin points to.
func (a *Any) Choose(hem any) {
	if h, ok := kinds.Held(hem); ok {
		a.Hem = h
	}
}

// Chosen is the kind of the hem held, and the hem.
func (a Any) Chosen() (string, any) {
	if k := a.Kind(); k != "" {
		return k, a.Hem
	}
	return "", nil
}
