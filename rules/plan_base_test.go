package rules_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

const poundAcre = unit.KilogramsPerPound / unit.SquareMetresPerAcre * 10000

func baseOf(t require.TestingT, c field.Case, ground *facts.SoilYear) (plan.Advice, plan.BaseFertiliser) {
	a, err := rules.AdviseOn(ground, c)
	require.NoError(t, err)
	w := a.WaterPlan()
	return a, a.BaseFertiliser(&w)
}

// A report of 120-100-150 lb/acre on loam, beds 6 ft apart: a third of the nitrogen,
// all of the phosphate and half of the potash go under the film. On 726 ft of bed,
// a tenth of an acre (7,260 ft: Vegetable Growers News, 25 April 2021), that is 4, 10
// and 7.5 lb; of 10-10-10 then 40 lb, 5.5 lb for 100 ft, until the nitrogen is full.
func TestTheReportOfATenthOfAnAcre(t *testing.T) {
	c := pack(t)["pepper-cool-spring"]
	c.Soil.Texture, c.Practice.ReuseFilm = "loam", ""
	c.Field.Centres, c.Field.BedLength, c.Field.Beds = unit.Known(unit.FromFeet(6)), unit.Known(unit.FromFeet(72.6)), unit.Known(10.0)
	pounds := func(v float64) unit.Optional[unit.KilogramsPerHectare] {
		return unit.Known(unit.KilogramsPerHectare(v * poundAcre))
	}
	c.Feed.SeasonNitrogen, c.Feed.SeasonPhosphate, c.Feed.SeasonPotash = pounds(120), pounds(100), pounds(150)
	c.Feed.BaseNitrogen, c.Feed.BasePhosphate, c.Feed.BasePotash = unit.Known(10.0), unit.Known(10.0), unit.Known(10.0)
	ground, err := facts.NewSoilYear(c)
	require.NoError(t, err)
	_, b := baseOf(t, c, ground)
	for i, want := range []float64{4, 10, 7.5} {
		assert.Equal(t, plan.ByReport, b.Nutrients[i].Basis)
		assert.InDelta(t, want, float64(b.Nutrients[i].UnderMass)/unit.KilogramsPerPound, 0.01)
	}
	assert.InDelta(t, 40, float64(b.Product)/unit.KilogramsPerPound, 0.3)
	assert.InDelta(t, 5.5, unit.KindPer100Mass.Shown(float64(b.Per100), unit.US), 0.05)
	assert.Equal(t, plan.Nitrogen, b.Ends)
	assert.InDelta(t, 6, float64(b.Nutrients[plan.Phosphate].Rest)/unit.KilogramsPerPound, 0.05)
	assert.Empty(t, b.For, "no table stands in for a whole report")
}

// feedCase draws the parts of a case that the base fertiliser reads.
func feedCase(t *rapid.T, c field.Case) field.Case {
	classes := []string{"", "low", "medium", "high", "very-high"}
	c.Soil.Phosphorus, c.Soil.Potassium = rapid.SampledFrom(classes).Draw(t, "P"), rapid.SampledFrom(classes).Draw(t, "K")
	for _, at := range []*unit.Optional[unit.KilogramsPerHectare]{&c.Feed.SeasonNitrogen, &c.Feed.SeasonPhosphate, &c.Feed.SeasonPotash} {
		if rapid.Bool().Draw(t, "reported") {
			*at = unit.Known(unit.KilogramsPerHectare(rapid.Float64Range(0, 600).Draw(t, "rate")))
		}
	}
	for _, at := range []*unit.Optional[float64]{&c.Feed.BaseNitrogen, &c.Feed.BasePhosphate, &c.Feed.BasePotash} {
		if rapid.Bool().Draw(t, "on the bag") {
			*at = unit.Known(float64(rapid.IntRange(1, 33).Draw(t, "grade")))
		}
	}
	c.Feed.Spread = rapid.SampledFrom([]string{"", "beds", "field"}).Draw(t, "spread")
	c.Water.Nitrate = unit.Known(unit.MilligramsPerLitre(rapid.IntRange(0, 60).Draw(t, "nitrate")))
	return c
}

// Under the film, with the water and through the tape make the season's need; no
// nutrient of the product passes what goes under the film; more nitrate in the water
// never raises what is bought; a typed report stands as it was typed.
func TestFilmWaterAndTapeMakeTheSeason(t *testing.T) {
	farm := pack(t)["tomato-southern-spring"]
	ground, err := facts.NewSoilYear(farm)
	require.NoError(t, err)
	first, err := rules.AdviseOn(ground, farm)
	require.NoError(t, err)
	rapid.Check(t, func(t *rapid.T) {
		a := first
		a.Case = feedCase(t, first.Case)
		credit := rapid.Float64Range(0, 300).Draw(t, "with the water")
		of := func(credit float64) plan.BaseFertiliser {
			w := plan.WaterPlan{}
			w.Quality.NitrogenCredit = unit.Known(credit)
			return a.BaseFertiliser(&w)
		}
		b, more := of(credit), of(credit*1.5+1)
		typed := []unit.Optional[unit.KilogramsPerHectare]{a.Case.Feed.SeasonNitrogen, a.Case.Feed.SeasonPhosphate, a.Case.Feed.SeasonPotash}
		for i := range b.Nutrients {
			n, m := &b.Nutrients[i], &more.Nutrients[i]
			if n.Tape > 0 {
				assert.InDelta(t, float64(n.Total), float64(n.Under+n.Water+n.Tape), 0.003)
			} else {
				assert.GreaterOrEqual(t, float64(n.Under+n.Water)+0.003, float64(n.Total))
			}
			assert.LessOrEqual(t, m.Tape, n.Tape)
			assert.Equal(t, n.Under, m.Under, "what lies under the film was spread before the water came")
			assert.LessOrEqual(t, float64(n.InProduct), float64(n.UnderMass)+0.001)
			assert.InDelta(t, float64(n.UnderMass), float64(n.InProduct+n.Rest), 0.002)
			if typed[i].Given {
				assert.Equal(t, plan.ByReport, n.Basis)
				assert.InDelta(t, float64(typed[i].Value), float64(n.Total), 0.001)
			}
		}
		assert.LessOrEqual(t, more.Product, b.Product)
		for _, s := range b.Says {
			assert.True(t, s.Complete(), s.Text)
		}
		for _, s := range b.Steps {
			assert.NotEmpty(t, s.Source, s.ID)
			assert.NotEmpty(t, s.Inputs, s.ID)
		}
	})
}

// A richer class of soil test never takes more, of any crop.
func TestARicherSoilTakesNoMore(t *testing.T) {
	farm := pack(t)["pepper-cool-spring"]
	ground, err := facts.NewSoilYear(farm)
	require.NoError(t, err)
	for i := range table.Crops {
		c := farm
		c.Crop, c.Method = table.Crops[i].ID, ""
		a, err := rules.AdviseOn(ground, c)
		require.NoError(t, err)
		last := [2]unit.KilogramsPerHectare{math.MaxInt32, math.MaxInt32}
		for _, class := range table.TestClassIDs {
			a.Case.Soil.Phosphorus, a.Case.Soil.Potassium = class, class
			b := a.BaseFertiliser(nil)
			for k, n := range []plan.Nutrient{plan.Phosphate, plan.Potash} {
				assert.LessOrEqual(t, b.Nutrients[n].Total, last[k], "%s, %s", c.Crop, class)
				last[k] = b.Nutrients[n].Total
			}
		}
	}
}

// The fertiliser stands in the season before the film, and in the list by the grower's
// own grade; refused film and film that lies already buy none for under it.
func TestTheBaseFertiliserStandsInSeasonAndList(t *testing.T) {
	for _, f := range everyFarm(t) {
		steps := byID(f.a.Season(&f.s))
		b, line := &f.s.Base, &f.s.Lines[field.ItemFertiliser]
		assert.Equal(t, f.a.Refused(), b.Bare, f.id)
		step, there := steps["base-fertiliser"]
		switch {
		case f.a.Refused():
			assert.Zero(t, line.Quantity, f.id)
			continue
		case b.Down:
			assert.False(t, there, f.id)
			assert.Zero(t, line.Quantity, f.id)
			for i := range b.Nutrients {
				assert.Zero(t, b.Nutrients[i].Under, f.id)
			}
			continue
		}
		require.True(t, there, f.id)
		assert.Less(t, step.On, f.a.WaitPlan.LayOn, f.id)
		assert.Greater(t, step.On, f.a.WaitPlan.LayOn.Plus(-14), f.id)
		assert.Equal(t, !b.Told(), line.Missing != "", f.id)
		if feed, fed := steps["feed"]; fed {
			assert.Greater(t, feed.On, f.a.WaitPlan.PlantOn, f.id)
			assert.Positive(t, feed.Weeks, f.id)
		}
	}
}

// Covers gain days with every degree and never lose one; a cover that gains nothing
// leaves the season as it is.
func TestMoreDegreesNeverPlantLater(t *testing.T) {
	for _, id := range []string{"pepper-cool-spring", "tomato-frost-pocket", "tomato-high-valley", "melon-weak-well", "broccoli-spring", "lettuce-spring"} {
		a := advise(t, pack(t)[id])
		f := a.Facts
		from := f.Wanted.Plus(-60)
		plain, open := f.Season.NextOpen(f.ChosenCover(), from, facts.UsualSpring)
		bare := f.SeasonUnder(0).WithFloor(f.WorkFloor)
		same, again := bare.NextOpen(f.ChosenCover(), from, facts.UsualSpring)
		assert.Equal(t, open, again, id)
		assert.Equal(t, plain, same, id)
		last := from.Plus(400)
		for tenths := range 60 {
			season := f.SeasonUnder(unit.CelsiusDegrees(tenths) / 10)
			day, ok := season.NextOpen(f.ChosenCover(), from, facts.UsualSpring)
			if !ok {
				day = from.Plus(400)
			}
			assert.LessOrEqual(t, day, last, "%s at %d tenths of a degree", id, tenths)
			last = day
		}
	}
}

// New Mexico State University (guide H-251) and the New England guide: with black film
// and a cover crops come one to three weeks earlier. So do the days that warm crops may
// go out, in the middle of the farms that have a frost to wait for, by every cover.
func TestCoversWinOneToThreeWeeks(t *testing.T) {
	won := make([][]int, len(table.Covers))
	for _, f := range everyFarm(t) {
		facts0 := f.a.Facts
		if !facts0.Crop.Warm || facts0.Autumn || !facts0.HasFrostDate {
			continue
		}
		from := facts0.Wanted.Plus(-90)
		without, ok := facts0.Season.NextOpen(facts0.ChosenCover(), from, facts.UsualSpring)
		if !ok || without == from {
			continue
		}
		for i := range table.Covers {
			season := facts0.SeasonUnder(table.Covers[i].Night.Low)
			if with, ok := season.NextOpen(facts0.ChosenCover(), from, facts.UsualSpring); ok {
				won[i] = append(won[i], int(without.Minus(with)))
			}
		}
	}
	for i, days := range won {
		slices.Sort(days)
		require.Greater(t, len(days), 8)
		middle := days[len(days)/2]
		t.Logf("%-14s %v", table.Covers[i].ID, days)
		assert.GreaterOrEqual(t, middle, 7, table.Covers[i].ID)
		assert.LessOrEqual(t, middle, 21, table.Covers[i].ID)
	}
}

// Own frost dates are moved by the covers too, and not past the coldest day.
func TestCoversMoveOwnFrostDates(t *testing.T) {
	c := pack(t)["tomato-frost-pocket"]
	c.Place.LastFrost = unit.Known(field.MonthDay(601))
	a := advise(t, c)
	f := a.Facts
	from := f.Wanted.Plus(-60)
	without, ok := f.Season.NextFree(from)
	require.True(t, ok)
	season := f.SeasonUnder(3)
	with, ok := season.NextFree(from)
	require.True(t, ok)
	assert.Less(t, with, without)
	assert.Greater(t, with, without.Plus(-60))
}

// Covers are shown only where they win days or planting needs them, each with what it
// takes, when to open it and when to take it off.
func TestCoversAreShownWhereTheyWin(t *testing.T) {
	shown := 0
	for _, f := range everyFarm(t) {
		list := f.a.Covers()
		for i := range list {
			c := &list[i]
			shown++
			if c.Bare.Given {
				assert.Positive(t, int(c.Won), f.id)
				assert.Equal(t, c.Bare.Value.Minus(c.First), c.Won, f.id)
			}
			if i > 0 && c.Cover.Weight.Given() {
				assert.Less(t, c.First, list[i-1].First, "%s: heavier cloth that wins nothing", f.id)
			}
			assert.GreaterOrEqual(t, c.First, f.a.Facts.Wanted, f.id)
			assert.Greater(t, c.OffOn, c.First, f.id)
			assert.Len(t, c.Says, 5, f.id)
			for _, s := range c.Says {
				assert.True(t, s.Complete(), s.Text)
			}
			assert.NotEmpty(t, c.Sources, f.id)
			assert.Greater(t, float64(c.Width), float64(f.a.Shape.Top), f.id)
		}
		_, there := byID(f.a.Season(&f.s))["covers-off"]
		if !f.a.Refused() {
			assert.Equal(t, len(list) > 0, there, f.id)
		}
	}
	assert.Positive(t, shown, "no farm of the pack wins by covers")
}

// Where planting must wait, the reader is told of covers, a probe and a later day; where
// nothing waits or a label leads, of none; and the covers that are told are the ones shown.
func TestWhatCanBeDoneIsToldWhereItWaits(t *testing.T) {
	waits, byCovers := 0, 0
	for _, f := range everyFarm(t) {
		ways := f.a.CanBeDone()
		if f.a.WaitPlan.Moved <= 0 || f.c.Practice.FumigatedOn.Given || judge.Waits(f.a.Facts)[question.WaitCooling] > 0 {
			assert.Empty(t, ways, f.id) // neither a label nor a summer is hurried
			continue
		}
		waits++
		assert.NotEmpty(t, ways, f.id)
		for _, way := range ways {
			assert.True(t, way.Complete(), way.Text)
		}
		if list := f.a.Covers(); len(list) > 0 && list[0].Bare.Given {
			byCovers++
			assert.Contains(t, ways[0].Text, "Covers:", f.id)
		}
	}
	assert.Positive(t, waits)
	assert.Positive(t, byCovers, "no farm of the pack is told of covers")
}

// A master-gardener note (2020) takes covers off cool crops above 60 °F by day; makers'
// pages open clear film over warm ones before 90 °F outside; clear film is always opened
// before fabric, which stays cooler.
func TestCoversAreOpenedBeforeTheHeat(t *testing.T) {
	for i := range table.Crops {
		crop := &table.Crops[i]
		fabric, film := plan.VentAbove(crop, &table.Covers[0]), plan.VentAbove(crop, &table.Covers[len(table.Covers)-1])
		most := 90.0
		if !crop.Warm {
			most = 60
		}
		assert.LessOrEqual(t, float64(fabric)*1.8+32, most+0.1, crop.ID)
		assert.LessOrEqual(t, film, fabric, crop.ID)
		assert.Greater(t, float64(film)*1.8+32, 32.0, crop.ID)
	}
	pepper := plan.VentAbove(table.CropByID("bell-pepper"), &table.Covers[len(table.Covers)-1])
	assert.InDelta(t, 90-25, float64(pepper)*1.8+32, 0.2, "90 °F less the middle of the 20 to 30 °F that Michigan State University measured")
}

// Wrong figures get a sentence each.
func TestBadSoilTestsGetSentences(t *testing.T) {
	farm := pack(t)["pepper-cool-spring"]
	for name, row := range map[string]struct {
		change func(*field.Case)
		field  string
		says   string
	}{
		"buffer pH in centuries": {func(c *field.Case) { c.Soil.PH = unit.Known(68.0) }, "soil.ph", "buffer pH"},
		"a class of its own":     {func(c *field.Case) { c.Soil.Phosphorus = "hgh" }, "soil.test_p", "Did you mean high?"},
		"lime in grams":          {func(c *field.Case) { c.Soil.Lime = unit.Known(unit.KilogramsPerHectare(2e6)) }, "soil.lime_kg_ha", "1 t/ha"},
		"product for nutrient":   {func(c *field.Case) { c.Feed.SeasonNitrogen = unit.Known(unit.KilogramsPerHectare(1000)) }, "feed.season_n_kg_ha", "not the product"},
		"less than none":         {func(c *field.Case) { c.Feed.SeasonPotash = unit.Known(unit.KilogramsPerHectare(-5)) }, "feed.season_k2o_kg_ha", "whole season"},
		"no number":              {func(c *field.Case) { c.Feed.SeasonPhosphate = unit.Known(unit.KilogramsPerHectare(math.NaN())) }, "feed.season_p2o5_kg_ha", "whole season"},
		"more than the bag":      {func(c *field.Case) { c.Feed.BaseNitrogen, c.Feed.BasePotash = unit.Known(60.0), unit.Known(60.0) }, "feed.base_n_percent", "cannot hold more than itself"},
		"an empty bag":           {func(c *field.Case) { c.Feed.BaseNitrogen = unit.Known(0.0) }, "feed.base_n_percent", "leave all three out"},
		"spread in the air":      {func(c *field.Case) { c.Feed.Spread = "air" }, "feed.base_spread", "Choose one"},
		"hoops below none":       {func(c *field.Case) { c.Shopping[field.ItemHoops] = unit.Known(-1.0) }, "shopping.hoops", "0 or more"},
	} {
		c := farm
		row.change(&c)
		errs := field.Check(&c)
		if assert.Len(t, errs, 1, name) {
			assert.Equal(t, row.field, errs[0].Field, name)
			assert.Contains(t, errs[0].Mend, row.says, name)
		}
	}
}
