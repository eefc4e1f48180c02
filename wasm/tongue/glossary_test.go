//go:build !js

package tongue_test

import (
	"encoding/csv"
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/sheet"
)

// Each term was looked up, and is said the same way wherever it stands: where an
// English sentence has the term, the Spanish one has the glossary's.
func TestTheGlossaryIsReviewedAndFollowed(t *testing.T) {
	twins, ofTheSheet := map[string]string{}, map[string]string{}
	for _, p := range pairs(t, "es") {
		english, twin := place.ReplaceAllString(p.english, "{}"), strings.ToLower(p.twin)
		ofTheSheet[english] = twin
		if p.file != "command.txt" && p.file != "sheet.txt" { // names ids, which are English in every language
			twins[strings.ToLower(p.english)] = twin
		}
	}
	seen, rows := 0, glossary(t)
	for _, row := range rows {
		english, spanish, state, where := row[0], row[1], row[2], row[3]
		switch state {
		case "seen":
			seen++
			assert.NotEmpty(t, where, english)
		case "not found":
			assert.Empty(t, where, english)
		default:
			t.Errorf("%s: %q is neither seen nor not found", english, state)
		}
		used := 0
		for key, sentence := range sheet.Sentences {
			twin := ofTheSheet[sentence]
			if strings.Contains(" "+strings.ToLower(sentence), " "+english) && !other(english, string(key)) {
				assert.Contains(t, twin, stem(spanish), "%s: %q", key, sentence)
			}
			if strings.Contains(twin, stem(spanish)) {
				used++
			}
		}
		term := regexp.MustCompile(`(^|[^a-z-])` + regexp.QuoteMeta(strings.ToLower(english)) + `(s|es)?($|[^a-z-])`)
		for sentence, twin := range twins {
			if strings.Contains(twin, strings.ToLower(spanish)) {
				used++
			}
			if !manySenses[english] && term.MatchString(sentence) {
				for word := range strings.FieldsSeq(strings.ToLower(spanish)) {
					assert.Contains(t, twin, stem(word), "%s: %q", english, sentence)
				}
			}
		}
		assert.Positive(t, used, "%q is said nowhere", spanish)
	}
	assert.GreaterOrEqual(t, len(rows), 120, "terms")
	assert.GreaterOrEqual(t, seen, 110, "terms that were read in a text")
}

// manySenses are English words that mean other things too, or that good Spanish leaves to
// a verb or to a shorter name: only the sheet, which knows its exceptions, is held to them.
var manySenses = map[string]bool{"film": true, "bed": true, "crown": true, "label": true, "soil": true, "roll": true, "edge": true, "lift": true, "water": true,
	"potato": true, "stock": true, "row": true, "slope": true, "wind": true, "well": true, "run": true, "bed top": true, "transplants": true, "embossed film": true, "pond": true}

func glossary(t *testing.T) [][]string {
	t.Helper()
	file, err := os.Open("../../testdata/glossary-es.csv")
	require.NoError(t, err)
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment, r.FieldsPerRecord = '#', 5
	rows, err := r.ReadAll()
	require.NoError(t, err)
	return rows
}

// stem leaves the ending that changes with number and gender.
func stem(word string) string {
	word, _, _ = strings.Cut(word, " ")
	return strings.TrimRight(word, "aeos")
}

// other names the sentences in which an English word stands for something else:
// paper is no plastic, a roll bar no roll, and to water is a verb of its own.
func other(english, key string) bool {
	switch english {
	case "film":
		return key == "set-film-by"
	case "roll":
		return key == "go-weight"
	case "run":
		return key == "go-label"
	case "water":
		return key == "ball-crumbles" || key == "hand-dry" || key == "set-crown"
	}
	return false
}
