package heat

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// Ten days without water, FAO Irrigation and Drainage Paper 56, example 37: 160 mm can be
// held, 0.4 of it is ready, the crop asks for 6 mm a day, 55 mm are gone at the start.
func TestTheGroundGivesAsFAO56Prints(t *testing.T) {
	held := 160.0 - 55
	for day, want := range [][2]float64{{1, 61.0}, {1, 67.0}, {0.97, 72.8}, {0.91, 78.3}, {0.85, 83.4}, {0.80, 88.2}, {0.75, 92.6}, {0.70, 96.9}, {0.66, 100.8}, {0.62, 104.5}} {
		share := met(held, 160, 0.4)
		assert.InDelta(t, want[0], share, 0.006, "day %d", day+1)
		held -= 6 * share
		assert.InDelta(t, want[1], 160-held, 0.11, "day %d", day+1)
	}
}

// No water is made in the account: a year draws at most what fell, all of it where the air
// asks for far more, and what it asks where rain never ends.
func TestTheAccountMakesNoWater(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := weather.Normals{Latitude: unit.Degrees(rapid.Float64Range(-60, 60).Draw(t, "latitude"))}
		mean, swing := rapid.Float64Range(-5, 25).Draw(t, "mean"), rapid.Float64Range(0, 15).Draw(t, "swing")
		for m := range 12 {
			away := min(m, 12-m) // from January
			at := mean - swing + swing*float64(away)/3
			n.Minimum[m], n.Maximum[m] = unit.Celsius(at-6), unit.Celsius(at+6)
		}
		y, err := weather.NewYear(n)
		require.NoError(t, err)
		var rain [12]float64
		for m := range rain {
			rain[m] = rapid.Float64Range(0, 200).Draw(t, "rain")
		}
		a := newAccount(&y, n.Latitude, &rain)
		fell, drawn := 0.0, 0.0
		for m := range rain {
			fell += rain[m]
		}
		for d := range a.drawn {
			drawn += a.drawn[d]
			assert.GreaterOrEqual(t, a.drawn[d], 0.0)
			assert.True(t, a.share[d] >= 0 && a.share[d] <= 1, "%v", a.share[d])
		}
		assert.LessOrEqual(t, drawn, fell+forgotten+1e-9, "it has forgotten how full it began")

		wetter := rain
		for m := range wetter {
			wetter[m] += 50
		}
		b := newAccount(&y, n.Latitude, &wetter)
		for d := range a.share {
			assert.GreaterOrEqual(t, b.share[d], a.share[d]-1e-9, "more rain, no less water")
		}
	})
}
