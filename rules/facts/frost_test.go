package facts

import (
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/internal/long"
	"filmfurrow/rules/field"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// published gives a station's days of frost as a case has them.
func published(s *normals.Station) field.StationFrost {
	dates := func(fifty, ninety int) weather.FrostDates {
		return weather.FrostDates{Ten: (2*fifty - ninety - 1 + 2*weather.YearDays) % weather.YearDays, Fifty: fifty - 1, Ninety: ninety - 1}
	}
	d := s.Frost.Value
	return field.StationFrost{Spring: dates(d.Spring50, d.Spring90), Autumn: dates(d.Autumn50, d.Autumn90),
		Normals: weather.Normals{Minimum: s.Older.Value.Min, Maximum: s.Older.Value.Max, Latitude: s.Latitude, Height: s.Elevation}}
}

func frostStations(t *testing.T) (list []normals.Station) {
	table, err := normals.Embedded()
	require.NoError(t, err)
	for _, s := range table.All() {
		if s.Frost.Given {
			list = append(list, s)
		}
	}
	require.Len(t, list, 5398)
	return list
}

// Our own days of frost against those published of 5,398 stations (US NOAA NCEI,
// 1981–2010 U.S. Climate Normals, 32 °F in half and in nine of ten years). Where winter is
// mild the chance of frost changes so slowly with the day that the day says little. What is
// printed here stands in VALIDATION.md, and the page's limits tell the first row.
func TestOurFrostAgainstEveryStation(t *testing.T) {
	long.Daily(t)
	type tally struct{ n, sum, squares float64 }
	sums := map[string]*tally{}
	none := 0
	for _, s := range frostStations(t) {
		p := published(&s)
		year, err := weather.NewYear(p.Normals)
		require.NoError(t, err)
		ours := year.Frost(weather.Freezing)
		if ours.Spring.Fifty < 0 {
			none++
		}
		winter := "30 or more days of frost"
		if ours.Days < 30 {
			winter = "fewer"
		}
		for what, days := range map[string][2]int{
			"last of spring, half of the years": {p.Spring.Fifty, ours.Spring.Fifty}, "last of spring, nine of ten": {p.Spring.Ninety, ours.Spring.Ninety},
			"first of fall, half of the years": {p.Autumn.Fifty, ours.Autumn.Fifty}, "first of fall, nine of ten": {p.Autumn.Ninety, ours.Autumn.Ninety},
		} {
			if days[1] < 0 {
				continue
			}
			miss := float64(apart(days[0], days[1]))
			for _, key := range []string{what + ", all", what + ", " + winter} {
				if sums[key] == nil {
					sums[key] = &tally{}
				}
				sums[key].n++
				sums[key].sum += miss
				sums[key].squares += miss * miss
			}
		}
	}
	page, err := os.ReadFile("../VALIDATION.md")
	require.NoError(t, err)
	t.Logf("%d stations of which we compute no frost in half of the years", none)
	for key, s := range sums {
		row := strings.ReplaceAll(fmt.Sprintf("| %s | %.0f | %+.1f | %.1f |", key, s.n, s.sum/s.n, math.Sqrt(s.squares/s.n)), "-", "−")
		t.Log(row)
		assert.Contains(t, string(page), row)
	}
	rmse := func(key string) float64 { s := sums[key]; return math.Sqrt(s.squares / s.n) }
	assert.InDelta(t, rmse("last of spring, half of the years, all"), float64(FrostMissed.Spring), 0.5)
	assert.InDelta(t, rmse("first of fall, half of the years, all"), float64(FrostMissed.Fall), 0.5)
}

// frostOf is the frost year of a field that has a station's days.
func frostOf(t *testing.T, p field.StationFrost, n weather.Normals, risk weather.Season) (*weather.Year, *frostYear) {
	year, err := weather.NewYear(n)
	require.NoError(t, err)
	year = year.In(risk)
	miss, err := missOf(p)
	require.NoError(t, err)
	return &year, &frostYear{miss: miss}
}

// At every station that published its days, a field beside the thermometer has them: but
// for those that lie beyond the coldest or the warmest day of the year. The order of the
// days holds whatever the height, the spring and the limit; a frost is the rarer the later
// the day; and a day of one year in ten brings frost after it in one year of ten.
func TestThePublishedFrostIsTheField(t *testing.T) {
	long.Daily(t)
	exact, n := 0, 0
	for i, s := range frostStations(t) {
		p := published(&s)
		y, k := frostOf(t, p, p.Normals, weather.Usual)
		f := k.of(y, weather.Freezing)
		for what, days := range map[string][2]int{"spring": {f.Spring.Fifty, p.Spring.Fifty}, "fall": {f.Autumn.Fifty, p.Autumn.Fifty}, "spring, nine of ten": {f.Spring.Ninety, p.Spring.Ninety}} {
			n++
			if days[0] == days[1] {
				exact++
			} else {
				assert.True(t, days[0] == y.Coldest || days[0] == y.Warmest || after(y.Coldest, p.Spring.Fifty) > after(y.Coldest, y.Warmest), "%s %s: %d for %d", s.Label(), what, days[0], days[1])
			}
		}
		if i%long.Of(40, 14) != 0 {
			continue
		}
		for _, height := range []unit.Metres{-300, 0, 700} {
			for _, risk := range []weather.Season{weather.Cool, weather.Usual, weather.Warm} {
				y, k := frostOf(t, p, p.Normals.AtHeight(p.Normals.Height+height), risk)
				for _, limit := range frostLimits {
					f := k.of(y, limit)
					last := -1
					for _, day := range []int{f.Spring.Ninety, f.Spring.Fifty, f.Spring.Ten} {
						if day >= 0 {
							require.LessOrEqual(t, last, after(y.Coldest, day), "%s %v %+v", s.Label(), limit, f)
							last = after(y.Coldest, day)
							require.LessOrEqual(t, last, after(y.Coldest, y.Warmest), "%s %v %+v", s.Label(), limit, f)
						}
					}
					last = -1
					for _, day := range []int{f.Autumn.Ten, f.Autumn.Fifty, f.Autumn.Ninety} {
						if day >= 0 {
							require.LessOrEqual(t, last, after(y.Warmest, day), "%s %v %+v", s.Label(), limit, f)
							last = after(y.Warmest, day)
							require.LessOrEqual(t, last, after(y.Warmest, y.Coldest), "%s %v %+v", s.Label(), limit, f)
						}
					}
				}
			}
		}
		rarer := 1.0
		for day := 0; day <= after(y.Coldest, y.Warmest); day++ {
			share := k.after(y, weather.Freezing, (y.Coldest+day)%weather.YearDays)
			require.LessOrEqual(t, share, rarer, "%s day %d", s.Label(), day)
			rarer = share
		}
		if inside := after(f.Spring.Ninety, f.Spring.Ten); f.Spring.Ninety >= 0 && f.Spring.Ten != y.Warmest && inside > 20 && inside < 120 && k.both(y, weather.Freezing).ours.Ten >= 0 {
			assert.InDelta(t, 0.1, k.after(y, weather.Freezing, f.Spring.Ten), 0.03, s.Label())
		}
	}
	t.Logf("%d of %d days as published", exact, n)
	assert.Greater(t, float64(exact), 0.97*float64(n))
}

// A field above its station freezes later in spring and earlier in the fall, by as much as
// our own frost year says; one below sooner.
func TestHeightMovesThePublishedFrost(t *testing.T) {
	for i, s := range frostStations(t) {
		if i%50 != 0 {
			continue
		}
		p := published(&s)
		y, k := frostOf(t, p, p.Normals, weather.Usual)
		at := *k.of(y, weather.Freezing)
		if after(y.Coldest, at.Spring.Fifty) < 40 || after(at.Autumn.Fifty, y.Coldest) < 40 || at.Kind != weather.FrostUsual {
			continue
		}
		own := y.Frost(weather.Freezing)
		up, higher := frostOf(t, p, p.Normals.AtHeight(p.Normals.Height+200), weather.Usual)
		above, ownAbove := higher.of(up, weather.Freezing), up.Frost(weather.Freezing)
		assert.Equal(t, apart(own.Spring.Fifty, ownAbove.Spring.Fifty), apart(at.Spring.Fifty, above.Spring.Fifty), s.Label())
		assert.Equal(t, apart(own.Autumn.Fifty, ownAbove.Autumn.Fifty), apart(at.Autumn.Fifty, above.Autumn.Fifty), s.Label())
		assert.Positive(t, apart(at.Spring.Fifty, above.Spring.Fifty), s.Label())
		assert.Negative(t, apart(at.Autumn.Fifty, above.Autumn.Fifty), s.Label())
	}
}

// Days that wrap round the new year keep to their half of it.
func TestDaysNearTheNewYear(t *testing.T) {
	assert.Equal(t, 3, apart(363, 1))
	assert.Equal(t, -3, apart(1, 363))
	assert.Equal(t, 10, within(360, 10, 200), "before the coldest day: on it")
	assert.Equal(t, 200, within(210, 10, 200))
	assert.Equal(t, 364, within(-1, 350, 200))
	assert.Equal(t, 5, within(370, 350, 200))
}
