package demand

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/unit"
)

// FAO-56 tables 11 and 12. Tomato, planted April or May, Mediterranean;
// watermelon, April, Italy.
var (
	tomato     = Crop{Initial: 0.60, Mid: 1.15, End: 0.80, Stages: [4]unit.Days{30, 40, 45, 30}}
	watermelon = Crop{Initial: 0.40, Mid: 1.00, End: 0.75, Stages: [4]unit.Days{20, 30, 30, 30}}
)

// Penn State Extension, "Determining how long to run drip irrigation systems
// for vegetables" (2013): hours for 1 in on a 30-in strip, gal/h for 100 ft as
// printed.
func TestHoursPennState(t *testing.T) {
	for _, row := range []struct{ gph, hours float64 }{{13.2, 11.8}, {20.4, 7.6}, {30.6, 5.1}, {27, 5.8}, {40.2, 3.9}, {80.4, 1.9}} {
		flow := unit.FromGallonsPerMinutePer100Feet(row.gph / 60)
		assert.InDelta(t, row.hours, float64(HoursFor(25.4, unit.FromInches(30), flow)), 0.051)
	}
}

// Purdue high-tunnel case study (2023): 400 ft of 0.67 gal/min tape, 10 min
// twice a day, is 54 gal a day.
func TestGallonsPurdueTunnel(t *testing.T) {
	flow := unit.FromGallonsPerMinutePer100Feet(0.67)
	litres := float64(flow) / 100 * float64(unit.FromFeet(400)) * 20 / 60
	assert.InDelta(t, 54, litres/unit.LitresPerGallon, 0.5)
	// The same water as a depth on the strip, and back into time.
	strip := unit.FromInches(30)
	depth := unit.Millimetres(litres / float64(strip) / float64(unit.FromFeet(400)))
	assert.InDelta(t, 20.0/60, float64(HoursFor(depth, strip, flow)), 1e-9)
}

// Acre-inch arithmetic ("Irrigation formulas" sheet and exact recomputation):
// 27,154 gal to the acre-inch (bulletins round to 27,000), 0.6234 gal to the
// inch on a square foot, 62.34 gal on 100 ft of 1-ft strip; and a one-inch
// strip of 30 in on 6-ft centres is 11,314 gal to the acre.
func TestAcreInches(t *testing.T) {
	gallons := func(l unit.Litres) float64 { return float64(l) / unit.LitresPerGallon }
	acre := unit.Metres(unit.SquareMetresPerAcre)
	assert.InDelta(t, 27154, gallons(VolumeFor(25.4, 1, acre)), 1)
	assert.InEpsilon(t, 27000, gallons(VolumeFor(25.4, 1, acre)), 0.006)
	assert.InDelta(t, 62.34, gallons(VolumeFor(25.4, unit.FromFeet(1), unit.FromFeet(100))), 0.01)
	assert.InDelta(t, 11314, gallons(VolumeFor(25.4, unit.FromInches(30), unit.FromFeet(7260))), 1)
	// A bed of 25 × 4 ft, 1 in: 62.31 gal (UC Santa Cruz manual, unit 1.5,
	// exercise 3, whose later steps are known-bad: see package drip).
	assert.InDelta(t, 62.31, gallons(VolumeFor(25.4, unit.FromFeet(4), unit.FromFeet(25))), 0.04)
	// 2,004 ft of 0.34 tape for 2 h on 5,600 ft²: 817 gal, 0.23 in (a farm's printed sums).
	assert.InDelta(t, 817, gallons(VolumeFor(0.234*25.4, unit.FromFeet(5600/2004.0), unit.FromFeet(2004))), 2)
	assert.InDelta(t, 2, float64(HoursFor(0.234*25.4, unit.FromFeet(5600/2004.0), unit.FromGallonsPerMinutePer100Feet(0.34))), 0.01)
}

// Purdue Vegetable Crops Hotline, 25 June to 11 July: reference 2.79 in, tomato
// 2.01 in, watermelon 1.60 in, five weeks after planting: coefficients of 0.72
// and 0.57. Ours, over days 35 to 51, disagree: tomato 0.79 on bare ground and
// 0.51 under film (the hotline does not say whether its growers had film), so
// that 0.72 lies between; watermelon 0.87 and 0.61 to 0.65. The page's limits
// print these figures.
func TestPurdueWindows(t *testing.T) {
	mean := func(c Crop, cut unit.Percent) float64 {
		sum := 0.0
		for day := 35; day < 52; day++ {
			k, cover := c.At(day)
			sum += k * (1 - float64(FilmCut{cut, cut}.At(cover))/100)
		}
		return sum / 17
	}
	for _, row := range []struct {
		crop            string
		of              Crop
		cut             unit.Percent
		published, ours float64
	}{
		{"tomato, bare", tomato, 0, 0.72, 0.79}, {"tomato, film", tomato, 35, 0.72, 0.51},
		{"watermelon, bare", watermelon, 0, 0.57, 0.87}, {"watermelon, film", watermelon, 25, 0.57, 0.65}, {"watermelon, film", watermelon, 30, 0.57, 0.61},
	} {
		got := mean(row.of, row.cut)
		t.Logf("%s: Purdue %.2f, ours %.2f", row.crop, row.published, got)
		assert.InDelta(t, row.ours, got, 0.005, "%s: the limits of the page say so", row.crop)
	}
	assert.Greater(t, mean(tomato, 0), 0.72)
	assert.Less(t, mean(tomato, 35), 0.72)
}

// Drip and black film, eddy covariance, Jordan Valley: tomato's mid-season
// coefficient falls from 1.19 by 31 % to 0.82.
func TestTomatoUnderFilmJordanValley(t *testing.T) {
	c := tomato
	c.Mid = 1.19
	k, cover := c.At(90)
	assert.InDelta(t, 0.82, k*(1-float64(FilmCut{31, 40}.At(cover))/100), 0.005)
}

func TestCurve(t *testing.T) {
	for _, row := range []struct {
		day      int
		k, cover float64
	}{{0, 0.60, 0}, {29, 0.60, 0}, {49, 0.60 + 0.55*19.5/40, 19.5 / 40}, {70, 1.15, 1}, {114, 1.15, 1}, {129, 1.15 - 0.35*14.5/30, 1}, {145, 0.80, 1}, {500, 0.80, 1}} {
		k, cover := tomato.At(row.day)
		assert.InDelta(t, row.k, k, 1e-9, "day %d", row.day)
		assert.InDelta(t, row.cover, cover, 1e-9, "day %d", row.day)
	}
	assert.EqualValues(t, 145, tomato.Season())
}

// Stages keep their proportions and add up to the season, for any length.
func TestScaledStagesAddUp(t *testing.T) {
	assert.Equal(t, [4]unit.Days{25, 33, 37, 25}, tomato.Scaled(120).Stages)
	rapid.Check(t, func(t *rapid.T) {
		season := unit.Days(rapid.IntRange(20, 400).Draw(t, "season"))
		scaled := tomato.Scaled(season)
		assert.Equal(t, season, scaled.Season())
		for i := range scaled.Stages {
			assert.InDelta(t, float64(tomato.Stages[i])*float64(season)/145, float64(scaled.Stages[i]), 1)
		}
	})
	assert.Equal(t, tomato, tomato.Scaled(0))
}

// Film never adds to the need, saves most while the plants are small, and the
// range encloses the answer.
func TestFilmSavesMostEarly(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low := rapid.Float64Range(0, 35).Draw(t, "low")
		cut := FilmCut{unit.Percent(low), unit.Percent(rapid.Float64Range(low, 40).Draw(t, "high"))}
		s := Season{Crop: tomato, Cut: cut, Ground: Ground{0.76, 1.83}, PlantOn: unit.On(2027, 5, 1)}
		for m := range s.Reference {
			s.Reference[m] = unit.Millimetres(rapid.Float64Range(0.5, 9).Draw(t, "reference"))
		}
		for day := range 145 {
			d := s.On(day)
			assert.LessOrEqual(t, d.UnderFilm, d.Coefficient)
			assert.LessOrEqual(t, float64(d.UseLow), float64(d.Use)+1e-12)
			assert.LessOrEqual(t, float64(d.Use), float64(d.UseHigh)+1e-12)
			assert.LessOrEqual(t, d.PerMetreBed, d.PerMetre+1e-12)
			assert.LessOrEqual(t, d.PerMetre, d.PerMetreField+1e-12)
		}
		assert.GreaterOrEqual(t, cut.At(0), cut.At(1))
	})
}

// The months hold every day of the season once.
func TestMonthsAddUp(t *testing.T) {
	s := Season{Crop: tomato.Scaled(240), Ground: Ground{0.76, 1.83}, PlantOn: unit.On(2027, 9, 20)}
	for m := range s.Reference {
		s.Reference[m] = unit.Millimetres(m + 1)
	}
	months, peak := s.Months()
	days, litres := unit.Days(0), 0.0
	for _, m := range months {
		days += m.Days
		litres += m.PerMetre * float64(m.Days)
		assert.LessOrEqual(t, m.PerMetre, m.PeakPerMetre*(1+1e-12))
		assert.EqualValues(t, m.Month, m.Reference)
	}
	assert.EqualValues(t, 240, days)
	assert.Equal(t, 2027, months[0].Year)
	assert.Equal(t, 9, months[0].Month)
	assert.Equal(t, 2028, months[len(months)-1].Year)
	sum := 0.0
	for day := range 240 {
		sum += s.On(day).PerMetre
		assert.LessOrEqual(t, s.On(day).PerMetre, peak.PerMetre)
	}
	assert.InEpsilon(t, sum, litres, 1e-9)
}

func TestGross(t *testing.T) {
	// 69 min at 100 % is 77 min at 90 % (recomputed by hand).
	assert.InDelta(t, 77, Gross(69.3, 90, 0), 0.1)
	assert.InDelta(t, 77, Gross(69.3, 90, 8), 0.1, "the loss already leaches")
	assert.InDelta(t, 69.3/0.8, Gross(69.3, 90, 20), 1e-9)
}

// doverNormals are monthly normal minima and maxima in tenths of °F of Dover,
// Delaware (USC00072730, 39.2583°N, 9.1 m): NOAA National Centers for
// Environmental Information, 1981–2010 U.S. Climate Normals.
var doverNormals = [2][12]float64{
	{271, 290, 356, 443, 538, 634, 684, 670, 601, 487, 398, 310},
	{434, 470, 549, 657, 747, 832, 870, 852, 793, 688, 585, 474},
}

func doverReference() (penman, hargreaves [12]unit.Millimetres) {
	for m := range 12 {
		d := sky.DemandOf(sky.Weather{
			Minimum: unit.FromFahrenheit(doverNormals[0][m] / 10), Maximum: unit.FromFahrenheit(doverNormals[1][m] / 10),
			Latitude: 39.2583, Height: 9.1, DayOfYear: unit.On(2027, m+1, 15).DayOfYear(),
		})
		penman[m], hargreaves[m] = d.PenmanMonteith, d.Hargreaves
	}
	return penman, hargreaves
}

// The size of the answer for a mid-Atlantic July, beside two rules of the trade
// that have no source. Rule 1: tape of 0.5 gal/min for 100 ft runs 2–3 h a day
// for maturing vegetables. Rule 2: drip can save up to half the water, here
// against sprinklers of 70 % on bare ground. Purdue's window of late June (2.79
// in over 17 days) is a reference of 4.2 mm a day, in a cooler place.
func TestMidAtlanticJuly(t *testing.T) {
	penman, hargreaves := doverReference()
	assert.InDelta(t, 5, float64(penman[6]), 1.0)
	s := Season{Crop: tomato, Cut: UsualFilmCut, Ground: Ground{unit.FromInches(30), unit.FromFeet(6)}, PlantOn: unit.On(2027, 5, 1), Reference: penman}
	d := s.On(76) // mid-July, mid-season
	hours := func(perMetre float64) float64 {
		return Gross(perMetre, UsualEfficiency, 0) * 100 / float64(unit.FromGallonsPerMinutePer100Feet(0.5))
	}
	t.Logf("reference %.1f mm/day (Hargreaves %.1f); crop %.1f mm/day; 0.5 gal/min for 100 ft: ours %.1f h a day (on the bed top only %.1f h); rule of thumb 2–3 h",
		penman[6], hargreaves[6], d.Use, hours(d.PerMetre), hours(d.PerMetreBed))
	assert.Greater(t, hours(d.PerMetre), 1.5)
	assert.Less(t, hours(d.PerMetre), 3.5)
	assert.Less(t, hours(d.PerMetreBed), 1.5, "the bed-top way of counting falls short of the rule")

	drip, sprinkler := 0.0, 0.0
	for day := range int(tomato.Season()) {
		drip += Gross(s.On(day).PerMetre, UsualEfficiency, 0)
		sprinkler += Gross(s.On(day).Coefficient*float64(s.Ground.Full)*float64(s.On(day).Use)/s.On(day).UnderFilm, 70, 0)
	}
	saved := 1 - drip/sprinkler
	t.Logf("saved over the season against sprinklers of 70 %% on bare ground: ours %.0f %%; claim: up to half", 100*saved)
	assert.Greater(t, saved, 0.25)
	assert.Less(t, saved, 0.60)
}

// Penn State (2013): 1–1.5 in a week on the 30-in bed for maturing crops. Ours
// counted on the bed top, mid-July at Dover, is 1.0–1.5 in a week too; counted
// on the ground drawn on it is more than twice that. The page shows both.
func TestWeeklyRulePennState(t *testing.T) {
	penman, _ := doverReference()
	s := Season{Crop: tomato, Cut: UsualFilmCut, Ground: Ground{unit.FromInches(30), unit.FromFeet(6)}, PlantOn: unit.On(2027, 5, 1), Reference: penman}
	week := 7 * float64(s.On(76).Use) / 25.4
	t.Logf("ours %.2f in a week on the bed top; Penn State 1–1.5", week)
	assert.GreaterOrEqual(t, week, 1.0)
	assert.LessOrEqual(t, week, 1.6)
}
