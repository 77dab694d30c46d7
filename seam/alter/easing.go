package alter

import (
	"strconv"

	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxZones is the most zones of one [Easing].
const MaxZones = 100

// A Zone is a stretch of the shorter edge, along which a share of the ease is put or none.
type Zone struct {
	// Name is what it is called, as in back of the head.
	Name string `json:"name,omitzero"`
	// Length is along the seam line of the shorter edge.
	Length units.Length `json:"length,omitzero"`
	// Share is that of the ease, against the shares of the other zones. May be omitted; the
	// default is 0, nothing.
	Share units.Ratio `json:"share,omitzero" noun:"zero"`
}

// An Easing is the ease of a longer edge, put where it is wanted along the shorter one.
type Easing struct {
	// Long is the longer edge as sewn, as of the head of a sleeve; see [edge.PairPlan].
	Long units.Length `json:"long,omitzero"`
	// Zones are the shorter edge, zone by zone from one end to the other, 1 to 100.
	Zones []Zone `json:"zones,omitzero"`
	// Limit is the most that may be eased into each unit of a zone and lie smooth. A cloth
	// that shrinks under the iron takes more. May be omitted; the default is 1/16, as for
	// lawn: common practice, and not a sure figure.
	Limit units.Ratio `json:"limit,omitzero"`
}

// A ZonePlan is what one zone takes.
type ZonePlan struct {
	From units.Length `json:"from,omitzero"` // where it begins, along the shorter edge
	Ease units.Length `json:"ease,omitzero"` // what is eased into it
	Long units.Length `json:"long,omitzero"` // what of the longer edge goes into it: Length and Ease
	Per  units.Ratio  `json:"per,omitzero"`  // Ease for each unit of Length
	Fits bool         `json:"fits,omitzero"` // Per is at most Limit
}

// An EasingPlan is where the ease goes.
type EasingPlan struct {
	Spec    Easing       `json:"spec,omitzero"`    // as solved; a copy of the caller's Zones
	Assumed []string     `json:"assumed,omitzero"` // the fields of Spec filled with a default
	Short   units.Length `json:"short,omitzero"`   // the shorter edge: all zones
	Ease    units.Length `json:"ease,omitzero"`    // Long less Short
	Per     units.Ratio  `json:"per,omitzero"`     // Ease for each unit of the zones that take any
	Smooth  bool         `json:"smooth,omitzero"`  // every zone is within Limit
	Zones   []ZonePlan   `json:"zones,omitzero"`   // in the order of the spec
}

// SleeveZones are the zones of an armhole, from the underarm over the front and
// the shoulder to the underarm again, front and back each being half of it from
// the shoulder seam: nothing is eased in the quarter of each half next to the
// underarm, nor for 1/2 in, or 1 cm, each side of the shoulder, and what lies between takes
// its share by its length, the back never less than the front. Common practice.
func SleeveZones(front, back units.Length) []Zone {
	half := units.Tape(0).Or(front, back).Of(sew.Inch(1, 2), units.Centimetre.Of(1))
	quarter := units.RatioOf(1, 4)
	between := func(l units.Length) units.Length { return l.Sub(l.Scale(quarter)).Sub(half) }
	one := units.RatioOf(1, 1)
	share := one
	if f, b := between(front), between(back); f.Sign() > 0 && f.Less(b) {
		share = b.Div(f)
	}
	return []Zone{
		{Name: "front underarm", Length: front.Scale(quarter)},
		{Name: "front", Length: between(front), Share: one},
		{Name: "front shoulder", Length: half},
		{Name: "back shoulder", Length: half},
		{Name: "back", Length: between(back), Share: share},
		{Name: "back underarm", Length: back.Scale(quarter)},
	}
}

// Plan places the ease. The faults are [fault.Faults]. An edge that is longer
// than its partner is a mismatch, never negative ease: it is refused.
func (e Easing) Plan() (EasingPlan, error) {
	var a fault.Audit
	a.Need("long", e.Long)
	if a.Count("zones", len(e.Zones), 1, MaxZones); len(e.Zones) > MaxZones {
		return EasingPlan{}, a.Err()
	}
	var all, taking units.Length
	var shares units.Ratio
	for i, z := range e.Zones {
		var one fault.Audit
		one.Text("name", z.Name)
		one.Need("length", z.Length)
		if z.Share.Sign() < 0 {
			one.Fault("share", z.Share.String(), "0 or more", fault.Sign)
		}
		if one.Failed() {
			a.Include("zones["+strconv.Itoa(i)+"]", one.Err())
		}
		all = all.Add(z.Length)
		if z.Share.Sign() > 0 {
			taking, shares = taking.Add(z.Length), shares.Add(z.Share)
		}
	}
	if e.Limit.Sign() < 0 {
		a.Fault("limit", e.Limit.String(), "more than 0", fault.Sign)
	}
	if a.Failed() {
		return EasingPlan{}, a.Err()
	}
	ease := e.Long.Sub(all)
	switch {
	case ease.Sign() < 0:
		a.Fault("long", e.Long.String(), "at least "+all.String()+" (all zones): an edge shorter than its partner is a mismatch", fault.Range)
	case ease.Sign() > 0 && shares.IsZero():
		a.Fault("zones", "", "a share in one of them, since there is "+ease.String()+" to ease in", fault.Missing)
	}
	if a.Failed() {
		return EasingPlan{}, a.Err()
	}
	p := EasingPlan{Short: all, Ease: ease, Smooth: true, Zones: make([]ZonePlan, len(e.Zones))}
	if e.Limit.IsZero() {
		e.Limit, p.Assumed = sew.SmoothEase(), []string{"limit"}
	}
	e.Zones = append(make([]Zone, 0, len(e.Zones)), e.Zones...)
	p.Spec = e
	if !taking.IsZero() {
		p.Per = ease.Div(taking)
	}
	var at units.Length
	for i, z := range e.Zones {
		o := ZonePlan{From: at}
		if z.Share.Sign() > 0 {
			o.Ease = ease.Scale(z.Share.Quo(shares))
		}
		o.Long = z.Length.Add(o.Ease)
		o.Per = o.Ease.Div(z.Length)
		o.Fits = !e.Limit.Less(o.Per)
		p.Smooth = p.Smooth && o.Fits
		p.Zones[i] = o
		at = at.Add(z.Length)
	}
	return p, nil
}

// Sheet is the plan as work: zone by zone what is pinned to what.
func (p EasingPlan) Sheet() ticket.Sheet {
	e := p.Spec
	sh := ticket.Sheet{Title: "Ease, zone by zone", Assumed: p.Assumed, Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()}}
	if e.Long.IsZero() {
		return sh // the plan of nothing has nothing to say
	}
	sh.Answer = []ticket.Line{{Label: "ease in", Result: ticket.Long(p.Ease)}}
	sh.Lines = append(make([]ticket.Line, 0, 1+len(p.Zones)), ticket.Sum("to be eased in", p.Ease, ticket.Add(e.Long, "longer edge"), ticket.Less(p.Short, "shorter edge")))
	sh.Steps = append(make([]ticket.Step, 0, 2+len(p.Zones)), ticket.Step{Do: "Mark the ends of every zone on both edges, along the seam lines", Note: "with chalk or thread, from the same end"})
	for i, o := range p.Zones {
		z := e.Zones[i]
		name := sew.OrElse(z.Name, "zone")
		sh.Lines = append(sh.Lines, ticket.Sum(name+", on the longer edge", o.Long, ticket.Add(z.Length, "on the shorter"), ticket.Add(o.Ease, "eased in")))
		do := "Pin the " + name + ", the ease spread evenly"
		if o.Ease.IsZero() {
			do = "Pin the " + name + " flat: nothing is eased here"
		}
		sh.Steps = append(sh.Steps, ticket.Step{Do: do, At: ticket.Long(o.Long), From: "mark to mark on the longer edge"})
	}
	sh.Steps = append(sh.Steps, ticket.Step{Do: "Draw the ease stitching up to the marks, steam the fullness away, and stitch with the longer edge underneath",
		Check: ticket.Check{What: "along the seam", Want: ticket.Long(p.Short), Give: sew.Hand(noun.Tape(e)), Mend: "let the ease stitching out, or draw it in, between the marks that are out"}})
	if !p.Smooth {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "More is to be eased into a zone than lies smooth in this cloth: small folds will show. Spread it wider, or take the longer edge in.",
			Refer: "common practice; try it on a scrap",
		})
	}
	sh.Sources = []source.Cite{
		source.Practise("no ease next to the underarm and at the shoulder seam"),
		source.Practise("what can be eased into each unit and lie smooth"),
	}
	return sh
}
