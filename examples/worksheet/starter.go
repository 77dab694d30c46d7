package main

import (
	"encoding/json"
	"fmt"

	"example.com/clothyard/seam/garment"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
)

// list is the starters, each with what it is.
func list() ([]byte, error) {
	var text []byte
	for _, name := range garment.Starters() {
		g, err := garment.Starter(name)
		if err != nil {
			return nil, err
		}
		text = append(text, ticket.Wrap(fmt.Sprintf("%-18s ", name), "                   ", g.Title)...)
	}
	return text, nil
}

// begin is a file to fill in: the starter it is like, and its edges, whose lengths may be
// given. It can be planned as it is.
func begin(like string) ([]byte, error) {
	g, err := garment.Starter(like)
	if err != nil {
		return nil, err
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
	return append(text, '\n'), err
}
