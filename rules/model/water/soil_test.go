package water

import (
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/table"
)

// soilOf is a row of the soil table as the plan takes it.
func soilOf(id string) Optional[soilwater.Class] {
	s := table.SoilByID(id)
	return Known(soilwater.Class{Sand: s.Sand, Clay: s.Clay, GuideLow: s.Guide.Low / 1000, GuideHigh: s.Guide.High / 1000,
		WetLow: s.Wetted.Low, Wet: s.Wetted.Value, WetHigh: s.Wetted.High})
}
