package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

func logOf(t *testing.T, c field.Case) (*plan.Advice, plan.SeasonLog, bool) {
	t.Helper()
	a := advise(t, c)
	water := a.WaterPlan()
	list := a.Shopping(&water)
	log, ok := a.Log(&water, &list)
	return &a, log, ok
}

// An invented season, with every sum done by hand.
func TestTheLogAddsUp(t *testing.T) {
	c := pack(t)["tomato-southern-spring"]
	c.Field.BedLength, c.Field.Beds = unit.Known(unit.Metres(60*unit.MetresPerFoot)), unit.Known(5.0) // 300 ft of bed
	_, _, ok := logOf(t, c)
	require.False(t, ok, "nothing is written down")

	a, _, _ := logOf(t, c)
	plant := a.WaitPlan.PlantOn
	var rows []field.DayRow
	add := func(day unit.Days, values map[field.DayColumn]float64) {
		row := field.DayRow{On: plant.Plus(day)}
		for column, v := range values {
			row.Values[column] = unit.Known(v)
		}
		rows = append(rows, row)
	}
	floor := float64(a.Facts.WorkFloor)
	add(-4, map[field.DayColumn]float64{field.DaySoil: floor + 1, field.DayRolls: 1.5, field.DayPaid: 210})
	add(-3, map[field.DayColumn]float64{field.DaySoil: floor - 1})
	add(-2, map[field.DayColumn]float64{field.DaySoil: floor})
	add(-1, map[field.DayColumn]float64{field.DaySoil: floor + 2})
	add(2, map[field.DayColumn]float64{field.DayStage: 1, field.DaySoil: floor, field.DayHours: 6})
	add(30, map[field.DayColumn]float64{field.DayStage: 2, field.DayHours: 1.5, field.DayTorn: 2})
	add(62, map[field.DayColumn]float64{field.DayPicked: 4})
	add(69, map[field.DayColumn]float64{field.DayPicked: 10})
	add(76, map[field.DayColumn]float64{field.DayPicked: 16, field.DayPaid: 30, field.DayTorn: 5})
	require.Empty(t, field.CheckDays(rows, unit.Metric))
	c.Days = field.DaysOf(rows)

	a, log, ok := logOf(t, c)
	require.True(t, ok)
	assert.Equal(t, plant.Plus(2), log.Planted.Value)
	assert.Equal(t, plant.Plus(-2), log.Warm.Value, "three readings in a row; the first warm one stood alone")
	assert.Equal(t, plant.Plus(62), log.First.Value)
	assert.Equal(t, plant.Plus(76), log.Half.Value, "14 of 30 by the second picking")
	assert.Equal(t, 30.0, log.Picked.Value)
	assert.Equal(t, 7.5, log.Hours.Value)
	assert.Equal(t, 240.0, log.Paid.Value)
	assert.Equal(t, unit.Percent(5), log.Torn.Value)
	each, known := log.Hundred(log.Picked)
	require.True(t, known)
	assert.Equal(t, "10", each.In(unit.US), "30 on 300 ft")
	assert.Equal(t, "32.81", each.In(unit.Metric), "30 on 91.44 m")

	lines := map[string]string{}
	for _, line := range log.Lines(nil) {
		lines[line.What.In(unit.US)] = line.Here.In(unit.US)
		assert.Equal(t, "–", line.Before.In(unit.US))
	}
	assert.Equal(t, "30; 10 for each 100 ft of bed", lines["Picked"])
	assert.Equal(t, "8", lines["Money for each box or weight"])
	says := log.Says(a)
	require.NotEmpty(t, says)
	assert.Contains(t, says[0].In(unit.US), "Planted 2 days after the plan’s")
}

// Minutes that ran exactly as planned are all of what the plan says, however many days
// were written down.
func TestWaterRunAsPlannedIsAllOfThePlan(t *testing.T) {
	base := pack(t)["tomato-southern-spring"]
	a := advise(t, base)
	water := a.WaterPlan()
	list := a.Shopping(&water)
	rapid.Check(t, func(rt *rapid.T) {
		c := base
		first, share := rapid.IntRange(1, 30).Draw(rt, "first"), rapid.Float64Range(0.25, 2).Draw(rt, "share")
		var rows []field.DayRow
		for day := first; day < first+rapid.IntRange(1, 40).Draw(rt, "days"); day++ {
			row := field.DayRow{On: a.WaitPlan.PlantOn.Plus(unit.Days(day))}
			week, ok := a.WaterWeekOf(&water, &list, row.On)
			require.True(rt, ok)
			row.Values[field.DayRun] = unit.Known(float64(week.Run) * share)
			row.Values[field.DayHours] = unit.Known(1.0)
			rows = append(rows, row)
		}
		c.Days = field.DaysOf(rows)
		again, err := casefile.Decode(casefile.Encode(&c), nil)
		require.NoError(rt, err)
		b := a
		b.Case.Days = again.Days
		log, ok := b.Log(&water, &list)
		require.True(rt, ok)
		assert.InDelta(rt, share*float64(log.Planned), float64(log.Ran), 1e-6*float64(log.Planned))
		assert.Equal(rt, float64(len(rows)), log.Hours.Value)
	})
}
