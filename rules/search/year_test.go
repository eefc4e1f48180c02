package search_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/internal/farms"
	"filmfurrow/rules/search"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// The year in runs of weeks says what the advice for each week says.
func TestTheYearAgreesWithTheAdvice(t *testing.T) {
	kinds := map[string]int{}
	for _, id := range []string{"pepper-cool-spring", "carrot-drill", "lettuce-hot-summer", "tomato-high-summer", "eggplant-tropics"} {
		c, ok := pack(t)[id]
		require.True(t, ok, id)
		w := search.NewYear(farms.Soil(t, c), c)
		for !w.Step(7) {
		}
		weeks := 0
		for i, s := range w.Spans() {
			weeks += s.Weeks
			if i > 0 {
				assert.Equal(t, w.Spans()[i-1].To.Plus(1), s.From, "no day is left out")
			}
			for _, week := range []int{0, s.Weeks / 2, s.Weeks - 1} {
				from := s.From.Plus(unit.Days(7 * week))
				c.PlantOn = unit.Known(from)
				a := advise(t, c)
				switch later := a.WaitPlan.PlantOn > from.Plus(6); {
				case a.Refused():
					kinds["refused"]++
					assert.Equal(t, table.NoFilm, s.Film, "%s %s", id, from)
					assert.False(t, s.Later, "%s %s", id, from)
				case later:
					kinds["later"]++
					assert.True(t, s.Later, "%s %s", id, from)
				default:
					kinds["film"]++
					assert.Equal(t, a.Facts.Film, s.Film, "%s %s", id, from)
				}
			}
		}
		assert.Equal(t, 52, weeks, id)
		if s, ok := w.Fills(); ok {
			kinds["fills"]++
			assert.Greater(t, s.Weeks, 46)
		}
	}
	for _, kind := range []string{"refused", "later", "film", "fills"} {
		assert.Positive(t, kinds[kind], "a year with %s", kind)
	}
}
