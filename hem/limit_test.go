package hem_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// TestStitchOnTheTurn: by default the row lies within the first turn, half way along
// it where that is nearer than the usual distance; as trimmed, where it is trimmed.
func TestStitchOnTheTurn(t *testing.T) {
	for _, c := range []struct {
		why         string
		s           hem.Spec
		stitch, raw string // from the inner fold, and from the raw edge
	}{
		{"a printed narrow hem", hem.Spec{Kind: hem.Narrow, First: l("1/16"), Depth: l("1/8")}, "1/32", "3/32"},
		{"finer still", hem.Spec{Kind: hem.Narrow, First: l("1/32"), Depth: l("1/8")}, "1/64", "3/64"},
		{"just wide enough", hem.Spec{Kind: hem.Narrow, First: l("1/8"), Depth: l("1/4")}, "1/16", "3/16"},
		{"half of the depth, no less", hem.Spec{Kind: hem.Rolled, First: l("1/16"), Depth: l("1/16")}, "1/32", "3/32"},
		{"a turn trimmed", hem.Spec{Kind: hem.Double, First: l("1/2"), Trim: l("3/32"), Depth: l("1")}, "3/64", "35/64"},
		{"a blind hem turned under by little", hem.Spec{Kind: hem.Blind, First: l("1/8"), Depth: l("2")}, "1/16", "3/16"},
		{"by more than its fold stands out", hem.Spec{Kind: hem.Blind, First: l("1/2"), Depth: l("2")}, "1/8", "5/8"},
		{"a blind hem of one fold", hem.Spec{Kind: hem.Blind, Depth: l("2")}, "1/8", "1/8"},
		{"a facing turned by little", hem.Spec{Kind: hem.FacedHem, First: l("1/16"), Depth: l("2"), Seam: l("1/4")}, "1/32", "1/4"},
		{"a turn-up", hem.Spec{Kind: hem.TurnUp, First: l("3/8"), Depth: l("2")}, "3/16", "3/16"},
	} {
		p, err := c.s.Plan()
		if err != nil || p.Spec.Stitch != l(c.stitch) || p.RawToStitch != l(c.raw) || !slices.Contains(p.Assumed, "stitch") {
			t.Errorf("%s: %v from the fold, %v from the raw edge, %q, %v", c.why, p.Spec.Stitch, p.RawToStitch, p.Assumed, err)
			continue
		}
		if _, err := p.Sections(units.Length{}); err != nil {
			t.Errorf("%s: %v", c.why, err)
		}
	}
}

// TestRowOnNothing: a row, or a turn, that the cloth is not there for is refused, and
// one a sixty-fourth within it is not.
func TestRowOnNothing(t *testing.T) {
	const hair = "1/64"
	double := hem.Spec{Kind: hem.Double, First: l("1/4"), Depth: l("1")}
	trimmed := hem.Spec{Kind: hem.Narrow, First: l("1/2"), Trim: l("1/8"), Depth: l("1/4")}
	blind := hem.Spec{Kind: hem.Blind, First: l("3/16"), Depth: l("2")}
	faced := hem.Spec{Kind: hem.FacedHem, Depth: l("1"), Seam: l("1/4"), Favour: l("1/8"), First: l("1/4")}
	for _, c := range []struct {
		why   string
		s     hem.Spec
		field func(*hem.Spec) *units.Length
		at    string
		want  string
	}{
		{"on the raw edge of the turn", double, stitch, "1/4", "stitch 1/4 in: out of range, want less than 1/4 in (first), or the row does not catch the turn"},
		{"beyond it", double, stitch, "3/4", "stitch 3/4 in: out of range, want less than 1/4 in (first), or the row does not catch the turn"},
		{"on the raw edge as trimmed", trimmed, stitch, "1/8", "stitch 1/8 in: out of range, want less than 1/8 in (trim), or the row does not catch the turn"},
		{"blind, on the raw edge", blind, stitch, "3/16", "stitch 3/16 in: out of range, want less than 3/16 in (first), or the row does not catch the turn"},
		{"a facing, beside it", faced, stitch, "7/8", "stitch 7/8 in: out of range, want less than 7/8 in (depth less favour)"},
		{"a facing, on the raw edge of its turn", faced, stitch, "1/4", "stitch 1/4 in: out of range, want more or less than 1/4 in (first), where the raw edge of the turn lies"},
		{"a facing, its turn into the seam", faced, first, "57/64", "first 57/64 in: out of range, want at most 7/8 in (depth less favour)"},
	} {
		s := c.s
		*c.field(&s) = l(c.at)
		_, err := s.Plan()
		if !errors.Is(err, fault.Range) {
			t.Errorf("%s: %v", c.why, err)
			continue
		}
		if d := cmp.Diff(c.want, err.Error()); d != "" {
			t.Errorf("%s:\n%s", c.why, d)
		}
		if c.at == "3/4" {
			continue
		}
		*c.field(&s) = l(c.at).Sub(l(hair))
		if _, err := s.Plan(); err != nil {
			t.Errorf("%s, less %s in: %v", c.why, hair, err)
		}
	}
	// A turn, a depth or a trim that is wrong itself is no limit for the row.
	for _, c := range []struct {
		s    hem.Spec
		want []string
	}{
		{hem.Spec{Kind: hem.Double, First: l("1"), Depth: l("1/2"), Stitch: l("3/8")}, []string{"first"}},
		{hem.Spec{Kind: hem.Narrow, First: l("1"), Trim: l("3/4"), Depth: l("1/2"), Stitch: l("3/8")}, []string{"trim"}},
		{hem.Spec{Kind: hem.FacedHem, Depth: l("1"), Seam: l("1/4"), Favour: l("1"), First: l("1/2")}, []string{"favour"}},
		{hem.Spec{Kind: hem.Blind, First: l("1/2"), Depth: l("1"), Trim: l("1/8"), Stitch: l("1/4")}, []string{"trim"}},
	} {
		_, err := c.s.Plan()
		if d := cmp.Diff(c.want, blamed(err)); d != "" {
			t.Errorf("%+v: %v\n%s", c.s, err, d)
		}
	}
}

func stitch(s *hem.Spec) *units.Length { return &s.Stitch }
func first(s *hem.Spec) *units.Length  { return &s.First }

// TestFacingBeyondItsTurn: the row of a facing may lie beyond the turn of its free
// edge, which it then does not hold, as the sheet says.
func TestFacingBeyondItsTurn(t *testing.T) {
	for at, warned := range map[string]bool{"15/64": false, "17/64": true, "55/64": true} {
		p, err := hem.Spec{Kind: hem.BiasFaced, Depth: l("1"), Seam: l("1/4"), Favour: l("1/8"), First: l("1/4"), Stitch: l(at)}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		said := slices.ContainsFunc(p.Sheet().Cautions, func(c ticket.Caution) bool { return strings.Contains(c.Text, "does not hold it") })
		if said != warned {
			t.Errorf("%s in: warned %v", at, said)
		}
	}
	p, err := hem.Spec{Kind: hem.FacedHem, Depth: l("3/16"), Seam: l("1/4"), Favour: l("1/16")}.Plan()
	if err != nil || p.Spec.First != l("1/8") || p.Spec.Stitch != l("1/16") {
		t.Errorf("a narrow facing turns what it has room for: %+v, %v", p.Spec, err)
	}
}

// TestCasingRows: a casing has room for its turns, and its rows catch them.
func TestCasingRows(t *testing.T) {
	folded := hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Ease: l("1/4")}
	strip := folded
	strip.Applied = true
	with := func(s hem.Casing, set func(*hem.Casing)) hem.Casing { set(&s); return s }
	for _, c := range []struct {
		why  string
		s    hem.Casing
		want string // none where it is well
	}{
		{"turned to the finished edge", with(folded, func(s *hem.Casing) { s.Turn = l("1 3/8") }), ""},
		{"turned past it", with(folded, func(s *hem.Casing) { s.Turn = l("1 25/64") }),
			"turn 1 25/64 in: out of range, want at most 1 3/8 in (heading + tunnel + lower)"},
		{"a strip turned until its edges meet", with(strip, func(s *hem.Casing) { s.Turn = l("3/4") }), ""},
		{"and past each other", with(strip, func(s *hem.Casing) { s.Turn = l("49/64") }),
			"turn 49/64 in: out of range, want at most 3/4 in (half of heading + tunnel + lower)"},
		{"the lower row within the turn", with(folded, func(s *hem.Casing) { s.Lower = l("15/64") }), ""},
		{"on its raw edge", with(folded, func(s *hem.Casing) { s.Lower = l("1/4") }),
			"lower 1/4 in: out of range, want less than 1/4 in (turn), or the row does not catch the turn"},
		{"a wider turn", with(folded, func(s *hem.Casing) { s.Lower, s.Turn = l("1/4"), l("3/8") }), ""},
		{"any heading that is folded", with(folded, func(s *hem.Casing) { s.Heading = l("2") }), ""},
		{"a strip, both rows within the turns", with(strip, func(s *hem.Casing) { s.Heading, s.Lower = l("15/64"), l("15/64") }), ""},
		{"both beyond", with(strip, func(s *hem.Casing) { s.Heading, s.Lower = l("1/4"), l("3/8") }),
			"heading 1/4 in: out of range, want less than 1/4 in (turn), or the row does not catch the turn\n" +
				"lower 3/8 in: out of range, want less than 1/4 in (turn), or the row does not catch the turn"},
		{"a turn too deep is no limit", with(folded, func(s *hem.Casing) { s.Turn, s.Lower = l("9"), l("2") }),
			"turn 9 in: out of range, want at most 3 1/4 in (heading + tunnel + lower)"},
	} {
		p, err := c.s.Plan()
		if err == nil {
			_, err = p.Sections(units.Length{})
		}
		got := ""
		if err != nil {
			got = err.Error()
		}
		if d := cmp.Diff(c.want, got); d != "" {
			t.Errorf("%s:\n%s", c.why, d)
		}
	}
	// The turn is a quarter inch by default, or what there is room for.
	for _, c := range []struct {
		s    hem.Casing
		turn string
	}{
		{hem.Casing{Kind: hem.CordCasing, Width: l("1/16"), Ease: l("1/16")}, "1/8"},
		{hem.Casing{Kind: hem.CordCasing, Width: l("1/8"), Ease: l("1/8"), Applied: true}, "1/8"},
		{hem.Casing{Kind: hem.CordCasing, Width: l("1/8"), Ease: l("1/8")}, "1/4"},
		{hem.Casing{Kind: hem.CordCasing, Width: l("1/4"), Ease: l("1/4"), Applied: true}, "1/4"},
	} {
		p, err := c.s.Plan()
		if err != nil || p.Spec.Turn != l(c.turn) || !slices.Contains(p.Assumed, "turn") {
			t.Errorf("%+v: turned %v, %v", c.s, p.Spec.Turn, err)
		}
		if i := slices.IndexFunc(p.Sheet().Sources, func(c source.Cite) bool { return strings.HasPrefix(c.For, "turn of the raw edge") }); i < 0 ||
			(p.Sheet().Sources[i].Known == source.Read) != (c.turn == "1/4") {
			t.Errorf("%+v: %v", c.s, p.Sheet().Sources)
		}
	}
}

// TestCasingRowsInside: a row lies inside the fold that it holds down, where it is
// not given too, and within the turn so that it catches it.
func TestCasingRowsInside(t *testing.T) {
	add := func(name string, s hem.Casing) {
		p, err := s.Plan()
		if err != nil {
			t.Errorf("%s: %v", name, err)
			return
		}
		below := p.Depth.Sub(p.FinishedToLower)
		if below.Sign() <= 0 || !below.Less(p.RawToFold) {
			t.Errorf("%s: the lower row lies %v inside the fold, of a turn of %v", name, below, p.RawToFold)
		}
		if s.Applied && (p.FinishedToUpper.Sign() <= 0 || !p.FinishedToUpper.Less(p.RawToFold)) {
			t.Errorf("%s: the upper row lies %v inside the edge, of a turn of %v", name, p.FinishedToUpper, p.RawToFold)
		}
		ds, err := p.Sections(units.Length{})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			return
		}
		for _, row := range ds[0].Stitches {
			if at := row.From.X; at.Cmp(p.Depth.Neg()) <= 0 || at.Sign() >= 0 {
				t.Errorf("%s: the %s is drawn at %v, of a casing of %v", name, row.Name, at, p.Depth)
			}
		}
	}
	for name, s := range casings() {
		add(name, s)
	}
	for k := range hem.CasingKinds() {
		for _, applied := range []bool{false, true} {
			add(k.String(), hem.Casing{Kind: k, Applied: applied, Width: l("1/2")})
			add(k.String()+", a small turn", hem.Casing{Kind: k, Applied: applied, Width: l("1/2"), Turn: l("1/8")})
			add(k.String()+", tiny", hem.Casing{Kind: k, Applied: applied, Width: l("1/32")})
		}
	}
}

// TestCasingWayIn: a casing that is closed all round has a way in, which is made
// before it is threaded; what is left open for threading is closed last.
func TestCasingWayIn(t *testing.T) {
	find := func(sheet ticket.Sheet, what string) int {
		return slices.IndexFunc(sheet.Steps, func(s ticket.Step) bool { return strings.Contains(s.Do, what) })
	}
	for name, s := range casings() {
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		sheet := p.Sheet()
		lower, thread := find(sheet, "Stitch the lower row"), max(find(sheet, "Thread"), find(sheet, "Put the rod"))
		open, eyelets, shut := find(sheet, "Mark an opening"), find(sheet, "eyelets"), find(sheet, "Close the opening")
		if lower < 0 || thread < lower {
			t.Errorf("%s: %d, %d\n%s", name, lower, thread, sheet.Text())
		}
		switch {
		case s.Kind == hem.RodCasing:
			if open >= 0 || eyelets >= 0 || shut >= 0 || !p.Spec.Opening.IsZero() {
				t.Errorf("%s: a curtain's casing is open at its ends\n%s", name, sheet.Text())
			}
		case s.Kind == hem.CordCasing && !p.Barred:
			if eyelets < 0 || lower < eyelets || open >= 0 || shut >= 0 || !p.Spec.Opening.IsZero() {
				t.Errorf("%s: no eyelets before the casing is closed\n%s", name, sheet.Text())
			}
		default:
			if open < 0 || lower < open || shut != len(sheet.Steps)-1 || shut < thread || eyelets >= 0 || strings.Contains(sheet.Steps[lower].Do, "all round") {
				t.Errorf("%s: no opening that is closed last\n%s", name, sheet.Text())
			}
			if p.Spec.Opening.Less(l("2")) || p.Spec.Opening.Less(s.Width.Add(l("1/2"))) || open >= 0 && sheet.Steps[open].At != ticket.Long(p.Spec.Opening) {
				t.Errorf("%s: opening %v", name, p.Spec.Opening)
			}
		}
	}
	p, err := hem.Casing{Kind: hem.ElasticCasing, Width: l("3")}.Plan()
	if err != nil || p.Spec.Opening != l("3 1/2") || !slices.Contains(p.Assumed, "opening") || !strings.Contains(p.Sheet().Text(), "more than the elastic: common practice") {
		t.Errorf("a wide elastic has an opening of %v, %v", p.Spec.Opening, err)
	}
}
