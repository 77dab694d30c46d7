package units_test

import (
	"math"
	"math/big"

	"github.com/shopspring/decimal"
)

// The rivals of the benchmarks: the same work done with big.Rat, with decimals of a
// millimetre and with float64 inches. Floating point is used here and nowhere else.

const rivalN = 1024

type rivalSet struct {
	rats     [rivalN]*big.Rat
	decimals [rivalN]decimal.Decimal
	floats   [rivalN]float64
}

func roundFloat(v, step float64) float64 { return math.Round(v/step) * step }

func roundRat(v, step *big.Rat) *big.Rat {
	q := new(big.Rat).Quo(v, step)
	n := new(big.Int).Lsh(q.Num(), 1)
	n.Add(n, q.Denom())
	n.Div(n, new(big.Int).Lsh(q.Denom(), 1))
	return q.Mul(q.SetInt(n), step)
}

func roundDecimal(v, step decimal.Decimal) decimal.Decimal { return v.Div(step).Round(0).Mul(step) }
