package noun

import (
	"encoding/json"
	"io/fs"
	"reflect"

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
