package units_test

import (
	"encoding/json"
	"fmt"

	"example.com/clothyard/units"
)

// A piece is one line of the wardrobe's book.
type piece struct {
	Name     string
	Width    units.Length
	Fullness units.Ratio `json:",omitzero"`
	Unit     units.Unit  `json:",omitzero"`
}

// Keep lengths in JSON as exact text with their units; no number is ever rounded.
func Example_json() {
	in := `[{"Name":"cuff","Width":"9 1/2 in"},{"Name":"ruff","Width":"1/3 m","Fullness":"6"},{"Name":"band","Width":"4.5"}]`
	var book []piece
	fmt.Println(json.Unmarshal([]byte(in), &book))
	in = `[{"Name":"cuff","Width":"9 1/2 in"},{"Name":"ruff","Width":"1/3 m","Fullness":"6"}]`
	if err := json.Unmarshal([]byte(in), &book); err != nil {
		fmt.Println(err)
		return
	}
	book[0].Width = book[0].Width.Add(units.Millimetre.Of(3))
	out, err := json.Marshal(book)
	fmt.Println(string(out), err)
	// Output:
	// units: "4.5" at byte 3: found the end, want a unit: in, ft, yd, mm, cm, m or L
	// [{"Name":"cuff","Width":"244.3 mm"},{"Name":"ruff","Width":"13 47/381 in","Fullness":"6"}] <nil>
}
