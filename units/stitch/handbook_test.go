package stitch_test

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/stitch"
)

func length(t *testing.T, s string) units.Length {
	t.Helper()
	l, err := units.Parse(s)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

func ratio(t *testing.T, s string) units.Ratio {
	t.Helper()
	r, err := units.ParseRatio(s)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func count(t *testing.T, s string) int {
	t.Helper()
	n, err := strconv.Atoi(s)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// pairs are name=value;name=value; a semicolon in a value is written |.
func pairs(t *testing.T, text string) map[string]string {
	t.Helper()
	out := map[string]string{}
	for pair := range strings.SplitSeq(text, ";") {
		name, value, ok := strings.Cut(pair, "=")
		if _, twice := out[name]; !ok || twice {
			t.Fatalf("%q is not name=value, or given twice", pair)
		}
		out[name] = strings.ReplaceAll(value, "|", ";")
	}
	return out
}

// TestHandbook puts printed figures to the public API.
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
	if len(rows) < 100 || strings.Join(rows[0], ",") != "id,kind,given,want,source,place,known,reason" {
		t.Fatal("the handbook is empty, short or has another header")
	}
	omitted := omittedRows(t)
	ids, givens, sources, read, worked := map[string]bool{}, map[string]bool{}, map[string]bool{}, 0, 0
	for _, row := range rows[1:] {
		id, kind, given, want, src, known, reason := row[0], row[1], row[2], row[3], row[4], row[6], row[7]
		if ids[id] || givens[kind+given] || omitted[id] {
			t.Errorf("%s: id or input twice, or omitted", id)
		}
		ids[id], givens[kind+given] = true, true
		if _, ok := source.Lookup(src); !ok && (src != "" || known == "read") || reason == "" {
			t.Errorf("%s: source %q, reason %q", id, src, reason)
		}
		switch known {
		case "read":
			read++
			sources[src] = true
		case "memory", "practice":
		default:
			t.Errorf("%s: known %q", id, known)
		}
		t.Run(id, func(t *testing.T) {
			g := pairs(t, given)
			var got map[string]string
			switch kind {
			case "density":
				got = density(t, g)
				worked++
			case "thread":
				got = thread(t, g)
				worked++
			case "setting":
				got = setting(t, g)
				worked++
			case "conversion":
				got = conversion(t, g)
				worked++
			case "needle": // its shank is worked from its number
				got = row1(t, kind, g, known)
				worked++
			default:
				got = row1(t, kind, g, known)
			}
			w := pairs(t, want)
			for name, value := range w {
				if d := cmp.Diff(plain(value), got[name]); d != "" {
					t.Errorf("%s (-want +got):\n%s\n%s", name, d, reason)
				}
			}
		})
	}
	if read < 100 || len(sources) < 15 || worked*3 < len(rows) {
		t.Errorf("%d rows read in %d sources, %d worked", read, len(sources), worked)
	}
}

func omittedRows(t *testing.T) map[string]bool {
	t.Helper()
	f, err := os.Open("testdata/omitted.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil || len(rows) < 2 {
		t.Fatal(err, "or no rows")
	}
	out := map[string]bool{}
	for _, r := range rows[1:] {
		if out[r[0]] || r[1] == "" {
			t.Errorf("%s: twice, or no reason", r[0])
		}
		out[r[0]] = true
	}
	return out
}

// plain is the exact text of a length or a number, or the text itself.
func plain(s string) string {
	if l, err := units.Parse(s); err == nil {
		return l.String()
	}
	if r, err := units.ParseRatio(s); err == nil {
		return r.String()
	}
	return s
}

func density(t *testing.T, g map[string]string) map[string]string {
	var d stitch.Density
	for name, v := range g {
		switch name {
		case "stitchlength":
			d.StitchLength = length(t, v)
		case "space":
			d.Space = length(t, v)
		case "perinch":
			d.PerInch = ratio(t, v)
		case "run":
			d.Run = length(t, v)
		case "stitches":
			d.Stitches = ratio(t, v)
		default:
			t.Fatalf("unknown name %q", name)
		}
	}
	p, err := d.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
	tenth, _ := p.Spec.StitchLength.Round(units.Millimetre.Frac(1, 10), units.HalfAway)
	whole, _ := p.Spec.StitchLength.Round(units.Millimetre.Of(1), units.HalfAway)
	return map[string]string{
		"stitchlength": p.Spec.StitchLength.String(), "perinch": p.Spec.PerInch.String(), "run": p.Spec.Run.String(),
		"stitches": p.Spec.Stitches.String(), "tenth": tenth.String(), "whole": whole.String(),
	}
}

func conversion(t *testing.T, g map[string]string) map[string]string {
	per := ratio(t, g["perinch"])
	for r := range stitch.Printed(per) {
		if r.Source != g["source"] || g["printed"] != "" && r.Printed != length(t, g["printed"]) {
			continue
		}
		dPlan, err := stitch.Density{PerInch: per}.Plan()
		d := dPlan.Spec
		if err != nil || r.Exact() != d.StitchLength || r.Off() != r.Printed.Sub(d.StitchLength) {
			t.Errorf("%+v is off by %v, %v", r, r.Off(), err)
		}
		return map[string]string{"printed": r.Printed.String(), "exact": d.StitchLength.String()}
	}
	t.Fatal("no such row")
	return nil
}

func stitchType(t *testing.T, s string) (k stitch.Type) {
	t.Helper()
	if err := k.UnmarshalText([]byte(s)); err != nil {
		t.Fatal(err)
	}
	return k
}

func thread(t *testing.T, g map[string]string) map[string]string {
	var s stitch.Thread
	for name, v := range g {
		switch name {
		case "stitch":
			s.Stitch = stitchType(t, v)
		case "seam":
			s.Seam = length(t, v)
		case "ratio":
			s.Ratio = ratio(t, v)
		case "perinch":
			s.PerInch = ratio(t, v)
		case "thickness":
			s.Thickness = length(t, v)
		case "sample":
			s.Sample = length(t, v)
		case "sampleneedle":
			s.SampleNeedle = length(t, v)
		case "sampleunder":
			s.SampleUnder = length(t, v)
		case "waste":
			s.Waste = ratio(t, v)
		default:
			t.Fatalf("unknown name %q", name)
		}
	}
	p, err := s.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
	return map[string]string{
		"perlength": p.PerLength.String(), "total": p.Total.String(), "need": p.Need.String(),
		"needle": p.Needle.String(), "under": p.Under.String(),
	}
}

func setting(t *testing.T, g map[string]string) map[string]string {
	var s stitch.Setting
	if err := s.Cloth.UnmarshalText([]byte(g["cloth"])); err != nil {
		t.Fatal(err)
	}
	p, err := s.Plan()
	if err != nil {
		t.Fatal(err)
	}
	return map[string]string{
		"needle": strconv.Itoa(p.Spec.Needle), "size": strconv.Itoa(p.Size), "shank": p.Shank.String(),
		"least": p.LeastPerInch.String(), "most": p.MostPerInch.String(), "short": p.Short.String(), "long": p.Long.String(),
	}
}

// row1 finds the one row of a table that is given.
func row1(t *testing.T, kind string, g map[string]string, known string) map[string]string {
	var found []map[string]string
	add := func(src string, k source.Known, cells map[string]string) {
		if src == g["source"] {
			found = append(found, cells)
			if k.String() != known {
				t.Errorf("known %v, want %s", k, known)
			}
		}
	}
	switch kind {
	case "row":
		var j stitch.Job
		var c stitch.Cloth
		if j.UnmarshalText([]byte(g["job"])) != nil || c.UnmarshalText([]byte(g["cloth"])) != nil {
			t.Fatal("no such job or cloth")
		}
		rows := j.Rows()
		if c != stitch.NoCloth {
			rows = c.Rows()
		}
		for r := range rows {
			if r.Use == g["use"] {
				add(r.Source, r.Known, map[string]string{
					"least": r.LeastPerInch.String(), "most": r.MostPerInch.String(), "short": r.ShortLength.String(), "long": r.LongLength.String(),
				})
			}
		}
	case "count":
		g["source"] = "tent-repair-manual"
		for r := range stitch.Counts {
			if r.Work == g["work"] && r.Place == g["place"] {
				add(r.Source, r.Known, map[string]string{"least": strconv.Itoa(r.Least), "most": strconv.Itoa(r.Most)})
			}
		}
	case "needle":
		for r := range stitch.Needles {
			if r.Metric == count(t, g["metric"]) {
				add(r.Source, r.Known, map[string]string{"size": strconv.Itoa(r.Size), "cloth": r.Cloth.String(), "shank": r.Shank().String()})
			}
		}
	case "waste":
		for r := range stitch.WasteRows {
			add(r.Source, r.Known, map[string]string{"least": r.Least.String(), "most": r.Most.String()})
		}
	case "ratio":
		for r := range stitchType(t, g["stitch"]).Ratios() {
			add(r.Source, r.Known, map[string]string{"ratio": r.Ratio.String(), "needle": r.Needle.String()})
		}
	case "formula":
		r, ok := stitchType(t, g["stitch"]).Formula()
		if ok {
			g["source"] = r.Source
			add(r.Source, r.Known, map[string]string{"fixed": strconv.Itoa(r.Fixed), "thick": strconv.Itoa(r.Thick), "wide": strconv.Itoa(r.Wide)})
		}
	case "class":
		var c stitch.Class
		if err := c.UnmarshalText([]byte(g["class"])); err != nil {
			t.Fatal(err)
		}
		for r := range c.Rows() {
			add(r.Source, r.Known, map[string]string{"name": r.Name})
		}
	case "type":
		for r := range stitchType(t, g["stitch"]).Rows() {
			add(r.Source, r.Known, map[string]string{
				"name": r.Name, "needles": strconv.Itoa(r.Needles), "threads": strconv.Itoa(r.Threads),
				"made": r.Made[0].String() + " " + r.Made[1].String(),
			})
		}
	default:
		t.Fatalf("unknown kind %q", kind)
	}
	if len(found) != 1 {
		t.Fatalf("%d rows found, want 1", len(found))
	}
	return found[0]
}
