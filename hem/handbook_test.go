package hem_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
)

// TestEveryRow: every row of the references on hems, plackets, tucks and linen is a
// row of the handbook, or stands among the omitted ones with the reason; none is both.
func TestEveryRow(t *testing.T) {
	nountest.Accounted(t, "testdata", "H001-H040 Q001-Q033 S001-S080 L001-L030 E059-E090 "+workedRows)
}

// workedRows are the worked examples on hems.
const workedRows = `
W001 W006 W012 W013 W014 W047 W048 W049 W054 W057 W058 W059 W061 W065 W066 W067 W070 W080 W081 W082
W083 W085 W086 W105 W106 W123 W124 W125 W126 W128 W129 W130 W131 W132 W139 W148 W149 W150 W153 W154
W157 W158 W165 W166 W167 W169 W177 W190 W204 W205 W206 W208 W212 W214 W216 W221 W225 W228 W240 W241
W266 W271 W272 W277 W285 W286 W287 W289 W293 W333 W341 W354 W355 W356 W357
`
