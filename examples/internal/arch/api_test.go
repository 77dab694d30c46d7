package arch

import (
	"bytes"
	"flag"
	"go/ast"
	"go/printer"
	"go/token"
	"os"
	"path"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

var writeAPI = flag.Bool("api", false, "write testdata/api.txt")

// TestAPI compares the exported names of the library with testdata/api.txt, one a
// line, so that a change of them is seen where a change is read. With -api it writes
// the file.
func TestAPI(t *testing.T) {
	var lines []string
	for _, f := range load(t, false) {
		if top := strings.Split(f.dir, "/")[0]; libraries[top] == nil || path.Base(f.dir) == "nountest" || strings.Contains(f.dir, "/internal/") {
			continue
		}
		for _, d := range f.tree.Decls {
			for _, name := range exported(f.set, d) {
				lines = append(lines, f.dir+": "+name)
			}
		}
	}
	slices.Sort(lines)
	want := strings.Join(lines, "\n") + "\n"
	if *writeAPI {
		if err := os.WriteFile("testdata/api.txt", []byte(want), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile("testdata/api.txt")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(got), want); diff != "" {
		t.Errorf("the exported names changed (-file +tree); go test ./examples/internal/arch -run API -api writes the file:\n%s", diff)
	}
	t.Logf("%d exported names", len(lines))
}

// exported are the names that a declaration exports, each with its type.
func exported(set *token.FileSet, d ast.Decl) []string {
	show := func(n any) string {
		var b bytes.Buffer
		if err := printer.Fprint(&b, set, n); err != nil {
			return err.Error()
		}
		return strings.Join(strings.Fields(b.String()), " ")
	}
	switch d := d.(type) {
	case *ast.FuncDecl:
		receiver := ""
		if d.Recv != nil {
			receiver = show(d.Recv.List[0].Type)
			if !token.IsExported(strings.TrimLeft(receiver, "*")) {
				return nil
			}
			receiver = "(" + receiver + ") "
		}
		if d.Name.IsExported() {
			return []string{"func " + receiver + d.Name.Name + strings.TrimPrefix(show(d.Type), "func")}
		}
	case *ast.GenDecl:
		var out []string
		for _, s := range d.Specs {
			switch s := s.(type) {
			case *ast.TypeSpec:
				if s.Name.IsExported() {
					out = append(out, "type "+s.Name.Name)
				}
			case *ast.ValueSpec:
				for _, n := range s.Names {
					if n.IsExported() {
						out = append(out, d.Tok.String()+" "+n.Name)
					}
				}
			}
		}
		return out
	}
	return nil
}
