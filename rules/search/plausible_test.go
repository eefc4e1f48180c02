package search_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/internal/farms"
)

// No turning point lies where another pump, tractor or farm would begin.
func TestTurningPointsArePlausible(t *testing.T) {
	all, read := farms.All(t), 0
	for _, name := range []string{"pepper-cool-spring", "melon-weak-well", "melon-hillside"} {
		c, ok := all[name]
		require.True(t, ok, name)
		g, err := facts.NewSoilYear(c)
		require.NoError(t, err)
		filled := field.Filled(c)
		points, _ := turningPoints(t, g, c, false)
		for i := range points {
			in, at := points[i].Input, points[i].At.Number
			now, known := in.Get(&filled)
			if !known || in.Times == 0 && in.Apart == 0 {
				continue
			}
			read++
			if in.Apart > 0 {
				assert.LessOrEqual(t, math.Abs(at-now.Number), in.Apart+in.Step, "%s: %s at %v, now %v", name, in.Name, at, now.Number)
				continue
			}
			assert.LessOrEqual(t, at, now.Number*in.Times+in.Step, "%s: %s, now %v", name, in.Name, now.Number)
			assert.GreaterOrEqual(t, at, now.Number/in.Times-in.Step, "%s: %s, now %v", name, in.Name, now.Number)
		}
	}
	assert.Greater(t, read, 3)
}
