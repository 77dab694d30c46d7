package stitch

import (
	"iter"

	"example.com/clothyard/units/name"
)

// A Job is what a row of stitching is for. The zero value, [NoJob], is not given.
type Job uint8

// The jobs that the tables have densities for.
const (
	NoJob        Job = iota // not given
	Regular                 // the seams of a garment
	Basting                 // rows that are taken out again
	Easing                  // rows that draw in a little fullness
	Staystitch              // rows that keep an edge from stretching
	Reinforce               // short stitches at corners and points
	Topstitch               // rows that show
	FineStitch              // fine stitching, as of handkerchiefs
	Placket                 // the point of a placket
	Piecing                 // patchwork
	OveredgeSeam            // overedge stitches
	SafetySeam              // safety stitches
	ShirtSeam               // a uniform shirt
	TrouserSeam             // uniform trousers
	CargoCover              // covers, medium duty
	Webbing                 // webbing, heavy duty
	Bartack                 // bartacks
)

var jobNames = name.Of[Job]("job", "none", "regular", "basting", "easing", "staystitching", "reinforcing", "topstitching", "fine", "placket", "piecing", "overedge", "safety", "shirt", "trousers", "cargo-cover", "webbing", "bartack")

// String is the name of the job; none for [NoJob].
func (j Job) String() string { return jobNames.String(j) }

// MarshalText is the name of the job, empty for [NoJob].
func (j Job) MarshalText() ([]byte, error) { return jobNames.Marshal(j) }

// UnmarshalText takes the name of a job. Empty text is [NoJob].
func (j *Job) UnmarshalText(text []byte) error { return jobNames.Unmarshal(j, text) }

// Jobs yields every job, [NoJob] excepted.
func Jobs() iter.Seq[Job] { return jobNames.All() }

// Rows yields the densities printed for the job, the one that is the default
// first; a row for one cloth alone names it.
func (j Job) Rows() iter.Seq[DensityRow] {
	return func(yield func(DensityRow) bool) {
		for _, r := range densityRows {
			if j != NoJob && r.Job == j && !yield(r) {
				return
			}
		}
	}
}

// A Cloth is a kind of cloth, by the names that the tables of needles and
// stitches use. The zero value, [NoCloth], is not given.
type Cloth uint8

// The cloths.
const (
	NoCloth      Cloth = iota // not given
	Sheer                     // sheers, chiffon, silks
	BlouseWeight              // blouse-weight polyester, silk, batiste
	MediumWeight              // cotton and rayon, blends
	BottomWeight              // bottom weights: wool, corduroy
	Denim                     // denim, duck
	Canvas                    // canvas, tapestry
	BoatCanvas                // canvas for boats
	Shirting                  // light shirting
	Brocade                   // brocade, challis, velvet
	Coating                   // heavy wool coating
	Suede                     // imitation suede
)

var clothNames = name.Of[Cloth]("cloth", "none", "sheer", "blouse-weight", "medium-weight", "bottom-weight", "denim", "canvas", "boat-canvas", "shirting", "brocade", "coating", "suede")

// String is the name of the cloth; none for [NoCloth].
func (c Cloth) String() string { return clothNames.String(c) }

// MarshalText is the name of the cloth, empty for [NoCloth].
func (c Cloth) MarshalText() ([]byte, error) { return clothNames.Marshal(c) }

// UnmarshalText takes the name of a cloth. Empty text is [NoCloth].
func (c *Cloth) UnmarshalText(text []byte) error { return clothNames.Unmarshal(c, text) }

// Cloths yields every cloth, [NoCloth] excepted.
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

// Rows yields the densities printed for the cloth, for each job the one that is the
// default first; those of its seams have no job. A sheer and a blouse-weight cloth
// are counted as fine; bottom weights, denim and the canvases as heavy: common
// practice.
func (c Cloth) Rows() iter.Seq[DensityRow] {
	return func(yield func(DensityRow) bool) {
		for _, r := range densityRows {
			if c != NoCloth && r.Cloth == c.weight() && !yield(r) {
				return
			}
		}
	}
}

// Needle is the first row of the table of needles for the cloth, and whether there
// is one; every cloth has one.
func (c Cloth) Needle() (NeedleRow, bool) {
	for _, r := range needleRows {
		if c != NoCloth && r.Cloth == c {
			return r, true
		}
	}
	return NeedleRow{}, false
}
