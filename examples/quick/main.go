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
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"reflect"
	"strings"

	"example.com/clothyard/examples/internal/bind"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

const usage = `usage: quick [flags] SUM name=value...    one sum
       quick [flags]                         one JSON object a line from standard input
       quick -sums                           the names of the sums
       quick -fields SUM                     the fields that a sum reads
       quick -draw DIR SUM name=value...     one sum, and its pictures stage by stage

A length carries its unit: first='3/16 in', drafted='1.5 cm'. A field of a field
is given with a dot, a list as JSON: strip.each='12 1/4 in' takes='[{...}]'.

flags:
`

// A desk holds what the flags say and where answers go.
type desk struct {
	reader   units.Parser
	notation []units.Notation
	asJSON   bool
	pictures string // the folder that drawings go to; none if empty
	out      *bufio.Writer
	errs     io.Writer
}

func run(args []string, in io.Reader, out, errs io.Writer) int {
	errs = bind.Console(errs)
	d := desk{out: bufio.NewWriter(out), errs: errs}
	flags := flag.NewFlagSet("quick", flag.ContinueOnError)
	flags.SetOutput(errs)
	flags.Usage = func() {
		fmt.Fprint(errs, usage)
		flags.PrintDefaults()
	}
	flags.BoolVar(&d.asJSON, "json", false, "answer in JSON, one object a line, lengths in exact text")
	flags.TextVar(&d.reader.Bare, "bare", units.NoUnit, "the `unit` of a number that names none")
	flags.BoolVar(&d.reader.DecimalComma, "comma", false, "take 1,5 for 1.5")
	system := flags.String("units", "inches", "write text in inches, metric or both")
	names := flags.Bool("sums", false, "list the sums")
	fields := flags.String("fields", "", "list the fields of a `sum`")
	flags.StringVar(&d.pictures, "draw", "", "draw a seam, hem, casing or tuck edge-on, each stage as SVG into this `folder`, which is made if need be")
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return 0
		}
		return 2
	}
	var ok bool
	if d.notation, ok = bind.Notations(*system); !ok {
		fmt.Fprintf(errs, "quick: -units %q: want inches, metric or both\n", *system)
		return 2
	}
	code := 0
	switch {
	case d.pictures != "" && (*names || *fields != "" || flags.NArg() == 0):
		fmt.Fprintln(errs, "quick: -draw draws one sum, given after the flags")
		return 2
	case *names:
		for _, s := range sums() {
			fmt.Fprintln(d.out, s.name)
		}
	case *fields != "":
		code = d.fields(*fields)
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

func (d *desk) fields(name string) int {
	s, ok := find(name)
	if !ok {
		fmt.Fprintf(d.errs, "quick: no sum is named %q; quick -sums lists them\n", name)
		return 2
	}
	for _, line := range bind.Describe(s.spec) {
		fmt.Fprintln(d.out, line)
	}
	return 0
}

// one does the sum of the command line.
func (d *desk) one(name string, pairs []string) int {
	s, ok := find(name)
	if !ok {
		fmt.Fprintf(d.errs, "quick: no sum is named %q; quick -sums lists them\n", name)
		return 2
	}
	if d.pictures != "" && !s.drawn {
		fmt.Fprintf(d.errs, "quick: -draw: %s has no pictures\n", name)
		return 2
	}
	node := bind.Object()
	var faults fault.Faults
	for _, p := range pairs {
		key, value, ok := strings.Cut(p, "=")
		if !ok {
			fmt.Fprintf(d.errs, "quick: %q is not name=value\n", p)
			return 2
		}
		var f fault.Faults
		if errors.As(node.Put(key, value), &f) {
			faults = append(faults, f...)
		}
	}
	a, err := answerOf(s, node, d.reader)
	if len(faults) > 0 {
		var more fault.Faults
		errors.As(err, &more)
		err = append(faults, more...)
	}
	var text []byte
	if err == nil {
		text, err = d.write(s, a, 0)
	}
	if p, ok := a.(picture); ok && err == nil && d.pictures != "" {
		var files []string
		files, err = draw(d.pictures, p, d.notation)
		if err == nil && !d.asJSON {
			text = fmt.Appendf(text, "\ndrawn: %s\n", strings.Join(files, "\ndrawn: "))
		}
	}
	if err == nil {
		_, err = d.out.Write(text)
	}
	if err != nil {
		d.complain(d.errs, s.name, 0, err)
		return 1
	}
	return 0
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
		err = fault.Faults{{Got: "a longer line", Limit: fmt.Sprintf("at most %d bytes a line", bind.MaxBytes), Kind: fault.Range}}
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

func (d *desk) answer(number int, text []byte) (name string, answered []byte, err error) {
	node, err := bind.Parse(text)
	if err != nil {
		return "", nil, err
	}
	name, ok := node.Take("sum")
	if !ok {
		return "", nil, fault.Faults{{Path: "sum", Limit: "the name of a sum", Kind: fault.Missing}}
	}
	s, ok := find(name)
	if !ok {
		return "", nil, fault.Faults{{Path: "sum", Got: fmt.Sprintf("%.60q", name), Limit: "a name that quick -sums lists", Kind: fault.Unknown}}
	}
	a, err := answerOf(s, node, d.reader)
	if err == nil {
		answered, err = d.write(s, a, number)
	}
	return s.name, answered, err
}

// readLine reads to the end of a line and drops what passes the bound.
func readLine(r *bufio.Reader) (line []byte, long bool, err error) {
	for {
		part, err := r.ReadSlice('\n')
		if len(line)+len(part) > bind.MaxBytes {
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

func (d *desk) write(s sum, a answer, line int) ([]byte, error) {
	if d.asJSON {
		b := fmt.Appendf(nil, `{"sum":%q,`, s.name)
		if line > 0 {
			b = fmt.Appendf(b, `"line":%d,`, line)
		}
		b, err := bind.AppendFields(b, a)
		return append(b, "}\n"...), err
	}
	var b bytes.Buffer
	if line > 0 {
		fmt.Fprintf(&b, "line %d: %s\n", line, s.name)
	}
	figures, err := bind.Figures(a, "Spec")
	if err != nil {
		return nil, err
	}
	for _, f := range figures {
		b.WriteString(ticket.Wrap(f.Path+" = ", "     ", f.Text))
	}
	b.WriteByte('\n')
	b.WriteString(a.Sheet().Text(d.notation...))
	if line > 0 {
		b.WriteByte('\n')
	}
	return b.Bytes(), nil
}

// complain writes faults: as one object in JSON, else one a line.
func (d *desk) complain(w io.Writer, name string, line int, err error) {
	var faults fault.Faults
	if !errors.As(err, &faults) {
		faults = fault.Faults{{Kind: fault.KindOf(err)}}
	}
	if d.asJSON {
		fmt.Fprintf(w, "%s\n", bind.AppendFaults(nil, name, line, faults))
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

// An answer is a Plan.
type answer interface{ Sheet() ticket.Sheet }

// answerOf reads a Spec from node and plans it.
func answerOf(s sum, node bind.Node, p units.Parser) (answer, error) {
	spec := reflect.New(s.spec)
	if err := (bind.Reader{Parser: p}).Read(node, spec.Interface()); err != nil {
		return nil, err
	}
	a, err := s.plan(spec.Elem().Interface())
	return a, bind.Lower(err)
}
