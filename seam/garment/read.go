package garment

import (
	"embed"
	"encoding/json"
	"io"
	"path"
	"slices"
	"strings"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

//go:embed starters/*.json
var starters embed.FS

// Starters are the names of the starters.
func Starters() []string {
	files, err := starters.ReadDir("starters")
	if err != nil {
		return nil // the folder is part of the program
	}
	names := make([]string, len(files))
	for i, f := range files {
		names[i] = strings.TrimSuffix(f.Name(), path.Ext(f.Name()))
	}
	return names
}

// Starter is the garment of a name, as patterns usually draw it, without measures.
func Starter(name string) (Garment, error) {
	g, _, err := Read(strings.NewReader(`{"like":` + quoted(name) + `}`))
	return g, err
}

func quoted(name string) string {
	text, _ := json.Marshal(name) // a text always marshals
	return string(text)
}

// IsFile reports whether a text is a garment file, by its version or by the starter that
// it names.
func IsFile(text []byte) bool {
	var head struct {
		Version int    `json:"version"`
		Like    string `json:"like"`
	}
	return json.Unmarshal(text, &head) == nil && (head.Version != 0 || head.Like != "")
}

// Read reads a garment file. One that names a starter with the key like is a JSON Merge
// Patch (RFC 7396) over that starter. What then names a piece, an edge, a seam, a hem or
// a part that the file took away goes with it; it is named in what is dropped.
//
// The faults are [fault.Faults], as those of [noun.Read].
func Read(in io.Reader) (g Garment, dropped []string, err error) {
	text, err := io.ReadAll(io.LimitReader(in, noun.MaxBytes+1))
	if err != nil {
		return Garment{}, nil, err
	}
	var head struct {
		Like string `json:"like"`
	}
	if json.Unmarshal(text, &head) != nil || head.Like == "" {
		return g, nil, noun.Read(strings.NewReader(string(text)), &g)
	}
	base, err := starters.ReadFile("starters/" + head.Like + ".json")
	if err != nil || !slices.Contains(Starters(), head.Like) {
		return g, nil, fault.Faults{{Path: "like", Got: fault.Quote(head.Like), Kind: fault.Unknown, Limit: "one of " + strings.Join(Starters(), ", ")}}
	}
	if err := (noun.Reader{}).ReadOver(base, strings.NewReader(string(text)), &g); err != nil {
		return Garment{}, nil, err
	}
	var starter Garment
	if err := noun.Read(strings.NewReader(string(base)), &starter); err != nil {
		return Garment{}, nil, err
	}
	return g, g.drop(starter), nil
}

// drop takes out of g what names anything of the starter that g has no longer.
func (g *Garment) drop(starter Garment) (dropped []string) {
	gone := func(kind string, before, now []string) func(string) bool {
		return func(name string) bool {
			if !slices.Contains(before, name) || slices.Contains(now, name) {
				return false
			}
			if what := kind + " " + name; !slices.Contains(dropped, what) {
				dropped = append(dropped, what)
			}
			return true
		}
	}
	piece := gone("piece", names(starter.Pieces), names(g.Pieces))
	edge := gone("edge", names(starter.Edges), names(g.Edges))
	work := gone("part", starter.work(), g.work())
	for i := range g.Seams {
		g.Seams[i].Value.Joins = without(g.Seams[i].Value.Joins, piece)
	}
	for i := range g.Hems {
		g.Hems[i].Value.On = without(g.Hems[i].Value.On, piece)
	}
	for i := range g.Edges {
		e := &g.Edges[i].Value
		e.On = without(e.On, piece)
		e.Crossed = slices.DeleteFunc(e.Crossed, func(x noun.Item[Crossing]) bool { return work(x.Name) })
		if work(e.Own) {
			e.Own = ""
		}
	}
	g.Pairs = slices.DeleteFunc(g.Pairs, func(p Pair) bool { return edge(p.Long) || edge(p.Short) })
	for i := range g.Order {
		g.Order[i].Sews = without(g.Order[i].Sews, work)
		g.Order[i].Check = without(g.Order[i].Check, edge)
	}
	g.Parts = slices.DeleteFunc(g.Parts, func(p noun.Item[Part]) bool { return piece(p.Value.On) || edge(p.Value.On) || work(p.Value.On) })
	return dropped
}

// work is the names of what is sewn: seams, hems and parts.
func (g Garment) work() []string { return slices.Concat(names(g.Seams), names(g.Hems), names(g.Parts)) }

func names[T any](m noun.Map[T]) []string {
	out := make([]string, len(m))
	for i, it := range m {
		out[i] = it.Name
	}
	return out
}

func without(list []string, gone func(string) bool) []string {
	return slices.DeleteFunc(slices.Clone(list), gone)
}
