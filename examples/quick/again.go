package main

import (
	"encoding/json"
	"slices"

	"example.com/clothyard/examples/internal/bind"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// again is what a line asks, and the keys beside it where the line is an answer: its
// spec then asks the sum again.
func again(text []byte) (asked []byte, keys []string) {
	var line noun.Map[json.RawMessage]
	if json.Unmarshal(text, &line) != nil {
		return text, nil
	}
	sum, named := line.Get("sum")
	spec, _ := line.Get("spec")
	var fields noun.Map[json.RawMessage]
	if !named || json.Unmarshal(spec, &fields) != nil {
		return text, nil
	}
	asked, err := json.Marshal(append(noun.Map[json.RawMessage]{{Name: "sum", Value: sum}}, fields...))
	if err != nil {
		return text, nil
	}
	for _, it := range line {
		keys = append(keys, it.Name)
	}
	return asked, keys
}

// part finds the keys that are no part of an answer, or stand twice.
func part(keys []string, plan noun.Plan) error {
	body, err := bind.AppendFields([]byte("{"), plan)
	if err != nil {
		return err
	}
	var answer noun.Map[json.RawMessage]
	if err := json.Unmarshal(append(body, '}'), &answer); err != nil {
		return err
	}
	var a fault.Audit
	for i, key := range keys {
		_, known := answer.Get(key)
		switch {
		case slices.Contains(keys[:i], key):
			a.Fault(key, "", "each key once", fault.Twice)
		case key != "sum" && key != "line" && !known:
			a.Fault(key, "", "a part of the answer; fields stand in spec", fault.Unknown)
		}
	}
	return a.Err()
}
