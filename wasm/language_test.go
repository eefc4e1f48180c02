//go:build !js

package main

import (
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/wasm/tongue"
)

var (
	cited = regexp.MustCompile(`^ *\[`)                                                // what a source calls itself
	named = regexp.MustCompile(`^ +([a-z_]+\.[a-z_]+|[a-z]+(_[a-z]+)+|method|risk): `) // what was not given, by its name in the file
)

// Every line that the commands print for the farms of the tests has its twin in each
// language, but for who is cited and what is named by its id.
func TestEveryLineOfTheCommandsHasATwin(t *testing.T) {
	t.Parallel()
	long.Daily(t)
	files, err := filepath.Glob(cases + "*.json")
	require.NoError(t, err)
	sheets, err := filepath.Glob("../testdata/sheets/*.json")
	require.NoError(t, err)
	seen := map[string]string{}
	for i, file := range slices.Concat(files, sheets) {
		name := strings.TrimSuffix(filepath.Base(file), ".json")
		if !long.Sample(name) {
			continue
		}
		for _, words := range [][]string{{"advise", "-text"}, {"advise", "-text", "-us"}, {"week"}, {"week", "-us"}, {"log"}, {"log", "-us"}, {"season"}, {"season", "-us"}, {"trial"}, {"trial", "-us"}} {
			if us := words[len(words)-1] == "-us"; words[0] != "advise" && us == (i%2 == 0) && !long.All() {
				continue // every other farm in the other units
			}
			_, out, errs := runCommand(append(words, file)...)
			for line := range strings.Lines(out + errs) {
				line = strings.TrimSuffix(line, "\n")
				if at := strings.LastIndex(line, " ["); at >= 0 && strings.HasSuffix(line, "]") {
					line = line[:at] // ids of sources, which speaker leaves as they are
				}
				if cited.MatchString(line) {
					continue
				}
				line = named.ReplaceAllString(line, "")
				if seen[line] == "" {
					seen[line] = name + " " + strings.Join(words, " ")
				}
			}
		}
	}
	for _, name := range tongue.Names() {
		c, err := tongue.Load(name)
		require.NoError(t, err)
		var misses []string
		for _, line := range slices.Sorted(maps.Keys(seen)) {
			if said, all := c.Say(line); !all {
				misses = append(misses, line+"\t"+said+"\t"+seen[line])
			}
		}
		t.Logf("%s: %d of %d lines of the commands have no twin", name, len(misses), len(seen))
		if file := os.Getenv("FF_MISSES"); file != "" {
			require.NoError(t, os.WriteFile(file, []byte(strings.Join(misses, "\n")+"\n"), 0o644))
		}
		assert.Empty(t, misses)
	}
}
