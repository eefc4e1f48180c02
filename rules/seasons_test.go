package rules_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/internal/long"
	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/judge"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/question"
	"filmfurrow/rules/table"
	"filmfurrow/rules/table/normals"
	"filmfurrow/rules/unit"
)

// stations are spread over the climates of the US table: every n-th row of it, so
// that nobody chose them.
func stations(t testing.TB, n int) []string {
	t.Helper()
	places, err := normals.Embedded()
	require.NoError(t, err)
	all := slices.DeleteFunc(places.All(), func(s normals.Station) bool { return !s.Older.Given })
	step := len(all) / n
	var ids []string
	for i := range n {
		ids = append(ids, all[i*step+step/2].ID)
	}
	return ids
}

func caseAt(t testing.TB, station string) field.Case {
	t.Helper()
	places, err := normals.Embedded()
	require.NoError(t, err)
	c, err := casefile.Decode([]byte(fmt.Sprintf(`{"version":1,"crop":"tomato","plant_on":"2027-05-15","place":{"station":%q}}`, station)), places)
	require.NoError(t, err)
	return c
}

// settled are the facts of a case on its planting day, and the verdict.
func settled(t require.TestingT, c field.Case, soil *facts.SoilYear, before *facts.Facts) (*facts.Facts, question.Option) {
	f := &facts.Facts{}
	require.NoError(t, judge.SettleDry(f, field.Filled(c), soil, before))
	verdict, _, _ := judge.Best(f, question.Verdict)
	return f, verdict
}

// Between the first frost of autumn and the last of spring no tender crop gets a plain
// "lay", whatever day is asked for; nobody waits for a frost that does not come.
func TestNoTenderCropIsLaidForTheWinter(t *testing.T) {
	long.Daily(t)
	places, days := long.Of(5, 28), long.Of(9, 12)
	if long.All() {
		days = 1
	}
	for at, station := range stations(t, places) {
		c := caseAt(t, station)
		soil, err := facts.NewSoilYear(c)
		require.NoError(t, err)
		filled := field.Filled(c)
		year, err := weather.NewYear(filled.Place.Normals())
		require.NoError(t, err)
		frost := year.Frost(weather.Freezing)
		if known := &c.Place.StationFrost; known.Given {
			frost.Spring, frost.Autumn = known.Value.Spring, known.Value.Autumn
		}
		wintry := 0 // days; where frost is rare winter may be a week
		if frost.Spring.Fifty >= 0 && frost.Autumn.Fifty >= 0 {
			wintry = cyclic(frost.Autumn.Fifty, frost.Spring.Fifty)
		}
		for i := range table.Crops {
			crop := &table.Crops[i]
			c.Crop, c.Method = crop.ID, ""
			var before *facts.Facts
			for day := (at + i) % days; day < weather.YearDays; day += days { // the next crop begins a day later
				c.PlantOn = unit.Known(weather.DateOf(2027, day))
				f, verdict := settled(t, c, soil, before)
				before = f.Lending()
				into := cyclic(frost.Autumn.Fifty, day)
				if f.Seeded {
					into += 8 // frost cannot reach seed before it comes up
				}
				winter := into >= 2 && into < wintry-10 // the field’s own days lie within a day or two of the station’s
				if winter && crop.Hardiness >= table.Tender {
					assert.NotEqual(t, question.Lay, verdict, "%s, %s for %v", station, crop.ID, c.PlantOn.Value)
				}
				// Where frost is long past, what is waited for are warmer nights: see Facts.Mild.
				if judge.Waits(f)[question.WaitFrost] > 0 && !f.Mild {
					assert.GreaterOrEqual(t, f.WantedRisk, 0.01, "%s, %s for %v waits for a frost that does not come", station, crop.ID, c.PlantOn.Value)
				}
			}
		}
	}
}

// From midsummer to the first frost no tender crop that frost would cut off before its
// first harvest is laid for, even if it grew as fast as in summer, and only with care where
// winter is mild; and seed that comes up after the warmest day meets no frost of spring.
func TestNoTenderCropIsSetTooLateToBePicked(t *testing.T) {
	long.Daily(t)
	for _, station := range stations(t, long.Of(4, 30)) {
		c := caseAt(t, station)
		soil, err := facts.NewSoilYear(c)
		require.NoError(t, err)
		filled := field.Filled(c)
		year, err := weather.NewYear(filled.Place.Normals())
		require.NoError(t, err)
		refused := 0
		for i := range table.Crops {
			crop := &table.Crops[i]
			if crop.Hardiness < table.Tender {
				continue
			}
			c.Crop, c.Method = crop.ID, ""
			var before *facts.Facts
			for k := -20; k < 150; k += 6 {
				day := (year.Warmest + k + weather.YearDays) % weather.YearDays
				c.PlantOn = unit.Known(weather.DateOf(2027, day))
				f, verdict := settled(t, c, soil, before)
				before = f.Lending()
				if f.Plant == f.Wanted && f.FreeDays < f.CropDays {
					// With fewer than ten days of frost a year growers plant through the winter, covers at hand.
					if f.FrostDays < 10 && verdict == question.LayWithCare {
						continue
					}
					assert.Equal(t, question.DoNotLay, verdict, "%s, %s for %v", station, crop.ID, f.Plant)
					refused++
				}
				if k < 0 && f.Seeded {
					plants := c
					plants.Method = "transplant"
					g, _ := settled(t, plants, soil, nil)
					assert.LessOrEqual(t, f.WantedRisk, g.WantedRisk, "%s, %s sown for %v", station, crop.ID, f.Wanted)
				}
			}
		}
		t.Logf("%s: %d times refused", station, refused)
	}
}

func cyclic(from, to int) int {
	return (to - from + 2*weather.YearDays) % weather.YearDays
}

// The planting day is a fixed point: asking for it moves nothing, and it is the same
// from every earlier day that is moved to it.
func TestThePlantingDayIsAFixedPoint(t *testing.T) {
	list := stations(t, 20)
	rapid.Check(t, func(rt *rapid.T) {
		c := caseAt(t, rapid.SampledFrom(list).Draw(rt, "station"))
		c.Crop = table.Crops[rapid.IntRange(0, len(table.Crops)-1).Draw(rt, "crop")].ID
		c.PlantOn = unit.Known(unit.On(2027, 1, 1).Plus(unit.Days(rapid.IntRange(0, 364).Draw(rt, "day"))))
		soil := dug(t, c)
		f, _ := settled(rt, c, soil, nil)
		if f.Opening == facts.NeverOpen {
			return
		}
		again := c
		again.PlantOn = unit.Known(f.Plant)
		g, _ := settled(rt, again, soil, nil)
		require.Equal(rt, f.Plant, g.Plant, "asked for %v", f.Plant)
		if f.Plant > f.Wanted {
			between := c
			between.PlantOn = unit.Known(f.Wanted.Plus(unit.Days(rapid.IntRange(0, int(f.Plant.Minus(f.Wanted))).Draw(rt, "later"))))
			h, _ := settled(rt, between, soil, nil)
			require.Equal(rt, f.Plant, h.Plant, "asked for %v", between.PlantOn.Value)
		}
	})
}

// A cooler climate never shortens the wait, with the same film on the bed.
func TestACoolerClimateNeverShortensTheWait(t *testing.T) {
	r := rand.New(rand.NewPCG(65, 18))
	between := func(low, high float64) float64 { return low + r.Float64()*(high-low) }
	crops := []string{"tomato", "muskmelon", "broccoli", "snap-bean", "kale", "okra"}
	for range long.Of(40, 200) {
		c := climate(between(28, 48), between(6, 20), between(6, 14), between(8, 15))
		c.Crop = crops[r.IntN(len(crops))]
		c.PlantOn = unit.Known(unit.On(2027, 1+r.IntN(7), 10))
		c.Practice.FilmOptions = 1 << table.Black
		cooler := c
		step := unit.Celsius(between(0.5, 4))
		for m := range 12 {
			cooler.Place.TMin[m] -= step
			cooler.Place.TMax[m] -= step
		}
		warm, err := facts.NewSoilYear(c)
		require.NoError(t, err)
		cool, err := facts.NewSoilYear(cooler)
		require.NoError(t, err)
		f, _ := settled(t, c, warm, nil)
		g, _ := settled(t, cooler, cool, nil)
		if f.Opening == facts.OpenWarm && g.Opening == facts.OpenWarm {
			require.GreaterOrEqual(t, g.Plant, f.Plant, "%s, %v cooler", c.Crop, step)
		}
	}
}
