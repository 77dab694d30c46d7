package main

import (
	"os"
	"path/filepath"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
)

// A picture is an answer that can be drawn edge-on, stage by stage.
type picture interface {
	Sections(thickness units.Length) ([]section.Drawing, error)
}

// draw writes each stage of the answer into dir, as SVG, and says which files it
// wrote. Nothing is written unless every stage can be drawn; files of the same
// names are written over.
func draw(dir string, p picture, in []units.Notation) ([]string, error) {
	stages, err := p.Sections(units.Length{})
	if err != nil {
		return nil, err
	}
	pictures := make([][]byte, len(stages))
	for i, d := range stages {
		if pictures[i], err = d.SVG(in...); err != nil {
			return nil, err
		}
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return nil, err
	}
	files := make([]string, len(stages))
	for i, d := range stages {
		files[i] = filepath.Join(dir, fileName(d.Title))
		if err := os.WriteFile(files[i], pictures[i], 0o644); err != nil {
			return nil, err
		}
	}
	return files, nil
}

// fileName is the title of a drawing, that is its kind and its stage, as the name
// of a file: "French seam, first pass" is french-seam-first-pass.svg.
func fileName(title string) string {
	return strings.NewReplacer(", ", "-", " ", "-").Replace(strings.ToLower(title)) + ".svg"
}
