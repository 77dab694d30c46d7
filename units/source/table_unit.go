package source

// unitSources are the sources of units: measures, and printed tables of equivalents.
var unitSources = [...]Source{
	{ID: "refinement-of-yard-notice", Author: "National Bureau of Standards", Title: "Refinement of values for the yard and the pound, 24 FR 5348", Year: "1959", Publisher: "Federal Register", Rank: Law},
	{ID: "units-of-weight-circular", Author: "National Bureau of Standards", Title: "Units of Weight and Measure, Circular 572, addendum of 22 January 1960", Year: "1960", Publisher: "books.google.com, id SeRcAAAAIAAJ", Rank: Law},
	{ID: "elements-of-arithmetic", Author: "A. De Morgan", Title: "Elements of Arithmetic", Rank: Handbook},
	{ID: "practical-arithmetic", Title: "A Complete System of Practical Arithmetic", Year: "1869", Publisher: "dozenalsociety.org.uk", Rank: Handbook},
	{ID: "dry-goods-dictionary", Title: "Dictionary of Dry Goods, Measures", Publisher: "chestofbooks.com", Rank: Handbook},
	{ID: "workwomans-guide", Author: "A Lady", Title: "The Workwoman's Guide", Year: "1838", Publisher: "Gutenberg 75494", Rank: Handbook},
	{ID: "school-needlework", Author: "Hapgood", Title: "School Needlework, Part II, Plain Sewing", Year: "1892", Publisher: "chestofbooks.com", Rank: Handbook},
	{ID: "needlework-encyclopedia", Author: "Th. de Dillmont", Title: "Encyclopedia of Needlework", Publisher: "Gutenberg 20776", Rank: Handbook},
	{ID: "handicraft-for-girls", Author: "I. McGlauflin", Title: "Handicraft for Girls", Year: "1910", Publisher: "Gutenberg 34854", Rank: Handbook},
	{ID: "clothing-and-health", Author: "Kinne and Cooley", Title: "Clothing and Health", Year: "1916", Publisher: "Gutenberg 47585", Rank: Handbook},
	{ID: "household-science-manual", Title: "Ontario Teachers' Manuals: Household Science in Rural Schools", Publisher: "Ontario Department of Education", Rank: Extension},
	{ID: "metric-chart-teaching-notes", Title: "Metric Conversion Chart (teaching notes)", Publisher: "scribd.com, document 446218490", Rank: Other},
	{ID: "metric-rounding-article", Title: "article 172906, converting patterns to metric", Publisher: "bellaonline.com", Rank: Other},
	{ID: "imperial-metric-guide", Title: "Imperial to metric conversion guide", Year: "2022", Publisher: "echidnasewing.com.au", Rank: Other},
	{ID: "metric-system-tailoring", Title: "The metric system of measurement", Publisher: "stitchingmall.com", Rank: Other},
	{ID: "yardage-conversion-chart", Title: "Fabric yardage conversion chart", Publisher: "hookedonsewing.com", Rank: Other},
	{ID: "yard-fraction-list", Title: "Fractions of a yard in inches, topic 280955", Publisher: "quiltingboard.com", Rank: Other},
	{ID: "decimal-inch-list", Title: "Decimal equivalents of the sixteenths", Year: "2014", Publisher: "catbirdquilts.wordpress.com", Rank: Other},
	{ID: "drop-measuring-table", Title: "Measuring table", Publisher: "pattern-making.com", Rank: Other},
	{ID: "nails-to-inches-article", Title: "Nails and inches, May 2015", Year: "2015", Publisher: "thesewingacademy.com", Rank: Other},
	{ID: "fraction-sums-article", Title: "Fractions and metric seams, 24 July 2015", Year: "2015", Publisher: "sewingjapanese.wordpress.com", Rank: Other},
}
