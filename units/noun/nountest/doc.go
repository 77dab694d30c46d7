// Package nountest holds checks that the tests of several packages share. Only
// tests import it.
package nountest
