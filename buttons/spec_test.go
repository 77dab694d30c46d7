package buttons_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
)

func long(s string) units.Length { return units.MustParse(s) }

func TestRowSolve(t *testing.T) {
	for _, c := range []struct {
		why   string
		given buttons.Row
		want  buttons.Row
	}{
		{"first, last and count give the gap",
			buttons.Row{First: long("1 in"), Last: long("9 in"), Count: 5},
			buttons.Row{First: long("1 in"), Last: long("9 in"), Count: 5, Gap: long("2 in")}},
		{"first, count and gap give the last",
			buttons.Row{First: long("1 in"), Count: 5, Gap: long("2 in")},
			buttons.Row{First: long("1 in"), Last: long("9 in"), Count: 5, Gap: long("2 in")}},
		{"last, count and gap give the first",
			buttons.Row{Last: long("9 in"), Count: 5, Gap: long("2 in")},
			buttons.Row{First: long("1 in"), Last: long("9 in"), Count: 5, Gap: long("2 in")}},
		{"first, last and gap give the count",
			buttons.Row{First: long("1 in"), Last: long("9 in"), Gap: long("2 in")},
			buttons.Row{First: long("1 in"), Last: long("9 in"), Count: 5, Gap: long("2 in")}},
		{"both limits give the fewest",
			buttons.Row{First: long("1 in"), Last: long("13 in"), MinGap: long("2 in"), MaxGap: long("4 in")},
			buttons.Row{First: long("1 in"), Last: long("13 in"), Count: 4, Gap: long("4 in"), MinGap: long("2 in"), MaxGap: long("4 in")}},
		{"the least gap alone gives the most",
			buttons.Row{First: long("1 in"), Last: long("13 in"), MinGap: long("2 in")},
			buttons.Row{First: long("1 in"), Last: long("13 in"), Count: 7, Gap: long("2 in"), MinGap: long("2 in")}},
		{"the least gap within the stock",
			buttons.Row{First: long("1 in"), Last: long("13 in"), MinGap: long("2 in"), Have: 5},
			buttons.Row{First: long("1 in"), Last: long("13 in"), Count: 5, Gap: long("3 in"), MinGap: long("2 in"), Have: 5}},
		{"a tiny least gap within the stock",
			buttons.Row{First: long("1 in"), Last: long("13 in"), MinGap: long("1/99999 in"), Have: 5},
			buttons.Row{First: long("1 in"), Last: long("13 in"), Count: 5, Gap: long("3 in"), MinGap: long("1/99999 in"), Have: 5}},
		{"the greatest gap alone gives the fewest",
			buttons.Row{First: long("1 in"), Last: long("13 in"), MaxGap: long("5 in")},
			buttons.Row{First: long("1 in"), Last: long("13 in"), Count: 4, Gap: long("4 in"), MaxGap: long("5 in")}},
		{"the stock gives the count",
			buttons.Row{First: long("1 in"), Last: long("13 in"), Have: 7},
			buttons.Row{First: long("1 in"), Last: long("13 in"), Count: 7, Gap: long("2 in"), Have: 7}},
		{"the stock and a gap give the last",
			buttons.Row{First: long("1 in"), Gap: long("2 in"), Have: 3},
			buttons.Row{First: long("1 in"), Last: long("5 in"), Count: 3, Gap: long("2 in"), Have: 3}},
		{"a single button", buttons.Row{First: long("1 1/8 in"), Count: 1},
			buttons.Row{First: long("1 1/8 in"), Last: long("1 1/8 in"), Count: 1}},
		{"a single button, said twice", buttons.Row{First: long("1 1/8 in"), Last: long("1 1/8 in"), Count: 1, Have: 4},
			buttons.Row{First: long("1 1/8 in"), Last: long("1 1/8 in"), Count: 1, Have: 4}},
		{"the one there is", buttons.Row{First: long("1 1/8 in"), Have: 1},
			buttons.Row{First: long("1 1/8 in"), Last: long("1 1/8 in"), Count: 1, Have: 1}},
		{"all given and agreeing",
			buttons.Row{First: long("1 in"), Last: long("9 in"), Count: 5, Gap: long("2 in"), MinGap: long("1 in"), MaxGap: long("2 in"), Have: 9},
			buttons.Row{First: long("1 in"), Last: long("9 in"), Count: 5, Gap: long("2 in"), MinGap: long("1 in"), MaxGap: long("2 in"), Have: 9}},
	} {
		t.Run(c.why, func(t *testing.T) {
			gotPlan, err := c.given.Plan()
			got := gotPlan.Spec
			if err != nil {
				t.Fatal(err)
			}
			c.want.Tape, c.want.From, c.want.Step = units.InchTape, "the top edge", long("1/16 in")
			if d := cmp.Diff(c.want, got, same); d != "" {
				t.Error(d)
			}
			if !slices.Equal(gotPlan.Assumed, []string{"tape", "from", "step"}) {
				t.Errorf("assumed %q", gotPlan.Assumed)
			}
		})
	}
}

// same compares the values that == compares.
var same = cmp.Options{
	cmp.Comparer(func(a, b units.Length) bool { return a == b }),
	cmp.Comparer(func(a, b units.Near) bool { return a == b }),
}

func TestRowLimits(t *testing.T) {
	p, err := buttons.Row{First: long("1 in"), Last: long("13 in"), MinGap: long("2 in"), MaxGap: long("4 in"), Have: 6}.Plan()
	if err != nil || p.Fewest != 4 || p.Most != 6 {
		t.Errorf("%d to %d buttons, %v", p.Fewest, p.Most, err)
	}
	p, err = buttons.Row{First: long("1 in"), Last: long("13 in"), Count: 4}.Plan()
	if err != nil || p.Fewest != 0 || p.Most != 0 {
		t.Errorf("without limits: %d to %d buttons, %v", p.Fewest, p.Most, err)
	}
	// Here the limits allow more buttons than a row may have.
	p, err = buttons.Row{First: long("1 in"), Last: long("13 in"), Count: 4, MinGap: long("1/99999 in")}.Plan()
	if err != nil || p.Fewest != 2 || p.Most != buttons.MaxCount {
		t.Errorf("beyond MaxCount: %d to %d buttons, %v", p.Fewest, p.Most, err)
	}
}

func TestReused(t *testing.T) {
	drafted := buttons.Row{First: long("5/8 in"), Last: long("22 in"), Count: 9}
	for _, c := range []struct {
		now  buttons.Row
		want [][2]int
	}{
		{buttons.Row{First: long("5/8 in"), Last: long("22 in"), Count: 7}, [][2]int{{1, 1}, {5, 4}, {9, 7}}},
		{drafted, [][2]int{{1, 1}, {2, 2}, {3, 3}, {4, 4}, {5, 5}, {6, 6}, {7, 7}, {8, 8}, {9, 9}}},
		{buttons.Row{First: long("5/8 in"), Count: 1}, [][2]int{{1, 1}}},
		{buttons.Row{First: long("11 5/16 in"), Last: long("30 in"), Count: 2}, [][2]int{{5, 1}}},
		{buttons.Row{First: long("1 in"), Last: long("21 in"), Count: 5}, nil},
		// The gap is the drafted one, and the row begins later and ends earlier.
		{buttons.Row{First: long("3 19/64 in"), Gap: long("2 43/64 in"), Count: 3}, [][2]int{{2, 1}, {3, 2}, {4, 3}}},
	} {
		p, err := c.now.Plan()
		if err != nil {
			t.Fatal(err)
		}
		seq, err := p.Reused(drafted)
		if err != nil {
			t.Fatal(err)
		}
		var got [][2]int
		for _, one := range seq {
			got = append(got, [2]int{one.Old, one.New})
		}
		if d := cmp.Diff(c.want, got); d != "" {
			t.Errorf("%d buttons\n%s", c.now.Count, d)
		}
	}
}

func TestHoleBall(t *testing.T) {
	// Half the girth of a ball of 1/2 in is pi/4 in, between 25/32 and 13/16.
	p, err := buttons.Hole{Diameter: long("1/2 in"), Outline: buttons.Ball, Ease: long("1/32 in")}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if _, exact := p.Exact.Exact(); exact {
		t.Error("pi is exact")
	}
	if lo, hi := p.Exact.Bounds(); lo.Less(long("0.8166 in")) || long("0.8167 in").Less(hi) {
		t.Errorf("between %v and %v", lo, hi)
	}
	if p.Cut != long("7/8 in") || !slices.Equal(p.Assumed, []string{"tape", "step"}) || p.Start != (units.Length{}) {
		t.Errorf("cut %v, assumed %q, start %v", p.Cut, p.Assumed, p.Start)
	}
}

func TestHoleDefaults(t *testing.T) {
	p, err := buttons.Hole{Diameter: long("1/2 in"), Setting: buttons.Vertical}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	want := buttons.Hole{Diameter: long("1/2 in"), Thickness: long("1/8 in"), Outline: buttons.Flat,
		Tape: units.InchTape, Step: long("1/16 in"), Setting: buttons.Vertical, Reach: long("1/8 in")}
	if d := cmp.Diff(want, p.Spec, same); d != "" {
		t.Error(d)
	}
	if !slices.Equal(p.Assumed, []string{"tape", "thickness", "outline", "step", "reach"}) || p.Cut != long("5/8 in") || p.Start != long("-1/8 in") || p.End != long("1/2 in") {
		t.Errorf("%+v", p)
	}
}

func TestLapPlan(t *testing.T) {
	lap := func(row string, s buttons.Setting) buttons.Lap {
		l := buttons.Lap{Lap: long("3/4 in"), Hole: long("9/16 in"), Setting: s}
		if row != "" {
			l.Topstitch = long(row)
		}
		return l
	}
	for _, c := range []struct {
		why          string
		given        buttons.Lap
		crosses      bool
		clash, clear string
		remedies     int
	}{
		{"no row", lap("", buttons.Horizontal), false, "0 in", "0 in", 0},
		{"row outside the hole", lap("1/4 in", buttons.Horizontal), false, "0 in", "3/8 in", 0},
		{"row at its outer end", lap("5/8 in", buttons.Horizontal), false, "0 in", "0 in", 0},
		{"row on the centre line", lap("3/4 in", buttons.Horizontal), true, "7/16 in", "0 in", 1},
		{"row through it", lap("1 1/8 in", buttons.Horizontal), true, "1/16 in", "0 in", 2},
		{"row at its inner end", lap("1 3/16 in", buttons.Horizontal), false, "0 in", "0 in", 0},
		{"row inside it", lap("1 1/2 in", buttons.Horizontal), false, "0 in", "5/16 in", 0},
		{"vertical, row outside", lap("1/4 in", buttons.Vertical), false, "0 in", "1/2 in", 0},
		{"vertical, row along it", lap("3/4 in", buttons.Vertical), true, "9/16 in", "0 in", 1},
		{"vertical, row inside", lap("1 1/8 in", buttons.Vertical), false, "0 in", "3/8 in", 0},
	} {
		t.Run(c.why, func(t *testing.T) {
			p, err := c.given.Plan()
			if err != nil {
				t.Fatal(err)
			}
			if p.Crosses != c.crosses || p.Clash != long(c.clash) || p.Clear != long(c.clear) {
				t.Errorf("crosses %v by %v, clear %v", p.Crosses, p.Clash, p.Clear)
			}
			n := 0
			for _, l := range p.Remedies {
				n++
				q, err := l.Plan()
				if err != nil || q.Crosses {
					t.Errorf("the remedy %+v: %v", q, err)
				}
			}
			if n != c.remedies {
				t.Errorf("%d remedies", n)
			}
		})
	}
	lPlan, err := buttons.Lap{Diameter: long("1/2 in"), Setting: buttons.Vertical}.Plan()
	l := lPlan.Spec
	if err != nil || l.Lap != long("1/2 in") {
		t.Errorf("default lap %v, %v", l.Lap, err)
	}
}

// TestBounds accepts what lies just on a limit.
func TestBounds(t *testing.T) {
	if p, err := (buttons.Lap{Lap: long("1/2 in"), Diameter: long("1 in"), Setting: buttons.Vertical}).Plan(); err != nil || !p.Beyond.IsZero() {
		t.Errorf("a button that ends with the lap: %v, %v", p.Beyond, err)
	}
	if _, err := (buttons.Hole{Diameter: long("1 in"), Setting: buttons.Horizontal, Reach: long("1 1/8 in")}).Plan(); err == nil {
		t.Error("a hole all on the outer side of the centre line")
	}
	if p, err := (buttons.Hole{Diameter: long("1 in"), Setting: buttons.Vertical, Place: long("1/8 in")}).Plan(); err != nil || !p.Start.IsZero() {
		t.Errorf("a hole from the very end: %v, %v", p.Start, err)
	}
	full := buttons.Stock{Have: buttons.MaxCount, Places: []buttons.Placement{{Count: 100, Times: 100, Least: 1}}, Months: buttons.MaxMonths}
	if p, err := full.Plan(); err != nil || p.Need != buttons.MaxCount || p.Short != 0 {
		t.Errorf("a full stock: %+v, %v", p, err)
	}
	most := buttons.Row{First: long("1 in"), Gap: long("1 in"), Count: buttons.MaxCount, Have: buttons.MaxCount}
	if p, err := most.Plan(); err != nil || p.Spec.Last != long("10000 in") {
		t.Errorf("the longest row: %v, %v", p.Spec.Last, err)
	}
}

func TestStockAssumed(t *testing.T) {
	for _, c := range []struct {
		given buttons.Placement
		want  string
	}{
		{buttons.Placement{Count: 2}, "places.times places.least"},
		{buttons.Placement{Count: 2, Least: 1}, "places.times"},
		{buttons.Placement{Count: 2, Times: 1}, "places.least"},
		{buttons.Placement{Count: 2, Times: 1, Least: 1}, ""},
	} {
		places := []buttons.Placement{c.given}
		p, err := buttons.Stock{Have: 2, Places: places}.Plan()
		if err != nil || strings.Join(p.Assumed, " ") != c.want || p.Spec.Places[0] != (buttons.Placement{Count: 2, Times: 1, Least: 1}) {
			t.Errorf("%+v: assumed %q, solved %+v, %v", c.given, p.Assumed, p.Spec.Places, err)
		}
		if places[0] != c.given {
			t.Errorf("the caller's slice became %+v", places)
		}
	}
}
