// Package series knows the soil series of the United States by name: the texture of their
// surface and how they drain. The table is data beside the program: the host build embeds
// it, the page loads the same bytes as a file when somebody names a series.
//
// Source: Soil Survey Staff, US Natural Resources Conservation Service, Official Soil
// Series Descriptions. A work of the US government: public domain. That "well drained" is
// fair here and "somewhat poorly" slow is our judgment.
package series

import "strings"

// Table is the text of the table, a series a row; empty where there is none.
type Table string

// Find gives the ids of a series' texture and drainage by its name, whose first letter
// may be small. Either is empty where it is not known; ok is false where no series is
// called so.
func (t Table) Find(name string) (texture, drainage string, ok bool) {
	name = strings.TrimSpace(name)
	if name == "" || strings.ContainsAny(name, ",#\n") {
		return "", "", false
	}
	name = strings.ToUpper(name[:1]) + name[1:]
	after, ok := strings.CutPrefix(string(t), name+",")
	if !ok { // not the first row
		_, after, ok = strings.Cut(string(t), "\n"+name+",")
	}
	row, _, _ := strings.Cut(after, "\n")
	texture, drainage, _ = strings.Cut(row, ",")
	return texture, drainage, ok
}
