package buttons_test

import (
	"encoding/binary"
	"errors"
	"reflect"
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// tape makes fields from bytes; it gives zeros when it runs out.
type tape []byte

func (b *tape) byte() byte {
	if len(*b) == 0 {
		return 0
	}
	v := (*b)[0]
	*b = (*b)[1:]
	return v
}

// int is mostly small, sometimes as large or as low as can be.
func (b *tape) int() int {
	switch v := b.byte(); {
	case v < 200:
		return int(v % 24)
	case v < 210:
		return -int(b.byte())
	default:
		return int(int64(b.long()))
	}
}

func (b *tape) long() uint64 {
	var w [8]byte
	for i := range w {
		w[i] = b.byte()
	}
	return binary.LittleEndian.Uint64(w[:])
}

// length is mostly so many sixteenths, sometimes any fraction or a wide number.
func (b *tape) length() units.Length {
	switch v := b.byte(); {
	case v < 60:
		return units.Length{}
	case v < 200:
		return units.Inch.Frac(int64(b.byte())+1, 16)
	case v < 220:
		return units.Millimetre.Of(int64(int8(b.byte())))
	case v < 240:
		return units.Inch.Frac(int64(b.long()), int64(b.byte())+1)
	default:
		l := units.Inch.Frac(int64(b.long()), int64(b.byte())+1)
		return l.Scale(l.Div(units.Inch.Frac(1, 97)))
	}
}

func FuzzSpec(f *testing.F) {
	f.Add([]byte{0, 100, 9, 100, 200, 9})                // a row of nine
	f.Add([]byte{0, 100, 9, 0, 1})                       // a single button
	f.Add([]byte{0, 100, 9, 100, 250, 0, 0, 100, 9, 61}) // a row by its limits
	f.Add([]byte{1, 100, 7, 100, 1, 2, 0, 0, 1, 100, 90, 0})
	f.Add([]byte{1, 100, 7, 0, 2, 0, 100, 0, 2, 100, 90, 100, 1})
	f.Add([]byte{2, 100, 11, 100, 8, 0, 100, 17, 2, 0})
	f.Add([]byte{2, 100, 11, 0, 0, 100, 11, 1, 0})
	f.Add([]byte{3, 11, 30, 2, 9, 1, 5, 2, 2, 1})
	f.Add([]byte{3, 11, 30, 3, 9, 6, 1, 2, 10, 1, 5, 15, 1})
	f.Fuzz(func(t *testing.T, data []byte) {
		b := tape(data)
		switch b.byte() % 4 {
		case 0:
			r := buttons.Row{First: b.length(), Last: b.length(), Count: b.int(), Gap: b.length(), MinGap: b.length(), MaxGap: b.length(), Step: b.length(), Have: b.int(), Months: b.int()}
			p, err := r.Plan()
			if !faulty(t, err, reflect.DeepEqual(p, buttons.RowPlan{})) {
				checkRow(t, p)
			}
		case 1:
			h := buttons.Hole{Diameter: b.length(), Thickness: b.length(), Outline: buttons.Outline(b.byte() % 4), Ease: b.length(), Step: b.length(),
				Setting: buttons.Setting(b.byte() % 4), Place: b.length(), Reach: b.length()}
			p, err := h.Plan()
			if !faulty(t, err, reflect.DeepEqual(p, buttons.HolePlan{})) {
				checkHole(t, p)
			}
		case 2:
			l := buttons.Lap{Lap: b.length(), Hole: b.length(), Diameter: b.length(), Topstitch: b.length(), Setting: buttons.Setting(b.byte() % 4), Reach: b.length()}
			p, err := l.Plan()
			if !faulty(t, err, reflect.DeepEqual(p, buttons.LapPlan{})) {
				checkLap(t, p)
			}
		default:
			s := buttons.Stock{Have: b.int(), Months: b.int()}
			for range b.byte() % 80 {
				s.Places = append(s.Places, buttons.Placement{Name: string(b[:min(len(b), 3)]), Count: b.int(), Times: b.int(), Least: b.int()})
			}
			p, err := s.Plan()
			if !faulty(t, err, p.Need == 0 && p.Gives == nil) {
				checkStock(t, p)
			}
		}
	})
}

// faulty checks what comes with an error, and reports whether there is one.
func faulty(t *testing.T, err error, zero bool) bool {
	t.Helper()
	if err == nil {
		return false
	}
	var faults fault.Faults
	if !errors.As(err, &faults) || len(faults) == 0 || !zero {
		t.Errorf("%v, plan zero %v", err, zero)
	}
	for _, f := range faults {
		if f.Path == "" || f.Limit == "" || f.Kind == "" {
			t.Errorf("says too little: %+v", f)
		}
	}
	return true
}

func checkSheet(t *testing.T, s ticket.Sheet) {
	t.Helper()
	if err := s.Check(); err != nil {
		t.Error(err)
	}
	if s.Text() == "" || len(s.Steps) == 0 {
		t.Errorf("an empty sheet: %+v", s)
	}
}

func checkRow(t *testing.T, p buttons.RowPlan) {
	t.Helper()
	s := p.Spec
	if p.Span != s.Last.Sub(s.First) || p.Gap.MulInt(int64(s.Count-1)) != p.Span {
		t.Errorf("the gaps do not make the span: %+v", p)
	}
	n, before := 0, units.Length{}
	for mark, residue := range p.Marks() {
		at := mark.Add(residue)
		if n > 0 && at.Sub(before) != p.Gap {
			t.Fatalf("gap %v in %+v", at.Sub(before), p)
		}
		if n == 0 && at != s.First || !mark.IsMultiple(s.Step) || s.Step.Less(residue.Abs().MulInt(2)) {
			t.Fatalf("mark %v, residue %v in %+v", mark, residue, p)
		}
		n, before = n+1, at
	}
	if n != s.Count || before != s.Last {
		t.Errorf("%d marks, last at %v: %+v", n, before, p)
	}
	if s.Step.Less(p.WorstMark.MulInt(2)) || s.Step.Less(p.WorstGap) {
		t.Errorf("worst mark %v, gap %v: %+v", p.WorstMark, p.WorstGap, p)
	}
	if p.CreepUp.Sign() < 0 || p.CreepDown.Sign() > 0 || p.Creep != p.CreepUp && p.Creep != p.CreepDown {
		t.Errorf("creep: %+v", p)
	}
	if n < 100 {
		checkSheet(t, p.Sheet())
	}
}

func checkHole(t *testing.T, p buttons.HolePlan) {
	t.Helper()
	if c, err := p.Spare.Sign(); err == nil && c < 0 || !p.Cut.IsMultiple(p.Spec.Step) {
		t.Errorf("%+v", p)
	}
	if p.Spec.Setting != buttons.NoSetting && p.End.Sub(p.Start) != p.Cut {
		t.Errorf("%+v", p)
	}
	checkSheet(t, p.Sheet())
}

func checkLap(t *testing.T, p buttons.LapPlan) {
	t.Helper()
	if p.InnerEnd.Less(p.OuterEnd) || p.OuterEnd.Sign() < 0 || p.Beyond.Sign() < 0 || p.Clash.Sign() < 0 || p.Clear.Sign() < 0 {
		t.Errorf("%+v", p)
	}
	for l := range p.Remedies() {
		if q, err := l.Plan(); err != nil || q.Crosses {
			t.Errorf("the remedy %+v: %v", l, err)
		}
	}
	checkSheet(t, p.Sheet())
}

func checkStock(t *testing.T, p buttons.StockPlan) {
	t.Helper()
	s := p.Spec
	if p.Need+p.Spare != s.Have+p.Short || p.Short > 0 && p.Spare > 0 {
		t.Errorf("%+v", p)
	}
	last := 0
	for _, g := range p.Gives {
		q, err := s.With(g).Plan()
		if err != nil || q.Short != 0 || q.Spare != g.Spare || q.Need != p.Need-g.Up || g.Up < last {
			t.Errorf("%+v is no way for %+v: %v", g, s, err)
		}
		last = g.Up
	}
	checkSheet(t, p.Sheet())
}
