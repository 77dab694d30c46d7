package nountest

import (
	"encoding/csv"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// Accounted checks that every figure that was found in print is a line of the
// handbook file in a folder, or stands in its omitted.csv with the reason, and none
// in both. The figures are ids between blanks; H001-H040 are forty of them. A line of
// the handbook may have a number of its own behind the id, as in H001-2.
func Accounted(t *testing.T, folder, ids string) {
	t.Helper()
	rows := func(file string) [][]string {
		f, err := os.Open(filepath.Join(folder, file))
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		all, err := csv.NewReader(f).ReadAll()
		if err != nil || len(all) < 2 {
			t.Fatal(file, err)
		}
		return all[1:]
	}
	tested, omitted, wanted := map[string]bool{}, map[string]bool{}, map[string]bool{}
	for _, row := range rows("handbook.csv") {
		id, _, _ := strings.Cut(row[0], "-")
		tested[id] = true
	}
	for id := range strings.FieldsSeq(ids) {
		first, last, many := strings.Cut(id, "-")
		letters := strings.TrimRight(first, "0123456789")
		var from, to int
		if many {
			fmt.Sscan(strings.TrimLeft(first[len(letters):], "0"), &from)
			fmt.Sscan(strings.TrimLeft(last[len(letters):], "0"), &to)
		}
		if !many {
			wanted[id] = true
		}
		for n := from; many && n <= to; n++ {
			wanted[fmt.Sprintf("%s%03d", letters, n)] = true
		}
	}
	for _, row := range rows("omitted.csv") {
		id := row[0]
		if omitted[id] || tested[id] || !wanted[id] || len(row[1]) < 6 {
			t.Errorf("%s: omitted without need, twice or without a reason", id)
		}
		omitted[id] = true
	}
	for id := range wanted {
		if !tested[id] && !omitted[id] {
			t.Errorf("%s is neither tested nor omitted", id)
		}
	}
}
