package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/internal/long"
)

// Every view says the same planting day, laying day and end: the wait, the season's
// dates, the water plan, the curve's marks and the calendar file.
func TestAllViewsSayTheSameDays(t *testing.T) {
	for id, c := range pack(t) {
		if !long.Sample(id) {
			continue
		}
		a := advise(t, c)
		w, f := &a.WaitPlan, a.Facts
		water := a.WaterPlan()
		list := a.Shopping(&water)
		steps := byID(a.Season(&list))
		assert.Equal(t, f.Plant, w.PlantOn, id)
		assert.Equal(t, w.PlantOn.Plus(-w.Days), w.LayOn, id)
		if a.Refused() {
			assert.NotContains(t, steps, "lay", id)
			assert.True(t, list.Refused, id)
			continue
		}
		assert.Equal(t, w.PlantOn, steps["plant"].On, id)
		if len(water.Problems) == 0 && water.Demand != nil {
			months := water.Demand.Months
			year, month, _ := w.PlantOn.Civil()
			assert.Equal(t, [2]int{year, month}, [2]int{months[0].Year, months[0].Month}, "%s: the water begins on the planting day", id)
			if c.Practice.CropsOnFilm.Or(1) == 1 {
				year, month, _ = steps["stop"].On.Plus(-1).Civil()
				last := months[len(months)-1]
				assert.Equal(t, [2]int{year, month}, [2]int{last.Year, last.Month}, "%s: the water ends when the season does", id)
			}
		}
		film, _ := a.Film.Best()
		assert.EqualValues(t, f.Film, film, id)
	}
}
