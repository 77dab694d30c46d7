// Row answers questions about rows of buttons over HTTP: a Spec in, the plan or the
// faults out, both JSON.
//
//	go run ./examples/embed/row &
//	curl -d '{"first": "5/8 in", "last": "22 in", "count": 9}' localhost:8080
package main

import (
	"encoding/json"
	"log"
	"net/http"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units/noun"
)

func main() {
	// Only this machine is served; a public server needs more around it.
	log.Fatal(http.ListenAndServe("localhost:8080", http.HandlerFunc(row)))
}

// row reads a Spec, plans it and writes the answer.
func row(w http.ResponseWriter, r *http.Request) {
	w.Header().Set("Content-Type", "application/json")
	var spec buttons.Row
	if err := noun.Read(r.Body, &spec); err != nil {
		refuse(w, err)
		return
	}
	plan, err := spec.Plan()
	if err != nil {
		refuse(w, err)
		return
	}
	if err := json.NewEncoder(w).Encode(plan); err != nil {
		log.Print(err)
	}
}

// refuse writes the faults, of which each has its path, its kind and its limit.
func refuse(w http.ResponseWriter, err error) {
	w.WriteHeader(http.StatusUnprocessableEntity)
	if err := json.NewEncoder(w).Encode(map[string]any{"faults": err}); err != nil {
		log.Print(err)
	}
}
