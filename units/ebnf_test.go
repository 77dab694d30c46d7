package units_test

import (
	"errors"
	"maps"
	"math/big"
	"math/rand/v2"
	"os"
	"strings"
	"testing"
	"unicode/utf8"

	"golang.org/x/exp/ebnf"

	"example.com/clothyard/units"
)

func grammar(t *testing.T) ebnf.Grammar {
	t.Helper()
	f, err := os.Open("length.ebnf")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	g, err := ebnf.Parse("length.ebnf", f)
	if err != nil {
		t.Fatal(err)
	}
	if err := ebnf.Verify(g, "Text"); err != nil {
		t.Fatal(err)
	}
	return g
}

// TestGrammarInDoc holds the package page to the file.
func TestGrammarInDoc(t *testing.T) {
	file, err := os.ReadFile("length.ebnf")
	if err != nil {
		t.Fatal(err)
	}
	doc, err := os.ReadFile("doc.go")
	if err != nil {
		t.Fatal(err)
	}
	var want strings.Builder
	for line := range strings.Lines(string(file)) {
		if line = strings.TrimRight(line, "\n"); line == "" {
			want.WriteString("//\n")
		} else {
			want.WriteString("//\t" + line + "\n")
		}
	}
	if !strings.Contains(string(doc), want.String()) {
		t.Error("doc.go does not quote length.ebnf")
	}
	page, _, _ := strings.Cut(string(doc), "\npackage units")
	if n := len(strings.Fields(strings.ReplaceAll(page, "//", ""))); n > 700 {
		t.Errorf("the package page has %d words", n)
	}
}

// A phrase is what a production of the grammar made.
type phrase struct {
	name string
	text string
	kids []*phrase
}

func (p *phrase) find(name string) []*phrase {
	var all []*phrase
	for _, k := range p.kids {
		if k.name == name {
			all = append(all, k)
		}
	}
	return all
}

// unitText is the text of the unit that stands in p, at whatever depth.
func (p *phrase) unitText() string {
	if p.name == "word" || p.name == "prime" || p.name == "short" {
		return p.text
	}
	for _, k := range p.kids {
		if text := k.unitText(); text != "" {
			return text
		}
	}
	return ""
}

// sentence makes a sentence of a production at random.
func sentence(g ebnf.Grammar, r *rand.Rand, name string) *phrase {
	p := &phrase{name: name}
	if name == "Comma" { // a Length in which mark is a comma
		g = maps.Clone(g)
		g["mark"] = &ebnf.Production{Expr: &ebnf.Token{String: ","}}
		name = "Length"
	}
	var grow func(ebnf.Expression)
	grow = func(e ebnf.Expression) {
		switch e := e.(type) {
		case ebnf.Alternative:
			grow(e[r.IntN(len(e))])
		case ebnf.Sequence:
			for _, x := range e {
				grow(x)
			}
		case *ebnf.Name:
			k := sentence(g, r, e.String)
			p.kids = append(p.kids, k)
			p.text += k.text
		case *ebnf.Token:
			p.text += e.String
		case *ebnf.Range:
			lo, _ := utf8.DecodeRuneInString(e.Begin.String)
			hi, _ := utf8.DecodeRuneInString(e.End.String)
			p.text += string(lo + rune(r.IntN(int(hi-lo)+1)))
		case *ebnf.Group:
			grow(e.Body)
		case *ebnf.Option:
			if r.IntN(2) == 0 {
				grow(e.Body)
			}
		case *ebnf.Repetition:
			for r.IntN(3) == 0 {
				grow(e.Body)
			}
		}
	}
	grow(g[name].Expr)
	return p
}

func fractionOf(num, den string) (*big.Rat, bool) {
	n, _ := new(big.Int).SetString(num, 10)
	d, _ := new(big.Int).SetString(den, 10)
	if d.Sign() == 0 {
		return nil, false
	}
	return new(big.Rat).SetFrac(n, d), true
}

// value evaluates a number's phrase as it was made; ok is false where the
// package page says that the parser is narrower than the grammar.
func (p *phrase) value() (v *big.Rat, ok bool) {
	switch p.name {
	case "number":
		if m := p.find("mixed"); m != nil {
			return m[0].value()
		}
		return new(big.Rat).SetString("0" + strings.Replace(p.text, ",", ".", 1))
	case "glyph":
		n, d, _ := strings.Cut(glyphText[p.text], "/")
		return fractionOf(n, d)
	}
	// mixed, or below
	digits := p.find("digits")
	if p.find("slash") != nil {
		v, ok = fractionOf(digits[0].text, digits[1].text)
		return v, ok && (p.name == "mixed" || v.Cmp(big.NewRat(1, 1)) < 0)
	}
	v = new(big.Rat)
	if digits != nil {
		v.SetString(digits[0].text)
	}
	for _, k := range p.kids {
		if k.name == "glyph" || k.name == "below" {
			part, ok := k.value()
			if !ok {
				return nil, false
			}
			v.Add(v, part)
		}
	}
	return v, true
}

// evaluate is the value of a Length, a Comma, a Ratio or an Area.
func (p *phrase) evaluate() (v *big.Rat, ok bool) {
	v = new(big.Rat)
	switch p.name {
	case "Ratio":
		numbers := p.find("number")
		if v, ok = numbers[0].value(); !ok {
			return nil, false
		}
		if strings.Contains(p.text, "%") {
			v.Quo(v, big.NewRat(100, 1))
		}
		if len(numbers) > 1 {
			by, ok := numbers[1].value()
			if !ok || by.Sign() == 0 {
				return nil, false
			}
			v.Quo(v, by)
		}
	case "Area":
		if v, ok = p.find("number")[0].value(); !ok {
			return nil, false
		}
		size, _, _ := slowUnit(p.find("square")[0].unitText())
		v.Mul(v, size)
		v.Mul(v, size)
	default:
		lastSystem, lastRank := 0, 0
		for i, k := range p.kids {
			if k.name != "number" {
				continue
			}
			n, ok := k.value()
			if !ok {
				return nil, false
			}
			size, system, rank := slowUnit(p.kids[i+1].unitText())
			if lastSystem != 0 && (system != lastSystem || rank >= lastRank) {
				return nil, false
			}
			lastSystem, lastRank = system, rank
			v.Add(v, n.Mul(n, size))
		}
	}
	if sign := p.find("sign"); sign != nil {
		signed(sign[0].text, v)
	}
	return v, true
}

// readers are the four parsers of text and their references.
var readers = map[string]struct {
	fast func(string) (*big.Rat, error)
	slow func(string) (*big.Rat, bool)
}{
	"Length": {
		func(s string) (*big.Rat, error) { l, err := units.Parse(s); return ratOf(l), err },
		func(s string) (*big.Rat, bool) { return slowLength(s, false) },
	},
	"Comma": {
		func(s string) (*big.Rat, error) {
			l, err := units.Parser{DecimalComma: true}.Parse(s)
			return ratOf(l), err
		},
		func(s string) (*big.Rat, bool) { return slowLength(s, true) },
	},
	"Ratio": {
		func(s string) (*big.Rat, error) { l, err := units.ParseRatio(s); return l.Rat(), err },
		slowRatio,
	},
	"Area": {
		func(s string) (*big.Rat, error) { a, err := units.ParseArea(s); return areaRat(a), err },
		slowArea,
	},
	"bare": {
		func(s string) (*big.Rat, error) {
			l, err := units.Parser{Bare: units.Inch}.Parse(s)
			return ratOf(l), err
		},
		slowBare,
	},
}

// agree holds the fast parser to the slow one on any text at all.
func agree(t *testing.T, kind, text string) {
	t.Helper()
	fast, err := readers[kind].fast(text)
	slow, ok := readers[kind].slow(text)
	if (err == nil) != ok {
		t.Fatalf("%s %q: %v, while the reference says %v", kind, text, err, ok)
	}
	if ok {
		if kind != "Ratio" && kind != "Area" {
			p := units.Parser{DecimalComma: kind == "Comma"}
			if kind == "bare" {
				p.Bare = units.Inch
			}
			if l, _ := p.Parse(text); units.FormOf(l) != nil || l != lengthOf(slow) {
				t.Fatalf("%s %q: %v, and %v is not == to the same number made otherwise", kind, text, units.FormOf(l), l)
			}
		}
		if r, _ := units.ParseRatio(text); units.FormOfRatio(r) != nil {
			t.Fatalf("%q: %v", text, units.FormOfRatio(r))
		}
		if a, _ := units.ParseArea(text); units.FormOfArea(a) != nil {
			t.Fatalf("%q: %v", text, units.FormOfArea(a))
		}
		if fast.Cmp(slow) != 0 {
			t.Fatalf("%s %q = %v, want %v", kind, text, fast, slow)
		}
		return
	}
	var pe *units.ParseError
	if !errors.As(err, &pe) || pe.Offset < 0 || pe.Offset > len(text) || pe.Found == "" || pe.Want == "" || fast.Sign() != 0 {
		t.Fatalf("%s %q: fault %#v and value %v", kind, text, err, fast)
	}
}

// TestSentences makes sentences of the grammar; each is read as the value it was
// made of. Where the sentence is one that the parser may refuse, it must.
func TestSentences(t *testing.T) {
	g := grammar(t)
	r := seeded(6)
	for _, kind := range [...]string{"Length", "Comma", "Ratio", "Area"} {
		taken, refused := 0, 0
		for taken < 10_000/4 {
			p := sentence(g, r, kind)
			want, ok := p.evaluate()
			got, err := readers[kind].fast(p.text)
			switch {
			case !ok && err == nil:
				t.Fatalf("%s %q is read as %v and should be refused", kind, p.text, got)
			case !ok:
				refused++
			case err != nil:
				t.Fatalf("%s %q, %v: %v", kind, p.text, want, err)
			case got.Cmp(want) != 0:
				t.Fatalf("%s %q = %v, want %v", kind, p.text, got, want)
			default:
				taken++
			}
			agree(t, kind, p.text)
		}
		if refused == 0 {
			t.Errorf("%s: no sentence was refused", kind)
		}
	}
}

// mutate spoils a text a little.
func mutate(r *rand.Rand, text string) string {
	pieces := [...]string{" ", "-", "+", "/", ".", ",", "1", "0", "½", "in", "mm", "m", "'", `"`, "e", "²", "sq", "%", ".", "^2", "2", "x", "to", "yds", ":", "\u00a0", "\xff", "\u2044", "L"}
	runes := strings.Split(text, "")
	i := r.IntN(len(runes))
	switch r.IntN(5) {
	case 0:
		runes[i] = ""
	case 1:
		runes[i] += runes[i]
	case 2:
		j := r.IntN(len(runes))
		runes[i], runes[j] = runes[j], runes[i]
	case 3:
		runes[i] = pieces[r.IntN(len(pieces))]
	case 4:
		runes[i] += pieces[r.IntN(len(pieces))]
	}
	return strings.Join(runes, "")
}

// TestMutations spoils sentences and holds the parser to the reference.
func TestMutations(t *testing.T) {
	g := grammar(t)
	r := seeded(7)
	for _, pair := range [...][2]string{{"Length", "Length"}, {"Comma", "Comma"}, {"Ratio", "Ratio"}, {"Area", "Area"}, {"bare", "Length"}} {
		kind := pair[0]
		for range 3000 {
			text := sentence(g, r, pair[1]).text
			for range 1 + r.IntN(3) {
				if text != "" {
					text = mutate(r, text)
				}
			}
			agree(t, kind, text)
		}
	}
}
