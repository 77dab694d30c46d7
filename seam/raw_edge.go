package seam

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/name"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Finish is how the raw edges of an open seam are kept from fraying. None of them
// changes what a seam takes. Zero is "not given": the edges stay as cut.
type Finish uint8

// The finishes.
const (
	Overcast  Finish = iota + 1 // stitched over the edge, by hand or on an overedge machine
	Zigzagged                   // a zigzag at the edge, the rest trimmed off
	Pinked                      // a row beside the edge, the edge cut with pinking shears
)

var finishes = name.Of[Finish]("finish", "none", "overcast", "zigzagged", "pinked")

// String is the finish's name, as in overcast.
func (f Finish) String() string { return finishes.String(f) }

// MarshalText is the finish's name, empty for zero.
func (f Finish) MarshalText() ([]byte, error) { return finishes.Marshal(f) }

// UnmarshalText reads a finish's name.
func (f *Finish) UnmarshalText(text []byte) error { return finishes.Unmarshal(f, text) }

// Finishes yields every finish.
func Finishes() iter.Seq[Finish] { return finishes.All() }

// raw reports whether cut edges stay as they are under a finish: pinking only slows the
// fraying.
func (f Finish) raw() bool { return f == 0 || f == Pinked }

// end is how a drawing ends an edge so finished.
func (f Finish) end() section.End {
	if f.raw() {
		return section.Raw
	}
	return section.Neat
}

// drawn is the finish as the end of the title of a drawing.
func (f Finish) drawn() string {
	if f == 0 {
		return ""
	}
	return ", edges " + f.String()
}

// pinked is how far the row beside a pinked edge lies from it.
func (a Allowance) pinked(trim units.Length) units.Length {
	return pinkedRow.on(a.Tape).Min(trim.DivInt(2))
}

// needs adds the room beside a pinked edge.
func (f Finish) needs(a Allowance, trim units.Length, needs ...need) []need {
	if f == Pinked {
		needs = append(needs, need{"trim", trim, "from the pinked edge to the row beside it", a.pinked(trim), 3})
	}
	return needs
}

// draw draws the row beside a pinked edge at x, in the ply at a height in half plies.
func (f Finish) draw(k *sketch, trim units.Length, name string, x units.Length, height int64, ply string) {
	if f != Pinked {
		return
	}
	from := k.p.Spec.Plies().pinked(trim)
	row := x.Sub(from)
	if x.Sign() < 0 {
		row = x.Add(from)
	}
	k.row("beside the "+name, row, height+1, height-1, ply)
	k.mark("row to pinked "+name, section.Above, row, x, height, from)
}

// finish is the step that keeps raw edges from fraying, and the caution where nothing
// does.
func (p Plan) finish(sh *ticket.Sheet, f Finish, trim units.Length) {
	s := p.Spec.Plies()
	switch f {
	case Overcast:
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Overcast the raw edges", Note: "before pressing open each edge by itself; both together where they lie to one side"})
		sh.Sources = append(sh.Sources, source.Practise("edges overcast"))
	case Zigzagged:
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Zigzag beside the raw edges and trim to the zigzag", Note: "trim no further than the plan allows"})
		sh.Sources = append(sh.Sources, source.Practise("edges zigzagged"))
	case Pinked:
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Stitch beside each raw edge, then pink the edge", At: ticket.Long(s.pinked(trim)), From: "the raw edge"})
		sh.Sources = append(sh.Sources, source.Cite{For: "a row beside the pinked edge", ID: "seam-cards", Known: source.Read})
	}
	if s.Fraying && p.Raw {
		name := "a plain"
		if _, plain := p.Spec.Seam.(Plain); !plain {
			name = "this"
		}
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "The raw edges of " + name + " seam stay exposed, and this cloth frays: trim and overcast them, bind them, or choose an enclosed seam.",
			Refer: "common practice of the trade",
		})
	}
}
