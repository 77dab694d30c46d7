// Quick does one sum from the command line, or many from a pipe, so that anybody
// can check the library without writing Go.
//
//	quick seam.french first='3/16 in' second='1/4 in'
//	quick convert '1 5/8 in' to=mm
//	quick -fields seam.french
//	quick -draw pictures seam.flat-felled drafted='5/8 in'
//	quick -json < sums.jsonl
//	quick -csv gather.strip < strips.csv
//
// From a pipe it reads JSON objects, one a line, each with the name of its sum:
//
//	{"sum":"seam.french","first":"3/16 in","second":"1/4 in"}
//
// A line is answered as soon as no further line waits.
//
// It exits with 0 where all was answered, 1 where there was a fault in the data
// or a write failed, and 2 for wrong usage.
package main

import (
	"bufio"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"example.com/clothyard/examples/internal/console"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
)

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

const usage = `usage: quick [flags] SUM name=value...    one sum
       quick [flags]                      one JSON object a line from standard input
       quick [flags] -csv SUM             one row of CSV a line, the fields named in the first row
       quick convert LENGTH [to=UNIT]     a length in other units
       quick -sums                        the sums, with a line each
       quick -fields SUM                  what each field of a sum means
       quick -schema SUM                  the JSON Schema of a sum, for editors
       quick -draw DIR SUM name=value...  one sum, and its pictures stage by stage

A length carries its unit: first='3/16 in', drafted='1.5 cm'. A field of a field
is given with a dot, a list as JSON: strip.each='12 1/4 in' takes='[{...}]'. The
last word of a sum is enough where no other sum has it: quick french.

flags:
`

// A desk holds what the flags say and where answers go.
type desk struct {
	reader   noun.Reader
	units    string // inches, metric, both, or as the sum was asked
	asJSON   bool
	all      bool   // every figure, not the sheet only
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
	flags.BoolVar(&d.all, "all", false, "answer with every figure, one a line, in exact text")
	flags.TextVar(&d.reader.Parser.Bare, "bare", units.NoUnit, "the `unit` of a number that names none")
	flags.BoolVar(&d.reader.Parser.DecimalComma, "comma", false, "take 1,5 for 1.5")
	flags.StringVar(&d.units, "units", "", "write text in inches, metric or both; as the sum is asked, if it is not given")
	flags.StringVar(&d.pictures, "draw", "", "draw each stage of the answer as SVG into this `folder`, which is made if need be")
	table := flags.String("csv", "", "do a `sum` for each row of CSV from standard input")
	sums := flags.Bool("sums", false, "list the sums")
	told := flags.String("fields", "", "tell what each field of a `sum` means, those it needs first")
	schema := flags.String("schema", "", "write the shape of a `sum`'s JSON, as JSON Schema")
	shell := flags.String("completion", "", "write the script that completes words in a `shell`, bash or zsh")
	words := flags.Bool("words", false, "list the words that may follow those given, as the script asks for them")
	if err := flags.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return 0
		}
		return 2
	}
	if _, ok := console.Notations(d.units, 0); !ok {
		fmt.Fprintf(errs, "quick: -units %q: want inches, metric or both\n", d.units)
		return 2
	}
	code := 0
	switch {
	case d.pictures != "" && (flags.NArg() == 0 || *table != "" || *sums || *told != "" || *schema != ""):
		fmt.Fprintln(errs, "quick: -draw draws one sum, given after the flags")
		return 2
	case *sums:
		d.list()
	case *told != "":
		code = d.about(*told, fields)
	case *schema != "":
		code = d.about(*schema, noun.Schema)
	case *shell != "":
		code = d.completion(*shell)
	case *words:
		d.words(flags.Args())
	case *table != "":
		code = d.table(*table, in)
	case flags.NArg() == 0 && isTerminal(in):
		flags.Usage()
		return 2
	case flags.NArg() == 0:
		code = d.lines(in)
	case strings.EqualFold(flags.Arg(0), "convert"):
		code = d.convert(flags.Args()[1:])
	default:
		code = d.one(flags.Arg(0), flags.Args()[1:])
	}
	if err := d.out.Flush(); err != nil {
		fmt.Fprintln(errs, "quick:", err)
		return 1
	}
	return code
}

// isTerminal reports whether somebody types what is read.
func isTerminal(in io.Reader) bool {
	file, ok := in.(*os.File)
	if !ok {
		return false
	}
	info, err := file.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}

// one does the sum of the command line.
func (d *desk) one(name string, pairs []string) int {
	e, ok := d.find(name)
	if !ok {
		return 2
	}
	if _, drawn := e.NewPlan().(picture); d.pictures != "" && !drawn {
		fmt.Fprintf(d.errs, "quick: -draw: %s has no pictures\n", e.Name())
		return 2
	}
	for _, p := range pairs {
		if !strings.Contains(p, "=") {
			fmt.Fprintf(d.errs, "quick: %q is not name=value\n", p)
			return 2
		}
	}
	spec := e.New()
	err := d.reader.Pairs(pairs, spec)
	var plan noun.Plan
	if err == nil {
		plan, err = e.Plan(spec)
	}
	var text []byte
	if err == nil {
		text, err = d.answer(e, plan, 0)
	}
	if p, ok := plan.(picture); ok && err == nil && d.pictures != "" {
		var files []string
		files, err = draw(d.pictures, p, d.notation(plan))
		if !d.asJSON {
			text = fmt.Appendf(text, "\ndrawn: %s\n", strings.Join(files, "\ndrawn: "))
		}
	}
	if err != nil {
		d.errs.Write(d.complaint(e.Name(), 0, err))
		return 1
	}
	d.out.Write(text) // a failure is kept, and told of by the last Flush
	return 0
}

// find is the sum of a name; it complains where there is none.
func (d *desk) find(name string) (noun.Entry, bool) {
	if e, ok := sums.Find(name); ok {
		return e, true
	}
	var close []noun.Entry
	for e := range sums.All() {
		if _, last, _ := strings.Cut(e.Name(), "."); strings.EqualFold(last, name) {
			close = append(close, e)
		}
	}
	switch len(close) {
	case 0:
		fmt.Fprintf(d.errs, "quick: no sum is named %q; quick -sums lists them\n", name)
	case 1:
		return close[0], true
	default:
		fmt.Fprintf(d.errs, "quick: %q is %s; give the whole name\n", name, names(close, " or "))
	}
	return noun.Entry{}, false
}

// names are the names of sums, in a row.
func names(all []noun.Entry, between string) string {
	out := make([]string, len(all))
	for i, e := range all {
		out[i] = e.Name()
	}
	return strings.Join(out, between)
}
