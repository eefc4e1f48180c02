package demand

import "filmfurrow/rules/unit"

// VolumeFor gives the litres that a depth of water is on a strip of bed. In US
// units: gal for 100 ft = 62.34 × inches × feet of width. State which strip: 1
// inch on a 30-inch strip of a field on 6-ft centres is 0.417 acre-inch on the
// acre of field.
func VolumeFor(depth unit.Millimetres, width, length unit.Metres) unit.Litres {
	return unit.Litres(float64(depth) * float64(width) * float64(length))
}

// HoursFor gives how long tape must run to put a depth on a strip: in US units
// 62.34 × inches × feet of width ÷ gal/h for 100 ft.
func HoursFor(depth unit.Millimetres, width unit.Metres, flow unit.LitresPerHourPer100Metres) unit.Hours {
	return unit.Hours(float64(VolumeFor(depth, width, 100)) / float64(flow))
}

// UsualEfficiency is the share of the water that stays with the roots under
// drip: about 90 %, 85–95 % in good order (Colorado State Extension 5.623).
const UsualEfficiency unit.Percent = 90

// Gross gives what must be pumped for a net need. Water lost below the roots
// also washes salt down, so the larger of the loss and the leaching counts, not
// their sum. Efficiency is 1–100 %, leaching 0–50 %.
func Gross(net float64, efficiency, leaching unit.Percent) float64 {
	kept := min(float64(efficiency), 100-float64(leaching)) / 100
	return net / kept
}
