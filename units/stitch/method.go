package stitch

import (
	"iter"

	"example.com/clothyard/units/name"
)

// A Method is how thread is reckoned. Where it is not given it follows from the
// fields that are: [BySample] where one of the sample is given, else [ByGeometry]
// where a stitch length, a density, a thickness or a width is, else [ByRatio]. Which method reads which field of a [Thread]:
//
//	field                        ratio geometry sample
//	Ratio                          x
//	StitchLength PerInch                  x
//	Thickness Width                       x
//	Sample SampleNeedle SampleUnder                x
//	NeedleShare                    x      x
//
// A field that a method does not read must be zero.
type Method uint8

// The methods.
const (
	ByRatio    Method = iota + 1 // a number of lengths of thread to one of seam, from a table or the caller
	ByGeometry                   // the path of the thread through cloth of a thickness, by a printed formula
	BySample                     // the thread unpicked from a sewn sample
)

var methodNames = name.Of[Method]("method", "none", "ratio", "geometry", "sample")

// String is the name of the method.
func (m Method) String() string { return methodNames.String(m) }

// MarshalText is the name of the method.
func (m Method) MarshalText() ([]byte, error) { return methodNames.Marshal(m) }

// UnmarshalText takes the name of a method.
func (m *Method) UnmarshalText(text []byte) error { return methodNames.Unmarshal(m, text) }

// Methods yields every method.
func Methods() iter.Seq[Method] { return methodNames.All() }
