//go:build !js

package main

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
)

// edit puts text into a file before the first place where anchor stands behind
// the place where behind stands.
type edit struct{ file, behind, anchor, text string }

// The steps of DEVELOPERS.md, as somebody would follow them for a new rule, a new
// crop, a new film and a new soil. The figures are made up: they stay within this test.
var steps = map[string][]edit{
	"To add a rule": {
		{"rules/rule_film.go", "var filmRules", "\n}\n", `
	{ID: "film-followed-steps", Speaks: FilmQuestion, Weight: Slight, Title: "Followed steps",
		Because: "A test follows the steps.",
		Sources: []*table.Source{&table.StepsTried}, Fires: "pepper-cool-spring",
		Judge: func(f *Facts, o Option) (Finding, bool) {
			if film(o) != table.Black || f.Steps == 0 || f.Case.Weeds.Pressure != "moderate" {
				return silent()
			}
			return speaksFor(soft(float64(f.Steps), 6), "The floor that is worked to lies {} below the safe {}.", f.Steps, f.SafeFloor)
		}},`},
		{"rules/facts.go", "type Facts struct", "\tUnder ", "\tSteps       unit.CelsiusDegrees\n"},
		{"rules/facts.go", "f.WorkFloor = ", "\tf.rough()\n", "\tf.Steps = f.SafeFloor.Minus(f.WorkFloor)\n"},
		{"rules/table/sources.go", "var (", "\n)\n", "\n\tStepsTried = Source{ID: \"steps-tried\", Publisher: \"A test\", Title: \"Steps\", Year: \"2026\", Where: \"within a test\", Mark: Seen}"},
		{"rules/table/sources.go", "var Sources", "\n}\n", "\n\t&StepsTried,"},
	},
	"To add a crop": {
		{"rules/table/crops.go", "var Crops", "\t{\n\t\tID: \"okra\",", "okra"}, // the row is okra's, under another name
	},
	"To add a film": {
		{"rules/table/film.go", "Black FilmID", "\tNoFilm\n", "\tGreen\n"},
		{"rules/table/film.go", "var Films", "\n}\n", "red"}, // last, as its FilmID is
	},
	"To add a soil": {
		{"rules/table/soil.go", "var Soils", "\n}\n", "\n\t{ID: \"marl\", Name: \"marl\", Sand: .30, Clay: .30, Wetted: wets(18, 22, 28), Spacing: inches(12, 16, &Memory, FromMemory), WaterHeld: held(143, 143, 208), Heavy: .6},"},
	},
}

// copied is a row of a table under another name.
func copied(t *testing.T, source, from, id, name string) string {
	t.Helper()
	start := strings.Index(source, "\n\t\tID: \""+from+"\",")
	require.Positive(t, start, from)
	start = strings.LastIndex(source[:start], "\n") + 1
	row, _, found := strings.Cut(source[start:], "\n\t},\n")
	require.True(t, found)
	row = strings.Replace(row, `"`+from+`"`, `"`+id+`"`, 1)
	row = strings.Replace(row, "\tRed: {", "\tGreen: {", 1)
	return regexp.MustCompile(`Name: "[^"]*"`).ReplaceAllString(row, `Name: "`+name+`"`) + "\n\t},\n"
}

// Whoever follows the steps gets a rule that speaks, a crop that is advised on and a
// film that is weighed, and the tests that watch over the rows pass.
func TestTheStepsLeadThere(t *testing.T) {
	t.Parallel()
	long.Test(t) // it builds the commands once more
	root, err := filepath.Abs("..")
	require.NoError(t, err)
	guide := readText(t, "DEVELOPERS.md")
	changed := map[string]string{}
	for heading, edits := range steps {
		_, section, found := strings.Cut(guide, "## "+heading)
		require.True(t, found, heading)
		section, _, _ = strings.Cut(section, "\n## ")
		for n := range 5 {
			assert.Contains(t, section, "\n"+string(rune('1'+n))+". ", "%s: step %d", heading, n+1)
		}
		assert.NotContains(t, section, "\n6. ", "%s: five steps", heading)
		for _, e := range edits {
			assert.Contains(t, section, "`"+e.file+"`", "%s must name the file", heading)
			source, have := changed[e.file]
			if !have {
				source = readText(t, e.file)
			}
			switch e.text {
			case "okra":
				e.text = copied(t, source, "okra", "ladyfinger", "lady’s finger")
			case "red":
				e.text = "\n" + strings.TrimSuffix(copied(t, source, "red", "green", "green film"), "\n")
			}
			from := strings.Index(source, e.behind)
			require.Positive(t, from, "%s has no %q", e.file, e.behind)
			at := strings.Index(source[from:], e.anchor)
			require.Positive(t, at, "%s has no %q", e.file, e.anchor)
			at += from
			changed[e.file] = source[:at] + e.text + source[at:]
		}
	}

	dir := t.TempDir()
	replace := map[string]string{}
	for file, text := range changed {
		to := filepath.Join(dir, strings.ReplaceAll(file, "/", "_"))
		require.NoError(t, os.WriteFile(to, []byte(text), 0o600))
		replace[filepath.Join(root, filepath.FromSlash(file))] = to
	}
	// And a case that has it all, beside the others.
	farm := strings.Replace(readText(t, "testdata/cases/pepper-cool-spring.json"), `"bell-pepper"`, `"ladyfinger"`, 1)
	farm = regexp.MustCompile(`"texture": *"[^"]*"`).ReplaceAllString(farm, `"texture": "marl"`)
	require.Contains(t, farm, "marl")
	require.Contains(t, farm, "ladyfinger")
	overlay, err := json.Marshal(map[string]any{"Replace": replace})
	require.NoError(t, err)
	list := filepath.Join(dir, "overlay.json")
	require.NoError(t, os.WriteFile(list, overlay, 0o600))

	run := func(stdin string, args ...string) string {
		cmd := exec.Command("go", args...)
		cmd.Dir, cmd.Stdin, cmd.Env = root, strings.NewReader(stdin), append(os.Environ(), "GOFLAGS=")
		var errs strings.Builder
		cmd.Stderr = &errs
		out, err := cmd.Output()
		require.NoError(t, err, "%s%s", out, errs.String())
		return string(out)
	}
	advice := run(farm, "run", "-overlay", list, "./wasm", "advise", "-")
	for _, want := range []string{"ladyfinger", "film-followed-steps", "green"} {
		assert.Contains(t, advice, want)
	}
	run("", "test", "-overlay", list, "./rules/table", "-run", "TestEveryFigureHasASourceAndAMark|TestFiguresKeepTheirOrder")
	run("", "test", "-overlay", list, "./rules", "-run", "TestEveryRuleHasASourceAReasonAndACaseThatFiresIt|TestEveryRuleIsSilentSomewhere")
}
