package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"strings"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
)

// about writes what there is to tell of a sum.
func (d *desk) about(name string, tell func(noun.Entry) ([]byte, error)) int {
	e, ok := d.find(name)
	if !ok {
		return 2
	}
	text, err := tell(e)
	if err != nil {
		fmt.Fprintln(d.errs, "quick:", err)
		return 1
	}
	fmt.Fprintf(d.out, "%s\n", bytes.TrimSuffix(text, []byte("\n")))
	return 0
}

// fields tells of each field of a sum, those that it always needs first, and gives
// an example to run.
func fields(e noun.Entry) ([]byte, error) {
	var need, may bytes.Buffer
	needed := needs(e)
	all := e.Fields()
	for i, f := range all {
		if strings.Contains(f.Path, ").") {
			continue // a field of one kind, which the sum of that kind tells of
		}
		words := f.Takes
		if i+1 < len(all) {
			if kind, ok := strings.CutPrefix(all[i+1].Path, f.Path+"("); ok {
				kind, _, _ = strings.Cut(kind, ")")
				words += "; -fields tells what each reads, as for " + kind
			}
		}
		if f.Means != "" {
			words += ". " + f.Means
		}
		if f.Zero {
			words = strings.TrimSuffix(words, ".") + ". Zero may be given."
		}
		to := &may
		if needed[f.Path] {
			to = &need
		}
		to.WriteString(ticket.Wrap("  "+f.Path+": ", "      ", words))
	}
	var b bytes.Buffer
	for _, part := range []struct {
		head string
		text bytes.Buffer
	}{{"Always needed:", need}, {"Needed or not, as the rest says:", may}} {
		if part.text.Len() > 0 {
			fmt.Fprintf(&b, "%s\n%s\n", part.head, part.text.Bytes())
		}
	}
	if all := e.Examples(); len(all) > 0 {
		line, err := command(e, all[0])
		if err != nil {
			return nil, err
		}
		fmt.Fprintf(&b, "For example:\n%s\n", line)
	}
	return b.Bytes(), nil
}

// needs are the fields that are missing where nothing is given.
func needs(e noun.Entry) map[string]bool {
	_, err := e.Plan(e.New())
	needed := map[string]bool{}
	var faults fault.Faults
	if errors.As(err, &faults) {
		for _, f := range faults {
			if f.Kind == fault.Missing {
				needed[f.Path] = true
			}
		}
	}
	return needed
}

// command is the command line that asks for an example.
func command(e noun.Entry, example json.RawMessage) (string, error) {
	var one noun.Map[json.RawMessage]
	if err := json.Unmarshal(example, &one); err != nil {
		return "", err
	}
	line := "quick " + e.Name()
	for _, field := range one {
		value := string(field.Value)
		var text string
		if json.Unmarshal(field.Value, &text) == nil {
			value = text
		} else {
			var flat bytes.Buffer
			if err := json.Compact(&flat, field.Value); err != nil {
				return "", err
			}
			value = flat.String()
		}
		line += " " + field.Name + "=" + quoted(value)
	}
	return line, nil
}

// quoted is a word as a shell reads it.
func quoted(s string) string {
	if s != "" && strings.Trim(s, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-./%") == "" {
		return s
	}
	return "'" + strings.ReplaceAll(s, "'", `'\''`) + "'"
}
