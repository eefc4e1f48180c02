package rules_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// No film's reason contradicts its effect: one that keeps the bed of the first month
// cooler than bare ground is never praised for warmth, nor one that keeps it warmer for
// cooling.
func TestNoFilmIsPraisedForWhatItDoesNotDo(t *testing.T) {
	long.Daily(t)
	praises := 0
	for at, station := range stations(t, long.Of(6, 20)) {
		c := caseAt(t, station)
		soil, err := facts.NewSoilYear(c)
		require.NoError(t, err)
		for i := range table.Crops {
			c.Crop, c.Method = table.Crops[i].ID, ""
			for day := (at*5 + i*3) % 20; day < weather.YearDays; day += 20 {
				c.PlantOn = unit.Known(weather.DateOf(2027, day))
				f := &facts.Facts{}
				require.NoError(t, f.Of(field.Filled(c), c.PlantOn.Value, soil, nil))
				for film := range table.FilmCount {
					warmer := f.MeanUnder[film] > f.MeanUnder[facts.Bare]
					for _, rule := range judge.Rules(question.Film) {
						finding, says := rule.Judge(f, question.Option(film))
						if !says {
							continue
						}
						reason := finding.Reason.In(unit.US)
						for words, warms := range saysOfWarmth {
							if strings.Contains(reason, words) {
								praises++
								assert.Equal(t, warms, warmer, "%s, %s for %s under %s (%v, bare %v): %s", station, c.Crop, c.PlantOn.Value, table.Films[film].ID, f.MeanUnder[film], f.MeanUnder[facts.Bare], reason)
							}
						}
					}
				}
			}
		}
	}
	require.Greater(t, praises, 1000, "the sweep reads reasons")
}

// saysOfWarmth are the words that say whether film warms (true) or cools.
var saysOfWarmth = map[string]bool{
	"warms the bed": true, "bed warm": true, "warms it most": true,
	"cools the bed": false, "keep the bed cool": false, "keeps the roots cool": false,
}
