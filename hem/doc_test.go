package hem_test

import (
	"errors"
	"os"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// TestKindTable: the table in the doc of Kind tells which fields each kind reads.
func TestKindTable(t *testing.T) {
	src, err := os.ReadFile("kind.go")
	if err != nil {
		t.Fatal(err)
	}
	var head []string
	rows := map[string][]string{}
	for line := range strings.SplitSeq(string(src), "\n") {
		cells, ok := strings.CutPrefix(line, "//\t")
		switch f := strings.Fields(cells); {
		case !ok:
		case head == nil:
			head = f
		default:
			rows[f[0]] = f[1:]
		}
	}
	for k := range hem.Kinds() {
		row := rows[k.String()]
		if len(row) != len(head) {
			t.Errorf("%s: %d cells under %d heads", k, len(row), len(head))
			continue
		}
		delete(rows, k.String())
		for i, name := range head {
			s := hem.Spec{Kind: k}
			if k == hem.Slit {
				s.Opening, s.SeamTake = hem.InSeam, l("1")
			}
			f := reflect.ValueOf(&s).Elem().FieldByName(name)
			switch f.Interface().(type) {
			case units.Length:
				f.Set(reflect.ValueOf(l("1")))
			case units.Ratio:
				f.Set(reflect.ValueOf(units.RatioOf(1, 2)))
			case int:
				f.SetInt(2)
			case bool:
				f.SetBool(true)
			}
			_, err := s.Plan()
			var fs fault.Faults
			unused := false
			if errors.As(err, &fs) {
				for _, one := range fs {
					unused = unused || one.Path == strings.ToLower(name[:1])+name[1:] && one.Kind == fault.Unused
				}
			}
			if unused != (row[i] == "-") {
				t.Errorf("%s: %s is %s in the table, and %v", k, name, row[i], err)
			}
		}
	}
	for k := range rows {
		t.Errorf("the table has a row for %s", k)
	}
	// Every field that a kind may not read has a column.
	for i := range reflect.TypeFor[hem.Spec]().NumField() {
		switch name := reflect.TypeFor[hem.Spec]().Field(i).Name; name {
		case "Tape", "Kind", "Slit", "Opening", "SeamTake":
		default:
			if !strings.Contains(" "+strings.Join(head, " ")+" ", " "+name+" ") {
				t.Errorf("no column for %s", name)
			}
		}
	}
}
