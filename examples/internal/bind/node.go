package bind

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strings"

	"example.com/clothyard/units/fault"
)

// Bounds on a text, so that no input takes time or memory out of proportion.
const (
	MaxBytes  = 1 << 20 // of one JSON text
	MaxDepth  = 24      // of nesting
	MaxNumber = 100     // bytes of one number with its unit
	MaxNodes  = 100_000 // values in one JSON text
	MaxFault  = 100     // faults reported for one text; the rest are counted
)

// A Node is a JSON value, its keys in the order given.
type Node struct {
	kind   kind
	text   string // of a string, a number or a literal
	keys   []string
	values []Node // of an object or an array
}

type kind uint8

const (
	stringNode kind = iota
	numberNode
	boolNode
	nullNode
	arrayNode
	objectNode
)

func (k kind) String() string {
	return [...]string{"text", "number", "true or false", "null", "list", "object"}[k]
}

// Text is a string node.
func Text(s string) Node { return Node{kind: stringNode, text: s} }

// Object is an empty object node.
func Object() Node { return Node{kind: objectNode} }

// Take removes a key of an object and gives its text; ok is false where the key
// is missing or its value is not a string.
func (n *Node) Take(key string) (text string, ok bool) {
	for i, k := range n.keys {
		if k == key && n.values[i].kind == stringNode {
			text = n.values[i].text
			n.keys = append(n.keys[:i:i], n.keys[i+1:]...)
			n.values = append(n.values[:i:i], n.values[i+1:]...)
			return text, true
		}
	}
	return "", false
}

// Put sets a key, given as a path such as strip.each, in an object. A value that
// starts as a JSON list or object is read as one. A key given twice, or one that
// runs through a value that is no object, is a fault.
func (n *Node) Put(path, value string) error {
	head, rest, nested := strings.Cut(path, ".")
	if head == "" || nested && rest == "" {
		return fault.Faults{{Path: path, Limit: "name=value", Kind: fault.Form}}
	}
	at := -1
	for i, k := range n.keys {
		if k == head {
			at = i
		}
	}
	if !nested {
		if at >= 0 {
			return fault.Faults{{Path: path, Got: value, Kind: fault.Twice}}
		}
		v := Text(value)
		if t := strings.TrimSpace(value); strings.HasPrefix(t, "[") || strings.HasPrefix(t, "{") {
			parsed, err := Parse([]byte(t))
			if err != nil {
				return fault.Under(path, err)
			}
			v = parsed
		}
		n.keys, n.values = append(n.keys, head), append(n.values, v)
		return nil
	}
	if at < 0 {
		at = len(n.keys)
		n.keys, n.values = append(n.keys, head), append(n.values, Object())
	}
	if n.values[at].kind != objectNode {
		return fault.Faults{{Path: path, Got: value, Kind: fault.Twice}}
	}
	return fault.Under(head, n.values[at].Put(rest, value)).OrNil()
}

// Parse reads one JSON value and nothing after it.
func Parse(text []byte) (Node, error) {
	if len(text) > MaxBytes {
		return Node{}, fault.Faults{{Got: fmt.Sprintf("%d bytes", len(text)), Limit: fmt.Sprintf("at most %d bytes", MaxBytes), Kind: fault.Range}}
	}
	d := decoder(text)
	left := MaxNodes
	n, err := parse(d, 0, MaxNodes, &left)
	if err == nil {
		if _, more := d.Token(); more != io.EOF {
			err = errors.New("more text after the end")
		}
	}
	if err != nil {
		return Node{}, broken(d, err)
	}
	return n, nil
}

// ParseAll reads JSON values one after another, as a file of one value a line or
// one value in all. It reads at most so many values, those in values counted; how
// long a text may be is for the caller to say.
func ParseAll(text []byte, most int) ([]Node, error) {
	d := decoder(text)
	left := most
	var all []Node
	for d.More() {
		n, err := parse(d, 0, most, &left)
		if err != nil {
			return nil, broken(d, err)
		}
		all = append(all, n)
	}
	if _, err := d.Token(); err != io.EOF { // a bracket too many is no more, and no end
		return nil, broken(d, err)
	}
	return all, nil
}

func decoder(text []byte) *json.Decoder {
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	return d
}

// broken is the fault of a text that cannot be read on.
func broken(d *json.Decoder, err error) error {
	if errors.Is(err, io.EOF) || errors.Is(err, io.ErrUnexpectedEOF) {
		err = errors.New("the text ends too early")
	}
	return fault.Faults{{Got: fmt.Sprintf("JSON at byte %d", d.InputOffset()), Kind: fault.Form, Limit: err.Error()}}
}

func parse(d *json.Decoder, depth, most int, left *int) (Node, error) {
	if depth > MaxDepth {
		return Node{}, fmt.Errorf("nesting of at most %d", MaxDepth)
	}
	if *left--; *left < 0 {
		return Node{}, fmt.Errorf("at most %d values", most)
	}
	t, err := d.Token()
	if err != nil {
		return Node{}, err
	}
	switch t := t.(type) {
	case string:
		return Text(t), nil
	case json.Number:
		return Node{kind: numberNode, text: t.String()}, nil
	case bool:
		return Node{kind: boolNode, text: fmt.Sprint(t)}, nil
	case json.Delim:
		n := Node{kind: arrayNode}
		if t == '{' {
			n.kind = objectNode
		}
		for d.More() {
			if n.kind == objectNode {
				k, err := d.Token()
				if err != nil {
					return Node{}, err
				}
				n.keys = append(n.keys, k.(string))
			}
			v, err := parse(d, depth+1, most, left)
			if err != nil {
				return Node{}, err
			}
			n.values = append(n.values, v)
		}
		_, err := d.Token()
		return n, err
	}
	return Node{kind: nullNode, text: "null"}, nil
}
