package main

import (
	"bytes"
	"os"
	"regexp"
	"strings"
	"testing"
)

// written keeps what was printed, since a lay is looked for each time.
var written = map[string]string{}

// write runs the program and gives what it prints.
func write(t *testing.T, args ...string) string {
	t.Helper()
	key := strings.Join(args, "\x00")
	if s, ok := written[key]; ok {
		return s
	}
	var out, errs bytes.Buffer
	if code := run(args, strings.NewReader(""), &out, &errs); code != 0 || errs.Len() > 0 {
		t.Fatalf("worksheet %v: code %d\n%s", args, code, errs.String())
	}
	written[key] = out.String()
	return out.String()
}

// flat is text with every run of blanks and line ends as one blank, so that a
// figure is found wherever a line was broken.
func flat(s string) string { return strings.Join(strings.Fields(s), " ") }

// has fails for each of the wants that the text does not hold.
func has(t *testing.T, text string, wants ...string) {
	t.Helper()
	text = flat(text)
	for _, w := range wants {
		if !strings.Contains(text, flat(w)) {
			t.Errorf("the sheet does not say %q", w)
		}
	}
}

// row is one line of the table of edges: a name, then drafted, A and B.
type row struct{ name, drafted, a, b string }

func rows(t *testing.T, text string, want []row) {
	t.Helper()
	text = strings.ReplaceAll(text, "\n    edge\n", " edge\n") // a folded name
	for _, r := range want {
		line := regexp.MustCompile(`(?m)^  ` + regexp.QuoteMeta(r.name) + `\s+` + regexp.QuoteMeta(r.drafted) + `\s{2,}` + regexp.QuoteMeta(r.a) + `\s{2,}` + regexp.QuoteMeta(r.b) + `$`)
		if !line.MatchString(text) {
			t.Errorf("no line says: %s  %s  %s  %s", r.name, r.drafted, r.a, r.b)
		}
	}
}

// The shirt of the example worked by hand, both ways: A sewn with nothing
// trimmed, B with the four shoulder edges cut to what the seam takes and the hem
// cut to what it takes.
func TestShirtByHand(t *testing.T) {
	s := write(t)
	rows(t, s, []row{
		{"neck", "16 1/2 in", "17 1/4 in", "16 1/2 in"},
		{"facing neck", "16 1/2 in", "16 1/2 in", "16 1/2 in"},
		{"neck, centre to centre", "15 in", "15 3/4 in", "15 in"},
		{"collar neck edge", "15 in", "15 in", "15 in"},
		{"collar outer edge", "15 3/4 in", "15 3/4 in", "15 3/4 in"},
		{"armhole", "18 3/4 in", "19 1/2 in", "19 1/8 in"},
		{"sleeve top", "19 in", "19 3/8 in", "19 3/8 in"},
		{"sleeve top less armhole", "+1/4 in", "-1/8 in", "+1/4 in"},
		{"neck less facing neck", "0 in", "+3/4 in", "0 in"},
		{"body at bust", "42 1/2 in", "43 1/4 in", "43 1/4 in"},
		{"hem sweep", "49 in", "49 3/4 in", "49 3/4 in"},
		{"sleeve bottom", "16 3/4 in", "17 1/8 in", "17 1/8 in"},
		{"cuff, finished", "9 in", "9 in", "9 in"},
		{"fullness into cuff", "1 31/36", "1 65/72", "1 65/72"}, // 67/36 and 137/72
		{"front edge, neck seam to hem", "26 1/2 in", "27 in", "26 1/2 in"},
		{"shoulder at the neck to hem", "30 in", "30 11/16 in", "30 in"},
	})
	for name, wants := range map[string][]string{
		"the seams": {"takes now: 7/16 in", "each ply keeps: 3/16 in", "each seam gives: 3/8 in", "2 seams give: 3/4 in"},
		"3.1":       {"49 29/32 in along the hem itself"},
		"the mismatches": {
			"neck against facing neck: MISMATCH: the pattern drew them equal; as sewn facing neck is 3/4 in too short",
			"collar neck edge is 3/4 in too short",
			"sleeve top is 1/8 in SHORTER than armhole",
		},
		"3.2 the roads": {
			"cut the shoulder edges to an allowance of 7/16 in before sewing",
			"sew the facing shoulder at 7/16 in (2 seams). Mends 1 of 3; nothing left over. Then: neck 17 1/4 in on facing neck 17 1/4 in",
			"sew the sleeve with passes of 3/16 in and 3/16 in",
			"sleeve top 19 1/2 in on armhole 19 1/2 in",
			"sew the shoulder with passes of 3/8 in and 1/4 in instead",
			"neck, centre to centre 15 3/4 in on collar neck edge 15 3/4 in",
			"spread the pattern of collar neck edge by 3/4 in in all, 3/8 in at each of 2 places",
			"the edge would be 16 1/2 in",
		},
		"3.4 frill": {
			"3 strips of 12 1/4 in by 3 3/4 in", "36 3/4 in end to end, 33 3/4 in after", "2 1/7 to 1 on 15 3/4 in", // 15/7
			"2 8/131 to 1 on 16 3/8 in", "fullness 2 1/22", // 270/131 and 45/22
			"1 of 4 8 7/16 in 3 15/16 in", "2 of 4 16 7/8 in 7 7/8 in", "3 of 4 25 5/16 in 11 13/16 in",
			"join 1 11 1/4 in 5 1/4 in", "join 2 22 1/2 in 10 1/2 in", "2 13/16 in from a mark", "gathering row: 1/2 in", "exactly 2 cut each strip 11 1/2 in",
		},
		"3.5 cuff": {
			"cut: 10 1/4 in by 5 3/4 in", "turned 1/2 in, so that its fold passes the seam by 1/8 in", "1/2 in, so that 16 1/8 in gathers into 8 in: 2 1/64 to 1",
			"a mirrored pair for left and right", "horizontal, from 3/8 in to 15/16 in from the end; the button 1/2 in from the other end",
		},
		"3.6 nine buttons": {
			"1 5/8 in 5/8 in", "2 scant 3 5/16 in 3 19/64 in", "3 scant 6 in 5 31/32 in", "4 full 8 5/8 in 8 41/64 in", "5 11 5/16 in 11 5/16 in",
			"6 scant 14 in 13 63/64 in", "7 scant 16 11/16 in 16 21/32 in", "8 full 19 5/16 in 19 21/64 in", "9 22 in 22 in",
			"(2 43/64 in)", "no mark is off by more than 1/32 in", "4 1/2 in to the finished hem (5 in if the hem were left as the tissue has it)", "from the first mark to the last = 21 3/8 in",
			"2 11/16 in laid off gap after gap ends 1/8 in too far, 2 5/8 in ends 3/8 in short",
		},
		"3.7 eleven in the tin": {
			"drafted: 13 (front 9 + each cuff 2 x 2)", "in the tin: 11", "short: 2", "front 9 + each cuff 1 x 2 = 11, 0 to spare", "1 1 1/8 in 1 1/8 in",
			"drafted: 2, at 3/4 in, 1 1/2 in", "from the seam line to the fold = 2 1/4 in",
			"front 7 + each cuff 2 x 2 = 11", "gap 3 9/16 in, at 5/8 in, 4 3/16 in, 7 3/4 in, 11 5/16 in, 14 7/8 in, 18 7/16 in, 22 in; drafted marks 1, 5, 9 still serve",
			"9/16 in, from scant 9/16 in (87/160 in)", "(9/20 in) across", "(3/32 in) thick", "from 1/8 in above the mark to 7/16 in below it", "1 3/16 in from the edge and cross the topstitching at 1 1/8 in by 1/16 in",
		},
		"3.8 cloth": {
			"2 3/8 yd (85 1/2 in)", "2 3/4 yd (99 in)", "SHORT by 13 1/2 in", "(81 187/200 in) long", "(43 1/10 in) wide",
			"76 3/16 in long, 43 in wide: FITS", "(5 299/400 in) to spare", "(79 223/388 in)", "ask for 2 1/4 yd (81 in)",
			"back 25 1/4 in 31 3/16 in", "front facing 1 1 7/8 in 27 7/8 in", "sleeve 1 18 3/4 in 22 1/2 in", "front 1 13 3/4 in 31 3/16 in", "back neck facing 7 1/2 in 4 in", "collar 1 4 in 17 in",
		},
		"3.9 hem": {
			"raw edge: 3/4 in below the finished line", "first fold: 3/8 in below the finished line", "second fold: on the finished line", "stitching: 5/16 in above the finished edge",
			"(15/64 in) in all", "15/256 in at each of 4 edges",
		},
		"the ticket": {
			"(82 187/200 in) is to be expected; 77 3/16 in is the least that does", "square to the seam = 11 1/8 in", "would leave 10 3/4 in", "guide: 1/2 in from the raw edge",
			"neck, edge to edge = 16 1/2 in", "cut the inner stand scant 1/8 in (3/32 in) shorter", "body at bust = 43 1/4 in", "armhole = 19 1/8 in", "sleeve top = 19 3/8 in", "from the seam to the trimmed edge = 3/8 in",
			"neck, centre to centre = 15 in", "guide: 1 1/8 in from the front edge", "shoulder: cut at 7/16 in, not 5/8 in", "bottom hem: cut at 3/4 in, not 1 1/4 in",
		},
	} {
		t.Run(name, func(t *testing.T) {
			for i, w := range wants {
				wants[i] = strings.NewReplacer("{", "", "}", "").Replace(w)
			}
			has(t, s, wants...)
		})
	}
}

// The same shirt with two passes of 1/4 in.
func TestShirtQuarters(t *testing.T) {
	s := write(t, "testdata/good/quarters.json")
	rows(t, s, []row{
		{"neck", "16 1/2 in", "17 in", "16 1/2 in"},
		{"facing neck", "16 1/2 in", "16 1/2 in", "16 1/2 in"},
		{"neck, centre to centre", "15 in", "15 1/2 in", "15 in"},
		{"armhole", "18 3/4 in", "19 1/4 in", "19 in"},
		{"sleeve top", "19 in", "19 1/4 in", "19 1/4 in"},
		{"sleeve top less armhole", "+1/4 in", "0 in", "+1/4 in"},
		{"body at bust", "42 1/2 in", "43 in", "43 in"},
		{"sleeve bottom", "16 3/4 in", "17 in", "17 in"},
	})
	has(t, s, "each ply keeps: 1/8 in", "each seam gives: 1/4 in", "facing neck is 1/2 in too short", "collar neck edge is 1/2 in too short", "cut at 1/2 in, not 5/8 in",
		"your own lay: does not hold with these seams and hems")
}

// The first pass and the drift differ, so that one cannot be taken for the other.
func TestShirtFiveSixteenths(t *testing.T) {
	s := write(t, "testdata/good/five-sixteenths.json")
	has(t, s, "takes now: 1/2 in", "each ply keeps: 1/8 in", "each seam gives: 1/4 in")
	rows(t, s, []row{{"neck", "16 1/2 in", "17 in", "16 1/2 in"}, {"body at bust", "42 1/2 in", "43 in", "43 in"}})
}

// One ply drafted at 1 in and one at 5/8 in, both sewn at 7/16 in.
func TestShirtUnequalPlies(t *testing.T) {
	s := write(t, "testdata/good/unequal.json")
	has(t, s, "each ply keeps: upper 9/16 in, under 3/16 in", "each seam gives: 3/4 in", "2 seams give: 1 1/2 in")
	rows(t, s, []row{{"neck", "16 1/2 in", "18 in", "16 1/2 in"}, {"armhole", "18 3/4 in", "19 7/8 in", "19 1/8 in"}})
}

// In metric every figure is the exact length in millimetres, not a rounded inch.
func TestShirtMetric(t *testing.T) {
	s := write(t, "-units", "metric")
	rows(t, s, []row{
		{"neck", "419.1 mm", "438.15 mm", "419.1 mm"},
		{"sleeve top less armhole", "+6.35 mm", "-3.175 mm", "+6.35 mm"},
		{"shoulder at the neck to hem", "762 mm", "779.4625 mm", "762 mm"},
	})
	has(t, s, "15.875 mm", "83.740625 mm", "151.60625 mm", "219.471875 mm", "287.3375 mm", "355.203125 mm", "423.06875 mm", "490.934375 mm", "558.8 mm",
		"11 mm (11.1125 mm)", "5 mm (4.7625 mm)", "cut the inner stand full 2 mm (2.38125 mm) shorter", "1267.61875 mm along the hem")
	if strings.Contains(s, " in ") && regexp.MustCompile(`\d in\b`).MatchString(s) {
		t.Errorf("inches in a metric sheet: %q", regexp.MustCompile(`.*\d in\b.*`).FindString(s))
	}
}

// Every figure of the metric sheet is one of the inch sheet, read from the other.
func TestBothUnitsAgree(t *testing.T) {
	s := write(t, "-units", "both")
	has(t, s, "16 1/2 in (419.1 mm)", "scant 3 5/16 in", "3 19/64 in (83.740625 mm)")
}

// A text goes to a printer of 80 columns, whatever the units.
func TestColumns(t *testing.T) {
	for _, u := range []string{"inches", "metric", "both"} {
		for i, line := range strings.Split(write(t, "-units", u), "\n") {
			if n := len([]rune(line)); n > 80 {
				t.Errorf("-units %s, line %d has %d columns: %s", u, i+1, n, line)
			}
		}
	}
}

// What a sewer would ask of the sheet is answered by its text alone.
func TestQuestions(t *testing.T) {
	s := write(t)
	for _, q := range []struct {
		ask    string
		where  string // the heading under which she looks
		until  string // the next heading
		answer string
	}{
		{"does my cloth do?", "Does the cloth do?", "Which edges", "76 3/16 in long, 43 in wide: FITS"},
		{"how long must it be after the wash?", "Step 1.", "Step 2.", "at least = 77 3/16 in"},
		{"does the facing still fit the neck?", "Which edges", "What mends it", "facing neck is 3/4 in too short"},
		{"what is the least I can do about it?", "What mends it", "Every edge", "remedy 1: cut the shoulder edges to an allowance of 7/16 in before sewing"},
		{"what do I cut otherwise than the tissue?", "2. CUT", "Where each piece", "shoulder: cut at 7/16 in, not 5/8 in"},
		{"which sides go together first?", "Step 6.", "Step 7.", "Stitch the first pass, WRONG SIDES TOGETHER. guide: 3/16 in from the raw edge"},
		{"what do I trim before the second pass?", "Step 6.", "Step 7.", "Trim both allowances just before the second pass. trim: to 1/8 in beyond the stitching"},
		{"how long is the neck after step 6?", "Step 6.", "Step 7.", "neck, edge to edge = 16 1/2 in"},
		{"and if it is a quarter too long?", "Step 6.", "Step 7.", "1/4 in too long: take the second pass of each shoulder wider by 1/16 in"},
		{"how much do I ease into the armhole?", "Every edge", "2. CUT", "sleeve top less armhole +1/4 in -1/8 in +1/4 in"},
		{"how wide do I cut the frill?", "Frill:", "Cuff:", "3 strips of 12 1/4 in by 3 3/4 in"},
		{"where on the collar does the frill's middle go?", "Frill:", "Cuff:", "2 of 4 16 7/8 in 7 7/8 in"},
		{"where is the fifth hole?", "Buttons: front", "Buttons: each cuff", "5 11 5/16 in 11 5/16 in"},
		{"which way do the holes run, and how far?", "Buttons: front", "Buttons: each cuff", "vertical, 9/16 in long: from 1/8 in above the mark to 7/16 in below it"},
		{"I have eleven buttons: where do I leave some off?", "Buttons drafted", "Buttons: front", "front 9 + each cuff 1 x 2 = 11"},
		{"how far from the edge do I stitch the hem?", "Hem: bottom hem", "Hem: sleeve slit", "stitching: 5/16 in above the finished edge"},
	} {
		text := flat(s)
		from := strings.Index(text, q.where)
		if from < 0 {
			t.Errorf("%s: no heading %q", q.ask, q.where)
			continue
		}
		text = text[from:]
		if to := strings.Index(text, q.until); to > 0 {
			text = text[:to]
		} else {
			t.Errorf("%s: no heading %q after it", q.ask, q.until)
		}
		if !strings.Contains(text, q.answer) {
			t.Errorf("%s\nthe sheet does not answer %q under %q", q.ask, q.answer, q.where)
		}
	}
}

// The parts stand in the order in which they are needed.
func TestOrder(t *testing.T) {
	s := write(t)
	at := 0
	for _, head := range []string{"1. BEFORE YOU CUT", "2. CUT", "3. WORK TICKET", "4. MARKS", "5. WHAT WAS SUBSTITUTED, AND WHAT IT CHANGED", "6. THREAD AND NEEDLE", "7. TAKE CARE", "8. SOURCES"} {
		i := strings.Index(s[at:], "\n"+head+"\n")
		if i < 0 {
			t.Fatalf("no %q after byte %d", head, at)
		}
		at += i + 1
	}
}

// The sheet, up to its sources, which stand in one list only, is compared with the
// one that was read and approved.
func TestGolden(t *testing.T) {
	for file, args := range map[string][]string{
		"testdata/shirt.txt":        nil,
		"testdata/shirt-metric.txt": {"-units", "metric"},
		"testdata/shirt.md":         {"-form", "markdown", "-units", "both"},
	} {
		got := write(t, args...)
		for _, head := range []string{"8. SOURCES\n", "## 8. Sources\n"} {
			got, _, _ = strings.Cut(got, head)
		}
		if os.Getenv("UPDATE") != "" {
			if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if got != string(want) {
			g, w := strings.Split(got, "\n"), strings.Split(string(want), "\n")
			for i := range min(len(g), len(w)) {
				if g[i] != w[i] {
					t.Errorf("%s line %d\n got %s\nwant %s\n(UPDATE=1 go test rewrites it; read the diff)", file, i+1, g[i], w[i])
					break
				}
			}
			if len(g) != len(w) {
				t.Errorf("%s has %d lines, want %d", file, len(g), len(w))
			}
		}
	}
}
