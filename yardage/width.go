package yardage

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
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

var trusts = name.Of[Trust]("trust", "none", "chart", "area")

// Trusts yields every Trust but NoTrust.
func Trusts(yield func(Trust) bool) { trusts.All()(yield) }

// String is the name of t, and none for [NoTrust].
func (t Trust) String() string { return trusts.String(t) }

// MarshalText is the name of t, empty for [NoTrust].
func (t Trust) MarshalText() ([]byte, error) { return trusts.Marshal(t) }

// UnmarshalText reads the name of a Trust; empty text is [NoTrust].
func (t *Trust) UnmarshalText(text []byte) error { return trusts.Unmarshal(t, text) }

// A Width is a length asked for on cloth of one width, to be bought on another.
type Width struct {
	Asked units.Length `json:"asked,omitzero"` // the length asked, as on the envelope
	From  units.Length `json:"from,omitzero"`  // the width of cloth that it is asked on
	To    units.Length `json:"to,omitzero"`    // the width of the cloth to be bought
	// Nap is set for cloth that goes one way only, with a nap or a pattern. It is one of
	// three reasons for which the chart adds 1/4 yd, once.
	Nap bool `json:"nap,omitzero"`
	// Sleeves is set where the sleeves are cut in one with the body.
	Sleeves bool `json:"sleeves,omitzero"`
	// Jump is set where the widths differ by much; the chart does not say by how much.
	Jump bool `json:"jump,omitzero"`
	// Repeat is the length of the pattern repeat, of which one more is bought. May be
	// omitted; the default is a plain cloth.
	Repeat units.Length `json:"repeat,omitzero"`
	// Stacked is how many large pieces lie one after another along the cloth, 1 to
	// 1,000,000: one repeat more is bought for each, to match them. May be omitted; the
	// default is one repeat for the whole. It needs a repeat.
	Stacked int `json:"stacked,omitzero"`
	// HalfDrop is set where the pattern steps down half a repeat from one selvedge to the
	// other; half a repeat more is bought. It needs a repeat.
	HalfDrop bool `json:"halfDrop,omitzero"`
	// Widest is the width across the cloth of the widest piece. May be omitted. A piece
	// that is wider than the cloth is a fault.
	Widest units.Length `json:"widest,omitzero"`
	// Doubt is set to buy 1/2 yd more where it is not known what the pieces take.
	Doubt bool `json:"doubt,omitzero"`
}

// A WidthPlan sets the printed chart and the area side by side. Neither proves
// that the pieces fit: only a lay does.
type WidthPlan struct {
	Spec      Width        `json:"spec,omitzero"`      // as given
	ByArea    units.Length `json:"byArea,omitzero"`    // asked x from / to, exact; an estimate, not a bound
	HasGrid   bool         `json:"hasGrid,omitzero"`   // the chart has the row and both columns
	GridRow   int          `json:"gridRow,omitzero"`   // the row of the chart, counted from 1; zero without one
	ByGrid    units.Length `json:"byGrid,omitzero"`    // the printed cell; zero without one
	GridKnown source.Known `json:"gridKnown,omitzero"` // from memory where either column, or how it was found, is from memory
	// Near is the rows just below and just above, where the chart has both widths and no
	// row of the length asked.
	Near    []GridPair   `json:"near,omitzero"`
	Reasons []Reason     `json:"reasons,omitzero"` // what is added, each with its reason; nil where nothing is
	Added   units.Length `json:"added,omitzero"`   // all of it
	Trusted Trust        `json:"trusted,omitzero"` // which of the two to go by
	Guide   units.Length `json:"guide,omitzero"`   // the trusted figure with what is added
	// Single is set where the widest piece is wider than half of the cloth: it is cut from
	// one ply, on cloth that lies open.
	Single bool `json:"single,omitzero"`
}

// A GridPair is one row of the chart on two widths.
type GridPair struct {
	Row    int          `json:"row,omitzero"`    // counted from 1
	Asked  units.Length `json:"asked,omitzero"`  // on the width asked
	Length units.Length `json:"length,omitzero"` // on the width to be bought
}

// A Reason is cloth that is added, and for what.
type Reason struct {
	For    string       `json:"for,omitzero"`    // the reason, or several for which it is added once
	Length units.Length `json:"length,omitzero"` // what is added
}

// reasons lists what is added, each for its own reason.
func (s Width) reasons() (all []Reason) {
	why := ""
	for _, r := range []struct {
		set bool
		why string
	}{{s.Nap, "one-way cloth"}, {s.Sleeves, "sleeves cut in one with the body"}, {s.Jump, "a large difference of width"}} {
		if r.set && why != "" {
			why += ", "
		}
		if r.set {
			why += r.why
		}
	}
	if why != "" {
		all = append(all, Reason{why, gridAdded()})
	}
	if !s.Repeat.IsZero() {
		r := Reason{"one repeat more, to place the pattern", s.Repeat}
		if s.Stacked > 0 {
			r = Reason{"a repeat for each piece along the cloth, to match them", s.Repeat.MulInt(int64(s.Stacked))}
		}
		all = append(all, r)
	}
	if s.HalfDrop {
		all = append(all, Reason{"half a repeat, for the half drop", s.Repeat.DivInt(2)})
	}
	if s.Doubt {
		all = append(all, Reason{"doubt", units.Yard.Frac(1, 2)})
	}
	return all
}

// Plan works out both figures.
func (s Width) Plan() (WidthPlan, error) {
	var a fault.Audit
	a.Need("asked", s.Asked)
	a.Need("from", s.From)
	a.Need("to", s.To)
	a.NotNegative("repeat", s.Repeat)
	switch {
	case s.Stacked != 0 && s.Repeat.IsZero():
		a.Fault("stacked", ticket.Of(s.Stacked).String(), "none without a repeat", fault.Unused)
	case s.Stacked != 0:
		a.Count("stacked", s.Stacked, 1, MaxPieces)
	}
	if s.HalfDrop && s.Repeat.IsZero() {
		a.Fault("halfDrop", "true", "none without a repeat", fault.Unused)
	}
	if a.NotNegative("widest", s.Widest); s.To.Sign() > 0 && s.To.Less(s.Widest) {
		fault.AtMost(&a, "widest", s.Widest, s.To, "to: no length of this cloth holds the piece", fault.Range)
	}
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
	if f, ok := gridColumn(s.From); ok && !p.HasGrid {
		if t, ok := gridColumn(s.To); ok {
			p.Near = gridNear(s.Asked, f.column, t.column)
		}
	}
	p.Reasons = s.reasons()
	for _, r := range p.Reasons {
		p.Added = p.Added.Add(r.Length)
	}
	p.Guide = p.Guide.Add(p.Added)
	p.Single = s.To.DivInt(2).Less(s.Widest)
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
	if !p.Guide.IsZero() {
		sh.Answer = []ticket.Line{{Label: "buy about, until a lay is made", Result: ticket.Cloth(p.Guide)}}
	}
	if len(p.Reasons) > 0 {
		terms := []ticket.Term{long(base, p.Trusted.String())}
		for _, r := range p.Reasons {
			terms = append(terms, long(r.Length, r.For))
		}
		sh.Lines = append(sh.Lines, line("with what is added", ticket.Long(p.Guide), terms...))
	}
	for _, n := range p.Near {
		row := "row " + ticket.Of(n.Row).String() + " of the chart, "
		sh.Lines = append(sh.Lines, line(row+"asked", ticket.Cloth(n.Asked)), line(row+"on this width", ticket.Cloth(n.Length)))
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
	if p.Single {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The widest piece is wider than half of this cloth: lay the cloth open and cut each copy apart.", Refer: "a lay decides"})
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
	if (s.Nap || s.Sleeves || s.Jump) && !p.HasGrid {
		sh.Sources = append(sh.Sources, source.Cite{For: "the quarter yard added", ID: srcGrid, Known: source.Read})
	}
	if !s.Repeat.IsZero() || s.Doubt {
		sh.Sources = append(sh.Sources, source.Cite{For: "a repeat more, or half a yard in doubt", ID: srcWidthAdded, Known: source.Read})
	}
	sh.Sources = append(sh.Sources, source.Cite{For: "the area figure", Known: source.Computed})
	return sh
}
