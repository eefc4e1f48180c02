package rules_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules"
	"filmfurrow/rules/field"
	"filmfurrow/rules/question"
	"filmfurrow/rules/unit"
)

// What soil warmth cannot be computed from is a clear error beside its field;
// what can be computed, and no bed be laid in, is said in the advice.
func TestBadWarmthInput(t *testing.T) {
	for _, bad := range []struct {
		name   string
		change func(*field.Case)
		field  string // that the error names, or
		says   string // what the advice tells of it
		never  bool   // no film is laid
	}{
		{"normals with a gap", func(c *field.Case) { c.Place.TMin[2] = unit.Celsius(math.NaN()) }, "climate.tmin_c", "", false},
		{"minimum above maximum", func(c *field.Case) { p := &c.Place; p.TMin[4], p.TMax[4] = p.TMax[4], p.TMin[4] }, "climate.tmax_c", "", false},
		{"latitude 90", func(c *field.Case) { c.Place.Latitude = unit.Known(unit.Degrees(90)) }, "place.lat", "", false},
		{"latitude −90", func(c *field.Case) { c.Place.Latitude = unit.Known(unit.Degrees(-90)) }, "place.lat", "", false},
		{"height −500 m", func(c *field.Case) { c.Place.Elevation = unit.Known(unit.Metres(-500)) }, "place.elevation_m", "", false},
		{"height 6,000 m", func(c *field.Case) { c.Place.Elevation = unit.Known(unit.Metres(6000)) }, "place.elevation_m", "", false},
		{"polar night", func(c *field.Case) { *c = climate(71.5, -8, 15, 7) }, "", "Under no film does the bed hold", true},
		{"polar night, planted in it", func(c *field.Case) { *c = climate(71.5, -8, 15, 7); c.PlantOn = unit.Known(unit.On(2027, 12, 21)) }, "", "Under no film does the bed hold", true},
		{"frozen ground", func(c *field.Case) { c.PlantOn = unit.Known(unit.On(2027, 1, 20)) }, "", "is out of season", true},
		{"a probe 40 °C off", func(c *field.Case) { *c = withProbe(*c, 55, unit.On(2027, 5, 10)) }, "", "too far to believe", false},
	} {
		c := climate(42.5, 8, 14, 11)
		bad.change(&c)
		a, err := rules.Advise(c)
		if bad.field != "" {
			var errs field.Errors
			require.ErrorAs(t, err, &errs, bad.name)
			assert.Equal(t, bad.field, errs[0].Field, bad.name)
			assert.NotEmpty(t, errs[0].Allowed, bad.name)
			assert.NotEmpty(t, errs[0].Mend, bad.name)
			t.Logf("%s: %v", bad.name, errs[0].Error())
			continue
		}
		require.NoError(t, err, bad.name)
		var said []string
		for _, l := range a.Limits {
			said = append(said, l.Text.In(unit.Metric))
		}
		for i := range a.Verdict.Ranked {
			for _, f := range a.Verdict.Ranked[i].Factors {
				said = append(said, f.Reason.In(unit.Metric))
			}
		}
		assert.Contains(t, strings.Join(said, "\n"), bad.says, bad.name)
		best, _ := a.Verdict.Best()
		assert.Equal(t, bad.never, best != question.Lay && best != question.LayWithCare, bad.name)
		for f := range a.Facts.Warmth.Mean {
			for _, mean := range a.Facts.Warmth.Mean[f] {
				require.False(t, math.IsNaN(float64(mean)), bad.name)
			}
		}
	}
}
