package noun

import (
	"bytes"
	"cmp"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"

	"example.com/clothyard/units/fault"
)

// Bounds on a text, so that no input takes time or memory out of proportion.
const (
	MaxBytes  = 1 << 20 // of one JSON text
	MaxDepth  = 24      // of nesting
	MaxNumber = 100     // bytes of one number with its unit
	MaxNodes  = 100_000 // values in one JSON text
)

// A node is a JSON value, its keys in the order given.
type node struct {
	kind   kind
	text   string // of a string, a number or a literal
	keys   []string
	values []node // of an object or an array
	at     int    // where it ends in the text, in bytes from 1; 0 where it stands in none
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

// shown is the value as a fault shows it.
func (n node) shown() string {
	switch n.kind {
	case arrayNode, objectNode:
		return "a " + n.kind.String()
	case stringNode:
		return fault.Quote(n.text)
	}
	return n.text
}

// take removes a key of an object and gives its text.
func (n *node) take(key string) (text string, ok bool) {
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

// parseNode reads one JSON value and nothing after it.
func parseNode(text []byte) (node, error) {
	all, err := Reader{}.parse(text, 1)
	if err != nil {
		return node{}, err
	}
	return all[0], nil
}

// parse reads so many JSON values and nothing after them; as many as there are
// where count is negative.
func (r Reader) parse(text []byte, count int) (all []node, err error) {
	if most := r.bytes(); len(text) > most {
		return nil, fault.Faults{{Got: "more than " + strconv.Itoa(most) + " bytes", Kind: fault.Range, Limit: fmt.Sprintf("at most %d bytes", most)}}
	}
	d := json.NewDecoder(bytes.NewReader(text))
	d.UseNumber()
	left := cmp.Or(r.MaxNodes, MaxNodes)
	for err == nil && (count > len(all) || count < 0 && d.More()) {
		var n node
		n, err = readNode(d, 0, &left)
		all = append(all, n)
	}
	if err == nil {
		if _, more := d.Token(); more != io.EOF { // a bracket too many is no end
			err = errors.New("nothing after the end")
		}
	}
	if err != nil {
		want := strings.TrimPrefix(err.Error(), "json: ")
		switch {
		case left < 0:
			want = fmt.Sprintf("at most %d values", cmp.Or(r.MaxNodes, MaxNodes))
		case errors.Is(err, io.EOF) || errors.Is(err, io.ErrUnexpectedEOF):
			want = "more: the text ends too early"
		}
		return nil, fault.Faults{{At: place(text, int(d.InputOffset()), 0), Got: "JSON", Kind: fault.Form, Limit: want}}
	}
	return all, nil
}

// bytes is the bound on a text.
func (r Reader) bytes() int { return cmp.Or(r.MaxBytes, MaxBytes) }

func readNode(d *json.Decoder, depth int, left *int) (node, error) {
	if depth > MaxDepth {
		return node{}, fmt.Errorf("nesting of at most %d", MaxDepth)
	}
	if *left--; *left < 0 {
		return node{}, errors.New("fewer values")
	}
	t, err := d.Token()
	if err != nil {
		return node{}, err
	}
	n := node{kind: nullNode, text: "null", at: int(d.InputOffset())}
	switch t := t.(type) {
	case string:
		n.kind, n.text = stringNode, t
	case json.Number:
		n.kind, n.text = numberNode, t.String()
	case bool:
		n.kind, n.text = boolNode, strconv.FormatBool(t)
	case json.Delim:
		n.kind, n.text = arrayNode, ""
		if t == '{' {
			n.kind = objectNode
		}
		for d.More() {
			if n.kind == objectNode {
				k, err := d.Token()
				if err != nil {
					return node{}, err
				}
				n.keys = append(n.keys, k.(string))
			}
			v, err := readNode(d, depth+1, left)
			if err != nil {
				return node{}, err
			}
			n.values = append(n.values, v)
		}
		if _, err := d.Token(); err != nil {
			return node{}, err
		}
	}
	return n, nil
}

// place is the byte of a text as people count: line 3, column 14. The first line
// has the number before + 1.
func place(text []byte, at, before int) string {
	head := text[:min(at, len(text))]
	line := 1 + bytes.Count(head, []byte{'\n'})
	column := len(head) - (bytes.LastIndexByte(head, '\n') + 1)
	return fmt.Sprintf("line %d, column %d", before+line, max(1, column))
}
