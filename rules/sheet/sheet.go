// Package sheet holds the laying-day sheet in the languages of the people who
// lay: one file for each language, the same keys in each, the same places for
// quantities in each sentence, so that numbers and units are identical. Another
// language is one more file that calls language; nothing else names it.
package sheet

import "strings"

// Language is a language of the sheet, by its tag (BCP 47).
type Language string

// English stands first in the page's choice.
const English Language = "en"

// Key names a sentence of the sheet.
type Key string

// tables are the languages' sentences, order their tags. The languages' own files
// fill them before anything runs; they never change after.
var (
	tables = map[Language]map[Key]string{}
	order  = []Language{English}
)

// language takes a table of "key = sentence" lines.
func language(l Language, text string) bool {
	table := map[Key]string{}
	for len(text) > 0 {
		line, rest, _ := strings.Cut(text, "\n")
		text = rest
		if key, sentence, found := strings.Cut(line, " = "); found {
			table[Key(key)] = sentence
		}
	}
	tables[l] = table
	if l != English {
		order = append(order, l)
	}
	return true
}

// Languages lists the languages in the order of the page's choice. It must not
// be changed.
func Languages() []Language { return order }

// Text gives a sentence in a language; "{}" marks the places of quantities. A
// key that a language lacks would give the English sentence; a test allows none.
func Text(l Language, k Key) string {
	if s, ok := tables[l][k]; ok {
		return s
	}
	return tables[English][k]
}

// Name is a language's own name for itself.
func (l Language) Name() string { return Text(l, "language") }
