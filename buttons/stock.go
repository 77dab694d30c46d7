package buttons

import (
	"slices"
	"strconv"

	"example.com/clothyard/units/fault"
)

// A Placement is a set of places that need buttons alike, such as the cuffs.
type Placement struct {
	Name  string `json:"name,omitzero"`  // what it is, as in "cuff"
	Count int    `json:"count,omitzero"` // buttons drafted on each
	Times int    `json:"times,omitzero"` // how many there are of it, as 2 for cuffs, which are always changed together; default 1
	Least int    `json:"least,omitzero"` // the fewest buttons on each that serve; default 1
}

// A Stock is how many buttons there are, and the placements that need them, the
// most important first. Zero means not given.
type Stock struct {
	Have   int         `json:"have,omitzero"`   // buttons alike in the tin, at most [MaxCount]
	Places []Placement `json:"places,omitzero"` // at most [MaxPlaces], with at most [MaxCount] buttons in all
	Months int         `json:"months,omitzero"` // age of the wearer in months, for the cautions only
}

// A Give is one way to make the buttons do: how many each placement then has.
type Give struct {
	Counts []int `json:"counts,omitzero"` // buttons on each, in the order of Places
	Up     int   `json:"up,omitzero"`     // buttons given up in all
	Spare  int   `json:"spare,omitzero"`  // buttons left over
}

// MaxGives is the most alternatives that a [StockPlan] names.
const MaxGives = 8

// maxSearch bounds the work of looking for alternatives, in placements looked at.
const maxSearch = 20_000

// A StockPlan is the count of a [Stock].
type StockPlan struct {
	Spec    Stock    `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // Places.Times, Places.Least: one name for all the placements

	Need  int `json:"need,omitzero"`  // buttons drafted in all
	Short int `json:"short,omitzero"` // how many are wanting; zero if there are enough
	Spare int `json:"spare,omitzero"` // how many are left over; zero if there are not
	Floor int `json:"floor,omitzero"` // the fewest that serve in all

	// Gives are the ways to make do, where Short is not zero: those that give up
	// the fewest buttons first, and among equals those that spare the placements
	// named first. At most [MaxGives]; none where Floor is above Have.
	Gives []Give `json:"gives,omitzero"`
}

func (s Stock) solve() (Stock, []string, error) {
	if err := s.audit(); err != nil {
		return s, nil, err
	}
	times := slices.ContainsFunc(s.Places, func(p Placement) bool { return p.Times == 0 })
	least := slices.ContainsFunc(s.Places, func(p Placement) bool { return p.Least == 0 })
	if !times && !least {
		return s, nil, nil
	}
	s.Places = slices.Clone(s.Places)
	for i := range s.Places {
		s.Places[i].Times = max(1, s.Places[i].Times)
		s.Places[i].Least = max(1, s.Places[i].Least)
	}
	switch {
	case !times:
		return s, []string{"places.least"}, nil
	case !least:
		return s, []string{"places.times"}, nil
	}
	return s, []string{"places.times", "places.least"}, nil
}

func (s Stock) audit() error {
	var a fault.Audit
	a.Count("have", s.Have, 1, MaxCount)
	switch n := len(s.Places); {
	case n == 0:
		a.Fault("places", "", "1 to "+strconv.Itoa(MaxPlaces)+" placements", fault.Missing)
	case n > MaxPlaces:
		a.Fault("places", strconv.Itoa(n)+" placements", "at most "+strconv.Itoa(MaxPlaces), fault.Range)
	default:
		need := int64(0)
		for i, p := range s.Places {
			if !p.audit(&a, i) {
				continue
			}
			need += int64(p.Count) * int64(max(1, p.Times))
		}
		if need > MaxCount {
			a.Fault("places", strconv.FormatInt(need, 10)+" buttons", "at most "+strconv.Itoa(MaxCount)+" in all", fault.Range)
		}
	}
	whole(&a, "months", s.Months, MaxMonths)
	return a.Err()
}

// audit checks placement i and reports whether its numbers are within bounds.
// The path is made only for a fault, so that the good way allocates nothing.
func (p Placement) audit(a *fault.Audit, i int) bool {
	if p.fits() {
		return true
	}
	at := "places[" + strconv.Itoa(i) + "]."
	a.Text(at+"name", p.Name)
	a.Count(at+"count", p.Count, 1, MaxCount)
	whole(a, at+"times", p.Times, MaxCount)
	whole(a, at+"least", p.Least, MaxCount)
	if p.Count > 0 && p.Count <= MaxCount && p.Least > p.Count && p.Least <= MaxCount {
		a.Fault(at+"least", strconv.Itoa(p.Least), "at most "+strconv.Itoa(p.Count)+" (count)", fault.Conflict)
	}
	return false
}

func (p Placement) fits() bool {
	var a fault.Audit
	a.Text("name", p.Name)
	return !a.Failed() && p.Count >= 1 && p.Count <= MaxCount && p.Times >= 0 && p.Times <= MaxCount &&
		p.Least >= 0 && p.Least <= p.Count
}

// Plan counts the stock. The faults are those of [Stock].
func (s Stock) Plan() (StockPlan, error) {
	s, assumed, err := s.solve()
	if err != nil {
		return StockPlan{}, err
	}
	p := StockPlan{Spec: s, Assumed: assumed}
	for _, q := range s.Places {
		p.Need += q.Count * q.Times
		p.Floor += q.Least * q.Times
	}
	p.Spare = max(0, s.Have-p.Need)
	if p.Short = max(0, p.Need-s.Have); p.Short > 0 && p.Floor <= s.Have {
		p.Gives = s.gives(p.Need, p.Floor)
	}
	return p, nil
}

// With is the stock with the counts of g in place of those drafted; the Least of
// a placement stays. Counts beyond the placements are left out.
func (s Stock) With(g Give) Stock {
	s.Places = slices.Clone(s.Places)
	for i := range s.Places {
		if i < len(g.Counts) {
			s.Places[i].Count = g.Counts[i]
		}
	}
	return s
}
