package noun

import (
	"io"
	"iter"
	"reflect"
	"slices"
	"strings"

	"example.com/clothyard/units/fault"
)

// A Registry finds nouns by their names.
type Registry struct{ entries []Entry }

// NewRegistry is the registry of the nouns of several packages.
func NewRegistry(lists ...[]Entry) Registry { return Registry{slices.Concat(lists...)} }

// All yields every noun, in the order of the lists.
func (r Registry) All() iter.Seq[Entry] { return slices.Values(r.entries) }

// Find is the noun of a name, which may be written in capitals.
func (r Registry) Find(name string) (e Entry, ok bool) {
	i := slices.IndexFunc(r.entries, func(e Entry) bool { return e.name == fold(name) })
	if i < 0 {
		return Entry{}, false
	}
	return r.entries[i], true
}

// Read reads an object that names its noun with the key sum, beside the fields of
// the Spec: {"sum": "gather.strip", "edge": "15 in", ...}. The spec is a pointer,
// as [Entry.New] gives it. Where the noun is known the entry is given even if there
// are faults.
//
// A plan with its sum is read too: {"sum": "gather.strip", "spec": {...}, ...}. Its
// Spec is what it asks; of its answers the names alone are looked at.
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
		if n, err = e.asked(n); err != nil {
			return e, spec, err
		}
		return e, spec, reader.fill(n, text, spec)
	}
}

// asked is the Spec in the object of a plan; an object of another form is the Spec
// itself.
func (e Entry) asked(n node) (node, error) {
	i := slices.Index(n.keys, "spec")
	if i < 0 || n.values[i].kind != objectNode {
		return n, nil
	}
	answers := members(e.plan)
	var a fault.Audit
	for k, key := range n.keys {
		switch {
		case slices.Contains(n.keys[:k], key):
			a.Fault(at("", key), "", "each key once", fault.Twice)
		case key != "line" && !slices.ContainsFunc(answers, func(m member) bool { return m.key == key }):
			a.Fault(at("", key), "", "a part of the answer; fields stand in spec", fault.Unknown)
		}
	}
	spec := n.values[i]
	if f, ok := e.plan.FieldByName("Spec"); ok && f.Type != e.spec {
		if c, choice := reflect.New(f.Type).Interface().(Choice); choice {
			if kind, _ := spec.take("kind"); reflect.TypeOf(c.Begin(kind)) != reflect.PointerTo(e.spec) {
				a.Fault("spec.kind", fault.Quote(kind), "the kind of "+e.name, fault.Conflict)
			}
		}
	}
	return spec, a.Err()
}

// Unknown is the fault of a name that no noun has.
func (r Registry) Unknown(name string) error {
	names := make([]string, len(r.entries))
	for i, e := range r.entries {
		names[i] = e.name
	}
	return fault.Faults{{Path: "sum", Got: fault.Quote(name), Kind: fault.Unknown, Limit: "one of " + strings.Join(names, ", ")}}
}
