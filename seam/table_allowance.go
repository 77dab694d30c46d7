package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// An AllowanceRow is one printed allowance.
type AllowanceRow struct {
	Edge   string       // what is seamed: "neckline"
	Trade  string       // in whose hands: "home patterns"
	Width  units.Length // from the stitching line to the raw edge
	Note   string       // what else the source says; empty if nothing
	Source string       // id, see [source.Lookup]
	Place  string       // page or section; empty if none
	Known  source.Known // how the figure is known
}

// Cite is the row as a citation.
func (r AllowanceRow) Cite() source.Cite {
	return source.Cite{For: r.Edge, ID: r.Source, Place: r.Place, Known: r.Known}
}

// Allowances yields the printed allowances by edge and trade. Rows disagree, as
// their sources do, for one on the armhole.
func Allowances(yield func(AllowanceRow) bool) {
	for _, r := range allowances {
		if !yield(r) {
			return
		}
	}
}

// allowances is the table: 44 rows, inches and metric each as printed.
var allowances = [...]AllowanceRow{
	{Edge: "plain seam", Trade: "school handbook", Width: inch(5, 8), Source: "clothing-construction-handbook", Known: source.Read},
	{Edge: "plain seam", Trade: "school handbook", Width: mm(15), Note: "printed beside 5/8 in", Source: "clothing-construction-handbook", Known: source.Read},
	{Edge: "all seams", Trade: "home patterns", Width: inch(5, 8), Note: "the hem excepted", Source: "allowance-drafting-page", Known: source.Read},
	{Edge: "all seams", Trade: "home patterns", Width: inch(5, 8), Note: "prints 15.8750 mm, 1.6 cm and 1.5 cm side by side", Source: "allowance-metric-note", Known: source.Read},
	{Edge: "standard seams", Trade: "industry", Width: inch(1, 2), Source: "allowance-drafting-page", Known: source.Read},
	{Edge: "neckline and armhole", Trade: "industry", Width: inch(1, 4), Note: "the armhole is in dispute", Source: "allowance-drafting-page", Known: source.Read},
	{Edge: "zip seam", Trade: "industry", Width: inch(3, 4), Source: "allowance-drafting-page", Known: source.Read},
	{Edge: "neckline, collar and front facing", Trade: "home patterns", Width: inch(3, 8), Note: "some patterns", Source: "allowance-part-five", Known: source.Read},
	{Edge: "neckline", Trade: "industry", Width: inch(1, 4), Source: "allowance-part-five", Known: source.Read},
	{Edge: "neckline and collar", Trade: "design school", Width: inch(1, 4), Note: "enclosed or shaped edges", Source: "allowance-school-tips", Known: source.Read},
	{Edge: "side, shoulder, armhole, waist, princess and yoke", Trade: "design school", Width: inch(1, 2), Note: "the armhole is in dispute", Source: "allowance-school-tips", Known: source.Read},
	{Edge: "centre back and any zip seam", Trade: "design school", Width: inch(3, 4), Source: "allowance-school-tips", Known: source.Read},
	{Edge: "general", Trade: "industry", Width: inch(3, 8), Note: "taken as equal to 1 cm", Source: "pattern-cutting", Place: "p. 107", Known: source.Read},
	{Edge: "general", Trade: "industry", Width: mm(10), Note: "taken as equal to 3/8 in", Source: "pattern-cutting", Place: "p. 107", Known: source.Read},
	{Edge: "overlock, 3 or 4 threads", Trade: "industry", Width: inch(3, 8), Note: "1/4 in tolerated at home", Source: "allowance-factory-rules", Known: source.Read},
	{Edge: "overlock with safety stitch", Trade: "industry", Width: inch(1, 2), Source: "allowance-factory-rules", Known: source.Read},
	{Edge: "bound sleeve vents and plackets", Trade: "industry", Width: inch(1, 8), Source: "allowance-factory-rules", Known: source.Read},
	{Edge: "tight curves, outside edges, necklines and welt pockets", Trade: "industry", Width: inch(1, 4), Source: "allowance-factory-rules", Known: source.Read},
	{Edge: "general", Trade: "industry", Width: inch(3, 8), Source: "allowance-factory-rules", Known: source.Read},
	{Edge: "straight seams", Trade: "industry", Width: inch(1, 2), Source: "stitch-standard-quiz", Known: source.Read},
	{Edge: "curves", Trade: "industry", Width: inch(1, 4), Source: "stitch-standard-quiz", Known: source.Read},
	{Edge: "major vertical seams", Trade: "designer tailoring", Width: inch(1, 1), Source: "stitch-standard-quiz", Known: source.Read},
	{Edge: "plain seam", Trade: "drafting guide", Width: mm(10), Note: "printed beside 3/8 in", Source: "allowance-drafting-guide", Known: source.Read},
	{Edge: "double-stitched seam", Trade: "drafting guide", Width: mm(10), Note: "printed beside 3/8 in", Source: "allowance-drafting-guide", Known: source.Read},
	{Edge: "French seam", Trade: "drafting guide", Width: inch(5, 8), Source: "allowance-drafting-guide", Known: source.Read},
	{Edge: "flat-felled seam", Trade: "drafting guide", Width: inch(5, 8), Source: "allowance-drafting-guide", Known: source.Read},
	{Edge: "bound seam", Trade: "drafting guide", Width: inch(5, 8), Source: "allowance-drafting-guide", Known: source.Read},
	{Edge: "French or flat-felled seam", Trade: "drafting guide", Width: mm(15), Note: "printed beside 5/8 in", Source: "allowance-essentials", Known: source.Read},
	{Edge: "all seams", Trade: "teaching page", Width: mm(15), Source: "seams-teaching-page", Known: source.Read},
	{Edge: "skirt length seams", Trade: "dressmaking book", Width: inch(3, 2), Source: "clothing-for-women", Place: "Simple Dress of Wool", Known: source.Read},
	{Edge: "waist", Trade: "dressmaking book", Width: inch(1, 2), Source: "clothing-for-women", Place: "Simple Dress of Wool", Known: source.Read},
	{Edge: "bodice underarm and shoulder", Trade: "dressmaking book", Width: inch(1, 1), Source: "clothing-for-women", Place: "Simple Dress of Wool", Known: source.Read},
	{Edge: "neck and armhole", Trade: "dressmaking book", Width: inch(1, 4), Source: "clothing-for-women", Place: "Simple Dress of Wool", Known: source.Read},
	{Edge: "sleeve length seams", Trade: "dressmaking book", Width: inch(1, 1), Source: "clothing-for-women", Place: "Simple Dress of Wool", Known: source.Read},
	{Edge: "sleeve top and bottom", Trade: "dressmaking book", Width: inch(1, 4), Source: "clothing-for-women", Place: "Simple Dress of Wool", Known: source.Read},
	{Edge: "coat, side seam of the forepart", Trade: "tailoring", Width: inch(1, 1), Note: "inlay", Source: "cutting-systems", Place: "p. 246", Known: source.Read},
	{Edge: "coat, shoulder", Trade: "tailoring", Width: inch(3, 4), Note: "inlay", Source: "cutting-systems", Place: "p. 246", Known: source.Read},
	{Edge: "coat, neck and scye", Trade: "tailoring", Width: inch(1, 2), Note: "inlay", Source: "cutting-systems", Place: "p. 246", Known: source.Read},
	{Edge: "coat, sidebody", Trade: "tailoring", Width: inch(1, 2), Note: "inlay", Source: "cutting-systems", Place: "p. 246", Known: source.Read},
	{Edge: "coat, top sleeve hind seam", Trade: "tailoring", Width: inch(3, 4), Note: "inlay", Source: "cutting-systems", Place: "p. 246", Known: source.Read},
	{Edge: "trousers, side seam", Trade: "tailoring", Width: inch(1, 1), Note: "inlay", Source: "cutting-systems", Known: source.Read},
	{Edge: "trousers, seat seam", Trade: "tailoring", Width: inch(1, 1), Note: "inlay", Source: "cutting-systems", Known: source.Read},
	{Edge: "trousers, leg seam to the knee", Trade: "tailoring", Width: inch(1, 2), Note: "inlay", Source: "cutting-systems", Known: source.Read},
	{Edge: "vest, side seam of the back", Trade: "tailoring", Width: inch(1, 1), Note: "inlay", Source: "cutting-systems", Known: source.Read},
}
