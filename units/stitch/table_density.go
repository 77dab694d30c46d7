package stitch

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A DensityRow is one density as a source prints it, for a job or for a cloth.
// Where one figure is printed and not a range, least and most are equal. The two
// measures of a row often disagree: each stands as printed.
type DensityRow struct {
	Job          Job          // what it is for; none for the seams of Cloth
	Cloth        Cloth        // the cloth it is for; none for any
	LeastPerInch units.Ratio  // stitches to the inch, the fewest
	MostPerInch  units.Ratio  // stitches to the inch, the most
	ShortLength  units.Length // stitch length, the shortest; zero where none is printed
	LongLength   units.Length // stitch length, the longest; zero where none is printed
	Use          string       // what it is for in the src's words
	Note         string       // what else is to be known; empty if nothing
	Source       string       // id, see [source.Lookup]
	Place        string       // where in it
	Known        source.Known // how it is known
}

// Cite is the row as a citation.
func (r DensityRow) Cite() source.Cite {
	return source.Cite{For: "stitches to the inch, " + r.Use, ID: r.Source, Place: r.Place, Known: r.Known}
}

// Densities yields the table of densities, 40 rows, for each job and each cloth
// the default first: the row of the source of highest rank, else that which
// another source prints too, else that whose two figures agree.
func Densities() iter.Seq[DensityRow] { return densityRows.All() }

func mm(n, d int64) units.Length { return units.Millimetre.Frac(n, d) }

// job and cloth make rows; lengths are in tenths of a millimetre.
func job(j Job, least, most, short, long int64, use, note, src, place string) DensityRow {
	return DensityRow{j, 0, units.RatioOf(least, 1), units.RatioOf(most, 1), mm(short, 10), mm(long, 10), use, note, src, place, source.Read}
}

func cloth(c Cloth, least, most, short, long int64, use, note, src string) DensityRow {
	return DensityRow{0, c, units.RatioOf(least, 1), units.RatioOf(most, 1), mm(short, 10), mm(long, 10), use, note, src, "", source.Read}
}

// heavy makes the rows of the one figure that a page prints for "heavy fabric;
// basting; topstitching". It is none for seams, which others print finer even on
// denim.
func heavy(j Job, use string) DensityRow {
	return DensityRow{j, BottomWeight, units.RatioOf(5, 1), units.RatioOf(6, 1), mm(40, 10), mm(50, 10), use, "printed in one line with heavy fabric", "stitch-size-answer", "", source.Read}
}

var densityRows = source.Table[DensityRow]{
	job(Regular, 10, 12, 0, 0, "general, types 301 and 401; clothing repair", "", "tent-repair-manual", "table 3-1, p. 69"),
	job(Regular, 10, 14, 25, 25, "regulation", "", "stitch-length-slides", ""),
	job(Regular, 10, 14, 17, 24, "regulation", "", "seam-cards", ""),
	job(Regular, 10, 15, 20, 30, "regular seams", "", "stitch-and-needle-page", ""),
	job(Regular, 8, 10, 25, 30, "standard", "", "stitch-setting-answer", ""),
	job(Regular, 8, 10, 0, 0, "industrial general", "10 to 12 where lockstitch; quoting a thread maker", "stitch-setting-answer", ""),
	job(Basting, 6, 8, 30, 40, "machine basting", "", "stitch-length-slides", ""),
	job(Basting, 6, 8, 30, 40, "machine basting", "", "seam-cards", ""),
	job(Basting, 5, 8, 40, 50, "basting", "with altered tension", "stitch-and-needle-page", ""),
	job(Basting, 4, 5, 50, 70, "basting", "7 mm is 3.6 to the inch", "stitch-setting-answer", ""),
	job(Basting, 6, 6, 0, 0, "basting, the longest stitch", "", "stitch-length-class-notes", ""),
	heavy(Basting, "heavy fabric; basting"),
	job(Easing, 8, 10, 24, 30, "ease stitching", "", "stitch-length-slides", ""),
	job(Easing, 8, 10, 24, 30, "ease", "", "seam-cards", ""),
	job(Easing, 8, 10, 20, 40, "easing fullness", "", "stitch-and-needle-page", ""),
	job(Staystitch, 12, 18, 15, 20, "stay-stitching", "misprint: the page has 12-8, 18 is likely", "stitch-setting-answer", ""),
	job(Reinforce, 20, 24, 10, 10, "reinforcement", "", "stitch-length-slides", ""),
	job(Reinforce, 18, 20, 15, 15, "reinforcing", "1.5 mm is 16.9 to the inch", "stitch-and-needle-page", ""),
	job(Reinforce, 15, 20, 0, 0, "reinforcement", "", "stitch-length-class-notes", ""),
	job(Topstitch, 7, 8, 30, 35, "topstitch, light to medium", "", "stitch-setting-answer", ""),
	heavy(Topstitch, "heavy fabric; topstitching"),
	job(FineStitch, 14, 24, 10, 20, "fine stitching", "", "stitch-and-needle-page", ""),
	job(Placket, 15, 15, 0, 0, "reinforcing at placket point", "", "placket-pointers-page", ""),
	job(Piecing, 13, 13, 20, 20, "piecing", "", "hemming-stitch-answer", ""),
	job(OveredgeSeam, 6, 10, 0, 0, "overedge, types 502, 503 and 504", "", "tent-repair-manual", "table 3-1"),
	job(SafetySeam, 10, 12, 0, 0, "safety stitch, types 515, 516 and 519", "", "tent-repair-manual", "table 3-1"),
	job(ShirtSeam, 10, 14, 0, 0, "uniform shirt, types 301 and 401", "", "tent-repair-manual", "table 5-1, p. 114"),
	job(TrouserSeam, 12, 16, 0, 0, "uniform trousers, types 301 and 401", "columns in the order of the scan: shirt, then trousers", "tent-repair-manual", "table 5-1, p. 114"),
	job(CargoCover, 7, 11, 0, 0, "medium-duty cargo covers, thread E", "", "cargo-cover-manual", "p. 30"),
	job(Webbing, 5, 8, 0, 0, "heavy-duty webbing, thread 3 or 5", "", "cargo-cover-manual", ""),
	job(Bartack, 56, 56, 0, 0, "bartack, the fewest", "printed as 14 to 1/4 in", "clothing-sewing-specification", "p. 17"),
	cloth(Sheer, 12, 15, 0, 0, "fine", "", "stitch-length-class-notes"),
	cloth(Sheer, 13, 20, 20, 20, "fine fabrics", "", "stitch-size-answer"),
	cloth(MediumWeight, 10, 12, 25, 30, "mid-weight fabrics", "", "stitch-size-answer"),
	cloth(MediumWeight, 10, 12, 0, 0, "most cloths", "", "stitch-length-class-notes"),
	cloth(BottomWeight, 8, 10, 0, 0, "denim or twill", "", "stitch-length-class-notes"),
	cloth(Brocade, 12, 12, 25, 25, "brocade, challis, velvet", "12 to the inch is 2.117 mm", "stitch-and-needle-page"),
	cloth(Shirting, 14, 14, 20, 20, "light shirting", "14 to the inch is 1.814 mm", "stitch-and-needle-page"),
	cloth(Coating, 9, 9, 30, 30, "heavy wool coating", "", "stitch-and-needle-page"),
	cloth(Suede, 10, 10, 30, 30, "imitation suede", "10 to the inch is 2.54 mm", "stitch-and-needle-page"),
}

// A ConversionRow is one line of a printed table of stitches to the inch and
// stitch lengths. The tables round each in its own way, and some misprint; none
// is used for a sum, see [Density].
type ConversionRow struct {
	PerInch units.Ratio  // stitches to the inch, as printed
	Printed units.Length // the stitch length printed for it
	Note    string       // how the page came to it, or where it is wrong; empty if it only rounds
	Source  string       // id, see [source.Lookup]
	Known   source.Known // how it is known
}

// Exact is the stitch length that PerInch is: 1 in / PerInch.
func (r ConversionRow) Exact() units.Length { return inch(r.PerInch) }

// Off is how far the printed length is from the exact one: Printed less Exact.
func (r ConversionRow) Off() units.Length { return r.Printed.Sub(r.Exact()) }

// Conversions yields the printed tables, 24 rows, each source together.
func Conversions() iter.Seq[ConversionRow] { return conversionRows.All() }

func conv(per, tenths int64, note, src string) ConversionRow {
	return ConversionRow{units.RatioOf(per, 1), mm(tenths, 10), note, src, source.Read}
}

var conversionRows = source.Table[ConversionRow]{
	conv(15, 17, "", "stitch-length-conversion"),
	conv(12, 21, "", "stitch-length-conversion"),
	conv(10, 25, "", "stitch-length-conversion"),
	conv(9, 28, "", "stitch-length-conversion"),
	conv(8, 32, "", "stitch-length-conversion"),
	conv(7, 36, "", "stitch-length-conversion"),
	conv(6, 42, "", "stitch-length-conversion"),
	conv(5, 50, "", "stitch-length-conversion"),
	conv(50, 5, "", "stitch-length-arithmetic"),
	conv(25, 1, "misprint: 1 mm is meant", "stitch-length-arithmetic"),
	conv(16, 15, "", "stitch-length-arithmetic"),
	conv(12, 20, "2 mm is 12.7 to the inch", "stitch-length-arithmetic"),
	conv(7, 35, "", "stitch-length-arithmetic"),
	conv(24, 10, "1 mm is 25.4 to the inch", "stitch-length-note"),
	conv(13, 20, "", "stitch-length-note"),
	conv(9, 30, "3 mm is 8.47 to the inch", "stitch-length-note"),
	conv(6, 40, "", "stitch-length-note"),
	conv(5, 50, "", "stitch-length-note"),
	conv(4, 60, "", "stitch-length-note"),
	{units.RatioOf(254, 25), mm(25, 10), "then rounded down to 10", "stitch-dial-page", source.Read},
	conv(12, 20, "2.11 rounded down to an even step of the dial", "stitch-dial-page"),
	conv(15, 17, "1.69 rounded up", "stitch-dial-page"),
	conv(4, 60, "takes the inch as 24 mm", "stitch-length-slides"),
	{units.RatioOf(24, 5), mm(5, 1), "takes the inch as 24 mm", "stitch-length-slides", source.Read},
}

// A CountRow is how many stitches a source asks of one small piece of work.
type CountRow struct {
	Work        string       // bartack, buttonhole, button
	Least, Most int          // stitches in each
	Source      string       // id, see [source.Lookup]
	Place       string       // where in it
	Known       source.Known // how it is known
}

// Counts yields the table of counts, 4 rows.
func Counts() iter.Seq[CountRow] { return countRows.All() }

var countRows = source.Table[CountRow]{
	{"bartack", 28, 28, "tent-repair-manual", "p. 366", source.Read},
	{"bartack", 18, 18, "tent-repair-manual", "table 3-1", source.Read},
	{"buttonhole", 44, 46, "tent-repair-manual", "", source.Read},
	{"button, type 101 or 301", 20, 24, "tent-repair-manual", "", source.Read},
}

// A NeedleRow is a size of machine needle and the cloth that a source gives it
// for. The metric number is the shank in hundredths of a millimetre.
type NeedleRow struct {
	Metric int          // the metric number, as 80
	Size   int          // the other number of the pair, as 12 in 80/12
	Cloth  Cloth        // the cloth it is for
	Use    string       // the cloth as the src names it
	Source string       // id, see [source.Lookup]
	Known  source.Known // how it is known
}

// Shank is the diameter of the shank: Metric hundredths of a millimetre, common
// practice.
func (r NeedleRow) Shank() units.Length { return mm(int64(r.Metric), 100) }

// Needles yields the table of needles, 13 rows, for each cloth the default first.
func Needles() iter.Seq[NeedleRow] { return needleRows.All() }

var needleRows = source.Table[NeedleRow]{
	{60, 8, Sheer, "sheers, chiffon, silks", "needle-size-newsletter", source.Read},
	{70, 10, BlouseWeight, "blouse-weight polyester, silk, batiste", "needle-size-newsletter", source.Read},
	{80, 12, MediumWeight, "cotton, rayon, blends", "needle-size-newsletter", source.Read},
	{90, 14, BottomWeight, "bottom weights, wool, corduroy", "needle-size-newsletter", source.Read},
	{100, 16, Denim, "denim, duck", "needle-size-newsletter", source.Read},
	{110, 18, Canvas, "canvas, tapestry", "needle-size-newsletter", source.Read},
	{120, 19, BoatCanvas, "canvas for boats", "needle-size-newsletter", source.Read},
	{100, 16, Coating, "heavy wool coating", "stitch-and-needle-page", source.Read},
	{75, 11, Suede, "imitation suede", "stitch-and-needle-page", source.Read},
	{70, 10, Shirting, "light shirting, with a sharp point", "stitch-and-needle-page", source.Read},
	{90, 14, Brocade, "medium brocade, with a sharp point", "stitch-and-needle-page", source.Read},
	{80, 12, Brocade, "challis", "stitch-and-needle-page", source.Read},
	{80, 12, Brocade, "velvet", "stitch-and-needle-page", source.Read},
}
