package source

// sourceTables is the one list of sources, in parts by subject.
func sourceTables() [9][]Source {
	return [...][]Source{unitSources[:], seamSources[:], hemSources[:], gatherSources[:], buttonSources[:], yardageSources[:], layoutSources[:], lawSources[:], stitchSources[:]}
}
