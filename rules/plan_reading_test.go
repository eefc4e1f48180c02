package rules_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"filmfurrow/rules/model/demand"
	"filmfurrow/rules/plan"
	"filmfurrow/rules/unit"
)

// A handful or a probe says how much is left, by the classes of the field guide; what is
// less than the crop's depletion allows (FAO 56, table 22: bell peppers 0.3 where they use
// 5 mm a day, 0.04 more for each mm less) asks for the water that fills the strip again.
func TestAReadingOfTheSoil(t *testing.T) {
	a := advise(t, pack(t)["pepper-cool-spring"])
	p := a.WaterPlan()
	soil := p.Plan.Soil
	require.NotNil(t, soil)
	want := []plan.ReadingVerdict{plan.SoilDry, plan.SoilDry, plan.SoilRight, plan.SoilRight, plan.SoilFull}
	last := unit.Minutes(1e9)
	for class := range plan.Feels {
		r, ok := a.ReadFeel(&p, class)
		require.True(t, ok)
		assert.Equal(t, want[class], r.Verdict, "class %d", class)
		assert.LessOrEqual(t, r.Extra, last, "the drier, the longer")
		last = r.Extra
		assert.NotEmpty(t, a.FeelWords()[class])
	}
	// By hand: 0.375 of the store is left, 0.625 of it is missing; more is given than
	// stays with the roots.
	r, _ := a.ReadFeel(&p, 1)
	missing := 0.625 * 1000 * soil.Water.Available * float64(soil.Strip.Width) * float64(soil.Depth) * 100 / (float64(demand.UsualEfficiency) / 100)
	assert.InDelta(t, 60*missing/float64(p.Plan.Tape.Flow), float64(r.Extra), 1.5)
	assert.InDelta(t, 1-(0.3+0.04*(5-2.7)), r.Least, 0.01, "film saves water: the crop uses some 2.7 mm on its thirstiest day")
	assert.Contains(t, r.Says.In(unit.US), "About 38% of the water for roots is left; 61% is the least for bell peppers.")

	for _, probe := range []struct {
		volume  float64
		verdict plan.ReadingVerdict
	}{{soil.Water.FieldCapacity, plan.SoilFull}, {soil.Water.Saturation, plan.SoilFull}, {soil.Water.FieldCapacity - 0.2*soil.Water.Available, plan.SoilRight}, {soil.Water.WiltingPoint, plan.SoilDry}, {0.01, plan.SoilDry}} {
		r, ok := a.ReadProbe(&p, probe.volume)
		require.True(t, ok)
		assert.Equal(t, probe.verdict, r.Verdict, "%.2f", probe.volume)
	}
	for _, bad := range []float64{-0.1, 1.1} {
		_, ok := a.ReadProbe(&p, bad)
		assert.False(t, ok)
	}
	_, ok := a.ReadFeel(&p, plan.Feels)
	assert.False(t, ok)

	refused := advise(t, pack(t)["carrot-drill"])
	water := refused.WaterPlan()
	_, ok = refused.ReadFeel(&water, 0)
	assert.False(t, ok, "no film, no drip under it")
}
