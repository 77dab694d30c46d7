// Lengths passes a length through what a program has around it: flags, fmt, JSON
// and a database.
//
//	go run ./examples/embed/lengths -hem "1 1/4 in"
package main

import (
	"database/sql"
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"os"

	"example.com/clothyard/units"
)

func main() {
	hem := units.Inch.Frac(5, 4)
	flag.TextVar(&hem, "hem", hem, "how deep the hem is, with its unit")
	flag.Parse()
	if err := tell(os.Stdout, hem); err != nil {
		fmt.Fprintln(os.Stderr, "lengths:", err)
		os.Exit(1)
	}
}

func tell(w io.Writer, hem units.Length) error {
	twice := hem.MulInt(2)
	fmt.Fprintf(w, "a double hem of %v takes %v\n", hem, twice)
	fmt.Fprintln(w, "in millimetres", units.Notation{Unit: units.Millimetre}.Exact(twice))

	text, err := json.Marshal(map[string]units.Length{"hem": hem})
	if err != nil {
		return err
	}
	fmt.Fprintf(w, "as JSON %s\n", text)

	// A database holds the exact text; NULL is sql.Null, not 0 in.
	stored, err := hem.Value()
	if err != nil {
		return err
	}
	var back sql.Null[units.Length]
	if err := back.Scan(stored); err != nil {
		return err
	}
	var none sql.Null[units.Length]
	if err := none.Scan(nil); err != nil {
		return err
	}
	_, err = fmt.Fprintf(w, "from a database %v; NULL is a length: %v\n", back.V, none.Valid)
	return err
}
