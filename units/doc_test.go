package units_test

import (
	"go/ast"
	"go/doc"
	"go/parser"
	"go/token"
	"path/filepath"
	"testing"
)

// TestWholeExamples: the commonest tasks are shown as whole files, with what stands
// round the function, so that they can be copied as they are.
func TestWholeExamples(t *testing.T) {
	files, err := filepath.Glob("example_*_test.go")
	if err != nil || len(files) < 10 {
		t.Fatalf("%d examples of a whole file, %v", len(files), err)
	}
	for _, name := range files {
		f, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ParseComments)
		if err != nil {
			t.Fatal(err)
		}
		all := doc.Examples(f)
		if len(all) != 1 || all[0].Output == "" || all[0].Doc == "" || all[0].Play == nil {
			t.Fatalf("%s: not one example with a doc and an output that can be run alone", name)
		}
		if whole, ok := all[0].Code.(*ast.File); !ok || whole != f {
			t.Errorf("%s is not shown whole", name)
		}
	}
}
