//go:build !js

package tongue_test

import (
	"maps"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/internal/sayings"
	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
	"filmfurrow/wasm/tongue"
)

// Every sentence of many usual fields has its twin in each language, with the same figures.
func TestEverySentenceHasATwin(t *testing.T) {
	places, err := normals.Embedded()
	require.NoError(t, err)
	files, err := filepath.Glob("../../testdata/cases/*.json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	bases := make([]field.Case, len(files))
	for i, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		bases[i], err = casefile.Decode(data, places)
		require.NoError(t, err, file)
	}
	said := map[string]string{} // where each sentence was said first
	soils := map[facts.SoilKey]*facts.SoilYear{}
	r := rand.New(rand.NewPCG(18, 18))
	for i := range long.Of(200, 2000) {
		draw := sayings.AnyField
		if i%2 == 1 {
			draw = sayings.FullField
		}
		c := draw(r, bases[r.IntN(len(bases))])
		if len(field.Check(&c)) > 0 {
			continue
		}
		soil := soils[facts.KeyOf(c)]
		if soil == nil {
			soil, err = facts.NewSoilYear(c)
			require.NoError(t, err)
			soils[facts.KeyOf(c)] = soil
		}
		a, err := rules.AdviseOn(soil, c)
		if err != nil {
			continue
		}
		for _, system := range []unit.System{unit.Metric, unit.US} {
			for name, text := range sayings.Of(&a, system) {
				if said[text] == "" {
					said[text] = name
				}
			}
		}
	}
	t.Logf("%d sentences", len(said))
	for _, language := range tongue.Names() {
		c, err := tongue.Load(language)
		require.NoError(t, err)
		misses := 0
		for _, text := range slices.Sorted(maps.Keys(said)) {
			twin, all := c.Say(text)
			if assert.Equal(t, figures(text), figures(twin), "%s: %s", said[text], text) && all {
				continue
			}
			if misses++; misses < 200 {
				assert.True(t, all, "%s: %s\n\t%s", said[text], text, twin)
			}
		}
	}
}
