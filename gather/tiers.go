package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxTiers is the greatest number of tiers of one skirt.
const MaxTiers = 50

// Tiers is a skirt of strips, each gathered onto the one above, the first onto a
// band or a yoke. Zero means "not given". Depths, count and length follow from each
// other: the depths come to the length.
type Tiers struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Edge is the edge that the first tier is gathered onto, once round.
	Edge units.Length `json:"edge,omitzero"`
	// Fullness is the length of each tier over that of the one above, 1 or more. May be
	// omitted; the default is 1 1/2.
	Fullness units.Ratio `json:"fullness,omitzero"`
	// First is the fullness of the first tier. May be omitted; the default is fullness.
	First units.Ratio `json:"first,omitzero"`
	// Count is how many tiers there are, 1 to 50.
	Count int `json:"count,omitzero"`
	// Length is the finished length of all tiers.
	Length units.Length `json:"length,omitzero"`
	// Grow is how much deeper each tier is than the one above, negative where shallower.
	// May be omitted; the default is 0, all alike.
	Grow units.Length `json:"grow,omitzero" noun:"zero"`
	// Depths are the finished depths, from the top. They follow from count, length and
	// grow.
	Depths []units.Length `json:"depths,omitzero"`
	// Allowance is the seam allowance between two tiers. May be omitted; the default is
	// 5/8 in or 1.5 cm.
	Allowance units.Length `json:"allowance,omitzero"`
	// Top is what the first tier has above its seam line, a casing with it. May be
	// omitted; the default is allowance.
	Top units.Given[units.Length] `json:"top,omitzero"`
	// Hem is the hem allowance of the last tier. May be omitted; the default is 0.
	Hem units.Length `json:"hem,omitzero" noun:"zero"`
	// Width is the usable width of the cloth, across which the strips are cut. May be
	// omitted; how many they are is then not known.
	Width units.Length `json:"width,omitzero"`
	// Join is the allowance at each end of a strip, 0 where selvedges meet. May be
	// omitted; where width is given the default is allowance.
	Join units.Given[units.Length] `json:"join,omitzero"`
}

// A Tier is one tier of a skirt.
type Tier struct {
	Onto   units.Length `json:"onto,omitzero"`   // the edge that it is gathered onto, once round
	Round  units.Length `json:"round,omitzero"`  // its own length once round
	Depth  units.Length `json:"depth,omitzero"`  // finished depth
	Cut    units.Length `json:"cut,omitzero"`    // depth as cut
	Strips int          `json:"strips,omitzero"` // how many strips it is joined of
	Each   units.Length `json:"each,omitzero"`   // length of each strip as cut
	Cloth  units.Length `json:"cloth,omitzero"`  // length of cloth for them
}

// A TiersPlan is what a tiered skirt comes to.
type TiersPlan struct {
	Spec     Tiers        `json:"spec,omitzero"`     // as solved
	Assumed  []string     `json:"assumed,omitzero"`  // the fields filled with a default
	Tiers    []Tier       `json:"tiers,omitzero"`    // every tier, from the top
	Sweep    units.Length `json:"sweep,omitzero"`    // the hem, once round
	Fullness units.Ratio  `json:"fullness,omitzero"` // sweep over edge
	Strips   int          `json:"strips,omitzero"`   // strips of all tiers
	Cloth    units.Length `json:"cloth,omitzero"`    // cloth for all, tier by tier
	Pooled   int          `json:"pooled,omitzero"`   // strips where all are joined to one long one that the tiers are cut from, which takes tiers of one depth
	Least    units.Length `json:"least,omitzero"`    // the cloth for those
}

// Plan works out the tiers. The faults are [fault.Faults].
func (s Tiers) Plan() (TiersPlan, error) {
	var a fault.Audit
	s.audit(&a)
	if a.Failed() {
		return TiersPlan{}, a.Err()
	}
	if s.solve(&a); a.Failed() {
		return TiersPlan{}, a.Err()
	}
	given := s
	s.Tape = noun.Tape(s)
	if s.Fullness.IsZero() {
		s.Fullness = fullnessFor("tiers").Low
	}
	if s.First.IsZero() {
		s.First = s.Fullness
	}
	fill(&s.Allowance, seamAllowance, s.Tape)
	if s.Top.IsZero() {
		s.Top = units.Give(s.Allowance)
	}
	if s.Join.IsZero() && !s.Width.IsZero() {
		s.Join = units.Give(s.Allowance)
	}
	p := TiersPlan{Spec: s, Assumed: noun.Assumed(given, s)}
	onto, full := s.Edge, s.First
	for i, depth := range s.Depths {
		t := Tier{Onto: onto, Round: onto.Scale(full), Depth: depth}
		above, below := s.Allowance, s.Allowance
		if i == 0 {
			above = s.Top.Or(units.Length{})
		}
		if i == len(s.Depths)-1 {
			below = s.Hem
		}
		t.Cut = units.Sum(depth, above, below)
		p.Tiers = append(p.Tiers, t)
		onto, full = t.Round, s.Fullness
	}
	p.Sweep, p.Fullness = onto, onto.Div(s.Edge)
	if p.cloth(&a); a.Failed() {
		return TiersPlan{}, a.Err(p.Assumed...)
	}
	return p, nil
}

// audit looks at each field by itself, and for what is missing.
func (s Tiers) audit(a *fault.Audit) {
	zero, one := units.Length{}, units.RatioOf(1, 1)
	s.Tape.Check(a, "tape")
	a.Need("edge", s.Edge)
	for _, full := range []struct {
		path string
		r    units.Ratio
	}{{"fullness", s.Fullness}, {"first", s.First}} {
		if !full.r.IsZero() {
			fault.AtLeast(a, full.path, full.r, one, "a tier is no shorter than the edge above", fault.Range)
		}
	}
	many := len(s.Depths)
	if many > MaxTiers {
		a.Fault("depths", strconv.Itoa(many)+" depths", "1 to "+strconv.Itoa(MaxTiers), fault.Range)
	}
	switch {
	case many == 0 || s.Count < 0:
		a.Count("count", s.Count, 1, MaxTiers)
	case s.Count != 0 && s.Count != many:
		a.Fault("count", strconv.Itoa(s.Count), strconv.Itoa(many)+" (depths)", fault.Conflict)
	}
	if many == 0 || s.Length.Sign() < 0 {
		a.Need("length", s.Length)
	}
	for i, d := range s.Depths[:min(many, MaxTiers)] {
		a.Need("depths["+strconv.Itoa(i)+"]", d)
	}
	a.NotNegative("allowance", s.Allowance)
	a.NotNegative("top", s.Top.Or(zero))
	a.NotNegative("hem", s.Hem)
	a.NotNegative("width", s.Width)
	a.NotNegative("join", s.Join.Or(zero))
	if s.Width.IsZero() && !s.Join.IsZero() {
		a.Fault("join", s.Join.Or(zero).String(), "none without width", fault.Unused)
	}
}

// solve fills depths, or count and length from them.
func (s *Tiers) solve(a *fault.Audit) {
	if len(s.Depths) > 0 {
		sum := units.Sum(s.Depths...)
		if !s.Length.IsZero() && s.Length != sum {
			a.Fault("length", s.Length.String(), "{0} (depths)", fault.Conflict, sum)
		}
		for i := 1; i < len(s.Depths) && !s.Grow.IsZero(); i++ {
			if more := s.Depths[i].Sub(s.Depths[i-1]); more != s.Grow {
				a.Fault("grow", s.Grow.String(), "{0} (how much deeper depths["+strconv.Itoa(i)+"] is)", fault.Conflict, more)
				break
			}
		}
		s.Count, s.Length = len(s.Depths), sum
		return
	}
	n := int64(s.Count)
	first := s.Length.DivInt(n).Sub(s.Grow.MulInt(n - 1).DivInt(2))
	last := first.Add(s.Grow.MulInt(n - 1))
	if first.Min(last).Sign() <= 0 {
		a.Fault("grow", s.Grow.String(), "less than {0} either way (or a tier has no depth)", fault.Range, s.Length.MulInt(2).DivInt(n*max(1, n-1)))
		return
	}
	for k := range n {
		s.Depths = append(s.Depths, first.Add(s.Grow.MulInt(k)))
	}
}

// cloth fills how many strips are cut, and of what cloth.
func (p *TiersPlan) cloth(a *fault.Audit) {
	s := p.Spec
	if s.Width.IsZero() {
		return
	}
	ends := s.Join.Or(units.Length{}).MulInt(2)
	usable := s.Width.Sub(ends)
	if usable.Sign() <= 0 {
		a.Fault("width", s.Width.String(), "more than {0} (the two ends of a strip)", fault.Range, ends)
		return
	}
	strips := func(round units.Length) int {
		n, ok := round.Div(usable).Int(units.Up)
		if !ok || n > MaxPleats {
			a.Fault("width", s.Width.String(), "a width of which "+strconv.Itoa(MaxPleats)+" strips make a tier of {0}", fault.Range, round)
			return 0
		}
		return int(n)
	}
	all, alike := ends.MulInt(int64(s.Count-1)), true
	for i := range p.Tiers {
		t := &p.Tiers[i]
		if t.Strips = strips(t.Round); a.Failed() {
			return
		}
		t.Each = t.Round.DivInt(int64(t.Strips)).Add(ends)
		t.Cloth = t.Cut.MulInt(int64(t.Strips))
		p.Strips += t.Strips
		p.Cloth = p.Cloth.Add(t.Cloth)
		all = all.Add(t.Round)
		alike = alike && t.Cut == p.Tiers[0].Cut
	}
	if n, ok := all.Div(usable).Int(units.Up); alike && ok && n < int64(p.Strips) {
		p.Pooled, p.Least = int(n), p.Tiers[0].Cut.MulInt(n)
	}
}

// Sheet is how the tiers are cut, joined and gathered, with the working behind it.
func (p TiersPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "A skirt of tiers", Assumed: p.Assumed}
	if len(p.Tiers) == 0 {
		return sheet
	}
	last := p.Tiers[len(p.Tiers)-1]
	for i, t := range p.Tiers {
		name := "tier " + strconv.Itoa(i+1)
		full := s.Fullness
		if i == 0 {
			full = s.First
		}
		cut := ticket.Sum(name+" is cut deep", t.Cut, ticket.Add(t.Depth, "depth"), ticket.Add(t.Cut.Sub(t.Depth), "above and below it"))
		if len(p.Tiers) > len(markNames) && i > 0 && i < len(p.Tiers)-1 {
			continue
		}
		sheet.Lines = append(sheet.Lines, ticket.Sum(name+", once round", t.Round, ticket.Add(t.Onto, "what it goes on"), ticket.Term{Op: ticket.By, Amount: ticket.Times(full), Name: "fullness"}), cut)
		if t.Strips > 0 {
			sheet.Lines = append(sheet.Lines, ticket.Sum("its strips are cut long", t.Each), ticket.Sum("its cloth", t.Cloth, ticket.Add(t.Cut, "each"), ticket.Multiply(t.Strips, "strips")))
		}
	}
	sheet.Lines = append(sheet.Lines, fullness("hem over the edge", p.Fullness, ticket.Add(p.Sweep, "hem"), s.Edge, "edge"))
	sheet.Answer = []ticket.Line{ticket.Sum("hem, once round", p.Sweep)}
	if p.Strips > 0 {
		sheet.Answer = append(sheet.Answer, ticket.Sum("cloth", p.Cloth), ticket.Line{Label: "strips", Result: ticket.Of(p.Strips)})
		sheet.Lines = append(sheet.Lines, ticket.Sum("cloth, tier by tier", p.Cloth))
	}
	if p.Pooled > 0 {
		sheet.Lines = append(sheet.Lines, ticket.Sum("or cut from one long strip", p.Least, ticket.Add(p.Tiers[0].Cut, "each"), ticket.Multiply(p.Pooled, "strips")))
	}
	join := ticket.Step{Do: "Join the strips of each tier into a ring", Together: ticket.RightTogether, Press: "open"}
	if !s.Join.IsZero() {
		join.At, join.From = ticket.Long(s.Join.Or(units.Length{})), "the raw ends"
	}
	hem := ticket.Step{Do: "Hem the last tier", At: ticket.Long(s.Hem), From: "the raw edge", Note: "before it is gathered, while it lies flat"}
	if s.Hem.IsZero() {
		hem = ticket.Step{Do: "Finish the lower edge of the last tier", Note: "before it is gathered, while it lies flat"}
	}
	sheet.Steps = []ticket.Step{
		{Do: "Cut the strips of each tier to its depth", At: ticket.Long(p.Tiers[0].Cut), From: "one long edge to the other, of the first", Note: "the working gives the others"},
		join, hem,
		{
			Do: "Gather the last tier onto the one above, then that onto the next, from the hem up", Together: ticket.RightTogether, At: ticket.Long(s.Allowance), From: "the raw edge",
			Note:  "divide both into quarters and pin them mark to mark",
			Check: ticket.Check{What: "the last tier as drawn up, once round", Want: ticket.Long(last.Onto), Mend: "let the threads out or draw them closer before it is stitched"},
		},
		{
			Do: "Gather the first tier onto the edge", Together: ticket.RightTogether,
			Check: ticket.Check{What: "from the upper seam line to the hem", Want: ticket.Long(s.Length), Mend: "take the error out at the top of the first tier"},
		},
	}
	sheet.Cautions = []ticket.Caution{ticket.CutCare(), ticket.IronCare()}
	if units.RatioOf(8, 1).Less(p.Fullness) {
		sheet.Cautions = append(sheet.Cautions, ticket.Caution{Text: "The hem is more than eight times the edge: every tier multiplies the cloth of the one above.", Refer: "common practice"})
	}
	sheet.Sources = []source.Cite{fullnessFor("tiers").Cite(), citeQuarters()}
	return sheet
}
