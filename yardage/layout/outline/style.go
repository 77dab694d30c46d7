package outline

import (
	"encoding/xml"
	"slices"
	"strings"
)

// plainly are the properties of a style that leave every point where it is, and
// the values of those that do so with some values only.
var plainly = map[string][]string{
	"clip-path":     {"none"},
	"display":       {"inline", "block"},
	"filter":        {"none"},
	"mask":          {"none"},
	"vector-effect": {"none", "non-scaling-stroke"},
	"visibility":    {"visible"},

	"baseline-shift": nil, "clip-rule": nil, "color": nil, "color-interpolation": nil, "color-interpolation-filters": nil,
	"color-rendering": nil, "cursor": nil, "direction": nil, "dominant-baseline": nil, "enable-background": nil,
	"fill": nil, "fill-opacity": nil, "fill-rule": nil, "flood-color": nil, "flood-opacity": nil,
	"font": nil, "font-family": nil, "font-feature-settings": nil, "font-kerning": nil, "font-size": nil, "font-size-adjust": nil,
	"font-stretch": nil, "font-style": nil, "font-variant": nil, "font-variant-alternates": nil, "font-variant-caps": nil,
	"font-variant-east-asian": nil, "font-variant-ligatures": nil, "font-variant-numeric": nil, "font-variant-position": nil,
	"font-variation-settings": nil, "font-weight": nil,
	"image-rendering": nil, "isolation": nil, "letter-spacing": nil, "lighting-color": nil, "line-height": nil,
	"marker": nil, "marker-end": nil, "marker-mid": nil, "marker-start": nil, "mix-blend-mode": nil, "opacity": nil,
	"overflow": nil, "paint-order": nil, "pointer-events": nil, "shape-rendering": nil, "solid-color": nil, "solid-opacity": nil,
	"stop-color": nil, "stop-opacity": nil, "stroke": nil, "stroke-dasharray": nil, "stroke-dashoffset": nil,
	"stroke-linecap": nil, "stroke-linejoin": nil, "stroke-miterlimit": nil, "stroke-opacity": nil, "stroke-width": nil,
	"text-align": nil, "text-anchor": nil, "text-decoration": nil, "text-indent": nil, "text-orientation": nil,
	"text-rendering": nil, "text-transform": nil, "white-space": nil, "word-spacing": nil, "writing-mode": nil,
	"-inkscape-font-specification": nil, "-inkscape-stroke": nil,
}

// plain reports whether a property with a value leaves every point where it is.
func plain(name, value string) bool {
	values, known := plainly[strings.ToLower(strings.TrimSpace(name))]
	return known && (values == nil || slices.Contains(values, strings.ToLower(strings.TrimSpace(value))))
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
		bad := false
		got := a.Name.Local + "=" + a.Value
		switch name := a.Name.Local; {
		case name == "transform":
			bad = strings.TrimSpace(a.Value) != ""
		case name == "style":
			got = moving(a.Value, false)
			bad = got != ""
		case plainly[name] != nil:
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
