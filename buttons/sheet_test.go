package buttons_test

import (
	"strings"
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// sheets are the sheets of plans of every form.
func sheets(t *testing.T) map[string]ticket.Sheet {
	t.Helper()
	out := map[string]ticket.Sheet{}
	keep := func(name string, s ticket.Sheet, err error) {
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		out[name] = s
	}
	front := buttons.Row{First: long("5/8 in"), Last: long("22 in"), Count: 9}
	p, err := front.Plan()
	keep("row", p.Sheet(), err)
	front.Tape, front.From, front.Step = units.InchTape, "the finished neck seam", long("1/16 in")
	p, err = front.Plan()
	keep("row, nothing assumed", p.Sheet(), err)
	for _, months := range []int{12, 60, 180, 204, 400} {
		front.Months = months
		p, err = front.Plan()
		keep("row, age "+ticket.Of(months).String(), p.Sheet(), err)
	}
	p, err = buttons.Row{First: long("1 1/8 in"), Count: 1}.Plan()
	keep("row of one", p.Sheet(), err)
	p, err = buttons.Row{First: long("1 in"), Count: 1200, Gap: long("1 in")}.Plan()
	keep("long row", p.Sheet(), err)
	for _, o := range []buttons.Outline{buttons.NoOutline, buttons.Flat, buttons.Ball, buttons.Shaped} {
		for _, place := range []units.Length{{}, long("6 in")} {
			for _, s := range []buttons.Setting{buttons.NoSetting, buttons.Vertical, buttons.Horizontal} {
				h := buttons.Hole{Diameter: long("9/20 in"), Outline: o, Setting: s, Ease: long("1/32 in")}
				if o == buttons.Shaped {
					h.Diameter, h.Wrap, h.Eye = units.Length{}, long("1 1/4 in"), h.Place
				}
				if s != buttons.NoSetting {
					h.Place = place
				}
				p, err := h.Plan()
				keep("hole "+o.String()+" "+s.String()+" "+place.String(), p.Sheet(), err)
			}
		}
	}
	for _, s := range []buttons.Setting{buttons.Vertical, buttons.Horizontal} {
		for _, row := range []string{"0 in", "1/4 in", "5/8 in", "3/4 in", "1 1/8 in", "2 in"} {
			p, err := buttons.Lap{Hole: long("9/16 in"), Diameter: long("1 in"), Setting: s, Topstitch: long(row)}.Plan()
			keep("lap "+s.String()+" "+row, p.Sheet(), err)
		}
		p, err := buttons.Lap{Lap: long("3/4 in"), Hole: long("9/16 in"), Setting: s}.Plan()
		keep("lap given, "+s.String(), p.Sheet(), err)
	}
	for _, have := range []int{2, 11, 12, 13, 20} {
		p, err := buttons.Stock{Have: have, Places: []buttons.Placement{{Name: "front", Count: 9}, {Count: 2, Times: 2}}}.Plan()
		keep("stock of "+ticket.Of(have).String(), p.Sheet(), err)
	}
	return out
}

// TestSheetsHonest checks every sheet: the working comes out, every citation is
// in the list or claims none, and no measure stands in the prose.
func TestSheetsHonest(t *testing.T) {
	for name, s := range sheets(t) {
		if err := s.Check(); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if s.Title == "" || len(s.Steps) == 0 || len(s.Cautions) == 0 || len(s.Sources) == 0 {
			t.Errorf("%s: something is empty", name)
		}
		for _, c := range s.Sources {
			if _, ok := source.Lookup(c.ID); !ok && c.Known != source.Practice && c.Known != source.Computed || c.For == "" {
				t.Errorf("%s: %+v", name, c)
			}
		}
		for _, st := range s.Steps {
			do := strings.TrimPrefix(st.Do, "Mark button ")
			if do == st.Do && strings.ContainsAny(st.Do+st.Note+st.Check.Mend, "0123456789") {
				t.Errorf("%s: a measure in the prose of %q", name, st.Do)
			}
		}
		for line := range strings.Lines(s.Text(units.Notation{}, units.Notation{Unit: units.Millimetre})) {
			if len([]rune(strings.TrimSuffix(line, "\n"))) > ticket.Columns && strings.Count(strings.TrimSpace(line), " ") > 0 {
				t.Errorf("%s: too wide: %q", name, line)
			}
		}
	}
}

func TestSheetsSay(t *testing.T) {
	all := sheets(t)
	for _, c := range []struct{ sheet, with, without string }{
		{"row", "Assumed: tape, from, step", "16 CFR"},
		{"row", "ends too far by: 1/8 in", "ends too far by: 1/4 in"},
		{"row, nothing assumed", "22 in from the finished neck seam", "assumed"},
		{"row, age 12", "1501.3(d)", "give the wearer's age"},
		{"row, age 12", "SI 1985/2043", "forbids buttons"},
		{"row, age 60", "16 CFR 1120", "1501"},
		{"row, age 180", "16 CFR 1120", "sleepwear"},
		{"row, age 204", "Needles", "16 CFR 1120"},
		{"row, age 400", "Needles", "children"},
		{"row of one", "Mark button 1.", "gap"},
		{"long row", "Mark button 1200.", "not so"},
		{"lap horizontal 1 1/8 in", "Do not topstitch here", "clear between"},
		{"lap vertical 3/4 in", "move the row off the line of the buttons", "set the holes vertical"},
		{"lap vertical 1/4 in", "clear between the topstitching and the hole", "Do not"},
		{"lap horizontal 5/8 in", "leave a little between them", "Do not"},
		{"lap horizontal 2 in", "clear between the hole and the topstitching", "Do not"},
		{"stock of 2", "There are not enough buttons", "given up"},
		{"stock of 11", "No button is left over", "not enough"},
		{"stock of 12", "fewer than drafted", "not enough"},
		{"stock of 13", "No button is left over", "fewer than drafted"},
		{"stock of 20", "spare: 7 = 20 in the tin - 13 drafted", "No button is left over"},
	} {
		text := strings.Join(strings.Fields(all[c.sheet].Text()), " ")
		if !strings.Contains(text, c.with) {
			t.Errorf("%s does not say %q:\n%s", c.sheet, c.with, text)
		}
		if strings.Contains(text, c.without) {
			t.Errorf("%s says %q", c.sheet, c.without)
		}
	}
}
