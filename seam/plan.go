package seam

import "example.com/clothyard/units"

// A Side is one ply of a seam.
type Side struct {
	Drafted units.Length `json:"drafted,omitzero"` // the allowance drawn, from the drafted stitching line to the raw edge
	Cut     units.Length `json:"cut,omitzero"`     // the allowance as cut, from the same line
	Taken   units.Length `json:"taken,omitzero"`   // what the seam takes, from the raw edge as cut to where the finished seam lies

	// Drift is Cut less Taken: how far the seam lies outside the drafted stitching line.
	// It is negative where the piece comes out smaller.
	Drift units.Length `json:"drift,omitzero"`

	// Left is what is left of Taken once this ply is trimmed as the sheet says.
	Left units.Length `json:"left,omitzero"`
	// TrimMin and TrimMax are the least and the most that should be left of this ply
	// beyond the first row before the next stage: the narrowest that holds, the widest
	// that stays hidden or is of use. Both are the whole allowance where this ply must
	// not be trimmed.
	TrimMin units.Length `json:"trimMin,omitzero"`
	TrimMax units.Length `json:"trimMax,omitzero"` // the most; see TrimMin
}

// A Strip is a width of strip that a seam asks for, or allows.
type Strip struct {
	Rule  string     `json:"rule,omitzero"`  // what it is, or the rule that gives it
	Width units.Near `json:"width,omitzero"` // how wide
}

// A Plan is what a seam comes to.
type Plan struct {
	Spec    Any      `json:"spec,omitzero"`    // the seam as solved
	Assumed []string `json:"assumed,omitzero"` // the fields that rest on a default

	Upper Side `json:"upper,omitzero"` // the upper ply
	Under Side `json:"under,omitzero"` // the under ply

	// Gain is the drift of both plies together: how much longer an edge comes out that
	// this seam crosses square.
	Gain units.Length `json:"gain,omitzero"`

	// Finished is how wide the finished seam is: the pressed allowance of a plain, piped
	// or graded seam on one side of it, the ridge, the fell, the binding, the welt, the
	// lap; of a slot seam from row to row.
	Finished units.Length `json:"finished,omitzero"`

	// Turned is how much of an allowance is turned in. It is zero for kinds that turn
	// nothing in.
	Turned units.Length `json:"turned,omitzero"`

	// Plies is how many layers lie one above another at the thickest place of the
	// finished seam as the sheet presses it, the garment included. Edges that just meet
	// count as lying over one another; a cord is not counted. A plain seam has 2 pressed
	// open and 3 to one side; a French seam 5 (the ridge pressed over); a bound one 7
	// (pressed over, in a single binding); a graded one two more than its layers: the
	// upper and the under ply run on over them. The layers between those run out at the
	// seam, as a collar's do; one that runs on into the garment, as an interfacing may,
	// lies there once more and is not counted. Where the seam runs through a fold or
	// another seam of so many layers, there are as many times more: under a double hem,
	// of 3, a French seam has 15.
	Plies int `json:"plies,omitzero"`

	// Rows is how many rows of stitching are seen on the right side.
	Rows int `json:"rows,omitzero"`

	// Raw is true where raw edges stay exposed.
	Raw bool `json:"raw,omitzero"`

	// Turn and TurnUnder are what folds take from the upper and the under ply beside
	// Taken, negative where the seam takes so much less; zero if Thickness was not given.
	// A fold goes half round, the middle of the cloth being its length, and a guide from
	// it is laid to its outer face. Those count that lie between the raw edge and the
	// seam and are made before a guide is laid:
	//
	//	french         the fold along the first pass: each ply t (pi/2 - 1), for cloth t thick
	//	untrimmed-fell the fold round the upper raw edge: under ply t (pi - 3/2), upper ply -3/2 t
	//	lapped         the fold of the upper ply: t (pi/2 - 2); under ply none
	//	lapped-turned  the fold of each ply: t (pi/2 - 2)
	//
	// Of the other kinds the row that makes the seam is sewn flat, from the raw edges,
	// before anything is folded, or there is no fold: what bends lies in the allowance,
	// and moves no seam.
	Turn      units.Near `json:"turn,omitzero"`
	TurnUnder units.Near `json:"turnUnder,omitzero"` // the same of the under ply

	// Piece is how wide each of the two pieces of a test swatch is cut, and Across what the
	// swatch then measures.
	Piece  units.Length `json:"piece,omitzero"`
	Across units.Length `json:"across,omitzero"` // the swatch; see Piece

	// Strips are widths of strip that the seam asks for. A bound seam of finished width f
	// has three rules: single binding 4f, folded double 6f, and folded double 4f + 1 in
	// (or 2.5 cm), which keeps a fixed amount for the seam. A Hong Kong finish has the
	// least, at which its under edge would only just reach the stitching, and what of the
	// strip lies on the under face of the allowance. A slot seam has the least underlay,
	// a piped seam the strip that covers its cord.
	Strips []Strip `json:"strips,omitzero"`

	// Grades are what is left of each layer of a graded seam, the widest, which lies next
	// to the outside of the garment, first.
	Grades []units.Length `json:"grades,omitzero"`
}

// trim says what is to be left of a ply, and what the least and the most are.
func (d *Side) trim(left, least, most units.Length) {
	d.Left = left
	d.TrimMin, d.TrimMax = least, most.Max(least)
}

// trim says it of both plies alike.
func (p *Plan) trim(left, least, most units.Length) {
	p.Upper.trim(left, least, most)
	p.Under.trim(left, least, most)
}

// strip adds a strip to the plan.
func (p *Plan) strip(rule string, width units.Length) {
	p.Strips = append(p.Strips, Strip{rule, units.Exactly(width)})
}
