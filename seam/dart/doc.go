// Package dart works out darts: legs, centre line and cap, what a dart takes from the
// edge it opens on, and how it is sewn. A [Pivot] moves a dart to another edge.
package dart
