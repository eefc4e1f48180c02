package weather

import (
	"math"

	"filmfurrow/rules/unit"
)

// dayToDay is the correlation of a day's departure from the smooth year with
// the day before's: the mean over the 30 stations of the US Climate Reference
// Network of their minima in 2020 (NOAA, daily product; 0.33 to 0.68), computed
// against each station's own smooth year.
const dayToDay = 0.57

// spreadRule estimates the standard deviation of a day's minimum or maximum
// from the shape of the smooth year: the wider the year and the colder the day,
// the wider the spread.
//
// The three coefficients were fitted once, together, to the spread of 30
// stations of the US Climate Reference Network in 2020 by month and to the
// yearly days at or below 32 °F (at or above 90 °F for the maximum) of every
// twentieth station of NOAA's 1981–2010 normals. The other nineteen in twenty,
// and the published spread of two stations, test them.
type spreadRule struct {
	base    float64 // K
	byRange float64 // K per K of the year's range
	byCold  float64 // K between the warmest and the coldest day
}

var (
	spreadOfMinimum = spreadRule{-0.6, 0.137, 3.0}
	spreadOfMaximum = spreadRule{-1.05, 0.158, 2.55}
)

// leastSpread holds where the year hardly changes (the tropics).
const leastSpread = 1.2

func spread(days *[YearDays]float64, out *[YearDays]unit.CelsiusDegrees, r spreadRule) {
	low, high := math.Inf(1), math.Inf(-1)
	for _, t := range days {
		low, high = math.Min(low, t), math.Max(high, t)
	}
	span := high - low
	for d, t := range days {
		cold := (high - t) / math.Max(1, span)
		out[d] = unit.CelsiusDegrees(math.Max(leastSpread, r.base+r.byRange*span+r.byCold*cold))
	}
}
