package heat

import (
	"math"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// Water in the ground where nothing grows and where all does, as shares of the
// volume: those of the driest and the moistest loam of the soil table, rounded.
const driestGround, moistestGround = 0.08, 0.32

// turfDensity is the bulk density of ground under turf, t/m³: a loam's.
const turfDensity = 1.4

// turf gives the layers of ground under sod, the thatch being the first. How much
// can grow follows the climate's dryness, the evaporative demand of its growing
// season, from temperatures alone; thatch, moisture and evaporation go with it.
func (r *Runner) turf() (thatch, below layer, boundary float64) {
	n := &r.nature.turf
	grows := growth(&r.year, r.place.latitude, n)
	water := driestGround + (moistestGround-driestGround)*grows
	below = layer{n.conductivity, HeatCapacity(turfDensity, water), water}
	boundary = nodeDepths[1]
	thatch = below
	thatch.conductivity = boundary / (boundary/below.conductivity + n.thatch*grows)
	r.albedo = n.albedo
	r.turfShare = n.desertShare + (n.share-n.desertShare)*grows
	return thatch, below, boundary
}

// growth is the share of turf that a climate lets grow.
func growth(y *weather.Year, latitude unit.Degrees, n *turf) float64 {
	demand, days := 0.0, 0.0
	for d := range weather.YearDays {
		low, high := y.Minimum[d], y.Maximum[d]
		middle := (low + high) / 2
		if middle >= 5 {
			days++
			demand += float64(sky.Hargreaves(low, high, middle, sky.Extraterrestrial(latitude, d+1)))
		}
	}
	demand /= math.Max(days, 1)
	return 1 / (1 + math.Exp(n.sharpness*(demand-n.limit)))
}
