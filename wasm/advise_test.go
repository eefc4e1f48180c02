//go:build !js

package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/table"
)

const cases = "../testdata/cases/"

// The command prints the very advice file that the golden test keeps.
func TestAdvisePrintsTheAdviceFile(t *testing.T) {
	code, out, errs := runCommand("advise", cases+"pepper-cool-spring.json")
	require.Equal(t, 0, code, errs)
	golden, err := os.ReadFile("../testdata/advice/pepper-cool-spring.json")
	require.NoError(t, err)
	assert.Equal(t, string(golden), out)
}

// As text, every answer stands with its reasons, and the whole water plan with
// its sums.
func TestAdviseAsText(t *testing.T) {
	for _, system := range []struct {
		flag       []string
		has, hasNo string
	}{{[]string{"-us"}, " gal per 100 ft", " L per 100 m"}, {nil, " L per 100 m", " gal per 100 ft"}} {
		code, out, errs := runCommand(append(append([]string{"advise", "-text"}, system.flag...), cases+"melon-weak-well.json")...)
		require.Equal(t, 0, code, errs)
		for _, part := range []string{"film: ", "thickness: ", "bed: ", "tape: ", "wait: ", "Water plan: does not fit.", "Way out 1:", "Way out 3:", "Month by month", "by Hargreaves", "cool year", "Zone 1:", "pressure along a line:",
			"longest single run:", "header of ", "Beside rules of the trade:", "The plan takes for granted:", "Worked out so:", "Take care with water:", "Sources:", system.has} {
			assert.Contains(t, out, part)
		}
		assert.NotContains(t, out, "NaN")
		assert.NotContains(t, out, "{}")
		if system.hasNo == " gal per 100 ft" {
			assert.NotContains(t, out, system.hasNo)
		}
	}
	// Every farm of the pack can be read as text, also those without a plan.
	files, err := filepath.Glob(cases + "*.json")
	require.NoError(t, err)
	for _, file := range files[:6] {
		code, out, errs := runCommand("advise", "-text", file)
		require.Equal(t, 0, code, errs)
		assert.Contains(t, out, "Water plan: ", file)
	}
}

// A wrong case gives exit code 2 and one line for each bad field; so do a
// missing file and no file.
func TestAdviseRefuses(t *testing.T) {
	file := filepath.Join(t.TempDir(), "bad.json")
	require.NoError(t, os.WriteFile(file, []byte(`{"version":1,"crop":"moon-melon","plant_on":"2027-02-31","place":{"lat":95,"lon":0,"elevation_m":10}}`), 0o600))
	code, out, errs := runCommand("advise", file)
	assert.Equal(t, 2, code)
	assert.Empty(t, out)
	lines := strings.Split(strings.TrimSpace(errs), "\n")
	require.Len(t, lines, 3, errs)
	for i, field := range []string{"crop", "plant_on", "place.lat"} {
		assert.Contains(t, lines[i], field)
	}
	for _, args := range [][]string{{"advise"}, {"advise", filepath.Join(t.TempDir(), "none.json")}, {"advise", "-nonsense"}, {"advise", "-lines", file}} {
		code, _, errs := runCommand(args...)
		assert.Equal(t, 2, code, args)
		assert.NotEmpty(t, errs)
	}
}

// Explain answers every list and every id of the tables.
func TestExplainEveryTopic(t *testing.T) {
	topics := []string{}
	for name := range lists {
		topics = append(topics, name)
	}
	for i := range table.Crops {
		topics = append(topics, table.Crops[i].ID)
	}
	for i := range table.Films {
		topics = append(topics, table.Films[i].ID)
	}
	for _, s := range table.Sources {
		topics = append(topics, s.ID)
	}
	for q := range rules.WaitQuestion + 1 {
		for _, r := range rules.Rules(q) {
			topics = append(topics, r.ID)
		}
	}
	for _, topic := range topics {
		code, out, errs := runCommand("explain", topic)
		require.Equal(t, 0, code, "%s: %s", topic, errs)
		assert.NotEmpty(t, out, topic)
	}
	code, _, errs := runCommand("explain", "unobtainium")
	assert.Equal(t, 2, code)
	assert.Contains(t, errs, "no topic")
	code, _, _ = runCommand("explain")
	assert.Equal(t, 2, code)
}
