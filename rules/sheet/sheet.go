// Package sheet holds the laying-day sheet in the languages of the people who
// lay: one file for each language, the same keys in each, the same places for
// quantities in each sentence, so that numbers and units are identical.
package sheet

// Language is a language of the sheet, by its tag (BCP 47).
type Language string

// The languages. Another one is one more file with a table, and a line here.
const (
	English Language = "en"
	Spanish Language = "es"
)

// Languages lists them in the order of the page's choice.
var Languages = [...]Language{English, Spanish}

// Key names a sentence of the sheet.
type Key string

// Text gives a sentence in a language; "{}" marks the places of quantities. A
// key that a language lacks would give the English sentence; a test allows none.
func Text(l Language, k Key) string {
	if l == Spanish {
		if s, ok := spanish[k]; ok {
			return s
		}
	}
	return english[k]
}

// Keys lists every key of the sheet.
func Keys() []Key {
	keys := make([]Key, 0, len(english))
	for k := range english {
		keys = append(keys, k)
	}
	return keys
}

// Name is a language's own name for itself.
func (l Language) Name() string {
	if l == Spanish {
		return "Español"
	}
	return "English"
}
