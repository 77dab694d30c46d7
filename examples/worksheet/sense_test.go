package main

import (
	"bytes"
	"regexp"
	"strings"
	"testing"
)

// sheetOf is the sheet of a garment given as text.
func sheetOf(t *testing.T, garment string, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	if code := run(append(args, "-"), strings.NewReader(garment), &out, &errs); code != 0 || errs.Len() > 0 {
		t.Fatalf("code %d\n%s", code, errs.String())
	}
	return out.String()
}

func hasNot(t *testing.T, text string, bad ...string) {
	t.Helper()
	text = flat(text)
	for _, b := range bad {
		if strings.Contains(text, flat(b)) {
			t.Errorf("the sheet says %q", b)
		}
	}
}

// tight takes more than was drafted everywhere: seams of 3/8 in sewn with two
// passes of 3/8 in, a hem of 1/2 in turned 3/8 and 1/2 in.
const tight = `{
 "seams": [
  {"name": "side", "times": 2, "spec": {"kind": "french", "drafted": "3/8 in", "first": "3/8 in", "second": "3/8 in"}},
  {"name": "lap", "spec": {"kind": "plain", "drafted": "1 in", "draftedUnder": "5/8 in", "first": "13/16 in"}}],
 "edges": [
  {"name": "neck", "net": "16 1/2 in", "crossings": [{"seam": "side", "times": 2}]},
  {"name": "facing", "net": "17 in"},
  {"name": "band", "net": "10 in"},
  {"name": "hem sweep", "net": "40 in", "crossings": [{"seam": "side", "times": 2}], "hem": "hem"}],
 "pairs": [{"long": "neck", "short": "facing"}, {"long": "facing", "short": "band", "maxEase": "1/10"}],
 "hems": [{"name": "hem", "spec": {"kind": "double", "drafted": "1/2 in", "first": "3/8 in", "depth": "1/2 in", "slope": "1/16", "edges": 4}}],
 "drops": [{"name": "front", "drafted": "26 in", "hem": "hem"}],
 "rows": [{"name": "front", "drop": "front", "setting": "vertical", "lap": "3/4 in", "row": {"first": "1 in", "last": "22 in", "count": 5, "from": "the neck", "step": "1/16 in"}}],
 "tin": {"have": 5, "diameter": "1/2 in", "thickness": "1/8 in"}}`

// An amount in words has its direction in the word: shorter by 3/8 in, never
// longer by -3/8 in. A sign stands in the columns of figures only.
func TestDirectionInWords(t *testing.T) {
	for _, units := range []string{"inches", "metric", "both"} {
		s := sheetOf(t, tight, "-units", units)
		words := regexp.MustCompile(`(?m)^  (neck|facing|hem sweep) .*  .*$|^      (drafted|A as sewn|B as chosen): .*$`).ReplaceAllString(s, "")
		words, _, _ = strings.Cut(words, "Edges that come out otherwise")
		if bad := regexp.MustCompile(`.*[ (]-[0-9].*`).FindString(words); bad != "" {
			t.Errorf("-units %s: a minus in words: %s", units, bad)
		}
	}
	s := sheetOf(t, tight)
	has(t, s, "the pattern drew it 1/2 in shorter; as sewn neck is 2 in SHORTER than facing",
		"each ply loses: 3/8 in", "each seam takes up: 3/4 in", "2 seams take up: 1 1/2 in",
		"as sewn: the garment hangs 3/8 in shorter", "as chosen: cut at 7/8 in, so the length stays",
		"4 in to the finished hem (3 5/8 in if the hem were left as the tissue has it)",
		"hem sweep, as sewn (A), measures 38 13/32 in along the hem itself, which lies higher on flared sides")
}

// A seam whose plies drift by as much to either side changes the edges of each.
func TestOppositeDrifts(t *testing.T) {
	has(t, sheetOf(t, tight), "lap drafted: 1 in and 5/8 in takes now: 13/16 in", "each ply: upper keeps 3/16 in, under loses 3/16 in")
}

// A pair that the pattern itself drew too unlike is told so, and what no remedy
// mends is not passed over.
func TestNotMended(t *testing.T) {
	s := sheetOf(t, tight)
	has(t, s, "facing against band: MISMATCH: the pattern drew it 7 in longer, more than can be eased in, and nothing has changed that",
		"What mends it Nothing that is known here mends neck against facing; facing against band", "do not cut before")
	hasNot(t, s, "0 in too short")
	// One pair is mended by its seam and two stay out.
	s = sheetOf(t, strings.NewReplacer(`{"name": "band"`, `{"name": "strip", "net": "40 in"}, {"name": "band"`,
		`"pairs": [`, `"pairs": [{"long": "hem sweep", "short": "strip"}, `).Replace(tight))
	has(t, s, "taken in this sheet: cut the side edges to an allowance of 3/4 in before sewing, then sew as meant (2 seams) still out: neck against facing; facing against band")
}

// A sewer follows the steps in order and does each thing once, where it can still
// be done.
func TestSteps(t *testing.T) {
	s := write(t)
	has(t, s,
		// The length expected and the least that does are those before squaring.
		"press, measure the length, and only then square both ends",
		// An edge not yet sewn has a cut edge of another length.
		"Measure an edge along its stitching line, never along the cut edge",
		// With the collar on, the shoulders are out of reach.
		"first unpick what is sewn across the shoulder; then 1/4 in too long",
		"front 2, face down 13 3/4 in", "sleeve 2, face down 18 3/4 in",
		"centre line on centre line",
		"Stitch the neck through all of it, and each front edge to its facing",
		"12 to 13 to the inch, about 2 mm each",
	)
	hasNot(t, s, "Cut both plies to the narrower allowance", "edge on edge", "mark the buttons through the holes", "(10/127 in)", "front 1, face down")
	if n := strings.Count(s, "mark through the holes"); n != 2 {
		t.Errorf("the buttons of %d rows are marked through the holes, want those of the front and of the cuffs", n)
	}
	// Where nothing was cut otherwise before, the step cuts.
	has(t, sheetOf(t, `{"seams": [{"name": "shoulder", "spec": {"kind": "french", "drafted": "5/8 in", "cut": "7/16 in", "first": "3/16 in", "second": "1/4 in"}}],
		"edges": [{"name": "neck", "net": "16 in", "crossings": [{"seam": "shoulder"}]}], "work": [{"title": "Shoulders", "seams": ["shoulder"]}]}`), "Cut both plies to the narrower allowance")
}

// What 1/16 in on a seam is worth along an edge counts every crossing and the
// slant of each: with the tangent 4/3 the sine is 4/5, and four plies give 5/16.
func TestMendOfASlant(t *testing.T) {
	const neck = `{"seams": [{"name": "raglan", "spec": {"kind": "plain", "drafted": "5/8 in", "first": "5/8 in"}}],
		"edges": [{"name": "neck", "net": "16 in", "crossings": [{"seam": "raglan", "slant": "slope 4/3"}, {"seam": "raglan", "slant": "slope 4/3"}]}],
		"work": [{"title": "Raglan seams", "seams": ["raglan"], "check": [{"edge": "neck"}]}]}`
	has(t, sheetOf(t, neck), "5/16 in too long: take the seam of each raglan wider by 1/16 in (2 seams x 2 plies, at their slant)")
	has(t, sheetOf(t, strings.ReplaceAll(neck, `, "slant": "slope 4/3"`, "")), "1/4 in too long: take the seam of each raglan wider by 1/16 in (2 seams x 2 plies);")
}
