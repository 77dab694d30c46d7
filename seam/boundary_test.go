package seam_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A bound seam cites the printed strips for its own width, and those alone.
func TestBoundCites(t *testing.T) {
	for _, finished := range []units.Length{in(1, 4), in(3, 8), in(1, 2), in(7, 16)} {
		var want, got []source.Cite
		for r := range seam.Bindings {
			if r.Finished == finished {
				want = append(want, r.Cite())
			}
		}
		for _, c := range planned(t, seam.Bound{Width: finished}).Sheet().Sources {
			if strings.Contains(c.For, "finished") {
				got = append(got, c)
			}
		}
		if d := cmp.Diff(want, got); d != "" {
			t.Errorf("%v:\n%s", finished, d)
		}
	}
}

// cited are the sources of a sheet, for what each is cited; sources without an id
// are left out.
func cited(sh ticket.Sheet) map[string][]string {
	out := map[string][]string{}
	for _, c := range sh.Sources {
		if c.ID != "" {
			out[c.For] = append(out[c.For], c.ID)
		}
	}
	return out
}

// A French or a flat-felled seam cites who printed the passes as they are here, and
// who printed others that come to the same, apart.
func TestPassesCited(t *testing.T) {
	for _, c := range []struct {
		spec seam.Seam
		what string
		want []string
	}{
		{seam.French{}, "passes as here", []string{"extension-construction-card", "clothing-construction-handbook", "french-seam-sums"}},
		{seam.French{}, "other passes that come to the same", []string{"tablecloth-seams-thread", "french-seam-definition"}},
		{seam.French{First: in(1, 4), Second: in(3, 8)}, "passes as here", []string{"tablecloth-seams-thread", "french-seam-definition"}},
		{seam.French{Allowance: seam.Allowance{Drafted: in(1, 2)}}, "passes as here", []string{"french-seam-sums"}},
		{seam.French{Allowance: seam.Allowance{Drafted: in(1, 2)}}, "other passes that come to the same", nil},
		{seam.French{Allowance: seam.Allowance{Drafted: in(3, 4)}}, "passes as here", []string{"extension-french-seam-sheet"}},
		{seam.French{First: in(3, 16), Second: in(1, 4)}, "passes as here", nil},
		{seam.FlatFelled{}, "fell as here", []string{"clothing-construction-handbook", "fell-how-to-sheet", "seam-finish-part-two"}},
		{seam.FlatFelled{}, "another fell from the same allowance", []string{"tablecloth-seams-thread", "fell-machine-guide", "fell-how-to-page", "self-enclosed-seams"}},
		{seam.FlatFelled{Allowance: seam.Allowance{Drafted: in(1, 2)}}, "fell as here", []string{"self-enclosed-seams"}},
		{seam.FlatFelled{Allowance: seam.Allowance{Drafted: in(1, 2)}}, "another fell from the same allowance", nil},
		{seam.FlatFelled{Allowance: seam.Allowance{Drafted: in(1, 2)}}, "half of the allowance turned in", []string{"tablecloth-seams-thread"}},
		{seam.FlatFelled{}, "half of the allowance turned in", nil},
		{seam.FlatFelled{First: in(5, 8), Width: in(5, 16)}, "half of the allowance turned in", nil},
	} {
		if d := cmp.Diff(c.want, cited(planned(t, c.spec).Sheet())[c.what]); d != "" {
			t.Errorf("%+v, %s:\n%s", c.spec, c.what, d)
		}
	}
}

// does reports whether a step of the sheet does so, with those sides together.
func does(sh ticket.Sheet, what string, together ticket.Sides) bool {
	for _, s := range sh.Steps {
		if strings.Contains(s.Do, what) && s.Together == together {
			return true
		}
	}
	return false
}

// A flat fell is begun with the wrong sides together, so that it shows; a mock one
// with the right sides together, and its last row is sewn from the right side.
func TestFellSides(t *testing.T) {
	flat, mock := planned(t, seam.FlatFelled{}).Sheet(), planned(t, seam.MockFelled{}).Sheet()
	if !does(flat, "Stitch the seam", ticket.WrongTogether) || !does(flat, "Lay the fold flat over the trimmed edge", 0) || does(flat, "From the right side", 0) {
		t.Errorf("flat: %+v", flat.Steps)
	}
	if !does(mock, "Stitch the seam", ticket.RightTogether) || !does(mock, "From the right side stitch through the fold", 0) || does(mock, "Lay the fold", 0) {
		t.Errorf("mock: %+v", mock.Steps)
	}
	if got := cited(mock); got["trim of the under ply"] != nil || got["fell as here"] != nil {
		t.Errorf("mock cites what is printed of a flat fell: %v", got)
	}
}

// The allowances of a Hong Kong seam are trimmed where less than all is to be left.
func TestHongKongTrim(t *testing.T) {
	for trim, want := range map[units.Length]bool{{}: false, in(5, 8): false, in(1, 2): true} {
		if got := does(planned(t, seam.HongKong{Trim: trim}).Sheet(), "Trim both allowances", 0); got != want {
			t.Errorf("to %v: trimmed %v", trim, got)
		}
	}
}

// A raw lap of both allowances leaves the garment as drafted, and says nothing; a
// narrower one makes it bigger, and says so.
func TestRawLapCaution(t *testing.T) {
	for lap, want := range map[units.Length]bool{in(5, 4): false, in(5, 8): true} {
		p := planned(t, seam.LappedRaw{Lap: lap})
		got := false
		for _, c := range p.Sheet().Cautions {
			got = got || strings.Contains(c.Text, "leaves the garment bigger")
		}
		if got != want || p.Gain.IsZero() == want {
			t.Errorf("lapped %v: gain %v, caution %v", lap, p.Gain, got)
		}
	}
}

// An edge turned in by the whole allowance leaves no fell; the trim is not held
// against it.
func TestFellOfNothing(t *testing.T) {
	_, err := seam.FlatFelled{First: in(5, 8), Turned: in(5, 8)}.Plan()
	if nountest.Paths(t, err) != "turned" || !errors.Is(err, seam.ErrFlat) {
		t.Error(err)
	}
}

// The allowances of a piped seam are trimmed where less than all is to be left.
func TestPipedTrim(t *testing.T) {
	for trim, want := range map[units.Length]bool{in(5, 8): false, in(1, 4): true} {
		if got := does(planned(t, seam.Piped{Trim: trim}).Sheet(), "Trim the allowances", 0); got != want {
			t.Errorf("to %v: trimmed %v", trim, got)
		}
	}
}

// The layers of a graded seam are trimmed from the outside of the garment in: the
// first is the widest, the last the narrowest, those between narrower each.
func TestGradedLayers(t *testing.T) {
	for layers := 2; layers <= 6; layers++ {
		var got []string
		var left []ticket.Amount
		for _, s := range planned(t, seam.Graded{Layers: layers}).Sheet().Steps {
			if strings.Contains(s.Do, "layer") {
				got, left = append(got, s.Do), append(left, s.Trim)
			}
		}
		want := []string{"Trim the layer next to the outside of the garment, the widest"}
		for range layers - 2 {
			want = append(want, "Trim the next layer narrower")
		}
		want = append(want, "Trim the innermost layer, the narrowest")
		if d := cmp.Diff(want, got); d != "" || left[0] != ticket.Long(in(1, 4)) || left[layers-1] != ticket.Long(in(1, 8)) {
			t.Errorf("%d layers, from %v to %v:\n%s", layers, left[0], left[layers-1], d)
		}
	}
}
