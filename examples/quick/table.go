package main

import (
	"bufio"
	"encoding"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"reflect"
	"slices"
	"strings"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// table does a sum for each row of CSV (RFC 4180). The first row names the fields; an
// empty cell is not given. Each row comes back with its answers after it, lengths in
// exact text, and with what is wrong in the last column.
func (d *desk) table(name string, in io.Reader) int {
	e, ok := d.find(name)
	if !ok {
		return 2
	}
	bound := &rowBound{in: in}
	buffer := bufio.NewReaderSize(bound, 64<<10)
	rows, out := csv.NewReader(buffer), csv.NewWriter(d.out)
	fields, err := rows.Read()
	if err != nil {
		fmt.Fprintln(d.errs, "quick: the first row names the fields:", err)
		return 1
	}
	answers := columns("", reflect.TypeOf(e.NewPlan()).Elem())
	out.Write(slices.Concat(fields, answers, []string{"faults"}))
	code := 0
	for {
		bound.read = 0
		row, err := rows.Read()
		var bad *csv.ParseError
		switch {
		case err == io.EOF:
			out.Flush()
			return code
		case err != nil && !errors.As(err, &bad):
			out.Flush()
			fmt.Fprintln(d.errs, "quick:", err)
			return 1
		}
		cells := make([]string, len(answers))
		if err == nil {
			err = d.row(e, fields, row, answers, cells)
		}
		if err != nil {
			code = 1
		}
		row = append(row, make([]string, max(0, len(fields)-len(row)))...)
		out.Write(slices.Concat(row[:len(fields)], cells, []string{inLine(err)}))
		if buffer.Buffered() == 0 {
			if out.Flush(); out.Error() != nil || d.out.Flush() != nil {
				return 1
			}
		}
	}
}

// row does the sum of a row, and puts its answers into the cells.
func (d *desk) row(e noun.Entry, fields, row, answers, cells []string) error {
	var pairs []string
	for i, cell := range row {
		if cell = strings.TrimSpace(cell); cell != "" {
			pairs = append(pairs, strings.TrimSpace(fields[i])+"="+cell)
		}
	}
	spec := e.New()
	if err := d.reader.Pairs(pairs, spec); err != nil {
		return err
	}
	plan, err := e.Plan(spec)
	if err != nil {
		return err
	}
	all, err := figures(plan)
	for _, f := range all {
		if i := slices.Index(answers, f.path); i >= 0 {
			cells[i] = f.text
		}
	}
	return err
}

// inLine is what is wrong in one line, empty where nothing is.
func inLine(err error) string {
	if err == nil {
		return ""
	}
	var faults fault.Faults
	if !errors.As(fault.Most(err), &faults) {
		return fault.Visible(err.Error())
	}
	lines := make([]string, len(faults))
	for i, f := range faults {
		lines[i] = f.Error()
	}
	return fault.Visible(strings.Join(lines, "; "))
}

// columns are the paths of the answers of a plan that each plan has: those in lists
// are left out.
func columns(path string, t reflect.Type) []string {
	var out []string
	for i := range t.NumField() {
		f := t.Field(i)
		key, _, _ := strings.Cut(f.Tag.Get("json"), ",")
		at := fault.Join(path, key)
		_, isText := reflect.New(f.Type).Interface().(encoding.TextMarshaler)
		switch {
		case !f.IsExported() || at == "spec":
		case f.Anonymous:
			out = append(out, columns(path, f.Type)...)
		case isText || f.Type.Kind() < reflect.Array || f.Type.Kind() == reflect.String:
			out = append(out, at)
		case f.Type.Kind() == reflect.Struct:
			out = append(out, columns(at, f.Type)...)
		}
	}
	return out
}

// A rowBound refuses a row without end, as where a quotation mark is not closed. A row
// may be as long as a JSON text, and what was read ahead.
type rowBound struct {
	in   io.Reader
	read int // since the row began
}

func (b *rowBound) Read(p []byte) (int, error) {
	if b.read > noun.MaxBytes {
		return 0, fmt.Errorf("a row of more than %d bytes", noun.MaxBytes)
	}
	n, err := b.in.Read(p)
	b.read += n
	return n, err
}
