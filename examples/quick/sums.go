package main

import (
	"example.com/clothyard/seam/garment"
	"example.com/clothyard/units/noun"
)

// sums is every noun of the library under the name that people call it by.
var sums = noun.NewRegistry(garment.Nouns())
