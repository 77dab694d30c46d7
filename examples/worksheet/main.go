// Worksheet writes the whole job of a garment on one sheet: what to check before
// cutting, what to cut otherwise than the tissue has it, the work in order, the
// marks, and what was changed.
//
//	worksheet                          the garment of the example
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
	"context"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"
	"time"

	"example.com/clothyard/examples/garment"
	"example.com/clothyard/examples/internal/console"
	whole "example.com/clothyard/seam/garment"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

const usage = `usage: worksheet [flags] [FILE]
       worksheet [flags] -like STARTER NAME.FIELD=VALUE...

FILE is a garment in JSON, - for standard input; without it the garment of the
example is used (see examples/garment/shirt.json for every part of one). A file
with a version is one over a starter, as -new writes it.

A starter is a garment as patterns usually draw it. What is sewn otherwise is said
by the name of the seam, as in side.kind=french; no measure is needed to learn
which edges then no longer go together, and what mends them.

flags:
`

func run(args []string, in io.Reader, out, errs io.Writer) int {
	errs = console.Writer(errs)
	flags := flag.NewFlagSet("worksheet", flag.ContinueOnError)
	flags.SetOutput(errs)
	flags.Usage = func() {
		fmt.Fprint(errs, usage)
		flags.PrintDefaults()
	}
	system := flags.String("units", "inches", "write in inches, metric or both")
	form := flags.String("form", "text", "write as text, markdown or json")
	drawing := flags.String("lay", "", "draw the lay of the pieces by their outlines into this file, as SVG")
	like := flags.String("like", "", "plan a garment like this `starter`, with what is sewn otherwise")
	fresh := flags.String("new", "", "write a file to fill in, over this `starter`")
	starters := flags.Bool("starters", false, "list the starters")
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return 0
		}
		return 2
	}
	notation, ok := console.Notations(*system)
	if !ok {
		fmt.Fprintf(errs, "worksheet: -units %q: want inches, metric or both\n", *system)
		return 2
	}
	write, ok := map[string]func(garment.Plan, []units.Notation) ([]byte, error){"text": asText, "markdown": asMarkdown, "json": asJSON}[*form]
	if !ok {
		fmt.Fprintf(errs, "worksheet: -form %q: want text, markdown or json\n", *form)
		return 2
	}
	if *starters || *fresh != "" {
		var b bytes.Buffer
		err := list(&b)
		if *fresh != "" {
			b.Reset()
			err = begin(&b, *fresh)
		}
		return finish(b.Bytes(), err, out, errs)
	}
	if *like != "" {
		for _, pair := range flags.Args() {
			if !strings.Contains(pair, "=") {
				fmt.Fprintf(errs, "worksheet: %q is not NAME.FIELD=VALUE\n", pair)
				return 2
			}
		}
		pairs := flags.Args()
		if *system == "metric" {
			pairs = append([]string{"tape=metric"}, pairs...)
		}
		page, err := starter{*like, pairs}.page(*form, notation)
		return finish(page, err, out, errs)
	}
	if flags.NArg() > 1 {
		fmt.Fprintln(errs, "worksheet: one garment at a time")
		return 2
	}
	file, err := open(flags.Arg(0), in)
	if err != nil {
		return finish(nil, err, out, errs)
	}
	if whole.IsFile(file) {
		page, err := starterPage(file, *form, notation)
		return finish(page, err, out, errs)
	}
	page, err := work(file, func(p garment.Plan) ([]byte, error) {
		page, err := write(p, notation)
		if err == nil && *drawing != "" {
			err = draw(*drawing, p.Cloth)
		}
		return page, err
	})
	return finish(page, err, out, errs)
}

// finish writes the page, or what is wrong, and gives the exit code.
func finish(page []byte, err error, out, errs io.Writer) int {
	if err == nil {
		_, err = out.Write(page)
	}
	if err != nil {
		complain(errs, err)
		return 1
	}
	return 0
}

// patience is how long a lay is looked for, whatever work is asked.
const patience = time.Minute

// work plans the garment of a file, or that of the example where there is none, and
// writes the page.
func work(file []byte, write func(garment.Plan) ([]byte, error)) ([]byte, error) {
	g, err := garment.Default()
	if file != nil {
		g, err = garment.Read(bytes.NewReader(file))
	}
	if err != nil {
		return nil, err
	}
	ctx, cancel := context.WithTimeout(context.Background(), patience)
	defer cancel()
	p, err := g.Plan(ctx)
	if err != nil {
		return nil, err
	}
	return write(p)
}

// draw writes the lay of the outlines as a drawing, or that of the rectangles
// where no piece has an outline.
func draw(name string, c garment.ClothPlan) error {
	lay := c.Nest
	if len(lay.Placements) == 0 {
		lay = c.Lay
	}
	svg := lay.SVG()
	if svg == "" {
		return errors.New("-lay: the garment has no pieces that can be drawn")
	}
	return os.WriteFile(name, []byte(svg), 0o644)
}

// open is the text of a file, none where none is named. Of one that is too long only so
// much is read that the reader says so.
func open(name string, in io.Reader) ([]byte, error) {
	if name == "" {
		return nil, nil
	}
	if name != "-" {
		f, err := os.Open(name)
		if err != nil {
			return nil, err
		}
		defer f.Close()
		in = f
	}
	return io.ReadAll(io.LimitReader(in, noun.MaxBytes+1))
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

func asJSON(p garment.Plan, _ []units.Notation) ([]byte, error) {
	b, err := json.Marshal(p)
	return append(fault.VisibleJSON(b), '\n'), err
}

func asText(p garment.Plan, in []units.Notation) ([]byte, error) { return text(sheet(p, in)), nil }

func asMarkdown(p garment.Plan, in []units.Notation) ([]byte, error) {
	return markdown(sheet(p, in)), nil
}
