package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// soonest asks for the first day of a field's season, as a room does.
func soonest(t *testing.T, c field.Case) (a plan.Advice, bare unit.Date, ok bool) {
	t.Helper()
	soil, err := facts.NewSoilYear(c)
	require.NoError(t, err)
	for n := 0; ; n++ {
		a, err = rules.AdviseOn(soil, c)
		require.NoError(t, err)
		ask, more := rules.Sooner(&a, n)
		if !more {
			break
		}
		c.PlantOn.Value = ask
	}
	bare, ok = rules.Soonest(&a)
	return a, bare, ok
}

// The soonest day is one that whoever asks for it gets, and whoever asks for the day before is
// moved to it; it comes no later than the field's own. Refused fields have none.
func TestTheSoonestDayIsTheFirst(t *testing.T) {
	found, none := 0, 0
	for name, c := range pack(t) {
		own := advise(t, c)
		s, bare, ok := soonest(t, c)
		if own.Refused() {
			assert.False(t, ok, name)
		}
		if !ok {
			none++
			assert.NotEqual(t, "tomato-southern-spring", name, "there is one south of the line too")
			continue
		}
		found++
		day := s.WaitPlan.PlantOn
		assert.LessOrEqual(t, day, own.WaitPlan.PlantOn, name)
		assert.Positive(t, s.WaitPlan.Moved, name)
		for back := range unit.Days(2) {
			again := c
			again.PlantOn = unit.Known(day.Plus(-back))
			a := advise(t, again)
			assert.Equal(t, day, a.WaitPlan.PlantOn, "%s, asked %d days before", name, back)
		}
		if bare != unit.DateHigh {
			assert.True(t, s.Facts.Season.Open(facts.Bare, bare), name)
			assert.False(t, s.Facts.Season.Open(facts.Bare, bare.Plus(-1)), name)
		}
	}
	assert.Greater(t, found, 20)
	assert.Greater(t, none, 5)
}
