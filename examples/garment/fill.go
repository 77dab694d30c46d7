package garment

import (
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// Fill writes a text in which lengths stand in braces, as in "cut it {3/32 in}
// shorter", each by the function given, so that the same words serve inches and
// metric. It fails where what stands in braces is no length.
func Fill(text string, write func(units.Length) string) (string, error) {
	var b strings.Builder
	for {
		before, rest, ok := strings.Cut(text, "{")
		b.WriteString(before)
		if !ok {
			return b.String(), nil
		}
		inside, after, ok := strings.Cut(rest, "}")
		if !ok {
			return "", fault.Faults{{Got: strconv.Quote(text), Limit: "a } for every {", Kind: fault.Form}}
		}
		l, err := units.Parse(inside)
		if err != nil {
			return "", fault.Faults{{Got: strconv.Quote(inside), Limit: "a length in braces: " + err.Error(), Kind: fault.Form}}
		}
		b.WriteString(write(l))
		text = after
	}
}

// text checks a text that may hold lengths in braces.
func (w *planner) text(path, s string) {
	const most = 5 * fault.MaxName
	if len(s) > most {
		w.audit.Fault(path, fmt.Sprintf("%d bytes", len(s)), fmt.Sprintf("at most %d bytes", most), fault.Range)
		return
	}
	for rest := s; rest != ""; {
		n := min(len(rest), fault.MaxName)
		for n < len(rest) && n > 1 && !utf8.RuneStart(rest[n]) {
			n--
		}
		w.audit.Text(path, rest[:n])
		rest = rest[n:]
	}
	if _, err := Fill(s, units.Length.String); err != nil {
		w.audit.Include(path, err)
	}
}

// texts checks every text that is printed as it stands.
func (w *planner) texts() {
	for i, n := range w.g.Kit {
		w.text(at("kit", i, "head"), n.Head)
		w.text(at("kit", i, "text"), n.Text)
	}
	for i, h := range w.g.Hems {
		w.text(at("hems", i, "where"), h.Where)
	}
	for i, t := range w.g.Work {
		for k, s := range t.Before {
			w.step(at("work", i, "before")+"["+strconv.Itoa(k)+"]", s)
		}
		for k, s := range t.After {
			w.step(at("work", i, "after")+"["+strconv.Itoa(k)+"]", s)
		}
		for k, c := range t.Check {
			path := at("work", i, "check") + "[" + strconv.Itoa(k) + "]"
			w.text(path+".what", c.What)
			w.text(path+".mend", c.Mend)
		}
	}
	for i, c := range w.g.Care {
		w.text(at("care", i, "text"), c.Text)
		w.text(at("care", i, "refer"), c.Refer)
	}
}

func (w *planner) step(path string, s Step) {
	if s.Do == "" {
		w.audit.Fault(path+".do", "", "what is done", fault.Missing)
	}
	w.text(path+".do", s.Do)
	if s.Right && s.Wrong {
		w.audit.Fault(path+".wrong", "true", "one of right and wrong", fault.Conflict)
	}
	w.audit.NotNegative(path+".at", s.At)
	w.text(path+".from", s.From)
	w.audit.NotNegative(path+".trim", s.Trim)
	w.text(path+".press", s.Press)
	w.text(path+".note", s.Note)
}
