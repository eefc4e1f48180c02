package search_test

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/casefile"
	"filmfurrow/rules/facts"
	"filmfurrow/rules/field"
	"filmfurrow/rules/internal/farms"
	"filmfurrow/rules/search"
	"filmfurrow/rules/table/normals"
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

// The usual frost is asked for only among the days on which it may fall at that place: no
// last frost of spring in the fall or in December, none in summer, and none where half of
// the years have no frost.
func TestUsualFrostsAreAskedForInTheirSeason(t *testing.T) {
	places, err := normals.Embedded()
	require.NoError(t, err)
	for _, at := range []struct {
		place, station string
		spring, fall   [2]int // months, the first and last that may be named
	}{
		{"Phoenix", "USW00023183", [2]int{1, 3}, [2]int{11, 1}},
		{"State College", "USC00368449", [2]int{3, 6}, [2]int{9, 11}},
		{"Mendoza", "W3-87418", [2]int{7, 10}, [2]int{4, 7}},
		{"Singapore", "W5-48698", [2]int{}, [2]int{}},
	} {
		c, err := casefile.Decode(fmt.Appendf(nil, `{"version":1,"crop":"tomato","plant_on":"2027-05-15","place":{"station":%q}}`, at.station), places)
		require.NoError(t, err, at.place)
		for name, months := range map[string][2]int{"climate.last_frost": at.spring, "climate.first_frost": at.fall} {
			above, below, _, _ := search.Steps(c, field.InputByName(name))
			if months[0] == 0 {
				assert.Empty(t, append(above, below...), at.place)
				continue
			}
			assert.NotEmpty(t, above, "%s: %s", at.place, name)
			for _, v := range append(above, below...) {
				month := int(v.Number) / 100
				assert.LessOrEqual(t, (month-months[0]+12)%12, (months[1]-months[0]+12)%12, "%s: %s on %v", at.place, name, v.Number)
			}
		}
	}
}
