package noun

import (
	"encoding/json"
	"reflect"
)

// Schema is the JSON Schema (draft 2020-12) of a noun's Spec, so that an editor
// can complete a file and another language can check one. It cannot say all that
// Read and Plan check: which numbers are right is left to them.
func Schema(e Entry) ([]byte, error) {
	s := e.schema(e.spec, 0)
	s["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	s["title"] = e.name
	return json.MarshalIndent(s, "", "\t")
}

type object = map[string]any

func (e Entry) schema(t reflect.Type, depth int) object {
	if depth > MaxDepth {
		return object{}
	}
	v := reflect.New(t).Interface()
	if c, ok := v.(Choice); ok {
		var all []object
		for _, kind := range c.Kinds() {
			s := e.schema(reflect.TypeOf(c.Begin(kind)).Elem(), depth+1)
			s["properties"].(object)["kind"] = object{"const": kind}
			s["required"] = []string{"kind"}
			all = append(all, s)
		}
		return object{"oneOf": all}
	}
	if k, ok := v.(keyed); ok {
		return object{"type": "object", "additionalProperties": e.schema(k.element(), depth+1)}
	}
	switch {
	case t.Kind() == reflect.Uint8 && isText(t):
		return object{"enum": texts(t)}
	case isText(t):
		return object{"type": []string{"string", "number"}, "description": takes(t)}
	}
	switch t.Kind() {
	case reflect.Struct:
		properties := object{}
		for _, m := range members(t) {
			p := e.schema(m.field.Type, depth+1)
			if words := e.means(t, m.index); words != "" {
				p["description"] = words
			}
			properties[m.key] = p
		}
		return object{"type": "object", "properties": properties, "additionalProperties": false}
	case reflect.Slice:
		return object{"type": "array", "items": e.schema(t.Elem(), depth+1)}
	case reflect.String:
		return object{"type": "string"}
	case reflect.Bool:
		return object{"type": "boolean"}
	}
	return object{"type": "integer"}
}
