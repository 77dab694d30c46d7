package ticket

import (
	"encoding/json"

	"example.com/clothyard/units"
)

// MarshalJSON is an object with one key, which names the measure: {"length":
// "3/16 in"}, {"cloth": "81 in"}, {"machine": "2 mm"}, {"ratio": "15/7"}, {"area":
// "12 sq in"}, {"count": 3}, {"money": "4.50"}; it is null for no amount.
func (a Amount) MarshalJSON() ([]byte, error) {
	var value any = a.String()
	switch a.measure {
	case None:
		return []byte("null"), nil
	case Length:
		switch a.at {
		case counter:
			return json.Marshal(map[string]any{"cloth": a.near})
		case machine:
			return json.Marshal(map[string]any{"machine": a.near})
		}
		value = a.near
	case Count:
		value = a.count
	}
	return json.Marshal(map[string]any{measureNames.String(a.measure): value})
}

// UnmarshalJSON reads what [Amount.MarshalJSON] writes.
func (a *Amount) UnmarshalJSON(text []byte) error {
	var v struct {
		Length  *units.Near  `json:"length"`
		Cloth   *units.Near  `json:"cloth"`
		Machine *units.Near  `json:"machine"`
		Ratio   *units.Ratio `json:"ratio"`
		Area    *units.Area  `json:"area"`
		Count   *int64       `json:"count"`
		Money   *string      `json:"money"`
	}
	if err := json.Unmarshal(text, &v); err != nil {
		return err
	}
	switch {
	case v.Length != nil:
		*a = About(*v.Length)
	case v.Cloth != nil:
		*a = About(*v.Cloth)
		a.at = counter
	case v.Machine != nil:
		*a = About(*v.Machine)
		a.at = machine
	case v.Ratio != nil:
		*a = Times(*v.Ratio)
	case v.Area != nil:
		*a = Square(*v.Area)
	case v.Count != nil:
		*a = Amount{measure: Count, count: *v.Count}
	case v.Money != nil:
		*a = Price(*v.Money)
	default:
		*a = Amount{}
	}
	return nil
}
