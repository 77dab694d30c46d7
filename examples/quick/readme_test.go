package main

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

func readme(t *testing.T) string {
	t.Helper()
	b, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// words splits a command line as a shell does, for single quotes only.
func words(line string) []string {
	var out []string
	for i, part := range strings.Split(line, "'") {
		if i%2 == 0 {
			glued := len(out) > 0 && i > 0 && part != "" && part[0] != ' '
			for k, w := range strings.Fields(part) {
				if k == 0 && glued {
					out[len(out)-1] += w
				} else {
					out = append(out, w)
				}
			}
			continue
		}
		if n := len(out); n > 0 && strings.HasSuffix(out[n-1], "=") {
			out[n-1] += part
		} else {
			out = append(out, part)
		}
	}
	return out
}

// The one-liners of the README answer what they are there to show.
func TestReadmeOneLiners(t *testing.T) {
	wants := []string{"comes out longer by: 3/8 in", `"gap":"2 43/64 in"`, `"buy":"81 in"`, "\ndrawn: pictures/flat-felled-seam-felled.svg\n"}
	n := 0
	text := readme(t)
	t.Chdir(t.TempDir()) // for the pictures
	for _, line := range strings.Split(text, "\n") {
		const program = "go run ./examples/quick "
		line, ok := strings.CutPrefix(line, "$ ")
		if !ok || !strings.Contains(line, program) {
			continue
		}
		before, args, _ := strings.Cut(line, program)
		in := strings.TrimSuffix(strings.TrimPrefix(before, "echo "), " | ")
		out, errs, code := quick(words(args), strings.Join(words(in), " "))
		if code != 0 || errs != "" || n >= len(wants) || !strings.Contains(out, wants[n]) {
			t.Errorf("%s\ncode %d\n%s%s", line, code, out, errs)
		}
		n++
	}
	if n != len(wants) {
		t.Errorf("the README has %d one-liners, want %d", n, len(wants))
	}
}

// The README's program compiles and says what it should.
func TestReadmeProgram(t *testing.T) {
	_, after, ok := strings.Cut(readme(t), "```go\n")
	code, _, ok2 := strings.Cut(after, "```")
	if !ok || !ok2 {
		t.Fatal("the README has no program")
	}
	file := filepath.Join(t.TempDir(), "main.go")
	if err := os.WriteFile(file, []byte(code), 0o644); err != nil {
		t.Fatal(err)
	}
	run := exec.Command("go", "run", file)
	run.Dir = "../.."
	var errs bytes.Buffer
	run.Stderr = &errs
	out, err := run.Output()
	if err != nil || !strings.HasPrefix(string(out), "takes 7/16 in and gives 3/8 in\n") || !strings.Contains(string(out), "11.1125 mm") {
		t.Errorf("%v\n%s%s", err, out, errs.String())
	}
}

// The README's lays are found and drawn.
func TestReadmeLays(t *testing.T) {
	n := 0
	for _, line := range strings.Split(readme(t), "\n") {
		command, ok := strings.CutPrefix(line, "$ go ")
		args := words(command)
		at := slices.IndexFunc(args, func(w string) bool { return strings.HasSuffix(w, ".svg") })
		if !ok || at < 0 {
			continue
		}
		n++
		file := filepath.Join(t.TempDir(), args[at])
		args[at] = file
		run := exec.Command("go", args...)
		run.Dir = "../.."
		if out, err := run.CombinedOutput(); err != nil || len(out) == 0 {
			t.Errorf("%s: %v\n%s", line, err, out)
		}
		if svg, err := os.ReadFile(file); err != nil || !bytes.HasPrefix(svg, []byte("<svg ")) {
			t.Errorf("%s: %v, %.40q", line, err, svg)
		}
	}
	if n != 2 {
		t.Errorf("the README has %d commands that draw a lay, want 2", n)
	}
}

// What the README lists is there.
func TestReadmeCommands(t *testing.T) {
	for _, want := range []string{"$ go run ./examples/worksheet\n", "$ go test ./...\n"} {
		if !strings.Contains(readme(t), want) {
			t.Errorf("the README does not say %q", want)
		}
	}
}
