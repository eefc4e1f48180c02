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

// wets and guide take inches, and inches of water in a foot of soil.
func wets(low, value, high float64) Figure[unit.Metres] {
	return Figure[unit.Metres]{Low: unit.FromInches(low), Value: unit.FromInches(value), High: unit.FromInches(high), Source: &Memory, Mark: FromMemory}
}

func guide(low, high float64) Figure[float64] {
	const perFoot = 1000.0 / 12
	f := number(low*perFoot, high*perFoot, &Memory, FromMemory)
	f.Note = "NCAT/ATTRA prints 0.14–0.21 in/in for clay loam and silty clay loam."
	return f
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
	{ID: "sand", Name: "sand", Sand: .88, Clay: .05, Wetted: wets(8, 10, 16), Spacing: inches(4, 8, &Memory, FromMemory), WaterHeld: held(53, 53, 104), Guide: guide(0.75, 1.25), Heavy: 0},
	{ID: "loamy-sand", Name: "loamy sand", Sand: .80, Clay: .05, Wetted: wets(8, 12, 16), Spacing: inches(4, 8, &Memory, FromMemory), WaterHeld: held(63, 69, 104), Guide: guide(0.75, 1.25), Heavy: .12},
	{ID: "sandy-loam", Name: "sandy loam", Sand: .65, Clay: .10, Wetted: wets(12, 14, 18), Spacing: inches(8, 12, &ClemsonTape, Seen), WaterHeld: held(98, 98, 146), Guide: guide(1.25, 1.75), Heavy: .25},
	{ID: "loam", Name: "loam", Sand: .40, Clay: .20, Wetted: wets(16, 20, 24), Spacing: inches(8, 12, &ClemsonTape, Seen), WaterHeld: held(125, 143, 192), Guide: guide(1.5, 2.3), Heavy: .45},
	{ID: "silt-loam", Name: "silt loam", Sand: .20, Clay: .15, Wetted: wets(16, 20, 24), Spacing: inches(8, 12, &ClemsonTape, Seen), WaterHeld: held(125, 195, 195), Guide: guide(1.5, 2.3), Heavy: .55},
	{ID: "silt", Name: "silt", Sand: .10, Clay: .05, Wetted: wets(16, 20, 24), Spacing: inches(8, 12, &ClemsonTape, Seen), WaterHeld: held(125, 247, 247), Guide: guide(1.5, 2.3), Heavy: .55},
	{ID: "sandy-clay-loam", Name: "sandy clay loam", Sand: .60, Clay: .25, Wetted: wets(16, 20, 24), Spacing: inches(12, 16, &Memory, FromMemory), WaterHeld: held(101, 101, 208), Guide: guide(1.75, 2.5), Heavy: .6},
	{ID: "clay-loam", Name: "clay loam", Sand: .30, Clay: .35, Wetted: wets(20, 24, 30), Spacing: inches(12, 18, &Memory, FromMemory), WaterHeld: held(140, 140, 208), Guide: guide(1.75, 2.5), Heavy: .75},
	{ID: "silty-clay-loam", Name: "silty clay loam", Sand: .10, Clay: .35, Wetted: wets(20, 24, 30), Spacing: inches(12, 18, &Memory, FromMemory), WaterHeld: held(140, 167, 208), Guide: guide(1.75, 2.5), Heavy: .8},
	{ID: "sandy-clay", Name: "sandy clay", Sand: .50, Clay: .40, Wetted: wets(20, 25, 30), Spacing: inches(12, 18, &Memory, FromMemory), WaterHeld: held(112, 112, 208), Heavy: .85},
	{ID: "silty-clay", Name: "silty clay", Sand: .10, Clay: .45, Wetted: wets(20, 27, 32), Spacing: inches(12, 18, &Memory, FromMemory), WaterHeld: held(141, 141, 208), Heavy: .95},
	{ID: "clay", Name: "clay", Sand: .25, Clay: .50, Wetted: wets(20, 27, 32), Spacing: inches(12, 18, &Memory, FromMemory), WaterHeld: held(123, 123, 208), Heavy: 1},
}
