package table

import "filmfurrow/rules/unit"

// Soil is one of the twelve USDA texture classes.
type Soil struct {
	ID   string
	Name string
	// Sand and Clay are the class points of the published water table ([Saxton2006]),
	// shares of the mineral soil. Water contents, bulk density and what the heat
	// model needs follow from them.
	Sand, Clay float64
	// Wetted is the width that one line of tape wets, on a bed under film: from
	// 8–12 in of sand to 20–30 in of clay; one system guide prints 16 in sand to 24
	// in clay.
	Wetted Figure[unit.Metres]
	// Spacing is the emitter spacing that the trade uses on this soil.
	Spacing Figure[unit.Metres]
	// WaterHeld is the available water, in mm for each m of depth: the
	// equations' value with the field guides' range.
	WaterHeld Figure[float64]
	// Guide is the available water of a widely copied extension table, in mm for
	// each m of depth; three clays are not in it.
	Guide Figure[float64]
	// Heavy is 0 for sand and 1 for clay: how slowly it drains and warms.
	Heavy float64
}

// SoilByID finds a row, or nil.
func SoilByID(id string) *Soil {
	for i := range Soils {
		if Soils[i].ID == id {
			return &Soils[i]
		}
	}
	return nil
}

// perFoot is an inch of water in a foot of soil.
const perFoot = 1000.0 / 12

func wets(low, value, high unit.Metres) Figure[unit.Metres] {
	return Figure[unit.Metres]{Low: low, Value: value, High: high, Source: &Memory, Mark: FromMemory}
}

func guide(low, high float64) Figure[float64] {
	return Figure[float64]{Low: low, Value: (low + high) / 2, High: high, Source: &Memory, Mark: FromMemory,
		Note: "NCAT/ATTRA prints 0.14–0.21 in/in for clay loam and silty clay loam."}
}

func held(low, value, high float64) Figure[float64] {
	return Figure[float64]{Low: low, Value: value, High: high, Source: &Saxton2006, Mark: Recomputed,
		Note: "Range of field guides beside the equations' value."}
}

// Soils is the texture table. Available water: Saxton and Rawls 2006 at
// 2.5 % organic matter, with the range of the widely copied extension table.
// Wetted widths and spacings: from memory of the trade; only 8–12 in for most
// vegetables was seen ([ClemsonTape]).
var Soils = [...]Soil{
	{ID: "sand", Name: "sand", Sand: .88, Clay: .05, Wetted: wets(8*inch, 10*inch, 16*inch), Spacing: metres(4*inch, 8*inch, &Memory, FromMemory), WaterHeld: held(53, 53, 104), Guide: guide(0.75*perFoot, 1.25*perFoot), Heavy: 0},
	{ID: "loamy-sand", Name: "loamy sand", Sand: .80, Clay: .05, Wetted: wets(8*inch, 12*inch, 16*inch), Spacing: metres(4*inch, 8*inch, &Memory, FromMemory), WaterHeld: held(63, 69, 104), Guide: guide(0.75*perFoot, 1.25*perFoot), Heavy: .12},
	{ID: "sandy-loam", Name: "sandy loam", Sand: .65, Clay: .10, Wetted: wets(12*inch, 14*inch, 18*inch), Spacing: metres(8*inch, 12*inch, &ClemsonTape, Seen), WaterHeld: held(98, 98, 146), Guide: guide(1.25*perFoot, 1.75*perFoot), Heavy: .25},
	{ID: "loam", Name: "loam", Sand: .40, Clay: .20, Wetted: wets(16*inch, 20*inch, 24*inch), Spacing: metres(8*inch, 12*inch, &ClemsonTape, Seen), WaterHeld: held(125, 143, 192), Guide: guide(1.5*perFoot, 2.3*perFoot), Heavy: .45},
	{ID: "silt-loam", Name: "silt loam", Sand: .20, Clay: .15, Wetted: wets(16*inch, 20*inch, 24*inch), Spacing: metres(8*inch, 12*inch, &ClemsonTape, Seen), WaterHeld: held(125, 195, 195), Guide: guide(1.5*perFoot, 2.3*perFoot), Heavy: .55},
	{ID: "silt", Name: "silt", Sand: .10, Clay: .05, Wetted: wets(16*inch, 20*inch, 24*inch), Spacing: metres(8*inch, 12*inch, &ClemsonTape, Seen), WaterHeld: held(125, 247, 247), Guide: guide(1.5*perFoot, 2.3*perFoot), Heavy: .55},
	{ID: "sandy-clay-loam", Name: "sandy clay loam", Sand: .60, Clay: .25, Wetted: wets(16*inch, 20*inch, 24*inch), Spacing: metres(12*inch, 16*inch, &Memory, FromMemory), WaterHeld: held(101, 101, 208), Guide: guide(1.75*perFoot, 2.5*perFoot), Heavy: .6},
	{ID: "clay-loam", Name: "clay loam", Sand: .30, Clay: .35, Wetted: wets(20*inch, 24*inch, 30*inch), Spacing: metres(12*inch, 18*inch, &Memory, FromMemory), WaterHeld: held(140, 140, 208), Guide: guide(1.75*perFoot, 2.5*perFoot), Heavy: .75},
	{ID: "silty-clay-loam", Name: "silty clay loam", Sand: .10, Clay: .35, Wetted: wets(20*inch, 24*inch, 30*inch), Spacing: metres(12*inch, 18*inch, &Memory, FromMemory), WaterHeld: held(140, 167, 208), Guide: guide(1.75*perFoot, 2.5*perFoot), Heavy: .8},
	{ID: "sandy-clay", Name: "sandy clay", Sand: .50, Clay: .40, Wetted: wets(20*inch, 25*inch, 30*inch), Spacing: metres(12*inch, 18*inch, &Memory, FromMemory), WaterHeld: held(112, 112, 208), Heavy: .85},
	{ID: "silty-clay", Name: "silty clay", Sand: .10, Clay: .45, Wetted: wets(20*inch, 27*inch, 32*inch), Spacing: metres(12*inch, 18*inch, &Memory, FromMemory), WaterHeld: held(141, 141, 208), Heavy: .95},
	{ID: "clay", Name: "clay", Sand: .25, Clay: .50, Wetted: wets(20*inch, 27*inch, 32*inch), Spacing: metres(12*inch, 18*inch, &Memory, FromMemory), WaterHeld: held(123, 123, 208), Heavy: 1},
}
