package nountest

import (
	"errors"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// Limits checks what the faults of a Spec say: where every field at fault has the
// value that its limit names, the Spec is good, and just beyond that it is not. A
// limit is written as "at least 1 in", "at most", "more than", "less than", "1 to
// 9", "1 or more", or as the one value that would do.
func Limits(t *testing.T, spec any) {
	t.Helper()
	for _, complaint := range limits(spec) {
		t.Errorf("%+v\n%s", spec, complaint)
	}
}

func limits(spec any) (complaints []string) {
	good := copied(reflect.ValueOf(spec))
	_, err := planOf(good)
	var faults fault.Faults
	if !errors.As(err, &faults) {
		return []string{"no faults"}
	}
	type end struct{ at, beyond reflect.Value }
	ends := make([]end, len(faults))
	for i, f := range faults {
		field, ok := fieldAt(good, f.Path)
		if !ok {
			return []string{f.Path + " is no field"}
		}
		at, beyond, ok := ending(field, f.Want())
		if !ok {
			return []string{f.Error() + ": the limit is no value of " + f.Path}
		}
		ends[i] = end{at, beyond}
	}
	for i, f := range faults {
		field, _ := fieldAt(good, f.Path)
		field.Set(ends[i].at)
	}
	if _, err := planOf(good); err != nil {
		return []string{faults.Error() + "\nyet with these limits: " + err.Error()}
	}
	for i, f := range faults {
		if !ends[i].beyond.IsValid() {
			continue
		}
		bad := copied(good)
		field, _ := fieldAt(bad, f.Path)
		field.Set(ends[i].beyond)
		if _, err := planOf(bad); err == nil {
			complaints = append(complaints, f.Error()+"\nyet "+f.Path+" may be beyond its limit")
		}
	}
	return complaints
}

// copied is a Spec of its own, its lists too.
func copied(v reflect.Value) reflect.Value {
	c := reflect.New(v.Type()).Elem()
	c.Set(v)
	for i := range c.NumField() {
		if f := c.Field(i); f.Kind() == reflect.Slice {
			f.Set(reflect.AppendSlice(reflect.MakeSlice(f.Type(), 0, f.Len()), f))
		}
	}
	return c
}

// fieldAt is the field of a path such as Places[2].Least.
func fieldAt(v reflect.Value, path string) (reflect.Value, bool) {
	for part := range strings.SplitSeq(path, ".") {
		name, index, listed := strings.Cut(strings.TrimSuffix(part, "]"), "[")
		if v, _ = keyed(v, noun.Key(name)); !v.IsValid() {
			return v, false
		}
		if listed {
			i, err := strconv.Atoi(index)
			if err != nil || i >= v.Len() {
				return v, false
			}
			v = v.Index(i)
		}
	}
	return v, true
}

// ending is the last value that a limit lets a field have, seen from the value it
// has, and one beyond it; none beyond where only one value does.
func ending(field reflect.Value, limit string) (at, beyond reflect.Value, ok bool) {
	first, second, between := strings.Cut(limit, " to ")
	if between && field.Kind() == reflect.Int {
		low, _, okLow := valueOf(field, first)
		high, _, okHigh := valueOf(field, second)
		if !okLow || !okHigh {
			return at, beyond, false
		}
		if field.Int() < low.Int() {
			return low, moved(low, low, -1), true
		}
		return high, moved(high, high, 1), true
	}
	for _, w := range [...]struct {
		word        string
		at, further int
	}{{"at least ", 0, -1}, {"at most ", 0, 1}, {"more than ", 1, 0}, {"less than ", -1, 0}} {
		if rest, found := strings.CutPrefix(limit, w.word); found {
			v, step, ok := valueOf(field, rest)
			return moved(v, step, w.at), moved(v, step, w.further), ok
		}
	}
	v, step, ok := valueOf(field, limit)
	if strings.Contains(limit, " or more") {
		return v, moved(v, step, -1), ok
	}
	return v, beyond, ok
}

// valueOf reads the value that a limit begins with, and a small step of it.
func valueOf(field reflect.Value, text string) (v, step reflect.Value, ok bool) {
	text, _, _ = strings.Cut(text, " (")
	text, _, _ = strings.Cut(text, ", ")
	text, _, _ = strings.Cut(text, ":")
	text, _, _ = strings.Cut(text, " or more")
	switch field.Interface().(type) {
	case units.Length:
		l, err := units.Parse(text)
		return reflect.ValueOf(l), reflect.ValueOf(units.Inch.Frac(1, 1_000_000_000_000)), err == nil
	case units.Ratio:
		r, err := units.ParseRatio(text)
		return reflect.ValueOf(r), reflect.ValueOf(units.RatioOf(1, 1_000_000_000_000)), err == nil
	case int:
		text, _, _ = strings.Cut(strings.ReplaceAll(text, ",", ""), " ")
		n, err := strconv.Atoi(text)
		return reflect.ValueOf(n), reflect.ValueOf(1), err == nil
	}
	return v, step, false
}

// moved is v and so many steps.
func moved(v, step reflect.Value, n int) reflect.Value {
	if !v.IsValid() {
		return v
	}
	switch x := v.Interface().(type) {
	case units.Length:
		return reflect.ValueOf(x.Add(step.Interface().(units.Length).MulInt(int64(n))))
	case units.Ratio:
		return reflect.ValueOf(x.Add(step.Interface().(units.Ratio).Mul(units.RatioOf(int64(n), 1))))
	}
	return reflect.ValueOf(int(v.Int()) + n)
}
