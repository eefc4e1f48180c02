package heat

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
	"filmfurrow/testdata/soil"
)

// Places like those of the published trials: 1981–2010 normals of a station
// nearby (NOAA National Centers for Environmental Information; public domain).
var places = map[string]weather.Normals{
	// Keene, New Hampshire, USC00274399.
	"New Hampshire": {Minimum: fahrenheit(9.3, 11.7, 20.2, 31.7, 41.9, 51.8, 56.6, 55.3, 47.2, 35.1, 27.2, 16.8), Maximum: fahrenheit(30.8, 35.3, 44.0, 57.8, 69.7, 77.9, 82.5, 80.9, 73.2, 60.7, 47.8, 35.8), Latitude: 42.9389, Height: 155.8},
	// State College, Pennsylvania, USC00368449.
	"Pennsylvania": {Minimum: fahrenheit(20.2, 21.7, 28.2, 39.3, 49.3, 58.7, 62.6, 61.0, 53.1, 42.1, 33.9, 24.8), Maximum: fahrenheit(34.2, 37.5, 46.4, 59.8, 69.7, 77.9, 81.6, 80.2, 72.3, 61.2, 49.8, 38.1), Latitude: 40.7933, Height: 356.6},
	// Isabela Substation, Puerto Rico, RQC00664702.
	"Puerto Rico": {Minimum: fahrenheit(65.8, 66.0, 66.4, 67.8, 70.0, 71.2, 71.7, 72.3, 71.7, 71.1, 69.8, 67.9), Maximum: fahrenheit(82.0, 82.5, 83.4, 84.5, 85.6, 86.9, 87.2, 87.7, 87.6, 86.9, 84.7, 82.8), Latitude: 18.4653, Height: 128.0},
	// Painter, Virginia, USC00446475.
	"Virginia": {Minimum: fahrenheit(30.8, 32.1, 38.0, 46.6, 55.6, 65.1, 69.9, 68.1, 62.0, 51.3, 42.8, 34.2), Maximum: fahrenheit(47.4, 49.8, 57.3, 67.1, 75.3, 83.4, 87.4, 85.3, 79.9, 70.3, 60.6, 50.8), Latitude: 37.5831, Height: 9.1},
	// Tifton, Georgia, USC00098703.
	"Georgia": {Minimum: fahrenheit(36.6, 40.0, 46.1, 52.1, 60.9, 67.7, 70.3, 70.0, 65.1, 54.7, 45.8, 39.3), Maximum: fahrenheit(59.3, 63.5, 70.3, 76.9, 84.4, 89.3, 91.4, 90.4, 86.5, 78.7, 70.0, 61.5), Latitude: 31.4461, Height: 115.8},
	// Beltsville, Maryland, USC00180700.
	"Maryland": {Minimum: fahrenheit(23.7, 26.1, 33.5, 42.5, 52.4, 62.3, 66.9, 65.5, 57.7, 45.1, 36.3, 27.9), Maximum: fahrenheit(42.2, 45.4, 53.8, 64.9, 74.4, 83.6, 87.7, 86.1, 79.0, 67.7, 57.3, 46.0), Latitude: 39.0303, Height: 44.2},
	// Egbert, Ontario, CAW00064757.
	"Ontario": {Minimum: fahrenheit(10.8, 12.6, 20.2, 33.3, 43.4, 53.0, 57.2, 54.9, 47.8, 38.1, 29.6, 18.4), Maximum: fahrenheit(27.0, 30.1, 38.9, 52.9, 66.0, 73.5, 78.9, 77.2, 70.0, 56.9, 43.6, 32.3), Latitude: 44.2325, Height: 246.0},
	// Manhattan, Kansas, USC00144972.
	"Kansas": {Minimum: fahrenheit(17.5, 21.3, 30.3, 41.7, 53.6, 63.0, 68.3, 65.8, 55.8, 43.2, 30.8, 20.0), Maximum: fahrenheit(40.7, 46.6, 57.0, 67.3, 76.7, 86.1, 91.5, 90.2, 81.8, 69.7, 55.4, 42.5), Latitude: 39.1972, Height: 324.6},
	// Davis, California, USC00042294.
	"California": {Minimum: fahrenheit(38.1, 40.8, 43.7, 46.3, 51.5, 55.9, 57.3, 56.1, 54.4, 49.2, 42.5, 37.8), Maximum: fahrenheit(53.9, 60.1, 65.8, 72.5, 81.2, 88.6, 93.4, 92.5, 88.9, 79.1, 64.5, 54.3), Latitude: 38.5350, Height: 18.3},
	// Urbana, Illinois, USC00118740.
	"Illinois": {Minimum: fahrenheit(16.7, 20.2, 30.0, 41.1, 51.6, 61.9, 64.9, 63.1, 54.2, 42.6, 32.0, 21.2), Maximum: fahrenheit(32.9, 37.7, 49.9, 62.8, 73.4, 82.5, 85.0, 83.7, 78.2, 65.2, 50.6, 36.7), Latitude: 40.0839, Height: 219.8},
	// Maricopa, Arizona, USC00025270.
	"Arizona": {Minimum: fahrenheit(36.1, 39.3, 44.0, 50.1, 59.3, 68.1, 76.9, 76.3, 68.0, 54.1, 41.7, 34.8), Maximum: fahrenheit(68.4, 72.4, 79.1, 87.8, 97.5, 106.5, 108.4, 106.3, 101.6, 90.1, 77.0, 67.0), Latitude: 33.1139, Height: 353.6},
}

func mean(t *Track) *[MaxDays]unit.Celsius { return &t.Mean }
func high(t *Track) *[MaxDays]unit.Celsius { return &t.High }

// between gives the carried and the pure difference of two covers, mean over
// the days from one date to another.
func (r *Runner) between(f, other int, depth int, pick func(*Track) *[MaxDays]unit.Celsius, from, to unit.Date) (carried, pure float64) {
	a, b := int(from-r.season.Start), int(to-r.season.Start)
	for d := a; d < b; d++ {
		carried += float64(pick(&r.season.Soil[f][depth])[d]-pick(&r.season.Soil[other][depth])[d]) / float64(b-a)
		pure += float64(pick(&r.pure[f][depth])[d]-pick(&r.pure[other][depth])[d]) / float64(b-a)
	}
	return carried, pure
}

// TestPublishedWarming sets ours beside theirs. Rows with "calibrated" gave the two
// surface constants and the reference effects, so they only show that the carrying
// gives back what went in; the other rows test. They were not blind: that bare
// ground evaporates what its supply allows, and only where no leaf covers it, was
// settled after a fixed resistance had missed rows 1.10, 1.11 and 1.32.
//
// A row outside its range says in disagrees what we make of it and what would make
// it right. By how much it lies outside is a change alarm: the page tells its reader
// the same figures. Rows from memory are printed and never asserted.
func TestPublishedWarming(t *testing.T) {
	crop := func(in Input, planted unit.Date, full unit.Days, most float64) Input {
		in.Canopy = Canopy{planted, full, most}
		return in
	}
	day := func(month, d int) unit.Date { return unit.On(2027, month, d) }
	spring := func(place string, month, days int) *Runner {
		return run(t, UsualLoam(places[place], day(month, 1), unit.Days(days)))
	}
	reference := run(t, newEnglandSpring())
	hampshire, pennsylvania := spring("New Hampshire", 4, 70), spring("Pennsylvania", 4, 70)
	puertoRico := run(t, crop(UsualLoam(places["Puerto Rico"], day(2, 1), 90), day(2, 5), 60, 0.7))
	virginia := run(t, crop(UsualLoam(places["Virginia"], day(4, 25), 110), day(5, 5), 60, 0.8))
	georgia := run(t, crop(UsualLoam(places["Georgia"], day(3, 10), 100), day(3, 20), 70, 0.7))
	for _, row := range []struct {
		id, what   string
		run        *Runner
		film       int
		depth      int
		pick       func(*Track) *[MaxDays]unit.Celsius
		from, to   unit.Date
		low, high  float64 // K
		calibrated bool
		memory     bool
		by         float64 // K outside, as the page's limits say
		disagrees  string
	}{
		{"1.1", "black, New England spring: +3 to +5 °F", reference, Black, 0, mean, day(4, 15), day(6, 1), 1.67, 2.78, true, false, 0, ""},
		{"1.2", "clear, same: +8 to +14 °F", reference, Clear, 0, mean, day(4, 15), day(6, 1), 4.44, 7.78, true, false, 0, ""},
		{"1.3", "white-on-black, same: −2 °F (printed without a range; half a degree F each way)", reference, WhiteOnBlack, 0, mean, day(4, 15), day(6, 1), -1.39, -0.83, true, false, 0, ""},
		{"1.5", "infrared-transmitting, same: +4 to +6 °F", reference, InfraredTransmitting, 0, mean, day(4, 15), day(6, 1), 2.22, 3.33, true, false, 0, ""},
		{"1.1", "black, another New England place", hampshire, Black, 0, mean, day(4, 15), day(6, 1), 1.67, 2.78, false, false, 0, ""},
		{"1.2", "clear, another New England place", hampshire, Clear, 0, mean, day(4, 15), day(6, 1), 4.44, 7.78, false, false, 0, ""},
		{"1.3", "white-on-black, another New England place", hampshire, WhiteOnBlack, 0, mean, day(4, 15), day(6, 1), -1.39, -0.83, false, false, 0.5, "a valley with wide temperature ranges, which we take for a drier climate. Right with rain or humidity of the place"},
		{"1.5", "infrared-transmitting, another New England place", hampshire, InfraredTransmitting, 0, mean, day(4, 15), day(6, 1), 2.22, 3.33, false, false, 0, ""},
		{"1.4", "silver-on-black, New England: −2 °F", reference, SilverOnBlack, 0, mean, day(4, 15), day(6, 1), -1.39, -0.83, false, false, 0.81, "sources disagree on silver (1.14 and 1.17 find it warm); we show the middle and the whole range. Right with optics of the very film"},
		{"1.6", "black, Pennsylvania: up to +5 °F at 2 in", pennsylvania, Black, 0, high, day(5, 1), day(6, 1), 0, 2.78, false, false, 0.09, "we compare daily highests; the text does not say the hour. Right with its hour"},
		{"1.6", "black, same: up to +3 °F at 4 in", pennsylvania, Black, 1, high, day(5, 1), day(6, 1), 0, 1.67, false, false, 0.06, "as above"},
		{"1.7", "clear, daytime, 2 in: +8 to +14 °F", pennsylvania, Clear, 0, high, day(5, 1), day(6, 1), 4.44, 7.78, false, true, 0, ""},
		{"1.7", "clear, daytime, 4 in: +6 to +9 °F", pennsylvania, Clear, 1, high, day(5, 1), day(6, 1), 3.33, 5, false, true, 0, ""},
		{"1.8", "white, daytime, 4 in: −0.7 °F", pennsylvania, WhiteOnBlack, 1, high, day(5, 1), day(6, 1), -0.7, -0.1, false, true, 0, ""},
		{"1.10", "black, Puerto Rico, February planting, 2 in: +1 °F", puertoRico, Black, 0, mean, day(2, 5), day(4, 30), 0.28, 0.83, false, false, 1.16, "we run the default 2 m/s of wind in a trade-wind climate, and the trial’s crop and bed are not known. Right with its wind and crop"},
		{"1.10", "black, same, 4 in: +1 °F", puertoRico, Black, 1, mean, day(2, 5), day(4, 30), 0.28, 0.83, false, false, 0.37, "as above"},
		{"1.11", "black, Virginia farms, tomato: +1 to +2 °C", virginia, Black, 0, mean, day(5, 5), day(8, 1), 1, 2, false, false, 0, ""},
		{"1.11", "black, same, at 4 in (the abstract gives no depth)", virginia, Black, 1, mean, day(5, 5), day(8, 1), 1, 2, false, false, 0.21, "short if the trial read at 4 in. Right with its depth"},
		{"1.12", "paper, same, afternoon: slightly below bare", virginia, Paper, 0, high, day(5, 5), day(8, 1), -2, 0, false, false, 0, ""},
		{"1.14", "black, tomato, 2010, site not seen: +3 to +6 °C", virginia, Black, 0, mean, day(5, 5), day(6, 1), 3, 6, false, false, 0.51, "site not seen; warmer than rows 1.1 and 1.11 allow. Right with the climate of its site"},
		{"1.14", "clear, same", virginia, Clear, 0, mean, day(5, 5), day(6, 1), 3, 6, false, false, 0, ""},
		{"1.14", "red, same", virginia, Red, 0, mean, day(5, 5), day(6, 1), 3, 6, false, false, 0.51, "site not seen; warmer than rows 1.1 and 1.11 allow. Right with the climate of its site"},
		{"1.14", "blue, same", virginia, Blue, 0, mean, day(5, 5), day(6, 1), 3, 6, false, false, 0.51, "site not seen; warmer than rows 1.1 and 1.11 allow. Right with the climate of its site"},
		{"1.14", "silver-on-black, same", virginia, SilverOnBlack, 0, mean, day(5, 5), day(6, 1), 3, 6, false, false, 2.51, "against 1.4. Right with optics of the very film"},
		{"1.18", "black, Georgia, midday: up to +4 °C over bare", georgia, Black, 0, high, day(3, 20), day(6, 10), 0, 4, false, false, 0, ""},
	} {
		carried, pure := row.run.between(row.film, Bare, row.depth, row.pick, row.from, row.to)
		miss := math.Max(0, math.Max(row.low-carried, carried-row.high))
		inside := miss < 0.005
		verdict := "inside"
		if !inside {
			verdict = "outside by " + strconv.FormatFloat(miss, 'f', 2, 64) + " K"
		}
		note := row.disagrees
		switch {
		case row.memory:
			note = "from memory, not asserted"
		case row.calibrated:
			note = "calibrated on"
		}
		t.Logf("%-4s %-62s theirs %+.2f to %+.2f, ours %+.2f (pure physics %+.2f) K: %s. %s", row.id, row.what, row.low, row.high, carried, pure, verdict, note)
		if !row.memory {
			assert.Equal(t, row.disagrees == "", inside, "%s %s: ours %.2f", row.id, row.what, carried)
			assert.InDelta(t, row.by, miss, 0.01, "change alarm, not a truth: %s %s: say so in warmthLimits of package rules too", row.id, row.what)
		}
	}
}

// illinois: see TestBareSoilInIllinois.
var illinois = [...]struct {
	on         unit.Date
	fahrenheit float64
}{{unit.On(2027, 4, 15), 54}, {unit.On(2027, 5, 16), 61}, {unit.On(2027, 6, 15), 73.6}, {unit.On(2027, 7, 8), 78}, {unit.On(2027, 7, 15), 77.8}}

// Bare soil at 4 in over Illinois: long-term averages that the Illinois State
// Water Survey gives in its notices of 19 stations (a reading and how far it lay
// above or below the average): 15 April 54 °F (notices of 2022, 2023 and 2024:
// 55, 54, 53), 16 May 61 (2021), 15 June 73.6 (2016), the first half of July 78
// (2018), 15 July 77.8 (blog of the same office). Calibrated on.
func TestBareSoilInIllinois(t *testing.T) {
	in := UsualLoam(places["Illinois"], unit.On(2027, 4, 1), 120)
	in.BedHeight, in.Soil = 0, SoilOf("silt-loam")
	r := run(t, in)
	square := 0.0
	for _, row := range illinois {
		ours := float64(r.season.Soil[Bare][TenCentimetres].Mean[row.on-in.Start])
		theirs := float64(unit.FromFahrenheit(row.fahrenheit))
		square += (ours - theirs) * (ours - theirs)
		t.Logf("bare soil, 10 cm, Illinois, %s: theirs %.1f, ours %.1f °C (%+.1f)", row.on, theirs, ours, ours-theirs)
	}
	assert.Less(t, math.Sqrt(square/float64(len(illinois))), 1.2)
}

// Georgia, row 1.19: daily mean root zone 1–5 °C above the air under all films;
// 20 → 29 °C over the spring, 32 → 24 °C over the autumn; bare ground swings
// most, highest under black, lowest under bare and white (J. Amer. Soc. Hort.
// Sci. 127(1):127, 2002).
func TestGeorgiaRootZone(t *testing.T) {
	day := func(month, d int) unit.Date { return unit.On(2027, month, d) }
	spring := UsualLoam(places["Georgia"], day(3, 10), 100)
	spring.Soil, spring.Canopy = SoilOf("loamy-sand"), Canopy{day(3, 25), 60, 0.7}
	autumn := UsualLoam(places["Georgia"], day(7, 25), 110)
	autumn.Soil, autumn.Canopy = SoilOf("loamy-sand"), Canopy{day(8, 5), 60, 0.7}
	r, a := run(t, spring), run(t, autumn)
	at := func(r *Runner, f int, date unit.Date) float64 {
		return float64(r.season.Soil[f][TenCentimetres].Mean[date-r.season.Start])
	}
	air := func(r *Runner, date unit.Date) float64 {
		d := date - r.season.Start
		return float64(r.season.Air.Low[d]+r.season.Air.High[d]) / 2
	}
	inside, all := 0, 0
	for _, f := range []int{Black, WhiteOnBlack, SilverOnBlack, Red, Blue} {
		for _, c := range []struct {
			r  *Runner
			on unit.Date
		}{{r, day(4, 1)}, {r, day(5, 1)}, {r, day(6, 1)}, {a, day(8, 15)}, {a, day(9, 15)}, {a, day(10, 15)}} {
			over := at(c.r, f, c.on) - air(c.r, c.on)
			all++
			if over >= 1 && over <= 5 {
				inside++
			}
			t.Logf("1.19 %-16s %s: %.1f °C, %+.1f K over the air (theirs +1 to +5)", NameOf(f), c.on, at(c.r, f, c.on), over)
		}
	}
	t.Logf("1.19: %d of %d figures inside +1 to +5 K", inside, all)
	// The abstract does not date the seasons' ends; ours are a guess, and a week
	// moves them by 1 K.
	t.Logf("1.19 path under black: spring %.1f → %.1f °C (theirs 20 → 29), autumn %.1f → %.1f °C (theirs 32 → 24)",
		at(r, Black, day(4, 1)), at(r, Black, day(6, 10)), at(a, Black, day(8, 10)), at(a, Black, day(10, 20)))
	assert.InDelta(t, 20, at(r, Black, day(4, 1)), 4)
	assert.InDelta(t, 29, at(r, Black, day(6, 10)), 4)
	assert.InDelta(t, 32, at(a, Black, day(8, 10)), 4)
	assert.InDelta(t, 24, at(a, Black, day(10, 20)), 4)
	assert.Equal(t, 30, all)
	assert.Equal(t, 22, inside, "change alarm, right with 30: say so in warmthLimits of package rules too")
}

// Warmer bare ground, smaller effect (row 1.32; HortTechnology 25(2):162, 2015,
// Ontario, four months: negative correlation for clear, black and
// white-on-black). In the usual year on open ground ours is negative for black
// and white; for clear it is not, and a growing crop, which cools bare ground and
// film together, leaves nothing of it under black: two disagreements, printed.
// The cause is that a usual year has no weather: see the next test.
func TestEffectFallsAsBareGroundWarms(t *testing.T) {
	in := UsualLoam(places["Ontario"], unit.On(2027, 5, 25), 125)
	open := run(t, in)
	in.Canopy = Canopy{unit.On(2027, 6, 1), 60, 0.7}
	grown := run(t, in)
	for _, f := range []int{Clear, Black, WhiteOnBlack} {
		with, without := correlate(grown.season.Soil, f), correlate(open.season.Soil, f)
		t.Logf("1.32 %s: in a usual year correlation of effect and bare ground %+.2f on open ground, %+.2f with a crop (theirs negative)", NameOf(f), without, with)
		if f != Clear {
			assert.Less(t, without, 0.0, "%s", NameOf(f))
		}
	}
}

// In real weather the sign is the published one. The same bed is driven, from
// late May for four months, by the minima and maxima of 2020 at 60 stations
// of the soil test instead of their smooth course: no constant was fitted to
// that, and nothing else is put in. Spells that warm bare ground warm and dry
// its skin, and every film gains less on it.
func TestEffectFallsInRealWeather(t *testing.T) {
	films := []int{Clear, InfraredTransmitting, Black, WhiteOnBlack}
	var pure, carried [Films]float64
	var negative, negativeCarried [Films]int
	all := soil.Stations()
	for _, p := range all {
		n := weather.Normals{Latitude: p.Of2020.Latitude, Height: p.Of2020.Height}
		for m := range 12 {
			n.Minimum[m], n.Maximum[m] = 5, 15 // replaced below, day by day
		}
		in := UsualLoam(n, unit.On(2027, 5, 25), 125)
		in.Lie = Embossed
		r, err := NewRunner(in, referenced)
		require.NoError(t, err)
		for d := range weather.YearDays {
			i := d
			if d >= 59 {
				i++ // 29 February 2020
			}
			r.year.Minimum[d], r.year.Maximum[d] = unit.Celsius(p.Minimum[i]), unit.Celsius(p.Maximum[i])
		}
		for !r.Step(100) {
		}
		for _, f := range films {
			c, k := correlate(r.pure, f), correlate(r.season.Soil, f)
			pure[f] += c / float64(len(all))
			carried[f] += k / float64(len(all))
			if c < 0 {
				negative[f]++
			}
			if k < 0 {
				negativeCarried[f]++
			}
		}
	}
	for _, f := range films {
		t.Logf("1.32 %s: in real weather mean correlation %+.2f, negative at %d of 60 stations, by physics; %+.2f and %d, carried (theirs negative)",
			NameOf(f), pure[f], negative[f], carried[f], negativeCarried[f])
		assert.Less(t, pure[f], -0.2)
		assert.Less(t, carried[f], -0.25)
		assert.GreaterOrEqual(t, negative[f], 50)
		assert.GreaterOrEqual(t, negativeCarried[f], 50)
	}
	assert.Equal(t, 58, negativeCarried[Clear], "change alarm, right with 60: say so in warmthLimits of package rules too")
}

func correlate(soil [][Depths]Track, f int) float64 {
	var x, y []float64
	for d := 7; d < 125; d++ {
		b := float64(soil[Bare][0].Mean[d])
		x, y = append(x, b), append(y, float64(soil[f][0].Mean[d])-b)
	}
	return correlated(x, y)
}

// correlated is Pearson's coefficient.
func correlated(x, y []float64) float64 {
	var sx, sy, xx, yy, xy float64
	for i := range x {
		sx, sy, xx, yy, xy = sx+x[i], sy+y[i], xx+x[i]*x[i], yy+y[i]*y[i], xy+x[i]*y[i]
	}
	n := float64(len(x))
	return (xy - sx*sy/n) / math.Sqrt((xx-sx*sx/n)*(yy-sy*sy/n))
}

// extremes gives the hours of the lowest and highest at 10 and 15 cm under a
// cover, on the fortieth day of a season.
func extremes(t assert.TestingT, in Input, f int) (hour [2][2]float64) {
	depths := append([]float64{}, nodeDepths[:]...)
	depths[6] = 0.15
	way := usualRun
	way.depths = depths
	r, err := newRunner(in, referenced, way)
	assert.NoError(t, err)
	r.Step(spinUp + 40)
	air := r.airDay(in.Start.Plus(40))
	hours := r.hours[:r.steps]
	r.place.day(&air, hours)
	r.open = bare{albedo: r.albedo, resistance: r.resistance}
	c := r.columns[f]
	var v cover
	if f != Bare {
		v = newCover(referenced.list[f-1].Optics, r.albedo, in.gap(air.maximum), r.wetness)
	}
	extreme := [2][2]float64{{99, -99}, {99, -99}}
	for k := range hours {
		c.advance(&r.ground, func(coefficient, rest float64) (t, flux float64) {
			if f == Bare {
				return r.open.balance(&hours[k], coefficient, rest, r.ground.theta, c.temperature[0])
			}
			c.film, t, flux = v.balance(&hours[k], coefficient, rest, r.ground.theta, c.film, c.temperature[0])
			return t, flux
		})
		now := float64(k+1) * 24 / float64(r.steps)
		for i, node := range []int{r.ground.ten, 6} {
			v := c.temperature[node]
			if v < extreme[i][0] {
				extreme[i][0], hour[i][0] = v, now
			}
			if v > extreme[i][1] {
				extreme[i][1], hour[i][1] = v, now
			}
		}
	}
	return hour
}

// At 10 cm the lowest falls most often at 07:00 and the highest at 16:00, about
// an hour later at 15 cm, under any film in spring (row 1.36; World Vegetable
// Center, record 397).
func TestHourOfExtremes(t *testing.T) {
	for _, f := range []int{Bare, Black, Clear} {
		hour := extremes(t, newEnglandSpring(), f)
		t.Logf("1.36 %-6s 10 cm: lowest %.1f h, highest %.1f h solar (theirs 7 and 16); 15 cm: %.1f and %.1f h", NameOf(f), hour[0][0], hour[0][1], hour[1][0], hour[1][1])
		// "Most often" in the source allows an hour either way, and its clock is
		// not the sun's: half an hour more.
		assert.InDelta(t, 7, hour[0][0], 1.5)
		assert.InDelta(t, 16, hour[0][1], 1.5)
		assert.Greater(t, hour[1][1], hour[0][1], "later with depth")
		assert.GreaterOrEqual(t, hour[1][0], hour[0][0])
	}
}

// In any climate and soil the day's highest comes later the deeper one reads.
func TestPeakComesLaterWithDepth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		level, swing, span := rapid.Float64Range(4, 24).Draw(t, "mean"), rapid.Float64Range(2, 16).Draw(t, "swing"), rapid.Float64Range(7, 17).Draw(t, "range")
		n := weather.Normals{Latitude: unit.Degrees(rapid.Float64Range(-50, 50).Draw(t, "latitude"))}
		for m := range 12 {
			low := level - span/2 - swing*math.Cos(float64(m)*math.Pi/6)
			n.Minimum[m], n.Maximum[m] = unit.Celsius(low), unit.Celsius(low+span)
		}
		in := UsualLoam(n, unit.On(2027, 5, 1), 41)
		in.Soil = AnySoil(rapid.IntRange(0, len(table.Soils)-1).Draw(t, "texture"))
		hour := extremes(t, in, rapid.IntRange(0, Films-1).Draw(t, "film"))
		if hour[1][1] <= hour[0][1] {
			t.Fatalf("highest at %v h at 10 cm and at %v h at 15 cm", hour[0][1], hour[1][1])
		}
	})
}

// Damping with depth by the physics alone, before the published share is put in.
// Row 1.22: black against residue, the daily highest 5.7 K warmer at 5 cm and 3.4 K
// at 15 cm, so 0.60 is left over 10 cm (J. Amer. Soc. Hort. Sci. 120(5):848, 1995).
// Ours, black against bare ground, keeps nearly all of the day's mean, as heat that
// lasts must, and loses of the highest what a daily wave loses. The page's effect at
// 10 cm is the published share, so that a reader may see less than the physics asks
// for.
func TestEffectFallsWithDepth(t *testing.T) {
	r := run(t, UsualLoam(places["Maryland"], unit.On(2027, 5, 1), 45))
	from, to := unit.On(2027, 5, 10), unit.On(2027, 6, 10)
	for _, f := range []int{Black, Clear} {
		_, meanFive := r.between(f, Bare, FiveCentimetres, mean, from, to)
		_, meanTen := r.between(f, Bare, TenCentimetres, mean, from, to)
		_, highFive := r.between(f, Bare, FiveCentimetres, high, from, to)
		_, highTen := r.between(f, Bare, TenCentimetres, high, from, to)
		t.Logf("1.22 %s, Maryland, physics alone: 10 cm keeps %.2f of the mean's and %.2f of the highest's effect at 5 cm", NameOf(f), meanTen/meanFive, highTen/highFive)
		assert.Less(t, meanTen, meanFive, "the effect falls with depth")
		assert.Greater(t, meanTen, 0.9*meanFive, "what lasts for weeks goes down")
		if f == Clear {
			// Black warms the highest by lifting the mean; it calms the daily wave.
			assert.Less(t, highTen, highFive)
		}
	}
}

// White-on-black cools the ground by some 2 °F in the New England table, half a
// degree F to a degree each way: 0.6 to 1.7 K. So it should in summer in the sun: in
// the mean of six places in a usual month, which has its clouds; and with that range
// between the usual month and one without any cloud, at every place.
func TestWhiteCoolsInSummer(t *testing.T) {
	all := [...]string{"Maryland", "Kansas", "Illinois", "Pennsylvania", "Virginia", "Georgia"}
	average := 0.0
	for _, place := range all {
		usual := UsualLoam(places[place], unit.On(2027, 6, 1), 75)
		sunny := usual
		sunny.SunFactor = 0.25 // clear from morning to evening
		from, to := unit.On(2027, 6, 15), unit.On(2027, 8, 10)
		clouds, _ := run(t, usual).between(WhiteOnBlack, Bare, FiveCentimetres, mean, from, to)
		sun, pure := run(t, sunny).between(WhiteOnBlack, Bare, FiveCentimetres, mean, from, to)
		t.Logf("white-on-black, 15 June to 10 August, %s: in full sun %+.2f K (pure physics %+.2f), in usual months %+.2f (theirs −1.7 to −0.6)", place, sun, pure, clouds)
		assert.Less(t, sun, -0.6)
		assert.Greater(t, clouds, -1.7)
		assert.Less(t, clouds, 0.0, "it cools")
		average += clouds / float64(len(all))
	}
	t.Logf("mean of usual months %+.2f K", average)
	assert.InDelta(t, -1.15, average, 0.56)
}

// Highests under clear film rise with the soil's moisture, in sand and in light
// clay (row 1.34; Soil Sci. Soc. Am. J. 48(2):362, 1984). Ours fall, although the
// film loses its drops on dry ground: less water distils from the soil to the
// film, and dry ground keeps the heat near its top. A disagreement, printed. The
// effect, of the day's mean above bare ground, does rise with moisture (see
// TestWhatChangesTheEffect).
func TestMoistGroundUnderClear(t *testing.T) {
	for texture, today := range map[string]float64{"loamy-sand": 2.5, "clay-loam": 3.0} {
		var highest [moistures]float64
		for m := range moistures {
			in := UsualLoam(places["California"], unit.On(2027, 6, 1), 61)
			in.Soil, in.Moisture, in.Lie = SoilOf(texture), m, Embossed
			r := run(t, in)
			for d := 30; d < 61; d++ {
				highest[m] += float64(r.pure[Clear][FiveCentimetres].High[d]) / 31
			}
		}
		t.Logf("1.34 clear, July, California, %s, mean daily highest at 5 cm: dry %.1f, moist %.1f, wet %.1f °C (theirs rising)", texture, highest[Dry], highest[Moist], highest[Wet])
		assert.InDelta(t, today, highest[Dry]-highest[Moist], 0.1, "change alarm, right below 0 (with drops that go as the bed dries, hour by hour): say so in warmthLimits of package rules too")
	}
}

// Film surfaces: the most absorbing films reach 70–80 °C at midday in a Kansas
// summer (J. Amer. Soc. Hort. Sci. 118(2):188, 1993); black passes 60 °C (140 °F)
// under a clear sky above 90 °F (University of Delaware, Weekly Crop Update).
func TestFilmSurface(t *testing.T) {
	r := run(t, UsualLoam(places["Kansas"], unit.On(2027, 5, 1), 110))
	july := int(unit.On(2027, 7, 15) - r.season.Start)
	s := r.season.Surface
	for f := range Films {
		t.Logf("film surface, clear hot hour, Kansas, 15 July: %-22s %.1f °C", NameOf(f), s[f][july])
	}
	t.Logf("air that hour %.1f °C", float64(r.season.Air.High[july])+1.2816*float64(r.year.SpreadMaximum[weather.Index(unit.On(2027, 7, 15))]))
	assert.Greater(t, s[Black][july], unit.Celsius(70))
	assert.Less(t, s[Black][july], unit.Celsius(85))
	assert.Less(t, s[WhiteOnBlack][july], s[Black][july]-10)
	for d := range r.season.Days {
		air := float64(r.season.Air.High[d]) + 1.2816*float64(r.year.SpreadMaximum[weather.Index(r.season.Start.Plus(unit.Days(d)))])
		if air > 32.2 {
			assert.Greater(t, s[Black][d], StemBurn)
		}
	}
}

// Nothing at 5 cm above the solarization records: clear, sealed, full summer in
// California 108–140 °F (42–60 °C) at 2 in (University of California IPM Pest
// Notes 74145); under a glazed tunnel in Arizona a mean daily highest of 63.4 °C
// (HortScience 49(9):1165, 2014), which open film must not reach.
func TestBelowSolarization(t *testing.T) {
	california := run(t, UsualLoam(places["California"], unit.On(2027, 6, 1), 90))
	arizona := run(t, UsualLoam(places["Arizona"], unit.On(2027, 6, 1), 90))
	for _, c := range []struct {
		name  string
		r     *Runner
		bound unit.Celsius
	}{{"California", california, 60}, {"Arizona", arizona, 63.4}} {
		top := unit.Celsius(0)
		for f := range Films {
			for d := range c.r.season.Days {
				top = max(top, c.r.season.Soil[f][0].High[d])
			}
		}
		t.Logf("1.27, 1.28 hottest at 5 cm, %s: %.1f °C (record %.1f); clear's mean daily highest in July %.1f °C", c.name, top, c.bound, func() float64 {
			sum := 0.0
			for d := 30; d < 61; d++ {
				sum += float64(c.r.season.Soil[Clear][0].High[d]) / 31
			}
			return sum
		}())
		assert.Less(t, top, c.bound)
	}
}
