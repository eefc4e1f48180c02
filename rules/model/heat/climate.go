package heat

import (
	"math"

	"filmfurrow/rules/model/sky"
	"filmfurrow/rules/unit"
)

// dryness tells from temperatures alone how much drier than a moist spring the
// open ground's skin is: 0 at a temperature range of 12 K and an evaporative
// demand of 4 mm a day, more where the range is wide (dry air) or the demand
// high. The two slopes were once fitted on 15 stations with an earlier form of
// turf.
func (n *nature) dryness(minimum, maximum float64, latitude unit.Degrees, dayOfYear int) float64 {
	demand := sky.Hargreaves(unit.Celsius(minimum), unit.Celsius(maximum), unit.Celsius((minimum+maximum)/2), sky.Extraterrestrial(latitude, dayOfYear))
	return n.drynessByRange*((maximum-minimum)-12)/6 + n.drynessByDemand*(float64(demand)-4)/2
}

// dewBelow is how far the dew point lies below the minimum, K: none in a humid
// climate, up to 4 in a dry one (FAO-56 annex 6 advises 2–3).
func dewBelow(dry float64) float64 { return math.Max(0, math.Min(4, 2*dry)) }
