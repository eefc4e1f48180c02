package rules_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/internal/farms"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// climate makes a case from a simple year: a mean, half the distance from the
// coldest to the warmest month, a daily range, and the month of the warmest.
func climate(latitude, mean, half, daily float64) field.Case {
	c := field.Case{Crop: "bell-pepper", PlantOn: unit.Known(unit.On(2027, 5, 20))}
	c.Place = field.Place{Own: true, HasNormals: true, Latitude: unit.Known(unit.Degrees(latitude)), Elevation: unit.Known(unit.Metres(200))}
	warmest := 6.5
	if latitude < 0 {
		warmest = 0.5
	}
	for m := range 12 {
		t := mean + half*math.Cos(2*math.Pi*(float64(m)-warmest)/12)
		c.Place.TMin[m] = unit.Celsius(math.Round((t-daily/2)*10) / 10)
		c.Place.TMax[m] = unit.Celsius(math.Round((t+daily/2)*10) / 10)
	}
	return c
}

// dug is the soil year of a case, worked out once for all tests.
func dug(t require.TestingT, c field.Case) *facts.SoilYear { return farms.Soil(t, c) }

// The ground is kept by place, soil and bed: what the crop, the day or the water
// change does not dig it anew.
func TestTheGroundIsKeptByPlaceSoilAndBed(t *testing.T) {
	key := facts.KeyOf(climate(42.5, 8, 14, 11))
	for _, change := range []struct {
		name  string
		keeps bool
		to    func(*field.Case)
	}{
		{"crop", true, func(c *field.Case) { c.Crop = "lettuce" }},
		{"planting day", true, func(c *field.Case) { c.PlantOn = unit.Known(unit.On(2027, 8, 1)) }},
		{"flow", true, func(c *field.Case) { c.Water.Flow = unit.Known(unit.LitresPerHour(900)) }},
		{"bed length", true, func(c *field.Case) { c.Field.BedLength = unit.Known(unit.Metres(60)) }},
		{"latitude", false, func(c *field.Case) { c.Place.Latitude = unit.Known(unit.Degrees(41)) }},
		{"height", false, func(c *field.Case) { c.Place.Elevation = unit.Known(unit.Metres(900)) }},
		{"a month", false, func(c *field.Case) { c.Place.TMin[3]-- }},
		{"texture", false, func(c *field.Case) { c.Soil.Texture = "clay" }},
		{"wetness", false, func(c *field.Case) { c.Soil.Wetness = "dry" }},
		{"tilth", false, func(c *field.Case) { c.Soil.Tilth = "cloddy" }},
		{"kind of year", false, func(c *field.Case) { c.Risk = "cool" }},
		{"bed top", false, func(c *field.Case) { c.Field.BedTop = unit.Known(unit.Metres(0.9)) }},
		{"probe", false, func(c *field.Case) { *c = withProbe(*c, 12, unit.On(2027, 5, 10)) }},
	} {
		c := climate(42.5, 8, 14, 11)
		change.to(&c)
		assert.Equal(t, change.keeps, facts.KeyOf(c) == key, change.name)
	}
}

// places are climates that the ground must bear.
var places = []struct {
	name                        string
	latitude, mean, half, daily float64
}{
	{"cool north", 42.5, 8, 14, 11},
	{"cool south", -42.5, 10, 7, 10},
	{"dry and hot", 33, 21, 11, 17},
	{"tropics, never frost", 8, 26.5, 1, 8},
	{"equator", 0, 25, 0.5, 9},
	{"frozen half the year", 60, -1, 17, 11},
	{"never thaws", 70, -16, 12, 8},
	{"polar night and midnight sun", 71.5, -8, 15, 7},
}

// The year is put together from two runs: no day may be missing, and no two
// neighbours, the two seams and the turn of the year included, may differ by
// more than weather can bring about in a mean year.
func TestTheGroundYearHasNoHolesAndNoSteps(t *testing.T) {
	for _, p := range places {
		c := climate(p.latitude, p.mean, p.half, p.daily)
		g := dug(t, c)
		coldest, warmest := math.Inf(1), math.Inf(-1)
		for m := range 12 {
			coldest = math.Min(coldest, float64(c.Place.TMin[m]))
			warmest = math.Max(warmest, float64(c.Place.TMax[m]))
		}
		for cover := range table.FilmCount + 1 {
			for depth := range facts.Depths {
				for day := range weather.YearDays {
					mean, next := g.Mean[cover][depth][day], g.Mean[cover][depth][(day+1)%weather.YearDays]
					most := 0.6
					if g.Mean[facts.Bare][depth][day] < 6 {
						most = 0.7 // ground that freezes, thaws or has just thawed moves faster
					}
					if math.Abs(float64(next-mean)) > most {
						t.Errorf("%s: cover %d, depth %d steps from %v to %v after day %d", p.name, cover, depth, mean, next, day)
					}
					low, high := g.Low[cover][depth][day], g.High[cover][depth][day]
					if low > mean || high < mean {
						t.Errorf("%s: cover %d, depth %d on day %d: %v, mean %v, %v", p.name, cover, depth, day, low, mean, high)
					}
					if g.BandLow[cover][depth][day] >= mean || g.BandHigh[cover][depth][day] <= mean {
						t.Errorf("%s: the band on day %d does not hold the mean", p.name, day)
					}
					if float64(mean) < coldest-1 || float64(mean) > warmest+22 {
						t.Errorf("%s: %v on day %d is not of this climate", p.name, mean, day)
					}
				}
			}
		}
	}
}

// The seams between the two runs cannot be seen: the course across them is that
// to both sides.
func TestTheSeamsOfTheGroundYearAreEven(t *testing.T) {
	g := dug(t, climate(42.5, 8, 14, 11))
	for cover := range table.FilmCount + 1 {
		for depth := range facts.Depths {
			year := &g.Mean[cover][depth]
			for _, seam := range []int{180, 360} {
				across := year[seam] - year[seam-1]
				beside := (year[seam-1] - year[seam-3] + year[seam+2] - year[seam]) / 4
				assert.InDelta(t, beside, across, 0.06, "cover %d, depth %d, day %d", cover, depth, seam)
			}
		}
	}
}

// On a cool sunny spring day the published order of the films holds: clear
// warms most, then infrared-transmitting, then black; all warm the ground.
// White-on-black stays below black in every season.
//
// A year costs a tenth of a second to dig, so a fixed dozen of random climates is
// drawn rather than a hundred.
func TestFilmsKeepTheirOrder(t *testing.T) {
	climates := rapid.Custom(func(t *rapid.T) field.Case {
		c := climate(rapid.Float64Range(30, 55).Draw(t, "latitude"), rapid.Float64Range(4, 16).Draw(t, "mean"),
			rapid.Float64Range(6, 15).Draw(t, "half"), rapid.Float64Range(9, 16).Draw(t, "daily"))
		c.Soil.Texture = table.Soils[rapid.IntRange(0, len(table.Soils)-1).Draw(t, "soil")].ID
		return c
	})
	compared := 0
	for seed := range 12 {
		c := climates.Example(seed)
		g := dug(t, c)
		for depth := range facts.Depths {
			for day := range weather.YearDays {
				at := func(film int) float32 { return g.Mean[film][depth][day] }
				black, bare := at(int(table.Black)), at(facts.Bare)
				require.LessOrEqual(t, at(int(table.WhiteOnBlack)), black, "white-on-black on day %d of %+v", day, c.Place)
				_, month, _ := weather.DateOf(2025, day).Civil()
				if month != 4 && month != 5 || bare < 6 || bare > 20 {
					continue
				}
				clear, selective := at(int(table.Clear)), at(int(table.InfraredTransmitting))
				require.GreaterOrEqual(t, clear, selective, "day %d of %+v", day, c.Place)
				require.GreaterOrEqual(t, selective, black, "day %d of %+v", day, c.Place)
				require.Greater(t, black, bare, "day %d of %+v", day, c.Place)
				compared++
			}
		}
	}
	require.Greater(t, compared, 300)
}

// The southern year is the northern one half a year on.
func TestTheGroundTurnsWithTheHemisphere(t *testing.T) {
	north, south := dug(t, climate(40, 11, 10, 11)), dug(t, climate(-40, 11, 10, 11))
	for day := range weather.YearDays {
		// The sun stands nearer in January: the southern summer gets more of it.
		assert.InDelta(t, north.Mean[table.Black][facts.AtTen][day], south.Mean[table.Black][facts.AtTen][(day+184)%weather.YearDays], 1.6, "day %d", day)
	}
}

func TestNearTheEquatorNothingWaitsForWarmth(t *testing.T) {
	a := advise(t, climate(8, 26.5, 1, 8))
	for film := range table.FilmCount + 1 {
		assert.Less(t, a.Facts.ReachWork[film], unit.Days(0), "film %d", film)
	}
	assert.False(t, a.Facts.WarmingPays)
}

func TestFrozenGroundNeverHoldsAFloor(t *testing.T) {
	a := advise(t, climate(70, -16, 12, 8))
	assert.Equal(t, facts.Never, a.Facts.ReachWork[facts.Bare])
	assert.Equal(t, facts.Never, a.Facts.ReachWork[table.Black])
}

func withProbe(c field.Case, reading unit.Celsius, on unit.Date) field.Case {
	c.Soil.Temperature, c.Soil.MeasuredOn = unit.Known(reading), unit.Known(on)
	c.Soil.MeasuredDepth, c.Soil.MeasuredHour = unit.Known(unit.Metres(0.1)), unit.Known(9.0)
	return c
}

// A reading moves the whole year: by all of the gap on its day, by the lasting
// part of it far away, without a step anywhere.
func TestAProbeReadingMovesTheYear(t *testing.T) {
	c := climate(42.5, 8, 14, 11)
	plain := dug(t, c)
	for _, on := range []unit.Date{unit.On(2027, 5, 10), unit.On(2027, 6, 25), unit.On(2027, 7, 4), unit.On(2027, 12, 24), unit.On(2028, 2, 29)} {
		first := dug(t, withProbe(c, 12, on)).Probe
		require.True(t, first.Given)
		g := dug(t, withProbe(c, first.Expected+3, on))
		require.True(t, g.Probe.Given)
		assert.False(t, g.Probe.Doubtful)
		assert.InDelta(t, 3, float64(g.Probe.Shift), 0.011)
		day := weather.Index(on)
		for cover := range table.FilmCount + 1 {
			for i := range weather.YearDays {
				away := (i - day + weather.YearDays) % weather.YearDays
				moved := g.Mean[cover][facts.AtFive][i] - plain.Mean[cover][facts.AtFive][i]
				want := g.Probe.MoveAfter(min(away, weather.YearDays-away))
				if math.Abs(float64(moved)-float64(want)) > 0.06 { // a reading near a seam bends its join a little
					t.Fatalf("read on %v, day %d, cover %d: moved %v, want %v", on, i, cover, moved, want)
				}
			}
		}
	}
}

func TestAReadingFarOffIsDoubtedAndMovesNothing(t *testing.T) {
	c := climate(42.5, 8, 14, 11)
	plain := dug(t, c)
	expected := dug(t, withProbe(c, 12, unit.On(2027, 5, 10))).Probe.Expected
	g := dug(t, withProbe(c, expected+40, unit.On(2027, 5, 10)))
	assert.True(t, g.Probe.Doubtful)
	assert.InDelta(t, 40, float64(g.Probe.Shift), 0.011)
	assert.Equal(t, plain.Mean, g.Mean)
	a := advise(t, withProbe(c, expected+40, unit.On(2027, 5, 10)))
	said := false
	for _, l := range a.Limits {
		said = said || l.ID == "probe-doubted"
	}
	assert.True(t, said, "the page says that it doubts the reading")
}

func TestPlacesOutOfRangeAreFieldErrors(t *testing.T) {
	for _, bad := range []struct {
		field  string
		change func(*field.Case)
	}{
		{"place.lat", func(c *field.Case) { c.Place.Latitude = unit.Known(unit.Degrees(90)) }},
		{"place.lat", func(c *field.Case) { c.Place.Latitude = unit.Known(unit.Degrees(-90)) }},
		{"place.lat", func(c *field.Case) { c.Place.Latitude = unit.Known(unit.Degrees(math.NaN())) }},
		{"place.elevation_m", func(c *field.Case) { c.Place.Elevation = unit.Known(unit.Metres(-501)) }},
		{"place.elevation_m", func(c *field.Case) { c.Place.Elevation = unit.Known(unit.Metres(6001)) }},
		{"climate.tmax_c", func(c *field.Case) { c.Place.TMin[4] = c.Place.TMax[4] + 2 }},
		{"soil.temperature_c", func(c *field.Case) { *c = withProbe(*c, 75, unit.On(2027, 5, 1)) }},
		{"soil.measured_on", func(c *field.Case) { c.Soil.Temperature = unit.Known(unit.Celsius(12)) }},
	} {
		c := climate(42.5, 8, 14, 11)
		bad.change(&c)
		_, err := rules.Advise(c)
		var errs field.Errors
		require.ErrorAs(t, err, &errs, bad.field)
		assert.Equal(t, bad.field, errs[0].Field)
		assert.NotEmpty(t, errs[0].Allowed)
		assert.NotEmpty(t, errs[0].Mend)
	}
}
