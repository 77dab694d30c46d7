package seam

// Stacked is how many plies lie one above another where the finished seam runs
// through so many layers of another fold or seam: a French seam pressed over has 5,
// and under a double hem, of 3 layers, there are 15. Where two seams meet, the
// layers are the other seam's Plies; pressing the two ridges opposite ways keeps
// them from lying on each other. It is zero for less than one layer, and where the
// product passes what an int32 holds.
func (p Plan) Stacked(layers int) int {
	const most = 1<<31 - 1
	if layers < 1 || p.Plies < 1 || layers > most/p.Plies {
		return 0
	}
	return p.Plies * layers
}
