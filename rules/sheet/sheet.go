// Package sheet holds the sentences of the laying-day sheet, each under a key: what was
// ticked is remembered by it. In another language they are said by the catalogue, as all
// that the page says.
package sheet

import "strings"

// Key names a sentence of the sheet.
type Key string

// Sentences are the sheet's sentences; "{}" marks the places of quantities. They must not
// be changed.
var Sentences = func() map[Key]string {
	table := map[Key]string{}
	for text := sentences; text != ""; {
		line, rest, _ := strings.Cut(text, "\n")
		text = rest
		if key, sentence, found := strings.Cut(line, " = "); found {
			table[Key(key)] = sentence
		}
	}
	return table
}()
