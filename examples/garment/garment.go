package garment

import (
	"bytes"
	_ "embed"
	"io"

	"example.com/clothyard/buttons"
	"example.com/clothyard/gather"
	"example.com/clothyard/hem"
	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
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
	Title  string           `json:"title,omitzero"` // what it is
	Scene  string           `json:"scene,omitzero"` // for whom or what
	Cloth  Cloth            `json:"cloth,omitzero"`
	Seams  []Seam           `json:"seams,omitzero"`
	Edges  []Edge           `json:"edges,omitzero"`
	Pairs  []edge.Partners  `json:"pairs,omitzero"` // edges that must go together, the one that may be longer first
	Hems   []Hem            `json:"hems,omitzero"`
	Drops  []Drop           `json:"drops,omitzero"`
	Frills []Frill          `json:"frills,omitzero"`
	Cuffs  []Cuff           `json:"cuffs,omitzero"`
	Rows   []Row            `json:"rows,omitzero"`
	Tin    Tin              `json:"tin,omitzero"`
	Pieces []Piece          `json:"pieces,omitzero"`
	Lay    []Place          `json:"lay,omitzero"`  // a lay of your own, to be proven; optional
	Kit    []Note           `json:"kit,omitzero"`  // thread, needle and stitch
	Work   []Task           `json:"work,omitzero"` // the work, in order
	Care   []ticket.Caution `json:"care,omitzero"`
}

// A Cloth is the cloth in the cupboard and the cloth asked for.
type Cloth struct {
	Name       string       `json:"name,omitzero"`
	Fraying    bool         `json:"fraying,omitzero"`
	Width      units.Length `json:"width,omitzero"`                  // of the cloth there is, selvedges included, unwashed
	Have       units.Length `json:"have,omitzero"`                   // its length, unwashed
	Asked      units.Length `json:"asked,omitzero"`                  // the length the envelope asks
	AskedWidth units.Length `json:"askedWidth,omitzero"`             // the width it is asked on
	ShrinkLong units.Ratio  `json:"shrinkLong,omitzero" noun:"zero"` // in length, when washed; zero is an answer
	ShrinkWide units.Ratio  `json:"shrinkWide,omitzero" noun:"zero"` // across; zero is an answer
	Selvedge   units.Length `json:"selvedge,omitzero" noun:"zero"`   // lost at each side; zero is an answer
	Ends       units.Length `json:"ends,omitzero" noun:"zero"`       // lost in squaring, both ends together; zero is an answer
	Counter    units.Length `json:"counter,omitzero"`                // the step in which the shop cuts; default of the library
	Work       int          `json:"work,omitzero"`                   // how long to look for a lay, as layout.Spec.Work
}

// A Seam is a seam of the garment: how it is drafted and sewn.
type Seam struct {
	Name  string   `json:"name,omitzero"`
	Times int      `json:"times,omitzero"` // how many there are, as 2 for left and right; default 1
	Where string   `json:"where,omitzero"` // the pieces that have it
	Press string   `json:"press,omitzero"` // which way
	Spec  seam.Any `json:"spec,omitzero"`
}

// An Edge is a stitching line that seams cross, measured between the drafted
// seam lines. It is given by its net length, or as lying a depth outside another.
type Edge struct {
	Name      string          `json:"name,omitzero"`
	Note      string          `json:"note,omitzero"`
	Net       units.Length    `json:"net,omitzero"`
	Of        string          `json:"of,omitzero"`               // the edge that this one lies along
	Depth     units.Length    `json:"depth,omitzero"`            // how far outside Of it lies
	Turn      units.Ratio     `json:"turn,omitzero" noun:"zero"` // signed turning of the line in radians; plus where it bulges outward
	Crossings []edge.Crossing `json:"crossings,omitzero"`
	Hem       string          `json:"hem,omitzero"`  // the hem along it, whose drift changes a flared edge
	Slit      string          `json:"slit,omitzero"` // the slit hem that opens into it; one that opens into Of alone does not count
}

// A Hem is a hem or a slit of the garment.
type Hem struct {
	Name  string   `json:"name,omitzero"`
	Where string   `json:"where,omitzero"`
	Spec  hem.Spec `json:"spec,omitzero"`
}

// A Drop is a length from a seam line down to the finished hem.
type Drop struct {
	Name    string       `json:"name,omitzero"`
	Drafted units.Length `json:"drafted,omitzero"`
	Seams   []string     `json:"seams,omitzero"` // the seams at its top, one ply of each
	Upper   []string     `json:"upper,omitzero"` // those of which it is the upper ply; needed where the plies keep unlike amounts
	Under   []string     `json:"under,omitzero"` // those of which it is the under ply
	Hem     string       `json:"hem,omitzero"`
}

// A Frill is a ruffle and the edge it is gathered onto.
type Frill struct {
	Name string        `json:"name,omitzero"`
	Edge string        `json:"edge,omitzero"`
	Spec gather.Ruffle `json:"spec,omitzero"` // without its Strip.Edge, which Edge gives
}

// A Cuff is a cuff and the sleeve edge that is gathered into it.
type Cuff struct {
	Name string      `json:"name,omitzero"`
	Edge string      `json:"edge,omitzero"`
	Spec gather.Cuff `json:"spec,omitzero"` // without its Sleeve, which Edge gives
}

// A Row is a row of buttons and holes.
type Row struct {
	Name      string          `json:"name,omitzero"`
	Times     int             `json:"times,omitzero"` // how many such rows; default 1
	Drop      string          `json:"drop,omitzero"`
	Row       buttons.Row     `json:"row,omitzero"`
	Setting   buttons.Setting `json:"setting,omitzero"`
	Lap       units.Length    `json:"lap,omitzero"`       // from the line of the buttons to the edge they close over
	Topstitch units.Length    `json:"topstitch,omitzero"` // a row of topstitching, from the same edge
}

// A Tin is the buttons there are, all alike.
type Tin struct {
	Have      int          `json:"have,omitzero"`
	Diameter  units.Length `json:"diameter,omitzero"`
	Thickness units.Length `json:"thickness,omitzero"`
	Months    int          `json:"months,omitzero"` // age of the wearer in months, for the cautions
}

// A Piece is a pattern piece as a rectangle between its drafted seam lines, and
// what lies along its sides. The allowances as cut are added.
type Piece struct {
	Name    string       `json:"name,omitzero"`
	Wide    units.Length `json:"wide,omitzero"`
	Long    units.Length `json:"long,omitzero"`
	Count   int          `json:"count,omitzero"`
	Pair    bool         `json:"pair,omitzero"` // left and right: every other copy is cut with the pattern face down
	Turn    layout.Turn  `json:"turn,omitzero"`
	Sides   []string     `json:"sides,omitzero"`   // the seams along its two sides; the same name twice for both
	Ends    []string     `json:"ends,omitzero"`    // the seams at its top and bottom
	Upper   []string     `json:"upper,omitzero"`   // the seams of which it is the upper ply; needed where the plies are cut unlike
	Under   []string     `json:"under,omitzero"`   // the seams of which it is the under ply; in both where it is sewn to itself, the left-hand side or the top being the upper
	Hem     string       `json:"hem,omitzero"`     // the hem at its bottom
	Outline []Corner     `json:"outline,omitzero"` // its corners in order, top at the cut end; none: a rectangle
}

// A Corner is a corner of a piece as drafted, on its seam lines, and what cuts it
// larger: the seams or hems whose allowance as cut lies to its left, to its right,
// above and below. Between two corners the cutting line is straight.
type Corner struct {
	X     units.Length `json:"x,omitzero" noun:"zero"` // from the left-hand side of the piece between its seam lines; zero is an answer
	Y     units.Length `json:"y,omitzero" noun:"zero"` // from its top; zero is an answer
	Left  string       `json:"left,omitzero"`
	Right string       `json:"right,omitzero"`
	Above string       `json:"above,omitzero"`
	Below string       `json:"below,omitzero"`
}

// A Place is where one copy of a piece lies in a lay of your own.
type Place struct {
	Piece  string       `json:"piece,omitzero"`
	Copy   int          `json:"copy,omitzero"` // from 1
	Across bool         `json:"across,omitzero"`
	X      units.Length `json:"x,omitzero" noun:"zero"` // from the inner edge of the left-hand selvedge; zero is an answer
	Y      units.Length `json:"y,omitzero" noun:"zero"` // from the squared end; zero is an answer
}

// A Note is a line of text under a heading.
type Note struct {
	Head string `json:"head,omitzero"`
	Text string `json:"text,omitzero"`
}

// A Task is one numbered operation of the work ticket. It takes its steps from
// the part that it names, if any, between its own steps before and after.
type Task struct {
	Title  string   `json:"title,omitzero"`
	Wash   bool     `json:"wash,omitzero"`   // the cloth is washed: measure it after
	Swatch string   `json:"swatch,omitzero"` // the seam to be tried on a swatch
	Lay    bool     `json:"lay,omitzero"`    // the pieces are laid and cut
	Before []Step   `json:"before,omitzero"`
	Seams  []string `json:"seams,omitzero"`
	Frill  string   `json:"frill,omitzero"`
	Cuff   string   `json:"cuff,omitzero"`
	Hem    string   `json:"hem,omitzero"`
	Row    string   `json:"row,omitzero"`
	After  []Step   `json:"after,omitzero"`
	Check  []Gauge  `json:"check,omitzero"`
}

// A Step is a step of your own.
type Step struct {
	Do    string       `json:"do,omitzero"`
	Right bool         `json:"right,omitzero"` // right sides together
	Wrong bool         `json:"wrong,omitzero"` // wrong sides together
	At    units.Length `json:"at,omitzero"`
	From  string       `json:"from,omitzero"`
	Trim  units.Length `json:"trim,omitzero"`
	Press string       `json:"press,omitzero"`
	Note  string       `json:"note,omitzero"`
}

// A Gauge is what must measure what after a task: an edge, a drop, or a length
// of your own.
type Gauge struct {
	Edge string       `json:"edge,omitzero"`
	Drop string       `json:"drop,omitzero"`
	What string       `json:"what,omitzero"`
	Want units.Length `json:"want,omitzero"`
	Mend string       `json:"mend,omitzero"` // what to do if it is out; for an edge the seams say it
}

//go:embed shirt.json
var shirt []byte

// Default is the garment of the example: a shirt for a village theatre.
func Default() (Garment, error) { return Read(bytes.NewReader(shirt)) }

// Read reads a garment from JSON, as [noun.Read] does.
func Read(r io.Reader) (g Garment, err error) {
	err = noun.Read(r, &g)
	return g, err
}
