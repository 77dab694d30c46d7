package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"example.com/clothyard/seam/garment"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
)

// A starter's garment is asked for on the command line: what it is like, and what is
// sewn otherwise.
type starter struct {
	like  string
	pairs []string
}

// list writes the starters, each with what it is.
func list(out io.Writer) error {
	for _, name := range garment.Starters() {
		g, err := garment.Starter(name)
		if err != nil {
			return err
		}
		if _, err := io.WriteString(out, ticket.Wrap(fmt.Sprintf("%-18s ", name), "                   ", g.Title)); err != nil {
			return err
		}
	}
	return nil
}

// begin writes a file to fill in: the starter it is like, and its edges, whose lengths
// may be given. It can be planned as it is.
func begin(out io.Writer, like string) error {
	g, err := garment.Starter(like)
	if err != nil {
		return err
	}
	var edges noun.Map[struct{}]
	for _, e := range g.Edges {
		edges = append(edges, noun.Item[struct{}]{Name: e.Name})
	}
	text, err := json.MarshalIndent(struct {
		Version int                `json:"version"`
		Like    string             `json:"like"`
		Title   string             `json:"title"`
		Edges   noun.Map[struct{}] `json:"edges"`
		Changes struct{}           `json:"changes"`
	}{garment.Version, like, g.Title, edges, struct{}{}}, "", "  ")
	if err != nil {
		return err
	}
	_, err = fmt.Fprintf(out, "%s\n", text)
	return err
}

// page plans the garment and writes it in a form.
func (s starter) page(form string, in []units.Notation) ([]byte, error) {
	patch, err := garment.Patch(s.like, s.pairs)
	if err != nil {
		return nil, err
	}
	return starterPage(patch, form, in)
}

func starterPage(text []byte, form string, in []units.Notation) ([]byte, error) {
	g, dropped, err := garment.Read(bytes.NewReader(text))
	if err != nil {
		return nil, err
	}
	p, err := g.Plan()
	if err != nil {
		return nil, err
	}
	if form == "json" {
		b, err := json.Marshal(p)
		return append(fault.VisibleJSON(b), '\n'), err
	}
	sheet := p.Sheet()
	if len(dropped) > 0 {
		sheet.Cautions = append(sheet.Cautions, ticket.Caution{Text: "Taken away with what the file took away: " + strings.Join(dropped, ", ") + "."})
	}
	if form == "markdown" {
		return markdown(sheetPage(sheet, in)), nil
	}
	return []byte(sheet.Text(in...)), nil
}

// sheetPage is a sheet as a page.
func sheetPage(s ticket.Sheet, in []units.Notation) page {
	title, answer, _ := strings.Cut(s.Title, ": ")
	p := page{title: title}
	if answer != "" {
		p.intro = append(p.intro, answer+".")
	}
	for _, l := range s.Answer {
		p.intro = append(p.intro, l.Text(in...)+".")
	}
	add := func(title string, n int, one func(*part, int)) {
		if n == 0 {
			return
		}
		part := part{title: title}
		for i := range n {
			one(&part, i)
		}
		p.parts = append(p.parts, part)
	}
	add("What changes", len(s.Lines), func(p *part, i int) {
		p.blocks = append(p.blocks, block{bullet: s.Lines[i].Text(in...)})
	})
	add("Work", 1, func(p *part, _ int) {
		var steps []step
		for _, one := range s.Steps {
			steps = append(steps, step{one.Head(), one.Items(in...)})
		}
		p.blocks = append(p.blocks, block{head: "In this order", steps: steps})
	})
	add("Take care", len(s.Cautions), func(p *part, i int) {
		p.blocks = append(p.blocks, block{bullet: s.Cautions[i].Text})
	})
	return p
}
