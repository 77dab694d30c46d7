package main

import (
	"fmt"
	"strings"

	"example.com/clothyard/units/ticket"
)

// list writes the sums, each with what it is about.
func (d *desk) list() {
	for e := range sums.All() {
		short, _, _ := strings.Cut(strings.TrimSuffix(e.Means(), "."), ": ")
		fmt.Fprint(d.out, ticket.Wrap(fmt.Sprintf("%-20s ", e.Name()), "                     ", short))
	}
}

// words lists what may follow the words of a command line: the fields of the sum that
// is among them, or the sums.
func (d *desk) words(line []string) {
	for _, word := range line {
		e, ok := sums.Find(word)
		if !ok {
			continue
		}
		for _, f := range e.Fields() {
			if !strings.ContainsAny(f.Path, "[(") {
				fmt.Fprintf(d.out, "%s=\n", f.Path)
			}
		}
		return
	}
	for e := range sums.All() {
		fmt.Fprintln(d.out, e.Name())
	}
}

// Scripts that complete the words of quick in a shell.
const (
	bash = `_quick() {
	local IFS=$'\n'
	COMPREPLY=($(compgen -W "$(quick -words -- "${COMP_WORDS[@]:1}" 2>/dev/null)" -- "${COMP_WORDS[COMP_CWORD]}"))
}
complete -o nospace -F _quick quick
`
	zsh = `#compdef quick
_quick() { compadd -S '' -- ${(f)"$(quick -words -- ${words[2,-1]} 2>/dev/null)"} }
compdef _quick quick
`
)

// completion writes the script of a shell.
func (d *desk) completion(shell string) int {
	switch shell {
	case "bash":
		d.out.WriteString(bash)
	case "zsh":
		d.out.WriteString(zsh)
	default:
		fmt.Fprintf(d.errs, "quick: -completion %q: want bash or zsh\n", shell)
		return 2
	}
	return 0
}
