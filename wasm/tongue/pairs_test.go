//go:build !js

package tongue_test

import (
	"flag"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/sheet"
	"filmfurrow/static"
	"filmfurrow/wasm/tongue"
)

var update = flag.Bool("update", false, "write the golden sheets anew; have them read before you commit")

// pair is an English line and its twin, as the files have them.
type pair struct{ file, english, twin string }

func pairs(t *testing.T, language string) (list []pair) {
	t.Helper()
	files, err := fs.Glob(static.Languages, language+"/*.txt")
	require.NoError(t, err)
	for _, file := range files {
		text, err := static.Languages.ReadFile(file)
		require.NoError(t, err)
		english := ""
		for line := range strings.Lines(string(text)) {
			line = strings.TrimRight(line, "\r\n")
			if twin, found := strings.CutPrefix(line, "= "); found {
				list = append(list, pair{filepath.Base(file), english, twin})
			} else if line != "" && !strings.HasPrefix(line, "# ") {
				english = line
			}
		}
	}
	require.NotEmpty(t, list)
	return list
}

var (
	place  = regexp.MustCompile(`\{[^}]*\}`)
	figure = regexp.MustCompile(`[0-9]+([.,][0-9]+)*`)
)

// figures are the figures of a text in their order of size: a language may turn a
// sentence about.
func figures(text string) []string {
	return slices.Sorted(slices.Values(figure.FindAllString(text, -1)))
}

// The twin of a pair has the figures that the English has; Parse holds its places.
func TestEachPairHasTheSameFigures(t *testing.T) {
	for _, language := range tongue.Names() {
		for _, p := range pairs(t, language) {
			assert.Equal(t, figures(place.ReplaceAllString(p.english, "")), figures(place.ReplaceAllString(p.twin, "")), "%s/%s: %s\n= %s", language, p.file, p.english, p.twin)
		}
	}
}

// Every sentence of the laying sheet has a twin of its own, also those that no farm of
// the tests has.
func TestEverySentenceOfTheSheetHasATwin(t *testing.T) {
	for _, language := range tongue.Names() {
		twins := map[string]string{}
		for _, p := range pairs(t, language) {
			twins[place.ReplaceAllString(p.english, "{}")] = p.twin
		}
		for key, english := range sheet.Sentences {
			twin, found := twins[english]
			assert.True(t, found, "%s has no twin of %s: %s", language, key, english)
			if key != "stop-no" { // which is no in many languages
				assert.NotEqual(t, english, twin, "%s in %s", key, language)
			}
		}
	}
}

// The laying sheets of three invented farms, line by line in each language. They were read
// by eye when they were written.
func TestGoldenSheetsInEachLanguage(t *testing.T) {
	files, err := filepath.Glob("../../testdata/sheets/*.json")
	require.NoError(t, err)
	require.Len(t, files, 3)
	for _, language := range tongue.Names() {
		c, err := tongue.Load(language)
		require.NoError(t, err)
		for _, file := range files {
			stem := strings.TrimSuffix(file, ".json")
			english, err := os.ReadFile(stem + ".txt")
			require.NoError(t, err)
			_, part, found := strings.Cut(string(english), "# laying day\n")
			require.True(t, found)
			part, _, _ = strings.Cut(part, "# ")
			var b strings.Builder
			for line := range strings.Lines(part) {
				line = strings.TrimSuffix(line, "\n")
				said, all := c.Say(line)
				for _, reply := range []sheet.Key{"stop-yes", "stop-no", "stop-open"} { // the page has it in bold, before what is found
					if rest, found := strings.CutPrefix(line, sheet.Sentences[reply]+" "); found && !all {
						word, _ := c.Say(sheet.Sentences[reply])
						said, all = c.Say(rest)
						said = word + " " + said
					}
				}
				assert.True(t, all, "%s: %s", language, line)
				assert.Equal(t, figures(line), figures(said), "%s: %s", language, line)
				b.WriteString(said + "\n")
			}
			golden := stem + "." + language + ".txt"
			if *update {
				require.NoError(t, os.WriteFile(golden, []byte(b.String()), 0o644))
			}
			want, err := os.ReadFile(golden)
			require.NoError(t, err)
			assert.Equal(t, string(want), b.String(), golden)
		}
	}
}
