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
