// Package arch holds the rules of the tree as tests: who may import whom, no
// floating point, no mutable state, no panic beyond the documented ones, a doc
// comment on every exported name.
package arch

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

const module = "example.com/clothyard"

// libraries are the top-level packages; each may import what its row allows,
// besides the standard library and itself.
var libraries = map[string][]string{
	"units":   {},
	"seam":    {"units"},
	"hem":     {"units"},
	"gather":  {"units"},
	"buttons": {"units"},
	"yardage": {"units", "github.com/shopspring/decimal"},
}

// panics are the files that may panic, as their docs say.
var panics = map[string]bool{
	"units/exact.go": true, // division by zero
	"units/unit.go":  true, // a value that is no unit
	"units/parse.go": true, // MustParse
}

type file struct {
	path string // from the root, with slashes
	dir  string
	tree *ast.File
	set  *token.FileSet
}

func load(t *testing.T, tests bool) []file {
	t.Helper()
	root := filepath.Join("..", "..", "..")
	var files []file
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && (d.Name() == ".git" || d.Name() == "testdata") {
			return filepath.SkipDir
		}
		if d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") != tests {
			return nil
		}
		set := token.NewFileSet()
		tree, err := parser.ParseFile(set, path, nil, parser.ParseComments|parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(root, path)
		if err != nil {
			return err
		}
		rel = filepath.ToSlash(rel)
		files = append(files, file{rel, filepath.ToSlash(filepath.Dir(rel)), tree, set})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(files) < 5 {
		t.Fatalf("only %d files found: the walk is wrong", len(files))
	}
	return files
}

func top(dir string) string { return strings.SplitN(dir, "/", 2)[0] }

func TestTopLevel(t *testing.T) {
	allowed := map[string]bool{"examples": true, "go.mod": true, "go.sum": true, "README.md": true, "DEVELOPERS.md": true,
		"LICENSE": true, ".ci": true, ".git": true, ".gitignore": true}
	for name := range libraries {
		allowed[name] = true
	}
	entries, err := os.ReadDir(filepath.Join("..", "..", ".."))
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if !allowed[e.Name()] {
			t.Errorf("%s stands at the top level", e.Name())
		}
		delete(allowed, e.Name())
	}
	delete(allowed, ".git")
	for name := range allowed {
		t.Errorf("%s is missing at the top level", name)
	}
}

// reflects are the packages that look into values of any type: the contract that
// every noun keeps, and its tests.
var reflects = map[string]bool{"units/fault": true, "units/noun": true, "units/noun/nountest": true}

// below are the packages that units itself stands on.
var below = map[string]bool{"units/fault": true, "units/name": true, "units/source": true}

// harness is what the tests of the packages call: it compares with go-cmp, and
// reads JSON as strangers do, floats and all.
const harness = "units/noun/nountest"

// search is the package that weighs places by approximation. It takes and gives
// whole numbers, and knows of no units.
const search = "yardage/layout/internal/nest"

// composes is the one package of the library in which the others meet.
const composes = "seam/garment"

func TestImports(t *testing.T) {
	for _, f := range load(t, false) {
		may, library := libraries[top(f.dir)]
		for _, im := range f.tree.Imports {
			path, _ := strconv.Unquote(im.Path.Value)
			own := strings.HasPrefix(path, module)
			switch {
			case !own && !strings.Contains(strings.SplitN(path, "/", 2)[0], "."):
				// the standard library
			case !library && own:
				// the programs compose everything
			case !library:
				t.Errorf("%s imports %s: the programs need nothing but this module", f.path, path)
			default:
				ok := own && top(strings.TrimPrefix(path, module+"/")) == top(f.dir)
				ok = ok || own && f.dir == composes
				for _, m := range may {
					ok = ok || path == m || own && top(strings.TrimPrefix(path, module+"/")) == m
				}
				if !ok && (f.dir != harness || path != "github.com/google/go-cmp/cmp") {
					t.Errorf("%s imports %s", f.path, path)
				}
				if f.dir == search && own && path != module+"/yardage/layout/internal/whole" {
					t.Errorf("%s imports %s: the search takes whole numbers", f.path, path)
				}
				if f.dir == "units" && own && !below[strings.TrimPrefix(path, module+"/")] {
					t.Errorf("%s imports %s: units imports fault, name and source alone", f.path, path)
				}
			}
			if path == "unsafe" || path == "reflect" && library && !reflects[f.dir] {
				t.Errorf("%s imports %s", f.path, path)
			}
		}
	}
}

func TestNoFloat(t *testing.T) {
	floats := regexp.MustCompile(`^(Float64|Float32|SetFloat64|NewFromFloat.*|InexactFloat64|ParseFloat|AppendFloat|FormatFloat)$`)
	for _, f := range load(t, false) {
		if f.dir == search {
			continue
		}
		ast.Inspect(f.tree, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.Ident:
				if n.Name == "float64" || n.Name == "float32" || floats.MatchString(n.Name) {
					t.Errorf("%s: %s", f.set.Position(n.Pos()), n.Name)
				}
			case *ast.BasicLit:
				if n.Kind == token.FLOAT || n.Kind == token.IMAG {
					t.Errorf("%s: the literal %s", f.set.Position(n.Pos()), n.Value)
				}
			case *ast.ImportSpec:
				if n.Path.Value == `"math"` {
					// Whole-number constants such as math.MaxInt64 are fine; functions are floats.
					return true
				}
			case *ast.SelectorExpr:
				if x, ok := n.X.(*ast.Ident); ok && x.Name == "math" && !strings.HasPrefix(n.Sel.Name, "Max") && !strings.HasPrefix(n.Sel.Name, "Min") {
					t.Errorf("%s: math.%s", f.set.Position(n.Pos()), n.Sel.Name)
				}
			}
			return true
		})
	}
}

// TestNoState allows package variables that are unexported values or tables, or
// exported errors, and only where nothing in the package changes them.
func TestNoState(t *testing.T) {
	files := load(t, false)
	tables := map[string]map[string]bool{} // by directory
	for _, f := range files {
		for _, d := range f.tree.Decls {
			g, ok := d.(*ast.GenDecl)
			if !ok || g.Tok != token.VAR {
				continue
			}
			for _, s := range g.Specs {
				v := s.(*ast.ValueSpec)
				for i, name := range v.Names {
					if name.Name == "_" {
						continue
					}
					var value ast.Expr
					if i < len(v.Values) {
						value = v.Values[i]
					}
					switch {
					case !name.IsExported() && !isShared(v.Type, value):
					case isError(value):
					case isEmbed(g, v):
					default:
						t.Errorf("%s: the variable %s is state", f.set.Position(name.Pos()), name.Name)
					}
					if tables[f.dir] == nil {
						tables[f.dir] = map[string]bool{}
					}
					tables[f.dir][name.Name] = true
				}
			}
		}
	}
	for _, f := range files {
		ast.Inspect(f.tree, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.AssignStmt:
				if n.Tok == token.DEFINE {
					return true
				}
				for _, l := range n.Lhs {
					if x, ok := root(l).(*ast.Ident); ok && tables[f.dir][x.Name] {
						t.Errorf("%s: assigns to the package variable %s", f.set.Position(l.Pos()), x.Name)
					}
				}
			case *ast.IncDecStmt:
				if x, ok := root(n.X).(*ast.Ident); ok && tables[f.dir][x.Name] {
					t.Errorf("%s: changes the package variable %s", f.set.Position(n.Pos()), x.Name)
				}
			case *ast.UnaryExpr:
				if x, ok := n.X.(*ast.Ident); ok && n.Op == token.AND && tables[f.dir][x.Name] {
					t.Errorf("%s: takes the address of the package variable %s", f.set.Position(n.Pos()), x.Name)
				}
			case *ast.FuncDecl:
				if n.Recv == nil && n.Name.Name == "init" {
					t.Errorf("%s: an init function", f.set.Position(n.Pos()))
				}
			}
			return true
		})
	}
}

func root(e ast.Expr) ast.Expr {
	for {
		switch x := e.(type) {
		case *ast.IndexExpr:
			e = x.X
		case *ast.SelectorExpr:
			e = x.X
		default:
			return e
		}
	}
}

// isShared tells maps, slices, channels and pointers, which a caller could be
// handed and change.
func isShared(typ, value ast.Expr) bool {
	if typ == nil {
		switch c := value.(type) {
		case *ast.CompositeLit:
			typ = c.Type
		case *ast.UnaryExpr:
			return c.Op == token.AND
		}
	}
	switch a := typ.(type) {
	case *ast.ArrayType:
		return a.Len == nil
	case *ast.MapType, *ast.ChanType, *ast.StarExpr:
		return true
	}
	return false
}

func isError(value ast.Expr) bool {
	c, ok := value.(*ast.CallExpr)
	if !ok {
		return false
	}
	s, ok := c.Fun.(*ast.SelectorExpr)
	if !ok {
		return false
	}
	x, ok := s.X.(*ast.Ident)
	return ok && (x.Name == "errors" && s.Sel.Name == "New" || x.Name == "fmt" && s.Sel.Name == "Errorf")
}

func isEmbed(g *ast.GenDecl, v *ast.ValueSpec) bool {
	for _, doc := range []*ast.CommentGroup{g.Doc, v.Doc} {
		if doc != nil {
			for _, c := range doc.List {
				if strings.HasPrefix(c.Text, "//go:embed ") {
					return true
				}
			}
		}
	}
	return false
}

func TestPanics(t *testing.T) {
	for _, f := range load(t, false) {
		if panics[f.path] {
			continue
		}
		ast.Inspect(f.tree, func(n ast.Node) bool {
			if c, ok := n.(*ast.CallExpr); ok {
				if x, ok := c.Fun.(*ast.Ident); ok && x.Name == "panic" {
					t.Errorf("%s: a panic", f.set.Position(c.Pos()))
				}
			}
			return true
		})
	}
}

// TestDocs asks a doc comment of every exported name of the libraries, and a
// package page of fewer than 700 words.
func TestDocs(t *testing.T) {
	pages := map[string]int{}
	for _, f := range load(t, false) {
		if _, library := libraries[top(f.dir)]; !library {
			continue
		}
		if f.tree.Doc != nil {
			pages[f.dir] += len(strings.Fields(f.tree.Doc.Text()))
		} else {
			pages[f.dir] += 0
		}
		for _, d := range f.tree.Decls {
			switch d := d.(type) {
			case *ast.FuncDecl:
				if d.Name.IsExported() && exportedReceiver(d) && d.Doc == nil {
					t.Errorf("%s: %s has no doc", f.set.Position(d.Pos()), d.Name.Name)
				}
			case *ast.GenDecl:
				for _, s := range d.Specs {
					docs(t, f, d, s)
				}
			}
		}
	}
	for dir, words := range pages {
		if words == 0 || words >= 700 {
			t.Errorf("the package page of %s has %d words", dir, words)
		}
	}
}

func exportedReceiver(d *ast.FuncDecl) bool {
	if d.Recv == nil {
		return true
	}
	e := d.Recv.List[0].Type
	if s, ok := e.(*ast.StarExpr); ok {
		e = s.X
	}
	x, ok := e.(*ast.Ident)
	return ok && x.IsExported()
}

func docs(t *testing.T, f file, d *ast.GenDecl, s ast.Spec) {
	switch s := s.(type) {
	case *ast.TypeSpec:
		if !s.Name.IsExported() {
			return
		}
		if d.Doc == nil && s.Doc == nil {
			t.Errorf("%s: %s has no doc", f.set.Position(s.Pos()), s.Name.Name)
		}
		if st, ok := s.Type.(*ast.StructType); ok {
			for _, field := range st.Fields.List {
				for _, name := range field.Names {
					if name.IsExported() && field.Doc == nil && field.Comment == nil {
						t.Errorf("%s: %s.%s has no doc", f.set.Position(field.Pos()), s.Name.Name, name.Name)
					}
				}
			}
		}
	case *ast.ValueSpec:
		for _, name := range s.Names {
			if name.IsExported() && d.Doc == nil && s.Doc == nil && s.Comment == nil {
				t.Errorf("%s: %s has no doc", f.set.Position(s.Pos()), name.Name)
			}
		}
	}
}

// TestNoSkips keeps every test running.
func TestNoSkips(t *testing.T) {
	for _, f := range load(t, true) {
		ast.Inspect(f.tree, func(n ast.Node) bool {
			if s, ok := n.(*ast.SelectorExpr); ok && (s.Sel.Name == "Skip" || s.Sel.Name == "Skipf" || s.Sel.Name == "SkipNow") {
				t.Errorf("%s: %s", f.set.Position(s.Pos()), s.Sel.Name)
			}
			return true
		})
	}
}

// ours are the files that take apart what the library or the program itself wrote.
var ours = map[string]bool{"examples/quick/answer.go": true, "examples/quick/fields.go": true}

// The programs read JSON that people wrote by the one strict reader, noun.Read, and
// by no other.
func TestOneReader(t *testing.T) {
	for _, f := range load(t, false) {
		if !strings.HasPrefix(f.path, "examples/") {
			continue
		}
		ast.Inspect(f.tree, func(n ast.Node) bool {
			s, ok := n.(*ast.SelectorExpr)
			if !ok || s.Sel.Name != "Unmarshal" && s.Sel.Name != "NewDecoder" {
				return true
			}
			if p, ok := s.X.(*ast.Ident); ok && p.Name == "json" && !ours[f.path] {
				t.Errorf("%s: json.%s", f.set.Position(s.Pos()), s.Sel.Name)
			}
			return true
		})
	}
}

// Every table of a library is compared with its printed figures: the test file
// printed_test.go beside it names its iterator.
func TestTablesArePrinted(t *testing.T) {
	named := map[string]bool{}
	for _, f := range load(t, true) {
		if filepath.Base(f.path) != "printed_test.go" {
			continue
		}
		ast.Inspect(f.tree, func(n ast.Node) bool {
			if s, ok := n.(*ast.SelectorExpr); ok {
				named[f.dir+" "+s.Sel.Name] = true
			}
			return true
		})
	}
	tables := 0
	for _, f := range load(t, false) {
		if _, library := libraries[top(f.dir)]; !library || !strings.HasPrefix(filepath.Base(f.path), "table_") {
			continue
		}
		for _, d := range f.tree.Decls {
			fn, ok := d.(*ast.FuncDecl)
			if !ok || fn.Recv != nil || !fn.Name.IsExported() || !iterates(fn.Type) {
				continue
			}
			tables++
			if !named[f.dir+" "+fn.Name.Name] {
				t.Errorf("%s: %s is in no printed_test.go", f.set.Position(fn.Pos()), fn.Name.Name)
			}
		}
	}
	if tables < 35 {
		t.Errorf("only %d tables found: the walk is wrong", tables)
	}
}

// iterates reports whether a function is an iterator, or gives one.
func iterates(f *ast.FuncType) bool {
	if len(f.Params.List) == 1 {
		_, ok := f.Params.List[0].Type.(*ast.FuncType)
		return ok
	}
	if len(f.Params.List) > 0 || f.Results == nil || len(f.Results.List) != 1 {
		return false
	}
	of, ok := f.Results.List[0].Type.(*ast.IndexExpr)
	if !ok {
		return false
	}
	seq, ok := of.X.(*ast.SelectorExpr)
	return ok && seq.Sel.Name == "Seq"
}
