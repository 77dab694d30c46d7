package gather

import (
	"iter"
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
	"example.com/clothyard/units/noun"
)

// MaxTakes is the greatest number of pleats or darts that take an edge up.
const MaxTakes = 1000

// A TakeUp says how an edge that is longer than its band is taken up.
type TakeUp uint8

// The ways to take an edge up. The zero value is none.
const (
	NoTakeUp TakeUp = iota
	Eased           // held in along the seam, without folds
	Gathered        // drawn up on a thread
	Pleated         // folded
	Darted          // sewn away in darts
)

var takeUps = name.Of[TakeUp]("take-up", "none", "eased", "gathered", "pleated", "darted")

// String is the name of the way, as in gathered, and none for [NoTakeUp].
func (t TakeUp) String() string { return takeUps.String(t) }

// MarshalText is the name of the way, empty for [NoTakeUp]. It fails for a number
// that is no way.
func (t TakeUp) MarshalText() ([]byte, error) { return takeUps.Marshal(t) }

// UnmarshalText reads the name of a way; empty text is [NoTakeUp].
func (t *TakeUp) UnmarshalText(text []byte) error { return takeUps.Unmarshal(t, text) }

// TakeUps yields every way to take an edge up, [NoTakeUp] excepted.
func TakeUps() iter.Seq[TakeUp] { return takeUps.All() }

// A Band is a waistband, a yoke or another band that goes round the body, and the
// edge that is sewn to it. It is cut in one piece and folded along its length, or,
// faced or shaped, in two. Zero means "not given".
//
// Closed is body + ease: it follows from them, or one of them from it.
type Band struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Body is the girth of the body where the band sits.
	Body units.Length `json:"body,omitzero"`
	// Ease is what the closed band is longer than the body. May be omitted; it follows
	// from closed and body, or is 1/2 in or 1 cm.
	Ease units.Given[units.Length] `json:"ease,omitzero"`
	// Closed is the length of the band once round, from one edge of the opening to the
	// other, along the seam line.
	Closed units.Length `json:"closed,omitzero"`
	// Ring says that the band has no opening.
	Ring bool `json:"ring,omitzero"`
	// Underlap is how far the under end goes on past the opening. May be omitted; the
	// default is 1 in or 4 cm, and nothing in a ring.
	Underlap units.Given[units.Length] `json:"underlap,omitzero"`
	// Overlap is how far the upper end goes on past the opening. May be omitted; the
	// default is 0, an end flush with the opening.
	Overlap units.Length `json:"overlap,omitzero" noun:"zero"`
	// Depth is the finished depth, from the seam line to the free edge.
	Depth units.Length `json:"depth,omitzero"`
	// Lower is, of a shaped band, the length of the lower edge once round; closed is
	// then the upper one, and the garment is sewn to the lower. May be omitted; the
	// default is a straight band.
	Lower units.Length `json:"lower,omitzero"`
	// Faced says that the band is cut in two pieces, seamed along the free edge. A
	// shaped band always is.
	Faced bool `json:"faced,omitzero"`
	// Allowance is the seam allowance. May be omitted; the default is 5/8 in or 1.5 cm.
	Allowance units.Length `json:"allowance,omitzero"`
	// Ends is the allowance at each end, or of the seam that closes a ring. May be
	// omitted; the default is allowance.
	Ends units.Length `json:"ends,omitzero"`
	// Inner is what the inner half of a folded band has beyond the seam line: less than
	// allowance where that edge is a selvedge or is overcast, as much as depth where
	// the band is folded in three to stiffen itself. May be omitted; the default is
	// allowance.
	Inner units.Given[units.Length] `json:"inner,omitzero"`
	// Edge is the edge that is sewn to the band, along its seam line, as sewn, from one
	// edge of the opening to the other. May be omitted; nothing is then taken up.
	Edge units.Length `json:"edge,omitzero"`
	// Taken is how the edge is taken up where it is longer. May be omitted; the default
	// is eased, up to the most of the table of ease, and gathered beyond.
	Taken TakeUp `json:"taken,omitzero"`
	// Count is how many pleats or darts take it up, 1 to 1000.
	Count int `json:"count,omitzero"`
	// Inside is how far the gathering row lies from the seam line, inside the
	// allowance. May be omitted; the default is 1/8 in or 3 mm.
	Inside units.Length `json:"inside,omitzero"`
	// Stitch is the length of the gathering stitch. May be omitted; the default is 4 mm.
	Stitch units.Length `json:"stitch,omitzero"`
	// Thickness is the thickness of one ply of the cloth that is gathered. May be
	// omitted; it is then not known whether the gathers have room.
	Thickness units.Length `json:"thickness,omitzero"`
	// Parts is how many equal parts are marked on band and edge, 1 to 1000. May be
	// omitted; the default is 4.
	Parts int `json:"parts,omitzero"`
}

// A BandPlan is what a band comes to.
type BandPlan struct {
	Spec      Band         `json:"spec,omitzero"`      // as solved
	Assumed   []string     `json:"assumed,omitzero"`   // the fields filled with a default
	Pieces    int          `json:"pieces,omitzero"`    // how many pieces are cut: 1, or 2 where faced or shaped
	Finished  units.Length `json:"finished,omitzero"`  // from end to end laid flat: closed and both laps
	CutLength units.Length `json:"cutLength,omitzero"` // length as cut, with an allowance at each end; of a shaped band, along the upper seam line
	CutDepth  units.Length `json:"cutDepth,omitzero"`  // depth as cut of each piece
	Fold      units.Length `json:"fold,omitzero"`      // the fold line, from the raw edge that is sewn to the garment; zero where there are two pieces
	Inner     units.Length `json:"inner,omitzero"`     // radius of the upper seam line of a shaped band
	Outer     units.Length `json:"outer,omitzero"`     // radius of its lower seam line
	Turn      units.Angle  `json:"turn,omitzero"`      // the angle between the two edges of the opening
	Fastening units.Length `json:"fastening,omitzero"` // middle of the lap, from either finished end: a button and its hole, or hook and bar
	Onto      units.Length `json:"onto,omitzero"`      // the part of the band that the edge goes on
	Surplus   units.Length `json:"surplus,omitzero"`   // what the edge is longer
	Fullness  units.Ratio  `json:"fullness,omitzero"`  // edge over onto
	PerTake   units.Length `json:"perTake,omitzero"`   // what one pleat or dart takes up; a pleat is half as deep
	Row       units.Length `json:"row,omitzero"`       // gathering row, from the raw edge
	SecondRow units.Length `json:"secondRow,omitzero"` // second gathering row, from the raw edge
	Packed    units.Ratio  `json:"packed,omitzero"`    // how much of the seam the gathered plies fill: fullness x thickness over stitch
	Marks     []Mark       `json:"marks,omitzero"`     // the marks between the equal parts: on the edge from the opening, on the band from the finished upper end
}

// Plan works out the band. The faults are [fault.Faults].
func (b Band) Plan() (BandPlan, error) {
	var a fault.Audit
	b.audit(&a)
	if a.Failed() {
		return BandPlan{}, a.Err()
	}
	b.solveEase(&a)
	if a.Failed() {
		return BandPlan{}, a.Err()
	}
	given := b
	b.fill()
	p := BandPlan{Onto: b.Closed}
	if b.Closed.IsZero() {
		p.Onto = b.Body.Add(b.Ease.Or(units.Length{}))
	}
	closed := p.Onto
	if !b.Lower.IsZero() {
		fault.AtLeast(&a, "lower", b.Lower, closed, "closed", fault.Range)
		p.Onto = b.Lower
	}
	if !b.Edge.IsZero() {
		fault.AtLeast(&a, "edge", b.Edge, p.Onto, "the part of the band it goes on, which is never stretched", fault.Range)
		p.Surplus, p.Fullness = b.Edge.Sub(p.Onto), b.Edge.Div(p.Onto)
	}
	b.takeUp(&a, p.Surplus)
	p.Assumed = noun.Assumed(given, b)
	b.Closed = closed
	p.Spec = b
	p.work(&a)
	if a.Failed() {
		return BandPlan{}, a.Err(p.Assumed...)
	}
	return p, nil
}

// fill sets what is not given to its default.
func (b *Band) fill() {
	b.Tape = noun.Tape(*b)
	if b.Ease.IsZero() && b.Closed.IsZero() {
		b.Ease = units.Give(usual(bandEase, b.Tape).Length)
	}
	if b.Underlap.IsZero() && !b.Ring {
		b.Underlap = units.Give(usual(underlap, b.Tape).Length)
	}
	fill(&b.Allowance, seamAllowance, b.Tape)
	if b.Ends.IsZero() {
		b.Ends = b.Allowance
	}
	if b.Inner.IsZero() && !b.twoPieces() {
		b.Inner = units.Give(b.Allowance)
	}
	fillCount(&b.Parts, quarters)
}

// twoPieces reports whether the band is cut in two pieces.
func (b Band) twoPieces() bool { return b.Faced || !b.Lower.IsZero() }

// audit looks at each field by itself, and for what is missing.
func (b Band) audit(a *fault.Audit) {
	zero := units.Length{}
	b.Tape.Check(a, "tape")
	if b.Closed.IsZero() || b.Body.Sign() < 0 {
		a.Need("body", b.Body)
	}
	a.NotNegative("ease", b.Ease.Or(zero))
	if b.Body.IsZero() && !b.Ease.IsZero() {
		a.Fault("ease", b.Ease.Or(zero).String(), "none without body", fault.Unused)
	}
	a.NotNegative("closed", b.Closed)
	a.NotNegative("underlap", b.Underlap.Or(zero))
	a.NotNegative("overlap", b.Overlap)
	if b.Ring && !b.Underlap.IsZero() {
		a.Fault("underlap", b.Underlap.Or(zero).String(), "none in a ring, which has no end", fault.Unused)
	}
	if b.Ring && b.Overlap.Sign() > 0 {
		a.Fault("overlap", b.Overlap.String(), "none in a ring, which has no end", fault.Unused)
	}
	a.Need("depth", b.Depth)
	a.NotNegative("lower", b.Lower)
	a.NotNegative("allowance", b.Allowance)
	a.NotNegative("ends", b.Ends)
	a.NotNegative("inner", b.Inner.Or(zero))
	if b.twoPieces() && !b.Inner.IsZero() {
		a.Fault("inner", b.Inner.Or(zero).String(), "none where the band is cut in two pieces", fault.Unused)
	}
	a.NotNegative("edge", b.Edge)
	if b.Taken != NoTakeUp {
		takeUps.Check(a, "taken", b.Taken)
	}
	if b.Count != 0 {
		a.Count("count", b.Count, 1, MaxTakes)
	}
	a.NotNegative("inside", b.Inside)
	a.NotNegative("stitch", b.Stitch)
	a.NotNegative("thickness", b.Thickness)
	if b.Parts != 0 {
		a.Count("parts", b.Parts, 1, MaxParts)
	}
}

// solveEase fills ease where closed and body are given.
func (b *Band) solveEase(a *fault.Audit) {
	if b.Body.IsZero() || b.Closed.IsZero() {
		return
	}
	switch ease, given := b.Ease.Get(); {
	case !given:
		fault.AtLeast(a, "closed", b.Closed, b.Body, "body", fault.Range)
		b.Ease = units.Give(b.Closed.Sub(b.Body))
	case b.Body.Add(ease) != b.Closed:
		a.Fault("closed", b.Closed.String(), "{0} (body + ease)", fault.Conflict, b.Body.Add(ease))
	}
}

// takeUp fills and checks how a surplus is taken up.
func (b *Band) takeUp(a *fault.Audit, surplus units.Length) {
	most := easeMost(b.Tape)
	if surplus.Sign() > 0 && b.Taken == NoTakeUp {
		switch {
		case b.Count > 0:
			a.Fault("taken", "", "pleated or darted, as count is given", fault.Missing)
			return
		case surplus.Cmp(most) <= 0 && b.Inside.IsZero() && b.Stitch.IsZero() && b.Thickness.IsZero():
			b.Taken = Eased
		default:
			b.Taken = Gathered
		}
	}
	switch {
	case surplus.Sign() <= 0 && b.Taken != NoTakeUp:
		a.Fault("taken", b.Taken.String(), "none, as edge is no longer than the band", fault.Unused)
	case b.Taken == Eased && most.Less(surplus):
		a.Fault("taken", b.Taken.String(), "gathered, pleated or darted, as more than {0} cannot be eased in ({1} to take up)", fault.Range, most, surplus)
	}
	if folded := b.Taken == Pleated || b.Taken == Darted; folded && b.Count == 0 {
		a.Count("count", b.Count, 1, MaxTakes)
	} else if !folded && b.Count > 0 {
		a.Fault("count", units.RatioOf(int64(b.Count), 1).String(), "none unless pleated or darted", fault.Unused)
	}
	if b.Taken != Gathered {
		a.Unused("inside", b.Inside, b.Inside.IsZero(), b.Taken)
		a.Unused("stitch", b.Stitch, b.Stitch.IsZero(), b.Taken)
		a.Unused("thickness", b.Thickness, b.Thickness.IsZero(), b.Taken)
		return
	}
	fill(&b.Inside, rowInside, b.Tape)
	fill(&b.Stitch, gatherStitch, b.Tape)
}

// work fills what the band comes to.
func (p *BandPlan) work(a *fault.Audit) {
	b, zero := p.Spec, units.Length{}
	laps := b.Overlap.Add(b.Underlap.Or(zero))
	p.Finished = b.Closed.Add(laps)
	p.CutLength = p.Finished.Add(b.Ends.MulInt(2))
	p.Fastening = laps.DivInt(2)
	p.Pieces = 1
	if b.twoPieces() {
		p.Pieces = 2
		p.CutDepth = b.Depth.Add(b.Allowance.MulInt(2))
	} else {
		p.Fold = b.Depth.Add(b.Allowance)
		p.CutDepth = p.Fold.Add(b.Depth).Add(b.Inner.Or(zero))
		fault.AtMost(a, "inner", b.Inner.Or(zero), b.Depth, "depth", fault.Range)
	}
	if b.Closed.Less(b.Lower) {
		more := b.Lower.Sub(b.Closed)
		p.Inner = b.Closed.Scale(b.Depth.Div(more))
		p.Outer = p.Inner.Add(b.Depth)
		p.Turn = units.Radians(more.Div(b.Depth))
	}
	switch b.Taken {
	case Pleated, Darted:
		if b.Count > 0 {
			p.PerTake = p.Surplus.DivInt(int64(b.Count))
		}
	case Gathered:
		if b.Allowance.Cmp(b.Inside) <= 0 {
			a.Fault("allowance", b.Allowance.String(), "more than {0} (inside)", fault.Range, b.Inside)
		}
		p.Row, p.SecondRow = b.Allowance.Sub(b.Inside), b.Allowance.Add(b.Inside)
		p.Packed = p.Fullness.Mul(b.Thickness.Div(b.Stitch))
		if units.RatioOf(1, 1).Less(p.Packed) {
			a.Fault("thickness", b.Thickness.String(), "at most {0} (stitch over the fullness, or the plies have no room)", fault.Range, b.Stitch.Unscale(p.Fullness))
		}
	}
	full := b.Edge
	if full.IsZero() {
		full = p.Onto
	}
	p.Marks = divide(full, p.Onto, b.Parts, zero)
	for i := range p.Marks {
		p.Marks[i].Edge = p.Marks[i].Edge.Add(b.Overlap)
	}
}

// easeMost is the most that is eased into a seam: more is gathered.
func easeMost(tape units.Tape) units.Length {
	if tape == units.MetricTape {
		return usual(easeLimit, tape).Length
	}
	return easeLimitRow().High
}

// easeLimitRow is the row of the table of ease that says where ease ends.
func easeLimitRow() EaseRow {
	return easeRows[slices.IndexFunc(easeRows[:], func(r EaseRow) bool { return r.Garment == "eased seam" })]
}
