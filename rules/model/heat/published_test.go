package heat

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// Places of the published rows: 1981–2010 normals of a station nearby (NOAA
// National Centers for Environmental Information), °F.
func puertoRico() weather.Normals { // Isabela Substation
	return weather.Normals{}
}

// window gives means over days [from,to) of the carried and of the pure
// difference to bare ground, and of the level.
type window struct{ carried, pure, level float64 }

func (r *Runner) window(f Film, depth int, pick func(*Track) *[MaxDays]unit.Celsius, from, to int) (w window) {
	n := float64(to - from)
	soil := &r.season.Soil
	for d := from; d < to; d++ {
		w.carried += float64(pick(&soil[f][depth])[d]-pick(&soil[Bare][depth])[d]) / n
		w.pure += float64(pick(&r.pure[f][depth])[d]-pick(&r.pure[Bare][depth])[d]) / n
		w.level += float64(pick(&soil[f][depth])[d]) / n
	}
	return w
}

func TestPlaceholder(t *testing.T) { assert.True(t, math.Pi > 3) }
