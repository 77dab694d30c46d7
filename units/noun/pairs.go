package noun

import (
	"strings"

	"example.com/clothyard/units/fault"
)

// pairNode makes an object of pairs name=value, where a name may be a path such
// as strip.each. A value that starts as a JSON list or object is read as one.
func pairNode(pairs []string) (node, error) {
	n := node{kind: objectNode}
	var all fault.Faults
	for _, pair := range pairs {
		name, value, ok := strings.Cut(pair, "=")
		if !ok {
			all = append(all, &fault.Fault{Got: fault.Quote(pair), Kind: fault.Form, Limit: "name=value"})
			continue
		}
		all = append(all, fault.Under("", n.put(strings.Trim(name, " "), strings.Trim(value, " ")))...)
	}
	return n, all.OrNil()
}

// put sets a key, given as a path, in an object. A key given twice, or one that
// runs through a value that is no object, is a fault.
func (n *node) put(path, value string) error {
	head, rest, nested := strings.Cut(path, ".")
	if head == "" || nested && rest == "" {
		return fault.Faults{{Path: path, Kind: fault.Form, Limit: "name=value"}}
	}
	i := 0
	for i < len(n.keys) && n.keys[i] != head {
		i++
	}
	found := i < len(n.keys)
	switch {
	case found && (!nested || n.values[i].kind != objectNode):
		return fault.Faults{{Path: path, Got: fault.Quote(value), Kind: fault.Twice}}
	case found:
		return fault.Under(head, n.values[i].put(rest, value)).OrNil()
	}
	v := node{text: value}
	switch {
	case nested:
		v = node{kind: objectNode}
		if err := v.put(rest, value); err != nil {
			return fault.Under(head, err)
		}
	case strings.HasPrefix(value, "[") || strings.HasPrefix(value, "{"):
		parsed, err := parseNode([]byte(value))
		if err != nil {
			return fault.Under(path, err)
		}
		v = parsed.unplaced()
	}
	n.keys, n.values = append(n.keys, head), append(n.values, v)
	return nil
}

// unplaced is n without its places, which are those of another text.
func (n node) unplaced() node {
	n.at = 0
	for i, v := range n.values {
		n.values[i] = v.unplaced()
	}
	return n
}
