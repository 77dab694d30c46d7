package yardage

import (
	"slices"

	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// The bounds of a price. MaxDigits bounds the digits of Each and of the amount
// charged, and how far the point of Each may lie from its last digit;
// MaxCoinPlaces bounds the decimals of Coin.
const (
	MaxDigits     = 18
	MaxCoinPlaces = 9
)

// A Price is a length of cloth at so much a unit. Of length, each and paid two give the
// third.
type Price struct {
	Length units.Length    `json:"length,omitzero"` // the length charged for
	Each   decimal.Decimal `json:"each,omitzero"`   // the price of one unit
	// Paid is an amount of money: what the length cost, or what there is to spend.
	Paid     decimal.Decimal `json:"paid,omitzero"`
	Per      units.Unit      `json:"per,omitzero"`      // yard, metre or another unit; it has no default, as a yard is not a metre
	Currency string          `json:"currency,omitzero"` // written after the amount; may be empty
	// Coin is the least amount charged, as a number of the currency: 1/100, or
	// 1/20 where the smallest coin is 5 cents, or 1 for whole amounts. Its decimals
	// must end within [MaxCoinPlaces]. Default 1/100, common practice.
	Coin units.Ratio `json:"coin,omitzero"`
	// Mode is the direction in which the amount goes to a whole number of coins.
	// Zero is an answer: to the nearest, a tie upwards.
	Mode units.Mode `json:"mode,omitzero" noun:"zero"`
}

// A PricePlan is the amount exact and as charged. Compare amounts of money with
// the methods of decimal.Decimal, not with ==.
type PricePlan struct {
	Spec    Price           `json:"spec,omitzero"`    // as given
	Assumed []string        `json:"assumed,omitzero"` // the fields filled with a default
	Units   units.Ratio     `json:"units,omitzero"`   // how many of Per the length is
	Rate    units.Ratio     `json:"rate,omitzero"`    // the price of one unit, exact
	Exact   units.Ratio     `json:"exact,omitzero"`   // the amount, not rounded
	Charged decimal.Decimal `json:"charged,omitzero"` // the amount in whole coins, with as many places as the coin has
	Residue units.Ratio     `json:"residue,omitzero"` // Exact less Charged, either sign
}

// ten is 10^n, for n up to 18.
func ten(n int) int64 {
	p := int64(1)
	for range n {
		p *= 10
	}
	return p
}

// decimalRatio is d as a number, if it is within the bounds.
func decimalRatio(d decimal.Decimal) (units.Ratio, bool) {
	e := d.Exponent()
	if e < -MaxDigits || e > MaxDigits || d.NumDigits() > MaxDigits {
		return units.Ratio{}, false
	}
	if e < 0 {
		return units.RatioOf(d.CoefficientInt64(), ten(int(-e))), true
	}
	return units.RatioOf(d.CoefficientInt64(), 1).Mul(units.RatioOf(ten(int(e)), 1)), true
}

// money reads an amount that is not negative, and records one that is, or that has too
// many digits.
func money(a *fault.Audit, path string, d decimal.Decimal) units.Ratio {
	r, ok := decimalRatio(d)
	switch {
	case !ok:
		a.Fault(path, "a longer number", "at most "+ticket.Of(MaxDigits).String()+" digits", fault.Range)
	case r.Sign() < 0:
		a.Fault(path, d.String(), "more than 0", fault.Sign)
	}
	return r
}

// coinPlaces is how many decimal places a coin has.
func coinPlaces(coin units.Ratio) (int, bool) {
	for n := range MaxCoinPlaces + 1 {
		if coin.Mul(units.RatioOf(ten(n), 1)).IsInt() {
			return n, true
		}
	}
	return 0, false
}

// dearest is the greatest amount of MaxDigits digits, so many of them places.
func dearest(places int) units.Ratio { return units.RatioOf(ten(MaxDigits)-1, ten(places)) }

// Plan works out the amount.
func (s Price) Plan() (PricePlan, error) {
	var a fault.Audit
	var p PricePlan
	if s.Paid.IsZero() {
		a.Need("length", s.Length)
	} else {
		a.NotNegative("length", s.Length)
	}
	paid := money(&a, "paid", s.Paid)
	p.Rate = money(&a, "each", s.Each)
	if s.Each.IsZero() && (s.Paid.IsZero() || s.Length.IsZero()) {
		a.Fault("each", "", "more than 0, or both length and paid", fault.Missing)
	}
	if s.Per == units.NoUnit {
		a.Fault("per", "", "a unit of length, as yd or m", fault.Missing)
	} else if !s.Per.Valid() {
		a.Fault("per", s.Per.String(), "a unit of length, as yd or m", fault.Unknown)
	}
	a.Text("currency", s.Currency)
	if s.Coin.IsZero() {
		s.Coin = units.RatioOf(1, 100)
		p.Assumed = []string{"coin"}
	}
	places, ok := coinPlaces(s.Coin)
	switch {
	case s.Coin.Sign() < 0:
		a.Fault("coin", s.Coin.String(), "more than 0", fault.Sign)
	case ok && !s.Coin.Mul(units.RatioOf(ten(places), 1)).Less(units.RatioOf(ten(MaxDigits), 1)):
		a.Fault("coin", s.Coin.String(), "at most "+dearest(places).String()+" ("+ticket.Of(MaxDigits).String()+" digits)", fault.Range)
	case !ok:
		a.Fault("coin", s.Coin.String(), "a number whose decimals end within "+ticket.Of(MaxCoinPlaces).String()+" places", fault.Range)
	}
	if s.Mode > units.ToZero {
		a.Fault("mode", s.Mode.String(), "half-away, half-even, down, up or to-zero", fault.Unknown)
	}
	if a.Failed() {
		return PricePlan{}, a.Err()
	}
	switch {
	case s.Paid.IsZero():
	case s.Each.IsZero():
		p.Rate = paid.Quo(s.Length.In(s.Per))
	case s.Length.IsZero():
		s.Length = s.Per.Of(1).Scale(paid.Quo(p.Rate))
	case s.Length.In(s.Per).Mul(p.Rate) != paid:
		a.Fault("paid", s.Paid.String(), s.Length.In(s.Per).Mul(p.Rate).String()+", which is what length and each give", fault.Conflict)
		return PricePlan{}, a.Err()
	}
	p.Spec = s
	p.Units = s.Length.In(s.Per)
	p.Exact = p.Units.Mul(p.Rate)
	mark, residue := p.Exact.Round(s.Coin, s.Mode)
	n, ok := mark.Mul(units.RatioOf(ten(places), 1)).Int(units.Down)
	if !ok || n >= ten(MaxDigits) {
		most, _ := dearest(places).Round(s.Coin, units.Down)
		a.Fault("length", s.Length.String(), "at most "+s.Per.Of(1).Scale(most.Quo(p.Rate)).String()+" (an amount of "+ticket.Of(MaxDigits).String()+" digits)", fault.Range)
		return PricePlan{}, a.Err()
	}
	p.Charged, p.Residue = decimal.New(n, -int32(places)), residue
	return p, nil
}

// Text is the amount charged with its places and currency, as in 50.40 GBP.
func (p PricePlan) Text() string {
	t := p.Charged.StringFixed(-p.Charged.Exponent())
	if p.Spec.Currency != "" {
		t += " " + p.Spec.Currency
	}
	return t
}

// Sheet is the working of the price.
func (p PricePlan) Sheet() ticket.Sheet {
	s := p.Spec
	charged := p.Exact.Sub(p.Residue)
	per := s.Per.String()
	rounded := ticket.Term{Op: ticket.Minus, Amount: ticket.Times(p.Residue), Name: "rounded away, " + s.Mode.String()}
	if p.Residue.Sign() < 0 {
		rounded = ticket.Term{Amount: ticket.Times(p.Residue.Neg()), Name: "rounded up, " + s.Mode.String()}
	}
	sh := ticket.Sheet{Title: "Price of the cloth", Assumed: p.Assumed, Lines: make([]ticket.Line, 0, 4)}
	switch {
	case !s.Per.Valid():
	case s.Paid.IsZero():
		sh.Answer = []ticket.Line{{Label: "to pay", Result: ticket.Price(p.Text())}}
	case s.Each.IsZero():
		sh.Answer = []ticket.Line{{Label: "the price of 1 " + per, Result: ticket.Times(p.Rate)}}
	default:
		sh.Answer = []ticket.Line{{Label: "cloth for what is paid", Result: ticket.Cloth(s.Length)}}
	}
	if s.Per.Valid() {
		sh.Lines = append(sh.Lines, line("length in "+per, ticket.Times(p.Units), long(s.Length, "of cloth"), overLong(s.Per.Of(1), "")))
	}
	sh.Lines = append(sh.Lines,
		line("amount, exact", ticket.Times(p.Exact), ticket.Term{Amount: ticket.Times(p.Units), Name: per}, by(p.Rate, "each")),
		line("amount in whole coins", ticket.Times(charged), ticket.Term{Amount: ticket.Times(p.Exact), Name: "exact"}, rounded),
		line("to pay", ticket.Price(p.Text())))
	sh.Cautions = []ticket.Caution{{Text: "A till may round each item or only the whole bill, and tax may be in the price or not.", Refer: "the shop's own terms decide"}}
	if slices.Contains(p.Assumed, "coin") {
		sh.Sources = append(sh.Sources, source.Practise("the hundredth as the least amount charged"))
	}
	sh.Sources = append(sh.Sources, source.Cite{For: "the working", Known: source.Computed})
	return sh
}
