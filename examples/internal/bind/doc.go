// Package bind writes a Plan as JSON, by reflection: its fields, and then what its
// methods list, as the marks of a row of buttons or the remedies of an assembly. It
// goes when these are fields too.
package bind
