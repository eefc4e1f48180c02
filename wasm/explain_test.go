//go:build !js

package main

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/facts"
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/table"
)

// printed finds the value that explain prints beside a name.
func printed(t *testing.T, text, name string) string {
	t.Helper()
	m := regexp.MustCompile(`(?m)^  ` + regexp.QuoteMeta(name) + ` +(\S+)`).FindStringSubmatch(text)
	require.NotNil(t, m, "%s is not printed in\n%s", name, text)
	return m[1]
}

func short(v float64) string { return fmt.Sprintf("%.4g", v) }

// What a reader is shown of a film and a soil is what the models work with, to the
// digits shown.
func TestExplainPrintsWhatTheModelsRead(t *testing.T) {
	for i := range table.Films {
		var w strings.Builder
		require.True(t, describe(&w, table.Films[i].ID))
		c := facts.HeatCover(&table.Films[i])
		require.NoError(t, c.Check())
		for name, v := range map[string]float64{
			"sunlight reflected": c.ReflectTop, "sunlight passed": c.Transmit,
			"heat radiation reflected": c.LongReflectTop, "heat radiation passed": c.LongTransmit,
			"warming at 5 cm": float64(c.Effect[facts.AtFive].Value), "warming at 10 cm": float64(c.Effect[facts.AtTen].Value),
		} {
			assert.Equal(t, short(v), printed(t, w.String(), name), "%s: %s", table.Films[i].ID, name)
		}
	}
	for i := range table.Soils {
		var w strings.Builder
		require.True(t, describe(&w, table.Soils[i].ID))
		s, c := facts.HeatSoil(&table.Soils[i]), facts.WaterClass(&table.Soils[i])
		require.NoError(t, s.Check())
		assert.Contains(t, w.String(), fmt.Sprintf("sand %.0f %%, clay %.0f %%", 100*c.Sand, 100*c.Clay))
		assert.Equal(t, s.Sand, c.Sand)
		assert.Contains(t, w.String(), short(s.Density)+" t/m³")
		assert.Contains(t, w.String(), short(s.Dry)+", "+short(s.Moist)+" and "+short(s.Wet)+" of the volume")
		assert.Equal(t, short(float64(c.Wet)), printed(t, w.String(), "wetted width of a line of tape, m"))
		assert.InDelta(t, 1000*c.Of(soilwater.UsualOrganicMatter).Available, table.Soils[i].WaterHeld.Value, 1.5)
	}
}
