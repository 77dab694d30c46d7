// Package embed holds four small programs that use the library as a program of
// somebody else would: a server, a sum, a lay with its picture, and lengths among
// flags, JSON and databases. Its test builds a module of its own.
package embed
