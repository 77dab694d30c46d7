//go:build long

package nountest

// Rounds is how many of n random cases a test tries: all of them.
func Rounds(n int) int { return n }
