package waterquality

import (
	"math"

	"filmfurrow/rules/unit"
)

// Tolerance is a crop's answer to salt in the soil: no loss up to Threshold
// (dS/m of saturated paste), then Slope percent of yield for each dS/m
// (two-line model, FAO Irrigation and Drainage Paper 61, annex 1).
type Tolerance struct {
	Threshold unit.DecisiemensPerMetre
	Slope     unit.Percent
}

// YieldAt gives the yield expected at a soil salinity, 0–100 %.
func (t Tolerance) YieldAt(soil unit.DecisiemensPerMetre) unit.Percent {
	over := max(0, float64(soil-t.Threshold))
	return unit.Percent(max(0, 100-float64(t.Slope)*over))
}

// SoilFromWater is how much saltier the soil paste gets than its water under
// ordinary leaching: 1.5 times. Published pairs for no loss agree: bean 0.7 and
// 1.0, corn 1.1 and 1.7, zucchini 3.1 and 4.7 dS/m (PLoS ONE 2018, table 3).
const SoilFromWater = 1.5

// YieldWith gives the yield expected with a water.
func (t Tolerance) YieldWith(water unit.DecisiemensPerMetre) unit.Percent {
	return t.YieldAt(SoilFromWater * water)
}

// MostWater is the saltiest water without loss.
func (t Tolerance) MostWater() unit.DecisiemensPerMetre { return t.Threshold / SoilFromWater }

// Leaching gives the share of the water that must pass the roots to keep the
// soil at the crop's threshold: ECw ÷ (5·ECe − ECw), FAO-29 equation 9 (from
// memory). At most 50 %: beyond it this water does not suit this crop.
func (t Tolerance) Leaching(water unit.DecisiemensPerMetre) unit.Percent {
	below := 5*t.Threshold - water
	if water <= 0 {
		return 0
	}
	if below <= 0 {
		return MostLeaching
	}
	return min(MostLeaching, unit.Percent(100*water/below))
}

// MostLeaching is the share beyond which a water does not suit a crop.
const MostLeaching unit.Percent = 50

// Restriction sorts irrigation water by conductivity: slight below 0.7 dS/m,
// severe above 3.0 (table after FAO Irrigation and Drainage Paper 29 revision
// 1, 1985, in open-access article PMC9128324).
func Restriction(water unit.DecisiemensPerMetre) Hazard {
	switch {
	case water < 0.7:
		return Slight
	case water <= 3.0:
		return Moderate
	}
	return Severe
}

// infiltration is the same table's limits of conductivity by sodium adsorption
// ratio: no harm above None, severe below Severe.
var infiltration = [...]struct{ ratio, none, severe float64 }{
	{3, 0.7, 0.2}, {6, 1.2, 0.3}, {12, 1.9, 0.5}, {20, 2.9, 1.3}, {40, 5.0, 2.9},
}

// Infiltration tells whether water may make soil take water in slowly. Here
// low conductivity is the danger: very pure water, or sodium without enough
// salt beside it. A sodium adsorption ratio of 0 gives the mildest row.
func Infiltration(water unit.DecisiemensPerMetre, sodiumRatio float64) Hazard {
	row := infiltration[len(infiltration)-1]
	for _, r := range infiltration {
		if sodiumRatio <= r.ratio {
			row = r
			break
		}
	}
	switch {
	case float64(water) > row.none:
		return Slight
	case float64(water) >= row.severe:
		return Moderate
	}
	return Severe
}

// SodiumRatio is the sodium adsorption ratio Na/√((Ca+Mg)/2), in meq/L (from
// memory).
func SodiumRatio(sodium, calcium, magnesium float64) float64 {
	if calcium+magnesium <= 0 {
		return 0
	}
	return sodium / math.Sqrt((calcium+magnesium)/2)
}
