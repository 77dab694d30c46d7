package units

import (
	"database/sql/driver"
	"encoding"
	"fmt"

	"example.com/clothyard/units/fault"
)

// The values stand in a database as their exact text, in a column long enough for
// [MaxText]. Text does not sort by length: to compare amounts in the database keep a count
// of a small unit beside it.

// scan reads text. A driver's bytes are not kept; a floating-point number is refused,
// since 0.1 in is none.
func scan(src any, to encoding.TextUnmarshaler) error {
	switch src := src.(type) {
	case nil:
		return &fault.Fault{Kind: fault.Missing, Limit: "text; a column that may be NULL is read into a sql.Null"}
	case string:
		return to.UnmarshalText([]byte(src))
	case []byte:
		return to.UnmarshalText(src)
	}
	return &fault.Fault{Got: fmt.Sprintf("%T", src), Kind: fault.Form, Limit: "text, which is exact and has its unit"}
}

func stored(a encoding.TextMarshaler) (driver.Value, error) {
	text, err := a.MarshalText()
	if err != nil {
		return nil, err
	}
	return string(text), nil
}

// Scan reads a column of text as [Parse] does. NULL is refused as [fault.Missing], and what
// is no text as [fault.Form].
func (l *Length) Scan(src any) error { return scan(src, l) }

// Value is the exact text of l, for a database. It fails where [Length.MarshalText] does.
func (l Length) Value() (driver.Value, error) { return stored(l) }

// Scan reads a column of text as [ParseRatio] does, or one of whole numbers, and refuses
// what [Length.Scan] does.
func (r *Ratio) Scan(src any) error {
	if n, ok := src.(int64); ok {
		*r = RatioOf(n, 1)
		return nil
	}
	return scan(src, r)
}

// Value is the exact text of r, for a database, as [Length.Value] is that of a length.
func (r Ratio) Value() (driver.Value, error) { return stored(r) }

// Scan reads a column of text as [ParseArea] does, and refuses what [Length.Scan] does.
func (a *Area) Scan(src any) error { return scan(src, a) }

// Value is the exact text of a, for a database, as [Length.Value] is that of a length.
func (a Area) Value() (driver.Value, error) { return stored(a) }

// Scan reads a column of text as [ParseNear] does, and refuses what [Length.Scan] does.
func (n *Near) Scan(src any) error { return scan(src, n) }

// Value is the text of n, for a database. It reads back equal where n is exact or
// [Near.Settled], and else to bounds that enclose those of n.
func (n Near) Value() (driver.Value, error) { return stored(n) }

// Scan reads a column of text as [ParseNearRatio] does, and refuses what [Length.Scan]
// does.
func (n *NearRatio) Scan(src any) error { return scan(src, n) }

// Value is the text of n, for a database, as [Near.Value] is that of a length.
func (n NearRatio) Value() (driver.Value, error) { return stored(n) }

// Scan reads a column of text as [ParseAngle] does, and refuses what [Length.Scan] does.
func (a *Angle) Scan(src any) error { return scan(src, a) }

// Value is the exact text of a, for a database, as [Length.Value] is that of a length.
func (a Angle) Value() (driver.Value, error) { return stored(a) }
