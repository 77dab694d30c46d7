package source

// The sources of the figures on buttons, holes and laps. Books that serve other
// subjects too stand with those.
var buttonSources = [...]Source{
	{ID: "extension-buttonhole-guide", Title: "Guide C-231", Publisher: "New Mexico State University Extension, aces.nmsu.edu/pubs/_c/C231/welcome.html", Rank: Extension},
	{ID: "garment-course-fasteners", Title: "E-course in garment construction", Publisher: "ecoursesonline.iasri.res.in", Rank: Extension},
	{ID: "sewing-handicraft-for-girls", Title: "Sewing Handicraft for Girls", Publisher: "chestofbooks.com", Rank: Handbook},
	{ID: "sewing-column-1927", Title: "Sun (Auckland), 4 July 1927", Year: "1927", Publisher: "paperspast.natlib.govt.nz", Rank: Paper},
	{ID: "construction-standards-list", Title: "ASDP standards", Publisher: "mysuitshop.com/ASDP_standards24.php and others", Rank: Paper},
	{ID: "button-setting-page", Title: "Setting of buttons", Publisher: "labelsmfg.com", Rank: Paper},
	{ID: "button-uses-page", Title: "Button size check", Publisher: "sungwonbutton.com/rd/button-size-check", Rank: Paper},
	{ID: "units-dictionary-buttons", Title: "Buttons", Publisher: "sizes.com/people/buttons.htm", Rank: Other},
	{ID: "ligne-chart-25-sizes", Title: "How to calculate button size by ligne", Publisher: "cxbuttons.com/how-to-calculate-button-size-by-ligne", Rank: Other},
	{ID: "ligne-chart-13-sizes", Title: "International standard", Publisher: "workroombuttons.com/international-standard.html", Rank: Other},
	{ID: "ligne-chart-15-sizes", Title: "Button size chart", Publisher: "gentsshop.co.uk/blog/button-size-chart", Rank: Other},
	{ID: "ligne-calculation-page", Title: "How to calculate button size", Publisher: "dhirubhai.net", Rank: Other},
	{ID: "buttonhole-placing-page", Title: "Buttonholes, article aa060399", Publisher: "sewing.about.com/library/weekly/aa060399.htm", Rank: Other},
	{ID: "buttonhole-measuring-page", Title: "Measuring for buttonhole length, reporting a sewing handbook of 1970", Year: "2014", Publisher: "retroglam.wordpress.com/2014/03/29/measuring-for-buttonhole-length", Rank: Other},
	{ID: "buttonhole-length-page", Title: "Day 7, January 7", Year: "2012", Publisher: "learnsomethingnew365.wordpress.com/2012/01/08/day-7-january-7", Rank: Other},
	{ID: "buttonhole-rules-page", Title: "Buttonhole rules", Publisher: "sewinggem.com.au/blogs/sg-blog/buttonhole-rules", Rank: Other},
	{ID: "bound-buttonhole-page", Title: "Bound buttonholes", Year: "2010", Publisher: "frkbustad.blogspot.com/2010/09", Rank: Other},
	{ID: "refashion-tutorial", Title: "Refashion tutorial", Publisher: "issuhub.com/view/index?id=4348", Rank: Other},
	{ID: "placket-drafting-page", Title: "Button extension and placket", Publisher: "dresspatternmaking.com/garment-elements/button-extension-placket", Rank: Other},
	{ID: "buttonhole-spacing-page", Title: "Friday fun fact: spacing buttonholes", Year: "2023", Publisher: "treadleyardgoods.blogspot.com/2023/08/friday-fun-fact-spacing-buttonholes.html", Rank: Other},
	{ID: "tailored-buttonhole-page", Title: "Sewing a tailored buttonhole by hand", Publisher: "historical-tailoring.com/notebook/sewing-a-tailored-buttonhole-by-hand", Rank: Other},
	{ID: "buttonhole-pitch-question", Title: "Buttonholes", Publisher: "missceliespants.com/tag/buttonholes", Rank: Other},
	{ID: "knitted-band-page", Title: "Cardigan band example", Publisher: "serendipity.gpvm.com/modify.html", Rank: Other},
	{ID: "goblet-heading-page", Title: "Goblet pleats", Publisher: "hutchal.clara.net/curtains/goblet-pleats.htm", Rank: Other},
	{ID: "pinch-heading-page", Title: "How to calculate pleats", Publisher: "ehow.co.uk/how_6522232_calculate-pleats.html", Rank: Other},
	{ID: "pleating-example-page", Title: "Pleating, worked example", Publisher: "draperysewingsupplies.com/kb_results.asp?ID=5", Rank: Other},
}
