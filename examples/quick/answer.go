package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"regexp"
	"strings"

	"example.com/clothyard/examples/internal/console"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
)

// answer is an answer as it is written: in JSON the plan with the name of the sum
// before it, else its sheet, or all its figures.
func (d *desk) answer(e noun.Entry, plan noun.Plan, line int) ([]byte, error) {
	if d.asJSON {
		text, err := json.Marshal(plan)
		if err != nil {
			return nil, err
		}
		head := fmt.Appendf(nil, `{"sum":%q`, e.Name())
		if line > 0 {
			head = fmt.Appendf(head, `,"line":%d`, line)
		}
		if len(text) > len("{}") {
			head = append(head, ',')
		}
		return fmt.Appendf(head, "%s\n", fault.VisibleJSON(text[1:])), nil
	}
	var b bytes.Buffer
	if line > 0 {
		fmt.Fprintf(&b, "line %d: %s\n", line, e.Name())
	}
	if d.all {
		figures, err := figures(plan)
		if err != nil {
			return nil, err
		}
		for _, f := range figures {
			b.WriteString(ticket.Wrap(f.path+" = ", "     ", f.text))
		}
	} else {
		b.WriteString(plan.Sheet().Text(d.notation(plan)...))
	}
	if line > 0 {
		b.WriteByte('\n')
	}
	return b.Bytes(), nil
}

// notation is how the lengths of a plan are written: as the flag says, or by the tape on
// which the sum was asked.
func (d *desk) notation(plan noun.Plan) []units.Notation {
	var tape units.Tape
	if spec := reflect.Indirect(reflect.ValueOf(plan)).FieldByName("Spec"); spec.IsValid() {
		held := reflect.New(spec.Type())
		held.Elem().Set(spec)
		if c, ok := held.Interface().(noun.Choice); ok {
			_, chosen := c.Chosen()
			held = reflect.ValueOf(chosen)
		}
		tape = noun.Tape(reflect.Indirect(held).Interface())
	}
	notation, _ := console.Notations(d.units, tape)
	return notation
}

// A figure is one value of a plan, under its path.
type figure struct{ path, text string }

// figures are the values of a plan, those of its Spec apart, as its JSON has them.
func figures(plan noun.Plan) ([]figure, error) {
	text, err := json.Marshal(plan)
	if err != nil {
		return nil, err
	}
	var all []figure
	err = flatten("", text, func(path, text string) {
		if path != "spec" && !strings.HasPrefix(path, "spec.") {
			all = append(all, figure{path, text})
		}
	})
	return all, err
}

// flatten visits the values of a JSON text that are no objects or lists, in order.
func flatten(path string, text json.RawMessage, visit func(path, text string)) error {
	switch text[0] {
	case '{':
		var object noun.Map[json.RawMessage]
		if err := json.Unmarshal(text, &object); err != nil {
			return err
		}
		for _, it := range object {
			if err := flatten(fault.Join(path, it.Name), it.Value, visit); err != nil {
				return err
			}
		}
	case '[':
		var list []json.RawMessage
		if err := json.Unmarshal(text, &list); err != nil {
			return err
		}
		for i, value := range list {
			if err := flatten(fmt.Sprintf("%s[%d]", path, i), value, visit); err != nil {
				return err
			}
		}
	case '"':
		var word string
		if err := json.Unmarshal(text, &word); err != nil {
			return err
		}
		visit(path, word)
	default:
		visit(path, string(text))
	}
	return nil
}

// complaint is what is wrong, as it is written: one object in JSON, else a fault a
// line.
func (d *desk) complaint(name string, line int, err error) []byte {
	var faults fault.Faults
	if !errors.As(fault.Most(err), &faults) {
		faults = fault.Faults{{Kind: fault.KindOf(err)}}
	}
	if d.asJSON {
		text, err := json.Marshal(struct {
			Sum    string       `json:"sum,omitzero"`
			Line   int          `json:"line,omitzero"`
			Faults fault.Faults `json:"faults"`
		}{name, line, faults})
		if err != nil {
			text = nil // faults are texts, which always marshal
		}
		return append(fault.VisibleJSON(text), '\n')
	}
	prefix := "quick: "
	if name != "" {
		prefix += name + ": "
	}
	if line > 0 {
		prefix = fmt.Sprintf("line %d: ", line)
	}
	var b []byte
	for _, f := range faults {
		b = fmt.Appendln(b, prefix+f.Error())
		if f.Kind == fault.Form && !d.reader.Parser.DecimalComma && comma.MatchString(f.Got) {
			b = fmt.Appendln(b, prefix+"-comma takes 1,5 for 1.5")
		}
	}
	return b
}

// comma is a comma between two digits.
var comma = regexp.MustCompile(`\d,\d`)
