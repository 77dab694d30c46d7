package main

import (
	"bytes"
	"encoding/xml"
	"io"
	"strings"
	"testing"
)

func TestLay(t *testing.T) {
	var b bytes.Buffer
	if err := lay(&b); err != nil {
		t.Fatal(err)
	}
	for _, p := range pieces() {
		if n := strings.Count(b.String(), p.Name); n < p.Count {
			t.Errorf("%s stands %d times in the picture, want %d", p.Name, n, p.Count)
		}
	}
	d := xml.NewDecoder(&b)
	for {
		if _, err := d.Token(); err == io.EOF {
			return
		} else if err != nil {
			t.Fatal(err)
		}
	}
}
