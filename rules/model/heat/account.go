package heat

import (
	"math"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/model/weather"
	"filmfurrow/rules/unit"
)

// account is the water of the ground in a usual year: what rain leaves in it and what
// is drawn from it, day by day. It is the single bucket of Thornthwaite, C. W. and
// Mather, J. R. (1955), The water balance (from memory), drawn on as FAO Irrigation and
// Drainage Paper 56 has it: fully until the ready part is gone, then in proportion to
// what is left (equation 84). Rain falls evenly through its month, and what the ground
// cannot hold runs off. Snow is not kept: while it freezes nothing is drawn, so it
// stands in the ground all the same.
type account struct {
	drawn [weather.YearDays]float64 // mm a day
	share [weather.YearDays]float64 // of the air's demand that the ground can meet, 0–1
}

// FAO-56: loam holds some 160 mm for roots in a meter of depth (table 19), and pasture
// roots as deep and deeper, so 200 mm is our judgement; 0.6 of it is ready, drawn without
// any stress (table 22). At the stations nothing notices either.
const (
	holds = 200.0 // mm
	ready = 0.6
)

// forgotten is how little a year's end may lie from its beginning, mm, for an account to have
// forgotten how full it began; most is after how many years it is taken as it is.
const (
	forgotten = 0.5
	mostYears = 40
)

// met is the share of the air's demand that a ground can meet which holds so much of what it
// can hold, of which a share is ready: FAO-56 equation 84.
func met(held, all, ready float64) float64 { return min(1, held/(all*(1-ready))) }

func newAccount(y *weather.Year, latitude unit.Degrees, rain *[12]float64) *account {
	var demand [weather.YearDays]float64
	for d := range weather.YearDays {
		low, high := y.Minimum[d], y.Maximum[d]
		if middle := (low + high) / 2; middle > 0 {
			demand[d] = float64(sky.Hargreaves(low, high, middle, sky.Extraterrestrial(latitude, d+1)))
		}
	}
	falls := weather.Evenly(rain)
	a := &account{}
	held := holds
	for range mostYears {
		began := held
		for d := range weather.YearDays {
			a.share[d] = met(held, holds, ready)
			held = min(holds, held+falls[d])
			a.drawn[d] = min(held, demand[d]*a.share[d])
			held -= a.drawn[d]
		}
		if math.Abs(held-began) < forgotten {
			break
		}
	}
	return a
}
