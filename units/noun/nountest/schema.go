package nountest

import (
	"encoding/json"
	"fmt"
	"slices"
	"testing"

	"example.com/clothyard/units/noun"
)

// A schema is as much of JSON Schema as package noun writes.
type schema struct {
	Type       any               `json:"type"`
	Properties map[string]schema `json:"properties"`
	Additional any               `json:"additionalProperties"`
	Items      *schema           `json:"items"`
	Enum       []string          `json:"enum"`
	Const      string            `json:"const"`
	OneOf      []schema          `json:"oneOf"`
	Required   []string          `json:"required"`
}

func readSchema(t *testing.T, e noun.Entry) schema {
	t.Helper()
	text, err := noun.Schema(e)
	if err != nil {
		t.Fatal(err)
	}
	var s schema
	if err := json.Unmarshal(text, &s); err != nil {
		t.Fatal(err)
	}
	return s
}

// refuses says why v is not what s describes; it is empty where v is.
func (s schema) refuses(v any) string {
	switch {
	case len(s.OneOf) > 0:
		fits := 0
		for _, one := range s.OneOf {
			if one.refuses(v) == "" {
				fits++
			}
		}
		if fits != 1 {
			return fmt.Sprintf("%v is %d of the kinds", v, fits)
		}
		return ""
	case s.Const != "":
		if v != s.Const {
			return fmt.Sprintf("%v is not %s", v, s.Const)
		}
		return ""
	case len(s.Enum) > 0:
		if word, ok := v.(string); !ok || !slices.Contains(s.Enum, word) {
			return fmt.Sprintf("%v is none of %v", v, s.Enum)
		}
		return ""
	}
	if !typed(s.Type, v) {
		return fmt.Sprintf("%v is no %v", v, s.Type)
	}
	switch v := v.(type) {
	case map[string]any:
		for key, below := range v {
			p, known := s.Properties[key]
			if other, any := s.Additional.(map[string]any); !known && any {
				text, _ := json.Marshal(other) // it was read from JSON
				known = json.Unmarshal(text, &p) == nil
			}
			if !known {
				return key + " is not known"
			}
			if why := p.refuses(below); why != "" {
				return key + ": " + why
			}
		}
		for _, key := range s.Required {
			if _, ok := v[key]; !ok {
				return key + " is missing"
			}
		}
	case []any:
		for _, below := range v {
			if s.Items == nil {
				return "items of no kind"
			}
			if why := s.Items.refuses(below); why != "" {
				return why
			}
		}
	}
	return ""
}

// typed reports whether v is of the type, or of one of the types, that want names.
func typed(want, v any) bool {
	if several, ok := want.([]any); ok {
		return slices.ContainsFunc(several, func(one any) bool { return typed(one, v) })
	}
	switch v := v.(type) {
	case string:
		return want == "string"
	case bool:
		return want == "boolean"
	case json.Number:
		_, err := v.Int64()
		return want == "number" || want == "integer" && err == nil
	case []any:
		return want == "array"
	case map[string]any:
		return want == "object"
	}
	return false
}
