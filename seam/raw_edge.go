package seam

import (
	"fmt"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Finish is how the raw edges of an open seam are kept from fraying. The zero
// value, [NoFinish], leaves them as cut. None of them changes what a seam takes.
type Finish uint8

// The finishes.
const (
	NoFinish  Finish = iota // the edges stay as cut
	Overcast                // stitched over the edge, by hand or on an overedge machine
	Zigzagged               // a zigzag at the edge, the rest trimmed off
	Pinked                  // a row beside the edge, the edge cut with pinking shears
)

var finishNames = [...]string{NoFinish: "none", Overcast: "overcast", Zigzagged: "zigzagged", Pinked: "pinked"}

// String is the finish's name, as in overcast; none for [NoFinish].
func (f Finish) String() string {
	if int(f) < len(finishNames) {
		return finishNames[f]
	}
	return fmt.Sprintf("Finish(%d)", uint8(f))
}

// Valid reports whether f is one of the finishes, [NoFinish] excepted.
func (f Finish) Valid() bool { return f != NoFinish && int(f) < len(finishNames) }

// MarshalText is the finish's name, empty for [NoFinish]. A value that is no
// finish is a fault.
func (f Finish) MarshalText() ([]byte, error) {
	switch {
	case f == NoFinish:
		return nil, nil
	case !f.Valid():
		return nil, unknownFinish(f.String())
	}
	return []byte(finishNames[f]), nil
}

// UnmarshalText takes a finish's name. Empty text is [NoFinish].
func (f *Finish) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*f = NoFinish
		return nil
	}
	for one := range Finishes {
		if finishNames[one] == string(text) {
			*f = one
			return nil
		}
	}
	return unknownFinish(fmt.Sprintf("%q", text[:min(len(text), fault.MaxName)]))
}

func unknownFinish(got string) *fault.Fault {
	return &fault.Fault{Path: "finish", Got: got, Limit: finishList(), Kind: fault.Unknown}
}

func finishList() string { return "one of " + strings.Join(finishNames[Overcast:], ", ") }

// Finishes yields every finish, [NoFinish] excepted.
func Finishes(yield func(Finish) bool) {
	for f := Overcast; f.Valid(); f++ {
		if !yield(f) {
			return
		}
	}
}

// finish is the step that keeps raw edges from fraying, and the caution where
// nothing does.
func (p Plan) finish(sh *ticket.Sheet) {
	s := p.Spec
	switch s.Finish {
	case Overcast:
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Overcast the raw edges", Note: "before pressing open each edge by itself; both together where they lie to one side"})
		sh.Sources = append(sh.Sources, source.Practise("edges overcast"))
	case Zigzagged:
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Zigzag beside the raw edges and trim to the zigzag", Note: "trim no further than the plan allows"})
		sh.Sources = append(sh.Sources, source.Practise("edges zigzagged"))
	case Pinked:
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Stitch beside each raw edge, then pink the edge", At: ticket.Long(s.pinked()), From: "the raw edge"})
		sh.Sources = append(sh.Sources, source.Cite{For: "a row beside the pinked edge", ID: "seam-cards", Known: source.Read})
	}
	if s.Fraying && p.Raw {
		name := "a plain"
		if s.Kind != Plain {
			name = "this"
		}
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "The raw edges of " + name + " seam stay exposed, and this cloth frays: trim and overcast them, bind them, or choose an enclosed seam.",
			Refer: "common practice of the trade",
		})
	}
}

// pinked is how far the row beside a pinked edge lies from it.
func (s Spec) pinked() units.Length { return pinkedRow().Min(s.Trim.DivInt(2)) }

// rawEdges reports whether cut edges stay as they are under a finish: pinking
// only slows the fraying.
func (s Spec) rawEdges() bool { return s.Finish == NoFinish || s.Finish == Pinked }
