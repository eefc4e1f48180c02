package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/unit"
)

// The soonest day is one that whoever asks for it gets, and whoever asks for the day before is
// moved to it; it comes no later than the field's own. Refused fields have none.
func TestTheSoonestDayIsTheFirst(t *testing.T) {
	found, none := 0, 0
	for name, c := range pack(t) {
		own := advise(t, c)
		soil, err := facts.NewSoilYear(c)
		require.NoError(t, err)
		s, ok := rules.SoonestOf(&own, soil, c)
		if own.Refused() {
			assert.False(t, ok, name)
		}
		if !ok {
			none++
			continue
		}
		found++
		day := s.WaitPlan.PlantOn
		assert.LessOrEqual(t, day, own.WaitPlan.PlantOn, name)
		assert.Positive(t, s.WaitPlan.Moved, name)
		for back := range unit.Days(2) {
			again := c
			again.PlantOn = unit.Known(day.Plus(-back))
			a, err := rules.AdviseOn(soil, again)
			require.NoError(t, err)
			assert.Equal(t, day, a.WaitPlan.PlantOn, "%s, asked %d days before", name, back)
		}
		if s.Bare.Given {
			assert.True(t, s.Facts.Season.Open(facts.Bare, s.Bare.Value), name)
			assert.False(t, s.Facts.Season.Open(facts.Bare, s.Bare.Value.Plus(-1)), name)
		}
	}
	assert.Greater(t, found, 20)
	assert.Greater(t, none, 5)
}
