package hem

import "example.com/clothyard/units"

// MaxEdges is the greatest number of flared edges, MaxHems the greatest number of
// hems on one piece, and MaxCircle the greatest number of full circles that an
// edge may turn through.
const (
	MaxEdges  = 1_000
	MaxHems   = 1_000
	MaxCircle = 1_000
)

// A Spec is a hem to plan. Zero means not given, in every field but Slope; [Kind]
// has a table of what each kind reads. A length may not be negative.
type Spec struct {
	// Tape is the measure that defaults follow. It may be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Kind is how it is hemmed. It is needed.
	Kind Kind `json:"kind,omitzero"`

	// Drafted is the allowance that the pattern drew, measured from the finished
	// line down to the cutting line; for an opening in a seam, the allowance of
	// the seam. It may be omitted; the default is Cut, or what the hem takes where
	// that is not given either, or SeamTake for an opening in a seam. A slit that is
	// cut has none.
	Drafted units.Length `json:"drafted,omitzero"`
	// Cut is the allowance as cut, from the drafted finished line to the raw edge.
	// It may be omitted; the default is Drafted, but nothing for a bound edge, as a
	// binding takes nothing and the allowance drafted is cut away. It is no limit: a
	// hem that takes more than Cut makes the garment shorter.
	Cut units.Length `json:"cut,omitzero"`

	// First is the depth of the first turn, the part that is hidden, from the raw
	// edge to the first fold. It follows from Depth and Take, or may be omitted. The
	// default is the turn of [Turns] for a double hem and a slit, or half the hem
	// where that is too deep, and equal turns for a narrow hem. A blind hem without
	// it is turned once, its raw edge finished flat. Of a faced or bound edge it is
	// the turn of the free edge of the strip; the default is that of [Strips], for a
	// binding Depth. Of a facing it is at most Depth less Favour, where the seam
	// lies. Of a turn-up it is the hem inside the leg; the default is the height of
	// the turn-up.
	First units.Length `json:"first,omitzero"`
	// Depth is the depth of the hem as it shows on the wrong side, from the last
	// fold, which is the finished edge, to the inner fold, or to the raw edge of
	// a single hem; of a binding its width as it shows, of a turn-up the height
	// of the cuff. It follows from First and Take.
	Depth units.Length `json:"depth,omitzero"`
	// Take is all that the hem takes: First + Depth, or Depth for a hem turned
	// once, First + 2 x Depth for a turn-up, Seam + Favour for a faced edge. It may
	// be omitted; where Depth is omitted too the default is Cut, which puts the
	// finished edge on the line drafted, but not for a slit. For a faced edge the
	// default is Cut where Seam is omitted. A binding does not read it.
	Take units.Length `json:"take,omitzero"`
	// Trim is what is left of the first turn where it is trimmed after the fold has
	// been stitched, as for a baby hem. It is measured from the first fold. It may
	// be omitted; nothing is then trimmed.
	Trim units.Length `json:"trim,omitzero"`
	// Stitch is the distance of the stitching from the inner fold, into the hem; of a
	// single hem from the raw edge, where it is the line of a blind hem. It may be
	// omitted; the default is 1/16 in or 2 mm, for a single hem 1/4 in or 6 mm, but at most half of
	// Depth; for a blind hem half of Back; and at most half of a first turn, as
	// trimmed. The row of a hem turned twice lies within its first turn, or it does
	// not catch it. That of a facing may lie beyond the turn of its free edge, but not
	// on it, and nearer than Depth less Favour, where the facing ends. Of a turn-up it
	// is from the raw edge inside the leg; the default is 1/4 in or 6 mm, but at most half of
	// First. All are common practice.
	Stitch units.Length `json:"stitch,omitzero"`

	// Back is, for a blind hem, how far the inner edge of the hem stands beyond the
	// fold of the garment when that is folded back for stitching. It may be omitted;
	// the default is the first row of [FoldBacks], or its metric row, but at most half of
	// Depth.
	Back units.Length `json:"back,omitzero"`
	// Seam is the seam by which a facing or a binding is sewn on, measured from the
	// raw edge of the garment. It follows from Take and Favour, or may be omitted. For
	// a facing the default is what Cut leaves for it, or that of [Strips] where Cut is
	// omitted too; for a binding it is Depth, and the binding then neither adds to the
	// garment nor takes from it.
	Seam units.Length `json:"seam,omitzero"`
	// Favour is how far the seam of a facing is rolled to the wrong side, so that the
	// facing does not show, measured from the finished edge. It may be omitted; the
	// seam then lies on the finished edge.
	Favour units.Length `json:"favour,omitzero"`
	// Doubled says that a binding is folded in half along its length and both raw
	// edges are sewn on together.
	Doubled bool `json:"doubled,omitzero"`
	// Spare is what is added to the width of a strip for the turn of the cloth and
	// for the give of the bias. It may be omitted; nothing is then added. 1/8 in on
	// the bias is common practice.
	Spare units.Length `json:"spare,omitzero"`

	// Slope is how far each flared side edge runs out for one unit down: 0 where the
	// edges are straight down, negative where the garment narrows towards the hem. It
	// may be omitted; the default is 0.
	Slope units.Ratio `json:"slope,omitzero" noun:"zero"`
	// Edges is how many side edges slope so, two at each side seam, at most
	// [MaxEdges]. It is needed where Slope is given.
	Edges int `json:"edges,omitzero"`
	// Sweep is the drafted length of the edge that is hemmed, along the finished
	// line; for a slit, of the edge that the slit opens into. It may be omitted; the
	// plan then has no length of the edge.
	Sweep units.Length `json:"sweep,omitzero"`
	// Circle is how much the convex curves of the edge turn through in all, as a part
	// of a full circle: 1 for a circle, 1/4 for a corner rounded square. It is at most
	// [MaxCircle]. It may be omitted; the default is 1 for a circular hem, and no curve
	// for the others.
	Circle units.Ratio `json:"circle,omitzero"`
	// Hollow is the same for the concave curves of the edge, as those at the side
	// seams of a shirt tail. It is at most [MaxCircle]. It may be omitted; the edge then
	// has none.
	Hollow units.Ratio `json:"hollow,omitzero"`
	// Radius is, for a circular hem, the radius of the drafted finished line. It may be
	// omitted; only the length round the edge needs it.
	Radius units.Length `json:"radius,omitzero"`

	// Slit is the length of the slit from the edge to its top. It may be omitted; only
	// the length of hem to sew needs it.
	Slit units.Length `json:"slit,omitzero"`
	// Opening is how the slit ends at its top. It is needed for a slit.
	Opening Opening `json:"opening,omitzero"`
	// SeamTake is what the seam takes from each side where the slit is an opening in a
	// seam, from the raw edge to the line of its last row. It is needed there.
	SeamTake units.Length `json:"seamTake,omitzero"`
}

// cutSlit reports whether s is a slit cut into whole cloth, so that no allowance
// was drafted for it.
func (s Spec) cutSlit() bool { return s.Kind == Slit && (s.Opening == Tucked || s.Opening == Faced) }

func (s Spec) inSeam() bool { return s.Kind == Slit && s.Opening == InSeam }

// oneFold reports whether the hem is turned once, its raw edge finished flat.
func (s Spec) oneFold() bool { return s.Kind == Single || s.Kind == Blind && s.First.IsZero() }

// reach is how far apart, in the flat cloth, the inner edge of the hem and the
// line on which it comes to lie are; negative for a binding, whose outer edge
// has to give.
func (s Spec) reach() units.Length {
	switch {
	case s.Kind == Bound:
		return s.Depth.Neg()
	case s.Kind.faced():
		return s.Depth.Add(s.Favour)
	}
	return s.Depth.MulInt(2)
}

// turned is what is hidden of the first turn after trimming: what has to lie
// flat inside the hem.
func (s Spec) turned() units.Length {
	if s.trimmed() {
		return s.Trim
	}
	return s.First
}

// trimmed reports whether the first turn is trimmed.
func (s Spec) trimmed() bool { return s.Trim.Sign() > 0 && s.Kind.twoTurns() }

// room is what a first turn has: the depth of the hem, of a facing as far as its
// seam.
func (s Spec) room() units.Length {
	if s.Kind.faced() && s.Favour.Less(s.Depth) {
		return s.Depth.Sub(s.Favour)
	}
	return s.Depth
}
