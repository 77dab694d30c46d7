package hem_test

import (
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units/noun/nountest"
)

// Every figure of every table is as its source prints it.
func TestPrinted(t *testing.T) {
	nountest.Tables(t, "testdata/tables.csv", map[string]any{
		"turn": hem.Turns(), "mitre": hem.MitreTrims, "depth": hem.Depths(), "tuck": hem.TuckWidths(), "space": hem.TuckSpaces(), "growth": hem.Growths(),
		"strip": hem.Strips(), "foldback": hem.FoldBacks(), "ease": hem.CasingEases(), "casing": hem.CasingTurns(),
	})
}
