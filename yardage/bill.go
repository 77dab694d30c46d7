package yardage

import (
	"strconv"

	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// MaxItems is the greatest number of cloths on one bill.
const MaxItems = 1_000

// A Bill is several cloths of one shop: what they cost together, and which of them costs
// least, as of one garment laid on cloths of several widths.
type Bill struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape  units.Tape `json:"tape,omitzero"`
	Items []Item     `json:"items,omitzero"` // the cloths, 1 to 1,000
	Per   units.Unit `json:"per,omitzero"`   // the unit that the prices are for, yard or metre
	// Counter is the step in which the shop cuts. May be omitted; the default is 1/8 yd, or
	// 10 cm on a metric tape.
	Counter units.Length `json:"counter,omitzero"`
}

// An Item is one cloth of a bill.
type Item struct {
	Name string          `json:"name,omitzero"` // what it is called. May be omitted.
	Need units.Length    `json:"need,omitzero"` // the length that is needed, unwashed
	Each decimal.Decimal `json:"each,omitzero"` // the price of one unit
}

// A BillPlan is the bill worked out.
type BillPlan struct {
	Spec     Bill            `json:"spec,omitzero"`     // as solved
	Assumed  []string        `json:"assumed,omitzero"`  // the fields filled with a default
	Lines    []BillLine      `json:"lines,omitzero"`    // one for each item, in order
	Total    decimal.Decimal `json:"total,omitzero"`    // all of them together
	Cheapest int             `json:"cheapest,omitzero"` // the item that costs least, counted from 1; the first where several do
}

// A BillLine is what one cloth comes to.
type BillLine struct {
	Buy     units.Length    `json:"buy,omitzero"`     // the length in whole steps of the counter
	Charged decimal.Decimal `json:"charged,omitzero"` // in hundredths, to the nearest
}

// Plan works out each cloth and the sum.
func (s Bill) Plan() (BillPlan, error) {
	var a fault.Audit
	s.Tape.Check(&a, "tape")
	a.NotNegative("counter", s.Counter)
	if len(s.Items) == 0 {
		a.Fault("items", "", "1 to "+ticket.Of(MaxItems).String(), fault.Missing)
	} else {
		a.Count("items", len(s.Items), 1, MaxItems)
	}
	if a.Failed() {
		return BillPlan{}, a.Err()
	}
	given := s
	if s.Tape = noun.Tape(s); s.Counter.IsZero() {
		s.Counter = counterDefault(s.Tape)
	}
	p := BillPlan{Spec: s, Assumed: noun.Assumed(given, s)}
	for i, item := range s.Items {
		path := "items[" + strconv.Itoa(i) + "]"
		var own fault.Audit
		own.Text("name", item.Name)
		own.Need("need", item.Need)
		if own.Failed() {
			a.Include(path, own.Err())
			continue
		}
		buy, _ := item.Need.Round(s.Counter, units.Up)
		price, err := Price{Length: buy, Each: item.Each, Per: s.Per}.Plan()
		if err != nil {
			a.Include(path, err)
			continue
		}
		p.Lines = append(p.Lines, BillLine{buy, price.Charged})
		p.Total = p.Total.Add(price.Charged)
		if p.Cheapest == 0 || price.Charged.LessThan(p.Lines[p.Cheapest-1].Charged) {
			p.Cheapest = i + 1
		}
	}
	if a.Failed() {
		return BillPlan{}, a.Err()
	}
	return p, nil
}

// label is what item i is called.
func (p BillPlan) label(i int) string {
	if i < len(p.Spec.Items) && p.Spec.Items[i].Name != "" {
		return p.Spec.Items[i].Name
	}
	return "cloth " + ticket.Of(i+1).String()
}

// Sheet is the bill.
func (p BillPlan) Sheet() ticket.Sheet {
	sh := ticket.Sheet{Title: "A bill of cloth", Assumed: p.Assumed}
	if len(p.Lines) > 0 {
		sh.Answer = []ticket.Line{{Label: "all together", Result: ticket.Price(p.Total.StringFixed(2))}}
	}
	if len(p.Lines) > 1 {
		sh.Answer = append(sh.Answer, ticket.Line{Label: "least, for " + p.label(p.Cheapest-1), Result: ticket.Price(p.Lines[p.Cheapest-1].Charged.StringFixed(2))})
	}
	for i, l := range p.Lines {
		sh.Lines = append(sh.Lines, line(p.label(i)+", to buy", ticket.Cloth(l.Buy)), line(p.label(i)+", to pay", ticket.Price(l.Charged.StringFixed(2))))
	}
	sh.Cautions = []ticket.Caution{{Text: "Lengths on several widths are compared once the pieces are laid on each of them.", Refer: "a lay decides"}, ticket.CutCare()}
	sh.Sources = []source.Cite{{For: "the working", Known: source.Computed}}
	return sh
}
