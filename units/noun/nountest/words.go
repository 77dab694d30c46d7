package nountest

import (
	"flag"
	"go/ast"
	"go/doc"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units/noun"
)

var update = flag.Bool("words", false, "write words.txt from the doc comments")

// Words checks that words.txt, in the folder of the test, says of every noun and of
// every field what its doc comment says, of a noun the first sentence. With -words it
// writes the file.
func Words(t *testing.T, nouns []noun.Entry) {
	t.Helper()
	all := map[string]string{}
	for _, e := range nouns {
		structs := e.Structs()
		for _, s := range structs {
			comments(t, s, s == structs[0], all)
		}
	}
	lines := make([]string, 0, len(all))
	for name, words := range all {
		lines = append(lines, name+"\t"+words+"\n")
	}
	slices.Sort(lines)
	want := strings.Join(lines, "")
	if *update {
		if err := os.WriteFile("words.txt", []byte(want), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile("words.txt")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(want, string(got)); diff != "" {
		t.Errorf("words.txt differs from the doc comments (-comments +file); go test -run Words -words writes it:\n%s", diff)
	}
}

// comments adds the doc comments of the fields of a struct, and what a noun is.
func comments(t *testing.T, s reflect.Type, isNoun bool, all map[string]string) {
	t.Helper()
	_, below, _ := strings.Cut(s.PkgPath(), "clothyard/")
	dir := filepath.Join(root(t), below)
	files, err := filepath.Glob(filepath.Join(dir, "*.go"))
	if err != nil {
		t.Fatal(err)
	}
	found := false
	for _, name := range files {
		f, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ParseComments)
		if err != nil {
			t.Fatal(err)
		}
		var of *ast.GenDecl
		ast.Inspect(f, func(n ast.Node) bool {
			if d, ok := n.(*ast.GenDecl); ok {
				of = d
			}
			spec, ok := n.(*ast.TypeSpec)
			if !ok || spec.Name.Name != s.Name() {
				return true
			}
			body, ok := spec.Type.(*ast.StructType)
			if !ok {
				return true
			}
			found = true
			if isNoun {
				says := (&doc.Package{}).Synopsis(of.Doc.Text())
				if says == "" {
					t.Errorf("%s has no doc comment", s)
				}
				all[s.String()] = beginning.ReplaceAllString(says, "")
			}
			for _, field := range body.Fields.List {
				words := strings.Join(strings.Fields(field.Doc.Text()+" "+field.Comment.Text()), " ")
				for _, n := range field.Names {
					if n.IsExported() && words == "" {
						t.Errorf("%s.%s has no doc comment", s, n.Name)
					}
					if n.IsExported() {
						all[s.String()+"."+n.Name] = words
					}
				}
			}
			return false
		})
	}
	if !found {
		t.Errorf("%s is not in %s", s, dir)
	}
}

// beginning is how the doc comment of a type begins.
var beginning = regexp.MustCompile(`^(An? )?\w+ (is|are) `)

// root is the folder of the module.
func root(t *testing.T) string {
	t.Helper()
	dir, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return dir
		}
		up := filepath.Dir(dir)
		if up == dir {
			t.Fatal("no go.mod above the test")
		}
		dir = up
	}
}
