package stitch

import (
	"iter"

	"example.com/clothyard/units/name"
)

// A Job is what a row of stitching is for.
type Job uint8

// The jobs that the tables have densities for.
const (
	Regular      Job = iota + 1 // the seams of a garment
	Basting                     // rows that are taken out again
	Easing                      // rows that draw in a little fullness
	Staystitch                  // rows that keep an edge from stretching
	Reinforce                   // short stitches at corners and points
	Topstitch                   // rows that show
	FineStitch                  // fine stitching, as of handkerchiefs
	Placket                     // the point of a placket
	Piecing                     // patchwork
	OveredgeSeam                // overedge stitches
	SafetySeam                  // safety stitches
	ShirtSeam                   // a uniform shirt
	TrouserSeam                 // uniform trousers
	CargoCover                  // covers, medium duty
	Webbing                     // webbing, heavy duty
	Bartack                     // bartacks
)

var jobNames = name.Of[Job]("job", "none", "regular", "basting", "easing", "staystitching", "reinforcing", "topstitching", "fine", "placket", "piecing", "overedge", "safety", "shirt", "trousers", "cargo-cover", "webbing", "bartack")

// String is the name of the job.
func (j Job) String() string { return jobNames.String(j) }

// MarshalText is the name of the job.
func (j Job) MarshalText() ([]byte, error) { return jobNames.Marshal(j) }

// UnmarshalText takes the name of a job.
func (j *Job) UnmarshalText(text []byte) error { return jobNames.Unmarshal(j, text) }

// Jobs yields every job.
func Jobs() iter.Seq[Job] { return jobNames.All() }

// A Cloth is a kind of cloth, by the names that the tables of needles and
// stitches use.
type Cloth uint8

// The cloths.
const (
	Sheer        Cloth = iota + 1 // sheers, chiffon, silks
	BlouseWeight                  // blouse-weight polyester, silk, batiste
	MediumWeight                  // cotton and rayon, blends
	BottomWeight                  // bottom weights: wool, corduroy
	Denim                         // denim, duck
	Canvas                        // canvas, tapestry
	BoatCanvas                    // canvas for boats
	Shirting                      // light shirting
	Brocade                       // brocade, challis, velvet
	Coating                       // heavy wool coating
	Suede                         // imitation suede
)

var clothNames = name.Of[Cloth]("cloth", "none", "sheer", "blouse-weight", "medium-weight", "bottom-weight", "denim", "canvas", "boat-canvas", "shirting", "brocade", "coating", "suede")

// String is the name of the cloth.
func (c Cloth) String() string { return clothNames.String(c) }

// MarshalText is the name of the cloth.
func (c Cloth) MarshalText() ([]byte, error) { return clothNames.Marshal(c) }

// UnmarshalText takes the name of a cloth.
func (c *Cloth) UnmarshalText(text []byte) error { return clothNames.Unmarshal(c, text) }

// Cloths yields every cloth.
func Cloths() iter.Seq[Cloth] { return clothNames.All() }

// weight is the printed class of cloth that a cloth of the table of needles is
// counted with in the table of densities: common practice.
func (c Cloth) weight() Cloth {
	switch c {
	case Sheer, BlouseWeight:
		return Sheer
	case BottomWeight, Denim, Canvas, BoatCanvas:
		return BottomWeight
	}
	return c
}

// needle is the first row of the table of needles for the cloth, and whether there
// is one; every cloth has one.
func (c Cloth) needle() (NeedleRow, bool) {
	return needleRows.First(func(r NeedleRow) bool { return c != 0 && r.Cloth == c })
}
