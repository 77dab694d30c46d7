package stitch

import (
	"iter"

	"example.com/clothyard/units/source"
)

// A ClassRow is what one source says of a class of stitches.
type ClassRow struct {
	Class  Class        // the class
	Name   string       // what the source calls it
	Note   string       // where the sources disagree; empty if they do not
	Source string       // id, see [source.Lookup]
	Place  string       // where in it
	Known  source.Known // how it is known
}

// ClassRows yields the table of classes, 7 rows.
func ClassRows() iter.Seq[ClassRow] { return classRows.All() }

var classRows = source.Table[ClassRow]{
	{Chain, "chain", "", "stitch-class-page", "", source.Read},
	{Hand, "hand", "", "stitch-class-page", "", source.Read},
	{Lock, "lock", "", "stitch-class-page", "", source.Read},
	{MultiChain, "multi-thread chain", "", "stitch-class-page", "", source.Read},
	{Overedge, "overedge", "", "stitch-class-page", "", source.Read},
	{Covering, "covering", "", "stitch-class-page", "", source.Read},
	{LockOneThread, "single-thread lockstitch", "the other list has six classes", "stitch-types-course", "", source.Read},
}

// A TypeRow is what one source says of a stitch type. A count that the source
// does not state is zero.
type TypeRow struct {
	Type    Type         // the type
	Name    string       // what the source calls it
	Needles int          // how many needles
	Threads int          // how many threads, the under threads among them
	Made    [2]Type      // the two types that it is made of, if it is
	Note    string       // where the sources disagree or are unsure; empty if not
	Source  string       // id, see [source.Lookup]
	Place   string       // where in it
	Known   source.Known // how it is known
}

// TypeRows yields the table of types, 26 rows, in the order of the numbers, what
// was read before what is from memory.
func TypeRows() iter.Seq[TypeRow] { return typeRows.All() }

var (
	apart515 = "the sources disagree: read as 401 with 504, remembered as 401 with 503"

	typeRows = source.Table[TypeRow]{
		{Chain101, "chain stitch", 0, 1, [2]Type{}, "", "thread-ratio-guide", "", source.Read},
		{Blind103, "blind stitch", 0, 0, [2]Type{}, "", "thread-ratio-guide", "", source.Read},
		{Blind103, "blind stitch, derived from 101", 0, 1, [2]Type{}, "", "stitch-type-guide", "", source.Read},
		{Saddle209, "saddle stitch", 0, 0, [2]Type{}, "", "thread-ratio-guide", "", source.Read},
		{Lock301, "lockstitch", 0, 0, [2]Type{}, "", "thread-ratio-guide", "", source.Read},
		{Zigzag304, "zigzag", 0, 0, [2]Type{}, "", "thread-ratio-guide", "", source.Read},
		{Cover406, "coverstitch", 2, 0, [2]Type{}, "", "coverstitch-article", "", source.Read},
		{Cover407, "coverstitch", 3, 0, [2]Type{}, "", "coverstitch-article", "", source.Read},
		{Overedge502, "overedge", 0, 0, [2]Type{}, "", "tent-repair-manual", "table 3-1", source.Read},
		{Overedge503, "overedge", 0, 0, [2]Type{}, "", "tent-repair-manual", "table 3-1", source.Read},
		{Overedge503, "overedge", 0, 2, [2]Type{}, "", "stitch-types-course", "", source.Read},
		{Overedge504, "overedge", 0, 0, [2]Type{}, "", "tent-repair-manual", "table 3-1", source.Read},
		{Mock512, "mock safety stitch", 2, 4, [2]Type{}, "", "stitch-type-standard", "", source.Memory},
		{Overedge514, "overedge", 0, 4, [2]Type{}, "", "stitch-types-course", "", source.Read},
		{Overedge514, "overedge", 0, 4, [2]Type{}, "", "stitch-type-standard", "", source.Memory},
		{Safety515, "safety stitch", 0, 0, [2]Type{}, "", "tent-repair-manual", "table 3-1", source.Read},
		{Safety515, "safety stitch", 0, 0, [2]Type{Chain401, Overedge504}, apart515, "stitch-types-course", "", source.Read},
		{Safety515, "safety stitch", 0, 0, [2]Type{Chain401, Overedge503}, apart515, "stitch-type-standard", "", source.Memory},
		{Safety516, "safety stitch", 0, 0, [2]Type{}, "", "tent-repair-manual", "table 3-1", source.Read},
		{Safety516, "safety stitch", 0, 0, [2]Type{Chain401, Overedge504}, "", "stitch-type-standard", "", source.Memory},
		{Safety519, "safety stitch", 0, 0, [2]Type{}, "", "tent-repair-manual", "table 3-1", source.Read},
		{Safety519, "safety stitch", 0, 0, [2]Type{Chain401, Cover602}, "unsure even as remembered", "stitch-type-standard", "", source.Memory},
		{Cover602, "covering stitch", 2, 4, [2]Type{}, "", "stitch-type-standard", "", source.Memory},
		{Cover605, "covering stitch: one looper, one cover thread", 3, 5, [2]Type{}, "", "sewing-technology-vocational", "page 183", source.Read},
		{Cover605, "covering stitch", 3, 5, [2]Type{}, "", "stitch-type-standard", "", source.Memory},
		{Cover607, "covering stitch", 4, 6, [2]Type{}, "", "stitch-type-standard", "", source.Memory},
	}
)
