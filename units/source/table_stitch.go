package source

// stitchSources are the sources of package stitch that no other part lists, the
// highest rank first. An address stands in the place of the publisher where the
// text was read there.
var stitchSources = [...]Source{
	// Standards.
	{ID: "stitch-type-standard", Author: "ISO", Title: "ISO 4915, Textiles, stitch types, classification and terminology", Rank: Law},
	// Extension services and public schools of the trade.
	{ID: "stitch-types-course", Title: "E-course, stitches and seams", Publisher: "ecoursesonline.iasri.res.in, page 80417", Rank: Extension},
	{ID: "sewing-technology-vocational", Author: "National Instructional Media Institute", Title: "Sewing Technology, CITS, vol. 2", Publisher: "nimi.co.in", Rank: Extension},
	// Printed handbooks.
	{ID: "cargo-cover-manual", Title: "TM 10-1670-298-20P, table 2-3", Publisher: "read at constructioncranes.tpub.com", Rank: Handbook},
	// Trade papers.
	{ID: "thread-consumption-guide", Author: "Coats", Title: "Thread consumption guide", Rank: Paper},
	{ID: "thread-estimate-bulletin", Title: "Estimating thread consumption (technical bulletin)", Year: "2008", Publisher: "amefird.com/estimating_consumption.htm, archived", Rank: Paper},
	{ID: "thread-estimate-scan", Title: "Estimating thread consumption (later scan of the bulletin)", Publisher: "scribd.com/document/75439238", Rank: Paper},
	{ID: "thread-ratio-guide", Title: "Thread guide with ratios by stitch type", Publisher: "scribd.com/document/49933681", Rank: Paper},
	// Everything else.
	{ID: "thread-formula-guide", Title: "Sewing thread consumption guide", Publisher: "textileblog.com/sewing-thread-consumption-guide-for-professional", Rank: Other},
	{ID: "thread-formula-page", Title: "Calculate amount of sewing thread consumption", Publisher: "textilecalculations.com/calculate-amount-of-sewing-thread-consumption", Rank: Other},
	{ID: "thread-measuring-page", Title: "Measuring actual thread consumption", Publisher: "apparelscience.com/measuring-actual-thread-consumption", Rank: Other},
	{ID: "thread-estimate-page", Title: "Estimating thread consumption", Year: "2011", Publisher: "apparel-merchandising.com/2011/08", Rank: Other},
	{ID: "thread-amount-answer", Title: "How do you calculate thread consumption", Publisher: "melgeecrafts.com/needlework", Rank: Other},
	{ID: "stitch-length-conversion", Title: "Metric conversion from US stitches per inch", Publisher: "tv-sewingcenter.com/sewing/metric-conversion-from-us-stitches-per-inch", Rank: Other},
	{ID: "stitch-length-arithmetic", Title: "Taking out the math 3", Year: "2009", Publisher: "piecefulkwilter.blogspot.com/2009/05/taking-out-math-3.html", Rank: Other},
	{ID: "stitch-length-note", Title: "Did you know", Year: "2020", Publisher: "bonnysews.com/2020/06/did-you-know", Rank: Other},
	{ID: "stitch-dial-page", Title: "Convert metric stitch length to stitches per inch", Publisher: "stashbandit.net/convert-metric-stitch-length-to-stitches-per-inch", Rank: Other},
	{ID: "stitch-setting-answer", Title: "What setting is 12 stitches per inch", Publisher: "sewmanypins.com/needlework", Rank: Other},
	{ID: "stitch-size-answer", Title: "How big is a stitch", Publisher: "vandcdesign.com/beading/question-how-big-is-a-stitch.html", Rank: Other},
	{ID: "stitch-speed-page", Title: "Stitch length", Publisher: "generations-quilt-patterns.com/stitch-length.html", Rank: Other},
	{ID: "stitch-and-needle-page", Title: "Stitch length and needles", Publisher: "easysewingtechniques.blogspot.com/p/stitch-lengthneedles.html", Rank: Other},
	{ID: "stitch-length-class-notes", Title: "Clothing class notes: stitch lengths", Year: "2008", Publisher: "caseysclothingclass.blogspot.com/2008/03/stitch-lengths.html", Rank: Other},
	{ID: "placket-pointers-page", Title: "Placket pointers", Publisher: "asg.org/placket-pointers", Rank: Other},
	{ID: "hemming-stitch-answer", Title: "What stitch length for hemming", Publisher: "calendar-australia.com/faq/what-stitch-length-for-hemming", Rank: Other},
	{ID: "needle-size-newsletter", Title: "Newsletter on needle sizes", Year: "2010", Publisher: "sweetbriarstudio.blogspot.com/2010/02", Rank: Other},
	{ID: "stitch-class-page", Title: "Stitch classes", Year: "2021", Publisher: "babixkau.blogspot.com/2021/10", Rank: Other},
	{ID: "coverstitch-article", Title: "Coverstitch", Publisher: "en.wikipedia.org/wiki/Coverstitch", Rank: Other},
	{ID: "stitch-type-guide", Title: "Guide to stitch types", Publisher: "ae-sewingmachines.com", Rank: Other},
}
