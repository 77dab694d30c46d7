package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

func (p Plan) steps() []ticket.Step {
	s := p.Spec
	st := make([]ticket.Step, 0, maxStep)
	switch {
	case s.Kind.stripped():
		return p.stripSteps(st)
	case s.Kind == TurnUp:
		return p.turnUpSteps(st)
	}
	if s.Kind == Slit {
		st = append(st, p.openStep())
		if s.Opening == Faced {
			st = append(st, p.topStep())
		}
	} else {
		st = append(st, ticket.Step{
			Do: "Mark the drafted finished line and cut the allowance even below it", At: ticket.Long(s.Cut), From: "the drafted finished line",
			Note: "Seams that cross the hem: press the ridges of neighbouring seams opposite ways" + p.layers(),
		})
	}
	if s.oneFold() {
		st = append(st, ticket.Step{Do: "Finish the raw edge flat: overcast, bind or pink it"})
	}
	if !p.Fullness.IsZero() && s.Kind != Slit {
		st = append(st, p.easeStep())
	}
	switch {
	case s.oneFold():
		st = append(st, ticket.Step{
			Do: "Turn the hem up and press the fold", At: ticket.Long(s.Depth), From: "the raw edge", Press: "to the wrong side",
			Note: p.fullness(), Check: p.depthCheck("from the finished edge to the raw edge"),
		})
	case s.Trim.IsZero():
		st = append(st, ticket.Step{Do: "Turn in the raw edge and press the first fold", At: ticket.Long(s.First), From: "the raw edge", Press: "to the wrong side"})
	default:
		st = append(st,
			ticket.Step{Do: "Stitch a row for the first fold to turn on", At: ticket.Long(s.First), From: "the raw edge"},
			ticket.Step{Do: "Turn on the row, stitch close to the fold, and trim", Trim: ticket.Long(s.Trim), Press: "to the wrong side",
				Note: "Trim after stitching, with the point of the shears away from the garment"})
	}
	if !s.oneFold() {
		st = append(st, ticket.Step{
			Do: "Turn again and press the second fold, which is the finished edge", At: ticket.Long(s.Depth), From: "the first fold", Press: "to the wrong side",
			Note: p.fullness(), Check: p.depthCheck("from the finished edge to the first fold, on the wrong side"),
		})
	}
	if s.Kind == Blind {
		st = append(st, p.backStep())
	}
	st = append(st, p.stitchStep())
	if s.Kind != Slit {
		return append(st, p.lengthStep())
	}
	if s.Opening != Faced {
		st = append(st, p.topStep())
	}
	if !s.Sweep.IsZero() {
		st = append(st, p.sweptStep())
	}
	return st
}

func (p Plan) openStep() ticket.Step {
	s := p.Spec
	if s.Opening != InSeam {
		st := ticket.Step{Do: "Mark the line of the slit and cut it", Note: "Staystitch a narrow point round the top before cutting"}
		if !s.Slit.IsZero() {
			st.At, st.From = ticket.Long(s.Slit), "the edge, up to the top of the slit"
		}
		return st
	}
	st := ticket.Step{
		Do:   "Close the seam down to the top of the opening, fasten off, and clip both allowances to the last stitch",
		Note: "Clip in to the line of the seam and no further; press the seam above the clip before turning the hem",
	}
	if !s.Slit.IsZero() {
		st.At, st.From = ticket.Long(s.Slit), "the edge, up to the last stitch"
	}
	return st
}

// layers is the end of the note on seams that cross the hem.
func (p Plan) layers() string {
	if p.Spec.oneFold() {
		return ", since the hem doubles each of them"
	}
	return ", since the hem trebles each of them"
}

func (p Plan) easeStep() ticket.Step {
	st := ticket.Step{
		Do:   "Run a row of long ease stitches along the turned cloth, to be drawn up from the bobbin thread",
		Note: "Instead, where the side seams are not yet sewn, cut each side edge as the mirror of itself about every fold: then nothing is left to ease",
	}
	switch {
	case p.Spec.Kind == Circular:
		st.Note = "Draw it up evenly all round: a circle has no straight run"
	case p.Excess.Sign() <= 0:
		st.Note = "Draw it up on the convex curves only; over a straight run it lies flat"
	}
	// The row lies in the hem: a quarter inch from the raw edge, or nearer where the first turn is less.
	at := easeRow(p.Spec.Tape)
	if p.Spec.oneFold() {
		at = at.Min(p.Spec.Depth.DivInt(2))
	} else {
		at = at.Min(p.Spec.First.DivInt(2))
	}
	st.At, st.From = ticket.Long(at), "the raw edge"
	return st
}

func (p Plan) fullness() string {
	switch {
	case p.Spec.Kind.stripped():
		return p.stripFullness()
	case !p.Fullness.IsZero() && !p.Lack.IsZero():
		return "Draw up the fullness of the convex curves and shrink it with steam; on the concave curves stretch the turned edge, and snip it to the first fold if it will not lie"
	case !p.Fullness.IsZero():
		return "Draw up the fullness evenly between the seams and shrink it with steam before stitching"
	case p.Excess.Sign() < 0:
		return "The turned cloth is too short to lie flat: cut the side edges as mirrors about each fold, or let the side seams open within the hem"
	case !p.Lack.IsZero():
		return "The turned cloth is too short to lie flat round the concave curves: stretch its edge under the iron, and snip it to the first fold if it will not lie"
	}
	return ""
}

// backStep folds the garment back for a blind hem.
func (p Plan) backStep() ticket.Step {
	return ticket.Step{
		Do: "Fold the garment back on its right side, so that the inner edge of the hem stands out beyond the fold", At: ticket.Long(p.FinishedToBack), From: "the finished edge",
		Check: ticket.Check{
			What: "from the fold of the garment to the inner edge of the hem", Want: ticket.Long(p.Spec.Back), Give: ticket.Long(give(p.Spec.Tape).Min(p.Spec.Back.DivInt(4))),
			Mend: "Shift the fold, not the hem: pin it again along its whole length before stitching",
		},
	}
}

func (p Plan) depthCheck(what string) ticket.Check {
	keep := give(p.Spec.Tape).Min(p.Spec.Depth.DivInt(4))
	return ticket.Check{
		What: what, Want: ticket.Long(p.Spec.Depth), Give: ticket.Long(keep),
		Mend: "Press the last fold out and fold again from the mark; do not make it up in the stitching",
	}
}

func (p Plan) stitchStep() ticket.Step {
	st := ticket.Step{
		Do: "Stitch the hem from the wrong side, with the guide at the finished edge", At: ticket.Long(p.FinishedToStitch), From: "the finished edge",
		Note: "Set a tape on the plate if the plate has no such mark",
	}
	switch p.Spec.Kind {
	case Single:
		st.Do = "Fold the hem back under the garment and blind-stitch it, or topstitch it"
		st.Note = "The stitches catch a thread or two of the garment and lie below the finished raw edge"
	case Blind:
		st.Do = "Stitch along the edge that stands out, every few stitches biting the fold of the garment by a thread or two"
		st.Note = "Open the garment out and look at the right side before going on: only the bites show, as dots"
	case Rolled:
		st.Do = "Slip-stitch or edge-stitch the roll from the wrong side"
		st.Note = "By hand roll a little at a time and draw the thread up every few stitches"
	}
	return st
}

func (p Plan) lengthStep() ticket.Step {
	st := ticket.Step{Do: "Press the hem and measure the length"}
	if p.Drift.IsZero() {
		st.Check = ticket.Check{
			What: "from the finished edge to the drafted finished line", Want: ticket.Long(units.Length{}), Give: ticket.Long(give(p.Spec.Tape)),
			Mend: "Unpick, press flat, and turn the last fold on the marked line",
		}
		return st
	}
	what, mend := "from the drafted finished line down to the finished edge", "Unpick and turn it again from the raw edge; where the drafted length is wanted, first cut the allowance to what the hem takes"
	if p.Drift.Sign() < 0 {
		what, mend = "from the drafted finished line up to the finished edge", "Unpick and turn it again from the raw edge; where the drafted length is wanted, take a shallower hem or face the edge"
	}
	st.Check = ticket.Check{What: what, Want: ticket.Long(p.Drift.Abs()), Give: ticket.Long(give(p.Spec.Tape)), Mend: mend}
	return st
}

// topStep ends a slit at its top.
func (p Plan) topStep() ticket.Step {
	st := ticket.Step{Press: "flat"}
	switch p.Spec.Opening {
	case Tucked:
		st.Together = ticket.RightTogether
		st.Do = "Fold the top of the slit across and stitch a tuck across the point that tapers to nothing at both ends"
		st.Note = "The tuck takes in the last of the turned hem at the point; fasten it off at both ends"
	case Faced:
		st.Together = ticket.RightTogether
		st.Do = "Face the top of the slit with a small square of the cloth, turned under on its outer edges"
		st.Note = "Stitch it round the point before the sides are turned, clip to the point, and turn it to the wrong side"
	case InSeam:
		st.Do = "Lay the hems under the end of the seam and stitch a bar across it, through all layers"
		switch p.Jog.Sign() {
		case 1:
			st.Note = "The finished edges pass the line of the seam and lap: lay one on the other at the clip"
		case -1:
			st.Note = "The finished edges stand back from the line of the seam: take a shallower hem where the edges should meet"
		default:
			st.Note = "The finished edges meet on the line of the seam"
		}
		st.Check = ticket.Check{
			What: "at the clip, from the line of the seam to the finished edge", Want: ticket.Long(p.Jog.Abs()), Give: ticket.Long(give(p.Spec.Tape).DivInt(2)),
			Mend: "Turn the side of the opening again to the depth of the seam",
		}
	}
	return st
}

func (p Plan) sweptStep() ticket.Step {
	return ticket.Step{Do: "Measure the edge that the slit opens into", Check: ticket.Check{
		What: "from finished edge to finished edge of the slit, round the piece", Want: ticket.Long(p.Swept), Give: ticket.Long(give(p.Spec.Tape).MulInt(2)),
		Mend: "Turn each side again; an error of one turn counts on both sides",
	}}
}
