package units_test

import (
	"database/sql"
	"database/sql/driver"
	"errors"
	"fmt"
	"math/big"
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"
	"time"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// stores holds the values to what database/sql asks of them.
type stores[T any] interface {
	*T
	sql.Scanner
}

// checkStored sends a value to the database and back, by itself and as one that may be
// NULL.
func checkStored[T interface {
	comparable
	driver.Valuer
}, P stores[T]](t *testing.T, db *sql.DB, v T) {
	t.Helper()
	put(t, db, v)
	var got T
	if err := db.QueryRow("get").Scan(P(&got)); err != nil || got != v {
		t.Fatalf("%v is read as %v, %v", v, got, err)
	}
	put(t, db, sql.Null[T]{V: v, Valid: true})
	var null sql.Null[T]
	if err := db.QueryRow("get").Scan(&null); err != nil || null.V != v || !null.Valid {
		t.Fatalf("%v is read as %v, %v", v, null, err)
	}
	var text string
	if err := db.QueryRow("get").Scan(&text); err != nil || text != fmt.Sprint(v) {
		t.Fatalf("%v is stored as %q, %v", v, text, err)
	}
}

// TestStored sends amounts of every form to the database and back.
func TestStored(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 25))
	dens := []int64{1, 2, 3, 7, 8, 16, 25, 127, 1 << 40, 1<<62 + 1}
	for _, bytes := range []bool{false, true} {
		db := open(t, bytes)
		for range 200 {
			n := units.RatioOf(r.Int64()-r.Int64(), dens[r.IntN(len(dens))])
			switch r.IntN(3) {
			case 0:
				n = units.RatioOf(r.Int64N(2001)-1000, dens[r.IntN(8)])
			case 1:
				n = n.Mul(n).Mul(n)
			}
			l := units.Inch.Of(1).Scale(n)
			checkStored[units.Length](t, db, l)
			checkStored[units.Ratio](t, db, n)
			checkStored[units.Area](t, db, l.Times(units.Inch.Of(1)))
			checkStored[units.Near](t, db, units.Circle(l).Settled())
			checkStored[units.NearRatio](t, db, units.Pi().Scale(n).Settled())
			checkStored[units.Angle](t, db, someAngle(r))
		}
	}
}

// checkNull reads NULL into a value that may be NULL, and not into one that may not.
func checkNull[T interface {
	comparable
	driver.Valuer
}, P stores[T]](t *testing.T, db *sql.DB, before T) {
	t.Helper()
	for _, null := range []any{nil, sql.Null[T]{}, sql.Null[T]{V: before}} {
		put(t, db, null)
		n := sql.Null[T]{V: before, Valid: true}
		var none T
		if err := db.QueryRow("get").Scan(&n); err != nil || n.Valid || n.V != none {
			t.Errorf("NULL is read as %v, %v", n, err)
		}
		got := before
		if err := db.QueryRow("get").Scan(P(&got)); !errors.Is(err, fault.Missing) || got != before {
			t.Errorf("NULL is read into %T as %v, %v", got, got, err)
		}
	}
}

// checkForm refuses what a column holds and is no exact text.
func checkForm[T interface {
	comparable
	driver.Valuer
}, P stores[T]](t *testing.T, db *sql.DB, before T) {
	t.Helper()
	for _, v := range []any{0.625, true, time.Unix(0, 0), int64(5)} {
		if _, ok := any(before).(units.Ratio); ok && v == int64(5) {
			continue // a whole number is a ratio
		}
		put(t, db, v)
		got, kind := before, reflect.TypeOf(v).String()
		if err := db.QueryRow("get").Scan(P(&got)); !errors.Is(err, fault.Form) || !strings.Contains(err.Error(), kind) || got != before {
			t.Errorf("%v is read into %T as %v, %v", v, got, got, err)
		}
	}
	for _, text := range []string{"", "5/8 ell", "1e3 mm", strings.Repeat("1", units.MaxText) + " in"} {
		put(t, db, text)
		got := before
		var pe *units.ParseError
		if err := db.QueryRow("get").Scan(P(&got)); !errors.As(err, &pe) || got != before {
			t.Errorf("%.20q is read into %T as %v, %v", text, got, got, err)
		}
	}
}

func TestStoredRefused(t *testing.T) {
	half := units.Inch.Frac(1, 2)
	for _, bytes := range []bool{false, true} {
		db := open(t, bytes)
		checkNull[units.Length](t, db, half)
		checkNull[units.Ratio](t, db, units.RatioOf(1, 2))
		checkNull[units.Area](t, db, half.Times(half))
		checkNull[units.Near](t, db, units.Circle(half))
		checkNull[units.NearRatio](t, db, units.Pi())
		checkNull[units.Angle](t, db, angle(t, "3:12"))
		checkForm[units.Length](t, db, half)
		checkForm[units.Ratio](t, db, units.RatioOf(1, 2))
		checkForm[units.Area](t, db, half.Times(half))
		checkForm[units.Near](t, db, units.Circle(half))
		checkForm[units.NearRatio](t, db, units.Pi())
		checkForm[units.Angle](t, db, angle(t, "3:12"))
	}
	db := open(t, false)
	put(t, db, int64(5))
	var r units.Ratio
	if err := db.QueryRow("get").Scan(&r); err != nil || r != units.RatioOf(5, 1) {
		t.Error(r, err)
	}
	var null sql.Null[units.Ratio]
	if err := db.QueryRow("get").Scan(&null); err != nil || !null.Valid || null.V != units.RatioOf(5, 1) {
		t.Error(null, err)
	}
	// What would not read back is not written.
	long := units.Inch.Of(1).Scale(units.FromRat(new(big.Rat).SetInt(new(big.Int).Lsh(big.NewInt(1), 5000))))
	if _, err := db.Exec("put ?", long); err == nil {
		t.Error("a text too long is written")
	}
}

// The skirts of the chorus, as they stand in the wardrobe's book. One was not measured.
func ExampleLength_Scan() {
	db := sql.OpenDB(&memory{})
	defer db.Close()
	hem := units.MustParse("1 5/8 in").Add(units.MustParse("3 mm"))
	if _, err := db.Exec("put ?", hem); err != nil {
		fmt.Println(err)
		return
	}
	if _, err := db.Exec("put ?", sql.Null[units.Length]{}); err != nil {
		fmt.Println(err)
		return
	}
	rows, err := db.Query("get")
	if err != nil {
		fmt.Println(err)
		return
	}
	defer rows.Close()
	for rows.Next() {
		var skirt sql.Null[units.Length]
		if err := rows.Scan(&skirt); err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(skirt.Valid, skirt.V == hem, skirt.V)
	}
	// Output:
	// true true 44.275 mm
	// false false 0 in
}
