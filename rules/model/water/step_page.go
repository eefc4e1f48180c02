//go:build page

package water

// stepText leaves the texts out of the page's program: it fetches [StepTexts].
func stepText(string) (formula, source string) { return "", "" }
