package edge

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// cosecant is 1 over the sine of the angle at which a seam crosses an edge: how long
// along the edge is what is 1 long square to the seam. It is exact where that is
// rational, as for a slope of 4 in 3.
func cosecant(slant units.Angle) (units.NearRatio, error) {
	one := units.RatioOf(1, 1)
	if slant.IsZero() {
		return units.ExactlyRatio(one), nil
	}
	if tan, err := slant.Tan(); err == nil {
		if r, ok := tan.Exact(); ok {
			return units.SqrtRatio(one.Add(one.Quo(r.Mul(r))))
		}
	}
	return units.ExactlyRatio(one).Quo(slant.Sin())
}

// slanted checks the angle at which a seam crosses an edge.
func slanted(a *fault.Audit, path string, slant units.Angle) units.NearRatio {
	above, err1 := slant.Cmp(units.Angle{})
	below, err2 := slant.Cmp(units.Degrees(units.RatioOf(180, 1)))
	if !slant.IsZero() && (err1 != nil || err2 != nil || above < 0 || below >= 0) {
		kind := fault.Range
		if above < 0 {
			kind = fault.Sign
		}
		a.Fault(path, slant.String(), "more than 0 deg and less than 180 deg", kind)
		return units.NearRatio{}
	}
	c, err := cosecant(slant)
	if err != nil {
		a.Fault(path, slant.String(), "an angle of fewer places", fault.KindOf(err))
	}
	return c
}
