package seam

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxLayers is the most layers that a graded seam has.
const MaxLayers = 6

// A Graded is an enclosed seam whose layers are trimmed in steps, the widest next to
// the outside.
type Graded struct {
	Allowance
	// First is the row that makes the seam, from the raw edges as cut. May be omitted;
	// the default is cut.
	First units.Length `json:"first,omitzero"`
	// Widest is what is left of the layer next to the outside. May be omitted; the default
	// is 1/4 in (6 mm), but first where that is no more than 1/8 in (3 mm) or narrowest is
	// 1/4 in (6 mm) or more.
	Widest units.Length `json:"widest,omitzero"`
	// Narrowest is what is left of the innermost layer. May be omitted; the default is
	// 1/8 in (3 mm), or half of widest where that is no wider.
	Narrowest units.Length `json:"narrowest,omitzero"`
	// Layers is how many layers of allowance there are, interfacing included, 2 to 6. May be
	// omitted; the default is 2.
	Layers int `json:"layers,omitzero"`
}

// Plan works the seam out.
func (s Graded) Plan() (Plan, error) { return plan(s) }

// Taking moves the row, and keeps the grades where it can.
func (s Graded) Taking(each units.Length) (Seam, bool) {
	s.First = each
	usual := s
	usual.Widest = units.Length{}
	bare := usual
	bare.Narrowest = units.Length{}
	return taking(each, s, usual, bare)
}

func (s *Graded) solve(v *solver) {
	if !v.row(&s.First) {
		return
	}
	if s.Layers == 0 {
		s.Layers = 2
	}
	usual, trim := usualGrade.on(s.Tape), usualTrim.on(s.Tape)
	if !trim.Less(s.First) || !s.Narrowest.IsZero() && !s.Narrowest.Less(usual) {
		usual = s.First
	}
	fill(&s.Widest, usual.Min(s.First))
	v.holds("widest", s.Widest, s.First)
	fill(&s.Narrowest, inside(trim, s.Widest))
	if !s.Narrowest.Less(s.Widest) {
		v.audit.Fault("narrowest", s.Narrowest.String(), "less than {0} (widest)", fault.Range, s.Widest)
		return
	}
	v.holds("narrowest", s.Narrowest, s.First)
}

// step is how much narrower each layer is than the one outside it.
func (s Graded) step() units.Length {
	return s.Widest.Sub(s.Narrowest).DivInt(int64(max(s.Layers-1, 1)))
}

func (s Graded) answer(p *Plan) {
	p.Finished, p.Plies = s.Widest, s.Layers+2
	for i := range s.Layers {
		p.Grades = append(p.Grades, s.Widest.Sub(s.step().MulInt(int64(i))))
	}
	p.Upper.trim(s.Widest, s.Narrowest, s.First)
	p.Under.trim(s.Narrowest, s.leastTrim().Min(s.Narrowest), s.Widest)
}

func (s Graded) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, rowTakes(s.First))
	sh.Lines = append(sh.Lines, line("the widest layer", s.Widest, plus(s.step(), "from layer to layer"), times(s.Layers-1), plus(s.Narrowest, "the narrowest")))
	sh.Steps = append(sh.Steps, p.first("Stitch the seam", ticket.RightTogether, s.First))
	for i, left := range p.Grades {
		st := ticket.Step{Do: "Trim the next layer narrower", Trim: ticket.Long(left)}
		switch i {
		case 0:
			st.Do = "Trim the layer next to the outside of the garment, the widest"
		case s.Layers - 1:
			st.Do = "Trim the innermost layer, the narrowest"
		}
		sh.Steps = append(sh.Steps, st)
	}
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Clip inward curves and notch outward ones", Note: "short of the stitching"},
		ticket.Step{
			Do: "Turn to the right side and press", Press: "the seam rolled a little to the inside",
			Check: p.check("inside, from the seam to the widest raw edge", s.Widest, "turn back and trim again where a ridge shows through"),
		})
	sh.Sources = append(sh.Sources,
		source.Cite{For: "the layer next to the outside, widest", ID: "apparel-textbook", Place: "p. 451", Known: source.Read},
		source.Cite{For: "the smallest grade", ID: "apparel-class-slides", Known: source.Read},
		source.Practise("equal steps from layer to layer"))
}

func (s Graded) size(Plan) size {
	return size{ply: s.First, wide: s.Widest, needs: []need{
		fromRaw("first", s.First), {"narrowest", s.Narrowest, "from the seam to the narrowest edge", s.Narrowest, 3},
	}}
}

// draw draws the garment turned: both plies run on over the allowances, and come together
// beyond the widest.
func (s Graded) draw(k *sketch) {
	n, grades := s.Layers, k.p.Grades
	name := func(i int) string {
		switch i {
		case 0:
			return upperPly
		case n - 1:
			return underPly
		}
		return "layer " + strconv.Itoa(i+1)
	}
	// layer adds layer i, the outside first.
	layer := func(i int, l layer, finish section.End, upper, under section.Face) {
		switch i {
		case 0:
			k.ply(name(i), section.Hatched, l, section.RunsOn, finish, upper)
		case n - 1:
			k.ply(name(i), section.Dotted, l, section.RunsOn, finish, under)
		default:
			k.ply(name(i), section.Blank, l, section.RunsOn, finish, section.NoFace)
		}
	}
	between := ""
	if n > 2 {
		between = " The layers between run out at the seam, as those of a collar do; an interfacing turns with the ply that it is sewn to."
	}

	k.stage("sewn", "Right sides together, all raw edges even.")
	left := k.beside(s.First).Neg()
	var through, pierce []string
	for i := range n {
		layer(i, k.from(left, n-1-i).to(s.First), section.Raw, section.Right, section.Left)
		through, pierce = append(through, name(i)), append(pierce, name(n-1-i))
	}
	k.row("the seam", k.half(0), int64(2*n+1), -3, through...)
	k.mark("from the raw edges", section.Below, k.half(0), s.First, 0, s.First)

	k.stage("graded and pressed", "Turned and pressed, right side of the outside down, the widest layer next to it. Both plies come together beyond the allowances."+between)
	close := s.Widest.Add(k.half(3))
	far := close.Add(k.run)
	layer(0, k.from(far, 0).to(k.half(-1)).level(1).to(grades[0]), section.Hidden, section.Left, section.Right)
	for i := 1; i < n-1; i++ {
		layer(i, k.from(k.run.Neg(), i+1).to(grades[i]), section.Hidden, section.Left, section.Right)
	}
	layer(n-1, k.from(far, 1).to(close).level(n+1).to(k.half(-1)).level(n).to(grades[n-1]), section.Hidden, section.Left, section.Right)
	k.row("the seam", k.half(0), int64(2*n+1), 1, pierce...)
	for i := n - 1; i > 0; i-- {
		k.mark(name(i)+" trimmed to", section.Above, k.half(0), grades[i], int64(2*i+2), grades[i])
	}
	k.mark(name(0)+" trimmed to", section.Above, k.half(0), grades[0], 2, grades[0])
}
