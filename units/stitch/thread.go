package stitch

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A Thread is a seam whose thread is reckoned. Stitch and seam are needed; what else
// is, [Method] says.
type Thread struct {
	// Stitch is the stitch type.
	Stitch Type `json:"stitch,omitzero"`
	// By is how it is reckoned. May be omitted; it follows from what else is given, and
	// the default is ratio.
	By Method `json:"by,omitzero"`
	// Seam is the length of the row of stitching.
	Seam units.Length `json:"seam,omitzero"`
	// Ratio is all the thread in a length of seam, 1 or more. May be omitted; the default
	// is the first row of the table for the stitch.
	Ratio units.Ratio `json:"ratio,omitzero"`
	// StitchLength is the length of one stitch. May be omitted where perInch is given.
	StitchLength units.Length `json:"stitchLength,omitzero"`
	// PerInch is how many stitches lie in an inch. May be omitted where stitchLength is
	// given.
	PerInch units.Ratio `json:"perInch,omitzero"`
	// Thickness is that of all the plies together, as sewn.
	Thickness units.Length `json:"thickness,omitzero"`
	// Width is how wide an overedge stitch is. It is read only where the formula of the
	// stitch reads it.
	Width units.Length `json:"width,omitzero"`
	// Sample is the length of seam in a sewn sample.
	Sample units.Length `json:"sample,omitzero"`
	// SampleNeedle is the needle thread unpicked from the sample, of all needles; it is
	// at least as long as the sample.
	SampleNeedle units.Length `json:"sampleNeedle,omitzero"`
	// SampleUnder is the bobbin or looper thread unpicked from the sample. A stitch of one
	// thread has none.
	SampleUnder units.Length `json:"sampleUnder,omitzero"`
	// NeedleShare is the part of the thread that is on the needle, more than 0 and at most
	// 1. May be omitted; it is 1 where there is one thread, else the default is that of the
	// first row of the table that gives it. Where no row does, the thread is not split.
	NeedleShare units.Ratio `json:"needleShare,omitzero"`
	// Waste is what is added for ends, rethreading and seams sewn again, as a part of the
	// thread in the seam, at most 1. May be omitted; the default is 15 %. The plan has the
	// figures without it too.
	Waste units.Ratio `json:"waste,omitzero"`
}

// A ThreadPlan is the thread of a seam.
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
	case t.By != 0:
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
	if t.By == 0 && by == ByRatio && t.Ratio.IsZero() {
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
		f, _ := t.Stitch.formula()
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
	formula, hasFormula := t.Stitch.formula()
	typeNames.Check(a, "stitch", t.Stitch)
	if by == ByGeometry && !hasFormula && typeNames.Valid(t.Stitch) {
		a.Fault("stitch", t.Stitch.String(), "one of 101, 301, 401, 504, for which a formula is printed", fault.Unknown)
	}
	if t.By != 0 && !methodNames.Valid(t.By) {
		a.Fault("by", t.By.String(), methodNames.List(), fault.Unknown)
	}
	a.Need("seam", t.Seam)
	ratio, geometry, sample := by == ByRatio, by == ByGeometry, by == BySample
	switch {
	case !ratio:
		a.Unused("ratio", t.Ratio, t.Ratio.IsZero(), by)
	case t.Ratio.IsZero():
		if typeNames.Valid(t.Stitch) && t.Stitch.ratio().IsZero() {
			a.Fault("ratio", "", "1 or more: no row of the table gives one for "+t.Stitch.String(), fault.Missing)
		}
	case t.Ratio.Less(all):
		a.Fault("ratio", t.Ratio.String(), "1 or more: the thread is as long as the seam at least", fault.Range)
	}
	if geometry {
		t.checkGeometry(a, formula)
	} else {
		a.Unused("stitchLength", t.StitchLength, t.StitchLength.IsZero(), by)
		a.Unused("perInch", t.PerInch, t.PerInch.IsZero(), by)
		a.Unused("thickness", t.Thickness, t.Thickness.IsZero(), by)
		a.Unused("width", t.Width, t.Width.IsZero(), by)
	}
	switch {
	case !sample:
		a.Unused("sample", t.Sample, t.Sample.IsZero(), by)
		a.Unused("sampleNeedle", t.SampleNeedle, t.SampleNeedle.IsZero(), by)
		a.Unused("sampleUnder", t.SampleUnder, t.SampleUnder.IsZero(), by)
	default:
		a.Need("sample", t.Sample)
		a.Need("sampleNeedle", t.SampleNeedle)
		if t.SampleNeedle.Sign() > 0 {
			fault.AtLeast(a, "sampleNeedle", t.SampleNeedle, t.Sample, "sample", fault.Range)
		}
		if t.Stitch.oneThread() {
			a.Unused("sampleUnder", t.SampleUnder, t.SampleUnder.IsZero(), t.Stitch)
		} else {
			a.Need("sampleUnder", t.SampleUnder)
		}
	}
	switch {
	case sample:
		a.Unused("needleShare", t.NeedleShare, t.NeedleShare.IsZero(), by)
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
		a.Fault("stitchLength", "", "more than {0}, or perInch", fault.Missing, units.Length{})
	case t.PerInch.Sign() < 0:
		a.NotNegative("perInch", t.PerInch)
	case t.StitchLength.Sign() > 0 && !t.PerInch.IsZero() && inch(t.PerInch) != t.StitchLength:
		a.Fault("perInch", t.PerInch.String(), "{0} (what stitchLength gives)", fault.Conflict, units.Inch.Of(1).Div(t.StitchLength))
	}
	a.Need("thickness", t.Thickness)
	if formula.Wide > 0 {
		a.Need("width", t.Width)
	} else {
		a.Unused("width", t.Width, t.Width.IsZero(), t.Stitch)
	}
}
