package embed

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

const program = `package main

import (
	"encoding/json"
	"fmt"
	"os"
	"strings"

	"example.com/clothyard/gather"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/yardage"
)

func main() {
	var frill gather.Strip
	in := strings.NewReader(` + "`" + `{"strip": {"pieces": 3, "each": "12 1/4 in", "allowance": "1/2 in", "ends": "1/2 in"}, "edge": "15 3/4 in"}` + "`" + `)
	if err := noun.Read(in, &frill); err != nil {
		fmt.Println(err)
		os.Exit(1)
	}
	plan, err := frill.Plan()
	if err != nil {
		fmt.Println(err)
		os.Exit(1)
	}
	text, err := json.Marshal(plan.Fullness)
	fmt.Println(string(text), err)
	for e := range noun.NewRegistry(gather.Nouns(), yardage.Nouns()).All() {
		if e.Name() == "yardage.price" {
			fmt.Println(e.Name())
		}
	}
}
`

// A module outside the tree builds against the library and runs.
func TestModule(t *testing.T) {
	root, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	sums, err := os.ReadFile(filepath.Join(root, "go.sum"))
	if err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{
		"go.mod":  "module example.com/wardrobe\n\ngo 1.26\n\nrequire example.com/clothyard v0.0.0\n\nreplace example.com/clothyard => " + root + "\n",
		"go.sum":  string(sums),
		"main.go": program,
	} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	cmd := exec.Command("go", "run", "-mod=mod", ".")
	cmd.Dir = dir
	cmd.Env = append(os.Environ(), "GOFLAGS=-mod=mod", "GOWORK=off")
	out, err := cmd.CombinedOutput()
	if want := "\"2 1/7\" <nil>\nyardage.price\n"; err != nil || string(out) != want {
		t.Errorf("got %s, %v, want %s", out, err, want)
	}
}
