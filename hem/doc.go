// Package hem works out hems: single, double with equal or unequal turns, narrow,
// rolled, blind, faced and bound, on a flare, a curve or a circle, round a slit, and
// trouser turn-ups; and, as nouns of their own, the [Mitre] at a corner, the [Casing]
// that something is threaded through, and [Tucks]. From the turns and the allowance a
// hem gives the folds and the stitching from the raw edge, from the finished edge
// and from the line the pattern drew, what a hem of another depth does to the length
// and the sweep, and what a flared or curved edge has to lose when it is turned up.
//
//	h := hem.Double{TwoTurns: hem.TwoTurns{First: three8, Depth: three8}}
//	h.Drafted = units.Inch.Mixed(1, 1, 4)
//	p, err := h.Plan()
//	fmt.Println(p.Taken, p.Drift) // 3/4 in 1/2 in: the garment comes out 1/2 in longer
//
// Each kind is a struct of the fields that it reads; [Any] holds one of any kind, and
// alone writes and reads which. A zero field is not given. Plan fills what follows and
// then the defaults, which [Plan].Assumed names; [Plan.Sheet] has the steps, the working
// and the sources, [Plan.Sections] drawings of the folded cloth edge-on, stage by
// stage. The tables of hem depths, turns, strips, casings and tucks keep the rows
// that disagree.
package hem
