package layout

import (
	"context"
	"embed"
	"time"

	"example.com/clothyard/units/noun"
)

//go:embed words.txt examples.json
var files embed.FS

// Patience is how long the noun layout.lay looks for a lay, whatever work is asked:
// the lay found by then is the answer, and says that it was stopped. A caller who
// wants another time calls [Spec.Plan].
const Patience = time.Minute

// Nouns are the nouns of this package.
func Nouns() []noun.Entry {
	return noun.List(files, noun.By("layout.lay", func(s Spec) (Plan, error) {
		ctx, cancel := context.WithTimeout(context.Background(), Patience)
		defer cancel()
		return s.Plan(ctx)
	}))
}
