package soilwater

import "filmfurrow/rules/unit"

// Texture is one of the twelve classes of the USDA triangle.
type Texture string

// The twelve classes.
const (
	Sand          Texture = "sand"
	LoamySand     Texture = "loamy-sand"
	SandyLoam     Texture = "sandy-loam"
	Loam          Texture = "loam"
	SiltLoam      Texture = "silt-loam"
	Silt          Texture = "silt"
	SandyClayLoam Texture = "sandy-clay-loam"
	ClayLoam      Texture = "clay-loam"
	SiltyClayLoam Texture = "silty-clay-loam"
	SandyClay     Texture = "sandy-clay"
	SiltyClay     Texture = "silty-clay"
	Clay          Texture = "clay"
)

// Class is a row of the table of textures.
type Class struct {
	Texture Texture
	// Sand and Clay are the class points of Saxton and Rawls (2006), as shares
	// of the mineral soil, 0–1.
	Sand, Clay float64
	// GuideLow and GuideHigh are the available water of a widely copied
	// extension table, as a share of volume: 0.75–1.25 in/ft for sands, 1.25–1.75
	// for sandy loams, 1.50–2.30 for loam and silt loam, 1.75–2.50 for the clay
	// loams. NCAT/ATTRA prints 0.14–0.21 in/in for clay loam and silty clay loam.
	// Sandy clay, silty clay and clay are not in that table: 0 is not given.
	GuideLow, GuideHigh float64
	// WetLow, Wet and WetHigh are the width that one line of tape wets in a bed
	// (common practice, no source: from 8–12 in of sand to 20–30 in of clay; one
	// system guide prints 16 in sand to 24 in clay). The middle is that of the
	// engine's soil table, which draws the bed. A shovel knows better.
	WetLow, Wet, WetHigh unit.Metres
}

const inchesPerFoot = 1.0 / 12 // a depth in inches on a foot of soil, as a share

// Classes holds the twelve rows, from coarse to fine.
var Classes = [...]Class{
	{Sand, .88, .05, 0.75 * inchesPerFoot, 1.25 * inchesPerFoot, inches(8), inches(10), inches(16)},
	{LoamySand, .80, .05, 0.75 * inchesPerFoot, 1.25 * inchesPerFoot, inches(8), inches(12), inches(16)},
	{SandyLoam, .65, .10, 1.25 * inchesPerFoot, 1.75 * inchesPerFoot, inches(12), inches(14), inches(18)},
	{Loam, .40, .20, 1.50 * inchesPerFoot, 2.30 * inchesPerFoot, inches(16), inches(20), inches(24)},
	{SiltLoam, .20, .15, 1.50 * inchesPerFoot, 2.30 * inchesPerFoot, inches(16), inches(20), inches(24)},
	{Silt, .10, .05, 1.50 * inchesPerFoot, 2.30 * inchesPerFoot, inches(16), inches(20), inches(24)},
	{SandyClayLoam, .60, .25, 1.75 * inchesPerFoot, 2.50 * inchesPerFoot, inches(16), inches(20), inches(24)},
	{ClayLoam, .30, .35, 1.75 * inchesPerFoot, 2.50 * inchesPerFoot, inches(20), inches(24), inches(30)},
	{SiltyClayLoam, .10, .35, 1.75 * inchesPerFoot, 2.50 * inchesPerFoot, inches(20), inches(24), inches(30)},
	{SandyClay, .50, .40, 0, 0, inches(20), inches(25), inches(30)},
	{SiltyClay, .10, .45, 0, 0, inches(20), inches(27), inches(32)},
	{Clay, .25, .50, 0, 0, inches(20), inches(27), inches(32)},
}

func inches(in float64) unit.Metres { return unit.Metres(in * unit.MetresPerInch) }

// ClassOf finds a texture's row.
func ClassOf(t Texture) (Class, bool) {
	for _, c := range Classes {
		if c.Texture == t {
			return c, true
		}
	}
	return Class{}, false
}
