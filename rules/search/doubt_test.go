package search_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/search"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func TestDoubtTriesYearsAndFilms(t *testing.T) {
	for _, id := range []string{"least-known", "broccoli-late-summer", "sweet-potato-slips"} {
		c := pack(t)[id]
		ground, err := facts.NewSoilYear(c)
		require.NoError(t, err)
		doubts := search.Doubts(ground, c)
		a, err := rules.AdviseOn(ground, c)
		require.NoError(t, err)
		for _, d := range doubts {
			assert.Len(t, d.Trials, 5)
			assert.Equal(t, a.Answers()[d.Question], d.Own)
			holds := 0
			for _, trial := range d.Trials {
				if trial.Option == d.Own {
					holds++
				}
			}
			assert.Equal(t, holds, d.Holds)
			years := map[string]int{"in a cool year": 1, "in a usual year": 8, "in a warm year": 1}
			want := 0
			for _, trial := range d.Trials {
				if trial.Option == d.Own {
					want += years[trial.What]
				}
			}
			assert.Equal(t, want, d.Years())
			phrase := d.Says()
			assert.True(t, phrase.Complete(), phrase.Text)
			t.Logf("%s %s: %s", id, d.Question, phrase.In(unit.US))
		}
	}
}

// filmOf is the film that an advice lays: none where it refuses.
func filmOf(a *plan.Advice) table.FilmID {
	best, ok := a.Film.Best()
	if !ok || a.Refused() {
		return table.NoFilm
	}
	return table.FilmID(best)
}

func TestTheMapAgreesWithTheAdvice(t *testing.T) {
	c := pack(t)["least-known"]
	ground, err := facts.NewSoilYear(c)
	require.NoError(t, err)
	crops, ok := search.NewMap(ground, c, "crop")
	require.True(t, ok)
	for !crops.Step(100) {
	}
	for row := range crops.Map().Values {
		day := (7 * row) % 52
		at := crops.Map().Input.Turn(c, crops.Map().Values[row])
		at.PlantOn = unit.Known(crops.Map().Days[day])
		a, err := rules.AdviseOn(ground, at)
		require.NoError(t, err)
		assert.Equal(t, filmOf(&a), crops.Map().FilmAt(row, day), at.Crop)
	}
	work, ok := search.NewMap(ground, c, "weeds.pressure")
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
			at.PlantOn = unit.Known(day)
			a, err := rules.AdviseOn(ground, at)
			require.NoError(t, err)
			assert.Equal(t, filmOf(&a), m.FilmAt(i, k), "%s %v", day, v)
		}
	}
	assert.GreaterOrEqual(t, len(films), 2, "a year of planting days should not have one answer")
	assert.Equal(t, c.PlantOn.Value, m.Days[m.Day])
	assert.Equal(t, field.Value{Word: "moderate"}, m.Values[m.Value])
}

// A second input that changes the ground has each row worked out on its own; the
// cells are the advice's, too. The field's own value has a row, or the nearest has.
func TestTheMapOfGroundsAgreesWithTheAdvice(t *testing.T) {
	long.Test(t)
	r := rand.New(rand.NewPCG(3, 8))
	films := map[table.FilmID]bool{}
	for id, second := range map[string]string{"least-known": "risk", "broccoli-late-summer": "place.elevation_m", "pepper-cool-spring": "field.bed_top_m", "sweet-potato-slips": "soil.tilth"} {
		c := pack(t)[id]
		ground, err := facts.NewSoilYear(c)
		require.NoError(t, err)
		work, ok := search.NewMap(ground, c, second)
		require.True(t, ok)
		assert.True(t, work.Deep())
		steps := 0
		for ; !work.Step(1); steps++ {
			require.Less(t, steps, 20000)
		}
		m := work.Map()
		assert.Greater(t, steps, len(m.Values)*len(m.Days), "digging takes steps of its own")
		filled := field.Filled(c)
		now, _ := m.Input.Get(&filled)
		for _, v := range m.Values {
			assert.LessOrEqual(t, math.Abs(m.Values[m.Value].Number-now.Number), math.Abs(v.Number-now.Number))
		}
		for range 5 {
			row, day := r.IntN(len(m.Values)), r.IntN(len(m.Days))
			at := m.Input.Turn(c, m.Values[row])
			at.PlantOn = unit.Known(m.Days[day])
			if a, err := rules.Advise(at); err == nil {
				assert.Equal(t, filmOf(&a), m.FilmAt(row, day), "%s %s %v", id, m.Days[day], m.Values[row])
				films[m.FilmAt(row, day)] = true
			}
		}
	}
	assert.GreaterOrEqual(t, len(films), 2)
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
	ground, err := facts.NewSoilYear(c)
	require.NoError(b, err)
	for b.Loop() {
		work, _ := search.NewMap(ground, c, "weeds.pressure")
		for !work.Step(100) {
		}
	}
}

func BenchmarkDoubts(b *testing.B) {
	c := pack(b)["least-known"]
	ground, err := facts.NewSoilYear(c)
	require.NoError(b, err)
	for b.Loop() {
		search.Doubts(ground, c)
	}
}

// The nearest pairs against a plain search that asks for whole advice: neither
// of the two changes the film alone, both together do, and no nearer day does;
// and no pair of options is missed.
func TestPairsAgainstBruteForce(t *testing.T) {
	long.Daily(t)
	bases, list := fewGrounds()
	r := rand.New(rand.NewPCG(11, 3))
	found := 0
	for range long.Of(3, 12) {
		c, i := anyCase(r, bases)
		work, ok := search.NewPairs(list[i], c)
		if !ok {
			continue
		}
		for !work.Step(50) {
		}
		films, asker := map[field.Case]question.Option{}, search.AskFilm(list[i])
		film := func(moves ...search.Move) question.Option {
			at := c
			for _, m := range moves {
				m.Input.Set(&at, m.At)
			}
			if _, have := films[at]; !have {
				films[at], _ = asker.Of(at)
			}
			return films[at]
		}
		old := film()
		want := map[string]question.Option{}
		note := func(a, b search.Move, days int) bool {
			now := film(a, b)
			if now == old || now == question.NoOption || film(a) != old || film(b) != old {
				return false
			}
			want[fmt.Sprint(a.Input.Name, a.At, b.Input.Name, b.At, days)] = now
			return true
		}
		moves := search.FilmMoves(c)
		for x, a := range moves {
			for _, b := range moves[x+1:] {
				if a.Input != b.Input {
					note(a, b, 0)
				}
			}
			for _, side := range []int{-1, 1} {
				for d := 1; d <= 120; d++ {
					day := search.Move{Input: field.InputByName("plant_on"), At: field.Value{Number: float64(c.PlantOn.Value) + float64(side*d)}}
					if film(day) != old || note(day, a, side*d) {
						break
					}
				}
			}
		}
		got := map[string]question.Option{}
		for _, p := range work.Points() {
			got[fmt.Sprint(p.First.Name, p.FirstAt, p.Second.Name, p.SecondAt, int(p.Days))] = p.Film
			says := p.Says()
			assert.True(t, says.Complete(), says.Text)
		}
		require.Equal(t, want, got, "%+v", c)
		found += len(got)
	}
	t.Logf("%d pairs", found)
	assert.Greater(t, found, long.Of(1, 10))
}

// No other input that keeps the ground moves the film, so no pair is missed.
func TestWhatMovesTheFilm(t *testing.T) {
	long.Daily(t)
	bases, list := fewGrounds()
	r := rand.New(rand.NewPCG(12, 3))
	// Film that is down, ground that was treated and films that cannot be bought name
	// films themselves: each is found alone, and in no pair.
	moves := map[string]bool{"plant_on": true, "practice.film_options": true, "crop": true, "practice.reuse.film": true, "practice.reuse.cover_percent": true, "practice.fumigated_on": true,
		// These move the planting day, and the film with it, as the day itself does.
		"practice.label_interval_days": true, "climate.last_frost": true, "climate.first_frost": true}
	for _, m := range search.FilmMoves(bases[0]) {
		moves[m.Input.Name] = true
	}
	for range long.Of(12, 60) {
		c, i := anyCase(r, bases)
		asker := search.AskFilm(list[i])
		old, ok := asker.Of(c)
		if !ok {
			continue
		}
		for k := range field.Inputs {
			in := &field.Inputs[k]
			above, below, options, _ := search.Steps(c, in)
			values := slices.Concat(above, below, options)
			if moves[in.Name] || len(values) == 0 {
				continue
			}
			for range 6 {
				at := in.Turn(c, values[r.IntN(len(values))])
				if now, ok := asker.Of(at); ok {
					assert.Equal(t, old, now, in.Name)
				}
			}
		}
	}
}

func BenchmarkPairs(b *testing.B) {
	c := pack(b)["pepper-cool-spring"]
	ground, err := facts.NewSoilYear(c)
	require.NoError(b, err)
	for b.Loop() {
		work, _ := search.NewPairs(ground, c)
		for !work.Step(100) {
		}
	}
}
