package app

import (
	"strings"

	"github.com/maxence-charriere/go-app/v9/pkg/app"
)

// saveFile hands a text to the browser's own saving. Nothing leaves the device.
func saveFile(name, kind, text string) {
	parts := app.Window().Get("Array").New()
	parts.Call("push", text)
	blob := app.Window().Get("Blob").New(parts, map[string]any{"type": kind})
	url := app.Window().Get("URL").Call("createObjectURL", blob)
	link := app.Window().Get("document").Call("createElement", "a")
	link.Set("href", url)
	link.Set("download", name)
	link.Call("click")
	// A slow tablet may still be asking where to put it; the address is let go
	// with the page.
}

// inOwnWords is a text in the page's language, where that is not English.
func inOwnWords(text string) string {
	if words := app.Window().Get("filmfurrow").Get("words"); app.IsClient && words.Truthy() {
		return words.Call("say", text).String()
	}
	return text
}

// csvRow writes one row of a comma-separated table (RFC 4180), in the page's language. A
// cell that a spreadsheet would take for a formula gets a quote before it.
func csvRow(cells ...string) string {
	for i, c := range cells {
		c = inOwnWords(c)
		if c != "" && strings.ContainsRune("=+-@\t\r", rune(c[0])) {
			c = "'" + c
		}
		cells[i] = `"` + strings.ReplaceAll(c, `"`, `""`) + `"`
	}
	return strings.Join(cells, ",") + "\r\n"
}
