package weather_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// invented normals: a mild inland place (northern), made for these tests.
func inland() weather.Normals {
	return weather.Normals{
		Minimum:  [12]unit.Celsius{-9, -8, -4, 2, 8, 13, 16, 15, 11, 5, 0, -6},
		Maximum:  [12]unit.Celsius{0, 2, 7, 14, 20, 25, 28, 27, 22, 15, 9, 2},
		Latitude: 42.5, Height: 200,
	}
}

func south(n weather.Normals) weather.Normals {
	out := n
	for m := range 12 {
		out.Minimum[m], out.Maximum[m] = n.Minimum[(m+6)%12], n.Maximum[(m+6)%12]
	}
	out.Latitude = -n.Latitude
	return out
}

func yearOf(t testing.TB, n weather.Normals) *weather.Year {
	t.Helper()
	y, err := weather.NewYear(n)
	require.NoError(t, err)
	return &y
}

func TestBothHemispheres(t *testing.T) {
	north, below := yearOf(t, inland()), yearOf(t, south(inland()))
	a, b := north.Frost(weather.Freezing), below.Frost(weather.Freezing)
	assert.Equal(t, weather.FrostUsual, a.Kind)
	assert.Equal(t, weather.FrostUsual, b.Kind)
	assert.InDelta(t, a.Days, b.Days, 2)
	shift := (b.Spring.Fifty - a.Spring.Fifty + 365) % 365
	assert.InDelta(t, 183, shift, 4, "half a year apart")
	shift = (b.Autumn.Fifty - a.Autumn.Fifty + 365) % 365
	assert.InDelta(t, 183, shift, 4)
	// Order of the dates: in spring the safe day is the latest.
	assert.Greater(t, a.Spring.Ten, a.Spring.Fifty)
	assert.Greater(t, a.Spring.Fifty, a.Spring.Ninety)
	assert.Less(t, a.Autumn.Ten, a.Autumn.Fifty)
	assert.Less(t, a.Autumn.Fifty, a.Autumn.Ninety)
	hard := north.Frost(weather.HardFreeze)
	assert.Less(t, hard.Spring.Fifty, a.Spring.Fifty)
	assert.Less(t, hard.Days, a.Days)
	assert.InDelta(t, 0.1, north.FrostAfter(0, a.Spring.Ten), 0.03)
	assert.InDelta(t, 0.1, north.FrostBefore(0, a.Autumn.Ten), 0.03)
	assert.Equal(t, 1.0, north.FrostBefore(0, 330))
	assert.Zero(t, north.FrostAfter(0, north.Warmest))
}

func TestKindsOfFrostYear(t *testing.T) {
	tropics := weather.Normals{Latitude: 10}
	peak := weather.Normals{Latitude: -5, Height: 5000}
	coast := weather.Normals{Latitude: 38}
	for m := range 12 {
		tropics.Minimum[m], tropics.Maximum[m] = 22, 31
		peak.Minimum[m], peak.Maximum[m] = -4, 6
		coast.Minimum[m] = 11 - unit.Celsius(4*math.Cos(float64(m)*math.Pi/6))
		coast.Maximum[m] = coast.Minimum[m] + 8
	}
	f := yearOf(t, tropics).Frost(0)
	assert.Equal(t, weather.FrostNever, f.Kind)
	assert.Equal(t, weather.FrostDates{-1, -1, -1}, f.Spring)
	assert.Zero(t, f.Days)
	f = yearOf(t, peak).Frost(0)
	assert.Equal(t, weather.FrostAlways, f.Kind)
	assert.Equal(t, weather.FrostDates{-1, -1, -1}, f.Autumn)
	assert.Greater(t, f.Days, 300.0)
	f = yearOf(t, coast).Frost(0)
	assert.Equal(t, weather.FrostSome, f.Kind)
	assert.GreaterOrEqual(t, f.Spring.Ten, 0)
	assert.Equal(t, -1, f.Spring.Ninety)
}

func TestHeightAndSeason(t *testing.T) {
	n := inland()
	high := n.AtHeight(1200)
	assert.InDelta(t, -6.5, float64(high.Minimum[4]-n.Minimum[4]), 1e-12)
	assert.Equal(t, unit.Metres(1200), high.Height)
	y := yearOf(t, n)
	cool, warm := y.In(weather.Cool), y.In(weather.Warm)
	i := weather.Index(unit.On(2027, 5, 1))
	t.Logf("cool or warm year at this place on 1 May: ±%.2f °C", float64(y.SeasonMargin(i)))
	assert.InDelta(t, 1.5, float64(y.SeasonMargin(i)), 0.5, "the figures ask for 1.5 to 2 °C in a continental spring")
	assert.Less(t, cool.Maximum[i], y.Maximum[i])
	assert.Greater(t, warm.Minimum[i], y.Minimum[i])
	assert.Equal(t, *y, y.In(weather.Usual))
	assert.Less(t, y.HotDays(30, 150, 60), warm.HotDays(30, 150, 60))
	// 29 February shares 28 February; dates and indices agree.
	assert.Equal(t, 58, weather.Index(unit.On(2028, 2, 29)))
	for k := range weather.YearDays {
		assert.Equal(t, k, weather.Index(weather.DateOf(2027, k)))
	}
}

func TestInputErrors(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(*weather.Normals)
		says  string
	}{
		{"gap", func(n *weather.Normals) { n.Minimum[3] = unit.Celsius(math.NaN()) }, "April minimum is missing"},
		{"swapped", func(n *weather.Normals) { n.Minimum[6], n.Maximum[6] = n.Maximum[6], n.Minimum[6] }, "July maximum is 16 °C"},
		{"equal", func(n *weather.Normals) { n.Maximum[0] = n.Minimum[0] }, "January maximum"},
		{"hot", func(n *weather.Normals) { n.Maximum[6] = 82 }, "July maximum is 82 °C; allowed is -70 to 55"},
		{"infinite", func(n *weather.Normals) { n.Minimum[0] = unit.Celsius(math.Inf(-1)) }, "January minimum"},
		{"latitude", func(n *weather.Normals) { n.Latitude = 90.5 }, "latitude is 90.5 degrees"},
		{"low", func(n *weather.Normals) { n.Height = -501 }, "height is -501 m; allowed is -500 to 6000"},
		{"high", func(n *weather.Normals) { n.Height = 6001 }, "height"},
		{"jump", func(n *weather.Normals) {
			for m := range 12 {
				n.Minimum[m], n.Maximum[m] = 0, 0.2
			}
			n.Maximum[5] = 39
		}, "neighboring months differ too much"},
	} {
		n := inland()
		c.spoil(&n)
		_, err := weather.NewYear(n)
		var input *weather.InputError
		require.ErrorAs(t, err, &input, c.name)
		assert.Contains(t, err.Error(), c.says)
	}
	_, err := weather.NewYear(weather.Normals{})
	require.Error(t, err, "all zero is not a climate")
	// The ends of the ranges are climates like any other.
	for _, lat := range []unit.Degrees{-90, 90} {
		for _, height := range []unit.Metres{-500, 6000} {
			n := inland()
			n.Latitude, n.Height = lat, height
			_, err := weather.NewYear(n)
			assert.NoError(t, err)
		}
	}
}

func TestYearProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mean := rapid.Float64Range(-25, 28).Draw(t, "mean")
		gap := rapid.Float64Range(4, 18).Draw(t, "range")
		swing := rapid.Float64Range(0, min(25, 53-gap-mean)).Draw(t, "swing")
		peak := rapid.Float64Range(0, 12).Draw(t, "peak")
		var n weather.Normals
		for m := range 12 {
			low := mean + swing*math.Cos((float64(m)-peak)*math.Pi/6) + rapid.Float64Range(-1, 1).Draw(t, "noise")
			n.Minimum[m], n.Maximum[m] = unit.Celsius(low), unit.Celsius(low+gap)
		}
		y, err := weather.NewYear(n)
		if err != nil {
			t.Fatal(err)
		}
		d := 0
		for m := range 12 {
			sum, days := 0.0, unit.DaysIn(2019, m+1)
			for range days {
				sum += float64(y.Minimum[d])
				if y.Maximum[d] <= y.Minimum[d] || y.SpreadMinimum[d] < 1 {
					t.Fatalf("day %d: %v %v", d, y.Minimum[d], y.Maximum[d])
				}
				if step := math.Abs(float64(y.Minimum[d] - y.Minimum[(d+1)%365])); step > 1.2 {
					t.Fatalf("day %d jumps by %v", d, step)
				}
				d++
			}
			if math.Abs(sum/float64(days)-float64(n.Minimum[m])) > 1e-9 {
				t.Fatalf("month %d lost its mean", m)
			}
		}
		mild, hard := y.Frost(weather.Freezing), y.Frost(weather.HardFreeze)
		if hard.Days > mild.Days || hard.Share > mild.Share {
			t.Fatal("harder frost is not rarer")
		}
		previous := 1.0
		for k := range (y.Warmest - y.Coldest + 365) % 365 {
			risk := y.FrostAfter(0, (y.Coldest+k)%365)
			if risk > previous+1e-9 {
				t.Fatalf("risk of a later frost grows towards summer: %v > %v", risk, previous)
			}
			previous = risk
		}
	})
}

func BenchmarkYearAndFrost(b *testing.B) {
	n := inland()
	b.ReportAllocs()
	for range b.N {
		y, err := weather.NewYear(n)
		if err != nil {
			b.Fatal(err)
		}
		y.Frost(weather.Freezing)
	}
}
