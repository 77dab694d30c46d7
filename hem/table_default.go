package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

func inches(whole, num, den int64) units.Length { return units.Inch.Mixed(whole, num, den) }

func mm(n int64) units.Length { return units.Millimetre.Of(n) }

// What follows is common practice: the distance of a row from the inner fold, that from
// the raw edge of a single hem, that of an ease row from the raw edge, and what a hand
// keeps to.
func stitchFold(t units.Tape) units.Length { return t.Of(inches(0, 1, 16), mm(2)) }
func stitchRaw(t units.Tape) units.Length  { return t.Of(inches(0, 1, 4), mm(6)) }
func easeRow(t units.Tape) units.Length    { return t.Of(inches(0, 1, 4), mm(6)) }
func give(t units.Tape) units.Length       { return t.Of(inches(0, 1, 16), mm(2)) }

var (
	narrowMost = mm(15)       // the most that a narrow hem takes in all
	two        = ticket.Of(2) // as a factor of a working
)
