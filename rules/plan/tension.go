package plan

import (
	"math"

	"filmfurrow/rules/table"
)

// tensions are published ranges for drip by texture, kPa (1 kPa is a centibar): field
// capacity, and where a fifth to a quarter of the water for roots is gone and drip starts
// ([table.UtahTension], for tomato, pepper and eggplant).
var tensions = [...]struct{ capacityLow, capacityHigh, startLow, startHigh float64 }{
	{5, 10, 17, 22},  // sand, loamy sand
	{10, 20, 22, 27}, // sandy loam
	{15, 25, 25, 30}, // loam, silt loam
	{20, 40, 35, 45}, // clay loam, clay
}

// What is gone at the two ends of the range in which drip starts.
const (
	startUsed = 0.20
	endUsed   = 0.25
)

const (
	wiltingTension = 1500.0 // FAO-56, chapter 8
	gaugeWorks     = 80.0
)

// texture is the class of the field's soil among those of tension and feel, coarse first.
func (a *Advice) texture() int {
	switch a.Facts.Soil.ID {
	case "sand", "loamy-sand":
		return 0
	case "sandy-loam":
		return 1
	case "loam", "silt-loam", "silt", "sandy-clay-loam":
		return 2
	}
	return 3
}

// TensionLeft is the share of the water for roots that is left at a tension of 0–100 kPa:
// all of it up to the wettest end of the published start less the way to it, a fifth to a
// quarter gone within it, and from there down to nothing at wilting, with the logarithm of
// tension (our reasoning: two pages tell of clay that has three quarters left at 80 kPa, and
// of sand that has far less than half).
func (a *Advice) TensionLeft(kilopascals float64) float64 {
	r := &tensions[a.texture()]
	full := min(r.capacityHigh, r.startLow)
	switch {
	case kilopascals <= full:
		return 1
	case kilopascals < r.startLow:
		return 1 - startUsed*(kilopascals-full)/(r.startLow-full)
	case kilopascals <= r.startHigh:
		return 1 - startUsed - (endUsed-startUsed)*(kilopascals-r.startLow)/(r.startHigh-r.startLow)
	}
	return max(0, (1-endUsed)*(1-math.Log(kilopascals/r.startHigh)/math.Log(wiltingTension/r.startHigh)))
}

// TensionSource says who tells the ranges.
var TensionSource = &table.UtahTension
