package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// A week is a window on the same demand as the plan's months and its hungriest day:
// weeks begun on each day of a month have that month's run as their mean, no week
// passes the hungriest day, and the first begins at the planting day's run.
func TestTheWeeksOfWaterAgreeWithTheMonthsAndTheHungriestDay(t *testing.T) {
	looked := 0
	for _, f := range everyFarm(t) {
		w := f.a.WaterPlan()
		if f.a.Refused() || w.Demand == nil || w.Tape.Flow <= 0 {
			_, ok := f.a.WaterWeekOf(&w, &f.s, f.a.Facts.Plant)
			assert.False(t, ok || !f.a.Refused() && w.Tape.Flow > 0, "%s: no week without film or flow", f.id)
			continue
		}
		plant, last := f.a.Facts.Plant, min(f.a.LastWater(&f.s), f.a.Facts.Plant.Plus(w.Demand.Season))
		_, before := f.a.WaterWeekOf(&w, &f.s, plant.Plus(-7))
		assert.False(t, before, f.id)
		_, after := f.a.WaterWeekOf(&w, &f.s, last)
		assert.False(t, after, "%s: the season's dates stop the water on %s", f.id, last)
		first, ok := f.a.WaterWeekOf(&w, &f.s, plant)
		require.True(t, ok, f.id)
		assert.GreaterOrEqual(t, float64(first.Run), float64(w.Demand.First.Run)*0.8-1, f.id)
		for on := plant; on < last; on++ {
			week, ok := f.a.WaterWeekOf(&w, &f.s, on)
			require.True(t, ok, "%s on %s", f.id, on)
			assert.LessOrEqual(t, float64(week.Run), float64(w.Demand.Peak.Run)+1, "%s on %s", f.id, on)
			assert.Equal(t, on.Plus(7) <= last, week.Days == 7, "%s on %s", f.id, on)
			assert.GreaterOrEqual(t, float64(week.EachRun)*float64(week.Runs), float64(week.Run)-float64(week.Runs), f.id)
			if week.RunDry.Given {
				assert.GreaterOrEqual(t, float64(week.RunDry.Value), float64(week.Run)-1, "%s: a dry year never wants less", f.id)
			}
		}
		for _, m := range w.Demand.Months {
			begin, days := unit.On(m.Year, m.Month, 1), unit.DaysIn(m.Year, m.Month)
			if begin.Plus(-3) < plant || begin.Plus(unit.Days(days)+7) > last || int(m.Days) != days {
				continue
			}
			sum := 0.0
			for d := range days { // centred, so that the ends count half
				week, ok := f.a.WaterWeekOf(&w, &f.s, begin.Plus(unit.Days(d-3)))
				require.True(t, ok)
				sum += float64(week.Run)
			}
			assert.InEpsilon(t, float64(m.Run), sum/float64(days), 0.08, "%s, month %d", f.id, m.Month)
			looked++
		}
	}
	assert.Greater(t, looked, 15)
}

// What is next is the first step that is not over: never one that lies behind.
func TestTheNextStepIsNeverBehind(t *testing.T) {
	for _, f := range everyFarm(t) {
		steps := f.a.Season(&f.s)
		if len(steps) == 0 {
			_, ok := plan.NextStep(steps, f.a.Facts.Plant)
			assert.False(t, ok, f.id)
			continue
		}
		for day := steps[0].On.Plus(-20); day < steps[len(steps)-1].On.Plus(20); day++ {
			next, ok := plan.NextStep(steps, day)
			if !ok {
				assert.Greater(t, day, steps[len(steps)-1].On, f.id)
				continue
			}
			assert.GreaterOrEqual(t, int(next.Step.On)+int(max(next.Step.Days, 1))-1, int(day), "%s on %s", f.id, day)
			assert.Equal(t, max(0, int(next.Step.On)-int(day)), int(next.In), "%s on %s", f.id, day)
			for _, s := range steps { // nothing that begins later is passed over for it
				if s.Weeks <= 1 && s.On >= day && s.ID != "wait" { // waiting is nothing to do
					assert.LessOrEqual(t, next.Step.On, s.On, "%s on %s", f.id, day)
				}
			}
		}
	}
}

// The crop grows from planting to full leaf, which FAO 56 gives for bell peppers after
// 30 and 35 of 125 days.
func TestTheCropGrowsToFullLeaf(t *testing.T) {
	a := advise(t, pack(t)["pepper-cool-spring"])
	plant := a.WaitPlan.PlantOn
	assert.Zero(t, a.GrownOn(plant.Plus(-10)))
	assert.Zero(t, a.GrownOn(plant))
	leaf := unit.Days(float64(a.Facts.SeasonDays()) * 65 / 125)
	assert.InDelta(t, 0.5, a.GrownOn(plant.Plus(leaf/2)), 0.02)
	assert.InDelta(t, 1, a.GrownOn(plant.Plus(leaf)), 0.02)
	assert.Equal(t, 1.0, a.GrownOn(plant.Plus(300)))
}

// From two months before laying to lifting the season asks for one thing on each day, and
// for its own: it counts down to laying and planting, then waters, then lifts.
func TestWhatTheSeasonAsksNow(t *testing.T) {
	seen := map[string]int{}
	for _, f := range everyFarm(t) {
		w, water := &f.a.WaitPlan, f.a.WaterPlan()
		last := f.a.LastWater(&f.s)
		for day := w.LayOn.Plus(-70); day < last.Plus(20); day += 3 {
			says, step := f.a.Now(&water, &f.s, day)
			seen[step]++
			words := says.In(unit.US)
			switch {
			case f.a.Refused(), day < w.LayOn.Plus(-60), day > last.Plus(f.a.Facts.DryDays()+8):
				assert.Empty(t, step, "%s on %s", f.id, day)
			case day < w.LayOn && !f.a.FilmDown():
				assert.Equal(t, "Lay in "+unit.Of(w.LayOn.Minus(day)).In(unit.US), words, f.id)
			case day < w.PlantOn && day > w.LayOn:
				assert.Equal(t, "Plant in "+unit.Of(w.PlantOn.Minus(day)).In(unit.US), words, f.id)
			case day > w.PlantOn && day < last:
				assert.Contains(t, []string{"water", ""}, step, "%s on %s", f.id, day)
				if k, ok := f.a.ThisWeek(&water, &f.s, day); ok && k.Days[0].Run > 0 {
					assert.Equal(t, "Water "+unit.Of(k.Days[0].Run).In(unit.US)+" today", words, f.id)
				}
			case day >= last:
				assert.Equal(t, "lift", step, "%s on %s", f.id, day)
			}
		}
	}
	for _, step := range [...]string{"", "lay", "plant", "water", "lift"} {
		assert.Greater(t, seen[step], 20, step)
	}
}
