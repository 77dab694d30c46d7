package gather_test

import (
	"testing"

	"example.com/clothyard/gather"
)

func TestSetting(t *testing.T) {
	n := 0
	for s := range gather.Settings {
		n++
		text, err := s.MarshalText()
		if err != nil {
			t.Fatal(err)
		}
		var back gather.Setting
		if err := back.UnmarshalText(text); err != nil || back != s || s.String() != string(text) {
			t.Errorf("%v as %q and back as %v: %v", s, text, back, err)
		}
		c := cuff()
		c.Setting = s
		if _, err := c.Plan(); err != nil {
			t.Errorf("%v: %v", s, err)
		}
	}
	if n != 2 {
		t.Errorf("%d settings", n)
	}
	var s gather.Setting
	if err := s.UnmarshalText(nil); err != nil || s != gather.NoSetting || s.String() != "" {
		t.Errorf("no text is %v, %v", s, err)
	}
	if err := s.UnmarshalText([]byte("Flush")); err == nil {
		t.Error("names are lower case")
	}
	if _, err := gather.Setting(9).MarshalText(); err == nil || gather.Setting(9).String() != "Setting(9)" {
		t.Error("a setting that is none has no text")
	}
}
