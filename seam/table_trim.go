package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A TrimRow is one printed width of trimming, grading, clipping or of a row of
// stitching beside a seam. Where the source prints a range, Width is the least
// and Most the greatest.
type TrimRow struct {
	Work   string       // what is done: "clip, spacing"
	Width  units.Length // the figure printed; what is left, for a trim
	Most   units.Length // zero where one figure is printed
	Note   string       // what else the source says; empty if nothing
	Source string       // id, see [source.Lookup]; empty for common practice
	Place  string       // page or section; empty if none
	Known  source.Known // how the figure is known
}

// Cite is the row as a citation.
func (r TrimRow) Cite() source.Cite {
	return source.Cite{For: r.Work, ID: r.Source, Place: r.Place, Known: r.Known}
}

// Trims yields the printed widths of trims, clips and rows beside a seam.
func Trims(yield func(TrimRow) bool) {
	for _, r := range trims {
		if !yield(r) {
			return
		}
	}
}

// trims is the table: 36 rows.
var trims = [...]TrimRow{
	{Work: "trim, enclosed seam", Width: inch(1, 8), Most: inch(1, 4), Source: "apparel-textbook", Place: "ch. 26, p. 451", Known: source.Read},
	{Work: "trim, armhole underarm and seat", Width: inch(1, 4), Source: "apparel-textbook", Place: "p. 451", Known: source.Read},
	{Work: "trim, armhole underarm", Width: inch(1, 4), Note: "printed beside .64 cm", Source: "construction-standards-list", Place: "p. 19", Known: source.Read},
	{Work: "trim, armhole above", Width: inch(5, 8), Note: "left whole; printed beside 1.59 cm", Source: "construction-standards-list", Place: "p. 19", Known: source.Read},
	{Work: "trim, even", Width: inch(1, 4), Source: "apparel-class-slides", Known: source.Read},
	{Work: "trim, half of 5/8 in", Width: inch(5, 16), Note: "half of the width unless told", Source: "trim-and-clip-page", Known: source.Read},
	{Work: "trim, plain seam edges", Width: inch(1, 2), Most: inch(3, 4), Note: "the scan is poor", Source: "dressmaking-manual", Known: source.Read},
	{Work: "trim, under flap smaller by", Width: inch(1, 8), Known: source.Practice},
	{Work: "grade, layer next to the outside", Width: inch(1, 4), Note: "the widest", Source: "apparel-textbook", Place: "p. 451", Known: source.Read},
	{Work: "grade, first layer", Width: inch(1, 8), Note: "each next one wider", Source: "trim-and-clip-page", Known: source.Read},
	{Work: "grade, smallest", Width: inch(1, 8), Source: "apparel-class-slides", Known: source.Read},
	{Work: "clip, spacing", Width: inch(1, 4), Most: inch(1, 2), Note: "by the sharpness of the curve", Source: "apparel-textbook", Place: "p. 452", Known: source.Read},
	{Work: "clip, spacing", Width: inch(1, 4), Most: inch(1, 2), Note: "inward curve", Source: "apparel-class-slides", Known: source.Read},
	{Work: "clip, spacing", Width: mm(20), Note: "joined curves; printed beside 3/4 in", Source: "seam-finishing-methods", Known: source.Read},
	{Work: "notch, spacing", Width: inch(1, 4), Most: inch(1, 2), Note: "outward curve", Source: "apparel-class-slides", Known: source.Read},
	{Work: "clip, stops short of the stitching by", Width: inch(1, 8), Source: "trim-and-clip-page", Known: source.Read},
	{Work: "reinforce, second row inside the allowance by", Width: inch(1, 4), Note: "then trimmed to 3/8 in", Source: "stitch-length-slides", Known: source.Read},
	{Work: "reinforce, trim beyond the second row to", Width: inch(3, 8), Note: "of 5/8 in", Source: "stitch-length-slides", Known: source.Read},
	{Work: "staystitch, inside the seam line by", Width: inch(1, 8), Source: "stitch-length-slides", Known: source.Read},
	{Work: "staystitch, inside the seam line by", Width: inch(1, 8), Source: "staystitch-page", Known: source.Read},
	{Work: "staystitch, from the cut edge", Width: inch(1, 2), Note: "with 5/8 in", Source: "clothing-construction-handbook", Known: source.Read},
	{Work: "staystitch, outside the seam line by", Width: inch(1, 3), Note: "a poor scan, likely 1/8 in", Source: "extension-tailoring-techniques", Known: source.Read},
	{Work: "ease stitch, less than the allowance by", Width: inch(1, 8), Source: "stitch-length-slides", Known: source.Read},
	{Work: "edge-stitch, from the edge", Width: inch(1, 8), Note: "about, or less", Source: "edge-stitch-page", Known: source.Read},
	{Work: "edge-stitch, from the edge", Width: inch(1, 8), Source: "edge-stitch-note", Known: source.Read},
	{Work: "edge-stitch, from the edge at most", Width: inch(1, 8), Source: "topstitch-page", Known: source.Read},
	{Work: "topstitch, from the edge", Width: inch(1, 4), Note: "about", Source: "edge-stitch-page", Known: source.Read},
	{Work: "topstitch, from the edge more than", Width: inch(1, 8), Source: "topstitch-page", Known: source.Read},
	{Work: "facing edge, row from the edge", Width: inch(1, 4), Note: "pinked", Source: "apparel-textbook", Place: "p. 453", Known: source.Read},
	{Work: "stay tape on bias edges", Width: inch(1, 4), Source: "clothing-for-women", Known: source.Read},
	{Work: "backstitch", Width: inch(1, 2), Source: "clothing-construction-handbook", Known: source.Read},
	{Work: "backstitch, at least", Width: inch(1, 2), Source: "tent-repair-manual", Place: "p. 366", Known: source.Read},
	{Work: "seam straightness, either way", Width: inch(1, 16), Source: "clothing-sewing-specification", Place: "p. 17", Known: source.Read},
	{Work: "understitch, from the seam", Width: inch(1, 16), Most: inch(1, 8), Note: "on the facing", Known: source.Practice},
	{Work: "dart, wide or bulky, trim to", Width: inch(1, 2), Most: inch(5, 8), Source: "complete-guide-to-sewing", Known: source.Memory},
	{Work: "welt, inner ply trimmed to", Width: inch(1, 4), Source: "complete-guide-to-sewing", Known: source.Memory},
}
