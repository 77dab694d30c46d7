package sqltext

import (
	"database/sql/driver"
	"encoding"
	"errors"
	"fmt"

	"example.com/clothyard/units"
)

// ErrType is returned for a column of a type that holds no exact amount; the text
// of the error names the type.
var ErrType = errors.New("holds no exact amount, want text with its unit")

// ErrNull is returned for NULL where a value is wanted.
var ErrNull = errors.New("sqltext: NULL, want text with its unit")

// A Length is a [units.Length] as a column of text. The zero value is 0 in.
type Length units.Length

// Scan reads a string or bytes as [units.Parse] does. It fails with [ErrNull],
// [ErrType] or a [*units.ParseError].
func (l *Length) Scan(src any) error { return scan(src, (*units.Length)(l)) }

// Value is the exact text of l. It fails where that is longer than [units.MaxText].
func (l Length) Value() (driver.Value, error) { return value(units.Length(l), true) }

// A Ratio is a [units.Ratio] as a column of text, or of whole numbers. The zero
// value is 0.
type Ratio units.Ratio

// Scan reads a string or bytes as [units.ParseRatio] does, or an int64. It fails
// with [ErrNull], [ErrType] or a [*units.ParseError].
func (r *Ratio) Scan(src any) error {
	if n, ok := src.(int64); ok {
		*r = Ratio(units.RatioOf(n, 1))
		return nil
	}
	return scan(src, (*units.Ratio)(r))
}

// Value is the exact text of r. It fails where that is longer than [units.MaxText].
func (r Ratio) Value() (driver.Value, error) { return value(units.Ratio(r), true) }

// An Area is a [units.Area] as a column of text. The zero value is 0 sq in.
type Area units.Area

// Scan reads a string or bytes as [units.ParseArea] does. It fails with [ErrNull],
// [ErrType] or a [*units.ParseError].
func (a *Area) Scan(src any) error { return scan(src, (*units.Area)(a)) }

// Value is the exact text of a. It fails where that is longer than [units.MaxText].
func (a Area) Value() (driver.Value, error) { return value(units.Area(a), true) }

// A NullLength is a length that may be NULL. The zero value is NULL.
type NullLength struct {
	Length units.Length // the length; zero where there is none
	Valid  bool         // it is not NULL
}

// Scan reads NULL, or what [Length.Scan] does.
func (n *NullLength) Scan(src any) error {
	var l Length
	if err := l.Scan(src); err != nil && src != nil {
		return err
	}
	*n = NullLength{units.Length(l), src != nil}
	return nil
}

// Value is NULL or the exact text.
func (n NullLength) Value() (driver.Value, error) { return value(n.Length, n.Valid) }

// A NullRatio is a ratio that may be NULL. The zero value is NULL.
type NullRatio struct {
	Ratio units.Ratio // the ratio; zero where there is none
	Valid bool        // it is not NULL
}

// Scan reads NULL, or what [Ratio.Scan] does.
func (n *NullRatio) Scan(src any) error {
	var r Ratio
	if err := r.Scan(src); err != nil && src != nil {
		return err
	}
	*n = NullRatio{units.Ratio(r), src != nil}
	return nil
}

// Value is NULL or the exact text.
func (n NullRatio) Value() (driver.Value, error) { return value(n.Ratio, n.Valid) }

// A NullArea is an area that may be NULL. The zero value is NULL.
type NullArea struct {
	Area  units.Area // the area; zero where there is none
	Valid bool       // it is not NULL
}

// Scan reads NULL, or what [Area.Scan] does.
func (n *NullArea) Scan(src any) error {
	var a Area
	if err := a.Scan(src); err != nil && src != nil {
		return err
	}
	*n = NullArea{units.Area(a), src != nil}
	return nil
}

// Value is NULL or the exact text.
func (n NullArea) Value() (driver.Value, error) { return value(n.Area, n.Valid) }

// scan reads text; a driver's bytes are not kept.
func scan(src any, to encoding.TextUnmarshaler) error {
	switch src := src.(type) {
	case nil:
		return ErrNull
	case string:
		return to.UnmarshalText([]byte(src))
	case []byte:
		return to.UnmarshalText(src)
	}
	return fmt.Errorf("sqltext: %T %w", src, ErrType)
}

// value is the text of a, or NULL.
func value(a encoding.TextMarshaler, valid bool) (driver.Value, error) {
	if !valid {
		return nil, nil
	}
	text, err := a.MarshalText()
	if err != nil {
		return nil, err
	}
	return string(text), nil
}
