package waterquality

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"filmfurrow/rules/unit"
)

// University of Florida, FAWN micro-irrigation maintenance, table 1: a value
// inside each printed class.
func TestCloggingClassesFlorida(t *testing.T) {
	for _, row := range []struct {
		id                       string
		slight, moderate, severe float64
	}{
		{"ph", 6.8, 7.3, 7.8}, {"dissolved_solids", 400, 1000, 2500}, {"suspended_solids", 40, 80, 120}, {"iron", 0.05, 0.8, 2},
		{"manganese", 0.05, 1.5, 1.6}, {"calcium", 30, 60, 90}, {"hydrogen_sulfide", 0.1, 1, 3}, {"bacteria", 5000, 20000, 90000},
	} {
		c, ok := CloggerOf(row.id)
		require.True(t, ok, row.id)
		assert.NotEmpty(t, c.Source)
		assert.Equal(t, Slight, c.Judge(row.slight), row.id)
		assert.Equal(t, Moderate, c.Judge(row.moderate), row.id)
		assert.Equal(t, Severe, c.Judge(row.severe), row.id)
	}
	_, ok := CloggerOf("unobtainium")
	assert.False(t, ok)
	assert.Equal(t, "moderate", Moderate.String())
}

// Known-bad: the same page prints ">100" as the severe cell of dissolved
// solids and ">2000" as that of suspended solids. Its moderate cells, 500–2000
// and 50–100, show that the two are swapped.
func TestKnownBadSwappedCells(t *testing.T) {
	dissolved, _ := CloggerOf("dissolved_solids")
	suspended, _ := CloggerOf("suspended_solids")
	assert.Equal(t, Slight, dissolved.Judge(150), "150 mg/L dissolved is ordinary tap water")
	assert.Equal(t, Severe, suspended.Judge(150), "more than 100 mg/L suspended can plug (WateReuse salinity guide)")
}

func TestHardnessWordsAndLime(t *testing.T) {
	for milligrams, word := range map[float64]string{60: "soft", 61: "moderately hard", 120: "moderately hard", 121: "hard", 180: "hard", 181: "very hard"} {
		assert.Equal(t, word, HardnessWord(milligrams))
	}
	assert.True(t, LimeLikely(125, 7.6))
	assert.False(t, LimeLikely(125, 7.4), "both must be high")
	assert.False(t, LimeLikely(115, 8))
	assert.InDelta(t, 640, DissolvedSolids(1), 1e-9)
}

// Two-line model with the thresholds and slopes of the USDA-ARS Salinity
// Laboratory list (1990): tomato at 5 dS/m 75.3 %, bean at 2 81 %, lettuce at 3
// 77.9 %, strawberry at 2 67 % (recomputed).
func TestYieldUSDA(t *testing.T) {
	for _, row := range []struct{ threshold, slope, soil, yield float64 }{{2.5, 9.9, 5, 75.3}, {1.0, 19, 2, 81}, {1.3, 13, 3, 77.9}, {1.0, 33, 2, 67}, {2.5, 9.9, 2.5, 100}, {1, 33, 9, 0}} {
		got := Tolerance{unit.DecisiemensPerMetre(row.threshold), unit.Percent(row.slope)}.YieldAt(unit.DecisiemensPerMetre(row.soil))
		assert.InDelta(t, row.yield, float64(got), 0.06)
	}
}

// PLoS ONE 2018, table 3: water without loss for bean, corn and zucchini.
func TestWaterWithoutLoss(t *testing.T) {
	for _, row := range []struct{ soil, water float64 }{{1.0, 0.7}, {1.7, 1.1}, {4.7, 3.1}} {
		assert.InDelta(t, row.water, float64(Tolerance{unit.DecisiemensPerMetre(row.soil), 10}.MostWater()), 0.05)
	}
	assert.InDelta(t, 100, float64(Tolerance{1.7, 12}.YieldWith(1.1)), 1e-9)
	assert.Less(t, float64(Tolerance{1.7, 12}.YieldWith(2)), 100.0)
}

func TestLeaching(t *testing.T) {
	tomato := Tolerance{2.5, 9.9}
	assert.InDelta(t, 100*1.0/11.5, float64(tomato.Leaching(1)), 1e-9)
	assert.Zero(t, tomato.Leaching(0))
	assert.EqualValues(t, 50, tomato.Leaching(13))
	rapid.Check(t, func(t *rapid.T) {
		a := unit.DecisiemensPerMetre(rapid.Float64Range(0, 14).Draw(t, "a"))
		b := a + unit.DecisiemensPerMetre(rapid.Float64Range(0, 3).Draw(t, "more"))
		assert.LessOrEqual(t, tomato.Leaching(a), tomato.Leaching(b), "saltier water never needs less leaching")
		assert.GreaterOrEqual(t, tomato.YieldWith(a), tomato.YieldWith(b), "nor gives more yield")
	})
}

// Table after FAO-29 rev. 1 (1985), PMC9128324: restriction and infiltration.
func TestFAO29Classes(t *testing.T) {
	assert.Equal(t, []Hazard{Slight, Moderate, Moderate, Severe}, []Hazard{Restriction(0.5), Restriction(0.7), Restriction(3), Restriction(3.1)})
	for _, row := range []struct {
		ratio, none, severe float64
	}{{2, 0.7, 0.2}, {5, 1.2, 0.3}, {10, 1.9, 0.5}, {15, 2.9, 1.3}, {30, 5.0, 2.9}} {
		assert.Equal(t, Slight, Infiltration(unit.DecisiemensPerMetre(row.none+0.1), row.ratio))
		assert.Equal(t, Moderate, Infiltration(unit.DecisiemensPerMetre((row.none+row.severe)/2), row.ratio))
		assert.Equal(t, Severe, Infiltration(unit.DecisiemensPerMetre(row.severe-0.05), row.ratio))
	}
	assert.Equal(t, Severe, Infiltration(0.1, 0), "rain-like water seals soil")
	assert.InDelta(t, 5, SodiumRatio(10, 4, 4), 1e-9)
	assert.Zero(t, SodiumRatio(10, 0, 0))
}

func TestFilter(t *testing.T) {
	low, medium := unit.LitresPerHour(0.132*unit.LitresPerGallon), unit.LitresPerHour(0.204*unit.LitresPerGallon)
	assert.Equal(t, 200, FilterFor(low, Well).Mesh.Count)
	assert.Equal(t, 120, FilterFor(medium, Municipal).Mesh.Count)
	assert.True(t, FilterFor(medium, Pond).MediaFirst)
	assert.False(t, FilterFor(medium, Pond).ScreenOnly)
	assert.True(t, FilterFor(medium, Well).SandFirst)
	assert.True(t, FilterFor(medium, Municipal).ScreenOnly)
	assert.False(t, FilterFor(medium, "").ScreenOnly, "an unknown supply may be a pond")
}
