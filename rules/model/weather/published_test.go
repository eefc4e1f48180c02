package weather_test

import (
	"bufio"
	"compress/gzip"
	"math"
	"os"
	"sort"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// record is a station of NOAA's 1981–2010 U.S. Climate Normals.
type record struct {
	station   string
	normals   weather.Normals
	cold, hot float64 // published days a year at or below 32 °F, at or above 90 °F
}

func readLines(t testing.TB, path string) (lines [][]string) {
	t.Helper()
	file, err := os.Open(path)
	require.NoError(t, err)
	defer file.Close()
	reader := bufio.NewScanner(file)
	if strings.HasSuffix(path, ".gz") {
		unzipped, err := gzip.NewReader(file)
		require.NoError(t, err)
		reader = bufio.NewScanner(unzipped)
	}
	for reader.Scan() {
		if line := reader.Text(); !strings.HasPrefix(line, "#") {
			lines = append(lines, strings.Split(line, ","))
		}
	}
	require.NoError(t, reader.Err())
	return lines
}

func numbers(t testing.TB, fields []string) []float64 {
	t.Helper()
	out := make([]float64, len(fields))
	for i, f := range fields {
		if f == "" {
			continue // not published
		}
		v, err := strconv.ParseFloat(f, 64)
		require.NoError(t, err)
		out[i] = v
	}
	return out
}

func stations(t testing.TB) (all []record) {
	t.Helper()
	for _, line := range readLines(t, "testdata/normals.csv.gz") {
		v := numbers(t, line[1:])
		r := record{station: line[0], cold: v[26] / 10, hot: v[27] / 10}
		r.normals.Latitude, r.normals.Height = unit.Degrees(v[0]/100), unit.Metres(v[1])
		for m := range 12 {
			r.normals.Minimum[m] = unit.FromFahrenheit(v[2+m] / 10)
			r.normals.Maximum[m] = unit.FromFahrenheit((v[2+m] + v[14+m]) / 10)
		}
		all = append(all, r)
	}
	require.Len(t, all, 7501)
	return all
}

// Published daily normals of four stations (NOAA National Centers for
// Environmental Information, 1981–2010 U.S. Climate Normals, dly-tmin-normal and
// dly-tmax-normal). They are smooth curves of harmonics drawn through the same
// monthly normals, rounded to 0.1 °F, so agreement is close but not exact.
func TestDailyNormals(t *testing.T) {
	published := map[string][][]float64{}
	for _, line := range readLines(t, "testdata/daily-normals.csv.gz")[1:] {
		published[line[0]] = append(published[line[0]], numbers(t, line[1:]))
	}
	require.Len(t, published, 4)
	for _, r := range stations(t) {
		days, ok := published[r.station]
		if !ok {
			continue
		}
		y, err := weather.NewYear(r.normals)
		require.NoError(t, err)
		var worst, square, n, spreadSquare, spreadBias, spreads float64
		for _, d := range days {
			date := unit.On(2019, int(d[0]), int(d[1]))
			if d[0] == 2 && d[1] == 29 {
				continue
			}
			i := weather.Index(date)
			for k, ours := range [2]unit.Celsius{y.Minimum[i], y.Maximum[i]} {
				miss := float64(ours - unit.FromFahrenheit(d[2+k]/10))
				worst = math.Max(worst, math.Abs(miss))
				square += miss * miss
				n++
			}
			if d[4] > 0 {
				for k, ours := range [2]unit.CelsiusDegrees{y.SpreadMinimum[i], y.SpreadMaximum[i]} {
					miss := float64(ours - unit.FromFahrenheitDegrees(d[4+k]/10))
					spreadSquare += miss * miss
					spreadBias += miss
					spreads++
				}
			}
		}
		rmse := math.Sqrt(square / n)
		t.Logf("%s: daily normals, RMSE %.2f °C, worst day %.2f °C", r.station, rmse, worst)
		assert.Less(t, rmse, 0.3)
		assert.Less(t, worst, 1.0)
		if spreads > 0 {
			t.Logf("%s: day-to-day spread, bias %+.2f °C, RMSE %.2f °C", r.station, spreadBias/spreads, math.Sqrt(spreadSquare/spreads))
			assert.Less(t, math.Sqrt(spreadSquare/spreads), 1.0)
		}
	}
}

// Every month of every station keeps its mean.
func TestMonthlyMeansKept(t *testing.T) {
	worst := 0.0
	for _, r := range stations(t) {
		y, err := weather.NewYear(r.normals)
		require.NoError(t, err, r.station)
		d := 0
		for m := range 12 {
			low, high := 0.0, 0.0
			n := unit.DaysIn(2019, m+1)
			for range n {
				low += float64(y.Minimum[d])
				high += float64(y.Maximum[d])
				d++
			}
			worst = math.Max(worst, math.Abs(low/float64(n)-float64(r.normals.Minimum[m])))
			worst = math.Max(worst, math.Abs(high/float64(n)-float64(r.normals.Maximum[m])))
		}
	}
	t.Logf("largest error of a monthly mean over 7,501 stations: %.1e °C", worst)
	assert.Less(t, worst, 1e-10)
}

// Days a year at or below 32 °F and at or above 90 °F (NOAA, as above,
// ann-tmin-avgnds-lsth032 and ann-tmax-avgnds-grth090). Observations are whole
// °F, so "at or below 32" means below 32.5 °F = 0.28 °C. The distribution of the
// error is printed over all 7,501 stations; every twentieth (from the fourth)
// helped to fit the spread, so that the others test it.
func TestYearlyDays(t *testing.T) {
	var frost, hot, testFrost, testHot []float64
	for i, r := range stations(t) {
		y, err := weather.NewYear(r.normals)
		require.NoError(t, err)
		frost = append(frost, y.Frost(0.28).Days-r.cold)
		hot = append(hot, y.HotDays(31.94, 0, 365)-r.hot)
		if i%20 != 3 {
			testFrost, testHot = append(testFrost, frost[i]), append(testHot, hot[i])
		}
	}
	for _, c := range []struct {
		name                 string
		miss                 []float64
		mostBias, mostAbsP90 float64
	}{
		{"at or below 32 °F, all", frost, 1.5, 8}, {"at or below 32 °F, not fitted on", testFrost, 1.5, 8},
		{"at or above 90 °F, all", hot, 1.5, 9}, {"at or above 90 °F, not fitted on", testHot, 1.5, 9},
	} {
		bias, square := 0.0, 0.0
		absolute := make([]float64, len(c.miss))
		for i, m := range c.miss {
			bias += m / float64(len(c.miss))
			square += m * m / float64(len(c.miss))
			absolute[i] = math.Abs(m)
		}
		sort.Float64s(c.miss)
		sort.Float64s(absolute)
		at := func(v []float64, share float64) float64 { return v[int(share*float64(len(v)-1))] }
		t.Logf("days %s, ours minus published, %d stations: bias %+.2f, RMSE %.2f; percentiles 1 %.1f, 5 %.1f, 10 %.1f, 25 %.1f, 50 %.1f, 75 %.1f, 90 %.1f, 95 %.1f, 99 %.1f; |error| 50 %% %.1f, 90 %% %.1f, worst %.1f",
			c.name, len(c.miss), bias, math.Sqrt(square), at(c.miss, .01), at(c.miss, .05), at(c.miss, .1), at(c.miss, .25), at(c.miss, .5), at(c.miss, .75), at(c.miss, .9), at(c.miss, .95), at(c.miss, .99),
			at(absolute, .5), at(absolute, .9), at(absolute, 1))
		assert.Less(t, math.Abs(bias), c.mostBias)
		assert.Less(t, at(absolute, .9), c.mostAbsP90)
	}
}

// Published frost dates: sources in the header of testdata/frost-dates.csv.
func TestFrostDates(t *testing.T) {
	years, cold := map[string]*weather.Year{}, map[string]float64{}
	for _, r := range stations(t) {
		y, err := weather.NewYear(r.normals)
		require.NoError(t, err)
		years[r.station], cold[r.station] = &y, r.cold
	}
	sums := map[string][3]float64{} // n, bias, squares
	for _, line := range readLines(t, "testdata/frost-dates.csv")[1:] {
		v := numbers(t, line[3:])
		y := years[line[0]]
		require.NotNil(t, y, line[0])
		f := y.Frost(unit.FromFahrenheit(v[0] + 0.5)) // whole °F, as above
		dates := f.Spring
		if line[2] == "autumn" {
			dates = f.Autumn
		}
		day := map[float64]int{10: dates.Ten, 50: dates.Fifty, 90: dates.Ninety}[v[1]]
		require.GreaterOrEqual(t, day, 0, "%v", line)
		miss := float64(day - weather.Index(unit.On(2019, int(v[2]), int(v[3]))))
		if miss > 182 {
			miss -= 365
		}
		if miss < -182 {
			miss += 365
		}
		t.Logf("%s %s %s %.0f °F, %.0f %% of years: published %02.0f-%02.0f, ours %s, %+.0f days", line[0], line[1], line[2], v[0], v[1], v[2], v[3], weather.DateOf(2019, day).String()[5:], miss)
		winter := "real winter (30 or more frost days)"
		if cold[line[0]] < 30 {
			winter = "mild winter"
		}
		for _, key := range []string{line[1], line[2], winter} {
			s := sums[key]
			sums[key] = [3]float64{s[0] + 1, s[1] + miss, s[2] + miss*miss}
		}
	}
	for _, key := range []string{"chart", "town", "college", "spring", "autumn", "real winter (30 or more frost days)", "mild winter"} {
		s := sums[key]
		rmse := math.Sqrt(s[2] / s[0])
		t.Logf("%s: %.0f dates, bias %+.1f days, RMSE %.1f days", key, s[0], s[1]/s[0], rmse)
	}
	// Town pages and charts do not name station and years, and disagree among
	// themselves by a week or two, so the check asks for a week and a half. Where
	// winters are mild the chance changes so slowly with the date that the date
	// says little: those rows are printed, and not asserted.
	s := sums["real winter (30 or more frost days)"]
	assert.Less(t, math.Abs(s[1]/s[0]), 4.0)
	assert.Less(t, math.Sqrt(s[2]/s[0]), 10.0)
}
