package yardage

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxPieces is the greatest number of pieces that are cut alike.
const MaxPieces = 1_000_000

// Pieces are rectangles of one size, all laid the same way on cloth of one width: squares
// for a quilt, napkins, cushion plates, strips. Count gives the length that they take;
// Length gives how many there are in it.
type Pieces struct {
	Across units.Length `json:"across,omitzero"` // the size of a piece across the cloth, as cut
	Along  units.Length `json:"along,omitzero"`  // the size of a piece along the cloth, as cut
	// Turn is set where the pieces may also be laid with the two sizes exchanged, all of
	// them alike. What takes less, or gives more, is done.
	Turn bool `json:"turn,omitzero"`
	// Count is how many are wanted, 1 to 1,000,000. May be omitted where length is given.
	Count  int          `json:"count,omitzero"`
	Width  units.Length `json:"width,omitzero"`  // the width of the cloth
	Length units.Length `json:"length,omitzero"` // the length of the cloth. May be omitted where count is given.
	// Selvedge is what is lost of the width, both selvedges together.
	Selvedge units.Length `json:"selvedge,omitzero" noun:"zero"`
	// Ends is what is lost of the length in squaring, both ends together.
	Ends units.Length `json:"ends,omitzero" noun:"zero"`
}

// A PiecesPlan is how the pieces lie.
type PiecesPlan struct {
	Spec   Pieces       `json:"spec,omitzero"`   // as given
	Turned bool         `json:"turned,omitzero"` // the two sizes are exchanged
	Row    int          `json:"row,omitzero"`    // pieces side by side across the cloth
	Rows   int          `json:"rows,omitzero"`   // rows one after another
	Made   int          `json:"made,omitzero"`   // pieces in all the rows
	Need   units.Length `json:"need,omitzero"`   // the length that the rows take, with the ends
	ByArea units.Length `json:"byArea,omitzero"` // the length that the count takes by area: never more than need; zero without a count
	Beside units.Length `json:"beside,omitzero"` // left over across the cloth, beside each row
	Rest   units.Length `json:"rest,omitzero"`   // left over of the length; zero without a length
}

func (s Pieces) audit(a *fault.Audit) {
	a.Need("across", s.Across)
	a.Need("along", s.Along)
	switch {
	case s.Count != 0:
		a.Count("count", s.Count, 1, MaxPieces)
	case s.Length.IsZero():
		a.Fault("count", "", "1 to "+ticket.Of(MaxPieces).String()+", or length", fault.Missing)
	}
	a.Need("width", s.Width)
	if a.NotNegative("length", s.Length); s.Count != 0 && !s.Length.IsZero() {
		a.Fault("length", s.Length.String(), "none with count", fault.Conflict)
	}
	a.NotNegative("selvedge", s.Selvedge)
	a.NotNegative("ends", s.Ends)
}

// lay lays the pieces one way. Without room for one across there is no row.
func (s Pieces) lay(across, along units.Length) (p PiecesPlan, ok bool) {
	room := s.Width.Sub(s.Selvedge)
	if room.Less(across) || across.MulInt(MaxPieces).Less(room) {
		return p, false
	}
	row, _ := room.Div(across).Int(units.Down)
	rows := (int64(s.Count) + row - 1) / row
	if s.Count == 0 {
		room := s.Length.Sub(s.Ends)
		if along.MulInt(MaxPieces).Less(room) {
			return p, false
		}
		rows, _ = room.Div(along).Int(units.Down)
		rows = max(rows, 0)
	}
	p.Row, p.Rows, p.Made = int(row), int(rows), int(row*rows)
	p.Need = along.MulInt(rows).Add(s.Ends)
	p.Beside = room.Sub(across.MulInt(row))
	return p, true
}

// Plan works out the rows.
func (s Pieces) Plan() (PiecesPlan, error) {
	var a fault.Audit
	if s.audit(&a); a.Failed() {
		return PiecesPlan{}, a.Err()
	}
	p, ok := s.lay(s.Across, s.Along)
	if s.Turn {
		if q, can := s.lay(s.Along, s.Across); can && (!ok || q.Made > p.Made && s.Count == 0 || s.Count > 0 && q.Need.Less(p.Need)) {
			p, ok = q, true
			p.Turned = true
		}
	}
	if !ok {
		room := s.Width.Sub(s.Selvedge)
		switch {
		case s.Width.Less(s.Across):
			fault.AtMost(&a, "across", s.Across, s.Width, "width", fault.Range)
		case room.Less(s.Across):
			fault.AtMost(&a, "selvedge", s.Selvedge, s.Width.Sub(s.Across), "what the piece leaves of the width", fault.Range)
		case s.Across.MulInt(MaxPieces).Less(room):
			fault.AtLeast(&a, "across", s.Across, room.DivInt(MaxPieces), ticket.Of(MaxPieces).String()+" pieces in a row", fault.Range)
		default:
			fault.AtLeast(&a, "along", s.Along, s.Length.Sub(s.Ends).DivInt(MaxPieces), ticket.Of(MaxPieces).String()+" rows", fault.Range)
		}
		return PiecesPlan{}, a.Err()
	}
	if p.Spec = s; s.Count > 0 {
		p.ByArea = s.Across.Times(s.Along).Over(s.Width).MulInt(int64(s.Count))
	} else {
		p.Rest = s.Length.Sub(p.Need)
	}
	return p, nil
}

// Sheet is the working, and how the rows are cut.
func (p PiecesPlan) Sheet() ticket.Sheet {
	s := p.Spec
	across, along := s.Across, s.Along
	if p.Turned {
		across, along = along, across
	}
	sh := ticket.Sheet{Title: "Pieces of one size"}
	switch {
	case s.Count > 0:
		sh.Answer = []ticket.Line{{Label: "cloth for " + ticket.Of(s.Count).String(), Result: ticket.Cloth(p.Need)}}
	case !s.Length.IsZero():
		sh.Answer = []ticket.Line{{Label: "pieces", Result: ticket.Of(p.Made)}}
	}
	sh.Lines = append(sh.Lines,
		line("pieces", ticket.Of(p.Made), ticket.Term{Amount: ticket.Of(p.Row), Name: "in a row"}, count(p.Rows, "rows")),
		line("left over beside a row", ticket.Long(p.Beside), long(s.Width, "width"), less(s.Selvedge, "selvedges"), less(across.MulInt(int64(p.Row)), "the row")),
		line("length of the rows", ticket.Long(p.Need), long(along.MulInt(int64(p.Rows)), "the rows"), long(s.Ends, "lost in squaring")))
	if s.Count > 0 {
		sh.Lines = append(sh.Lines, line("by area, never enough", ticket.Long(p.ByArea)))
	} else if !s.Length.IsZero() {
		sh.Lines = append(sh.Lines, line("left over of the length", ticket.Long(p.Rest), long(s.Length, "cloth"), less(p.Need, "the rows")))
	}
	sh.Steps = []ticket.Step{
		{Do: "Square the end and cut strips across the cloth, one for each row", At: ticket.Long(along), From: "the last cut",
			Check: ticket.Check{What: "each strip at both selvedges", Want: ticket.Long(along), Mend: "square the end again before the next strip is cut"}},
		{Do: "Cut the strips into pieces", At: ticket.Long(across), From: "the selvedge, once it is cut off"},
	}
	sh.Cautions = []ticket.Caution{{Text: "Sizes are as cut: add the seams or hems to all four sides, and shrinkage, before this sum.", Refer: "a measured swatch decides"}, ticket.CutCare()}
	sh.Sources = []source.Cite{{For: "whole pieces across and whole rows along", ID: srcSquaresChart, Known: source.Read}}
	return sh
}
