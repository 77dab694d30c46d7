// Lay puts the pieces of research instances on a strip, as short as the time or
// the work allows, and proves lays, its own and anybody's.
//
//	lay -time 60s -seed 1 testdata/shirts.json
//	lay -work 50 -json -svg shirts.svg testdata/shirts.json
//	lay -table -time 60s testdata/*.json
//	lay -check shirts.lay testdata/shirts.json
//
// An instance is a JSON object: width, and pieces with id, qty, rotations in
// degrees and points. A lay is one JSON object a line; a placement in it is the
// translation of the piece's own origin after the piece is turned about it.
//
// Beside each lay stands the best that is known of the instance. A lay as short as
// the shortest known at the very width, or shorter, is written out with all its
// places.
//
// SIGINT, SIGTERM and SIGHUP stop it: it writes the best lay so far and those of
// the seeds before, says that it was stopped, and exits with 0. A second signal
// ends it at once.
//
// It exits with 0 where all was laid or the lay holds, 1 where there was a fault
// in the data or a write failed, and 2 for wrong usage.
package main

import (
	"bufio"
	"context"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"os/signal"
	"slices"
	"time"

	"example.com/clothyard/examples/internal/console"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

func main() {
	ctx, cancel := context.WithCancel(context.Background())
	stops := make(chan os.Signal, 1)
	for _, s := range signals {
		if !signal.Ignored(s) { // nohup stays in force
			signal.Notify(stops, s)
		}
	}
	go func() {
		<-stops
		signal.Stop(stops) // the next one ends the program
		cancel()
	}()
	os.Exit(run(ctx, os.Args[1:], os.Stdout, os.Stderr))
}

// options are what the flags say.
type options struct {
	time        time.Duration
	work, seeds int
	seed        uint64
	json, table bool
	svg, check  string
}

// run is the program; it is stopped where ctx is done.
func run(ctx context.Context, args []string, stdout, errs io.Writer) int {
	errs = console.Writer(errs)
	var o options
	flags := flag.NewFlagSet("lay", flag.ContinueOnError)
	flags.SetOutput(errs)
	flags.DurationVar(&o.time, "time", 0, "stop after this long, with the best lay so far")
	flags.IntVar(&o.work, "work", 0, "stop after so much work, in millions of steps; the same work gives the same lay")
	flags.Uint64Var(&o.seed, "seed", 1, "which way to search")
	flags.IntVar(&o.seeds, "seeds", 1, "how many seeds, from -seed on, 5 with -table, which shows the median and the worst of them")
	flags.BoolVar(&o.json, "json", false, "write each lay as a JSON object on a line")
	flags.BoolVar(&o.table, "table", false, "write a table with the published means")
	flags.StringVar(&o.svg, "svg", "", "draw the best lay of the last instance into this file")
	flags.StringVar(&o.check, "check", "", "check the lays in this file instead of searching")
	if err := flags.Parse(args); errors.Is(err, flag.ErrHelp) {
		return 0
	} else if err != nil {
		return 2
	}
	given := false
	flags.Visit(func(f *flag.Flag) { given = given || f.Name == "seeds" })
	if o.table && !given {
		o.seeds = 5
	}
	if flags.NArg() == 0 || o.json && o.table || o.work < 0 || o.time < 0 || o.seeds < 1 {
		fmt.Fprintln(errs, "usage: lay [flags] INSTANCE...")
		return 2
	}
	out := bufio.NewWriter(stdout)
	code := 0
	if o.table {
		tableLine(out, "instance", "median %", "worst %", "length", "best known %", "at its width", "2025 mean", olderYears[:])
	}
	for _, path := range flags.Args() {
		if err := o.file(ctx, path, out, errs); err != nil {
			if out.Flush() != nil {
				break
			}
			fmt.Fprintf(errs, "%s: %v\n", path, fault.Most(err))
			code = 1
		}
	}
	if o.table {
		fmt.Fprintln(out, "* of a strip 0.01 % wider; at its width: the length of the shortest lay known. 2025 mean: 100 runs of 20 minutes on three threads. The others are means of older methods, by year, the last a single run.")
	}
	if err := out.Flush(); err != nil {
		fmt.Fprintln(errs, "lay:", err)
		return 1
	}
	if ctx.Err() != nil {
		fmt.Fprintln(errs, "lay: stopped before the end; what is written is the best found so far")
	}
	return code
}

// file lays an instance, or checks lays of it, and writes what it finds as it
// comes.
func (o options) file(ctx context.Context, path string, out *bufio.Writer, errs io.Writer) error {
	f, err := os.Open(path)
	if err != nil {
		return err
	}
	defer f.Close()
	in, err := readInstance(f)
	if err != nil {
		return err
	}
	s := in.spec()
	if o.check != "" {
		return o.prove(in, s, out)
	}
	var plans []layout.Plan
	for k := range o.seeds {
		s.Seed, s.Work = o.seed+uint64(k), o.work
		p, err := o.plan(ctx, s)
		if err != nil && errors.Is(err, ctx.Err()) { // stopped between two lays
			if k > 0 {
				fmt.Fprintf(errs, "%s: %d of %d seeds\n", path, k, o.seeds)
				break
			}
			fmt.Fprintf(errs, "%s: not laid\n", path)
			return nil
		}
		if err != nil {
			return err
		}
		plans = append(plans, p)
		switch {
		case o.json:
			if err := writeLay(out, in, p); err != nil {
				return err
			}
		case !o.table:
			fmt.Fprintf(out, "%s: length %s, density %s %%%s\n", in.Name, decimal(ratio(p.Lay), 6), percent(p.Density), gap(in.Name, p.Density))
		}
		if err := out.Flush(); err != nil {
			return err
		}
	}
	if o.table {
		slices.SortFunc(plans, shorter)
		m, w := plans[len(plans)/2], plans[len(plans)-1]
		r, _ := known(in.Name)
		best := r.best
		if r.wider {
			best += "*"
		}
		tableLine(out, in.Name, percent(m.Density), percent(w.Density), decimal(ratio(m.Lay), 3), best, r.short, r.mean, r.older[:])
	}
	if !o.json {
		if err := record(in, plans, out); err != nil {
			return err
		}
	}
	if err := out.Flush(); err != nil {
		return err
	}
	if o.svg != "" {
		return os.WriteFile(o.svg, []byte(slices.MinFunc(plans, shorter).SVG()), 0o644)
	}
	return nil
}

func shorter(a, b layout.Plan) int { return a.Lay.Cmp(b.Lay) }

// writeLay writes a lay on a line.
func writeLay(out io.Writer, in instance, p layout.Plan) error {
	l, err := in.write(p)
	if err != nil {
		return err
	}
	line, err := json.Marshal(l)
	if err != nil {
		return err
	}
	_, err = fmt.Fprintf(out, "%s\n", line)
	return err
}

// tableLine writes a line of the table; what is not known is a dash.
func tableLine(out io.Writer, name, median, worst, length, best, short, mean string, older []string) {
	fmt.Fprintf(out, "%-12s", name)
	for _, cell := range append([]string{median, worst, length, best, short, mean}, older...) {
		if cell == "" {
			cell = "-"
		}
		fmt.Fprintf(out, " %12s", cell)
	}
	fmt.Fprintln(out)
}

// record writes the shortest of the lays with its places, where it is no longer
// than the shortest known and that is not known to be the end of it.
func record(in instance, plans []layout.Plan, out io.Writer) error {
	r, ok := known(in.Name)
	if !ok || r.how == optimum {
		return nil
	}
	short, err := units.ParseRatio(r.short)
	if err != nil {
		return err
	}
	best := slices.MinFunc(plans, shorter)
	word := "as short as"
	switch ratio(best.Lay).Cmp(short) {
	case 1:
		return nil
	case -1:
		word = "shorter than"
	}
	fmt.Fprintf(out, "%s: %s the best known of this width, %s:\n", in.Name, word, r.short)
	return writeLay(out, in, best)
}

// plan searches within the time, or for the work, or for a little of both where
// neither is given. Where the time is over before the search is begun it has a
// little more, up to a second, for the first lay.
func (o options) plan(ctx context.Context, s layout.Spec) (layout.Plan, error) {
	if o.time == 0 {
		return s.Plan(ctx)
	}
	if s.Work == 0 {
		s.Work = layout.MaxWork
	}
	for patience := o.time; ; patience *= 2 {
		late, cancel := context.WithTimeout(ctx, patience)
		p, err := s.Plan(late)
		cancel()
		if !errors.Is(err, context.DeadlineExceeded) || patience > time.Second {
			return p, err
		}
	}
}

// prove checks the lays of the instance in a file.
func (o options) prove(in instance, s layout.Spec, out io.Writer) error {
	f, err := os.Open(o.check)
	if err != nil {
		return err
	}
	defer f.Close()
	lays, err := readLays(f)
	if err != nil {
		return err
	}
	found := 0
	for i, l := range lays {
		if l.Instance != in.Name {
			continue
		}
		found++
		placements, err := in.read(l)
		if err != nil {
			return fault.Under(layPath(i), err)
		}
		s.Cloth.Long = l.Length.length()
		if err := layout.Verify(s, placements); err != nil {
			return fault.Under(layPath(i), err)
		}
		var far units.Length
		for _, at := range placements {
			_, long := at.Size(s)
			far = far.Max(at.Y.Add(long))
		}
		density := s.Area().Div(far.Times(s.Cloth.Wide))
		fmt.Fprintf(out, "%s: the lay holds: length %s, density %s %%%s\n", in.Name, decimal(ratio(far), 6), percent(density), gap(in.Name, density))
	}
	if found == 0 {
		return errors.New(o.check + " has no lay of " + in.Name)
	}
	return nil
}

// decimal is r with so many places, rounded for reading.
func decimal(r units.Ratio, places int) string { return r.Rat().FloatString(places) }

func percent(r units.Ratio) string { return decimal(r.Mul(units.RatioOf(100, 1)), 3) }

// gap tells how far a density is from the best known one.
func gap(name string, density units.Ratio) string {
	r, ok := known(name)
	if !ok {
		return ""
	}
	best, err := units.ParseRatio(r.best)
	if err != nil {
		return ""
	}
	what := "the best known"
	switch {
	case r.how == optimum:
		what = "the optimum"
	case r.wider:
		what = "the best known, of a strip 0.01 % wider,"
	}
	off := best.Sub(density.Mul(units.RatioOf(100, 1)))
	side := "below"
	if off.Sign() < 0 {
		side = "above"
	}
	return fmt.Sprintf(", %s points %s %s %s %%", decimal(off.Abs(), 3), side, what, r.best)
}
