package dart

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A Row is one printed figure about darts. Where the source prints a range,
// Least is the least and Most the greatest.
type Row struct {
	What   string       // what is measured: "point, short of the bust point"
	Where  string       // which dart: "front waist"
	Least  units.Length // the figure printed
	Most   units.Length // zero where one figure is printed
	Note   string       // what else the source says; empty if nothing
	Source string       // id, see [source.Lookup]
	Place  string       // page or section; empty if none
	Known  source.Known // how the figure is known
}

// Cite is the row as a citation.
func (r Row) Cite() source.Cite {
	return source.Cite{For: r.Where + ": " + r.What, ID: r.Source, Place: r.Place, Known: r.Known}
}

// Figures yields what is printed of the lengths, points and trims of darts.
// Rows disagree, as their sources do, on where the hole for the point is punched.
func Figures(yield func(Row) bool) {
	for _, r := range dartFigures {
		if !yield(r) {
			return
		}
	}
}

// dartFigures is the table: 27 rows, inches and metric each as printed.
var dartFigures = [...]Row{
	{What: "length", Where: "back skirt", Least: sew.Inch(4, 1), Most: sew.Inch(5, 1), Note: "ends 1 to 2 in above the fullest part", Source: "skirt-darts-page", Known: source.Read},
	{What: "length", Where: "front skirt", Least: sew.Inch(3, 1), Most: sew.Inch(4, 1), Note: "1 in shorter than the back", Source: "skirt-darts-page", Known: source.Read},
	{What: "length", Where: "back skirt", Least: sew.Inch(7, 1), Note: "printed beside 17.5 cm", Source: "skirt-sloper-page", Known: source.Read},
	{What: "point, short of the bust point", Where: "front waist", Least: sew.Inch(1, 2), Source: "dart-shortening-page", Known: source.Read},
	{What: "point, below the shoulder blade", Where: "back waist", Least: sew.Inch(1, 1), Source: "dart-shortening-page", Known: source.Read},
	{What: "point, short of the bust point", Where: "underarm", Least: sew.Inch(2, 1), Note: "or more", Source: "dart-shortening-page", Known: source.Read},
	{What: "point, short of the bust point", Where: "front shoulder", Least: sew.Inch(2, 1), Note: "or more", Source: "dart-shortening-page", Known: source.Read},
	{What: "length", Where: "back shoulder", Least: sew.Inch(3, 1), Note: "finished", Source: "dart-shortening-page", Known: source.Read},
	{What: "length", Where: "elbow", Least: sew.Inch(2, 1), Note: "finished", Source: "dart-shortening-page", Known: source.Read},
	{What: "slash, short of the point", Where: "bulky cloth", Least: sew.Inch(1, 2), Most: sew.Inch(1, 1), Source: "darts-course-page", Known: source.Read},
	{What: "distance between two", Where: "waist, split in two", Least: sew.Inch(2, 1), Note: "about, as sewn", Source: "dart-fitting-notes", Known: source.Read},
	{What: "point, short of the curve", Where: "any", Least: sew.Inch(1, 1), Note: "about", Source: "dart-class-notes", Known: source.Read},
	{What: "overlap at the widest place", Where: "double-pointed", Least: sew.Inch(1, 1), Note: "about; clipped at the widest place", Source: "dart-class-notes", Known: source.Read},
	{What: "taper begins before the point", Where: "any", Least: sew.Inch(3, 2), Most: sew.Inch(2, 1), Note: "the last 2 or 3 stitches on the fold", Source: "dart-taper-slides", Known: source.Read},
	{What: "shorter stitch begins before the point", Where: "any", Least: sew.Inch(1, 2), Note: "stitches of 0.75 mm", Source: "dart-stitch-notes", Known: source.Read},
	{What: "hole for the point, short of it", Where: "any", Least: sew.MM(2), Most: sew.MM(3), Note: "in dispute", Source: "dart-marking-page", Known: source.Read},
	{What: "point, short of the curve", Where: "any", Least: sew.Inch(1, 1), Note: "about; printed beside 2.5 cm", Source: "clothing-construction-handbook", Known: source.Read},
	{What: "overlap at the widest place", Where: "double-pointed", Least: sew.Inch(1, 1), Note: "about; printed beside 2.5 cm", Source: "clothing-construction-handbook", Known: source.Read},
	{What: "shortened, or length", Where: "underarm", Least: sew.Inch(2, 1), Most: sew.Inch(5, 2), Note: "slanting, shortened by about 2 in; level, until 2 1/2 in long", Source: "practical-dress-design", Place: "p. 42", Known: source.Read},
	{What: "point moved at most", Where: "any", Least: sew.Inch(1, 1), Most: sew.Inch(3, 2), Source: "practical-dress-design", Place: "p. 42", Known: source.Read},
	{What: "guideline, below the bust point", Where: "cluster", Least: sew.Inch(1, 1), Source: "dress-making-trade-theory", Place: "p. 199", Known: source.Read},
	{What: "slash lines, from the legs", Where: "cluster", Least: sew.Inch(1, 1), Source: "dress-making-trade-theory", Place: "p. 199", Known: source.Read},
	{What: "points, below the guideline", Where: "cluster", Least: sew.Inch(1, 2), Note: "at the waist the width may taper to 3/4 in", Source: "dress-making-trade-theory", Place: "p. 199", Known: source.Read},
	{What: "width, and length 2 in", Where: "small, on trousers", Least: sew.Inch(1, 2), Note: "about; half way between the seat dart and the side seam", Source: "trouser-fitting-book", Known: source.Read},
	{What: "hole for the point, short of it", Where: "any", Least: sew.Inch(1, 2), Note: "about; in dispute", Source: "dart-how-to-page", Known: source.Read},
	{What: "stitching reaches the fold before the tip", Where: "any", Least: sew.Inch(1, 4), Source: "dart-how-to-page", Known: source.Read},
	{What: "trim", Where: "wide or bulky", Least: sew.Inch(1, 2), Most: sew.Inch(5, 8), Note: "slashed to within 1/2 in of the point", Source: "complete-guide-to-sewing", Known: source.Memory},
}
