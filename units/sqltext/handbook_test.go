package sqltext_test

import (
	"database/sql"
	"encoding/csv"
	"os"
	"strings"
	"testing"

	"example.com/clothyard/units/sqltext"
	"example.com/clothyard/units/ticket"
	"github.com/google/go-cmp/cmp"
)

// TestHandbook writes printed measures to the database as text, reads them, and
// writes what was read again.
func TestHandbook(t *testing.T) {
	f, err := os.Open("testdata/handbook.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) < 2 {
		t.Fatal("the handbook is empty")
	}
	if d := cmp.Diff(strings.Split("id,kind,given,want,source,place,known,reason", ","), rows[0]); d != "" {
		t.Fatal(d)
	}
	ids, givens, sources, read := map[string]bool{}, map[string]string{}, map[string]bool{}, 0
	for _, row := range rows[1:] {
		id, kind, given, want, source, known, reason := row[0], row[1], row[2], row[3], row[4], row[6], row[7]
		t.Run(id, func(t *testing.T) {
			if ids[id] {
				t.Error("the id stands twice")
			}
			ids[id] = true
			if other := givens[given]; other != "" {
				t.Error("the same is given in", other)
			}
			givens[given] = id
			if reason == "" {
				t.Error("no reason")
			}
			if _, ok := ticket.Lookup(source); !ok && (source != "" || known == "read") {
				t.Errorf("unknown source %q", source)
			}
			switch known {
			case "read":
				read++
				sources[source] = true
			case "practice", "computed", "memory":
			default:
				t.Errorf("known %q", known)
			}
			text, ok := strings.CutPrefix(given, "text=")
			stored, ok2 := strings.CutPrefix(want, "stored=")
			if !ok || !ok2 {
				t.Fatalf("unknown name in %q or %q", given, want)
			}
			for _, bytes := range []bool{false, true} {
				if d := cmp.Diff(stored, again(t, open(t, bytes), kind, text)); d != "" {
					t.Errorf("(-want +got):\n%s\n%s", d, reason)
				}
			}
		})
	}
	if read < 14 || len(sources) < 3 {
		t.Errorf("%d rows read from %d sources, want at least 14 from 3", read, len(sources))
	}
}

// again is text as it stands in the database once it was read and written.
func again(t *testing.T, db *sql.DB, kind, text string) string {
	t.Helper()
	put(t, db, text)
	var amount any
	switch kind {
	case "length":
		amount = new(sqltext.Length)
	case "ratio":
		amount = new(sqltext.Ratio)
	case "area":
		amount = new(sqltext.Area)
	default:
		t.Fatalf("unknown kind %q", kind)
	}
	if err := db.QueryRow("get").Scan(amount); err != nil {
		t.Fatal(err)
	}
	put(t, db, amount)
	var stored string
	if err := db.QueryRow("get").Scan(&stored); err != nil {
		t.Fatal(err)
	}
	return stored
}
