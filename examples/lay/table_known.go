package main

import "strconv"

// How the best density of a row is known.
type how uint8

const (
	printed how = iota // printed in the source "reboot-nesting-research"
	drawn              // worked out from the drawing of the lay in the source "strip-packing-records"
	optimum            // the pieces fill the strip: no lay is shorter
)

// A row is what is published of an instance. Densities are in percent of the
// strip. Where the best lay is for a strip 0.01 % wider than the instance says,
// wider is true, and short is the best of the older ones, for the width itself;
// else it is the length of the best lay, from its drawing in the source
// "strip-packing-records". The means are those of "reboot-nesting-research": of
// 100 runs of the method of 2025, 20 minutes on three threads, and of older ones
// in the order of olderYears, the last a single run of a tree search.
type row struct {
	name  string
	how   how
	wider bool
	best  string
	short string
	mean  string
	older [5]string
}

var olderYears = [5]string{"2019", "2013", "2017", "2012", "2023"}

var rows = [...]row{
	{"albano", printed, false, "89.82", "9692.0066", "89.47", [5]string{"87.55", "87.47", "88.01", "87.38", "84.95"}},
	{"blaz1", printed, true, "86.23", "25.460", "84.68", [5]string{"83.02", "82.40", "", "82.55", "85.49"}},
	{"dagli", printed, false, "90.17", "56.086927", "89.26", [5]string{"87.50", "87.06", "87.14", "86.27", "84.17"}},
	{"dighe1", optimum, false, "100", "100", "", [5]string{}},
	{"dighe2", optimum, false, "100", "100", "", [5]string{}},
	{"fu", printed, true, "92.41", "30.841", "92.24", [5]string{"91.95", "90.68", "91.17", "90.00", "90.39"}},
	{"gardeyn0", drawn, false, "89.85", "48680.671960", "", [5]string{}},
	{"gardeyn1", drawn, false, "90.23", "16181.161432", "", [5]string{}},
	{"gardeyn2", drawn, false, "89.57", "47382.848", "", [5]string{}},
	{"gardeyn3", drawn, false, "88.68", "60397.832", "", [5]string{}},
	{"gardeyn4", drawn, false, "79.92", "4733.340", "", [5]string{}},
	{"gardeyn5", drawn, false, "70.55", "4322.151", "", [5]string{}},
	{"gardeyn6", drawn, false, "92.71", "17061.810", "", [5]string{}},
	{"gardeyn7", drawn, false, "87.01", "5067.831", "", [5]string{}},
	{"gardeyn8", drawn, false, "90.99", "48718.980", "", [5]string{}},
	{"gardeyn9", drawn, false, "86.73", "65.793", "", [5]string{}},
	{"jakobs1", printed, true, "89.26", "11", "89.09", [5]string{"89.09", "88.90", "88.96", "88.35", "81.67"}},
	{"jakobs2", printed, true, "87.73", "22", "84.77", [5]string{"83.56", "81.14", "83.41", "80.97", "80.42"}},
	{"jig16", optimum, false, "100", "900", "", [5]string{}},
	{"mao", printed, false, "86.87", "1696.79698", "86.14", [5]string{"83.76", "82.93", "82.28", "82.57", "75.94"}},
	{"marques", printed, false, "92.02", "75.176212", "90.93", [5]string{"89.97", "89.40", "88.38", "88.32", "85.48"}},
	{"shapes0", printed, true, "69.98", "58", "68.60", [5]string{"68.73", "67.26", "67.39", "66.85", "66.50"}},
	{"shapes1", printed, true, "76.73", "52", "75.69", [5]string{"75.86", "73.79", "73.91", "74.24", "72.55"}},
	{"shirts", printed, false, "90.92", "59.392857", "89.66", [5]string{"87.62", "87.59", "88.21", "87.20", "85.99"}},
	{"swim", printed, false, "79.83", "5541.6146", "78.26", [5]string{"74.29", "74.49", "74.66", "74.10", "71.44"}},
	{"trousers", printed, false, "92.62", "235.170838", "91.73", [5]string{"90.48", "89.02", "89.17", "88.29", "89.30"}},
}

// The classes of the rectangles of the source "strip-packing-set-c", c1p1 to
// c7p3: the length that they fill.
var classes = [...]int{20, 15, 30, 60, 90, 120, 240}

// known is the row of an instance.
func known(name string) (row, bool) {
	for _, r := range rows {
		if r.name == name {
			return r, true
		}
	}
	if len(name) == 4 && name[0] == 'c' && name[2] == 'p' && name[3] >= '1' && name[3] <= '3' {
		if class := int(name[1]) - '1'; class >= 0 && class < len(classes) {
			return row{name: name, how: optimum, best: "100", short: strconv.Itoa(classes[class])}, true
		}
	}
	return row{}, false
}
