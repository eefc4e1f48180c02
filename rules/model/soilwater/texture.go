package soilwater

import "filmfurrow/rules/unit"

// Class is a soil as the water plan needs it: plain numbers, whoever keeps the
// table of them.
type Class struct {
	// Sand and Clay are shares of the mineral soil, 0–1, such as the class points
	// of Saxton and Rawls (2006).
	Sand, Clay float64
	// GuideLow and GuideHigh are the available water of a field guide, as a share of
	// volume; 0 is not given.
	GuideLow, GuideHigh float64
	// WetLow, Wet and WetHigh are the width that one line of tape wets in a bed. A
	// shovel knows better.
	WetLow, Wet, WetHigh unit.Metres
}
