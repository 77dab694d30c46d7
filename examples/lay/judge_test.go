package main

import (
	"encoding/json"
	"fmt"
	"math/big"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A judge of lays that shares nothing with the program: it reads the instance
// and the lay from their JSON by itself and computes in big.Rat.
type corner [2]*big.Rat

func minus(a, b *big.Rat) *big.Rat { return new(big.Rat).Sub(a, b) }

// leftOf is more than zero where c lies to the left of the line from a to b.
func leftOf(a, b, c corner) int {
	p := new(big.Rat).Mul(minus(b[0], a[0]), minus(c[1], a[1]))
	return p.Cmp(new(big.Rat).Mul(minus(b[1], a[1]), minus(c[0], a[0])))
}

// within reports whether p is strictly inside the outline.
func within(poly []corner, p corner) bool {
	inside := false
	for i, a := range poly {
		b := poly[(i+1)%len(poly)]
		side := leftOf(a, b, p)
		if side == 0 && new(big.Rat).Mul(minus(p[0], a[0]), minus(p[0], b[0])).Sign() <= 0 && new(big.Rat).Mul(minus(p[1], a[1]), minus(p[1], b[1])).Sign() <= 0 {
			return false
		}
		if up := a[1].Cmp(p[1]) <= 0; up != (b[1].Cmp(p[1]) <= 0) && up == (side > 0) {
			inside = !inside
		}
	}
	return inside
}

// cuts are the points at which the line from a to b is cut by the outline's, as
// parts of the way, 0 and 1 among them.
func cuts(a, b corner, poly []corner) []*big.Rat {
	at := []*big.Rat{new(big.Rat), big.NewRat(1, 1)}
	add := func(t *big.Rat) {
		if t.Sign() > 0 && t.Cmp(big.NewRat(1, 1)) < 0 {
			at = append(at, t)
		}
	}
	dx, dy := minus(b[0], a[0]), minus(b[1], a[1])
	for i, c := range poly {
		d := poly[(i+1)%len(poly)]
		ex, ey := minus(d[0], c[0]), minus(d[1], c[1])
		det := minus(new(big.Rat).Mul(dx, ey), new(big.Rat).Mul(dy, ex))
		if det.Sign() == 0 {
			for _, p := range []corner{c, d} {
				if dx.Sign() != 0 {
					add(new(big.Rat).Quo(minus(p[0], a[0]), dx))
				} else {
					add(new(big.Rat).Quo(minus(p[1], a[1]), dy))
				}
			}
			continue
		}
		n := minus(new(big.Rat).Mul(minus(c[0], a[0]), ey), new(big.Rat).Mul(minus(c[1], a[1]), ex))
		add(n.Quo(n, det))
	}
	return at
}

// enters reports whether the border of one outline goes through the inside of
// another: between any two cuts it is inside or outside as a whole.
func enters(one, other []corner) bool {
	for i, a := range one {
		b := one[(i+1)%len(one)]
		at := cuts(a, b, other)
		for j, t := range at {
			next := big.NewRat(2, 1)
			for _, u := range at {
				if u.Cmp(t) > 0 && u.Cmp(next) < 0 {
					next = u
				}
			}
			if next.Cmp(big.NewRat(1, 1)) > 0 {
				continue
			}
			m := new(big.Rat).Mul(new(big.Rat).Add(at[j], next), big.NewRat(1, 2))
			var p corner
			for k := range p {
				p[k] = new(big.Rat).Add(a[k], new(big.Rat).Mul(m, minus(b[k], a[k])))
			}
			if within(other, p) {
				return true
			}
		}
	}
	return false
}

// overlap reports whether the insides of two outlines have a point in common.
func overlap(a, b []corner) bool {
	for k := range 2 {
		loA, hiA := extreme(a, k)
		loB, hiB := extreme(b, k)
		if hiA.Cmp(loB) <= 0 || hiB.Cmp(loA) <= 0 {
			return false
		}
	}
	if enters(a, b) || enters(b, a) {
		return true
	}
	// Else they are apart or the very same: a point just inside a side tells.
	for i, p := range a {
		q := a[(i+1)%len(a)]
		for _, eps := range []int64{1000, 1_000_000} {
			mx := new(big.Rat).Mul(new(big.Rat).Add(p[0], q[0]), big.NewRat(1, 2))
			my := new(big.Rat).Mul(new(big.Rat).Add(p[1], q[1]), big.NewRat(1, 2))
			in := corner{mx.Sub(mx, new(big.Rat).Mul(minus(q[1], p[1]), big.NewRat(1, eps))), my.Add(my, new(big.Rat).Mul(minus(q[0], p[0]), big.NewRat(1, eps)))}
			if within(a, in) && within(b, in) {
				return true
			}
		}
	}
	return false
}

func extreme(p []corner, k int) (lo, hi *big.Rat) {
	lo, hi = p[0][k], p[0][k]
	for _, q := range p {
		if q[k].Cmp(lo) < 0 {
			lo = q[k]
		}
		if q[k].Cmp(hi) > 0 {
			hi = q[k]
		}
	}
	return lo, hi
}

// exact is a JSON number or a string with its digits.
type exact struct{ *big.Rat }

func (e *exact) UnmarshalJSON(data []byte) error {
	r, ok := new(big.Rat).SetString(strings.Trim(string(data), `"`))
	if !ok {
		return fmt.Errorf("%s is no number", data)
	}
	e.Rat = r
	return nil
}

// judge says what is wrong with a lay, or nothing.
func judge(instance, lay []byte) string {
	var in struct {
		Name   string
		Width  exact
		Pieces []struct {
			ID        string
			Qty       int
			Rotations []int
			Points    [][2]exact
		}
		Rotations []int `json:"allowed_rotations"`
	}
	if err := json.Unmarshal(instance, &in); err != nil {
		return err.Error()
	}
	var out struct {
		Instance      string
		Width, Length exact
		Density       exact
		Seed, Work    *int64
		Placements    []struct {
			Piece          string
			Copy, Rotation *int
			Flip           *bool
			X, Y           exact
		}
	}
	d := json.NewDecoder(strings.NewReader(string(lay)))
	d.DisallowUnknownFields()
	if err := d.Decode(&out); err != nil {
		return err.Error()
	}
	if out.Instance != in.Name || out.Width.Cmp(in.Width.Rat) != 0 || out.Seed == nil || out.Work == nil {
		return "the head is another's"
	}
	laid := map[string]map[int]bool{}
	var all [][]corner
	far, area := new(big.Rat), new(big.Rat)
	for i, at := range out.Placements {
		found := false
		for _, p := range in.Pieces {
			if p.ID != at.Piece {
				continue
			}
			found = true
			if laid[p.ID] == nil {
				laid[p.ID] = map[int]bool{}
			}
			if at.Copy == nil || *at.Copy < 1 || *at.Copy > p.Qty || laid[p.ID][*at.Copy] || at.Flip == nil || *at.Flip {
				return fmt.Sprintf("placement %d is no copy of its own", i)
			}
			laid[p.ID][*at.Copy] = true
			may := false
			for _, r := range append(p.Rotations, in.Rotations...) {
				may = may || at.Rotation != nil && r == *at.Rotation
			}
			if !may {
				return fmt.Sprintf("placement %d is turned", i)
			}
			var poly []corner
			for _, q := range p.Points {
				x, y := q[0].Rat, q[1].Rat
				for range *at.Rotation / 90 {
					x, y = new(big.Rat).Neg(y), x
				}
				c := corner{new(big.Rat).Add(x, at.X.Rat), new(big.Rat).Add(y, at.Y.Rat)}
				if c[0].Sign() < 0 || c[0].Cmp(out.Length.Rat) > 0 || c[1].Sign() < 0 || c[1].Cmp(in.Width.Rat) > 0 {
					return fmt.Sprintf("placement %d is off the strip", i)
				}
				poly = append(poly, c)
			}
			if _, hi := extreme(poly, 0); hi.Cmp(far) > 0 {
				far = hi
			}
			for k, a := range poly {
				b := poly[(k+1)%len(poly)]
				area.Add(area, minus(new(big.Rat).Mul(a[0], b[1]), new(big.Rat).Mul(a[1], b[0])))
			}
			for j, other := range all {
				if overlap(poly, other) {
					return fmt.Sprintf("placements %d and %d overlap", j, i)
				}
			}
			all = append(all, poly)
		}
		if !found {
			return fmt.Sprintf("placement %d is of no piece", i)
		}
	}
	for _, p := range in.Pieces {
		if len(laid[p.ID]) != p.Qty {
			return "not all of " + p.ID + " is laid"
		}
	}
	if far.Cmp(out.Length.Rat) != 0 {
		return "the length is " + far.RatString()
	}
	percent := area.Mul(area, big.NewRat(50, 1)).Quo(area, new(big.Rat).Mul(far, in.Width.Rat))
	if percent.FloatString(4) != out.Density.FloatString(4) {
		return "the density is " + percent.FloatString(4)
	}
	return ""
}

// The judge finds nothing wrong with the lays of the program as they are written.
func TestJudge(t *testing.T) {
	names := []string{"shapes1", "jig16", "blaz1", "rect_c1p1", "dighe1", "jakobs1", "poly1a", "rect_c2p3", "shirts", "swim"}
	if testing.Short() {
		names = names[:4]
	}
	for _, name := range names {
		path := filepath.Join("testdata", name+".json")
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		code, out, errs := lays(t, "-work", "1", "-json", path)
		if code != 0 {
			t.Fatal(name, errs)
		}
		if fault := judge(data, []byte(out)); fault != "" {
			t.Errorf("%s: %s", name, fault)
		}
	}
}

// The judge and the program agree about two unit squares and an L.
func TestJudgeAgrees(t *testing.T) {
	const in = `{"name":"three","width":3,"allowed_rotations":[0,180],"pieces":[
{"id":"square","qty":2,"points":[[0,0],[1,0],[1,1],[0,1]]},
{"id":"ell","qty":1,"points":[[0,0],[2,0],[2,1],[1,1],[1,2],[0,2]]}]}`
	dir := t.TempDir()
	path, layPath := filepath.Join(dir, "three.json"), filepath.Join(dir, "lay")
	if err := os.WriteFile(path, []byte(in), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		x1, y1, x2, y2, x3, y3 string
		turn                   int
		good                   bool
	}{
		{"1", "1", "0", "2", "0", "0", 0, true},
		{"1", "0.999999999", "0", "2", "0", "0", 0, false},
		{"0.999999999", "1", "0", "2", "0", "0", 0, false},
		{"1", "1", "0", "1.999999999", "0", "0", 0, false},
		{"0", "0", "1", "2", "2", "2", 180, true},
		{"0", "0", "1", "2.000000001", "2", "2", 180, false},
		{"-0.000000001", "0", "1", "2", "2", "2", 180, false},
		{"0", "0", "0", "0", "2", "2", 180, false},
		{"0", "0", "1", "2", "2", "2", 90, false},
	} {
		text := fmt.Sprintf(`{"instance":"three","width":3,"length":2,"density":83.3333,"seed":1,"work":1,"placements":[
{"piece":"square","copy":1,"rotation":0,"flip":false,"x":%s,"y":%s},
{"piece":"square","copy":2,"rotation":0,"flip":false,"x":%s,"y":%s},
{"piece":"ell","copy":1,"rotation":%d,"flip":false,"x":%s,"y":%s}]}`, test.x1, test.y1, test.x2, test.y2, test.turn, test.x3, test.y3)
		if err := os.WriteFile(layPath, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		fault := judge([]byte(in), []byte(text))
		code, _, errs := lays(t, "-check", layPath, path)
		if (fault == "") != test.good || (code == 0) != test.good {
			t.Errorf("%+v: the judge says %q, the program %s", test, fault, errs)
		}
	}
}
