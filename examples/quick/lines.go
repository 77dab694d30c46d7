package main

import (
	"bufio"
	"bytes"
	"fmt"
	"io"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// lines does the sums of standard input. A line is answered before another is waited
// for. A bad line is answered by its faults and the rest go on; a write that fails
// ends it, and is told of by the caller.
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
			name, text, err := d.sum(number, trimmed, long)
			if err != nil {
				code = 1
				text = d.complaint(name, number, err)
			}
			if _, err = d.to(err).Write(text); err != nil {
				return 1
			}
		}
		if r.Buffered() == 0 && d.out.Flush() != nil {
			return 1
		}
		if err == io.EOF {
			return code
		}
	}
}

// to is where an answer goes, or what is wrong: as text to standard error, after what
// was answered before.
func (d *desk) to(err error) io.Writer {
	if err == nil || d.asJSON {
		return d.out
	}
	d.out.Flush() // a failure is kept, and told of by the last Flush
	return d.errs
}

// sum does the sum of a line.
func (d *desk) sum(number int, line []byte, long bool) (name string, text []byte, err error) {
	if long {
		return "", nil, fault.Faults{{Got: "a longer line", Limit: fmt.Sprintf("at most %d bytes a line", noun.MaxBytes), Kind: fault.Range}}
	}
	e, spec, err := sums.Read(bytes.NewReader(line), d.reader)
	if err != nil {
		return e.Name(), nil, err
	}
	plan, err := e.Plan(spec)
	if err != nil {
		return e.Name(), nil, err
	}
	text, err = d.answer(e, plan, number)
	return e.Name(), text, err
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
