package pack_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/pack"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// because is the rule that each lesson rests on: what it says must differ before
// and after the turn.
var because = map[string]string{
	"otter-bend": "frost-on-planting-day", "heron-flat": "film-pale-in-heat", "lark-rise": "film-no-weed-control", "gull-meadow": "film-virus-insects",
	"slow-acre": "bed-drainage", "quarry-piece": "thickness-stones", "dry-corner": "flow-short", "spear-field": "yellow-nutsedge-heavy",
	"wren-drill": "dense-seed", "rook-terrace": "cloves-in-spring",
}

func said(a *plan.Advice, q question.Question, id string) map[question.Option]float64 {
	fits := map[question.Option]float64{}
	for _, r := range a.Choice(q).Ranked {
		for _, f := range r.Factors {
			if f.Rule.ID == id {
				fits[r.Option] = f.Fit
			}
		}
	}
	return fits
}

// soonest asks for the first day of a field's season, as a room does.
func soonest(t *testing.T, c field.Case) (a plan.Advice, bare unit.Date) {
	for n := 0; ; n++ {
		var err error
		a, err = rules.Advise(c)
		require.NoError(t, err)
		ask, more := rules.Sooner(&a, n)
		if !more {
			break
		}
		c.PlantOn.Value = ask
	}
	bare, ok := rules.Soonest(&a)
	require.True(t, ok)
	return a, bare
}

// answered is the engine's answer to a question of a room.
func answered(t *testing.T, q question.Question, c field.Case) (plan.Advice, question.Option) {
	a, err := rules.Advise(c)
	require.NoError(t, err)
	if q != question.Day {
		return a, a.Answers()[q]
	}
	s, _ := soonest(t, c)
	return s, question.Nearest(s.WaitPlan.PlantOn)
}

// Lark Rise says that film buys days, clear film the most, and that weeds cost them.
func TestFilmBuysDays(t *testing.T) {
	c := pack.Farms[2].Case()
	days := func(film table.FilmID) unit.Days {
		s, bare := soonest(t, c)
		assert.Equal(t, film, table.FilmID(s.Answers()[question.Film]))
		return bare.Minus(s.WaitPlan.PlantOn)
	}
	clear := days(table.Clear)
	c.Weeds.Pressure = "heavy"
	black := days(table.Black)
	assert.GreaterOrEqual(t, black, unit.Days(7), "before bare ground")
	assert.GreaterOrEqual(t, clear-black, unit.Days(7), "clear before black")
}

// all are the farms that this build has.
var all = pack.Farms[:]

// Each farm teaches what it says: the engine gives the lesson's answer, and
// gives the other one when the one input is turned.
func TestEachFarmTeachesWhatItSays(t *testing.T) {
	seen := map[string]bool{}
	for i := range all {
		f := &all[i]
		t.Run(f.ID, func(t *testing.T) {
			c := f.Case()
			require.Empty(t, field.Check(&c))
			a, answer := answered(t, f.Asks, c)
			key := func(o question.Option) string {
				if o == question.NoOption {
					return "none"
				}
				return f.Asks.Key(o)
			}
			assert.Equal(t, key(f.Answer), key(answer), "%s: %s", f.Lesson, f.Asks)
			in := field.InputByName(f.Turn)
			require.NotNil(t, in)
			was, _ := in.Get(&c)
			require.NotEqual(t, was, f.To)
			require.Nil(t, in.CheckValue(f.To))
			in.Set(&c, f.To)
			turned, then := answered(t, f.Asks, c)
			assert.Equal(t, key(f.Then), key(then), "%s turned: %s", f.Turn, f.Asks)
			assert.NotEqual(t, f.Answer, f.Then)
			why := f.Asks
			if why == question.Day { // the film that is best makes the day
				why = question.Film
			}
			assert.NotEqual(t, said(&a, why, because[f.ID]), said(&turned, why, because[f.ID]), because[f.ID])
		})
		assert.False(t, seen[f.ID] || seen[f.Title] || seen[f.Lesson], f.ID)
		seen[f.ID], seen[f.Title], seen[f.Lesson] = true, true, true
		c := f.Case()
		assert.LessOrEqual(t, len(casefile.Link(&c)), 300, "a link of %s", f.ID)
	}
	assert.Len(t, pack.Farms, 8)
}
