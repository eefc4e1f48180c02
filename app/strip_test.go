package app

import (
	"flag"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

var update = flag.Bool("update", false, "write the golden words anew; read the difference before you commit it")

func exampleSeason(t *testing.T, change func(*field.Case)) (*plan.Advice, *facts.SoilSeason) {
	t.Helper()
	c := exampleCase()
	change(&c)
	a, err := rules.Advise(c)
	require.NoError(t, err)
	from, days := facts.SeasonWindow(a.Facts.Plant)
	return &a, facts.SoilSeasonOf(a.Facts, facts.AtTen, from, days)
}

// What the strip says in words, and its two tables, for the worked example: in
// metric, with a probe reading, and in US units without.
func TestTheStripsWords(t *testing.T) {
	plain, season := exampleSeason(t, func(*field.Case) {})
	read, moved := exampleSeason(t, func(c *field.Case) {
		c.Soil.Temperature, c.Soil.MeasuredOn = unit.Known(unit.Celsius(14)), unit.Known(unit.On(2027, 5, 12))
	})
	doubted, same := exampleSeason(t, func(c *field.Case) {
		c.Soil.Temperature, c.Soil.MeasuredOn = unit.Known(unit.Celsius(55)), unit.Known(unit.On(2027, 5, 12))
	})
	got := "In US units\n" + strings.Join(stripWords(plain, season, unit.US), "\n") +
		"\n\nIn metric units, with a probe reading of 14 °C on 12 May\n" + strings.Join(stripWords(read, moved, unit.Metric), "\n") +
		"\n\nWith a reading of 55 °C\n" + strings.Join(stripWords(doubted, same, unit.Metric), "\n") +
		"\n\n" + cells(stripTable(plain, season, unit.Metric)) + "\n" + cells(stripTwin(season, unit.Metric))
	const file = "testdata/strip.golden.txt"
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	assert.Equal(t, string(want), got)
}

var (
	rowEnd = regexp.MustCompile(`</tr>|</caption>`)
	inside = regexp.MustCompile(`</t[hd]>`)
	tag    = regexp.MustCompile(`<[^>]*>`)
)

// cells writes a table as lines.
func cells(table string) string {
	table = inside.ReplaceAllString(rowEnd.ReplaceAllString(table, "\n"), " | ")
	return tag.ReplaceAllString(table, "")
}

// Names never meet, never leave their bounds, and keep the order of their lines.
func TestNamesNeverMeet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		wanted := rapid.SliceOfN(rapid.Float64Range(60, 450), 2, 10).Draw(t, "wanted")
		places := apart(wanted, labelGap, stripTop+6, stripTop+stripTall-2)
		sorted := slices.Sorted(slices.Values(places))
		for i := 1; i < len(sorted); i++ {
			if sorted[i]-sorted[i-1] < labelGap-1e-9 {
				t.Fatalf("names at %v and %v", sorted[i-1], sorted[i])
			}
		}
		if sorted[0] < stripTop+6-1e-9 || sorted[len(sorted)-1] > stripTop+stripTall-2+1e-9 {
			t.Fatalf("names from %v to %v", sorted[0], sorted[len(sorted)-1])
		}
		for i := range wanted {
			for j := range wanted {
				if wanted[i] < wanted[j] && places[i] > places[j] {
					t.Fatalf("the order changed: %v, %v", wanted, places)
				}
			}
		}
	})
}

// The floors' and the ceiling's names keep clear of each other for every crop:
// that of covers stands below its line, the others above theirs.
func TestTheStripIsWellFormed(t *testing.T) {
	a, s := exampleSeason(t, func(*field.Case) {})
	svg := stripSVG(a, s, unit.Metric, stripWords(a, s, unit.Metric))
	for _, name := range []string{"bare soil", "clear", "infrared", "black", "red", "blue", "silver", "bio black", "paper", "white", "too hot", "plant<tspan", "with covers", "plant " + dayOfYear(a.Facts.Plant, unit.Metric)} {
		assert.Contains(t, svg, name)
	}
	assert.NotContains(t, svg, "NaN")
	assert.NotContains(t, svg, "style=")
	assert.Equal(t, strings.Count(svg, "<svg"), strings.Count(svg, "</svg>"))
}
