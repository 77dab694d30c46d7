package strip_test

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/units/ticket"
	"github.com/google/go-cmp/cmp"
)

func in(s string) units.Length { return units.MustParse(s + " in") }

// TestHandbook puts printed cases to the public API, in the notation of the book.
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
	if len(rows) < 2 {
		t.Fatal("the handbook is empty")
	}
	if d := cmp.Diff(strings.Split("id,kind,given,want,source,place,known,reason", ","), rows[0]); d != "" {
		t.Fatal(d)
	}
	ids, givens, sources, read := map[string]bool{}, map[string]string{}, map[string]bool{}, 0
	for _, row := range rows[1:] {
		id, kind, given, want, src, known, reason := row[0], row[1], row[2], row[3], row[4], row[6], row[7]
		t.Run(id, func(t *testing.T) {
			if ids[id] {
				t.Error("the id stands twice")
			}
			ids[id] = true
			if other := givens[given]; other != "" {
				t.Error("the same is given in", other)
			}
			givens[given] = id
			if reason == "" {
				t.Error("no reason")
			}
			if _, ok := source.Lookup(src); !ok && (src != "" || known == "read") {
				t.Errorf("unknown source %q", src)
			}
			switch known {
			case "read":
				read++
				sources[src] = true
			case "practice", "computed", "memory":
			default:
				t.Errorf("known %q", known)
			}
			var p planned
			var err error
			switch kind {
			case "strip":
				p.strip, err = fill(t, given).Plan()
				p.sheet = p.strip.Sheet()
			case "binding":
				p.binding, err = fillBinding(t, given).Plan()
				p.sheet = p.binding.Sheet()
			default:
				t.Fatal("unknown kind", kind)
			}
			if err != nil {
				t.Fatal(err)
			}
			if err := p.sheet.Check(); err != nil {
				t.Error(err)
			}
			for pair := range strings.SplitSeq(want, ";") {
				name, value, _ := strings.Cut(pair, "=")
				got := ""
				if kind == "strip" {
					got = answer(t, p.strip, name)
				} else {
					got = answerBinding(t, p.binding, name)
				}
				if d := cmp.Diff(exact(t, value), got); d != "" {
					t.Errorf("%s (-want +got):\n%s\n%s", name, d, reason)
				}
			}
		})
	}
	if read < 14 || len(sources) < 3 {
		t.Errorf("%d rows read from %d sources, want at least 14 from 3", read, len(sources))
	}
}

// exact is the exact text of a length or a count.
func exact(t *testing.T, text string) string {
	t.Helper()
	if _, err := strconv.Atoi(text); err == nil {
		return text
	}
	l, err := units.Parse(text)
	if err != nil {
		t.Fatal(err)
	}
	return l.String()
}

func fill(t *testing.T, given string) strip.Spec {
	t.Helper()
	var s strip.Spec
	for pair := range strings.SplitSeq(given, ";") {
		name, value, _ := strings.Cut(pair, "=")
		var err error
		switch name {
		case "pieces":
			s.Pieces, err = strconv.Atoi(value)
		case "each":
			s.Each, err = units.Parse(value)
		case "allowance":
			s.Allowance, err = units.Parse(value)
		case "ends":
			s.Ends, err = units.Parse(value)
		case "least":
			s.Least, err = units.Parse(value)
		case "ring":
			s.Ring, err = strconv.ParseBool(value)
		default:
			t.Fatalf("unknown name %q", name)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return s
}

func answer(t *testing.T, p strip.Plan, name string) string {
	t.Helper()
	switch name {
	case "pieces":
		return strconv.Itoa(p.Spec.Pieces)
	case "each":
		return p.Spec.Each.String()
	case "sewn":
		return p.Sewn.String()
	case "joins":
		return strconv.Itoa(p.Joins)
	case "lost":
		return p.Lost.String()
	case "spare":
		return p.Spare.String()
	case "join1":
		return p.Join(1).String()
	case "join2":
		return p.Join(2).String()
	}
	t.Fatalf("unknown name %q", name)
	return ""
}

// planned is what one row comes to.
type planned struct {
	strip   strip.Plan
	binding strip.BindingPlan
	sheet   ticket.Sheet
}

func fillBinding(t *testing.T, given string) strip.Binding {
	t.Helper()
	var s strip.Binding
	lengths := map[string]*units.Length{"each": &s.Each, "width": &s.Width, "allowance": &s.Allowance, "ends": &s.Ends,
		"edge": &s.Edge, "mitre": &s.Mitre, "over": &s.Over, "step": &s.Step}
	for pair := range strings.SplitSeq(given, ";") {
		name, value, _ := strings.Cut(pair, "=")
		var err error
		switch l, ok := lengths[name]; {
		case ok:
			*l, err = units.Parse(value)
		case name == "joint":
			err = s.Joint.UnmarshalText([]byte(value))
		case name == "pieces":
			s.Pieces, err = strconv.Atoi(value)
		case name == "corners":
			s.Corners, err = strconv.Atoi(value)
		case name == "ring":
			s.Ring, err = strconv.ParseBool(value)
		default:
			t.Fatalf("unknown name %q", name)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return s
}

// answerBinding is a figure of the plan; a length that is irrational is asked for at
// a mark, as in sewn@0.0001 in.
func answerBinding(t *testing.T, p strip.BindingPlan, name string) string {
	t.Helper()
	name, step, _ := strings.Cut(name, "@")
	var n units.Near
	switch name {
	case "pieces":
		return strconv.Itoa(p.Spec.Pieces)
	case "joins":
		return strconv.Itoa(p.Joins)
	case "each":
		return p.Spec.Each.String()
	case "wanted":
		return p.Wanted.String()
	case "sewn":
		n = p.Sewn
	case "lost":
		n = p.Lost
	case "spare":
		n = p.Spare
	case "perJoin":
		n = p.PerJoin
	case "join1":
		n = p.Join(1)
	case "join2":
		n = p.Join(2)
	default:
		t.Fatalf("unknown name %q", name)
	}
	if step == "" {
		return n.String()
	}
	mark, _, err := n.Round(units.MustParse(step), units.HalfAway)
	if err != nil {
		t.Fatal(err)
	}
	return mark.String()
}
