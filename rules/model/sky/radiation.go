package sky

import (
	"math"

	"filmfurrow/rules/unit"
)

// Coefficients of FAO-56.
const (
	// InlandCoefficient is kRs of equation 50 where land rules the air.
	InlandCoefficient = 0.16
	// CoastCoefficient is kRs of equation 50 near a large body of water.
	CoastCoefficient = 0.19
	// ReferenceAlbedo is the share of sunlight that the reference grass turns
	// back (equation 38).
	ReferenceAlbedo = 0.23
)

// ClearSky gives Rso, the sun's energy on the ground under a clear sky, for
// heights −500 to 6,000 m (FAO-56 equation 37).
func ClearSky(extraterrestrial unit.MegajoulesPerSquareMetre, height unit.Metres) unit.MegajoulesPerSquareMetre {
	return unit.MegajoulesPerSquareMetre((0.75 + 2e-5*float64(height)) * float64(extraterrestrial))
}

// FromSunshine gives Rs from hours of bright sun n and day length N, 0 ≤ n ≤ N
// (Ångström's formula with the coefficients 0.25 and 0.50, FAO-56 equation 35).
// A day without daylight gives 0.
func FromSunshine(sunshine, dayLength unit.Hours, extraterrestrial unit.MegajoulesPerSquareMetre) unit.MegajoulesPerSquareMetre {
	if dayLength <= 0 {
		return 0
	}
	share := math.Max(0, math.Min(1, float64(sunshine/dayLength)))
	return unit.MegajoulesPerSquareMetre((0.25 + 0.50*share) * float64(extraterrestrial))
}

// FromTemperatureRange gives Rs from the day's temperature range (Hargreaves,
// FAO-56 equation 50), held to the clear sky as FAO-56 advises. coefficient is
// kRs, see [InlandCoefficient] and [CoastCoefficient].
func FromTemperatureRange(minimum, maximum unit.Celsius, coefficient float64, extraterrestrial, clearSky unit.MegajoulesPerSquareMetre) unit.MegajoulesPerSquareMetre {
	span := math.Max(0, float64(maximum-minimum))
	rs := coefficient * math.Sqrt(span) * float64(extraterrestrial)
	return unit.MegajoulesPerSquareMetre(math.Min(rs, float64(clearSky)))
}

// NetShortwave gives Rns = (1 − albedo)·Rs (FAO-56 equation 38).
func NetShortwave(solar unit.MegajoulesPerSquareMetre, albedo float64) unit.MegajoulesPerSquareMetre {
	return unit.MegajoulesPerSquareMetre((1 - albedo) * float64(solar))
}

// NetLongwave gives Rnl, the heat that the reference grass loses to the sky
// over a day (FAO-56 equation 39). The relative shortwave radiation Rs/Rso is
// held to 1; where the sun does not rise it counts as half clear.
func NetLongwave(minimum, maximum unit.Celsius, actual unit.Kilopascals, solar, clearSky unit.MegajoulesPerSquareMetre) unit.MegajoulesPerSquareMetre {
	relative := 0.5
	if clearSky > 0 {
		relative = math.Max(0.25, math.Min(1, float64(solar/clearSky)))
	}
	hot, cold := float64(maximum)+273.16, float64(minimum)+273.16
	black := stefanBoltzmannPerDay * (hot*hot*hot*hot + cold*cold*cold*cold) / 2
	rnl := black * (0.34 - 0.14*math.Sqrt(math.Max(0, float64(actual)))) * (1.35*relative - 0.35)
	return unit.MegajoulesPerSquareMetre(rnl)
}

// MonthlySoilHeat gives G for a month, in MJ/m² per day, from the mean air
// temperature of the month before and of the month after (FAO-56 equation 43).
func MonthlySoilHeat(before, after unit.Celsius) unit.MegajoulesPerSquareMetre {
	return unit.MegajoulesPerSquareMetre(0.07 * float64(after-before))
}

// MonthlySoilHeatSoFar gives G for a month from the mean air temperature of the
// month before and of the month itself (FAO-56 equation 44).
func MonthlySoilHeatSoFar(before, now unit.Celsius) unit.MegajoulesPerSquareMetre {
	return unit.MegajoulesPerSquareMetre(0.14 * float64(now-before))
}

// EvaporationOf gives the depth of water that an energy would evaporate, with
// the latent heat 2.45 MJ/kg of FAO-56 (equation 20, factor 0.408).
func EvaporationOf(energy unit.MegajoulesPerSquareMetre) unit.Millimetres {
	return unit.Millimetres(0.408 * float64(energy))
}
