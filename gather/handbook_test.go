package gather_test

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/gather"
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
			if other := givens[kind+given]; other != "" {
				t.Error("the same is given in", other)
			}
			givens[kind+given] = id
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
			got := answers(t, kind, given, src, known)
			for pair := range strings.SplitSeq(want, ";") {
				name, value, _ := strings.Cut(pair, "=")
				v, ok := got[name]
				if !ok {
					t.Fatalf("unknown name %q", name)
				}
				w, g := texts(t, v, value)
				if d := cmp.Diff(w, g); d != "" {
					t.Errorf("%s (-want +got):\n%s\n%s", name, d, reason)
				}
			}
		})
	}
	if read < 14 || len(sources) < 3 {
		t.Errorf("%d rows read from %d sources, want at least 14 from 3", read, len(sources))
	}
}

// texts is what is wanted and what was got, both as exact text.
func texts(t *testing.T, got any, want string) (w, g string) {
	t.Helper()
	var err error
	switch v := got.(type) {
	case units.Length:
		var l units.Length
		l, err = units.Parse(want)
		w, g = l.String(), v.String()
	case units.Near:
		var l units.Length
		l, err = units.Parse(want)
		w, g = l.String(), v.String()
	case units.Ratio:
		var r units.Ratio
		r, err = units.ParseRatio(want)
		w, g = r.String(), v.String()
	case units.NearRatio:
		var r units.Ratio
		r, err = units.ParseRatio(want)
		w, g = r.String(), v.String()
	case int:
		w, g = want, strconv.Itoa(v)
	default:
		t.Fatalf("no text for %T", got)
	}
	if err != nil {
		t.Fatal(err)
	}
	return w, g
}

// fields reads given, each name once, by the setters of the kind.
func fields(t *testing.T, given string, set map[string]any) {
	t.Helper()
	for pair := range strings.SplitSeq(given, ";") {
		name, value, _ := strings.Cut(pair, "=")
		var err error
		switch p := set[name].(type) {
		case *units.Length:
			*p, err = units.Parse(value)
		case *units.Ratio:
			*p, err = units.ParseRatio(value)
		case *int:
			*p, err = strconv.Atoi(value)
		case *bool:
			*p, err = strconv.ParseBool(value)
		case *string:
			*p = value
		case *units.Given[units.Length]:
			err = p.UnmarshalText([]byte(value))
		case *gather.Setting:
			err = p.UnmarshalText([]byte(value))
		default:
			t.Fatalf("unknown name %q", name)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
}

func stripFields(s *gather.Strip) map[string]any {
	return map[string]any{
		"edge": &s.Edge, "fullness": &s.Fullness, "pieces": &s.Strip.Pieces, "each": &s.Strip.Each,
		"joinseam": &s.Strip.Allowance, "ends": &s.Strip.Ends, "ring": &s.Strip.Ring, "butted": &s.Butted, "least": &s.Strip.Least,
	}
}

func stripAnswers(p gather.StripPlan) map[string]any {
	return map[string]any{
		"edge": p.Edge, "fullness": p.Fullness, "pieces": p.Strip.Spec.Pieces, "each": p.Strip.Spec.Each,
		"sewn": p.Strip.Sewn, "surplus": p.Surplus,
	}
}

func answers(t *testing.T, kind, given, src, known string) map[string]any {
	t.Helper()
	check := func(s ticket.Sheet, err error) {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		if err := s.Check(); err != nil {
			t.Error(err)
		}
	}
	switch kind {
	case "strip":
		var s gather.Strip
		fields(t, given, stripFields(&s))
		p, err := s.Plan()
		check(p.Sheet(), err)
		return stripAnswers(p)
	case "ruffle":
		var r gather.Ruffle
		set := stripFields(&r.Strip)
		for name, p := range map[string]any{
			"cut": &r.Cut, "depth": &r.Depth, "folded": &r.Folded, "hem": &r.Hem, "allowance": &r.Allowance,
			"inside": &r.Inside, "rows": &r.Rows, "turn": &r.Turn, "corners": &r.Corners, "parts": &r.Parts,
		} {
			set[name] = p
		}
		fields(t, given, set)
		p, err := r.Plan()
		check(p.Sheet(), err)
		got := stripAnswers(p.Strip)
		for name, v := range map[string]any{
			"depth": p.Spec.Depth, "allowance": p.Spec.Allowance, "cutdepth": p.CutDepth, "outer": p.Outer,
			"outerfullness": p.OuterFullness, "row": p.Row, "secondrow": p.SecondRow, "thirdrow": p.ThirdRow,
			"strippart": p.StripPart, "edgepart": p.EdgePart, "clear": p.Clear,
		} {
			got[name] = v
		}
		return got
	case "cuff":
		var c gather.Cuff
		fields(t, given, map[string]any{
			"wrist": &c.Wrist, "ease": &c.Ease, "lap": &c.Lap, "finished": &c.Finished, "depth": &c.Depth,
			"allowance": &c.Allowance, "turned": &c.Turned, "sleeve": &c.Sleeve, "flat": &c.Flat, "setting": &c.Setting,
		})
		p, err := c.Plan()
		check(p.Sheet(), err)
		return map[string]any{
			"finished": p.Finished, "cutlength": p.CutLength, "cutdepth": p.CutDepth, "onto": p.Onto, "gathered": p.Gathered,
			"into": p.Into, "fullness": p.Fullness, "overall": p.Overall, "past": p.Past, "row": p.Row,
		}
	case "fullness":
		var use, cloth, from string
		fields(t, given, map[string]any{"use": &use, "cloth": &cloth, "from": &from})
		rows, err := gather.LookupFullness(use, cloth)
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range rows {
			if r.Cloth == cloth && r.Source == src && strings.ReplaceAll(r.Known.String(), "common ", "") == known {
				return map[string]any{"low": r.Low, "high": r.High}
			}
		}
	case "ease":
		var garment, place, from string
		fields(t, given, map[string]any{"garment": &garment, "place": &place, "from": &from})
		rows, err := gather.LookupEase(place, garment)
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range rows {
			if r.Garment == garment && r.Source == src && strings.ReplaceAll(r.Known.String(), "common ", "") == known {
				return map[string]any{"low": r.Low, "high": r.High}
			}
		}
	default:
		t.Fatalf("unknown kind %q", kind)
	}
	t.Fatalf("no row of the table for %q from %q (%s)", given, src, known)
	return nil
}

// TestTables asks every row of the tables for its source, and looks each up.
func TestTables(t *testing.T) {
	sourced := func(what string, c source.Cite) {
		t.Helper()
		_, ok := source.Lookup(c.ID)
		if c.For == "" || c.Known == source.Unknown || !ok && (c.ID != "" || c.Known == source.Read) {
			t.Errorf("%s: %+v", what, c)
		}
	}
	n := 0
	for r := range gather.Fullnesses {
		n++
		sourced("fullness", r.Cite())
		if r.Low.Less(units.RatioOf(1, 1)) || !r.High.IsZero() && r.High.Less(r.Low) {
			t.Errorf("%+v: from %v to %v", r, r.Low, r.High)
		}
		for _, cloth := range []string{r.Cloth, ""} {
			rows, err := gather.LookupFullness(r.Use, cloth)
			found := false
			for _, got := range rows {
				found = found || got == r
			}
			if err != nil || !found {
				t.Errorf("%s in %q is not found: %v", r.Use, cloth, err)
			}
		}
	}
	for r := range gather.Eases {
		n++
		sourced("ease", r.Cite())
		if r.Low.Sign() < 0 || !r.Least && r.High.Less(r.Low) || r.Least && (!r.High.IsZero() || r.Low.IsZero()) {
			t.Errorf("%+v: from %v to %v", r, r.Low, r.High)
		}
		for _, garment := range []string{r.Garment, ""} {
			rows, err := gather.LookupEase(r.Place, garment)
			found := false
			for _, got := range rows {
				found = found || got == r
			}
			if err != nil || !found {
				t.Errorf("%s of %q is not found: %v", r.Place, garment, err)
			}
		}
	}
	for r := range gather.Rows {
		n++
		sourced("rows", r.Cite())
		if !r.First.Less(r.Second) || !r.Third.IsZero() && !r.Second.Less(r.Third) || !r.Seam.IsZero() && r.Seam.Less(r.First) {
			t.Errorf("%+v: rows out of order", r)
		}
	}
	for d := range gather.Defaults {
		n++
		sourced(d.Field, d.Cite)
		if d.Length.IsZero() == (d.Count == 0) {
			t.Errorf("%s: %v and %d", d.Field, d.Length, d.Count)
		}
	}
	if n != 30+25+6+8 {
		t.Errorf("%d rows in all", n)
	}
}

// TestDefaults holds the table of defaults against what the plans assume.
func TestDefaults(t *testing.T) {
	r, err := gather.Ruffle{Strip: gather.Strip{Strip: strip.Spec{Pieces: 1, Each: in("20")}, Edge: in("10")}, Depth: in("2")}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	c, err := gather.Cuff{Finished: in("9"), Depth: in("2"), Sleeve: in("16"), Setting: gather.Flush}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	lengths := map[string]units.Length{
		"Ruffle.Allowance": r.Spec.Allowance, "Ruffle.Inside": r.Spec.Inside,
		"Cuff.Allowance": c.Spec.Allowance, "Cuff.Turned": c.Spec.Allowance.Sub(c.Spec.Turned), "Cuff.Inside": c.Spec.Inside,
	}
	counts := map[string]int{"Ruffle.Rows": r.Spec.Rows, "Ruffle.Parts": r.Spec.Parts, "Cuff.Parts": c.Spec.Parts}
	got := map[string]ticket.Fields{}
	for d := range gather.Defaults {
		noun, field, _ := strings.Cut(d.Field, ".")
		got[noun] = got[noun].With(strings.ToLower(field))
		if d.Length != lengths[d.Field] || d.Count != counts[d.Field] {
			t.Errorf("%s: the table has %v and %d, the plan %v and %d", d.Field, d.Length, d.Count, lengths[d.Field], counts[d.Field])
		}
	}
	if d := cmp.Diff(map[string]ticket.Fields{"Ruffle": r.Assumed, "Cuff": c.Assumed}, got); d != "" {
		t.Error(d)
	}
}

// TestStop leaves every iterator at its first row.
func TestStop(t *testing.T) {
	n := 0
	for range gather.Fullnesses {
		n++
		break
	}
	for range gather.Eases {
		n++
		break
	}
	for range gather.Rows {
		n++
		break
	}
	for range gather.Defaults {
		n++
		break
	}
	for range gather.Settings {
		n++
		break
	}
	r, err := gather.Ruffle{Strip: gather.Strip{Strip: strip.Spec{Pieces: 3, Each: in("20")}, Edge: in("10"), Butted: true}, Depth: in("2")}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	for range r.Quarters() {
		n++
		break
	}
	for range r.Joins() {
		n++
		break
	}
	if n != 7 {
		t.Errorf("%d stops", n)
	}
}
