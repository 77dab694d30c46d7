package seam

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
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
func quote(name string) string                      { return sew.Quote(name) }
func short(text string) string                      { return sew.Short(text) }
func orElse(name, other string) string              { return sew.OrElse(name, other) }
func hand() ticket.Amount                           { return sew.Hand(units.InchTape) }
func straightness() units.Length                    { return sew.Straightness(units.InchTape) }
func straightnessCite() source.Cite                 { return sew.StraightnessCite(units.InchTape) }
func standardCite() source.Cite                     { return sew.StandardCite(units.InchTape) }
func smoothEase() units.Ratio                       { return sew.SmoothEase() }
func slight(r units.Ratio) bool                     { return sew.Slight(r) }
func terms(r units.Ratio) (num, den int64, ok bool) { return sew.Terms(r) }
