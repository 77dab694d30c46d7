package garment

import (
	"slices"
	"strings"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// Patch is the file over a starter that pairs of name and value ask for, as a sewer
// writes them on a command line. What begins with the name of a seam, a hem or a part is
// a change of it: shoulder.kind=french. What begins with another member of the file, as
// edges.neck.net=16 1/2 in, is that member.
func Patch(like string, pairs []string) (noun.Patch, error) {
	g, err := Starter(like)
	if err != nil {
		return nil, err
	}
	parts, work, members := names(g.Parts), g.work(), noun.Keys(g)
	full := []string{"version=1", "like=" + like}
	for _, pair := range pairs {
		path, value, _ := strings.Cut(pair, "=")
		name, field, _ := strings.Cut(path, ".")
		switch {
		case slices.Contains(members, name):
		case !slices.Contains(work, name):
			return nil, fault.Faults{{Path: path, Got: fault.Quote(name), Kind: fault.Unknown, Limit: "one of " + strings.Join(work, ", ") + "; or of " + strings.Join(members, ", ")}}
		case field == "meant":
			path = "changes." + path
		case slices.Contains(parts, name):
			path = "changes." + name + ".part." + field
		default:
			path = "changes." + name + ".sewn." + field
		}
		full = append(full, path+"="+value)
	}
	var patch noun.Patch
	err = noun.Reader{}.Pairs(full, &patch)
	return patch, err
}
