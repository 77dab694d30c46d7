package yardage_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage"
)

// feed turns bytes into the fields of a spec.
type feed []byte

func (f *feed) next() byte {
	if len(*f) == 0 {
		return 0
	}
	b := (*f)[0]
	*f = (*f)[1:]
	return b
}

func (f *feed) length() units.Length {
	b := f.next()
	switch b % 8 {
	case 0:
		return units.Length{}
	case 1:
		return units.Inch.Of(int64(f.next()))
	case 2:
		return units.Inch.Frac(int64(f.next()), 1+int64(f.next()))
	case 3:
		return units.Millimetre.Of(int64(f.next()) << 8)
	case 4:
		return units.Yard.Frac(int64(f.next()), 8)
	case 5:
		return units.Inch.Of(int64(f.next())).Neg()
	case 6:
		l, _ := units.Parse("1" + strings.Repeat("0", int(f.next())) + " in")
		return l
	}
	return units.Inch.Frac(1, 1<<40+int64(f.next()))
}

func (f *feed) ratio() units.Ratio {
	return units.RatioOf(int64(int8(f.next())), 1+int64(f.next()%100))
}

func (f *feed) count() int {
	switch b := f.next(); b % 4 {
	case 0:
		return 0
	case 1:
		return int(^uint(0)>>1) - int(b)
	case 2:
		return -int(b)
	default:
		return int(b)
	}
}

func FuzzSpec(f *testing.F) {
	f.Add([]byte{})
	for kind := range byte(7) {
		f.Add([]byte{kind, 1, 80, 1, 12, 0, 1, 2, 5, 99, 4, 1})
		f.Add([]byte{kind, 1, 80, 1, 40, 1, 40, 1, 40, 1, 40, 1, 2, 1, 1, 3, 3})
		f.Add([]byte{kind, 6, 255, 6, 1, 6, 2, 6, 3, 200, 1, 6, 4})
		f.Add([]byte{kind, 5, 1, 5, 1, 2, 5, 1, 255, 1, 5, 1})
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		in := feed(data)
		var p planned
		var err error
		switch in.next() % 7 {
		case 0:
			p, err = of(yardage.Width{Asked: in.length(), From: in.length(), To: in.length(), Nap: in.next()%2 == 1}.Plan())
		case 1:
			s := yardage.Purchase{Need: in.length(), Repeat: in.length(), Starts: in.count(), Ends: in.length(), Shrink: in.ratio(), Counter: in.length()}
			var q yardage.PurchasePlan
			if q, err = s.Plan(); err == nil && (q.Buy.Less(q.Unshrunk) || q.Unshrunk.Less(q.InRepeats) || q.InRepeats.Less(s.Need)) {
				t.Errorf("%+v buys %v", s, q.Buy)
			}
			p = q
		case 2:
			p, err = of(yardage.Remnant{Have: in.length(), HaveWidth: in.length(), Asked: in.length(), AskedWidth: in.length(), Need: in.length(), NeedWidth: in.length(),
				ShrinkLength: in.ratio(), ShrinkWidth: in.ratio(), Selvedge: in.length(), Ends: in.length()}.Plan())
		case 3:
			s := yardage.Price{Length: in.length(), Each: decimal.New(int64(int8(in.next())), int32(int8(in.next()))), Per: units.Unit(in.next()), Currency: string(in.next()), Coin: in.ratio(), Mode: units.Mode(in.next())}
			var q yardage.PricePlan
			if q, err = s.Plan(); err == nil && q.Exact.Sub(q.Residue) != units.FromRat(q.Charged.Rat()) {
				t.Errorf("%+v charges %v", s, q.Charged)
			}
			p = q
		case 4:
			p, err = of(yardage.Swatch{Before: in.length(), After: in.length(), Shrink: in.ratio(), WidthBefore: in.length(), WidthAfter: in.length(), WidthShrink: in.ratio()}.Plan())
		case 5:
			s := yardage.Panels{Cover: in.length(), Fullness: in.ratio(), Widths: in.count(), Width: in.length(), Seam: in.length(), Sides: in.length(),
				Drop: in.length(), Hems: in.length(), Repeat: in.length(), HalfDrop: in.next()%2 == 1, Starts: in.count()}
			var q yardage.PanelsPlan
			if q, err = s.Plan(); err == nil && (q.Spec.Widths < 1 || q.Spec.Widths > yardage.MaxWidths || q.Length.Less(q.Cut)) {
				t.Errorf("%+v: %+v", s, q)
			}
			p = q
		case 6:
			s := yardage.Bias{Strip: in.length(), Wanted: in.length(), Square: in.length(), Seam: in.length(), Step: in.length()}
			var q yardage.BiasPlan
			if q, err = s.Plan(); err == nil && (q.Length.Less(s.Wanted) || q.ByArea.Less(q.Length)) {
				t.Errorf("%+v: %+v", s, q)
			}
			p = q
		}
		if err != nil {
			var fs fault.Faults
			if !errors.As(err, &fs) || len(fs) == 0 {
				t.Fatalf("%v: not faults", err)
			}
			for _, one := range fs {
				if one.Path == "" || one.Kind == "" {
					t.Errorf("a fault without a path or a kind: %+v", one)
				}
			}
			return
		}
		sheet := p.Sheet()
		if err := sheet.Check(); err != nil {
			t.Error(err)
		}
		if sheet.Text(units.Notation{}, units.Notation{Unit: units.Centimetre}) == "" {
			t.Error("an empty sheet")
		}
	})
}
