package water

import (
	"filmfurrow/rules/model/soilwater"
	"filmfurrow/rules/table"
	"filmfurrow/rules/unit"
)

// soilOf is a row of the soil table as the plan takes it.
func soilOf(id string) unit.Optional[soilwater.Class] {
	s := table.SoilByID(id)
	return unit.Known(soilwater.Class{Sand: s.Sand, Clay: s.Clay, GuideLow: s.Guide.Low / 1000, GuideHigh: s.Guide.High / 1000,
		WetLow: s.Wetted.Low, Wet: s.Wetted.Value, WetHigh: s.Wetted.High})
}

// sold is the tape table as the plan takes it: the printed classes in the common bore.
var sold = func() *Sold {
	s := Sold{RatedAt: table.TapePressure, CommonBore: table.CommonBore, LargeBore: table.WideBore}
	for _, t := range table.Tapes {
		if t.Mark == table.Seen && t.Bore == table.CommonBore {
			s.Tapes = append(s.Tapes, Candidate{Class: t.Class, Spacing: t.Spacing, Flow: t.Flow})
		}
	}
	return &s
}()
