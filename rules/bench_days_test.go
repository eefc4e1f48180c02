package rules_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/internal/farms"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// A year of daily entries: read from its file, kept in the account, told by the log. In the
// browser at a quarter of the speed it may take 100 ms.
func BenchmarkAYearOfDays(b *testing.B) {
	places, err := normals.Embedded()
	require.NoError(b, err)
	c := farms.All(b)["strawberry-autumn"]
	a := advise(b, c)
	rows := make([]field.DayRow, 366)
	for i := range rows {
		rows[i].On = a.WaitPlan.PlantOn.Plus(unit.Days(i - 30))
		for column, v := range map[field.DayColumn]float64{field.DayLow: 12.34, field.DayHigh: 28.91, field.DayRain: 3.56, field.DayRun: 25, field.DayMoisture: 23.5, field.DaySoil: 15, field.DayPicked: 2, field.DayHours: 1} {
			rows[i].Values[column] = unit.Known(v)
		}
	}
	c.Days = field.DaysOf(rows)
	file := casefile.Encode(&c)
	water := a.WaterPlan()
	list := a.Shopping(&water)
	b.ReportMetric(float64(len(file)), "B-file")
	for b.Loop() {
		back, err := casefile.Decode(file, places)
		require.NoError(b, err)
		with := a
		with.Case = back
		today := a.WaitPlan.PlantOn.Plus(200)
		if _, ok := with.ThisWeek(&water, &list, today); !ok {
			b.Fatal("no week")
		}
		with.Now(&water, &list, today)
		if _, ok := with.Log(&water, &list); !ok {
			b.Fatal("no log")
		}
	}
}
