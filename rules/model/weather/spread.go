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

// coldNights is how many times as wide cold nights scatter as the rule says, which was
// fitted on the United States: by region of the World Meteorological Organization, from 1
// to 6 (Africa, Asia, South America, North America, South-West Pacific, Europe). Polar air
// breaks out of the north of America, and of the south, as it does nowhere else. Fitted in
// steps of 0.05, none below 0.6, to the days of frost of every other station that counted them; the others
// test it. It counts whole where the coldest usual night stays above mildNight, and not at
// all where that freezes: there the number of days says nothing of the spread, and a last
// frost that is told too soon would cost a crop.
var coldNights = [...]float64{1: 0.6, 0.6, 1.2, 1, 0.85, 0.85}

const mildNight = 3 // °C

// ColdNights reads the region of a station off its id; 1 for a station of the United States.
func ColdNights(station string) float64 {
	if len(station) > 1 && station[0] == 'W' && station[1] > '0' && station[1] <= '6' {
		return coldNights[station[1]-'0']
	}
	return 1
}

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
