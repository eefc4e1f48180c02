package heat

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
	"filmfurrow/testdata/soil"
)

// evidence is what the constants of nature are held to.
type evidence struct {
	stations, rained       atStations // from 2020's own months: where the rain is not known, and with it
	illinois, warmer       float64    // bare soil in Illinois: root mean square and mean error, K
	black, white, selected float64    // pure physics at the reference state, K: black, white-on-black, clear
}

// atStations is how far off stations are, January to July of 2020, both depths: K.
type atStations struct {
	days, bias         float64 // root mean square of days, and their mean
	winter, west, east float64 // mean of January and February; in the dry west; east of 97° W
	turn               float64 // mean east of 97° W in July less that in April
}

// bars are the ranges that the evidence must keep to: the published ranges of films
// (New England table), and for soil what a constant may spoil at most.
func (e evidence) broken() (broken []string) {
	for _, bar := range []struct {
		name             string
		value, low, high float64
	}{
		{"days", e.stations.days, 0, 2.4}, {"bias", e.stations.bias, -0.3, 0.3}, {"winter", e.stations.winter, -0.5, 0.5}, {"west", e.stations.west, -0.6, 0.6},
		{"days with rain", e.rained.days, 0, 2.4}, {"bias with rain", e.rained.bias, -0.3, 0.3}, {"winter with rain", e.rained.winter, -0.5, 0.5}, {"west with rain", e.rained.west, -0.6, 0.6}, {"east with rain", e.rained.east, -0.6, 0.6}, {"turn with rain", e.rained.turn, -0.6, 0.6},
		{"Illinois", e.illinois, 0, 1.25}, {"Illinois mean", e.warmer, -0.6, 0.8},
		{"black", e.black, 1.67, 2.78}, {"white", e.white, -1.67, -0.56}, {"clear", e.selected, 4.44, 7.78},
	} {
		if !(bar.value >= bar.low && bar.value <= bar.high) {
			broken = append(broken, bar.name)
		}
	}
	return broken
}

func gather(t *testing.T, all []*soil.Station, n nature) (e evidence) {
	t.Helper()
	way := usualRun
	way.nature = n
	e.stations, e.rained = away(t, all, way, false), away(t, all, way, true)

	kept := usualRun
	usualRun = way // the reference run reads it
	reference, err := NewReference(TableCovers(), int(table.Black), SoilOf("loam"))
	usualRun = kept
	require.NoError(t, err)
	for !reference.Step(1000) {
	}
	modelled := reference.Covers().modelled
	e.black, e.white, e.selected = modelled[Black-1][0], modelled[WhiteOnBlack-1][0], modelled[Clear-1][0]

	in := UsualLoam(places["Illinois"], unit.On(2027, 4, 1), 120)
	in.BedHeight, in.Soil = 0, SoilOf("silt-loam")
	r, err := newRunner(in, nil, way)
	require.NoError(t, err)
	r.Step(1000)
	for _, row := range illinois {
		miss := float64(r.season.Soil[Bare][TenCentimetres].Mean[row.on-in.Start] - unit.FromFahrenheit(row.fahrenheit))
		e.illinois += miss * miss / float64(len(illinois))
		e.warmer += miss / float64(len(illinois))
	}
	e.illinois = math.Sqrt(e.illinois)
	return e
}

// away runs every other station from 2020's own months.
func away(t *testing.T, all []*soil.Station, way how, rain bool) (a atStations) {
	t.Helper()
	var days, winter, west, east, spring, summer, squares meanOf
	for i := 0; i < len(all); i += 2 {
		s := all[i]
		in := UsualLoam(s.Of2020, unit.On(2025, 1, 1), MaxDays)
		in.Sod = true
		if rain {
			in.Rain = s.Rain2020
		}
		r, err := newRunner(in, nil, way)
		require.NoError(t, err)
		r.Step(1000)
		for d := range Depths {
			for k := range int(MaxDays) {
				day := k
				if k >= 59 {
					day++
				}
				miss := float64(r.season.Soil[Bare][d].Mean[k]) - s.Soil[d][day]
				if math.IsNaN(miss) {
					continue
				}
				squares.add(miss * miss)
				days.add(miss)
				if day < 60 {
					winter.add(miss)
				}
				if !s.East && s.Of2020.Latitude < 38 {
					west.add(miss)
				}
				if s.East {
					east.add(miss)
				}
				switch m := soil.MonthOf(day); {
				case s.East && m == 3:
					spring.add(miss)
				case s.East && m == 6:
					summer.add(miss)
				}
			}
		}
	}
	return atStations{math.Sqrt(squares.value()), days.value(), winter.value(), west.value(), east.value(), summer.value() - spring.value()}
}

type meanOf struct{ sum, n float64 }

func (m *meanOf) add(v float64)  { m.sum, m.n = m.sum+v, m.n+1 }
func (m *meanOf) value() float64 { return m.sum / m.n }

// Every constant of nature is held by a measurement: as it is, all evidence keeps
// to its bars; moved beyond what it may be wrong by, some does not.
func TestEveryConstantIsHeld(t *testing.T) {
	if testing.Short() {
		t.Skip("runs thirty stations some twenty times")
	}
	all := soil.Stations()
	usual := gather(t, all, usualNature)
	t.Logf("as it is: %+.2f", usual)
	assert.Empty(t, usual.broken())
	for _, c := range []struct {
		name   string
		of     func(*nature) *float64
		values []float64 // beyond what it may be wrong by
	}{
		{"roughness, m", func(n *nature) *float64 { return &n.roughness }, []float64{0.003, 0.08}},
		{"supply, mm a day", func(n *nature) *float64 { return &n.supply }, []float64{1, 2, 5}},
		{"share of snow", func(n *nature) *float64 { return &n.snowShare }, []float64{0, 0.2}},
		{"least resistance, s/m", func(n *nature) *float64 { return &n.leastResistance }, []float64{600}},
		{"most resistance, s/m", func(n *nature) *float64 { return &n.mostResistance }, []float64{200}},
		{"dryness by range", func(n *nature) *float64 { return &n.drynessByRange }, []float64{5}},
		{"turf: albedo", func(n *nature) *float64 { return &n.turf.albedo }, []float64{0.15, 0.31}},
		{"turf: thatch, m²·K/W", func(n *nature) *float64 { return &n.turf.thatch }, []float64{0, 1.5}},
		{"turf: ground, W/m/K", func(n *nature) *float64 { return &n.turf.conductivity }, []float64{0.3, 3}},
		{"turf: limit, mm a day", func(n *nature) *float64 { return &n.turf.limit }, []float64{3.5, 5.5}},
		{"turf: sharpness", func(n *nature) *float64 { return &n.turf.sharpness }, []float64{0.3}},
		{"turf: share of the supply", func(n *nature) *float64 { return &n.turf.share }, []float64{0.2, 0.8}},
		{"turf: share where nothing grows", func(n *nature) *float64 { return &n.turf.desertShare }, []float64{0.3}},
		{"grass: warm, °C", func(n *nature) *float64 { return &n.grass.warm }, []float64{5, 40}},
		{"grass: water", func(n *nature) *float64 { return &n.grass.water }, []float64{0.1, 1}},
		{"grass: lag, days", func(n *nature) *float64 { return &n.grass.lag }, []float64{2}},
		{"grass: thatch, m²·K/W", func(n *nature) *float64 { return &n.grass.thatch }, []float64{0.3, 4}},
		{"grass: decay", func(n *nature) *float64 { return &n.grass.decay }, []float64{-0.7, 2.5}},
		{"grass: shelter", func(n *nature) *float64 { return &n.grass.shelter }, []float64{0, 1.2}},
		{"grass: roughness of open ground, m", func(n *nature) *float64 { return &n.grass.open }, []float64{0.001, 0.03}},
		{"grass: roughness of what has grown, m", func(n *nature) *float64 { return &n.grass.grown }, []float64{0.01, 0.2}},
	} {
		for _, value := range c.values {
			moved := usualNature
			was := *c.of(&moved)
			*c.of(&moved) = value
			e := gather(t, all, moved)
			t.Logf("%-32s %6.3f → %-6v %+.2f: broken %v", c.name, was, value, e, e.broken())
			assert.NotEmpty(t, e.broken(), "%s moved to %v: nothing notices", c.name, value)
		}
	}
}
