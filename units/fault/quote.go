package fault

import "strconv"

// MaxQuote is how many bytes of a text that was given a fault shows.
const MaxQuote = 80

// Quote is a text as a fault shows it: in quotes, what is not printable escaped,
// and cut after [MaxQuote] bytes.
func Quote(s string) string {
	if len(s) <= MaxQuote {
		return strconv.Quote(s)
	}
	return strconv.Quote(s[:MaxQuote]) + "..."
}
