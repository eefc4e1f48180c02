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

// sod gives the layers of ground under what grows where nobody tills, the thatch being
// the first.
func (r *Runner) sod() (thatch, below layer, boundary float64) {
	insulation := 0.0
	if r.account != nil {
		insulation, below = r.grass()
	} else {
		insulation, below = r.turf()
	}
	r.albedo = r.nature.turf.albedo
	boundary = nodeDepths[1]
	thatch = below
	thatch.conductivity = boundary / (boundary/below.conductivity + insulation)
	return thatch, below, boundary
}

// grass lets green follow the account: what would grow is held back by cold and by
// drought, and what stands follows it with a lag. Thatch is
// what the year leaves of it, less where the warmth lets it rot; air passes more freely
// over bare ground, and is calmer where all is moist.
func (r *Runner) grass() (insulation float64, below layer) {
	n := &r.nature.grass
	r.roughness = new([weather.YearDays]float64)
	green, grown, air, wet := 0.0, 0.0, 0.0, 0.0
	open, more := math.Log(n.open), math.Log(n.grown/n.open)
	for range grassYears {
		grown, air, wet = 0, 0, 0
		for d := range weather.YearDays {
			middle := float64(r.year.Minimum[d]+r.year.Maximum[d]) / 2
			grows := math.Max(0, math.Min(1, middle/n.warm)) * math.Min(1, r.account.share[d]/n.water)
			green += (grows - green) / n.lag
			r.roughness[d] = math.Exp(open + more*green)
			grown += green / weather.YearDays
			air += middle / weather.YearDays
			wet += r.account.share[d] / weather.YearDays
		}
	}
	// Under so much thatch no station notices snow.
	r.turfShare, r.snow = r.nature.turf.share, 0
	r.place.wind *= math.Exp(-n.shelter * math.Max(0, 2*wet-1))
	rots := math.Max(coldestSoil, math.Min(warmestSoil, air))
	return n.thatch * grown * math.Exp(-n.decay*(rots-10)/10), sodGround(r.nature.turf.conductivity, wet)
}

// Beyond these yearly means of the air, °C, thatch is taken to rot as there: the range
// of the stations that it was fitted on.
const coldestSoil, warmestSoil = 0, 22

// grassYears are enough for grass to forget how it began: its lag is of weeks.
const grassYears = 3

// sodGround is the ground below what grows, by how wet it is: 0 the driest, 1 the
// moistest.
func sodGround(conductivity, wet float64) layer {
	water := driestGround + (moistestGround-driestGround)*wet
	return layer{conductivity, HeatCapacity(turfDensity, water), water}
}

// turf stands in for grass where the rain is not known. How much can grow follows the
// climate's dryness, the evaporative demand of its growing season, from temperatures
// alone; thatch, moisture and evaporation go with it.
func (r *Runner) turf() (insulation float64, below layer) {
	n := &r.nature.turf
	grows := growth(&r.year, r.place.latitude, n)
	r.turfShare = n.desertShare + (n.share-n.desertShare)*grows
	return n.thatch * grows, sodGround(n.conductivity, grows)
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
