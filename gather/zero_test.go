package gather_test

import (
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units/source"
)

// TestZero puts the zero value of everything through its methods.
func TestZero(t *testing.T) {
	if s := (gather.StripPlan{}).Sheet(); s.Title == "" {
		t.Error("no title")
	}
	if s := (gather.RufflePlan{}).Sheet(); s.Title == "" {
		t.Error("no title")
	}
	if s := (gather.CuffPlan{}).Sheet(); s.Title == "" {
		t.Error("no title")
	}
	for range (gather.RufflePlan{}).Quarters() {
		t.Error("a mark")
	}
	for range (gather.RufflePlan{}).Joins() {
		t.Error("a join")
	}
	for range (gather.CuffPlan{}).Quarters() {
		t.Error("a mark")
	}
	if c := (gather.FullnessRow{}).Cite(); c.Known != source.Unknown {
		t.Error(c)
	}
}
