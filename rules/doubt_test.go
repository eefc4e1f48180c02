package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func TestDoubtTriesYearsFilmsAndFloors(t *testing.T) {
	for _, id := range []string{"least-known", "broccoli-late-summer", "sweet-potato-slips"} {
		c := pack(t)[id]
		ground, err := rules.Dig(c)
		require.NoError(t, err)
		doubts := rules.Doubts(ground, c)
		a, err := rules.AdviseOn(ground, c)
		require.NoError(t, err)
		for _, d := range doubts {
			assert.Len(t, d.Trials, 7)
			assert.Equal(t, a.Answers()[d.Question], d.Own)
			holds := 0
			for _, trial := range d.Trials {
				if trial.Option == d.Own {
					holds++
				}
			}
			assert.Equal(t, holds, d.Holds)
			phrase := d.Says()
			assert.True(t, phrase.Complete(), phrase.Text)
			t.Logf("%s %s: %s", id, d.Question, phrase.In(unit.US))
		}
	}
}

func TestTheMapAgreesWithTheAdvice(t *testing.T) {
	c := pack(t)["least-known"]
	ground, err := rules.Dig(c)
	require.NoError(t, err)
	work, ok := rules.NewMap(ground, c, "weeds.pressure")
	require.True(t, ok)
	for !work.Step(13) {
	}
	m := work.Map()
	films := map[table.FilmID]bool{}
	for i, v := range m.Values {
		for k, day := range m.Days {
			films[m.FilmAt(i, k)] = true
			if (i+k)%7 != 0 {
				continue
			}
			at := c
			m.Input.Set(&at, v)
			at.PlantOn = rules.Known(day)
			a, err := rules.AdviseOn(ground, at)
			require.NoError(t, err)
			best, ok := a.Film.Best()
			require.True(t, ok)
			assert.Equal(t, table.FilmID(best), m.FilmAt(i, k), "%s %v", day, v)
		}
	}
	assert.GreaterOrEqual(t, len(films), 2, "a year of planting days should not have one answer")
	assert.Equal(t, c.PlantOn.Value, m.Days[m.Day])
	assert.GreaterOrEqual(t, m.Value, 0)
}

func TestWhyNotTheOthers(t *testing.T) {
	for id, c := range pack(t) {
		a := advise(t, c)
		for _, choice := range a.Choices() {
			for i := 1; i < len(choice.Ranked); i++ {
				phrase, _ := choice.WhyNot(i)
				require.NotEmpty(t, phrase.Text, "%s %s", id, choice.Question.Key(choice.Ranked[i].Option))
				assert.True(t, phrase.Complete())
			}
		}
	}
}

func BenchmarkFilmMap(b *testing.B) {
	c := pack(b)["least-known"]
	ground, err := rules.Dig(c)
	require.NoError(b, err)
	for b.Loop() {
		work, _ := rules.NewMap(ground, c, "weeds.pressure")
		for !work.Step(100) {
		}
	}
}

func BenchmarkDoubts(b *testing.B) {
	c := pack(b)["least-known"]
	ground, err := rules.Dig(c)
	require.NoError(b, err)
	for b.Loop() {
		rules.Doubts(ground, c)
	}
}
