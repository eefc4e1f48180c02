package rules_test

import (
	"regexp"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

func seasonOf(t testing.TB, c field.Case) (plan.Advice, []plan.SeasonStep) {
	a := advise(t, c)
	s := a.Shopping(&plan.WaterPlan{})
	return a, a.Season(&s)
}

func byID(steps []plan.SeasonStep) map[string]plan.SeasonStep {
	seen := map[string]plan.SeasonStep{}
	for _, s := range steps {
		if _, have := seen[s.ID]; !have {
			seen[s.ID] = s
		}
	}
	return seen
}

func TestTheSeasonIsInOrderAndHangsOnPlanting(t *testing.T) {
	for _, f := range everyFarm(t) {
		id, c, a, steps := f.id, f.c, f.a, f.a.Season(&f.s)
		if a.Refused() { // nothing is ordered, laid or lifted
			for _, s := range steps {
				if s.ID == "trays" || s.ID == "plants" {
					continue // plants are wanted without film too
				}
				assert.NotContains(t, []judge.Step{judge.StepOrder, judge.StepLaying, judge.StepLifting}, s.Step, "%s: %s", id, s.ID)
			}
			continue
		}
		require.NotEmpty(t, steps)
		for i, s := range steps {
			assert.True(t, s.What.Complete(), s.What.Text)
			assert.True(t, s.Why.Complete(), s.Why.Text)
			assert.Positive(t, int(s.Days))
			if i > 0 {
				assert.GreaterOrEqual(t, s.On, steps[i-1].On, id)
			}
		}
		seen := byID(steps)
		lay := "lay"
		if c.Practice.ReuseFilm != "" {
			lay = "mend"
		}
		assert.Less(t, seen["order"].On, seen[lay].On, id)
		assert.LessOrEqual(t, seen[lay].On, seen["water-test"].On, id)
		assert.LessOrEqual(t, seen["water-test"].On, seen["plant"].On, id)
		assert.Equal(t, a.WaitPlan.PlantOn, seen["plant"].On, id)
		assert.Equal(t, a.WaitPlan.LayOn, seen[lay].On, id)
		if wait, have := seen["wait"]; have {
			assert.Equal(t, a.WaitPlan.PlantOn, wait.On.Plus(wait.Days), "%s: the wait ends on the planting day", id)
		}
	}
}

// Every step that the season must have, for one crop and for two.
func TestTheSeasonIsWhole(t *testing.T) {
	c := pack(t)["tomato-two-crops"]
	c.Practice.FilmOptions = 1 << table.Black
	c.Field.BedLength, c.Field.Beds = unit.Known(unit.Metres(60)), unit.Known(4.0)
	_, steps := seasonOf(t, c)
	seen := byID(steps)
	for _, id := range []string{"soil-test", "water-sample", "collector", "order", "bucket-test", "ground", "moisture", "lay", "water-test", "wait",
		"probe", "plant", "first-water", "weekly-check", "harvest", "second-crop", "stop", "lift", "haul"} {
		assert.Contains(t, seen, id)
	}
	assert.Contains(t, seen["second-crop"].What.In(unit.US), "test the tape")
	assert.Contains(t, seen["second-crop"].What.In(unit.US), "something other than the")
	assert.Contains(t, seen["second-crop"].Why.In(unit.US), "93%", "cover left in a trial: HortScience, weathering and double cropping")
	assert.Contains(t, seen["haul"].Why.In(unit.US), "is soil and water that cling to it")
	assert.Contains(t, seen["weekly-check"].What.In(unit.US), "the planting holes for weeds, the edges")
	assert.Greater(t, seen["weekly-check"].Weeks, 5)
	hot := pack(t)["tomato-high-summer"]
	hot.Practice.FilmOptions = 1 << table.Black
	_, steps = seasonOf(t, hot)
	assert.Contains(t, byID(steps), "paint", "black film in high summer is painted white")
	_, steps = seasonOf(t, pack(t)["squash-on-worn-film"])
	assert.Contains(t, byID(steps), "mend", "film that is down is not laid again")
	assert.NotContains(t, byID(steps), "lay")
}

// Dates against the standard library's calendar: across leap days, the end of a
// century, year ends, and on both sides of the equator.
func TestDatesCrossYearsLeapDaysAndTheEquator(t *testing.T) {
	north := pack(t)["tomato-southern-spring"]
	south := north
	south.Place.Own, south.Place.Station, south.Place.HasNormals = true, "", true
	south.Place.Latitude, south.Place.LastFrost, south.Place.FirstFrost = unit.Known(-north.Place.Latitude.Value), unit.Optional[field.MonthDay]{}, unit.Optional[field.MonthDay]{}
	for m := range 12 {
		south.Place.TMin[m], south.Place.TMax[m] = north.Place.TMin[(m+6)%12], north.Place.TMax[(m+6)%12]
	}
	civil := func(d unit.Date) time.Time {
		y, m, day := d.Civil()
		return time.Date(y, time.Month(m), day, 0, 0, 0, 0, time.UTC)
	}
	crossed := map[string]bool{}
	for _, place := range []struct {
		name string
		c    field.Case
		days []unit.Date
	}{
		{"north", north, []unit.Date{unit.On(2028, 2, 29), unit.On(2028, 3, 1), unit.On(2027, 3, 1), unit.On(2100, 3, 5), unit.On(2027, 1, 3), unit.On(2027, 12, 31)}},
		{"south", south, []unit.Date{unit.On(2027, 9, 15), unit.On(2028, 4, 15), unit.On(2027, 4, 30), unit.On(2028, 5, 31), unit.On(2027, 6, 15), unit.On(2028, 7, 1)}},
	} {
		for _, day := range place.days {
			c := place.c
			c.PlantOn = unit.Known(day)
			a, steps := seasonOf(t, c)
			if a.Refused() { // out of season there: no dates to set out
				continue
			}
			seen := byID(steps)
			lay, plant := civil(a.WaitPlan.LayOn), civil(a.WaitPlan.PlantOn)
			assert.Equal(t, plant, lay.AddDate(0, 0, int(a.WaitPlan.Days)), "%s %s", place.name, day)
			for id, off := range map[string]int{"soil-test": -112, "water-sample": -105, "collector": -84, "order": -56, "bucket-test": -42, "ground": -21, "moisture": -3} {
				assert.Equal(t, lay.AddDate(0, 0, off), civil(seen[id].On), "%s, planting %s: %s", place.name, day, id)
			}
			weekly := seen["weekly-check"]
			assert.Equal(t, plant.AddDate(0, 0, 7), civil(weekly.On))
			assert.Equal(t, (int(a.Facts.CropDays)-1)/7, weekly.Weeks, "until the week of the first harvest")
			for _, s := range steps {
				if civil(s.On).Year() != plant.Year() {
					crossed[place.name] = true
				}
				if s.On <= unit.On(2028, 2, 29) && s.On.Plus(s.Days) > unit.On(2028, 2, 29) {
					crossed["29 February"] = true
				}
			}
			assert.Equal(t, civil(a.WaitPlan.PlantOn).AddDate(0, 0, int(a.Facts.CropDays)), civil(seen["harvest"].On))
		}
	}
	assert.True(t, crossed["north"] && crossed["south"] && crossed["29 February"], "the dates that were chosen cross year ends and a leap day: %v", crossed)
	// Six months apart, the same climate gives the same wait.
	north.PlantOn, south.PlantOn = unit.Known(unit.On(2027, 4, 10)), unit.Known(unit.On(2027, 10, 10))
	up, down := advise(t, north), advise(t, south)
	assert.InDelta(t, int(up.WaitPlan.Days), int(down.WaitPlan.Days), 3, "wait north and south")
}

// Where no film is to be laid no step, no reason for one and no caution speaks of film or
// of laying it; where film is laid the same walk finds words of film, so it can fail.
func TestAYearWithoutFilmDoesNotSpeakOfIt(t *testing.T) {
	ofFilm := regexp.MustCompile(`(?i)\bfilms?\b|\blayer\b|\blaying\b|planting holes`)
	refused, steps := 0, 0
	for _, f := range everyFarm(t) {
		found := false
		for _, s := range f.a.Season(&f.s) {
			text := s.What.In(unit.US) + " " + s.Why.In(unit.US)
			found = found || ofFilm.MatchString(text)
			if f.a.Refused() {
				steps++
				assert.NotRegexp(t, ofFilm, text+" "+string(s.Step), "%s: %s", f.id, s.ID)
			}
		}
		if !f.a.Refused() {
			assert.True(t, found, f.id)
			continue
		}
		refused++
		for _, c := range f.a.Cautions {
			if c.ID != "treated-ground" { // the label of a fumigant asks for a cover of its own
				assert.NotRegexp(t, ofFilm, c.Text+" "+string(c.Step), "%s: %s", f.id, c.ID)
			}
		}
	}
	assert.Greater(t, refused, 5)
	assert.Greater(t, steps, 50)
}
