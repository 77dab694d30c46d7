package hem

import "example.com/clothyard/units"

// MaxEdges is the greatest number of flared edges, and MaxHems the greatest
// number of hems on one piece.
const (
	MaxEdges = 1_000
	MaxHems  = 1_000
)

// A Spec is a hem to plan. Zero means not given, in every field; [Kind] has a
// table of what each kind reads. Lengths may not be negative.
type Spec struct {
	Kind Kind // how it is hemmed; needed

	// Drafted is the allowance that the pattern drew, measured from the finished
	// line down to the cutting line; for an opening in a seam, the allowance of
	// the seam. Default Cut; where that is not given either, what the hem takes,
	// or SeamTake for an opening in a seam. A slit that is cut has none.
	Drafted units.Length
	// Cut is the allowance as cut, from the drafted finished line to the raw
	// edge. Default Drafted. It is no limit: a hem that takes more than Cut
	// makes the garment shorter.
	Cut units.Length

	// First is the depth of the first turn, the part that is hidden, from the raw
	// edge to the first fold. It follows from Depth and Take. Default: the turn
	// of the table for a double hem and a slit, [Turns], or half the hem where
	// that would be too deep; equal turns for a narrow hem.
	First units.Length
	// Depth is the depth of the hem as it shows on the wrong side, from the last
	// fold, which is the finished edge, to the inner fold, or to the raw edge of
	// a single hem. It follows from First and Take.
	Depth units.Length
	// Take is all that the hem takes: First + Depth, or Depth for a single hem.
	// Where neither it nor Depth is given, it is Cut by default, which puts the
	// finished edge on the line drafted; not for a slit.
	Take units.Length
	// Trim is what is left of the first turn where it is trimmed after the fold
	// has been stitched, as for a baby hem; measured from the first fold. Zero
	// where nothing is trimmed.
	Trim units.Length
	// Stitch is the distance of the stitching from the inner fold, into the hem;
	// from the raw edge for a single hem, where it is the line of a blind hem.
	// Default 1/16 in, and 1/4 in for a single hem, but at most half of Depth;
	// both common practice.
	Stitch units.Length

	// Slope is how far each flared side edge runs out for one unit down, 0 where
	// the edges are straight down; below zero where the garment narrows towards
	// the hem.
	Slope units.Ratio
	// Edges is how many side edges slope so, two at each side seam. It is needed
	// where Slope is given. At most [MaxEdges].
	Edges int
	// Sweep is the drafted length of the edge that is hemmed, along the finished
	// line; for a slit, of the edge that the slit opens into. No default.
	Sweep units.Length

	// Slit is the length of the slit from the edge to its top. No default; only
	// Plan.Run needs it.
	Slit units.Length
	// Opening is how the slit ends at its top; needed for a slit.
	Opening Opening
	// SeamTake is what the seam takes from each side where the slit is an
	// opening in a seam, from the raw edge to the line of its last row; needed
	// there.
	SeamTake units.Length
}

// cutSlit reports whether s is a slit cut into whole cloth, so that no allowance
// was drafted for it.
func (s Spec) cutSlit() bool { return s.Kind == Slit && (s.Opening == Tucked || s.Opening == Faced) }

func (s Spec) inSeam() bool { return s.Kind == Slit && s.Opening == InSeam }

// turned is what is hidden of the first turn after trimming: what has to lie
// flat inside the hem.
func (s Spec) turned() units.Length {
	if s.Trim.Sign() > 0 {
		return s.Trim
	}
	return s.First
}

// Solve fills the fields that follow from those given, then those that have a
// default. It fails with [ticket.Faults].
func (s Spec) Solve() (Spec, error) {
	s, _, err := s.solve()
	return s, err
}
