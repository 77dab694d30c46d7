package seam

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

func line(label string, result units.Length, terms ...ticket.Term) ticket.Line {
	return ticket.Sum(label, result, terms...)
}
func plus(l units.Length, name string) ticket.Term  { return ticket.Add(l, name) }
func minus(l units.Length, name string) ticket.Term { return ticket.Less(l, name) }
func times(n int) ticket.Term                       { return ticket.Multiply(n, "") }
func inch(num, den int64) units.Length              { return sew.Inch(num, den) }
func mm(n int64) units.Length                       { return sew.MM(n) }
