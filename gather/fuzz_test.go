package gather_test

import (
	"encoding/binary"
	"errors"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/strip"
)

// bytes reads amounts from what the fuzzer gives; where it ends they are zero.
type bytes []byte

func (b *bytes) int() int64 {
	var n [8]byte
	if len(*b) == 0 {
		return 0
	}
	size := int((*b)[0]%9) + 1
	*b = (*b)[1:]
	copy(n[:min(size, 8)], *b)
	*b = (*b)[min(len(*b), min(size, 8)):]
	v := int64(binary.LittleEndian.Uint64(n[:]))
	if size < 8 && v&1 == 1 {
		return -(v >> 1)
	}
	return v >> 1
}

func (b *bytes) ratio() units.Ratio {
	num, den := b.int(), b.int()
	if den == 0 {
		den = 16
	}
	return units.RatioOf(num, den)
}

func (b *bytes) length() units.Length { return units.Inch.Of(1).Scale(b.ratio()) }

// encode is what [bytes.int] reads back as the numbers given.
func encode(parts ...[]int16) []byte {
	var b []byte
	for _, part := range parts {
		for _, n := range part {
			b = append(b, 1)
			b = binary.LittleEndian.AppendUint16(b, uint16(n)<<1)
		}
	}
	return b
}

func FuzzSpec(f *testing.F) {
	f.Add([]byte(nil)) // nothing given
	// The frill of a collar and the cuff of the same shirt, in sixteenths.
	gathered := []int16{3, 196, 16, 8, 16, 8, 16, 0, 0, 16, 252, 16, 0, 16}
	ruffle := []int16{0, 16, 20, 16, 1, 0, 16, 10, 16, 2, 16, 1, 1, 2, 0, 4}
	cuff := []int16{108, 16, 20, 16, 16, 16, 0, 16, 36, 16, 10, 16, 8, 16, 2, 16, 274, 16, 8, 16, 1, 4}
	f.Add(encode(gathered, ruffle, cuff))
	gathered[0], gathered[12] = 0, 32 // pieces wanted for a fullness
	ruffle[4], ruffle[14] = 0, 4      // hemmed, round four corners
	cuff[20], cuff[6] = 2, 144        // one end extended
	f.Add(encode(gathered, ruffle, cuff))
	gathered[7], gathered[5] = 1, 0 // a ring
	ruffle[11], ruffle[15] = 3, 7   // three rows, seven parts
	f.Add(encode(gathered, ruffle, cuff))
	gathered[7], gathered[3] = 2, 0 // pieces whose ends only meet
	f.Add(encode(gathered, ruffle, cuff))
	f.Add([]byte("\x02the quick brown fox jumps over the lazy dog, and again and again, and once more"))
	f.Fuzz(func(t *testing.T, data []byte) {
		b := bytes(data)
		s := gather.Strip{Strip: strip.Spec{Pieces: int(b.int()), Each: b.length(), Allowance: b.length(), Ends: b.length()}}
		how := b.int()
		s.Strip.Ring, s.Butted = how&1 == 1, how&2 == 2
		s.Strip.Least, s.Edge, s.Fullness = b.length(), b.length(), b.ratio()
		r := gather.Ruffle{
			Strip: s, Cut: b.length(), Depth: b.length(), Folded: b.int()&1 == 1, Hem: b.length(), Allowance: b.length(),
			Inside: b.length(), Rows: int(b.int()), Turn: units.Radians(b.ratio()), Corners: int(b.int()), Parts: int(b.int()),
		}
		c := gather.Cuff{
			Wrist: b.length(), Ease: b.length(), Lap: units.Give(b.length()), Finished: b.length(), Depth: b.length(), Allowance: b.length(),
			Turned: b.length(), Inside: b.length(), Sleeve: b.length(), Flat: b.length(), Setting: gather.Setting(b.int()), Parts: int(b.int()),
		}
		if p, err := s.Plan(); sound(t, err) {
			if p.Fullness.Less(units.RatioOf(1, 1)) || p.Surplus.Sign() < 0 {
				t.Fatalf("%+v", p)
			}
			check(t, "", p)
		}
		if p, err := r.Plan(); sound(t, err) {
			if sign, err := p.Outer.Sign(); err != nil || sign != 1 || p.Row.Sign() <= 0 || p.CutDepth.Cmp(p.Row) <= 0 {
				t.Fatalf("%+v", p)
			}
			last := units.Length{}
			for k, m := range p.Marks {
				if m.Full.Cmp(last) <= 0 || m.Full.Div(m.Edge) != p.Strip.Fullness {
					t.Fatalf("mark %d at %v and %v", k, m.Full, m.Edge)
				}
				last = m.Full
			}
			if len(p.Marks)+1 != p.Spec.Parts {
				t.Fatalf("%d marks, want %d parts", len(p.Marks), p.Spec.Parts)
			}
			check(t, "", p)
		}
		if p, err := c.Plan(); sound(t, err) {
			if p.Fullness.Less(p.Overall) || p.Past.Sign() < 0 || p.Row.Sign() <= 0 || p.Into.Sign() <= 0 {
				t.Fatalf("%+v", p)
			}
			check(t, "", p)
		}
	})
}

// sound reports whether there is a plan, and that an error is faults with a
// field each.
func sound(t *testing.T, err error) bool {
	t.Helper()
	if err == nil {
		return true
	}
	var faults fault.Faults
	if !errors.As(err, &faults) || len(faults) == 0 {
		t.Fatalf("no faults: %v", err)
	}
	for _, f := range faults {
		if f.Path == "" || f.Kind == "" || f.Limit == "" {
			t.Fatalf("a fault without a field: %v", f)
		}
	}
	return false
}
