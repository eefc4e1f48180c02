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

// The recipes of DEVELOPERS.md that are followed here, as somebody would follow them.
// The figures are made up: they stay within this test.
var steps = map[string][]edit{
	"A rule": {
		{"rules/judge/film.go", "var filmRules", "\n}\n", `
	{ID: "film-followed-steps", Speaks: question.Film, Weight: Slight, Title: "Followed steps",
		Because: "A test follows the steps.",
		Sources: []*table.Source{&table.StepsTried}, Fires: "pepper-cool-spring",
		Judge: func(f *facts.Facts, o question.Option) (Finding, bool) {
			if film(o) != table.Black || f.Steps == 0 || f.Case.Weeds.Pressure != "moderate" {
				return silent()
			}
			return speaksFor(saturate(float64(f.Steps), stepsHalf), "The floor that is worked to lies {} below the safe {}.", f.Steps, f.SafeSoilTemperature)
		}},`},
		{"rules/judge/judgements.go", "const (", "\n)\n", "\n\tstepsHalf = 6"},
		{"rules/judge/judgements.go", "func Judgements", "\n\t}\n", "\n\t\t{ID: \"film-steps-half\", Means: \"degrees that count half\", Value: stepsHalf, Unit: \"K\"},"},
		{"rules/facts/facts.go", "type Facts struct", "\tUnder ", "\tSteps       unit.CelsiusDegrees\n"},
		{"rules/facts/facts.go", "f.Season = f.season(g)\n\tf.Ceiling", "\tf.rough()\n", "\tf.Steps = f.SafeSoilTemperature.Minus(f.WorkFloor)\n"},
	},
	"A source": {
		{"rules/table/sources.go", "var (", "\n)\n", "\n\tStepsTried = Source{ID: \"steps-tried\", Publisher: \"A test\", Title: \"Steps\", Year: \"2026\", Where: \"within a test\", NoAddress: \"it stands within a test\", Mark: Seen}"},
		{"rules/table/sources.go", "var Sources", "\n}\n", "\n\t&StepsTried,"},
	},
	"A gate": {
		{"rules/judge/gate.go", "var gates", "\n}\n", `
	gate("followed-gate", "Followed steps", "A test follows the steps.", "pepper-cool-spring",
		func(f *facts.Facts, o question.Option) (Finding, bool) {
			if (f.Case.Soil.Gravel.Value > 40 || f.Case.Water.Source == "municipal") && careful(o) {
				return rulesOut("A test found {} of gravel.", unit.PercentOf(f.Case.Soil.Gravel.Value/100))
			}
			return silent()
		}, &table.StepsTried),`},
	},
	"A caution": {
		{"rules/judge/caution.go", "var cautions", "\n}\n", `
	{"followed-caution", StepField, "Mind the step.", "your own eyes", []*table.Source{&table.StepsTried}, always},`},
	},
	"An input": {
		{"rules/field/case.go", "type SoilCase struct", "\tSlope ", "\tGravel unit.Optional[float64] // percent\n"},
		{"rules/field/inputs.go", "var Inputs", "\tchoice(\"soil.wetness_at_laying\"", "\tnumber(\"soil.gravel_percent\", \"Gravel\", \"From a sieve.\", unit.KindShare, 0, 80, 5, func(c *Case) *unit.Optional[float64] { return &c.Soil.Gravel }),\n"},
		{"rules/casefile/share.go", "var linkFields", "\n}\n", "\n\t\"soil.gravel_percent\","},
		{"app/rooms.go", "var groups", "\"soil.organic_percent\"}", "\"soil.gravel_percent\", "},
	},
	"A crop": {
		{"rules/table/crops.go", "var Crops", "\t{\n\t\tID: \"okra\",", "okra"}, // the row is okra's, under another name
	},
	"A film": {
		{"rules/table/film.go", "Black FilmID", "\tNoFilm\n", "\tGreen\n"},
		{"rules/table/film.go", "var Films", "\n}\n", "red"}, // last, as its FilmID is
	},
	"A soil": {
		{"rules/table/soil.go", "var Soils", "\n}\n", "\n\t{ID: \"marl\", Name: \"marl\", Sand: .30, Clay: .30, Wetted: wets(18*inch, 22*inch, 28*inch), Spacing: metres(12*inch, 16*inch, &Memory, FromMemory), WaterHeld: held(143, 147, 208), Heavy: .6},"},
	},
	"A tape": {
		{"rules/table/tape.go", "var Tapes", "\n}\n", "\n\ttape(\"6-in-medium\", \"medium-flow\", \"medium-flow tape, emitters 6 in (15 cm) apart\", 6*inch, 0.68*gpm, CommonBore, &StepsTried, Recomputed),"},
	},
	"A sentence": {
		{"rules/sheet/sentences.go", "const sentences", "\ncare-treated", "\nfollowed-steps = Mind the step of {}."},
		{"static/es/sheet.txt", "Laying day", "\nOpen\n", "\nMind the step of {}.\n= Cuidado con el escalón de {}."},
	},
}

// recipes are all that the guide must hold: those above and two that need more than a
// row. Each names its files, and a test that catches a mistake.
var recipes = []string{"A crop", "A film", "A soil", "A tape", "A source", "An input", "A rule", "A gate", "A caution", "A view", "A sentence", "A figure"}

// recipe is one paragraph of the guide.
func recipe(t *testing.T, guide, name string) string {
	t.Helper()
	_, text, found := strings.Cut(guide, "\n**"+name+".**")
	require.True(t, found, "%s has no recipe", name)
	text, _, _ = strings.Cut(text, "\n\n")
	return text
}

// Each recipe names files that are there and tests that are there.
func TestTwelveRecipes(t *testing.T) {
	guide := readText(t, "DEVELOPERS.md")
	var tests strings.Builder
	for _, pattern := range []string{"../rules/*_test.go", "../rules/*/*_test.go", "../rules/model/*/*_test.go", "../app/*_test.go", "*_test.go", "site/*_test.go", "tongue/*_test.go"} {
		files, err := filepath.Glob(pattern)
		require.NoError(t, err)
		for _, file := range files {
			tests.WriteString(readText(t, filepath.ToSlash(filepath.Join("wasm", file))))
		}
	}
	for _, name := range recipes {
		text := recipe(t, guide, name)
		for _, e := range steps[name] {
			assert.Contains(t, text, "`"+e.file+"`", "%s must name the file", name)
		}
		for _, file := range regexp.MustCompile("`((?:rules|app|static|testdata|wasm)/[^` ]+)`").FindAllStringSubmatch(text, -1) {
			_, err := os.Stat("../" + file[1])
			assert.NoError(t, err, name)
		}
		named := regexp.MustCompile("`(Test\\w+)`").FindAllStringSubmatch(text, -1)
		assert.NotEmpty(t, named, "%s must name the test that catches a mistake", name)
		for _, test := range named {
			assert.Contains(t, tests.String(), "func "+test[1]+"(", name)
		}
	}
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

// Whoever follows the recipes gets a rule and a gate that speak, a caution that warns, an
// input that is read, a crop, a soil and a tape that are advised on, a film that is
// weighed, a sentence in two languages, and the tests that watch over the rows pass.
func TestTheStepsLeadThere(t *testing.T) {
	t.Parallel()
	long.Test(t) // it builds the commands once more
	root, err := filepath.Abs("..")
	require.NoError(t, err)
	changed := map[string]string{}
	for _, heading := range recipes {
		for _, e := range steps[heading] {
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
	farm = regexp.MustCompile(`"texture": *"[^"]*"`).ReplaceAllString(farm, `"texture": "marl", "gravel_percent": 45`)
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
	for _, want := range []string{"ladyfinger", "film-followed-steps", "steps-tried", "followed-gate", "45", "followed-caution", "green", "gravel_percent"} {
		assert.Contains(t, advice, want)
	}
	for pkg, tests := range map[string]string{
		"./rules/table":    "TestEveryFigureHasASourceAndAMark|TestFiguresKeepTheirOrder|TestSourcesCanBeFollowed|TestEmittersBehindTheClasses",
		"./rules":          "TestEveryRuleHasASourceAReasonAndACaseThatFiresIt|TestEveryRuleIsSilentSomewhere|TestEachInputRow|TestSoilTablesAgree|TestImportsPointOneWay",
		"./rules/casefile": "TestEveryInputFitsIntoALink|TestAnyCaseSurvivesTheFile",
		"./wasm/tongue":    "TestEverySentenceOfTheSheetHasATwin",
	} {
		run("", "test", "-overlay", list, pkg, "-run", tests)
	}
	run("", "vet", "-overlay", list, "./app")
}
