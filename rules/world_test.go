package rules_test

import (
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// errors gathers misses.
type misses struct{ n, sum, squares float64 }

func (m *misses) add(miss float64) { m.n, m.sum, m.squares = m.n+1, m.sum+miss, m.squares+miss*miss }
func (m *misses) bias() float64    { return m.sum / m.n }
func (m *misses) rms() float64     { return math.Sqrt(m.squares / m.n) }

// saidInValidation holds VALIDATION.md to a row that was worked out.
func saidInValidation(t *testing.T, row string) {
	t.Helper()
	page, err := os.ReadFile("VALIDATION.md")
	require.NoError(t, err)
	row = strings.ReplaceAll(row, "-", "−")
	t.Log(row)
	assert.True(t, strings.Contains(string(page), row), "VALIDATION.md must say: %s", row)
}

func everyStation(t *testing.T) *normals.Table {
	t.Helper()
	places, err := normals.Embedded()
	require.NoError(t, err)
	return places
}

func normalsOf(s *normals.Station) weather.Normals {
	return weather.Normals{Minimum: s.Newer.Value.Min, Maximum: s.Newer.Value.Max, Latitude: s.Latitude, Height: s.Elevation, Nights: weather.ColdNights(s.ID)}
}

// publishedTable reads a table of testdata/published; lines that begin with "#" tell of it.
func publishedTable(t *testing.T, name string) [][]string {
	t.Helper()
	file, err := os.Open("../testdata/published/" + name)
	require.NoError(t, err)
	defer file.Close()
	reader := csv.NewReader(file)
	reader.Comment = '#'
	rows, err := reader.ReadAll()
	require.NoError(t, err)
	return rows
}

// Days of frost a year, ours against those counted outside the United States (World
// Meteorological Organization, Climatological Standard Normals 1991–2020; the table tells
// where). The spread was fitted on stations of the United States, and how much wider or
// narrower it is elsewhere on every other of these: on the rest it must beat no difference.
func TestFrostDaysAbroad(t *testing.T) {
	places := everyStation(t)
	rows := publishedTable(t, "world-frost-days.csv")
	var all, some, without, with misses
	for i, row := range rows {
		s := places.ByID(row[0])
		require.NotNil(t, s, row[0])
		counted, err := strconv.ParseFloat(row[1], 64)
		require.NoError(t, err)
		days := func(n weather.Normals) float64 {
			year, err := weather.NewYear(n)
			require.NoError(t, err, s.Label())
			return year.Frost(weather.Freezing).Days
		}
		n := normalsOf(s)
		ours := days(n)
		all.add(ours - counted)
		if i%2 == 1 && counted < 100 {
			with.add(ours - counted)
			n.Nights = 1
			without.add(days(n) - counted)
		}
		if counted > 0 && counted < 100 {
			some.add(ours - counted)
		}
	}
	saidInValidation(t, fmt.Sprintf("| all | %.0f | %+.1f | %.1f |", all.n, all.bias(), all.rms()))
	saidInValidation(t, fmt.Sprintf("| up to 100 days of frost | %.0f | %+.1f | %.1f |", some.n, some.bias(), some.rms()))
	saidInValidation(t, fmt.Sprintf("| the half not fitted, up to 100 days | %.0f | %+.1f | %.1f |", with.n, with.bias(), with.rms()))
	saidInValidation(t, fmt.Sprintf("| the same, were nights as in the United States | %.0f | %+.1f | %.1f |", without.n, without.bias(), without.rms()))
	assert.Less(t, math.Abs(all.bias()), 3.0)
	assert.Less(t, all.rms(), 12.0)
	assert.Less(t, with.rms(), 0.9*without.rms())
}

// What the reference evapotranspiration loses where sun, wind and humidity are estimated
// from the temperatures, as FAO-56 does where they are missing: at the stations that
// measured all three, month by month on the 15th.
func TestWhatTheEstimatesLose(t *testing.T) {
	var all, sun, wind, vapour misses
	usual := 0.0
	for _, s := range everyStation(t).All() {
		if !s.Sun.Given || !s.Wind.Given || !s.Vapour.Given {
			continue
		}
		for m := range 12 {
			day := unit.On(2001, m+1, 15)
			w := sky.Weather{Minimum: s.Newer.Value.Min[m], Maximum: s.Newer.Value.Max[m], Latitude: s.Latitude, Height: s.Elevation, DayOfYear: day.DayOfYear()}
			estimated := w
			w.Sunshine = unit.Known(unit.Hours(s.Sun.Value[m] / float64(unit.DaysIn(2001, m+1))))
			w.Wind = unit.Known(unit.MetresPerSecond(s.Wind.Value[m]))
			w.Actual = unit.Known(min(unit.Kilopascals(s.Vapour.Value[m]), sky.SaturationOfDay(w.Minimum, w.Maximum)))
			measured := float64(sky.DemandOf(w).PenmanMonteith)
			usual += measured
			miss := func(of *misses, w sky.Weather) { of.add(float64(sky.DemandOf(w).PenmanMonteith) - measured) }
			miss(&all, estimated)
			without := w
			without.Sunshine = estimated.Sunshine
			miss(&sun, without)
			without = w
			without.Wind = estimated.Wind
			miss(&wind, without)
			without = w
			without.Actual = estimated.Actual
			miss(&vapour, without)
		}
	}
	require.Greater(t, all.n, 400*12.0)
	t.Logf("%.0f stations, %.2f mm a day on average", all.n/12, usual/all.n)
	for name, of := range map[string]*misses{"all three": &all, "sun": &sun, "wind": &wind, "humidity": &vapour} {
		saidInValidation(t, fmt.Sprintf("| %s | %+.2f | %.2f |", name, of.bias(), of.rms()))
	}
	assert.InDelta(t, all.rms(), float64(facts.EstimateLoses), 0.06, "what the page says")
}

// The measured means drive the need for water; what the grower types wins over them.
func TestMeasuredWeatherDrivesTheDemand(t *testing.T) {
	c := caseAt(t, "W3-87418") // Mendoza, dry
	require.True(t, c.Place.StationVapour.Given, "a station that measured")
	with := advise(t, c).Facts.Peak
	for _, l := range advise(t, c).Limits {
		if l.ID == "sun" {
			assert.Equal(t, "Of sun, wind and humidity, what is not measured is estimated from temperature, as FAO Paper 56 does: wind.", l.Text.In(unit.Metric))
		}
	}
	without := c
	without.Place.StationVapour, without.Place.StationWind, without.Place.StationSun = unit.Optional[[12]float64]{}, unit.Optional[[12]float64]{}, unit.Optional[[12]float64]{}
	assert.NotEqual(t, advise(t, without).Facts.Peak, with)
	typed := c
	typed.Place.Wind = unit.Known([12]float64{5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5, 5})
	assert.Greater(t, advise(t, typed).Facts.Peak, with)
}

// Every part of the year wraps rightly wherever on earth: the planting day is a day that
// season, frost and soil allow; it is a fixed point; sheets and plans are made.
func TestTheWholeEarth(t *testing.T) {
	all := slices.DeleteFunc(everyStation(t).All(), func(s normals.Station) bool {
		return s.Older.Given || s.Latitude < -66 || s.Latitude > 72 || s.Elevation > 5000
	})
	n := long.Of(12, 120)
	crops := []string{"tomato", "broccoli", "sweet-corn", "strawberry", "garlic", "watermelon"}
	for i := range n {
		s := &all[i*(len(all)/n)+i%7]
		c := caseAt(t, s.ID)
		soil, err := facts.NewSoilYear(c)
		require.NoError(t, err, s.Label())
		for k, crop := range crops {
			c.Crop, c.Method = crop, ""
			c.PlantOn = unit.Known(unit.On(2027, 1+(2*k+i)%12, 10))
			f, _ := settled(t, c, soil, nil)
			if f.Opening == facts.NeverOpen {
				continue
			}
			assert.GreaterOrEqual(t, f.Plant, f.Wanted, "%s %s", s.Label(), crop)
			assert.LessOrEqual(t, f.Plant, f.Wanted.Plus(366), "%s %s", s.Label(), crop)
			if f.Opening == facts.OpenWarm && crop != "garlic" {
				film, _, _ := judge.Best(f, question.Film)
				assert.True(t, f.Season.Open(int(film), f.Plant), "%s %s on %v", s.Label(), crop, f.Plant)
			}
			again := c
			again.PlantOn = unit.Known(f.Plant)
			g, _ := settled(t, again, soil, nil)
			assert.Equal(t, f.Plant, g.Plant, "%s %s", s.Label(), crop)
		}
		a, err := rules.AdviseOn(soil, c)
		require.NoError(t, err, s.Label())
		_, err = casefile.EncodeAdvice(&a, nil)
		require.NoError(t, err, s.Label())
	}
}

// Ten places of the earth whose answers were read by eye: south of the line, the tropics,
// 4,000 m, beyond 60° N. What stands in the file is what was read.
func TestTenPlaces(t *testing.T) {
	var b strings.Builder
	for _, at := range []struct {
		place, crop, on string
		lat, lon        float64
	}{
		{"Mendoza, Argentina", "tomato", "2027-10-01", -32.88, -68.83},
		{"Melbourne, Australia", "tomato", "2027-10-20", -37.80, 144.97},
		{"Bethlehem, South Africa", "cabbage", "2027-08-15", -28.23, 28.31},
		{"Bengaluru, India", "bell-pepper", "2027-06-15", 12.97, 77.58},
		{"Chiang Mai, Thailand", "muskmelon", "2027-11-15", 18.79, 98.98},
		{"Enugu, Nigeria", "tomato", "2027-10-15", 6.46, 7.55},
		{"Marcapomacocha, Peru", "broccoli", "2027-10-15", -11.40, -76.33},
		{"Valencia, Spain", "watermelon", "2027-04-10", 39.47, -0.37},
		{"Nagano, Japan", "eggplant", "2027-05-10", 36.65, 138.19},
		{"Oulu, Finland", "broccoli", "2027-05-20", 65.01, 25.47},
	} {
		c, err := casefile.Decode(fmt.Appendf(nil, `{"version":1,"crop":%q,"plant_on":%q,"place":{"lat":%v,"lon":%v},"soil":{"texture":"loam"}}`, at.crop, at.on, at.lat, at.lon), everyStation(t))
		require.NoError(t, err, at.place)
		a := advise(t, c)
		f := a.Facts
		verdict, _ := a.Verdict.Best()
		frost := map[weather.FrostKind]string{weather.FrostNever: "no frost", weather.FrostSome: "frost in some years", weather.FrostAlways: "frost in any month"}[f.FrostKind]
		if f.HasFrostDate {
			frost = "frost until about " + f.SpringFrost.String()[5:]
		}
		film, _ := a.Film.Best()
		fmt.Fprintf(&b, "%s: %s wanted %s. Station %s, %s away, %s high. %s, %s, %s. Lay %v, plant %v; the bed at its depth that day %s, bare %s. Peak need %s a day.\n", at.place, at.crop, at.on,
			c.Place.StationName, unit.Of(unit.Distance(c.Place.StationAway)).In(unit.Metric), unit.Of(c.Place.StationAt).In(unit.Metric), question.Verdict.Key(verdict), frost, table.FilmID(film).Key(),
			a.WaitPlan.LayOn, a.WaitPlan.PlantOn, unit.Of(f.MeanUnder[table.FilmID(film)]).In(unit.Metric), unit.Of(f.MeanUnder[facts.Bare]).In(unit.Metric), unit.Of(f.Peak).In(unit.Metric))
	}
	const file = "../testdata/places.golden.txt"
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(b.String()), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	assert.Equal(t, string(want), b.String())
}

// What growers of nine countries are told is neither refused nor put off: asked for the
// first and the last day that a page of the country names, the tool keeps within two weeks,
// but for three first days that are listed here.
// For the tenth, at 4,447 m, Peru's ministry says that vegetables want a small greenhouse
// from 3,820 m on; there the tool wants covers all season.
func TestTenCountriesPlantWhenTheyAreTold(t *testing.T) {
	rows := publishedTable(t, "world-planting.csv")
	require.Len(t, rows, 9)
	var waits misses
	for _, row := range rows {
		for _, on := range row[4:6] {
			c, err := casefile.Decode(fmt.Appendf(nil, `{"version":1,"crop":%q,"plant_on":"2027-%s","place":{"lat":%s,"lon":%s},"soil":{"texture":"loam"}}`, row[3], on, row[1], row[2]), everyStation(t))
			require.NoError(t, err, row[0])
			a := advise(t, c)
			verdict, _ := a.Verdict.Best()
			moved := a.WaitPlan.PlantOn.Minus(c.PlantOn.Value)
			waits.add(float64(moved))
			film, _ := a.Film.Best()
			t.Logf("%s: %s on %s: %s, %d days later, %s", row[0], row[3], on, question.Verdict.Key(verdict), moved, table.FilmID(film).Key())
			assert.NotEqual(t, question.DoNotLay, verdict, "%s on %s", row[0], on)
			assert.Equal(t, putOffAbroad[row[0]] == on, moved > 14, "%s on %s: %d days later", row[0], on, moved)
		}
	}
	saidInValidation(t, fmt.Sprintf("| planting days named in nine other countries | %.0f | %+.1f | %.1f |", waits.n, waits.bias(), waits.rms()))
}

// putOffAbroad are first days on which the bed is colder than the floors that we work to:
// Gunma lies lower than Nagano.
var putOffAbroad = map[string]string{"Nagano, Japan": "04-21"}

// Where winter is mild, growers do not wait for the bed of a fast spring. The table is the
// one that the rule was made on; Melbourne, Valencia, Phoenix and Maine, elsewhere, were not.
func TestMildWintersPlantSooner(t *testing.T) {
	for _, period := range []string{field.NewerYears, field.OlderYears} {
		var waits misses
		kept := 0
		rows := publishedTable(t, "mild-winter-planting.csv")
		for _, row := range rows {
			c, err := casefile.Decode(fmt.Appendf(nil, `{"version":1,"crop":%q,"plant_on":"2027-%s","place":{"lat":%s,"lon":%s,"period":%q},"soil":{"texture":"sandy-loam"}}`, row[3], row[4], row[1], row[2], period), everyStation(t))
			require.NoError(t, err, row[0])
			a := advise(t, c)
			verdict, _ := a.Verdict.Best()
			assert.NotEqual(t, question.DoNotLay, verdict, row[0])
			moved := a.WaitPlan.PlantOn.Minus(c.PlantOn.Value)
			waits.add(float64(moved))
			last, err := unit.ParseDate("2027-" + row[5])
			require.NoError(t, err)
			if a.WaitPlan.PlantOn <= last {
				kept++
			}
			t.Logf("%s %s: %s on %s: %s, %d days later", period, row[0], row[3], row[4], question.Verdict.Key(verdict), moved)
		}
		assert.Less(t, waits.bias(), 28.0, "four weeks, while ours lies within days of lists where spring is fast")
		saidInValidation(t, fmt.Sprintf("| %s | %.0f | %+.1f | %.1f | %d |", strings.Replace(period, "-", "–", 1), waits.n, waits.bias(), waits.rms(), kept))
	}
}

// Where frost comes in any month no crop is laid without a word of it, hardy ones neither.
func TestFrostInAnyMonthAsksForCare(t *testing.T) {
	c := caseAt(t, "W3-83406") // Peru, 4,447 m
	seen := map[table.Hardiness]bool{}
	for i := range table.Crops {
		for _, month := range []int{2, 7, 10} {
			c.Crop, c.Method, c.PlantOn = table.Crops[i].ID, "", unit.Known(unit.On(2027, month, 15))
			a := advise(t, c)
			verdict, _ := a.Verdict.Best()
			if a.Facts.FrostKind == weather.FrostAlways {
				seen[a.Facts.Crop.Hardiness] = true
				assert.NotEqual(t, question.Lay, verdict, "%s in month %d", c.Crop, month)
			}
		}
	}
	assert.Len(t, seen, 4)
}

// Where no frost ends the season the bed grows too cold: a warm crop set into the fall of a
// mild winter asks for care, one set into Florida's does not.
func TestAMildWinterEndsAWarmCropToo(t *testing.T) {
	for _, at := range []struct {
		place      string
		lat, lon   float64
		month, day int
		care       bool
	}{
		{"Cape Town", -33.97, 18.6, 4, 10, true},
		{"Cape Town", -33.97, 18.6, 10, 20, false},
		{"San Diego", 32.73, -117.18, 11, 1, true},
		{"Immokalee", 26.46, -81.44, 9, 20, false},
		{"Bengaluru", 12.97, 77.58, 10, 1, false},
	} {
		c, err := casefile.Decode(fmt.Appendf(nil, `{"version":1,"crop":"bell-pepper","plant_on":"2027-%02d-%02d","place":{"lat":%v,"lon":%v},"soil":{"texture":"loam"}}`, at.month, at.day, at.lat, at.lon), everyStation(t))
		require.NoError(t, err, at.place)
		a := advise(t, c)
		cold := slices.ContainsFunc(a.Gates, func(g judge.Factor) bool { return g.Rule.ID == "season-too-short" })
		assert.Equal(t, at.care, cold, "%s, %d %d: %v", at.place, at.month, at.day, a.Gates)
	}
}

// Where frost comes in January or not at all, growers set tomatoes through the winter with
// covers at hand (Immokalee, Homestead); where winter is sure, or the bed too cold, they do not.
func TestAMildWintersFrostDoesNotRefuse(t *testing.T) {
	for _, at := range []struct {
		place      string
		lat, lon   float64
		month, day int
		answer     question.Option
	}{
		{"Immokalee", 26.46, -81.44, 11, 10, question.LayWithCare},
		{"Homestead", 25.5, -80.55, 11, 10, question.LayWithCare},
		{"Phoenix", 33.4, -112.0, 11, 10, question.DoNotLay},
		{"Tifton", 31.45, -83.5, 10, 5, question.DoNotLay},
		{"State College", 40.79, -77.87, 8, 20, question.DoNotLay},
	} {
		c, err := casefile.Decode(fmt.Appendf(nil, `{"version":1,"crop":"tomato","plant_on":"2027-%02d-%02d","place":{"lat":%v,"lon":%v},"soil":{"texture":"sand"}}`, at.month, at.day, at.lat, at.lon), everyStation(t))
		require.NoError(t, err, at.place)
		a := advise(t, c)
		verdict, _ := a.Verdict.Best()
		assert.Equal(t, question.Verdict.Key(at.answer), question.Verdict.Key(verdict), "%s: %v", at.place, a.Facts.FrostDays)
	}
}

// Warm crops want a warm month (handbook-1997): growers set tomatoes out in Vermont and
// Montana, not in the fog of San Francisco or at Bogotá, where they stand in tunnels.
func TestAWarmCropWantsAWarmMonth(t *testing.T) {
	for _, at := range []struct {
		crop, place string
		lat, lon    float64
		month, day  int
		cool        bool
	}{
		{"tomato", "Burlington", 44.47, -73.15, 5, 28, false},
		{"tomato", "Missoula", 46.92, -114.09, 6, 1, false},
		{"tomato", "State College", 40.79, -77.87, 5, 20, false},
		{"tomato", "Immokalee", 26.46, -81.44, 9, 20, false},
		{"tomato", "San Francisco", 37.77, -122.43, 5, 10, true},
		{"tomato", "Bogotá", 4.7, -74.1, 3, 10, true},
		{"summer-squash", "Bogotá", 4.7, -74.1, 3, 10, false},
		{"broccoli", "Bogotá", 4.7, -74.1, 3, 10, false},
	} {
		c, err := casefile.Decode(fmt.Appendf(nil, `{"version":1,"crop":%q,"plant_on":"2027-%02d-%02d","place":{"lat":%v,"lon":%v},"soil":{"texture":"loam"}}`, at.crop, at.month, at.day, at.lat, at.lon), everyStation(t))
		require.NoError(t, err, at.place)
		a := advise(t, c)
		cool := slices.ContainsFunc(a.Gates, func(g judge.Factor) bool { return g.Rule.ID == "too-cool-a-summer" })
		assert.Equal(t, at.cool, cool, "%s at %s: the warmest month %v", at.crop, at.place, a.Facts.MonthWarmest)
	}
}

// Cloves go in before the cold, wherever that comes: in spring, on a mild coast or in a
// short summer, they make small bulbs or none; in the fall of Egypt they need not wait for
// December.
func TestClovesWantTheFallEverywhere(t *testing.T) {
	for _, at := range []struct {
		place    string
		lat, lon float64
		month    int
		answer   question.Option
	}{
		{"San Francisco", 37.77, -122.43, 4, question.LayWithCare},
		{"Reykjavik", 64.1, -21.9, 7, question.DoNotLay},
		{"Burlington", 44.47, -73.15, 10, question.Lay},
		{"Cairo", 30.0, 31.2, 11, question.Lay},
	} {
		c, err := casefile.Decode(fmt.Appendf(nil, `{"version":1,"crop":"garlic","plant_on":"2027-%02d-15","place":{"lat":%v,"lon":%v},"soil":{"texture":"loam"}}`, at.month, at.lat, at.lon), everyStation(t))
		require.NoError(t, err, at.place)
		a := advise(t, c)
		verdict, _ := a.Verdict.Best()
		assert.Equal(t, question.Verdict.Key(at.answer), question.Verdict.Key(verdict), at.place)
		assert.LessOrEqual(t, a.Facts.Plant.Minus(c.PlantOn.Value), unit.Days(14), at.place)
	}
}

// A station far above or below the field is told of, with how its temperatures are carried.
func TestTheStationsHeightIsTold(t *testing.T) {
	c := caseAt(t, "W3-87418")
	told := func(c field.Case) (text string) {
		for _, l := range advise(t, c).Limits {
			if l.ID == "station-height" {
				text = l.Text.In(unit.Metric)
			}
		}
		return text
	}
	assert.Empty(t, told(c))
	c.Place.Elevation = unit.Known(c.Place.StationAt + 600)
	assert.Contains(t, told(c), "600 m below your field")
	c.Place.Elevation = unit.Known(c.Place.StationAt - 600)
	assert.Contains(t, told(c), "600 m above your field")
}

// A case of another country reads the same from file, link and the row that a device
// keeps; a table without other countries says nothing of the nearest.
func TestAPlaceAbroadTravels(t *testing.T) {
	places := everyStation(t)
	c := caseAt(t, "W3-87418")
	assert.False(t, c.Place.IsOlder())
	assert.False(t, c.Place.Older.Given || c.Place.StationFrost.Given)
	asked := c
	asked.Place.Period = field.OlderYears
	casefile.Locate(&asked, places)
	assert.Equal(t, c.Place.TMin, asked.Place.TMin, "there is but one period")
	linked, err := casefile.ReadLink(casefile.Link(&c), places)
	require.NoError(t, err)
	assert.Equal(t, c.Place, linked.Place)
	kept, err := normals.Parse(c.Place.StationRow)
	require.NoError(t, err)
	again := field.Case{Place: field.Place{Station: "W3-87418"}}
	casefile.Locate(&again, kept)
	assert.Equal(t, c.Place, again.Place)

	half, err := normals.Parse(normals.Text)
	require.NoError(t, err)
	half.Partial = true
	near := field.Case{Place: field.Place{Latitude: unit.Known(unit.Degrees(43.65)), Longitude: unit.Known(unit.Degrees(-79.38))}}
	casefile.Locate(&near, half)
	assert.False(t, near.Place.HasNormals)
	casefile.Locate(&near, places)
	assert.Contains(t, near.Place.StationName, "Canada")
}
