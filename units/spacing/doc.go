// Package spacing lays marks along a line in equal gaps, round points that are fixed.
// No mark is found from the one before, so that errors do not add up.
package spacing
