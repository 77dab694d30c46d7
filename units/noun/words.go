package noun

import (
	"reflect"
	"slices"
	"strings"
)

// A Field is one field of a Spec, as people are told of it.
type Field struct {
	Path  string // its path in JSON, as in takes[0].taken
	Takes string // what it takes: a length, a whole number, one of the kinds
	Means string // what it means, from the doc comment
	Zero  bool   // an explicit zero may be given
}

// Fields are the fields of the Spec, those of its parts with them.
func (e Entry) Fields() []Field { return e.fields(nil, "", e.spec, 0) }

func (e Entry) fields(out []Field, path string, t reflect.Type, depth int) []Field {
	if depth > MaxDepth {
		return out
	}
	for _, m := range members(t) {
		at, ft := path+m.key, m.field.Type
		f := Field{Path: at, Means: e.means(t, m.index), Zero: m.zero}
		for ft.Kind() == reflect.Slice && !isText(ft) && !isKeyed(ft) {
			at, ft = at+"[0]", ft.Elem()
		}
		if isKeyed(ft) {
			at, ft = at+".name", reflect.New(ft).Interface().(keyed).element()
		}
		f.Path, f.Takes = at, takes(ft)
		out = append(out, f)
		switch c, choice := reflect.New(ft).Interface().(Choice); {
		case choice:
			for _, kind := range c.Kinds() {
				out = e.fields(out, at+"("+kind+").", reflect.TypeOf(c.Begin(kind)).Elem(), depth+1)
			}
		case ft.Kind() == reflect.Struct && !isText(ft):
			out = e.fields(out, at+".", ft, depth+1)
		}
	}
	return out
}

func isKeyed(t reflect.Type) bool {
	return reflect.PointerTo(t).Implements(reflect.TypeFor[keyed]())
}

// takes is what a field of type t takes, in words.
func takes(t reflect.Type) string {
	v := reflect.New(t)
	if c, ok := v.Interface().(Choice); ok {
		return "an object, kind " + kindList(c)
	}
	if t.Kind() == reflect.Uint8 && isText(t) {
		return "one of " + strings.Join(texts(t), ", ")
	}
	if isText(t) {
		name := strings.ToLower(t.Name())
		name = strings.TrimPrefix(strings.TrimSuffix(name, "]"), "given[")
		if i := strings.LastIndexByte(name, '.'); i >= 0 {
			name = name[i+1:]
		}
		return article(name)
	}
	switch t.Kind() {
	case reflect.String:
		return "text"
	case reflect.Bool:
		return "true or false"
	case reflect.Int, reflect.Int64, reflect.Uint64:
		return "a whole number"
	}
	return "an object"
}

func article(name string) string {
	if strings.ContainsRune("aeiou", rune(name[0])) {
		return "an " + name
	}
	return "a " + name
}

// texts are the words of an enumeration.
func texts(t reflect.Type) []string {
	var out []string
	for k := uint64(1); k < 256; k++ {
		v := reflect.New(t).Elem()
		v.SetUint(k)
		text, err := v.Interface().(interface{ MarshalText() ([]byte, error) }).MarshalText()
		if err != nil || len(text) == 0 {
			break
		}
		out = append(out, string(text))
	}
	return out
}

// Means is what the noun is, from the first sentence of its doc comment.
func (e Entry) Means() string { return e.words(e.spec.String()) }

// means is the doc comment of a field.
func (e Entry) means(t reflect.Type, index []int) string {
	for _, i := range index[:len(index)-1] {
		t = t.Field(i).Type
	}
	return e.words(t.String() + "." + t.Field(index[len(index)-1]).Name)
}

// words is the line of words.txt that begins with a package, a type and, if need be,
// a field, as in gather.Strip.Edge.
func (e Entry) words(name string) string {
	for line := range strings.Lines(string(e.file("words.txt"))) {
		if key, words, ok := strings.Cut(strings.TrimSuffix(line, "\n"), "\t"); ok && key == name {
			return words
		}
	}
	return ""
}

// Structs are the types of struct that a Spec is made of, its own first.
func (e Entry) Structs() []reflect.Type {
	var out []reflect.Type
	var visit func(t reflect.Type)
	visit = func(t reflect.Type) {
		v := reflect.New(t).Interface()
		if c, ok := v.(Choice); ok {
			for _, kind := range c.Kinds() {
				visit(reflect.TypeOf(c.Begin(kind)).Elem())
			}
			return
		}
		if k, ok := v.(keyed); ok {
			visit(k.element())
			return
		}
		switch {
		case isText(t):
		case t.Kind() == reflect.Slice || t.Kind() == reflect.Array:
			visit(t.Elem())
		case t.Kind() == reflect.Struct && !slices.Contains(out, t):
			out = append(out, t)
			for i := range t.NumField() {
				if f := t.Field(i); f.IsExported() {
					visit(f.Type)
				}
			}
		}
	}
	visit(e.spec)
	return out
}
