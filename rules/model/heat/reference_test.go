package heat

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// newEnglandSpring is the reference state of the published effects: the
// 1981–2010 normals of Amherst, Massachusetts (NOAA National Centers for
// Environmental Information, station USC00190120), the usual bed, film laid on
// 1 April, moist loam; the mean of 15 April to 31 May.
func newEnglandSpring() Input {
	return Usual(weather.Normals{
		Minimum:  fahrenheit(13.2, 15.9, 24.3, 34.5, 44.7, 54.6, 59.2, 57.6, 49.2, 37.5, 29.6, 19.9),
		Maximum:  fahrenheit(33.1, 37.1, 45.3, 58.3, 69.2, 77.6, 82.2, 80.7, 73.3, 61.5, 49.4, 37.9),
		Latitude: 42.3861, Height: 43.3,
	}, unit.On(2027, 4, 1), 61)
}

func fahrenheit(v ...float64) (out [12]unit.Celsius) {
	for m, f := range v {
		out[m] = unit.FromFahrenheit(f)
	}
	return out
}

func run(t testing.TB, in Input) *Runner {
	t.Helper()
	r, err := NewRunner(in)
	require.NoError(t, err)
	for !r.Step(50) {
	}
	return r
}

// difference gives film minus bare of the pure physics, mean over days.
func (r *Runner) difference(f Film, depth int, from, to int) (mean, low, high float64) {
	n := float64(to - from)
	for d := from; d < to; d++ {
		film, open := &r.pure[f][depth], &r.pure[Bare][depth]
		mean += float64(film.Mean[d]-open.Mean[d]) / n
		low += float64(film.Low[d]-open.Low[d]) / n
		high += float64(film.High[d]-open.High[d]) / n
	}
	return mean, low, high
}

// The constants of referenceEffect are the model's own output; a change of the
// physics must change them too. The log prints the rows to paste.
func TestReferenceEffect(t *testing.T) {
	r := run(t, newEnglandSpring())
	for f := Bare + 1; f < Films; f++ {
		var got [Depths]float64
		for d := range Depths {
			got[d], _, _ = r.difference(f, d, 14, 61)
			got[d] = math.Round(got[d]*1000) / 1000
			assert.InDelta(t, got[d], referenceEffect[f][d], 0.005, "%s", f)
		}
		t.Logf("%s: {%.3f, %.3f}", f, got[0], got[1])
	}
}
