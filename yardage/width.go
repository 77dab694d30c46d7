package yardage

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Trust says which of the two figures for another width to go by until the
// pieces are laid out.
type Trust uint8

// The figures. The zero Trust is none, and no plan has it.
const (
	NoTrust Trust = iota
	Chart         // the printed chart has the row and both columns
	ByArea        // the chart has no such cell: area, which is an estimate only
)

var trustNames = [...]string{NoTrust: "", Chart: "chart", ByArea: "area"}

// Trusts yields every Trust, NoTrust excepted.
func Trusts(yield func(Trust) bool) {
	for t := Chart; t <= ByArea && yield(t); t++ {
	}
}

// String is the name of t, empty for NoTrust.
func (t Trust) String() string {
	if int(t) < len(trustNames) {
		return trustNames[t]
	}
	return "unknown"
}

// MarshalText is the name of t.
func (t Trust) MarshalText() ([]byte, error) { return []byte(t.String()), nil }

// UnmarshalText takes the name of a Trust; empty text is NoTrust.
func (t *Trust) UnmarshalText(text []byte) error {
	for i, name := range trustNames {
		if name == string(text) {
			*t = Trust(i)
			return nil
		}
	}
	return unknownText(string(text), "chart or area")
}

// A Width is a length asked for on cloth of one width, to be bought on another.
type Width struct {
	Asked units.Length `json:"asked,omitzero"` // the length asked, as on the envelope
	From  units.Length `json:"from,omitzero"`  // the width of cloth it is asked on
	To    units.Length `json:"to,omitzero"`    // the width of the cloth to be bought
	// Nap adds the chart's own 1/4 yd, printed for one-way cloth, sleeves cut in
	// one with the body, or a large difference of width (how large is not printed).
	Nap bool `json:"nap,omitzero"`
}

// A WidthPlan sets the printed chart and the area side by side. Neither proves
// that the pieces fit: only a lay does.
type WidthPlan struct {
	Spec      Width        `json:"spec,omitzero"`      // as given
	Assumed   []string     `json:"assumed,omitzero"`   // always empty
	ByArea    units.Length `json:"byArea,omitzero"`    // Asked x From / To, exact; an estimate, not a bound
	HasGrid   bool         `json:"hasGrid,omitzero"`   // the chart has the row and both columns
	GridRow   int          `json:"gridRow,omitzero"`   // the row of the chart, counted from 1; zero without one
	ByGrid    units.Length `json:"byGrid,omitzero"`    // the printed cell; zero without one
	GridKnown source.Known `json:"gridKnown,omitzero"` // Memory where either column, or how it was found, is from memory
	Added     units.Length `json:"added,omitzero"`     // the chart's allowance where Nap is set
	Trusted   Trust        `json:"trusted,omitzero"`   // which of the two to go by
	Guide     units.Length `json:"guide,omitzero"`     // the trusted figure and Added
}

// Plan works out both figures.
func (s Width) Plan() (WidthPlan, error) {
	var a fault.Audit
	a.Need("asked", s.Asked)
	a.Need("from", s.From)
	a.Need("to", s.To)
	if a.Failed() {
		return WidthPlan{}, a.Err()
	}
	p := WidthPlan{Spec: s, ByArea: s.Asked.Times(s.From).Over(s.To)}
	p.Trusted, p.Guide = ByArea, p.ByArea
	if from, to, row, ok := gridFind(s.Asked, s.From, s.To); ok {
		p.HasGrid, p.GridRow, p.ByGrid = true, row+1, gridLength(row, to.column)
		p.GridKnown = source.Read
		if from.known == source.Memory || to.known == source.Memory ||
			gridKnown(row, from.column) == source.Memory || gridKnown(row, to.column) == source.Memory {
			p.GridKnown = source.Memory
		}
		p.Trusted, p.Guide = Chart, p.ByGrid
	}
	if s.Nap {
		p.Added = gridAdded()
		p.Guide = p.Guide.Add(p.Added)
	}
	return p, nil
}

// Sheet is both figures and how to prove one of them.
func (p WidthPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sh := ticket.Sheet{Title: "The same garment on another width"}
	sh.Lines = make([]ticket.Line, 0, 3)
	sh.Lines = append(sh.Lines, line("by area", ticket.Long(p.ByArea), long(s.Asked, "asked"), byLong(s.From, "width asked on"), overLong(s.To, "width to be bought")))
	base := p.ByArea
	if p.HasGrid {
		sh.Lines = append(sh.Lines, line("by the printed chart", ticket.Long(p.ByGrid)))
		base = p.ByGrid
	}
	if s.Nap {
		sh.Lines = append(sh.Lines, line("with the chart's allowance", ticket.Long(p.Guide), long(base, p.Trusted.String()), long(p.Added, "allowance")))
	}
	sh.Steps = []ticket.Step{{
		Do: "Lay the pattern pieces between two tapes set as far apart as the new width", At: ticket.Long(s.To), From: "selvedge to selvedge, less the selvedges themselves",
		Note:  "grain arrows along the tapes; one way up if the cloth has nap",
		Check: ticket.Check{What: "length the pieces take, at most", Want: ticket.Long(p.Guide), Mend: "if they take more, buy what the lay takes, not what the figure says"},
	}}
	sh.Cautions = make([]ticket.Caution, 0, 4)
	sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "Area does not say whether the pieces fit: a piece wider than the cloth fits at no length.", Refer: "a lay decides"})
	switch {
	case !p.HasGrid:
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The chart has no such cell and is not extended: only the area figure is left.", Refer: "a lay decides"})
	case p.ByGrid.Less(p.ByArea):
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The chart is below the area figure: it counts on a closer lay on this width.", Refer: "a lay decides"})
	}
	if p.GridKnown == source.Memory {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The chart's figure, or the column for this width, is from memory of the print.", Refer: "the printed chart decides"})
	}
	sh.Sources = make([]source.Cite, 0, 3)
	if p.HasGrid {
		sh.Sources = append(sh.Sources, source.Cite{For: "the chart", ID: srcGrid, Known: source.Read})
		if p.GridKnown == source.Memory {
			sh.Sources = append(sh.Sources, source.Cite{For: "the columns and widths from memory", ID: srcExtensionGrid, Known: source.Memory})
		}
	}
	if s.Nap && !p.HasGrid {
		sh.Sources = append(sh.Sources, source.Cite{For: "the allowance", ID: srcGrid, Known: source.Read})
	}
	sh.Sources = append(sh.Sources, source.Cite{For: "the area figure", Known: source.Computed})
	return sh
}

// unknownText is the fault for a name that is none of those listed.
func unknownText(got, want string) error {
	if len(got) > fault.MaxName {
		got = got[:fault.MaxName]
	}
	var a fault.Audit
	a.Fault("text", strconv.Quote(got), want, fault.Unknown)
	return a.Err()
}
