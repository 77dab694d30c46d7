package stitch

import "example.com/clothyard/units/ticket"

// A Method is how thread is reckoned. The zero value, [NoMethod], is not given:
// the method then follows from the fields that are, [BySample] where one of the
// sample is given, else [ByGeometry] where a stitch length, a density, a thickness
// or a width is, else [ByRatio]. Which method reads which field of a [Thread]:
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
	NoMethod   Method = iota // not given
	ByRatio                  // so many lengths of thread to one of seam, from a table or the caller
	ByGeometry               // the path of the thread through cloth of a thickness, by a printed formula
	BySample                 // the thread unpicked from a sewn sample
)

var methodNames = [...]string{"none", "ratio", "geometry", "sample"}

// String is the name of the method; none for [NoMethod].
func (m Method) String() string { return ticket.NameOf(m, methodNames[:], "Method") }

// MarshalText is the name of the method, empty for [NoMethod].
func (m Method) MarshalText() ([]byte, error) { return ticket.NameText(m, methodNames[:], "Method") }

// UnmarshalText takes the name of a method. Empty text is [NoMethod].
func (m *Method) UnmarshalText(text []byte) error {
	return ticket.ReadName(m, text, methodNames[:], "Method")
}

// Methods yields every method, [NoMethod] excepted.
func Methods(yield func(Method) bool) {
	for m := ByRatio; m <= BySample; m++ {
		if !yield(m) {
			return
		}
	}
}
