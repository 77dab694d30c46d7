// Package alter changes a garment: a [Letting] lets seams out or takes them in, a
// [Lengthening] makes a piece longer or shorter, an [Easing] places the ease of a
// longer edge along a shorter one.
package alter
