//go:build !long

package nountest

// Rounds is how many of n random cases a test tries: 300 at most, and all of them with
// the build tag long.
func Rounds(n int) int { return min(n, 300) }
