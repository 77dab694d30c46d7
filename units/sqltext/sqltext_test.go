package sqltext_test

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
	"example.com/clothyard/units/sqltext"
)

var (
	_ sql.Scanner   = (*sqltext.Length)(nil)
	_ sql.Scanner   = (*sqltext.Ratio)(nil)
	_ sql.Scanner   = (*sqltext.Area)(nil)
	_ sql.Scanner   = (*sqltext.NullLength)(nil)
	_ sql.Scanner   = (*sqltext.NullRatio)(nil)
	_ sql.Scanner   = (*sqltext.NullArea)(nil)
	_ driver.Valuer = sqltext.Length{}
	_ driver.Valuer = sqltext.Ratio{}
	_ driver.Valuer = sqltext.Area{}
	_ driver.Valuer = sqltext.NullLength{}
	_ driver.Valuer = sqltext.NullRatio{}
	_ driver.Valuer = sqltext.NullArea{}
)

// TestRoundTrip sends amounts of every form to the database and back.
func TestRoundTrip(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 25))
	dens := []int64{1, 2, 3, 7, 8, 16, 25, 127, 1 << 40, 1<<62 + 1}
	for _, bytes := range []bool{false, true} {
		db := open(t, bytes)
		for range 500 {
			n := units.RatioOf(r.Int64()-r.Int64(), dens[r.IntN(len(dens))])
			switch r.IntN(3) {
			case 0:
				n = units.RatioOf(r.Int64N(2001)-1000, dens[r.IntN(8)])
			case 1:
				n = n.Mul(n).Mul(n)
			}
			l := units.Inch.Of(1).Scale(n)
			a := l.Times(units.Inch.Of(1))

			put(t, db, sqltext.Length(l))
			var gotL units.Length
			if err := db.QueryRow("get").Scan((*sqltext.Length)(&gotL)); err != nil || gotL != l {
				t.Fatalf("%v is read as %v, %v", l, gotL, err)
			}
			var nullL sqltext.NullLength
			if err := db.QueryRow("get").Scan(&nullL); err != nil || nullL != (sqltext.NullLength{Length: l, Valid: true}) {
				t.Fatalf("%v is read as %v, %v", l, nullL, err)
			}

			put(t, db, sqltext.NullRatio{Ratio: n, Valid: true})
			var gotR units.Ratio
			if err := db.QueryRow("get").Scan((*sqltext.Ratio)(&gotR)); err != nil || gotR != n {
				t.Fatalf("%v is read as %v, %v", n, gotR, err)
			}
			var nullR sqltext.NullRatio
			if err := db.QueryRow("get").Scan(&nullR); err != nil || nullR != (sqltext.NullRatio{Ratio: n, Valid: true}) {
				t.Fatalf("%v is read as %v, %v", n, nullR, err)
			}

			put(t, db, sqltext.Area(a))
			var gotA units.Area
			if err := db.QueryRow("get").Scan((*sqltext.Area)(&gotA)); err != nil || gotA != a {
				t.Fatalf("%v is read as %v, %v", a, gotA, err)
			}
			var nullA sqltext.NullArea
			if err := db.QueryRow("get").Scan(&nullA); err != nil || nullA != (sqltext.NullArea{Area: a, Valid: true}) {
				t.Fatalf("%v is read as %v, %v", a, nullA, err)
			}
		}
	}
}

func TestNull(t *testing.T) {
	db := open(t, false)
	for _, null := range []any{sqltext.NullLength{}, sqltext.NullRatio{}, sqltext.NullArea{}, sqltext.NullLength{Length: units.Inch.Of(1)}, nil} {
		put(t, db, null)
		l := sqltext.NullLength{Length: units.Inch.Of(1), Valid: true}
		r := sqltext.NullRatio{Ratio: units.RatioOf(1, 2), Valid: true}
		a := sqltext.NullArea{Valid: true}
		for _, to := range []any{&l, &r, &a} {
			if err := db.QueryRow("get").Scan(to); err != nil || !reflect.ValueOf(to).Elem().IsZero() {
				t.Errorf("NULL is read as %v, %v", to, err)
			}
		}
		for _, to := range []any{new(sqltext.Length), new(sqltext.Ratio), new(sqltext.Area)} {
			if err := db.QueryRow("get").Scan(to); !errors.Is(err, sqltext.ErrNull) {
				t.Errorf("NULL is read into %T: %v", to, err)
			}
		}
	}
	// The generic wrapper of the standard library reads them as well.
	var n sql.Null[sqltext.Length]
	if err := db.QueryRow("get").Scan(&n); err != nil || n.Valid {
		t.Error(n, err)
	}
}

func TestRefused(t *testing.T) {
	db := open(t, false)
	half := units.Inch.Frac(1, 2)
	for _, c := range []struct {
		v    any
		kind string // named in the error
	}{{0.625, "float64"}, {true, "bool"}, {time.Unix(0, 0), "time.Time"}, {int64(5), "int64"}} {
		put(t, db, c.v)
		l, a := sqltext.Length(half), sqltext.Area(half.Times(half))
		r := sqltext.Ratio(units.RatioOf(1, 2))
		nl, na, nr := sqltext.NullLength{Length: half, Valid: true}, sqltext.NullArea{Valid: true}, sqltext.NullRatio{Valid: true}
		refused := map[any]any{&l: l, &a: a, &nl: nl, &na: na}
		if c.kind != "int64" {
			refused[&r], refused[&nr] = r, nr
		}
		for to, before := range refused {
			err := db.QueryRow("get").Scan(to)
			if !errors.Is(err, sqltext.ErrType) || !strings.Contains(err.Error(), c.kind) {
				t.Errorf("%v is read into %T: %v", c.v, to, err)
			}
			if after := reflect.ValueOf(to).Elem().Interface(); after != before {
				t.Errorf("%v refused and yet %v", c.v, after)
			}
		}
	}
	put(t, db, int64(5))
	var r units.Ratio
	if err := db.QueryRow("get").Scan((*sqltext.Ratio)(&r)); err != nil || r != units.RatioOf(5, 1) {
		t.Error(r, err)
	}
	var nr sqltext.NullRatio
	if err := db.QueryRow("get").Scan(&nr); err != nil || nr != (sqltext.NullRatio{Ratio: units.RatioOf(5, 1), Valid: true}) {
		t.Error(nr, err)
	}
	for _, bytes := range []bool{false, true} {
		db := open(t, bytes)
		for _, text := range []string{"", "5/8", "5/8 ell", "1e3 mm", strings.Repeat("1", units.MaxText) + " in"} {
			put(t, db, text)
			l := sqltext.NullLength{Length: half, Valid: true}
			var pe *units.ParseError
			if err := db.QueryRow("get").Scan(&l); !errors.As(err, &pe) || l.Length != half {
				t.Errorf("%.20q is read as %v, %v", text, l, err)
			}
		}
	}
	// What would not read back is not written.
	long := units.Inch.Of(1).Scale(units.FromRat(new(big.Rat).SetInt(new(big.Int).Lsh(big.NewInt(1), 5000))))
	if _, err := db.Exec("put ?", sqltext.Length(long)); err == nil {
		t.Error("a text too long is written")
	}
}

// The skirts of the chorus, as they stand in the wardrobe's book.
func Example() {
	db := sql.OpenDB(&memory{})
	defer db.Close()
	hem := units.MustParse("1 5/8 in").Add(units.MustParse("3 mm"))
	if _, err := db.Exec("put ?", sqltext.Length(hem)); err != nil {
		fmt.Println(err)
		return
	}
	var stored string
	var back units.Length
	err := db.QueryRow("get").Scan(&stored)
	fmt.Println(stored, err)
	err = db.QueryRow("get").Scan((*sqltext.Length)(&back))
	fmt.Println(back == hem, err)
	// Output:
	// 44.275 mm <nil>
	// true <nil>
}

// A length that may not have been measured yet.
func ExampleNullLength() {
	db := sql.OpenDB(&memory{})
	defer db.Close()
	for _, waist := range []sqltext.NullLength{{Length: units.MustParse("28 1/2 in"), Valid: true}, {}} {
		if _, err := db.Exec("put ?", waist); err != nil {
			fmt.Println(err)
			return
		}
	}
	rows, err := db.Query("get")
	if err != nil {
		fmt.Println(err)
		return
	}
	defer rows.Close()
	for rows.Next() {
		var waist sqltext.NullLength
		if err := rows.Scan(&waist); err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(waist.Valid, waist.Length)
	}
	// Output:
	// true 28 1/2 in
	// false 0 in
}
