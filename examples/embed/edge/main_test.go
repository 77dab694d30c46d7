package main

import "os"

func Example() {
	if err := tell(os.Stdout); err != nil {
		panic(err)
	}
	// Output:
	// each ply keeps 3/16 in of the allowance drafted, so the neck comes out 17 1/4 in in place of 16 1/2 in
}
