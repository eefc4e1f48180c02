//go:build !page

package table

// rest is what of a source only a list of sources shows.
func rest(text string) string { return text }
