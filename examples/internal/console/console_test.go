package console

import (
	"errors"
	"strings"
	"testing"
)

// What cannot be seen is escaped; line ends and tabs stay, and all of it counts as written.
func TestWriter(t *testing.T) {
	var out strings.Builder
	if n, err := Writer(&out).Write([]byte("a\tb\x1b\nc\u202e\n")); err != nil || n != 10 || out.String() != "a\tb\\x1b\nc\\u202e\n" {
		t.Errorf("%d, %v: %q", n, err, out.String())
	}
	broken := errors.New("broken")
	if n, err := Writer(failing{broken}).Write([]byte("a")); err != broken || n != 0 {
		t.Errorf("%d, %v", n, err)
	}
}

type failing struct{ err error }

func (f failing) Write([]byte) (int, error) { return 0, f.err }
