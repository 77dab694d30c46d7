package main

import (
	"encoding/json"
	"fmt"
	"strings"

	"example.com/clothyard/units"
)

// convert writes a length in other units, exactly and as a tape shows it.
func (d *desk) convert(args []string) int {
	if len(args) == 0 || len(args) > 2 || len(args) == 2 && !strings.HasPrefix(args[1], "to=") {
		fmt.Fprintln(d.errs, "quick: convert takes a length and a unit, as in: quick convert '1 5/8 in' to=mm")
		return 2
	}
	var asked struct {
		Length units.Length `json:"length"`
		To     units.Unit   `json:"to"`
	}
	if err := d.reader.Pairs(append([]string{"length=" + args[0]}, args[1:]...), &asked); err != nil {
		d.errs.Write(d.complaint("convert", 0, err))
		return 1
	}
	from, to := asked.Length, asked.To
	if to == units.NoUnit {
		to = units.Millimetre
		if units.MetricTape.Marks(from) && !units.InchTape.Marks(from) {
			to = units.Inch
		}
	}
	in := units.Notation{Unit: to}
	mark, residue := in.Round(from)
	if d.asJSON {
		text, err := json.Marshal(struct {
			Length  units.Length `json:"length"`
			Exactly string       `json:"exactly"`
			Mark    units.Length `json:"mark"`
			Residue units.Length `json:"residue"`
		}{from, in.Exact(from), mark, residue})
		if err != nil {
			fmt.Fprintln(d.errs, "quick:", err)
			return 1
		}
		fmt.Fprintf(d.out, "%s\n", text)
		return 0
	}
	text, _ := in.Format(from)
	fmt.Fprintf(d.out, "%s is %s", from, in.Exact(from))
	if !residue.IsZero() {
		fmt.Fprintf(d.out, "; on a tape %s", text)
	}
	fmt.Fprintln(d.out)
	return 0
}
