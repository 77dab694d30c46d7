package gather_test

import (
	"errors"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

func in(s string) units.Length { return units.MustParse(s + " in") }

func TestContract(t *testing.T) { nountest.Contract(t, gather.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, gather.Nouns()) }

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", gather.Nouns(), map[string]nountest.Sum{"fullness": fullnessOf, "ease": easeOf})
}

// fullnessOf is the row of the table of fullness of a use, a cloth and a source.
func fullnessOf(given map[string]string) (map[string]any, error) {
	for r := range gather.Fullnesses {
		if r.Use == given["use"] && r.Cloth == given["cloth"] && r.Source == given["from"] {
			return map[string]any{"low": r.Low, "high": r.High}, nil
		}
	}
	return nil, errors.New("no such row")
}

// easeOf is the row of the table of ease of a place, a garment and a source.
func easeOf(given map[string]string) (map[string]any, error) {
	for r := range gather.Eases {
		if r.Place == given["place"] && r.Garment == given["garment"] && r.Source == given["from"] {
			return map[string]any{"low": r.Low, "high": r.High}, nil
		}
	}
	return nil, errors.New("no such row")
}

// Every figure on gathers, pleats, circles, elastic and bands is a line of the handbook,
// or is omitted with the reason.
func TestAccounted(t *testing.T) {
	nountest.Accounted(t, "testdata", "G001-G073 GF001-GF036 GL001-GL012 GE001-GE037 "+others)
}

// others are the worked examples, and what was found on parts of garments.
const others = `
W004 W008 W044 W045 W046 W064 W076 W077 W079 W084 W087 W111 W115 W127 W146 W160 W211 W217 W227 W243 W244 W265
W267 W269 W283 W290 W291 W307 W308 W309 W316 W317 W338 W342 P024 P025 P026 P028 P029 P030 P031 P032 P033 P034
P035 P036 P037 P038 P039 P040 P041 P042 P043 P049 P050 P051 P060 P079 P083 P084 P093 P094 P095 P096 P097 P098
P141 P142 P143 P144 P145 P146 P147 P148 P149 P150 P179 P180 P182 P201 P202 P203 P204 P205 P206 P207 P218 P219
P220 P221 P222 P223 P224 P225 P226 P227 P228 P229 P230 P231 P232 P233 P234 P235 P236 P237 P238 P239 P240 P241
P242 P243 P244 P245 P246 P247 P248 P249 P250 P251 P252 P253 P254 P255 P256 P304 P305 P306 P307
`
