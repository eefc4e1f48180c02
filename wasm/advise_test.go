//go:build !js

package main

import (
	"encoding/json"
	"fmt"
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
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

const cases = "../testdata/cases/"

// The command prints the very advice file that the golden test keeps, and what
// would change it besides. What it did not search, it names.
func TestAdvisePrintsTheAdviceFile(t *testing.T) {
	code, out, errs := runCommand("advise", cases+"pepper-cool-spring.json")
	require.Equal(t, 0, code, errs)
	assert.Empty(t, errs)
	golden, err := os.ReadFile("../testdata/advice/pepper-cool-spring.json")
	require.NoError(t, err)
	points := regexp.MustCompile(`(?s) "turning_points(_not_searched)?": \[\n.*?\n \],\n`)
	assert.Equal(t, string(golden), points.ReplaceAllString(out, ""))

	var file map[string]json.RawMessage
	require.NoError(t, json.Unmarshal([]byte(out), &file))
	for _, part := range []string{"version", "case", "defaults_used", "verdict", "film", "surface", "thickness", "bed", "tape", "wait", "turning_points",
		"soil_warmth", "water_plan", "shopping", "season", "laying_day", "cautions", "limits", "disagreements"} {
		assert.Greater(t, len(file[part]), 0, "%s is part of the advice file", part)
	}
	var turns []struct {
		Input      string
		At, Before any
		Changes    map[string]struct{ From, To, Says string }
	}
	require.NoError(t, json.Unmarshal(file["turning_points"], &turns))
	inputs := map[string]bool{}
	for _, turn := range turns {
		inputs[turn.Input] = true
		if field.InputByName(turn.Input) == nil {
			assert.True(t, slices.ContainsFunc(field.Climate, func(s field.Series) bool { return s.Name == turn.Input }), turn.Input)
		}
		assert.NotEqual(t, turn.At, turn.Before, turn.Input)
		assert.NotEmpty(t, turn.Changes, turn.Input)
		for question, change := range turn.Changes {
			assert.NotEqual(t, change.From, change.To, "%s of %s", question, turn.Input)
			assert.NotEmpty(t, change.Says)
		}
	}
	assert.True(t, inputs["plant_on"] && inputs["crop"], "the day and the crop change something")
	var left []string
	require.NoError(t, json.Unmarshal(file["turning_points_not_searched"], &left))
	assert.Subset(t, left, []string{"place.lat", "place.elevation_m", "soil.texture", "field.bed_top_m", "climate.tmin_c"}, "each changes the soil's warmth")
	for _, name := range left {
		assert.False(t, inputs[name], "%s was searched after all", name)
	}

	var disputes []struct {
		Question, About string
		Sides           []struct{ Says, Source string }
	}
	var sources []struct{ ID string }
	require.NoError(t, json.Unmarshal(file["disagreements"], &disputes))
	require.NoError(t, json.Unmarshal(file["sources"], &sources))
	for _, d := range disputes {
		assert.GreaterOrEqual(t, len(d.Sides), 2, d.About)
		for _, s := range d.Sides {
			assert.True(t, slices.ContainsFunc(sources, func(listed struct{ ID string }) bool { return listed.ID == s.Source }), s.Source)
		}
	}
}

// With -deep nothing is left out: what the plain search found comes first, then the
// points of the inputs that it named, and standard error says how far it is.
func TestAdviseDeep(t *testing.T) {
	long.Test(t)
	type file struct {
		Points []json.RawMessage `json:"turning_points"`
		Left   []string          `json:"turning_points_not_searched"`
	}
	var plain, deep file
	code, out, errs := runCommand("advise", cases+"pepper-cool-spring.json")
	require.Equal(t, 0, code, errs)
	require.NoError(t, json.Unmarshal([]byte(out), &plain))
	code, out, errs = runCommand("advise", "-deep", cases+"pepper-cool-spring.json")
	require.Equal(t, 0, code, errs)
	require.NoError(t, json.Unmarshal([]byte(out), &deep))
	assert.Empty(t, deep.Left)
	assert.Equal(t, len(plain.Left), strings.Count(errs, "\n"), errs)
	assert.Contains(t, errs, fmt.Sprintf("input %d of %d.\n", len(plain.Left), len(plain.Left)))
	require.Greater(t, len(deep.Points), len(plain.Points))
	assert.Equal(t, plain.Points, deep.Points[:len(plain.Points)])
	soil := false
	for _, point := range deep.Points[len(plain.Points):] {
		var p struct{ Input string }
		require.NoError(t, json.Unmarshal(point, &p))
		assert.Contains(t, plain.Left, p.Input)
		soil = soil || p.Input == "soil.texture"
	}
	assert.True(t, soil, "the soil changes something")
}

// BenchmarkAdvise is the plain command, from the case's bytes to the advice file's.
func BenchmarkAdvise(b *testing.B) {
	for b.Loop() {
		if code, _, errs := runCommand("advise", cases+"pepper-cool-spring.json"); code != 0 {
			b.Fatal(errs)
		}
	}
}

// As text, every answer stands with its reasons, and the whole water plan with
// its sums.
func TestAdviseAsText(t *testing.T) {
	t.Parallel()
	code, out, errs := runCommand("advise", "-text", "-us", cases+"melon-weak-well.json")
	require.Equal(t, 0, code, errs)
	for _, part := range []string{"film: ", "thickness: ", "bed: ", "tape: ", "wait: ", "Water plan: does not fit.", "Way out 1:", "Way out 3:", "Month by month", "by Hargreaves", "cool year", "Zone 1:", "pressure along a line:",
		"longest single run:", "header of ", "Beside rules of the trade:", "The plan takes for granted:", "Worked out so:", "Take care with water:", "What would change it:\n  ", "Not searched, since each value of it needs soil warmth of its own: Latitude; ", "-deep searches these too.", "Where sources disagree:\n  ", "Sources:", " gal per 100 ft"} {
		assert.Contains(t, out, part)
	}
	// Every farm of the pack can be read as text, also those without a plan.
	places, err := normals.Embedded()
	require.NoError(t, err)
	files, err := filepath.Glob(cases + "*.json")
	require.NoError(t, err)
	for i, file := range files {
		if i%8 != 0 && !long.Asked() {
			continue
		}
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		c, err := casefile.Decode(data, places)
		require.NoError(t, err)
		a, err := rules.Advise(c)
		require.NoError(t, err)
		var text strings.Builder
		writeText(&text, &a, nil, nil, unit.Metric)
		assert.Contains(t, text.String(), "Water plan: ", file)
		for _, wrong := range []string{"NaN", "{}", " gal per 100 ft", "%!"} {
			assert.NotContains(t, text.String(), wrong, file)
		}
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
	for q := range question.Wait + 1 {
		for _, r := range judge.Rules(q) {
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
