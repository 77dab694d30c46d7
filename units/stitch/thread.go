package stitch

import (
	"fmt"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A Thread is a seam whose thread is reckoned. Zero means not given. Stitch and
// Seam are needed; what else is, [Method] says.
type Thread struct {
	Stitch Type         `json:"stitch,omitzero"` // the stitch type
	By     Method       `json:"by,omitzero"`     // how it is reckoned; follows from what else is given, else ByRatio
	Seam   units.Length `json:"seam,omitzero"`   // length of the row of stitching

	// Ratio is all the thread in a length of seam; default the first row of
	// [Type.Ratios], what was read before what is from memory. At least 1.
	Ratio units.Ratio `json:"ratio,omitzero"`

	StitchLength units.Length `json:"stitchLength,omitzero"` // length of one stitch; from PerInch if that is given
	PerInch      units.Ratio  `json:"perInch,omitzero"`      // stitches to the inch; from StitchLength if that is given
	Thickness    units.Length `json:"thickness,omitzero"`    // of all the plies together, as sewn
	Width        units.Length `json:"width,omitzero"`        // how wide an overedge stitch is; only where the formula reads it

	Sample       units.Length `json:"sample,omitzero"`       // length of seam in the sample
	SampleNeedle units.Length `json:"sampleNeedle,omitzero"` // needle thread unpicked from it, all needles; at least Sample
	SampleUnder  units.Length `json:"sampleUnder,omitzero"`  // bobbin or looper thread unpicked from it; none for a stitch of one thread

	// NeedleShare is the part of the thread that is on the needle, above zero and
	// at most 1. Of one thread it is 1; else the default is the first row of
	// [Type.Ratios] that gives it. Where no row does, the thread is not split.
	NeedleShare units.Ratio `json:"needleShare,omitzero"`

	// Waste is what is added for ends, rethreading and seams sewn again, as a part
	// of the thread in the seam: at most 1, default 15 percent, see [WasteRows].
	// The figures without it are in the plan too.
	Waste units.Ratio `json:"waste,omitzero"`
}

// A ThreadPlan is the thread of a seam. It is comparable.
type ThreadPlan struct {
	Spec    Thread   `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields of Spec filled with a default

	PerLength units.Ratio  `json:"perLength,omitzero"` // all the thread in a length of seam, waste apart
	Total     units.Length `json:"total,omitzero"`     // all the thread in the seam, waste apart
	Split     bool         `json:"split,omitzero"`     // whether it is known how the thread divides; if not, the needle and under figures are zero
	Needle    units.Length `json:"needle,omitzero"`    // needle thread in the seam, waste apart
	Under     units.Length `json:"under,omitzero"`     // bobbin or looper thread in the seam, waste apart

	Need       units.Length `json:"need,omitzero"`       // Total and the waste: what to have
	NeedleNeed units.Length `json:"needleNeed,omitzero"` // Needle and the waste
	UnderNeed  units.Length `json:"underNeed,omitzero"`  // Under and the waste
}

// method is how the thread is reckoned, given or from what else is.
func (t Thread) method() Method {
	switch {
	case t.By != NoMethod:
		return t.By
	case !t.Sample.IsZero() || !t.SampleNeedle.IsZero() || !t.SampleUnder.IsZero():
		return BySample
	case !t.StitchLength.IsZero() || !t.PerInch.IsZero() || !t.Thickness.IsZero() || !t.Width.IsZero():
		return ByGeometry
	}
	return ByRatio
}

// Plan works out the thread. The faults are [fault.Faults].
func (t Thread) Plan() (ThreadPlan, error) {
	var a fault.Audit
	by := t.method()
	t.check(&a, by)
	if a.Failed() {
		return ThreadPlan{}, a.Err()
	}
	p := ThreadPlan{}
	if t.By == NoMethod && by == ByRatio && t.Ratio.IsZero() {
		p.Assumed = append(p.Assumed, "by")
	}
	t.By = by
	switch by {
	case ByRatio:
		if t.Ratio.IsZero() {
			t.Ratio = t.Stitch.ratio()
			p.Assumed = append(p.Assumed, "ratio")
		}
		p.PerLength = t.Ratio
	case ByGeometry:
		if t.StitchLength.IsZero() {
			t.StitchLength = inch(t.PerInch)
		}
		t.PerInch = units.Inch.Of(1).Div(t.StitchLength)
		f, _ := t.Stitch.Formula()
		through := t.Thickness.MulInt(int64(f.Thick)).Add(t.Width.MulInt(int64(f.Wide)))
		p.PerLength = through.Div(t.StitchLength).Add(units.RatioOf(int64(f.Fixed), 1))
	default:
		p.PerLength = t.SampleNeedle.Add(t.SampleUnder).Div(t.Sample)
	}
	if by != BySample && t.NeedleShare.IsZero() {
		if t.NeedleShare, _ = t.Stitch.share(); !t.NeedleShare.IsZero() && !t.Stitch.oneThread() {
			p.Assumed = append(p.Assumed, "needleShare")
		}
	}
	if t.Waste.IsZero() {
		t.Waste = usualWaste()
		p.Assumed = append(p.Assumed, "waste")
	}
	p.Spec = t
	p.Total = t.Seam.Scale(p.PerLength)
	with := all.Add(t.Waste)
	switch {
	case by == BySample:
		p.Split, p.Needle = true, t.Seam.Scale(t.SampleNeedle.Div(t.Sample))
	case !t.NeedleShare.IsZero():
		p.Split, p.Needle = true, p.Total.Scale(t.NeedleShare)
	}
	if p.Split {
		p.Under = p.Total.Sub(p.Needle)
	}
	p.Need, p.NeedleNeed, p.UnderNeed = p.Total.Scale(with), p.Needle.Scale(with), p.Under.Scale(with)
	return p, nil
}

// check looks for every fault, in the order of the fields.
func (t Thread) check(a *fault.Audit, by Method) {
	formula, hasFormula := t.Stitch.Formula()
	switch {
	case t.Stitch == NoType:
		a.Fault("stitch", "", typeNames.List(), fault.Missing)
	case !t.Stitch.Valid():
		a.Fault("stitch", t.Stitch.String(), typeNames.List(), fault.Unknown)
	case by == ByGeometry && !hasFormula:
		a.Fault("stitch", t.Stitch.String(), "one of 101, 301, 401, 504, for which a formula is printed", fault.Unknown)
	}
	if t.By != 0 && !methodNames.Valid(t.By) {
		a.Fault("by", t.By.String(), methodNames.List(), fault.Unknown)
	}
	a.Need("seam", t.Seam)
	ratio, geometry, sample := by == ByRatio, by == ByGeometry, by == BySample
	switch {
	case !ratio:
		unusedRatio(a, "ratio", t.Ratio, by)
	case t.Ratio.IsZero():
		if t.Stitch.Valid() && t.Stitch.ratio().IsZero() {
			a.Fault("ratio", "", "1 or more: no row of the table gives one for "+t.Stitch.String(), fault.Missing)
		}
	case t.Ratio.Less(all):
		a.Fault("ratio", t.Ratio.String(), "1 or more: the thread is as long as the seam at least", fault.Range)
	}
	if geometry {
		t.checkGeometry(a, formula)
	} else {
		unusedLength(a, "stitchLength", t.StitchLength, by)
		unusedRatio(a, "perInch", t.PerInch, by)
		unusedLength(a, "thickness", t.Thickness, by)
		unusedLength(a, "width", t.Width, by)
	}
	switch {
	case !sample:
		unusedLength(a, "sample", t.Sample, by)
		unusedLength(a, "sampleNeedle", t.SampleNeedle, by)
		unusedLength(a, "sampleUnder", t.SampleUnder, by)
	default:
		a.Need("sample", t.Sample)
		a.Need("sampleNeedle", t.SampleNeedle)
		if t.SampleNeedle.Sign() > 0 && t.SampleNeedle.Less(t.Sample) {
			a.Fault("sampleNeedle", t.SampleNeedle.String(), "at least "+t.Sample.String()+" (sample)", fault.Range)
		}
		if t.Stitch.oneThread() {
			unusedLength(a, "sampleUnder", t.SampleUnder, t.Stitch)
		} else {
			a.Need("sampleUnder", t.SampleUnder)
		}
	}
	switch {
	case sample:
		unusedRatio(a, "needleShare", t.NeedleShare, by)
	case t.NeedleShare.Sign() < 0 || all.Less(t.NeedleShare):
		a.Fault("needleShare", t.NeedleShare.String(), "more than 0, at most 1", fault.Range)
	case t.Stitch.oneThread() && !t.NeedleShare.IsZero() && t.NeedleShare != all:
		a.Fault("needleShare", t.NeedleShare.String(), "1 (a stitch of one thread)", fault.Conflict)
	}
	if t.Waste.Sign() < 0 || all.Less(t.Waste) {
		a.Fault("waste", t.Waste.String(), "0 to 1, as 15 %", fault.Range)
	}
}

func (t Thread) checkGeometry(a *fault.Audit, formula FormulaRow) {
	a.NotNegative("stitchLength", t.StitchLength)
	switch {
	case t.StitchLength.IsZero() && t.PerInch.IsZero():
		a.Fault("stitchLength", "", "more than 0 in, or perInch", fault.Missing)
	case t.PerInch.Sign() < 0:
		notNegative(a, "perInch", t.PerInch)
	case t.StitchLength.Sign() > 0 && !t.PerInch.IsZero() && inch(t.PerInch) != t.StitchLength:
		a.Fault("perInch", t.PerInch.String(), units.Inch.Of(1).Div(t.StitchLength).String()+" (what stitchLength gives)", fault.Conflict)
	}
	a.Need("thickness", t.Thickness)
	if formula.Wide > 0 {
		a.Need("width", t.Width)
	} else {
		unusedLength(a, "width", t.Width, t.Stitch)
	}
}

// unusedLength and unusedRatio record a field that is given though what says so
// does not read it. The value is put in an interface only then.
func unusedLength(a *fault.Audit, path string, l units.Length, by fmt.Stringer) {
	if !l.IsZero() {
		a.Unused(path, l, false, by)
	}
}

func unusedRatio(a *fault.Audit, path string, r units.Ratio, by fmt.Stringer) {
	if !r.IsZero() {
		a.Unused(path, r, false, by)
	}
}
