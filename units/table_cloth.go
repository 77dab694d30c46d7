package units

import "iter"

// A ClothMeasure is an old measure of cloth. One name stands for several
// lengths, by country and by book; each is a row of its own.
type ClothMeasure struct {
	Name   string // nail, ell, arshin ...
	Where  string // the country or town whose measure it is
	Length Length // as the source gives it, in today's inches, yards or metres
	Note   string // what the source says of its exactness
	Source string // id in the list of sources; empty where the row is common practice
	Known  string // read, memory or common practice
}

// ClothMeasures yields the old measures, 25 rows. The rows marked common practice
// stand on copies of encyclopedias only.
func ClothMeasures(yield func(ClothMeasure) bool) {
	for _, m := range clothMeasures {
		if !yield(m) {
			return
		}
	}
}

// ClothNamed yields the rows that bear a name, as ell has several.
func ClothNamed(name string) iter.Seq[ClothMeasure] {
	return func(yield func(ClothMeasure) bool) {
		for _, m := range clothMeasures {
			if m.Name == name && !yield(m) {
				return
			}
		}
	}
}

const clothPractice = "common practice"

var clothMeasures = [...]ClothMeasure{
	{"nail", "England", Inch.Frac(9, 4), "1/16 yard", "workwomans-guide", "read"},
	{"nail", "England", Inch.Frac(9, 4), "1/16 yard", "elements-of-arithmetic", "read"},
	{"finger", "England", Yard.Frac(1, 8), "two nails", "", clothPractice},
	{"quarter", "England", Inch.Of(9), "four nails", "workwomans-guide", "read"},
	{"quarter", "England", Inch.Of(9), "four nails", "elements-of-arithmetic", "read"},
	{"span", "England", Inch.Of(9), "", "dry-goods-dictionary", "read"},
	{"hand", "England", Inch.Of(4), "", "dry-goods-dictionary", "read"},
	{"barleycorn", "England", Inch.Frac(1, 3), "", "elements-of-arithmetic", "read"},
	{"yard", "England", Inch.Of(36), "four quarters, sixteen nails", "workwomans-guide", "read"},
	{"ell", "England", Inch.Of(45), "five quarters, twenty nails", "workwomans-guide", "read"},
	{"ell", "Flanders", Inch.Of(27), "three quarters", "elements-of-arithmetic", "read"},
	{"ell", "France", Inch.Of(54), "six quarters", "workwomans-guide", "read"},
	{"ell", "Scotland", Inch.Of(37), "as printed", "practical-arithmetic", "read"},
	{"aune", "France", Yard.Frac(5, 4), "a fold of silk; another book's French ell is 1 1/2 yards", "dry-goods-dictionary", "read"},
	{"ell", "Hamburg", Centimetre.Frac(579, 10), "about; Frankfurt, Cologne and Leipzig too", "", clothPractice},
	{"ell", "Denmark", Centimetre.Frac(627708, 10000), "24 Danish inches, the alen", "", clothPractice},
	{"ell", "Sweden", Centimetre.Of(59), "about, the aln", "", clothPractice},
	{"ell", "Poland", Inch.Of(31), "about", "", clothPractice},
	{"arshin", "Russia", Inch.Of(28), "16 vershok", "", clothPractice},
	{"arshin", "Russia", Metre.Frac(7111, 10000), "the ordinance of 1843", "", clothPractice},
	{"chetvert", "Russia", Inch.Of(7), "a quarter of an arshin", "", clothPractice},
	{"vershok", "Russia", Inch.Frac(7, 4), "1/16 arshin", "", clothPractice},
	{"metre", "United States", Yard.Frac(13, 12), "rounded, in a book of 1 metre = 1 1/12 yards", "dry-goods-dictionary", "read"},
	{"yard", "United States, 1893 to 1959", Metre.Frac(3600, 3937), "before the inch was made 25.4 mm", "", clothPractice},
	{"yard", "since 1959", Metre.Frac(9144, 10000), "exact", "units-of-weight-circular", "read"},
}
