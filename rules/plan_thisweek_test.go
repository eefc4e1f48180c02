package rules_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules"
	"filmfurrow/rules/field"
	"filmfurrow/rules/internal/farms"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// seasonFarm is a farm in mid-season, its plan, and days to write on.
type seasonFarm struct {
	a     plan.Advice
	w     plan.WaterPlan
	s     plan.Shopping
	today unit.Date
}

func inSeason(t testing.TB, name string, days unit.Days, rows ...field.DayRow) seasonFarm {
	t.Helper()
	c := farms.All(t)[name]
	c.Days = field.DaysOf(rows)
	f := seasonFarm{a: farms.Advise(t, c)}
	f.w = f.a.WaterPlan()
	f.s = f.a.Shopping(&f.w)
	f.today = f.a.WaitPlan.PlantOn.Plus(days)
	return f
}

func (f *seasonFarm) week(t testing.TB) plan.ThisWeek {
	t.Helper()
	week, ok := f.a.ThisWeek(&f.w, &f.s, f.today)
	require.True(t, ok)
	return week
}

// on writes values of columns on a day.
func on(day unit.Date, values map[field.DayColumn]float64) field.DayRow {
	row := field.DayRow{On: day}
	for c, v := range values {
		row.Values[c] = unit.Known(v)
	}
	return row
}

// Without a word of the weather and with a full bed the seven days take what the plan's
// week takes: one plan, two views.
func TestAUsualWeekIsThePlansWeek(t *testing.T) {
	for _, name := range []string{"pepper-cool-spring", "melon-hillside", "cabbage-wet-clay", "pepper-thrips"} {
		for _, day := range []unit.Days{30, 50, 70} {
			f := inSeason(t, name, day)
			usual, ok := f.a.WaterWeekOf(&f.w, &f.s, f.today)
			if !ok || usual.Days < 7 || usual.Every > 1 || usual.Run > 200 {
				continue
			}
			week := f.week(t)
			require.Len(t, week.Days, 7)
			sum := 0.0
			for i := range week.Days {
				sum += float64(week.Days[i].Run)
				assert.EqualValues(t, 100, week.Days[i].Evening)
				assert.EqualValues(t, 100, week.Days[i].Got)
			}
			assert.InDelta(t, 7*float64(usual.Run), sum, 7, "%s, day %d", name, day)
			assert.InDelta(t, float64(usual.Run), float64(week.Mean), 1)
			assert.EqualValues(t, 100, week.Left)
			assert.True(t, week.Full)
			assert.False(t, week.Departs.Given)
			assert.Empty(t, week.Notes)
		}
	}
}

// A day as warm as usual needs what the plan says, a hot one more, a cool one less.
func TestHotDaysNeedMore(t *testing.T) {
	f := inSeason(t, "pepper-cool-spring", 60)
	usual := f.week(t)
	for _, warmer := range []float64{-6, 0, 6} {
		var rows []field.DayRow
		for d := range unit.Days(7) {
			day := f.today.Plus(d)
			low, high := f.a.Facts.UsualAir(day)
			rows = append(rows, on(day, map[field.DayColumn]float64{field.DayLow: float64(low), field.DayHigh: float64(high) + warmer}))
		}
		g := inSeason(t, "pepper-cool-spring", 60, rows...)
		week := g.week(t)
		require.True(t, week.Departs.Given)
		switch {
		case warmer < 0:
			assert.Less(t, float64(week.Departs.Value), -5.0)
			assert.Less(t, week.Days[3].Run, usual.Days[3].Run)
		case warmer == 0:
			assert.InDelta(t, 0, float64(week.Departs.Value), 1)
			assert.InDelta(t, float64(usual.Days[3].Run), float64(week.Days[3].Run), 2)
		default:
			assert.Greater(t, float64(week.Departs.Value), 5.0)
			assert.Greater(t, week.Days[3].Run, usual.Days[3].Run)
		}
	}
}

// Water that did not run is missing, and is asked for; a reading counts for more than the
// account, the driest of several most, and each disagreement is said.
func TestWhatRanAndWhatWasReadCount(t *testing.T) {
	f := inSeason(t, "pepper-cool-spring", 60)
	usual := f.week(t)
	day := func(d unit.Days) unit.Date { return f.today.Plus(d) }

	dry := inSeason(t, "pepper-cool-spring", 60, on(day(-2), map[field.DayColumn]float64{field.DayRun: 0}), on(day(-1), map[field.DayColumn]float64{field.DayRun: 0}))
	week := dry.week(t)
	assert.Len(t, week.Before, 2)
	assert.Less(t, week.Left, unit.Percent(90))
	assert.Greater(t, week.Days[0].Run, usual.Days[0].Run)
	assert.True(t, week.Before[0].RunTold)

	feel := inSeason(t, "pepper-cool-spring", 60, on(day(-3), map[field.DayColumn]float64{field.DayRun: 100}),
		on(day(0), map[field.DayColumn]float64{field.DayFeel: 2, field.DayTension: 5}))
	week = feel.week(t)
	assert.EqualValues(t, 38, week.Left, "the middle of 25 to 50 %")
	require.Len(t, week.Notes, 2)
	assert.Contains(t, week.Notes[0].In(unit.US), "the readings disagree, 38% to 100%")
	assert.Contains(t, week.Notes[1].In(unit.US), "the account said")
	assert.Greater(t, week.Days[0].Run, usual.Days[0].Run)

	beds, length := float64(f.a.Case.Field.Beds.Value), float64(f.a.Case.Field.BedLength.Value)
	litres := beds * length * float64(f.w.Plan.Tape.Flow) / 100 // an hour
	meter := inSeason(t, "pepper-cool-spring", 60, on(day(-1), map[field.DayColumn]float64{field.DayRun: 120, field.DayMeter: litres}))
	week = meter.week(t)
	assert.EqualValues(t, 60, week.Before[0].Run, "the meter counts")
	require.Len(t, week.Notes, 1)
	assert.Contains(t, week.Notes[0].In(unit.US), "less came than the minutes say")
}

// The driest sort of handful leaves so little that the crop is short on the day; rain under
// film hardly counts.
func TestADryBedAndRain(t *testing.T) {
	f := inSeason(t, "pepper-cool-spring", 60)
	dry := inSeason(t, "pepper-cool-spring", 60, on(f.today, map[field.DayColumn]float64{field.DayFeel: 1}))
	week := dry.week(t)
	assert.EqualValues(t, 0, week.Lasts)
	assert.Less(t, week.Left, week.Least)
	rain := inSeason(t, "pepper-cool-spring", 60, on(f.today, map[field.DayColumn]float64{field.DayRain: 25}))
	saved := float64(f.week(t).Days[0].Run - rain.week(t).Days[0].Run)
	assert.Greater(t, saved, 0.0)
	light := inSeason(t, "pepper-cool-spring", 60, on(f.today, map[field.DayColumn]float64{field.DayRain: 0.3}))
	assert.Equal(t, f.week(t).Days[0].Run, light.week(t).Days[0].Run)
}

// After a missed day the next one needs both days' water.
func TestAMissedDay(t *testing.T) {
	f := inSeason(t, "pepper-cool-spring", 60)
	week := f.week(t)
	assert.Greater(t, week.Lasts, unit.Hours(0))
	assert.Equal(t, f.today.Plus(1), week.Missed.On)
	assert.InDelta(t, float64(week.Days[0].Run+week.Days[1].Run), float64(week.Missed.Run), 0.1*float64(week.Missed.Run)+2)
	assert.GreaterOrEqual(t, week.Missed.Runs, week.Days[1].Runs)
}

// Days of another year do not count, and are refused where they are written down.
func TestDaysOfAnotherYear(t *testing.T) {
	f := inSeason(t, "pepper-cool-spring", 60)
	row := on(f.today.Plus(-365), map[field.DayColumn]float64{field.DayLow: 10, field.DayHigh: 30})
	g := inSeason(t, "pepper-cool-spring", 60, row)
	week := g.week(t)
	require.Len(t, week.Notes, 1)
	assert.Contains(t, week.Notes[0].In(unit.US), "1 day that were written down lie outside")
	assert.Len(t, f.a.CheckSeason(&f.s, []field.DayRow{row}), 1)
	assert.Empty(t, f.a.CheckSeason(&f.s, []field.DayRow{on(f.today, nil)}))
}

// Where film is refused, so is its week.
func TestARefusedFieldHasNoWeek(t *testing.T) {
	refused := 0
	for name, c := range farms.All(t) {
		a := farms.Advise(t, c)
		if !a.Refused() {
			continue
		}
		refused++
		w := a.WaterPlan()
		s := a.Shopping(&w)
		_, ok := a.ThisWeek(&w, &s, a.WaitPlan.PlantOn.Plus(30))
		assert.False(t, ok, name)
	}
	assert.Positive(t, refused)
}

// Utah State University Extension, vegetable guide, tomato, pepper and eggplant:
// irrigation: field capacity, and 20–25 % gone, in centibars.
func TestTensionsOfUtah(t *testing.T) {
	c := farms.All(t)["pepper-cool-spring"]
	for soil, r := range map[string][4]float64{
		"sand": {5, 10, 17, 22}, "loamy-sand": {5, 10, 17, 22}, "sandy-loam": {10, 20, 22, 27},
		"loam": {15, 25, 25, 30}, "silt-loam": {15, 25, 25, 30}, "clay-loam": {20, 40, 35, 45}, "clay": {20, 40, 35, 45},
	} {
		c.Soil.Texture = soil
		a := plan.Advice{Facts: inSeason(t, "pepper-cool-spring", 0).a.Facts}
		facts := *a.Facts
		facts.Soil = table.SoilByID(soil)
		a.Facts = &facts
		assert.InDelta(t, 1, a.TensionLeft(r[0]), 1e-9, soil)
		assert.InDelta(t, 0.75, a.TensionLeft(r[3]), 1e-9, soil)
		at := a.TensionLeft((r[2] + r[3]) / 2)
		assert.True(t, at >= 0.75 && at <= 0.80, "%s %v", soil, at)
		last := 1.0
		for kPa := range 100 {
			left := a.TensionLeft(float64(kPa))
			assert.LessOrEqual(t, left, last+1e-12)
			last = left
		}
	}
}

// Whatever is written down, the account stays within what the soil holds, and days come
// back as they were written.
func TestAnyDaysKeepTheAccountWhole(t *testing.T) {
	f := inSeason(t, "pepper-cool-spring", 60)
	c := farms.All(t)["pepper-cool-spring"]
	soil := farms.Soil(t, c)
	rapid.Check(t, func(t *rapid.T) {
		var rows []field.DayRow
		day := f.today.Plus(unit.Days(rapid.IntRange(-60, 0).Draw(t, "first")))
		for range rapid.IntRange(0, 30).Draw(t, "days") {
			row := field.DayRow{On: day}
			for i := range row.Values {
				if col := &field.DayColumns[i]; rapid.Bool().Draw(t, "given") {
					row.Values[i] = unit.Known(math.Round(rapid.Float64Range(col.Low, min(col.High, 2000)).Draw(t, "value")))
				}
			}
			if low, high := &row.Values[field.DayLow], &row.Values[field.DayHigh]; low.Given && high.Given && low.Value > high.Value {
				low.Value, high.Value = high.Value, low.Value
			}
			rows = append(rows, row)
			day = day.Plus(unit.Days(rapid.IntRange(1, 4).Draw(t, "step")))
		}
		require.Empty(t, field.CheckDays(rows, unit.US))
		kept := field.DaysOf(rows)
		assert.Equal(t, rows, kept.Rows())
		assert.Equal(t, kept, field.Days("").With(rows))
		assert.Equal(t, kept, kept.With(nil))
		c.Days = kept
		a, err := rules.AdviseAfter(&f.a, soil, c)
		require.NoError(t, err)
		week, ok := a.ThisWeek(&f.w, &f.s, f.today)
		require.True(t, ok)
		for _, list := range [][]plan.DayWater{week.Before, week.Days} {
			for i := range list {
				d := &list[i]
				assert.True(t, d.Morning >= 0 && d.Morning <= 100 && d.Evening >= 0 && d.Evening <= 100 && d.Got >= 0 && d.Got <= 100 && d.Run >= 0)
				assert.False(t, math.IsNaN(float64(d.Use)))
			}
		}
		for i := range week.Notes {
			assert.True(t, week.Notes[i].Complete(), week.Notes[i].Text)
			assert.False(t, strings.Contains(week.Notes[i].In(unit.US), "{}"))
		}
	})
}
