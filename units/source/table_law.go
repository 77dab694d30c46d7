package source

// Laws and standards. Publisher is where an extract or a report of the text was
// read; the text in force decides.
var lawSources = [...]Source{
	{ID: "us-small-parts-rule", Title: "16 CFR part 1501, small parts", Publisher: "United States; ecfr.gov, govinfo.gov (2007 edition)", Rank: Law},
	{ID: "us-drawstring-rule", Title: "16 CFR part 1120 with ASTM F1816, drawstrings on children's upper outerwear", Year: "2011", Publisher: "United States; cpsc.gov", Rank: Law},
	{ID: "us-sleepwear-small-rule", Title: "16 CFR part 1615, flammability of children's sleepwear, sizes 0 to 6X", Publisher: "United States; ecfr.gov, cpsc.gov", Rank: Law},
	{ID: "us-sleepwear-rule", Title: "16 CFR part 1616, flammability of children's sleepwear, sizes 7 to 14", Publisher: "United States; law.cornell.edu/cfr/text/16/1616.3", Rank: Law},
	{ID: "eu-cords-standard", Title: "EN 14682, cords and drawstrings on children's clothing", Publisher: "as summarised by the authorities at tukes.fi and ccpc.ie", Rank: Law},
	{ID: "cn-cords-standard", Title: "GB/T 22702-2008, cords of children's clothing", Year: "2008", Publisher: "China; as reported at szwlxq.com", Rank: Law},
	{ID: "eu-infant-button-strength", Title: "CEN/TS 17394-1, attachment strength of buttons on infants' clothing", Publisher: "as reported at genalysis.com.au, 26 January 2021", Rank: Law},
	{ID: "eu-toy-standard", Title: "EN 71-1, safety of toys, mechanical properties", Publisher: "as reported at globalgd.com/show/1013", Rank: Law},
	{ID: "uk-nightwear-regulations", Title: "The Nightwear (Safety) Regulations 1985, SI 1985/2043", Year: "1985", Publisher: "United Kingdom; legislation.gov.uk", Rank: Law},
	{ID: "iso-care-symbols", Title: "ISO 3758, care labelling code using symbols", Publisher: "as reported at ozdenim.com", Rank: Law},
}
