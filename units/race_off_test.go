//go:build !race

package units_test

const raceOn = false
