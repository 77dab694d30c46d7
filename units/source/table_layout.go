package source

// Sources of the test cases of lays. Where the page's own title was not read,
// the title here says in small letters what the page has.
var layoutSources = [...]Source{
	{ID: "strip-packing-set-c", Author: "E. Hopper, B. C. H. Turton", Title: "rectangles cut from one strip, set C", Year: "2000", Publisher: "ESICUP datasets, 2d_rectangular/c (CC0 1.0)", Rank: Paper},
	{ID: "irregular-strip-sets", Title: "two-dimensional irregular strips: dagli, dighe1, gardeyn0, poly1a, shapes1, shirts, trousers and others", Publisher: "ESICUP datasets, 2d_irregular (CC0 1.0)", Rank: Paper},
	{ID: "reboot-nesting-research", Author: "J. Gardeyn, G. Vanden Berghe, T. Wauters", Title: "An open-source heuristic to reboot 2D nesting research", Year: "2025", Publisher: "arXiv 2509.13329", Rank: Paper},
	{ID: "strip-packing-records", Author: "J. Gardeyn, KU Leuven", Title: "the instances swim and jakobs1, drawings of the best lays, and logs of the runs", Year: "2025", Publisher: "JeroenGar/sparrow, data (MIT)", Rank: Paper},
	{ID: "squares-from-yardage-chart", Title: "yardage for cutting squares", Publisher: "sylviasquiltdepot.com", Rank: Other},
	{ID: "squares-per-yard-answer", Title: "how to calculate binding: squares in a yard", Publisher: "stockingisthenewplanking.com/how-do-you-calculate-quilt-binding", Rank: Other},
	{ID: "area-or-rows-answer", Title: "answer on squares cut from cloth", Publisher: "mathforum.org/library/drmath/view/63355", Rank: Other},
	{ID: "napkins-per-yard-page", Title: "napkins from a yard", Publisher: "allcottonandlinen.com", Rank: Other},
	{ID: "dinner-napkin-page", Title: "dinner and luncheon napkins", Publisher: "seniorcare2share.com", Rank: Other},
	{ID: "making-napkins-page", Title: "making napkins", Year: "2005", Publisher: "yankeedaddy.blogspot.com", Rank: Other},
	{ID: "pillow-making-tips", Title: "tips for making pillows", Publisher: "middletowntranscript.com", Rank: Paper},
}
