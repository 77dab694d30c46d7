// Package source is the one list of sources, and says how a figure is known: read
// in a source, recalled from it, or common practice of the trade. A table row
// cites a source by its id; authors, titles and publishers stand in this list and
// nowhere else.
package source

import (
	"iter"
	"strings"

	"example.com/clothyard/units/name"
)

// Known says how a figure is known.
type Known uint8

// How a figure is known. The zero value claims nothing.
const (
	Unknown  Known = iota
	Read           // seen in the source named
	Memory         // recalled from the source named, not opened
	Practice       // common practice of the trade, no source
	Computed       // worked out from exact definitions
)

var knowns = name.Of[Known]("known", "unknown", "read", "memory", "common practice", "computed")

// String is read, memory, common practice or computed.
func (k Known) String() string { return knowns.String(k) }

// MarshalText is the name of k.
func (k Known) MarshalText() ([]byte, error) { return knowns.Marshal(k) }

// UnmarshalText reads the name of a Known.
func (k *Known) UnmarshalText(text []byte) error { return knowns.Unmarshal(k, text) }

// A Cite names a source, the place in it, and how the figure is known.
type Cite struct {
	For   string `json:"for,omitzero"`   // what is taken from it
	ID    string `json:"id,omitzero"`    // the source's id, see [Lookup]; empty for common practice
	Place string `json:"place,omitzero"` // page, section or row
	Known Known  `json:"known,omitzero"` // how the figure is known
}

// Practise is the citation of a rule that is common practice of the trade.
func Practise(what string) Cite { return Cite{For: what, Known: Practice} }

// Text is the citation for people, the source written out, but for the address at which
// it was read: nobody types one at the bench. [Source.String] has it.
func (c Cite) Text() string {
	t := c.For + ": "
	if s, ok := Lookup(c.ID); ok {
		t += s.offline().String()
		if c.Place != "" {
			t += ", " + c.Place
		}
		return t + " (" + c.Known.String() + ")"
	}
	return t + c.Known.String()
}

// A Source is a publication. Names of authors, titles and publishers stand in
// this list and nowhere else.
type Source struct {
	ID        string `json:"id,omitzero"`        // a neutral name, as in needlework-encyclopedia
	Author    string `json:"author,omitzero"`    // author or body, if known
	Title     string `json:"title,omitzero"`     // title of the book, leaflet or page
	Year      string `json:"year,omitzero"`      // year or edition, if known
	Publisher string `json:"publisher,omitzero"` // publisher, or the address at which it was read
	Rank      Rank   `json:"rank,omitzero"`      // authority, by which a default is chosen
}

// Rank orders sources by authority, the highest first.
type Rank uint8

// The ranks.
const (
	Law       Rank = iota + 1 // law and published standards
	Extension                 // government and university extension services, public schools of the trade
	Handbook                  // printed handbooks and school books
	Paper                     // trade papers and magazines
	Other                     // everything else
)

// String is the source in one line: author, title, year, publisher.
func (s Source) String() string {
	t := ""
	for _, part := range [...]string{s.Author, s.Title, s.Year, s.Publisher} {
		if part == "" {
			continue
		}
		if t != "" {
			t += ", "
		}
		t += part
	}
	return t
}

// isAddress tells an address from the name of a publisher by a full stop within a word.
func isAddress(s string) bool {
	for i := 1; i+1 < len(s); i++ {
		if s[i] == '.' && s[i-1] != ' ' && 'a' <= s[i+1] && s[i+1] <= 'z' {
			return true
		}
	}
	return false
}

// offline is s without the address at which it was read.
func (s Source) offline() Source {
	var names []string
	for part := range strings.SplitSeq(s.Publisher, ", ") {
		if !isAddress(part) {
			names = append(names, part)
		}
	}
	s.Publisher = strings.Join(names, ", ")
	return s
}

// Lookup finds a source by its id.
func Lookup(id string) (Source, bool) {
	for s := range Sources() {
		if s.ID == id {
			return s, true
		}
	}
	return Source{}, false
}

// Sources yields every source, in the order of the list.
func Sources() iter.Seq[Source] {
	return func(yield func(Source) bool) {
		for _, part := range sourceTables() {
			for _, s := range part {
				if !yield(s) {
					return
				}
			}
		}
	}
}
