// Worksheet plans a garment on one sheet: whether the cloth does, which edges no longer
// go together and what mends them, the work in order.
//
//	worksheet                              the garment of the example
//	worksheet -units metric shirt.json
//	worksheet -form markdown - < shirt.json
//	worksheet -lay shirt.svg shirt.json    the lay of the pieces, drawn
//	worksheet -like blouse shoulder.kind=french 'shoulder.first=1/4 in'
//	worksheet -new blouse > mine.json      a file to fill in
//
// It exits with 0 when done, 1 for a fault in the data and 2 for wrong usage, and
// writes nothing to standard output unless all of it is good.
package main

import (
	"bytes"
	_ "embed"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.com/clothyard/examples/internal/console"
	"example.com/clothyard/seam/garment"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// shirt is the garment of the example: a highwayman's shirt for a village theatre.
//
//go:embed shirt.json
var shirt []byte

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

const usage = `usage: worksheet [flags] [FILE]
       worksheet [flags] -like STARTER NAME.FIELD=VALUE...

FILE is a garment in JSON, - for standard input; without it the garment of the
example is used, examples/worksheet/shirt.json. A file says what it is like, and
what is otherwise; -new writes one to fill in.

A starter is a garment as patterns usually draw it. What is sewn otherwise is said
by the name of the seam, as in side.kind=french; no measure is needed to learn
which edges then no longer go together, and what mends them.

flags:
`

// asked is what the command line asks for.
type asked struct {
	units, form, lay string
}

func run(args []string, in io.Reader, out, errs io.Writer) int {
	errs = console.Writer(errs)
	flags := flag.NewFlagSet("worksheet", flag.ContinueOnError)
	flags.SetOutput(errs)
	flags.Usage = func() {
		fmt.Fprint(errs, usage)
		flags.PrintDefaults()
	}
	var ask asked
	flags.StringVar(&ask.units, "units", "", "write in inches, metric or both; as the garment is measured, if it is not given")
	flags.StringVar(&ask.form, "form", "text", "write as text, markdown, json, or only the sources")
	flags.StringVar(&ask.lay, "lay", "", "draw the lay of the pieces into this `file`, as SVG")
	like := flags.String("like", "", "plan a garment like this `starter`, with what is sewn otherwise")
	fresh := flags.String("new", "", "write a file to fill in, over this `starter`")
	starters := flags.Bool("starters", false, "list the starters")
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return 0
		}
		return 2
	}
	if wrong := ask.wrong(*like, flags.Args()); wrong != "" {
		fmt.Fprintln(errs, "worksheet:", wrong)
		return 2
	}
	var page []byte
	var err error
	switch {
	case *starters:
		page, err = list()
	case *fresh != "":
		page, err = begin(*fresh)
	default:
		var file []byte
		if file, err = ask.file(*like, flags.Args(), in); err == nil {
			page, err = ask.page(file)
		}
	}
	if err == nil {
		_, err = out.Write(page)
	}
	if err != nil {
		complain(errs, err)
		return 1
	}
	return 0
}

// wrong is what is wrong with the command line, if anything.
func (ask asked) wrong(like string, args []string) string {
	if _, ok := console.Notations(ask.units, 0); !ok {
		return fmt.Sprintf("-units %q: want inches, metric or both", ask.units)
	}
	if ask.form != "text" && ask.form != "markdown" && ask.form != "json" && ask.form != "sources" {
		return fmt.Sprintf("-form %q: want text, markdown, json or sources", ask.form)
	}
	if like == "" && len(args) > 1 {
		return "one garment at a time"
	}
	for _, pair := range args {
		if like != "" && !strings.Contains(pair, "=") {
			return fmt.Sprintf("%q is not NAME.FIELD=VALUE", pair)
		}
	}
	return ""
}

// file is the text of the garment asked for. Of one that is too long only so much is
// read that the reader says so.
func (ask asked) file(like string, args []string, in io.Reader) ([]byte, error) {
	switch {
	case like != "":
		if ask.units == "metric" {
			args = append([]string{"tape=metric"}, args...)
		}
		return garment.Patch(like, args)
	case len(args) == 0:
		return shirt, nil
	case args[0] != "-":
		f, err := os.Open(args[0])
		if err != nil {
			return nil, err
		}
		defer f.Close()
		in = f
	}
	return io.ReadAll(io.LimitReader(in, noun.MaxBytes+1))
}

// page plans the garment of a file and writes it in the form asked for.
func (ask asked) page(file []byte) ([]byte, error) {
	g, dropped, err := garment.Read(bytes.NewReader(file))
	if err != nil {
		return nil, err
	}
	p, err := g.Plan()
	if err != nil {
		return nil, err
	}
	if ask.lay != "" {
		if err := draw(ask.lay, p); err != nil {
			return nil, err
		}
	}
	if ask.form == "json" {
		b, err := json.Marshal(p)
		return append(fault.VisibleJSON(b), '\n'), err
	}
	notation, _ := console.Notations(ask.units, p.Spec.Tape)
	sheet := p.Sheet()
	if len(dropped) > 0 {
		sheet.Cautions = append(sheet.Cautions, ticket.Caution{Text: "Taken away with what the file took away: " + strings.Join(dropped, ", ") + "."})
	}
	switch ask.form {
	case "markdown":
		return markdown(sheet, notation), nil
	case "sources":
		return sources(sheet), nil
	default:
		sheet.Sources = nil // nobody reads them at the machine
	}
	return []byte(sheet.Text(notation...)), nil
}

// sources lists what the sheet rests on, with the addresses at which it was read.
func sources(s ticket.Sheet) []byte {
	text := []byte(ticket.Wrap("", "   ", s.Title))
	for _, c := range s.Sources {
		from, _ := source.Lookup(c.ID)
		var parts []string
		for _, part := range []string{from.String(), c.Place, c.Known.String()} {
			if part != "" {
				parts = append(parts, part)
			}
		}
		text = append(text, ticket.Wrap(" - ", "   ", c.For+": "+strings.Join(parts, ", "))...)
	}
	return text
}

// draw writes the lay of the first cloth as a drawing.
func draw(name string, p garment.Plan) error {
	for _, l := range p.Lays {
		if svg := l.Lay.SVG(); svg != "" {
			return os.WriteFile(name, []byte(svg), 0o644)
		}
	}
	return errors.New("-lay: no cloth is given, or no size of a piece that is cut from it")
}

// complain writes every fault on a line of its own, its path as the JSON has it.
func complain(w io.Writer, err error) {
	var faults fault.Faults
	if !errors.As(fault.Most(err), &faults) {
		fmt.Fprintln(w, "worksheet:", err)
		return
	}
	for _, f := range faults {
		fmt.Fprintln(w, "worksheet:", f)
	}
}
