package heat

import "math"

// dryness tells from the day's temperature range alone how much drier than a moist
// spring the air and the open ground's skin are: 0 at a range of 12 K, more where it
// is wide (dry air). The slope was once fitted on 15 stations with an earlier form of
// turf; without any the stations are met as well, so it is held loosely.
func (n *nature) dryness(minimum, maximum float64) float64 {
	return n.drynessByRange * ((maximum - minimum) - 12) / 6
}

// dewBelow is how far the dew point lies below the minimum, K: none in a humid
// climate, up to 4 in a dry one (FAO-56 annex 6 advises 2–3).
func dewBelow(dry float64) float64 { return math.Max(0, math.Min(4, 2*dry)) }
