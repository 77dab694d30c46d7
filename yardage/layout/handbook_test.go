package layout_test

import (
	"context"
	"encoding/csv"
	"os"
	"sort"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/yardage/layout"
)

// values reads name=value;name=value.
func values(t *testing.T, text string) map[string]string {
	t.Helper()
	out := map[string]string{}
	for _, one := range strings.Split(text, ";") {
		name, value, ok := strings.Cut(one, "=")
		if _, twice := out[name]; !ok || twice {
			t.Fatalf("%q: want name=value, each name once", one)
		}
		out[name] = value
	}
	return out
}

func length(t *testing.T, text string) units.Length {
	t.Helper()
	l, err := units.Parse(text)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// lay makes the Spec that the given names describe.
func lay(t *testing.T, given map[string]string) layout.Spec {
	t.Helper()
	var s layout.Spec
	one := layout.Piece{Count: 1}
	for name, value := range given {
		switch name {
		case "lay":
			if value == "shirt" {
				return shirt()
			}
			return rectangles(t, value)
		case "square":
			one.Wide, one.Long = length(t, value), length(t, value)
		case "piece":
			wide, long, _ := strings.Cut(value, " by ")
			one.Wide, one.Long = length(t, wide), length(t, long)
		case "count":
			n, err := strconv.Atoi(value)
			if err != nil {
				t.Fatal(err)
			}
			one.Count = n
		case "wide":
			s.Cloth.Wide = length(t, value)
		case "long":
			s.Cloth.Long = length(t, value)
		case "selvedge":
			s.Cloth.Selvedge = length(t, value)
		case "ends":
			s.Cloth.Ends = length(t, value)
		default:
			t.Fatalf("unknown name %q", name)
		}
	}
	s.Pieces = []layout.Piece{one}
	return s
}

// most is how many copies of its one piece the cloth of s is found to hold.
func most(s layout.Spec) int {
	s.Work = 1
	return sort.Search(layout.MaxPieces, func(n int) bool {
		s.Pieces[0].Count = n + 1
		p, err := s.Plan(context.Background())
		return err != nil || !p.Fits
	})
}

// got works out the names that are wanted.
func got(t *testing.T, kind string, s layout.Spec, want map[string]string) map[string]string {
	t.Helper()
	out := map[string]string{}
	if kind == "squares" {
		out["count"] = strconv.Itoa(most(s))
		return out
	}
	s.Work = 60
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if err := layout.Verify(s, p.Placements); err != nil {
		t.Fatal(err)
	}
	for name := range want {
		var l units.Length
		switch name {
		case "lay":
			l = p.Lay
		case "bound":
			l = p.Bound
		case "spare":
			l = p.Spare
		case "used":
			l = p.Used
		default:
			t.Fatalf("unknown name %q", name)
		}
		out[name] = units.Notation{}.Exact(l)
	}
	return out
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
	head := []string{"id", "kind", "given", "want", "source", "place", "known", "reason"}
	if len(rows) < 15 || !cmp.Equal(head, rows[0]) {
		t.Fatalf("%d rows under %q", len(rows), rows[0])
	}
	ids, inputs, sources := map[string]bool{}, map[string]bool{}, map[string]int{}
	for _, row := range rows[1:] {
		id, kind, given, want, src, place, known, reason := row[0], row[1], row[2], row[3], row[4], row[5], row[6], row[7]
		t.Run(id, func(t *testing.T) {
			if ids[id] || inputs[kind+given] || reason == "" {
				t.Fatal("an id or an input for the second time, or no reason")
			}
			ids[id], inputs[kind+given] = true, true
			switch known {
			case source.Read.String():
				if _, ok := source.Lookup(src); !ok || place == "" {
					t.Fatalf("source %q at %q", src, place)
				}
				sources[src]++
			case source.Computed.String():
				if src != "" {
					t.Fatalf("computed here, so source %q is wrong", src)
				}
			default:
				t.Fatalf("known %q", known)
			}
			switch kind {
			case "squares", "length", "strip", "garment":
			default:
				t.Fatalf("unknown kind %q", kind)
			}
			wanted := values(t, want)
			if diff := cmp.Diff(wanted, got(t, kind, lay(t, values(t, given)), wanted)); diff != "" {
				t.Errorf("%s\n%s", reason, diff)
			}
		})
	}
	total := 0
	for _, n := range sources {
		total += n
	}
	if total < 14 || len(sources) < 3 {
		t.Errorf("%d read rows from %d sources", total, len(sources))
	}
}
