package noun

import (
	"encoding/json"
	"io"
	"io/fs"
	"iter"
	"reflect"
	"slices"
	"strings"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// A Plan is what a Spec comes to.
type Plan interface{ Sheet() ticket.Sheet }

// An Entry is a noun under its name: a type of Spec and how it is planned.
type Entry struct {
	name  string
	spec  reflect.Type
	plan  reflect.Type
	run   func(spec any) (Plan, error)
	files fs.FS // words.txt and examples.json of its package; nil where there are none
}

// Of is the entry of a noun.
func Of[S interface{ Plan() (P, error) }, P Plan](name string) Entry { return By(name, S.Plan) }

// By is the entry of a noun that is planned by a function, as where its Plan takes
// more than the Spec.
func By[S any, P Plan](name string, plan func(S) (P, error)) Entry {
	return Entry{name: name, spec: reflect.TypeFor[S](), plan: reflect.TypeFor[P](), run: func(spec any) (Plan, error) {
		p, err := plan(*spec.(*S))
		if err != nil {
			return nil, err
		}
		return p, nil
	}}
}

// List is the nouns of a package. The files are its words.txt, what each field
// means, and its examples.json, which has a list of examples for each noun.
func List(files fs.FS, entries ...Entry) []Entry {
	for i := range entries {
		entries[i].files = files
	}
	return entries
}

// Name is the name of the noun, as in gather.strip.
func (e Entry) Name() string { return e.name }

// New is a pointer to a Spec in which nothing is given.
func (e Entry) New() any { return reflect.New(e.spec).Interface() }

// NewPlan is a pointer to an empty plan, to read one from JSON into.
func (e Entry) NewPlan() any { return reflect.New(e.plan).Interface() }

// Plan plans the Spec that spec points to, which is of the type that New gives.
func (e Entry) Plan(spec any) (Plan, error) { return e.run(spec) }

// Examples are Specs that can be planned, as JSON.
func (e Entry) Examples() []json.RawMessage {
	var all map[string][]json.RawMessage
	if json.Unmarshal(e.file("examples.json"), &all) != nil {
		return nil
	}
	return all[e.name]
}

// file is a file of the noun's package, empty where there is none.
func (e Entry) file(name string) []byte {
	if e.files == nil {
		return nil
	}
	text, err := fs.ReadFile(e.files, name)
	if err != nil {
		return nil
	}
	return text
}

// A Registry finds nouns by their names.
type Registry struct{ entries []Entry }

// NewRegistry is the registry of the nouns of several packages.
func NewRegistry(lists ...[]Entry) Registry { return Registry{slices.Concat(lists...)} }

// All yields every noun, in the order of the lists.
func (r Registry) All() iter.Seq[Entry] { return slices.Values(r.entries) }

// Find is the noun of a name.
func (r Registry) Find(name string) (e Entry, ok bool) {
	i := slices.IndexFunc(r.entries, func(e Entry) bool { return e.name == name })
	if i < 0 {
		return Entry{}, false
	}
	return r.entries[i], true
}

// Read reads an object that names its noun with the key sum, beside the fields of
// the Spec: {"sum": "gather.strip", "edge": "15 in", ...}. The spec is a pointer,
// as [Entry.New] gives it. Where the noun is known the entry is given even if there
// are faults.
func (r Registry) Read(in io.Reader, reader Reader) (e Entry, spec any, err error) {
	text, all, err := reader.nodes(in, 1)
	if err != nil {
		return Entry{}, nil, err
	}
	n := all[0]
	name, ok := n.take("sum")
	switch e, found := r.Find(name); {
	case !ok:
		return Entry{}, nil, fault.Faults{{Path: "sum", Kind: fault.Missing, Limit: "the name of a sum, as in gather.strip"}}
	case !found:
		return Entry{}, nil, r.Unknown(name)
	default:
		spec = e.New()
		return e, spec, reader.fill(n, text, spec)
	}
}

// Unknown is the fault of a name that no noun has.
func (r Registry) Unknown(name string) error {
	names := make([]string, len(r.entries))
	for i, e := range r.entries {
		names[i] = e.name
	}
	return fault.Faults{{Path: "sum", Got: fault.Quote(name), Kind: fault.Unknown, Limit: "one of " + strings.Join(names, ", ")}}
}
