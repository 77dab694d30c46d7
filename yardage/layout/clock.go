package layout

import (
	"context"
	"errors"
)

// The steps that are taken before a context is asked: a lay of pieces that people
// draw is checked and proven whole however soon its context is done.
const (
	checkGrace = 10_000     // points checked
	proofGrace = 10_000_000 // pairs of triangles compared
)

// errLate is the fault of a check or a proof that its clock ended.
var errLate = errors.New("stopped before the end")

// A clock ends what takes long soon after its context is done. A nil clock never
// does.
type clock struct {
	ctx  context.Context
	left int  // steps before ctx is asked
	late bool // it was done then
}

// over counts steps and reports whether it is time to end.
func (c *clock) over(steps int) bool {
	if c == nil {
		return false
	}
	if c.left -= steps; c.left <= 0 && !c.late {
		c.late = c.ctx.Err() != nil
	}
	return c.late
}

// toil is how many points without an allowance take as long to check as one of the
// piece.
func (p *Piece) toil() int {
	if len(p.Allowance) > 0 {
		return 16
	}
	return 1
}
