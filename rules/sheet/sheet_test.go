package sheet

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A language is one file: nothing else names it.
func TestALanguageIsOneFile(t *testing.T) {
	assert.Equal(t, []Language{English, "es"}, Languages(), "English stands first, whatever the files' order")
	files, err := filepath.Glob("*.go")
	require.NoError(t, err)
	for _, l := range Languages() {
		assert.NotEmpty(t, l.Name())
		calls := 0
		for _, file := range files {
			text, err := os.ReadFile(file)
			require.NoError(t, err)
			own := strings.Contains(string(text), `language("`+string(l)+`", `)
			if own {
				calls++
				sentences := 0
				for line := range strings.SplitSeq(string(text), "\n") {
					if strings.Contains(line, " = ") && !strings.HasPrefix(line, "//") && !strings.HasPrefix(line, "var ") {
						sentences++
					}
				}
				assert.Len(t, tables[l], sentences, "every line of %s is read, none twice", file)
			}
		}
		assert.Equal(t, 1, calls, "%s has one file", l)
	}
	language("xx", "language = Other\ntitle = Elsewhere\n")
	defer func() { delete(tables, "xx"); order = order[:len(order)-1] }()
	assert.Equal(t, "Elsewhere", Text("xx", "title"))
	assert.Equal(t, "Yes, lay today.", Text("xx", "ready"), "what is missing speaks English")
	assert.Contains(t, Languages(), Language("xx"))
}

func TestEveryLanguageSaysEverythingWithTheSameQuantities(t *testing.T) {
	require.Greater(t, len(tables[English]), 90)
	for _, l := range Languages() {
		assert.Len(t, tables[l], len(tables[English]), string(l))
		for k, en := range tables[English] {
			own, have := tables[l][k]
			require.True(t, have, "%s is missing in %s", k, l)
			assert.NotEmpty(t, own)
			assert.Equal(t, strings.Count(en, "{}"), strings.Count(own, "{}"), "%s in %s", k, l)
			assert.NotContains(t, strings.Map(digitsOnly, own), "#", "%s in %s: figures come from the engine alone", k, l)
			if l != English && k != "stop-no" {
				assert.NotEqual(t, en, own, "%s in %s", k, l)
			}
		}
	}
	assert.Equal(t, "Laying day", Text("yy", "title"), "a language that is not there speaks English")
}

func digitsOnly(r rune) rune {
	if r >= '0' && r <= '9' {
		return '#'
	}
	return -1
}

// Each term was looked up, and is said the same way wherever it stands: where an
// English sentence has the term, the Spanish one has the glossary's.
func TestTheGlossaryIsReviewedAndFollowed(t *testing.T) {
	catalogue := catalogueOf(t)
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
		for k, en := range tables[English] {
			if strings.Contains(" "+strings.ToLower(en), " "+english) && !other(english, string(k)) {
				used++
				assert.Contains(t, strings.ToLower(tables["es"][k]), stem(spanish), "%s: %q", k, en)
			}
		}
		for _, es := range tables["es"] {
			if strings.Contains(strings.ToLower(es), stem(spanish)) {
				used++
			}
		}
		term := regexp.MustCompile(`(^|[^a-z-])` + regexp.QuoteMeta(strings.ToLower(english)) + `(s|es)?($|[^a-z-])`)
		for en, es := range catalogue {
			if strings.Contains(es, strings.ToLower(spanish)) {
				used++
			}
			if !manySenses[english] && term.MatchString(en) {
				for word := range strings.FieldsSeq(strings.ToLower(spanish)) {
					assert.Contains(t, es, stem(word), "%s: %q", english, en)
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
	file, err := os.Open("../../testdata/glossary-es.csv")
	require.NoError(t, err)
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment, r.FieldsPerRecord = '#', 5
	rows, err := r.ReadAll()
	require.NoError(t, err)
	return rows
}

// catalogueOf reads the pairs of static/es in small letters: an English line and, behind
// "= ", its twin.
func catalogueOf(t *testing.T) map[string]string {
	files, err := filepath.Glob("../../static/es/*.txt")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	pairs := map[string]string{}
	for _, file := range files {
		if filepath.Base(file) == "command.txt" { // names ids, which are English in every language
			continue
		}
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		english := ""
		for line := range strings.Lines(string(text)) {
			line = strings.TrimSuffix(line, "\n")
			if es, twin := strings.CutPrefix(line, "= "); twin {
				pairs[english] = strings.ToLower(es)
			}
			english = strings.ToLower(line)
		}
	}
	return pairs
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
