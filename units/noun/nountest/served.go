package nountest

import (
	"bytes"
	"encoding/json"
	"errors"
	"net/http"
	"net/http/httptest"
	"reflect"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// served sends a Spec to a handler that plans it, and checks that what comes back is
// what Plan gives here, or the same faults.
func served(t *testing.T, e noun.Entry, text []byte) {
	t.Helper()
	w := httptest.NewRecorder()
	handler(e).ServeHTTP(w, httptest.NewRequest(http.MethodPost, "/", bytes.NewReader(text)))
	want, back := any(&fault.Faults{}), any(&fault.Faults{})
	spec := e.New()
	err := noun.Read(bytes.NewReader(text), spec)
	if err == nil {
		var p noun.Plan
		if p, err = e.Plan(spec); err == nil {
			want, back = pointer(p), e.NewPlan()
		}
	}
	if err != nil && !errors.As(err, want) {
		t.Errorf("%v is no fault.Faults", err)
		return
	}
	if good := w.Code == http.StatusOK; good != (err == nil) {
		t.Errorf("%s: status %d, want one that says %v", text, w.Code, err)
		return
	}
	if err := json.Unmarshal(w.Body.Bytes(), back); err != nil {
		t.Errorf("%s\nis answered by what does not read back: %v", text, err)
		return
	}
	if diff := cmp.Diff(reflect.ValueOf(want).Elem().Interface(), reflect.ValueOf(back).Elem().Interface(), exact()); diff != "" {
		t.Errorf("%s\nis answered by another plan (-here +served):\n%s", text, diff)
	}
}

// handler plans the Specs that are posted to it.
func handler(e noun.Entry) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		spec := e.New()
		err := noun.Read(r.Body, spec)
		if err == nil {
			var p noun.Plan
			if p, err = e.Plan(spec); err == nil {
				json.NewEncoder(w).Encode(p)
				return
			}
		}
		w.WriteHeader(http.StatusUnprocessableEntity)
		json.NewEncoder(w).Encode(err)
	})
}
