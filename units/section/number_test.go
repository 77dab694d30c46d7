package section_test

import (
	"bytes"
	"testing"

	"example.com/clothyard/units/section"
)

// TestNumbersOverEachOther: where two rows lie on one line, the line from the
// upper number runs under the lower one and does not strike it out.
func TestNumbersOverEachOther(t *testing.T) {
	th := in("1/32")
	d := doubleHem(in("1/4"), in("1"), in("1/16"), th, in("1"))
	first := d.Stitches[0]
	second := section.Stitch{Name: "garment alone", From: at(first.From.X, th), To: first.To, Pierce: []string{"cloth"}}
	second.From.Y = th.DivInt(2)
	d.Stitches = append(d.Stitches, second)
	svg, err := d.SVG()
	if err != nil {
		t.Fatal(err)
	}
	lower, upper := bytes.Index(svg, []byte(">1</text>")), bytes.Index(svg, []byte(">2</text>"))
	if lower < 0 || upper < 0 || lower < upper {
		t.Errorf("number 1, the lower, is written at byte %d and number 2 at byte %d", lower, upper)
	}
}
