package source_test

import (
	"regexp"
	"strings"
	"testing"

	"example.com/clothyard/units/source"
)

// A publication has one id. Two ids do not share author and title, where a page
// without an author counts as its site's; nor does the title of one book begin
// another of the same author, nor one address another. What is within a book, as a
// lesson, is the place of a citation.
func TestOneIDForAPublication(t *testing.T) {
	within := regexp.MustCompile(`, (lesson|chapter|page) `)
	plain := regexp.MustCompile(`[^a-z0-9]+`)
	titles, addresses := map[string]string{}, map[string]string{}
	for s := range source.Sources() {
		by := s.Author
		if by == "" {
			by, _, _ = strings.Cut(s.Publisher, "/")
		}
		key := plain.ReplaceAllString(strings.ToLower(by+"|"+s.Title), "")
		if was, ok := titles[key]; ok {
			t.Errorf("%s and %s are %s", was, s.ID, s)
		}
		for other, was := range titles {
			if o, _ := source.Lookup(was); s.Rank == source.Handbook && o.Rank == s.Rank && (strings.HasPrefix(other, key) || strings.HasPrefix(key, other)) {
				t.Errorf("%s and %s are one book: %s", was, s.ID, s)
			}
		}
		titles[key] = s.ID
		if s.Rank == source.Handbook && within.MatchString(s.Title) {
			t.Errorf("%s names a part of a book: %s", s.ID, s.Title)
		}
		if strings.Contains(s.Publisher, "/") && !strings.Contains(s.Publisher, " ") {
			for address, was := range addresses {
				if strings.HasPrefix(address, s.Publisher) || strings.HasPrefix(s.Publisher, address) {
					t.Errorf("%s and %s are both at %s", was, s.ID, s.Publisher)
				}
			}
			addresses[s.Publisher] = s.ID
		}
	}
	if len(titles) < 300 || len(addresses) < 100 {
		t.Errorf("%d titles, %d addresses", len(titles), len(addresses))
	}
}

// Every source has an id of its own that names no person and no address, a title,
// and a rank.
func TestSources(t *testing.T) {
	seen := map[string]bool{}
	n := 0
	for s := range source.Sources() {
		n++
		switch {
		case s.ID == "" || s.Title == "" || s.Rank < source.Law || s.Rank > source.Other:
			t.Errorf("%+v is not complete", s)
		case seen[s.ID]:
			t.Errorf("%s stands twice", s.ID)
		case strings.ContainsAny(s.ID, ". /_") || s.ID != strings.ToLower(s.ID):
			t.Errorf("the id %q", s.ID)
		}
		for _, name := range strings.Fields(strings.ToLower(s.Author)) {
			if len(name) > 4 && strings.Contains(s.ID, strings.Trim(name, ".,")) && s.Rank == source.Other {
				t.Errorf("the id %q names its author %q", s.ID, s.Author)
			}
		}
		seen[s.ID] = true
		if got, ok := source.Lookup(s.ID); !ok || got != s || !strings.Contains(s.String(), s.Title) {
			t.Errorf("Lookup(%s) = %v, %v", s.ID, got, ok)
		}
	}
	if n < 50 {
		t.Errorf("only %d sources", n)
	}
	if _, ok := source.Lookup("no-such-source"); ok {
		t.Error("a source that is not there is found")
	}
	for range source.Sources() {
		break // may stop early
	}
}
