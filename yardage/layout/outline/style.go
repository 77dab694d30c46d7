package outline

import (
	"encoding/xml"
	"slices"
	"strings"
)

// A property is one of a style that leaves every point where it is: with any value,
// or, where there are some, with these only.
type property struct {
	name   string
	values [2]string
}

// properties are all that are known.
var properties = [...]property{
	{"clip-path", [2]string{"none"}}, {"filter", [2]string{"none"}}, {"mask", [2]string{"none"}},
	{"display", [2]string{"inline", "block"}}, {"visibility", [2]string{"visible"}},
	{"vector-effect", [2]string{"none", "non-scaling-stroke"}},
	{name: "baseline-shift"}, {name: "clip-rule"}, {name: "color"}, {name: "color-interpolation"},
	{name: "color-interpolation-filters"}, {name: "color-rendering"}, {name: "cursor"}, {name: "direction"},
	{name: "dominant-baseline"}, {name: "enable-background"}, {name: "fill"}, {name: "fill-opacity"},
	{name: "fill-rule"}, {name: "flood-color"}, {name: "flood-opacity"}, {name: "font"}, {name: "font-family"},
	{name: "font-feature-settings"}, {name: "font-kerning"}, {name: "font-size"}, {name: "font-size-adjust"},
	{name: "font-stretch"}, {name: "font-style"}, {name: "font-variant"}, {name: "font-variant-alternates"},
	{name: "font-variant-caps"}, {name: "font-variant-east-asian"}, {name: "font-variant-ligatures"},
	{name: "font-variant-numeric"}, {name: "font-variant-position"}, {name: "font-variation-settings"},
	{name: "font-weight"}, {name: "image-rendering"}, {name: "isolation"}, {name: "letter-spacing"},
	{name: "lighting-color"}, {name: "line-height"}, {name: "marker"}, {name: "marker-end"},
	{name: "marker-mid"}, {name: "marker-start"}, {name: "mix-blend-mode"}, {name: "opacity"},
	{name: "overflow"}, {name: "paint-order"}, {name: "pointer-events"}, {name: "shape-rendering"},
	{name: "solid-color"}, {name: "solid-opacity"}, {name: "stop-color"}, {name: "stop-opacity"},
	{name: "stroke"}, {name: "stroke-dasharray"}, {name: "stroke-dashoffset"}, {name: "stroke-linecap"},
	{name: "stroke-linejoin"}, {name: "stroke-miterlimit"}, {name: "stroke-opacity"}, {name: "stroke-width"},
	{name: "text-align"}, {name: "text-anchor"}, {name: "text-decoration"}, {name: "text-indent"},
	{name: "text-orientation"}, {name: "text-rendering"}, {name: "text-transform"}, {name: "white-space"},
	{name: "word-spacing"}, {name: "writing-mode"}, {name: "-inkscape-font-specification"},
	{name: "-inkscape-stroke"},
}

// known is the property of a name; false where it may move points.
func known(name string) (property, bool) {
	name = strings.ToLower(strings.TrimSpace(name))
	at := slices.IndexFunc(properties[:], func(p property) bool { return p.name == name })
	if at < 0 {
		return property{}, false
	}
	return properties[at], true
}

// some reports whether a property leaves points where they are with some values only.
func (p property) some() bool { return p.values[0] != "" }

// plain reports whether a property with a value leaves every point where it is.
func plain(name, value string) bool {
	p, ok := known(name)
	value = strings.ToLower(strings.TrimSpace(value))
	return ok && (!p.some() || value != "" && slices.Contains(p.values[:], value))
}

// moving is the part of a style that is not known to leave every point where it
// is, empty where there is none. The style is that of an attribute, or else a
// sheet of rules. It is cut at every semicolon and brace, those within strings
// and comments too: so what any reader takes for the name of a property stands at
// the beginning of a part.
func moving(style string, sheet bool) string {
	if strings.Contains(style, `\`) {
		return style // an escape may stand for any letter
	}
	inside := !sheet
	for rest := style; rest != ""; {
		part, mark := rest, byte(0)
		if at := strings.IndexAny(rest, ";{}"); at >= 0 {
			part, mark, rest = rest[:at], rest[at], rest[at+1:]
		} else {
			rest = ""
		}
		name, value, whole := strings.Cut(part, ":")
		blank := strings.TrimSpace(part) == ""
		switch {
		case inside && (blank || whole && plain(name, value)) && (mark == ';' || mark == 0 || mark == '}' && sheet):
			inside = mark != '}'
		case !inside && mark == '{' && !blank && !strings.ContainsAny(part, `@:"'`):
			inside = true
		case !inside && mark == 0 && blank:
		default:
			return strings.TrimSpace(part) + strings.TrimRight(string(mark), "\x00")
		}
	}
	if sheet && inside {
		return style // a rule that does not end
	}
	return ""
}

// placed checks that an element's own attributes leave every point where it is.
func (d *drawing) placed(at string, e xml.StartElement) {
	for _, a := range e.Attr {
		if a.Name.Space != "" {
			continue
		}
		bad, got := false, a.Name.Local+"="+a.Value
		p, _ := known(a.Name.Local)
		switch name := a.Name.Local; {
		case name == "transform":
			bad = strings.TrimSpace(a.Value) != ""
		case name == "style":
			got = moving(a.Value, false)
			bad = got != ""
		case p.some():
			bad = !plain(name, a.Value)
		}
		if bad && !d.moved(at, got) {
			return
		}
	}
}

// moved is the fault of what may move or size what is drawn, hide or cut it off.
func (d *drawing) moved(at, got string) bool {
	return d.at(at, got, "points where they are to lie, all of them shown: styles of colours, lines and letters only", ErrTransform)
}
