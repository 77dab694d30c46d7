package hem_test

import (
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
)

// TestDrawFaults: what cannot be drawn is refused, with the measure and the limit.
func TestDrawFaults(t *testing.T) {
	hemmed := func(s hem.Any) func(units.Length) ([]section.Drawing, error) {
		p, err := s.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", s, err)
		}
		return p.Sections
	}
	cased := func(s hem.Casing) func(units.Length) ([]section.Drawing, error) {
		p, err := s.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", s, err)
		}
		return p.Sections
	}
	tucked := func(s hem.Tucks) func(units.Length) ([]section.Drawing, error) {
		p, err := s.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", s, err)
		}
		return p.Sections
	}
	double, err := of("double; first=1/4 in; depth=1 in").Plan()
	if err != nil {
		t.Fatal(err)
	}
	double.FinishedToStitch = l("2") // no plan says so
	casing, err := hem.Casing{Kind: hem.CordCasing, Width: l("1"), Ease: l("1/4")}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	casing.FinishedToLower = l("5")
	for _, c := range []struct {
		name  string
		draw  func(units.Length) ([]section.Drawing, error)
		thick units.Length
		want  string
	}{
		{"no plan", hem.Plan{}.Sections, l("1/16"), "spec.kind: not given, want a kind of hem"},
		{"no casing", hem.CasingPlan{}.Sections, l("1/16"), "spec.kind: not given, want one of elastic, drawstring, rod"},
		{"no tucks", hem.TucksPlan{}.Sections, l("1/16"), "spec.kind: not given, want one of spaced, pin, blind, growth"},
		{"a plan of nothing", hem.Plan{Spec: of("double-bound")}.Sections, l("1/16"),
			"spec.depth: not given, want more than 0 in\nspec.seam: not given, want more than 0 in"},
		{"a plan that contradicts itself", double.Sections, l("1/16"), "[0].stitches[0].pierce cloth, cloth, cloth: section: the stitch does not pierce what it names, want nothing"},
		{"below zero", hemmed(of("single; depth=1 in")), l("-1"), "thickness -1 in: wrong sign, want 0 in or more"},
		{"thicker than the turn", hemmed(of("double; first=1/4 in; depth=1 in")), l("5/16"), "thickness 5/16 in: out of range, want at most 1/4 in (spec.first)"},
		{"thicker than what is left of it", hemmed(of("narrow; first=1/2 in; trim=1/8 in")), l("3/16"), "thickness 3/16 in: out of range, want at most 1/8 in (spec.depth)"},
		{"thicker than the hem is deep", hemmed(of("single; depth=1 in")), l("2"), "thickness 2 in: out of range, want at most 1 in (spec.depth)"},
		{"thicker than the seam", hemmed(of("faced; depth=2 in; seam=1/8 in")), l("1/4"), "thickness 1/4 in: out of range, want at most 1/8 in (spec.seam)"},
		{"no room for the fold", hemmed(of("blind; depth=1/2 in; back=7/16 in")), l("1/8"), "thickness 1/8 in: out of range, want at most 1/16 in (others[0].long)"},
		{"too deep", hemmed(of("double; first=90 in; depth=100 in")), units.Length{},
			"spec.depth 100 in: out of range, want at most 2000 mm (MaxDrawn)\nspec.first 90 in: out of range, want at most 2000 mm (MaxDrawn)"},
		{"the row on the allowances", hemmed(of("bias-faced; depth=1 in; seam=1/4 in; favour=1/8 in; first=7/8 in; stitch=5/8 in")), units.Length{},
			"finishedToStitch 3/8 in: out of range, want more or less than 3/8 in, where the raw edge of the seam allowances lies"},
		{"a casing with its upper row on the edge of the turn", cased(hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Ease: l("1/4"), Turn: l("1 3/8"), Heading: units.Give(l("1/4"))}), units.Length{},
			"finishedToUpper 1/4 in: out of range, want more or less than 1/4 in, where the raw edge of the turn lies"},
		{"a thick casing", cased(hem.Casing{Kind: hem.CordCasing, Width: l("1"), Ease: l("1/4")}), l("3/8"), "thickness 3/8 in: out of range, want at most 1/4 in (rawToFold)"},
		{"a casing that contradicts itself", casing.Sections, l("1/16"), "[0].dimensions[1].amount 1 1/4 in: disagrees with what else is given, want 5 in (the distance between its ends)\n[0].dimensions[2].amount 1/8 in: disagrees with what else is given, want 3 5/8 in (the distance between its ends)"},
		{"a thick tuck", tucked(hem.Tucks{Kind: hem.PinTuck, Count: 1}), l("1"), "thickness 1 in: out of range, want at most 1/16 in (spec.depth)"},
	} {
		ds, err := c.draw(c.thick)
		var fs fault.Faults
		if ds != nil || !errors.As(err, &fs) {
			t.Errorf("%s: %d drawings, %v", c.name, len(ds), err)
			continue
		}
		if diff := cmp.Diff(c.want, err.Error()); diff != "" {
			t.Errorf("%s (-want +got):\n%s", c.name, diff)
		}
	}
}

// TestDrawDefault: the thickness is a twelfth of the depth, or the least turn.
func TestDrawDefault(t *testing.T) {
	for _, c := range []struct {
		spec hem.Any
		want units.Length
	}{
		{of("single; depth=3 in"), l("1/4")},
		{of("double; first=1/4 in; depth=2 in"), l("1/6")},
		{of("double; first=1/16 in; depth=2 in; stitch=1/32 in"), l("1/16")},
		{of("double; first=1/4 in; trim=1/32 in; depth=2 in; stitch=1/64 in"), l("1/32")},
	} {
		p, err := c.spec.Plan()
		if err != nil {
			t.Fatal(err)
		}
		ds, err := p.Sections(units.Length{})
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range ds {
			if d.Thickness != c.want {
				t.Errorf("%+v is drawn at %v, want %v", c.spec, d.Thickness, c.want)
			}
		}
	}
}
