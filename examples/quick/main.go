// Quick does one sum from the command line, or many from a pipe, so that anybody
// can check the library without writing Go.
//
//	quick seam.seam kind=french drafted='5/8 in' first='3/16 in' second='1/4 in'
//	quick -json < sums.jsonl
//	quick -fields seam.seam
//	quick -draw pictures seam.seam kind=flat-felled drafted='5/8 in'
//
// From a pipe it reads JSON objects, one a line, each with the name of its sum:
//
//	{"sum":"seam.seam","kind":"french","first":"3/16 in","second":"1/4 in"}
//
// Each line is answered as it comes.
//
// It exits with 0 where all was answered, 1 where there was a fault in the data
// or a write failed, and 2 for wrong usage.
package main

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.com/clothyard/examples/internal/bind"
	"example.com/clothyard/examples/internal/console"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
)

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

const usage = `usage: quick [flags] SUM name=value...    one sum
       quick [flags]                         one JSON object a line from standard input
       quick -sums                           the names of the sums
       quick -fields SUM                     what each field of a sum means
       quick -shape SUM                      the JSON Schema of a sum, for editors
       quick -draw DIR SUM name=value...     one sum, and its pictures stage by stage

A length carries its unit: first='3/16 in', drafted='1.5 cm'. A field of a field
is given with a dot, a list as JSON: strip.each='12 1/4 in' takes='[{...}]'.

flags:
`

// A desk holds what the flags say and where answers go.
type desk struct {
	reader   noun.Reader
	notation []units.Notation
	asJSON   bool
	pictures string // the folder that drawings go to; none if empty
	out      *bufio.Writer
	errs     io.Writer
}

func run(args []string, in io.Reader, out, errs io.Writer) int {
	errs = console.Writer(errs)
	d := desk{out: bufio.NewWriter(out), errs: errs}
	flags := flag.NewFlagSet("quick", flag.ContinueOnError)
	flags.SetOutput(errs)
	flags.Usage = func() {
		fmt.Fprint(errs, usage)
		flags.PrintDefaults()
	}
	flags.BoolVar(&d.asJSON, "json", false, "answer in JSON, one object a line, lengths in exact text")
	flags.TextVar(&d.reader.Parser.Bare, "bare", units.NoUnit, "the `unit` of a number that names none")
	flags.BoolVar(&d.reader.Parser.DecimalComma, "comma", false, "take 1,5 for 1.5")
	system := flags.String("units", "inches", "write text in inches, metric or both")
	names := flags.Bool("sums", false, "list the sums")
	told := flags.String("fields", "", "tell what each field of a `sum` means, those it needs first")
	shape := flags.String("shape", "", "write the shape of a `sum`'s JSON, as JSON Schema")
	flags.StringVar(&d.pictures, "draw", "", "draw a seam, hem, casing or tuck edge-on, each stage as SVG into this `folder`, which is made if need be")
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return 0
		}
		return 2
	}
	var ok bool
	if d.notation, ok = console.Notations(*system); !ok {
		fmt.Fprintf(errs, "quick: -units %q: want inches, metric or both\n", *system)
		return 2
	}
	code := 0
	switch {
	case d.pictures != "" && (*names || *told != "" || *shape != "" || flags.NArg() == 0):
		fmt.Fprintln(errs, "quick: -draw draws one sum, given after the flags")
		return 2
	case *names:
		for e := range sums.All() {
			fmt.Fprintln(d.out, e.Name())
		}
	case *told != "":
		code = d.about(*told, fields)
	case *shape != "":
		code = d.about(*shape, noun.Schema)
	case flags.NArg() == 0:
		code = d.lines(in)
	default:
		code = d.one(flags.Arg(0), flags.Args()[1:])
	}
	if err := d.out.Flush(); err != nil {
		fmt.Fprintln(errs, "quick:", err)
		return 1
	}
	return code
}

// one does the sum of the command line.
func (d *desk) one(name string, pairs []string) int {
	e, ok := d.find(name)
	if !ok {
		return 2
	}
	if _, drawn := e.NewPlan().(picture); d.pictures != "" && !drawn {
		fmt.Fprintf(d.errs, "quick: -draw: %s has no pictures\n", name)
		return 2
	}
	for _, p := range pairs {
		if !strings.Contains(p, "=") {
			fmt.Fprintf(d.errs, "quick: %q is not name=value\n", p)
			return 2
		}
	}
	text, err := d.sum(e, pairs)
	if err == nil {
		_, err = d.out.Write(text)
	}
	if err != nil {
		d.complain(d.errs, name, 0, err)
		return 1
	}
	return 0
}

func (d *desk) sum(e noun.Entry, pairs []string) ([]byte, error) {
	spec := e.New()
	if err := d.reader.Pairs(pairs, spec); err != nil {
		return nil, err
	}
	plan, err := e.Plan(spec)
	if err != nil {
		return nil, err
	}
	text, err := d.write(e, plan, 0)
	if p, ok := plan.(picture); ok && err == nil && d.pictures != "" {
		var files []string
		files, err = draw(d.pictures, p, d.notation)
		if !d.asJSON {
			text = fmt.Appendf(text, "\ndrawn: %s\n", strings.Join(files, "\ndrawn: "))
		}
	}
	return text, err
}

// find is the sum of a name; it complains where there is none.
func (d *desk) find(name string) (noun.Entry, bool) {
	e, ok := sums.Find(name)
	if !ok {
		fmt.Fprintf(d.errs, "quick: no sum is named %q; quick -sums lists them\n", name)
	}
	return e, ok
}

// lines does the sums of standard input, and answers each line before it waits
// for the next. A bad line is answered by its faults and the rest go on; a write
// that fails ends it, and is told of by the caller.
func (d *desk) lines(in io.Reader) int {
	code := 0
	r := bufio.NewReaderSize(in, 64<<10)
	for number := 1; ; number++ {
		line, long, err := readLine(r)
		if err != nil && err != io.EOF {
			fmt.Fprintln(d.errs, "quick:", err)
			return 1
		}
		if trimmed := bytes.TrimSpace(line); len(trimmed) > 0 || long {
			if !d.line(number, trimmed, long) {
				code = 1
			}
			if d.out.Flush() != nil {
				return 1
			}
		}
		if err == io.EOF {
			return code
		}
	}
}

func (d *desk) line(number int, text []byte, long bool) bool {
	name, err := "", error(nil)
	var answered []byte
	if long {
		err = fault.Faults{{Got: "a longer line", Limit: fmt.Sprintf("at most %d bytes a line", noun.MaxBytes), Kind: fault.Range}}
	} else {
		name, answered, err = d.answer(number, text)
	}
	if err == nil {
		_, err = d.out.Write(answered)
		return err == nil
	}
	w := d.errs
	if d.asJSON {
		w = d.out
	}
	d.complain(w, name, number, err)
	return false
}

// answer answers a line. A line that is an answer itself, with a spec, asks its sum
// again.
func (d *desk) answer(number int, text []byte) (name string, answered []byte, err error) {
	asked, old := again(text)
	e, spec, err := sums.Read(bytes.NewReader(asked), d.reader)
	if err != nil {
		return e.Name(), nil, err
	}
	plan, err := e.Plan(spec)
	if err == nil && old != nil {
		err = part(old, plan)
	}
	if err == nil {
		answered, err = d.write(e, plan, number)
	}
	return e.Name(), answered, err
}

// readLine reads to the end of a line and drops what passes the bound.
func readLine(r *bufio.Reader) (line []byte, long bool, err error) {
	for {
		part, err := r.ReadSlice('\n')
		if len(line)+len(part) > noun.MaxBytes {
			long, line = true, nil
		}
		if !long {
			line = append(line, part...)
		}
		if err != bufio.ErrBufferFull {
			return line, long, err
		}
	}
}

// write is an answer: in JSON the plan with the name of the sum before it, else
// its figures and its sheet.
func (d *desk) write(e noun.Entry, plan noun.Plan, line int) ([]byte, error) {
	body, err := bind.AppendFields(nil, plan)
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	if d.asJSON {
		fmt.Fprintf(&b, `{"sum":%q,`, e.Name())
		if line > 0 {
			fmt.Fprintf(&b, `"line":%d,`, line)
		}
		fmt.Fprintf(&b, "%s}\n", fault.VisibleJSON(body))
		return b.Bytes(), nil
	}
	if line > 0 {
		fmt.Fprintf(&b, "line %d: %s\n", line, e.Name())
	}
	figures, err := bind.Figures(plan, "Spec")
	if err != nil {
		return nil, err
	}
	for _, f := range figures {
		b.WriteString(ticket.Wrap(f.Path+" = ", "     ", f.Text))
	}
	b.WriteByte('\n')
	b.WriteString(plan.Sheet().Text(d.notation...))
	if line > 0 {
		b.WriteByte('\n')
	}
	return b.Bytes(), nil
}

// complain writes faults: as one object in JSON, else one a line.
func (d *desk) complain(w io.Writer, name string, line int, err error) {
	var faults fault.Faults
	if !errors.As(fault.Most(err), &faults) {
		faults = fault.Faults{{Kind: fault.KindOf(err)}}
	}
	if d.asJSON {
		text, err := json.Marshal(struct {
			Sum    string       `json:"sum,omitzero"`
			Line   int          `json:"line,omitzero"`
			Faults fault.Faults `json:"faults"`
		}{name, line, faults})
		if err != nil {
			text = nil // faults are texts, which always marshal
		}
		fmt.Fprintf(w, "%s\n", fault.VisibleJSON(text))
		return
	}
	prefix := "quick: "
	if name != "" {
		prefix += name + ": "
	}
	if line > 0 {
		prefix = fmt.Sprintf("line %d: ", line)
	}
	for _, f := range faults {
		fmt.Fprintln(w, prefix+f.Error())
	}
}
