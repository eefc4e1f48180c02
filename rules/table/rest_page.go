//go:build page

package table

// rest leaves out of the page's program what only its lists of sources show, 10 kB: the page
// fetches [SourceTexts] when it draws one.
func rest(string) string { return "" }
