package layout_test

import (
	"encoding/csv"
	"os"
	"strconv"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

// rectangles reads the published strips: rectangles cut from one whole, a
// number standing for an inch.
func rectangles(t testing.TB, name string) layout.Spec {
	t.Helper()
	f, err := os.Open("testdata/rectangles.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var s layout.Spec
	for _, row := range rows[1:] {
		if row[0] != name {
			continue
		}
		var n [4]int64
		for i := range n {
			if n[i], err = strconv.ParseInt(row[i+1], 10, 64); err != nil {
				t.Fatal(err)
			}
		}
		s.Cloth.Wide = units.Inch.Of(n[0])
		s.Pieces = append(s.Pieces, layout.Piece{Wide: units.Inch.Of(n[1]), Long: units.Inch.Of(n[2]), Count: int(n[3]), Turn: layout.Quarter})
	}
	return s
}
