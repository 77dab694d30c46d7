package units_test

import (
	"context"
	"database/sql"
	"database/sql/driver"
	"errors"
	"io"
	"strings"
	"sync"
	"testing"
)

// memory is a database of one column: "put" adds its argument as a row, "get" is
// every row in order, "clear" forgets them. With bytes it gives text as bytes that
// it writes over afterwards, as drivers may.
type memory struct {
	mu    sync.Mutex
	bytes bool
	rows  []driver.Value
}

func (m *memory) Connect(context.Context) (driver.Conn, error) { return conn{m}, nil }
func (m *memory) Driver() driver.Driver                        { return m }
func (m *memory) Open(string) (driver.Conn, error)             { return conn{m}, nil }

type conn struct{ m *memory }

func (c conn) Close() error              { return nil }
func (c conn) Begin() (driver.Tx, error) { return nil, errors.New("no transactions") }
func (c conn) Prepare(query string) (driver.Stmt, error) {
	if query != "put ?" && query != "get" && query != "clear" {
		return nil, errors.New("no such query")
	}
	return stmt{c.m, query}, nil
}

type stmt struct {
	m     *memory
	query string
}

func (s stmt) Close() error  { return nil }
func (s stmt) NumInput() int { return strings.Count(s.query, "?") }
func (s stmt) Exec(args []driver.Value) (driver.Result, error) {
	s.m.mu.Lock()
	defer s.m.mu.Unlock()
	if s.query == "clear" {
		s.m.rows = nil
		return driver.RowsAffected(0), nil
	}
	s.m.rows = append(s.m.rows, args...)
	return driver.RowsAffected(len(args)), nil
}

func (s stmt) Query([]driver.Value) (driver.Rows, error) {
	s.m.mu.Lock()
	defer s.m.mu.Unlock()
	return &rows{left: append([]driver.Value(nil), s.m.rows...), bytes: s.m.bytes}, nil
}

type rows struct {
	left   []driver.Value
	bytes  bool
	buffer []byte
}

func (r *rows) Columns() []string { return []string{"amount"} }
func (r *rows) Close() error      { return nil }
func (r *rows) Next(to []driver.Value) error {
	for i := range r.buffer {
		r.buffer[i] = '#'
	}
	if len(r.left) == 0 {
		return io.EOF
	}
	to[0], r.left = r.left[0], r.left[1:]
	if text, ok := to[0].(string); ok && r.bytes {
		r.buffer = append(r.buffer[:0], text...)
		to[0] = r.buffer
	}
	return nil
}

// open is the database behind database/sql, with its text as strings or as bytes.
func open(t testing.TB, bytes bool) *sql.DB {
	db := sql.OpenDB(&memory{bytes: bytes})
	t.Cleanup(func() {
		if err := db.Close(); err != nil {
			t.Error(err)
		}
	})
	return db
}

func put(t testing.TB, db *sql.DB, v any) {
	t.Helper()
	if _, err := db.Exec("clear"); err != nil {
		t.Fatal(err)
	}
	if _, err := db.Exec("put ?", v); err != nil {
		t.Fatal(err)
	}
}
