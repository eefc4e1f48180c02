//go:build !js

package app

import (
	"html"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

var (
	drawnText = regexp.MustCompile(`(?s)<text[^>]*>(.*?)</text>`)
	digits    = regexp.MustCompile(`\d+(\.\d+)?`)
)

// What the drawing of the bed says to a screen reader, word for word, for a cool
// spring, a silver film, a flat bed under clear film, and a field where none may
// lie. Every figure that stands in any field's drawing stands in its words too.
func TestTheBedsWords(t *testing.T) {
	places, err := normals.Embedded()
	require.NoError(t, err)
	var out strings.Builder
	files, err := filepath.Glob("../testdata/cases/*.json")
	require.NoError(t, err)
	require.Greater(t, len(files), 8)
	for _, file := range files {
		name := strings.TrimSuffix(filepath.Base(file), ".json")
		kept := slices.Contains([]string{"pepper-cool-spring", "broccoli-late-summer", "carrot-drill", "corn-short-season"}, name)
		if !kept && !long.Sample(name) {
			continue
		}
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		c, err := casefile.Decode(data, places)
		require.NoError(t, err)
		a, err := rules.Advise(c)
		require.NoError(t, err)
		for _, system := range []unit.System{unit.US, unit.Metric} {
			words := bedWords(&a, system)
			svg := bedSVG(&a, system, false) + bedSVG(&a, system, true)
			assert.Contains(t, svg, `role="img" aria-labelledby="bed-title bed-desc"`)
			assert.Contains(t, svg, escape(words), "the words are the drawing's own description")
			for _, label := range drawnText.FindAllStringSubmatch(svg, -1) {
				for _, figure := range digits.FindAllString(html.UnescapeString(label[1]), -1) {
					assert.Contains(t, words, figure, "%s: the drawing says %q", file, label[1])
				}
			}
			if kept {
				out.WriteString(name + ", " + [...]string{"metric", "US"}[system] + "\n" + words + "\n\n")
			}
		}
	}
	const file = "testdata/bed.golden.txt"
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(out.String()), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	assert.Equal(t, string(want), out.String())
}
