package seam

import (
	"slices"
	"strings"

	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Row is a finishing line of stitching: how far it runs from what it follows, and what
// it must catch or clear. See [RowKind] for what each kind reads.
type Row struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape on
	// whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Kind is which row it is.
	Kind RowKind `json:"kind,omitzero"`
	// Allowance is that of the seam beside it, from the seam line to the raw edge. May be
	// omitted; the default is 5/8 in, or 1.5 cm.
	Allowance units.Length `json:"allowance,omitzero"`
	// Distance is from what the kind says. May be omitted; the defaults, as printed in
	// inches, are for staystitch, ease-stitch and edgestitch 1/8 in (3 mm), for reinforcement
	// and topstitch 1/4 in (6 mm), and by common practice for understitch 1/16 in (2 mm).
	Distance units.Length `json:"distance,omitzero"`
	// Trim is what is left of the allowance, from the seam line, once it is trimmed. May be
	// omitted; the default is 3/8 in (1 cm) for a reinforcement, and for the others nothing
	// is trimmed.
	Trim units.Length `json:"trim,omitzero"`
	// Layer is how far the narrowest layer reaches that the row must catch on the wrong side
	// (the graded allowances, the free edge of a facing), from where distance is measured.
	// May be omitted; it is then not looked at.
	Layer units.Length `json:"layer,omitzero"`
	// Margin is how far inside the end of layer the row must stay. May be omitted; the
	// default is 1/8 in (3 mm) for topstitch and else 1/16 in (2 mm): common practice.
	Margin units.Length `json:"margin,omitzero"`
	// Start is the near end of what the row must run clear of, such as a buttonhole that lies
	// square to it, from where distance is measured. May be omitted; the default is 0.
	Start units.Length `json:"start,omitzero" noun:"zero"`
	// End is the far end of the same. May be omitted where there is nothing to run clear of.
	End units.Length `json:"end,omitzero"`
}

// A RowPlan is where the row runs.
type RowPlan struct {
	Spec    Row      `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields of Spec filled with a default

	FromRaw units.Length `json:"fromRaw,omitzero"` // from the raw edge as cut, for a row in the allowance; else zero
	Beyond  units.Length `json:"beyond,omitzero"`  // from the row to the end of Layer, or to the trimmed edge; zero where neither is given, negative where the row misses it
	Caught  bool         `json:"caught,omitzero"`  // the layer is caught with Margin to spare, or the trimming leaves the row in; true where neither was given
	Crosses units.Length `json:"crosses,omitzero"` // how far the row runs inside Start to End, from the nearer of them; zero where it runs clear
	Clear   units.Length `json:"clear,omitzero"`   // how far it runs clear of Start to End; zero where it crosses or nothing was given
}

func (r Row) audit(a *fault.Audit) {
	r.Tape.Check(a, "tape")
	if rowNames.Check(a, "kind", r.Kind); a.Failed() {
		return
	}
	in := r.Kind.inAllowance()
	only := func(path string, l units.Length, reads bool) {
		if reads {
			a.NotNegative(path, l)
		} else if !l.IsZero() {
			a.Unused(path, l, false, r.Kind)
		}
	}
	only("allowance", r.Allowance, in)
	a.NotNegative("distance", r.Distance)
	only("trim", r.Trim, in)
	only("layer", r.Layer, !in)
	only("margin", r.Margin, !in)
	if !in && r.Layer.IsZero() && r.Margin.Sign() > 0 {
		a.Fault("margin", r.Margin.String(), "none where layer is not given", fault.Unused)
	}
	only("start", r.Start, !in)
	if only("end", r.End, !in); !in && r.Start.Sign() >= 0 && r.End.Sign() >= 0 && !(r.Start.IsZero() && r.End.IsZero()) && !r.Start.Less(r.End) {
		a.Fault("end", r.End.String(), "more than "+r.Start.String()+" (start)", fault.Range)
	}
}

// usual is the default of Distance.
func (r Row) usual() units.Length {
	switch r.Kind {
	case StayStitch, EaseStitch, EdgeStitch:
		return r.Tape.Of(inch(1, 8), mm(3))
	case UnderStitch:
		return sew.Straightness(r.Tape)
	}
	return r.Tape.Of(inch(1, 4), mm(6))
}

// Plan works out the row. The faults are [fault.Faults]. A row that misses its
// layer, or that runs into what it should clear, is no fault: the plan says by how
// much.
func (r Row) Plan() (RowPlan, error) {
	var a fault.Audit
	given := r
	r.Tape = noun.Tape(r)
	if r.audit(&a); a.Failed() {
		return RowPlan{}, a.Err()
	}
	p := RowPlan{Caught: true}
	in := r.Kind.inAllowance()
	if in {
		fill(&r.Allowance, sew.Standard(r.Tape))
	}
	fill(&r.Distance, r.usual())
	if r.Kind == Reinforcement {
		fill(&r.Trim, r.Tape.Of(inch(3, 8), mm(10)).Min(r.Allowance))
	}
	if in && !r.Distance.Less(r.Allowance) {
		a.Fault("distance", r.Distance.String(), "less than "+r.Allowance.String()+" (allowance)", fault.Range)
	}
	if fault.AtMost(&a, "trim", r.Trim, r.Allowance, "allowance", fault.Range); a.Failed() {
		return RowPlan{}, a.Err()
	}
	if !r.Layer.IsZero() {
		if fill(&r.Margin, sew.Straightness(r.Tape)); r.Kind == TopStitch && given.Margin.IsZero() {
			r.Margin = r.Tape.Of(inch(1, 8), mm(3))
		}
		p.Beyond = r.Layer.Sub(r.Distance)
		p.Caught = !p.Beyond.Less(r.Margin)
	}
	if in {
		p.FromRaw = r.Allowance.Sub(r.Distance)
		if !r.Trim.IsZero() {
			p.Beyond = r.Trim.Sub(r.Distance)
			p.Caught = p.Beyond.Sign() > 0
		}
	}
	if r.Start.Less(r.End) {
		if in, out := r.Distance.Sub(r.Start), r.End.Sub(r.Distance); in.Sign() > 0 && out.Sign() > 0 {
			p.Crosses = in.Min(out)
		} else {
			p.Clear = in.Neg().Max(out.Neg())
		}
	}
	p.Spec, p.Assumed = r, noun.Assumed(given, r)
	return p, nil
}

// Sheet is the plan as work.
func (p RowPlan) Sheet() ticket.Sheet {
	r := p.Spec
	if !rowNames.Valid(r.Kind) {
		return ticket.Sheet{Title: "No row", Assumed: p.Assumed}
	}
	sh := ticket.Sheet{Title: r.Kind.title(), Assumed: p.Assumed, Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()}}
	sh.Answer = []ticket.Line{{Label: "stitch at", Result: ticket.Long(r.Distance)}}
	st := ticket.Step{At: ticket.Long(r.Distance), Check: ticket.Check{Want: ticket.Long(r.Distance), Give: ticket.Long(sew.Straightness(r.Tape)),
		Mend: "unpick where it wanders and stitch again from a guide on the plate"}}
	switch r.Kind {
	case StayStitch:
		st.Do, st.Note = "Staystitch each single layer as soon as it is cut, with the grain", "so that the edge does not stretch; it stays in the allowance"
	case EaseStitch:
		st.Do, st.Note = "Stitch the longer edge with longer stitches, and draw it up to its partner", "steam the fullness away over a pad before the seam is sewn"
	case Reinforcement:
		st.Do, st.Note = "Stitch a second row in the allowance where the seam is strained", "the allowance is trimmed beyond it"
	case UnderStitch:
		st.Do, st.Note = "Press all allowances to the facing and stitch them to it", "stop well before a corner, as far as the foot can go"
	case EdgeStitch:
		st.Do = "Stitch close along the finished edge"
	case TopStitch:
		st.Do = "Stitch along the finished edge, right side up"
	}
	if r.Kind.inAllowance() {
		st.At, st.From = ticket.Long(p.FromRaw), "the raw edge"
		st.Check.What, st.Check.Want = "from the row to the raw edge", ticket.Long(p.FromRaw)
		sh.Lines = append(sh.Lines, line("from the raw edge", p.FromRaw, plus(r.Allowance, "allowance"), minus(r.Distance, "inside the allowance")))
	} else {
		st.From = "the finished edge"
		if r.Kind == UnderStitch {
			st.From = "the seam, on the facing"
		}
		st.Check.What = "from the row to " + st.From
		sh.Lines = append(sh.Lines, line("row", r.Distance))
	}
	if r.Distance.Less(r.Tape.Of(inch(1, 8), mm(3))) {
		st.Check.Give = ticket.Amount{} // no room to wander by as much
	}
	sh.Steps = []ticket.Step{st}
	if r.Kind.inAllowance() && !r.Trim.IsZero() {
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Trim the allowance", At: ticket.Long(r.Trim), From: "the seam line"})
	}
	warn := func(text string) {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: text, Refer: "the working above says by how much"})
	}
	switch {
	case r.Kind.inAllowance() && !r.Trim.IsZero():
		sh.Lines = append(sh.Lines, line("left beyond the row", p.Beyond, plus(r.Trim, "left of the allowance"), minus(r.Distance, "the row")))
		if !p.Caught {
			warn("The trimming cuts the row away: trim wider, or do without the row.")
		}
	case !r.Layer.IsZero():
		sh.Lines = append(sh.Lines, line("the layer reaches beyond the row by", p.Beyond, plus(r.Layer, "layer"), minus(r.Distance, "the row")))
		if !p.Caught {
			warn("The row does not catch the layer below safely: move it nearer, or leave the layer wider.")
		}
	}
	if !p.Crosses.IsZero() {
		l := line("runs into what it must clear by", p.Crosses, plus(r.End, "its far end"), minus(r.Distance, "the row"))
		if p.Crosses != r.End.Sub(r.Distance) {
			l = line(l.Label, p.Crosses, plus(r.Distance, "the row"), minus(r.Start, "its near end"))
		}
		sh.Lines = append(sh.Lines, l)
		warn("The row runs through what it must clear: move one of them, or turn a buttonhole to lie along the row.")
	}
	sh.Sources = append(sh.Sources, r.cite(), sew.StraightnessCite(r.Tape))
	if slices.Contains(p.Assumed, "allowance") {
		sh.Sources = append(sh.Sources, sew.StandardCite())
	}
	return sh
}

// cite is where the usual distance of a row is printed, in inches.
func (r Row) cite() source.Cite {
	if r.Tape == units.MetricTape {
		return source.Practise(strings.ToLower(r.Kind.title()) + ", how far from what it follows")
	}
	switch r.Kind {
	case StayStitch:
		return source.Cite{For: "staystitching, from the cut edge", ID: "clothing-construction-handbook", Known: source.Read}
	case EaseStitch:
		return source.Cite{For: "ease stitching, inside the allowance", ID: "stitch-length-slides", Known: source.Read}
	case Reinforcement:
		return source.Cite{For: "second row and trim where a seam is strained", ID: "stitch-length-slides", Known: source.Read}
	case EdgeStitch:
		return source.Cite{For: "edgestitching, from the edge", ID: "edge-stitch-page", Known: source.Read}
	case TopStitch:
		return source.Cite{For: "topstitching, from the edge", ID: "edge-stitch-page", Known: source.Read}
	}
	return source.Practise("understitching close to the seam, on the facing")
}
