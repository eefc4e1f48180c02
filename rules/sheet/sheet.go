// Package sheet holds the laying-day sheet in the languages of the people who
// lay: one text file for each language, the same keys in each, the same places
// for quantities in each sentence, so that numbers and units are identical.
// Another language is one more file, named by its tag: fr.txt.
package sheet

import (
	"embed"
	"strings"
)

// Language is a language of the sheet, by its tag (BCP 47).
type Language string

// English stands first in the page's choice.
const English Language = "en"

// Key names a sentence of the sheet.
type Key string

//go:embed *.txt
var files embed.FS

// tables are the languages' sentences; order lists the tags. Both are set once.
var tables, order = read()

func read() (map[Language]map[Key]string, []Language) {
	all, list := map[Language]map[Key]string{}, []Language{English}
	entries, _ := files.ReadDir(".") // embedded: it cannot fail
	for _, e := range entries {
		text, _ := files.ReadFile(e.Name())
		l := Language(strings.TrimSuffix(e.Name(), ".txt"))
		all[l] = parse(string(text))
		if l != English {
			list = append(list, l)
		}
	}
	return all, list
}

// parse reads "key = sentence" lines. Lines with "#" before them are remarks.
func parse(text string) map[Key]string {
	table := map[Key]string{}
	for line := range strings.SplitSeq(text, "\n") {
		if key, sentence, found := strings.Cut(line, " = "); found && line[0] != '#' {
			table[Key(key)] = strings.TrimSpace(sentence)
		}
	}
	return table
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
