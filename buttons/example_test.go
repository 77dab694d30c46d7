package buttons_test

import (
	"fmt"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
)

// Nine buttons down the front of the highwayman's shirt.
func ExampleRow_Plan() {
	p, err := buttons.Row{
		First: units.Inch.Frac(5, 8), Last: units.Inch.Of(22), Count: 9,
		From: "the finished neck seam",
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("gap", p.Gap)
	for _, at := range p.Places {
		fmt.Printf("%-11v %v\n", at.Mark, at.Residue)
	}
	fmt.Println("the nearest mark laid eight times ends out by", p.Creep)
	// Output:
	// gap 2 43/64 in
	// 5/8 in      0 in
	// 3 5/16 in   -1/64 in
	// 6 in        -1/32 in
	// 8 5/8 in    1/64 in
	// 11 5/16 in  0 in
	// 14 in       -1/64 in
	// 16 11/16 in -1/32 in
	// 19 5/16 in  1/64 in
	// 22 in       0 in
	// the nearest mark laid eight times ends out by 1/8 in
}

// The pattern of the page's coat has seven, one of them at the bust line and one at the
// waist; the tin has six.
func ExampleRow_Plan_pins() {
	p, err := buttons.Row{
		First: units.Inch.Of(1), Last: units.Inch.Of(21), Count: 7, Have: 6,
		Pins: []units.Length{units.Inch.Of(7), units.Inch.Of(13)},
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("set", p.Count, "short", p.Short)
	for _, at := range p.Places {
		fmt.Println(at.Exact)
	}
	// Output:
	// set 6 short 1
	// 1 in
	// 4 in
	// 7 in
	// 13 in
	// 17 in
	// 21 in
}

// How many buttons for the page's doublet, if they are to stand close.
func ExampleRow_Plan_solved() {
	front := buttons.Row{First: units.Inch.Frac(1, 2), Last: units.Inch.Of(11)}
	front.MinGap, front.MaxGap = units.Inch.Of(1), units.Inch.Mixed(1, 1, 4)
	sPlan, err := front.Plan()
	s := sPlan.Spec
	fmt.Println(s.Count, "buttons,", s.Gap, "apart", err)

	front.MinGap = units.Inch.Mixed(1, 3, 16)
	_, err = front.Plan()
	fmt.Println(err)
	// Output:
	// 10 buttons, 1 1/6 in apart <nil>
	// minGap 1 3/16 in: no whole number of buttons fits, want another limit: 9 buttons are 1 5/16 in apart, 10 buttons are 1 1/6 in apart
}

// Seven buttons in place of nine: which chalk marks still serve?
func ExampleRowPlan_Reused() {
	drafted := buttons.Row{First: units.Inch.Frac(5, 8), Last: units.Inch.Of(22), Count: 9}
	seven, err := buttons.Row{First: units.Inch.Frac(5, 8), Last: units.Inch.Of(22), Count: 7}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	serve, err := seven.Reused(drafted)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, one := range serve {
		fmt.Println("drafted mark", one.Old, "is button", one.New)
	}
	// Output:
	// drafted mark 1 is button 1
	// drafted mark 5 is button 4
	// drafted mark 9 is button 7
}

// A hole for an 18-ligne shirt button, up and down the front.
func ExampleHole_Plan() {
	p, err := buttons.Hole{
		Diameter: units.Ligne.Of(18), Thickness: units.Inch.Frac(3, 32),
		Setting: buttons.Vertical, Place: units.Inch.Of(6),
	}.Plan()
	fmt.Println(p.Exact, "cut", p.Cut, "from", p.Start, "to", p.End, err)
	fmt.Println("assumed:", p.Assumed)
	// Output:
	// 87/160 in cut 9/16 in from 5 7/8 in to 6 7/16 in <nil>
	// assumed: [tape outline step reach]
}

// The ball buttons of the page's doublet pass the hole as half their girth.
func ExampleHole_Plan_ball() {
	p, err := buttons.Hole{Diameter: units.Inch.Frac(3, 8), Outline: buttons.Ball}.Plan()
	_, exact := p.Exact.Exact()
	fmt.Println("cut", p.Cut, "exact:", exact, err)
	// Output: cut 5/8 in exact: false <nil>
}

// The topstitching of the shirt front would run through its holes.
func ExampleLap_Plan() {
	p, err := buttons.Lap{
		Lap: units.Inch.Frac(3, 4), Hole: units.Inch.Frac(9, 16),
		Topstitch: units.Inch.Mixed(1, 1, 8), Setting: buttons.Horizontal,
	}.Plan()
	fmt.Println("inner end", p.InnerEnd, "crosses", p.Crosses, "by", p.Clash, err)
	for _, l := range p.Remedies {
		fmt.Println("or", l.Setting, "with the row at", l.Topstitch)
	}
	// Output:
	// inner end 1 3/16 in crosses true by 1/16 in <nil>
	// or vertical with the row at 1 1/8 in
	// or horizontal with the row at 1 5/16 in
}

// Eleven buttons alike are in the tin; the shirt is drafted with thirteen.
func ExampleStock_Plan() {
	p, err := buttons.Stock{Have: 11, Places: []buttons.Placement{
		{Name: "front", Count: 9, Times: 1, Least: 7},
		{Name: "cuff", Count: 2, Times: 2, Least: 1},
	}}.Plan()
	fmt.Println("need", p.Need, "short", p.Short, err)
	for _, g := range p.Gives {
		fmt.Println("front", g.Counts[0], "each cuff", g.Counts[1], "spare", g.Spare)
	}
	// Output:
	// need 13 short 2 <nil>
	// front 9 each cuff 1 spare 0
	// front 7 each cuff 2 spare 0
	// front 8 each cuff 1 spare 1
	// front 7 each cuff 1 spare 2
}

func ExampleStock_With() {
	s := buttons.Stock{Have: 11, Places: []buttons.Placement{{Name: "front", Count: 9}, {Name: "cuff", Count: 2, Times: 2}}}
	p, err := s.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	q, err := s.With(p.Gives[0]).Plan()
	fmt.Println("need", q.Need, "short", q.Short, "spare", q.Spare, err)
	// Output: need 11 short 0 spare 0 <nil>
}

// The printed rules for one ball button disagree.
func ExampleHoleRules() {
	tape := units.Notation{}
	for r := range buttons.HoleRules() {
		if r.Outline == buttons.Ball {
			text, _ := tape.Format(r.Length(units.Inch.Frac(1, 2), units.Length{}).Mid())
			fmt.Println(text, r.Name)
		}
	}
	// Output:
	// scant 15/16 in half the wrap and an eighth
	// 5/8 in one and a quarter times the diameter
	// 1 11/16 in the whole girth and an eighth, which doubles the hole
}

func ExampleLapRules() {
	for r := range buttons.LapRules() {
		fmt.Println(r.Lap(units.Inch.Frac(3, 4)), r.Name)
	}
	// Output:
	// 5/8 in half the diameter and a quarter inch
	// 15.525 mm half the diameter and 6 mm
	// 9/16 in three quarters of the diameter
	// 3/4 in the diameter
	// 1 1/8 in one and a half times the diameter, small buttons
	// 3/8 in half the diameter, so that the button stays on the front
}

func ExampleLignesAt() {
	for r := range buttons.LignesAt(45) {
		fmt.Println(r.Exact(), "printed", r.Inches, r.Metric, r.Note)
	}
	// Output:
	// 1 1/8 in printed 1 3/16 in 30 mm both are off: 30 mm is 47.2 L
	// 1 1/8 in printed 1 1/8 in 28.5 mm
}
