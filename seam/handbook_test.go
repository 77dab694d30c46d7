package seam_test

import (
	"encoding/csv"
	"errors"
	"os"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// bookPair is one name=value of the handbook.
type bookPair struct{ name, value string }

func bookPairs(t *testing.T, text string) []bookPair {
	t.Helper()
	var out []bookPair
	for part := range strings.SplitSeq(text, ";") {
		name, value, ok := strings.Cut(part, "=")
		if !ok || name == "" || value == "" {
			t.Fatalf("%q is not name=value", part)
		}
		out = append(out, bookPair{name, value})
	}
	return out
}

func bookLength(t *testing.T, text string) units.Length {
	t.Helper()
	l, err := units.Parse(text)
	if err != nil {
		t.Fatalf("%q: %v", text, err)
	}
	return l
}

func TestHandbook(t *testing.T) {
	f, err := os.Open("testdata/handbook.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	const header = "id,kind,given,want,source,place,known,reason"
	if len(rows) < 40 || strings.Join(rows[0], ",") != header {
		t.Fatalf("the handbook is empty, short or has another header")
	}
	ids, inputs, read := map[string]bool{}, map[string]bool{}, map[string]int{}
	rowsOf, sourcesOf := map[string]int{}, map[string]map[string]bool{}
	for _, r := range rows[1:] {
		id, kind, given, want, src, known, reason := r[0], r[1], r[2], r[3], r[4], r[6], r[7]
		if ids[id] || inputs[kind+given] {
			t.Errorf("%s: id or input twice", id)
		}
		ids[id], inputs[kind+given] = true, true
		if reason == "" {
			t.Errorf("%s: no reason", id)
		}
		if rowsOf[kind]++; sourcesOf[kind] == nil {
			sourcesOf[kind] = map[string]bool{}
		}
		if src != "" {
			sourcesOf[kind][src] = true
		}
		switch known {
		case "read":
			read[src]++
			if _, ok := source.Lookup(src); !ok {
				t.Errorf("%s: unknown source %q", id, src)
			}
		case "memory":
			if _, ok := source.Lookup(src); !ok {
				t.Errorf("%s: unknown source %q", id, src)
			}
		case "practice", "computed":
			if src != "" {
				t.Errorf("%s: %s has a source", id, known)
			}
		default:
			t.Errorf("%s: known %q", id, known)
		}
		t.Run(id, func(t *testing.T) {
			bookSeam(t, kind, bookPairs(t, given), bookPairs(t, want), reason)
		})
	}
	total := 0
	for _, n := range read {
		total += n
	}
	if total < 14 || len(read) < 3 {
		t.Errorf("%d rows read in %d sources", total, len(read))
	}
	for k := range seam.Kinds {
		n, sources := rowsOf[k.String()], len(sourcesOf[k.String()])
		if few, ok := thin[k]; ok {
			if n != few.rows || sources != few.sources {
				t.Errorf("%v: %d rows of %d sources, where %d of %d are known", k, n, sources, few.rows, few.sources)
			}
		} else if n < 3 || sources < 2 {
			t.Errorf("%v: %d rows of %d sources, want 3 of 2", k, n, sources)
		}
	}
}

// thin are the kinds with fewer than three rows or two sources: no more figures
// were found in print. One old school book laps turned edges, one dressmaker's raw
// ones, one card has the hairline; of the slot seam nothing is printed but that
// topstitching lies about 1/4 in from a fold.
var thin = map[seam.Kind]struct{ rows, sources int }{
	seam.LappedTurned: {3, 1}, seam.LappedRaw: {2, 1}, seam.Hairline: {1, 1}, seam.Slot: {3, 1},
}

func bookSeam(t *testing.T, kind string, given, want []bookPair, reason string) {
	var s seam.Spec
	if err := s.Kind.UnmarshalText([]byte(kind)); err != nil {
		t.Fatal(err)
	}
	fields := map[string]*units.Length{
		"drafted": &s.Drafted, "draftedunder": &s.DraftedUnder, "cut": &s.Cut, "cutunder": &s.CutUnder,
		"first": &s.First, "second": &s.Second, "take": &s.Take, "trim": &s.Trim, "thickness": &s.Thickness,
		"trimunder": &s.TrimUnder, "turned": &s.Turned, "strip": &s.Strip, "cord": &s.Cord, "row": &s.Row,
	}
	for _, g := range given {
		switch to, ok := fields[g.name]; {
		case ok:
			*to = bookLength(t, g.value)
		case g.name == "layers":
			n, err := strconv.Atoi(g.value)
			if err != nil {
				t.Fatal(err)
			}
			s.Layers = n
		case g.name == "finish":
			if err := s.Finish.UnmarshalText([]byte(g.value)); err != nil {
				t.Fatal(err)
			}
		case g.name == "aside":
			s.Aside = true
		default:
			t.Fatalf("no field %q", g.name)
		}
	}
	p, err := s.Plan()
	if want[0].name == "fault" {
		var fs fault.Faults
		if !errors.As(err, &fs) || fs[0].Path != want[0].value {
			t.Errorf("got %v, want a fault of %s (%s)", err, want[0].value, reason)
		}
		return
	}
	if err != nil {
		t.Fatalf("%v (%s)", err, reason)
	}
	sh := p.Sheet()
	if err := sh.Check(); err != nil {
		t.Error(err)
	}
	s = p.Spec // so that fields points to the solved spec
	for name, l := range map[string]units.Length{
		"finished": p.Finished, "gain": p.Gain, "drift": p.Upper.Drift, "driftunder": p.Under.Drift, "turned": p.Turned, "takeunder": p.Under.Taken, "wrapped": p.Wrapped, "stripleast": p.StripLeast, "step": p.Step,
		"stripsingle": p.StripSingle, "stripdouble": p.StripDouble, "stripdoublewide": p.StripDoubleWide,
	} {
		fields[name] = &l
	}
	for _, l := range sh.Lines {
		if n, ok := l.Result.Near().Exact(); ok && l.Label == "the test swatch measures across" {
			fields["swatch"] = &n
		}
	}
	for _, w := range want {
		switch w.name {
		case "plies":
			if got := ticket.Of(p.Plies).String(); got != w.value {
				t.Errorf("plies %s, want %s (%s)", got, w.value, reason)
			}
		case "rows":
			if got := ticket.Of(p.Rows).String(); got != w.value {
				t.Errorf("rows %s, want %s (%s)", got, w.value, reason)
			}
		case "stripcorded": // printed to four places
			if got, _, err := p.StripCorded.Round(units.Inch.Frac(1, 10_000), units.HalfAway); err != nil || got != bookLength(t, w.value) {
				t.Errorf("strip %v, want %s (%s)", p.StripCorded, w.value, reason)
			}
		case "raw":
			if p.Raw != (w.value == "true") {
				t.Errorf("raw %v, want %s (%s)", p.Raw, w.value, reason)
			}
		default:
			got, ok := fields[w.name]
			if !ok {
				t.Fatalf("no figure %q", w.name)
			}
			if *got != bookLength(t, w.value) {
				t.Errorf("%s %v, want %s (%s)", w.name, *got, w.value, reason)
			}
		}
	}
}
