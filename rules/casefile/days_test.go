package casefile_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/field"
	"filmfurrow/rules/internal/farms"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

const sheetOfThree = "Date,High (F),Low (F),Rain,Minutes,Clouds\n2027-06-01,85,62,,90,few\n2027-06-02,88,64,0.4,,\n\n2027-06-04,91.5,66,,120,none\n"

// A sheet with named columns is read in the reader's units, and comes back the same from
// file and link; a link carries days only when asked.
func TestDaysOfASheet(t *testing.T) {
	rows, errs := field.ReadSheet(sheetOfThree, unit.US)
	require.Empty(t, errs)
	require.Len(t, rows, 3)
	assert.Equal(t, unit.On(2027, 6, 4), rows[2].On)
	assert.InDelta(t, 33.06, rows[2].Values[field.DayHigh].Value, 0.01)
	assert.InDelta(t, 10.16, rows[1].Values[field.DayRain].Value, 0.01)
	assert.False(t, rows[1].Values[field.DayRun].Given)
	assert.EqualValues(t, 120, rows[2].Values[field.DayRun].Value)

	tabs, errs := field.ReadSheet("day\tmin\tmax\n6/1/2027\t62\t85\n", unit.US)
	require.Empty(t, errs)
	assert.Equal(t, unit.On(2027, 6, 1), tabs[0].On)

	places, err := normals.Embedded()
	require.NoError(t, err)
	c := farms.All(t)["pepper-cool-spring"]
	c.Days = field.DaysOf(rows)
	back, err := casefile.Decode(casefile.Encode(&c), places)
	require.NoError(t, err)
	assert.Equal(t, c, back)
	with, ok := casefile.LinkWithDays(&c)
	require.True(t, ok)
	back, err = casefile.ReadLink(with, places)
	require.NoError(t, err)
	assert.Equal(t, c, back)
	back, err = casefile.ReadLink(casefile.Link(&c), places)
	require.NoError(t, err)
	assert.Empty(t, back.Days, "the plan alone")
}

// A row of seven and a column are the same list.
func TestARowAndAColumn(t *testing.T) {
	for _, text := range []string{"85 88 90 91 87 85 84", "85\n88\n90\n91\n87\n85\n84\n", "85°F\t88°F\t90\t91\t87\t85\t84", "85, 88, 90, 91, 87, 85, 84"} {
		values, errs := field.ReadList(text, field.DayHigh, unit.US)
		require.Empty(t, errs, text)
		require.Len(t, values, 7)
		assert.InDelta(t, 29.44, values[0], 0.01)
	}
}

// What nobody measured gets a sentence that names it, what is allowed and how to mend it,
// and nothing is taken.
func TestBadDaysAreRefusedWhole(t *testing.T) {
	for text, want := range map[string]string{
		"date high low\n2027-06-02 85 62\n2027-06-01 84 60\n": "2027-06-01 after 2027-06-02 is not allowed. Allowed: each day once, the earlier first.",
		"date high low\n2027-06-01 85 62\n2027-06-01 84 60\n": "each day once",
		"date high low\n2027-06-01 900 62\n":                  "900 °F is not allowed. Allowed: −76 to 140 °F.",
		"date high low\n2027-06-01 warm 62\n":                 `line 2, High of the day: "warm" is not allowed. Allowed: a plain number.`,
		"date high low\n2027-06-01 62 85\n":                   "The two may have changed places.",
		"date high low\n2027-06-31 85 62\n":                   `line 2, date: "2027-06-31" is not allowed. Allowed: a day of the calendar`,
		"date high low\n2027-06-01 85 62 7\n":                 "Take the extra cell out.",
		"85 62\n84 60\n":                                      "names of columns",
		"date high low\n":                                     "a line for each day",
		"date run\n2027-06-01 1500\n":                         "A day has 1,440 minutes.",
		"date feel\n2027-06-01 2.5\n":                         "Whole classes from 1, the driest",
		"":                                                    "a line for each day",
	} {
		rows, errs := field.ReadSheet(text, unit.US)
		assert.Empty(t, rows, text)
		require.NotEmpty(t, errs, text)
		assert.Contains(t, errs.Error(), want, text)
	}
	_, errs := field.ReadList("85 hot 900 88", field.DayHigh, unit.US)
	require.Len(t, errs, 2)
	assert.Contains(t, errs[0].Error(), `figure 2: "hot"`)
	assert.Contains(t, errs[1].Error(), `figure 3: "900" is not allowed. Allowed: −76 to 140 °F.`)
}

// The file takes days strictly.
func TestBadDaysInAFile(t *testing.T) {
	places, err := normals.Embedded()
	require.NoError(t, err)
	c := farms.All(t)["pepper-cool-spring"]
	text := strings.TrimSuffix(strings.TrimSpace(string(casefile.Encode(&c))), "}")
	for days, want := range map[string]string{
		`[]`: "a list of days", `{}`: "a list of days", `[7]`: "an object for each day",
		`[{"on": "2027-02-30", "low_c": 5}]`:                                         "There is no such date",
		`[{"on": "2027-06-01", "low_c": "5"}]`:                                       "days.low_c",
		`[{"on": "2027-06-01", "cold_c": 5}]`:                                        "days.cold_c: unknown field",
		`[{"on": "2027-06-01", "low_c": 480}]`:                                       "days 2027-06-01 low_c: 480 °C is not allowed",
		`[{"on": "2027-06-02", "low_c": 5}, {"on": "2027-06-01", "low_c": 5}]`:       "Put the days in order.",
		`[{"on": "2027-06-02", "low_c": 5, "low_c": 6}]`:                             "given twice",
		"[" + strings.Repeat(`{"on": "2027-06-02"},`, 400) + `{"on": "2027-06-02"}]`: "at most 400",
	} {
		_, err := casefile.Decode([]byte(text+`, "days": `+days+"}"), places)
		require.Error(t, err, days)
		assert.Contains(t, err.Error(), want)
	}
}

// A year of daily entries is a file of 60 kB at most; as a link it is too long, and that
// is told.
func TestAYearOfDays(t *testing.T) {
	places, err := normals.Embedded()
	require.NoError(t, err)
	c := farms.All(t)["pepper-cool-spring"]
	rows := make([]field.DayRow, 366)
	for i := range rows {
		rows[i].On = unit.On(2027, 1, 1).Plus(unit.Days(i))
		for column, v := range map[field.DayColumn]float64{field.DayLow: 12.34, field.DayHigh: 28.91, field.DayRain: 3.56, field.DayRun: 125, field.DayMoisture: 23.5} {
			rows[i].Values[column] = unit.Known(v)
		}
	}
	c.Days = field.DaysOf(rows)
	file := casefile.Encode(&c)
	assert.LessOrEqual(t, len(file), 60_000)
	back, err := casefile.Decode(file, places)
	require.NoError(t, err)
	assert.Equal(t, c.Days, back.Days)
	_, ok := casefile.LinkWithDays(&c)
	assert.False(t, ok)
	c.Days = field.DaysOf(rows[:28])
	_, ok = casefile.LinkWithDays(&c)
	assert.True(t, ok, "four weeks go along")
}

func FuzzReadSheet(f *testing.F) {
	f.Add(sheetOfThree)
	f.Add("date;low\n2027-06-01;5\n")
	f.Fuzz(func(t *testing.T, text string) {
		rows, errs := field.ReadSheet(text, unit.Metric)
		if len(errs) == 0 && len(field.CheckDays(rows, unit.Metric)) > 0 {
			t.Error("took what it should refuse")
		}
	})
}
