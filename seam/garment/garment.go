package garment

import (
	"example.com/clothyard/hem"
	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
	"example.com/clothyard/yardage/layout"
)

// Bounds of a garment file.
const (
	Version = 1   // the form of the file
	MaxList = 200 // most entries of one list
)

// A Garment is a garment as its pattern draws it, and what is sewn otherwise. Seams,
// hems and parts share one name space; pieces and edges have each their own.
type Garment struct {
	// Version is the form of the file, 1.
	Version int `json:"version,omitzero"`
	// Like is the starter that this garment is merged over. May be omitted.
	Like string `json:"like,omitzero"`
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Title is what it is.
	Title string `json:"title,omitzero"`
	// Scene is for whom or for what it is made. May be omitted.
	Scene string `json:"scene,omitzero"`

	// Cloths are the cloths there are, as they are once washed, by what they are: outer,
	// lining, contrast, stiffening. May be omitted; nothing is then laid.
	Cloths noun.Map[layout.Cloth] `json:"cloths,omitzero"`
	// Pieces are the pattern pieces.
	Pieces noun.Map[Piece] `json:"pieces,omitzero"`
	// Seams are the seams as the pattern draws them.
	Seams noun.Map[Seam] `json:"seams,omitzero"`
	// Hems are the hems as the pattern draws them.
	Hems noun.Map[Hem] `json:"hems,omitzero"`
	// Edges are the stitching lines that seams cross, each of them whole.
	Edges noun.Map[Edge] `json:"edges,omitzero"`
	// Pairs are the edges that are sewn together.
	Pairs []Pair `json:"pairs,omitzero"`
	// Parts are what else is made or set, such as rows of buttons, ruffles and zips.
	Parts noun.Map[Part] `json:"parts,omitzero"`
	// Order is the work in the order given. May be omitted; the default follows from
	// what encloses what.
	Order []Task `json:"order,omitzero"`
	// Care is what can hurt the wearer.
	Care []ticket.Caution `json:"care,omitzero"`

	// Changes are what is sewn otherwise, by the names of seams, hems and parts.
	Changes noun.Map[Change] `json:"changes,omitzero"`
	// Remedies are those chosen, by their names, in the order in which they are applied.
	Remedies []string `json:"remedies,omitzero"`
	// Done is what cannot be changed any more: cut, and the names of what is sewn.
	Done []string `json:"done,omitzero"`
	// Measured are the lengths of edges as they came out.
	Measured noun.Map[units.Length] `json:"measured,omitzero"`
}

// A Piece is a pattern piece.
type Piece struct {
	// Cut is how many are cut. May be omitted; the default is 1.
	Cut int `json:"cut,omitzero"`
	// Mirrored says that every second one is cut with the pattern face down.
	Mirrored bool `json:"mirrored,omitzero"`
	// Fold says that it is cut on the fold.
	Fold bool `json:"fold,omitzero"`
	// Grain is the direction of its lengthwise threads.
	Grain Grain `json:"grain,omitzero"`
	// Cloth is what it is cut from. May be omitted; the default is the outer cloth.
	Cloth Cloth `json:"cloth,omitzero"`
	// Interfaced is how many are interfaced. May be omitted; the default is none.
	Interfaced int `json:"interfaced,omitzero"`
	// Wide is its width between its seam lines. May be omitted where it is not laid, and
	// where there is an outline.
	Wide units.Length `json:"wide,omitzero"`
	// Long is its length between its seam lines, along the grain. May be omitted as Wide.
	Long units.Length `json:"long,omitzero"`
	// Outline are its corners on its seam lines, in order, the fold first where it is cut
	// on one. May be omitted; the piece is then a rectangle.
	Outline []layout.Point `json:"outline,omitzero"`
	// Along are the seams and hems along its sides, from each corner to the next; of a
	// rectangle the near one, right, far, left. Their allowances as cut are added. An
	// empty text is a side that is cut as drawn. May be omitted; all are.
	Along []string `json:"along,omitzero"`
	// Turn is how it may be turned on the cloth. May be omitted; it then lies as drawn.
	Turn layout.Turn `json:"turn,omitzero"`
}

// Both is a length for each tape: what a pattern in inches has, and what a metric one.
type Both struct {
	// Inch is the length in a pattern of inches.
	Inch units.Length `json:"inch,omitzero"`
	// Metric is the length in a metric pattern.
	Metric units.Length `json:"metric,omitzero"`
}

// of is the length of a tape.
func (b Both) of(tape units.Tape) units.Length { return tape.Of(b.Inch, b.Metric) }

// A Seam is a seam as the pattern draws it. A left and a right one are one seam.
type Seam struct {
	// Times is how many there are. May be omitted; the default is 1.
	Times int `json:"times,omitzero"`
	// Joins are the pieces that it joins, the upper ply first.
	Joins []string `json:"joins,omitzero"`
	// Allowance is what the pattern draws. May be omitted; the default is 5/8 in, or
	// 1.5 cm on a metric tape.
	Allowance Both `json:"allowance,omitzero"`
	// Sewn is how the pattern has it sewn. May be omitted; the default is a plain seam.
	Sewn seam.Any `json:"sewn,omitzero"`
	// Press is which way it is pressed.
	Press string `json:"press,omitzero"`
}

// A Hem is a hem as the pattern draws it.
type Hem struct {
	// On are the pieces along which it runs.
	On []string `json:"on,omitzero"`
	// Allowance is what the pattern draws.
	Allowance Both `json:"allowance,omitzero"`
	// Sewn is how the pattern has it hemmed. May be omitted; the default is a double hem.
	Sewn hem.Any `json:"sewn,omitzero"`
}

// An Edge is a stitching line: a neck, an armhole, the top of a skirt. It is the whole
// line as sewn, both halves of it.
type Edge struct {
	// Net is its drafted length between the drafted seam lines. May be omitted; what
	// changes is then told without it.
	Net units.Length `json:"net,omitzero"`
	// Ring says that it is closed and has no ends.
	Ring bool `json:"ring,omitzero"`
	// On are the pieces along which it runs, in order.
	On []string `json:"on,omitzero"`
	// Crossed are the seams and hems that cross it, or that end it, by their names.
	Crossed noun.Map[Crossing] `json:"crossed,omitzero"`
	// Own is the seam along the edge itself. May be omitted where none moves it.
	Own string `json:"own,omitzero"`
	// Turn is how far the line turns in all: positive where it bulges
	// outward, negative where it is hollow. May be omitted; the default is a straight
	// line, whose length no change of its own seam moves.
	Turn units.Angle `json:"turn,omitzero" noun:"zero"`
}

// A Crossing is how a seam or a hem crosses an edge.
type Crossing struct {
	// Times is how many times it crosses. May be omitted; the default is 1.
	Times int `json:"times,omitzero"`
	// Plies is how many plies of the edge are in it each time: 2 where two pieces of the
	// edge are joined, 1 where it closes an end. May be omitted; the default is 2.
	Plies int `json:"plies,omitzero"`
	// Ply is which ply of the seam the edge is, where plies is 1. May be omitted; the
	// default is the upper one.
	Ply edge.Ply `json:"ply,omitzero"`
	// Slant is the angle between the edge and the seam. May be omitted; the seam is then
	// square to the edge.
	Slant units.Angle `json:"slant,omitzero"`
}

// A Pair is two edges that are sewn together.
type Pair struct {
	// Long is the edge that may be the longer one.
	Long string `json:"long,omitzero"`
	// Short is the edge that it goes onto.
	Short string `json:"short,omitzero"`
	// How is how the longer one goes onto the other. May be omitted; the default is equal.
	How How `json:"how,omitzero"`
	// MaxEase is the most that the longer one may be longer, as a share of the other, and
	// be eased in. May be omitted; the default is what the pattern drew.
	MaxEase units.Given[units.Ratio] `json:"maxEase,omitzero"`
}

// A Part is something made or set that is no seam and no hem.
type Part struct {
	// Noun is the sum that plans it, as in gather.ruffle. May be omitted for a part that
	// is only named in the order of work.
	Noun string `json:"noun,omitzero"`
	// On is the piece, the edge or the seam that it belongs to.
	On string `json:"on,omitzero"`
	// Times is how many there are. May be omitted; the default is 1.
	Times int `json:"times,omitzero"`
	// Takes are the fields of the sum that are an edge as sewn, or the length of a cloth
	// that its lay takes, by the name of the edge or of the cloth.
	Takes noun.Map[string] `json:"takes,omitzero"`
	// Spec are the fields of the sum.
	Spec noun.Patch `json:"spec,omitzero"`
}

// A Task is one operation of the work.
type Task struct {
	// Do is what is done.
	Do string `json:"do,omitzero"`
	// Sews are the seams, hems and parts that are sewn in it. The word cut says that the
	// cloth is laid and cut in it; else that is done after the first operation.
	Sews []string `json:"sews,omitzero"`
	// Check are the edges that are measured when it is done, while a wrong one still
	// costs a row of stitching only.
	Check []string `json:"check,omitzero"`
}

// A Change is what is sewn otherwise than the pattern says.
type Change struct {
	// Sewn are the fields of the seam or the hem that differ.
	Sewn noun.Patch `json:"sewn,omitzero"`
	// Part are the fields of the part that differ.
	Part noun.Patch `json:"part,omitzero"`
	// Meant says that the size is to change: partners follow, and no remedy undoes it.
	Meant bool `json:"meant,omitzero"`
}
