package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// stripSteps are the steps of a faced or a bound edge.
func (p Plan) stripSteps(st []ticket.Step) []ticket.Step {
	s := p.Spec
	if !s.Cut.IsZero() {
		st = append(st, ticket.Step{
			Do: "Mark the drafted finished line and cut the allowance even below it", At: ticket.Long(s.Cut), From: "the drafted finished line",
			Note: "Press the ridges of seams that cross the edge open or apart, since the strip is sewn over them",
		})
	} else {
		st = append(st, ticket.Step{
			Do: "Mark the drafted finished line and cut the whole allowance away along it", At: ticket.Long(units.Length{}), From: "the drafted finished line",
			Note: "Staystitch a curved edge inside the seam before cutting, so that it does not stretch",
		})
	}
	st = append(st, ticket.Step{
		Do: "Cut the strip and join its pieces", At: ticket.Long(p.StripWidth), From: "edge to edge across the strip", Press: "the joins open", Note: p.stripNote(),
		Check: ticket.Check{What: "across the strip, in several places", Want: ticket.Long(p.StripWidth), Give: ticket.Long(give(p.Spec.Tape).DivInt(2)), Mend: "Cut it again where it is narrow; trim it where it is wide"},
	})
	switch {
	case s.Kind == Bound && s.Doubled:
		st = append(st, ticket.Step{Do: "Fold the strip in half along its length", At: ticket.Long(p.StripToFold), From: "its raw edges", Press: "wrong side inside"})
	default:
		st = append(st, ticket.Step{Do: "Turn in the free edge of the strip", At: ticket.Long(p.StripToFold), From: "the edge that is sewn on", Press: "to the wrong side"})
	}
	st = append(st, ticket.Step{
		Do: "Stitch the strip to the edge, raw edges even", Together: ticket.RightTogether, At: ticket.Long(s.Seam), From: "the raw edge", Note: p.curveNote(),
	})
	if s.Kind == Bound {
		return append(st,
			ticket.Step{
				Do: "Press the strip away, fold it over the raw edge, and pin its free edge on the line of stitching", Press: "over the edge",
				Check: ticket.Check{
					What: "the binding, from its seam to the finished edge", Want: ticket.Long(s.Depth), Give: ticket.Long(give(p.Spec.Tape).Min(s.Depth.DivInt(4))),
					Mend: "Trim the raw edges where the binding is wide; unpick and sew a narrower seam where it is scant",
				},
			},
			ticket.Step{
				Do: "Hem the free edge to the stitches by hand, or stitch in the ditch from the right side", At: ticket.Long(p.FinishedToStitch), From: "the finished edge",
			}, p.lengthStep())
	}
	roll := ticket.Step{
		Do: "Press the seam towards the facing, understitch, and turn the facing to the wrong side with the seam on the fold", Press: "from the wrong side",
		Note: "Grade the allowances under the facing, the widest next to the garment",
	}
	if !s.Favour.IsZero() {
		roll.Do = "Press the seam towards the facing, understitch, and turn the facing to the wrong side with the seam rolled inside"
		roll.At, roll.From = ticket.Long(s.Favour), "the finished edge, inwards"
	}
	roll.Check = p.depthCheck("from the finished edge to the free edge of the facing, on the wrong side")
	return append(st, roll, ticket.Step{
		Do: "Stitch the free edge down from the wrong side, or catch it by hand", At: ticket.Long(p.FinishedToStitch), From: "the finished edge", Note: p.fullness(),
	}, p.lengthStep())
}

// stripFullness is how a facing that is not cut to shape is made to lie.
func (p Plan) stripFullness() string {
	switch {
	case !p.Fullness.IsZero() && !p.Lack.IsZero():
		return "Shrink the fullness of the free edge with steam on the convex curves, and stretch it on the concave ones"
	case !p.Fullness.IsZero():
		return "Shrink the fullness of the free edge with steam, or lay it in small pleats under the stitching"
	case !p.Lack.IsZero():
		return "Stretch the free edge under the iron until it lies flat, or cut the facing to shape"
	}
	return ""
}

func (p Plan) stripNote() string {
	switch p.Spec.Kind {
	case FacedHem:
		if !p.Fullness.IsZero() || !p.Lack.IsZero() {
			return "Or cut the facing to the shape of the edge, its free edge that much shorter or longer; then nothing is left to lose"
		}
		return "Cut it with the grain of the edge that it faces"
	case BiasFaced:
		return "Cut it on the true bias; it grows narrower as it is stretched, so measure it after pressing it to the curve"
	}
	return "Cut it on the true bias where the edge curves; it grows narrower as it is stretched"
}

// curveNote tells how the strip goes round a curve, of which the plan may know
// nothing.
func (p Plan) curveNote() string {
	if p.Spec.Kind == Bound {
		return "Lay the strip flat along a straight edge; ease it round a convex curve and stretch it a little round a concave one, so that its fold lies flat"
	}
	return "Lay the strip flat along a straight edge; stretch it a little round a convex curve and ease it round a concave one, so that its free edge lies flat"
}

// turnUpSteps are the steps of a trouser turn-up.
func (p Plan) turnUpSteps(st []ticket.Step) []ticket.Step {
	s := p.Spec
	return append(st,
		ticket.Step{
			Do: "Mark the drafted finished line and cut the allowance even below it", At: ticket.Long(s.Cut), From: "the drafted finished line",
			Note: "Finish the raw edge flat; press the leg seams open within the turn-up",
		},
		ticket.Step{
			Do: "Mark the three folds: the foot of the leg, the top of the turn-up and its lower fold", At: ticket.Long(s.Depth), From: "one fold to the next, upwards from the lower one",
			Check: ticket.Check{What: "from the raw edge to the lower fold", Want: ticket.Long(s.First), Give: ticket.Long(give(p.Spec.Tape)), Mend: "Mark again from the raw edge; an error here shows at the foot of the leg"},
		},
		ticket.Step{
			Do: "Turn the hem in on the top fold of the turn-up and press", At: ticket.Long(p.RawToSecondFold), From: "the raw edge", Press: "to the wrong side", Note: p.turnUpNote(),
		},
		ticket.Step{
			Do: "Stitch the hem to the leg round the inside", At: ticket.Long(s.Stitch), From: "the raw edge",
			Note: "Keep the row between the raw edge and the lower fold, so that the turn-up hides it",
		},
		ticket.Step{
			Do: "Turn the folded edge up over the right side of the leg, on the foot of the leg, and press", At: ticket.Long(s.Depth), From: "the top fold", Press: "upwards",
			Check: p.depthCheck("from the foot of the leg to the top of the turn-up"),
		},
		ticket.Step{Do: "Catch the turn-up to the leg at both seams, inside its top, and at the centre of front and back"},
		p.lengthStep())
}

func (p Plan) turnUpNote() string {
	if p.Spec.Slope.IsZero() {
		return ""
	}
	return "The leg is not straight here: cut the seams of the turn-up as mirrors about each fold, or it cannot lie flat on the leg"
}
