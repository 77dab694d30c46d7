package ticket

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
)

// Sides says which sides of the cloth lie against each other.
type Sides uint8

// The sides. The zero value is for a step where no two layers are put together.
const (
	NoSides       Sides = iota
	RightTogether       // right sides together
	WrongTogether       // wrong sides together
	RightOnWrong        // right side of the upper on the wrong side of the under
	WrongOnRight        // wrong side of the upper on the right side of the under
)

// A Step is one thing to do at the machine, the iron or the table.
type Step struct {
	Do       string `json:"do,omitzero"`       // what to do: "Stitch the first pass"
	Together Sides  `json:"together,omitzero"` // which sides of the cloth are put together, if any
	At       Amount `json:"at,omitzero"`       // the guide: how far the needle, the fold or the mark is
	From     string `json:"from,omitzero"`     // from where: "the raw edge"
	Trim     Amount `json:"trim,omitzero"`     // what is left of the allowance after trimming; none if nothing is trimmed
	Press    string `json:"press,omitzero"`    // which way to press: "to the back"; empty if not pressed
	Note     string `json:"note,omitzero"`     // anything else
	Check    Check  `json:"check,omitzero"`    // what must measure what before the next step
}

// A Check is what must measure what before the next step.
type Check struct {
	What string `json:"what,omitzero"` // what to measure: "from seam line to raw edge"
	Want Amount `json:"want,omitzero"` // what it must measure; none if there is nothing to check
	Give Amount `json:"give,omitzero"` // how much either way is good enough; none if not stated
	Mend string `json:"mend,omitzero"` // what to do if it is out
}

// A Caution warns of what can hurt a person or spoil the work, and says to whom
// it defers.
type Caution struct {
	Text  string `json:"text,omitzero"`  // what can go wrong and how to avoid it
	Refer string `json:"refer,omitzero"` // the law, standard or practice that decides, if any
}

// A Sheet is what a Plan has to say beside its numbers. It holds amounts, not
// their text: [Sheet.Text] writes it.
type Sheet struct {
	Title    string        `json:"title,omitzero"`    // what the sheet is about
	Answer   []Line        `json:"answer,omitzero"`   // what was asked for, most wanted first; each label leads to its result, as in "cut each strip"
	Steps    []Step        `json:"steps,omitzero"`    // the work, in order
	Lines    []Line        `json:"lines,omitzero"`    // the working, line by line
	Assumed  []string      `json:"assumed,omitzero"`  // the fields that were filled with a default
	Cautions []Caution     `json:"cautions,omitzero"` // what can hurt or spoil
	Sources  []source.Cite `json:"sources,omitzero"`  // where the rules and figures come from
}

// Check works every line of the sheet again; see [Line.Check].
func (s Sheet) Check() error {
	for _, l := range s.Lines {
		if err := l.Check(); err != nil {
			return &fault.Fault{Path: l.Label, Got: l.Text(), Kind: ErrWorking}
		}
	}
	return nil
}

// CutCare is the caution for needles, shears and rotary cutters.
func CutCare() Caution {
	return Caution{
		Text:  "Needles, pins, shears and rotary cutters cut: keep fingers clear, put them away, count the pins.",
		Refer: "the maker's instructions and the workroom's own rules decide",
	}
}

// IronCare is the caution for the iron.
func IronCare() Caution {
	return Caution{
		Text:  "An iron burns and can set cloth alight: test on a scrap, start cool, never leave it face down.",
		Refer: "the cloth's care label decides (ISO 3758 symbols)",
	}
}

// Text is the whole sheet for people, 80 columns wide.
func (s Sheet) Text(in ...units.Notation) string { return writeSheet(s, in) }
