package facts_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/model/heat"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
	"filmfurrow/testdata/soil"
)

// miss gathers errors, ours less measured.
type miss struct{ n, sum, square float64 }

func (m *miss) add(v float64) {
	if !math.IsNaN(v) {
		m.n, m.sum, m.square = m.n+1, m.sum+v, m.square+v*v
	}
}
func (m *miss) bias() float64 { return m.sum / m.n }
func (m *miss) rms() float64  { return math.Sqrt(m.square / m.n) }

// The season that counts: March to September of 2020.
const firstMonth, lastMonth = 2, 8

// ofYear gives the place in a usual year of a day of 2020.
func ofYear(day int) int {
	if day >= 59 {
		return day - 1 // 29 February shares the figures of the 28th
	}
	return day
}

// wave is the plain damped wave of the same normals: the air's mean plus 2 K, half
// its range from January to July, damped with depth; no physics.
func wave(n *weather.Normals, depth, day int) float64 {
	mean := 0.0
	for m := range 12 {
		mean += float64(n.Minimum[m]+n.Maximum[m]) / 24
	}
	half := float64(n.Minimum[6]+n.Maximum[6]-n.Minimum[0]-n.Maximum[0]) / 4
	z := float64(facts.Depths[depth]) / math.Sqrt(2*0.5e-6*365*86400/(2*math.Pi))
	return mean + 2 + half*math.Exp(-z)*math.Sin(2*math.Pi*float64(day+1-110)/365-z)
}

// tally is how a group of stations fares from one kind of monthly climate.
type tally struct {
	stations        int
	days, wave      [heat.Depths]miss
	months          [heat.Depths]miss
	byMonth         [12]miss
	inBand, inBand1 [heat.Depths]miss // monthly means and days within the band: 1 or 0
	dates           miss              // observed dates within the printed range: 1 or 0
	dateMiss        miss              // of the expected date, days
}

func yes(b bool) float64 {
	if b {
		return 1
	}
	return 0
}

// take adds a station: what was measured there against the year that the page
// would draw from the normals.
func (y *tally) take(s *soil.Station, n *weather.Normals, rain unit.Optional[[12]float64]) {
	g := facts.SodYear(*n, rain)
	y.stations++
	for depth := range heat.Depths {
		var ours, theirs, low, high [12]miss
		for day := range soil.Days {
			month, at := soil.MonthOf(day), ofYear(day)
			measured := s.Soil[depth][day]
			if month < firstMonth || month > lastMonth || math.IsNaN(measured) {
				continue
			}
			computed := float64(g.Mean[facts.Bare][depth][at])
			bandLow, bandHigh := float64(g.BandLow[facts.Bare][depth][at]), float64(g.BandHigh[facts.Bare][depth][at])
			y.days[depth].add(computed - measured)
			y.wave[depth].add(wave(n, depth, day) - measured)
			y.byMonth[month].add(computed - measured)
			y.inBand1[depth].add(yes(measured >= bandLow && measured <= bandHigh))
			ours[month].add(computed)
			theirs[month].add(measured)
			low[month].add(bandLow)
			high[month].add(bandHigh)
		}
		for m := range 12 {
			if theirs[m].n < 15 {
				continue
			}
			measured := theirs[m].bias()
			y.months[depth].add(ours[m].bias() - measured)
			y.inBand[depth].add(yes(measured >= low[m].bias() && measured <= high[m].bias()))
		}
		y.date(s, g, depth)
	}
}

// date compares the first of three days in a row at 60 °F: expected, and the range
// from a warm to a cool year.
func (y *tally) date(s *soil.Station, g *facts.SoilYear, depth int) {
	const floor = unit.Celsius(15.56)
	from := weather.Index(unit.On(2025, 5, 1)) - 60 // as the page looks
	run, observed := 0, -1
	for day := from + 1; day < soil.Days && observed < 0; day++ {
		if math.IsNaN(s.Soil[depth][day]) {
			return // a gap before the date: nobody knows it
		}
		if run++; s.Soil[depth][day] < float64(floor) {
			run = 0
		}
		if run == 3 {
			observed = ofYear(day - 2)
		}
	}
	soonest, ok1 := g.FirstWarm(depth, floor, +1)
	expected, ok2 := g.FirstWarm(depth, floor, 0)
	latest, ok3 := g.FirstWarm(depth, floor, -1)
	if observed <= from+1 || observed < 0 || !ok1 || !ok2 {
		return // warm from the first day looked at, or never
	}
	if !ok3 {
		latest = 365
	}
	y.dates.add(yes(observed >= soonest && observed <= latest))
	y.dateMiss.add(float64(expected - observed))
}

func (y *tally) log(t *testing.T, name string) {
	t.Helper()
	t.Logf("%-34s %2d stations", name, y.stations)
	for d := range heat.Depths {
		t.Logf("    %2.0f cm: days: bias %+.2f, RMSE %.2f (damped wave %.2f); monthly means: bias %+.2f, RMSE %.2f °C; in the band %.0f %% of months, %.0f %% of days",
			100*facts.Depths[d], y.days[d].bias(), y.days[d].rms(), y.wave[d].rms(), y.months[d].bias(), y.months[d].rms(), 100*y.inBand[d].bias(), 100*y.inBand1[d].bias())
	}
	t.Logf("    three days at 60 °F: within the range at %.0f of %.0f (%.0f %%); expected date %+.1f days, RMSE %.1f", y.dates.sum, y.dates.n, 100*y.dates.bias(), y.dateMiss.bias(), y.dateMiss.rms())
	months := ""
	for m := firstMonth; m <= lastMonth; m++ {
		months += " " + unit.On(2020, m+1, 1).String()[5:7] + ":" + string(appendSigned(y.byMonth[m].bias()))
	}
	t.Logf("    bias by month %s", months)
}

func appendSigned(v float64) []byte {
	sign := byte('+')
	if v < 0 {
		sign, v = '-', -v
	}
	tenths := int(math.Round(v * 10))
	return []byte{sign, byte('0' + tenths/10%10), '.', byte('0' + tenths%10)}
}

// TestWhatThePageClaims holds the page's own path (monthly figures, the year that
// it draws) to what 60 stations of the US Climate Reference Network measured in
// 2020 (NOAA, public domain; testdata/soil), with turf on the open ground as there.
// The constants were fitted on 40 of them from 2020's own monthly means; all bars
// are for the other 20.
func TestWhatThePageClaims(t *testing.T) {
	type rain = unit.Optional[[12]float64]
	own := func(s *soil.Station) rain { return s.Rain2020 }
	normal := func(s *soil.Station) rain { return s.RainNormal }
	none := func(*soil.Station) rain { return rain{} }
	climates := [...]struct {
		name string
		of   func(*soil.Station) *weather.Normals
		rain func(*soil.Station) rain
	}{
		{"2020's months", func(s *soil.Station) *weather.Normals { return &s.Of2020 }, own},
		{"normals 1981–2010", func(s *soil.Station) *weather.Normals { return &s.Old }, normal},
		{"normals 1991–2020", func(s *soil.Station) *weather.Normals { return &s.New }, normal},
		{"2020's months, no rain", func(s *soil.Station) *weather.Normals { return &s.Of2020 }, none},
		{"normals 1981–2010, no rain", func(s *soil.Station) *weather.Normals { return &s.Old }, none},
		{"normals 1991–2020, no rain", func(s *soil.Station) *weather.Normals { return &s.New }, none},
	}
	const noRain = 3 // the first of those to whom no rain is told
	var unseen, seen, east [len(climates)]tally
	for i, s := range soil.Stations() {
		for k, c := range climates {
			if soil.Fitted(i) {
				seen[k].take(s, c.of(s), c.rain(s))
				continue
			}
			unseen[k].take(s, c.of(s), c.rain(s))
			if s.East {
				east[k].take(s, c.of(s), c.rain(s))
			}
		}
	}
	for k, c := range climates {
		seen[k].log(t, c.name+", fitted")
		unseen[k].log(t, c.name+", not fitted")
		east[k].log(t, c.name+", not fitted, east of 97° W")
	}
	page, err := os.ReadFile("../model/heat/VALIDATION.md")
	require.NoError(t, err)
	for k, c := range climates {
		for _, row := range []struct {
			stations string
			y        *tally
		}{{"40 fitted", &seen[k]}, {"20", &unseen[k]}, {"9 of them, east of 97° W", &east[k]}} {
			days, wave := &row.y.days, &row.y.wave
			assert.Contains(t, string(page), fmt.Sprintf("| %s | %s | %.2f | %.2f | %.2f | %.2f |", c.name, row.stations, days[0].rms(), days[1].rms(), wave[0].rms(), wave[1].rms()), "VALIDATION.md")
		}
		y := &unseen[k]
		row := fmt.Sprintf("| %s | %+.1f / %+.1f | %.2f / %.2f | %.0f / %.0f %% | %.0f %% |", c.name, y.days[0].bias(), y.days[1].bias(), y.months[0].rms(), y.months[1].rms(),
			100*y.inBand[0].bias(), 100*y.inBand[1].bias(), 100*y.dates.bias())
		assert.Contains(t, string(page), strings.ReplaceAll(row, "-", "−"), "VALIDATION.md")
	}
	for d := range heat.Depths {
		assert.InDelta(t, unseen[0].months[d].rms(), heat.ModelError[d], 0.005, "heat.ModelError is this measurement")
		assert.InDelta(t, unseen[noRain].months[d].rms(), heat.ErrorWithoutRain[d], 0.005, "heat.ErrorWithoutRain is this measurement")
		assert.InDelta(t, 0, unseen[0].days[d].bias(), 0.3, "bias")
		assert.InDelta(t, 0, unseen[noRain].days[d].bias(), 0.3, "bias")
		assert.InDelta(t, unseen[2].days[d].rms(), heat.FromNormals.Days[d], 0.051, "what the page says")
		assert.InDelta(t, unseen[2].months[d].rms(), heat.FromNormals.Months[d], 0.051, "what the page says")
		assert.InDelta(t, unseen[2].wave[d].rms(), heat.FromNormals.Wave[d], 0.051, "what the page says")
		assert.InDelta(t, unseen[2].days[d].bias(), heat.FromNormals.Bias[d], 0.051, "what the page says")
		for k := range climates {
			assert.GreaterOrEqual(t, unseen[k].inBand[d].bias(), 0.8, "%s: monthly means in the band", climates[k].name)
			assert.Less(t, unseen[k].days[d].rms(), unseen[k].wave[d].rms(), "%s: a damped wave", climates[k].name)
			assert.LessOrEqual(t, east[k].days[d].rms(), east[k].wave[d].rms(), "%s: a damped wave, east of 97° W", climates[k].name)
		}
	}
	for k := range climates {
		assert.GreaterOrEqual(t, unseen[k].dates.bias(), 0.75, "%s: dates within the range", climates[k].name)
	}
	// Alarms, not aims: the aims are 2.3 and 2.1 °C from the year's own months and
	// 2.7 and 2.5 from normals of 1991–2020. What would bring them nearer: rain, and
	// what the ground of a place is; stations that stand side by side differ by 2 K.
	for d, most := range [heat.Depths][2]float64{{2.75, 3.05}, {2.5, 2.75}} {
		assert.Less(t, unseen[0].days[d].rms(), most[0])
		assert.Less(t, unseen[2].days[d].rms(), most[1])
	}
}

// The spread of days about the smooth course, measured at the fitted stations
// against what weather.Year gives for their air.
func TestTheSpreadOfSoilDays(t *testing.T) {
	var share [heat.Depths]miss
	lagged, base := 0.0, 0.0
	for i, s := range soil.Stations() {
		if !soil.Fitted(i) {
			continue
		}
		g := facts.SodYear(s.Of2020, s.Rain2020)
		year, err := weather.NewYear(s.Of2020)
		require.NoError(t, err)
		for depth := range heat.Depths {
			var off [12]miss
			gap := func(day int) float64 {
				return s.Soil[depth][day] - float64(g.Mean[facts.Bare][depth][ofYear(day)])
			}
			for day := range soil.Days {
				off[soil.MonthOf(day)].add(gap(day))
			}
			for day := 0; day < soil.Days-1; day++ {
				m := soil.MonthOf(day)
				if m < firstMonth || m > lastMonth || off[m].n < 15 || math.IsNaN(gap(day)+gap(day+1)) {
					continue
				}
				air := float64(year.SpreadMinimum[ofYear(day)]+year.SpreadMaximum[ofYear(day)]) / 2
				share[depth].add((gap(day) - off[m].bias()) / air)
				lagged += (gap(day) - off[m].bias()) * (gap(day+1) - off[m].bias())
				base += (gap(day) - off[m].bias()) * (gap(day) - off[m].bias())
			}
		}
	}
	memory := lagged / base
	t.Logf("spread of soil days over that of the air: %.3f at 5 cm, %.3f at 10 cm; a day remembers %.2f of the day before", share[0].rms(), share[1].rms(), memory)
	for d := range heat.Depths {
		assert.InDelta(t, share[d].rms(), heat.SpreadShare[d], 0.005)
	}
	// Days that remember one another so run about a mean that rises as in spring:
	// when do three in a row first stand above a floor?
	random := rand.New(rand.NewPCG(2020, 60))
	var early miss
	for _, rise := range []float64{0.1, 0.15, 0.2} { // K a day
		for range 4000 {
			off, run := random.NormFloat64(), 0
			for day := -200; ; day++ {
				off = memory*off + math.Sqrt(1-memory*memory)*random.NormFloat64()
				if run++; rise*float64(day)+2*off < 0 { // 2 K is a usual spread
					run = 0
				}
				if run == 3 {
					early.add(-rise * float64(day-2) / 2)
					break
				}
			}
		}
	}
	t.Logf("the first three in a row come when the mean lies %.2f spreads below the floor", early.bias())
	assert.InDelta(t, early.bias(), heat.Spell, 0.05)
}
