// Package sqltext keeps exact lengths, ratios and areas in a database, as their
// exact text, through database/sql. It stands apart from units so that nobody
// links database/sql unasked.
//
//	var hem units.Length
//	err := db.QueryRow("SELECT hem FROM skirts").Scan((*sqltext.Length)(&hem))
//	_, err = db.Exec("INSERT INTO skirts VALUES (?)", sqltext.Length(hem))
//
// The column is one of text, long enough for [units.MaxText]; what is stored has
// its unit and reads back equal. Text written by others is read in the full
// grammar of units. A binary floating-point number is refused, since 0.1 in is
// none; so is a whole number for a length or an area, which has no unit; a ratio
// takes one. NULL is refused but by [NullLength], [NullRatio] and [NullArea]. What
// is refused leaves the value as it was.
//
// Text does not sort by length: to compare amounts in the database keep a count of
// some small unit beside it.
package sqltext
