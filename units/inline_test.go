package units_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"testing"
)

// TestInlining names the functions that the compiler must keep putting into their
// callers: without it the common operations cost a second call. The addition itself is
// not among them, see NOTES.md.
func TestInlining(t *testing.T) {
	cmd := exec.Command("go", "build", "-o", filepath.Join(t.TempDir(), "units.a"), "-gcflags=-m", ".")
	cmd.Env = append(os.Environ(), "GOARCH=amd64", "GOFLAGS=-buildvcs=false")
	out, err := cmd.CombinedOutput()
	if err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	var got []string
	for _, m := range regexp.MustCompile(` can inline (\S+)`).FindAllSubmatch(out, -1) {
		got = append(got, string(m[1]))
	}
	for _, name := range []string{
		"Length.Add", "Length.Sub", "Length.Neg", "Length.Abs", "Length.Sign", "Length.IsZero", "Length.Cmp", "Length.Less", "Length.Min", "Length.Max",
		"Length.MulInt", "Length.DivInt", "Length.Scale", "Length.Unscale", "Length.Div", "Length.Times", "Length.String",
		"Ratio.Add", "Ratio.Sub", "Ratio.Mul", "Ratio.Quo", "Ratio.Cmp", "Ratio.IsZero", "Area.Add", "Area.Cmp",
		"Notation.Format", "RatioOf",
		"exact.isWide", "exact.den", "exact.isZero", "small", "fits", "magnitude", "mul64", "uint128.add", "uint128.sub", "uint128.mod",
		"gcdHalving", "few", "Mode.away",
	} {
		if !slices.Contains(got, name) {
			t.Errorf("%s is no longer inlined", name)
		}
	}
}
