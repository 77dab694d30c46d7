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
	hemmed := func(s hem.Spec) func(units.Length) ([]section.Drawing, error) {
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
	double, err := hem.Spec{Kind: hem.Double, First: l("1/4"), Depth: l("1")}.Plan()
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
		{"no plan", hem.Plan{}.Sections, l("1/16"), "spec.kind: not given, want one of single, double, narrow, slit, blind, rolled, faced, bias-faced, bound, shirt-tail, circular, turn-up"},
		{"no such hem", hem.Plan{Spec: hem.Spec{Kind: 99}}.Sections, l("1/16"), "spec.kind kind(99): not known, want one of single, double, narrow, slit, blind, rolled, faced, bias-faced, bound, shirt-tail, circular, turn-up"},
		{"no casing", hem.CasingPlan{}.Sections, l("1/16"), "spec.kind: not given, want one of elastic, drawstring, rod"},
		{"no tucks", hem.TucksPlan{}.Sections, l("1/16"), "spec.kind: not given, want one of spaced, pin, blind, growth"},
		{"a plan of nothing", hem.Plan{Spec: hem.Spec{Kind: hem.Bound, Doubled: true}}.Sections, l("1/16"),
			"spec.depth: not given, want more than 0 in\nspec.seam: not given, want more than 0 in"},
		{"a plan that contradicts itself", double.Sections, l("1/16"), "[0].stitches[0].pierce cloth, cloth, cloth: section: the stitch does not pierce what it names, want nothing"},
		{"below zero", hemmed(hem.Spec{Kind: hem.Single, Depth: l("1")}), l("-1"), "thickness -1 in: wrong sign, want 0 in or more"},
		{"thicker than the turn", hemmed(hem.Spec{Kind: hem.Double, First: l("1/4"), Depth: l("1")}), l("5/16"), "thickness 5/16 in: out of range, want at most 1/4 in (spec.first)"},
		{"thicker than what is left of it", hemmed(hem.Spec{Kind: hem.Narrow, First: l("1/2"), Trim: l("1/8")}), l("3/16"), "thickness 3/16 in: out of range, want at most 1/8 in (spec.depth)"},
		{"thicker than the hem is deep", hemmed(hem.Spec{Kind: hem.Single, Depth: l("1")}), l("2"), "thickness 2 in: out of range, want at most 1 in (spec.depth)"},
		{"thicker than the seam", hemmed(hem.Spec{Kind: hem.FacedHem, Depth: l("2"), Seam: l("1/8")}), l("1/4"), "thickness 1/4 in: out of range, want at most 1/8 in (spec.seam)"},
		{"no room for the fold", hemmed(hem.Spec{Kind: hem.Blind, Depth: l("1/2"), Back: l("7/16")}), l("1/8"), "thickness 1/8 in: out of range, want at most 1/16 in (finishedToBack)"},
		{"too deep", hemmed(hem.Spec{Kind: hem.Double, First: l("90"), Depth: l("100")}), units.Length{},
			"spec.depth 100 in: out of range, want at most 2000 mm (MaxDrawn)\nspec.first 90 in: out of range, want at most 2000 mm (MaxDrawn)"},
		{"the row on the allowances", hemmed(hem.Spec{Kind: hem.BiasFaced, Depth: l("1"), Seam: l("1/4"), Favour: l("1/8"), First: l("7/8"), Stitch: l("5/8")}), units.Length{},
			"finishedToStitch 3/8 in: out of range, want more or less than 3/8 in, where the raw edge of the seam allowances lies"},
		{"a casing with its upper row on the edge of the turn", cased(hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Ease: l("1/4"), Turn: l("1 3/8"), Heading: l("1/4")}), units.Length{},
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
		spec hem.Spec
		want units.Length
	}{
		{hem.Spec{Kind: hem.Single, Depth: l("3")}, l("1/4")},
		{hem.Spec{Kind: hem.Double, First: l("1/4"), Depth: l("2")}, l("1/6")},
		{hem.Spec{Kind: hem.Double, First: l("1/16"), Depth: l("2"), Stitch: l("1/32")}, l("1/16")},
		{hem.Spec{Kind: hem.Double, First: l("1/4"), Trim: l("1/32"), Depth: l("2"), Stitch: l("1/64")}, l("1/32")},
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

func FuzzDraw(f *testing.F) {
	f.Add([]byte{130, 0, 5, 20, 0, 0, 5, 6, 5, 6})
	f.Add([]byte{135, 0, 0, 0, 0, 0, 0, 0, 5, 32, 0, 0, 0, 0, 0, 0, 5, 99, 0, 0, 0, 0, 63, 5, 0, 4, 0, 0, 5, 4, 5, 1, 5, 2}) // faced
	f.Add([]byte{140, 0, 0, 0, 0, 0, 0, 0, 5, 24})                                                                           // turn-up
	f.Add([]byte{130, 0, 3, 127, 3, 128, 3, 1, 3, 2})                                                                        // huge
	f.Fuzz(func(t *testing.T, data []byte) {
		p, err := specOf(data).Plan()
		if err != nil {
			return
		}
		ds, err := p.Sections(units.Length{})
		if err != nil {
			refused(t, err)
			var fs fault.Faults
			for errors.As(err, &fs); len(fs) > 0; fs = fs[1:] {
				if fs[0].Path[0] == '[' {
					t.Errorf("%+v is drawn wrong: %v", p.Spec, err)
				}
			}
			return
		}
		for _, d := range ds {
			if _, err := d.SVG(); err != nil {
				t.Error(err)
			}
		}
	})
}
