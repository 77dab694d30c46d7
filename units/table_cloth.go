package units

import (
	"iter"

	"example.com/clothyard/units/source"
)

// An OldMeasureRow is an old measure of cloth. One name stands for several lengths, by
// country and by book; each is a row of its own.
type OldMeasureRow struct {
	Name   string       // nail, ell, arshin ...
	Where  string       // the country or town whose measure it is
	Length Length       // as the source gives it, in today's inches, yards or metres
	Note   string       // what the source says of its exactness
	Source string       // id in the list of sources; empty where the row is common practice
	Known  source.Known // how it is known; common practice stands on copies of encyclopedias only
}

// OldMeasures yields the old measures.
func OldMeasures() iter.Seq[OldMeasureRow] { return oldMeasures.All() }

var oldMeasures = source.Table[OldMeasureRow]{
	{"nail", "England", Inch.Frac(9, 4), "1/16 yard", "workwomans-guide", source.Read},
	{"nail", "England", Inch.Frac(9, 4), "1/16 yard", "elements-of-arithmetic", source.Read},
	{"finger", "England", Yard.Frac(1, 8), "two nails", "", source.Practice},
	{"quarter", "England", Inch.Of(9), "four nails", "workwomans-guide", source.Read},
	{"quarter", "England", Inch.Of(9), "four nails", "elements-of-arithmetic", source.Read},
	{"span", "England", Inch.Of(9), "", "dry-goods-dictionary", source.Read},
	{"hand", "England", Inch.Of(4), "", "dry-goods-dictionary", source.Read},
	{"barleycorn", "England", Inch.Frac(1, 3), "", "elements-of-arithmetic", source.Read},
	{"yard", "England", Inch.Of(36), "four quarters, sixteen nails", "workwomans-guide", source.Read},
	{"ell", "England", Inch.Of(45), "five quarters, twenty nails", "workwomans-guide", source.Read},
	{"ell", "Flanders", Inch.Of(27), "three quarters", "elements-of-arithmetic", source.Read},
	{"ell", "France", Inch.Of(54), "six quarters", "workwomans-guide", source.Read},
	{"ell", "Scotland", Inch.Of(37), "as printed", "practical-arithmetic", source.Read},
	{"aune", "France", Yard.Frac(5, 4), "a fold of silk; another book's French ell is 1 1/2 yards", "dry-goods-dictionary", source.Read},
	{"ell", "Hamburg", Centimetre.Frac(579, 10), "about; Frankfurt, Cologne and Leipzig too", "", source.Practice},
	{"ell", "Denmark", Centimetre.Frac(627708, 10000), "24 Danish inches, the alen", "", source.Practice},
	{"ell", "Sweden", Centimetre.Of(59), "about, the aln", "", source.Practice},
	{"ell", "Poland", Inch.Of(31), "about", "", source.Practice},
	{"arshin", "Russia", Inch.Of(28), "16 vershok", "", source.Practice},
	{"arshin", "Russia", Metre.Frac(7111, 10000), "the ordinance of 1843", "", source.Practice},
	{"chetvert", "Russia", Inch.Of(7), "a quarter of an arshin", "", source.Practice},
	{"vershok", "Russia", Inch.Frac(7, 4), "1/16 arshin", "", source.Practice},
	{"metre", "United States", Yard.Frac(13, 12), "rounded, in a book of 1 metre = 1 1/12 yards", "dry-goods-dictionary", source.Read},
	{"yard", "United States, 1893 to 1959", Metre.Frac(3600, 3937), "before the inch was made 25.4 mm", "", source.Practice},
	{"yard", "since 1959", Metre.Frac(9144, 10000), "exact", "units-of-weight-circular", source.Read},
}
