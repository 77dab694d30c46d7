package gather_test

import (
	"math/rand/v2"
	"strings"
	"testing"
	"unicode/utf8"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/units/ticket"
)

// TestSolvedAgain: the solved spec of each noun gives the same plan, in which
// nothing is assumed any more, and no line of its sheet is wider than the page.
func TestSolvedAgain(t *testing.T) {
	r := random{rand.New(rand.NewPCG(3, 17))}
	some := func(n int64) units.Length { // of half the fields
		if r.IntN(2) == 0 {
			return units.Length{}
		}
		return r.upTo(n)
	}
	narrow := func(s ticket.Sheet) {
		if err := s.Check(); err != nil {
			t.Error(err)
		}
		for line := range strings.SplitSeq(s.Text(units.Notation{}, units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 10)}), "\n") {
			if utf8.RuneCountInString(line) > ticket.Columns {
				t.Errorf("%d columns: %s", utf8.RuneCountInString(line), line)
			}
		}
	}
	strips, ruffles, cuffs := 0, 0, 0
	for range 20_000 {
		s := gather.Strip{
			Strip: strip.Spec{Pieces: r.IntN(4), Each: some(60), Allowance: some(1), Ends: some(1), Ring: r.IntN(3) == 0, Least: some(90)},
			Edge:  some(40), Butted: r.IntN(3) == 0,
		}
		if r.IntN(2) == 0 {
			s.Fullness = units.RatioOf(r.Int64N(16)+8, 8)
		}
		if p, err := s.Plan(); err == nil {
			strips++
			q, err := p.Spec.Plan()
			if err != nil || q != p {
				t.Fatalf("%+v\nplanned %+v\nagain   %+v, %v", s, p, q, err)
			}
			narrow(p.Sheet())
		}
		f := gather.Ruffle{
			Strip: s, Cut: some(8), Depth: some(4), Folded: r.IntN(2) == 0, Hem: some(1), Allowance: some(1), Inside: some(1),
			Rows: r.IntN(gather.MaxRows + 1), Turn: units.RatioOf(r.Int64N(5)-2, 2), Corners: r.IntN(3), Parts: r.IntN(9),
		}
		if p, err := f.Plan(); err == nil {
			ruffles++
			q, err := p.Spec.Plan()
			if err != nil || q.Assumed != "" {
				t.Fatalf("%+v\nagain assumes %v, %v", f, q.Assumed, err)
			}
			if q.Assumed = p.Assumed; q != p {
				t.Fatalf("%+v\nplanned %+v\nagain   %+v", f, p, q)
			}
			narrow(p.Sheet())
		}
		c := gather.Cuff{
			Wrist: some(9), Ease: some(2), Lap: units.Give(some(1)), Finished: some(14), Depth: r.upTo(3), Allowance: some(1), Turned: some(1),
			Inside: some(1), Sleeve: r.upTo(40), Flat: some(2), Setting: gather.Setting(1 + r.IntN(2)), Parts: r.IntN(9),
		}
		if p, err := c.Plan(); err == nil {
			cuffs++
			if g := p.Spec; (g.Wrist.IsZero() != g.Ease.IsZero()) || g.Finished != units.Sum(g.Wrist, g.Ease, g.Lap.Or(units.Length{})) && !g.Wrist.IsZero() {
				t.Fatalf("%+v\nsolved %+v", c, g)
			}
			q, err := p.Spec.Plan()
			if err != nil || q.Assumed != "" {
				t.Fatalf("%+v\nagain assumes %v, %v", c, q.Assumed, err)
			}
			if q.Assumed = p.Assumed; q != p {
				t.Fatalf("%+v\nplanned %+v\nagain   %+v", c, p, q)
			}
			narrow(p.Sheet())
		}
	}
	if strips < 1000 || ruffles < 300 || cuffs < 1000 {
		t.Errorf("%d strips, %d ruffles and %d cuffs could be planned", strips, ruffles, cuffs)
	}
}
