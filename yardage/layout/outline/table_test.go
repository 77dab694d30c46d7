package outline_test

import (
	"bytes"
	"errors"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
	"example.com/clothyard/yardage/layout/outline"
)

var exactly = cmp.Options{
	cmp.Comparer(func(a, b units.Length) bool { return a == b }),
	cmp.Comparer(func(a, b units.Ratio) bool { return a == b }),
}

func in(s string) units.Length { return units.MustParse(s + " in") }

func pts(flat ...string) []layout.Point {
	var out []layout.Point
	for i := 0; i < len(flat); i += 2 {
		out = append(out, layout.Point{X: in(flat[i]), Y: in(flat[i+1])})
	}
	return out
}

// paths are the paths of the faults of an error, and their reasons.
func paths(err error) string {
	var fs fault.Faults
	if !errors.As(err, &fs) {
		return fmt.Sprint(err)
	}
	var out []string
	for _, f := range fs {
		out = append(out, f.Path+": "+f.Kind.Error())
	}
	return strings.Join(out, "\n")
}

func TestCSV(t *testing.T) {
	const text = "\ufeffY, X ,Piece\n0 in,0 in,gusset\n0 in,4 1/2 in,gusset\n10 cm,0 in,gusset\n0 in,0 in,gusset\n" +
		"0 in,0 in,\"band, left\"\n0 in,2 in,\"band, left\"\n1 in,2 in,\"band, left\"\n1 in,-1/2 in,\"band, left\"\n"
	got, err := outline.Reader{}.CSV(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	want := []layout.Piece{
		{Name: "gusset", Count: 1, Outline: []layout.Point{{}, {X: in("4 1/2")}, {Y: units.Centimetre.Of(10)}}},
		{Name: "band, left", Count: 1, Outline: pts("0", "0", "2", "0", "2", "1", "-1/2", "1")},
	}
	if diff := cmp.Diff(want, got, exactly); diff != "" {
		t.Error(diff)
	}
	r := outline.Reader{Numbers: units.Parser{Bare: units.Millimetre, DecimalComma: true}}
	got, err = r.CSV(strings.NewReader("piece,x,y\nfacing,\"0\",0\nfacing,\"12,5\",0\nfacing,0,1 in\n"))
	if err != nil || len(got) != 1 || got[0].Outline[1].X != units.Millimetre.Frac(25, 2) || got[0].Outline[2].Y != in("1") {
		t.Error(got, err)
	}
}

func TestCSVFaults(t *testing.T) {
	row := func(name string, n int) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, "%s,%d in,%d in\n", name, i, i*i)
		}
		return b.String()
	}
	var many strings.Builder
	for i := range layout.MaxPieces + 1 {
		many.WriteString(row(fmt.Sprint(i), 3))
	}
	for _, test := range []struct{ why, text, want string }{
		{"nothing", "", "table: not given"},
		{"a heading alone", "piece,x,y\n", "table: not given"},
		{"headings", "piece,x,x,z\n", "line 1, column 9: given twice\nline 1, column 11: not known\nline 1, column y: not given"},
		{"units", "piece,x,y\na,1,2 in\na,0 in,1e3 in\na,0 in,3 in\n", "line 2, column 3: cannot be read\nline 3, column 8: cannot be read"},
		{"fields", "piece,x,y\na,1 in\na,0 in,0 in\na,0 in,1 in\na,1 in,1 in\n", "line 2, column 1: cannot be read"},
		{"quotes", "piece,x,y\na\"b,1 in,2 in\n", "line 2, column 2: cannot be read"},
		{"two points", "piece,x,y\n" + row("a", 2), "line 2, column 1: out of range"},
		{"two points and the first", "piece,x,y\na,0 in,0 in\na,1 in,1 in\na,0 in,0 in\n", "line 2, column 1: out of range"},
		{"too many points", "piece,x,y\n" + row("a", layout.MaxPoints+9), "line 2, column 1: out of range"},
		{"apart", "piece,x,y\n" + row("a", 3) + row("b", 3) + row("a", 3), "line 8, column 1: given twice"},
		{"no name", "piece,x,y\n" + row("", 3), "line 2, column 1: not given"},
		{"a long name", "piece,x,y\n" + row(strings.Repeat("n", 300), 3), "line 2, column 1: cannot be read"},
		{"too many pieces", "piece,x,y\n" + many.String(), "line 3002, column 1: out of range"},
	} {
		if _, err := (outline.Reader{}).CSV(strings.NewReader(test.text)); paths(err) != test.want {
			t.Errorf("%s:\n%s\nwant\n%s", test.why, paths(err), test.want)
		}
	}
	_, err := outline.Reader{}.CSV(strings.NewReader("piece,x,y\n" + strings.Repeat("a,1,2\n", 500)))
	var fs fault.Faults
	if !errors.As(err, &fs) || len(fs) != outline.MaxFaults {
		t.Errorf("%d faults told", len(fs))
	}
	if _, err := (outline.Reader{}).CSV(strings.NewReader(strings.Repeat(",", 300))); err == nil {
		t.Error("a heading of commas")
	}
	if _, err := (outline.Reader{}).CSV(strings.NewReader(strings.Repeat(" ", outline.MaxBytes+1))); !errors.Is(err, fault.Range) {
		t.Error(err)
	}
	if _, err := (outline.Reader{}).CSV(broken{}); !errors.Is(err, errBroken) {
		t.Error(err)
	}
	r := outline.Reader{Numbers: units.Parser{Bare: 99}, Within: in("-1")}
	if _, err := r.CSV(strings.NewReader("")); paths(err) != "numbers.bare: not known\nwithin: wrong sign" {
		t.Error(err)
	}
	if _, err := r.SVG(strings.NewReader("")); paths(err) != "numbers.bare: not known\nwithin: wrong sign" {
		t.Error(err)
	}
}

var errBroken = errors.New("broken")

type broken struct{}

func (broken) Read([]byte) (int, error)  { return 0, errBroken }
func (broken) Write([]byte) (int, error) { return 0, errBroken }

// What is written is read back the same.
func TestRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 18))
	for range 200 {
		var pieces []layout.Piece
		for k := range 1 + rng.IntN(4) {
			p := layout.Piece{Name: fmt.Sprintf("piece %c, \"%d\"", 'a'+k, k), Count: 1}
			for range 3 + rng.IntN(6) {
				p.Outline = append(p.Outline, layout.Point{
					X: units.Millimetre.Frac(rng.Int64N(2000)-1000, 1+rng.Int64N(640)),
					Y: units.Inch.Frac(rng.Int64N(2000)-1000, 1+rng.Int64N(640))})
			}
			if p.Outline[0] != p.Outline[len(p.Outline)-1] {
				pieces = append(pieces, p)
			}
		}
		if len(pieces) == 0 {
			continue
		}
		var b bytes.Buffer
		if err := outline.WriteCSV(&b, pieces); err != nil {
			t.Fatal(err)
		}
		got, err := outline.Reader{Numbers: units.Parser{Bare: units.Yard}}.CSV(&b)
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(pieces, got, exactly); diff != "" {
			t.Fatal(diff)
		}
	}
	var b bytes.Buffer
	if err := outline.WriteCSV(&b, []layout.Piece{{Name: "cuff", Wide: in("9"), Long: in("4")}}); err != nil || b.String() != "piece,x,y\ncuff,0 in,0 in\ncuff,9 in,0 in\ncuff,9 in,4 in\ncuff,0 in,4 in\n" {
		t.Error(b.String(), err)
	}
	bad := []layout.Piece{{}, {Name: " a"}, {Name: "b"}, {Name: "b"}}
	if err := outline.WriteCSV(&b, bad); paths(err) != "pieces[0].name: not given\npieces[1].name: cannot be read\npieces[3].name: given twice" {
		t.Error(paths(err))
	}
	if err := outline.WriteCSV(broken{}, []layout.Piece{{Name: "cuff"}}); !errors.Is(err, errBroken) {
		t.Error(err)
	}
}
