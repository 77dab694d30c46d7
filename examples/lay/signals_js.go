package main

import "os"

// signals are those that stop a search; what is found by then is written.
var signals = [...]os.Signal{os.Interrupt}
