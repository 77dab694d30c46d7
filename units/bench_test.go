package units_test

import (
	"math/big"
	"strconv"
	"testing"

	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
)

// The benchmarks set each operation beside its rivals: rep=length is this package.
// Compare within one run only; .ci/ratios prints the ratios.

var (
	lengths   [rivalN]units.Length
	fractions [rivalN]units.Length
	rivals    = makeRivals()
	partsRat  [rivalN]*big.Rat

	sinkLength  units.Length
	sinkRat     *big.Rat
	sinkDecimal decimal.Decimal
	sinkFloat   float64
	sinkInt     int
)

// makeRivals fills the arrays with eighths and millimetres, and with thirds and sevenths.
func makeRivals() (s rivalSet) {
	for i := range rivalN {
		k := int64(i%97 + 1)
		if i%2 == 0 {
			lengths[i] = units.Inch.Frac(k, 8)
			s.floats[i] = float64(k) / 8
		} else {
			lengths[i] = units.Millimetre.Of(k)
			s.floats[i] = float64(k) / 25.4
		}
		s.rats[i] = ratOf(lengths[i])
		mm := lengths[i].In(units.Millimetre).Rat()
		s.decimals[i] = decimal.NewFromBigInt(mm.Num(), 0).Div(decimal.NewFromBigInt(mm.Denom(), 0))
		fractions[i] = units.Inch.Frac(k, int64(3+4*(i%2)))
		partsRat[i] = ratOf(fractions[i])
	}
	return s
}

const mask = rivalN - 1

// each runs an operation on neighbours in the arrays.
func each(b *testing.B, rep string, f func(i, j int)) {
	b.Run("rep="+rep, func(b *testing.B) {
		b.ReportAllocs()
		i := 0
		for b.Loop() {
			f(i&mask, (i+1)&mask)
			i++
		}
	})
}

func BenchmarkAdd(b *testing.B) {
	b.Run("rep=length", func(b *testing.B) {
		b.ReportAllocs()
		var v units.Length
		for i := 0; b.Loop(); i++ {
			v = lengths[i&mask].Add(lengths[(i+1)&mask])
		}
		sinkLength = v
	})
	each(b, "bigrat", func(i, j int) { sinkRat = new(big.Rat).Add(rivals.rats[i], rivals.rats[j]) })
	each(b, "decimal", func(i, j int) { sinkDecimal = rivals.decimals[i].Add(rivals.decimals[j]) })
	b.Run("rep=float64", func(b *testing.B) {
		v := 0.0
		for i := 0; b.Loop(); i++ {
			v = rivals.floats[i&mask] + rivals.floats[(i+1)&mask]
		}
		sinkFloat = v
	})
}

func BenchmarkSub(b *testing.B) {
	b.Run("rep=length", func(b *testing.B) {
		b.ReportAllocs()
		var v units.Length
		for i := 0; b.Loop(); i++ {
			v = lengths[i&mask].Sub(lengths[(i+1)&mask])
		}
		sinkLength = v
	})
	each(b, "bigrat", func(i, j int) { sinkRat = new(big.Rat).Sub(rivals.rats[i], rivals.rats[j]) })
	each(b, "decimal", func(i, j int) { sinkDecimal = rivals.decimals[i].Sub(rivals.decimals[j]) })
	b.Run("rep=float64", func(b *testing.B) {
		v := 0.0
		for i := 0; b.Loop(); i++ {
			v = rivals.floats[i&mask] - rivals.floats[(i+1)&mask]
		}
		sinkFloat = v
	})
}

func BenchmarkMulInt(b *testing.B) {
	seven, dseven := big.NewRat(7, 1), decimal.NewFromInt(7)
	b.Run("rep=length", func(b *testing.B) {
		b.ReportAllocs()
		var v units.Length
		for i := 0; b.Loop(); i++ {
			v = lengths[i&mask].MulInt(7)
		}
		sinkLength = v
	})
	each(b, "bigrat", func(i, _ int) { sinkRat = new(big.Rat).Mul(rivals.rats[i], seven) })
	each(b, "decimal", func(i, _ int) { sinkDecimal = rivals.decimals[i].Mul(dseven) })
	b.Run("rep=float64", func(b *testing.B) {
		v := 0.0
		for i := 0; b.Loop(); i++ {
			v = rivals.floats[i&mask] * 7
		}
		sinkFloat = v
	})
}

func BenchmarkDivInt(b *testing.B) {
	seven, dseven := big.NewRat(7, 1), decimal.NewFromInt(7)
	b.Run("rep=length", func(b *testing.B) {
		b.ReportAllocs()
		var v units.Length
		for i := 0; b.Loop(); i++ {
			v = lengths[i&mask].DivInt(7)
		}
		sinkLength = v
	})
	each(b, "bigrat", func(i, _ int) { sinkRat = new(big.Rat).Quo(rivals.rats[i], seven) })
	each(b, "decimal", func(i, _ int) { sinkDecimal = rivals.decimals[i].Div(dseven) })
	b.Run("rep=float64", func(b *testing.B) {
		v := 0.0
		for i := 0; b.Loop(); i++ {
			v = rivals.floats[i&mask] / 7
		}
		sinkFloat = v
	})
}

func BenchmarkCmp(b *testing.B) {
	b.Run("rep=length", func(b *testing.B) {
		b.ReportAllocs()
		n := 0
		for i := 0; b.Loop(); i++ {
			n += lengths[i&mask].Cmp(lengths[(i+1)&mask])
		}
		sinkInt += n
	})
	each(b, "bigrat", func(i, j int) { sinkInt += rivals.rats[i].Cmp(rivals.rats[j]) })
	each(b, "decimal", func(i, j int) { sinkInt += rivals.decimals[i].Cmp(rivals.decimals[j]) })
}

// BenchmarkAddFractions adds thirds and sevenths; decimals cannot.
func BenchmarkAddFractions(b *testing.B) {
	each(b, "length", func(i, j int) { sinkLength = fractions[i].Add(fractions[j]) })
	each(b, "bigrat", func(i, j int) { sinkRat = new(big.Rat).Add(partsRat[i], partsRat[j]) })
}

func BenchmarkSum(b *testing.B) {
	b.Run("n=1000", func(b *testing.B) {
		each(b, "length", func(int, int) { sinkLength = units.Sum(lengths[:1000]...) })
		each(b, "bigrat", func(int, int) {
			s := new(big.Rat)
			for _, v := range rivals.rats[:1000] {
				s = new(big.Rat).Add(s, v)
			}
			sinkRat = s
		})
		each(b, "decimal", func(int, int) {
			var s decimal.Decimal
			for _, v := range rivals.decimals[:1000] {
				s = s.Add(v)
			}
			sinkDecimal = s
		})
		each(b, "float64", func(int, int) {
			s := 0.0
			for _, v := range rivals.floats[:1000] {
				s += v
			}
			sinkFloat = s
		})
	})
}

// BenchmarkSumLoop adds the same thousand one by one.
func BenchmarkSumLoop(b *testing.B) {
	each(b, "length", func(int, int) {
		var s units.Length
		for i := range lengths[:1000] {
			s = s.Add(lengths[i])
		}
		sinkLength = s
	})
	each(b, "float64", func(int, int) {
		s := 0.0
		for i := range rivals.floats[:1000] {
			s += rivals.floats[i]
		}
		sinkFloat = s
	})
}

// BenchmarkMarks puts 7 marks on a span, each to a sixteenth: in 6 gaps of whole
// units and in 13, which are none.
func BenchmarkMarks(b *testing.B) {
	for _, c := range []struct {
		name, span string
		gaps       int
	}{{"whole", "23 5/8 in", 6}, {"thirteenths", "23 1/2 in", 13}} {
		b.Run("gaps="+c.name, func(b *testing.B) {
			span, step := units.MustParse(c.span), units.MustParse("1/16 in")
			rspan, rstep := ratOf(span), ratOf(step)
			mm := span.In(units.Millimetre).Rat()
			dspan, dstep := decimal.NewFromBigInt(mm.Num(), 0).Div(decimal.NewFromBigInt(mm.Denom(), 0)), decimal.RequireFromString("1.5875")
			fspan, _ := span.In(units.Inch).Rat().Float64()
			each(b, "length", func(int, int) {
				n := 0
				for mark := range units.Marks(span, c.gaps, step, units.HalfAway) {
					sinkLength = mark
					if n++; n == 7 {
						break
					}
				}
			})
			each(b, "bigrat", func(int, int) {
				for k := range int64(7) {
					sinkRat = roundRat(new(big.Rat).Mul(rspan, big.NewRat(k, int64(c.gaps))), rstep)
				}
			})
			each(b, "decimal", func(int, int) {
				for k := range int64(7) {
					sinkDecimal = roundDecimal(dspan.Mul(decimal.NewFromInt(k)).Div(decimal.NewFromInt(int64(c.gaps))), dstep)
				}
			})
			each(b, "float64", func(int, int) {
				for k := range 7 {
					sinkFloat = roundFloat(fspan*float64(k)/float64(c.gaps), 1.0/16)
				}
			})
		})
	}
}

// BenchmarkParse reads 1 5/8 in; the rivals read the bare number.
func BenchmarkParse(b *testing.B) {
	each(b, "length", func(int, int) { sinkLength, _ = units.Parse("1 5/8 in") })
	each(b, "bigrat", func(int, int) { sinkRat, _ = new(big.Rat).SetString("13/8") })
	each(b, "decimal", func(int, int) { sinkDecimal, _ = decimal.NewFromString("41.275") })
	each(b, "float64", func(int, int) { sinkFloat, _ = strconv.ParseFloat("41.275", 64) })
}

func BenchmarkAppend(b *testing.B) {
	buf := make([]byte, 0, 64)
	var note units.Notation
	each(b, "length", func(i, _ int) { buf, sinkLength = note.Append(buf[:0], lengths[i]) })
	each(b, "float64", func(i, _ int) { buf = strconv.AppendFloat(buf[:0], rivals.floats[i], 'g', -1, 64) })
}

// BenchmarkFormat reads to a sixteenth and writes; the rational does so too, the others
// write what they have.
func BenchmarkFormat(b *testing.B) {
	var note units.Notation
	sixteenth, inch := ratOf(units.Inch.Frac(1, 16)), ratOf(units.Inch.Of(1))
	text := ""
	each(b, "length", func(i, _ int) { text, sinkLength = note.Format(lengths[i]) })
	each(b, "bigrat", func(i, _ int) {
		mark := roundRat(rivals.rats[i], sixteenth)
		text = mark.Quo(mark, inch).RatString()
	})
	each(b, "decimal", func(i, _ int) { text = rivals.decimals[i].String() })
	each(b, "float64", func(i, _ int) { text = strconv.FormatFloat(rivals.floats[i], 'g', -1, 64) })
	sinkInt += len(text)
}

// BenchmarkWide adds beyond 64 bits, where this package is the slower.
func BenchmarkWide(b *testing.B) {
	wide := lengthOf(new(big.Rat).SetInt(new(big.Int).Lsh(big.NewInt(1), 70)))
	rat := ratOf(wide)
	each(b, "length", func(i, _ int) { sinkLength = wide.Add(lengths[i]) })
	each(b, "bigrat", func(i, _ int) { sinkRat = new(big.Rat).Add(rat, rivals.rats[i]) })
}
