//go:build page

package plan

// afterText leaves the texts out of the page's program: it fetches [AfterTexts].
func afterText(string) (text, from string) { return "", "" }
