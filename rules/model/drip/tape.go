package drip

import "filmfurrow/rules/unit"

// EmitterOf gives the outlet behind a tape whose flow for 100 m is stated at a pressure:
// that flow spread over its outlets, 100 m ÷ spacing. (One farm manual counts 133 outlets
// on 100 ft at 8 inches to divide by and 150 to multiply by; 100 ft ÷ 8 in is 150.)
func EmitterOf(flow unit.LitresPerHourPer100Metres, at unit.Kilopascals, spacing unit.Metres, exponent float64) Emitter {
	return Emitter{
		Rated:    unit.LitresPerHour(float64(flow) * float64(spacing) / 100),
		RatedAt:  at,
		Exponent: exponent,
	}
}

// FillVolume is the water that a tape or pipe holds when full.
func FillVolume(bore, length unit.Metres) unit.Litres {
	return unit.Litres(area(bore) * float64(length) * 1000)
}
