package garment

import (
	"bytes"
	_ "embed"
	"fmt"
	"io"

	"example.com/clothyard/buttons"
	"example.com/clothyard/examples/internal/bind"
	"example.com/clothyard/gather"
	"example.com/clothyard/hem"
	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
	"example.com/clothyard/yardage/layout"
)

// The bounds of a garment: the most parts of one sort, and the most work steps.
const (
	MaxParts = 100
	MaxTasks = 200
)

// A Garment is what is to be made, as drafted, and what is changed about it.
// Zero means not given, in every field.
type Garment struct {
	Title  string // what it is
	Scene  string // for whom or what
	Cloth  Cloth
	Seams  []Seam
	Edges  []Edge
	Pairs  []seam.Pair // edges that must go together, the one that may be longer first
	Hems   []Hem
	Drops  []Drop
	Frills []Frill
	Cuffs  []Cuff
	Rows   []Row
	Tin    Tin
	Pieces []Piece
	Lay    []Place // a lay of your own, to be proven; optional
	Kit    []Note  // thread, needle and stitch
	Work   []Task  // the work, in order
	Care   []ticket.Caution
}

// A Cloth is the cloth in the cupboard and the cloth asked for.
type Cloth struct {
	Name       string
	Fraying    bool
	Width      units.Length // of the cloth there is, selvedges included, unwashed
	Have       units.Length // its length, unwashed
	Asked      units.Length // the length the envelope asks
	AskedWidth units.Length // the width it is asked on
	ShrinkLong units.Ratio  // in length, when washed; zero is an answer
	ShrinkWide units.Ratio  // across; zero is an answer
	Selvedge   units.Length // lost at each side; zero is an answer
	Ends       units.Length // lost in squaring, both ends together; zero is an answer
	Counter    units.Length // the step in which the shop cuts; default of the library
	Work       int          // how long to look for a lay, as layout.Spec.Work
}

// A Seam is a seam of the garment: how it is drafted and sewn.
type Seam struct {
	Name  string
	Times int    // how many there are, as 2 for left and right; default 1
	Where string // the pieces that have it
	Press string // which way
	Spec  seam.Spec
}

// An Edge is a stitching line that seams cross, measured between the drafted
// seam lines. It is given by its net length, or as lying a depth outside another.
type Edge struct {
	Name      string
	Note      string
	Net       units.Length
	Of        string       // the edge that this one lies along
	Depth     units.Length // how far outside Of it lies
	Turn      units.Ratio  // signed turning of the line in radians; plus where it bulges outward
	Crossings []seam.Crossing
	Hem       string // the hem along it, whose drift changes a flared edge
	Slit      string // the slit hem that opens into it; one that opens into Of alone does not count
}

// A Hem is a hem or a slit of the garment.
type Hem struct {
	Name  string
	Where string
	Spec  hem.Spec
}

// A Drop is a length from a seam line down to the finished hem.
type Drop struct {
	Name    string
	Drafted units.Length
	Seams   []string // the seams at its top, one ply of each
	Upper   []string // those of which it is the upper ply; needed where the plies keep unlike amounts
	Under   []string // those of which it is the under ply
	Hem     string
}

// A Frill is a ruffle and the edge it is gathered onto.
type Frill struct {
	Name string
	Edge string
	Spec gather.Ruffle // without its Strip.Edge, which Edge gives
}

// A Cuff is a cuff and the sleeve edge that is gathered into it.
type Cuff struct {
	Name string
	Edge string
	Spec gather.Cuff // without its Sleeve, which Edge gives
}

// A Row is a row of buttons and holes.
type Row struct {
	Name      string
	Times     int // how many such rows; default 1
	Drop      string
	Row       buttons.Row
	Setting   buttons.Setting
	Lap       units.Length // from the line of the buttons to the edge they close over
	Topstitch units.Length // a row of topstitching, from the same edge
}

// A Tin is the buttons there are, all alike.
type Tin struct {
	Have      int
	Diameter  units.Length
	Thickness units.Length
	Months    int // age of the wearer in months, for the cautions
}

// A Piece is a pattern piece as a rectangle between its drafted seam lines, and
// what lies along its sides. The allowances as cut are added.
type Piece struct {
	Name    string
	Wide    units.Length
	Long    units.Length
	Count   int
	Pair    bool // left and right: every other copy is cut with the pattern face down
	Turn    layout.Turn
	Sides   []string // the seams along its two sides; the same name twice for both
	Ends    []string // the seams at its top and bottom
	Upper   []string // the seams of which it is the upper ply; needed where the plies are cut unlike
	Under   []string // the seams of which it is the under ply; in both where it is sewn to itself, the left-hand side or the top being the upper
	Hem     string   // the hem at its bottom
	Outline []Corner // its corners in order, top at the cut end; none: a rectangle
}

// A Corner is a corner of a piece as drafted, on its seam lines, and what cuts it
// larger: the seams or hems whose allowance as cut lies to its left, to its right,
// above and below. Between two corners the cutting line is straight.
type Corner struct {
	X     units.Length // from the left-hand side of the piece between its seam lines; zero is an answer
	Y     units.Length // from its top; zero is an answer
	Left  string
	Right string
	Above string
	Below string
}

// A Place is where one copy of a piece lies in a lay of your own.
type Place struct {
	Piece  string
	Copy   int // from 1
	Across bool
	X      units.Length // from the inner edge of the left-hand selvedge; zero is an answer
	Y      units.Length // from the squared end; zero is an answer
}

// A Note is a line of text under a heading.
type Note struct {
	Head string
	Text string
}

// A Task is one numbered operation of the work ticket. It takes its steps from
// the part that it names, if any, between its own steps before and after.
type Task struct {
	Title  string
	Wash   bool   // the cloth is washed: measure it after
	Swatch string // the seam to be tried on a swatch
	Lay    bool   // the pieces are laid and cut
	Before []Step
	Seams  []string
	Frill  string
	Cuff   string
	Hem    string
	Row    string
	After  []Step
	Check  []Gauge
}

// A Step is a step of your own.
type Step struct {
	Do    string
	Right bool // right sides together
	Wrong bool // wrong sides together
	At    units.Length
	From  string
	Trim  units.Length
	Press string
	Note  string
}

// A Gauge is what must measure what after a task: an edge, a drop, or a length
// of your own.
type Gauge struct {
	Edge string
	Drop string
	What string
	Want units.Length
	Mend string // what to do if it is out; for an edge the seams say it
}

//go:embed shirt.json
var shirt []byte

// Default is the garment of the example: a shirt for a village theatre.
func Default() (Garment, error) { return Read(bytes.NewReader(shirt)) }

// Read reads a garment from JSON, at most [bind.MaxBytes] of it. The error is
// [fault.Faults] where the text is at fault.
func Read(r io.Reader) (Garment, error) {
	text, err := io.ReadAll(io.LimitReader(r, bind.MaxBytes+1))
	if err != nil {
		return Garment{}, fmt.Errorf("reading the garment: %w", err)
	}
	node, err := bind.Parse(text)
	if err != nil {
		return Garment{}, err
	}
	var g Garment
	if err := (bind.Reader{}).Read(node, &g); err != nil {
		return Garment{}, err
	}
	return g, nil
}
