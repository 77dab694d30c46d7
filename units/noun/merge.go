package noun

import (
	"bytes"
	"encoding/json"
	"io"
	"slices"
)

// A Patch is a JSON Merge Patch (RFC 7396): an object whose members replace those of
// another value, objects being merged member by member and null taking a member away.
// In JSON it is the patch itself.
type Patch []byte

// MarshalJSON is the patch, null where there is none.
func (p Patch) MarshalJSON() ([]byte, error) { return json.RawMessage(p).MarshalJSON() }

// UnmarshalJSON keeps the text of a patch, without blanks that mean nothing.
func (p *Patch) UnmarshalJSON(text []byte) error {
	var b bytes.Buffer
	if err := json.Compact(&b, text); err != nil {
		return err
	}
	*p = b.Bytes()
	return nil
}

// ReadOver reads a JSON Merge Patch, and then the base with the patch merged over it,
// as [Reader.Read] reads a value. Keys keep the order of the base; new ones follow. A
// fault has its place in the patch where it stands there.
func (r Reader) ReadOver(base []byte, in io.Reader, into any) error {
	text, all, err := r.nodes(in, 1)
	if err != nil {
		return err
	}
	return r.over(base, text, all[0], into)
}

// Over fills a value with the base, which is a value of the library, and the patch
// merged over it.
func (r Reader) Over(base any, patch Patch, into any) error {
	text, err := json.Marshal(base)
	if err != nil {
		return err
	}
	if patch == nil {
		patch = Patch("{}")
	}
	n, err := parseNode(patch)
	if err != nil {
		return err
	}
	return r.over(text, nil, n, into)
}

func (r Reader) over(base, text []byte, patch node, into any) error {
	under, err := r.parse(base, 1)
	if err != nil {
		return err
	}
	return r.fill(merge(under[0].placeless(), patch), text, into)
}

// placeless is n without its places, which are those of another text.
func (n node) placeless() node {
	n.at = 0
	n.values = slices.Clone(n.values)
	for i, v := range n.values {
		n.values[i] = v.placeless()
	}
	return n
}

// merge is the patch merged over a value. A key that stands twice in a patch stands
// twice in what comes of it, where it is found.
func merge(under, patch node) node {
	if patch.kind != objectNode {
		return patch
	}
	out := node{kind: objectNode, at: patch.at}
	if under.kind == objectNode {
		out.keys, out.values = slices.Clone(under.keys), slices.Clone(under.values)
	}
	for i, key := range patch.keys {
		k := slices.Index(out.keys, key)
		switch {
		case slices.Contains(patch.keys[:i], key), k < 0 && patch.values[i].kind != nullNode:
			out.keys, out.values = append(out.keys, key), append(out.values, merge(node{}, patch.values[i]))
		case k >= 0 && patch.values[i].kind == nullNode:
			out.keys, out.values = slices.Delete(out.keys, k, k+1), slices.Delete(out.values, k, k+1)
		case k >= 0:
			out.values[k] = merge(out.values[k], patch.values[i])
		}
	}
	return out
}

// append writes n as JSON.
func (n node) append(b []byte) []byte {
	quote := func(text string) []byte {
		t, _ := json.Marshal(text) // a text always marshals
		return t
	}
	switch n.kind {
	case objectNode, arrayNode:
		brackets := "[]"
		if n.kind == objectNode {
			brackets = "{}"
		}
		b = append(b, brackets[0])
		for i, v := range n.values {
			if i > 0 {
				b = append(b, ',')
			}
			if n.kind == objectNode {
				b = append(append(b, quote(n.keys[i])...), ':')
			}
			b = v.append(b)
		}
		return append(b, brackets[1])
	case stringNode:
		return append(b, quote(n.text)...)
	}
	return append(b, n.text...)
}
