//go:build !js

package main

import (
	"os"
	"syscall"
)

// signals are those that stop a search; what is found by then is written.
var signals = [...]os.Signal{os.Interrupt, syscall.SIGTERM, syscall.SIGHUP}
